//! The answer to `check` in words.

use design::{Answer, Checked, Judged, Standing, worst_first};
use reckoning::{Finding, Verdict};

use super::Wanted;
use crate::command::page::{Page, capital};

/// The whole answer.
pub(super) fn tell(checked: &Checked, wanted: &Wanted<'_>) -> String {
    let mut out = Page::default();
    if let Some(part) = wanted.part {
        tell_part(&mut out, checked, part, wanted);
        return out.text;
    }
    out.line(&checked.title);
    if let Some(scenario) = &checked.scenario {
        out.paragraph("", scenario);
    }
    out.blank();
    for answer in worst_first(&checked.answers)
        .iter()
        .filter(|a| a.verdict.is_some())
    {
        tell_answer(&mut out, answer);
    }
    out.paragraph("Not asked by this version: ", &not_asked(&checked.answers));
    out.blank();
    tell_findings(&mut out, checked, wanted);
    tell_cures(&mut out, checked);
    tell_conditions(&mut out, checked);
    tell_agreements(&mut out, checked);
    tell_assumed(&mut out, checked);
    out.paragraph("", CAUTION);
    out.text
}

/// What is printed below every check.
const CAUTION: &str = "This is arithmetic, not a certificate. Your club's boiler tester, your \
                       insurer and the local code decide; the water test, the steam test and the \
                       trial of the valve against a full fire are the proof.";

fn tell_answer(out: &mut Page, answer: &Answer) {
    let verdict = answer.verdict.map_or("not asked", Verdict::words);
    out.line(&format!("{}: {verdict}", capital(answer.question.name())));
    out.paragraph("  ", &answer.sentence);
    out.blank();
}

fn not_asked(answers: &[Answer]) -> String {
    let names: Vec<&str> = answers
        .iter()
        .filter(|a| a.verdict.is_none())
        .map(|a| a.question.name())
        .collect();
    format!("{}.", names.join(", "))
}

fn tell_findings(out: &mut Page, checked: &Checked, wanted: &Wanted<'_>) {
    let counts = |j: &&Judged| j.standing == Standing::Leads;
    let open = |j: &&Judged| matches!(j.finding.verdict, Verdict::NotMet | Verdict::Unproved);
    let against: Vec<&Judged> = checked.judged.iter().filter(counts).filter(open).collect();
    if !against.is_empty() {
        out.line("What stands against it");
        for judged in against {
            tell_finding(out, judged, wanted);
        }
        out.blank();
    }
    if wanted.all {
        out.line("What is met");
        for judged in checked.judged.iter().filter(counts).filter(|j| !open(j)) {
            tell_finding(out, judged, wanted);
        }
        out.blank();
        let beside: Vec<&Judged> = checked
            .judged
            .iter()
            .filter(|j| j.standing == Standing::Beside)
            .collect();
        if !beside.is_empty() {
            out.line("What the other rule sets say");
            for judged in beside {
                tell_finding(out, judged, wanted);
            }
            out.blank();
        }
    }
}

fn tell_part(out: &mut Page, checked: &Checked, part: &str, wanted: &Wanted<'_>) {
    let of_part = |j: &&Judged| design::lies_in(&j.finding.place, part);
    if let Some(told) = checked.parts.iter().find(|p| p.id == part) {
        out.line(&format!("{}: {}", told.id, told.says));
        out.blank();
    }
    for judged in checked.judged.iter().filter(of_part) {
        tell_finding(out, judged, wanted);
    }
}

fn tell_finding(out: &mut Page, judged: &Judged, wanted: &Wanted<'_>) {
    let f = &judged.finding;
    let tight = if f.tight { ", tight" } else { "" };
    let set = if f.set.is_empty() {
        String::new()
    } else {
        format!(", set `{}`", f.set)
    };
    out.line(&format!(
        "  {}: {}{tight}  ({}{set})",
        f.place,
        f.verdict.words(),
        f.rule.id
    ));
    out.paragraph("    ", &f.says);
    if let Some(remedy) = &f.remedy {
        out.paragraph("    Cure: ", remedy);
    }
    for condition in &f.conditions {
        out.paragraph("    On condition: ", &condition.says);
    }
    if wanted.working {
        tell_rule(out, f);
        out.working(&f.working);
    }
}

fn tell_rule(out: &mut Page, f: &Finding) {
    let cite = &f.rule.cite;
    out.paragraph("    Rule: ", f.rule.sentence);
    let place = if cite.place.is_empty() {
        String::new()
    } else {
        format!(", {}", cite.place)
    };
    out.paragraph(
        "    ",
        &format!(
            "{}{place} ({})",
            cite.source.title,
            cite.source.seen.words()
        ),
    );
    out.paragraph(
        "    Weakest origin in the chain: ",
        f.weakest_origin.words(),
    );
}

/// The nearest changes that would let each fire hold.
fn tell_cures(out: &mut Page, checked: &Checked) {
    for (fire, number) in checked.steaming.fires().zip(0..) {
        let cures = fire.run.as_ref().map_or(&[][..], |run| &run.cures);
        if cures.is_empty() {
            continue;
        }
        out.line(if number == 0 {
            "What would let the fire hold, one change at a time"
        } else {
            "What would let the gas fire hold, one change at a time"
        });
        for cure in cures {
            out.paragraph("  - ", &cure.says);
        }
        out.blank();
    }
}

/// What is to be measured, each thing once with the places that wait for it.
fn tell_conditions(out: &mut Page, checked: &Checked) {
    let points = design::hold_points(&checked.judged);
    if points.is_empty() {
        return;
    }
    out.line("To be measured, for what is met on condition");
    for point in points {
        let places = point.places.join(", ");
        out.paragraph("  - ", &format!("{} (for {places})", point.says));
    }
    out.blank();
}

/// What is to be agreed before metal is cut, by whom it is agreed with.
fn tell_agreements(out: &mut Page, checked: &Checked) {
    out.line("To be agreed");
    for agreement in &checked.agreements {
        let with = agreement.with.words();
        out.paragraph("  - ", &format!("with {with}: {}", agreement.what));
    }
    out.blank();
}

fn tell_assumed(out: &mut Page, checked: &Checked) {
    let mut names: Vec<&str> = Vec::new();
    for entering in checked.steaming.fires().flat_map(|f| &f.taken.assumed) {
        if !names.contains(&entering.assumption.id) {
            names.push(entering.assumption.id);
        }
    }
    if names.is_empty() {
        return;
    }
    out.paragraph(
        "Assumed, because the plan leaves them empty: ",
        &format!("{}.", names.join(", ")),
    );
    out.blank();
}
