//! The bench: a route card for each turned fitting of the plan, from the maker's own workshop.

mod assumed;
mod drills;
mod fitting;
mod metal;
mod rules;
mod shape;
mod workshop;

pub use assumed::ASSUMPTIONS;
pub(crate) use rules::{REFERS, SHAPE, THREAD};
pub use workshop::{Taking, Tools, tools};

use making::{NoCard, Piece, Proposal, SettingText};
use plan::section::Fitting;
use plan::{Plan, Row};
use reckoning::{Finding, Verdict};

/// One fitting at the bench.
#[derive(Clone, Debug)]
pub struct Bench {
    /// Id of the fitting.
    pub id: String,
    /// What it is called at the bench, else what sort of part it is.
    pub name: String,
    /// How many are wanted, where the plan says so.
    pub count: Option<u32>,
    /// Its metal and its bar, as typed.
    pub from: Vec<String>,
    /// The piece as drawn; `None` where a gap or a fault of the drawing stands against it.
    pub piece: Option<Piece>,
    /// What is wrong with the drawing; empty where nothing is.
    pub drawing: Vec<Finding>,
    /// The card, or why there is none.
    pub card: Result<Written, WhyNot>,
    /// Fields of plan and workshop that are wanted and empty.
    pub gaps: Vec<String>,
}

/// A proposed card, judged and in words.
#[derive(Clone, Debug)]
pub struct Written {
    /// The proposal, with the tapping drills and what the workshop lacks.
    pub proposal: Proposal,
    /// What the rules of order found, good and bad.
    pub findings: Vec<Finding>,
    /// The rows as sentences.
    pub settings: Vec<SettingText>,
    /// The tapping drills, a sentence each.
    pub tapping: Vec<String>,
}

/// Why there is no card.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum WhyNot {
    /// Fields are wanted and empty.
    #[error("something is missing that a card needs")]
    Gaps,
    /// The drawing makes no piece.
    #[error("the drawing has to be put right first")]
    Drawing,
    /// A feature, a tool or a holder stands against it.
    #[error(transparent)]
    NoCard(#[from] NoCard),
}

impl Bench {
    /// The worst verdict on it.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        let of_card = match &self.card {
            Ok(card) => card.verdict(),
            Err(WhyNot::Gaps) => Verdict::Unproved,
            Err(WhyNot::Drawing | WhyNot::NoCard(_)) => Verdict::NotMet,
        };
        let drawing = self.drawing.iter().map(|f| f.verdict);
        drawing.fold(of_card, Verdict::max)
    }
}

impl Written {
    /// The worst verdict among its findings; a tool that is lacking leaves it unproved.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        let lacking = if self.proposal.lacks.is_empty() {
            Verdict::Met
        } else {
            Verdict::Unproved
        };
        let found = self.findings.iter().map(|f| f.verdict);
        found.fold(lacking, Verdict::max)
    }
}

/// Every fitting of the plan at the bench of this workshop.
#[must_use]
pub fn bench(plan: &Plan, workshop: &plan::Workshop) -> Vec<Bench> {
    let tools = tools(workshop);
    plan.fittings.iter().map(|f| one(f, &tools)).collect()
}

fn one(fitting: &Fitting, tools: &Tools) -> Bench {
    let drawn = fitting::drawing(fitting);
    let card = card(&drawn, tools);
    let mut gaps = drawn.gaps;
    if tools.shop.is_none() {
        gaps.extend(
            tools
                .taking
                .gaps
                .iter()
                .map(|gap| format!("workshop: {gap}")),
        );
    }
    let id = fitting.called();
    let called = fitting.name.get().cloned();
    let metal = fitting.metal.get().cloned();
    let bar = fitting
        .bar
        .get()
        .map(|b| format!("bar of {}", b.drawn.text));
    Bench {
        name: called
            .or_else(|| fitting::kind_words(fitting).map(str::to_owned))
            .unwrap_or_else(|| id.clone()),
        id,
        count: fitting.count.value(),
        from: metal.into_iter().chain(bar).collect(),
        piece: drawn.piece,
        drawing: drawn.findings,
        card,
        gaps,
    }
}

fn card(drawn: &fitting::Drawing, tools: &Tools) -> Result<Written, WhyNot> {
    if !drawn.findings.is_empty() {
        return Err(WhyNot::Drawing);
    }
    if let Some(feature) = drawn.not_ordered.first() {
        return Err(WhyNot::NoCard(NoCard::Feature {
            feature: feature.clone(),
            why: "a thread in a cross hole is not yet ordered here",
        }));
    }
    let (Some(piece), Some(shop)) = (&drawn.piece, &tools.shop) else {
        return Err(WhyNot::Gaps);
    };
    let proposal = making::propose(piece, shop)?;
    let findings = making::check(&proposal.card, &proposal.piece).findings;
    let settings = making::sentences(&proposal.card, &proposal.piece, shop);
    let reads = proposal.card.reads;
    let tapping = proposal.tapping.iter().map(|c| c.sentence(reads)).collect();
    Ok(Written {
        proposal,
        findings,
        settings,
        tapping,
    })
}
