//! Stays that are brazed at both ends: metal, rod, joint, and the strain across a leg.

use super::OURS;
use super::braze::{SEEN, file_allowed};
use super::whole::temperature;
use crate::input::{Metal, Stay, StayRun};
use crate::metal::{FIREBOX_GROWTH_RISE, TUBE_GROWTH_RISE, chosen, expansion, modulus};
use crate::remedy::at_least;
use crate::rules::{STAY_GROWTH, STAY_JOINT, STAY_METAL, STAY_ROD, STAY_STRAIN};
use crate::set::Asked;
use crate::stress;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_size, need, worse_rise};
use formulas::vessel::{stay as law, stay_rod, tie};
use reckoning::quantity::{KELVIN_RISE, Length, MM, MM2, MPA, ONE, PER_K, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin, Ref};
use std::f64::consts::PI;

/// Strain above which a stay wears with every raising of steam.
const WEARS_ABOVE: f64 = 0.002;

/// Every check of a stay.
pub(super) fn checks(stay: &Stay, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![
        metal(stay),
        temperature(&stay.id, stay.metal_temperature.as_ref()),
        rod(stay, asked),
        joint(stay, asked),
    ];
    match stay.run {
        StayRun::AcrossLeg => found.push(strain(stay)),
        StayRun::EndToEnd => found.push(growth(stay, asked)),
        StayRun::PlateToPlate => {}
    }
    found
}

fn metal(stay: &Stay) -> Finding {
    check(OURS.head(&STAY_METAL, &stay.id), |_| {
        let answer = match stay.metal {
            Metal::Copper | Metal::PhosphorBronze | Metal::Gunmetal => Answer::Holds,
            Metal::Brass | Metal::Steel | Metal::Stainless | Metal::StainlessLow => Answer::Fails,
            Metal::Unlisted => {
                return Err(Stop::Missing {
                    what: "a listed metal",
                    part: stay.id.clone(),
                });
            }
        };
        let says = format!("stay of {}", stay.metal.words());
        Ok(Outcome::plain(answer, says, STAY_METAL.remedy.to_owned()))
    })
}

/// Files the load of a stay; gives its line, its diameter's and the design stress's.
fn file_load(sum: &mut Sum, stay: &Stay, asked: &Asked<'_>) -> Result<(Ref, Ref, Ref), Stop> {
    let metal = stay.metal_temperature.as_ref();
    let served = OURS.serve(sum, asked, &stay.id, metal)?;
    let f = stress::ours(sum, stay.metal, served.metal, "f")?;
    let d = need("the diameter", &stay.id, stay.diameter.as_ref())?;
    let d = file_size(sum, ("d", "diameter of the stay"), d, Bad::Small)?;
    let field = need("the field that hangs on it", &stay.id, stay.field.as_ref())?;
    let a = sum.know("A", "plate that hangs on the stay", &MM2, field);
    Ok((sum.card(&stay_rod::LOAD, &[served.p, a, d])?, d, f))
}

/// Files the bore of a stay, none where it is solid.
fn file_bore(sum: &mut Sum, stay: &Stay) -> Result<Ref, Stop> {
    if let Some(bore) = &stay.bore {
        return file_size(sum, ("b", "bore of the stay"), bore, Bad::Large);
    }
    let none = chosen(
        Length::from_mm(0.0),
        "solid or hollow",
        "no bore is given: it is solid",
        Origin::Read,
    );
    Ok(sum.know("b", "bore of the stay", &MM, &none))
}

fn rod(stay: &Stay, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&STAY_ROD, &stay.id), |sum| {
        let (load, d, f) = file_load(sum, stay, asked)?;
        let bore = file_bore(sum, stay)?;
        let has = sum.card(&stay_rod::SECTION, &[d, bore])?;
        sum.card(&stay_rod::STRESS, &[load, has])?;
        let least = sum.card(&law::AREA, &[load, f])?;
        let (has, least) = (sum.value(has), sum.value(least));
        let says = format!("the stay has {has:.1} mm² of section, its load asks {least:.1} mm²");
        let solid = (4.0 * least / PI + sum.value(bore).powi(2)).sqrt();
        let remedy = format!("a stay of {} mm", at_least(solid));
        Ok(Outcome::compared(has, least, says, remedy))
    })
}

fn joint(stay: &Stay, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&STAY_JOINT, &stay.id), |sum| {
        let (load, d, _) = file_load(sum, stay, asked)?;
        let wall = Wall::of(need("the wall it ties", &stay.id, stay.plate.as_ref())?);
        let t = wall.file(sum, "t", "least thickness of the thinner wall")?;
        let tau = sum.card(&law::JOINT_SHEAR, &[load, d, t])?;
        let allowed = file_allowed(sum, stay.joint)?;
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let least = sum.value(t) * tau / allowed;
        wall.hold(sum, "wall tied by", &stay.id, least);
        let says = format!("{tau:.2} MPa in the braze of the stay, {allowed:.1} MPa allowed");
        let remedy = format!("a wall of {} mm, more stays, or {SEEN}", at_least(least));
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}

fn strain(stay: &Stay) -> Finding {
    check(OURS.head(&STAY_STRAIN, &stay.id), |sum| {
        let d = need("the diameter", &stay.id, stay.diameter.as_ref())?;
        let d = file_size(sum, ("d", "diameter of the stay"), d, Bad::Large)?;
        let length = need("the free length", &stay.id, stay.length.as_ref())?;
        let l = sum.know("L", "free length, the width of the leg", &MM, length);
        let height = need("the height", &stay.id, stay.height.as_ref())?;
        let h = sum.know("H", "height above the foundation ring", &MM, height);
        // The walls of the leg are of copper, whatever the stay is.
        let alpha = sum.know(
            "alpha",
            "expansion of the walls",
            &PER_K,
            &expansion(Metal::Copper)?,
        );
        let rise = worse_rise(&FIREBOX_GROWTH_RISE);
        let rise = sum.know("dT", FIREBOX_GROWTH_RISE.meaning, &KELVIN_RISE, &rise);
        let grown = sum.card(&stay_rod::GROWTH, &[alpha, rise, h])?;
        let eps = sum.card(&stay_rod::BENDING_STRAIN, &[d, grown, l])?;
        let eps = sum.value(eps);
        let says = format!("strained by {:.2} % as the firebox grows", 100.0 * eps);
        let longest = sum.value(l) * (eps / WEARS_ABOVE).sqrt();
        let wears = (eps > WEARS_ABOVE).then(|| {
            format!(
                "above 0.2 % it wears with every raising of steam: a leg of {} mm, or a thinner stay",
                at_least(longest)
            )
        });
        let remedy = STAY_STRAIN.remedy.to_owned();
        Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(wears))
    })
}

/// The joint of a long stay under its load and what unequal growth adds, were the ends stiff.
fn growth(stay: &Stay, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&STAY_GROWTH, &stay.id), |sum| {
        let (load, d, _) = file_load(sum, stay, asked)?;
        let bore = file_bore(sum, stay)?;
        let own = sum.card(&stay_rod::SECTION, &[d, bore])?;
        let beside = need("the section of the shell", &stay.id, stay.beside.as_ref())?;
        let shell = sum.know("A_s", "section of the shell beside it", &MM2, beside);
        let e = sum.know("E", "modulus of elasticity", &MPA, &modulus(stay.metal)?);
        let alpha = sum.know("alpha", "expansion", &PER_K, &expansion(stay.metal)?);
        let rise = worse_rise(&TUBE_GROWTH_RISE);
        let rise = sum.know("dT", TUBE_GROWTH_RISE.meaning, &KELVIN_RISE, &rise);
        let grown = sum.card(&tie::GROWTH, &[e, alpha, rise, own, shell])?;
        let one = chosen(Ratio::from_number(1.0), "stays", "this one", Origin::Read);
        let one = sum.know("n", "number of stays", &ONE, &one);
        let force = sum.card(&tie::JOINT_FORCE, &[load, grown, one])?;
        let wall = Wall::of(need("the wall it ties", &stay.id, stay.plate.as_ref())?);
        let t = wall.file(sum, "t", "least thickness of the thinner wall")?;
        wall.hold_as_used(sum, "wall tied by", &stay.id);
        let tau = sum.card(&law::JOINT_SHEAR, &[force, d, t])?;
        let allowed = file_allowed(sum, stay.joint)?;
        let says = "the stay no more than 15 K hotter or colder than the shell: raise steam slowly";
        sum.hold(says.to_owned(), None);
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let says = format!(
            "{tau:.2} MPa in its braze by load and growth together, {allowed:.1} MPa allowed; it bows as it grows"
        );
        let least = at_least(sum.value(t) * tau / allowed);
        let remedy = format!("{}, or a wall of {least} mm", STAY_GROWTH.remedy);
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}
