//! A flat plate held by the tubes that pass through it.

use super::shell::file_test_factor;
use super::whole::{temperature, wetted};
use super::{OURS, TEST_FACTOR, tube};
use crate::input::{Field, Layout, Metal, Opening, TubePlate};
use crate::metal::{chosen, lateral, proof_cold};
use crate::remedy::next_stock;
use crate::rules::{PLATE_BETWEEN, PLATE_LIGAMENT, PLATE_MARGIN, PLATE_OPENING, PLATE_STAYED};
use crate::set::Asked;
use crate::set::served::Served;
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, down, file_size, need};
use formulas::vessel::{allow, plate_disc, plate_stayed, ring};
use reckoning::quantity::{MM, MPA, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Card, Finding, Origin, Ref};

/// Constant of UG-47 for stays through plates up to 11 mm.
const STAY_CONSTANT: f64 = 2.1;
/// Least plate between two tubes, mm.
const LEAST_LIGAMENT_MM: f64 = 2.5;

/// Every check of a tube plate.
pub(super) fn checks(plate: &TubePlate, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![
        temperature(&plate.id, plate.metal_temperature.as_ref()),
        stayed(plate, asked),
        margin(plate, asked),
        between(plate, asked),
        ligament(plate),
        tube::pull(plate, asked),
        tube::braze(plate, asked),
    ];
    for opening in &plate.openings {
        found.extend(wetted(opening));
        found.push(pierced(plate, opening, asked));
    }
    found
}

/// A plate as a proof takes it.
pub(super) struct Taken {
    pub(super) served: Served,
    pub(super) plate: Wall,
    pub(super) t: Ref,
    pub(super) f: Ref,
}

/// Files service, thickness and design stress of a plate.
pub(super) fn take(sum: &mut Sum, plate: &TubePlate, asked: &Asked<'_>) -> Result<Taken, Stop> {
    let served = OURS.serve(sum, asked, &plate.id, plate.metal_temperature.as_ref())?;
    let thickness = Wall::of(need("the thickness", &plate.id, plate.thickness.as_ref())?);
    let t = thickness.file(sum, "t", "least thickness of the plate")?;
    let f = stress::ours(sum, plate.metal, served.metal, "f")?;
    Ok(Taken {
        served,
        plate: thickness,
        t,
        f,
    })
}

/// Files the greatest pitch of the supports.
pub(crate) fn file_pitch(sum: &mut Sum, plate: &TubePlate) -> Result<Ref, Stop> {
    let pitch = need(
        "the pitch of the tubes",
        &plate.id,
        plate.nest.pitch.as_ref(),
    )?;
    let pitch = sum.know("p", "pitch of the tubes", &MM, pitch);
    let Field::Gapped { circle, side } = &plate.nest.field else {
        return Ok(pitch);
    };
    let circle = sum.know(
        "d_c",
        "largest bare circle through three tubes",
        &MM,
        circle,
    );
    let side = sum.know("s", "middle side of their triangle", &MM, side);
    let field = sum.card(&plate_stayed::FIELD_PITCH, &[circle, side])?;
    let greatest = sum.value(pitch).max(sum.value(field));
    Ok(sum.w.chosen(Choice {
        symbol: "p",
        meaning: "greatest pitch of the supports",
        value: greatest,
        unit: &MM,
        between: "the pitch of the nest and its widest field",
        reason: "the greater",
        from: &[pitch, field],
        cite: None,
    }))
}

/// Files the constant of UG-47.
pub(crate) fn file_stay_constant(sum: &mut Sum) -> Ref {
    let known = chosen(
        Ratio::from_number(STAY_CONSTANT),
        "2.1 to 3.2 by kind of stay",
        "tubes brazed through the plate are taken as stays riveted over",
        Origin::FromMemory,
    );
    sum.know("C", "constant for the kind of stay", &ONE, &known)
}

/// The plate against the pitch of its tubes.
fn stayed(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&PLATE_STAYED, &plate.id), |sum| {
        let taken = take(sum, plate, asked)?;
        let pitch = file_pitch(sum, plate)?;
        let c = file_stay_constant(sum);
        let least = [pitch, taken.served.p, taken.f, c];
        let least = sum.card(&plate_stayed::WALL, &least)?;
        sum.card(&plate_stayed::PRESSURE, &[taken.t, taken.f, c, pitch])?;
        sum.card(&plate_stayed::OBLONG, &[taken.t, taken.f, c, pitch, pitch])?;
        let (has, least) = (taken.plate.mm(), sum.value(least));
        taken.plate.hold(sum, "thickness", &plate.id, least);
        let says = format!("plate {has:.2} mm, {least:.2} mm asked by the pitch");
        let most = sum.value(pitch) * has / least;
        let remedy = format!(
            "{}; or a pitch of {} mm",
            next_stock("a plate", &asked.stock.sheets, least),
            down(most)
        );
        Ok(Outcome::compared(has, least, says, remedy))
    })
}

/// Files the bending stress that a plate may bear at work.
pub(super) fn file_bending(sum: &mut Sum, metal: Metal, f: Ref) -> Result<Ref, Stop> {
    let cold = proof_cold(metal)?;
    let allowed = allow::bending(sum.value(f), cold.value.mpa(), TEST_FACTOR);
    let cold = sum.know("R_c", "0.2 % proof stress, cold", &MPA, &cold);
    let k = file_test_factor(sum);
    sum.settled(&allow::BENDING, &[f, cold, k], allowed)
}

/// Closes a check of bending, which falls with the square of the thickness.
fn bent(
    sum: &mut Sum,
    plate: &TubePlate,
    asked: &Asked<'_>,
    taken: &Taken,
    (sigma, allowed): (Ref, Ref),
) -> Outcome {
    let (sigma, allowed) = (sum.value(sigma), sum.value(allowed));
    let least = taken.plate.mm() * (sigma / allowed).sqrt();
    taken.plate.hold(sum, "thickness", &plate.id, least);
    let says = format!("bent to {sigma:.1} MPa, {allowed:.1} MPa allowed");
    let remedy = next_stock("a plate", &asked.stock.sheets, least);
    Outcome::compared(allowed, sigma, says, remedy)
}

/// The strip between the outer tubes and the wall.
fn margin(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&PLATE_MARGIN, &plate.id), |sum| {
        let taken = take(sum, plate, asked)?;
        let m = need("the margin to the wall", &plate.id, plate.margin.as_ref())?;
        let m = sum.know("m", "widest strip from tube to wall", &MM, m);
        let strip = [taken.served.p, m, taken.t];
        let sigma = sum.card(&plate_disc::STRIP_SUPPORTED, &strip)?;
        sum.card(&plate_disc::STRIP_CLAMPED, &strip)?;
        let allowed = file_bending(sum, plate.metal, taken.f)?;
        Ok(bent(sum, plate, asked, &taken, (sigma, allowed)))
    })
}

/// The plate round an opening that is not a tube, without credit for a bush.
fn pierced(plate: &TubePlate, opening: &Opening, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&PLATE_OPENING, &opening.id), |sum| {
        let taken = take(sum, plate, asked)?;
        let pitch = file_pitch(sum, plate)?;
        let c = file_stay_constant(sum);
        let by_pitch = sum.card(&plate_stayed::WALL, &[pitch, taken.served.p, taken.f, c])?;
        let m = need("the margin to the wall", &plate.id, plate.margin.as_ref())?;
        let m = sum.know("m", "widest strip from tube to wall", &MM, m);
        let allowed = file_bending(sum, plate.metal, taken.f)?;
        let by_strip = sum.card(&plate_disc::STRIP_WALL, &[taken.served.p, m, allowed])?;
        let whole = sum.w.chosen(Choice {
            symbol: "t",
            meaning: "least plate without an opening",
            value: sum.value(by_pitch).max(sum.value(by_strip)),
            unit: &MM,
            between: "what the pitch and what the margin ask",
            reason: "the greater",
            from: &[by_pitch, by_strip],
            cite: None,
        });
        let least = sum.card(&plate_stayed::PIERCED, &[whole])?;
        let (has, least) = (taken.plate.mm(), sum.value(least));
        taken.plate.hold(sum, "thickness", &plate.id, least);
        let says = format!(
            "plate {has:.2} mm, {least:.2} mm asked where {} pierces it",
            opening.id
        );
        let remedy = next_stock("a plate", &asked.stock.sheets, least);
        Ok(Outcome::compared(has, least, says, remedy))
    })
}

/// The disc between neighbouring tubes.
fn between(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&PLATE_BETWEEN, &plate.id), |sum| {
        let taken = take(sum, plate, asked)?;
        let pitch = file_pitch(sum, plate)?;
        let tube = need(
            "the outside of the tubes",
            &plate.id,
            plate.nest.outside.as_ref(),
        )?;
        let d_o = file_size(sum, ("d_o", "outside of the tubes"), tube, Bad::Small)?;
        let card: &'static Card = match plate.nest.layout {
            Layout::Triangle => &plate_disc::BETWEEN_TRIANGLE,
            Layout::Square => &plate_disc::BETWEEN_SQUARE,
        };
        let circle = sum.card(card, &[pitch, d_o])?;
        let a = sum.card(&ring::RADIUS, &[circle])?;
        let nu = sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral());
        let disc = [taken.served.p, a, taken.t, nu];
        let sigma = sum.card(&plate_disc::SUPPORTED, &disc)?;
        sum.card(&plate_disc::CLAMPED_CENTRE, &disc)?;
        sum.card(&plate_disc::CLAMPED_EDGE, &[taken.served.p, a, taken.t])?;
        let allowed = file_bending(sum, plate.metal, taken.f)?;
        Ok(bent(sum, plate, asked, &taken, (sigma, allowed)))
    })
}

/// The plate left between two tube holes.
fn ligament(plate: &TubePlate) -> Finding {
    check(OURS.head(&PLATE_LIGAMENT, &plate.id), |sum| {
        let thickness = need("the thickness", &plate.id, plate.thickness.as_ref())?;
        let t = file_size(sum, ("t", "thickness of the plate"), thickness, Bad::Large)?;
        let pitch = need(
            "the pitch of the tubes",
            &plate.id,
            plate.nest.pitch.as_ref(),
        )?;
        let p = sum.know("p", "pitch of the tubes", &MM, pitch);
        let hole = need(
            "the holes of the tubes",
            &plate.id,
            plate.nest.hole.as_ref(),
        )?;
        let d = file_size(sum, ("d", "hole of the tubes"), hole, Bad::Large)?;
        let left = sum.card(&plate_stayed::LIGAMENT, &[p, d])?;
        let least = sum.value(t).max(LEAST_LIGAMENT_MM);
        sum.w.chosen(Choice {
            symbol: "b_min",
            meaning: "plate to be left between two tubes",
            value: least,
            unit: &MM,
            between: "2.5 mm and the plate's thickness",
            reason: "the greater",
            from: &[t],
            cite: Some(PLATE_LIGAMENT.cite),
        });
        let left = sum.value(left);
        let says = format!("{left:.2} mm left between tubes, {least:.2} mm asked");
        let remedy = format!(
            "a pitch of {} mm",
            crate::remedy::at_least(sum.value(d) + least)
        );
        Ok(Outcome::compared(left, least, says, remedy))
    })
}
