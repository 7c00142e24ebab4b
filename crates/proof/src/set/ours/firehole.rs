//! The tube of a firehole as a stay of the two walls of the leg.

use super::OURS;
use super::braze::{SEEN, file_allowed};
use super::chain::parts;
use super::plate::file_stay_constant;
use crate::input::{Boiler, Firehole, Frame};
use crate::rules::FIREHOLE_JOINT;
use crate::set::Asked;
use crate::stress;
use crate::sum::{Outcome, check};
use crate::taken::{Wall, bar, need};
use formulas::vessel::{plate_stayed, tie};
use reckoning::Finding;

/// Half a pitch of the firebox wall on the rim of the hole.
pub(super) fn joint(
    boiler: &Boiler,
    frame: &Frame,
    firehole: &Firehole,
    asked: &Asked<'_>,
) -> Finding {
    check(OURS.head(&FIREHOLE_JOINT, &firehole.id), |sum| {
        let firebox = parts(boiler, frame)?.firebox;
        let metal = firebox.metal_temperature.as_ref();
        let served = OURS.serve(sum, asked, &firebox.id, metal)?;
        let wall = Wall::of(need("the wall", &firebox.id, firebox.wall.as_ref())?);
        let t = wall.file(sum, "t", "least wall of the firebox")?;
        wall.hold_as_used(sum, "wall", &firebox.id);
        let f = stress::ours(sum, firebox.metal, served.metal, "f")?;
        let c = file_stay_constant(sum);
        let pitch = sum.card(&plate_stayed::PITCH, &[t, served.p, f, c])?;
        let tau = sum.card(&tie::EDGE_SHEAR, &[served.p, pitch, t])?;
        let allowed = file_allowed(sum, firehole.joint)?;
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let says = format!("{tau:.2} MPa in the joints of the firehole, {allowed:.1} MPa allowed");
        let most = served.p_mpa * (allowed / tau).powi(2);
        let remedy = format!("{SEEN}, or a working pressure of {} bar", bar(most));
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}
