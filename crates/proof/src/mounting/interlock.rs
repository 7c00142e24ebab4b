//! What puts a gas fire out by itself.

use crate::input::{Fitted, Heating, Mountings};
use crate::rules::GAS_INTERLOCK;
use crate::set::OURS;
use crate::sum::{Answer, Outcome, check};
use crate::taken::need;
use reckoning::Finding;

/// The check of a boiler that gas heats; none of any other.
pub(super) fn checks(mounted: &Mountings) -> Option<Finding> {
    (mounted.heating == Some(Heating::Gas)).then(|| {
        check(OURS.head(&GAS_INTERLOCK, "interlock"), |_| {
            let them = mounted.interlocks;
            let named = [
                (them.flame, "whether the gas is shut where the flame fails", "the flame fails"),
                (them.water, "whether the gas is shut where the water is low", "the water is low"),
                (them.pressure, "whether the gas is turned down at working pressure", "the pressure is reached"),
            ];
            let mut lacks = Vec::new();
            for (fitted, what, when) in named {
                if *need(what, "interlock", fitted.as_ref())? == Fitted::No {
                    lacks.push(when);
                }
            }
            let says = if lacks.is_empty() {
                "the gas is shut or turned down by itself in each case".to_owned()
            } else {
                format!("the gas burns on where {}", lacks.join(", and where "))
            };
            let watched = (!lacks.is_empty()).then(|| {
                "never leave it while it burns, open the windows, and agree with the boiler tester what must stand for it"
                    .to_owned()
            });
            let remedy = GAS_INTERLOCK.remedy.to_owned();
            Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(watched))
        })
    })
}
