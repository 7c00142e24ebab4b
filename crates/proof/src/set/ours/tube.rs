//! Smoke tubes as the stays of a tube plate.

use super::OURS;
use super::plate::{Taken, take};
use crate::input::{Layout, TubePlate};
use crate::metal::braze_shear;
use crate::remedy::at_least;
use crate::rules::{TUBE_BRAZE, TUBE_PULL};
use crate::set::Asked;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_size, need};
use formulas::vessel::{allow, stay};
use reckoning::quantity::MPA;
use reckoning::size::Bad;
use reckoning::{Card, Finding, Ref};

/// Files the pull of one tube, and its outside diameter.
fn file_pull(sum: &mut Sum, plate: &TubePlate, taken: &Taken) -> Result<(Ref, Ref), Stop> {
    let p = super::plate::file_pitch(sum, plate)?;
    let tube = need(
        "the outside of the tubes",
        &plate.id,
        plate.nest.outside.as_ref(),
    )?;
    let d = file_size(sum, ("d_o", "outside of the tubes"), tube, Bad::Small)?;
    let card: &'static Card = match plate.nest.layout {
        Layout::Triangle => &stay::TUBE_LOAD_TRIANGLE,
        Layout::Square => &stay::TUBE_LOAD_SQUARE,
    };
    Ok((sum.card(card, &[taken.served.p, p, d])?, d))
}

/// The tube's wall in tension.
pub(super) fn pull(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&TUBE_PULL, &plate.id), |sum| {
        let taken = take(sum, plate, asked)?;
        let (load, d) = file_pull(sum, plate, &taken)?;
        let wall = Wall::of(need(
            "the wall of the tubes",
            &plate.id,
            plate.nest.wall.as_ref(),
        )?);
        let t = wall.file(sum, "t_t", "least wall of the tubes")?;
        sum.card(&stay::TUBE_STRESS, &[load, d, t])?;
        let has = sum.card(&stay::TUBE_AREA, &[d, t])?;
        let least = sum.card(&stay::AREA, &[load, taken.f])?;
        wall.hold_as_used(sum, "wall of the tubes", &plate.id);
        let (has, least) = (sum.value(has), sum.value(least));
        let says = format!("a tube has {has:.1} mm² of wall, its pull asks {least:.1} mm²");
        let remedy = format!("tubes with {} mm² of wall", at_least(least));
        Ok(Outcome::compared(has, least, says, remedy))
    })
}

/// The tube's braze in shear.
pub(super) fn braze(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&TUBE_BRAZE, &plate.id), |sum| {
        let taken = take(sum, plate, asked)?;
        let (load, d) = file_pull(sum, plate, &taken)?;
        let tau = sum.card(&stay::JOINT_SHEAR, &[load, d, taken.t])?;
        let shear = sum.know("tau_f", "shear allowed in the braze", &MPA, &braze_shear());
        let e = OURS.file_joint(sum, "E_j", OURS.joints.joint(plate.nest.joint));
        let allowed = sum.card(&allow::JOINT, &[shear, e])?;
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let least = taken.plate.mm() * tau / allowed;
        taken.plate.hold(sum, "thickness", &plate.id, least);
        let says = format!("{tau:.2} MPa in the braze of a tube, {allowed:.1} MPa allowed");
        let remedy = format!(
            "a plate of {} mm, or a joint that shows filler on both sides",
            at_least(least)
        );
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}
