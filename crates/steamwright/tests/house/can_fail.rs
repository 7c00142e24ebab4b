//! Each house rule is shown at work on texts made up for it: one that breaks it, one that keeps
//! it. A rule that cannot fail holds nothing.

use super::file::{File, tree};
use super::{keep, made, none, register, rules, workspace};
use reckoning::source::COMMON_PRACTICE;
use reckoning::{Assumption, Cite, Rule};

#[test]
fn each_text_rule_finds_what_breaks_it_and_passes_what_keeps_it() {
    for rule in rules() {
        assert!(
            !rule.broken.is_empty() && !rule.kept.is_empty(),
            "{}",
            rule.name
        );
        for (path, text) in rule.broken {
            let found = (rule.find)(&[made(path, text)]);
            assert!(!found.is_empty(), "`{}` passes {path}:\n{text}", rule.name);
        }
        for (path, text) in rule.kept {
            let found = (rule.find)(&[made(path, text)]);
            assert!(found.is_empty(), "`{}` stops {path}:\n{text}", rule.name);
        }
    }
}

#[test]
#[should_panic(expected = "no house rule is called")]
fn a_rule_that_is_not_there_is_not_kept() {
    keep("no such rule");
}

#[test]
#[should_panic(expected = "1 at fault")]
fn one_fault_is_enough() {
    none(&["a fault".to_owned()]);
}

#[test]
fn the_tree_is_read() {
    let files = tree();
    let has = |path: &str| files.iter().any(|f| f.path == path && !f.lines.is_empty());
    assert!(has("test") && has("mkdocs.yml") && has("crates/reckoning/src/law.rs"));
    assert!(has("docs/generated/plan-fields.md") && has("crates/steamwright/tests/house/mod.rs"));
    assert!(!files.iter().any(|f| f.path.starts_with("target/")));
}

#[test]
fn a_wrong_edge_is_found_in_every_section() {
    for section in [
        "dependencies",
        "dev-dependencies",
        "target.'cfg(unix)'.dependencies",
    ] {
        let up = format!("[{section}]\nproof.workspace = true\n");
        assert_eq!(workspace::wrong_edges("plant", &up).len(), 1, "{section}");
        assert!(
            workspace::wrong_edges("design", &up).is_empty(),
            "{section}"
        );
    }
    let renamed = "[dependencies]\nfacts = { package = \"steaming\", path = \"../steaming\" }\n";
    assert_eq!(workspace::wrong_edges("proof", renamed).len(), 1);
    assert_eq!(workspace::wrong_edges("unheard-of", "").len(), 1);
}

#[test]
fn a_package_without_a_reason_or_in_a_crate_of_no_right_is_found() {
    let uses = [(
        "plan".to_owned(),
        "[dependencies]\nwinnow = \"1\"\n".to_owned(),
    )];
    let told = |row: &str| {
        format!("## Packages of others\n\n| package | crates | why |\n| --- | --- | --- |\n{row}\n")
    };
    let faults = |row: &str| workspace::untold_packages(&uses, &told(row)).len();
    assert_eq!(faults("| `winnow` | plan | reads text |"), 0);
    assert_eq!(faults("| `winnow` | any | reads text |"), 0);
    assert_eq!(faults("| `winnow` | plan |  |"), 1);
    assert_eq!(faults("| `winnow` | plant | reads text |"), 1);
    assert_eq!(faults("| `winnow` | plan, plant | reads text |"), 1);
    assert_eq!(faults("| `rayon` | plan | work in parallel |"), 2);
}

/// A crate with one card, and its tests.
fn a_crate() -> [File; 2] {
    [
        made(
            "crates/a/src/b.rs",
            "pub static ONE: Rule = Rule {\n    id: \"a.one\",\n};",
        ),
        made(
            "crates/a/tests/rules.rs",
            "#[test]\nfn a_one_fires_on_this() {}\n#[test]\nfn a_one_silent() {}",
        ),
    ]
}

#[test]
fn what_is_written_and_not_listed_is_found() {
    let files = a_crate();
    let written = register::written(&files, "a", "Rule");
    assert_eq!(written.len(), 1);
    assert_eq!(register::homes(&files, "Rule"), ["a"]);
    assert!(register::unlisted("Rule", "a", &written, 1).is_empty());
    assert_eq!(register::unlisted("Rule", "a", &written, 0).len(), 1);
    assert_eq!(register::unlisted("Rule", "a", &written, 2).len(), 1);
    assert!(register::written(&files, "a", "Card").is_empty());
    assert_eq!(register::twice(["a", "b", "a"].into_iter()).len(), 1);
}

#[test]
fn a_rule_without_its_two_tests_is_found() {
    let files = a_crate();
    assert!(register::untested(&files, "a", "a.one").is_empty());
    assert_eq!(register::untested(&files, "a", "a.on").len(), 2);
    assert_eq!(register::untested(&files, "b", "a.one").len(), 2);
    let helper = [made(
        "crates/a/tests/rules.rs",
        "fn a_one_fires() {}\n#[test]\nfn a_one_silent() {}",
    )];
    assert_eq!(register::untested(&helper, "a", "a.one").len(), 1);
}

const NOWHERE: Cite = Cite {
    source: &COMMON_PRACTICE,
    place: "",
};

#[test]
fn a_rule_or_an_assumption_without_its_words_is_found() {
    let mut rule = Rule {
        id: "a.one",
        sentence: "",
        remedy: "",
        cite: NOWHERE,
    };
    assert_eq!(register::unworded(&rule).len(), 3);
    rule.sentence = "A wall is a wall.";
    assert_eq!(register::unworded(&rule).len(), 2);
    let mut number = Assumption {
        id: "a.two",
        meaning: "a number",
        unit: &reckoning::quantity::ONE,
        value: 3.0,
        low: 1.0,
        high: 2.0,
        variable: "a.two",
        cite: NOWHERE,
    };
    assert_eq!(register::unranged(&number).len(), 2);
    number.high = 4.0;
    assert_eq!(register::unranged(&number).len(), 1);
}

#[test]
fn a_head_that_lacks_something_is_found() {
    let whole = "[provenance]\nfamily = \"a\"\nsource = \"derived\"\nplace = \"1\"\nkind = \"measured\"\nseen = \"2026-11\"\nprinted = \"3 figures\"\n[tolerance]\nrelative = 1e-3\nbecause = \"print\"\n";
    let faults = |text: &str| register::header(&made("crates/formulas/reference/a/b.toml", text));
    assert!(faults(whole).is_empty(), "{:?}", faults(whole));
    for line in whole.lines().filter(|l| l.contains('"')) {
        let key = line.split(' ').next().unwrap_or(line);
        assert_eq!(faults(&whole.replace(line, "")).len(), 1, "without {key}");
        let empty = whole.replace(line, &format!("{key} = \" \""));
        assert_eq!(faults(&empty).len(), 1, "with an empty {key}");
    }
    assert_eq!(faults(&whole.replace("derived", "hearsay")).len(), 1);
    let table = |text: &str| register::header(&made("crates/formulas/tables/a.toml", text)).len();
    assert_eq!(table(""), 5);
}

#[test]
fn what_the_book_lacks_is_found() {
    let wanted = ["Proof", "no such rule"].map(str::to_owned);
    let lacks = register::missing("rules.md", wanted.into_iter());
    assert_eq!(lacks, ["rules.md lacks no such rule"]);
}
