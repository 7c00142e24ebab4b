//! The rules of order, one file each. Every rule looks at a card that has been run and says what
//! it found, good or bad; thresholds without a published source are common practice.

mod cross;
mod floor;
mod grip;
mod metal;
mod part;
mod reach;
mod ream;
mod start;
mod tap;
mod truth;
mod wall;
mod whole;

pub(crate) use reach::GROOVE_MM;
pub(crate) use ream::OVERSIZE_MM;
pub(crate) use start::CENTRE_SHARE;

use formulas::cutting::{POINT, point};
use plant::part::Point;
use reckoning::quantity::{Angle, DEGREE, Length, MM};
use reckoning::{Condition, Given, Known, Origin, Ref, Rule, Verdict, Working};

use crate::card::{Operation, Place, RouteCard};
use crate::piece::Piece;
use crate::simulate::{Simulated, Step};

/// Every rule of order, in the order in which they are told.
pub static RULES: &[&Rule] = &[
    &whole::RULE,
    &metal::RULE,
    &reach::RULE,
    &grip::RULE,
    &part::RULE,
    &start::RULE,
    &floor::RULE,
    &tap::RULE,
    &ream::RULE,
    &cross::RULE,
    &wall::RULE,
    &truth::RULE,
];

/// A card that has been run, as the rules see it.
pub(crate) struct Case<'a> {
    pub(crate) card: &'a RouteCard,
    pub(crate) piece: &'a Piece,
    pub(crate) run: &'a Simulated<'a>,
}

/// What a rule found.
#[derive(Debug)]
pub(crate) struct Seen {
    pub(crate) rule: &'static Rule,
    pub(crate) verdict: Verdict,
    /// Id of the feature or setting spoken of.
    pub(crate) place: String,
    pub(crate) says: String,
    pub(crate) conditions: Vec<Condition>,
    pub(crate) margin: Option<f64>,
    pub(crate) working: Working,
    /// Rows whose place may be at fault, the likeliest first.
    pub(crate) blamed: Vec<Place>,
    /// Whether the row blamed does nothing, so that striking it out loses nothing.
    pub(crate) idle: bool,
    /// Operations that may be missing.
    pub(crate) missing: Vec<Operation>,
    /// What cures it where no change of order does.
    pub(crate) otherwise: Option<String>,
}

impl Seen {
    pub(crate) fn new(
        rule: &'static Rule,
        verdict: Verdict,
        place: impl Into<String>,
        says: impl Into<String>,
    ) -> Self {
        Self {
            rule,
            verdict,
            place: place.into(),
            says: says.into(),
            conditions: Vec::new(),
            margin: None,
            working: Working::new(),
            blamed: Vec::new(),
            idle: false,
            missing: Vec::new(),
            otherwise: None,
        }
    }

    pub(crate) fn blaming(mut self, rows: impl IntoIterator<Item = Place>) -> Self {
        self.blamed.extend(rows);
        self
    }

    pub(crate) fn missing(mut self, operation: Operation) -> Self {
        self.missing.push(operation);
        self
    }

    pub(crate) fn else_cured_by(mut self, cure: impl Into<String>) -> Self {
        self.otherwise = Some(cure.into());
        self
    }

    pub(crate) fn on_condition(mut self, says: impl Into<String>) -> Self {
        self.conditions.push(Condition {
            says: says.into(),
            field: None,
            bound: None,
        });
        self
    }

    pub(crate) fn with(mut self, working: Working) -> Self {
        self.working = working;
        self
    }
}

/// Looks at a card with every rule.
pub(crate) fn look(case: &Case<'_>) -> Vec<Seen> {
    let looks: [fn(&Case<'_>) -> Vec<Seen>; 12] = [
        whole::look,
        metal::look,
        reach::look,
        grip::look,
        part::look,
        start::look,
        floor::look,
        tap::look,
        ream::look,
        cross::look,
        wall::look,
        truth::look,
    ];
    looks.iter().flat_map(|look| look(case)).collect()
}

/// The value with which a check that gets worse as it grows must reckon.
pub(crate) fn at_worst_high(known: &Known<Length>) -> Length {
    worst(known, reckoning::assumption::Worse::WhenHigh)
}

fn worst(known: &Known<Length>, worse: reckoning::assumption::Worse) -> Length {
    use reckoning::quantity::Quantity;
    match &known.given {
        Given::Assumed { assumption } => {
            Length::from_unit(assumption.worse_end(worse), assumption.unit)
        }
        _ => known.value,
    }
}

/// A size of the drawing as it enters a working.
pub(crate) fn drawn(case: &Case<'_>, feature: &str, size: Length) -> Known<Length> {
    Known::from_plan(
        size,
        format!("{}.{feature}", case.piece.id),
        case.card.reads.size(size),
    )
}

/// A number that a rule of the trade brings.
pub(crate) fn of_the_trade<Q>(value: Q, between: &str, reason: &str) -> Known<Q> {
    Known {
        value,
        given: Given::Chosen {
            between: between.to_owned(),
            reason: reason.to_owned(),
            weakest: Origin::CommonPractice,
        },
    }
}

/// Files the length of the point of an ordinary drill.
pub(crate) fn file_point(lines: &mut Working, d: &Known<Length>) -> Option<(Ref, Length)> {
    let angle = Angle::from_deg(Point::DRILL_DEG);
    let angle = of_the_trade(angle, "points of twist drills", "the ordinary point");
    let length = point(d.value.mm(), Point::DRILL_DEG);
    let d = lines.know("d", "drill", &MM, d);
    let a = lines.know("a", "angle of the point", &DEGREE, &angle);
    let line = lines.settled(&POINT, &[d, a], length).ok()?;
    Some((line, Length::from_mm(length)))
}

/// What a rule sees in each row, or that nothing was wrong.
pub(crate) fn each_step(
    case: &Case<'_>,
    rule: &'static Rule,
    seen: fn(&Case<'_>, &Step<'_>) -> Option<Seen>,
    met: &str,
) -> Vec<Seen> {
    let steps = case.run.steps.iter();
    let found = steps.filter_map(|step| seen(case, step)).collect();
    or_met(found, rule, met, case)
}

/// One finding that nothing was wrong, where no other was made.
pub(crate) fn or_met(
    found: Vec<Seen>,
    rule: &'static Rule,
    says: impl Into<String>,
    case: &Case<'_>,
) -> Vec<Seen> {
    if found.is_empty() {
        return vec![Seen::new(rule, Verdict::Met, case.piece.id.clone(), says)];
    }
    found
}
