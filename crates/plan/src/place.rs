//! Where something stands in a text.

use std::ops::Range;

/// A place in a text: line and column from 1, and how many characters are meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Place {
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// How many characters of that line are meant; at least 1.
    pub width: usize,
}

impl Place {
    /// The beginning of a text.
    pub(crate) const START: Self = Self {
        line: 1,
        column: 1,
        width: 1,
    };

    /// The place of a range of bytes of `text`. A range that runs over several lines is cut at
    /// the end of its first; one that lies outside the text or within a character is moved to
    /// the nearest character.
    pub(crate) fn of(text: &str, span: &Range<usize>) -> Self {
        let start = floor_boundary(text, span.start);
        let end = floor_boundary(text, span.end.max(start));
        let before = &text[..start];
        let line_start = before.rfind('\n').map_or(0, |i| i + 1);
        let meant = text[start..end].lines().next().unwrap_or("");
        Self {
            line: before.matches('\n').count() + 1,
            column: text[line_start..start].chars().count() + 1,
            width: meant.chars().count().max(1),
        }
    }
}

fn floor_boundary(text: &str, index: usize) -> usize {
    let mut index = index.min(text.len());
    while !text.is_char_boundary(index) {
        index -= 1;
    }
    index
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_characters_and_stays_on_its_line() {
        let text = "a = 1\nµ = \"½ in\" # x\n";
        let value = text.find('"').expect("a value");
        let place = Place::of(text, &(value..value + 7));
        assert_eq!((place.line, place.column, place.width), (2, 5, 6));
        let over = Place::of(text, &(4..20));
        assert_eq!((over.line, over.column, over.width), (1, 5, 1));
        let outside = Place::of(text, &(900..901));
        assert_eq!(outside.line, 3);
    }
}
