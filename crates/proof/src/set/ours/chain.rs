//! The load on the crown of a wet firebox and its way to the shell.

use super::OURS;
use super::braze::file_allowed;
use super::flange::{file_lap, file_shear};
use super::plate::take;
use crate::input::{Boiler, Diameter, Frame, Shell, TubePlate};
use crate::metal::{TUBE_GROWTH_RISE, expansion, modulus};
use crate::remedy::at_least;
use crate::rules::{CROWN_CHAIN, TUBE_GROWTH};
use crate::set::Asked;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_sides, file_size, need, worse_rise};
use formulas::vessel::{ring, stay, tie};
use reckoning::quantity::{KELVIN_RISE, MPA, ONE, PER_K};
use reckoning::size::Bad;
use reckoning::{Finding, Ref};

/// The parts of a frame, found by their ids.
pub(super) struct Parts<'a> {
    pub(super) shell: &'a Shell,
    pub(super) firebox: &'a crate::input::Flue,
    pub(super) crown: &'a TubePlate,
    pub(super) upper: &'a TubePlate,
}

/// Finds the parts of a frame.
pub(super) fn parts<'a>(boiler: &'a Boiler, frame: &Frame) -> Result<Parts<'a>, Stop> {
    let plate = |id: &str| boiler.plates.iter().find(|p| p.id == id);
    let shell = boiler.shells.iter().find(|s| s.id == frame.shell);
    let firebox = boiler.flues.iter().find(|f| f.id == frame.firebox);
    Ok(Parts {
        shell: need("the sizes", &frame.shell, shell)?,
        firebox: need("the sizes", &frame.firebox, firebox)?,
        crown: need("the sizes", &frame.crown, plate(&frame.crown))?,
        upper: need("the sizes", &frame.upper, plate(&frame.upper))?,
    })
}

/// Files the outside of the firebox at one end of its tolerance.
pub(super) fn file_firebox(sum: &mut Sum, parts: &Parts<'_>, bad: Bad) -> Result<Ref, Stop> {
    let id = &parts.firebox.id;
    let diameter = need("the diameter", id, parts.firebox.diameter.as_ref())?;
    match diameter {
        Diameter::Outside(d) => file_size(sum, ("d_f", "outside of the firebox"), d, bad),
        Diameter::Inside(d) => {
            let bore = file_size(sum, ("D_i", "bore of the firebox"), d, bad)?;
            let wall = need("the wall", id, parts.firebox.wall.as_ref())?;
            let wall = file_size(sum, ("t", "wall of the firebox"), wall, bad)?;
            sum.card(&ring::OUTSIDE, &[bore, wall])
        }
    }
}

/// Files number and outside of the tubes through the crown.
pub(super) fn file_tubes(sum: &mut Sum, crown: &TubePlate) -> Result<(Ref, Ref), Stop> {
    let nest = &crown.nest;
    let n = need(
        "the number of tubes that tie it",
        &crown.id,
        nest.count.as_ref(),
    )?;
    let n = sum.know("n", "number of tubes", &ONE, n);
    let tube = need("the outside of the tubes", &crown.id, nest.outside.as_ref())?;
    let d_o = file_size(sum, ("d_o", "outside of the tubes"), tube, Bad::Small)?;
    Ok((n, d_o))
}

/// One link: what it is, what it bears and what is asked of it.
struct Link {
    name: String,
    bears: f64,
    asked: f64,
}

impl Link {
    fn margin(&self) -> f64 {
        self.bears / self.asked
    }
}

/// Files the pull of one tube where the tubes hold the whole crown.
fn file_pull(sum: &mut Sum, parts: &Parts<'_>, p: Ref) -> Result<(Ref, Ref, Ref), Stop> {
    let (n, d_o) = file_tubes(sum, parts.crown)?;
    let d = file_firebox(sum, parts, Bad::Large)?;
    let load = sum.card(&tie::CROWN_LOAD, &[p, d, n, d_o])?;
    Ok((sum.card(&tie::SHARE, &[load, n])?, n, d_o))
}

/// Crown, tubes, upper plate, its flange, shell: the weakest link.
pub(super) fn crown(boiler: &Boiler, frame: &Frame, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&CROWN_CHAIN, &frame.crown), |sum| {
        let parts = parts(boiler, frame)?;
        let taken = take(sum, parts.crown, asked)?;
        let (pull, n, d_o) = file_pull(sum, &parts, taken.served.p)?;
        let nest = &parts.crown.nest;
        let wall = Wall::of(need(
            "the wall of the tubes",
            &frame.crown,
            nest.wall.as_ref(),
        )?);
        let t = wall.file(sum, "t_t", "least wall of the tubes")?;
        let has = sum.card(&stay::TUBE_AREA, &[d_o, t])?;
        let least = sum.card(&stay::AREA, &[pull, taken.f])?;
        let mut links = vec![Link {
            name: "the walls of the tubes".to_owned(),
            bears: sum.value(has),
            asked: sum.value(least),
        }];
        wall.hold_as_used(sum, "wall of the tubes", &frame.crown);
        for plate in [parts.crown, parts.upper] {
            links.push(braze_link(sum, plate, pull, d_o)?);
        }
        links.push(flange_link(sum, boiler, parts.upper, taken.served.p)?);
        let count = sum.value(n);
        close(frame, count, &links)
    })
}

fn braze_link(sum: &mut Sum, plate: &TubePlate, pull: Ref, d_o: Ref) -> Result<Link, Stop> {
    let wall = Wall::of(need("the thickness", &plate.id, plate.thickness.as_ref())?);
    let t = wall.file(sum, "t", "least thickness of the plate")?;
    wall.hold_as_used(sum, "thickness", &plate.id);
    let tau = sum.card(&stay::JOINT_SHEAR, &[pull, d_o, t])?;
    let allowed = file_allowed(sum, plate.nest.joint)?;
    Ok(Link {
        name: format!("the brazes of the tubes in {}", plate.id),
        bears: sum.value(allowed),
        asked: sum.value(tau),
    })
}

fn flange_link(sum: &mut Sum, boiler: &Boiler, upper: &TubePlate, p: Ref) -> Result<Link, Stop> {
    let flange = need("the flange", &upper.id, upper.flange.as_ref())?;
    let l = file_lap(sum, upper.into(), flange)?;
    let tau = file_shear(sum, boiler, flange, (p, l))?;
    let allowed = file_allowed(sum, flange.joint)?;
    Ok(Link {
        name: format!("the flange of {}", upper.id),
        bears: sum.value(allowed),
        asked: sum.value(tau),
    })
}

fn close(frame: &Frame, count: f64, links: &[Link]) -> Result<Outcome, Stop> {
    let weakest = links
        .iter()
        .min_by(|a, b| a.margin().total_cmp(&b.margin()));
    let weakest = need("a chain", &frame.crown, weakest)?;
    let says = format!(
        "the load of {} goes by {count:.0} tubes to {}, and by its flange to {}; the weakest link is {}",
        frame.crown, frame.upper, frame.shell, weakest.name
    );
    let remedy = format!(
        "{:.0} % more in {}",
        (100.0 * (1.0 / weakest.margin() - 1.0)).ceil(),
        weakest.name
    );
    Ok(Outcome::compared(
        weakest.bears,
        weakest.asked,
        says,
        remedy,
    ))
}

/// The joint of a tube under pull and unequal growth.
pub(super) fn growth(boiler: &Boiler, frame: &Frame, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&TUBE_GROWTH, &frame.crown), |sum| {
        let parts = parts(boiler, frame)?;
        let taken = take(sum, parts.crown, asked)?;
        let (pull, n, d_o) = file_pull(sum, &parts, taken.served.p)?;
        let push = file_growth(sum, &parts, n)?;
        let force = sum.card(&tie::JOINT_FORCE, &[pull, push, n])?;
        let tau = sum.card(&stay::JOINT_SHEAR, &[force, d_o, taken.t])?;
        let allowed = file_allowed(sum, parts.crown.nest.joint)?;
        let says = "the tubes no more than 15 K hotter or colder than the shell: raise steam \
                    slowly, and let the fire die down with the smokebox shut";
        sum.hold(says.to_owned(), None);
        taken.plate.hold_as_used(sum, "thickness", &frame.crown);
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let says = format!(
            "{tau:.2} MPa in the braze of a tube by pull and growth together, {allowed:.1} MPa allowed"
        );
        let least = at_least(sum.value(taken.t) * tau / allowed);
        let remedy = format!("a plate of {least} mm, or {}", super::braze::SEEN);
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}

/// Files the load between all tubes and the shell from unequal growth: thick walls grow worse.
fn file_growth(sum: &mut Sum, parts: &Parts<'_>, n: Ref) -> Result<Ref, Stop> {
    let nest = &parts.crown.nest;
    let outside = need(
        "the outside of the tubes",
        &parts.crown.id,
        nest.outside.as_ref(),
    )?;
    let wall = need("the wall of the tubes", &parts.crown.id, nest.wall.as_ref())?;
    let d = file_size(sum, ("d_o", "outside of the tubes"), outside, Bad::Large)?;
    let t = file_size(
        sum,
        ("t_t", "wall of the tubes at its thickest"),
        wall,
        Bad::Large,
    )?;
    let one = sum.card(&stay::TUBE_AREA, &[d, t])?;
    let tubes = sum.card(&tie::ALL_TUBES, &[n, one])?;
    let shell = parts.shell;
    let wall = need("the wall", &shell.id, shell.wall.as_ref())?;
    let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
    let t = file_size(
        sum,
        ("t", "wall of the shell at its thickest"),
        wall,
        Bad::Large,
    )?;
    let outside = file_sides(sum, diameter, t)?.outside;
    let section = sum.card(&stay::TUBE_AREA, &[outside, t])?;
    let e = sum.know("E", "modulus of elasticity", &MPA, &modulus(shell.metal)?);
    let alpha = sum.know("alpha", "expansion", &PER_K, &expansion(shell.metal)?);
    let rise = worse_rise(&TUBE_GROWTH_RISE);
    let rise = sum.know("dT", TUBE_GROWTH_RISE.meaning, &KELVIN_RISE, &rise);
    sum.card(&tie::GROWTH, &[e, alpha, rise, tubes, section])
}
