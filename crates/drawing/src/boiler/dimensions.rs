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

    fn callouts(&self, boiler: &VerticalBoiler) -> Vec<Callout> {
        let p = |x: Length, y: Length| at(self.paper(x), self.paper(y));
        let mut callouts = Vec::new();
        let mut call = |name: &str, says: String, tip| {
            callouts.push(Callout {
                name: name.to_owned(),
                says,
                tip,
            });
        };
        let wall = |c: &super::Cylinder| format!("{} wall", figure(c.wall));
        let barrel = &boiler.barrel;
        let between = (boiler.lower_plate.underside + boiler.upper_plate.underside) / 2.0;
        call(
            "wall of the barrel",
            format!("barrel, {}", wall(barrel)),
            p(barrel.outside / 2.0, between),
        );
        let fire = &boiler.firebox;
        let inside = fire.outside / 2.0 - fire.wall;
        let low = boiler.lower_plate.underside * 0.8;
        call(
            "wall of the firebox",
            format!("firebox, {}", wall(fire)),
            p(inside, low),
        );
        for (name, plate) in [
            ("upper", &boiler.upper_plate),
            ("lower", &boiler.lower_plate),
        ] {
            let says = format!("{name} tube plate, {} thick", figure(plate.thickness));
            let face = plate.underside + plate.thickness / 2.0;
            let name = format!("thickness of the {name} tube plate");
            call(
                &name,
                says,
                p(
                    plate.outside / 2.0 - plate.thickness - plate.inside_radius,
                    face,
                ),
            );
        }
        if let Some(tube) = boiler
            .tubes
            .iter()
            .max_by(|a, b| a.x.mm().total_cmp(&b.x.mm()))
        {
            let says = format!(
                "tubes {} × {} wall",
                diameter(tube.outside),
                figure(tube.wall)
            );
            let middle = tube.bottom + (tube.top - tube.bottom) * 0.6;
            call("tubes", says, p(tube.x + tube.outside / 2.0, middle));
        }
        let ring = boiler.ring_top - fire.bottom;
        let water = (barrel.outside / 2.0 - barrel.wall + fire.outside / 2.0) / 2.0;
        let says = format!("foundation ring, {} high", figure(ring));
        call(
            "height of the foundation ring",
            says,
            p(water, fire.bottom + ring / 2.0),
        );
        if let Some(hole) = boiler.firehole {
            let says = format!("firehole {}", diameter(hole.opening));
            let edge = hole.height - hole.opening / 2.0;
            call(
                "opening of the firehole",
                says,
                p(barrel.outside / 2.0, edge),
            );
        }
        if let Some(nozzle) = boiler.nozzle {
            let says = format!("nozzle, bore {}", diameter(nozzle.bore));
            call("bore of the nozzle", says, p(nozzle.bore / 2.0, nozzle.tip));
        }
        if let Some(stack) = &boiler.chimney {
            let bore = stack.outside - stack.wall * 2.0;
            let says = format!("chimney, bore {}", diameter(bore));
            let middle = stack.bottom + (stack.top - stack.bottom) * 0.7;
            call("bore of the chimney", says, p(bore / 2.0, middle));
        }
        callouts
    }
}
