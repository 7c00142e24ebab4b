//! Every published check value against the card that gives it.

mod folder;

use formulas::reference::{Evidence, checks};

#[test]
fn every_reference_file_reads() {
    let (_, faults) = folder::read();
    assert!(
        faults.is_empty(),
        "{} faults in reference files:\n{}",
        faults.len(),
        faults.join("\n")
    );
}

#[test]
fn published_values_are_met() {
    let checks = checks(&folder::read().0);
    let missed: Vec<String> = checks
        .iter()
        .filter(|c| !c.is_met())
        .map(ToString::to_string)
        .collect();
    assert!(
        missed.is_empty(),
        "{} of {} check values are missed:\n{}",
        missed.len(),
        checks.len(),
        missed.join("\n")
    );
}

#[test]
fn what_is_not_read_is_said_to_be_so() {
    for file in folder::read().0 {
        let p = &file.provenance;
        let computed =
            p.kind == Evidence::IndependentCalculation || p.kind == Evidence::NonePublished;
        assert!(
            computed || !p.seen.starts_with("computed"),
            "{}: {} cannot be computed",
            file.file,
            p.kind.words()
        );
    }
}
