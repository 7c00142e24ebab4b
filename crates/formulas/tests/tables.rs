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
