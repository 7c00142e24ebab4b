//! Sizes in words, in the units that the maker's dials read.

use reckoning::quantity::{Length, show};

/// What the dials and rules of the workshop read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Reads {
    /// Millimetres, shown to a hundredth.
    Millimetres,
    /// Inches, shown to a thousandth.
    Inches,
}

impl Reads {
    /// A size with its unit.
    #[must_use]
    pub fn size(self, length: Length) -> String {
        match self {
            Self::Millimetres => format!("{} mm", trimmed(length.mm(), 2)),
            Self::Inches => format!("{} in", trimmed(length.inch(), 3)),
        }
    }

    /// A small error, to one place more than a size.
    #[must_use]
    pub fn error(self, length: Length) -> String {
        match self {
            Self::Millimetres => format!("{} mm", trimmed(length.mm(), 3)),
            Self::Inches => format!("{} in", trimmed(length.inch(), 4)),
        }
    }
}

/// A number to so many decimals, without idle noughts.
pub(crate) fn trimmed(x: f64, decimals: usize) -> String {
    let text = format!("{x:.decimals$}");
    let text = if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.')
    } else {
        &text
    };
    if text == "-0" {
        "0".to_owned()
    } else {
        text.to_owned()
    }
}

/// A share in whole percent.
pub(crate) fn percent(share: f64) -> String {
    format!("{} %", show::figures(share, 2))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_shown_as_dials_read_them() {
        assert_eq!(Reads::Millimetres.size(Length::from_mm(12.0)), "12 mm");
        assert_eq!(Reads::Millimetres.size(Length::from_mm(5.704)), "5.7 mm");
        assert_eq!(Reads::Inches.size(Length::from_inch(0.25)), "0.25 in");
        assert_eq!(Reads::Millimetres.error(Length::from_mm(-0.0001)), "0 mm");
    }
}
