//! Walls up to stock until every rule of the proof is met.

use plan::Workshop;
use plant::Resolved;
use reckoning::{Finding, Verdict};

use super::{Sizes, Walk};
use crate::geometry;
use crate::propose::stock::{Shop, same};

/// Rounds in which walls are made thicker.
const ROUNDS: usize = 16;

/// Lays the boiler out, and makes thicker what a rule finds too thin, until nothing is found or
/// nothing helps.
pub(super) fn thicken(walk: &mut Walk<'_>) -> Resolved {
    let mut resolved = walk.laid();
    for _ in 0..ROUNDS {
        let found = against(walk, &resolved);
        let before = walk.sizes.clone();
        let mut tried: Vec<String> = Vec::new();
        for finding in &found {
            if !tried.contains(&finding.place) {
                tried.push(finding.place.clone());
                thicker(&mut walk.sizes, walk.shop, finding);
            }
        }
        if walk.sizes == before {
            break;
        }
        resolved = walk.laid();
    }
    resolved
}

/// What the leading set and the geometry of the plates have against it.
fn against(walk: &Walk<'_>, resolved: &Resolved) -> Vec<Finding> {
    let plan = &walk.draft.plan;
    let proof = proved(plan, walk.workshop, resolved);
    let open = |f: &&Finding| f.verdict >= Verdict::Unproved;
    let of_plates =
        |f: &&Finding| f.place.starts_with("tube-plate") && f.verdict >= Verdict::NotMet;
    let shapes = resolved.findings.iter().filter(of_plates);
    proof
        .leading()
        .filter(open)
        .chain(shapes)
        .cloned()
        .collect()
}

fn proved(plan: &plan::Plan, workshop: &Workshop, resolved: &Resolved) -> proof::Proof {
    let plates = geometry::of_plates(&resolved.plant);
    let named = plan.tester_set.get().and_then(|key| proof::find_set(key));
    proof::prove(
        &crate::proof_door::boiler(plan, plates.as_ref()),
        &crate::proof_door::service(plan),
        &crate::proof_door::stock(workshop),
        named,
    )
}

/// Makes the part thicker that a finding speaks of, by one step of what can be had.
fn thicker(sizes: &mut Sizes, shop: &Shop, finding: &Finding) {
    let place = finding.place.as_str();
    let up = |thickness: &mut f64| {
        if let Some(sheet) = shop.thicker(*thickness) {
            *thickness = sheet.thickness;
        }
    };
    match place {
        "tube-plate.upper" => up(&mut sizes.upper),
        "tube-plate.lower" => up(&mut sizes.lower),
        "barrel" => next_wall(&mut sizes.barrel, shop),
        "firebox" => next_wall(&mut sizes.firebox, shop),
        "tubes" => next_wall(&mut sizes.tube, shop),
        "foundation-ring" if sizes.ring < MOST_RING_MM => sizes.ring += 2.0,
        "firehole" if sizes.firehole_wall < MOST_RIM_MM => sizes.firehole_wall += 0.5,
        "firehole" => next_wall(&mut sizes.firebox, shop),
        _ if place.starts_with("bush.") && sizes.rim < MOST_RIM_MM => sizes.rim += 0.5,
        _ if place.starts_with("bush.") => next_wall(&mut sizes.barrel, shop),
        _ => {}
    }
}

/// Deepest ring, and widest rim of a bush or a firehole that is tried, mm.
const MOST_RING_MM: f64 = 20.0;
const MOST_RIM_MM: f64 = 4.0;

fn next_wall(tube: &mut crate::propose::stock::TubeSize, shop: &Shop) {
    let thicker = shop
        .walls(tube.outside)
        .into_iter()
        .find(|t| t.wall > tube.wall && !same(t.wall, tube.wall));
    if let Some(next) = thicker {
        *tube = next;
    }
}
