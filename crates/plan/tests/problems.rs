//! Every fault of a plan is found where it stands, and all of them in one pass.

use plan::Fault;
use reckoning::quantity::Kind;

const GOOD: &str = include_str!("plan.toml");

/// Reads a text that begins with its format and has exactly one problem.
fn only(body: &str) -> plan::Problem {
    let text = format!("format = 1\n{body}");
    let mut problems = plan::read(&text, "plan.toml").problems;
    assert_eq!(problems.len(), 1, "{problems:#?}");
    problems.remove(0)
}

/// The place and path of the one problem, and its message without them.
fn told(body: &str) -> ((usize, usize, usize), String, String) {
    let problem = only(body);
    let place = (
        problem.place.line,
        problem.place.column,
        problem.place.width,
    );
    (place, problem.path.clone(), problem.fault.to_string())
}

#[test]
fn a_bare_number_for_a_length_is_refused_with_its_likely_unit() {
    let (place, path, says) = told("[boiler.barrel]\nwall = 3 # mm of course\n");
    assert_eq!(place, (3, 8, 1));
    assert_eq!(path, "boiler.barrel.wall");
    assert_eq!(
        says,
        "read `3`, a number without a unit; wanted a length with its unit; did you mean `3 mm`?"
    );
    let (place, _, says) = told("[duty]\npressure = \"80\"\n");
    assert_eq!(place, (3, 12, 4));
    assert!(says.ends_with("did you mean `80 bar`?"), "{says}");
}

#[test]
fn the_message_of_a_problem_is_one_plain_line() {
    let problem = only("[boiler.barrel]\nwall = 3\n");
    assert_eq!(
        problem.to_string(),
        "plan.toml:3:8: boiler.barrel.wall: read `3`, a number without a unit; wanted a length \
         with its unit; did you mean `3 mm`?"
    );
}

#[test]
fn a_misread_quantity_is_marked_where_the_misreading_begins() {
    let body = "[boiler.barrel]\nwall = \"2.5 psi\"\n";
    let (place, path, _) = told(body);
    assert_eq!((place, path.as_str()), ((3, 13, 3), "boiler.barrel.wall"));
    let problem = only(body);
    assert!(matches!(problem.fault, Fault::Misread(_)));
    let frame = problem.frame(&format!("format = 1\n{body}"));
    assert!(
        frame.ends_with("  |\n3 | wall = \"2.5 psi\"\n  |             ^^^\n"),
        "{frame}"
    );
}

#[test]
fn a_misread_quantity_behind_an_escape_is_marked_as_a_whole() {
    let (place, _, _) = told("[boiler.barrel]\nwall = \"2\\u002E5 psi\"\n");
    assert_eq!(place, (3, 8, 14));
}

#[test]
fn a_value_outside_its_limits_is_told_them() {
    let (place, path, says) = told("[boiler.barrel]\nwall = \"3 m\"\n");
    assert_eq!((place, path.as_str()), ((3, 8, 5), "boiler.barrel.wall"));
    assert_eq!(
        says,
        "read `3 m`, outside its limits; wanted 0.3 mm to 25 mm"
    );
    let (place, _, says) = told("[boiler.tubes]\ncount = 0\n");
    assert_eq!(place, (3, 9, 1));
    assert_eq!(says, "read `0`, outside its limits; wanted 1 to 400");
}

#[test]
fn an_unknown_key_is_told_the_nearest_one() {
    let (place, path, says) = told("[boiler.barrel]\noutsid = \"4 in\"\n");
    assert_eq!((place, path.as_str()), ((3, 1, 6), "boiler.barrel.outsid"));
    assert!(says.starts_with("read `outsid`, which is no field"));
    assert!(says.ends_with("did you mean `outside`?"), "{says}");
    let (place, path, says) = told("[boilr]\nmetal = \"CW024A\"\n");
    assert_eq!((place, path.as_str()), ((2, 2, 5), "boilr"));
    assert!(says.ends_with("did you mean `boiler`?"), "{says}");
}

#[test]
fn an_unknown_part_of_a_size_is_told_the_nearest_one() {
    let (_, path, says) = told("[boiler.barrel]\nwall = { drawn = \"3 mm\", mad = \"3 mm\" }\n");
    assert_eq!(path, "boiler.barrel.wall");
    assert!(says.ends_with("did you mean `made`?"), "{says}");
}

#[test]
fn a_value_of_another_sort_is_told_what_is_wanted() {
    for (body, place, path, wanted) in [
        (
            "[engine]\ncylinders = \"1\"\n",
            (3, 13, 3),
            "engine.cylinders",
            "a whole number without quotes",
        ),
        (
            "[engine]\ncylinders = 1.5\n",
            (3, 13, 3),
            "engine.cylinders",
            "a whole number",
        ),
        (
            "[engine]\nbore = true\n",
            (3, 8, 4),
            "engine.bore",
            "a quantity between quotes",
        ),
        (
            "[engine]\nspeed = [\"600 rpm\"]\n",
            (3, 9, 11),
            "engine.speed",
            "a quantity between quotes",
        ),
        (
            "[engine]\nacting = 2\n",
            (3, 10, 1),
            "engine.acting",
            "a text between quotes",
        ),
        (
            "[boiler]\nmetal = 1979-05-27\n",
            (3, 9, 10),
            "boiler.metal",
            "a text between quotes",
        ),
        (
            "[[fitting]]\nid = \"f\"\n[[fitting.coaxial]]\nid = \"c\"\nof = \"head\"\n",
            (6, 6, 6),
            "fitting.f.coaxial.c.of",
            "a list between square brackets",
        ),
        ("engine = 3\n", (2, 10, 1), "engine", "a table"),
        (
            "[boiler]\nstay = \"one\"\n",
            (3, 8, 5),
            "boiler.stay",
            "a list of tables",
        ),
    ] {
        let (found, at, says) = told(body);
        assert_eq!((found, at.as_str()), (place, path), "{body}");
        assert!(says.contains(&format!("wanted {wanted}")), "{says}");
    }
}

#[test]
fn a_name_that_is_not_among_those_allowed_is_told_the_nearest() {
    let (place, path, says) = told("[engine]\nacting = \"duoble\"\n");
    assert_eq!((place, path.as_str()), ((3, 10, 8), "engine.acting"));
    assert_eq!(
        says,
        "read `duoble`; wanted one of `single`, `double`; did you mean `double`?"
    );
}

#[test]
fn forms_and_feeds_that_nothing_works_with_are_refused_plainly() {
    let (place, path, says) = told("form = \"locomotive\"\n");
    assert_eq!((place, path.as_str()), ((2, 8, 12), "form"));
    assert_eq!(
        says,
        "read `locomotive`, which is not worked yet; wanted one of \
         `vertical, wet firebox, fire tubes`, `horizontal, centre flue, cross tubes`"
    );
    let (_, path, says) = told("[[feed.means]]\nid = \"first\"\nkind = \"injector\"\n");
    assert_eq!(path, "feed.means.first.kind");
    assert!(says.contains("not worked yet"), "{says}");
}

#[test]
fn ids_are_asked_for_checked_and_kept_apart() {
    let (place, path, _) = told("[[boiler.stay]]\ndiameter = \"4 mm\"\n");
    assert_eq!((place.0, path.as_str()), (2, "boiler.stay.1"));
    let (place, path, says) = told("[[boiler.stay]]\nid = \"Stay 1\"\n");
    assert_eq!((place, path.as_str()), ((3, 6, 8), "boiler.stay.1.id"));
    assert!(says.contains("which is no id"));
    let twice = "[[boiler.stay]]\nid = \"s\"\n[[boiler.stay]]\nid = \"s\"\n";
    let (place, path, says) = told(twice);
    assert_eq!((place, path.as_str()), ((5, 6, 3), "boiler.stay.2.id"));
    assert!(says.contains("stands already on line 3"), "{says}");
}

#[test]
fn a_size_needs_what_is_drawn_and_a_tolerance_both_its_ends() {
    let (place, _, says) = told("[boiler.barrel]\nwall = { made = \"2.4 mm\" }\n");
    assert_eq!(place, (3, 8, 19));
    assert!(says.contains("a value without `drawn`"));
    let half = "[boiler.barrel]\nwall = { drawn = \"3 mm\", tolerance = { upper = \"0.1 mm\" } }\n";
    assert!(told(half).2.contains("a value without `lower`"));
    let crossed = "[boiler.barrel]\nwall = { drawn = \"3 mm\", tolerance = \
                   { lower = \"0.1 mm\", upper = \"0.2 mm\" } }\n";
    let (place, _, says) = told(crossed);
    assert_eq!(place, (3, 48, 8));
    assert!(says.contains("a lower deviation of zero or less"), "{says}");
}

#[test]
fn a_later_format_is_refused_whole_and_a_missing_one_is_asked_for() {
    let read = plan::read("format = 2\nwhatever = true\n", "plan.toml");
    assert_eq!(read.problems.len(), 1);
    assert_eq!(
        read.problems[0].to_string(),
        "plan.toml:1:10: format: read format 2, written by a later program; wanted format 1 or \
         older; open it with the program that wrote it"
    );
    let read = plan::read("name = \"no format\"\n", "plan.toml");
    assert_eq!(read.problems[0].fault, Fault::FormatMissing);
    assert_eq!(
        read.content.name.get().map(String::as_str),
        Some("no format")
    );
}

#[test]
fn a_text_that_is_not_toml_is_one_located_problem() {
    let read = plan::read("format = 1\n[boiler]\nmetal = CW024A\n", "plan.toml");
    assert_eq!(read.problems.len(), 1);
    assert!(matches!(read.problems[0].fault, Fault::Syntax { .. }));
    assert_eq!(read.problems[0].place.line, 3);
    assert_eq!(read.content.boiler.metal.path(), "boiler.metal");
}

#[test]
fn all_faults_are_told_in_one_pass_in_the_order_of_the_text_and_the_rest_is_read() {
    let text = GOOD
        .replace("run = \"20 min\"", "run = 20")
        .replace("bore = \"3/4 in\"", "boar = \"3/4 in\"")
        .replace("seam = \"seamless\"", "seam = \"seemless\"")
        .replace("id = \"s2\"", "id = \"s1\"");
    let read = plan::read(&text, "plan.toml");
    let paths: Vec<&str> = read.problems.iter().map(|p| p.path.as_str()).collect();
    let expected = [
        "duty.run",
        "engine.boar",
        "boiler.barrel.seam",
        "boiler.stay.2.id",
    ];
    assert_eq!(paths, expected);
    assert!(read.content.duty.run.get().is_none());
    assert!(!read.content.duty.run.is_absent(), "what was typed is kept");
    assert!(read.content.engine.stroke.get().is_some());
    assert!(read.content.boiler.tubes.count.value() == Some(12));
    assert!(matches!(
        read.problems[0].fault,
        Fault::BareNumber {
            kind: Kind::Time,
            ..
        }
    ));
}
