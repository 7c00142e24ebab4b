//! Properties of reading, writing and editing, on plans made from the register of fields itself.

use plan::{ANY_ID, Document, FieldKind, File, Plan, Registered, What, Workshop, register};
use plan::{difference, read_file, write};
use proptest::prelude::*;

/// A file with one row in every list and nothing else.
fn bare<F: File>() -> String {
    let rows = register::<F>().into_iter().filter(|r| r.what == What::List);
    rows.fold("format = 1\n".to_owned(), |text, row| {
        let list = row.path.replace(&format!(".{ANY_ID}"), "");
        format!("{text}\n[[{list}]]\nid = \"x\"\n")
    })
}

/// Every field but `format` and the ids, with the path that it has in [`bare`].
fn settable<F: File>() -> Vec<(String, FieldKind)> {
    let field = |r: Registered| match r.what {
        What::Field(kind) if kind != FieldKind::Id && r.path != "format" => {
            Some((r.path.replace(ANY_ID, "x"), kind))
        }
        _ => None,
    };
    register::<F>().into_iter().filter_map(field).collect()
}

/// Values that a field must take.
fn good(kind: &FieldKind) -> Vec<String> {
    match kind {
        FieldKind::Number { limits, .. } | FieldKind::Size { limits } => {
            vec![limits.low.to_owned(), limits.high.to_owned()]
        }
        FieldKind::Numbers { limits, .. } => {
            vec![
                format!("[\"{}\", '{}']", limits.low, limits.high),
                "[]".to_owned(),
            ]
        }
        FieldKind::Count { low, high } => vec![low.to_string(), high.to_string()],
        FieldKind::Counts { low, high } => vec![format!("[{low}, {high}]")],
        FieldKind::Choice { names, .. } => names.iter().map(|n| n.name.to_owned()).collect(),
        FieldKind::Text => vec![
            "M10 x 1, fine".to_owned(),
            "it's \"quoted\" \\ £".to_owned(),
        ],
        FieldKind::Texts => vec!["[\"1/4 x 40\", \"it's\"]".to_owned()],
        FieldKind::Id => vec!["left-1".to_owned()],
    }
}

/// Values that a field must refuse, whatever it is.
fn bad(kind: &FieldKind) -> Vec<String> {
    match kind {
        FieldKind::Number { .. } | FieldKind::Size { .. } => {
            vec![
                "-1e12".into(),
                "one".into(),
                "3 furlong".into(),
                "1e12 m".into(),
            ]
        }
        FieldKind::Numbers { .. } => vec!["3 mm".into(), "[3]".into(), "[\"3 furlong\"]".into()],
        FieldKind::Count { high, .. } => vec![(high + 1).to_string(), "-1".into(), "two".into()],
        FieldKind::Counts { high, .. } => vec![format!("[{}]", high + 1), "[\"1\"]".into()],
        FieldKind::Choice { not_yet, .. } => {
            let not_yet = not_yet.iter().map(|n| n.name.to_owned());
            not_yet.chain(["no such name".to_owned()]).collect()
        }
        FieldKind::Text => Vec::new(),
        FieldKind::Texts => vec!["[1]".into(), "word".into()],
        FieldKind::Id => vec!["Left 1".into(), "1".into(), "a.b".into(), "a--b".into()],
    }
}

fn every_field_takes_its_limits_and_refuses_the_rest<F: File>() {
    let base: Document<F> = Document::open(&bare::<F>(), F::NAME).expect("a bare file");
    assert_eq!(base.read().problems, []);
    for (path, kind) in settable::<F>() {
        for value in good(&kind) {
            let mut document = base.clone();
            let set = document.set(&path, &value);
            assert!(set.is_ok(), "{path} = {value}: {set:?}");
            document
                .unset(&path)
                .expect("what was set can be taken out");
        }
        for value in bad(&kind) {
            let mut document = base.clone();
            let problem = document.set(&path, &value).expect_err(&path);
            assert_eq!(problem.path, path, "{value}");
            assert_eq!(document.text(), base.text());
        }
    }
}

#[test]
fn every_field_of_a_plan_takes_its_limits_and_refuses_the_rest() {
    every_field_takes_its_limits_and_refuses_the_rest::<Plan>();
}

#[test]
fn every_field_of_a_workshop_takes_its_limits_and_refuses_the_rest() {
    every_field_takes_its_limits_and_refuses_the_rest::<Workshop>();
}

#[test]
fn no_field_stands_twice_and_each_says_what_it_means() {
    for registered in [register::<Plan>(), register::<Workshop>()] {
        let mut paths = std::collections::HashSet::new();
        for entry in registered {
            assert!(paths.insert(entry.path.clone()), "{} twice", entry.path);
            assert!(entry.meaning.len() > 2, "{} says nothing", entry.path);
            let plain =
                |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || "-.<>".contains(c);
            assert!(entry.path.chars().all(plain), "{}", entry.path);
        }
    }
}

/// A plan with some of its fields given, as text.
fn some_plan() -> impl Strategy<Value = String> {
    let fields = settable::<Plan>();
    let picks = prop::collection::vec((0..fields.len(), any::<prop::sample::Index>()), 0..25);
    picks.prop_map(move |picks| {
        let mut document: Document<Plan> =
            Document::open(&bare::<Plan>(), "plan.toml").expect("a bare plan");
        for (field, value) in picks {
            let (path, kind) = &fields[field];
            let values = good(kind);
            document
                .set(path, value.get(&values).as_str())
                .expect("a good value");
        }
        document.text().to_owned()
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 32, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_is_written_reads_back_the_same(text in some_plan()) {
        let plan = plan::read(&text, "plan.toml").content;
        let again = plan::read(&write(&plan), "plan.toml");
        prop_assert_eq!(again.problems, vec![]);
        prop_assert!(again.content == plan);
        prop_assert!(difference(&plan, &again.content).is_empty());
        prop_assert_eq!(write(&again.content), write(&plan));
    }

    #[test]
    fn editing_a_field_that_stands_changes_one_line(
        text in some_plan(),
        field in any::<prop::sample::Index>(),
        value in any::<prop::sample::Index>(),
    ) {
        let mut document: Document<Plan> = Document::open(&text, "plan.toml").expect("a plan");
        let fields = settable::<Plan>();
        let (path, kind) = field.get(&fields);
        document.set(path, &good(kind)[0]).expect("a good value");
        let before = document.text().to_owned();
        let values = good(kind);
        document.set(path, value.get(&values).as_str()).expect("a good value");
        let after = document.text();
        prop_assert_eq!(before.lines().count(), after.lines().count());
        let changed = before.lines().zip(after.lines()).filter(|(a, b)| a != b).count();
        prop_assert!(changed <= 1);
    }

    #[test]
    fn a_plan_with_letters_changed_never_panics(
        text in some_plan(),
        cuts in prop::collection::vec((any::<prop::sample::Index>(), ".{0,3}", 0_usize..4), 1..6),
    ) {
        let mut letters: Vec<char> = text.chars().collect();
        for (at, put, taken) in cuts {
            let at = at.index(letters.len() + 1);
            let end = (at + taken).min(letters.len());
            letters.splice(at..end, put.chars());
        }
        let text: String = letters.into_iter().collect();
        let read = plan::read(&text, "plan.toml");
        for problem in &read.problems {
            prop_assert!(!problem.frame(&text).is_empty());
        }
        let written = write(&read.content);
        let again = plan::read(&written, "plan.toml").content;
        prop_assert!(again == read.content, "{written}");
        if let Ok(mut document) = Document::<Plan>::open(&text, "plan.toml") {
            let _refused_or_not = document.set("boiler.barrel.wall.made", "3 mm");
            let _refused_or_not = document.unset("boiler.stay.x.diameter");
        }
    }

    #[test]
    fn any_words_are_kept_letter_for_letter(words in any::<String>()) {
        let mut document: Document<Plan> =
            Document::open(&bare::<Plan>(), "plan.toml").expect("a bare plan");
        document.set("name", "Before").expect("a name");
        document.set("name", &words).expect("any words");
        let name = document.read().content.name;
        let expected = (!words.trim().is_empty()).then_some(&words);
        prop_assert_eq!(name.get(), expected);
    }

    #[test]
    fn any_text_at_all_is_read_without_panic(text in ".{0,200}") {
        let read = plan::read(&text, "plan.toml");
        prop_assert!(read.problems.iter().all(|p| !p.frame(&text).is_empty()));
        let _workshop = plan::read_workshop(&text, "workshop.toml");
    }
}

#[test]
fn a_file_of_nothing_has_paths_but_no_values() {
    let blank = Plan::blank();
    assert_eq!(blank.boiler.barrel.wall.path(), "boiler.barrel.wall");
    assert!(blank.boiler.barrel.wall.is_absent());
    assert_eq!(write(&blank), "");
    let read = read_file::<Plan>("", "plan.toml");
    assert!(read.content == blank);
}
