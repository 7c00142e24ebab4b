//! What stands in a field, before it is read: the shapes that a value can have in a file.

use std::ops::Range;

use toml_edit::{Item, Value};

/// A value as it is written.
#[derive(Clone, Debug)]
pub struct Written {
    pub(crate) shape: Shape,
    /// Bytes in the file.
    pub(crate) span: Option<Range<usize>>,
}

/// The shapes of a written value.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Shape {
    /// A text; `plain` when it stands in the file letter for letter between one-letter quotes,
    /// so that a column within it is a column of the file.
    Text {
        /// The text.
        text: String,
        /// Letter for letter.
        plain: bool,
    },
    /// A bare number, as typed.
    Number(String),
    /// A list.
    List(Vec<Written>),
    /// A table, between braces or under a heading.
    Table(Vec<(String, Written)>),
    /// Something that no field takes: what it is, and its writing.
    Foreign {
        /// What it is, in words.
        what: &'static str,
        /// As written.
        text: String,
    },
}

/// Only what is written counts, not where.
impl PartialEq for Written {
    fn eq(&self, other: &Self) -> bool {
        match (&self.shape, &other.shape) {
            (Shape::Text { text: a, .. }, Shape::Text { text: b, .. }) => a == b,
            (a, b) => a == b,
        }
    }
}

impl Written {
    pub(crate) fn is_empty_text(&self) -> bool {
        matches!(&self.shape, Shape::Text { text, .. } if text.trim().is_empty())
    }

    /// Whether this is a table in which `key` stands with an empty text.
    pub(crate) fn has_empty(&self, key: &str) -> bool {
        let Shape::Table(parts) = &self.shape else {
            return false;
        };
        parts
            .iter()
            .any(|(name, written)| name == key && written.is_empty_text())
    }

    /// Reads the shape of an item of a parsed file; `source` is the text of the file.
    pub(crate) fn of_item(item: &Item, source: &str) -> Self {
        match item {
            Item::Value(value) => Self::of_value(value, source),
            Item::Table(table) => Self {
                shape: Shape::Table(
                    table
                        .iter()
                        .map(|(key, item)| (key.to_owned(), Self::of_item(item, source)))
                        .collect(),
                ),
                span: item.span(),
            },
            Item::ArrayOfTables(tables) => Self {
                shape: Shape::List(
                    tables
                        .iter()
                        .map(|table| Self::of_item(&Item::Table(table.clone()), source))
                        .collect(),
                ),
                span: item.span(),
            },
            Item::None => panic!("the reader takes no item that is nothing"),
        }
    }

    fn of_value(value: &Value, source: &str) -> Self {
        let span = value.span();
        let raw = span
            .clone()
            .and_then(|s| source.get(s))
            .unwrap_or("")
            .to_owned();
        let foreign = |what| Shape::Foreign {
            what,
            text: raw.clone(),
        };
        let shape = match value {
            Value::String(s) => {
                let text = s.value().clone();
                let plain = raw.len() == text.len() + 2 && raw.get(1..=text.len()) == Some(&text);
                Shape::Text { text, plain }
            }
            Value::Integer(_) | Value::Float(_) => Shape::Number(raw),
            Value::Boolean(_) => foreign("a true or false"),
            Value::Datetime(_) => foreign("a date or time"),
            Value::Array(list) => {
                Shape::List(list.iter().map(|v| Self::of_value(v, source)).collect())
            }
            Value::InlineTable(table) => Shape::Table(
                table
                    .iter()
                    .map(|(key, v)| (key.to_owned(), Self::of_value(v, source)))
                    .collect(),
            ),
        };
        Self { shape, span }
    }

    /// The value as it is shown to a reader: a text without its quotes, all else as TOML.
    pub(crate) fn shown(&self) -> String {
        match &self.shape {
            Shape::Text { text, .. } => text.clone(),
            _ => self.toml(),
        }
    }

    /// What it is, in words.
    pub(crate) fn what(&self) -> &'static str {
        match &self.shape {
            Shape::Text { .. } => "a text",
            Shape::Number(_) => "a bare number",
            Shape::List(_) => "a list",
            Shape::Table(_) => "a table",
            Shape::Foreign { what, .. } => what,
        }
    }

    /// The value as TOML.
    pub(crate) fn toml(&self) -> String {
        match &self.shape {
            Shape::Text { text, .. } => Value::from(text.as_str()).to_string(),
            Shape::Number(text) => text.clone(),
            Shape::List(items) => {
                let items: Vec<String> = items.iter().map(Self::toml).collect();
                format!("[{}]", items.join(", "))
            }
            Shape::Table(items) => {
                let items: Vec<String> = items
                    .iter()
                    .map(|(key, v)| format!("{} = {}", toml_edit::Key::new(key), v.toml()))
                    .collect();
                format!("{{ {} }}", items.join(", "))
            }
            Shape::Foreign { text, .. } => text.clone(),
        }
    }
}

/// A text without its quotes, all else as TOML.
impl std::fmt::Display for Written {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.shown())
    }
}
