//! Printed text: lines broken to the width of a terminal, and the lines of a sum.

use reckoning::Working;
use serde_json::{Value, json};
use std::fmt::Write as _;

/// Columns of the printed text.
const WIDTH: usize = 96;

/// A word with a capital.
pub(crate) fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// Text that breaks its lines.
#[derive(Default)]
pub(crate) struct Page {
    pub(crate) text: String,
}

impl Page {
    pub(crate) fn line(&mut self, line: &str) {
        // Writing to a String cannot fail.
        let _: std::fmt::Result = writeln!(self.text, "{}", line.trim_end());
    }

    pub(crate) fn blank(&mut self) {
        self.line("");
    }

    /// A paragraph whose first line begins with `head`, and the others with as much space as the
    /// head begins with.
    pub(crate) fn paragraph(&mut self, head: &str, text: &str) {
        let indent = " ".repeat(head.len() - head.trim_start().len());
        let options = textwrap::Options::new(WIDTH)
            .initial_indent(head)
            .subsequent_indent(&indent)
            .break_words(false);
        for line in textwrap::wrap(text, options) {
            self.line(&line);
        }
    }

    /// The lines of a sum, each with its law, its numbers and where it came from.
    pub(crate) fn working(&mut self, working: &Working) {
        for r in working.refs() {
            let line = working.line(r);
            let printed = working.printed(r);
            self.paragraph("      ", &format!("{}   {}", printed.result, line.meaning));
            if let Some(law) = &printed.law {
                self.paragraph("        by ", law);
            }
            if let Some(sum) = &printed.with_numbers {
                self.paragraph("        = ", sum);
            }
            self.paragraph("        ", &printed.from);
            for breach in &printed.breaches {
                self.paragraph("        outside its limits: ", breach);
            }
        }
    }
}

/// The lines of a sum in JSON.
pub(crate) fn working(working: &Working) -> Vec<Value> {
    working
        .refs()
        .map(|r| {
            let line = working.line(r);
            let printed = working.printed(r);
            json!({
                "symbol": line.symbol,
                "meaning": line.meaning,
                "si": working.si(r),
                "unit": line.unit.symbol,
                "shown": line.shown,
                "law": printed.law,
                "with_numbers": printed.with_numbers,
                "from": printed.from,
                "breaches": printed.breaches,
            })
        })
        .collect()
}
