//! An account of the fire at one pressure: where the heat goes, what the gas does on its way, how
//! the draught is spent, how long fuel and water last, and what rules of the trade would say.

mod flame;
mod told;
mod told_flame;

pub use flame::FlameAccount;
pub use told::Told;

use plan::Plan;
use plant::Plant;
use reckoning::{Refused, Working};
use steaming::consumption::{Consumption, consumption};
use steaming::draught::{Dew, DraughtSplit, PathPoint, dew, gas_path, spark_into_tubes};
use steaming::heat::HeatBalance;
use steaming::{FireState, Holding, NotSettled, fire, greatest_speed};

use crate::beside::{Beside, beside};
use crate::fire::{explain, water_asked};
use crate::steam_answer::Steaming;

/// Everything that a maker asks of a fire at one pressure.
#[derive(Clone, Debug)]
pub struct Account {
    /// The settled state.
    pub state: FireState,
    /// Where the heat goes.
    pub heat: HeatBalance,
    /// How the draught is raised and spent.
    pub draught: DraughtSplit,
    /// The gas on its way.
    pub path: Vec<PathPoint>,
    /// Dew point against the metal; `None` where the gas has none above freezing.
    pub dew: Option<Dew>,
    /// The greatest spark that the gas carries into the tubes, m; `None` without a bed.
    pub spark_m: Option<f64>,
    /// How long fuel and water last; `None` where the plan does not give the water.
    pub uses: Option<Consumption>,
    /// How much this fire holds; `None` where that cannot be found.
    pub greatest: Option<Holding>,
    /// The flame; `None` where a bed burns.
    pub flame: Option<FlameAccount>,
    /// What rules of the trade say.
    pub beside: Vec<Beside>,
    /// Lines of the state and of this account.
    pub working: Working,
}

/// Why there is no account.
#[derive(Clone, Debug, thiserror::Error)]
pub enum NoAccount {
    /// The plan leaves out what the fire needs.
    #[error("the fire needs what the plan does not give: {}", .0.join(", "))]
    Wanted(Vec<String>),
    /// No pressure was asked and the plan has no working pressure.
    #[error("no pressure was asked, and the plan has no duty.pressure")]
    NoPressure,
    /// The loop has no balance there.
    #[error("the fire has no balance: {0}")]
    NotSettled(#[from] NotSettled),
    /// A formula cannot be worked on the settled state.
    #[error("{0}")]
    Refused(#[from] Refused),
}

/// The account of a plan's fire at a gauge pressure in Pa, else at the working pressure.
///
/// # Errors
/// [`NoAccount`] says what is missing, or why nothing settles there.
pub fn account(
    (plan, plant): (&Plan, &Plant),
    steaming: &Steaming,
    gauge_pa: Option<f64>,
) -> Result<Account, NoAccount> {
    let inputs = steaming
        .inputs
        .as_ref()
        .ok_or_else(|| NoAccount::Wanted(steaming.taken.gaps.clone()))?;
    let gauge_pa = gauge_pa
        .or(steaming.working_pa)
        .ok_or(NoAccount::NoPressure)?;
    let state = fire::settle(inputs, gauge_pa)?;
    let heat = HeatBalance::of(&state);
    let draught = DraughtSplit::of(&state);
    let means = crate::fire::feed_means(plan, &state);
    let uses = water_asked(plan, plant, &state, &means)
        .map(|asked| consumption(&state, &asked))
        .transpose()?;
    let mut working = Working::new();
    explain(&state, &steaming.taken, &mut working)?;
    steaming::explain_heat(&state, &heat, &mut working)?;
    steaming::explain_draught(&state, &draught, &mut working)?;
    if let Some(uses) = &uses {
        steaming::explain_use(&state, uses, &mut working)?;
    }
    let flame = FlameAccount::of(plan, steaming, &state)?;
    if let Some(flame) = &flame {
        flame.explain(&state, &mut working)?;
    }
    let lump = state.inputs.firing.bed().map(|fired| fired.bed.lump_kg_m3);
    Ok(Account {
        path: gas_path(&state),
        dew: dew(&state).ok(),
        spark_m: lump.and_then(|density| spark_into_tubes(&state, density).ok()?),
        greatest: greatest_speed(inputs, gauge_pa).ok(),
        beside: beside(plan, plant, &state),
        flame,
        heat,
        draught,
        uses,
        working,
        state,
    })
}
