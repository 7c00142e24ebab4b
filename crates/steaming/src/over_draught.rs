//! Steam jets in the chimney of a flame: what they add to its draught, and what would take that
//! away again.
//!
//! A flame lives on a pascal of draught, and an exhaust jet makes a hundred. What counts is the
//! suction of the smokebox with the jets over that without: an opening into the smokebox lets the
//! jets draw beside the flame, a tip at the top of the chimney draws nothing.

use crate::fault::NotSettled;
use crate::fire::settle;
use crate::inputs::{Inputs, Leak};
use crate::signs::MOST_ADDED_PA;

/// By how much the tip of a nozzle is raised at a time, m.
const LIFT_M: f64 = 5e-3;
/// Openings into the smokebox that are tried: each so many times the last.
const WIDER: f64 = 1.25;
/// The narrowest and the widest of them, m².
const OPENINGS_M2: (f64, f64) = (1e-4, 0.05);
/// Discharge coefficient of such an opening (textbooks of fluid flow, from memory).
const OPENING: f64 = 0.6;

/// What the steam jets of a plant do to its flame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OverDraught {
    /// Suction of the smokebox without the jets, Pa.
    pub calm_pa: f64,
    /// Air over the air needed without the jets.
    pub calm_air: f64,
    /// Suction that the jets add, Pa; `None` where they draw more air than the flame can warm.
    pub added_pa: Option<f64>,
    /// Air over the air needed with the jets.
    pub air: Option<f64>,
    /// Distance by which the tip of the nozzle must be raised, m; `None` where there is no nozzle,
    /// or no height of it is enough.
    pub raise_m: Option<f64>,
    /// Opening into the smokebox that takes the jets off the flame and leaves it draught enough at
    /// rest, m²; `None` within range.
    pub opening_m2: Option<f64>,
}

/// What the steam jets do to a flame at a gauge pressure, Pa; `None` where a bed burns, or where
/// nothing blows.
///
/// # Errors
/// [`NotSettled`] where the flame has no balance even without the jets.
pub fn over_draught(inputs: &Inputs, gauge_pa: f64) -> Result<Option<OverDraught>, NotSettled> {
    let exhaust = inputs.blast.is_some() && inputs.engine.is_some();
    if inputs.firing.flame().is_none() || !(exhaust || inputs.blower.is_some()) {
        return Ok(None);
    }
    // The draught does not ask how much of the heat the shell loses.
    let mut inputs = *inputs;
    inputs.boiler.shell_loss_w = 0.0;
    let calm = suction(&calmed(&inputs), gauge_pa)?;
    let drawn = suction(&inputs, gauge_pa).ok();
    let most_pa = calm.0 + MOST_ADDED_PA;
    let bears = |inputs: &Inputs| suction(inputs, gauge_pa).is_ok_and(|s| s.0 <= most_pa);
    Ok(Some(OverDraught {
        calm_pa: calm.0,
        calm_air: calm.1,
        added_pa: drawn.map(|s| s.0 - calm.0),
        air: drawn.map(|s| s.1),
        raise_m: raise(&inputs, bears),
        opening_m2: opening(&inputs, |opened| {
            bears(opened) && suction(&calmed(opened), gauge_pa).is_ok()
        }),
    }))
}

/// The plant with nothing that blows.
fn calmed(inputs: &Inputs) -> Inputs {
    Inputs {
        blast: None,
        blower: None,
        ..*inputs
    }
}

/// Suction of the smokebox, Pa, and air over the air needed.
fn suction(inputs: &Inputs, gauge_pa: f64) -> Result<(f64, f64), NotSettled> {
    let state = settle(inputs, gauge_pa)?;
    let air = state.pass.firing.flame().map_or(0.0, |f| f.air_ratio);
    Ok((state.pass.loss_pa, air))
}

/// The least rise of the tip that the flame bears: sought from the top of the parallel part, where
/// the jet draws nothing, downwards.
fn raise(inputs: &Inputs, bears: impl Fn(&Inputs) -> bool) -> Option<f64> {
    let drawn = inputs.blast?.below_choke_m;
    let whole = drawn + inputs.chimney.parallel_m;
    let raised = |by_m: f64| {
        let mut inputs = *inputs;
        inputs
            .blast
            .iter_mut()
            .for_each(|b| b.below_choke_m = drawn - by_m);
        inputs
    };
    let mut least = None;
    let mut by_m = whole;
    while by_m > 0.0 && bears(&raised(by_m)) {
        least = Some(by_m);
        by_m -= LIFT_M;
    }
    least
}

/// The least opening that the flame bears with the jets, and at rest, when the same opening lets
/// its own draught run out.
fn opening(inputs: &Inputs, bears: impl Fn(&Inputs) -> bool) -> Option<f64> {
    let mut area_m2 = OPENINGS_M2.0;
    while area_m2 <= OPENINGS_M2.1 {
        let leak = Leak {
            area_m2,
            coefficient: OPENING,
        };
        if bears(&Inputs {
            leak: Some(leak),
            ..*inputs
        }) {
            return Some(area_m2);
        }
        area_m2 *= WIDER;
    }
    None
}
