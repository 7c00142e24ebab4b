//! Features that share an axis are cut in settings that keep it.

use std::collections::BTreeMap;

use formulas::cutting::{OFFSET_LIKELY, OFFSET_WORST, offset_likely, offset_worst};
use reckoning::formula::Cite;
use reckoning::quantity::{Length, MM};
use reckoning::{Known, Rule, Verdict, Working};

use super::{Case, Seen, at_worst_high, drawn, of_the_trade, or_met};
use crate::card::{Facing, Machine, Place, Work};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.truth",
    sentence: "The likely offset of two features that share an axis is at most half their zone.",
    remedy: "Cut both in one setting, or hold the piece truer in the later one.",
    cite: Cite {
        source: &formulas::sources::ISO_1101,
        place: "coaxiality: half the zone is the offset allowed",
    },
};

/// Where a feature of a group was cut.
#[derive(Clone, Debug)]
struct Cut {
    feature: String,
    zone: Length,
    setting: usize,
    place: Place,
}

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found = groups(case)
        .values()
        .filter_map(|cuts| seen(case, cuts))
        .collect();
    or_met(
        found,
        &RULE,
        "no two features are asked to share an axis",
        case,
    )
}

/// The cuts of each group in order of work.
fn groups(case: &Case<'_>) -> BTreeMap<String, Vec<Cut>> {
    let mut groups: BTreeMap<String, Vec<Cut>> = BTreeMap::new();
    for (i, step) in case.run.steps.iter().enumerate() {
        let Some(feature) = step
            .cut
            .as_ref()
            .filter(|_| step.removed && step.operation.makes.is_some())
        else {
            continue;
        };
        let Some(coaxial) = &feature.coaxial else {
            continue;
        };
        let setting = followed(case, i).unwrap_or(step.place.setting);
        let cuts = groups.entry(coaxial.group.clone()).or_default();
        cuts.push(Cut {
            feature: feature.id.clone(),
            zone: coaxial.zone,
            setting,
            place: step.place,
        });
    }
    groups
}

/// A reamer or tap follows the hole before it: the setting in which that hole was made.
fn followed(case: &Case<'_>, index: usize) -> Option<usize> {
    let step = &case.run.steps[index];
    if !matches!(step.operation.work, Work::Ream { .. } | Work::Tap { .. }) {
        return None;
    }
    let span = step.cut.as_ref()?.form.span()?;
    case.run.steps[..index]
        .iter()
        .rev()
        .find(|s| {
            matches!(s.operation.work, Work::Drill { .. } | Work::Bore(_))
                && s.removed
                && s.cut
                    .as_ref()
                    .and_then(|f| f.form.span())
                    .is_some_and(|f| f.shared(span).is_some())
        })
        .map(|s| s.place.setting)
}

fn seen(case: &Case<'_>, cuts: &[Cut]) -> Option<Seen> {
    let first = cuts.iter().min_by_key(|c| c.setting)?;
    let last = cuts.iter().max_by_key(|c| c.setting)?;
    if first.setting == last.setting {
        return together(case, cuts, last);
    }
    let zone = cuts
        .iter()
        .map(|c| c.zone.mm())
        .fold(f64::INFINITY, f64::min);
    let zone = Length::from_mm(zone);
    let (worst, likely, lines) = offsets(case, first, last, zone);
    let allowed = zone / 2.0;
    let moves = &case.card.settings[first.setting + 1..=last.setting];
    let assumed = moves.iter().any(|s| s.holder.swing.is_assumed());
    let (verdict, end) = judge((worst, likely), allowed, assumed);
    let errors = [worst, likely, allowed, zone].map(|e| case.card.reads.error(e));
    let [worst, most_likely, most, zone] = &errors;
    let (a, b, turned) = (&first.feature, &last.feature, last.setting + 1);
    let says = format!(
        "{a} (setting {}) and {b} (setting {turned}) may lie {worst} apart at the worst and \
         {most_likely} likely, the dial shows twice that; {most} is allowed: {end}",
        first.setting + 1
    );
    let dial = format!("a dial on {a} swings");
    let cure = format!("set the piece true in setting {turned} until {dial} no more than {zone}");
    let asked = format!("in setting {turned} {dial} at most {zone} before {b} is cut");
    let mut found = Seen::new(&RULE, verdict, b.clone(), says).with(lines);
    found.margin = Some(allowed / likely);
    Some(match verdict {
        Verdict::Met => found,
        Verdict::MetOnCondition => found.on_condition(asked).else_cured_by(cure),
        _ => found.blaming([last.place, first.place]).else_cured_by(cure),
    })
}

/// An answer that rests on an assumed swing is met on condition at best.
fn judge(
    (worst, likely): (Length, Length),
    allowed: Length,
    assumed: bool,
) -> (Verdict, &'static str) {
    if likely > allowed {
        (Verdict::NotMet, "likely too much")
    } else if worst > allowed {
        (Verdict::MetOnCondition, "the worst is too much")
    } else if assumed {
        (
            Verdict::MetOnCondition,
            "within it by a swing that is assumed",
        )
    } else {
        (Verdict::Met, "within it even at the worst")
    }
}

/// A group that is cut in one setting.
fn together(case: &Case<'_>, cuts: &[Cut], last: &Cut) -> Option<Seen> {
    let names: Vec<&str> = cuts.iter().map(|c| c.feature.as_str()).collect();
    let says = format!(
        "{} are cut in one setting, {}: no change of holding parts them; a zone of {} is asked",
        names.join(" and "),
        last.setting + 1,
        case.card.reads.error(last.zone)
    );
    (cuts.len() > 1).then(|| Seen::new(&RULE, Verdict::Met, last.feature.clone(), says))
}

/// Worst and likely offset between two settings, with the lines of the sum.
fn offsets(case: &Case<'_>, first: &Cut, last: &Cut, zone: Length) -> (Length, Length, Working) {
    let mut lines = Working::new();
    let nought = of_the_trade(
        Length::from_mm(0.0),
        "the first setting",
        "what is cut in one setting shares its axis",
    );
    let (mut worst, mut likely) = (0.0, 0.0);
    let mut worst_line = lines.know("e_0", "offset in the first setting", &MM, &nought);
    let mut likely_line = worst_line;
    lines.know("z", "zone asked", &MM, &drawn(case, &last.feature, zone));
    let moves = case.card.settings[first.setting + 1..=last.setting]
        .iter()
        .filter(|s| s.machine == Machine::Lathe && s.facing != Facing::Side);
    for setting in moves {
        let swing = at_worst_high(&setting.holder.swing);
        let known = Known {
            value: swing,
            given: setting.holder.swing.given.clone(),
        };
        let t = lines.know("T", "full dial swing of the holder", &MM, &known);
        worst = offset_worst(worst, swing.mm());
        likely = offset_likely(likely, swing.mm());
        if let Ok(line) = lines.settled(&OFFSET_WORST, &[worst_line, t], worst) {
            worst_line = line;
        }
        if let Ok(line) = lines.settled(&OFFSET_LIKELY, &[likely_line, t], likely) {
            likely_line = line;
        }
    }
    (Length::from_mm(worst), Length::from_mm(likely), lines)
}
