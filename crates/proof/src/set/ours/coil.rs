//! A coil in hot gas: pressure while steam flows and while none does, and what heat does to it.
//!
//! Steam that stands in a coil takes up no heat, so that its metal goes to the temperature of the
//! gas. A regulator behind the coil and one before it are alike in that.

use super::OURS;
use super::inside::{Tube, take, test, wall};
use crate::input::{Coil, CoilHeat, Metal};
use crate::metal::{conductivity, expansion, lateral, modulus};
use crate::rules::{COIL_FLOWING, COIL_STANDING, COIL_STRAIN};
use crate::set::Asked;
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{need, up};
use formulas::vessel::{heated as law, ring, shell, stay_rod, thick};
use reckoning::quantity::{
    CELSIUS, KELVIN_RISE, KW_PER_M2, Length, MM, MPA, ONE, PER_K, Temperature, TemperatureRise,
    W_PER_M_K,
};
use reckoning::{Finding, Given, Known};

/// Least wall of a coil of stainless steel in hot gas, mm.
const LEAST_STAINLESS_MM: f64 = 1.0;
/// Temperature at which a coil is bent and brazed, from which it grows, °C.
const COLD_C: f64 = 15.0;
/// Greatest temperature of brazed joints, °C.
const BRAZED_C: f64 = 200.0;

/// Every check of a coil.
pub(super) fn checks(coil: &Coil, asked: &Asked<'_>) -> Vec<Finding> {
    let heat = asked.service.coils.iter().find(|heat| heat.coil == coil.id);
    let flowing = heat.and_then(|heat| heat.flowing.as_ref());
    let standing = heat.and_then(|heat| heat.standing.as_ref());
    let tube = |at, when| Tube {
        id: &coil.id,
        metal: coil.metal,
        outside: coil.outside.as_ref(),
        wall: coil.wall.as_ref(),
        at,
        when,
    };
    let flows = tube(flowing, "while steam flows");
    let stands = tube(standing, "while no steam flows");
    vec![
        wall(&COIL_FLOWING, &flows, asked, of_stainless),
        wall(&COIL_STANDING, &stands, asked, of_stainless),
        test(&flows, asked),
        strain(coil, heat, &flows, asked),
    ]
}

/// A coil of stainless steel that would do, with its wall.
fn of_stainless(p_mpa: f64, d_mm: f64, at: Temperature) -> String {
    let Ok(f) = stress::stainless(Metal::Stainless, at) else {
        return format!(
            "a coil out of the hottest gas: no metal is listed here at {:.0} °C",
            at.c()
        );
    };
    let by_pressure = shell::shell_wall_outside(p_mpa, d_mm, f.value.mpa(), 1.0);
    let least = by_pressure.max(LEAST_STAINLESS_MM);
    format!(
        "a coil of stainless steel 1.4401 (316) with a wall of {} mm or more, of which pressure asks {} mm; or the coil where the gas stays at {BRAZED_C:.0} °C or below",
        up(least),
        up(by_pressure)
    )
}

/// Pressure and heat together, and the room that the coil needs to grow.
fn strain(coil: &Coil, heat: Option<&CoilHeat>, tube: &Tube<'_>, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&COIL_STRAIN, &coil.id), |sum| {
        let at = need("the metal temperature", &coil.id, tube.at)?;
        sum.know("T_m", "greatest metal temperature", &CELSIUS, at);
        let taken = take(sum, tube, asked)?;
        let f = stress::ours(sum, coil.metal, at.value, "f")?;
        let bore = sum.card(&ring::BORE, &[taken.d, taken.t])?;
        let by_pressure = sum.card(&thick::HOOP, &[taken.p, taken.d, bore])?;
        let flux = heat.and_then(|heat| heat.flux.as_ref());
        let flux = need("the heat through its wall", &coil.id, flux)?;
        let q = sum.know("q", "greatest heat through the wall", &KW_PER_M2, flux);
        let k = sum.know("k", "conductivity", &W_PER_M_K, &conductivity(coil.metal)?);
        let across = sum.card(&law::RISE, &[q, taken.t, k])?;
        let e = sum.know("E", "modulus of elasticity", &MPA, &modulus(coil.metal)?);
        let alpha = sum.know("alpha", "expansion", &PER_K, &expansion(coil.metal)?);
        let nu = sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral());
        let by_heat = sum.card(&law::STRESS, &[e, alpha, across, nu])?;
        let both = sum.card(&law::TOGETHER, &[by_pressure, by_heat])?;
        let most = sum.card(&law::RANGE, &[f])?;
        hold_growth(sum, coil, at, alpha)?;
        let (both, most) = (sum.value(both), sum.value(most));
        let says =
            format!("pressure and heat strain the wall to {both:.1} MPa, {most:.1} MPa allowed");
        let remedy = COIL_STRAIN.remedy.to_owned();
        taken.wall.hold_as_used(sum, "wall", &coil.id);
        Ok(Outcome::compared(most, both, says, remedy))
    })
}

/// Holds open that the coil may grow, with the room that it needs.
fn hold_growth(
    sum: &mut Sum,
    coil: &Coil,
    at: &Known<Temperature>,
    alpha: reckoning::Ref,
) -> Result<(), Stop> {
    let rise = Known {
        value: TemperatureRise::from_k(at.value.c() - COLD_C),
        given: Given::Chosen {
            between: "the coil cold and at work".to_owned(),
            reason: format!("from {COLD_C} °C, at which it was fitted"),
            weakest: at.given.origin(),
        },
    };
    let rise = sum.know("dT", "rise over the cold coil", &KELVIN_RISE, &rise);
    let (reach, what) = match (&coil.turn, &coil.length) {
        (Some(turn), _) => (turn, "turns of the coil"),
        (None, Some(length)) => (length, "straight tube"),
        (None, None) => {
            return Err(Stop::Missing {
                what: "the length",
                part: coil.id.clone(),
            });
        }
    };
    let reach = sum.know("H", what, &MM, reach);
    let grown = sum.card(&stay_rod::GROWTH, &[alpha, rise, reach])?;
    let room = up(Length::from_mm(sum.value(grown)).mm());
    let free = format!("one end of {} free to move by {room} mm", coil.id);
    sum.hold(free, None);
    if at.value.c() > BRAZED_C {
        let out = format!("the brazed joints of {} out of the gas", coil.id);
        sum.hold(out, None);
    }
    Ok(())
}
