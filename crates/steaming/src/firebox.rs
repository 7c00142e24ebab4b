//! The stirred firebox: one gas temperature at which the heat set free equals the heat that the
//! gas carries on plus the heat radiated to the cold wall.
//!
//! Sources: the stirred furnace of Radiative Transfer (1967). Left out: convection to the
//! plates, a temperature of the bed apart from that of the gas, and loss through the door.

use formulas::gas::FlueGas;
use formulas::heat::radiant_heat;
use reckoning::solve::{NotSolved, Solved, bracketed};

/// The cold wall that the fire sees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Walls {
    /// Wetted wall round the fire, m².
    pub area_m2: f64,
    /// Effective emissivity between the fire and that wall.
    pub emissivity: f64,
    /// Temperature of the wall on the gas side, K.
    pub wall_k: f64,
}

/// What the fire gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fire {
    /// Heat set free, with the enthalpy of the air above 298.15 K, W.
    pub heat_w: f64,
    /// Gas that leaves the firebox, kg/s.
    pub gas_kg_s: f64,
}

/// The settled firebox.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Settled {
    /// Temperature of the gas, also where it leaves, K.
    pub gas_k: f64,
    /// Heat radiated to the wall, W.
    pub radiant_w: f64,
    /// Heat that the gas carries on, above 298.15 K, W.
    pub carried_w: f64,
    /// The balance, in K and W.
    pub balance: Solved,
}

/// Hotter than any fuel burns in air; the upper end of the search.
const HOTTEST_K: f64 = 3500.0;

/// To how many kelvin the temperature is found.
const ACCURACY_K: f64 = 1e-9;

/// Finds the gas temperature of a stirred firebox.
///
/// # Errors
/// [`NotSolved`] where the fire cannot keep its gas hotter than the wall, or a value is not a
/// number.
pub fn settle(fire: &Fire, walls: &Walls, gas: &FlueGas) -> Result<Settled, NotSolved> {
    let radiant = |t| radiant_heat(walls.area_m2, walls.emissivity, t, walls.wall_k);
    let carried = |t| fire.gas_kg_s * gas.enthalpy(t);
    let balance = bracketed(walls.wall_k, HOTTEST_K, ACCURACY_K, |t| {
        fire.heat_w - carried(t) - radiant(t)
    })?;
    Ok(Settled {
        gas_k: balance.x,
        radiant_w: radiant(balance.x),
        carried_w: carried(balance.x),
        balance,
    })
}
