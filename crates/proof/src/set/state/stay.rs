//! Plain stays by regulations 202 and 585a.

use super::{IBR, mpa};
use crate::input::{Metal, Stay};
use crate::metal::chosen;
use crate::remedy::at_least;
use crate::rules::STATE_STAY;
use crate::set::Asked;
use crate::sum::{Outcome, Stop, check};
use crate::taken::{bar, file_size, need};
use formulas::vessel::state;
use reckoning::quantity::{INCH, Length, MM2, ONE, Quantity, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin};

/// Constant of copper stays.
const COPPER: f64 = 4700.0;

/// The section of a stay against the plate that hangs on it.
pub(super) fn check_stay(stay: &Stay, asked: &Asked<'_>) -> Finding {
    check(IBR.head(&STATE_STAY, &stay.id), |sum| {
        let served = IBR.serve(sum, asked, &stay.id, stay.metal_temperature.as_ref())?;
        if stay.metal != Metal::Copper || stay.bore.is_some() {
            let what = "a stay that is hollow or not of copper";
            return Err(Stop::NotWorked { what });
        }
        let d = need("the diameter", &stay.id, stay.diameter.as_ref())?;
        let d = file_size(sum, ("D", "least diameter of the stay"), d, Bad::Small)?;
        let field = need("the field that hangs on it", &stay.id, stay.field.as_ref())?;
        let a = sum.know("A", "plate that hangs on the stay", &MM2, field);
        let known = chosen(
            Ratio::from_number(COPPER),
            "4700 for copper, 7100 and 8640 for steel",
            "the stay is of copper",
            Origin::Read,
        );
        let c = sum.know("C", "constant for copper", &ONE, &known);
        let most = sum.card(&state::STAY, &[c, d, a])?;
        let (most, p) = (mpa(sum.value(most)), served.p_mpa);
        let says = format!("holds its plate to {} bar, {} bar asked", bar(most), bar(p));
        let has = Length::from_mm(sum.value(d)).in_unit(&INCH);
        let least = Length::from_unit(has * (p / most).sqrt(), &INCH).mm();
        let remedy = format!("a stay of {} mm", at_least(least));
        Ok(Outcome::compared(most, p, says, remedy))
    })
}
