//! How far a prediction may lie from its value, while some numbers are assumed.
//!
//! The assumed numbers are drawn at 256 scrambled quasi-random points of a fixed seed, each by
//! its split normal law, and the loop is settled at each. Points are worked side by side and
//! gathered in order, so that the answer never depends on the machine.

mod normal;
mod shares;

pub use normal::normal_quantile;
pub use shares::first_order_shares;

use rayon::prelude::*;

use crate::assumptions::Entering;
use crate::fault::NotSettled;
use crate::fire::settle;
use crate::inputs::Inputs;
use crate::state::FireState;

/// Points of a band.
pub const POINTS: u32 = 256;

/// The seed of the scrambling: the same for every band.
const SEED: u32 = 20_250_901;

/// A prediction that can be read from a state; `None` where the state has none.
pub type Reads = fn(&FireState) -> Option<f64>;

/// The plant at its values and at each point of what may be true of it.
#[derive(Clone, Debug)]
pub struct Draws {
    /// The state with every assumption at its value.
    pub nominal: FireState,
    /// What was assumed.
    pub assumed: Vec<&'static Entering>,
    /// The deviates of each point and what came of it, in order.
    pub points: Vec<Drawn>,
}

/// One point.
#[derive(Clone, Debug)]
pub struct Drawn {
    /// Standard normal deviates, one for each random variable.
    pub deviates: Vec<f64>,
    /// The state there, or why there is none.
    pub settled: Result<FireState, NotSettled>,
}

/// The share of one random variable in the spread of a prediction.
#[derive(Clone, Copy, Debug)]
pub struct Share {
    /// The assumption; its id is the plan field that replaces it.
    pub entering: &'static Entering,
    /// First-order share of the variance, 0 to 1 but for the noise of the estimate.
    pub share: f64,
}

/// A prediction with its band.
#[derive(Clone, Debug)]
pub struct Band {
    /// The prediction with every assumption at its value.
    pub value: f64,
    /// 10 % point.
    pub low: f64,
    /// Median.
    pub middle: f64,
    /// 90 % point.
    pub high: f64,
    /// The predictions at the points that settled, in the order of the points.
    pub found: Vec<f64>,
    /// Points without a balance.
    pub without_balance: usize,
    /// Why the first of those has none.
    pub first_refusal: Option<NotSettled>,
    /// First-order shares, the largest first; one for each random variable.
    pub shares: Vec<Share>,
}

impl Band {
    /// Whether any assumption moves it at all.
    #[must_use]
    pub fn is_moved(&self) -> bool {
        let still = 1e-12 * self.value.abs();
        let moved = |found: &f64| (found - self.value).abs() > still;
        self.found.iter().any(moved) || self.without_balance > 0
    }

    /// The assumption with the largest share: the number worth measuring first.
    #[must_use]
    pub fn dominant(&self) -> Option<&Share> {
        self.shares.first()
    }

    /// The 10 % point when each point without a balance counts as the worst of all, for a
    /// prediction that is better when larger; `None` where those fill the lowest tenth.
    #[must_use]
    pub fn worse_decile(&self) -> Option<f64> {
        let mut sorted = self.found.clone();
        sorted.sort_by(f64::total_cmp);
        let all = self.found.len() + self.without_balance;
        let place = 0.10 * (all - 1) as f64 - self.without_balance as f64;
        (place >= 0.0).then(|| between(&sorted, place))
    }
}

/// Settles the plant at every point. Assumptions that share a variable move together; one about a
/// part that the plant does not have is left out.
///
/// # Errors
/// [`NotSettled`] where the plant itself has no balance at this gauge pressure (Pa).
pub fn draws(
    inputs: &Inputs,
    gauge_pa: f64,
    assumed: &[&'static Entering],
) -> Result<Draws, NotSettled> {
    let nominal = settle(inputs, gauge_pa)?;
    let assumed: Vec<&'static Entering> = assumed
        .iter()
        .copied()
        .filter(|entering| (entering.get)(inputs).is_some())
        .collect();
    let variables = variables(&assumed);
    let points = (0..POINTS)
        .into_par_iter()
        .map(|point| {
            let deviates = deviates(point, variables.len());
            let settled = settle(&drawn(inputs, &assumed, &variables, &deviates), gauge_pa);
            Drawn { deviates, settled }
        })
        .collect();
    Ok(Draws {
        nominal,
        assumed,
        points,
    })
}

impl Draws {
    /// The band of a prediction.
    ///
    /// # Errors
    /// [`NotSettled`] where the prediction cannot be read from the plant's own state, or from
    /// fewer than half of the points: then the points that are left say nothing.
    pub fn band(&self, reads: impl Fn(&FireState) -> Option<f64>) -> Result<Band, NotSettled> {
        let value = reads(&self.nominal).ok_or(NotSettled::Plant {
            what: "demand for steam in kg/s",
            value: self.nominal.demand_kg_s,
            why: "the plant has no part from which this prediction is read",
        })?;
        let mut at = Vec::with_capacity(self.points.len());
        let mut found = Vec::with_capacity(self.points.len());
        for point in &self.points {
            if let Some(prediction) = point.settled.as_ref().ok().and_then(&reads) {
                at.push(point.deviates.as_slice());
                found.push(prediction);
            }
        }
        let without_balance = self.points.len() - found.len();
        if 2 * found.len() < self.points.len() {
            return Err(NotSettled::Plant {
                what: "number of points of the band without a balance",
                value: without_balance as f64,
                why: "more than half of what may be true of this plant has no balance",
            });
        }
        let mut sorted = found.clone();
        sorted.sort_by(f64::total_cmp);
        Ok(Band {
            value,
            low: quantile(&sorted, 0.10),
            middle: quantile(&sorted, 0.50),
            high: quantile(&sorted, 0.90),
            shares: ranked(&self.assumed, &at, &found),
            found,
            without_balance,
            first_refusal: self.points.iter().find_map(|p| p.settled.clone().err()),
        })
    }
}

/// The names of the random variables, in the order of their first assumption.
fn variables(assumed: &[&'static Entering]) -> Vec<&'static str> {
    let mut names: Vec<&'static str> = Vec::new();
    for entering in assumed {
        if !names.contains(&entering.assumption.variable) {
            names.push(entering.assumption.variable);
        }
    }
    names
}

/// The standard normal deviates of a point.
fn deviates(point: u32, count: usize) -> Vec<f64> {
    // A sample is a multiple of 2^-24; the middle of its cell is never 0 or 1.
    let half_cell = f64::from(f32::EPSILON) / 4.0;
    (0u32..)
        .take(count)
        .map(|d| normal_quantile(f64::from(sobol_burley::sample(point, d, SEED)) + half_cell))
        .collect()
}

/// The plant with its assumptions at the deviates of a point.
fn drawn(
    inputs: &Inputs,
    assumed: &[&'static Entering],
    variables: &[&'static str],
    deviates: &[f64],
) -> Inputs {
    let mut inputs = *inputs;
    for entering in assumed {
        let assumption = entering.assumption;
        let z = variables
            .iter()
            .zip(deviates)
            .find(|(name, _)| **name == assumption.variable)
            .map(|(_, z)| *z);
        if let Some(z) = z {
            (entering.set)(&mut inputs, assumption.unit.to_si(assumption.at_deviate(z)));
        }
    }
    inputs
}

/// The quantile of sorted numbers, by a straight line between neighbours.
fn quantile(sorted: &[f64], share: f64) -> f64 {
    between(sorted, share * (sorted.len() - 1) as f64)
}

/// The value at a place counted from 0, by a straight line between neighbours.
fn between(sorted: &[f64], place: f64) -> f64 {
    let below = place.floor();
    let part = place - below;
    let first = below as usize;
    let second = (first + 1).min(sorted.len() - 1);
    sorted[first] + part * (sorted[second] - sorted[first])
}

fn ranked(assumed: &[&'static Entering], at: &[&[f64]], found: &[f64]) -> Vec<Share> {
    let mut shares: Vec<Share> = variables(assumed)
        .iter()
        .zip(first_order_shares(at, found))
        .filter_map(|(name, share)| {
            let entering = assumed
                .iter()
                .find(|e| e.assumption.variable == *name)
                .copied()?;
            Some(Share { entering, share })
        })
        .collect();
    shares.sort_by(|a, b| b.share.total_cmp(&a.share));
    shares
}
