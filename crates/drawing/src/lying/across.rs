//! The section across the first cross tube, seen from the front.

use super::sizes::{Bush, CrossTubes, LyingBoiler, Pipe};
use super::{View, band, round};
use crate::boiler::{cut, level_mark, turned_section};
use crate::clip::outside_all;
use crate::hatch::Leans;
use crate::layout::{scale_for, title_line};
use crate::sheet::{At, Layer, Mark, Sheet, at};

/// Room on the paper that the section itself may fill, mm.
const FRAME: (f64, f64) = (120.0, 120.0);
/// Angles nearer than this look alike, rad.
const ALIKE: f64 = 0.02;

/// The section across the first cross tube with its leading dimensions.
#[must_use]
pub fn across(boiler: &LyingBoiler) -> Sheet {
    let wide = boiler.barrel.outside.mm();
    let scale = scale_for(wide, wide, FRAME);
    let mut view = View {
        sheet: Sheet::new(boiler.name.clone(), scale),
        scale,
    };
    view.rings(boiler);
    view.crossings(boiler);
    for group in at_angles(&boiler.bushes) {
        // Those at one angle hide each other: the first stands for them.
        view.bush_at(boiler, group[0]);
    }
    view.centre_lines(boiler);
    view.surface(boiler);
    view.across_dimensions(boiler);
    let mut words = String::from("section across, seen from the front, bushes at their angles");
    for note in &boiler.notes {
        words += &format!("; {note}");
    }
    title_line(&mut view.sheet, &words);
    view.sheet
}

/// Bushes by their angles.
pub(super) fn at_angles(bushes: &[Bush]) -> Vec<Vec<&Bush>> {
    let mut groups: Vec<Vec<&Bush>> = Vec::new();
    for bush in bushes {
        let alike = |group: &&mut Vec<&Bush>| (group[0].angle - bush.angle).rad().abs() < ALIKE;
        match groups.iter_mut().find(alike) {
            Some(group) => group.push(bush),
            None => groups.push(vec![bush]),
        }
    }
    groups
}

impl View {
    fn middle(&self, pipe: &Pipe) -> At {
        at(0.0, self.paper(pipe.axis))
    }

    /// The angle of a bush against the clock from the right, as the paper counts.
    fn bush_angle(bush: &Bush) -> f64 {
        std::f64::consts::FRAC_PI_2 - bush.angle.rad()
    }

    fn rings(&mut self, boiler: &LyingBoiler) {
        let barrel = &boiler.barrel;
        let middle = self.middle(barrel);
        let outer = self.paper(barrel.outside / 2.0);
        let voids: Vec<Vec<At>> = boiler
            .bushes
            .iter()
            .map(|bush| {
                let half = self.paper(bush.hole / 2.0);
                band(middle, Self::bush_angle(bush), (0.0, outer), half)
            })
            .collect();
        self.ring("barrel", barrel, ((Leans::Right, 2.0), &voids));
        let flue = &boiler.flue;
        let tubes = boiler.tubes.as_ref();
        let pierced: Vec<Vec<At>> = tubes
            .and_then(|tubes| self.bands(tubes, flue).into_iter().next())
            .into_iter()
            .collect();
        self.ring("flue", flue, ((Leans::Right, 1.0), &pierced));
    }

    fn ring(&mut self, part: &str, pipe: &Pipe, hatch: ((Leans, f64), &[Vec<At>])) {
        let middle = self.middle(pipe);
        let loops = vec![
            round(middle, self.paper(pipe.outside / 2.0)),
            round(middle, self.paper(pipe.bore() / 2.0)),
        ];
        cut(&mut self.sheet, part, loops, hatch);
    }

    /// The areas of the cross tubes, the first first.
    fn bands(&self, tubes: &CrossTubes, flue: &Pipe) -> Vec<Vec<At>> {
        let (half, r) = (
            self.paper(tubes.length / 2.0),
            self.paper(tubes.outside / 2.0),
        );
        let all = tubes.tubes.iter();
        all.map(|tube| band(self.middle(flue), tube.angle.rad(), (-half, half), r))
            .collect()
    }

    /// The first tube cut, the others seen behind it where nothing hides them.
    fn crossings(&mut self, boiler: &LyingBoiler) {
        let Some(tubes) = &boiler.tubes else { return };
        let flue = &boiler.flue;
        let middle = self.middle(flue);
        let bands = self.bands(tubes, flue);
        let half = self.paper(tubes.length / 2.0);
        let (r, wall) = (self.paper(tubes.outside / 2.0), self.paper(tubes.wall));
        let Some(first) = tubes.tubes.first() else {
            return;
        };
        let hatch = (Leans::Left, 1.0);
        for v in [r - wall / 2.0, wall / 2.0 - r] {
            let angle = first.angle.rad();
            let (sine, cosine) = angle.sin_cos();
            let line = middle.moved(-v * sine, v * cosine);
            let area = band(line, angle, (-half, half), wall / 2.0);
            cut(&mut self.sheet, &first.id, vec![area], (hatch, &[]));
        }
        for (i, tube) in tubes.tubes.iter().enumerate().skip(1) {
            for edge in self.seen_behind(boiler, tube.angle.rad(), r) {
                for (a, b) in outside_all(edge, &bands[..i]) {
                    self.sheet
                        .draw_of(&tube.id, Layer::Outline, Mark::Line(a, b));
                }
            }
        }
        for tube in &tubes.tubes {
            let line = band(middle, tube.angle.rad(), (-half - 2.0, half + 2.0), 0.0);
            let axis = Mark::Line(line[0], line[1]);
            self.sheet.draw_of(&tube.id, Layer::Axis, axis);
        }
    }

    /// Both edges of a tube behind the plane, where the wall of the flue does not hide them.
    fn seen_behind(&self, boiler: &LyingBoiler, angle: f64, r: f64) -> Vec<(At, At)> {
        let (flue, middle) = (&boiler.flue, self.middle(&boiler.flue));
        let Some(tubes) = &boiler.tubes else {
            return Vec::new();
        };
        let half = self.paper(tubes.length / 2.0);
        let chord = |radius: f64| (radius * radius - r * r).sqrt();
        let (outer, inner) = (
            chord(self.paper(flue.outside / 2.0)),
            chord(self.paper(flue.bore() / 2.0)),
        );
        let pieces = [(-half, -outer), (-inner, inner), (outer, half)];
        let mut edges = Vec::new();
        for (from, to) in pieces.into_iter().filter(|(from, to)| to > from) {
            let area = band(middle, angle, (from, to), r);
            edges.extend([(area[0], area[1]), (area[2], area[3])]);
        }
        for u in [-half, half] {
            let end = band(middle, angle, (u, u), r);
            edges.push((end[1], end[2]));
        }
        edges
    }

    fn bush_at(&mut self, boiler: &LyingBoiler, bush: &Bush) {
        let middle = self.middle(&boiler.barrel);
        let from = self.paper(boiler.barrel.bore() / 2.0 - bush.inward);
        let (sine, cosine) = Self::bush_angle(bush).sin_cos();
        let scale = self.scale;
        let place = |z: f64, r: f64| {
            let (u, v) = (from + z * scale, r * scale);
            middle.moved(u * cosine - v * sine, u * sine + v * cosine)
        };
        turned_section(&mut self.sheet, (&bush.id, &bush.part), &place);
        let to = bush.part.span().to.mm();
        let past = 2.0 / scale;
        let axis = Mark::Line(place(-past, 0.0), place(to + past, 0.0));
        self.sheet.draw_of(&bush.id, Layer::Axis, axis);
    }

    fn centre_lines(&mut self, boiler: &LyingBoiler) {
        let r = self.paper(boiler.barrel.outside / 2.0) + 3.0;
        let y = self.paper(boiler.barrel.axis);
        let lines = [(at(0.0, y - r), at(0.0, y + r)), (at(-r, y), at(r, y))];
        for (a, b) in lines {
            self.sheet.draw(Layer::Axis, Mark::Line(a, b));
        }
        let flue = self.paper(boiler.flue.axis);
        if (flue - y).abs() > 0.01 {
            let reach = self.paper(boiler.flue.outside / 2.0) + 2.0;
            let axis = Mark::Line(at(-reach, flue), at(reach, flue));
            self.sheet.draw_of("flue", Layer::Axis, axis);
        }
    }

    /// The water line within the barrel, outside flue and tubes.
    fn surface(&mut self, boiler: &LyingBoiler) {
        let Some(level) = boiler.water_level else {
            return;
        };
        let (y, axis) = (self.paper(level), self.paper(boiler.barrel.axis));
        let r = self.paper(boiler.barrel.bore() / 2.0);
        let square = r * r - (y - axis) * (y - axis);
        if square <= 0.0 {
            return;
        }
        let x = square.sqrt();
        let flue = &boiler.flue;
        let mut voids = vec![round(self.middle(flue), self.paper(flue.outside / 2.0))];
        voids.extend(
            boiler
                .tubes
                .iter()
                .flat_map(|tubes| self.bands(tubes, flue)),
        );
        let stretches = outside_all((at(-x, y), at(x, y)), &voids);
        for (a, b) in &stretches {
            self.sheet.draw_of("water", Layer::Thin, Mark::Line(*a, *b));
        }
        if let Some((a, b)) = stretches.first() {
            // Beside the middle, where bushes on top reach in.
            level_mark(&mut self.sheet, at(a.x + 0.25 * (b.x - a.x), y));
        }
    }
}
