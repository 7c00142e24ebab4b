//! The section along the axis, the front to the left.

use reckoning::quantity::Length;

use super::sizes::{Bush, Chimney, CrossTubes, LyingBoiler, Over, Pipe};
use super::{View, band};
use crate::boiler::{TubePlate, cut, flanged, level_mark, rectangle, turned_section};
use crate::hatch::Leans;
use crate::layout::{scale_for, title_line};
use crate::sheet::{At, Layer, Mark, Sheet, at};

/// Room on the paper that the section itself may fill, mm.
const FRAME: (f64, f64) = (170.0, 150.0);

/// The section along the axis with its leading dimensions.
#[must_use]
pub fn along(boiler: &LyingBoiler) -> Sheet {
    let (low, high) = boiler.ends();
    let tall = boiler.chimney.map_or(boiler.barrel.outside, |c| c.top);
    let scale = scale_for((high - low).mm(), tall.mm(), FRAME);
    let mut view = View {
        sheet: Sheet::new(boiler.name.clone(), scale),
        scale,
    };
    view.barrel(boiler);
    view.ends(boiler);
    view.flue(boiler);
    view.smoke(boiler);
    for bush in &boiler.bushes {
        view.bush(boiler, bush);
    }
    view.axes(boiler);
    view.water(boiler);
    view.along_dimensions(boiler);
    let mut words = String::from("section on the axis, cross tubes and bushes turned into it");
    for note in &boiler.notes {
        words += &format!("; {note}");
    }
    title_line(&mut view.sheet, &words);
    view.sheet
}

impl LyingBoiler {
    /// Where metal of barrel, flue and smokebox begins and ends, from the front of the barrel.
    pub(super) fn ends(&self) -> (Length, Length) {
        let pipes = [Some(self.barrel), Some(self.flue), self.smokebox];
        let pipes = || pipes.iter().flatten();
        let low = pipes().map(|p| p.from.mm()).fold(0.0, f64::min);
        let high = pipes().map(|p| p.to.mm()).fold(0.0, f64::max);
        (Length::from_mm(low), Length::from_mm(high))
    }
}

impl View {
    /// The two walls of a pipe as cut by the plane: outer and inner height of each.
    fn walls(&self, pipe: &Pipe) -> [Vec<At>; 2] {
        let (from, to) = (self.paper(pipe.from), self.paper(pipe.to));
        let (axis, outer) = (self.paper(pipe.axis), self.paper(pipe.outside / 2.0));
        let inner = outer - self.paper(pipe.wall);
        [
            rectangle(from, axis + inner, to, axis + outer),
            rectangle(from, axis - outer, to, axis - inner),
        ]
    }

    fn pipe(&mut self, part: &str, pipe: &Pipe, hatch: (Leans, f64), voids: &[Vec<At>]) {
        for wall in self.walls(pipe) {
            cut(&mut self.sheet, part, vec![wall], (hatch, voids));
        }
        let (axis, inner) = (self.paper(pipe.axis), self.paper(pipe.bore() / 2.0));
        for x in [self.paper(pipe.from), self.paper(pipe.to)] {
            let rim = Mark::Line(at(x, axis - inner), at(x, axis + inner));
            self.sheet.draw_of(part, Layer::Outline, rim);
        }
    }

    fn barrel(&mut self, boiler: &LyingBoiler) {
        let barrel = &boiler.barrel;
        let (axis, outer) = (self.paper(barrel.axis), self.paper(barrel.outside / 2.0));
        let voids: Vec<Vec<At>> = boiler
            .bushes
            .iter()
            .map(|bush| {
                let (x, half) = (self.paper(bush.along), self.paper(bush.hole / 2.0));
                let over = match bush.over {
                    Over::Top => (axis, axis + outer),
                    Over::Bottom => (axis - outer, axis),
                };
                rectangle(x - half, over.0, x + half, over.1)
            })
            .collect();
        self.pipe("barrel", barrel, (Leans::Right, 2.0), &voids);
    }

    fn ends(&mut self, boiler: &LyingBoiler) {
        for (part, end) in [("end.front", &boiler.front), ("end.back", &boiler.back)] {
            let axis = self.paper(boiler.barrel.axis);
            let area: Vec<At> = flanged(end, self.scale)
                .iter()
                .map(|p| at(p.y, axis + p.x))
                .collect();
            let hole = self.hole_of_flue(&boiler.flue, end);
            cut(
                &mut self.sheet,
                part,
                vec![area],
                ((Leans::Left, 2.0), &[hole]),
            );
        }
    }

    fn hole_of_flue(&self, flue: &Pipe, end: &TubePlate) -> Vec<At> {
        let (axis, r) = (self.paper(flue.axis), self.paper(flue.outside / 2.0));
        let low = self.paper(end.underside);
        let high = low + self.paper(end.thickness);
        rectangle(low - 1.0, axis - r, high + 1.0, axis + r)
    }

    fn flue(&mut self, boiler: &LyingBoiler) {
        let flue = &boiler.flue;
        let axis = self.paper(flue.axis);
        let tubes = boiler.tubes.as_ref();
        let voids = tubes.map_or_else(Vec::new, |tubes| self.tube_bands(tubes, axis));
        self.pipe("flue", flue, (Leans::Right, 1.0), &voids);
        if let Some(tubes) = tubes {
            self.tubes(tubes, axis);
        }
        if let Some(poker) = boiler.poker {
            let (from, r) = (self.paper(flue.from), self.paper(poker.outside / 2.0));
            let to = from + self.paper(poker.length);
            let edge = vec![
                at(from, axis - r),
                at(to, axis - r),
                at(to, axis + r),
                at(from, axis + r),
            ];
            self.sheet
                .draw_of("burner", Layer::Outline, Mark::Open(edge));
        }
    }

    /// Where the tubes stand, turned upright.
    fn tube_bands(&self, tubes: &CrossTubes, axis: f64) -> Vec<Vec<At>> {
        let (half, r) = (
            self.paper(tubes.length / 2.0),
            self.paper(tubes.outside / 2.0),
        );
        let all = tubes.tubes.iter();
        all.map(|tube| {
            let middle = at(self.paper(tube.along), axis);
            band(middle, std::f64::consts::FRAC_PI_2, (-half, half), r)
        })
        .collect()
    }

    fn tubes(&mut self, tubes: &CrossTubes, axis: f64) {
        let half = self.paper(tubes.length / 2.0);
        let (r, wall) = (self.paper(tubes.outside / 2.0), self.paper(tubes.wall));
        for tube in &tubes.tubes {
            let x = self.paper(tube.along);
            for (from, to) in [(x - r, x - r + wall), (x + r - wall, x + r)] {
                let area = rectangle(from, axis - half, to, axis + half);
                let hatch = (Leans::Left, 1.0);
                cut(&mut self.sheet, &tube.id, vec![area], (hatch, &[]));
            }
            for y in [axis - half, axis + half] {
                let rim = Mark::Line(at(x - r + wall, y), at(x + r - wall, y));
                self.sheet.draw_of(&tube.id, Layer::Outline, rim);
            }
            let centre = Mark::Line(at(x, axis - half - 2.0), at(x, axis + half + 2.0));
            self.sheet.draw_of(&tube.id, Layer::Axis, centre);
        }
    }

    fn smoke(&mut self, boiler: &LyingBoiler) {
        let Some(smokebox) = &boiler.smokebox else {
            return;
        };
        let void = boiler.chimney.map(|chimney| {
            let (x, r) = (self.paper(chimney.along), self.paper(chimney.choke / 2.0));
            rectangle(
                x - r,
                self.paper(smokebox.axis),
                x + r,
                self.paper(chimney.bottom),
            )
        });
        let voids: Vec<Vec<At>> = void.into_iter().collect();
        self.pipe("smokebox", smokebox, (Leans::Left, 1.5), &voids);
        if let Some(chimney) = &boiler.chimney {
            self.chimney(chimney);
        }
    }

    /// The bore of the chimney.
    fn chimney(&mut self, chimney: &Chimney) {
        let x = self.paper(chimney.along);
        let (choke, mouth) = (
            self.paper(chimney.choke / 2.0),
            self.paper(chimney.mouth / 2.0),
        );
        let [low, taper, high] =
            [chimney.bottom, chimney.taper, chimney.top].map(|z| self.paper(z));
        for side in [-1.0, 1.0] {
            let wall = vec![
                at(x + side * choke, low),
                at(x + side * choke, taper),
                at(x + side * mouth, high),
            ];
            self.sheet
                .draw_of("chimney", Layer::Outline, Mark::Open(wall));
        }
        for (r, y) in [(choke, low), (mouth, high)] {
            let rim = Mark::Line(at(x - r, y), at(x + r, y));
            self.sheet.draw_of("chimney", Layer::Outline, rim);
        }
        let axis = Mark::Line(at(x, low - 3.0), at(x, high + 3.0));
        self.sheet.draw_of("chimney", Layer::Axis, axis);
    }

    fn bush(&mut self, boiler: &LyingBoiler, bush: &Bush) {
        let up = match bush.over {
            Over::Top => 1.0,
            Over::Bottom => -1.0,
        };
        let axis = self.paper(boiler.barrel.axis);
        let from = self.paper(boiler.barrel.bore() / 2.0 - bush.inward);
        let (x, scale) = (self.paper(bush.along), self.scale);
        let place = |z: f64, r: f64| at(x + r * scale, axis + up * (from + z * scale));
        turned_section(&mut self.sheet, (&bush.id, &bush.part), &place);
        let to = bush.part.span().to.mm();
        let centre = Mark::Line(
            place(0.0, 0.0).moved(0.0, up * -2.0),
            place(to, 0.0).moved(0.0, up * 2.0),
        );
        self.sheet.draw_of(&bush.id, Layer::Axis, centre);
    }

    fn axes(&mut self, boiler: &LyingBoiler) {
        let (low, high) = boiler.ends();
        let (from, to) = (self.paper(low) - 3.0, self.paper(high) + 3.0);
        let mut heights = vec![self.paper(boiler.barrel.axis)];
        let flue = self.paper(boiler.flue.axis);
        // A flue on the middle of the barrel shares its axis.
        if (heights[0] - flue).abs() > 0.01 {
            heights.push(flue);
        }
        for y in heights {
            let axis = Mark::Line(at(from, y), at(to, y));
            self.sheet.draw(Layer::Axis, axis);
        }
    }

    /// The water line between the ends, outside flue and cross tubes.
    fn water(&mut self, boiler: &LyingBoiler) {
        let Some(level) = boiler.water_level else {
            return;
        };
        let y = self.paper(level);
        let from = self.paper(boiler.front.underside + boiler.front.thickness);
        let to = self.paper(boiler.back.underside);
        let axis = self.paper(boiler.flue.axis);
        let tubes = boiler.tubes.as_ref();
        let mut voids = tubes.map_or_else(Vec::new, |tubes| self.tube_bands(tubes, axis));
        let r = self.paper(boiler.flue.outside / 2.0);
        voids.push(rectangle(from, axis - r, to, axis + r));
        for (a, b) in crate::clip::outside_all((at(from, y), at(to, y)), &voids) {
            self.sheet.draw_of("water", Layer::Thin, Mark::Line(a, b));
        }
        level_mark(&mut self.sheet, at(from + 0.12 * (to - from), y));
    }
}
