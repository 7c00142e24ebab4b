//! Coal and water used in a settled state, and how long what is there will last.
//!
//! The pressure is taken as held: the engine draws its demand, whatever the fire makes. Left out:
//! the ash that builds up, and the warming of a fresh charge.

use formulas::balance::time_to_use;
use formulas::steam::Saturated;

use crate::fault::NotSettled;
use crate::firing::Bed;
use crate::state::FireState;

/// A means of feed as the plan has it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FeedMeans<'a> {
    /// Id of the means.
    pub id: &'a str,
    /// Water that it feeds, kg/s, as it is meant to be worked.
    pub feeds_kg_s: f64,
}

/// The water that is there and what is asked of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WaterAsked<'a> {
    /// Water between the working and the lowest level, m³.
    pub above_lowest_m3: f64,
    /// How long the plant must run, s; `None` where the plan does not say.
    pub run_s: Option<f64>,
    /// Means of feed; none where the plant runs on what it was filled with.
    pub means: &'a [FeedMeans<'a>],
    /// Water in the tank from which they feed, kg; `None` where it does not run dry.
    pub tank_kg: Option<f64>,
}

/// What a settled state uses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Consumption {
    /// Fuel, kg/s.
    pub fuel_kg_s: f64,
    /// Fuel on the grate when the bed is at its depth, kg; `None` where there is no bed.
    pub bed_kg: Option<f64>,
    /// Time in which as much is burnt as lies on the grate, s.
    pub bed_life_s: Option<f64>,
    /// Steam asked for, kg/s.
    pub demand_kg_s: f64,
    /// Water between the working and the lowest level, kg.
    pub water_kg: f64,
    /// Time from the working to the lowest level with the feed shut, s; `None` without a demand.
    pub without_feed_s: Option<f64>,
    /// Feed that common practice wants of a means, kg/s: so much that the level can be won back.
    pub feed_asked_kg_s: f64,
    /// Time in which the demand empties the tank, s; `None` without a demand, or where the tank is
    /// not known.
    pub tank_s: Option<f64>,
}

/// Feed over demand that common practice wants.
pub(crate) const FEED_OVER_DEMAND: f64 = 1.5;

/// Fuel on the grate at the depth of the bed, kg.
#[must_use]
pub fn bed_mass(bed: &Bed) -> f64 {
    let packing = &bed.packing;
    formulas::balance::bed_mass(packing.voidage, bed.lump_kg_m3, bed.depth_m, bed.grate_m2)
}

/// Mass of water at its boiling point between two levels, kg.
///
/// # Errors
/// [`NotSettled::Steam`] outside the steam equations.
pub fn water_mass(state: &FireState, water: &WaterAsked<'_>) -> Result<f64, NotSettled> {
    let line = Saturated::at_pressure(state.water.boiler_pa)?;
    Ok(line.rho_l * water.above_lowest_m3)
}

/// What a state uses, and how long fire and water last.
///
/// # Errors
/// As [`water_mass`].
pub fn consumption(state: &FireState, water: &WaterAsked<'_>) -> Result<Consumption, NotSettled> {
    let bed_kg = state.inputs.firing.bed().map(|fired| bed_mass(&fired.bed));
    let water_kg = water_mass(state, water)?;
    let demand_kg_s = state.demand_kg_s;
    Ok(Consumption {
        fuel_kg_s: state.pass.fuel_kg_s,
        bed_kg,
        bed_life_s: bed_kg.map(|kg| time_to_use(kg, state.pass.fuel_kg_s)),
        demand_kg_s,
        water_kg,
        without_feed_s: (demand_kg_s > 0.0).then(|| time_to_use(water_kg, demand_kg_s)),
        feed_asked_kg_s: FEED_OVER_DEMAND * demand_kg_s,
        tank_s: water
            .tank_kg
            .filter(|_| demand_kg_s > 0.0)
            .map(|kg| time_to_use(kg, demand_kg_s)),
    })
}

impl WaterAsked<'_> {
    /// The most that any one means feeds, kg/s; `None` where there is none.
    #[must_use]
    pub fn strongest_feed(&self) -> Option<f64> {
        let rates = self.means.iter().map(|m| m.feeds_kg_s);
        rates.max_by(f64::total_cmp)
    }

    /// Water that the strongest means feeds within a time in s, kg: no more than the tank holds.
    #[must_use]
    pub fn fed_kg(&self, time_s: f64) -> f64 {
        let pumped = self.strongest_feed().map_or(0.0, |rate| rate * time_s);
        match self.tank_kg {
            Some(tank) if tank < pumped => tank,
            _ => pumped,
        }
    }
}
