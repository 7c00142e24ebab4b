//! The house rules as tests: what CONTRIBUTING.md asks of every change.
//!
//! Each rule names the file and line at fault. Most read the tree as text; the rules over cards,
//! rules, assumptions and fields ask the registers. `house/can_fail.rs` shows that each of them
//! can fail.

mod house;

use house::file::{self, File, tree};
use house::{areas, keep, none, register, workspace};

#[test]
fn no_file_is_too_long() {
    keep("no file is too long");
}

#[test]
fn no_function_is_too_long() {
    keep("no function is too long");
}

#[test]
fn unit_factors_stand_in_one_place() {
    keep("unit factors stand in one place");
}

#[test]
fn only_the_command_prints() {
    keep("only the command prints");
}

#[test]
fn the_middle_touches_no_file_clock_network_or_chance() {
    keep("the middle touches no file, clock, network or chance");
}

#[test]
fn no_working_is_filed_where_a_root_is_sought() {
    keep("no working is filed where a root is sought");
}

#[test]
fn nothing_unfinished_or_silent_is_left() {
    keep("nothing unfinished or silent is left");
}

#[test]
fn words_that_are_not_ours_to_say_are_not_said() {
    keep("words that are not ours to say are not said");
}

#[test]
fn the_project_speaks_of_itself_alone() {
    keep("the project speaks of itself alone");
}

#[test]
fn a_file_of_tests_beside_the_code_is_built_for_tests_only() {
    keep("a file of tests beside the code is built for tests only");
}

#[test]
fn cards_rules_and_assumptions_stand_in_statics_of_their_own() {
    keep("cards, rules and assumptions stand in statics of their own");
}

#[test]
fn crates_depend_only_downwards() {
    let faults: Vec<String> = workspace::crates()
        .iter()
        .flat_map(|(name, manifest)| workspace::wrong_edges(name, manifest))
        .collect();
    none(&faults);
}

#[test]
fn every_card_is_listed_and_cited() {
    let files = tree();
    let homes = register::homes(&files, "Card");
    assert_eq!(homes, ["formulas"], "cards are written in one crate");
    let cards: Vec<_> = formulas::register::cards().collect();
    let written = register::written(&files, "formulas", "Card");
    let mut faults = register::unlisted("Card", "formulas", &written, cards.len());
    faults.extend(register::twice(cards.iter().map(|card| card.id)));
    let uncited = cards.iter().filter(|card| card.cite.place.is_empty());
    faults.extend(uncited.map(|card| format!("{} has no place in its source", card.id)));
    none(&faults);
}

#[test]
fn every_rule_is_listed_worded_and_tested_both_ways() {
    let files = tree();
    let areas = areas::areas();
    let mut faults = Vec::new();
    for home in register::homes(&files, "Rule") {
        let Some(area) = areas.iter().find(|area| area.home == home) else {
            faults.push(format!("the house does not know the rules of {home}"));
            continue;
        };
        let written = register::written(&files, home, "Rule");
        faults.extend(register::unlisted("Rule", home, &written, area.rules.len()));
        for rule in &area.rules {
            faults.extend(register::unworded(rule));
            faults.extend(register::untested(&files, home, rule.id));
        }
    }
    let rules = areas.iter().flat_map(|area| &area.rules);
    faults.extend(register::twice(rules.map(|rule| rule.id)));
    none(&faults);
}

#[test]
fn every_assumption_is_listed_and_ranged() {
    let files = tree();
    let areas = areas::areas();
    let mut faults = Vec::new();
    for home in register::homes(&files, "Assumption") {
        let Some(area) = areas.iter().find(|area| area.home == home) else {
            faults.push(format!("the house does not know the assumptions of {home}"));
            continue;
        };
        let written = register::written(&files, home, "Assumption");
        let listed = area.assumptions.len();
        faults.extend(register::unlisted("Assumption", home, &written, listed));
    }
    let assumptions = || areas.iter().flat_map(|area| &area.assumptions);
    faults.extend(assumptions().flat_map(|a| register::unranged(a)));
    faults.extend(register::twice(assumptions().map(|a| a.id)));
    none(&faults);
}

#[test]
fn every_reference_and_table_has_a_whole_head() {
    let files = tree();
    let heads: Vec<&File> = files
        .iter()
        .filter(|file| file.path.ends_with(".toml"))
        .filter(|file| {
            ["crates/formulas/reference/", "crates/formulas/tables/"]
                .iter()
                .any(|folder| file.path.starts_with(folder))
        })
        .collect();
    assert!(heads.len() > 50, "the folders were not found");
    let faults: Vec<String> = heads
        .iter()
        .flat_map(|file| register::header(file))
        .collect();
    none(&faults);
}

#[test]
fn every_plan_field_is_documented() {
    let kept = file::read("docs/generated/plan-fields.md");
    let stale = kept != plan::fields_page();
    assert!(
        !stale,
        "docs/generated/plan-fields.md is stale: \
         run `cargo run -p steamwright --example book_pages -- docs/generated`"
    );
}

#[test]
fn every_card_rule_and_assumption_stands_in_the_book() {
    let areas = areas::areas();
    let ticked = |id: &str| format!("`{id}`");
    let cards = || formulas::register::cards().map(|card| ticked(card.id));
    let rules = areas.iter().flat_map(|a| &a.rules).map(|r| ticked(r.id));
    let assumptions = areas.iter().flat_map(|a| &a.assumptions);
    let meanings = assumptions.map(|a| format!("| {} |", a.meaning));
    let mut faults = register::missing("formulas.md", cards());
    faults.extend(register::missing("checks.md", cards()));
    faults.extend(register::missing("rules.md", rules));
    faults.extend(register::missing("assumptions.md", meanings));
    none(&faults);
}

#[test]
fn architecture_is_short_and_names_only_what_is_there() {
    let text = file::read("ARCHITECTURE.md");
    let mut faults: Vec<String> = file::backticked(&text)
        .filter(|name| name.contains('/') || name.ends_with(".rs") || name.ends_with(".md"))
        .filter(|name| !name.contains(' ') && !name.contains('<'))
        .filter(|name| !file::root().join(name.trim_end_matches('/')).exists())
        .map(|name| format!("ARCHITECTURE.md names `{name}`, which is not there"))
        .collect();
    if text.lines().count() > 200 {
        faults.push("ARCHITECTURE.md has more than 200 lines".to_owned());
    }
    let crates = workspace::crates();
    for (name, _) in &crates {
        if !text.contains(&format!("`crates/{name}/")) {
            faults.push(format!("the code map of ARCHITECTURE.md lacks `{name}`"));
        }
    }
    faults.extend(workspace::untold_packages(&crates, &text));
    none(&faults);
}

#[test]
fn every_example_reads_without_a_problem() {
    let files = tree();
    let mut faults = Vec::new();
    let mut count = 0;
    for file in files.iter().filter(|f| f.path.starts_with("examples/")) {
        let problems = match file.path.rsplit('/').next() {
            Some("plan.toml") => plan::read(&file.text(), &file.path).problems,
            Some("workshop.toml") => plan::read_workshop(&file.text(), &file.path).problems,
            _ => continue,
        };
        count += 1;
        faults.extend(problems.iter().map(|p| p.frame(&file.text())));
    }
    assert!(count >= 4, "three plans and a workshop, found {count}");
    none(&faults);
}

#[test]
fn the_book_shows_plans_that_read_and_faults_that_are_told() {
    let text = file::read("docs/plan-file.md");
    let blocks = |kind: &str| -> Vec<String> {
        let inside = text.split("```").skip(1).step_by(2);
        inside
            .filter_map(|block| block.strip_prefix(kind)?.strip_prefix('\n'))
            .map(str::to_owned)
            .collect()
    };
    let (plans, told) = (blocks("toml"), blocks("text"));
    let (faulty, whole) = plans.split_last().expect("plans in the book");
    assert!(
        whole.len() >= 3 && told.len() == 1,
        "the blocks were not found"
    );
    let frames = |plan: &String| -> Vec<String> {
        let problems = plan::read(plan, "plan.toml").problems;
        problems.iter().map(|p| p.frame(plan)).collect()
    };
    none(&whole.iter().flat_map(frames).collect::<Vec<_>>());
    assert_eq!(frames(faulty).join("\n"), told[0]);
}
