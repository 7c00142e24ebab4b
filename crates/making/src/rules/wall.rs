//! The least wall anywhere, threads counted at the depth to which they cut.

use plant::part::Turned;
use reckoning::formula::Cite;
use reckoning::quantity::{Length, MM};
use reckoning::{Rule, Verdict, Working};

use super::{Case, Seen, at_worst_high};
use crate::simulate::WITHIN_MM;

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.wall",
    sentence: "No cut leaves less than the least wall between it and any other surface.",
    remedy: "Make the hole or thread smaller, or the outside larger.",
    cite: Cite {
        source: &formulas::sources::DERIVED,
        place: "least distance between surfaces, threads counted at their depth",
    },
};

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let least = at_worst_high(&case.piece.least_wall);
    let reads = case.card.reads;
    let mut lines = Working::new();
    lines.know("t", "least wall asked", &MM, &case.piece.least_wall);
    let thin = case
        .run
        .steps
        .iter()
        .filter_map(|s| thinnest(&s.after).map(|t| (s, t)))
        .filter(|(_, t)| t.0 + Length::from_mm(WITHIN_MM) < least)
        .min_by(|a, b| a.1.0.mm().total_cmp(&b.1.0.mm()));
    if let Some((step, (wall, place))) = thin {
        let says = format!(
            "row {} leaves {} {place}; {} is asked, {} is missing",
            step.number,
            reads.size(wall),
            reads.size(least),
            reads.size(least - wall)
        );
        let what = step
            .operation
            .makes
            .clone()
            .unwrap_or_else(|| step.operation.work.word().to_owned());
        let mut seen = Seen::new(&RULE, Verdict::NotMet, what, says)
            .with(lines)
            .blaming([step.place])
            .else_cured_by(format!(
                "no order cures it: the drawing or the drill must leave {} more",
                reads.size(least - wall)
            ));
        seen.margin = Some(wall / least);
        return vec![seen];
    }
    let says = thinnest(&case.run.shape).map_or_else(
        || "the piece has no wall".to_owned(),
        |(wall, place)| {
            format!(
                "the least wall is {} {place}; {} is asked",
                reads.size(wall),
                reads.size(least)
            )
        },
    );
    let mut seen = Seen::new(&RULE, Verdict::Met, case.piece.id.clone(), says).with(lines);
    seen.margin = thinnest(&case.run.shape).map(|(wall, _)| wall / least);
    vec![seen]
}

/// The thinnest metal and where it is.
fn thinnest(shape: &Turned) -> Option<(Length, &'static str)> {
    let radial = shape
        .least_wall()
        .map(|w| (w.thickness, "between bore and outside"));
    let ends = shape
        .cross_holes()
        .map(|(_, hole)| (shape.edge_of(hole), "between a cross hole and the end"));
    let holes: Vec<_> = shape.cross_holes().map(|(_, hole)| *hole).collect();
    let webs = holes.iter().enumerate().flat_map(|(i, a)| {
        holes[i + 1..]
            .iter()
            .filter_map(|b| shape.web(a, b).map(|w| (w, "between two cross holes")))
    });
    radial
        .into_iter()
        .chain(ends)
        .chain(webs)
        .min_by(|a, b| a.0.mm().total_cmp(&b.0.mm()))
}
