//! How a line is printed so that it recomputes from its own printed numbers.

use super::{Basis, Line, Ref, Working};
use crate::formula::Law;
use crate::known::Given;
use crate::quantity::show::figures;

/// Most figures that a line is printed to.
const MOST: usize = 5;
/// Figures of a number that enters from outside.
const ENTERED: usize = 6;

/// The printed parts of one line.
#[derive(Clone, Debug, PartialEq)]
pub struct Printed {
    /// The law, for a worked line.
    pub law: Option<String>,
    /// The law with the printed numbers in place of its symbols, for a closed law.
    pub with_numbers: Option<String>,
    /// `symbol = number unit`.
    pub result: String,
    /// Where it came from, in words.
    pub from: String,
    /// Limits broken, in words.
    pub breaches: Vec<String>,
}

impl Working {
    /// The numbers that a worked line prints for its inputs, in the units of the card.
    fn printed_inputs(&self, card: &crate::formula::Card, inputs: &[Ref]) -> Vec<String> {
        card.takes
            .iter()
            .zip(inputs)
            .map(|(symbol, r)| {
                let line = self.line(*r);
                if symbol.unit == line.unit {
                    return line.shown.clone();
                }
                let shown: f64 = line.shown.parse().unwrap_or(line.value);
                figures(symbol.unit.from_si(line.unit.to_si(shown)), ENTERED)
            })
            .collect()
    }

    /// The number as it may be printed: for a worked line, the most figures to which the printed
    /// inputs give the same number.
    pub(super) fn figures_supported(&self, value: f64, basis: &Basis) -> String {
        let Basis::Worked { card, inputs, .. } = basis else {
            return figures(value, ENTERED);
        };
        let printed: Vec<f64> = self
            .printed_inputs(card, inputs)
            .iter()
            .map(|text| text.parse().unwrap_or(f64::NAN))
            .collect();
        let Ok(again) = (card.eval)(&printed) else {
            return figures(value, 1);
        };
        (1..=MOST)
            .rev()
            .find(|n| figures(again, *n) == figures(value, *n))
            .map_or_else(|| figures(again, 1), |n| figures(value, n))
    }

    /// A line as printed.
    #[must_use]
    pub fn printed(&self, r: Ref) -> Printed {
        let line = self.line(r);
        let (law, with_numbers) = self.printed_law(line);
        let unit = line.unit.symbol;
        let space = if unit.is_empty() { "" } else { " " };
        Printed {
            law,
            with_numbers,
            result: format!("{} = {}{space}{unit}", line.symbol, line.shown),
            from: self.origin_words(line),
            breaches: match &line.basis {
                Basis::Worked { breaches, .. } => {
                    breaches.iter().map(ToString::to_string).collect()
                }
                _ => Vec::new(),
            },
        }
    }

    fn printed_law(&self, line: &Line) -> (Option<String>, Option<String>) {
        let Basis::Worked { card, inputs, .. } = &line.basis else {
            return (None, None);
        };
        match card.law {
            Law::Words(words) => (Some(words.to_owned()), None),
            Law::Closed(text) => {
                let numbers = self.printed_inputs(card, inputs);
                let swap = |word: &str| {
                    let place = card.takes.iter().position(|s| s.name == word)?;
                    let number = &numbers[place];
                    Some(if number.starts_with('-') || number.contains('e') {
                        format!("({number})")
                    } else {
                        number.clone()
                    })
                };
                (Some(text.to_owned()), Some(replace_words(text, &swap)))
            }
        }
    }

    fn origin_words(&self, line: &Line) -> String {
        match &line.basis {
            Basis::Given(given) => given_words(given),
            Basis::Chosen {
                between,
                reason,
                cite,
                ..
            } => {
                let cite = cite.map_or(String::new(), |c| {
                    format!(" ({}, {})", c.source.title, c.place)
                });
                format!("chosen, {between}: {reason}{cite}")
            }
            Basis::Worked { card, .. } => format!(
                "{}, {} ({})",
                card.cite.source.title,
                card.cite.place,
                card.cite.source.seen.words()
            ),
            Basis::Solved {
                balance,
                bracket,
                residual,
                rounds,
                from,
            } => {
                let names: Vec<&str> = from.iter().map(|r| &*self.line(*r).symbol).collect();
                format!(
                    "solved between {} and {} in {rounds} rounds: {balance}; left over {residual}; from {}",
                    figures(bracket.0, 3),
                    figures(bracket.1, 3),
                    names.join(", ")
                )
            }
        }
    }
}

/// Where a value that entered at the door came from.
fn given_words(given: &Given) -> String {
    match given {
        Given::Plan { field, typed } => format!("plan, {field}: {typed}"),
        Given::Table { table, row, source } => {
            format!("{table}, {row} ({}; {})", source.title, source.seen.words())
        }
        Given::Assumed { assumption } => format!(
            "assumed, {}: {} ({} to {}) {}; {}, {}",
            assumption.id,
            assumption.meaning,
            assumption.low,
            assumption.high,
            assumption.unit.symbol,
            assumption.cite.source.title,
            assumption.cite.place
        ),
        Given::Shape { of, .. } => format!("from the shape, {of}"),
        Given::Chosen {
            between, reason, ..
        } => format!("chosen, {between}: {reason}"),
    }
}

/// Replaces the words of a law that `swap` knows, leaving left sides and functions alone.
fn replace_words(text: &str, swap: &dyn Fn(&str) -> Option<String>) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while !rest.is_empty() {
        let starts_word = rest.starts_with(|c: char| c.is_ascii_alphabetic());
        let part_of_number = out.ends_with(|c: char| c.is_ascii_digit() || c == '.');
        let end = if starts_word {
            rest.find(|c: char| !(c.is_ascii_alphanumeric() || c == '_'))
                .unwrap_or(rest.len())
        } else {
            rest.find(|c: char| c.is_ascii_alphabetic())
                .unwrap_or(rest.len())
        };
        let (piece, after) = rest.split_at(end);
        match swap(piece) {
            Some(number) if starts_word && !part_of_number => out.push_str(&number),
            _ => out.push_str(piece),
        }
        rest = after;
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::formula::{Card, Cite, Spread, symbol};
    use crate::known::Known;
    use crate::law;
    use crate::quantity::{Length, MM, MM2};
    use crate::source::DERIVED;

    static OBLONG: Card = Card {
        id: "test.oblong",
        law: Law::Closed("m = a / 3; A = m * b * 3"),
        gives: symbol("A", &MM2, "area"),
        takes: &[symbol("a", &MM, "one side"), symbol("b", &MM, "other side")],
        limits: &[],
        spread: Spread::Exact,
        cite: Cite {
            source: &DERIVED,
            place: "sides of a rectangle",
        },
        eval: |v| Ok(v[0] * v[1]),
    };

    #[test]
    fn a_printed_line_recomputes_from_its_printed_numbers() {
        for k in 0..200 {
            let a = 1.0 + f64::from(k) * 0.123_456_789;
            let mut w = Working::new();
            let a = w.know(
                "a",
                "",
                &MM,
                &Known::from_plan(Length::from_mm(a), "f", "t"),
            );
            let b = w.know(
                "b",
                "",
                &MM,
                &Known::from_plan(Length::from_mm(1.0 / 3.0), "f", "t"),
            );
            let area = w.worked(&OBLONG, &[a, b]).expect("worked");
            let printed = w.printed(area);
            let sum = printed.with_numbers.expect("closed law");
            let again = law::run(&sum, &|_| None).expect("the sum reads");
            let shown = &w.line(area).shown;
            let count = shown.trim_start_matches(['0', '.']).replace('.', "").len();
            assert_eq!(&figures(again, count), shown, "{sum}");
        }
    }
}
