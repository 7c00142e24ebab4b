//! Water and steam in a vertical boiler.

use std::f64::consts::PI;

use plan::section::{Bush, BushSeat, StayRun};
use reckoning::quantity::{Angle, Length};

use super::frame::Frame;
use super::nest::Nest;
use super::sizes::Sizes;
use super::water::{Radial, Room, Upright};
use crate::boiler::{Builder, rows};
use crate::part::{CrossDepth, CrossHole, Point};
use crate::water_space::{self, Levels, WaterSpace};

impl Builder<'_> {
    pub(super) fn water(
        &mut self,
        sizes: &Sizes,
        frame: &Frame,
        nest: &Nest,
    ) -> Option<WaterSpace> {
        let level = sizes.working.clone()?;
        let room = self.room(sizes, frame, nest);
        let tubes = nest.outside.given.origin();
        let levels = Levels {
            level,
            lowest: sizes.lowest.clone(),
            crown: frame.crown_known(),
            leg: frame.leg_known(),
            surface: "the barrel less the tubes at the working level",
            weakest: frame.weakest.max(tubes),
        };
        Some(WaterSpace::of(water_space::Room::Upright(room), levels))
    }

    fn room(&mut self, sizes: &Sizes, frame: &Frame, nest: &Nest) -> Room {
        let mut radials = self.radials(frame, sizes);
        radials.extend(self.bush_ends(frame));
        Room {
            frame: frame.clone(),
            uprights: self.uprights(frame, nest),
            radials,
        }
    }

    fn uprights(&self, frame: &Frame, nest: &Nest) -> Vec<Upright> {
        let (low, high) = (frame.lower.high(), frame.upper.low);
        let tubes = u32::try_from(nest.tubes.len()).unwrap_or(u32::MAX);
        let mut uprights = vec![Upright {
            count: f64::from(tubes),
            area: disc(nest.outside.value),
            low,
            high,
        }];
        let stays = self.plan.boiler.stays.iter();
        uprights.extend(
            stays
                .filter(|stay| stay.run.value() == Some(StayRun::PlateToPlate))
                .filter_map(|stay| stay.diameter.likely())
                .map(|diameter| Upright {
                    count: 1.0,
                    area: disc(diameter.value),
                    low,
                    high,
                }),
        );
        let bushes = self.plan.boiler.bushes.iter();
        uprights.extend(bushes.filter_map(|bush| upright_bush(bush, (low, high))));
        uprights
    }

    /// What crosses the water leg.
    fn radials(&mut self, frame: &Frame, sizes: &Sizes) -> Vec<Radial> {
        let across = |z: f64, azimuth: Angle, diameter: Length| Radial {
            hole: CrossHole {
                z: Length::from_mm(z),
                azimuth,
                offset: Length::from_mm(0.0),
                diameter,
                depth: CrossDepth::NearWall,
            },
            sign: 1.0,
            inside: frame.firebox,
        };
        let mut radials = Vec::new();
        if let (Some(hole), Some(height)) = (&sizes.firehole, &sizes.firehole_height) {
            radials.push(across(
                height.value.mm(),
                Angle::from_rad(0.0),
                hole.outside.value,
            ));
        }
        let plan = self.plan;
        for (_, stay) in rows(&plan.boiler.stays, |s| &s.id) {
            let across_leg = stay.run.value() == Some(StayRun::FireboxToBarrel);
            if let (true, Some(height), Some(d)) =
                (across_leg, stay.height.value(), stay.diameter.likely())
            {
                radials.push(across(
                    height.mm(),
                    self.angle(&stay.angle, "where a stay stands"),
                    d.value,
                ));
            }
        }
        radials
    }

    /// Bushes of the barrel where they reach into the water; their bore holds water again.
    fn bush_ends(&mut self, frame: &Frame) -> Vec<Radial> {
        let plan = self.plan;
        let mut radials = Vec::new();
        for (_, bush) in rows(&plan.boiler.bushes, |b| &b.id) {
            let on_barrel = bush.on.value() == Some(BushSeat::Barrel);
            let (true, Some(height), Some(reach)) =
                (on_barrel, bush.height.value(), bush.length_in.likely())
            else {
                continue;
            };
            let azimuth = self.angle(&bush.angle, "where a bush stands");
            let end = Length::from_mm(frame.barrel) - reach.value;
            let sizes = [(bush.outside.likely(), 1.0), (bush.bore.likely(), -1.0)];
            for (diameter, sign) in sizes {
                let Some(diameter) = diameter.filter(|_| reach.value.mm() > 0.0) else {
                    continue;
                };
                radials.push(Radial {
                    hole: CrossHole {
                        z: height,
                        azimuth,
                        offset: Length::from_mm(0.0),
                        diameter: diameter.value,
                        depth: CrossDepth::Blind {
                            bottom: end,
                            point: Point::Flat,
                        },
                    },
                    sign,
                    inside: 0.0,
                });
            }
        }
        radials
    }
}

fn disc(diameter: Length) -> f64 {
    PI / 4.0 * diameter.mm() * diameter.mm()
}

/// The end of a bush in a tube plate, where it stands in water or steam; its bore holds it again.
fn upright_bush(bush: &Bush, (low, high): (f64, f64)) -> Option<Upright> {
    let reach = bush.length_in.likely()?.value.mm();
    let (low, high) = match bush.on.value()? {
        BushSeat::UpperTubePlate => (high - reach, high),
        BushSeat::LowerTubePlate => (low, low + reach),
        BushSeat::Barrel | BushSeat::FrontEnd | BushSeat::BackEnd => return None,
    };
    let bore = bush.bore.likely().map_or(0.0, |bore| disc(bore.value));
    Some(Upright {
        count: 1.0,
        area: disc(bush.outside.likely()?.value) - bore,
        low,
        high,
    })
}
