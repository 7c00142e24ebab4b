//! Every table file is part of the program.

use formulas::table;

#[test]
fn every_file_of_the_folder_is_embedded_and_reads() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tables");
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .expect("the tables")
        .map(|e| e.expect("an entry").path())
        .filter_map(|p| Some(p.file_stem()?.to_string_lossy().into_owned()))
        .collect();
    names.sort();
    let mut read: Vec<&str> = table::embedded().map(|(name, _)| name).collect();
    read.sort_unstable();
    assert_eq!(read, names);
    assert!(table::embedded().all(|(_, table)| !table.is_empty()));
}

/// The tables of design stress, each of which states its rows twice in other units.
const STRESSES: [&str; 3] = [
    "copper-stress-pipe-code",
    "copper-stress-ship-register",
    "copper-stress-trade-r220",
];

/// The numbers of a row of values, or none where the line is no row.
fn row(line: &str) -> Option<Vec<f64>> {
    let inner = line.trim().strip_prefix('[')?.strip_suffix("],")?;
    inner.split(", ").map(|n| n.parse().ok()).collect()
}

/// The text with one number of one line made greater by a fiftieth.
fn altered(text: &str, line: usize, column: usize) -> String {
    let change = |(i, whole): (usize, &str)| match row(whole) {
        Some(mut numbers) if i == line => {
            numbers[column] *= 1.02;
            let numbers: Vec<String> = numbers.iter().map(ToString::to_string).collect();
            format!("    [{}],", numbers.join(", "))
        }
        _ => whole.to_owned(),
    };
    let lines: Vec<String> = text.lines().enumerate().map(change).collect();
    lines.join("\n")
}

#[test]
fn a_stress_altered_by_hand_is_refused() {
    for name in STRESSES {
        let (_, text) = table::FILES
            .iter()
            .find(|(n, _)| *n == name)
            .expect("the table");
        assert!(table::read(name, text).is_ok(), "{name}");
        let rows: Vec<(usize, usize)> = text
            .lines()
            .enumerate()
            .filter_map(|(i, line)| Some((i, row(line)?.len())))
            .collect();
        assert!(rows.len() >= 5, "{name} has its rows");
        for (line, columns) in rows {
            for column in 0..columns {
                let other = altered(text, line, column);
                assert!(table::read(name, &other).is_err(), "{name}:{line}:{column}");
            }
        }
    }
}
