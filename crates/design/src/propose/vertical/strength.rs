//! Walls up to stock until every rule of the proof is met.

use plant::Resolved;
use reckoning::{Finding, Verdict};

use super::{Sizes, Walk};
use crate::check::prove;
use crate::propose::stock::{Shop, same};
use crate::steam_answer::Asked;

/// Rounds in which walls are made thicker.
const ROUNDS: usize = 16;

/// Lays the boiler out, and makes thicker what a rule finds too thin, until nothing is found or
/// nothing helps.
pub(super) fn thicken(walk: &mut Walk<'_>) -> Resolved {
    let mut resolved = walk.laid();
    for _ in 0..ROUNDS {
        let mut levers: Vec<Lever> = Vec::new();
        for finding in against(walk, &resolved) {
            let lever = Lever::of(&finding, &walk.sizes);
            levers.extend(lever.filter(|lever| !levers.contains(lever)));
        }
        let before = walk.sizes.clone();
        for lever in levers {
            lever.thicken(&mut walk.sizes, walk.shop);
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
    let unlit = Asked::of(plan, &resolved.plant).unlit();
    let proof = prove(plan, walk.workshop, &resolved.plant, &unlit);
    let open = |f: &&Finding| f.verdict == Verdict::NotMet && !NO_CURE.contains(&f.rule.id);
    let of_plates = |f: &&Finding| open(f) && f.place.starts_with("tube-plate.");
    let shapes = resolved.findings.iter().filter(of_plates);
    let leading = proof.leading().filter(open);
    leading.chain(shapes).cloned().collect()
}

/// A size that is made larger, by one step of what can be had.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Lever {
    Upper,
    Lower,
    Barrel,
    Firebox,
    Tubes,
    Ring,
    Firehole,
    Rim,
}

impl Lever {
    /// What helps the part that a finding speaks of.
    fn of(finding: &Finding, sizes: &Sizes) -> Option<Self> {
        let place = finding.place.as_str();
        let in_barrel = OF_SHELLS.contains(&finding.rule.id);
        Some(match place {
            "tube-plate.upper" => Self::Upper,
            "tube-plate.lower" => Self::Lower,
            "barrel" => Self::Barrel,
            "firebox" => Self::Firebox,
            "tubes" => Self::Tubes,
            "foundation-ring" => Self::Ring,
            "firehole" if sizes.firehole_wall < MOST_HOLE_MM => Self::Firehole,
            "firehole" if in_barrel => Self::Barrel,
            "firehole" => Self::Firebox,
            _ if place.starts_with("bush.") && sizes.rim < MOST_RIM_MM => Self::Rim,
            _ if place.starts_with("bush.") => Self::Barrel,
            _ => return None,
        })
    }

    fn thicken(self, sizes: &mut Sizes, shop: &Shop) {
        let up = |thickness: &mut f64| {
            if let Some(sheet) = shop.thicker(*thickness) {
                *thickness = sheet.thickness;
            }
        };
        match self {
            Self::Upper => up(&mut sizes.upper),
            Self::Lower => up(&mut sizes.lower),
            Self::Barrel => next_wall(&mut sizes.barrel, shop),
            Self::Firebox => next_wall(&mut sizes.firebox, shop),
            Self::Tubes => next_wall(&mut sizes.tube, shop),
            Self::Ring if sizes.ring < MOST_RING_MM => sizes.ring += 2.0,
            Self::Ring => {}
            Self::Firehole => sizes.firehole_wall += 0.5,
            Self::Rim => sizes.rim += 0.5,
        }
    }
}

/// Rules that more metal does not help.
const NO_CURE: &[&str] = &[
    "ours.steam-rating",
    "ours.metal-temperature",
    "ours.wetted-metal",
    "plant.water-covers-crown",
];
/// Rules of an opening in a shell; an opening in the firebox has its own.
const OF_SHELLS: &[&str] = &[
    "ours.opening-area",
    "ours.opening-pressure-area",
    "ours.opening-braze",
];
/// Deepest ring, widest wall of a firehole, and widest rim of a bush that are tried, mm.
const MOST_RING_MM: f64 = 20.0;
const MOST_HOLE_MM: f64 = 6.0;
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
