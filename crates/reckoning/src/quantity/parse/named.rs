//! Sizes that go by a name: drills by number and letter, sheet by gauge.

use super::super::drill;
use super::number::{Form, Number};

/// A name that no table holds.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct NoSuch {
    pub(super) read: String,
    pub(super) meant: String,
    /// Whether the fault is the name of the gauge rather than the number.
    pub(super) about_name: bool,
}

/// The size in inches of a text such as `No 31`, `#31`, `letter F`, `swg 16`; `None` where the
/// text is not of that form.
pub(super) fn size(text: &str) -> Option<Result<f64, NoSuch>> {
    let lower = text.trim().to_ascii_lowercase();
    let lower = lower.strip_suffix("drill").unwrap_or(&lower).trim_end();
    if let Some(rest) = lower.strip_prefix("letter") {
        return letter(rest.trim());
    }
    for prefix in ["swg", "bwg"] {
        if let Some(number) = lower.strip_prefix(prefix).and_then(digits) {
            return Some(gauge_number(number, prefix));
        }
    }
    ["number", "no.", "no", "#"]
        .iter()
        .find_map(|prefix| lower.strip_prefix(prefix))
        .and_then(digits)
        .map(number_drill)
}

/// Whether the unit speaks of sheet gauge.
pub(super) fn is_gauge(name: &str) -> bool {
    matches!(plain(name).as_str(), "swg" | "bwg" | "gauge" | "ga" | "g")
}

/// The thickness in inches of sheet number `number` of the gauge called `name`.
pub(super) fn gauge(number: &Number, name: &str) -> Result<f64, NoSuch> {
    let name = plain(name);
    if !matches!(name.as_str(), "swg" | "bwg") {
        return Err(NoSuch {
            read: "a gauge must carry its name".into(),
            meant: "for instance `16 swg` or `16 bwg`".into(),
            about_name: true,
        });
    }
    if number.form != Form::Whole || number.value.is_sign_negative() {
        return Err(NoSuch {
            read: format!("{name} goes by whole numbers"),
            meant: format!("for instance `16 {name}`"),
            about_name: false,
        });
    }
    gauge_number(number.value, &name)
}

fn plain(name: &str) -> String {
    name.trim().to_ascii_lowercase().replace('.', "")
}

fn digits(text: &str) -> Option<f64> {
    let text = text.trim();
    let all = !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    all.then(|| text.parse().unwrap_or(f64::INFINITY))
}

fn gauge_number(number: f64, name: &str) -> Result<f64, NoSuch> {
    let table = if name == "swg" {
        drill::SWG
    } else {
        drill::BWG
    };
    let row = table
        .iter()
        .find(|row| (f64::from(row.number) - number).abs() < 0.5);
    row.map(|row| row.inch).ok_or_else(|| NoSuch {
        read: format!("no sheet {number} is in the table of {name}"),
        meant: format!(
            "it holds {} to {}",
            table.first().map_or(0, |r| r.number),
            table.last().map_or(0, |r| r.number)
        ),
        about_name: false,
    })
}

fn number_drill(number: f64) -> Result<f64, NoSuch> {
    let place = (1..)
        .zip(drill::NUMBER_DRILLS)
        .find(|(n, _)| (f64::from(*n) - number).abs() < 0.5);
    place.map(|(_, inch)| *inch).ok_or_else(|| NoSuch {
        read: format!("there is no number drill {number}"),
        meant: format!("they run from 1 to {}", drill::NUMBER_DRILLS.len()),
        about_name: false,
    })
}

fn letter(text: &str) -> Option<Result<f64, NoSuch>> {
    let mut chars = text.chars();
    let (letter, None) = (chars.next()?, chars.next()) else {
        return None;
    };
    let place = ('a'..='z')
        .zip(drill::LETTER_DRILLS)
        .find(|(c, _)| *c == letter);
    Some(place.map(|(_, inch)| *inch).ok_or_else(|| NoSuch {
        read: format!("there is no letter drill {letter}"),
        meant: "they run from A to Z".into(),
        about_name: false,
    }))
}
