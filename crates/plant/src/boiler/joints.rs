//! Brazed joints that every form of boiler has.

use std::f64::consts::PI;

use reckoning::quantity::Length;
use reckoning::{Known, Origin};

use super::bushes::{Walls, seat};
use super::parts::rows;
use super::{Builder, length};
use crate::joint::{Joint, Seen};

pub(crate) fn seen(entry: Option<plan::section::Joint>) -> Option<Seen> {
    entry.map(|joint| match joint {
        plan::section::Joint::SeenBothSides => Seen::BothSides,
        plan::section::Joint::SeenOneSide => Seen::OneSide,
    })
}

/// Once round at a radius in millimetres.
pub(crate) fn round(radius: f64, weakest: Origin) -> Known<Length> {
    length(2.0 * PI * radius, "once round", weakest)
}

impl Builder<'_> {
    pub(crate) fn bush_joints(&mut self, walls: &Walls) {
        let plan = self.plan;
        for (id, bush) in rows(&plan.boiler.bushes, |b| &b.id) {
            let (Some(part), Some(outside)) = (seat(bush), bush.outside.likely()) else {
                continue;
            };
            let wall = walls
                .iter()
                .find(|(seat, _)| bush.on.value() == Some(*seat));
            let Some((_, lap)) = wall else { continue };
            let path = length(
                PI * outside.value.mm(),
                "once round the bush",
                outside.given.origin(),
            );
            self.joint(
                (&format!("bush.{id}"), part),
                lap.clone(),
                path,
                seen(bush.joint.value()),
            );
        }
    }

    pub(crate) fn joint(
        &mut self,
        (first, second): (&str, &str),
        lap: Option<Known<Length>>,
        path: Known<Length>,
        seen: Option<Seen>,
    ) {
        self.built.joints.push(Joint {
            id: format!("{first}/{second}"),
            first: first.to_owned(),
            second: second.to_owned(),
            lap,
            path,
            seen,
        });
    }
}
