//! The leading dimensions of the boiler: heights from the bottom on the left, diameters below,
//! walls and small things called out on the right.

use reckoning::quantity::Length;

use super::{Hand, VerticalBoiler, View};
use crate::layout::{Callout, Measure, Side, about_axis, callouts_right, from_datum};
use crate::lettering::{DIAMETER, figure};
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
        let inner = boiler.barrel.outside / 2.0 - boiler.barrel.wall;
        let sides = [
            boiler.firebox.outside,
            boiler.upper_plate.outside,
            boiler.lower_plate.outside,
        ];
        let bushes = boiler
            .bushes
            .iter()
            .map(|b| inner - b.inward + b.part.span().to);
        let reach = sides.into_iter().map(|d| d / 2.0).chain(bushes);
        reach.fold(self.paper(boiler.barrel.outside / 2.0), |far, x| {
            far.max(self.paper(x))
        }) + 3.0
    }

    /// Heights above the datum, each with the distance from the axis at which it is taken.
    fn heights(&self, boiler: &VerticalBoiler) -> Vec<Measure> {
        let barrel = boiler.barrel.outside / 2.0;
        let inner = barrel - boiler.barrel.wall;
        let name = |name: &str| name.to_owned();
        let fire = boiler.firebox;
        let mut heights = vec![
            (name("height of the firebox"), fire.top, fire.outside / 2.0),
            (name("height of the barrel"), boiler.barrel.top, barrel),
        ];
        let grate = boiler.grate;
        heights.extend(grate.map(|g| (name("height of the grate"), g.top, g.diameter / 2.0)));
        let level = boiler.water_level;
        heights.extend(level.map(|z| (name("height of the water level"), z, barrel)));
        let stack = boiler.chimney;
        heights.extend(stack.map(|c| (name("height of the chimney"), c.top, c.mouth / 2.0)));
        let left = boiler.bushes.iter().filter(|b| b.hand == Hand::Left);
        heights.extend(left.map(|b| {
            let end = inner - b.inward + b.part.span().to;
            (format!("height of {}", b.id), b.height, end)
        }));
        heights
            .into_iter()
            .map(|(name, z, x)| Measure {
                says: self.height(boiler, &name, z),
                name,
                points: [
                    at(-self.paper(barrel), 0.0),
                    at(-self.paper(x), self.paper(z)),
                ],
            })
            .collect()
    }

    /// The length of the barrel is its height where it stands on the datum.
    fn height(&self, boiler: &VerticalBoiler, name: &str, z: Length) -> String {
        let on_datum = boiler.barrel.bottom.mm().abs() < 0.005;
        match name {
            "height of the barrel" if on_datum => says(boiler, "length of the barrel", z),
            _ => says(boiler, name, z),
        }
    }

    fn diameters(&self, boiler: &VerticalBoiler) -> Vec<Measure> {
        let both = [
            (
                boiler.firebox,
                "inside diameter of the firebox",
                "outside diameter of the firebox",
            ),
            (
                boiler.barrel,
                "inside diameter of the barrel",
                "outside diameter of the barrel",
            ),
        ];
        both.into_iter()
            .map(|(shell, inside, outside)| {
                // The diameter that the maker gives; the other follows from the wall.
                let by_bore =
                    boiler.typed.contains_key(inside) && !boiler.typed.contains_key(outside);
                let (name, size) = if by_bore {
                    (inside, shell.outside - shell.wall * 2.0)
                } else {
                    (outside, shell.outside)
                };
                let (r, y) = (self.paper(size / 2.0), self.paper(shell.bottom));
                Measure {
                    name: name.to_owned(),
                    says: across(boiler, name, size),
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
        let wall = |what: &str, name: &str, wall: Length| {
            format!("{what}, {} wall", says(boiler, name, wall))
        };
        let mut of_barrel = wall("barrel", "wall of the barrel", barrel.wall);
        if barrel.bottom.mm().abs() >= 0.005 {
            let long = barrel.top - barrel.bottom;
            of_barrel += &format!(", {} long", says(boiler, "length of the barrel", long));
        }
        let ring = boiler.ring_top - fire.bottom;
        let water = (barrel.outside / 2.0 - barrel.wall + fire.outside / 2.0) / 2.0;
        let high = says(boiler, "height of the foundation ring", ring);
        let half = barrel.outside / 2.0;
        vec![
            self.call("wall of the barrel", of_barrel, half, between),
            self.call(
                "wall of the firebox",
                wall("firebox", "wall of the firebox", fire.wall),
                inside,
                boiler.lower_plate.underside * 0.8,
            ),
            self.call(
                "height of the foundation ring",
                format!("foundation ring, {high} high"),
                water,
                fire.bottom + ring / 2.0,
            ),
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
                let name = format!("thickness of the {which} tube plate");
                let thick = says(boiler, &name, plate.thickness);
                let said = format!("{which} tube plate, {thick} thick");
                // The arrow ends in the flat part, short of the bend.
                let bend = plate
                    .flange
                    .map_or(Length::from_mm(0.0), |f| f.inside_radius);
                let x = plate.outside / 2.0 - plate.thickness - bend;
                self.call(name, said, x, plate.underside + plate.thickness / 2.0)
            })
            .collect();
        let rightmost = boiler
            .tubes
            .iter()
            .max_by(|a, b| a.x.mm().total_cmp(&b.x.mm()));
        if let Some(tube) = rightmost {
            let over = across(boiler, "outside diameter of a tube", tube.outside);
            let wall = says(boiler, "wall of a tube", tube.wall);
            let said = format!("tubes {over} × {wall} wall");
            let y = tube.bottom + (tube.top - tube.bottom) * 0.6;
            callouts.push(self.call("tubes", said, tube.x + tube.outside / 2.0, y));
        }
        callouts
    }

    fn fitting_callouts(&self, boiler: &VerticalBoiler) -> Vec<Callout> {
        let half = boiler.barrel.outside / 2.0;
        let hole = boiler.firehole.map(|hole| {
            let name = "opening of the firehole";
            let open = across(boiler, name, hole.opening);
            let up = says(boiler, "height of the firehole", hole.height);
            let edge = hole.height - hole.opening / 2.0;
            let said = format!("firehole {open}, its axis {up} up");
            self.call(name, said, half, edge)
        });
        let nozzle = boiler.nozzle.map(|nozzle| {
            let name = "bore of the nozzle";
            let said = format!("nozzle, bore {}", across(boiler, name, nozzle.bore));
            self.call(name, said, nozzle.bore / 2.0, nozzle.tip)
        });
        let stack = boiler.chimney.map(|stack| {
            let name = "bore of the chimney";
            let said = format!("chimney, choke {}", across(boiler, name, stack.choke));
            let y = stack.bottom + (stack.taper - stack.bottom) * 0.3;
            self.call(name, said, stack.choke / 2.0, y)
        });
        let right = boiler.bushes.iter().filter(|b| b.hand == Hand::Right);
        let bushes = right.map(|bush| {
            let end = half - boiler.barrel.wall - bush.inward + bush.part.span().to;
            let name = format!("height of {}", bush.id);
            let said = format!(
                "{}, its axis {} up",
                bush.id,
                says(boiler, &name, bush.height)
            );
            let low = bush.height - bush.hole / 2.0;
            self.call(name, said, end, low)
        });
        [hole, nozzle, stack]
            .into_iter()
            .flatten()
            .chain(bushes)
            .collect()
    }
}

/// What the maker wrote for a dimension, else its length in millimetres.
fn says(boiler: &VerticalBoiler, name: &str, length: Length) -> String {
    let typed = boiler.typed.get(name).cloned();
    typed.unwrap_or_else(|| figure(length))
}

/// The same for a diameter, with its sign.
fn across(boiler: &VerticalBoiler, name: &str, length: Length) -> String {
    format!("{DIAMETER}{}", says(boiler, name, length))
}
