//! The rules of a flame of gas or spirit: its air, its burning out, its hold on the ports, its
//! tank, and the steam jets above it. None of them says how much carbon monoxide there is.

use reckoning::quantity::{MM, MM2, ONE, PA, PER_S, PERCENT, Quantity, Temperature, show};
use reckoning::{Condition, Finding, Origin, Rule, Verdict, Working};

use super::checks::Check;
use super::flame_list::{
    AIR, BURNT_AT_END, BURNT_AT_TUBES, CARBON_MONOXIDE, CLEAR_OF_METAL, LIFT, LIGHT_BACK,
    STEAM_JETS,
};
use crate::burner::{Burner, BurnerState, PortShape};
use crate::fault::NotSettled;
use crate::over_draught::OverDraught;
use crate::signs::{self, FlameSigns};
use crate::state::FireState;

/// Share of the gradient of blow-off below which a flame is taken to hold, and above which it is
/// taken to lift: the law is for a single cold port, and known to a factor of two.
const HOLDS_BELOW: f64 = 0.5;
const LIFTS_ABOVE: f64 = 2.0;
/// Gradient of the speed above which a flame does not run back, 1/s: propane with about the air
/// that it needs (from memory).
const RUNS_BACK_PER_S: f64 = 600.0;
/// Gas over what its primary air could burn, above which a flame does not run back (from memory).
const TOO_RICH: f64 = 1.6;
/// Widest slot and hole in which the flame goes out, m: propane and air, cold metal (from memory).
const QUENCH_SLOT_M: f64 = 2.0e-3;
const QUENCH_HOLE_M: f64 = 3.0e-3;
/// How far the added suction is known: a factor either way.
const JETS_KNOWN: f64 = 2.0;

fn signs(state: &FireState) -> Option<FlameSigns> {
    state.flame_signs()
}

fn burner(state: &FireState) -> Option<(&Burner, &BurnerState)> {
    let flame = state.inputs.firing.flame()?;
    Some((flame.burner()?, state.pass.firing.flame()?.burner()?))
}

fn unburnt_at_tubes(state: &FireState) -> Option<f64> {
    signs(state)?.burnt_at_first.map(|burnt| 1.0 - burnt)
}

fn unburnt_at_end(state: &FireState) -> Option<f64> {
    signs(state)?.burnt_at_end.map(|burnt| 1.0 - burnt)
}

/// Room that the flame asks: its length and a little more.
fn asked_room_m(state: &FireState) -> Option<f64> {
    Some(signs(state)?.flame_m? + signs::FLAME_ROOM_M)
}

fn port_opening_m(burner: &Burner) -> (f64, f64) {
    match burner.ports.shape {
        PortShape::Round { bore_m } => (bore_m, QUENCH_HOLE_M),
        PortShape::Slot { width_m, .. } => (width_m, QUENCH_SLOT_M),
    }
}

/// What keeps a flame from running back, each over what it must be: the best of them counts.
fn kept_from_running_back(state: &FireState) -> Option<f64> {
    let (burner, at) = burner(state)?;
    let (opening, quench) = port_opening_m(burner);
    let ways = [
        quench / opening,
        at.ports.gradient_per_s / RUNS_BACK_PER_S,
        at.ports.rich_ratio / TOO_RICH,
    ];
    ways.into_iter().max_by(f64::total_cmp)
}

/// The comparisons of a flame.
pub(super) static FLAME_CHECKS: &[Check] = &[
    Check {
        rule: &AIR,
        place: "burner",
        margin: |s| Some(signs(s)?.air_ratio / signs::LEAST_AIR_RATIO),
        wanted: 1.0,
        value: |s| Some(signs(s)?.air_ratio),
        limit: |_| Some(signs::LEAST_AIR_RATIO),
        unit: &ONE,
        what: "all the air over the air that the fuel needs",
    },
    Check {
        rule: &BURNT_AT_TUBES,
        place: "burner",
        margin: |s| Some((1.0 - signs::BURNT_AT_FIRST) / unburnt_at_tubes(s)?),
        wanted: 1.0,
        value: unburnt_at_tubes,
        limit: |_| Some(1.0 - signs::BURNT_AT_FIRST),
        unit: &PERCENT,
        what: "fuel not yet burnt where the gas meets the first cross tube",
    },
    Check {
        rule: &BURNT_AT_END,
        place: "burner",
        margin: |s| Some((1.0 - signs::BURNT_AT_END) / unburnt_at_end(s)?),
        wanted: 1.0,
        value: unburnt_at_end,
        limit: |_| Some(1.0 - signs::BURNT_AT_END),
        unit: &PERCENT,
        what: "fuel not yet burnt at the end of the flue",
    },
    Check {
        rule: &CLEAR_OF_METAL,
        place: "burner",
        margin: |s| Some(signs(s)?.gap_m / asked_room_m(s)?),
        wanted: 1.0,
        value: asked_room_m,
        limit: |s| Some(signs(s)?.gap_m),
        unit: &MM,
        what: "length of a flame and 2 mm against the room before it",
    },
    Check {
        rule: &LIFT,
        place: "burner.ports",
        margin: |s| Some(HOLDS_BELOW / burner(s)?.1.ports.blow_off_share),
        wanted: 1.0,
        value: |s| Some(burner(s)?.1.ports.blow_off_share),
        limit: |_| Some(HOLDS_BELOW),
        unit: &ONE,
        what: "gradient of the speed at a port over that at which a flame blows off",
    },
    Check {
        rule: &LIGHT_BACK,
        place: "burner.ports",
        margin: kept_from_running_back,
        wanted: 1.0,
        value: |s| burner(s).map(|(_, at)| at.ports.gradient_per_s),
        limit: |_| Some(RUNS_BACK_PER_S),
        unit: &PER_S,
        what: "gradient of the speed at a port against that at which a flame runs back",
    },
];

/// What the comparisons cannot say by a number alone: a flame that may lift is proved by lighting
/// it, one that cannot run back says why, and where gas does not burn out carbon monoxide is
/// feared.
pub(super) fn completed(state: &FireState, mut findings: Vec<Finding>) -> Vec<Finding> {
    if state.pass.firing.flame().is_none() {
        return findings;
    }
    for finding in &mut findings {
        if std::ptr::eq(finding.rule, &LIFT) {
            lift(state, finding);
        } else if std::ptr::eq(finding.rule, &LIGHT_BACK) {
            light_back(state, finding);
        } else if std::ptr::eq(finding.rule, &BURNT_AT_TUBES) {
            first_place(state, finding);
        }
    }
    findings
}

fn lift(state: &FireState, finding: &mut Finding) {
    let Some((_, at)) = burner(state) else {
        return;
    };
    if finding.verdict == Verdict::NotMet && at.ports.blow_off_share <= LIFTS_ABOVE {
        finding.verdict = Verdict::Unproved;
    }
    if finding.verdict == Verdict::Unproved {
        finding.remedy = Some(format!("prove it by lighting; or {}", LIFT.remedy));
    }
}

fn light_back(state: &FireState, finding: &mut Finding) {
    let Some((burner, at)) = burner(state) else {
        return;
    };
    let (opening, quench) = port_opening_m(burner);
    let mm = |m: f64| show::quantity(m, &MM, 2);
    if opening <= quench {
        finding.says.push_str(&format!(
            " A flame goes out in an opening of {}, and the ports are of {}.",
            mm(quench),
            mm(opening)
        ));
    } else if at.ports.rich_ratio >= TOO_RICH {
        finding.says.push_str(&format!(
            " At {:.2} of the gas that its primary air can burn the mixture is too rich to run back.",
            at.ports.rich_ratio
        ));
    }
}

/// Where the first cross tube would stand clear of the flame.
fn first_place(state: &FireState, finding: &mut Finding) {
    let Some(flame) = state.inputs.firing.flame() else {
        return;
    };
    let clear_m = flame.ported_m + 2.0 * flame.mixing_m;
    if let Some(remedy) = &mut finding.remedy {
        remedy.push_str(&format!(
            "; with the first cross tube {} behind the mouth it is clear of most of the flame",
            show::quantity(clear_m, &MM, 3)
        ));
    }
}

/// The caution about carbon monoxide, from what the other rules of the flame found: at best on
/// condition, for it is never shown by a sum that there is none.
#[must_use]
pub fn carbon_monoxide(findings: &[Finding], working: &Working) -> Finding {
    let of_flame = |f: &&Finding| SIGNS.iter().any(|sign| std::ptr::eq(f.rule, *sign));
    let signs: Vec<&Finding> = findings.iter().filter(of_flame).collect();
    let shown: Vec<&Finding> = signs
        .iter()
        .copied()
        .filter(|f| f.verdict >= Verdict::Unproved)
        .collect();
    let worst = shown.iter().map(|f| f.verdict).max();
    let says = signs_in_words(&shown);
    Finding {
        rule: &CARBON_MONOXIDE,
        set: "",
        verdict: worst.unwrap_or(Verdict::MetOnCondition),
        tight: false,
        conditions: vec![Condition {
            says: "run in the open, or in a room ventilated as the local code asks, with a carbon \
                   monoxide alarm in it, and never left alone"
                .to_owned(),
            field: None,
            bound: None,
        }],
        place: "burner".to_owned(),
        says,
        remedy: worst.map(|_| CARBON_MONOXIDE.remedy.to_owned()),
        margin: None,
        weakest_origin: signs
            .iter()
            .map(|f| f.weakest_origin)
            .max()
            .unwrap_or(Origin::CommonPractice),
        working: working.clone(),
    }
}

/// The signs that are seen, as one sentence.
fn signs_in_words(shown: &[&Finding]) -> String {
    if shown.is_empty() {
        "No sign of carbon monoxide is seen in this sum, which says nothing of how much there is."
            .to_owned()
    } else {
        let told: Vec<String> = shown
            .iter()
            .map(|f| f.says.split(';').next().unwrap_or(&f.says).to_owned())
            .collect();
        format!(
            "This flame may make carbon monoxide: {}. How much is never reckoned here.",
            told.join("; ").trim_end_matches('.')
        )
    }
}

/// The rules whose breach is a sign of carbon monoxide.
static SIGNS: [&Rule; 5] = [
    &AIR,
    &BURNT_AT_TUBES,
    &BURNT_AT_END,
    &CLEAR_OF_METAL,
    &STEAM_JETS,
];

/// The finding on steam jets above a flame.
#[must_use]
pub fn steam_jets(over: &OverDraught) -> Finding {
    let (verdict, says) = judged_jets(over);
    Finding {
        rule: &STEAM_JETS,
        set: "",
        verdict,
        tight: false,
        conditions: if verdict == Verdict::MetOnCondition {
            vec![Condition {
                says: "the flame watched with the engine running: it neither lifts nor roars"
                    .to_owned(),
                field: None,
                bound: None,
            }]
        } else {
            Vec::new()
        },
        place: "blast.nozzle".to_owned(),
        says,
        remedy: (verdict >= Verdict::Unproved).then(|| cures(over)),
        margin: over
            .added_pa
            .filter(|added| *added > 0.0)
            .map(|added| signs::MOST_ADDED_PA / added),
        weakest_origin: Origin::Assumed,
        working: Working::new(),
    }
}

/// The finding on a flame that finds no balance at rest, so that it lives on the jets alone.
#[must_use]
pub fn lives_on_jets(fault: &NotSettled) -> Finding {
    Finding {
        rule: &STEAM_JETS,
        set: "",
        verdict: Verdict::NotMet,
        tight: false,
        conditions: Vec::new(),
        place: "blast.nozzle".to_owned(),
        says: format!(
            "With nothing blowing the flame does not live: {fault}. It would go out, or light \
             late, whenever the engine stands."
        ),
        remedy: Some(STEAM_JETS.remedy.to_owned()),
        margin: None,
        weakest_origin: Origin::Assumed,
        working: Working::new(),
    }
}

/// The verdict on what the jets add, and the sentence.
fn judged_jets(over: &OverDraught) -> (Verdict, String) {
    let pa = |pa: f64| show::quantity(pa, &PA, 2);
    match (over.added_pa, over.air) {
        (Some(added), Some(air)) => {
            let verdict = if added * JETS_KNOWN <= signs::MOST_ADDED_PA {
                Verdict::MetOnCondition
            } else if added <= signs::MOST_ADDED_PA * JETS_KNOWN {
                Verdict::Unproved
            } else {
                Verdict::NotMet
            };
            let says = format!(
                "The steam jets add {} to a draught of {}, where {} are borne: the flame gets {air:.2} \
                 of the air it needs instead of {:.2}.",
                pa(added),
                pa(over.calm_pa),
                pa(signs::MOST_ADDED_PA),
                over.calm_air
            );
            (verdict, says)
        }
        _ => (
            Verdict::NotMet,
            format!(
                "The steam jets draw more air than the flame can warm; without them the draught is \
                 {} and the flame gets {:.2} of the air it needs.",
                pa(over.calm_pa),
                over.calm_air
            ),
        ),
    }
}

/// What takes the jets off the flame, with its numbers.
fn cures(over: &OverDraught) -> String {
    let mut told = vec![format!(
        "lead the exhaust outside the chimney, which leaves {:.2} of the air needed",
        over.calm_air
    )];
    told.extend(over.raise_m.map(|m| {
        format!(
            "or raise the tip of the nozzle by {}",
            show::quantity(m, &MM, 2)
        )
    }));
    told.extend(over.opening_m2.map(|m2| {
        format!(
            "or open {} into the smokebox, so that the jet draws beside the flame",
            show::quantity(m2, &MM2, 2)
        )
    }));
    told.push(
        "a narrower mouth is no cure: with the engine stopped it starves the flame".to_owned(),
    );
    told.push("keep the steam blower shut on gas".to_owned());
    told.join("; ")
}

/// The hottest day of a gas tank, for which the safety valve is sized.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StrongestGas<'a> {
    /// The gas in words.
    pub gas: &'a str,
    /// Hottest that its tank may get, K.
    pub tank_k: f64,
    /// Heat of the gas that then passes the open jet, W.
    pub heat_w: f64,
    /// Whether the filling valve keeps stronger gases out.
    pub kept_out: bool,
}

/// The finding that tells for which gas the safety valve is sized.
#[must_use]
pub fn strongest_gas(strongest: &StrongestGas<'_>, working: &Working) -> Finding {
    let celsius = show::figures(Temperature::from_si(strongest.tank_k).c(), 3);
    let watt = show::figures(strongest.heat_w, 3);
    let gas = strongest.gas;
    let mut conditions = vec![Condition {
        says: format!("the gas tank is never hotter than {celsius} °C"),
        field: Some("gas.tank.hottest".to_owned()),
        bound: None,
    }];
    if strongest.kept_out {
        conditions.push(Condition {
            says: format!("nothing stronger than {gas} can be filled into the tank"),
            field: Some("gas.accepts".to_owned()),
            bound: None,
        });
    }
    Finding {
        rule: &super::flame_list::STRONGEST_GAS,
        set: "",
        verdict: Verdict::MetOnCondition,
        tight: false,
        conditions,
        place: "gas.tank".to_owned(),
        says: format!(
            "The safety valve is sized for {gas} in a tank of {celsius} °C, with the regulator and \
             the hand valve wide open: {watt} W of gas, of which 85 % are taken to come to the water."
        ),
        remedy: None,
        margin: None,
        weakest_origin: Origin::Assumed,
        working: working.clone(),
    }
}
