//! What must hold for whole plans: monotone strength, the same answer twice, and no panic.

use design::Checked;
use proptest::prelude::*;

use crate::example::{
    HALF, Known, LAUNCH, LAUNCHED, MILL, checked_beside, document, filled, findings, same,
};

/// Rules of the proof whose margin is no primary stress and no buckling, with the reason why more
/// wall may lower it.
const NOT_PRIMARY: &[(&str, &str)] = &[
    (
        "ours.plate-ligament",
        "a thicker plate asks more room for filler between its tubes",
    ),
    (
        "ours.joint-lap",
        "the lap of a joint is asked in walls of the thinner part",
    ),
    (
        "ours.tube-growth",
        "a stiffer shell yields less to tubes that grow: forced by strain, not by load",
    ),
    (
        "trade.stayed-flat",
        "a share of the barrel, whose outside grows with its wall: no stress of the plate",
    ),
    (
        "ibr.between-tubes",
        "the section that expanded tubes ask between them: room, and no stress",
    ),
];

fn is_primary(rule: &str) -> bool {
    let of_strength = proof::SETS.iter().any(|set| {
        let of_set = rule.strip_prefix(set.key);
        of_set.is_some_and(|rest| rest.starts_with('.'))
    });
    of_strength && !NOT_PRIMARY.iter().any(|(id, _)| *id == rule)
}

/// The launch at a fixed metal temperature, with some values set.
fn launch_with(values: &[(&str, String)]) -> Checked {
    let mut document = document(LAUNCH);
    let fixed = [
        ("boiler.design-temperature", "170 °C".to_owned()),
        ("boiler.tubes.count", "7".to_owned()),
    ];
    for (path, value) in values.iter().chain(&fixed) {
        document.set(path, value).expect("a value that reads");
    }
    // The fire is another with another plate or tube, and no margin of strength reads it: it is
    // left unlit, so that what is compared is the proof.
    design::check_by(
        &document.read().content,
        &crate::example::workshop(),
        |asked| asked.unlit(),
    )
}

/// Middles of the tubes.
fn places(checked: &Checked) -> Option<&[plant::layout::At]> {
    let nest = checked.resolved.plant.nest.as_ref()?;
    Some(&nest.tubes)
}

fn lower(before: &Checked, after: &Checked, apart: &[&str]) -> Vec<String> {
    let mut found = Vec::new();
    for b in findings(before).filter(|f| is_primary(f.rule.id) && !apart.contains(&f.rule.id)) {
        let Some(a) = same(b, after) else {
            continue;
        };
        if let (Some(low), Some(high)) = (b.margin, a.margin)
            && high < low * (1.0 - 1e-9)
        {
            found.push(format!(
                "{} of {}: {} / {}",
                b.rule.id, b.place, b.says, a.says
            ));
        }
    }
    found
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 32, ..ProptestConfig::default() })]

    #[test]
    fn less_pressure_never_lowers_a_margin(bar in 2.0_f64..8.0, share in 0.2_f64..1.0) {
        let at = |bar: f64| launch_with(&[("boiler.design-pressure", format!("{bar:.6} bar"))]);
        let found = lower(&at(bar), &at(bar * share), &[]);
        prop_assert!(found.is_empty(), "{}", found.join("\n"));
    }

    /// One part at a time, so that nothing else of the boiler moves with it.
    #[test]
    fn more_wall_never_lowers_a_margin(
        part in 0_usize..4,
        wall in 1.0_f64..3.0,
        more in 0.0_f64..1.5,
    ) {
        let (path, apart) = WALLS[part];
        let at = |mm: f64| launch_with(&[(path, format!("{mm:.6} mm"))]);
        let (thin, thick) = (at(wall), at(wall + more));
        // A wall that grows inwards may leave other places for the tubes: another boiler.
        prop_assume!(places(&thin) == places(&thick));
        let found = lower(&thin, &thick, apart);
        prop_assert!(found.is_empty(), "{path}: {}", found.join("\n"));
    }
}

/// Walls that grow, each with the rules whose margin may fall with it because the shape moves.
const WALLS: [(&str, &[&str]); 4] = [
    ("boiler.barrel.wall", &[]),
    ("boiler.firebox.wall", &[]),
    // A thicker plate bends wider, and its flange of one height laps less.
    ("boiler.tube-plate.upper.thickness", &["ours.joint-shear"]),
    ("boiler.tube-plate.lower.thickness", &["ours.joint-shear"]),
];

#[test]
fn the_same_plan_gives_the_same_answer() {
    let again = crate::example::checked(LAUNCH);
    let text = |checked: &Checked| format!("{:?}{:?}", checked.answers, checked.judged);
    assert!(
        text(&LAUNCHED.checked) == text(&again),
        "two answers to one plan"
    );
}

/// A change to the text of a plan, made without regard to what it means.
#[derive(Clone, Debug)]
enum Edit {
    Value(prop::sample::Index, String),
    LineGone(prop::sample::Index),
    LinesSwapped(prop::sample::Index, prop::sample::Index),
    LineFrom(prop::sample::Index, usize, prop::sample::Index),
}

fn value() -> impl Strategy<Value = String> {
    prop_oneof![
        (0.0_f64..500.0).prop_map(|x| format!("\"{x:.3} mm\"")),
        (0.0_f64..20.0).prop_map(|x| format!("\"{x:.2} bar\"")),
        (0.0_f64..100.0).prop_map(|x| format!("\"{x:.1} %\"")),
        (0.0_f64..400.0).prop_map(|x| format!("\"{x:.1} °C\"")),
        (0_u32..200).prop_map(|x| x.to_string()),
        Just("\"\"".to_owned()),
        Just("\"1/64 in\"".to_owned()),
        Just("\"CW024A\"".to_owned()),
        Just("\"no such thing\"".to_owned()),
    ]
}

fn edit() -> impl Strategy<Value = Edit> {
    let index = any::<prop::sample::Index>;
    prop_oneof![
        4 => (index(), value()).prop_map(|(at, value)| Edit::Value(at, value)),
        2 => index().prop_map(Edit::LineGone),
        1 => (index(), index()).prop_map(|(a, b)| Edit::LinesSwapped(a, b)),
        1 => (index(), 0_usize..3, index()).prop_map(|(a, n, b)| Edit::LineFrom(a, n, b)),
    ]
}

const TEXTS: [&str; 3] = [LAUNCH, MILL, HALF];

fn edited(text: &str, edits: &[Edit]) -> String {
    let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
    for edit in edits {
        match edit {
            Edit::Value(at, value) => {
                let line = at.index(lines.len());
                let line = &mut lines[line];
                if let Some((key, _)) = line.split_once('=') {
                    *line = format!("{key}= {value}");
                }
            }
            Edit::LineGone(at) => {
                lines.remove(at.index(lines.len()));
            }
            Edit::LinesSwapped(one, other) => {
                let (one, other) = (one.index(lines.len()), other.index(lines.len()));
                lines.swap(one, other);
            }
            Edit::LineFrom(at, which, from) => {
                let other: Vec<&str> = TEXTS[*which].lines().collect();
                let at = at.index(lines.len());
                lines[at] = (*from.get(&other)).to_owned();
            }
        }
    }
    lines.join("\n")
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn no_edit_of_a_plan_makes_a_check_panic(
        which in 0_usize..3,
        edits in prop::collection::vec(edit(), 1..6),
    ) {
        let text = edited(TEXTS[which], &edits);
        let checked = checked_beside(&plan::read(&text, "plan.toml").content, &LAUNCHED);
        for f in findings(&checked) {
            prop_assert!(f.margin.is_none_or(f64::is_finite), "{}", f.rule.id);
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 16, ..ProptestConfig::default() })]

    /// As above, one value at a time in a plan that reads whole.
    #[test]
    fn no_value_of_a_field_makes_a_check_panic(
        at in any::<prop::sample::Index>(),
        value in value(),
    ) {
        let fields = filled(LAUNCH);
        let mut document = document(LAUNCH);
        if document.set(at.get(&fields).as_str(), value.trim_matches('"')).is_ok() {
            let known: &Known = &LAUNCHED;
            checked_beside(&document.read().content, known);
        }
    }
}
