//! Whether the safety valves together pass all the steam that the fire can raise.

use super::valve::{class, file_flow_bore, file_set, open_lift};
use crate::input::{Mountings, Raising, Removed, SafetyValve};
use crate::metal::chosen;
use crate::remedy::at_least;
use crate::rules::VALVE_CAPACITY;
use crate::set::OURS;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::need;
use formulas::relief::{demand, valve as law};
use formulas::steam::cards::{REGION2_V, SATURATION_TEMPERATURE};
use reckoning::quantity::show::figures;
use reckoning::quantity::{Area, KG_PER_H, KG_PER_M2_H, M2, MassFlux, ONE, Ratio};
use reckoning::working::Choice;
use reckoning::{Bound, Finding, Known, Origin, Ref};

/// Steam that surface swept by gas counts for, kg/h and square metre.
const SWEPT: f64 = 30.0;
/// Steam that surface in sight of the fire counts for, kg/h and square metre (8 lb/h, ft²).
const IN_SIGHT: f64 = 39.0;
/// Constant of the trade's rule for coal.
const TRADE_COAL: f64 = 1.25;
/// Accumulation at which a measured valve passes its flow.
const ACCUMULATION: f64 = 0.10;
/// Isentropic exponent of dry saturated steam.
const EXPONENT: f64 = 1.135;

/// All valves against the greater of fire and surface.
pub(super) fn check_capacity(mounted: &Mountings, raising: &Raising) -> Finding {
    check(OURS.head(&VALVE_CAPACITY, "safety-valve"), |sum| {
        let asked = file_demand(sum, raising)?;
        let Some(first) = mounted.valves.first() else {
            let says = format!(
                "no safety valve, and {} kg/h to be passed",
                figures(sum.value(asked), 3)
            );
            let remedy = "a safety valve".to_owned();
            return Ok(Outcome::plain(Answer::Fails, says, remedy));
        };
        let lowest = lowest_set_bar(&mounted.valves)?;
        let mut together = file_valve(sum, first, raising, lowest)?;
        for valve in &mounted.valves[1..] {
            let next = file_valve(sum, valve, raising, lowest)?;
            together = sum.card(&law::TOGETHER, &[together, next])?;
        }
        let seat = file_seat(sum, first, raising, asked)?;
        let beside = file_beside(sum, first, raising, (asked, seat))?;
        let last = (sum.value(together), sum.value(asked));
        hold_coefficients(sum, mounted, raising, last)?;
        let (has, asked) = (sum.value(together), sum.value(asked));
        let says = format!(
            "the valves pass {} kg/h, the boiler can raise {} kg/h{beside}",
            figures(has, 3),
            figures(asked, 3)
        );
        let remedy = format!(
            "one valve of this lift with a seat of {} mm, or more valves",
            at_least(seat)
        );
        Ok(Outcome::compared(has, asked, says, remedy))
    })
}

fn rate(value: f64, between: &str, reason: &str, weakest: Origin) -> Known<MassFlux> {
    chosen(MassFlux::from_kg_m2_h(value), between, reason, weakest)
}

/// Files what the boiler can raise: the greater of the fire's and the surface's steam.
fn file_demand(sum: &mut Sum, raising: &Raising) -> Result<Ref, Stop> {
    let fire = raising.greatest_evaporation.as_ref();
    let fire = need("the greatest evaporation of the fire", "the boiler", fire)?;
    let meaning = "steam of the greatest fire, feed shut";
    let fire = sum.know("m_f", meaning, &KG_PER_H, fire);
    let surface = file_surface(sum, raising)?;
    Ok(sum.w.chosen(Choice {
        symbol: "m",
        meaning: "steam to be passed",
        value: sum.value(fire).max(sum.value(surface)),
        unit: &KG_PER_H,
        between: "the fire's and the surface's steam",
        reason: "the greater",
        from: &[fire, surface],
        cite: Some(VALVE_CAPACITY.cite),
    }))
}

/// Files the steam that the heating surface counts for.
fn file_surface(sum: &mut Sum, raising: &Raising) -> Result<Ref, Stop> {
    let swept = raising.swept_surface.as_ref();
    let swept = need("the heating surface that gas sweeps", "the boiler", swept)?;
    let seen = raising.radiant_surface.as_ref();
    let seen = need("the heating surface of the firebox", "the boiler", seen)?;
    let least = "the least that boiler regulations count";
    let q_c = rate(
        SWEPT,
        "24 to 30 kg/h by kind of boiler",
        least,
        Origin::Read,
    );
    let between = "39 to 68 kg/h by kind of firing";
    let q_r = rate(IN_SIGHT, between, "fired by hand", Origin::FromMemory);
    let q_c = sum.know("q_c", "steam of swept surface", &KG_PER_M2_H, &q_c);
    let a_c = sum.know("A_c", "surface that gas sweeps", &M2, swept);
    let meaning = "steam of surface that sees the fire";
    let q_r = sum.know("q_r", meaning, &KG_PER_M2_H, &q_r);
    let a_r = sum.know("A_r", "surface that sees the fire", &M2, seen);
    sum.card(&demand::BY_SURFACE, &[q_c, a_c, q_r, a_r])
}

/// The lowest set pressure, bar gauge.
fn lowest_set_bar(valves: &[SafetyValve]) -> Result<f64, Stop> {
    let mut lowest = f64::INFINITY;
    for valve in valves {
        let set = need("the set pressure", &valve.id, valve.set.as_ref())?;
        lowest = lowest.min(set.value.bar());
    }
    Ok(lowest)
}

/// Files what one valve passes: a plain one at its own set pressure, a measured one at a tenth above
/// the lowest, which the boiler may not pass.
fn file_valve(
    sum: &mut Sum,
    valve: &SafetyValve,
    raising: &Raising,
    lowest_bar: f64,
) -> Result<Ref, Stop> {
    let bore = file_flow_bore(sum, valve)?;
    let area = sum.card(&law::SEAT_AREA, &[bore])?;
    let Some(coefficient) = &valve.coefficient else {
        let p = file_set(sum, valve, raising, 0.0)?;
        open_lift(sum, valve)?;
        let c = file_constant(sum, valve);
        return sum.card(&law::BY_LIFT, &[c, area, p]);
    };
    let set = need("the set pressure", &valve.id, valve.set.as_ref())?;
    let over = (1.0 + ACCUMULATION) * lowest_bar / set.value.bar() - 1.0;
    let p = file_set(sum, valve, raising, over)?;
    let k = sum.know("K_d", "coefficient as measured", &ONE, coefficient);
    let k = sum.card(&law::DERATED, &[k])?;
    file_measured(sum, (area, k, p))
}

/// Files what a valve of a derated coefficient passes.
fn file_measured(sum: &mut Sum, (area, k, p): (Ref, Ref, Ref)) -> Result<Ref, Stop> {
    let exponent = chosen(
        Ratio::from_number(EXPONENT),
        "1.135 and the 1.3 of a perfect gas, which flatters by a twentieth",
        "dry saturated steam",
        Origin::FromMemory,
    );
    let exponent = sum.know("k", "isentropic exponent", &ONE, &exponent);
    let c = sum.card(&law::FLOW_FUNCTION, &[exponent])?;
    let t = sum.card(&SATURATION_TEMPERATURE, &[p])?;
    let v = sum.card(&REGION2_V, &[p, t])?;
    sum.card(&law::MEASURED, &[c, area, k, p, v])
}

/// Files the constant of a lift.
fn file_constant(sum: &mut Sum, valve: &SafetyValve) -> Ref {
    let class = class(valve);
    let known = chosen(
        Ratio::from_number(class.constant()),
        "0.05 ordinary, 0.10 high, 0.24 full lift",
        class.words(),
        Origin::Read,
    );
    sum.know("C", "constant of the lift", &ONE, &known)
}

/// Files the seat that one valve of this lift would need, mm.
fn file_seat(
    sum: &mut Sum,
    valve: &SafetyValve,
    raising: &Raising,
    asked: Ref,
) -> Result<f64, Stop> {
    let p = file_set(sum, valve, raising, 0.0)?;
    let c = file_constant(sum, valve);
    let seat = sum.card(&law::SEAT_BY_LIFT, &[asked, c, p])?;
    Ok(sum.value(seat))
}

/// Holds open a coefficient that was measured once and taken away: the one that would do.
fn hold_coefficients(
    sum: &mut Sum,
    mounted: &Mountings,
    raising: &Raising,
    (has, asked): (f64, f64),
) -> Result<(), Stop> {
    let gone = |v: &&SafetyValve| v.coefficient.is_none() && v.coefficient_gone != Removed::Nothing;
    for valve in mounted.valves.iter().filter(gone) {
        let p = file_set(sum, valve, raising, ACCUMULATION)?;
        let bore = file_flow_bore(sum, valve)?;
        let area = sum.card(&law::SEAT_AREA, &[bore])?;
        let one = ratio(1.0, "a measured coefficient and 1", "1, to be scaled");
        let one = sum.know("K_d", "coefficient", &ONE, &one);
        let k = sum.card(&law::DERATED, &[one])?;
        let whole = file_measured(sum, (area, k, p))?;
        let c = file_constant(sum, valve);
        let p = file_set(sum, valve, raising, 0.0)?;
        let own = sum.card(&law::BY_LIFT, &[c, area, p])?;
        let others = has - sum.value(own);
        let least = (asked - others) / sum.value(whole);
        let says = format!(
            "discharge coefficient of {}, measured again, at least {}",
            valve.id,
            figures(least, 3)
        );
        let field = format!("{}.coefficient", valve.id);
        sum.hold_within(says, field, Bound::AtLeast(least));
    }
    Ok(())
}

/// Files what stands beside: the seat by the trade's area, and that of an ideal nozzle; gives
/// them in words, with why they differ.
fn file_beside(
    sum: &mut Sum,
    valve: &SafetyValve,
    raising: &Raising,
    (asked, by_lift): (Ref, f64),
) -> Result<String, Stop> {
    let p = file_set(sum, valve, raising, ACCUMULATION)?;
    let bore = file_flow_bore(sum, valve)?;
    let area = sum.card(&law::SEAT_AREA, &[bore])?;
    let one = ratio(1.0, "the ideal nozzle and a real one", "the ideal one");
    let one = sum.know("K_d", "coefficient of the ideal nozzle", &ONE, &one);
    sum.card(&law::IDEAL, &[area, p, one])?;
    let nozzle = sum.card(&demand::IDEAL_AREA, &[asked, p])?;
    let nozzle = sum.card(&demand::SEAT_OF_AREA, &[nozzle])?;
    let (Some(swept), Some(seen), Some(pressure)) = (
        &raising.swept_surface,
        &raising.radiant_surface,
        &raising.pressure,
    ) else {
        return Ok(String::new());
    };
    let whole = chosen(
        Area::from_m2(swept.value.m2() + seen.value.m2()),
        "swept surface and firebox",
        "both together",
        swept.given.origin().max(seen.given.origin()),
    );
    let hs = sum.know("HS", "heating surface", &M2, &whole);
    let k = ratio(TRADE_COAL, "1.25 for coal, 1.5 for oil", "coal");
    let k = sum.know("K", "constant of the trade's rule", &ONE, &k);
    let p = sum.know(
        "p",
        "working pressure",
        &reckoning::quantity::PSI_GAUGE,
        pressure,
    );
    let trade = sum.card(&demand::TRADE_AREA, &[hs, k, p])?;
    let trade = sum.card(&demand::SEAT_OF_AREA, &[trade])?;
    Ok(format!(
        "; one seat by the regulations for a plain valve {} mm, by the trade's rule of the surface {} mm, by an ideal nozzle {} mm: the first two count a valve that hardly lifts, the second knows no fire, the third is all open",
        at_least(by_lift),
        at_least(sum.value(trade)),
        at_least(sum.value(nozzle))
    ))
}

fn ratio(value: f64, between: &str, reason: &str) -> Known<Ratio> {
    chosen(Ratio::from_number(value), between, reason, Origin::Read)
}
