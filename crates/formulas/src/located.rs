//! Reading TOML so that every fault names its file and line.

use reckoning::quantity::parse::Misread;
use toml_edit::{Document, Item, TableLike};

/// A fault in a reference or table file.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{file}:{line}: {wrong}")]
pub struct Fault {
    /// Name of the file.
    pub file: String,
    /// Line, from 1.
    pub line: usize,
    /// What is wrong there.
    pub wrong: Wrong,
}

/// What can be wrong in a reference or table file.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Wrong {
    /// It is not TOML.
    #[error("not TOML: {0}")]
    NotToml(String),
    /// A key is missing.
    #[error("`{0}` is missing")]
    Missing(&'static str),
    /// A key that has no meaning here.
    #[error("`{key}` has no meaning here; what has: {}", .allowed.join(", "))]
    UnknownKey {
        /// The key.
        key: String,
        /// The keys that are known.
        allowed: &'static [&'static str],
    },
    /// A value of the wrong sort.
    #[error("`{key}` should be {wanted}")]
    WrongSort {
        /// The key.
        key: String,
        /// What it should be.
        wanted: &'static str,
    },
    /// A word that is not one of a closed list.
    #[error("`{word}` is not a {of}; nearest: {}", .allowed.join(", "))]
    UnknownWord {
        /// The word.
        word: String,
        /// What it should be one of.
        of: &'static str,
        /// The words that are known.
        allowed: Vec<String>,
    },
    /// No card gives this symbol.
    #[error("no registered card of `{family}` gives `{symbol}` from what is given")]
    NoCardGives {
        /// The family or card named by the file.
        family: String,
        /// The symbol.
        symbol: String,
    },
    /// More than one card gives this symbol.
    #[error("`{symbol}` may come from {}: name the card", .cards.join(" or "))]
    SeveralCardsGive {
        /// The symbol.
        symbol: String,
        /// The cards.
        cards: Vec<&'static str>,
    },
    /// A symbol that the card does not take.
    #[error("card {card} does not take `{symbol}`; it takes {}", .takes.join(", "))]
    NotTaken {
        /// The card.
        card: &'static str,
        /// The symbol.
        symbol: String,
        /// What it takes.
        takes: Vec<&'static str>,
    },
    /// A symbol that the card takes is not given.
    #[error("card {card} takes `{symbol}`, which is not given")]
    NotGiven {
        /// The card.
        card: &'static str,
        /// The symbol.
        symbol: &'static str,
    },
    /// A quantity that does not read.
    #[error("{0}")]
    Misread(#[from] Misread),
    /// A tolerance must be either relative or absolute.
    #[error("a tolerance is either `relative` or `absolute`, above 0")]
    Tolerance,
    /// A relative tolerance of nothing is no tolerance.
    #[error("a relative tolerance says nothing about a wanted value of 0: give `absolute`")]
    RelativeOfZero,
    /// A row of a table that does not agree with itself.
    #[error("row {row} breaks the rule `{rule}`")]
    RowBreaksRule {
        /// The first cell of the row, as it names the row.
        row: String,
        /// The rule.
        rule: String,
    },
    /// A row with too few or too many cells.
    #[error("the row has {found} cells, and the table {wanted} columns")]
    RowLength {
        /// Cells found.
        found: usize,
        /// Columns of the table.
        wanted: usize,
    },
    /// A column that should rise or fall and does not.
    #[error("column `{column}` should be {order}, and {next} follows {value}")]
    NotMonotone {
        /// The column.
        column: String,
        /// `rising` or `falling`.
        order: &'static str,
        /// The value before.
        value: f64,
        /// The value that breaks the order.
        next: f64,
    },
    /// A rule that is not in the law language, or names a column that is not there.
    #[error("the rule `{rule}` does not read: {why}")]
    RuleDoesNotRead {
        /// The rule.
        rule: String,
        /// Why.
        why: reckoning::law::LawError,
    },
}

/// A file being read, gathering its faults.
pub(crate) struct Reading<'a> {
    file: &'a str,
    text: &'a str,
    pub(crate) faults: Vec<Fault>,
}

impl<'a> Reading<'a> {
    pub(crate) fn new(file: &'a str, text: &'a str) -> Self {
        Self {
            file,
            text,
            faults: Vec::new(),
        }
    }

    /// The document, or `None` with the fault filed.
    pub(crate) fn document(&mut self) -> Option<Document<&'a str>> {
        match Document::parse(self.text) {
            Ok(document) => Some(document),
            Err(e) => {
                let at = e.span().map_or(0, |s| s.start);
                self.file_at(at, Wrong::NotToml(e.message().to_owned()));
                None
            }
        }
    }

    pub(crate) fn line_of(&self, at: usize) -> usize {
        let head = self.text.get(..at).unwrap_or(self.text);
        head.matches('\n').count() + 1
    }

    pub(crate) fn file_at(&mut self, at: usize, wrong: Wrong) {
        let fault = Fault {
            file: self.file.to_owned(),
            line: self.line_of(at),
            wrong,
        };
        self.faults.push(fault);
    }

    /// Files a fault for every key that is not allowed in this table.
    pub(crate) fn only(&mut self, table: &dyn TableLike, allowed: &'static [&'static str]) {
        for (key, _) in table.iter() {
            if !allowed.contains(&key) {
                let at = key_at(table, key);
                let key = key.to_owned();
                self.file_at(at, Wrong::UnknownKey { key, allowed });
            }
        }
    }

    /// The table under a key, or `None` with the fault filed.
    pub(crate) fn table<'t>(
        &mut self,
        of: &'t dyn TableLike,
        key: &'static str,
        at: usize,
    ) -> Option<&'t dyn TableLike> {
        let item = self.item(of, key, at)?;
        let found = item.as_table_like();
        if found.is_none() {
            self.wrong_sort(item, key, "a table");
        }
        found
    }

    /// The text under a key, or `None` with the fault filed.
    pub(crate) fn text<'t>(
        &mut self,
        of: &'t dyn TableLike,
        key: &'static str,
        at: usize,
    ) -> Option<&'t str> {
        let item = self.item(of, key, at)?;
        let found = item.as_str().filter(|s| !s.trim().is_empty());
        if found.is_none() {
            self.wrong_sort(item, key, "a text");
        }
        found
    }

    /// The item under a key, or `None` with the fault filed.
    pub(crate) fn item<'t>(
        &mut self,
        of: &'t dyn TableLike,
        key: &'static str,
        at: usize,
    ) -> Option<&'t Item> {
        let found = of.get(key);
        if found.is_none() {
            self.file_at(at, Wrong::Missing(key));
        }
        found
    }

    /// How a place was seen: `from memory`, a date such as `2026-11-24`, or `computed …`.
    pub(crate) fn check_seen(&mut self, at: usize, seen: &str) {
        let digits = |range: std::ops::Range<usize>| {
            seen.get(range)
                .is_some_and(|s| s.bytes().all(|b| b.is_ascii_digit()))
        };
        let date = digits(0..4) && seen.get(4..5) == Some("-") && digits(5..7);
        if !date && seen != "from memory" && !seen.starts_with("computed") {
            let allowed = ["from memory", "a date YYYY-MM-DD", "computed for this file"]
                .map(str::to_owned)
                .to_vec();
            let word = seen.to_owned();
            let of = "way of seeing a place";
            self.file_at(at, Wrong::UnknownWord { word, of, allowed });
        }
    }

    pub(crate) fn wrong_sort(&mut self, item: &Item, key: &str, wanted: &'static str) {
        let key = key.to_owned();
        self.file_at(start(item), Wrong::WrongSort { key, wanted });
    }
}

/// Where an item begins in the text.
pub(crate) fn start(item: &Item) -> usize {
    item.span().map_or(0, |s| s.start)
}

/// Where a key stands in the text.
pub(crate) fn key_at(table: &dyn TableLike, key: &str) -> usize {
    table
        .key(key)
        .and_then(toml_edit::Key::span)
        .map_or_else(|| table.get(key).map_or(0, start), |s| s.start)
}

/// The number in a value, whether written with a point or without.
pub(crate) fn number(item: &Item) -> Option<f64> {
    // A whole number of a published table is far below 2^53, where the two agree.
    #[allow(clippy::cast_precision_loss)]
    let whole = |n: i64| n as f64;
    item.as_float().or_else(|| item.as_integer().map(whole))
}

/// The few names that are spelt most like a word.
pub(crate) fn nearest<'n>(names: impl Iterator<Item = &'n str>, word: &str) -> Vec<String> {
    let mut names: Vec<&str> = names.collect();
    names.sort_by_key(|name| strsim::levenshtein(name, word));
    names.into_iter().take(5).map(str::to_owned).collect()
}
