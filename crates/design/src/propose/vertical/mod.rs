//! The walk of a vertical boiler with a wet firebox and fire tubes, fired with coal.
//!
//! One file a part, one function a step. [`along`] lays a boiler out round a barrel and a firebox,
//! makes its walls as thick as the proof asks, seeks the blast by the draught balance, and mounts
//! what the fire needs; [`walk`] does so for one pair of tubes after another until a whole plan
//! meets every question. What it leaves out: stays, a drying coil, turned fittings, and places for
//! the maker's own bushes.

mod along;
mod barrel;
mod bushes;
mod front;
mod grate;
mod mounts;
mod plates;
mod service;
mod shells;
mod strength;
mod tubes;
mod water;

use plan::{Plan, Workshop};
use plant::Resolved;
use reckoning::Verdict;

use self::along::{Fire, along};
use self::shells::Shells;
use super::Walked;
use super::choice::Choice;
use super::demand::Demand;
use super::draft::{Draft, size_mm};
use super::stock::{Shop, TubeSize};
use super::weigh::{Weighed, weigh};

/// Pairs of shells that are laid out, and whole plans that are checked, before the walk gives up.
const LAID: usize = 36;
const CHECKED: usize = 8;

/// The sizes that a search moves; all others follow from them.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Sizes {
    barrel: TubeSize,
    firebox: TubeSize,
    tube: TubeSize,
    /// Upper and lower tube plate, mm.
    upper: f64,
    lower: f64,
    /// Depth of the foundation ring, mm.
    ring: f64,
    /// Wall of the firehole, mm.
    firehole_wall: f64,
    /// Tubes between the plates, mm.
    length: f64,
    /// Metal round the thread of a bush, mm.
    rim: f64,
    /// Seat of the safety valve, mm.
    seat: f64,
    /// Lagging, mm.
    lagging: f64,
}

/// What a step may look at.
pub(super) struct At<'a> {
    plan: &'a Plan,
    shop: &'a Shop,
    sizes: &'a Sizes,
    demand: &'a Demand,
}

impl At<'_> {
    fn firebox_bore(&self) -> Option<f64> {
        let f = &self.plan.boiler.firebox;
        size_mm(&f.bore).or_else(|| Some(size_mm(&f.outside)? - 2.0 * size_mm(&f.wall)?))
    }

    fn barrel_outside(&self) -> Option<f64> {
        let b = &self.plan.boiler.barrel;
        size_mm(&b.outside).or_else(|| Some(size_mm(&b.bore)? + 2.0 * size_mm(&b.wall)?))
    }
}

/// A walk under way.
#[derive(Clone)]
pub(super) struct Walk<'a> {
    draft: Draft,
    shop: &'a Shop,
    workshop: &'a Workshop,
    demand: &'a Demand,
    sizes: Sizes,
}

/// A step: what it chooses from what stands so far; nothing where what it needs is wanting.
type Step = fn(&At<'_>) -> Option<Choice>;

/// The steps that lay a boiler out, in their order.
const LAY: &[Step] = &[
    service::choice,
    service::lagging,
    barrel::choice,
    barrel::firebox,
    barrel::ring,
    grate::choice,
    grate::bed,
    grate::firehole,
    plates::choice,
    plates::firebox_height,
    tubes::choice,
    tubes::length,
    water::choice,
    water::glass,
    bushes::choice,
    front::smokebox,
    front::first,
    mounts::first_blower,
    mounts::valve,
    mounts::feed,
    mounts::gauge,
    mounts::drain,
];

impl Walk<'_> {
    fn step(&mut self, step: Step) {
        let at = At {
            plan: &self.draft.plan,
            shop: self.shop,
            sizes: &self.sizes,
            demand: self.demand,
        };
        if let Some(choice) = step(&at) {
            self.draft.take(choice);
        }
    }

    /// Lays the boiler out anew for the sizes at hand, and resolves it.
    fn laid(&mut self) -> Resolved {
        for step in LAY {
            self.step(*step);
        }
        plant::resolve(&self.draft.plan)
    }
}

/// Walks until a plan meets every question; else gives the one with the least against it.
pub(super) fn walk(draft: &Draft, (shop, workshop): (&Shop, &Workshop), demand: &Demand) -> Walked {
    let mut best: Walked = None;
    let mut limits = Limits::default();
    let mut checked = 0;
    let pairs = shells::candidates(draft, shop, demand);
    for shells in pairs.into_iter().take(LAID) {
        if limits.forbid(&shells) {
            continue;
        }
        let mut walk = Walk {
            draft: draft.clone(),
            shop,
            workshop,
            demand,
            sizes: Sizes::of(&shells, (draft, shop)),
        };
        let fire = along(&mut walk);
        if fire == Fire::Cold && best.is_some() {
            limits.small.push(shells);
            continue;
        }
        checked += 1;
        let weighed = weigh(&walk.draft.plan, workshop);
        limits.learn(&shells, (fire, &weighed));
        let met = weighed.forbidden.is_empty();
        let better = |(_, before): &(Draft, Weighed)| weighed.against < before.against;
        if best.as_ref().is_none_or(better) {
            best = Some((walk.draft, weighed));
        }
        if met || checked == CHECKED {
            break;
        }
    }
    best
}

/// Pairs that were found too small or too large: those beyond them are not tried.
#[derive(Default)]
struct Limits {
    small: Vec<Shells>,
    large: Vec<Shells>,
}

/// What a larger grate or a larger surface of water cures, and what a smaller boiler does.
const LARGER_CURES: &[&str] = &[
    "steaming.holds",
    "steaming.bed-lift",
    "steaming.back-pressure",
    "steaming.disengagement",
];
const SMALLER_CURES: &[&str] = &["steaming.burning-rate", "plant.room"];

impl Limits {
    fn forbid(&self, pair: &Shells) -> bool {
        let within = |a: &Shells, b: &Shells| {
            a.barrel.bore() <= b.barrel.bore() && a.firebox.bore() <= b.firebox.bore()
        };
        self.small.iter().any(|small| within(pair, small))
            || self.large.iter().any(|large| within(large, pair))
    }

    fn learn(&mut self, pair: &Shells, (fire, weighed): (Fire, &Weighed)) {
        // Walls that grew into the water leg say nothing of the grate.
        if weighed.against_by(&["plant.water-leg"], Verdict::Unproved) {
            return;
        }
        if fire == Fire::Cold || weighed.against_by(LARGER_CURES, Verdict::Unproved) {
            self.small.push(pair.clone());
        }
        if weighed.against_by(SMALLER_CURES, Verdict::NotMet) {
            self.large.push(pair.clone());
        }
    }
}

impl Sizes {
    /// The sizes to begin with.
    fn of(shells: &Shells, (draft, shop): (&Draft, &Shop)) -> Self {
        let sheet = |least| shop.sheet(least).map_or(least, |sheet| sheet.thickness);
        Self {
            barrel: shells.barrel.clone(),
            firebox: shells.firebox.clone(),
            tube: shop.walls(8.0)[0].clone(),
            upper: sheet(2.0),
            lower: sheet(2.0),
            ring: 8.0,
            firehole_wall: 2.0,
            length: along::SHORTEST_MM,
            rim: 2.0,
            seat: 6.0,
            lagging: lagging(draft, shells.barrel.outside),
        }
    }
}

/// The thickest felt that the room leaves round a barrel, mm.
fn lagging(draft: &Draft, barrel: f64) -> f64 {
    let room = draft.plan.room.width.value().map(|w| w.mm());
    let fits = |felt: &&f64| room.is_none_or(|room| barrel + 2.0 * **felt <= room);
    *[6.0, 4.0, 3.0].iter().find(fits).unwrap_or(&0.0)
}
