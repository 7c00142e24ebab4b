//! One step of a walk: what was written, between what it was chosen, and why.

use reckoning::Origin;

/// A field that a step is about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Chosen {
    /// Path of the field.
    pub path: String,
    /// Its value as it stands in the file, with its quotes where it has any.
    pub literal: String,
    /// Who says so.
    pub by: By,
}

/// Who says what a field holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum By {
    /// This step.
    Step,
    /// The maker, whose value is kept.
    Maker,
}

impl Chosen {
    /// The value as a reader wants it, without quotes.
    #[must_use]
    pub fn shown(&self) -> &str {
        self.literal.trim_matches('"')
    }
}

/// A step of the walk.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// Name of the step.
    pub step: &'static str,
    /// The fields it is about, those that the maker had given among them.
    pub fields: Vec<Chosen>,
    /// What was chosen, where its fields are too many to be read one by one.
    pub told: Option<String>,
    /// What the value was chosen from.
    pub between: String,
    /// Why this one.
    pub reason: String,
    /// The weakest origin of what the choice rests on.
    pub weakest: Origin,
}

impl Choice {
    /// A step that has not chosen yet.
    pub(super) fn of(step: &'static str) -> Self {
        Self {
            step,
            fields: Vec::new(),
            told: None,
            between: String::new(),
            reason: String::new(),
            weakest: Origin::Read,
        }
    }

    /// Writes a value into a field.
    pub(super) fn set(mut self, path: impl Into<String>, literal: String) -> Self {
        self.fields.push(Chosen {
            path: path.into(),
            literal,
            by: By::Step,
        });
        self
    }

    /// Says what was chosen.
    pub(super) fn told(mut self, told: String) -> Self {
        self.told = Some(told);
        self
    }

    /// Says between what it was chosen.
    pub(super) fn between(mut self, between: impl Into<String>) -> Self {
        self.between = between.into();
        self
    }

    /// Says why, and how well founded that is.
    pub(super) fn because(mut self, reason: impl Into<String>, weakest: Origin) -> Self {
        self.reason = reason.into();
        self.weakest = weakest;
        self
    }

    /// Whether the maker had given every field that the step is about.
    #[must_use]
    pub fn is_kept(&self) -> bool {
        self.fields.iter().all(|field| field.by == By::Maker)
    }

    /// What was chosen in words: the fields, those that one table holds under its name once.
    #[must_use]
    pub fn says(&self) -> String {
        if let Some(told) = &self.told {
            return told.clone();
        }
        let mut table = "";
        let mut parts = Vec::new();
        for field in &self.fields {
            let (at, key) = field.path.rsplit_once('.').unwrap_or(("", &field.path));
            let head = if at == table {
                key.to_owned()
            } else {
                field.path.clone()
            };
            table = at;
            let kept = match field.by {
                By::Maker => " (as given)",
                By::Step => "",
            };
            parts.push(format!("{head} {}{kept}", field.shown()));
        }
        parts.join(", ")
    }
}

/// A length as it stands in a file, mm to the hundredth.
pub(super) fn mm(mm: f64) -> String {
    format!("\"{} mm\"", plain(mm))
}

/// A text as it stands in a file; it may hold no quotes.
pub(super) fn text(text: &str) -> String {
    format!("\"{text}\"")
}

/// A number to the hundredth, without noughts at its end.
pub(super) fn plain(number: f64) -> String {
    let shown = format!("{number:.2}");
    shown.trim_end_matches('0').trim_end_matches('.').to_owned()
}
