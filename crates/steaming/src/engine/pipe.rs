//! Heat that the steam pipe loses. The pipe is taken at the saturation temperature of the boiler,
//! so that superheat of the steam in it is left out.

use formulas::engine::{StillAir, Surface, free_nusselt, lagging_heat, pipe_heat, rayleigh};
use formulas::gas::{FlueGas, MoleFractions};
use formulas::heat::{film_coefficient, prandtl};
use reckoning::solve::Solved;

use super::given::{Lagging, Pipe};
use crate::fault::NotSettled;
use crate::seek::seek;

/// Accuracy of the temperature of the surface.
const ACCURACY: f64 = 1e-9;

/// The pipe in the room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PipeState {
    /// Temperature of the pipe, K.
    pub pipe_k: f64,
    /// Temperature of the surface, K: that of the pipe where it is bare.
    pub surface_k: f64,
    /// Diameter of the surface, m.
    pub surface_m: f64,
    /// Mean temperature of surface and room, at which the air is taken, K.
    pub film_k: f64,
    /// Density of the air there, kg/m³.
    pub air_kg_m3: f64,
    /// Viscosity of the air there, Pa s.
    pub air_pa_s: f64,
    /// Conductivity of the air there, W/(m K).
    pub air_w_m_k: f64,
    /// Its Prandtl number.
    pub prandtl: f64,
    /// Rayleigh number.
    pub rayleigh: f64,
    /// Nusselt number.
    pub nusselt: f64,
    /// Coefficient of convection, W/(m² K).
    pub w_m2_k: f64,
    /// Heat lost, W.
    pub heat_w: f64,
    /// The root of the surface's temperature, where it is lagged.
    pub surface: Option<Solved>,
}

/// The room round the pipe.
#[derive(Clone, Copy, Debug)]
pub(super) struct Room {
    pub(super) air_k: f64,
    pub(super) air_pa: f64,
}

/// Settles a pipe of steam of this temperature, K.
pub(super) fn settle(pipe: &Pipe, steam_k: f64, room: &Room) -> Result<PipeState, NotSettled> {
    if steam_k <= room.air_k {
        return Err(NotSettled::Plant {
            what: "temperature of the room in K",
            value: room.air_k,
            why: "it is not below that of the steam pipe",
        });
    }
    let air = FlueGas::new(&MoleFractions::DRY_AIR);
    let Some(lagging) = pipe.lagging else {
        let state = PipeState::of(pipe, (steam_k, pipe.outside_m), room, &air);
        return Ok(PipeState {
            pipe_k: steam_k,
            ..state
        });
    };
    let over_m = pipe.outside_m + 2.0 * lagging.thickness_m;
    let at = |surface_k| PipeState::of(pipe, (surface_k, over_m), room, &air);
    let passes = |surface_k| through(pipe, &lagging, steam_k - surface_k);
    let bracket = (room.air_k, steam_k);
    let solved = seek(
        "heat through the lagging of the pipe",
        bracket,
        ACCURACY,
        |t| Ok(passes(t) - at(t).heat_w),
    )?;
    Ok(PipeState {
        pipe_k: steam_k,
        surface: Some(solved),
        ..at(solved.x)
    })
}

/// Heat that passes the lagging, W.
fn through(pipe: &Pipe, lagging: &Lagging, fall_k: f64) -> f64 {
    let over_m = pipe.outside_m + 2.0 * lagging.thickness_m;
    lagging_heat(lagging.w_m_k, pipe.length_m, pipe.outside_m, over_m, fall_k)
}

impl PipeState {
    fn of(pipe: &Pipe, (surface_k, surface_m): (f64, f64), room: &Room, air: &FlueGas) -> Self {
        let film_k = f64::midpoint(surface_k, room.air_k);
        let carry = air.transport(film_k);
        let still = StillAir {
            rho: air.density(film_k, room.air_pa),
            mu: carry.viscosity,
            pr: prandtl(
                carry.viscosity,
                air.specific_heat(film_k),
                carry.conductivity,
            ),
        };
        let rayleigh = rayleigh(surface_k, room.air_k, surface_m, &still);
        let nusselt = free_nusselt(rayleigh, still.pr);
        let w_m2_k = film_coefficient(nusselt, carry.conductivity, surface_m);
        let surface = Surface {
            d: surface_m,
            l: pipe.length_m,
            h: w_m2_k,
            eps: pipe.emissivity,
        };
        Self {
            pipe_k: surface_k,
            surface_k,
            surface_m,
            film_k,
            air_kg_m3: still.rho,
            air_pa_s: still.mu,
            air_w_m_k: carry.conductivity,
            prandtl: still.pr,
            rayleigh,
            nusselt,
            w_m2_k,
            heat_w: pipe_heat(&surface, surface_k, room.air_k),
            surface: None,
        }
    }
}
