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
use crate::state::FireState;

/// Draught spent and raised, Pa.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DraughtSplit {
    /// Spent in the bare bed.
    pub bed_pa: f64,
    /// Spent in grate and ash.
    pub grate_pa: f64,
    /// Spent in the tubes.
    pub tubes_pa: f64,
    /// Spent in turns, coil, arrester and entry.
    pub turns_pa: f64,
    /// Raised by the steam jets, after the losses of the chimney.
    pub jets_pa: f64,
    /// Raised by the hot column.
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
        Self {
            bed_pa: pass.bed.bare_pa,
            grate_pa: pass.bed.loss_pa - pass.bed.bare_pa,
            tubes_pa: pass.tubes.loss_pa(),
            turns_pa: state.inputs.extra_loss_pa,
            jets_pa: pass.jets.net_pa,
            column_pa: pass.lift_pa,
        }
    }

    /// All that is spent before the chimney, Pa: the vacuum of the smokebox.
    #[must_use]
    pub fn spent_pa(&self) -> f64 {
        self.bed_pa + self.grate_pa + self.tubes_pa + self.turns_pa
    }

    /// All that is raised, Pa.
    #[must_use]
    pub fn raised_pa(&self) -> f64 {
        self.jets_pa + self.column_pa
    }
}

/// Gas in the bed, at both ends of the tubes and in the choke, in the order in which it flows.
#[must_use]
pub fn gas_path(state: &FireState) -> [PathPoint; 4] {
    let (pass, inputs) = (&state.pass, &state.inputs);
    let tubes = &pass.tubes;
    let choke_m2 = round_area(inputs.chimney.choke_m);
    let point = |place, gas_k, speed_m_s| PathPoint {
        place,
        gas_k,
        speed_m_s,
    };
    [
        point(
            "bed, over the whole grate",
            inputs.bed.gas_k,
            pass.bed.flux_kg_m2_s / pass.bed.gas_kg_m3,
        ),
        point(
            "tubes, where the gas enters",
            tubes.inlet.gas_k,
            tubes.flux / tubes.inlet.density,
        ),
        point(
            "tubes, where the gas leaves",
            tubes.outlet.gas_k,
            tubes.flux / tubes.outlet.density,
        ),
        point(
            "choke, gas alone",
            pass.chimney.gas_k,
            flux_on_area(
                1.0,
                pass.chimney.gas_kg_s + pass.chimney.leak_kg_s,
                choke_m2,
            ) / pass.chimney.density_kg_m3,
        ),
    ]
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

/// The greatest spark of a density (kg/m³) that the gas carries into the tubes, m.
///
/// # Errors
/// As [`carried_spark`].
pub fn spark_into_tubes(state: &FireState, spark_kg_m3: f64) -> Result<f64, NotSettled> {
    let (flux, inlet) = (state.pass.tubes.flux, &state.pass.tubes.inlet);
    let gas = (inlet.density, inlet.viscosity, flux / inlet.density);
    carried_spark(gas, spark_kg_m3)
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
