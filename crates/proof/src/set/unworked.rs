//! What a set is not worked for: said, part by part, and not passed over.

use super::RuleSet;
use crate::input::{Boiler, Further, Opening, Seam};
use crate::sum::{Stop, check};
use reckoning::{Finding, Rule};

/// One part of which a set says nothing.
pub(super) fn one(
    set: &'static RuleSet,
    rule: &'static Rule,
    place: &str,
    what: &'static str,
) -> Finding {
    check(set.head(rule, place), |_| Err(Stop::NotWorked { what }))
}

/// Openings of which a set says nothing.
pub(super) fn openings<'a>(
    set: &'static RuleSet,
    rule: &'static Rule,
    openings: &'a [Opening],
    what: &'static str,
) -> impl Iterator<Item = Finding> + 'a {
    openings.iter().map(move |o| one(set, rule, &o.id, what))
}

/// Every further thing of a boiler but the kinds that the set works.
pub(super) fn further(
    set: &'static RuleSet,
    rule: &'static Rule,
    boiler: &Boiler,
    worked: &[Further],
) -> Vec<Finding> {
    let left = boiler.further().into_iter();
    left.filter(|(_, kind)| !worked.contains(kind))
        .map(|(place, kind)| one(set, rule, place, kind.words()))
        .collect()
}

/// Openings of the ends of a boiler, of which a set says nothing.
pub(super) fn of_ends(
    set: &'static RuleSet,
    rule: &'static Rule,
    boiler: &Boiler,
) -> impl Iterator<Item = Finding> {
    let what = "an opening in an end";
    let ends = boiler.ends.iter();
    ends.flat_map(move |end| openings(set, rule, &end.openings, what))
}

/// Goes on with a shell that has no seam along it.
pub(super) fn seamless(seam: Seam) -> Result<(), Stop> {
    match seam {
        Seam::Seamless => Ok(()),
        Seam::LapSeenBothSides | Seam::LapBlind | Seam::ButtStrap => Err(Stop::NotWorked {
            what: "a brazed seam along a shell",
        }),
    }
}
