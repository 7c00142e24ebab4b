//! Flat ends: without stays as supported discs, round a flue by the worst pair of edges, held by
//! stays by the widest bare field.

use super::plate::{file_bending, file_stay_constant};
use super::whole::{temperature, wetted};
use super::{OURS, dish};
use crate::input::{Bare, Boiler, Diameter, Dimension, End, EndShape, Flue, Joint, Shell};
use crate::metal::{FIREBOX_GROWTH_RISE, chosen, expansion, lateral, modulus};
use crate::opening::{Round, Side, replace};
use crate::remedy::next_stock;
use crate::rules::{END_FLAT, END_GROWTH, END_OPENING, END_PULL, END_RING, END_STAYED};
use crate::set::Asked;
use crate::set::served::Served;
use crate::stress;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_sides, file_size, need, worse_rise};
use formulas::vessel::{annulus, flat_end, plate_disc, plate_stayed, ring, stay, tie};
use reckoning::quantity::{KELVIN_RISE, MM, MPA, ONE, PER_K, Ratio};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Finding, Origin, Ref};

/// Constant of UG-34 for a plate inside a shell, the most that a plate without a flange is given.
const CODE_EDGE: f64 = 0.33;

/// Every check of an end.
pub(super) fn checks(boiler: &Boiler, end: &End, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![temperature(&end.id, end.metal_temperature.as_ref())];
    let it = Ended { boiler, end, asked };
    match (&end.shape, &end.stayed) {
        (EndShape::Dished(shape), _) => found.push(dish::check_dish(boiler, end, shape, asked)),
        (_, Some(bare)) => found.push(stayed(&it, bare)),
        (EndShape::Flat, None) => found.push(flat(&it)),
        (EndShape::Annular { .. }, None) => found.push(about_flue(&it)),
    }
    if let EndShape::Annular { flue, joint, .. } = &end.shape {
        found.push(pull(&it, flue, *joint));
        found.push(growth(&it, flue, *joint));
    }
    for opening in &end.openings {
        found.extend(wetted(opening));
        if !matches!(end.shape, EndShape::Dished(_)) {
            found.push(check(OURS.head(&END_OPENING, &opening.id), |sum| {
                let taken = it.take(sum)?;
                let t_r = it.file_least(sum, &taken)?;
                let metal = taken.served.metal;
                let round = Round {
                    side: Side::Flat,
                    diameter_mm: 2.0 * sum.value(taken.a),
                    p: taken.served.p,
                    t: taken.t,
                    t_r,
                    s: taken.f,
                    bush_stress: &|sum, bush| stress::ours(sum, bush, metal, "f_b"),
                };
                let outcome = replace(sum, opening, &round)?;
                taken.wall.hold_as_used(sum, "thickness", &end.id);
                Ok(outcome)
            }));
        }
    }
    found
}

/// An end in its boiler.
#[derive(Clone, Copy)]
struct Ended<'a> {
    boiler: &'a Boiler,
    end: &'a End,
    asked: &'a Asked<'a>,
}

/// An end as a proof takes it.
struct Taken {
    served: Served,
    wall: Wall,
    t: Ref,
    f: Ref,
    /// Radius of the opening that it closes.
    a: Ref,
}

/// The shell of this id.
pub(super) fn shell<'a>(boiler: &'a Boiler, id: &str) -> Result<&'a Shell, Stop> {
    let found = boiler.shells.iter().find(|s| s.id == id);
    need("the sizes", id, found)
}

fn flue<'a>(boiler: &'a Boiler, id: &str) -> Result<&'a Flue, Stop> {
    let found = boiler.flues.iter().find(|f| f.id == id);
    need("the sizes", id, found)
}

/// Files the bore of the tube that an end closes, at its widest.
pub(super) fn file_bore(sum: &mut Sum, boiler: &Boiler, id: &str) -> Result<Ref, Stop> {
    let shell = shell(boiler, id)?;
    let diameter = need("the diameter", id, shell.diameter.as_ref())?;
    let wall = Wall::of(need("the wall", id, shell.wall.as_ref())?);
    let t = wall.file(sum, "t_s", "least wall of the shell")?;
    wall.hold_as_used(sum, "wall", id);
    Ok(file_sides(sum, diameter, t)?.bore)
}

impl Ended<'_> {
    fn take(&self, sum: &mut Sum) -> Result<Taken, Stop> {
        let end = self.end;
        let metal = end.metal_temperature.as_ref();
        let served = OURS.serve(sum, self.asked, &end.id, metal)?;
        let wall = Wall::of(need("the thickness", &end.id, end.thickness.as_ref())?);
        let t = wall.file(sum, "t", "least thickness of the end")?;
        let f = stress::ours(sum, end.metal, served.metal, "f")?;
        let bore = file_bore(sum, self.boiler, &end.closes)?;
        let a = sum.card(&ring::RADIUS, &[bore])?;
        Ok(Taken {
            served,
            wall,
            t,
            f,
            a,
        })
    }

    /// Files the thickness that the end needs by itself, without a flue or stays.
    fn file_least(&self, sum: &mut Sum, taken: &Taken) -> Result<Ref, Stop> {
        let nu = sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral());
        let allowed = file_bending(sum, self.end.metal, taken.f)?;
        let disc = [taken.served.p, taken.a, nu, allowed];
        sum.card(&flat_end::SUPPORTED_WALL, &disc)
    }

    /// Closes a check of bending, which falls with the square of the thickness.
    fn bent(&self, sum: &mut Sum, taken: &Taken, sigma: Ref, how: &str) -> Result<Outcome, Stop> {
        let allowed = file_bending(sum, self.end.metal, taken.f)?;
        let (sigma, allowed) = (sum.value(sigma), sum.value(allowed));
        let least = taken.wall.mm() * (sigma / allowed).sqrt();
        taken.wall.hold(sum, "thickness", &self.end.id, least);
        let says = format!("bent to {sigma:.1} MPa {how}, {allowed:.1} MPa allowed");
        let remedy = format!(
            "{}, or stays",
            next_stock("a plate", &self.asked.stock.sheets, least)
        );
        Ok(Outcome::compared(allowed, sigma, says, remedy))
    }
}

/// A disc without stays, its edge turning freely; the code's form stands beside.
fn flat(it: &Ended<'_>) -> Finding {
    check(OURS.head(&END_FLAT, &it.end.id), |sum| {
        let taken = it.take(sum)?;
        let nu = sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral());
        let disc = [taken.served.p, taken.a, taken.t, nu];
        let sigma = sum.card(&plate_disc::SUPPORTED, &disc)?;
        sum.card(
            &plate_disc::CLAMPED_EDGE,
            &[taken.served.p, taken.a, taken.t],
        )?;
        it.file_least(sum, &taken)?;
        let number = |value: f64, between: &str, reason: &str| {
            chosen(
                Ratio::from_number(value),
                between,
                reason,
                Origin::FromMemory,
            )
        };
        let c = number(
            CODE_EDGE,
            "0.17 to 0.33 by kind of edge",
            "a brazed edge is not among them",
        );
        let c = sum.know("C", "constant for the edge", &ONE, &c);
        let e = number(1.0, "efficiency of a seam", "the plate has none");
        let e = sum.know("E", "joint efficiency", &ONE, &e);
        let bore = file_bore(sum, it.boiler, &it.end.closes)?;
        sum.card(&flat_end::UG34, &[bore, c, taken.served.p, taken.f, e])?;
        it.bent(sum, &taken, sigma, "as a disc whose edge turns freely")
    })
}

/// Files the ring between the shell and a flue: outer and inner radius. A flue off the middle is
/// judged by a ring about it that reaches the farthest wall.
fn file_ring(sum: &mut Sum, it: &Ended<'_>, taken: &Taken) -> Result<(Ref, Ref), Stop> {
    let EndShape::Annular { flue: id, off, .. } = &it.end.shape else {
        return Err(Stop::Missing {
            what: "a flue",
            part: it.end.id.clone(),
        });
    };
    let flue = flue(it.boiler, id)?;
    let outside = file_outside(sum, flue, Bad::Small)?;
    let b = sum.card(&ring::RADIUS, &[outside])?;
    let off = need("how far the flue lies off the middle", id, off.as_ref())?;
    let off = file_size(sum, ("e", "flue off the middle"), off, Bad::Large)?;
    if sum.value(off) == 0.0 {
        return Ok((taken.a, b));
    }
    let reach = sum.value(taken.a) + sum.value(off);
    let a = sum.w.chosen(Choice {
        symbol: "a",
        meaning: "outer radius of a ring about the flue",
        value: reach,
        unit: &MM,
        between: "the wall near the flue and the wall far from it",
        reason: "the far one, for the whole ring",
        from: &[taken.a, off],
        cite: None,
    });
    Ok((a, b))
}

/// Files the outside of a flue.
fn file_outside(sum: &mut Sum, flue: &Flue, bad: Bad) -> Result<Ref, Stop> {
    let diameter = need("the diameter", &flue.id, flue.diameter.as_ref())?;
    match diameter {
        Diameter::Outside(d) => file_size(sum, ("d", "outside of the flue"), d, bad),
        Diameter::Inside(d) => {
            let bore = file_size(sum, ("D_i", "bore of the flue"), d, bad)?;
            let wall = need("the wall", &flue.id, flue.wall.as_ref())?;
            let wall = file_size(sum, ("t_f", "wall of the flue"), wall, bad)?;
            sum.card(&ring::OUTSIDE, &[bore, wall])
        }
    }
}

/// The ring of plate round a flue, by the worst of four pairs of edges.
fn about_flue(it: &Ended<'_>) -> Finding {
    check(OURS.head(&END_RING, &it.end.id), |sum| {
        let taken = it.take(sum)?;
        let (a, b) = file_ring(sum, it, &taken)?;
        let nu = sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral());
        let ring = [taken.served.p, a, b, taken.t, nu];
        let pairs = [
            (&annulus::BOTH_FIXED, "with neither edge turning"),
            (&annulus::BOTH_FREE, "with both edges turning"),
            (&annulus::OUTER_FREE, "with the edge at the shell turning"),
            (&annulus::INNER_FREE, "with the edge at the flue turning"),
        ];
        let mut worst: Option<(Ref, &str)> = None;
        for (card, how) in pairs {
            let sigma = sum.card(card, &ring)?;
            if worst.is_none_or(|(most, _)| sum.value(sigma) > sum.value(most)) {
                worst = Some((sigma, how));
            }
        }
        let (sigma, how) = need("a pair of edges", &it.end.id, worst.as_ref())?;
        it.bent(sum, &taken, *sigma, how)
    })
}

/// The plate among its stays.
fn stayed(it: &Ended<'_>, bare: &Bare) -> Finding {
    check(OURS.head(&END_STAYED, &it.end.id), |sum| {
        let taken = it.take(sum)?;
        let circle = sum.know("d_c", "largest bare circle", &MM, &bare.circle);
        let side = sum.know("s", "middle side of what it meets", &MM, &bare.side);
        let pitch = sum.card(&plate_stayed::FIELD_PITCH, &[circle, side])?;
        let c = file_stay_constant(sum);
        let least = sum.card(&plate_stayed::WALL, &[pitch, taken.served.p, taken.f, c])?;
        let (has, least) = (taken.wall.mm(), sum.value(least));
        taken.wall.hold(sum, "thickness", &it.end.id, least);
        let says = format!(
            "plate {has:.2} mm, {least:.2} mm asked by the widest field, which stands for a pitch of {:.1} mm",
            sum.value(pitch)
        );
        let most = sum.value(pitch) * has / least;
        let remedy = format!(
            "{}; or a further stay in that field, so that it stands for {} mm",
            next_stock("a plate", &it.asked.stock.sheets, least),
            crate::taken::down(most)
        );
        Ok(Outcome::compared(has, least, says, remedy))
    })
}

/// Files the shear allowed in the joint of flue and end.
fn file_joint(sum: &mut Sum, joint: Joint) -> Result<Ref, Stop> {
    super::braze::file_allowed(sum, joint)
}

/// The joint of the flue under the pull of the end.
fn pull(it: &Ended<'_>, id: &str, joint: Joint) -> Finding {
    check(OURS.head(&END_PULL, &it.end.id), |sum| {
        let taken = it.take(sum)?;
        let (a, b) = file_ring(sum, it, &taken)?;
        let nu = sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral());
        let load = sum.card(&annulus::PULL, &[taken.served.p, a, b, taken.t, nu])?;
        let d = file_outside(sum, flue(it.boiler, id)?, Bad::Small)?;
        let tau = sum.card(&stay::JOINT_SHEAR, &[load, d, taken.t])?;
        let allowed = file_joint(sum, joint)?;
        taken.wall.hold_as_used(sum, "thickness", &it.end.id);
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let says = format!(
            "the end pulls at {id} with {:.0} N, {tau:.2} MPa in its braze, {allowed:.1} MPa allowed",
            sum.value(load)
        );
        let least = crate::remedy::at_least(taken.wall.mm() * tau / allowed);
        let remedy = format!("a plate of {least} mm, or {}", super::braze::SEEN);
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}

/// What unequal growth of flue and shell would add were the ends stiff. It is forced by strain and
/// falls as the ends give, so that it is told and not held against the limit of a load.
fn growth(it: &Ended<'_>, id: &str, joint: Joint) -> Finding {
    check(OURS.head(&END_GROWTH, &it.end.id), |sum| {
        let (force, d) = file_growth(sum, it, id)?;
        let end = Wall::of(need(
            "the thickness",
            &it.end.id,
            it.end.thickness.as_ref(),
        )?);
        let t = end.file(sum, "t", "least thickness of the end")?;
        let tau = sum.card(&stay::JOINT_SHEAR, &[force, d, t])?;
        let allowed = file_joint(sum, joint)?;
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let says = format!(
            "stiff ends would put {:.0} N of growth on the braze of {id}, {tau:.1} MPa",
            sum.value(force)
        );
        let above = (tau > allowed).then(|| {
            format!(
                "above the {allowed:.1} MPa of a load: the ends must give, so raise steam slowly"
            )
        });
        let remedy = END_GROWTH.remedy.to_owned();
        Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(above))
    })
}

/// Files the section of a tube by its outside and its wall at its thickest.
fn file_section(sum: &mut Sum, d: Ref, wall: &Dimension) -> Result<Ref, Stop> {
    let meaning = ("t_f", "wall of the flue at its thickest");
    let t = file_size(sum, meaning, wall, Bad::Large)?;
    sum.card(&stay::TUBE_AREA, &[d, t])
}

/// Files the force of unequal growth between stiff ends, and the outside of the flue.
fn file_growth(sum: &mut Sum, it: &Ended<'_>, id: &str) -> Result<(Ref, Ref), Stop> {
    let flue = flue(it.boiler, id)?;
    let shell = shell(it.boiler, &it.end.closes)?;
    let d = file_outside(sum, flue, Bad::Large)?;
    let wall = need("the wall", id, flue.wall.as_ref())?;
    let of_flue = file_section(sum, d, wall)?;
    let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
    let wall = need("the wall", &shell.id, shell.wall.as_ref())?;
    let t = file_size(
        sum,
        ("t_s", "wall of the shell at its thickest"),
        wall,
        Bad::Large,
    )?;
    let outside = file_sides(sum, diameter, t)?.outside;
    let of_shell = sum.card(&stay::TUBE_AREA, &[outside, t])?;
    let e = sum.know("E", "modulus of elasticity", &MPA, &modulus(flue.metal)?);
    let alpha = sum.know("alpha", "expansion", &PER_K, &expansion(flue.metal)?);
    let rise = worse_rise(&FIREBOX_GROWTH_RISE);
    let rise = sum.know("dT", FIREBOX_GROWTH_RISE.meaning, &KELVIN_RISE, &rise);
    let force = sum.card(&tie::GROWTH, &[e, alpha, rise, of_flue, of_shell])?;
    Ok((force, d))
}
