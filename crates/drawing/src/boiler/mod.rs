//! General section of the vertical boiler with wet firebox and fire tubes, and plan of a tube
//! plate.
//!
//! It takes sizes that have been resolved; heights are above the underside of the foundation ring.

mod dimensions;
mod door;
mod plate;
mod sizes;
mod typed;

use plant::part::Turned;
use reckoning::quantity::Length;

use crate::hatch::{Hatch, Leans};
use crate::layout::{self, title_line};
use crate::sheet::{At, Layer, Mark, Sheet, at};

pub use door::{NotDrawn, of_plant};
pub(crate) use door::{in_words, name, side};
pub use plate::tube_plate;
pub(crate) use plate::{flanged, round_plate};
pub use sizes::{
    Bush, Chimney, Cylinder, FireTube, Firehole, Grate, Hand, Nozzle, TubePlate, VerticalBoiler,
};
pub(crate) use typed::{size as size_typed, words as length_typed};

/// Room on the paper that the section itself may fill, mm.
const FRAME: (f64, f64) = (120.0, 225.0);

/// How much of the nozzle is shown below its tip, mm on the paper.
const NOZZLE_SHOWN: f64 = 5.0;

/// The section through the axis with its leading dimensions.
#[must_use]
pub fn section(boiler: &VerticalBoiler) -> Sheet {
    let tops = [
        Some(boiler.barrel.top),
        boiler.smokebox.map(|c| c.top),
        boiler.chimney.map(|c| c.top),
    ];
    let tallest = tops
        .into_iter()
        .flatten()
        .map(Length::mm)
        .fold(boiler.upper_plate.underside.mm(), f64::max);
    let wide = boiler.barrel.outside.mm();
    let scale = layout::scale_for(wide, tallest, FRAME);
    let mut view = View {
        sheet: Sheet::new(boiler.name.clone(), scale),
        scale,
        openings: openings(boiler, scale),
    };
    view.shells(boiler);
    view.plates(boiler);
    view.inside(boiler);
    view.outside(boiler);
    let tall = tallest * scale;
    let axis = Mark::Line(at(0.0, -4.0), at(0.0, tall + 4.0));
    view.sheet.draw(Layer::Axis, axis);
    view.dimensions(boiler);
    title_line(&mut view.sheet, &view_words(boiler));
    view.sheet
}

fn view_words(boiler: &VerticalBoiler) -> String {
    let mut words = String::from("section on the axis");
    for note in &boiler.notes {
        words += &format!("; {note}");
    }
    words
}

/// Convex areas on the paper where shells are pierced: firehole and bushes.
fn openings(boiler: &VerticalBoiler, scale: f64) -> Vec<Vec<At>> {
    let r = boiler.barrel.outside.mm() / 2.0 * scale;
    let mut areas = Vec::new();
    if let Some(hole) = boiler.firehole {
        let over = (hole.opening / 2.0 + hole.wall).mm() * scale;
        let y = hole.height.mm() * scale;
        let inner = (boiler.firebox.outside / 2.0 - boiler.firebox.wall).mm() * scale;
        areas.push(rectangle(inner, y - over, r, y + over));
    }
    for bush in &boiler.bushes {
        let (y, half) = (bush.height.mm() * scale, bush.hole.mm() / 2.0 * scale);
        let inner = r - boiler.barrel.wall.mm() * scale;
        areas.push(match bush.hand {
            Hand::Right => rectangle(inner, y - half, r, y + half),
            Hand::Left => rectangle(-r, y - half, -inner, y + half),
        });
    }
    areas
}

pub(crate) fn rectangle(x0: f64, y0: f64, x1: f64, y1: f64) -> Vec<At> {
    vec![at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)]
}

fn mirrored(points: &[At]) -> Vec<At> {
    points.iter().map(|p| at(-p.x, p.y)).collect()
}

/// A cut area between closed loops, its outline and hatching broken where `voids` pierce it.
pub(crate) fn cut(
    sheet: &mut Sheet,
    part: &str,
    loops: Vec<Vec<At>>,
    ((leans, spacing), voids): ((Leans, f64), &[Vec<At>]),
) {
    for area in &loops {
        for i in 0..area.len() {
            let edge = (area[i], area[(i + 1) % area.len()]);
            for (a, b) in crate::clip::outside_all(edge, voids) {
                sheet.draw_of(part, Layer::Outline, Mark::Line(a, b));
            }
        }
    }
    let hatched = Hatch {
        loops,
        voids: voids.to_vec(),
        leans,
        spacing,
    };
    sheet.draw_of(part, Layer::Hatch, Mark::Hatch(hatched));
}

/// The mark of a level on a line at its height: the middle of the stretch at which it stands.
pub(crate) fn level_mark(sheet: &mut Sheet, middle: At) {
    let (x, y) = (middle.x, middle.y);
    let mark = vec![at(x, y), at(x - 1.3, y + 2.2), at(x + 1.3, y + 2.2)];
    sheet.draw_of("water", Layer::Thin, Mark::Closed(mark));
    for (k, half) in [(1.0, 1.2), (1.9, 0.6)] {
        let dash = Mark::Line(at(x - half, y - k), at(x + half, y - k));
        sheet.draw_of("water", Layer::Thin, dash);
    }
}

/// A turned part in section: `place` gives the paper for a place on its axis and a distance from
/// it.
pub(crate) fn turned_section(
    sheet: &mut Sheet,
    (id, part): (&str, &Turned),
    place: &dyn Fn(f64, f64) -> At,
) {
    let outline = crate::turned::Outline::of(part);
    let corners = |quad: &[(f64, f64); 4]| quad.iter().map(|(z, r)| place(*z, *r)).collect();
    let hatch = Hatch {
        loops: outline.quads().iter().map(corners).collect(),
        voids: Vec::new(),
        leans: Leans::Left,
        spacing: 1.0,
    };
    sheet.draw_of(id, Layer::Hatch, Mark::Hatch(hatch));
    for (a, b) in outline.edges() {
        let edge = Mark::Line(place(a.0, a.1), place(b.0, b.1));
        sheet.draw_of(id, Layer::Outline, edge);
    }
}

struct View {
    sheet: Sheet,
    scale: f64,
    openings: Vec<Vec<At>>,
}

impl View {
    fn paper(&self, length: Length) -> f64 {
        length.mm() * self.scale
    }

    fn cut(&mut self, part: &str, area: Vec<At>, hatch: (Leans, f64), voids: &[Vec<At>]) {
        cut(&mut self.sheet, part, vec![area], (hatch, voids));
    }

    fn both(&mut self, part: &str, area: &[At], hatch: (Leans, f64)) {
        let voids = self.openings.clone();
        self.cut(part, area.to_vec(), hatch, &voids);
        self.cut(part, mirrored(area), hatch, &voids);
    }

    fn cylinder(&mut self, part: &str, c: &Cylinder, hatch: (Leans, f64)) {
        let outer = self.paper(c.outside / 2.0);
        let inner = outer - self.paper(c.wall);
        let (low, high) = (self.paper(c.bottom), self.paper(c.top));
        self.both(part, &rectangle(inner, low, outer, high), hatch);
        for y in [low, high] {
            let rim = Mark::Line(at(-inner, y), at(inner, y));
            self.sheet.draw_of(part, Layer::Outline, rim);
        }
    }

    fn shells(&mut self, boiler: &VerticalBoiler) {
        self.cylinder("barrel", &boiler.barrel, (Leans::Right, 2.0));
        let fire = &boiler.firebox;
        self.cylinder("firebox", fire, (Leans::Right, 1.5));
        let (low, high) = (self.paper(fire.bottom), self.paper(boiler.ring_top));
        let inner = self.paper(fire.outside / 2.0);
        let outer = self.paper(boiler.barrel.outside / 2.0 - boiler.barrel.wall);
        let ring = rectangle(inner, low, outer, high);
        self.both("foundation-ring", &ring, (Leans::Left, 1.5));
        if let Some(smokebox) = &boiler.smokebox {
            self.cylinder("smokebox", smokebox, (Leans::Left, 1.5));
        }
        if let Some(chimney) = &boiler.chimney {
            self.chimney(chimney);
        }
    }

    fn plates(&mut self, boiler: &VerticalBoiler) {
        let plates = [
            ("tube-plate.upper", &boiler.upper_plate),
            ("tube-plate.lower", &boiler.lower_plate),
        ];
        for (part, plate) in plates {
            let area = flanged(plate, self.scale);
            let (low, high) = (
                self.paper(plate.underside),
                self.paper(plate.underside + plate.thickness),
            );
            let voids: Vec<Vec<At>> = boiler
                .tubes
                .iter()
                .map(|t| {
                    let (x, r) = (self.paper(t.x), self.paper(t.outside / 2.0));
                    rectangle(x - r, low - 1.0, x + r, high + 1.0)
                })
                .collect();
            self.cut(part, area, (Leans::Left, 2.0), &voids);
        }
    }

    fn inside(&mut self, boiler: &VerticalBoiler) {
        for tube in &boiler.tubes {
            let part = tube.id.clone();
            let (x, r) = (self.paper(tube.x), self.paper(tube.outside / 2.0));
            let bore = r - self.paper(tube.wall);
            let (low, high) = (self.paper(tube.bottom), self.paper(tube.top));
            for (a, b) in [(x - r, x - bore), (x + bore, x + r)] {
                let wall = rectangle(a, low, b, high);
                self.cut(&part, wall, (Leans::Right, 1.0), &[]);
            }
            for y in [low, high] {
                let rim = Mark::Line(at(x - bore, y), at(x + bore, y));
                self.sheet.draw_of(&part, Layer::Outline, rim);
            }
            // The tube on the axis shares the centre line of the boiler.
            if x.abs() > 0.01 {
                let axis = Mark::Line(at(x, low - 3.0), at(x, high + 3.0));
                self.sheet.draw_of(&part, Layer::Axis, axis);
            }
        }
        if let Some(grate) = boiler.grate {
            let (r, y) = (self.paper(grate.diameter / 2.0), self.paper(grate.top));
            match grate.thickness {
                Some(thick) => {
                    let area = rectangle(-r, y - self.paper(thick), r, y);
                    self.cut("grate", area, (Leans::Left, 1.5), &[]);
                }
                // Its upper side alone.
                None => {
                    let line = Mark::Line(at(-r, y), at(r, y));
                    self.sheet.draw_of("grate", Layer::Outline, line);
                }
            }
        }
        if let Some(level) = boiler.water_level {
            self.water(boiler, level);
        }
        if let Some(nozzle) = boiler.nozzle {
            self.nozzle(&nozzle);
        }
    }

    /// The water line between barrel and tubes, with the mark of a level.
    fn water(&mut self, boiler: &VerticalBoiler, level: Length) {
        let y = self.paper(level);
        let inner = self.paper(boiler.barrel.outside / 2.0 - boiler.barrel.wall);
        let mut areas: Vec<Vec<At>> = boiler
            .tubes
            .iter()
            .map(|t| {
                let (x, r) = (self.paper(t.x), self.paper(t.outside / 2.0));
                rectangle(x - r, y - 1.0, x + r, y + 1.0)
            })
            .collect();
        if level < boiler.lower_plate.underside {
            let r = self.paper(boiler.firebox.outside / 2.0);
            areas.push(rectangle(-r, y - 1.0, r, y + 1.0));
        }
        let line = (at(-inner, y), at(inner, y));
        let stretches = crate::clip::outside_all(line, &areas);
        for (a, b) in &stretches {
            self.sheet.draw_of("water", Layer::Thin, Mark::Line(*a, *b));
        }
        // The mark stands where the line has most room: at the barrel.
        if let Some((a, b)) = stretches.first() {
            level_mark(&mut self.sheet, at(0.5 * (a.x + b.x), y));
        }
    }

    /// The bore of the nozzle at its tip: two edges and the mouth.
    fn nozzle(&mut self, nozzle: &Nozzle) {
        let (r, tip) = (self.paper(nozzle.bore / 2.0), self.paper(nozzle.tip));
        let low = tip - NOZZLE_SHOWN;
        let edge = vec![at(-r, low), at(-r, tip), at(r, tip), at(r, low)];
        self.sheet
            .draw_of("blast.nozzle", Layer::Outline, Mark::Open(edge));
    }

    /// The bore of the chimney.
    fn chimney(&mut self, chimney: &Chimney) {
        let (choke, mouth) = (
            self.paper(chimney.choke / 2.0),
            self.paper(chimney.mouth / 2.0),
        );
        let [low, taper, high] =
            [chimney.bottom, chimney.taper, chimney.top].map(|z| self.paper(z));
        for side in [-1.0, 1.0] {
            let wall = vec![
                at(side * choke, low),
                at(side * choke, taper),
                at(side * mouth, high),
            ];
            self.sheet
                .draw_of("chimney", Layer::Outline, Mark::Open(wall));
        }
        for (r, y) in [(choke, low), (mouth, high)] {
            let rim = Mark::Line(at(-r, y), at(r, y));
            self.sheet.draw_of("chimney", Layer::Outline, rim);
        }
    }

    fn outside(&mut self, boiler: &VerticalBoiler) {
        let barrel = self.paper(boiler.barrel.outside / 2.0);
        if let Some(hole) = boiler.firehole {
            let inner = self.paper(boiler.firebox.outside / 2.0 - boiler.firebox.wall);
            let (y, half) = (self.paper(hole.height), self.paper(hole.opening / 2.0));
            let wall = self.paper(hole.wall);
            for (a, b) in [(half, half + wall), (-half - wall, -half)] {
                let area = rectangle(inner, y + a, barrel, y + b);
                self.cut("firehole", area, (Leans::Left, 1.0), &[]);
            }
            for x in [inner, barrel] {
                let rim = Mark::Line(at(x, y - half), at(x, y + half));
                self.sheet.draw_of("firehole", Layer::Outline, rim);
            }
            let axis = Mark::Line(at(inner - 3.0, y), at(barrel + 3.0, y));
            self.sheet.draw_of("firehole", Layer::Axis, axis);
        }
        for bush in &boiler.bushes {
            self.bush(bush, barrel - self.paper(boiler.barrel.wall));
        }
    }

    /// A bush in section, its inner end `inner` from the axis.
    fn bush(&mut self, bush: &Bush, inner: f64) {
        let side = match bush.hand {
            Hand::Left => -1.0,
            Hand::Right => 1.0,
        };
        let from = inner - self.paper(bush.inward);
        let (y, scale) = (self.paper(bush.height), self.scale);
        let place = |z: f64, r: f64| at(side * (from + z * scale), y + r * scale);
        turned_section(&mut self.sheet, (&bush.id, &bush.part), &place);
        let to = bush.part.span().to.mm();
        let axis = Mark::Line(
            place(0.0, 0.0).moved(side * -3.0, 0.0),
            place(to, 0.0).moved(side * 3.0, 0.0),
        );
        self.sheet.draw_of(&bush.id, Layer::Axis, axis);
    }
}
