//! The stirred firebox: one gas temperature at which the heat set free equals the heat that the
//! gas carries on plus the heat that the cold wall receives.
//!
//! Sources: the stirred furnace of Radiative Transfer (1967). Over a bed the wall is reckoned with
//! one emissivity and no convection; round a flame the gas radiates by its own emissivity, and
//! convection is counted. Left out: a temperature of the bed apart from that of the gas, and loss
//! through the door.

use formulas::balance::{wall_convection, wall_heat};
use formulas::flue::sooty_emissivity;
use formulas::gas::{FlueGas, partial_pressure};
use formulas::heat::{GasPath, emissivity, enclosure_emissivity, radiant_heat};
use reckoning::Refused;
use reckoning::quantity::{Absolute, Quantity};
use reckoning::solve::{NotSolved, Solved, bracketed};

use crate::fault::NotSettled;
use crate::firing::FlameBox;
use crate::seek::seek;

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

/// Heat that a coil in the firebox takes, W, from this flow of gas (kg/s) at this temperature (K).
pub(crate) type Taker<'a> = &'a dyn Fn(&FlueGas, f64, f64) -> Result<f64, NotSettled>;

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
    let balance = bracketed(walls.wall_k, HOTTEST_K, ACCURACY_K, |t| {
        fire.heat_w - fire.gas_kg_s * gas.enthalpy(t) - walls.receives(t)
    })?;
    Ok(walls.at(fire, gas, balance))
}

impl Walls {
    /// Heat radiated to the wall by a fire of this temperature, K.
    pub(crate) fn receives(&self, gas_k: f64) -> f64 {
        radiant_heat(self.area_m2, self.emissivity, gas_k, self.wall_k)
    }

    /// The firebox at the root of its balance.
    pub(crate) fn at(&self, fire: &Fire, gas: &FlueGas, balance: Solved) -> Settled {
        Settled {
            gas_k: balance.x,
            radiant_w: self.receives(balance.x),
            carried_w: fire.gas_kg_s * gas.enthalpy(balance.x),
            balance,
        }
    }
}

/// The balance of a box once a coil takes heat from it: the gas is no hotter than without it.
///
/// # Errors
/// [`NotSettled`] where the coil would take all, or its steam cannot be worked.
pub(crate) fn with_coil(
    fire: &Fire,
    gas: &FlueGas,
    (wall_k, without_k): (f64, f64),
    (taker, to_wall): (Taker<'_>, impl Fn(f64) -> Result<f64, NotSettled>),
) -> Result<Solved, NotSettled> {
    let balance = "heat of the firebox with the coil in it";
    seek(balance, (wall_k, without_k), COIL_ACCURACY_K, |t| {
        let taken = taker(gas, fire.gas_kg_s, t)?;
        Ok(fire.heat_w - fire.gas_kg_s * gas.enthalpy(t) - to_wall(t)? - taken)
    })
}

/// To how many kelvin the temperature is found where a coil takes heat.
const COIL_ACCURACY_K: f64 = 1e-7;

/// The cold wall that a flame sees.
#[derive(Clone, Copy, Debug)]
pub struct FlameWalls<'a> {
    /// The box.
    pub of: &'a FlameBox,
    /// Emissivity of the soot in the flame.
    pub soot: f64,
    /// Temperature of the wall on the gas side, K.
    pub wall_k: f64,
    /// Pressure of the gas, Pa absolute.
    pub pressure_pa: f64,
}

/// The settled firebox round a flame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameSettled {
    /// Temperature of the gas, also where it leaves, K.
    pub gas_k: f64,
    /// Emissivity of the gas with its soot.
    pub gas_emissivity: f64,
    /// Effective emissivity between it and the wall.
    pub effective: f64,
    /// Heat radiated to the wall, W.
    pub radiant_w: f64,
    /// Heat that the wall receives by convection, W.
    pub convected_w: f64,
    /// Heat that the gas carries on, above 298.15 K, W.
    pub carried_w: f64,
    /// The balance, in K and W.
    pub balance: Solved,
}

impl FlameSettled {
    /// Heat to the wall, W.
    #[must_use]
    pub fn wall_w(&self) -> f64 {
        wall_heat(self.radiant_w, self.convected_w)
    }
}

/// Finds the gas temperature of a stirred firebox round a flame.
///
/// # Errors
/// [`NotSettled`] where the flame cannot keep its gas hotter than the wall, or the radiation of
/// the gas cannot be worked.
pub fn settle_flame(
    fire: &Fire,
    walls: &FlameWalls<'_>,
    gas: &FlueGas,
) -> Result<FlameSettled, NotSettled> {
    settle_flame_with(fire, walls, gas, None)
}

/// As [`settle_flame`], with a coil that takes heat from the box.
pub(crate) fn settle_flame_with(
    fire: &Fire,
    walls: &FlameWalls<'_>,
    gas: &FlueGas,
    taker: Option<Taker<'_>>,
) -> Result<FlameSettled, NotSettled> {
    // The radiation is refused for a composition and a beam, whatever the temperature.
    walls.at(fire, gas, HOTTEST_K)?;
    let left = |t| {
        walls.at(fire, gas, t).map_or(f64::NAN, |at| {
            fire.heat_w - at.carried_w - at.radiant_w - at.convected_w
        })
    };
    let mut balance = bracketed(walls.wall_k, HOTTEST_K, ACCURACY_K, left)
        .map_err(NotSettled::of("heat of the firebox round the flame"))?;
    if let Some(taker) = taker {
        let to_wall = |t| Ok(walls.at(fire, gas, t)?.wall_w());
        balance = with_coil(fire, gas, (walls.wall_k, balance.x), (taker, to_wall))?;
    }
    Ok(FlameSettled {
        balance,
        ..walls.at(fire, gas, balance.x)?
    })
}

impl FlameWalls<'_> {
    /// What the wall receives from gas of this temperature.
    fn at(&self, fire: &Fire, gas: &FlueGas, gas_k: f64) -> Result<FlameSettled, Refused> {
        let (of, p_bar) = (self.of, Absolute::from_si(self.pressure_pa).bar());
        let path = GasPath {
            p_bar,
            h2o_bar: partial_pressure(gas.fractions().h2o, p_bar),
            co2_bar: partial_pressure(gas.fractions().co2, p_bar),
            path_m: of.beam_m,
        };
        let gas_emissivity = sooty_emissivity(emissivity(&path, gas_k)?, self.soot);
        let effective = enclosure_emissivity(of.wall_emissivity, gas_emissivity);
        Ok(FlameSettled {
            gas_k,
            gas_emissivity,
            effective,
            radiant_w: radiant_heat(of.area_m2, effective, gas_k, self.wall_k),
            convected_w: wall_convection(of.convection, of.area_m2, gas_k, self.wall_k),
            carried_w: fire.gas_kg_s * gas.enthalpy(gas_k),
            balance: Solved {
                x: gas_k,
                residual: 0.0,
                bracket: (gas_k, gas_k),
                rounds: 0,
            },
        })
    }
}
