//! The least wall anywhere, threads counted at the depth to which they cut.

use plant::part::Turned;
use reckoning::formula::Cite;
use reckoning::quantity::{Length, MM};
use reckoning::{Rule, Verdict, Working};

use super::{Case, Seen, at_worst_high};
use crate::simulate::{Step, WITHIN_MM};

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
    let mut lines = Working::new();
    lines.know("t", "least wall asked", &MM, &case.piece.least_wall);
    let all = case
        .run
        .steps
        .iter()
        .filter_map(|s| thinnest(&s.after).map(|t| (s, t)));
    let thin = all
        .filter(|(_, t)| t.0 + Length::from_mm(WITHIN_MM) < least)
        .min_by(|a, b| a.1.0.mm().total_cmp(&b.1.0.mm()));
    let (mut seen, wall) = match (thin, thinnest(&case.run.shape)) {
        (Some((step, (wall, at))), _) => (too_thin(case, step, (wall, at, least)), Some(wall)),
        (None, Some((wall, at))) => {
            let [there, asked] = [wall, least].map(|l| case.card.reads.size(l));
            let says = format!("the least wall is {there} {at}; {asked} is asked");
            (
                Seen::new(&RULE, Verdict::Met, case.piece.id.clone(), says),
                Some(wall),
            )
        }
        (None, None) => {
            let says = "the piece has no wall";
            (
                Seen::new(&RULE, Verdict::Met, case.piece.id.clone(), says),
                None,
            )
        }
    };
    seen.margin = wall.map(|wall| wall / least);
    vec![seen.with(lines)]
}

fn too_thin(case: &Case<'_>, step: &Step<'_>, (wall, at, least): (Length, &str, Length)) -> Seen {
    let [there, asked, missing] = [wall, least, least - wall].map(|l| case.card.reads.size(l));
    let says = format!(
        "row {} leaves {there} {at}; {asked} is asked, {missing} is missing",
        step.number
    );
    Seen::new(&RULE, Verdict::NotMet, step.what(), says)
        .blaming([step.place])
        .else_cured_by(format!(
            "no order cures it: the drawing or the drill must leave {missing} more"
        ))
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
