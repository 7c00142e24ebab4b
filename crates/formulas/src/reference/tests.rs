//! The reader tells every fault with its line, and a check can fail.

use super::*;
use reckoning::quantity::{CELSIUS, MM, MM2, ONE};
use reckoning::{Cite, Law, Limit, Spread, source::DERIVED, symbol};

static OBLONG: Card = Card {
    id: "shape.oblong",
    law: Law::Closed("A = a * b"),
    gives: symbol("A", &MM2, "area"),
    takes: &[symbol("a", &MM, "one side"), symbol("b", &MM, "other side")],
    limits: &[Limit::at_most("a / b", 10.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "sides of a rectangle",
    },
    eval: |v| Ok(v[0] * v[1]),
};

static MIDDLE: Card = Card {
    id: "shape.middle",
    law: Law::Closed("t = u * (1 - x) + v * x"),
    gives: symbol("t", &CELSIUS, "temperature between"),
    takes: &[
        symbol("u", &CELSIUS, "one end"),
        symbol("v", &CELSIUS, "other end"),
        symbol("x", &ONE, "share of the way"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "a straight line",
    },
    eval: |v| Ok(v[0] * (1.0 - v[2]) + v[1] * v[2]),
};

fn catalogue() -> Catalogue {
    Catalogue {
        cards: vec![&OBLONG, &MIDDLE],
        sources: vec![&DERIVED],
    }
}

const GOOD: &str = r#"
[provenance]
family  = "shape"
source  = "derived"
place   = "by hand"
kind    = "independent calculation"
seen    = "2026-11-25"
printed = "2 figures"
[tolerance]
relative = 5e-3
because  = "half a unit of the last figure"
[[case]]
given = { a = "1 in", b = "10 mm" }
gives = { A = "254 mm2" }
[[case]]
given = { u = "10 °C", v = "50 °F", x = 0.5 }
gives = { t = "283.2 K" }
tolerance = { absolute = "0.1 °C", because = "last figure" }
[[case]]
card = "shape.oblong"
given = { a = "20 mm", b = "1 mm" }
gives = { A = "21 mm2" }
"#;

#[test]
fn a_miss_and_a_broken_limit_are_reported() {
    let file = read("good.toml", GOOD, &catalogue()).expect("reads");
    let checks = checks(&[file]);
    assert_eq!(checks.len(), 3);
    assert!(checks[0].is_met(), "{}", checks[0]);
    assert!(checks[1].is_met(), "{}", checks[1]);
    assert!((checks[1].tolerance - 0.1).abs() < 1e-12);
    assert!(!checks[2].is_met());
    let told = checks[2].to_string();
    assert!(
        told.starts_with("good.toml:19 shape.oblong a=\"20 mm\" b=\"1 mm\""),
        "{told}"
    );
    assert!(
        told.contains("wanted A = 21.0000000 mm², found 20.0000000: 1.00 off, 0.105 allowed"),
        "{told}"
    );
    assert!(
        told.contains("outside a limit: shape.oblong: a / b is 20.00"),
        "{told}"
    );
}

#[test]
fn an_expected_breach_must_happen() {
    let text = GOOD.replace(
        "gives = { A = \"254 mm2\" }",
        "gives = { A = \"254 mm2\" }\nbreaches = [\"a / b\"]",
    );
    let file = read("good.toml", &text, &catalogue()).expect("reads");
    assert_eq!(checks(&[file])[0].not_broken, ["a / b"]);
}

#[test]
fn each_fault_is_told_with_its_line() {
    for (change, into, line, told) in [
        (
            "family  = \"shape\"",
            "family = \"form\"",
            3,
            "`form` is not a family of registered cards; nearest: shape",
        ),
        (
            "source  = \"derived\"",
            "source = \"derive\"",
            4,
            "`derive` is not a known source; nearest: derived",
        ),
        ("place   = \"by hand\"", "", 2, "`place` is missing"),
        ("printed =", "prnted =", 8, "`prnted` has no meaning here"),
        (
            "\"independent calculation\"",
            "\"hearsay\"",
            6,
            "`hearsay` is not a kind of evidence",
        ),
        (
            "\"2026-11-25\"",
            "\"yes\"",
            7,
            "`yes` is not a way of seeing a place",
        ),
        (
            "relative = 5e-3",
            "relative = 0",
            9,
            "a tolerance is either",
        ),
        (
            "because  = \"half",
            "becaus  = \"half",
            11,
            "`becaus` has no meaning here",
        ),
        (
            "a = \"1 in\"",
            "a = \"1 psi\"",
            13,
            "psi is a unit of pressure",
        ),
        (
            "a = \"1 in\"",
            "a = 20.5",
            13,
            "should be a quantity in quotation marks",
        ),
        (
            "a = \"1 in\"",
            "q = \"1 in\"",
            14,
            "no registered card of `shape` gives `A` from what is given",
        ),
        (
            "b = \"10 mm\"",
            "b = \"10 mm\", c = \"1 mm\"",
            13,
            "card shape.oblong does not take `c`; it takes a, b",
        ),
        (
            "A = \"254 mm2\"",
            "A = \"0 mm2\"",
            14,
            "a relative tolerance says nothing",
        ),
        (
            "card = \"shape.oblong\"",
            "card = \"shape.oblog\"",
            20,
            "`shape.oblog` is not a registered card; nearest: shape.oblong",
        ),
        ("[tolerance]", "[tolerance", 9, "not TOML"),
    ] {
        let text = GOOD.replacen(change, into, 1);
        assert_ne!(text, GOOD, "{change}");
        let faults = read("bad.toml", &text, &catalogue()).expect_err(told);
        let all: Vec<String> = faults.iter().map(ToString::to_string).collect();
        let start = format!("bad.toml:{line}: ");
        assert!(
            all.iter()
                .any(|f| f.starts_with(&start) && f.contains(told)),
            "wanted line {line}, {told}; was told {all:#?}"
        );
    }
}
