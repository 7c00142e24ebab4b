//! What is shown reads back, what is typed survives, and no text makes a reader fall over.

use proptest::prelude::*;
use reckoning::law;
use reckoning::quantity::{Kind, Length, UNITS, parse, show};

/// Pieces of which texts that nearly read are made.
const PIECES: &[&str] = &[
    "1",
    "7",
    "16",
    "64",
    "0",
    "3.5",
    ".",
    ",",
    "/",
    "⁄",
    "-",
    "−",
    "+",
    " ",
    "  ",
    "½",
    "¾",
    "e",
    "E9",
    "in",
    "\"",
    "”",
    "'",
    "ft",
    "mm",
    "µm",
    "m",
    "swg",
    "bwg",
    "gauge",
    "No",
    "#",
    "letter",
    "F",
    "psi",
    "psia",
    "bar",
    "bar g",
    "absolute",
    " a",
    "°",
    "°F",
    "C",
    "kg/h",
    "h",
    "min",
    "lb",
    "oz",
    "%",
    "\u{a0}",
    "\u{301}",
    "💧",
    "W/(m² K)",
    "1/K",
    "drill",
    "x",
    "\n",
];

/// Pieces of which laws that nearly read are made.
const LAW_PIECES: &[&str] = &[
    "a", "b_1", "pi", "1", "2.5e-3", "1e", ".", "(", ")", "+", "-", "*", "/", "^", "<", "<=", ">",
    "=", "==", ";", ",", "sqrt(", "min(", "cases(", "é", " ", "\u{2212}",
];

fn every_kind(text: &str) {
    for unit in UNITS {
        if let Err(e) = parse::read_kind(unit.kind, text) {
            let length = text.chars().count();
            assert!((1..=length + 1).contains(&e.column), "{e} at {}", e.column);
            assert!(!e.to_string().is_empty());
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn identity_show_then_read(place in 0..UNITS.len(), digits in 1.0..10.0_f64,
                               power in -9..10_i32, minus: bool, figures in 1..12_usize) {
        let unit = UNITS[place];
        let value = if minus { -digits } else { digits } * 10_f64.powi(power);
        let text = show::quantity(unit.to_si(value), unit, figures);
        let number: f64 = text.split(' ').next().unwrap_or("").parse().expect("a number");
        let read = parse::read_kind(unit.kind, &text).expect(&text);
        let wanted = unit.to_si(number);
        let scale = wanted.abs().max(unit.to_si(0.0).abs());
        prop_assert!((read - wanted).abs() <= 1e-12 * scale, "{text}: {read} for {wanted}");
    }

    #[test]
    fn identity_every_unit_reads_back(value in 0.001..1000.0_f64) {
        for unit in UNITS {
            for spelling in std::iter::once(&unit.symbol).chain(unit.also) {
                let text = format!("{value} {spelling}");
                let read = parse::read_kind(unit.kind, &text).expect(&text);
                let wanted = unit.to_si(value);
                prop_assert!((read - wanted).abs() <= 1e-12 * wanted.abs(), "{text}: {read}");
            }
        }
    }

    #[test]
    fn identity_fractions_read_back(count in -4096_i32..4096) {
        let length = Length::from_inch(f64::from(count) / 64.0);
        let near = show::nearest_64th(length);
        let typed = parse::read::<Length>(&near.to_string()).expect("a fraction");
        prop_assert_eq!(&typed.text, &near.to_string());
        prop_assert!((typed.value.inch() - length.inch()).abs() < 1e-12);
        prop_assert!(near.error.inch().abs() < 1e-12);
    }

    #[test]
    fn identity_sixty_fourths_are_within_half_of_one(mm in -5000.0..5000.0_f64) {
        let near = show::nearest_64th(Length::from_mm(mm));
        let read = parse::read::<Length>(&near.to_string()).expect("a fraction").value;
        prop_assert!((read.mm() - near.error.mm() - mm).abs() < 1e-9);
        prop_assert!(near.error.inch().abs() <= 1.0 / 128.0 + 1e-12);
    }

    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,24}") {
        every_kind(&text);
        let _: Result<_, _> = law::run(&text, &|_| Some(1.0));
    }

    #[test]
    fn any_text_that_nearly_reads_is_read_or_refused(
        pieces in prop::collection::vec(prop::sample::select(PIECES), 0..9)
    ) {
        every_kind(&pieces.concat());
    }

    #[test]
    fn any_law_that_nearly_reads_is_read_or_refused(
        pieces in prop::collection::vec(prop::sample::select(LAW_PIECES), 0..14)
    ) {
        let _: Result<_, _> = law::run(&pieces.concat(), &|_| Some(1.0));
    }
}

#[test]
fn the_typed_text_survives() {
    for text in ["1 7/16 in", " 36.50 mm", "5/32", "16 swg", "letter F"] {
        assert_eq!(parse::read::<Length>(text).expect(text).text, text);
    }
    assert!(parse::read_kind(Kind::Length, "letter É").is_err());
}

#[test]
fn deep_and_long_laws_are_read_or_refused() {
    for piece in ["(", "-", "1^", "1+", "min(", "1;", "a=", "cases(1,"] {
        for count in [100, 1900 / piece.len(), 1_000_000] {
            let text = piece.repeat(count) + "1";
            let _: Result<_, _> = law::run(&text, &|_| Some(1.0));
        }
    }
}
