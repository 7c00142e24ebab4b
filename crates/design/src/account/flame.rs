//! The account of a flame: its air, its burner, the flue along its length, its gas.

use formulas::burner::{BEST_THROAT, best_throat};
use formulas::flue::RADIAL_MIXING_LENGTH;
use reckoning::quantity::{Area, Length, M, M_PER_S, M2, ONE, Quantity, Ratio, Speed};
use reckoning::{Given, Known, Origin, Refused, Working};
use std::f64::consts::FRAC_PI_4;
use steaming::burner::{Burner, BurnerState, WickState};
use steaming::flue::{Crossed, Section, profile};
use steaming::signs::FlameSigns;
use steaming::{FireState, Firing, FiringState, NotSettled, OverDraught, TankAsked};

use crate::fire::HottestDay;
use crate::steam_answer::Steaming;

/// How many places of a flue are told, evenly spaced behind the burner up to its own end. Where
/// the bare bore begins the law of its wall has no bound, so that place is left out.
const PLACES: u32 = 5;

/// What is told of a flame besides heat and draught.
#[derive(Clone, Debug)]
pub struct FlameAccount {
    /// All the air over the air needed, and the signs by which a flame is judged.
    pub signs: FlameSigns,
    /// Primary air over the air needed; 0 for wicks.
    pub primary_air: f64,
    /// The gas burner; `None` where wicks burn.
    pub burner: Option<BurnerState>,
    /// The wicks; `None` where gas burns.
    pub wicks: Option<WickState>,
    /// Bore of the throat that would draw the most air, were there no air holes and no taper, m.
    pub best_throat_m: Option<f64>,
    /// The flue at a few places; none in a firebox.
    pub along: Vec<Section>,
    /// The tubes across it.
    pub tubes: Vec<Crossed>,
    /// What steam jets do to it.
    pub over: Option<OverDraught>,
    /// How long its gas lasts.
    pub tank: Option<TankAsked>,
    /// The hottest day of its tank.
    pub hottest: Option<HottestDay>,
}

impl FlameAccount {
    /// The account of a state with a flame; `None` where a bed burns.
    ///
    /// # Errors
    /// [`NotSettled`] where the flue cannot be marched again.
    pub(crate) fn of(
        plan: &plan::Plan,
        steaming: &Steaming,
        state: &FireState,
    ) -> Result<Option<Self>, NotSettled> {
        let (Some(signs), Some(flame)) = (state.flame_signs(), state.pass.firing.flame()) else {
            return Ok(None);
        };
        let (along, tubes) = flue(state)?;
        let inputs = &state.inputs;
        let burner = inputs.firing.flame().and_then(|flame| flame.burner());
        let told = steaming.run.as_ref().and_then(|run| run.flame.clone());
        let gauge_pa = state.water.gauge_pa;
        // A fire that was lit for a check was asked all this already.
        let (over, tank, hottest) = match told {
            Some(told) => (told.over, told.tank, told.hottest),
            None => (
                steaming::over_draught(inputs, gauge_pa)?,
                crate::fire::lasting(plan, inputs).map(|(asked, _)| asked),
                crate::fire::hottest_day(plan, inputs),
            ),
        };
        Ok(Some(Self {
            signs,
            primary_air: flame.primary_ratio,
            burner: flame.burner().copied(),
            wicks: flame.wicks().copied(),
            best_throat_m: burner.map(throat_m),
            along,
            tubes,
            over,
            tank,
            hottest,
        }))
    }

    /// Files the lines of what stands here alone.
    ///
    /// # Errors
    /// [`Refused`] where a card cannot be worked.
    pub(crate) fn explain(&self, state: &FireState, working: &mut Working) -> Result<(), Refused> {
        explain_throat(state, working)?;
        explain_mixing(state, working)
    }
}

/// Files the throat that draws the most air.
fn explain_throat(state: &FireState, working: &mut Working) -> Result<(), Refused> {
    if let Some(burner) = state.inputs.firing.flame().and_then(|f| f.burner()) {
        let from = [
            given::<Ratio>(
                working,
                ("C_d", "coefficient of the ports"),
                &ONE,
                burner.ports.coefficient,
            ),
            given::<Area>(
                working,
                ("A_p", "area of the ports"),
                &M2,
                burner.ports.area_m2(),
            ),
            given::<Ratio>(
                working,
                ("beta", "unevenness in the throat"),
                &ONE,
                burner.throat.momentum_factor,
            ),
            given::<Ratio>(
                working,
                ("k_f", "friction of the throat"),
                &ONE,
                burner.throat.friction_heads,
            ),
        ];
        working.worked(&BEST_THROAT, &from)?;
    }
    Ok(())
}

/// Files the length in which rim and middle of the gas mix of themselves.
fn explain_mixing(state: &FireState, working: &mut Working) -> Result<(), Refused> {
    if let (Firing::Flue(fired), FiringState::Flue(flue)) =
        (&state.inputs.firing, &state.pass.firing)
    {
        let speed = flue.flue.behind_burner.speed_m_s;
        let from = [
            given::<Speed>(
                working,
                ("u", "speed of the gas behind the burner"),
                &M_PER_S,
                speed,
            ),
            given::<Length>(
                working,
                ("R", "half the bore of the flue"),
                &M,
                fired.flue.bore_m / 2.0,
            ),
        ];
        working.worked(&RADIAL_MIXING_LENGTH, &from)?;
    }
    Ok(())
}

fn given<Q: Quantity>(
    working: &mut Working,
    (symbol, meaning): (&'static str, &'static str),
    unit: &'static reckoning::quantity::Unit,
    si: f64,
) -> reckoning::Ref {
    let known = Known {
        value: Q::from_si(si),
        given: Given::Chosen {
            between: "the settled state".to_owned(),
            reason: "as it was settled above".to_owned(),
            weakest: Origin::Assumed,
        },
    };
    working.know(symbol, meaning, unit, &known)
}

/// Bore of the throat that draws the most air, m.
fn throat_m(burner: &Burner) -> f64 {
    let (ports, throat) = (&burner.ports, &burner.throat);
    let area = best_throat(
        ports.coefficient,
        ports.area_m2(),
        throat.momentum_factor,
        throat.friction_heads,
    );
    (area / FRAC_PI_4).sqrt()
}

/// The flue at its places, and the tubes across it.
fn flue(state: &FireState) -> Result<(Vec<Section>, Vec<Crossed>), NotSettled> {
    let (Firing::Flue(fired), FiringState::Flue(at)) = (&state.inputs.firing, &state.pass.firing)
    else {
        return Ok((Vec::new(), Vec::new()));
    };
    let (from_m, to_m) = (at.release.ported_m, fired.flue.length_m);
    let places: Vec<f64> = (1..=PLACES)
        .map(|i| from_m + (to_m - from_m) * f64::from(i) / f64::from(PLACES))
        .collect();
    profile(
        (&fired.flue, &at.release),
        &at.stream,
        &state.burning.gas,
        &places,
    )
}
