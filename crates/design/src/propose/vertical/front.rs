//! Smokebox, chimney, nozzle: first by a rule of the trade, so that there is a fire to weigh; then
//! by the draught balance itself.

use plant::Plant;
use reckoning::Origin;

use super::At;
use crate::propose::choice::{Choice, mm, plain};
use crate::propose::draft::{Draft, size_mm};
use crate::propose::fire;

/// Area of the nozzle over that of the grate: the trade says 0.003 to 0.005.
const NOZZLE_OF_GRATE: f64 = 0.003;
/// Choke in bores of the nozzle: the trade says 4 to 5.
const CHOKE: f64 = 4.5;
/// Length of the chimney in chokes, over which jet and gas mix.
const MIXING: f64 = 5.0;
/// The nozzle below the choke, in chokes.
const BELOW: f64 = 0.75;
/// Room in the smokebox below the nozzle, for its pipe and for sweeping, mm.
const PIPE_MM: f64 = 30.0;
/// Step of the nozzles tried, mm, as drills are sold.
const STEP_MM: f64 = 0.1;
/// Steps passed over in the coarse search.
const COARSE: u32 = 4;
/// Chokes tried, as shares of the first one.
const CHOKES: [f64; 8] = [0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.25, 1.4];
/// Least bore that is drilled and kept open, mm.
const LEAST_MM: f64 = 0.8;

/// The first choke for a grate, mm.
fn first_choke(grate: f64) -> f64 {
    (CHOKE * NOZZLE_OF_GRATE.sqrt() * grate).round()
}

fn smokebox_height(choke: f64) -> f64 {
    (BELOW * choke + PIPE_MM).ceil()
}

fn chimney_height(choke: f64) -> f64 {
    (MIXING * choke).ceil()
}

pub(super) fn smokebox(at: &At<'_>) -> Option<Choice> {
    let choke = first_choke(size_mm(&at.plan.grate.diameter)?);
    let wall = at.shop.sheet(1.0)?;
    Some(
        Choice::of("smokebox")
            .set("smokebox.outside", mm(at.barrel_outside()?))
            .set("smokebox.wall", mm(wall.thickness))
            .set("smokebox.height", mm(smokebox_height(choke)))
            .set("smokebox.metal", crate::propose::choice::text("CW024A"))
            .between("sheets on hand and listed of 1 mm and more")
            .because(
                format!(
                    "{}; as wide as the barrel, and high enough for the nozzle below the choke \
                     and its pipe",
                    wall.source.words()
                ),
                Origin::CommonPractice,
            ),
    )
}

/// Chimney and nozzle as the trade would have them.
pub(super) fn first(at: &At<'_>) -> Option<Choice> {
    let grate = size_mm(&at.plan.grate.diameter)?;
    let choke = first_choke(grate);
    let nozzle = tenth(NOZZLE_OF_GRATE.sqrt() * grate);
    Some(
        chimney(choke, first_choke(grate), nozzle)
            .between("rules of the trade")
            .because("the first bracket", Origin::CommonPractice),
    )
}

fn tenth(mm: f64) -> f64 {
    let tenth = (mm / STEP_MM).round() * STEP_MM;
    if tenth < LEAST_MM { LEAST_MM } else { tenth }
}

fn chimney(choke: f64, first: f64, nozzle: f64) -> Choice {
    let height = chimney_height(first);
    Choice::of("blast")
        .set("chimney.choke", mm(choke))
        .set("chimney.top", mm(choke))
        .set("chimney.parallel", mm(height))
        .set("chimney.height", mm(height))
        .set("blast.nozzle", mm(nozzle))
        .set("blast.below-choke", mm((BELOW * first).round()))
}

/// The widest nozzle, over the chokes tried, at which the fire makes `wanted` of the steam asked
/// for; `None` where none does.
pub(super) fn seek(draft: &Draft, plant: &Plant, wanted: f64) -> Option<Choice> {
    let grate = size_mm(&draft.plan.grate.diameter)?;
    let first = first_choke(grate);
    let mut best: Option<(f64, f64, f64)> = None;
    for share in CHOKES {
        let choke = (share * first).round();
        let found = widest(draft, plant, (choke, wanted));
        if let Some((nozzle, ratio)) = found
            && best.is_none_or(|(_, before, _)| nozzle > before + 0.5 * STEP_MM)
        {
            best = Some((choke, nozzle, ratio));
        }
    }
    let (choke, nozzle, ratio) = best?;
    Some(
        chimney(choke, first, nozzle)
            .between(format!(
                "nozzles in steps of a tenth of a millimetre under chokes of {} to {} mm",
                plain((CHOKES[0] * first).round()),
                plain((CHOKES[CHOKES.len() - 1] * first).round())
            ))
            .because(
                format!(
                    "the widest nozzle, and the choke that allows it, at which the fire makes \
                     {ratio:.2} of the steam asked for, {wanted:.2} wanted: the engine is held \
                     back least; the choke is {:.1} nozzles wide (the trade says 4 to 5), the \
                     nozzle {:.4} of the grate by area (the trade says 0.005, which has no bed \
                     in it)",
                    choke / nozzle,
                    (nozzle / grate) * (nozzle / grate)
                ),
                Origin::Assumed,
            ),
    )
}

/// The widest nozzle under a choke with which the fire makes what is wanted, and what it makes.
fn widest(draft: &Draft, plant: &Plant, (choke, wanted): (f64, f64)) -> Option<(f64, f64)> {
    let makes = |nozzle: f64| {
        let plan = draft.with(&[
            ("chimney.choke", mm(choke)),
            ("chimney.top", mm(choke)),
            ("blast.nozzle", mm(nozzle)),
        ]);
        fire::ratio(&plan, plant).filter(|ratio| *ratio >= wanted)
    };
    let widest = (0.4 * choke / STEP_MM).round();
    let at = |step: u32| (widest - f64::from(step)) * STEP_MM;
    let steps = (0u32..).take_while(|step| at(*step) >= LEAST_MM - 0.5 * STEP_MM);
    let found = steps
        .step_by(COARSE as usize)
        .find_map(|step| Some((step, makes(at(step))?)))?;
    // One of the steps that were passed over may do as well.
    let passed = found.0.saturating_sub(COARSE - 1)..found.0;
    let wider = passed
        .into_iter()
        .find_map(|step| Some((step, makes(at(step))?)));
    let (step, ratio) = wider.unwrap_or(found);
    Some((at(step), ratio))
}
