//! Plain copper furnaces by regulation 220.

use super::{IBR, mpa};
use crate::input::{Exposure, Flue, Metal};
use crate::metal::chosen;
use crate::rules::{STATE_FURNACE, STATE_NOT_WORKED};
use crate::set::{Asked, unworked};
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::bar;
use formulas::vessel::furnace;
use reckoning::quantity::{ONE, Ratio};
use reckoning::{Finding, Origin, Ref};

/// Constants of the two forms for copper with double straps.
const FIRST: f64 = 725.0;
const SECOND: f64 = 25.0;

/// Every check of a tube.
pub(super) fn checks(flue: &Flue, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![match flue.exposure {
        Exposure::FlameSwept => furnace_of(flue, asked),
        Exposure::Gas => unworked::one(&IBR, &STATE_NOT_WORKED, &flue.id, "a smoke tube"),
    }];
    let what = "an opening in a furnace";
    let openings = &flue.openings;
    found.extend(unworked::openings(&IBR, &STATE_NOT_WORKED, openings, what));
    found
}

fn constant(sum: &mut Sum, symbol: &str, value: f64) -> Ref {
    let known = chosen(
        Ratio::from_number(value),
        "725 and 25 for copper with double straps, 650 and 22.5 lapped",
        "a drawn or brazed tube has no lap of rivets",
        Origin::Read,
    );
    sum.know(symbol, "constant for copper", &ONE, &known)
}

fn furnace_of(flue: &Flue, asked: &Asked<'_>) -> Finding {
    check(IBR.head(&STATE_FURNACE, &flue.id), |sum| {
        let taken = IBR.take_tube(sum, flue, asked)?;
        if flue.metal != Metal::Copper {
            let what = "a furnace that is not of copper";
            return Err(Stop::NotWorked { what });
        }
        let c = constant(sum, "C", FIRST);
        let c_1 = constant(sum, "C_1", SECOND);
        let size = [taken.t, taken.d_o, taken.l];
        let [t, d, l] = size;
        let first = sum.card(&furnace::IBR_SHORT, &[c, t, d, l])?;
        let second = sum.card(&furnace::IBR_LONG, &[c_1, t, d, l])?;
        taken.wall.hold_as_used(sum, "wall", &flue.id);
        let (most, p) = (
            mpa(sum.value(first).min(sum.value(second))),
            taken.served.p_mpa,
        );
        let says = format!(
            "allowed {} bar as a furnace, {} bar asked",
            bar(most),
            bar(p)
        );
        Ok(Outcome::compared(
            most,
            p,
            says,
            STATE_FURNACE.remedy.to_owned(),
        ))
    })
}
