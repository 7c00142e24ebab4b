//! Writes the pages of the book that are made by running the code.
//!
//! `cargo run -p steamwright --example book_pages -- docs/generated`

mod checks;
mod formula_index;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

fn main() -> ExitCode {
    let Some(folder) = std::env::args().nth(1).map(PathBuf::from) else {
        eprintln!("name the folder of the pages");
        return ExitCode::from(2);
    };
    let pages = checks::page().map(|checks| {
        [
            ("formulas.md", formula_index::page()),
            ("checks.md", checks),
        ]
    });
    match pages.and_then(|pages| write(&folder, &pages)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(faults) => {
            eprintln!("{faults}");
            ExitCode::from(2)
        }
    }
}

fn write(folder: &Path, pages: &[(&str, String)]) -> Result<(), String> {
    std::fs::create_dir_all(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    for (name, text) in pages {
        let path = folder.join(name);
        std::fs::write(&path, text).map_err(|e| format!("{}: {e}", path.display()))?;
    }
    Ok(())
}

/// Text that may stand in a cell of a Markdown table.
fn cell(text: &str) -> String {
    text.replace('|', "\\|").replace('\n', " ")
}
