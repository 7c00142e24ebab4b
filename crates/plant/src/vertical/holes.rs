//! Holes in the walls and plates of a vertical boiler.

use plan::section::{BushSeat, StayRun};
use reckoning::quantity::{Angle, Length};

use super::nest::Nest;
use super::sizes::Sizes;
use crate::boiler::{Builder, hole, rows};
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
        let mut holes: Vec<Hole> = nest
            .iter()
            .flat_map(|n| {
                n.tubes
                    .iter()
                    .zip(1..)
                    .map(move |(at, i)| hole(format!("tube.{i}"), *at, n.hole.value))
            })
            .collect();
        holes.extend(self.holes_through(plate));
        holes
    }
}
