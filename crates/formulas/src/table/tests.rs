//! Tables read, refuse to contradict themselves, and are not read outside their rows.

use super::*;
use reckoning::quantity::{Stress, Temperature};

fn text(name: &str) -> &'static str {
    let file = FILES.iter().find(|(n, _)| *n == name);
    file.map(|(_, text)| *text).expect(name)
}

fn stress(name: &str, celsius: f64) -> Result<f64, NoValue> {
    let at = Temperature::from_c(celsius);
    let found = find(name).at::<Temperature, Stress>("T", at, "f")?;
    Ok(found.value.mpa())
}

/// Independent calculation: the three tables interpolated by hand at the saturation temperatures
/// of 5 and 10 bar gauge, 158.9 and 184.1 °C, to three figures.
#[test]
fn published_copper_stresses_between_rows() {
    for (name, at_5, at_10) in [
        ("copper-stress-pipe-code", 30.7, 25.7),
        ("copper-stress-ship-register", 31.9, 24.3),
        ("copper-stress-trade-r220", 31.1, 23.1),
    ] {
        for (celsius, wanted) in [(158.9, at_5), (184.1, at_10)] {
            let found = stress(name, celsius).expect("inside the table");
            assert!(
                (found - wanted).abs() < 0.06,
                "{name} at {celsius}: {found}"
            );
        }
    }
}

#[test]
fn rows_themselves_and_ends_are_given_and_nothing_beyond() {
    let name = "copper-stress-ship-register";
    for (celsius, wanted) in [(50.0, 41.2), (125.0, 40.2), (200.0, 18.6)] {
        let found = stress(name, celsius).expect("a row");
        assert!((found - wanted).abs() < 1e-9, "{celsius}: {found}");
    }
    for celsius in [49.9, 200.1, f64::NAN] {
        let told = stress(name, celsius).expect_err("outside").to_string();
        assert!(told.contains("runs from 50.00 °C to 200.0 °C"), "{told}");
    }
    let found = find(name)
        .at::<Temperature, Stress>("T", Temperature::from_c(160.0), "f")
        .expect("inside");
    assert_eq!(found.row, "between 150.0 °C and 175.0 °C");
}

#[test]
fn a_row_altered_by_hand_is_refused_with_its_line() {
    for (name, from, to, told) in [
        (
            "copper-stress-pipe-code",
            "[200, 4900,",
            "[200, 4950,",
            "copper.toml:41: row 200.00 °F breaks the rule `abs(f - f_metric) <= 0.06e6`",
        ),
        (
            "copper-stress-pipe-code",
            "[200, 4900,",
            "[210, 4900,",
            "copper.toml:41: row 210.00 °F breaks the rule `abs(T - T_metric) <= 0.6`",
        ),
        (
            "copper-stress-ship-register",
            "[150, 34.3,",
            "[150, 43.3,",
            "copper.toml:44: column `f` should be not rising, and 43.3 follows 40.2",
        ),
        (
            "copper-stress-ship-register",
            "[150, 34.3,",
            "[105, 34.3,",
            "copper.toml:44: column `T` should be rising, and 105 follows 125",
        ),
        (
            "copper-stress-trade-r220",
            "[150, 34,",
            "[150, 43,",
            "copper.toml:41: column `f` should be falling, and 43 follows 40",
        ),
        (
            "copper-stress-trade-r220",
            "[65, 46,",
            "[65, 64,",
            "copper.toml:39: row 65.000 °C breaks the rule `f < 220e6 / 4`",
        ),
        (
            "copper-stress-trade-r220",
            "[150, 34,",
            "[150, 34, 1,",
            "copper.toml:41: the row has 5 cells, and the table 4 columns",
        ),
        (
            "copper-stress-trade-r220",
            "\"f > 0\"",
            "\"g > 0\"",
            "copper.toml:7: the rule `g > 0` does not read: `g` is not a symbol of this card",
        ),
        (
            "copper-stress-trade-r220",
            "\"linear between rows\"",
            "\"by eye\"",
            "copper.toml:6: `by eye` is not a way of reading between rows; nearest: rows only, linear between rows",
        ),
    ] {
        let altered = text(name).replacen(from, to, 1);
        assert_ne!(altered, text(name), "{from}");
        let faults = read("copper.toml", &altered).expect_err(told);
        let all: Vec<String> = faults.iter().map(ToString::to_string).collect();
        assert!(
            all.contains(&told.to_owned()),
            "wanted {told}; was told {all:#?}"
        );
    }
}

const DRILLS: &str = r#"
name = "Invented drills"
source = "derived"
place = "for this test"
seen = "computed for this file"
interpolation = "rows only"
rules = ["core < drill", "drill < major"]
[[column]]
name = "thread"
kind = "words"
meaning = "name"
[[column]]
name = "core"
kind = "length"
unit = "mm"
meaning = "core"
order = "rising"
[[column]]
name = "drill"
kind = "length"
unit = "in"
meaning = "drill"
[[column]]
name = "major"
kind = "length"
unit = "mm"
meaning = "major"
[values]
rows = [
    ["small", 4.0, "4.2 mm", 5],
    ["large", 5.0, "7/32 in", 6],
]
"#;

#[test]
fn rules_compare_columns_of_different_units() {
    use reckoning::quantity::Length;
    let table = read("drills.toml", DRILLS).expect("reads");
    let row = table.row_of("thread", "large").expect("a row");
    assert!((table.value::<Length>(row, "drill").mm() - 5.55625).abs() < 1e-9);
    assert!(table.row_of("thread", "huge").is_err());
    let between = table.at::<Length, Length>("core", Length::from_mm(4.5), "major");
    assert!(matches!(between, Err(NoValue::BetweenRows { .. })));
    let faults = read("drills.toml", &DRILLS.replace("7/32 in", "3/16 in")).expect_err("refused");
    assert_eq!(
        faults[0].to_string(),
        "drills.toml:31: row large breaks the rule `core < drill`"
    );
}
