//! One pair of shells to a whole plan.

use plant::{Plant, Resolved};
use reckoning::{Finding, Verdict};

use super::{At, Walk, front, mounts, strength};
use crate::check::mounted;
use crate::propose::demand::Demand;
use crate::propose::draft::size_mm;
use crate::propose::fire;
use crate::propose::stock::{TubeSize, same};
use crate::steam_answer::{Asked, Steaming};

/// Shortest and longest tube between the plates, and the step between lengths tried, mm.
pub(super) const SHORTEST_MM: f64 = 60.0;
const LONGEST_MM: f64 = 500.0;
const STEP_MM: f64 = 20.0;
/// Outside diameters of the tubes tried, mm.
const TUBES_MM: (f64, f64) = (6.0, 22.0);
/// Least bore that is swept of soot, and least wall that stands the brush and the fire, mm.
const BORE_MM: f64 = 4.5;
const WALL_MM: f64 = 0.8;
/// Tubes across the firebox, at most: more of them are a winter of brazing.
const MOST_ACROSS: f64 = 16.0;
/// A share of the steam that is not worth more metal, and one that is not worth more tubes.
const WORTH: f64 = 0.98;
const FEWER: f64 = 0.97;
/// Outside of a barrel in thicknesses of its upper plate, before the proof has spoken.
const PLATE: f64 = 36.0;
/// Steam made over the high end of what is asked for.
const WANTED: f64 = 1.15;
/// Rounds in which the blast is made stronger, so that it holds in nine cases of ten too.
const ROUNDS: usize = 4;

/// Whether a blast was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fire {
    /// The fire makes what is wanted.
    Warm,
    /// No nozzle makes it.
    Cold,
}

/// Takes every step for one pair of shells.
pub(super) fn along(walk: &mut Walk<'_>) -> Fire {
    pack(walk);
    lengthen(walk);
    let resolved = strength::thicken(walk);
    blower(walk, &resolved.plant);
    let fire = blast(walk, &resolved.plant);
    seat(walk, &resolved, fire.as_ref());
    count(walk);
    match fire {
        Some(_) => Fire::Warm,
        None => Fire::Cold,
    }
}

/// The widest tube within reach of the most steam, among those that leave the water its surface.
fn pack(walk: &mut Walk<'_>) {
    let mut made: Vec<(TubeSize, f64)> = Vec::new();
    let mut crowded: Vec<(TubeSize, f64)> = Vec::new();
    let thinnest = walk.sizes.upper;
    let likely = walk.shop.sheet(walk.sizes.barrel.outside / PLATE);
    walk.sizes.upper = likely.map_or(thinnest, |sheet| sheet.thickness);
    for tube in tubes(walk) {
        walk.sizes.tube = tube.clone();
        walk.sizes.length = 2.0 * SHORTEST_MM;
        let resolved = walk.laid();
        let Some(state) = fire::state(&walk.draft.plan, &resolved.plant) else {
            continue;
        };
        let Some(ratio) = state.steaming_ratio() else {
            continue;
        };
        // As fast as it will be when the blast is as strong as it has to be.
        let fastest = state.leaving_m_s * wanted(walk.demand) / ratio;
        if fastest <= SURELY * LEAVING_M_S {
            made.push((tube, ratio));
        } else {
            crowded.push((tube, ratio));
        }
    }
    walk.sizes.upper = thinnest;
    let among = if made.is_empty() { crowded } else { made };
    let most = among.iter().map(|(_, ratio)| *ratio).fold(0.0, f64::max);
    let worth = among.into_iter().rev().find(|(_, r)| *r >= FEWER * most);
    if let Some((tube, _)) = worth {
        walk.sizes.tube = tube;
    }
}

/// The tubes that are tried in this firebox.
fn tubes(walk: &Walk<'_>) -> Vec<TubeSize> {
    let least = walk.sizes.firebox.bore() / MOST_ACROSS;
    let mut tubes: Vec<TubeSize> = walk.shop.tubes.clone();
    tubes.retain(|t| (TUBES_MM.0..=TUBES_MM.1).contains(&t.outside));
    tubes.retain(|t| t.wall >= WALL_MM && t.bore() >= BORE_MM && t.outside >= least);
    tubes.dedup_by(|b, a| same(a.outside, b.outside));
    tubes
}

/// Speed of steam out of the water that a check allows, m/s, and the share of it that is used, so
/// that the check is met in nine cases of ten too.
const LEAVING_M_S: f64 = 0.05;
const SURELY: f64 = 0.8;

/// The steaming ratio, with every number at its value, that makes what is wanted at the high end
/// of the demand.
fn wanted(demand: &Demand) -> f64 {
    WANTED * demand.high / demand.likely
}

/// Longer tubes as long as they bring more steam and have room.
fn lengthen(walk: &mut Walk<'_>) {
    walk.sizes.length = SHORTEST_MM;
    let resolved = walk.laid();
    let mut made = fire::ratio(&walk.draft.plan, &resolved.plant);
    let most = room(walk, &resolved.plant);
    while walk.sizes.length + STEP_MM <= most {
        walk.sizes.length += STEP_MM;
        let resolved = walk.laid();
        let ratio = fire::ratio(&walk.draft.plan, &resolved.plant);
        if let (Some(before), Some(now)) = (made, ratio)
            && before >= WORTH * now
        {
            walk.sizes.length -= STEP_MM;
            break;
        }
        made = ratio.or(made);
    }
}

/// The longest tubes that room and stock leave, mm.
fn room(walk: &Walk<'_>, plant: &Plant) -> f64 {
    let plan = &walk.draft.plan;
    let height = plant.outline.as_ref().and_then(|o| o.height.as_ref());
    let left = plan.room.height.value().zip(height);
    let by_room = left.map(|(room, height)| room.mm() - height.value.mm() - SPARE_MM);
    let barrel = size_mm(&plan.boiler.barrel.length);
    let longest = walk.sizes.barrel.longest;
    let by_stock = longest.zip(barrel).map(|(piece, barrel)| piece - barrel);
    [by_room, by_stock]
        .into_iter()
        .flatten()
        .map(|more| walk.sizes.length + more)
        .fold(LONGEST_MM, f64::min)
}

/// Height kept in hand for thicker plates, whose flanges are higher, mm.
const SPARE_MM: f64 = 8.0;

fn blower(walk: &mut Walk<'_>, plant: &Plant) {
    let at = At {
        plan: &walk.draft.plan,
        shop: walk.shop,
        sizes: &walk.sizes,
        demand: walk.demand,
    };
    if let Some(choice) = mounts::blower(&at, plant) {
        walk.draft.take(choice);
    }
}

/// The blast with which the fire makes the steam at the high end of the demand, and in nine cases
/// of ten of what may be true.
fn blast(walk: &mut Walk<'_>, plant: &Plant) -> Option<Steaming> {
    let mut wanted = wanted(walk.demand);
    let mut last = None;
    for _ in 0..ROUNDS {
        let Some(choice) = front::seek(&walk.draft, plant, wanted) else {
            break;
        };
        walk.draft.take(choice);
        let steaming = Asked::of(&walk.draft.plan, plant).answered();
        let run = steaming.run.as_ref()?;
        let holds = run.findings.iter().find(|f| f.rule.id == "steaming.holds");
        let met = holds.is_some_and(|f| f.verdict <= Verdict::MetOnCondition);
        let low = run.band.as_ref().map(|band| band.low);
        last = Some(steaming);
        match low {
            Some(low) if !met && low > 0.0 => wanted *= MORE / low,
            _ => break,
        }
    }
    last
}

/// How far above one the worse tenth is brought.
const MORE: f64 = 1.02;

/// The least seat that passes what the fire raises.
fn seat(walk: &mut Walk<'_>, resolved: &Resolved, fire: Option<&Steaming>) {
    let unlit = Asked::of(&walk.draft.plan, &resolved.plant).unlit();
    let steaming = fire.unwrap_or(&unlit);
    for seat in mounts::SEATS_MM {
        walk.sizes.seat = seat;
        walk.step(super::bushes::choice);
        walk.step(mounts::valve);
        let found = mounted(&walk.draft.plan, walk.workshop, resolved, steaming);
        let passes = |f: &&Finding| f.rule.id == "ours.valve-capacity";
        let verdict = found.iter().find(passes).map(|f| f.verdict);
        if verdict.is_some_and(|v| v <= Verdict::MetOnCondition) {
            break;
        }
    }
}

/// Writes down how many tubes there are, so that a later change of a plate does not add one.
fn count(walk: &mut Walk<'_>) {
    let resolved = plant::resolve(&walk.draft.plan);
    let Some(nest) = &resolved.plant.nest else {
        return;
    };
    let fit = nest.fit.to_string();
    if let Some(mut choice) = walk
        .draft
        .choices
        .iter()
        .find(|c| c.step == "tubes")
        .cloned()
    {
        choice = choice.set("boiler.tubes.count", fit);
        walk.draft.take(choice);
    }
}
