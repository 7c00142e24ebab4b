//! The files under `reference/`, read from the folder.

use formulas::reference::{self, Catalogue, ReferenceFile};
use std::path::Path;

/// Every reference file that reads, and the faults of those that do not.
pub(crate) fn read() -> (Vec<ReferenceFile>, Vec<String>) {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut paths = Vec::new();
    gather(&root.join("reference"), &mut paths);
    paths.sort();
    let catalogue = Catalogue::registered();
    let mut files = Vec::new();
    let mut faults = Vec::new();
    for path in paths {
        let text = std::fs::read_to_string(&path).expect("a text file");
        let name = path.strip_prefix(root).expect("below the crate");
        match reference::read(&name.to_string_lossy(), &text, &catalogue) {
            Ok(file) => files.push(file),
            Err(more) => faults.extend(more.iter().map(ToString::to_string)),
        }
    }
    (files, faults)
}

fn gather(folder: &Path, paths: &mut Vec<std::path::PathBuf>) {
    let Ok(entries) = std::fs::read_dir(folder) else {
        return;
    };
    for entry in entries {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            gather(&path, paths);
        } else if path.extension().is_some_and(|e| e == "toml") {
            paths.push(path);
        }
    }
}
