//! Cures: for each size that a maker can change, the nearest stock value with which the fire
//! makes a tenth more steam than is asked, and no rule of steaming is broken that was kept.
//!
//! Each size is changed alone, with everything else as drawn. Candidates are tried in the order
//! of their distance from the present size, so that few are settled. The verdicts compared are
//! those at the values of the assumptions: a plant that takes a cure is judged anew with its band.

mod lever;

pub use lever::{Bundle, Candidates, Lever, Stack, metric_steps};

use reckoning::Rule;

use self::lever::Change;
use crate::fault::NotSettled;
use crate::fire::settle;
use crate::inputs::Inputs;
use crate::rules::margins;
use crate::state::FireState;

/// Steam made over steam asked for that a cure must reach.
const WANTED: f64 = 1.1;

/// The stock value that cures.
#[derive(Clone, Copy, Debug)]
pub struct Cured {
    /// Its place in the list of candidates.
    pub candidate: usize,
    /// Steam made over steam asked for with it.
    pub ratio: f64,
    /// The state with it.
    pub state: FireState,
}

/// What came of changing one size.
#[derive(Clone, Debug)]
pub struct Cure {
    /// The size changed.
    pub lever: Lever,
    /// The nearest candidate that cures; `None` within the range of the candidates.
    pub cured: Option<Cured>,
    /// How many candidates were settled.
    pub tried: usize,
    /// The answer as a sentence.
    pub says: String,
}

/// The cures of a plant at a gauge pressure, Pa, in the order of [`Lever`]. A lever without
/// candidates, or without its part in the plant, is left out.
///
/// # Errors
/// [`NotSettled`] where the plant as drawn has no balance: then no verdict can be kept.
pub fn cures(
    inputs: &Inputs,
    gauge_pa: f64,
    candidates: &Candidates<'_>,
) -> Result<Vec<Cure>, NotSettled> {
    let drawn = settle(inputs, gauge_pa)?;
    let trial = Trial {
        inputs,
        gauge_pa,
        drawn: &drawn,
    };
    let found = Lever::ALL.iter().filter_map(|lever| {
        let changes = candidates.changes(*lever, inputs)?;
        Some(trial.nearest(*lever, &changes))
    });
    Ok(found.collect())
}

/// The plant as drawn, against which each candidate is tried.
struct Trial<'a> {
    inputs: &'a Inputs,
    gauge_pa: f64,
    drawn: &'a FireState,
}

impl Trial<'_> {
    /// The first of the changes, which come nearest first, that cures.
    fn nearest(&self, lever: Lever, changes: &[Change]) -> Cure {
        let mut tried = 0;
        let mut cured = None;
        for change in changes {
            tried += 1;
            if let Some((ratio, state)) = self.cured_by(change) {
                let candidate = change.candidate;
                cured = Some((
                    change,
                    Cured {
                        candidate,
                        ratio,
                        state,
                    },
                ));
                break;
            }
        }
        let says = match &cured {
            Some((change, cured)) => format!(
                "{} instead of {}: the fire then makes {:.2} of the steam asked for",
                change.words(),
                lever.drawn(self.inputs),
                cured.ratio
            ),
            None => format!("{}: none within range", lever.words()),
        };
        Cure {
            lever,
            cured: cured.map(|(_, cured)| cured),
            tried,
            says,
        }
    }

    /// The state with a change, where it cures.
    fn cured_by(&self, change: &Change) -> Option<(f64, FireState)> {
        let changed = change.made(self.inputs);
        let state = settle(&changed, self.gauge_pa).ok()?;
        let ratio = state.steaming_ratio()?;
        (ratio >= WANTED && self.none_worse(&state)).then_some((ratio, state))
    }

    /// Whether every rule that the plant as drawn keeps is kept still.
    fn none_worse(&self, state: &FireState) -> bool {
        let kept = |state: &FireState, rule: &Rule| {
            margins(state)
                .find(|(other, _)| std::ptr::eq(*other, rule))
                .is_some_and(|(_, margin)| margin >= 1.0)
        };
        margins(self.drawn)
            .filter(|(_, margin)| *margin >= 1.0)
            .all(|(rule, _)| kept(state, rule))
    }
}
