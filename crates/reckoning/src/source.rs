//! Where a formula, a table or a fact comes from, and how well it was read.

/// How well the text of a source was read by the people who entered it here.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Seen {
    /// The passage itself was read.
    Read,
    /// Entered from memory; the passage has not been opened.
    FromMemory,
    /// A fact of the trade that nobody has published as far as we know.
    CommonPractice,
}

impl Seen {
    /// The words that are printed beside a citation.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::FromMemory => "from memory",
            Self::CommonPractice => "common practice, no source",
        }
    }
}

/// A published source: a standard, a book, a paper, a public table.
///
/// Works are cited by title, edition and place. Names of persons are left out.
#[derive(Debug, PartialEq, Eq)]
pub struct Source {
    /// Short key, lower case with hyphens, the same as in reference and table files.
    pub key: &'static str,
    /// Title of the work.
    pub title: &'static str,
    /// Edition, issue or volume; empty where there is none.
    pub edition: &'static str,
    /// Year of publication; 0 where unknown.
    pub year: u16,
    /// The body that publishes it; empty where unknown.
    pub publisher: &'static str,
    /// Standard number, identifier or report number; empty where there is none.
    pub identifier: &'static str,
    /// How well it was read.
    pub seen: Seen,
}

/// A fact of the trade. Printed as "common practice, no source".
pub static COMMON_PRACTICE: Source = Source {
    key: "common-practice",
    title: "common practice, no source",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::CommonPractice,
};

/// A result that follows from geometry or mechanics alone and was worked out here.
pub static DERIVED: Source = Source {
    key: "derived",
    title: "derived here from geometry, mechanics or a conservation law",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};
