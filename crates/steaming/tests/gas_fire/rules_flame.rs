//! Each rule of a flame on a plant made to break it, and on its neighbour. The plant is that of the
//! independent calculation, which trips over the place of its first tube and is not sure to hold
//! its flame on the ports.

use crate::changed::{boiler_pa, burner_of, tubes_of};
use crate::gf1::{fired, gas_plant, mm};
use reckoning::quantity::MM2;
use reckoning::{Finding, Verdict, Working};
use steaming::burner::{Mouth, PortShape};
use steaming::{
    Blower, Inputs, Judging, Leak, NotSettled, OverDraught, StrongestGas, TankAsked, TankEnds,
    TankTime, carbon_monoxide, findings, over_draught, steam_jets, strongest_gas, sweep,
    tank_lasts,
};

fn all(inputs: &Inputs) -> Vec<Finding> {
    let at = boiler_pa();
    let sweep = sweep(inputs, &[at]).expect("a sweep");
    let working = Working::new();
    findings(&Judging {
        sweep: &sweep,
        working_pa: at,
        valve_pa: at + 1e5,
        draws: None,
        working: &working,
    })
}

fn judged(inputs: &Inputs, rule: &str) -> Finding {
    let found = all(inputs).into_iter().find(|f| f.rule.id == rule);
    found.unwrap_or_else(|| panic!("{rule} is not raised"))
}

fn verdict(change: impl FnOnce(&mut Inputs), rule: &str) -> Verdict {
    let mut inputs = gas_plant();
    change(&mut inputs);
    judged(&inputs, rule).verdict
}

fn chimney(inputs: &mut Inputs, height_mm: f64) {
    inputs.chimney.height_m = mm(height_mm);
    inputs.chimney.parallel_m = mm(height_mm);
}

/// Independent calculation: a jet of 0.2 mm under a chimney of 200 mm gets 1.048 of its air.
#[test]
fn flame_air_fires_on_a_large_jet() {
    let change = |i: &mut Inputs| {
        burner_of(i).jet.bore_m = mm(0.2);
        chimney(i, 200.0);
    };
    assert_eq!(verdict(change, "flame.air"), Verdict::NotMet);
}

/// Independent calculation: the same under 150 mm is a quarter of a pascal short.
#[test]
fn flame_air_fires_on_a_flame_that_starves_and_names_its_cure() {
    let mut inputs = gas_plant();
    burner_of(&mut inputs).jet.bore_m = mm(0.2);
    let (air, holds) = (
        judged(&inputs, "flame.air"),
        judged(&inputs, "steaming.holds"),
    );
    assert_eq!(
        (air.verdict, holds.verdict),
        (Verdict::NotMet, Verdict::NotMet)
    );
    assert!(
        air.says.contains("not enough air: the draught is 0.2")
            && air.says.contains("a chimney of"),
        "{}",
        air.says
    );
}

/// Independent calculation: 1.214 of its air.
#[test]
fn flame_air_silent_on_the_plant_as_drawn() {
    assert_eq!(verdict(|_| {}, "flame.air"), Verdict::Met);
}

/// Independent calculation: 0.92 has burnt at the first tube.
#[test]
fn flame_burnt_before_tubes_fires_on_a_tube_too_near() {
    let found = judged(&gas_plant(), "flame.burnt-before-tubes");
    assert_eq!(found.verdict, Verdict::NotMet);
    let cure = found.remedy.expect("a cure");
    assert!(cure.contains("132 mm"), "{cure}");
}

#[test]
fn flame_burnt_before_tubes_silent_two_mixing_lengths_behind_the_burner() {
    let change = |i: &mut Inputs| {
        let tubes = tubes_of(i);
        tubes.first_m = mm(132.0);
        tubes.count = 4;
    };
    assert_eq!(verdict(change, "flame.burnt-before-tubes"), Verdict::Met);
}

#[test]
fn flame_burnt_at_end_fires_on_slow_mixing() {
    let change = |i: &mut Inputs| fired(i).flame.mixing_m = mm(80.0);
    assert_eq!(verdict(change, "flame.burnt-at-end"), Verdict::NotMet);
}

/// Independent calculation: 0.998 has burnt at the end.
#[test]
fn flame_burnt_at_end_silent_on_the_plant_as_drawn() {
    assert_eq!(verdict(|_| {}, "flame.burnt-at-end"), Verdict::Met);
}

/// Independent calculation: one port of 300 W without primary air has a flame of 110 mm; with half
/// of its air it is shorter, and far longer than 13 mm.
#[test]
fn flame_clear_of_metal_fires_on_few_and_large_ports() {
    let change = |i: &mut Inputs| {
        let ports = &mut burner_of(i).ports;
        ports.count = 2.0;
        ports.shape = PortShape::Slot {
            width_m: mm(0.8),
            length_m: mm(120.0),
        };
    };
    assert_eq!(verdict(change, "flame.clear-of-metal"), Verdict::NotMet);
}

/// Independent calculation: flames of 6.4 mm.
#[test]
fn flame_clear_of_metal_silent_on_the_plant_as_drawn() {
    assert_eq!(verdict(|_| {}, "flame.clear-of-metal"), Verdict::Met);
}

/// Independent calculation: all its air drawn in by wider holes, it lifts at 2.4 of blow-off; as
/// drawn it stands at 0.74, where only lighting shows.
#[test]
fn flame_lift_fires_on_a_full_premix_and_is_unproved_between() {
    let premixed = |i: &mut Inputs| {
        fired(i).flame.mouth = Mouth::Shut;
        let burner = burner_of(i);
        burner.holes_m2 = std::f64::consts::PI * mm(3.6) * mm(3.6);
        burner.ports.shape = PortShape::Slot {
            width_m: mm(0.8),
            length_m: mm(20.0),
        };
    };
    assert_eq!(verdict(premixed, "flame.lift"), Verdict::NotMet);
    let found = judged(&gas_plant(), "flame.lift");
    assert_eq!(found.verdict, Verdict::Unproved);
    let cure = found.remedy.expect("a cure");
    assert!(cure.starts_with("prove it by lighting"), "{cure}");
}

#[test]
fn flame_lift_silent_on_ports_of_twice_the_area() {
    let change = |i: &mut Inputs| burner_of(i).ports.count = 48.0;
    assert_eq!(verdict(change, "flame.lift"), Verdict::Met);
}

/// Wide slots under a mixture with nearly all its air: slow, and too wide to quench.
#[test]
fn flame_light_back_fires_on_wide_slow_ports() {
    let change = |i: &mut Inputs| {
        let burner = burner_of(i);
        burner.holes_m2 *= 2.0;
        burner.ports.shape = PortShape::Slot {
            width_m: mm(6.0),
            length_m: mm(10.0),
        };
    };
    assert_eq!(verdict(change, "flame.light-back"), Verdict::NotMet);
}

#[test]
fn flame_light_back_silent_on_narrow_slots() {
    let found = judged(&gas_plant(), "flame.light-back");
    assert_eq!(found.verdict, Verdict::Met);
    assert!(found.says.contains("goes out"), "{}", found.says);
}

fn blown() -> Inputs {
    let mut inputs = gas_plant();
    inputs.blower = Some(Blower {
        jets: 1.0,
        bore_m: mm(0.2),
        coefficient: 0.85,
        mixing: 0.45,
    });
    inputs
}

fn over(inputs: &Inputs) -> OverDraught {
    let over = over_draught(inputs, boiler_pa()).expect("a balance without jets");
    over.expect("jets that blow")
}

#[test]
fn flame_steam_jets_fires_on_a_blower_left_open() {
    let over = over(&blown());
    let found = steam_jets(&over);
    assert_eq!(found.verdict, Verdict::NotMet);
    let cure = found.remedy.expect("a cure");
    for wanted in ["outside the chimney", "blower shut"] {
        assert!(cure.contains(wanted), "{cure}");
    }
    assert!(over.added_pa.is_none_or(|added| added > 0.3), "{over:?}");
}

/// An opening that takes the jets off the flame takes its own draught at rest too: a pascal of
/// chimney does not bear it, and none is named.
#[test]
fn an_opening_that_starves_the_flame_at_rest_is_no_cure() {
    assert_eq!(over(&blown()).opening_m2, None);
    let mut opened = blown();
    opened.leak = Some(Leak {
        area_m2: MM2.to_si(20_000.0),
        coefficient: 0.6,
    });
    let starved = over_draught(&opened, boiler_pa());
    assert!(
        matches!(starved, Err(NotSettled::NotEnoughAir(_))),
        "{starved:?}"
    );
}

#[test]
fn flame_steam_jets_silent_on_a_jet_that_hardly_draws() {
    let mut faint = blown();
    faint.blower.as_mut().expect("a blower").bore_m = mm(0.002);
    let found = steam_jets(&over(&faint));
    assert_eq!(found.verdict, Verdict::MetOnCondition, "{}", found.says);
    let none = over_draught(&gas_plant(), boiler_pa()).expect("a balance");
    assert!(none.is_none());
}

#[test]
fn flame_carbon_monoxide_fires_where_the_gas_meets_cold_metal() {
    let found = carbon_monoxide(&all(&gas_plant()), &Working::new());
    assert_eq!(found.verdict, Verdict::NotMet);
    assert!(found.says.contains("never reckoned"), "{}", found.says);
    let cure = found.remedy.expect("a cure");
    assert!(
        cure.contains("alarm") && cure.contains("local code"),
        "{cure}"
    );
    assert!(!found.says.contains("ppm"));
}

#[test]
fn flame_carbon_monoxide_silent_on_condition_of_an_alarm_and_never_met() {
    let mut inputs = gas_plant();
    let tubes = tubes_of(&mut inputs);
    tubes.first_m = mm(132.0);
    tubes.count = 4;
    chimney(&mut inputs, 160.0);
    let found = carbon_monoxide(&all(&inputs), &Working::new());
    assert_eq!(found.verdict, Verdict::MetOnCondition, "{}", found.says);
    assert!(found.conditions.iter().any(|c| c.says.contains("alarm")));
}

fn tank(minutes: f64, worst: f64, assumed: Vec<&'static str>) -> Finding {
    let time = TankTime {
        lasts_s: 60.0 * minutes,
        worst_s: 60.0 * worst,
        ends: TankEnds::Cold,
        jet_w: 648.0,
        steady_w: 530.0,
        end_k: 255.0,
        left_kg: 0.01,
    };
    let run_s = 1200.0;
    let asked = TankAsked::Known {
        time,
        run_s,
        assumed,
    };
    tank_lasts(&asked, &Working::new())
}

#[test]
fn flame_tank_lasts_fires_on_a_tank_that_chills_too_soon() {
    assert_eq!(tank(14.0, 12.0, Vec::new()).verdict, Verdict::NotMet);
    // Long enough as assumed, and too short at the worse end.
    let unsure = tank(25.0, 15.0, vec!["gas.tank.film"]);
    assert_eq!(unsure.verdict, Verdict::Unproved);
    let wanting = TankAsked::Wanting(vec!["gas.tank.fill".to_owned()]);
    let found = tank_lasts(&wanting, &Working::new());
    assert_eq!(found.verdict, Verdict::Unproved);
    assert!(found.says.contains("gas.tank.fill"));
}

#[test]
fn flame_tank_lasts_silent_on_one_that_lasts() {
    assert_eq!(tank(30.0, 30.0, Vec::new()).verdict, Verdict::Met);
    let assumed = tank(30.0, 25.0, vec!["gas.tank.film"]);
    assert_eq!(assumed.verdict, Verdict::MetOnCondition);
}

fn hottest(gas: &str, kept_out: bool) -> Finding {
    let strongest = StrongestGas {
        gas,
        tank_k: 323.15,
        heat_w: 2300.0,
        kept_out,
    };
    strongest_gas(&strongest, &Working::new())
}

#[test]
fn flame_strongest_gas_fires_with_a_condition_where_a_stronger_gas_must_be_kept_out() {
    let found = hottest("isobutane", true);
    assert_eq!(found.verdict, Verdict::MetOnCondition);
    assert!(found.conditions.iter().any(|c| c.says.contains("stronger")));
}

#[test]
fn flame_strongest_gas_silent_on_what_is_filled_where_any_gas_goes_in() {
    let found = hottest("propane", false);
    assert!(!found.conditions.iter().any(|c| c.says.contains("stronger")));
    assert!(found.conditions.iter().any(|c| c.says.contains("50.0 °C")));
}
