//! The leading dimensions of the boiler: heights from the bottom on the left, diameters below,
//! walls and small things called out on the right.

use reckoning::quantity::Length;

use super::{VerticalBoiler, View};
use crate::layout::{Callout, Measure, Side, about_axis, callouts_right, from_datum};
use crate::lettering::{diameter, figure};
use crate::sheet::at;

impl View {
    pub(super) fn dimensions(&mut self, boiler: &VerticalBoiler) {
        let edges = self.edges(boiler);
        let heights = self.heights(boiler);
        from_datum(&mut self.sheet, Side::Left, -edges, &heights);
        let diameters = self.diameters(boiler);
        about_axis(&mut self.sheet, Side::Below, 0.0, &diameters);
        let callouts = self.callouts(boiler);
        callouts_right(&mut self.sheet, at(edges + 8.0, 0.0), &callouts);
    }

    /// How far the section reaches from the axis, with bushes.
    fn edges(&self, boiler: &VerticalBoiler) -> f64 {
        let r = boiler.barrel.outside / 2.0;
        let bushes = boiler
            .bushes
            .iter()
            .map(|b| self.paper(r - boiler.barrel.wall + b.length) + 3.0);
        bushes.fold(self.paper(r) + 3.0, f64::max)
    }

    fn heights(&self, boiler: &VerticalBoiler) -> Vec<Measure> {
        let r = |outside: Length| -self.paper(outside / 2.0);
        let barrel = r(boiler.barrel.outside);
        let mut heights = vec![
            (
                "height of the firebox",
                boiler.lower_plate.underside,
                r(boiler.lower_plate.outside),
            ),
            ("height of the barrel", boiler.barrel.top, barrel),
        ];
        heights.extend(
            boiler
                .grate
                .map(|g| ("height of the grate", g.top, r(g.diameter))),
        );
        let level = boiler.water_level;
        heights.extend(level.map(|z| ("height of the water level", z, barrel)));
        let stack = boiler.chimney;
        heights.extend(stack.map(|c| ("height of the chimney", c.top, r(c.outside))));
        heights
            .into_iter()
            .map(|(name, z, x)| Measure {
                name: name.to_owned(),
                says: figure(z),
                points: [at(barrel, 0.0), at(x, self.paper(z))],
            })
            .collect()
    }

    fn diameters(&self, boiler: &VerticalBoiler) -> Vec<Measure> {
        let inside = boiler.firebox.outside - boiler.firebox.wall * 2.0;
        let sizes = [
            (
                "inside diameter of the firebox",
                inside,
                self.paper(boiler.firebox.bottom),
            ),
            ("outside diameter of the barrel", boiler.barrel.outside, 0.0),
        ];
        sizes
            .into_iter()
            .map(|(name, size, y)| {
                let r = self.paper(size / 2.0);
                Measure {
                    name: name.to_owned(),
                    says: diameter(size),
                    points: [at(-r, y), at(r, y)],
                }
            })
            .collect()
    }

    /// A call-out whose arrow touches this place, given as distances from axis and bottom.
    fn call(&self, name: impl Into<String>, says: String, x: Length, y: Length) -> Callout {
        Callout {
            name: name.into(),
            says,
            tip: at(self.paper(x), self.paper(y)),
        }
    }

    fn callouts(&self, boiler: &VerticalBoiler) -> Vec<Callout> {
        let mut callouts = self.shell_callouts(boiler);
        callouts.extend(self.plate_callouts(boiler));
        callouts.extend(self.fitting_callouts(boiler));
        callouts
    }

    fn shell_callouts(&self, boiler: &VerticalBoiler) -> Vec<Callout> {
        let (barrel, fire) = (&boiler.barrel, &boiler.firebox);
        let between = (boiler.lower_plate.underside + boiler.upper_plate.underside) / 2.0;
        let inside = fire.outside / 2.0 - fire.wall;
        let low = boiler.lower_plate.underside * 0.8;
        let says = |what: &str, wall: Length| format!("{what}, {} wall", figure(wall));
        let ring = boiler.ring_top - fire.bottom;
        let water = (barrel.outside / 2.0 - barrel.wall + fire.outside / 2.0) / 2.0;
        let high = format!("foundation ring, {} high", figure(ring));
        let half = barrel.outside / 2.0;
        let middle = fire.bottom + ring / 2.0;
        vec![
            self.call(
                "wall of the barrel",
                says("barrel", barrel.wall),
                half,
                between,
            ),
            self.call(
                "wall of the firebox",
                says("firebox", fire.wall),
                inside,
                low,
            ),
            self.call("height of the foundation ring", high, water, middle),
        ]
    }

    fn plate_callouts(&self, boiler: &VerticalBoiler) -> Vec<Callout> {
        let plates = [
            ("upper", &boiler.upper_plate),
            ("lower", &boiler.lower_plate),
        ];
        let mut callouts: Vec<Callout> = plates
            .into_iter()
            .map(|(which, plate)| {
                let says = format!("{which} tube plate, {} thick", figure(plate.thickness));
                let name = format!("thickness of the {which} tube plate");
                // The arrow ends in the flat part, short of the bend.
                let x = plate.outside / 2.0 - plate.thickness - plate.inside_radius;
                self.call(name, says, x, plate.underside + plate.thickness / 2.0)
            })
            .collect();
        let rightmost = boiler
            .tubes
            .iter()
            .max_by(|a, b| a.x.mm().total_cmp(&b.x.mm()));
        if let Some(tube) = rightmost {
            let says = format!(
                "tubes {} × {} wall",
                diameter(tube.outside),
                figure(tube.wall)
            );
            let y = tube.bottom + (tube.top - tube.bottom) * 0.6;
            callouts.push(self.call("tubes", says, tube.x + tube.outside / 2.0, y));
        }
        callouts
    }

    fn fitting_callouts(&self, boiler: &VerticalBoiler) -> Vec<Callout> {
        let hole = boiler.firehole.map(|hole| {
            let says = format!("firehole {}", diameter(hole.opening));
            let edge = hole.height - hole.opening / 2.0;
            self.call(
                "opening of the firehole",
                says,
                boiler.barrel.outside / 2.0,
                edge,
            )
        });
        let nozzle = boiler.nozzle.map(|nozzle| {
            let says = format!("nozzle, bore {}", diameter(nozzle.bore));
            self.call("bore of the nozzle", says, nozzle.bore / 2.0, nozzle.tip)
        });
        let stack = boiler.chimney.map(|stack| {
            let bore = stack.outside - stack.wall * 2.0;
            let says = format!("chimney, bore {}", diameter(bore));
            let y = stack.bottom + (stack.top - stack.bottom) * 0.7;
            self.call("bore of the chimney", says, bore / 2.0, y)
        });
        [hole, nozzle, stack].into_iter().flatten().collect()
    }
}
