//! Girders on a crown: bending, feet, and the tube plate that they press.

use super::OURS;
use super::whole::temperature;
use crate::input::{Feet, Girder, Standing};
use crate::remedy::{at_least, next_stock};
use crate::rules::{GIRDER_BENDING, GIRDER_FOOT, GIRDER_PLATE};
use crate::set::Asked;
use crate::set::served::Served;
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_size, need};
use formulas::vessel::girder as law;
use reckoning::quantity::MM;
use reckoning::size::Bad;
use reckoning::{Finding, Ref};

/// Every check of a girder.
pub(super) fn checks(girder: &Girder, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![
        temperature(&girder.id, girder.metal_temperature.as_ref()),
        bending(girder, asked),
    ];
    if let Feet::OnPlates(standing) = &girder.feet {
        found.push(foot(girder, standing, asked));
        found.push(plate(girder, standing, asked));
    }
    found
}

/// A girder as a proof takes it.
struct Taken {
    served: Served,
    pitch: Ref,
    span: Ref,
    t: Ref,
    f: Ref,
}

fn take(sum: &mut Sum, girder: &Girder, asked: &Asked<'_>) -> Result<Taken, Stop> {
    let id = &girder.id;
    let served = OURS.serve(sum, asked, id, girder.metal_temperature.as_ref())?;
    let f = stress::ours(sum, girder.metal, served.metal, "f")?;
    let pitch = need("the distance of the girders", id, girder.pitch.as_ref())?;
    let span = need("the span", id, girder.span.as_ref())?;
    let webs = need("the thickness", id, girder.thickness.as_ref())?;
    Ok(Taken {
        pitch: sum.know("Y", "distance of the girders", &MM, pitch),
        span: sum.know("L", "span between the feet", &MM, span),
        t: file_size(sum, ("t", "thickness of all webs"), webs, Bad::Small)?,
        served,
        f,
    })
}

fn bending(girder: &Girder, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&GIRDER_BENDING, &girder.id), |sum| {
        let taken = take(sum, girder, asked)?;
        let depth = need("the depth", &girder.id, girder.depth.as_ref())?;
        let d = file_size(sum, ("D", "depth above the crown"), depth, Bad::Small)?;
        let beam = [taken.served.p, taken.pitch, taken.span, taken.t, d];
        let sigma = sum.card(&law::BENDING, &beam)?;
        let least = [taken.served.p, taken.pitch, taken.span, taken.t, taken.f];
        let least = sum.card(&law::DEPTH, &least)?;
        let (sigma, f) = (sum.value(sigma), sum.value(taken.f));
        let says = format!("bent to {sigma:.1} MPa, {f:.1} MPa allowed");
        let remedy = format!(
            "a girder of {} mm depth, or {:.0} % less distance",
            at_least(sum.value(least)),
            (100.0 * (1.0 - f / sigma)).ceil()
        );
        Ok(Outcome::compared(f, sigma, says, remedy))
    })
}

fn foot(girder: &Girder, standing: &Standing, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&GIRDER_FOOT, &girder.id), |sum| {
        let taken = take(sum, girder, asked)?;
        let load = [taken.served.p, taken.pitch, taken.span];
        let load = sum.card(&law::FOOT, &load)?;
        let foot = need("the length of a foot", &girder.id, standing.foot.as_ref())?;
        let a = file_size(sum, ("a", "length of a foot"), foot, Bad::Small)?;
        let sigma = sum.card(&law::BEARING, &[load, a, taken.t])?;
        let (sigma, f) = (sum.value(sigma), sum.value(taken.f));
        let says = format!(
            "a foot presses with {:.0} N, {sigma:.1} MPa, {f:.1} MPa allowed",
            sum.value(load)
        );
        let remedy = format!("a foot of {} mm", at_least(sum.value(a) * sigma / f));
        Ok(Outcome::compared(f, sigma, says, remedy))
    })
}

fn plate(girder: &Girder, standing: &Standing, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&GIRDER_PLATE, &girder.id), |sum| {
        let id = &girder.id;
        let metal = girder.metal_temperature.as_ref();
        let served = OURS.serve(sum, asked, id, metal)?;
        let f = stress::ours(sum, standing.metal, served.metal, "f")?;
        let length = need("the length of the firebox", id, standing.length.as_ref())?;
        let l = sum.know("L", "length of the firebox at the top", &MM, length);
        let pitch = need("the pitch of the tubes", id, standing.pitch.as_ref())?;
        let p = sum.know("p", "level pitch of the tubes", &MM, pitch);
        let hole = need("the hole of a tube", id, standing.hole.as_ref())?;
        let d = file_size(sum, ("d", "hole of a tube"), hole, Bad::Large)?;
        let wall = Wall::of(need("the tube plate", id, standing.plate.as_ref())?);
        let t = wall.file(sum, "t_p", "least thickness of the tube plate")?;
        let sigma = sum.card(&law::PLATE, &[served.p, l, p, d, t])?;
        let (sigma, f) = (sum.value(sigma), sum.value(f));
        let least = wall.mm() * sigma / f;
        wall.hold(sum, "tube plate under", id, least);
        let says = format!("{sigma:.1} MPa between the tubes, {f:.1} MPa allowed");
        let remedy = next_stock("a tube plate", &asked.stock.sheets, least);
        Ok(Outcome::compared(f, sigma, says, remedy))
    })
}
