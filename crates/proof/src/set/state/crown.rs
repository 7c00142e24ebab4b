//! Crown girders by regulation 229, and the tube plate under them by regulation 582; both of steel.

use super::{IBR, file_tensile, mpa};
use crate::input::{Feet, Girder, Metal, Standing};
use crate::metal::chosen;
use crate::rules::{STATE_GIRDER, STATE_UNDER_GIRDERS};
use crate::set::Asked;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{bar, file_size, need};
use formulas::vessel::state_crown;
use reckoning::quantity::{MM, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin};

/// Constant of girders of steel plate.
const STEEL_PLATE: f64 = 22.0;

/// Every check of girders.
pub(super) fn checks(girder: &Girder, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![beam(girder, asked)];
    if let Feet::OnPlates(standing) = &girder.feet {
        found.push(plate(girder, standing, asked));
    }
    found
}

/// Notes that a regulation is of steel.
fn keep_steel(sum: &mut Sum, regulation: &str, metal: Metal) {
    if metal != Metal::Steel {
        sum.outside(format!(
            "{regulation} is of steel, and this is {}",
            metal.words()
        ));
    }
}

fn beam(girder: &Girder, asked: &Asked<'_>) -> Finding {
    let id = &girder.id;
    check(IBR.head(&STATE_GIRDER, id), |sum| {
        if matches!(girder.feet, Feet::Slung) {
            let what = "a girder that hangs";
            return Err(Stop::NotWorked { what });
        }
        let served = IBR.serve(sum, asked, id, girder.metal_temperature.as_ref())?;
        keep_steel(sum, "regulation 229", girder.metal);
        let s = file_tensile(sum, girder.metal)?;
        let t = need("the thickness", id, girder.thickness.as_ref())?;
        let t = file_size(sum, ("t", "thickness of all webs"), t, Bad::Small)?;
        let depth = need("the depth", id, girder.depth.as_ref())?;
        let depth = file_size(sum, ("D", "depth of the girder"), depth, Bad::Small)?;
        let span = need("the span", id, girder.span.as_ref())?;
        let l = sum.know("L", "span", &MM, span);
        let pitch = need("the distance of neighbours", id, girder.pitch.as_ref())?;
        let y = sum.know("Y", "distance of neighbouring girders", &MM, pitch);
        let known = chosen(
            Ratio::from_number(STEEL_PLATE),
            "22 for steel plate, 19 for cast steel",
            "of plate",
            Origin::Read,
        );
        let c = sum.know("C", "constant", &ONE, &known);
        let most = sum.card(&state_crown::GIRDER, &[c, s, t, depth, l, y])?;
        let (most, p) = (mpa(sum.value(most)), served.p_mpa);
        let says = format!("carries {} bar, {} bar asked", bar(most), bar(p));
        Ok(Outcome::compared(
            most,
            p,
            says,
            STATE_GIRDER.remedy.to_owned(),
        ))
    })
}

fn plate(girder: &Girder, standing: &Standing, asked: &Asked<'_>) -> Finding {
    let id = &girder.id;
    check(IBR.head(&STATE_UNDER_GIRDERS, id), |sum| {
        let served = IBR.serve(sum, asked, id, girder.metal_temperature.as_ref())?;
        keep_steel(sum, "regulation 582", standing.metal);
        let t = need("the tube plate under it", id, standing.plate.as_ref())?;
        let t = file_size(sum, ("t", "tube plate under the girders"), t, Bad::Small)?;
        let pitch = need("the level pitch of the tubes", id, standing.pitch.as_ref())?;
        let pitch = sum.know("p", "level pitch of the tubes", &MM, pitch);
        let hole = need("the holes of the tubes", id, standing.hole.as_ref())?;
        let d = file_size(sum, ("d", "hole of the tubes"), hole, Bad::Large)?;
        let length = need("the length of the firebox", id, standing.length.as_ref())?;
        let l = sum.know("L", "length of the firebox at the top", &MM, length);
        let most = sum.card(&state_crown::UNDER_GIRDERS, &[t, pitch, d, l])?;
        let (most, p) = (mpa(sum.value(most)), served.p_mpa);
        let says = format!(
            "the plate under it bears {} bar, {} bar asked",
            bar(most),
            bar(p)
        );
        let remedy = STATE_UNDER_GIRDERS.remedy.to_owned();
        Ok(Outcome::compared(most, p, says, remedy))
    })
}
