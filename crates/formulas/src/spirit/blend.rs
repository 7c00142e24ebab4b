//! Spirit of ethanol, methanol and water: the tables and laws put together for a loop. Nothing
//! here allocates once the spirit is prepared.

use reckoning::quantity::{CELSIUS, MJ_PER_KG, ONE, Quantity, SpecificEnergy, SpecificHeat};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use super::evaporation::Burning;
use crate::fuel::{Composition, oxygen_needed, stoichiometric_air};
use crate::sources::DERIVED;
use crate::steam::{self, OutOfRange};
use crate::supply::{Fluid, fluid, weighted_mean};
use crate::table::NoValue;

/// The parts, in the order of every array of this file.
pub const PARTS: [&str; 3] = ["ethanol", "methanol", "water"];

/// Lower heating value of a spirit, MJ/kg: its water leaves as vapour.
#[must_use]
pub fn spirit_heating_value(ethanol: [f64; 2], methanol: [f64; 2], water: f64) -> f64 {
    ethanol[0] * ethanol[1] + methanol[0] * methanol[1] - 2.442 * water
}

/// Card of [`spirit_heating_value`].
pub static SPIRIT_HEATING_VALUE: Card = Card {
    id: "spirit.heating-value",
    law: Law::Closed("LHV = w_e * H_e + w_m * H_m - 2.442 * w_w"),
    gives: symbol("LHV", &MJ_PER_KG, "lower heating value of the spirit"),
    takes: &[
        symbol("w_e", &ONE, "ethanol, by mass"),
        symbol("H_e", &MJ_PER_KG, "lower heating value of ethanol"),
        symbol("w_m", &ONE, "methanol, by mass"),
        symbol("H_m", &MJ_PER_KG, "lower heating value of methanol"),
        symbol("w_w", &ONE, "water, by mass"),
    ],
    limits: &[Limit::within("w_e + w_m + w_w", 0.9999, 1.0001)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "heats of burning add by mass; latent heat of water at 25 °C",
    },
    eval: |v| Ok(spirit_heating_value([v[0], v[1]], [v[2], v[3]], v[4])),
};

/// A spirit of a composition by mass, at the pressure of the air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spirit {
    /// Shares by mass in the order of [`PARTS`].
    pub by_mass: [f64; 3],
    /// Shares of its elements by mass, its water apart.
    pub composition: Composition,
    /// Lower heating value, J/kg.
    pub heating_value: f64,
    /// Dry air to burn it, kg/kg.
    pub air: f64,
    /// Oxygen to burn it, kg/kg.
    pub oxygen: f64,
    /// Boiling temperature, K: that of the alcohol of which there is more.
    pub boiling: f64,
    /// Latent heat at the boiling temperature, J/kg.
    pub latent: f64,
    /// Specific heat of the liquid half-way from 20 °C to boiling, J/(kg K).
    pub liquid_heat: f64,
}

/// Why a spirit cannot be prepared.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NoSpirit {
    /// A table lacks a part, or ends before its temperature.
    #[error("{0}")]
    Table(NoValue),
    /// Water outside the range of the steam equations.
    #[error("{0}")]
    Water(OutOfRange),
}

impl Spirit {
    /// Prepares the spirit from shares by mass in the order of [`PARTS`], boiling at `p_bar`
    /// absolute.
    ///
    /// # Errors
    /// [`NoSpirit`] where a table ends before the boiling temperature.
    pub fn new(by_mass: [f64; 3], p_bar: f64) -> Result<Self, NoSpirit> {
        let named = |name| fluid(name).map_err(NoSpirit::Table);
        let (ethanol, methanol) = (named(PARTS[0])?, named(PARTS[1])?);
        let main = if by_mass[1] > by_mass[0] {
            methanol
        } else {
            ethanol
        };
        let boiling = main.boiling(p_bar);
        let water = water_at(boiling)?;
        let latents = [
            latent(&ethanol, boiling)?,
            latent(&methanol, boiling)?,
            water[0],
        ];
        let warm = f64::midpoint(CELSIUS.to_si(20.0), boiling);
        let heats = [heat(&ethanol, warm)?, heat(&methanol, warm)?, water[1]];
        let composition = mixed(by_mass, &ethanol, &methanol);
        let air = stoichiometric_air(&composition);
        let mj = |f: &Fluid| MJ_PER_KG.from_si(f.heating_value);
        let [w_e, w_m, w_w] = by_mass;
        let lhv = spirit_heating_value([w_e, mj(&ethanol)], [w_m, mj(&methanol)], w_w);
        Ok(Self {
            by_mass,
            composition,
            heating_value: MJ_PER_KG.to_si(lhv),
            air,
            oxygen: oxygen_needed(air),
            boiling,
            latent: weighted_mean(by_mass, latents),
            liquid_heat: weighted_mean(by_mass, heats),
        })
    }

    /// The spirit on a wick that it reaches at `feed` kelvin.
    #[must_use]
    pub fn burning(&self, feed: f64) -> Burning {
        Burning {
            heating_value: self.heating_value,
            oxygen: self.oxygen,
            latent: self.latent,
            liquid_heat: self.liquid_heat,
            boiling: self.boiling,
            feed,
        }
    }
}

/// Latent heat and specific heat of water at `t_k`.
fn water_at(t_k: f64) -> Result<[f64; 2], NoSpirit> {
    let p = steam::saturation::p_sat(t_k).map_err(NoSpirit::Water)?;
    let both = steam::Saturated::at_pressure(p).map_err(NoSpirit::Water)?;
    Ok([both.h_lg(), both.cp_l])
}

fn latent(fluid: &Fluid, t_k: f64) -> Result<f64, NoSpirit> {
    let known = fluid.known_at::<SpecificEnergy>("r", t_k);
    Ok(known.map_err(NoSpirit::Table)?.value.si())
}

fn heat(fluid: &Fluid, t_k: f64) -> Result<f64, NoSpirit> {
    let known = fluid.known_at::<SpecificHeat>("c_l", t_k);
    Ok(known.map_err(NoSpirit::Table)?.value.si())
}

fn mixed(by_mass: [f64; 3], ethanol: &Fluid, methanol: &Fluid) -> Composition {
    let (e, m) = (
        ethanol.molecule.composition(),
        methanol.molecule.composition(),
    );
    let sum = |of: fn(&Composition) -> f64| weighted_mean(by_mass, [of(&e), of(&m), 0.0]);
    Composition {
        carbon: sum(|c| c.carbon),
        hydrogen: sum(|c| c.hydrogen),
        oxygen: sum(|c| c.oxygen),
        water: by_mass[2],
        ..e
    }
}
