//! Reading a size: a length, or `{ drawn, tolerance, made }`.
//!
//! A tolerance is `"0.1 mm"` or `"± 0.1 mm"` either way, `"10 %"` of the drawn size either way,
//! or `{ lower = "-0.1 mm", upper = "0.2 mm" }`, both of which must be given.

use reckoning::quantity::{Length, Ratio};
use reckoning::{Size, Tolerance, Typed};

use crate::field::{Limits, within};
use crate::problem::{Fault, nearest};
use crate::slot::Misfits;
use crate::value_text::{quantity, unlimited};
use crate::written::{Shape, Written};

/// The parts of a size between braces.
pub(crate) const PARTS: [&str; 3] = ["drawn", "tolerance", "made"];

/// The widest deviation that is read; more is a slip of the decimal point.
const DEVIATION: Limits = within("-20 mm", "20 mm");
/// Half the size either way is the widest share that is read.
const SHARE: Limits = within("0 %", "50 %");

/// A size whose drawn and made lengths lie within the limits.
pub(crate) fn size(written: &Written, limits: Limits, misfits: &mut Misfits) -> Option<Size> {
    let Shape::Table(parts) = &written.shape else {
        let drawn = quantity::<Length>(written, limits, misfits)?;
        return Some(Size::drawn(drawn.value, drawn.text));
    };
    check_parts(parts, &PARTS, misfits);
    let part = |name| part(parts, name);
    let made = part("made").map(|w| quantity::<Length>(w, limits, misfits));
    let drawn = match part("drawn") {
        Some(w) => quantity::<Length>(w, limits, misfits),
        None => {
            misfits.add(written, Fault::MissingPart { part: "drawn" });
            None
        }
    };
    let reach = drawn.as_ref().map(|d| d.value);
    let tolerance = part("tolerance").map(|w| tolerance(w, reach, misfits));
    // A part that does not read leaves the size unread: a proof would otherwise take the drawn
    // size where a measured one was meant.
    Some(Size {
        drawn: drawn?,
        tolerance: all_or_none(tolerance)?,
        made: all_or_none(made)?,
    })
}

/// `None` stays absent; a part that was given must have been read.
fn all_or_none<T>(part: Option<Option<T>>) -> Option<Option<T>> {
    match part {
        None => Some(None),
        Some(read) => read.map(Some),
    }
}

fn part<'w>(parts: &'w [(String, Written)], name: &str) -> Option<&'w Written> {
    parts
        .iter()
        .find(|(key, _)| key == name)
        .map(|(_, written)| written)
        .filter(|written| !written.is_empty_text())
}

fn check_parts(parts: &[(String, Written)], known: &[&str], misfits: &mut Misfits) {
    for (key, written) in parts {
        if !known.contains(&key.as_str()) {
            let fault = Fault::UnknownKey {
                key: key.clone(),
                allowed: known.iter().map(|&name| name.to_owned()).collect(),
                nearest: nearest(key, known.iter().copied()).map(str::to_owned),
            };
            misfits.add(written, fault);
        }
    }
}

/// `drawn` is missing where the drawn size itself did not read; a share of it then has no value.
fn tolerance(written: &Written, drawn: Option<Length>, misfits: &mut Misfits) -> Option<Tolerance> {
    match &written.shape {
        Shape::Table(parts) => between(written, parts, misfits),
        Shape::Text { text, .. } => {
            let bare = ["±", "+/-", "+-"]
                .iter()
                .find_map(|sign| text.trim_start().strip_prefix(sign))
                .unwrap_or(text);
            let stripped = Written {
                shape: Shape::Text {
                    text: bare.trim_start().to_owned(),
                    plain: bare == text && bare.trim_start() == text,
                },
                span: written.span.clone(),
            };
            either_way(&stripped, drawn, misfits)
        }
        _ => {
            misfits.wrong_sort(written, "a deviation between quotes", "\"± 0.1 mm\"");
            None
        }
    }
}

fn either_way(
    written: &Written,
    drawn: Option<Length>,
    misfits: &mut Misfits,
) -> Option<Tolerance> {
    let is_share =
        matches!(&written.shape, Shape::Text { text, .. } if text.trim_end().ends_with('%'));
    let reach = if is_share {
        let share = quantity::<Ratio>(written, SHARE, misfits)?.value;
        drawn? * share.number()
    } else {
        let deviation = within("0 mm", DEVIATION.high);
        quantity::<Length>(written, deviation, misfits)?.value
    };
    Some(Tolerance {
        lower: reach * -1.0,
        upper: reach,
    })
}

fn between(
    written: &Written,
    parts: &[(String, Written)],
    misfits: &mut Misfits,
) -> Option<Tolerance> {
    check_parts(parts, &["lower", "upper"], misfits);
    let mut end = |name: &'static str, sign: f64| {
        let Some(deviation) = part(parts, name) else {
            misfits.add(written, Fault::MissingPart { part: name });
            return None;
        };
        let Typed { value, text } = unlimited::<Length>(deviation, DEVIATION, misfits)?;
        if value.m() * sign < 0.0 {
            let fault = Fault::CrossedTolerance {
                read: text,
                part: name,
            };
            misfits.add(deviation, fault);
            return None;
        }
        quantity::<Length>(deviation, DEVIATION, misfits).map(|typed| typed.value)
    };
    let (lower, upper) = (end("lower", -1.0), end("upper", 1.0));
    Some(Tolerance {
        lower: lower?,
        upper: upper?,
    })
}
