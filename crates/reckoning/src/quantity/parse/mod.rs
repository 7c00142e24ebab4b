//! Reading what makers write.
//!
//! A quantity is a number with its unit (`1 7/16 in`, `36.5 mm`, `80 psi`, `350 °F`), two numbers
//! where the trade writes two (`1 h 20 min`, `5 ft 6 in`), a sheet by gauge (`16 swg`) or a drill
//! by number or letter (`No 31`, `letter F`). A bare fraction of a power of two is inches, as the
//! trade writes it; any other bare number of a dimensional kind is refused. The unit is read as
//! one token and looked up in the table of units, so the grammar knows no unit by name.
//!
//! Left out: sums, ranges, numbers in words, a decimal comma.

mod misread;
mod named;
mod number;
mod spelling;

pub use misread::Misread;

use super::{FOOT, HOUR, INCH, Kind, MINUTE, OUNCE, POUND, Quantity, SECOND, Unit};
use crate::size::Typed;
use misread::{Fault, wanted};
use number::{Form, NoNumber, Number};

/// The pairs of units that the trade writes one after the other.
static PAIRS: &[(&Unit, &Unit)] = &[
    (&HOUR, &MINUTE),
    (&HOUR, &SECOND),
    (&MINUTE, &SECOND),
    (&FOOT, &INCH),
    (&POUND, &OUNCE),
];

/// The greatest denominator of a bare fraction that is read as inches.
const FINEST_BARE_FRACTION: u32 = 64;

/// Reads a quantity and keeps the text as it was typed.
///
/// # Errors
/// [`Misread`], with the column and with what was meant instead.
pub fn read<Q: Quantity>(text: &str) -> Result<Typed<Q>, Misread> {
    Ok(Typed {
        value: Q::from_si(read_kind(Q::KIND, text)?),
        text: text.to_owned(),
    })
}

/// Reads a quantity of a kind that is known only when the program runs; the result is in SI.
///
/// # Errors
/// As [`read`].
pub fn read_kind(kind: Kind, text: &str) -> Result<f64, Misread> {
    let reader = Reader { kind, text };
    let start = text.trim_start();
    if start.is_empty() {
        return Err(reader.misread(start, "nothing is written".to_owned(), wanted(kind)));
    }
    let si = match named::size(start) {
        Some(found) => reader.named(start, found)?,
        None => reader.amount(start)?,
    };
    if si.is_finite() {
        Ok(si)
    } else {
        Err(reader.misread(start, "the number is too large".to_owned(), wanted(kind)))
    }
}

/// One text with the kind that is wanted of it.
struct Reader<'a> {
    kind: Kind,
    text: &'a str,
}

impl Reader<'_> {
    /// A fault at the place where `rest`, a tail of the text, begins.
    fn misread(&self, rest: &str, read: String, meant: String) -> Misread {
        let before = self.text.len() - rest.len();
        Misread {
            text: self.text.trim().to_owned(),
            column: self.text[..before].chars().count() + 1,
            read,
            meant,
        }
    }

    fn fault(&self, rest: &str, fault: &Fault<'_>) -> Misread {
        self.misread(rest, fault.read(self.kind), fault.meant(self.kind))
    }

    /// A drill or a gauge number, found by name.
    fn named(&self, start: &str, found: Result<f64, named::NoSuch>) -> Result<f64, Misread> {
        if self.kind != Kind::Length {
            return Err(self.fault(start, &Fault::SizeByName));
        }
        match found {
            Ok(inch) => Ok(INCH.to_si(inch)),
            Err(no_such) => Err(self.misread(start, no_such.read, no_such.meant)),
        }
    }

    /// One number with its unit, or two.
    fn amount(&self, start: &str) -> Result<f64, Misread> {
        let (number, rest) = self.number(start)?;
        let rest = rest.trim_start();
        let name = rest.trim_end();
        if name.is_empty() {
            return self.bare(&number, start);
        }
        if self.kind == Kind::Length && named::is_gauge(name) {
            return self.sheet(&number, name, start, rest);
        }
        if let Some(unit) = spelling::find(self.kind, name) {
            return Ok(unit.to_si(number.value));
        }
        match self.pair(&number, rest) {
            Some(pair) => pair,
            None => Err(self.unknown_unit(start, rest)),
        }
    }

    fn number<'r>(&self, at: &'r str) -> Result<(Number, &'r str), Misread> {
        number::read(at).map_err(|no_number| match no_number {
            NoNumber::None => self.fault(at, &Fault::NoNumber(at)),
            NoNumber::OverNothing => self.fault(at, &Fault::OverNothing),
            NoNumber::Comma { before, after } => {
                self.fault(&at[before.len()..], &Fault::Comma { before, after })
            }
        })
    }

    /// A number without a unit.
    fn bare(&self, number: &Number, start: &str) -> Result<f64, Misread> {
        match (self.kind, number.form) {
            (Kind::Ratio, _) => Ok(number.value),
            (Kind::Length, Form::Fraction { denominator })
                if denominator.is_power_of_two()
                    && (2..=FINEST_BARE_FRACTION).contains(&denominator) =>
            {
                Ok(INCH.to_si(number.value))
            }
            _ => Err(self.fault(start, &Fault::NoUnit)),
        }
    }

    /// A sheet by gauge; the number must be a whole one of the table.
    fn sheet(&self, number: &Number, name: &str, start: &str, at: &str) -> Result<f64, Misread> {
        match named::gauge(number, name) {
            Ok(inch) => Ok(INCH.to_si(inch)),
            Err(no_such) => {
                let place = if no_such.about_name { at } else { start };
                Err(self.misread(place, no_such.read, no_such.meant))
            }
        }
    }

    /// Two numbers with their units, such as `1 h 20 min`; `None` where it is not so written.
    fn pair(&self, first: &Number, rest: &str) -> Option<Result<f64, Misread>> {
        let end = rest.find(|c: char| c.is_whitespace() || number::begins(c))?;
        let large = spelling::find(self.kind, &rest[..end])?;
        let start = rest[end..].trim_start();
        if !start.starts_with(number::begins) {
            return None;
        }
        let (second, tail) = match self.number(start) {
            Ok(found) => found,
            Err(misread) => return Some(Err(misread)),
        };
        let small = spelling::find(self.kind, tail.trim())?;
        PAIRS
            .iter()
            .any(|(a, b)| *a == large && *b == small)
            .then(|| {
                if second.value.is_sign_negative() {
                    return Err(self.fault(start, &Fault::SecondNegative));
                }
                let sign = if first.value.is_sign_negative() {
                    -1.0
                } else {
                    1.0
                };
                Ok(large.to_si(first.value) + small.to_si(sign * second.value))
            })
    }

    fn unknown_unit(&self, start: &str, rest: &str) -> Misread {
        let name = rest.trim_end();
        if let Some(stated) = spelling::stated_pressure(self.kind, name) {
            return self.fault(rest, &Fault::OtherPressure { name, stated });
        }
        if let Some(other) = spelling::other_kind(name) {
            return self.fault(rest, &Fault::OtherKind { name, other });
        }
        if name.starts_with(number::begins) {
            return self.fault(rest, &Fault::MoreThanOne(name));
        }
        let written = start[..start.len() - rest.len()].trim_end();
        let near = spelling::nearest(self.kind, name);
        self.fault(
            rest,
            &Fault::UnknownUnit {
                name,
                near,
                written,
            },
        )
    }
}

#[cfg(test)]
mod tests;
