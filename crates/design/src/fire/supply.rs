//! Water and its feed, and the sizes among which a cure of the fire is sought.

use formulas::steam;
use plan::Plan;
use plan::section::FeedMeans as Planned;
use plant::Plant;
use reckoning::quantity::{Length, MM, Quantity};
use std::f64::consts::FRAC_PI_4;
use steaming::consumption::{Consumption, FeedMeans, WaterAsked};
use steaming::{
    Bundle, Candidates, Cure, FireAir, FireState, Inputs, Judging, Stack, metric_steps,
};

/// What the rules of water and feed find; nothing where the plan does not give the water above
/// the lowest level.
#[must_use]
pub fn water(plan: &Plan, plant: &Plant, judging: &Judging<'_>) -> Vec<reckoning::Finding> {
    let Some(state) = judging.sweep.state_at(judging.working_pa) else {
        return Vec::new();
    };
    let means = feed_means(plan, state);
    water_asked(plan, plant, state, &means)
        .map_or_else(Vec::new, |asked| steaming::water_findings(judging, &asked))
}

/// The means of feed of a plan that say how much they feed, with water as cold as it is fed.
#[must_use]
pub fn feed_means<'a>(plan: &'a Plan, state: &FireState) -> Vec<FeedMeans<'a>> {
    let Some(cold) = cold_water(state) else {
        return Vec::new();
    };
    plan.feed
        .means
        .iter()
        .filter_map(|means| {
            Some(FeedMeans {
                id: means.id.get()?,
                feeds_kg_s: cold * feeds_m3_s(means)?,
            })
        })
        .collect()
}

/// The water that is there and what is asked of it; `None` where the plan does not give the water
/// above the lowest level.
#[must_use]
pub fn water_asked<'a>(
    plan: &Plan,
    plant: &Plant,
    state: &FireState,
    means: &'a [FeedMeans<'a>],
) -> Option<WaterAsked<'a>> {
    // A tank that was filled in and taken away again may have held too little.
    if plan.feed.tank.is_emptied() {
        return None;
    }
    let reserve = plant.water.as_ref()?.reserve.as_ref()?;
    let cold = cold_water(state)?;
    Some(WaterAsked {
        above_lowest_m3: reserve.value.si(),
        run_s: plan.duty.run.value().map(Quantity::si),
        means,
        tank_kg: plan.feed.tank.value().map(|tank| cold * tank.si()),
    })
}

/// Density of the feed water as it is fed, kg/m³.
fn cold_water(state: &FireState) -> Option<f64> {
    let site = &state.inputs.site;
    Some(steam::at_pt(site.atmosphere_pa, site.feed_k).ok()?.rho)
}

/// What a settled state uses; `None` where the plan does not give the water above the lowest
/// level.
#[must_use]
pub fn consumption(plan: &Plan, plant: &Plant, state: &FireState) -> Option<Consumption> {
    let asked = water_asked(plan, plant, state, &[])?;
    steaming::consumption::consumption(state, &asked).ok()
}

/// Water that a means feeds, m³/s: as measured, else what its plunger sweeps.
pub(crate) fn feeds_m3_s(means: &Planned) -> Option<f64> {
    if let Some(rate) = means.rate.value() {
        return Some(rate.si());
    }
    // A rate that was measured and taken away again may have been less than the plunger sweeps.
    if means.rate.is_emptied() {
        return None;
    }
    let plunger = means.plunger.likely()?.value.si();
    let stroke = means.stroke.likely()?.value.si();
    let strokes = means.strokes.value()?.si();
    let efficiency = means.efficiency.value()?.si();
    Some(FRAC_PI_4 * plunger * plunger * stroke * strokes * efficiency)
}

/// Lumps as coal is sorted, mm (common practice, no source).
const LUMPS_MM: [f64; 9] = [4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0];
/// How far from the drawn bore a nozzle is sought, as shares of it.
const NOZZLES: [f64; 2] = [0.5, 1.5];
/// Chokes and heights tried, as shares of those drawn.
const STACKS: [f64; 6] = [0.7, 0.8, 0.9, 1.1, 1.25, 1.5];

/// Tubes as they are sold, outside diameter, mm (common practice, no source).
const TUBES_MM: [f64; 8] = [5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 18.0, 22.0];
/// Grates tried, in steps of two millimetres down to this share of that drawn.
const LEAST_GRATE: f64 = 0.7;
/// Areas of air holes tried, as shares of those drawn.
const HOLES: [f64; 6] = [0.5, 0.75, 1.25, 1.5, 2.0, 3.0];

/// The nearest nozzle, lump, bundle of tubes, grate, chimney, air holes, gas jet and mouth that
/// would let the fire hold at working pressure. Empty where the plant has no balance there.
#[must_use]
pub fn cures(plan: &Plan, plant: &Plant, inputs: &Inputs, working_pa: f64) -> Vec<Cure> {
    // Drills come in twentieths of a millimetre.
    let drawn_mm = inputs.blast.map_or(1.0, |blast| MM.from_si(blast.nozzle_m));
    let twentieth = |share: f64| (share * drawn_mm * 20.0).round() / 20.0;
    let nozzles = metric_steps(twentieth(NOZZLES[0]), twentieth(NOZZLES[1]), 5);
    let lumps = LUMPS_MM.map(|mm| MM.to_si(mm));
    let tubes = bundles(plant, inputs);
    let grates = grates(plan, inputs);
    let stacks = stacks(inputs);
    let holes: Vec<f64> = match inputs.firing.bed().map(|fired| fired.fire.air) {
        Some(FireAir::WithHoles { holes, .. }) => {
            HOLES.iter().map(|share| share * holes.area_m2).collect()
        }
        _ => Vec::new(),
    };
    let (jets, mouths) = flame_sizes(inputs);
    let candidates = Candidates {
        nozzle_m: &nozzles,
        lump_m: &lumps,
        tubes: &tubes,
        grate_m: &grates,
        stack: &stacks,
        holes_m2: &holes,
        jet_m: &jets,
        mouth_m2: &mouths,
    };
    steaming::cures(inputs, working_pa, &candidates).unwrap_or_else(|_| Vec::new())
}

/// Gas jets in hundredths of a millimetre, as they are pierced, and openings for secondary air.
fn flame_sizes(inputs: &Inputs) -> (Vec<f64>, Vec<f64>) {
    let Some(flame) = inputs.firing.flame() else {
        return (Vec::new(), Vec::new());
    };
    let jets = flame.burner().map_or(Vec::new(), |burner| {
        let drawn_mm = MM.from_si(burner.jet.bore_m);
        let hundredth = |share: f64| (share * drawn_mm * 100.0).round() / 100.0;
        metric_steps(hundredth(NOZZLES[0]), hundredth(NOZZLES[1]), 1)
    });
    let mouths = flame.mouth.area_m2().map_or(Vec::new(), |m2| {
        HOLES.iter().map(|share| share * m2).collect()
    });
    (jets, mouths)
}

/// Chokes at the drawn height, then heights at the drawn choke.
fn stacks(inputs: &Inputs) -> Vec<Stack> {
    let drawn = &inputs.chimney;
    let chokes = STACKS.map(|share| Stack {
        choke_m: drawn.choke_m * share,
        height_m: drawn.height_m,
    });
    let taller = STACKS.map(|share| Stack {
        choke_m: drawn.choke_m,
        height_m: drawn.height_m * share,
    });
    chokes.into_iter().chain(taller).collect()
}

/// Other tubes with the wall of those drawn, as many as the plates hold.
fn bundles(plant: &Plant, inputs: &Inputs) -> Vec<Bundle> {
    let (Some(nest), Some(drawn)) = (&plant.nest, inputs.firing.tubes()) else {
        return Vec::new();
    };
    let walls = (nest.outside.value - nest.bore.value).si();
    TUBES_MM
        .iter()
        .filter_map(|mm| {
            let outside = Length::from_mm(*mm);
            let bundle = Bundle {
                count: nest.fit_of(outside)? as f64,
                length_m: drawn.length_m,
                bore_m: outside.si() - walls,
            };
            let other = (bundle.bore_m - drawn.bore_m).abs() > 1e-6;
            (other && bundle.count > 0.0 && bundle.bore_m > 0.0).then_some(bundle)
        })
        .collect()
}

/// Grates that the firebox takes.
fn grates(plan: &Plan, inputs: &Inputs) -> Vec<f64> {
    let firebox = &plan.boiler.firebox;
    let (Some(fired), Some(outside), Some(wall)) = (
        inputs.firing.bed(),
        firebox.outside.likely(),
        firebox.wall.likely(),
    ) else {
        return Vec::new();
    };
    let drawn_mm = MM.from_si(across(fired.bed.grate_m2));
    let most_mm = (outside.value - wall.value * 2.0).mm();
    metric_steps((LEAST_GRATE * drawn_mm).round(), most_mm.floor(), 200)
}

/// Diameter of a round area.
fn across(area_m2: f64) -> f64 {
    (area_m2 / FRAC_PI_4).sqrt()
}
