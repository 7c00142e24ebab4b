//! Lettering: how wide a text is taken to be, and how numbers are written.

use reckoning::quantity::Length;

use crate::sheet::{Anchor, Extent, Runs, Text, at};

/// Size of the type (em), mm: capitals of 2.5 mm, the least that ISO 3098-1 suggests for A4.
pub const TYPE: f64 = 3.5;
/// Sign before a diameter (ISO 129-1).
pub const DIAMETER: char = 'Ø';
/// How far a letter reaches above the base line, of the type size.
const ABOVE: f64 = 0.8;
/// How far a letter reaches below it, of the type size.
const BELOW: f64 = 0.25;

/// Width of a text, mm, at a type size: 0.65 em a letter, 0.95 em for the wide ones. The common
/// sans-serif types stay within this, so that what does not overlap here does not on paper.
#[must_use]
pub fn width(says: &str, size: f64) -> f64 {
    let ems: f64 = says
        .chars()
        .map(|c| match c {
            'm' | 'M' | 'w' | 'W' | 'Ø' | '×' | '±' | '°' => 0.95,
            _ => 0.65,
        })
        .sum();
    ems * size
}

/// A length in millimetres to the hundredth, without idle noughts.
#[must_use]
pub fn figure(length: Length) -> String {
    short(length.mm())
}

/// A number to the hundredth, without idle noughts.
pub(crate) fn short(number: f64) -> String {
    let text = format!("{number:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0" } else { text }.to_owned()
}

/// A diameter with its sign.
#[must_use]
pub fn diameter(length: Length) -> String {
    format!("{DIAMETER}{}", figure(length))
}

impl Text {
    /// A text of the ordinary size.
    #[must_use]
    pub fn new(place: crate::sheet::At, anchor: Anchor, says: impl Into<String>) -> Self {
        Self {
            at: place,
            anchor,
            size: TYPE,
            runs: Runs::Across,
            says: says.into(),
        }
    }

    /// The same running upwards.
    #[must_use]
    pub fn upwards(mut self) -> Self {
        self.runs = Runs::Up;
        self
    }

    /// The box that the text is taken to fill.
    #[must_use]
    pub fn extent(&self) -> Extent {
        let wide = width(&self.says, self.size);
        let before = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => wide / 2.0,
            Anchor::End => wide,
        };
        let (above, below) = (ABOVE * self.size, BELOW * self.size);
        let (x, y) = (self.at.x, self.at.y);
        match self.runs {
            Runs::Across => Extent {
                low: at(x - before, y - below),
                high: at(x - before + wide, y + above),
            },
            Runs::Up => Extent {
                low: at(x - above, y - before),
                high: at(x + below, y - before + wide),
            },
        }
    }
}
