//! The number at the head of a quantity: whole, decimal, fraction, or whole and fraction.

use winnow::ascii::digit1;
use winnow::combinator::{alt, opt};
use winnow::prelude::*;
use winnow::token::{any, one_of, take_while};

/// How a number was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Form {
    /// Digits alone.
    Whole,
    /// With a point or an exponent.
    Decimal,
    /// A fraction, or a whole number and a fraction.
    Fraction {
        /// The number under the line.
        denominator: u32,
    },
}

/// A number as read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Number {
    /// Its value.
    pub(super) value: f64,
    /// How it was written.
    pub(super) form: Form,
}

/// Why there is no number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum NoNumber<'a> {
    /// The text begins with something else.
    None,
    /// A fraction over zero.
    OverNothing,
    /// A comma stands in the number; it could be meant in two ways.
    Comma {
        /// What stands before it.
        before: &'a str,
        /// What stands after it.
        after: &'a str,
    },
}

/// Whether a number can begin with this character.
pub(super) fn begins(c: char) -> bool {
    c.is_ascii_digit() || is_sign(c) || c == '.' || glyph_value(c).is_some()
}

/// Reads the number at the head of `text` and gives what is left.
pub(super) fn read(text: &str) -> Result<(Number, &str), NoNumber<'_>> {
    let mut rest = text;
    let (negative, number) = signed.parse_next(&mut rest).map_err(|_| NoNumber::None)?;
    if let Form::Fraction { denominator: 0 } = number.form {
        return Err(NoNumber::OverNothing);
    }
    let after_comma = rest.strip_prefix(',').unwrap_or("");
    if after_comma.starts_with(|c: char| c.is_ascii_digit()) {
        return Err(NoNumber::Comma {
            before: &text[..text.len() - rest.len()],
            after: after_comma.trim_end(),
        });
    }
    let value = if negative {
        -number.value
    } else {
        number.value
    };
    Ok((Number { value, ..number }, rest))
}

fn is_sign(c: char) -> bool {
    matches!(c, '-' | '+' | '\u{2212}')
}

fn signed(i: &mut &str) -> winnow::Result<(bool, Number)> {
    let sign = opt(one_of(is_sign)).parse_next(i)?;
    take_while(0.., char::is_whitespace).parse_next(i)?;
    let number = alt((mixed, vulgar.map(|f| fraction(0.0, f)), decimal)).parse_next(i)?;
    Ok((matches!(sign, Some('-' | '\u{2212}')), number))
}

/// Numerator and denominator.
type Vulgar = (u32, u32);

fn fraction(whole: f64, (above, below): Vulgar) -> Number {
    Number {
        value: whole + f64::from(above) / f64::from(below),
        form: Form::Fraction { denominator: below },
    }
}

/// A whole number and a fraction: `1 7/16`, `1-7/16`, `1½`.
fn mixed(i: &mut &str) -> winnow::Result<Number> {
    let whole: u32 = digit1.parse_to().parse_next(i)?;
    let joined = alt(((joint, vulgar).map(|(_, f)| f), glyph)).parse_next(i)?;
    Ok(fraction(f64::from(whole), joined))
}

fn joint(i: &mut &str) -> winnow::Result<()> {
    alt((
        one_of(['-', '\u{2010}', '\u{2011}']).void(),
        take_while(1.., char::is_whitespace).void(),
    ))
    .parse_next(i)
}

fn vulgar(i: &mut &str) -> winnow::Result<Vulgar> {
    alt((slashed, glyph)).parse_next(i)
}

fn slashed(i: &mut &str) -> winnow::Result<Vulgar> {
    let above = digit1.parse_to().parse_next(i)?;
    one_of(['/', '\u{2044}']).parse_next(i)?;
    let below = digit1.parse_to().parse_next(i)?;
    Ok((above, below))
}

fn glyph(i: &mut &str) -> winnow::Result<Vulgar> {
    any.verify_map(glyph_value).parse_next(i)
}

/// The fractions that have a character of their own.
fn glyph_value(c: char) -> Option<Vulgar> {
    Some(match c {
        '½' => (1, 2),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        _ => return None,
    })
}

fn decimal(i: &mut &str) -> winnow::Result<Number> {
    let digits0 = || take_while(0.., |c: char| c.is_ascii_digit());
    let exponent = (one_of(['e', 'E']), opt(one_of(['-', '+'])), digit1);
    let written = (
        alt(((digit1, opt(('.', digits0()))).void(), ('.', digit1).void())),
        opt(exponent),
    )
        .take()
        .parse_next(i)?;
    let form = if written.bytes().all(|b| b.is_ascii_digit()) {
        Form::Whole
    } else {
        Form::Decimal
    };
    // Only digits, a point and an exponent stand here, so the standard reader knows them all.
    let value = written.parse().unwrap_or(f64::NAN);
    Ok(Number { value, form })
}
