//! What is mounted on the sample, at 5 bar, and the worst finding of a rule.

use super::{length, valve};
use proof::{
    BlowDown, Fitted, FusiblePlug, Mountings, PressureGauge, Raising, WaterGauge, mountings,
};
use reckoning::quantity::{Absolute, Area, Gauge, MassFlow, Temperature};
use reckoning::{Finding, Known, Verdict};

pub fn bar(x: f64) -> Option<Known<Gauge>> {
    Some(Known::from_plan(
        Gauge::from_bar(x),
        "pressure",
        format!("{x} bar"),
    ))
}

pub fn area(x: f64) -> Option<Known<Area>> {
    Some(Known::from_plan(Area::from_m2(x), "surface", ""))
}

pub fn service() -> Raising {
    Raising {
        pressure: bar(5.0),
        atmosphere: Some(Known::from_plan(
            Absolute::from_bar(1.013_25),
            "site.atmosphere",
            "",
        )),
        greatest_evaporation: Some(Known::from_plan(MassFlow::from_kg_h(8.0), "fire", "")),
        swept_surface: area(0.05),
        radiant_surface: area(0.03),
    }
}

pub fn mounted() -> Mountings {
    let at = |x: f64| Some(length("height", x));
    Mountings {
        valves: vec![valve()],
        feeds: vec![super::feed(), super::feed()],
        gauge: PressureGauge {
            range: bar(10.0),
            syphon: Some(Fitted::Yes),
        },
        glass: WaterGauge {
            bottom: at(120.0),
            top: at(180.0),
            lowest: at(130.0),
            working: at(160.0),
            crown: at(100.0),
        },
        blow_down: BlowDown {
            height: at(15.0),
            outside: at(12.0),
            ring_top: at(8.0),
        },
        plug: FusiblePlug {
            fitted: Some(Fitted::Yes),
            melts: Some(Known::from_plan(Temperature::from_c(232.0), "plug", "tin")),
        },
        ..Mountings::default()
    }
}

pub fn found(rule: &str, change: impl FnOnce(&mut Mountings, &mut Raising)) -> Finding {
    let (mut m, mut s) = (mounted(), service());
    change(&mut m, &mut s);
    let all = mountings(&m, &s);
    let worst = all.into_iter().filter(|f| f.rule.id == rule);
    let worst = worst.max_by_key(|f| (f.verdict, f.tight));
    worst.unwrap_or_else(|| panic!("{rule} was not asked"))
}

pub fn silent(rule: &str) {
    let f = found(rule, |_, _| ());
    assert_eq!(f.verdict, Verdict::Met, "{}", f.says);
    assert!(!f.tight && f.set == "ours", "{}", f.says);
}

pub fn fires(rule: &str, change: impl FnOnce(&mut Mountings, &mut Raising)) -> Finding {
    let f = found(rule, change);
    assert_eq!(f.verdict, Verdict::NotMet, "{}", f.says);
    assert!(f.remedy.is_some());
    f
}

pub fn unproved(rule: &str, change: impl FnOnce(&mut Mountings, &mut Raising)) {
    let f = found(rule, change);
    assert_eq!(f.verdict, Verdict::Unproved, "{rule}: {}", f.says);
}
