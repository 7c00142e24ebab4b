//! Holes in the walls and plates of a vertical boiler.

use plan::Entry;
use plan::section::{BushSeat, StayRun};
use reckoning::quantity::{Angle, Length};

use super::Builder;
use super::bushes::seat;
use super::nest::Nest;
use super::parts::rows;
use super::sizes::Sizes;
use crate::layout::At;
use crate::part::{Hole, ShellHole};

impl Builder<'_> {
    /// Heights of holes are measured from the lower end of their own shell.
    pub(super) fn barrel_holes(&mut self, sizes: &Sizes) -> Vec<ShellHole> {
        let up = sizes.ring_set_in.value;
        let mut holes = self.leg_holes(sizes, up);
        for (id, bush) in rows(&self.plan.boiler.bushes, |b| &b.id) {
            if bush.on.value() != Some(BushSeat::Barrel) {
                continue;
            }
            let height = self.reading.number(&bush.height, "a bush");
            let outside = self.reading.size(&bush.outside, "a bush");
            if let (Some(height), Some(outside)) = (height, outside) {
                holes.push(ShellHole {
                    id: format!("bush.{id}"),
                    z: height.value + up,
                    azimuth: self.angle(&bush.angle, "where a bush stands"),
                    diameter: outside.value,
                });
            }
        }
        holes
    }

    pub(super) fn firebox_holes(&mut self, sizes: &Sizes) -> Vec<ShellHole> {
        self.leg_holes(sizes, Length::from_mm(0.0))
    }

    /// Holes through both walls of the water leg: firehole and stays.
    fn leg_holes(&mut self, sizes: &Sizes, up: Length) -> Vec<ShellHole> {
        let mut holes = Vec::new();
        if let (Some(round), Some(height)) = (&sizes.firehole, &sizes.firehole_height) {
            holes.push(ShellHole {
                id: "firehole".to_owned(),
                z: height.value + up,
                azimuth: Angle::from_rad(0.0),
                diameter: round.outside.value,
            });
        }
        for (id, stay) in rows(&self.plan.boiler.stays, |s| &s.id) {
            if stay.run.value() != Some(StayRun::FireboxToBarrel) {
                continue;
            }
            let height = self.reading.number(&stay.height, "a stay");
            let diameter = self.reading.size(&stay.diameter, "a stay");
            if let (Some(height), Some(diameter)) = (height, diameter) {
                holes.push(ShellHole {
                    id: format!("stay.{id}"),
                    z: height.value + up,
                    azimuth: self.angle(&stay.angle, "where a stay stands"),
                    diameter: diameter.value,
                });
            }
        }
        holes
    }

    pub(super) fn plate_holes(&mut self, plate: &str, nest: Option<&Nest>) -> Vec<Hole> {
        let hole = |id: String, at: At, diameter: Length| Hole {
            id,
            x: at.x,
            y: at.y,
            diameter,
        };
        let mut holes: Vec<Hole> = nest
            .iter()
            .flat_map(|n| {
                n.tubes
                    .iter()
                    .zip(1..)
                    .map(move |(at, i)| hole(format!("tube.{i}"), *at, n.hole.value))
            })
            .collect();
        for (id, at, diameter) in self.uprights_through(plate) {
            holes.push(hole(id, at, diameter));
        }
        holes
    }

    /// Stays and bushes that pass a tube plate: id, place, diameter of the hole.
    fn uprights_through(&mut self, plate: &str) -> Vec<(String, At, Length)> {
        let mut found = Vec::new();
        for (id, stay) in rows(&self.plan.boiler.stays, |s| &s.id) {
            if stay.run.value() == Some(StayRun::PlateToPlate) {
                let at = self.place(&stay.radius, &stay.angle, "a stay");
                let diameter = self.reading.size(&stay.diameter, "a stay");
                found.extend(
                    at.zip(diameter)
                        .map(|(at, d)| (format!("stay.{id}"), at, d.value)),
                );
            }
        }
        for (id, bush) in rows(&self.plan.boiler.bushes, |b| &b.id) {
            if seat(bush) == Some(plate) {
                let at = self.place(&bush.radius, &bush.angle, "a bush");
                let outside = self.reading.size(&bush.outside, "a bush");
                found.extend(
                    at.zip(outside)
                        .map(|(at, d)| (format!("bush.{id}"), at, d.value)),
                );
            }
        }
        found
    }

    fn place(
        &mut self,
        radius: &Entry<Length>,
        at: &Entry<Angle>,
        wanted_for: &'static str,
    ) -> Option<At> {
        let radius = self.reading.number(radius, wanted_for)?.value;
        Some(At::polar(radius, self.angle(at, wanted_for)))
    }

    /// An angle clockwise from the firehole. One that is not given is noted as a gap, and the
    /// part is set at the firehole.
    pub(super) fn angle(&mut self, entry: &Entry<Angle>, wanted_for: &'static str) -> Angle {
        let known = self.reading.number(entry, wanted_for);
        known.map_or(Angle::from_rad(0.0), |k| k.value)
    }
}
