//! The page of trials.

use crate::{head, row};
use reckoning::quantity::show::figures;

use crate::trials::read::Sheet;
use crate::trials::{Outcome, files, outcomes};

const INTRODUCTION: &str = "\
# Trials

This page is made by running the code. It holds the steady loop to published trials of whole \
boilers. What each report gives, what it leaves out and how that was filled in was written down, \
with one set of assumptions for all of them, before the loop first ran on any; nothing is fitted \
to a case, and no assumption is changed to bring a result nearer. A result outside the acceptance \
of its kind keeps its place and gets its reason.

Nearly all of these boilers are full-size, with gas that whirls in wide tubes: they try the \
balances, the radiation, the turbulent laws and the bed. No trial of a boiler below 250 mm with \
geometry, fuel, draught and temperatures together was found; the first measured firings of makers \
will be worth more than this page.

Acceptance: evaporation within 10 %, efficiency within 4 points, smoke within 50 K, draught \
within 30 %, a share of the vacuum within 10 points, a trend within 8 %, the air ratio within 0.3.
";

/// The page, or what is wrong with the files.
pub(crate) fn page() -> Result<String, String> {
    let all = outcomes()?;
    let (_, trials) = files()?;
    let hits = all.iter().filter(|o| o.is_hit()).count();
    let mut out = INTRODUCTION.to_owned();
    out += &format!("\n{hits} of {} numbers lie inside.\n", all.len());
    for file in &trials {
        let whole = file.sheet();
        let trial = whole.under("trial")?;
        let id = trial.words("id")?;
        out += &format!("\n## {}\n\n", trial.words("name")?);
        out += &about(whole, trial)?;
        out += &table(all.iter().filter(|o| o.trial == id));
    }
    Ok(out)
}

/// Where it stands, how well that was read, and what was filled in.
fn about(whole: Sheet<'_>, trial: Sheet<'_>) -> Result<String, String> {
    let key = trial.words("source")?;
    let source = formulas::sources::all()
        .find(|s| s.key == key)
        .ok_or_else(|| format!("{}: no source {key}", trial.file))?;
    let mut out = format!(
        "{}; {} ({}).",
        crate::title(source),
        trial.words("place")?,
        source.seen.words()
    );
    for table in ["boiler", "jet"] {
        if let Ok(sheet) = whole.under(table)
            && let Some(filled) = sheet.maybe_words("filled-in")
        {
            out += &format!(" Filled in: {filled}");
        }
    }
    out.push('\n');
    Ok(out)
}

fn table<'a>(outcomes: impl Iterator<Item = &'a Outcome>) -> String {
    let mut out = head(&["what", "measured", "found", "apart", "allowed", ""]);
    let mut reasons = Vec::new();
    for o in outcomes {
        let number = |v: f64| format!("{} {}", figures(v, 3), o.unit).trim().to_owned();
        out += &row(&[
            o.what.clone(),
            number(o.measured),
            number(o.found),
            format!("{:+.3}", o.apart),
            format!("{}", o.allowed),
            if o.is_hit() { "inside" } else { "outside" }.to_owned(),
        ]);
        if let Some(reason) = &o.missed
            && !reasons.contains(reason)
        {
            reasons.push(reason.clone());
        }
    }
    for reason in reasons {
        out += &format!("\n{reason}\n");
    }
    out
}
