//! Full section of a turned part, its axis level, with its dimensions.
//!
//! The plane of section holds the axis and the first cross hole, or else the middle of the first
//! flat. Holes at other azimuths are turned into it, as ISO 128-3 allows, and the call-out says
//! so. Where a hole meets a round surface the curve is drawn straight.

mod holes;
mod outline;
mod scheme;

use plant::part::{Surface, Turned};
use reckoning::quantity::Length;

use crate::hatch::{Hatch, Leans};
use crate::layout::{scale_for, title_line};
use crate::sheet::{At, Layer, Mark, Sheet, at};

use holes::Hole;
pub(crate) use outline::Outline;

/// Room on the paper that the section itself may fill, mm.
const FRAME: (f64, f64) = (110.0, 100.0);
/// Distance between hatching lines, mm.
const SPACING: f64 = 2.0;
/// How far axes run past what they belong to, mm.
const PAST: f64 = 4.0;

/// The section of a turned part with every size that its making needs.
#[must_use]
pub fn section(name: &str, part: &Turned) -> Sheet {
    let outline = Outline::of(part);
    let scale = scale_for(outline.high - outline.low, 2.0 * outline.greatest(), FRAME);
    let holes = holes::of(part, &outline);
    let mut view = View {
        part,
        outline,
        holes,
        scale,
        sheet: Sheet::new(name, scale),
    };
    view.metal();
    view.edges();
    view.threads();
    view.cross_holes();
    let (low, high) = (view.outline.low, view.outline.high);
    let ends = (view.at(low, 0.0), view.at(high, 0.0));
    let axis = Mark::Line(ends.0.moved(-PAST, 0.0), ends.1.moved(PAST, 0.0));
    view.sheet.draw(Layer::Axis, axis);
    view.dimensions();
    title_line(&mut view.sheet, "section on the axis");
    view.sheet
}

struct View<'a> {
    part: &'a Turned,
    outline: Outline,
    holes: Vec<Hole>,
    scale: f64,
    sheet: Sheet,
}

impl View<'_> {
    /// A point on the paper from its place on the axis and its distance from it, mm of metal.
    fn at(&self, z: f64, r: f64) -> At {
        at(z * self.scale, r * self.scale)
    }

    fn line(&mut self, layer: Layer, from: (f64, f64), to: (f64, f64)) {
        let line = Mark::Line(self.at(from.0, from.1), self.at(to.0, to.1));
        self.sheet.draw(layer, line);
    }

    fn metal(&mut self) {
        let loops = self
            .outline
            .quads()
            .iter()
            .map(|quad| quad.iter().map(|(z, r)| self.at(*z, *r)).collect())
            .collect();
        let reach = self.outline.greatest() + 1.0;
        let voids = self
            .holes
            .iter()
            .filter_map(|hole| hole.void(reach))
            .map(|area| area.iter().map(|(z, r)| self.at(*z, *r)).collect())
            .collect();
        let hatch = Hatch {
            loops,
            voids,
            leans: Leans::Right,
            spacing: SPACING,
        };
        self.sheet.draw(Layer::Hatch, Mark::Hatch(hatch));
    }

    fn edges(&mut self) {
        for (from, to) in self.outline.edges() {
            self.line(Layer::Outline, from, to);
        }
    }

    /// ISO 6410-1: the root of an external thread and the crest line of the hole's thread are
    /// narrow lines in the metal; a wide line ends the full thread.
    fn threads(&mut self) {
        let threads: Vec<(Surface, [f64; 2], f64, f64)> = self
            .part
            .threads()
            .map(|(_, surface, span, thread)| {
                let ends = [span.from.mm(), span.to.mm()];
                let (core, major) = (thread.core.mm() / 2.0, thread.major.mm() / 2.0);
                (surface, ends, core, major)
            })
            .collect();
        for (surface, [from, to], core, major) in threads {
            let (from, to) = (from.max(self.outline.low), to.min(self.outline.high));
            let (thin, edge) = match surface {
                Surface::Outside => (core, Some(major)),
                Surface::Inside => (major, None),
            };
            for side in [1.0, -1.0] {
                self.line(Layer::Thin, (from, side * thin), (to, side * thin));
                for z in [from, to] {
                    if z > self.outline.low && z < self.outline.high {
                        let bore = self.outline.bore(z);
                        let edge = edge.unwrap_or(bore);
                        self.line(Layer::Outline, (z, side * thin), (z, side * edge));
                    }
                }
            }
        }
    }

    fn cross_holes(&mut self) {
        for hole in self.holes.clone() {
            for (from, to) in hole.edges(&self.outline) {
                self.line(Layer::Outline, from, to);
            }
            if let Some((y, r)) = hole.circle() {
                let mark = Mark::Circle {
                    centre: self.at(hole.z, y),
                    radius: r * self.scale,
                };
                self.sheet.draw_of(&hole.id, Layer::Outline, mark);
            }
            let (low, high) = hole.axis(&self.outline);
            let (a, b) = (self.at(hole.z, low), self.at(hole.z, high));
            let axis = Mark::Line(a.moved(0.0, -2.0), b.moved(0.0, 2.0));
            self.sheet.draw_of(&hole.id, Layer::Axis, axis);
        }
    }
}

/// Whether two lengths in millimetres are the same on a drawing.
fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 0.005
}

/// A length from millimetres.
fn mm(value: f64) -> Length {
    Length::from_mm(value)
}
