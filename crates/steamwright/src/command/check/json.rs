//! The answer to `check` in JSON, as `docs/json.md` promises it.

use design::{Checked, Judged, Standing, Steaming};
use reckoning::Finding;
use serde_json::{Value, json};

use crate::command::page::working;

/// The whole answer.
pub(super) fn tell(checked: &Checked) -> Value {
    let questions: Vec<Value> = checked
        .answers
        .iter()
        .map(|a| {
            json!({
                "question": a.question.name(),
                "asks": a.question.asks(),
                "verdict": a.verdict.map(reckoning::Verdict::words),
                "sentence": a.sentence,
            })
        })
        .collect();
    let parts: Vec<Value> = checked
        .parts
        .iter()
        .map(|p| json!({ "id": p.id, "says": p.says, "mass_kg": p.mass_kg }))
        .collect();
    let agreements: Vec<Value> = checked
        .agreements
        .iter()
        .map(|a| json!({ "with": a.with.words(), "what": a.what }))
        .collect();
    let points: Vec<Value> = design::hold_points(&checked.judged)
        .into_iter()
        .map(|p| json!({ "says": p.says, "field": p.field, "for": p.places }))
        .collect();
    json!({
        "plan": checked.title,
        "questions": questions,
        "findings": checked.judged.iter().map(finding).collect::<Vec<_>>(),
        "hold_points": points,
        "agreements": agreements,
        "leading_set": checked.leading_set,
        "parts": parts,
        "gaps": checked.gaps,
        "steaming": steaming(&checked.steaming),
    })
}

fn finding(judged: &Judged) -> Value {
    let f: &Finding = &judged.finding;
    let conditions: Vec<Value> = f
        .conditions
        .iter()
        .map(|c| json!({ "says": c.says, "field": c.field }))
        .collect();
    json!({
        "question": judged.question.name(),
        "leads": judged.standing == Standing::Leads,
        "rule": f.rule.id,
        "set": if f.set.is_empty() { Value::Null } else { Value::from(f.set) },
        "verdict": f.verdict.words(),
        "tight": f.tight,
        "place": f.place,
        "says": f.says,
        "remedy": f.remedy,
        "margin": f.margin,
        "weakest_origin": f.weakest_origin.words(),
        "conditions": conditions,
        "source": {
            "key": f.rule.cite.source.key,
            "title": f.rule.cite.source.title,
            "place": f.rule.cite.place,
            "seen": f.rule.cite.source.seen.words(),
        },
        "working": working(&f.working),
    })
}

fn steaming(steaming: &Steaming) -> Value {
    let Some(run) = &steaming.run else {
        return Value::Null;
    };
    let points: Vec<Value> = run.sweep.points.iter().map(point).collect();
    let crossings: Vec<Value> = run.sweep.crossings.iter().map(crossing).collect();
    let assumed = steaming.taken.assumed.iter();
    json!({
        "working_pa": steaming.working_pa,
        "valve_pa": steaming.valve_pa,
        "outlook": run.outlook.as_ref().map(|o| o.word.words()),
        "points": points,
        "crossings": crossings,
        "cures": run.cures.iter().map(|c| c.says.as_str()).collect::<Vec<_>>(),
        "band": run.band.as_ref().map(band),
        "assumed": assumed.map(|e| e.assumption.id).collect::<Vec<_>>(),
        "on_gas": steaming.on_gas.as_deref().map(self::steaming),
    })
}

fn point(point: &steaming::Point) -> Value {
    let state = point.settled.as_ref().ok();
    json!({
        "gauge_pa": point.gauge_pa,
        "steaming_ratio": state.and_then(steaming::FireState::steaming_ratio),
        "evaporation_kg_s": state.map(|s| s.evaporation_kg_s),
        "demand_kg_s": state.map(|s| s.demand_kg_s),
        "fuel_kg_s": state.map(|s| s.pass.fuel_kg_s),
        "efficiency": state.map(|s| s.efficiency),
        "without_balance": point.settled.as_ref().err().map(ToString::to_string),
    })
}

fn crossing(crossing: &steaming::Crossing) -> Value {
    json!({
        "gauge_pa": crossing.gauge_pa,
        "stable": crossing.stability == steaming::Stability::Stable,
        "slope_per_pa": crossing.slope_per_pa,
    })
}

fn band(band: &steaming::Band) -> Value {
    let shares: Vec<Value> = band
        .shares
        .iter()
        .map(|s| json!({ "field": s.entering.assumption.id, "share": s.share }))
        .collect();
    json!({
        "value": band.value,
        "low": band.low,
        "middle": band.middle,
        "high": band.high,
        "without_balance": band.without_balance,
        "shares": shares,
    })
}
