//! The draught along the path of the gas: where it is spent, how hot and how fast the gas is.
//!
//! The coil has no loss of its own here: what it and the turns take is one number of the plan.

use formulas::balance::{flux_on_area, round_area};
use formulas::bed::{carried_size, drag_coefficient};
use formulas::gas::partial_pressure;
use formulas::heat::reynolds;
use formulas::steam::Saturated;
use reckoning::solve::bracketed;

use crate::fault::NotSettled;
use crate::firing::FiringState;
use crate::flue::Section;
use crate::state::FireState;
use crate::tubes::March;

/// Draught spent in one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spent {
    /// Where.
    pub place: &'static str,
    /// How much, Pa; less than nought where gas that cools slows down or rises.
    pub pa: f64,
}

/// Draught spent and raised.
#[derive(Clone, Debug, PartialEq)]
pub struct DraughtSplit {
    /// Spent before the chimney, in the order in which the gas flows.
    pub spent: Vec<Spent>,
    /// Raised by the steam jets, after the losses of the chimney, Pa.
    pub jets_pa: f64,
    /// Raised by the hot column, Pa.
    pub column_pa: f64,
}

/// One section of the path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PathPoint {
    /// Where.
    pub place: &'static str,
    /// Temperature of the gas, K.
    pub gas_k: f64,
    /// Mean speed over the section, m/s.
    pub speed_m_s: f64,
}

/// The metal that may run wet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dew {
    /// Dew point of the water vapour in the flue gas, K. Sulphur raises it; that is left out.
    pub dew_k: f64,
    /// Metal behind the water in steam, K.
    pub hot_metal_k: f64,
    /// The same metal while the boiler is still as cold as its feed, K.
    pub cold_metal_k: f64,
}

impl DraughtSplit {
    /// The split of a settled state.
    #[must_use]
    pub fn of(state: &FireState) -> Self {
        let pass = &state.pass;
        let mut spent = match &pass.firing {
            FiringState::Bed(fired) => vec![
                at("door of the ash pan", fired.bed.door_pa),
                at("bed", fired.bed.bare_pa),
                at("grate and ash", fired.bed.loss_pa - fired.bed.bare_pa),
                at("tubes", fired.tubes.loss_pa()),
            ],
            FiringState::Firebox(fired) => vec![
                at("mouth", fired.flame.mouth_pa),
                at("tubes", fired.tubes.loss_pa()),
            ],
            FiringState::Flue(fired) => vec![
                at("mouth", fired.flame.mouth_pa),
                at("friction of the flue", fired.flue.friction_pa),
                at("cross tubes", fired.flue.cross_pa),
                at("speed of the hot gas", fired.flue.momentum_pa),
                at("end of the flue", fired.flue.exit_pa),
                at("lift of the flue", -fired.flue.lift_pa),
            ],
        };
        spent.push(at(
            "turns, coil, arrester and entry",
            state.inputs.extra_loss_pa,
        ));
        Self {
            spent,
            jets_pa: pass.jets.net_pa,
            column_pa: pass.lift_pa,
        }
    }

    /// Draught spent in a place of this name, Pa.
    #[must_use]
    pub fn spent_in(&self, place: &str) -> Option<f64> {
        self.spent.iter().find(|s| s.place == place).map(|s| s.pa)
    }

    /// All that is spent before the chimney, Pa: the vacuum of the smokebox.
    #[must_use]
    pub fn spent_pa(&self) -> f64 {
        self.spent.iter().map(|s| s.pa).sum()
    }

    /// All that is raised, Pa.
    #[must_use]
    pub fn raised_pa(&self) -> f64 {
        self.jets_pa + self.column_pa
    }
}

fn at(place: &'static str, pa: f64) -> Spent {
    Spent { place, pa }
}

/// Gas along the path from the fire to the choke, in the order in which it flows.
#[must_use]
pub fn gas_path(state: &FireState) -> Vec<PathPoint> {
    let pass = &state.pass;
    let mut path = match &pass.firing {
        FiringState::Bed(fired) => {
            let mut path = vec![PathPoint {
                place: "bed, over the whole grate",
                gas_k: fired.bed.gas_k,
                speed_m_s: fired.bed.flux_kg_m2_s / fired.bed.gas_kg_m3,
            }];
            path.extend(ends(&fired.tubes));
            path
        }
        FiringState::Firebox(fired) => ends(&fired.tubes).to_vec(),
        FiringState::Flue(fired) => vec![
            place("flue, at the end of the burner", &fired.flue.behind_burner),
            place("flue, where the gas leaves", &fired.flue.outlet),
        ],
    };
    let choke_m2 = round_area(state.inputs.chimney.choke_m);
    let flow = pass.chimney.gas_kg_s + pass.chimney.leak_kg_s;
    path.push(PathPoint {
        place: "choke, gas alone",
        gas_k: pass.chimney.gas_k,
        speed_m_s: flux_on_area(1.0, flow, choke_m2) / pass.chimney.density_kg_m3,
    });
    path
}

/// A section of the flue.
fn place(place: &'static str, section: &Section) -> PathPoint {
    PathPoint {
        place,
        gas_k: section.gas_k,
        speed_m_s: section.speed_m_s,
    }
}

/// Both ends of the tubes.
fn ends(tubes: &March) -> [PathPoint; 2] {
    [
        ("tubes, where the gas enters", &tubes.inlet),
        ("tubes, where the gas leaves", &tubes.outlet),
    ]
    .map(|(place, section)| PathPoint {
        place,
        gas_k: section.gas_k,
        speed_m_s: tubes.flux / section.density,
    })
}

/// Least and greatest spark for which the balance is sought, m.
const SPARKS_M: (f64, f64) = (1e-6, 0.1);

/// The greatest spark, of a density in kg/m³, that the gas of this density, viscosity (Pa s) and
/// speed (m/s) carries: its size in m, taken as a sphere.
///
/// # Errors
/// [`NotSettled`] where even the finest dust falls, or a lump of a tenth of a metre flies.
pub fn carried_spark(
    (gas_kg_m3, gas_pa_s, speed_m_s): (f64, f64, f64),
    spark_kg_m3: f64,
) -> Result<f64, NotSettled> {
    let flux = gas_kg_m3 * speed_m_s;
    let solved = bracketed(SPARKS_M.0, SPARKS_M.1, 1e-9, |d| {
        let drag = drag_coefficient(reynolds(flux, d, gas_pa_s));
        d - carried_size(drag, gas_kg_m3, speed_m_s, spark_kg_m3)
    });
    Ok(solved
        .map_err(NotSettled::of("weight of a spark against its drag"))?
        .x)
}

/// The greatest spark of a density (kg/m³) that the gas carries from a bed into the tubes, m;
/// `None` where no bed throws any.
///
/// # Errors
/// As [`carried_spark`].
pub fn spark_into_tubes(state: &FireState, spark_kg_m3: f64) -> Result<Option<f64>, NotSettled> {
    let Some(fired) = state.pass.firing.bed() else {
        return Ok(None);
    };
    let (flux, inlet) = (fired.tubes.flux, &fired.tubes.inlet);
    let gas = (inlet.density, inlet.viscosity, flux / inlet.density);
    carried_spark(gas, spark_kg_m3).map(Some)
}

/// Dew point of the flue gas against the metal.
///
/// # Errors
/// [`NotSettled::Steam`] where so little vapour is in the gas that it has no dew point above
/// freezing.
pub fn dew(state: &FireState) -> Result<Dew, NotSettled> {
    let vapour = state.burning.gas.fractions().h2o;
    let pressure_pa = partial_pressure(vapour, state.inputs.site.atmosphere_pa);
    Ok(Dew {
        dew_k: Saturated::at_pressure(pressure_pa)?.t_k,
        hot_metal_k: state.water.wall_k,
        cold_metal_k: state.inputs.site.feed_k,
    })
}
