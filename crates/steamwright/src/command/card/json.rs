//! The cards in JSON, as `docs/json.md` promises them.

use super::Cards;
use crate::command::files;
use design::bench::{Bench, Written};
use making::tapping::{Choice, TappingDrill};
use making::{RowText, SettingText};
use reckoning::Finding;
use serde_json::{Value, json};

/// Every card.
pub(super) fn cards(asked: &Cards<'_>) -> Value {
    let assumed: Vec<Value> = asked
        .taking
        .assumed
        .iter()
        .map(|(field, a)| {
            json!({
                "field": field, "meaning": a.meaning, "unit": a.unit.symbol,
                "value": a.value, "low": a.low, "high": a.high,
            })
        })
        .collect();
    json!({
        "plan": asked.plan_file.display().to_string(),
        "workshop": asked.workshop_file.display().to_string(),
        "problems": files::problems(&asked.inputs.problems),
        "assumed": assumed,
        "missing": asked.taking.gaps,
        "left_out": asked.taking.left_out,
        "cards": asked.benches.iter().map(card).collect::<Vec<_>>(),
    })
}

fn card(bench: &Bench) -> Value {
    let (card, why) = match &bench.card {
        Ok(card) => (written(card), Value::Null),
        Err(why) => (Value::Null, json!(why.to_string())),
    };
    json!({
        "fitting": bench.id,
        "name": bench.name,
        "count": bench.count,
        "verdict": bench.verdict().words(),
        "missing": bench.gaps,
        "drawing": bench.drawing.iter().map(finding).collect::<Vec<_>>(),
        "why_not": why,
        "card": card,
    })
}

fn written(card: &Written) -> Value {
    let proposal = &card.proposal;
    json!({
        "bar_length_m": proposal.bar_length.m(),
        "settings": card.settings.iter().map(setting).collect::<Vec<_>>(),
        "settings_say": proposal.settings,
        "tapping": proposal.tapping.iter().map(tapping).collect::<Vec<_>>(),
        "lacks": proposal.lacks,
        "findings": card.findings.iter().map(finding).collect::<Vec<_>>(),
    })
}

fn setting(setting: &SettingText) -> Value {
    json!({
        "number": setting.number,
        "holding": setting.heading,
        "rows": setting.rows.iter().map(row).collect::<Vec<_>>(),
    })
}

fn row(row: &RowText) -> Value {
    json!({ "number": row.number, "says": row.says, "speed": row.speed, "dial": row.dial })
}

fn tapping(choice: &Choice) -> Value {
    json!({
        "thread": choice.thread.name,
        "asked_share": choice.asked.number(),
        "chosen": drill(&choice.chosen),
        "smaller": choice.smaller.as_ref().map(drill),
        "larger": choice.larger.as_ref().map(drill),
    })
}

fn drill(drill: &TappingDrill) -> Value {
    json!({
        "drill": drill.drill.name,
        "diameter_m": drill.drill.diameter.m(),
        "share": drill.share.number(),
        "likely_share": drill.likely.number(),
    })
}

fn finding(finding: &Finding) -> Value {
    json!({
        "rule": finding.rule.id,
        "verdict": finding.verdict.words(),
        "place": finding.place,
        "says": finding.says,
        "conditions": finding.conditions.iter().map(|c| &c.says).collect::<Vec<_>>(),
        "remedy": finding.remedy,
        "margin": finding.margin,
        "weakest_origin": finding.weakest_origin.words(),
    })
}
