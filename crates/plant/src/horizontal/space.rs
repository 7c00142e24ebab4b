//! What stands in the water of a horizontal boiler.

use std::f64::consts::FRAC_PI_2;

use plan::section::{Bush, BushSeat, StayRun};

use super::Yard;
use super::cross::Crossing;
use super::frame::Frame;
use super::stick::{Bound, Stick};
use super::water::{Along, Room};
use crate::boiler::rows;
use crate::layout::At;
use crate::water_space::{self, Levels, WaterSpace};

impl Yard<'_> {
    pub(super) fn water(&mut self, frame: &Frame) -> Option<WaterSpace> {
        let level = self.sizes.working.clone()?;
        let crossing = self.crossing.filter(|tubes| tubes.passes(frame))?;
        let mut sticks = tubes(frame, crossing);
        sticks.extend(self.bush_ends(frame));
        let room = Room {
            frame: frame.clone(),
            alongs: self.alongs(frame),
            sticks,
        };
        let levels = Levels {
            level,
            lowest: self.sizes.lowest.clone(),
            crown: frame.crown_known(),
            leg: frame.clear_known(),
            surface: "the barrel at the working level, less what stands through it",
            weakest: crossing.weakest,
        };
        Some(WaterSpace::of(water_space::Room::Lying(room), levels))
    }

    /// Stays from end to end, and the inner ends of bushes in the ends.
    fn alongs(&mut self, frame: &Frame) -> Vec<Along> {
        let plan = self.builder.plan;
        let mut alongs = Vec::new();
        let up = |at: At| frame.axis() + at.x.mm();
        for (_, stay) in rows(&plan.boiler.stays, |s| &s.id) {
            let tied = stay.run.value() == Some(StayRun::PlateToPlate);
            let at = self.builder.place(&stay.radius, &stay.angle, "a stay");
            if let (true, Some(at), Some(diameter)) = (tied, at, stay.diameter.likely()) {
                alongs.push(Along {
                    height: up(at),
                    radius: diameter.value.mm() / 2.0,
                    length: frame.between_ends(),
                    sign: -1.0,
                });
            }
        }
        for (_, bush) in rows(&plan.boiler.bushes, |b| &b.id) {
            if !matches!(
                bush.on.value(),
                Some(BushSeat::FrontEnd | BushSeat::BackEnd)
            ) {
                continue;
            }
            let at = self.builder.place(&bush.radius, &bush.angle, "a bush");
            let (Some(at), Some(reach)) = (at, bush.length_in.likely()) else {
                continue;
            };
            alongs.extend(sizes(bush).map(|(radius, sign)| Along {
                height: up(at),
                radius,
                length: reach.value.mm(),
                sign,
            }));
        }
        alongs
    }

    /// Bushes of the barrel where they reach into the water; their bore holds water again.
    fn bush_ends(&mut self, frame: &Frame) -> Vec<Stick> {
        let plan = self.builder.plan;
        let mut sticks = Vec::new();
        for (_, bush) in rows(&plan.boiler.bushes, |b| &b.id) {
            let reach = bush
                .length_in
                .likely()
                .map_or(0.0, |reach| reach.value.mm());
            if bush.on.value() != Some(BushSeat::Barrel) || reach <= 0.0 {
                continue;
            }
            let from_top = self.builder.angle(&bush.angle, "where a bush stands");
            sticks.extend(sizes(bush).map(|(radius, sign)| Stick {
                height: frame.axis(),
                angle: FRAC_PI_2 - from_top.rad(),
                radius,
                from: Bound::At(frame.barrel - reach),
                to: Bound::Wall {
                    radius: frame.barrel,
                    side: 1.0,
                },
                sign,
            }));
        }
        sticks
    }
}

/// What a bush takes of the water, and its bore gives back.
fn sizes(bush: &Bush) -> impl Iterator<Item = (f64, f64)> {
    let outside = bush.outside.likely().map(|d| (d.value.mm() / 2.0, -1.0));
    let bore = bush.bore.likely().map(|d| (d.value.mm() / 2.0, 1.0));
    outside.into_iter().chain(bore)
}

/// The ends of the cross tubes outside the flue take room, the whole of their bores gives it.
fn tubes(frame: &Frame, crossing: &Crossing) -> Vec<Stick> {
    let wall = |side: f64| Bound::Wall {
        radius: frame.flue,
        side,
    };
    let (low, high) = (Bound::At(-crossing.half), Bound::At(crossing.half));
    let pieces = [
        (crossing.outside, low, wall(-1.0), -1.0),
        (crossing.outside, wall(1.0), high, -1.0),
        (crossing.bore, low, high, 1.0),
    ];
    let tubes = crossing.tubes.iter();
    tubes
        .flat_map(|tube| {
            pieces.map(|(radius, from, to, sign)| Stick {
                height: frame.flue_axis(),
                angle: tube.angle,
                radius,
                from,
                to,
                sign,
            })
        })
        .collect()
}
