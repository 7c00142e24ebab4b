//! After the last row the piece is the piece drawn: no more, no less.

use plant::part::{Difference, Span, Surface};
use reckoning::formula::Cite;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, or_met};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.whole",
    sentence: "After the last row every feature drawn is made, and no other.",
    remedy: "Add the row that is missing, or put the row back that measures from a face cut later.",
    cite: Cite {
        source: &formulas::sources::DERIVED,
        place: "the shape simulated, held against the drawing",
    },
};

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found: Vec<Seen> = case.run.differs.iter().map(|d| seen(case, d)).collect();
    or_met(found, &RULE, "the last row leaves the piece as drawn", case)
}

fn seen(case: &Case<'_>, difference: &Difference) -> Seen {
    let (place, says) = match difference {
        Difference::Missing { id } => (id.clone(), format!("{id} is drawn and no row makes it")),
        Difference::Extra { id } => (id.clone(), format!("{id} is cut and not drawn")),
        Difference::Form { id } => (
            id.clone(),
            format!("{id} is not cut as drawn{}", after_face(case, id)),
        ),
        Difference::Diameter { .. } => diameter(case, difference),
    };
    let blamed: Vec<_> = case
        .run
        .steps
        .iter()
        .filter(|s| s.operation.makes.as_deref() == Some(place.as_str()) || s.proud.mm() > 1e-6)
        .map(|s| s.place)
        .collect();
    Seen::new(&RULE, Verdict::NotMet, place, says)
        .blaming(blamed)
        .else_cured_by("compare the rows with the drawing: a row is missing or has other sizes")
}

fn diameter(case: &Case<'_>, difference: &Difference) -> (String, String) {
    let Difference::Diameter {
        surface,
        span,
        feature,
        drawn,
        made,
    } = difference
    else {
        return (String::new(), String::new());
    };
    let reads = case.card.reads;
    let none = match surface {
        Surface::Outside => "no metal",
        Surface::Inside => "solid",
    };
    let words = |d: &Option<reckoning::quantity::Length>| {
        d.map_or_else(|| none.to_owned(), |d| reads.size(d))
    };
    let place = feature.clone().unwrap_or_else(|| outside(case, *span));
    let side = match surface {
        Surface::Outside => "outside",
        Surface::Inside => "bore",
    };
    let says = format!(
        "from {} to {} the {side} is {} and {} is drawn{}",
        reads.size(span.from),
        reads.size(span.to),
        words(made),
        words(drawn),
        after_face(case, &place)
    );
    (place, says)
}

/// A name for a stretch that no feature owns.
fn outside(case: &Case<'_>, span: Span) -> String {
    let whole = case.piece.shape.span();
    if span.to <= whole.from || span.from >= whole.to {
        "length".to_owned()
    } else {
        "bar".to_owned()
    }
}

/// Why a feature may lie wrong: it was measured from a face that was cut back later.
fn after_face(case: &Case<'_>, id: &str) -> String {
    case.run
        .steps
        .iter()
        .find(|s| s.operation.makes.as_deref() == Some(id) && s.proud.mm() > 1e-6)
        .map_or_else(String::new, |s| {
            format!(
                "; row {} measured from a face that stood {} proud and is cut back later",
                s.number,
                case.card.reads.size(s.proud)
            )
        })
}
