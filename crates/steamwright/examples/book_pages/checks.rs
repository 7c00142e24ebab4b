//! The page of checks: every outside value, what the code gives, and how far they lie apart.

use crate::outside::{self, Grid, Witness};
use crate::{capital, family, head, row, title};
use formulas::reference::{Check, Evidence};
use reckoning::Card;
use reckoning::quantity::show::{figures, to_uncertainty};
use reckoning::source::DERIVED;
use std::collections::BTreeSet;

const INTRODUCTION: &str = "\
# Checks

This page is made by running the code. It lists every value from outside the project to which a \
formula is held, what the formula gives for the same inputs, and how far the two lie apart. The \
distance allowed comes from the printed digits or from what the source says of itself, never from \
what passes.

An *independent calculation* is no publication: the value was worked by other means than this \
code, by hand, by another program or by a general library. *None published* means that only limit \
cases and identities hold a formula. *From memory* means that the printed value was entered \
without the page at hand, and has still to be compared with it.
";

/// The page, or the faults of the files that it is made from.
pub(crate) fn page() -> Result<String, String> {
    let checks = outside::checks()?;
    let mut out = INTRODUCTION.to_owned();
    out += &kinds(&checks);
    out += &families(&checks);
    out += &libraries(&outside::grids()?);
    out += &stages(&outside::witnesses()?);
    out += &details(&checks);
    Ok(out)
}

/// How many values of each kind there are, what was seen only in memory, and what is missed.
fn kinds(checks: &[Check]) -> String {
    let mut out = String::from("\n## By kind of evidence\n");
    out += &head(&["kind of evidence", "values", "from memory", "missed"]);
    for kind in Evidence::ALL {
        let of: Vec<&Check> = checks.iter().filter(|c| c.kind == kind).collect();
        out += &row(&[
            kind.words().to_owned(),
            of.len().to_string(),
            of.iter().filter(|c| from_memory(c)).count().to_string(),
            missed(&of).to_string(),
        ]);
    }
    out + &formulas_held(checks)
}

/// How many formulas have a published value, and why the others have none.
fn formulas_held(checks: &[Check]) -> String {
    let published = cards(checks.iter().filter(|c| is_published(c)));
    let without: Vec<&Card> = formulas::register::cards()
        .filter(|card| !published.contains(card.id))
        .collect();
    let derived = without
        .iter()
        .filter(|card| card.cite.source.key == DERIVED.key)
        .count();
    format!(
        "\nOf {} formulas, {} are held to at least one published value. The other {} rest on \
         independent calculations alone: {derived} of them follow from geometry, mechanics or a \
         conservation law, {} are published laws for which no published value was at hand.\n",
        formulas::register::cards().count(),
        published.len(),
        without.len(),
        without.len() - derived,
    )
}

fn is_published(check: &Check) -> bool {
    !matches!(
        check.kind,
        Evidence::IndependentCalculation | Evidence::NonePublished
    )
}

fn from_memory(check: &Check) -> bool {
    check.seen == "from memory"
}

fn missed(checks: &[&Check]) -> usize {
    checks.iter().filter(|c| !c.is_met()).count()
}

fn cards<'a>(checks: impl Iterator<Item = &'a Check>) -> BTreeSet<&'a str> {
    checks.map(|c| c.card).collect()
}

fn names(checks: &[Check]) -> BTreeSet<&str> {
    checks.iter().map(|c| family(c.card)).collect()
}

/// One line a family.
fn families(checks: &[Check]) -> String {
    let mut out = String::from(
        "\n## By family\n\nThe last column is the greatest distance found, in hundredths of the \
         distance allowed.\n",
    );
    out += &head(&[
        "family",
        "formulas",
        "published values",
        "independent values",
        "missed",
        "greatest distance",
    ]);
    for name in names(checks) {
        let of: Vec<&Check> = checks.iter().filter(|c| family(c.card) == name).collect();
        let published = of.iter().filter(|c| is_published(c)).count();
        let share = of
            .iter()
            .filter_map(|c| Some(c.deviation()?.abs() / c.tolerance))
            .fold(0.0, f64::max);
        out += &row(&[
            format!("[{name}](#{name})"),
            cards(of.iter().copied()).len().to_string(),
            published.to_string(),
            (of.len() - published).to_string(),
            missed(&of).to_string(),
            format!("{:.0} %", 100.0 * share),
        ]);
    }
    out
}

/// General libraries and grids that the tests compare with, beside the values below.
fn libraries(grids: &[Grid]) -> String {
    let mut out = String::from(
        "\n## General libraries\n\nThe tests hold properties to these grids, which general \
         libraries made, and water and steam also to the crate `seuif97`, a second implementation \
         of the same equations, at points drawn at random.\n",
    );
    out += &head(&["grid", "rows", "made how"]);
    for grid in grids {
        out += &row(&[
            format!("`{}`", grid.file),
            grid.rows.to_string(),
            grid.says.clone(),
        ]);
    }
    out
}

/// Tests of whole stages that say in their names what they rest on.
fn stages(witnesses: &[Witness]) -> String {
    let mut out = String::from(
        "\n## Whole stages\n\nTests beyond single formulas. Each names its source beside it in \
         the code.\n",
    );
    out += &head(&["stage", "evidence", "what is held"]);
    for w in witnesses {
        out += &row(&[w.home.clone(), w.kind.to_owned(), w.says.clone()]);
    }
    out
}

/// Every value, by family and by the place it comes from.
fn details(checks: &[Check]) -> String {
    let mut out = String::new();
    for name in names(checks) {
        out += &format!("\n## {name}\n");
        let of: Vec<&Check> = checks.iter().filter(|c| family(c.card) == name).collect();
        for group in of.chunk_by(|a, b| file(a) == file(b)) {
            out += &place(group);
        }
    }
    out
}

fn file(check: &Check) -> &str {
    check.at.split(':').next().unwrap_or(&check.at)
}

/// The values from one place of one source.
fn place(group: &[&Check]) -> String {
    let Some(first) = group.first() else {
        return String::new();
    };
    let reasons: BTreeSet<&str> = group.iter().map(|c| c.because.as_str()).collect();
    let reasons: Vec<&str> = reasons.into_iter().collect();
    let mut out = format!(
        "\n**{}; {}.** {}, {}. Allowed: {}.\n",
        title(first.source),
        first.place,
        capital(first.kind.words()),
        first.seen,
        reasons.join("; ")
    );
    out += &head(&["formula", "for", "wanted", "found", "off", "allowed"]);
    for check in group {
        out += &row(&cells(check));
    }
    out
}

fn cells(check: &Check) -> [String; 6] {
    let given: Vec<String> = check
        .given
        .iter()
        .map(|(s, text)| format!("{s} = {text}"))
        .collect();
    let unit = check.unit.symbol;
    let (found, off) = match (&check.found, check.deviation()) {
        (Ok(found), Some(off)) => (
            format!("{} {unit}", to_uncertainty(*found, check.tolerance)),
            distance(off, check.tolerance),
        ),
        (Err(refused), _) => (refused.to_string(), String::new()),
        (Ok(_), None) => (String::new(), String::new()),
    };
    let off = if check.is_met() {
        off
    } else {
        format!("**{off}, missed**")
    };
    [
        format!("`{}`", check.card),
        given.join(", "),
        format!("{} = {}", check.symbol, check.written),
        found,
        off,
        figures(check.tolerance, 2),
    ]
}

/// A distance to the figures that matter beside the one allowed.
fn distance(off: f64, allowed: f64) -> String {
    if off.abs() < allowed / 100.0 {
        "0".to_owned()
    } else {
        figures(off, 2)
    }
}
