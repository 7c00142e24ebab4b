//! The lead of taps (ISO 529, from memory).

/// How far the lead of a tap reaches before its first full thread.
///
/// British and American names of taps cross: the second tap of a British set is called a plug in
/// America, where a British plug is a bottoming tap. The lead itself is kept, never that word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TapLead {
    /// The first of a set.
    Taper,
    /// The second.
    Second,
    /// The last, for the bottom of a hole.
    Bottoming,
}

impl TapLead {
    /// Lead in pitches, at the long end of what the standard allows (ISO 529, from memory).
    #[must_use]
    pub fn pitches(self) -> f64 {
        match self {
            Self::Taper => 10.0,
            Self::Second => 5.0,
            Self::Bottoming => 2.0,
        }
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Taper => "taper tap",
            Self::Second => "second tap",
            Self::Bottoming => "bottoming tap",
        }
    }
}
