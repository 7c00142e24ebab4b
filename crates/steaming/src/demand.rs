//! The question turned round: how much will this fire hold.
//!
//! A faster engine asks for more steam and blows the fire harder, so that the steaming ratio may
//! cross one more than once over speed. The speeds are walked from the fastest down, and the
//! fastest at which the ratio is one is found between two of them.

use crate::fault::NotSettled;
use crate::fire::settle;
use crate::inputs::Inputs;
use crate::seek::seek;
use crate::state::FireState;

/// Speeds walked, as shares of the speed of the plan: a tenth to ten times in equal ratios.
const WALK: u32 = 40;

/// The greatest demand that the fire holds.
#[derive(Clone, Copy, Debug)]
pub struct Held {
    /// Speed over that of the plan.
    pub speed_share: f64,
    /// Steam made and taken, kg/s.
    pub steam_kg_s: f64,
    /// What stands above it.
    pub above: Above,
    /// The state there.
    pub state: FireState,
}

/// What stands above the greatest speed that is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Above {
    /// The engine asks for more than the fire makes.
    Demand,
    /// The loop has no balance; the speed is the last of those walked that has one.
    NoBalance,
}

/// What was found.
#[derive(Clone, Debug)]
pub enum Holding {
    /// The fire holds this much and no more.
    UpTo(Box<Held>),
    /// The fire holds every speed to ten times that of the plan.
    Beyond,
    /// It holds no speed from a tenth upward.
    Nothing,
    /// There is no engine: what the fire makes, kg/s, with the steam of the blower taken off.
    Plain(f64),
}

/// The greatest engine speed that the fire holds at a gauge pressure, Pa; of a plant without an
/// engine the steam that it makes.
///
/// # Errors
/// [`NotSettled`] where a crossing that two speeds bracket cannot be found,
/// or the fire without an engine has no balance.
pub fn greatest_speed(inputs: &Inputs, gauge_pa: f64) -> Result<Holding, NotSettled> {
    if inputs.engine.is_none() {
        let state = settle(inputs, gauge_pa)?;
        return Ok(Holding::Plain(state.evaporation_kg_s - state.demand_kg_s));
    }
    let ratio = |share: f64| Ok(excess(inputs, gauge_pa, share)?.0);
    let holds = |share: f64| ratio(share).is_ok_and(|left: f64| left >= 0.0);
    let share = |step: u32| 10_f64.powf(1.0 - 2.0 * f64::from(step) / f64::from(WALK));
    if holds(share(0)) {
        return Ok(Holding::Beyond);
    }
    let Some(step) = (1..=WALK).find(|step| holds(share(*step))) else {
        return Ok(Holding::Nothing);
    };
    let bracket = (share(step), share(step - 1));
    let (speed_share, above) = if ratio(bracket.1).is_ok() {
        let balance = "evaporation against demand over speed";
        (seek(balance, bracket, 1e-6, ratio)?.x, Above::Demand)
    } else {
        (bracket.0, Above::NoBalance)
    };
    let (_, state) = excess(inputs, gauge_pa, speed_share)?;
    Ok(Holding::UpTo(Box::new(Held {
        speed_share,
        steam_kg_s: state.demand_kg_s,
        above,
        state,
    })))
}

/// Steaming ratio less one at a share of the speed, with its state.
fn excess(inputs: &Inputs, gauge_pa: f64, share: f64) -> Result<(f64, FireState), NotSettled> {
    let mut faster = *inputs;
    faster
        .engine
        .iter_mut()
        .for_each(|e| e.load = e.load.faster(share));
    let state = settle(&faster, gauge_pa)?;
    Ok((state.evaporation_kg_s / state.demand_kg_s - 1.0, state))
}
