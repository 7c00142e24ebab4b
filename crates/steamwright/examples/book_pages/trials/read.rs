//! The files of the trials to numbers in SI.

use formulas::fuel::Composition;
use reckoning::quantity::{Kind, Quantity, Ratio, parse};
use std::path::{Path, PathBuf};
use toml_edit::{Document, Table, TableLike};

/// A table of a trial with its name, for the messages.
#[derive(Clone, Copy)]
pub(crate) struct Sheet<'a> {
    pub(crate) file: &'a str,
    pub(crate) table: &'a dyn TableLike,
}

impl<'a> Sheet<'a> {
    /// A table within this one.
    pub(crate) fn under(self, key: &str) -> Result<Sheet<'a>, String> {
        let table = self.table.get(key).and_then(|i| i.as_table_like());
        table.map_or_else(
            || Err(format!("{}: no table {key}", self.file)),
            |table| {
                Ok(Sheet {
                    file: self.file,
                    table,
                })
            },
        )
    }

    /// Words of a key.
    pub(crate) fn words(self, key: &str) -> Result<&'a str, String> {
        self.maybe_words(key)
            .ok_or_else(|| format!("{}: no words {key}", self.file))
    }

    /// Words of a key that may be left out.
    pub(crate) fn maybe_words(self, key: &str) -> Option<&'a str> {
        self.table.get(key).and_then(|item| item.as_str())
    }

    /// A quantity in SI, or a plain number for a ratio.
    pub(crate) fn number<Q: Quantity>(self, key: &str) -> Result<f64, String> {
        self.maybe::<Q>(key)?
            .ok_or_else(|| format!("{}: no value {key}", self.file))
    }

    /// A quantity that may be left out.
    pub(crate) fn maybe<Q: Quantity>(self, key: &str) -> Result<Option<f64>, String> {
        let Some(item) = self.table.get(key) else {
            return Ok(None);
        };
        let plain = item
            .as_float()
            .or_else(|| item.as_integer().map(|i| i as f64));
        if Q::KIND == Kind::Ratio
            && let Some(plain) = plain
        {
            return Ok(Some(plain));
        }
        let text = item
            .as_str()
            .ok_or_else(|| format!("{}: {key} is no quantity", self.file))?;
        parse::read_kind(Q::KIND, text)
            .map(Some)
            .map_err(|e| format!("{}: {key}: {e}", self.file))
    }

    /// A composition as fired.
    pub(crate) fn composition(self) -> Result<Composition, String> {
        let parts = self.under("composition")?;
        let share = |key| parts.number::<Ratio>(key);
        Ok(Composition {
            carbon: share("C")?,
            hydrogen: share("H")?,
            oxygen: share("O")?,
            nitrogen: share("N")?,
            sulphur: share("S")?,
            ash: share("ash")?,
            water: share("water")?,
        })
    }

    /// The rows of a trial.
    pub(crate) fn rows(self) -> Result<Vec<Sheet<'a>>, String> {
        let rows = self.table.get("row").and_then(|i| i.as_array_of_tables());
        let rows = rows.ok_or_else(|| format!("{}: no [[row]]", self.file))?;
        Ok(rows
            .iter()
            .map(|table: &Table| Sheet {
                file: self.file,
                table,
            })
            .collect())
    }
}

/// A file with its text read.
pub(crate) struct File {
    pub(crate) name: String,
    document: Document<String>,
}

impl File {
    /// The whole of it.
    pub(crate) fn sheet(&self) -> Sheet<'_> {
        Sheet {
            file: &self.name,
            table: self.document.as_table(),
        }
    }
}

/// The assumptions, then the trials by their names.
pub(crate) fn files() -> Result<(File, Vec<File>), String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../steaming/trials");
    let mut paths: Vec<PathBuf> = std::fs::read_dir(&folder)
        .map_err(|e| format!("{}: {e}", folder.display()))?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|e| e == "toml"))
        .collect();
    paths.sort();
    let mut files = Vec::new();
    let mut assumed = None;
    for path in paths {
        let file = open(&path)?;
        if file.name == "assumptions.toml" {
            assumed = Some(file);
        } else {
            files.push(file);
        }
    }
    let assumed = assumed.ok_or("the trials have no assumptions.toml")?;
    Ok((assumed, files))
}

fn open(path: &Path) -> Result<File, String> {
    let name = path
        .file_name()
        .map_or_else(String::new, |n| n.to_string_lossy().into_owned());
    let text = std::fs::read_to_string(path).map_err(|e| format!("{name}: {e}"))?;
    let document = Document::parse(text).map_err(|e| format!("{name}: {e}"))?;
    Ok(File { name, document })
}
