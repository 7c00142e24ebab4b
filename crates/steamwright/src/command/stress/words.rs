//! The answer to `stress` in words.

use design::second_opinion::{SecondOpinion, Told, Unit};
use std::fmt::Write as _;

/// Columns of the printed text.
const WIDTH: usize = 96;

/// What is printed below every second opinion.
const CAUTION: &str = "This is arithmetic beside the rule sets, and no verdict reads it. Your club's \
                       boiler tester, your insurer and the local code decide.";

/// The whole answer.
pub(super) fn tell(opinion: &SecondOpinion) -> String {
    let mut out = String::new();
    paragraph(&mut out, &format!("{}: {}", opinion.part, opinion.what));
    line(&mut out, "");
    paragraph(&mut out, &opinion.sentence);
    line(&mut out, "");
    found(&mut out, opinion);
    peak(&mut out, opinion);
    beside(&mut out, opinion);
    taken(&mut out, opinion);
    list(&mut out, "It stands for:", &opinion.stands_for);
    list(&mut out, "It leaves out:", &opinion.leaves_out);
    paragraph(&mut out, CAUTION);
    out
}

fn line(out: &mut String, says: &str) {
    // Writing to a String cannot fail.
    let _: std::fmt::Result = writeln!(out, "{says}");
}

fn paragraph(out: &mut String, says: &str) {
    line(out, &textwrap::fill(says, WIDTH));
}

fn list(out: &mut String, head: &str, items: &[String]) {
    line(out, head);
    for item in items {
        let options = textwrap::Options::new(WIDTH)
            .initial_indent("  - ")
            .subsequent_indent("    ");
        line(out, &textwrap::fill(item, options));
    }
    line(out, "");
}

/// A value with the figures that the meshes support.
fn figure(told: &Told, value: f64) -> String {
    match told.unit {
        Unit::Mpa => format!("{value:.2}"),
        Unit::Mm => format!("{value:.4}"),
        Unit::Newton => format!("{value:.0}"),
    }
}

fn found(out: &mut String, opinion: &SecondOpinion) {
    let [a, b, c] = opinion.nodes;
    let head = format!(
        "Found on meshes of {a}, {b} and {c} nodes, each twice as fine as the one before; forces \
         balance to {:.0e} of the load:",
        opinion.left_over
    );
    paragraph(out, &head);
    for told in &opinion.told {
        let values = told.values.map(|value| figure(told, value));
        let says = format!(
            "{}: {} {} (before: {}, {}; last change {:.2} %)",
            told.what,
            values[2],
            told.unit.words(),
            values[0],
            values[1],
            100.0 * told.change()
        );
        let options = textwrap::Options::new(WIDTH)
            .initial_indent("  ")
            .subsequent_indent("      ");
        line(out, &textwrap::fill(&says, options));
    }
    line(out, "");
}

fn peak(out: &mut String, opinion: &SecondOpinion) {
    let peak = &opinion.peak;
    let [a, b, c] = peak.values;
    let place = format!(
        "{:.2} mm from the axis and {:.2} mm along it",
        peak.r_mm, peak.z_mm
    );
    let says = if peak.grows() {
        format!(
            "The greatest stress intensity lies {place}, at a corner taken as sharp: {a:.1}, {b:.1}, \
             {c:.1} MPa from mesh to mesh. It has no end there and is no stress of the real part, \
             which has a fillet."
        )
    } else {
        format!("The greatest stress intensity lies {place}: {c:.1} MPa (before: {a:.1}, {b:.1}).")
    };
    paragraph(out, &says);
    line(out, "");
}

fn beside(out: &mut String, opinion: &SecondOpinion) {
    let items: Vec<String> = opinion
        .beside
        .iter()
        .map(|b| format!("{} ({}): {}, {}", b.rule, b.set, b.says, b.verdict.words()))
        .collect();
    if items.is_empty() {
        line(out, "The rule sets have no formula for this part here.\n");
    } else {
        list(out, "Beside it, by the formulas of the rule sets:", &items);
    }
}

fn taken(out: &mut String, opinion: &SecondOpinion) {
    let mut items: Vec<String> = opinion
        .sizes
        .iter()
        .map(|size| format!("{}: {:.3} mm", size.what, size.mm))
        .collect();
    items.push(format!(
        "pressure: {:.3} MPa over that outside",
        opinion.pressure_mpa
    ));
    items.extend(opinion.metals.iter().map(|metal| {
        format!(
            "{}: {}, modulus {:.0} MPa ({}), lateral over axial strain {}",
            metal.of, metal.metal, metal.modulus_mpa, metal.because, metal.poisson
        )
    }));
    let head = "Taken: walls at the thin end of their tolerance, other sizes at the wide end:";
    list(out, head, &items);
}
