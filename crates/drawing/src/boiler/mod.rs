//! General section of the vertical boiler with wet firebox and fire tubes, and plan of a tube
//! plate.
//!
//! It takes sizes that have been resolved; heights are above the underside of the foundation ring.

mod dimensions;
mod door;
mod plate;
mod sizes;
mod typed;

use plant::part::Stands;
use reckoning::quantity::Length;

use crate::hatch::{Hatch, Leans};
use crate::layout::{self, title_line};
use crate::sheet::{At, Layer, Mark, Sheet, at};

pub use door::{NotDrawn, of_plant};
pub use plate::tube_plate;
pub use sizes::{
    Bush, Chimney, Cylinder, FireTube, Firehole, Grate, Hand, Nozzle, TubePlate, VerticalBoiler,
};

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

fn rectangle(x0: f64, y0: f64, x1: f64, y1: f64) -> Vec<At> {
    vec![at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)]
}

fn mirrored(points: &[At]) -> Vec<At> {
    points.iter().map(|p| at(-p.x, p.y)).collect()
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

    /// A cut area, its outline and hatching broken where `voids` pierce it.
    fn cut(&mut self, part: &str, area: Vec<At>, hatch: (Leans, f64), voids: &[Vec<At>]) {
        for i in 0..area.len() {
            let edge = (area[i], area[(i + 1) % area.len()]);
            for (a, b) in crate::clip::outside_all(edge, voids) {
                self.sheet.draw_of(part, Layer::Outline, Mark::Line(a, b));
            }
        }
        let hatched = Hatch {
            loops: vec![area],
            voids: voids.to_vec(),
            leans: hatch.0,
            spacing: hatch.1,
        };
        self.sheet.draw_of(part, Layer::Hatch, Mark::Hatch(hatched));
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
            let area = self.flanged(plate);
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

    /// Outline of a flanged plate from left to right and back, the bends as short chords.
    fn flanged(&self, plate: &TubePlate) -> Vec<At> {
        let r = self.paper(plate.outside / 2.0);
        let t = self.paper(plate.thickness);
        let Some(flange) = plate.flange else {
            let low = self.paper(plate.underside);
            return rectangle(-r, low, r, low + t);
        };
        let (h, bend) = (self.paper(flange.height), self.paper(flange.inside_radius));
        let up = match flange.stands {
            Stands::Up => 1.0,
            Stands::Down => -1.0,
        };
        // Reckoned with the flange upwards from the outer face; turned over at the end.
        let centre = (r - t - bend, t + bend);
        let arc = |radius: f64, from: i32, to: i32| {
            let steps = (to - from).abs();
            (0..=steps).map(move |i| {
                let angle = f64::from(from + i * (to - from).signum()) * 7.5_f64.to_radians();
                at(
                    centre.0 + radius * angle.cos(),
                    centre.1 + radius * angle.sin(),
                )
            })
        };
        let mut half: Vec<At> = arc(bend + t, -12, 0).collect();
        half.extend([at(r, h), at(r - t, h)]);
        half.extend(arc(bend, 0, -12));
        let outer_face = match flange.stands {
            Stands::Up => self.paper(plate.underside),
            Stands::Down => self.paper(plate.underside + plate.thickness),
        };
        let left: Vec<At> = half.iter().rev().map(|p| at(-p.x, p.y)).collect();
        // Right half from the middle of the outer face round the flange to the inner face, then
        // the left half back.
        half.into_iter()
            .chain(left)
            .map(|p| at(p.x, outer_face + up * p.y))
            .collect()
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
            let x = 0.5 * (a.x + b.x);
            let mark = vec![at(x, y), at(x - 1.3, y + 2.2), at(x + 1.3, y + 2.2)];
            self.sheet.draw_of("water", Layer::Thin, Mark::Closed(mark));
            for (k, half) in [(1.0, 1.2), (1.9, 0.6)] {
                let dash = Mark::Line(at(x - half, y - k), at(x + half, y - k));
                self.sheet.draw_of("water", Layer::Thin, dash);
            }
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
        let place = |(z, r): (f64, f64)| at(side * (from + z * scale), y + r * scale);
        let outline = crate::turned::Outline::of(&bush.part);
        let loops = outline
            .quads()
            .iter()
            .map(|quad| quad.iter().map(|corner| place(*corner)).collect())
            .collect();
        let hatch = Hatch {
            loops,
            voids: Vec::new(),
            leans: Leans::Left,
            spacing: 1.0,
        };
        self.sheet
            .draw_of(&bush.id, Layer::Hatch, Mark::Hatch(hatch));
        for (a, b) in outline.edges() {
            let edge = Mark::Line(place(a), place(b));
            self.sheet.draw_of(&bush.id, Layer::Outline, edge);
        }
        let to = outline.high;
        let axis = Mark::Line(
            place((0.0, 0.0)).moved(side * -3.0, 0.0),
            place((to, 0.0)).moved(side * 3.0, 0.0),
        );
        self.sheet.draw_of(&bush.id, Layer::Axis, axis);
    }
}
