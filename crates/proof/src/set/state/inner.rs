//! Cross tubes by regulation 227, which leaves nothing to a tube of model size.

use super::{IBR, mpa};
use crate::input::{CrossTubes, Metal};
use crate::rules::STATE_CROSS_TUBES;
use crate::set::Asked;
use crate::sum::{Outcome, check};
use crate::taken::{Wall, bar, file_size, need};
use formulas::vessel::state_crown;
use reckoning::Finding;
use reckoning::size::Bad;

/// The wall of cross tubes.
pub(super) fn cross_tubes(tubes: &CrossTubes, asked: &Asked<'_>) -> Finding {
    let id = &tubes.id;
    check(IBR.head(&STATE_CROSS_TUBES, id), |sum| {
        let served = IBR.serve(sum, asked, id, tubes.metal_temperature.as_ref())?;
        if tubes.metal != Metal::Steel {
            sum.outside(format!(
                "regulation 227 is of steel, and this is {}",
                tubes.metal.words()
            ));
        }
        let wall = Wall::of(need("the wall", id, tubes.wall.as_ref())?);
        let t = wall.file(sum, "t", "least wall of the tubes")?;
        let outside = need("the outside", id, tubes.outside.as_ref())?;
        let d = file_size(sum, ("D", "outside of the tubes"), outside, Bad::Large)?;
        let most = sum.card(&state_crown::CROSS_TUBE, &[t, d])?;
        wall.hold_as_used(sum, "wall", id);
        let (most, p) = (mpa(sum.value(most)), served.p_mpa);
        let says = format!("allowed {} bar, {} bar asked", bar(most), bar(p));
        Ok(Outcome::compared(
            most,
            p,
            says,
            STATE_CROSS_TUBES.remedy.to_owned(),
        ))
    })
}
