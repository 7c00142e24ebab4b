//! The pairs of barrel and firebox that are tried, and their order.

use super::Demand;
use crate::propose::draft::{Draft, size_mm};
use crate::propose::stock::{Shop, Source, TubeSize, same};
use reckoning::quantity::{Length, Quantity};

/// Least width of a water leg that is tried, mm; the rule asks 5.
const LEG_MM: f64 = 5.5;
/// Least outside of a barrel, mm.
const LEAST_MM: f64 = 54.0;
/// Fireboxes that are rolled or drawn to order between the listed tubes, mm.
const TO_ORDER_MM: [f64; 13] = [
    45.0, 48.0, 50.0, 60.0, 70.0, 80.0, 100.0, 120.0, 140.0, 150.0, 170.0, 180.0, 190.0,
];
/// Fireboxes tried in one barrel.
const FIREBOXES: usize = 3;
/// Heat that a kilogram of steam takes, and heat of a kilogram of coal that reaches it: enough for
/// a first bracket, J/kg.
const STEAM_J_KG: f64 = 2.65e6;
const COAL_J_KG: f64 = 0.6 * 32.0e6;
/// Rates of burning that the trade keeps small fires to: the first bracket, no more.
const RATES_KG_M2_H: (f64, f64) = (30.0, 120.0);
/// Speed of steam out of the water that a check allows, m/s, and the share of the section of a
/// barrel that tubes leave to the water, at most.
const LEAVING_M_S: f64 = 0.05;
const OPEN: f64 = 0.9;

/// A barrel and a firebox.
#[derive(Clone, Debug)]
pub(super) struct Shells {
    pub(super) barrel: TubeSize,
    pub(super) firebox: TubeSize,
}

/// Pairs in the order in which they are tried: barrels on hand, then listed ones from small to
/// large; in each the wider firebox first. Those that go into the room, the likely before the
/// unlikely.
pub(super) fn candidates(draft: &Draft, shop: &Shop, demand: &Demand) -> Vec<Shells> {
    let barrels = barrels(draft, shop);
    let fits = |tube: &&TubeSize| room(draft).is_none_or(|room| tube.outside <= room);
    let mut inside: Vec<&TubeSize> = barrels.iter().filter(fits).collect();
    if inside.is_empty() {
        // Nothing goes into the room: a boiler is drawn all the same, and the room tells it off.
        inside = barrels.iter().collect();
    }
    inside.sort_by_key(|tube| !matches!(tube.source, Source::OnHand(_)));
    let pairs: Vec<Shells> = inside
        .into_iter()
        .flat_map(|barrel| fireboxes(draft, shop, barrel))
        .collect();
    let rate = |pair: &Shells| rate(pair, demand);
    let narrow = |pair: &Shells| leaving(pair, demand) > LEAVING_M_S;
    let small = |pair: &&Shells| rate(pair) > RATES_KG_M2_H.1 || narrow(pair);
    let large = |pair: &&Shells| rate(pair) < RATES_KG_M2_H.0 && !narrow(pair);
    let of = |keep: &dyn Fn(&&Shells) -> bool| pairs.iter().filter(keep).cloned().collect();
    let mut order: Vec<Shells> = of(&|pair| !small(pair) && !large(pair));
    let mut too_large: Vec<Shells> = of(&large);
    too_large.sort_by(|a, b| rate(b).total_cmp(&rate(a)));
    let mut too_small: Vec<Shells> = of(&small);
    too_small.sort_by(|a, b| rate(a).total_cmp(&rate(b)));
    order.append(&mut too_large);
    order.append(&mut too_small);
    order
}

/// Fuel that the demand asks of a square metre of this grate, kg/h, roughly.
fn rate(pair: &Shells, demand: &Demand) -> f64 {
    let bore = Length::from_mm(pair.firebox.bore()).si();
    let grate = std::f64::consts::FRAC_PI_4 * bore * bore;
    let fuel = demand.high * STEAM_J_KG / COAL_J_KG;
    reckoning::quantity::KG_PER_M2_H.from_si(fuel / grate)
}

/// Speed of the steam out of the water at the high end of the demand, m/s, at best.
fn leaving(pair: &Shells, demand: &Demand) -> f64 {
    let bore = Length::from_mm(pair.barrel.bore()).si();
    let open = OPEN * std::f64::consts::FRAC_PI_4 * bore * bore;
    demand.high / (demand.steam_kg_m3 * open)
}

/// Width that the room leaves a barrel, mm; the lagging may shrink to nothing.
fn room(draft: &Draft) -> Option<f64> {
    let coat = size_mm(&draft.plan.boiler.lagging.thickness).unwrap_or(0.0);
    Some(draft.plan.room.width.value()?.mm() - 2.0 * coat)
}

/// One tube of each outside: the thinnest, whose wall goes up as the proof asks.
fn barrels(draft: &Draft, shop: &Shop) -> Vec<TubeSize> {
    let b = &draft.plan.boiler.barrel;
    let wall = size_mm(&b.wall);
    let given = size_mm(&b.outside).or_else(|| Some(size_mm(&b.bore)? + 2.0 * wall?));
    if let Some(outside) = given {
        return first(shop, outside, wall);
    }
    let mut found: Vec<TubeSize> = Vec::new();
    for tube in shop.tubes.iter().filter(|t| t.outside >= LEAST_MM) {
        if !found.iter().any(|t| same(t.outside, tube.outside)) {
            found.extend(first(shop, tube.outside, wall));
        }
    }
    found
}

/// The tube of this outside to begin with: one on hand, else the thinnest, with the maker's wall.
fn first(shop: &Shop, outside: f64, wall: Option<f64>) -> Vec<TubeSize> {
    let walls = shop.walls(outside);
    let on_hand = |t: &&TubeSize| matches!(t.source, Source::OnHand(_));
    let tube = match wall {
        Some(wall) => walls.iter().find(|t| same(t.wall, wall)),
        None => walls.iter().find(on_hand).or(walls.first()),
    };
    let to_order = || {
        let wall = wall?;
        Some(TubeSize {
            outside,
            wall,
            source: Source::ToOrder,
            longest: None,
        })
    };
    tube.cloned().or_else(to_order).into_iter().collect()
}

fn fireboxes(draft: &Draft, shop: &Shop, barrel: &TubeSize) -> Vec<Shells> {
    let f = &draft.plan.boiler.firebox;
    let wall = size_mm(&f.wall);
    let given = size_mm(&f.outside).or_else(|| Some(size_mm(&f.bore)? + 2.0 * wall?));
    let mut outsides: Vec<f64> = match given {
        Some(outside) => vec![outside],
        None => {
            let widest = barrel.bore() - 2.0 * LEG_MM;
            let listed = shop.tubes.iter().map(|t| t.outside);
            let all = listed.chain(TO_ORDER_MM);
            all.filter(|o| *o <= widest && *o > 0.5 * barrel.outside)
                .collect()
        }
    };
    outsides.sort_by(f64::total_cmp);
    outsides.dedup_by(|a, b| same(*a, *b));
    let widest_first = outsides.into_iter().rev().take(FIREBOXES);
    widest_first
        .flat_map(|outside| first(shop, outside, wall))
        .map(|firebox| Shells {
            barrel: barrel.clone(),
            firebox,
        })
        .collect()
}
