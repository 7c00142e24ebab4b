//! The foundation ring: its bending and its joints, the crown tied up or hanging on it.

use super::OURS;
use super::braze::{SEEN, file_allowed};
use super::chain::{Parts, file_firebox, file_tubes, parts};
use super::plate::file_bending;
use super::whole::temperature;
use crate::input::{Boiler, Frame};
use crate::metal::chosen;
use crate::remedy::at_least;
use crate::rules::{RING_BENDING, RING_JOINT};
use crate::set::Asked;
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_sides, file_size, need};
use formulas::vessel::{foundation as law, plate_disc};
use reckoning::quantity::{Length, MM, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin, Ref};

/// Every check of the ring.
pub(super) fn checks(boiler: &Boiler, frame: &Frame, asked: &Asked<'_>) -> Vec<Finding> {
    vec![
        temperature(&frame.ring.id, frame.ring.metal_temperature.as_ref()),
        bending(boiler, frame, asked),
        joint(boiler, frame, asked),
    ]
}

/// The ring as a proof takes it.
struct Taken<'a> {
    parts: Parts<'a>,
    p: Ref,
    /// Depth.
    h: Ref,
    /// Inside of the shell, outside of the firebox, width of the leg.
    d_i: Ref,
    d_f: Ref,
    w: Ref,
    /// Design stress.
    f: Ref,
}

impl Taken<'_> {
    /// Whether tubes tie the crown up.
    fn tied(&self) -> bool {
        self.parts.crown.nest.count.is_some()
    }
}

fn take<'a>(
    sum: &mut Sum,
    boiler: &'a Boiler,
    frame: &Frame,
    asked: &Asked<'_>,
) -> Result<Taken<'a>, Stop> {
    let parts = parts(boiler, frame)?;
    let ring = &frame.ring;
    let served = OURS.serve(sum, asked, &ring.id, ring.metal_temperature.as_ref())?;
    let depth = need("the depth", &ring.id, ring.depth.as_ref())?;
    let h = file_size(sum, ("h", "depth of the ring"), depth, Bad::Small)?;
    let shell = parts.shell;
    let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
    let wall = Wall::of(need("the wall", &shell.id, shell.wall.as_ref())?);
    let t = wall.file(sum, "t", "least wall of the shell")?;
    wall.hold_as_used(sum, "wall", &shell.id);
    let d_i = file_sides(sum, diameter, t)?.bore;
    let d_f = file_firebox(sum, &parts, Bad::Small)?;
    let w = sum.card(&law::WIDTH, &[d_i, d_f])?;
    let f = stress::ours(sum, ring.metal, served.metal, "f")?;
    Ok(Taken {
        parts,
        p: served.p,
        h,
        d_i,
        d_f,
        w,
        f,
    })
}

/// Files the tubes that lessen the crown's load on the ring; none where none are named.
fn file_relief(sum: &mut Sum, taken: &Taken<'_>) -> Result<(Ref, Ref), Stop> {
    if taken.tied() {
        return file_tubes(sum, taken.parts.crown);
    }
    let none = |between| {
        (
            between,
            "no tube is named: the whole crown hangs on the ring",
        )
    };
    let (between, reason) = none("with or without tubes");
    let n = chosen(Ratio::from_number(0.0), between, reason, Origin::Read);
    let d = chosen(Length::from_mm(0.0), between, reason, Origin::Read);
    let n = sum.know("n", "number of tubes", &ONE, &n);
    Ok((n, sum.know("d_o", "outside of the tubes", &MM, &d)))
}

/// Files the stress of the ring with the whole crown on it.
fn file_hung(sum: &mut Sum, taken: &Taken<'_>) -> Result<Ref, Stop> {
    let (n, d_o) = file_relief(sum, taken)?;
    let v = sum.card(&law::LOAD_INNER, &[taken.p, taken.d_f, n, d_o])?;
    let m = sum.card(&law::MOMENT_UNTIED, &[v, taken.p, taken.w])?;
    sum.card(&law::STRESS, &[m, taken.h])
}

fn bending(boiler: &Boiler, frame: &Frame, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&RING_BENDING, &frame.ring.id), |sum| {
        let taken = take(sum, boiler, frame, asked)?;
        let hung = file_hung(sum, &taken)?;
        let (sigma, way) = if taken.tied() {
            let strip = [taken.p, taken.w, taken.h];
            (
                sum.card(&plate_disc::STRIP_SUPPORTED, &strip)?,
                "the crown tied by its tubes",
            )
        } else {
            (hung, "the crown hanging on the ring")
        };
        let allowed = file_bending(sum, frame.ring.metal, taken.f)?;
        let hung = sum.value(hung);
        let (sigma, allowed) = (sum.value(sigma), sum.value(allowed));
        let least = sum.value(taken.h) * (sigma / allowed).sqrt();
        let says = format!(
            "bent to {sigma:.1} MPa with {way}, {allowed:.1} MPa allowed; {hung:.1} MPa were it to carry the crown alone"
        );
        let remedy = format!("a ring of {} mm depth", at_least(least));
        Ok(Outcome::compared(allowed, sigma, says, remedy))
    })
}

fn joint(boiler: &Boiler, frame: &Frame, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&RING_JOINT, &frame.ring.id), |sum| {
        let taken = take(sum, boiler, frame, asked)?;
        let load = if taken.tied() {
            sum.card(&law::LOAD_TIED, &[taken.p, taken.w])?
        } else {
            let (n, d_o) = file_relief(sum, &taken)?;
            sum.card(&law::LOAD_OUTER, &[taken.p, taken.d_i, n, d_o])?
        };
        let tau = sum.card(&law::JOINT_SHEAR, &[load, taken.h])?;
        let allowed = file_allowed(sum, frame.ring.joint)?;
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let least = sum.value(taken.h) * tau / allowed;
        let says = format!("{tau:.2} MPa in the joints of the ring, {allowed:.1} MPa allowed");
        let remedy = format!("a ring of {} mm depth, or {SEEN}", at_least(least));
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}
