//! The steaming ratio over a range of pressures, and what the pressure does by itself.
//!
//! The drum's pressure rises while evaporation exceeds demand. A crossing of one is stable where
//! the ratio falls as the pressure rises. All this is for a fixed speed and cut-off: a driver
//! closes the loop with regulator, blower, damper and feed.

use reckoning::quantity::{BAR_DROP, Gauge, Quantity};

use crate::fault::NotSettled;
use crate::fire::settle;
use crate::inputs::Inputs;
use crate::seek::seek;
use crate::state::FireState;

/// What a crossing does to a small change of pressure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stability {
    /// The pressure comes back.
    Stable,
    /// The pressure runs away from it.
    Unstable,
}

/// A pressure at which evaporation equals demand.
#[derive(Clone, Copy, Debug)]
pub struct Crossing {
    /// Pressure above the air, Pa.
    pub gauge_pa: f64,
    /// Whether it holds itself.
    pub stability: Stability,
    /// Change of the ratio with pressure over the step that brackets it, 1/Pa.
    pub slope_per_pa: f64,
    /// The settled state.
    pub state: FireState,
}

/// One pressure of a sweep.
#[derive(Clone, Debug)]
pub struct Point {
    /// Pressure above the air, Pa.
    pub gauge_pa: f64,
    /// The state, or why there is none.
    pub settled: Result<FireState, NotSettled>,
}

/// One step of a sweep in which both ends settled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// Lower pressure, Pa.
    pub from_pa: f64,
    /// Upper pressure, Pa.
    pub to_pa: f64,
    /// Change of the logarithm of evaporation over that of demand: the gain of the blast loop.
    pub gain: f64,
}

/// The steaming ratio over pressure.
#[derive(Clone, Debug)]
pub struct Sweep {
    /// The pressures asked, in rising order.
    pub points: Vec<Point>,
    /// The gain of each step.
    pub steps: Vec<Step>,
    /// Every crossing found.
    pub crossings: Vec<Crossing>,
}

/// Accuracy of a crossing, Pa.
const CROSSING_ACCURACY_PA: f64 = 1.0;

/// Settles the loop at each of these gauge pressures (Pa, rising) and locates each crossing.
///
/// # Errors
/// [`NotSettled`] where a crossing that two points bracket cannot be found. A pressure without a
/// balance is kept in its point.
pub fn sweep(inputs: &Inputs, gauge_pa: &[f64]) -> Result<Sweep, NotSettled> {
    let points: Vec<Point> = gauge_pa
        .iter()
        .map(|&gauge_pa| Point {
            gauge_pa,
            settled: settle(inputs, gauge_pa),
        })
        .collect();
    let mut steps = Vec::new();
    let mut crossings = Vec::new();
    for pair in points.windows(2) {
        let (Ok(low), Ok(high)) = (&pair[0].settled, &pair[1].settled) else {
            continue;
        };
        steps.push(step(low, high));
        if let (Some(s_low), Some(s_high)) = (low.steaming_ratio(), high.steaming_ratio())
            && (s_low < 1.0) != (s_high < 1.0)
        {
            let slope = (s_high - s_low) / (pair[1].gauge_pa - pair[0].gauge_pa);
            crossings.push(crossing(inputs, (low, high), slope)?);
        }
    }
    Ok(Sweep {
        points,
        steps,
        crossings,
    })
}

fn step(low: &FireState, high: &FireState) -> Step {
    Step {
        from_pa: low.water.gauge_pa,
        to_pa: high.water.gauge_pa,
        gain: (high.evaporation_kg_s / low.evaporation_kg_s).ln()
            / (high.demand_kg_s / low.demand_kg_s).ln(),
    }
}

fn crossing(
    inputs: &Inputs,
    (low, high): (&FireState, &FireState),
    slope_per_pa: f64,
) -> Result<Crossing, NotSettled> {
    let bracket = (low.water.gauge_pa, high.water.gauge_pa);
    let balance = "evaporation against demand";
    let solved = seek(balance, bracket, CROSSING_ACCURACY_PA, |p| {
        let state = settle(inputs, p)?;
        Ok(state.evaporation_kg_s / state.demand_kg_s - 1.0)
    })?;
    Ok(Crossing {
        gauge_pa: solved.x,
        stability: if slope_per_pa < 0.0 {
            Stability::Stable
        } else {
            Stability::Unstable
        },
        slope_per_pa,
        state: settle(inputs, solved.x)?,
    })
}

/// What the pressure does by itself, beginning at the working pressure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Word {
    /// It rises to the valve.
    BlowsOff,
    /// It comes to rest at a pressure within the range.
    Holds,
    /// It falls until the engine stops.
    WillNotHold,
}

impl Word {
    /// As printed.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::BlowsOff => "blows off",
            Self::Holds => "holds",
            Self::WillNotHold => "will not hold",
        }
    }
}

/// The verdict on a sweep, begun at the working pressure.
#[derive(Clone, Debug, PartialEq)]
pub struct Outlook {
    /// The word.
    pub word: Word,
    /// Where the pressure comes to rest, Pa gauge.
    pub rests_pa: Option<f64>,
    /// Below this gauge pressure, Pa, the engine runs the boiler down.
    pub runs_down_below_pa: Option<f64>,
    /// How evaporation follows demand, and the ratio pressure, where a crossing decides.
    pub at_crossing: Option<Slopes>,
    /// The verdict as a sentence.
    pub sentence: String,
}

/// Slopes at a crossing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slopes {
    /// Change of the logarithm of evaporation over that of demand.
    pub gain: f64,
    /// Change of the steaming ratio with pressure, 1/Pa.
    pub ratio_per_pa: f64,
}

impl Sweep {
    /// What the pressure does when it begins at `working_pa` (gauge) and the valve lifts at
    /// `valve_pa` (gauge). `None` where the sweep has no state with a demand at the working
    /// pressure, which must be one of its points.
    #[must_use]
    pub fn outlook(&self, working_pa: f64, valve_pa: f64) -> Option<Outlook> {
        let ratio = self.ratio_at(working_pa)?;
        let below = self.crossings.iter().rfind(|c| c.gauge_pa < working_pa);
        let above = self
            .crossings
            .iter()
            .find(|c| c.gauge_pa >= working_pa && c.gauge_pa <= valve_pa);
        let (word, rests_pa) = if ratio >= 1.0 {
            match above {
                Some(c) => (Word::Holds, Some(c.gauge_pa)),
                None => (Word::BlowsOff, None),
            }
        } else {
            match below {
                Some(c) => (Word::Holds, Some(c.gauge_pa)),
                None => (Word::WillNotHold, None),
            }
        };
        let runs_down_below_pa = below
            .filter(|c| ratio >= 1.0 && c.stability == Stability::Unstable)
            .map(|c| c.gauge_pa);
        let at_crossing = rests_pa
            .or(runs_down_below_pa)
            .and_then(|pa| self.slopes_at(pa));
        Some(Outlook {
            word,
            rests_pa,
            runs_down_below_pa,
            at_crossing,
            sentence: sentence(word, ratio, (rests_pa, runs_down_below_pa), at_crossing),
        })
    }

    /// The slopes at a crossing: those of the step that brackets it.
    fn slopes_at(&self, crossing_pa: f64) -> Option<Slopes> {
        let inside = |s: &&Step| s.from_pa <= crossing_pa && crossing_pa <= s.to_pa;
        let crossing = self
            .crossings
            .iter()
            .find(|c| (c.gauge_pa - crossing_pa).abs() < CROSSING_ACCURACY_PA)?;
        Some(Slopes {
            gain: self.steps.iter().find(inside)?.gain,
            ratio_per_pa: crossing.slope_per_pa,
        })
    }

    /// The steaming ratio at a gauge pressure (Pa) that is one of the points.
    #[must_use]
    pub fn ratio_at(&self, gauge_pa: f64) -> Option<f64> {
        self.state_at(gauge_pa)?.steaming_ratio()
    }

    /// The state at a gauge pressure (Pa) that is one of the points.
    #[must_use]
    pub fn state_at(&self, gauge_pa: f64) -> Option<&FireState> {
        self.point_at(gauge_pa)?.settled.as_ref().ok()
    }

    /// Why there is no state at a gauge pressure (Pa) that is one of the points.
    #[must_use]
    pub fn refusal_at(&self, gauge_pa: f64) -> Option<&NotSettled> {
        self.point_at(gauge_pa)?.settled.as_ref().err()
    }

    fn point_at(&self, gauge_pa: f64) -> Option<&Point> {
        self.points
            .iter()
            .find(|p| (p.gauge_pa - gauge_pa).abs() < CROSSING_ACCURACY_PA)
    }
}

fn sentence(
    word: Word,
    ratio: f64,
    (rests, down): (Option<f64>, Option<f64>),
    slopes: Option<Slopes>,
) -> String {
    let bar = |pa: f64| format!("{:.1} bar", Gauge::from_si(pa).bar());
    let mut text = format!("The fire makes {ratio:.2} of the steam asked for: ");
    text.push_str(&match (word, rests) {
        (Word::Holds, Some(pa)) => format!("the pressure comes to rest at {}", bar(pa)),
        (Word::BlowsOff, _) => "the pressure climbs to the valve".to_owned(),
        _ => "the pressure falls until the engine stops".to_owned(),
    });
    text.push('.');
    if let Some(pa) = down {
        text.push_str(&format!(
            " Below {} the engine runs the boiler down.",
            bar(pa)
        ));
    }
    if let Some(slopes) = slopes {
        text.push_str(&told(slopes));
    }
    text
}

/// What the slopes mean to the driver, who closes the loop.
fn told(slopes: Slopes) -> String {
    let a_bar = slopes.ratio_per_pa * BAR_DROP.to_si(1.0);
    let way = if a_bar < 0.0 { "falls" } else { "rises" };
    format!(
        " There the ratio {way} by {:.2} a bar, and evaporation follows demand with a gain of \
         {:.2}: regulator, blower, damper and feed do the rest.",
        a_bar.abs(),
        slopes.gain
    )
}
