//! A whole file: its name, its format, and what reading it gives.

use toml_edit::Document;

use crate::entry::Entry;
use crate::load::load;
use crate::place::Place;
use crate::problem::{Fault, Problem};
use crate::visit::Section;

/// A file of one format.
pub trait File: Section + Default + Clone {
    /// Usual name of the file.
    const NAME: &'static str;
    /// Latest version of its format. Older ones are read for ever, later ones are refused.
    const FORMAT: u32;

    /// The version that the file states.
    fn format(&self) -> &Entry<u32>;

    /// The file with nothing in it; every entry has its path.
    #[must_use]
    fn blank() -> Self {
        let mut file = Self::default();
        load(&mut file, None, "");
        file
    }
}

/// What reading a text gives: the file as far as it can be read, and all that is wrong with it.
#[derive(Clone, Debug)]
pub struct Read<F> {
    /// The file.
    pub content: F,
    /// What is wrong, in the order of the text.
    pub problems: Vec<Problem>,
}

/// Reads a text; `name` is the name of the file, for the messages.
///
/// Everything that can be read is read, and everything that is wrong is reported, in one pass.
/// Missing fields are no problem. Only a text that is not TOML, or that a later program wrote,
/// gives a blank file with its one problem.
#[must_use]
pub fn read_file<F: File>(text: &str, name: &str) -> Read<F> {
    let located = |span: Option<std::ops::Range<usize>>, path: String, fault| Problem {
        file: name.to_owned(),
        place: span.map_or(Place::START, |span| Place::of(text, &span)),
        path,
        fault,
    };
    let alone = |span, path: &str, fault| Read {
        content: F::blank(),
        problems: vec![located(span, path.to_owned(), fault)],
    };
    let document = match Document::parse(text) {
        Ok(document) => document,
        Err(e) => {
            let says = e.message().to_owned();
            return alone(e.span(), "", Fault::Syntax { says });
        }
    };
    let stated = document.get("format");
    if let Some(read) = stated.and_then(toml_edit::Item::as_integer)
        && read > i64::from(F::FORMAT)
    {
        let known = F::FORMAT;
        let span = stated.and_then(toml_edit::Item::span);
        return alone(span, "format", Fault::FormatNewer { read, known });
    }
    let mut content = F::default();
    let found = load(&mut content, Some(document.as_table()), text);
    let mut problems: Vec<Problem> = found
        .into_iter()
        .map(|(span, path, fault)| located(span, path, fault))
        .collect();
    if content.format().is_absent() {
        problems.push(located(None, "format".to_owned(), Fault::FormatMissing));
    }
    problems.sort_by_key(|problem| problem.place);
    Read { content, problems }
}
