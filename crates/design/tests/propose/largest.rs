//! The question turned round.

use super::beginnings::{LAUNCH, proposed};
use design::propose::{Binds, Bound, Doubt, Largest, Way, largest};
use plan::Plan;
use reckoning::Verdict;
use std::sync::LazyLock;

static PLAN: LazyLock<Plan> = LazyLock::new(|| {
    let text = LAUNCH.text().replace("missing = \"60 %\"\n", "");
    plan::read(&proposed(&text).text, "plan.toml").content
});
static FOUND: LazyLock<Largest> = LazyLock::new(|| match largest(&PLAN) {
    Ok(found) => found,
    Err(why) => panic!("{why}"),
});

fn bound(way: Way, doubt: Doubt) -> &'static Bound {
    let mut bounds = FOUND.bounds.iter();
    let found = bounds.find(|b| b.way == way && b.doubt == doubt);
    found.unwrap_or_else(|| panic!("{way:?} {doubt:?}"))
}

/// The boiler was sized for this engine, of which nothing is measured, at the high end of its
/// demand, so that it holds it, and
/// one somewhat larger where every number is at its value.
#[test]
fn a_boiler_holds_the_engine_it_was_proposed_for() {
    for way in [Way::Size, Way::Speed] {
        let (likely, sure) = (bound(way, Doubt::Left), bound(way, Doubt::Counted));
        assert!(
            sure.share >= 0.999 && likely.share >= sure.share,
            "{way:?} {}",
            sure.share
        );
        assert!(likely.share < 2.5, "{}", likely.share);
        assert!(matches!(&likely.binds, Binds::Rules(rules) if !rules.is_empty()));
    }
}

/// Demand goes with the swept volume and the speed: the cube of the size is the share of the
/// speed, but for what the nozzle does to the exhaust and for what walls and leaks take, which
/// falls otherwise with the size than with the speed. Independent: kinematics.
#[test]
fn identity_size_and_speed_give_the_same_steam() {
    let (size, speed) = (
        bound(Way::Size, Doubt::Left),
        bound(Way::Speed, Doubt::Left),
    );
    assert!((size.share.powi(3) / speed.share - 1.0).abs() < 0.25);
    assert!((size.steam_kg_s / speed.steam_kg_s - 1.0).abs() < 0.01);
}

/// A little above the bound the check of the whole plan finds what is said to bind, a little
/// below it does not.
#[test]
fn what_binds_is_what_a_check_finds() {
    let bound = bound(Way::Speed, Doubt::Counted);
    let Binds::Rules(rules) = &bound.binds else {
        panic!("{:?}", bound.binds)
    };
    let broken = |share: f64| {
        let mut plan = PLAN.clone();
        let speed = format!("\"{} rpm\"", share * bound.rpm);
        plan::put(&mut plan, "engine.speed", &speed).expect("a speed");
        let plant = plant::resolve(&plan).plant;
        let run = design::steaming(&plan, &plant).run.expect("a run");
        let found = run.findings.into_iter();
        found
            .filter(|f| f.verdict > Verdict::MetOnCondition && f.rule.id == rules[0].0)
            .count()
    };
    assert_eq!((broken(0.97), broken(1.05)), (0, 1), "{rules:?}");
}

#[test]
fn a_plan_without_a_fire_is_told_what_is_wanted() {
    let why = largest(&plan::read(&LAUNCH.text(), "plan.toml").content).err();
    assert!(why.is_some_and(|why| why.0.contains(&"grate.diameter".to_owned())));
}
