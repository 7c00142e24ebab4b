//! Edits change the line they speak of and leave the maker's comments, order and quoting.

use plan::{ChangeKind, Document, Fault, Plan, difference};

const TEXT: &str = include_str!("plan.toml");

fn open() -> Document<Plan> {
    Document::open(TEXT, "plan.toml").expect("a plan")
}

/// The lines of `after` that are not in `TEXT` at the same place, both of the same length.
fn changed(after: &str) -> Vec<(String, String)> {
    assert_eq!(TEXT.lines().count(), after.lines().count(), "{after}");
    TEXT.lines()
        .zip(after.lines())
        .filter(|(was, now)| was != now)
        .map(|(was, now)| (was.to_owned(), now.to_owned()))
        .collect()
}

/// Makes one edit and gives the one line that it changed, as it is now.
fn edited(path: &str, value: &str) -> String {
    let mut document = open();
    document.set(path, value).expect("an edit");
    let mut lines = changed(document.text());
    assert_eq!(lines.len(), 1, "{lines:?}");
    lines.remove(0).1
}

#[test]
fn an_edit_changes_one_line_and_keeps_its_comment_and_quotes() {
    assert_eq!(
        edited("duty.pressure", "60 psi"),
        "pressure = \"60 psi\"   # as the gauge shows it"
    );
    assert_eq!(edited("engine.stroke", "1 in"), "stroke = '1 in'");
    assert_eq!(edited("engine.cut-off", "0.8"), "cut-off = 0.8");
    assert_eq!(edited("engine.cut-off", "80 %"), "cut-off = \"80 %\"");
    assert_eq!(edited("boiler.tubes.count", "14"), "count = 14");
    assert_eq!(edited("boiler.stay.s1.angle", "90°"), "angle = \"90°\"");
    assert_eq!(
        edited("fitting.bush.coaxial.true.of", "[\"head\"]"),
        "of = [\"head\"]"
    );
}

#[test]
fn the_parts_of_a_size_are_set_one_by_one() {
    let rest = " tolerance = \"10 %\", made = \"2.46 mm\" } # drawn tube";
    assert_eq!(
        edited("boiler.barrel.wall", "3 mm"),
        format!("wall = {{ drawn = \"3 mm\",{rest}")
    );
    assert_eq!(
        edited("boiler.barrel.wall.made", "2.5 mm"),
        "wall = { drawn = \"2.5 mm\", tolerance = \"10 %\", made = \"2.5 mm\" } # drawn tube"
    );
    assert_eq!(
        edited("boiler.firebox.wall.made", "2.4 mm"),
        "wall = { drawn = \"2.5 mm\", made = \"2.4 mm\" }"
    );
    assert_eq!(
        edited("boiler.firebox.ovality.made", "0.3 mm"),
        "ovality = { drawn = \"0.5 mm\", made = \"0.3 mm\" }"
    );
}

#[test]
fn a_new_value_goes_to_the_end_of_its_table() {
    let mut document = open();
    document.set("duty.steam", "1.5 kg/h").expect("an edit");
    assert!(
        document
            .text()
            .contains("run = \"20 min\"\nsteam = \"1.5 kg/h\"\n\n[engine]")
    );
    document.set("chimney.choke", "12 mm").expect("an edit");
    assert!(document.text().contains("\n[chimney]\nchoke = \"12 mm\"\n"));
    document
        .set("boiler.lagging.thickness", "6 mm")
        .expect("an edit");
    assert!(
        document
            .text()
            .contains("\n[boiler.lagging]\nthickness = \"6 mm\"\n")
    );
    let kept = TEXT.lines().filter(|l| l.contains('#'));
    for line in kept {
        assert!(document.text().contains(line), "lost: {line}");
    }
    let read = document.read();
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    assert!(read.content.chimney.choke.get().is_some());
}

#[test]
fn a_value_taken_out_leaves_the_comment_above_it() {
    let mut document = open();
    document.unset("boiler.barrel.outside").expect("an edit");
    let expected = TEXT.replace("outside = \"4 in\"\n", "");
    assert_eq!(document.text(), expected);
    document
        .unset("boiler.barrel.outside")
        .expect("nothing to take");
    assert_eq!(document.text(), expected);
    document.unset("boiler.barrel.wall.made").expect("an edit");
    assert!(
        document
            .text()
            .contains("wall = { drawn = \"2.5 mm\", tolerance = \"10 %\" } # drawn tube")
    );
}

#[test]
fn an_emptied_value_leaves_its_mark() {
    let mut document = open();
    document.set("boiler.firebox.wall", "").expect("an edit");
    let content = document.read().content;
    let wall = &content.boiler.firebox.wall;
    assert!(wall.get().is_none() && wall.is_emptied() && !wall.is_absent());
    assert!(content.boiler.foundation_ring.depth.is_absent());
    let changes = difference(&open().read().content, &content);
    assert_eq!(changes.len(), 1);
    assert_eq!(changes[0].path, "boiler.firebox.wall");
    assert!(matches!(changes[0].kind, ChangeKind::Emptied { .. }));
}

#[test]
fn a_bad_value_is_refused_with_its_problem_and_changes_nothing() {
    for (path, value, says) in [
        ("boiler.barrel.wall", "3", "did you mean `3 mm`?"),
        ("boiler.barrel.wall.made", "3 m", "outside its limits"),
        ("engine.acting", "both", "wanted one of `single`, `double`"),
        ("engine.cylinders", "two", "a whole number"),
        ("boiler.stay.s2.id", "s1", "stands already on line"),
        (
            "fitting.bush.coaxial.true.of",
            "head",
            "a list between square brackets",
        ),
        (
            "fitting.bush.coaxial.true.of",
            "[\"a\"]\nx = 1",
            "a list between square brackets",
        ),
        ("form", "locomotive", "not worked yet"),
    ] {
        let mut document = open();
        let problem = document.set(path, value).expect_err(path);
        assert!(problem.to_string().contains(says), "{path}: {problem}");
        assert_eq!(document.text(), TEXT);
    }
    let mut document = open();
    let problem = document
        .unset("boiler.stay.s1.id")
        .expect_err("a row needs its id");
    assert_eq!(problem.fault, Fault::MissingId);
}

#[test]
fn a_path_that_names_no_field_is_told_the_nearest() {
    let problem = open()
        .set("boiler.barrel.wal", "3 mm")
        .expect_err("no field");
    assert!(
        problem
            .to_string()
            .ends_with("did you mean `boiler.barrel.wall`?")
    );
    assert!(open().set("boiler", "3 mm").is_err());
    assert!(open().set("boiler.stay.s9.diameter", "3 mm").is_err());
    assert!(open().unset("").is_err());
}

#[test]
fn problems_that_stood_before_hinder_no_edit() {
    let text = TEXT.replace("run = \"20 min\"", "run = 20");
    let mut document: Document<Plan> = Document::open(&text, "plan.toml").expect("a plan");
    document.set("engine.speed", "500 rpm").expect("an edit");
    document
        .set("duty.run", "25 min")
        .expect("an edit that cures");
    assert!(document.read().problems.is_empty());
}

#[test]
fn a_text_that_is_not_toml_or_of_a_later_format_is_not_opened() {
    assert!(Document::<Plan>::open("a = ", "plan.toml").is_err());
    assert!(Document::<Plan>::open("format = 9", "plan.toml").is_err());
}

#[test]
fn a_row_taken_away_is_another_plant_and_is_told_as_such() {
    let before = open().read().content;
    let cut = TEXT.replace("[[boiler.stay]]\nid = \"s2\"\ndiameter = \"4 mm\"\n", "");
    let now = plan::read(&cut, "plan.toml").content;
    let changes = difference(&before, &now);
    assert_eq!(changes[0].path, "boiler.stay.s2");
    assert_eq!(changes[0].kind, ChangeKind::RowTaken);
    let back = difference(&now, &before);
    assert_eq!(back[0].kind, ChangeKind::RowAdded);
    assert!(difference(&now, &now).is_empty());
}

/// A measurement that is taken away leaves its mark inside the size.
#[test]
fn an_emptied_part_of_a_size_is_told_from_an_absent_one() {
    let mut document = open();
    document
        .set("boiler.barrel.wall.made", "")
        .expect("an edit");
    let content = document.read().content;
    let wall = &content.boiler.barrel.wall;
    assert!(wall.is_part_emptied("made") && !wall.is_part_emptied("tolerance"));
    assert!(wall.get().is_some_and(|size| size.made.is_none()));
}
