//! Looking a unit up by the ways in which it is written.

use super::super::{Kind, UNITS, Unit};

/// Greatest distance, in letters, of a spelling that is offered instead.
const NEAR: usize = 2;

/// Whether a pressure was said to be above the atmosphere or above vacuum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Stated {
    Gauge,
    Absolute,
}

/// The unit of this kind that is written so.
pub(super) fn find(kind: Kind, name: &str) -> Option<&'static Unit> {
    let name = tidy(name);
    let found = spelt(kind, &name);
    if found.is_some() {
        return found;
    }
    match (kind, split_stated(&name)) {
        (Kind::Gauge, Some((base, Stated::Gauge)))
        | (Kind::Absolute, Some((base, Stated::Absolute))) => spelt(kind, base),
        _ => None,
    }
}

/// What the text says of the pressure, where that is not the kind wanted.
pub(super) fn stated_pressure(kind: Kind, name: &str) -> Option<Stated> {
    let name = tidy(name);
    let (base, stated) = split_stated(&name)?;
    let other = match (kind, stated) {
        (Kind::Gauge, Stated::Absolute) => Kind::Absolute,
        (Kind::Absolute, Stated::Gauge) => Kind::Gauge,
        _ => return None,
    };
    spelt(other, base).map(|_| stated)
}

/// The first kind that has a unit of this name.
pub(super) fn other_kind(name: &str) -> Option<Kind> {
    let name = tidy(name);
    UNITS
        .iter()
        .find(|unit| !name.is_empty() && spellings(unit).any(|s| s == name))
        .map(|unit| unit.kind)
}

/// The spelling of this kind that lies nearest to a misspelt one, where one lies near.
pub(super) fn nearest(kind: Kind, name: &str) -> Option<&'static str> {
    let name = tidy(name);
    let lower = name.to_lowercase();
    kind.units()
        .flat_map(spellings)
        .filter(|s| !s.is_empty())
        .map(|s| (strsim::levenshtein(&s.to_lowercase(), &lower), s))
        .filter(|(distance, s)| *distance <= NEAR && *distance < s.chars().count())
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, s)| s)
}

fn spellings(unit: &'static Unit) -> impl Iterator<Item = &'static str> {
    std::iter::once(unit.symbol).chain(unit.also.iter().copied())
}

/// The unit spelt so exactly, else the only one spelt so but for the case of its letters.
fn spelt(kind: Kind, name: &str) -> Option<&'static Unit> {
    if name.is_empty() {
        return None;
    }
    let exact = kind.units().find(|u| spellings(u).any(|s| s == name));
    if exact.is_some() {
        return exact;
    }
    let mut alike = kind
        .units()
        .filter(|u| spellings(u).any(|s| same_but_for_case(s, name)));
    let first = alike.next();
    if alike.next().is_some() { None } else { first }
}

/// Letters may stand in either case, as on a drawing; not `m`, which is milli, mega and metre.
fn same_but_for_case(a: &str, b: &str) -> bool {
    a.chars().count() == b.chars().count()
        && a.chars()
            .zip(b.chars())
            .all(|(a, b)| a == b || (!matches!(a, 'm' | 'M') && a.eq_ignore_ascii_case(&b)))
}

/// Splits off what is said of a pressure, and gives the unit before it.
fn split_stated(name: &str) -> Option<(&str, Stated)> {
    let words = [
        (" absolute", Stated::Absolute),
        (" abs", Stated::Absolute),
        (" a", Stated::Absolute),
        (" gauge", Stated::Gauge),
        (" g", Stated::Gauge),
    ];
    let joined = [
        ("psia", "psi", Stated::Absolute),
        ("bara", "bar", Stated::Absolute),
        ("psig", "psi", Stated::Gauge),
        ("barg", "bar", Stated::Gauge),
    ];
    let by_word = words.iter().find_map(|(ending, stated)| {
        let cut = name.len().checked_sub(ending.len())?;
        let tail = name.get(cut..)?;
        tail.eq_ignore_ascii_case(ending)
            .then(|| (&name[..cut], *stated))
    });
    by_word.or_else(|| {
        joined
            .iter()
            .find(|(whole, _, _)| name.eq_ignore_ascii_case(whole))
            .map(|(_, base, stated)| (*base, *stated))
    })
}

/// Brings the marks that look alike to those of the table: quotes, degree, micro, powers, spaces.
fn tidy(name: &str) -> String {
    let mut out = String::with_capacity(name.len());
    for c in name.trim().chars() {
        match c {
            '\u{201d}' | '\u{201c}' | '\u{2033}' => out.push('"'),
            '\u{2019}' | '\u{2018}' | '\u{2032}' => out.push('\''),
            '\u{ba}' => out.push('°'),
            '\u{2103}' => out.push_str("°C"),
            '\u{2109}' => out.push_str("°F"),
            '\u{3bc}' => out.push('µ'),
            '.' | '^' => {}
            c if c.is_whitespace() => {
                if !out.ends_with([' ', '/', '°']) {
                    out.push(' ');
                }
            }
            '/' => {
                out.truncate(out.trim_end().len());
                out.push('/');
            }
            c => out.push(c),
        }
    }
    out
}
