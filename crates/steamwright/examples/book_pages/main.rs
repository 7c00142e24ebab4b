//! Writes the pages of the book that are made by running the code.
//!
//! `cargo run -p steamwright --example book_pages -- docs/generated`

mod areas;
mod assumption_index;
mod checks;
mod formula_index;
mod outside;
mod pictures;
mod rule_index;
mod trials;
mod trials_page;

use reckoning::source::DERIVED;
use reckoning::{Cite, Seen, Source};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

fn main() -> ExitCode {
    let Some(folder) = std::env::args().nth(1).map(PathBuf::from) else {
        eprintln!("name the folder of the pages");
        return ExitCode::from(2);
    };
    match pages().and_then(|pages| write(&folder, &pages)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(faults) => {
            eprintln!("{faults}");
            ExitCode::from(2)
        }
    }
}

/// Every page by its name, or why one cannot be written.
fn pages() -> Result<Vec<(&'static str, String)>, String> {
    let mut pages = vec![
        ("plan-fields.md", plan::fields_page()),
        ("formulas.md", formula_index::page()),
        ("rules.md", rule_index::page()),
        ("assumptions.md", assumption_index::page()),
        ("checks.md", checks::page()?),
        ("trials.md", trials_page::page()?),
    ];
    pages.extend(pictures::pictures()?);
    Ok(pages)
}

fn write(folder: &Path, pages: &[(&str, String)]) -> Result<(), String> {
    let pictures = folder.join(pictures::FOLDER);
    std::fs::create_dir_all(&pictures).map_err(|e| format!("{}: {e}", pictures.display()))?;
    for (name, text) in pages {
        let path = folder.join(name);
        std::fs::write(&path, text).map_err(|e| format!("{}: {e}", path.display()))?;
    }
    Ok(())
}

/// The head of a table.
fn head(columns: &[&str]) -> String {
    let line = columns.join(" | ");
    let rule = vec!["---"; columns.len()].join(" | ");
    format!("\n| {line} |\n| {rule} |\n")
}

/// A row of a table.
fn row(cells: &[String]) -> String {
    let cells: Vec<String> = cells
        .iter()
        .map(|text| text.trim().replace('|', "\\|").replace('\n', " "))
        .collect();
    format!("| {} |\n", cells.join(" | "))
}

/// A work by its title, and the number and year that tell its editions apart.
fn title(source: &Source) -> String {
    let mut words = source.title.to_owned();
    for more in [source.identifier, source.edition] {
        if !more.is_empty() && !words.contains(more) {
            words += &format!(", {more}");
        }
    }
    let year = source.year.to_string();
    if source.year > 0 && !words.contains(&year) {
        words += &format!(", {year}");
    }
    words
}

/// A citation with how well it was read, where there was something to read.
fn cited(cite: &Cite) -> String {
    let source = cite.source;
    if source.seen == Seen::CommonPractice || source.key == DERIVED.key {
        return format!("{}: {}", source.title, cite.place);
    }
    let seen = source.seen.words();
    format!("{}; {} ({seen})", title(source), cite.place)
}

/// The part of an id before its first point.
fn family(id: &str) -> &str {
    id.split('.').next().unwrap_or(id)
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}
