//! Reading the value of a field from what is written: quantities, whole numbers, names, texts.

use reckoning::Typed;
use reckoning::quantity::parse::{Misread, read};
use reckoning::quantity::{Kind, Quantity};

use crate::field::{Choice, Limits};
use crate::problem::{Fault, nearest};
use crate::slot::Misfits;
use crate::written::{Shape, Written};

/// A quantity within its limits.
pub(crate) fn quantity<Q: Quantity>(
    written: &Written,
    limits: Limits,
    misfits: &mut Misfits,
) -> Option<Typed<Q>> {
    let typed = unlimited::<Q>(written, limits, misfits)?;
    let (low, high) = (limit::<Q>(limits.low), limit::<Q>(limits.high));
    if low <= typed.value && typed.value <= high {
        return Some(typed);
    }
    let fault = Fault::OutOfLimits {
        read: typed.text,
        low: limits.low.to_owned(),
        high: limits.high.to_owned(),
    };
    misfits.add(written, fault);
    None
}

/// A quantity, whatever its value; the limits only tell which unit to suggest.
pub(crate) fn unlimited<Q: Quantity>(
    written: &Written,
    limits: Limits,
    misfits: &mut Misfits,
) -> Option<Typed<Q>> {
    match &written.shape {
        Shape::Number(number) if Q::KIND == Kind::Ratio => {
            parse(written, &number.replace('_', ""), misfits)
        }
        Shape::Text { text, .. } if Q::KIND == Kind::Ratio || !is_number(text) => {
            parse(written, text, misfits)
        }
        Shape::Text { text, .. } | Shape::Number(text) => {
            let fault = Fault::BareNumber {
                read: text.trim().to_owned(),
                kind: Q::KIND,
                suggestion: format!("{} {}", text.trim(), unit_of(limits.low)),
            };
            misfits.add(written, fault);
            None
        }
        _ => {
            let example = format!("\"{}\"", limits.high);
            misfits.wrong_sort(written, "a quantity between quotes", &example);
            None
        }
    }
}

fn parse<Q: Quantity>(written: &Written, text: &str, misfits: &mut Misfits) -> Option<Typed<Q>> {
    match read::<Q>(text) {
        Ok(typed) => Some(typed),
        Err(misread) => {
            let span = within(written, text, &misread);
            misfits.0.push((span, Fault::Misread(misread)));
            None
        }
    }
}

/// The bytes from the fault to the end of the text, where the text stands letter for letter in
/// the file; else those of the whole value.
fn within(written: &Written, text: &str, misread: &Misread) -> Option<std::ops::Range<usize>> {
    let span = written.span.clone()?;
    if !matches!(written.shape, Shape::Text { plain: true, .. }) {
        return Some(span);
    }
    let skipped: usize = text
        .chars()
        .take(misread.column - 1)
        .map(char::len_utf8)
        .sum();
    let start = span.start + 1 + skipped;
    Some(start..(span.end - 1).max(start))
}

fn is_number(text: &str) -> bool {
    text.trim().parse::<f64>().is_ok()
}

/// The unit in which a limit is written.
fn unit_of(limit: &str) -> &str {
    limit.trim_start_matches(|c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '/' | ' '))
}

fn limit<Q: Quantity>(text: &str) -> Q {
    match read::<Q>(text) {
        Ok(typed) => typed.value,
        Err(e) => panic!("the limit of a field does not read, though a test reads all: {e}"),
    }
}

/// A whole number from `range.0` to `range.1`.
pub(crate) fn count(written: &Written, range: (u32, u32), misfits: &mut Misfits) -> Option<u32> {
    let Shape::Number(number) = &written.shape else {
        misfits.wrong_sort(
            written,
            "a whole number without quotes",
            &range.0.to_string(),
        );
        return None;
    };
    let Ok(whole) = number.replace('_', "").parse::<i64>() else {
        misfits.wrong_sort(written, "a whole number", &range.0.to_string());
        return None;
    };
    let inside = u32::try_from(whole)
        .ok()
        .filter(|count| (range.0..=range.1).contains(count));
    if inside.is_none() {
        let fault = Fault::OutOfLimits {
            read: number.clone(),
            low: range.0.to_string(),
            high: range.1.to_string(),
        };
        misfits.add(written, fault);
    }
    inside
}

/// One of the names of a choice.
pub(crate) fn choice<C: Choice>(written: &Written, misfits: &mut Misfits) -> Option<C> {
    let names = || C::NAMES.iter().map(|(_, name, _)| *name);
    let read = text_or(written, misfits, names().next().unwrap_or(""))?;
    if let Some((value, _, _)) = C::NAMES.iter().find(|(_, name, _)| *name == read) {
        return Some(*value);
    }
    let not_yet = || C::NOT_YET.iter().map(|(name, _)| *name);
    let fault = if not_yet().any(|name| name == read) {
        Fault::NotYet {
            read: read.to_owned(),
            worked: names().collect(),
        }
    } else {
        Fault::NotAChoice {
            read: read.to_owned(),
            allowed: names().chain(not_yet()).collect(),
            nearest: nearest(read, names().chain(not_yet())),
        }
    };
    misfits.add(written, fault);
    None
}

/// A text.
pub(crate) fn text(written: &Written, misfits: &mut Misfits) -> Option<String> {
    text_or(written, misfits, "plain words").map(str::to_owned)
}

/// The id of a row.
pub(crate) fn id(written: &Written, misfits: &mut Misfits) -> Option<String> {
    let read = text_or(written, misfits, "left-1")?;
    if is_id(read) {
        return Some(read.to_owned());
    }
    let read = read.to_owned();
    misfits.add(written, Fault::BadId { read });
    None
}

/// Whether a text may be an id: it becomes a part of paths, so it holds no dot and is no number.
pub(crate) fn is_id(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_lowercase())
        && text
            .split('-')
            .all(|part| !part.is_empty() && part.chars().all(is_id_letter))
}

fn is_id_letter(c: char) -> bool {
    c.is_ascii_lowercase() || c.is_ascii_digit()
}

fn text_or<'w>(written: &'w Written, misfits: &mut Misfits, example: &str) -> Option<&'w str> {
    if let Shape::Text { text, .. } = &written.shape {
        return Some(text);
    }
    misfits.wrong_sort(written, "a text between quotes", &format!("\"{example}\""));
    None
}

/// A list, each item read by `item`. An item that does not read leaves the whole list unread, so
/// that no sum rests on a part of what was meant.
pub(crate) fn list<T>(
    written: &Written,
    misfits: &mut Misfits,
    item: impl Fn(&Written, &mut Misfits) -> Option<T>,
) -> Option<Vec<T>> {
    let Shape::List(items) = &written.shape else {
        misfits.wrong_sort(written, "a list between square brackets", "[…, …]");
        return None;
    };
    let read: Vec<Option<T>> = items.iter().map(|w| item(w, misfits)).collect();
    read.into_iter().collect()
}
