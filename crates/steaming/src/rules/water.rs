//! Water and feed against the demand.

use reckoning::Finding;
use reckoning::quantity::{KG, KG_PER_H};

use super::checks::Asked;
use super::list::{FEED_KEEPS_UP, WATER_LASTS};
use super::{Judging, judged};
use crate::consumption::{FEED_OVER_DEMAND, FeedMeans, WaterAsked, water_mass};
use crate::state::FireState;

/// Applies the rules of water and feed to the state at the working pressure. Nothing is raised
/// where no state was found, no steam is asked, or the plan asks for no time and has no feed.
#[must_use]
pub fn water_findings(judging: &Judging<'_>, water: &WaterAsked<'_>) -> Vec<Finding> {
    let Some(state) = judging.sweep.state_at(judging.working_pa) else {
        return Vec::new();
    };
    let lasts = water
        .run_s
        .and_then(|run_s| lasts(state, judging, water, run_s));
    let keeps_up = water
        .means
        .iter()
        .filter_map(|means| keeps_up(state, judging, means));
    lasts.into_iter().chain(keeps_up).collect()
}

fn steam_asked(state: &FireState) -> Option<f64> {
    (state.demand_kg_s > 0.0).then_some(state.demand_kg_s)
}

fn lasts(
    state: &FireState,
    judging: &Judging<'_>,
    water: &WaterAsked<'_>,
    run_s: f64,
) -> Option<Finding> {
    let there = |s: &FireState| Some(water_mass(s, water).ok()? + water.fed_kg(run_s));
    let taken = |s: &FireState| Some(steam_asked(s)? * run_s);
    let check = Asked {
        rule: &WATER_LASTS,
        place: "boiler.water-level.working",
        margin: &|s| Some(there(s)? / taken(s)?),
        wanted: 1.1,
        value: &there,
        limit: &taken,
        unit: &KG,
        what: "water there and fed against what the run takes",
    };
    judged(&check, state, judging)
}

fn keeps_up(state: &FireState, judging: &Judging<'_>, means: &FeedMeans<'_>) -> Option<Finding> {
    let check = Asked {
        rule: &FEED_KEEPS_UP,
        place: means.id,
        margin: &|s| Some(means.feeds_kg_s / (FEED_OVER_DEMAND * steam_asked(s)?)),
        wanted: 1.0,
        value: &|_| Some(means.feeds_kg_s),
        limit: &|s| Some(FEED_OVER_DEMAND * steam_asked(s)?),
        unit: &KG_PER_H,
        what: "water fed",
    };
    judged(&check, state, judging)
}
