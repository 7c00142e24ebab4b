//! Sizes as drawn and as made, and values that keep the text in which they were typed.

use crate::quantity::Length;

/// A value together with the text in which its maker wrote it.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed<T> {
    /// The value.
    pub value: T,
    /// The text as typed, printed back unchanged (`1 7/16 in`).
    pub text: String,
}

/// A tolerance about the drawn size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerance {
    /// Lower deviation, zero or negative.
    pub lower: Length,
    /// Upper deviation, zero or positive.
    pub upper: Length,
}

/// A size: as drawn, its tolerance, and as it turned out.
#[derive(Clone, Debug, PartialEq)]
pub struct Size {
    /// The size on the drawing.
    pub drawn: Typed<Length>,
    /// Its tolerance, where one is given or comes with the stock.
    pub tolerance: Option<Tolerance>,
    /// The size as measured on the finished part.
    pub made: Option<Typed<Length>>,
}

/// Which end of a tolerance is the bad one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bad {
    /// A small size is worse (a wall).
    Small,
    /// A large size is worse (a bore under pressure, a hole).
    Large,
}

impl Size {
    /// A size with neither tolerance nor measurement.
    #[must_use]
    pub fn drawn(value: Length, text: impl Into<String>) -> Self {
        Self {
            drawn: Typed {
                value,
                text: text.into(),
            },
            tolerance: None,
            made: None,
        }
    }

    /// The size that a proof uses: made where measured, else drawn at the bad end.
    #[must_use]
    pub fn for_proof(&self, bad: Bad) -> Length {
        match (&self.made, self.tolerance) {
            (Some(made), _) => made.value,
            (None, None) => self.drawn.value,
            (None, Some(t)) => match bad {
                Bad::Small => self.drawn.value + t.lower,
                Bad::Large => self.drawn.value + t.upper,
            },
        }
    }

    /// The size that steaming and heats use: made where measured, else drawn.
    #[must_use]
    pub fn likely(&self) -> Length {
        self.made.as_ref().map_or(self.drawn.value, |m| m.value)
    }
}
