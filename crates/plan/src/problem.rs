//! What is wrong with a file: where, what was read, what is allowed, and what may have been meant.

use reckoning::quantity::Kind;
use reckoning::quantity::parse::Misread;

use crate::place::Place;

/// One thing wrong with a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// Name of the file, as it was handed in.
    pub file: String,
    /// Where.
    pub place: Place,
    /// The field, for instance `boiler.barrel.wall`; empty for the file as a whole.
    pub path: String,
    /// What is wrong.
    pub fault: Fault,
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum Fault {
    /// The text is not TOML.
    Syntax {
        /// What the parser says.
        says: String,
    },
    /// The file was written by a later program.
    FormatNewer {
        /// The version it states.
        read: i64,
        /// The latest version known.
        known: u32,
    },
    /// The file does not state its format.
    FormatMissing,
    /// A key that no field has.
    UnknownKey {
        /// The key.
        key: String,
        /// The keys that may stand there, or the fields that may be edited.
        allowed: Vec<String>,
        /// The nearest of them, where one is near.
        nearest: Option<String>,
    },
    /// The value is of another sort than the field takes.
    WrongSort {
        /// The value, shown.
        read: String,
        /// Its sort.
        sort: &'static str,
        /// The sort that is wanted.
        wanted: &'static str,
        /// An example of it.
        example: String,
    },
    /// A number without a unit where one is needed.
    BareNumber {
        /// The number.
        read: String,
        /// The kind that is wanted.
        kind: Kind,
        /// The number with a likely unit.
        suggestion: String,
    },
    /// A text that does not read as a quantity.
    Misread(Misread),
    /// A value outside the limits of its field.
    OutOfLimits {
        /// The value, as typed.
        read: String,
        /// Least.
        low: String,
        /// Greatest.
        high: String,
    },
    /// A name that is not among those allowed.
    NotAChoice {
        /// The name.
        read: String,
        /// The names allowed.
        allowed: Vec<&'static str>,
        /// The nearest of them, where one is near.
        nearest: Option<&'static str>,
    },
    /// A name that is understood, with which nothing works yet.
    NotYet {
        /// The name.
        read: String,
        /// The names that are worked.
        worked: Vec<&'static str>,
    },
    /// An id that is no id.
    BadId {
        /// What was read.
        read: String,
    },
    /// A row without an id.
    MissingId,
    /// An id that an earlier row of the list has.
    DuplicateId {
        /// The id.
        id: String,
        /// Line of the earlier row.
        first: usize,
    },
    /// A value between braces lacks a part.
    MissingPart {
        /// The part.
        part: &'static str,
    },
    /// A lower deviation above zero, or an upper one below.
    CrossedTolerance {
        /// The deviation, as typed.
        read: String,
        /// `lower` or `upper`.
        part: &'static str,
    },
}

impl Fault {
    /// What was read.
    #[must_use]
    pub fn read(&self) -> String {
        match self {
            Self::Syntax { says } => format!("something that is not TOML: {says}"),
            Self::FormatNewer { read, .. } => format!("format {read}, written by a later program"),
            Self::FormatMissing => "a file that does not state its format".to_owned(),
            Self::UnknownKey { key, .. } => format!("`{key}`, which is no field"),
            Self::WrongSort { read, sort, .. } => format!("`{read}`, {sort}"),
            Self::BareNumber { read, .. } => format!("`{read}`, a number without a unit"),
            Self::Misread(misread) => format!("`{}`: {}", misread.text, misread.read),
            Self::OutOfLimits { read, .. } => format!("`{read}`, outside its limits"),
            Self::NotAChoice { read, .. } => format!("`{read}`"),
            Self::NotYet { read, .. } => format!("`{read}`, which is not worked yet"),
            Self::BadId { read } => format!("`{read}`, which is no id"),
            Self::MissingId => "a row without an id".to_owned(),
            Self::DuplicateId { id, first } => {
                format!("`{id}`, an id that stands already on line {first}")
            }
            Self::MissingPart { part } => format!("a value without `{part}`"),
            Self::CrossedTolerance { read, .. } => format!("`{read}`"),
        }
    }

    /// What is allowed; empty where that goes without saying.
    #[must_use]
    pub fn allowed(&self) -> String {
        match self {
            Self::Syntax { .. } | Self::Misread(_) => String::new(),
            Self::FormatNewer { known, .. } => format!("format {known} or older"),
            Self::FormatMissing => "a line with the format above all tables".to_owned(),
            Self::UnknownKey { allowed, .. } => one_of(allowed.iter().map(String::as_str)),
            Self::WrongSort { wanted, .. } => (*wanted).to_owned(),
            Self::BareNumber { kind, .. } => format!("a {} with its unit", kind.words()),
            Self::OutOfLimits { low, high, .. } => format!("{low} to {high}"),
            Self::NotAChoice { allowed, .. } => one_of(allowed.iter().copied()),
            Self::NotYet { worked, .. } => one_of(worked.iter().copied()),
            Self::BadId { .. } => {
                "lower case letters, digits and single hyphens, a letter first".to_owned()
            }
            Self::MissingId => "`id` with a name of its own in each row".to_owned(),
            Self::DuplicateId { .. } => "an id of its own for each row".to_owned(),
            Self::MissingPart { part } => format!("`{part}` beside the others"),
            Self::CrossedTolerance { part, .. } => match *part {
                "lower" => "a lower deviation of zero or less".to_owned(),
                _ => "an upper deviation of zero or more".to_owned(),
            },
        }
    }

    /// What may have been meant, or how to put it right.
    #[must_use]
    pub fn help(&self) -> Option<String> {
        let meant = |text: &str| Some(format!("did you mean `{text}`?"));
        match self {
            Self::UnknownKey { nearest, .. } => nearest.as_deref().and_then(meant),
            Self::NotAChoice { nearest, .. } => nearest.and_then(meant),
            Self::BareNumber { suggestion, .. } => meant(suggestion),
            Self::Misread(misread) => Some(misread.meant.clone()),
            Self::FormatNewer { .. } => Some("open it with the program that wrote it".to_owned()),
            Self::FormatMissing => Some("begin the file with `format = 1`".to_owned()),
            Self::WrongSort { example, .. } => Some(format!("for instance {example}")),
            _ => None,
        }
    }
}

fn one_of<'a>(names: impl Iterator<Item = &'a str>) -> String {
    let names: Vec<String> = names.map(|name| format!("`{name}`")).collect();
    match names.as_slice() {
        [] => "nothing".to_owned(),
        [only] => only.clone(),
        many => format!("one of {}", many.join(", ")),
    }
}

impl std::fmt::Display for Fault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "read {}", self.read())?;
        let allowed = self.allowed();
        if !allowed.is_empty() {
            write!(f, "; wanted {allowed}")?;
        }
        match self.help() {
            Some(help) => write!(f, "; {help}"),
            None => Ok(()),
        }
    }
}

impl std::fmt::Display for Problem {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Place { line, column, .. } = self.place;
        write!(f, "{}:{line}:{column}: ", self.file)?;
        if !self.path.is_empty() {
            write!(f, "{}: ", self.path)?;
        }
        write!(f, "{}", self.fault)
    }
}

impl std::error::Error for Problem {}

impl Problem {
    /// The message with the line it speaks of and a mark under the value; `text` is the text of
    /// the file.
    #[must_use]
    pub fn frame(&self, text: &str) -> String {
        let Place {
            line,
            column,
            width,
        } = self.place;
        let source = text.lines().nth(line - 1).unwrap_or("");
        let number = line.to_string();
        let gutter = " ".repeat(number.len());
        let lead: String = source
            .chars()
            .take(column - 1)
            .map(|c| if c == '\t' { '\t' } else { ' ' })
            .collect();
        let marks = "^".repeat(width);
        format!("{self}\n{gutter} |\n{number} | {source}\n{gutter} | {lead}{marks}\n")
    }
}

/// The nearest of `names` to `read`, where one is near enough to have been meant.
pub(crate) fn nearest<'a>(read: &str, names: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    let read = read.to_lowercase();
    names
        .map(|name| {
            (
                strsim::damerau_levenshtein(&read, &name.to_lowercase()),
                name,
            )
        })
        .min_by_key(|(distance, _)| *distance)
        .filter(|(distance, name)| *distance <= 1 + name.chars().count() / 4)
        .map(|(_, name)| name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_the_value_under_its_line() {
        let problem = Problem {
            file: "plan.toml".into(),
            place: Place {
                line: 2,
                column: 9,
                width: 1,
            },
            path: "boiler.barrel.wall".into(),
            fault: Fault::BareNumber {
                read: "3".into(),
                kind: Kind::Length,
                suggestion: "3 mm".into(),
            },
        };
        let frame = problem.frame("[boiler.barrel]\n\twall = 3\n");
        assert_eq!(
            frame,
            "plan.toml:2:9: boiler.barrel.wall: read `3`, a number without a unit; wanted a \
             length with its unit; did you mean `3 mm`?\n  |\n2 | \twall = 3\n  | \t       ^\n"
        );
    }

    #[test]
    fn a_far_name_is_not_offered() {
        let names = ["bore", "outside", "wall"];
        assert_eq!(nearest("bor", names.into_iter()), Some("bore"));
        assert_eq!(nearest("Wall", names.into_iter()), Some("wall"));
        assert_eq!(nearest("colour", names.into_iter()), None);
    }
}
