//! How hot the coil in the smokebox gets: while steam flows through it, and while none does.

use reckoning::quantity::{HeatFlux, Quantity, Temperature};
use reckoning::{Given, Known, Origin};
use steaming::{Draws, FireState};

/// How hot a coil gets in one fire, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Heated {
    /// Hottest metal while steam flows, K; `None` where the fire sends none through it.
    flowing_k: Option<f64>,
    /// Gas that comes to it, K.
    gas_k: f64,
    /// Greatest heat through its wall, W/m².
    flux_w_m2: Option<f64>,
}

/// How hot the coil of a plant gets, at the worst of its fires.
#[derive(Clone, Debug)]
pub struct CoilHeat {
    /// Hottest metal while steam flows.
    pub flowing: Option<Known<Temperature>>,
    /// Gas about it while none flows.
    pub standing: Known<Temperature>,
    /// Greatest heat through its wall while steam flows.
    pub flux: Option<Known<HeatFlux>>,
}

/// The coil in one fire, each number at the 90 % point of its band.
pub(crate) fn heated(draws: &Draws) -> Option<Heated> {
    let high = |reads: fn(&FireState) -> Option<f64>| draws.band(reads).ok().map(|b| b.high);
    Some(Heated {
        flowing_k: high(metal_k),
        gas_k: high(|state| Some(state.pass.arriving_k))?,
        flux_w_m2: high(flux_w_m2),
    })
}

/// Hottest metal while steam flows: at its outlet, between the gas before it has mixed and the
/// steam, as their films share the fall of temperature.
fn metal_k(state: &FireState) -> Option<f64> {
    let (coil, size) = (state.pass.dryer?, state.inputs.dryer?);
    let outside = coil.outside_w_m2_k * size.outside_m;
    let inside = coil.inside_w_m2_k * size.bore_m;
    let gas = outside * state.pass.arriving_k;
    let steam = inside * coil.outlet.t_k;
    Some((gas + steam) / (outside + inside))
}

/// Heat from the gas before it has mixed to metal as cold as the steam that enters.
fn flux_w_m2(state: &FireState) -> Option<f64> {
    let coil = state.pass.dryer?;
    Some(coil.outside_w_m2_k * (state.pass.arriving_k - state.water.saturation_k))
}

/// The worst of these fires; `weakest` is the weakest of what they rest on.
pub(crate) fn worst(fires: &[Heated], weakest: Origin) -> Option<CoilHeat> {
    let most = |of: fn(&Heated) -> Option<f64>| fires.iter().filter_map(of).max_by(f64::total_cmp);
    Some(CoilHeat {
        flowing: most(|f| f.flowing_k).map(|k| {
            known(
                Temperature::from_k(k),
                "metal at the outlet, between gas and steam",
                weakest,
            )
        }),
        standing: most(|f| Some(f.gas_k)).map(|k| {
            known(
                Temperature::from_k(k),
                "the gas that comes to the coil, which its metal reaches while no steam flows",
                weakest,
            )
        })?,
        flux: most(|f| f.flux_w_m2).map(|w| {
            known(
                HeatFlux::from_w_m2(w),
                "gas against metal as cold as the steam that enters",
                weakest,
            )
        }),
    })
}

fn known<Q: Quantity>(value: Q, of: &str, weakest: Origin) -> Known<Q> {
    Known {
        value,
        given: Given::Chosen {
            between: "the fire with its blast and with its blower".to_owned(),
            reason: format!("{of}; the greater, at the 90 % point of its band"),
            weakest,
        },
    }
}
