//! A plan asked every question.

use plan::{Plan, Workshop};
use plant::{Plant, Resolved};
use proof::Proof;
use reckoning::{Finding, Known};

use crate::answer::{Judged, Standing, not_asked, sort};
use crate::bench::{Bench, bench};
use crate::duty_answer;
use crate::making_answer;
use crate::parts_answer;
use crate::proof_door;
use crate::question::{Answer, Question};
use crate::sentence;
use crate::steam_answer::{Asked, OF_THE_ENGINE, Steaming};
use crate::uncovered;

/// A part, for the lists of it.
#[derive(Clone, Debug, PartialEq)]
pub struct PartTold {
    /// Id.
    pub id: String,
    /// What it is, in words.
    pub says: String,
    /// Mass, kg; `None` where its metal or a size is not known.
    pub mass_kg: Option<f64>,
}

/// Everything that was found about a plan.
#[derive(Clone, Debug)]
pub struct Checked {
    /// Name and issue of the plan.
    pub title: String,
    /// What it is for.
    pub scenario: Option<String>,
    /// One answer a question, in the order of the job.
    pub answers: Vec<Answer>,
    /// Every finding, worst first.
    pub judged: Vec<Judged>,
    /// The rule set that leads.
    pub leading_set: &'static str,
    /// What must be agreed, and with whom.
    pub agreements: Vec<proof::Agreement>,
    /// The parts.
    pub parts: Vec<PartTold>,
    /// Plan fields that would let more be worked out.
    pub gaps: Vec<String>,
    /// The fire.
    pub steaming: Steaming,
    /// The proof by every rule set.
    pub proof: Proof,
    /// The plant in parts.
    pub resolved: Resolved,
    /// The turned parts at the bench.
    pub benches: Vec<Bench>,
}

/// Checks a plan. It gives as much as the plan allows; nothing here fails.
#[must_use]
pub fn check(plan: &Plan, workshop: &Workshop) -> Checked {
    check_by(plan, workshop, |asked| asked.answered())
}

/// Checks a plan with the fire answered by the caller, who may hold the answer of a plan that
/// asked the same: the loop is most of the time of a check, and few edits touch it.
#[must_use]
pub fn check_by(
    plan: &Plan,
    workshop: &Workshop,
    fire: impl FnOnce(Asked<'_>) -> Steaming,
) -> Checked {
    let resolved = plant::resolve(plan);
    let steaming = fire(Asked::of(plan, &resolved.plant));
    let proof = prove(plan, workshop, &resolved.plant, &steaming);
    let benches = bench(plan, workshop);
    let mut judged = judged(&resolved, &steaming, &proof);
    let mounted = mounted(plan, workshop, &resolved, &steaming);
    let open = uncovered::findings(plan, proof.leading().chain(&mounted));
    judged.extend(
        mounted
            .into_iter()
            .chain(open)
            .map(|f| under(Question::Proof, Standing::Leads, f)),
    );
    judged.extend(making_answer::judged(&benches));
    sort(&mut judged);
    let answers = vec![
        duty_answer::duty(plan, &steaming, &judged),
        sentence::fire(&steaming, &judged),
        sentence::proof(plan, &proof, &judged),
        parts_answer::answer(&resolved, &judged),
        making_answer::answer(&benches, &judged),
        not_asked(Question::Heats),
        not_asked(Question::Job),
        not_asked(Question::Trials),
        not_asked(Question::Papers),
    ];
    Checked {
        title: title(plan),
        scenario: plan.scenario.get().cloned(),
        answers,
        judged,
        leading_set: proof.leads.key,
        agreements: proof::agreements(proof.leads, &hearing(plan, &resolved)),
        parts: parts_answer::told(&resolved),
        gaps: gaps(&resolved, &steaming),
        steaming,
        proof,
        resolved,
        benches,
    }
}

/// What the agreements are about: the pressure for which the boiler is proved, and its whole room.
fn hearing(plan: &Plan, resolved: &Resolved) -> proof::Hearing {
    proof::Hearing {
        pressure: plan.boiler.design_pressure.known(),
        volume: resolved.plant.water.as_ref().map(|water| Known {
            value: water.water.value + water.steam.value,
            given: water.steam.given.clone(),
        }),
    }
}

/// Every finding of the plant, the fire and the proof under its question.
fn judged(resolved: &Resolved, steaming: &Steaming, proof: &Proof) -> Vec<Judged> {
    let parts = resolved.findings.iter().cloned();
    let fires = steaming.fires();
    let fire = fires
        .filter_map(|fire| fire.run.as_ref())
        .flat_map(|run| &run.findings)
        .cloned();
    let leading = proof.leading().cloned();
    let beside = proof.beside().cloned();
    parts
        .map(|f| under(Question::Parts, Standing::Leads, f))
        .chain(fire.map(by_fire))
        .chain(leading.map(|f| under(Question::Proof, Standing::Leads, f)))
        .chain(beside.map(|f| under(Question::Proof, Standing::Beside, f)))
        .collect()
}

/// Valve, feed, gauges and plug, for the greatest fire.
pub(crate) fn mounted(
    plan: &Plan,
    workshop: &Workshop,
    resolved: &Resolved,
    steaming: &Steaming,
) -> Vec<Finding> {
    proof::mountings(
        &proof_door::mountings(plan, &resolved.plant, proof_door::wires(workshop)),
        &proof_door::raising(plan, &resolved.plant, steaming.greatest.clone()),
    )
}

/// Every empty field that would let more be worked out, once.
fn gaps(resolved: &Resolved, steaming: &Steaming) -> Vec<String> {
    let mut fields: Vec<String> = resolved.gaps.iter().map(|gap| gap.field.clone()).collect();
    fields.extend(
        steaming
            .fires()
            .flat_map(|fire| fire.taken.gaps.iter().cloned()),
    );
    fields.sort_unstable();
    fields.dedup();
    fields
}

/// The proof by every rule set.
pub(crate) fn prove(plan: &Plan, workshop: &Workshop, plant: &Plant, steaming: &Steaming) -> Proof {
    let named = plan.tester_set.get().and_then(|key| proof::find_set(key));
    proof::prove(
        &proof_door::boiler(plan, plant),
        &proof_door::service(plan, steaming.coil.as_ref()),
        &proof_door::stock(workshop),
        named,
    )
}

fn under(question: Question, standing: Standing, finding: Finding) -> Judged {
    Judged {
        question,
        standing,
        finding,
    }
}

/// Rules of the engine, its water and its gas belong to the duty, the others to the fire.
fn by_fire(finding: Finding) -> Judged {
    let id = finding.rule.id;
    let question = if OF_THE_ENGINE.contains(&id) || id == "flame.tank-lasts" {
        Question::Duty
    } else {
        Question::Steaming
    };
    under(question, Standing::Leads, finding)
}

fn title(plan: &Plan) -> String {
    let name = plan
        .name
        .get()
        .map_or("A plan without a name", String::as_str);
    match plan.issue.get() {
        Some(issue) => format!("{name}, issue {issue}"),
        None => name.to_owned(),
    }
}
