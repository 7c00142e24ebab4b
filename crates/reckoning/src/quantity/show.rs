//! Showing numbers and quantities.
//!
//! Digits are shown as far as something supports them: a count of figures, an uncertainty, or the
//! marks on a rule.

use super::{Length, Unit};

/// A number to `n` significant figures, without an exponent between 1e-4 and 1e7.
#[must_use]
pub fn figures(x: f64, n: usize) -> String {
    if x == 0.0 {
        return "0".to_owned();
    }
    if !x.is_finite() {
        return x.to_string();
    }
    let places = n.max(1) - 1;
    let scientific = format!("{x:.places$e}");
    let Some((_, exponent)) = scientific.split_once('e') else {
        return scientific;
    };
    let exponent: i32 = exponent.parse().unwrap_or(0);
    if !(-4..7).contains(&exponent) {
        return scientific;
    }
    let rounded: f64 = scientific.parse().unwrap_or(x);
    let decimals = usize::try_from(i32::try_from(places).unwrap_or(0) - exponent).unwrap_or(0);
    format!("{rounded:.decimals$}")
}

/// A quantity in a unit, to `n` significant figures: `36.51 mm`.
#[must_use]
pub fn quantity(si: f64, unit: &Unit, n: usize) -> String {
    with_unit(&figures(unit.from_si(si), n), unit)
}

/// A number to the digit that its uncertainty supports: the second figure of the half width is
/// the last one shown. A half width of nothing, or one that is not a number, supports six figures.
#[must_use]
pub fn to_uncertainty(value: f64, half_width: f64) -> String {
    let Some(last) = last_digit(half_width).filter(|_| value.is_finite()) else {
        return figures(value, 6);
    };
    let size = value.abs().max(half_width.abs());
    if !(1e-4..1e7).contains(&size) {
        let count = exponent(value) - last + 1;
        return figures(value, usize::try_from(count).unwrap_or(1));
    }
    let shown = match usize::try_from(-last) {
        Ok(decimals) => format!("{value:.decimals$}"),
        Err(_) => {
            let step = 10_f64.powi(last);
            format!("{:.0}", (value / step).round() * step)
        }
    };
    let nothing = shown.bytes().all(|b| matches!(b, b'-' | b'0' | b'.'));
    match shown.strip_prefix('-') {
        Some(unsigned) if nothing => unsigned.to_owned(),
        _ => shown,
    }
}

/// A range in a unit, each end to the digit that half its width supports: `12.1 to 14.8 mm`.
#[must_use]
pub fn range(low_si: f64, high_si: f64, unit: &Unit) -> String {
    let (low, high) = (unit.from_si(low_si), unit.from_si(high_si));
    let half = (high - low).abs() / 2.0;
    let (low, high) = (to_uncertainty(low, half), to_uncertainty(high, half));
    with_unit(&format!("{low} to {high}"), unit)
}

/// A length as the nearest sixty-fourth of an inch, reduced.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nearest64 {
    /// Whether the length is below nothing.
    pub negative: bool,
    /// Whole inches.
    pub whole: u64,
    /// The number above the line; 0 where the length is whole inches.
    pub numerator: u64,
    /// The number below the line, a power of two up to 64; 1 where the length is whole inches.
    pub denominator: u64,
    /// The fraction less the length.
    pub error: Length,
}

/// The sixty-fourth of an inch nearest to a length.
#[must_use]
pub fn nearest_64th(length: Length) -> Nearest64 {
    let rounded = (length.inch() * 64.0).round();
    // Lengths of makers are far below 2^53 sixty-fourths; a greater one shows in the error.
    let count = rounded.abs() as u64;
    let shift = (count % 64).trailing_zeros().min(6);
    Nearest64 {
        negative: rounded < 0.0,
        whole: count / 64,
        numerator: (count % 64) >> shift,
        denominator: 64 >> shift,
        error: Length::from_inch(rounded / 64.0) - length,
    }
}

impl std::fmt::Display for Nearest64 {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let sign = if self.negative { "-" } else { "" };
        match (self.whole, self.numerator) {
            (whole, 0) => write!(f, "{sign}{whole} in"),
            (0, above) => write!(f, "{sign}{above}/{} in", self.denominator),
            (whole, above) => write!(f, "{sign}{whole} {above}/{} in", self.denominator),
        }
    }
}

fn with_unit(number: &str, unit: &Unit) -> String {
    if unit.symbol.is_empty() {
        number.to_owned()
    } else {
        format!("{number} {}", unit.symbol)
    }
}

/// The power of ten of the second figure of a number; `None` where it has none.
fn last_digit(half_width: f64) -> Option<i32> {
    if half_width == 0.0 || !half_width.is_finite() {
        return None;
    }
    let rounded: f64 = format!("{half_width:.1e}").parse().ok()?;
    Some(exponent(rounded) - 1)
}

/// The power of ten of the first figure.
fn exponent(x: f64) -> i32 {
    let scientific = format!("{x:e}");
    let exponent = scientific.split_once('e').map_or("0", |(_, e)| e);
    exponent.parse().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{MM, PSI_GAUGE, Quantity};

    #[test]
    fn fractions_are_reduced_and_tell_their_error() {
        for (mm, wanted) in [
            (36.5125, "1 7/16 in"),
            (36.4, "1 7/16 in"),
            (9.525, "3/8 in"),
            (50.8, "2 in"),
            (0.0, "0 in"),
            (0.1, "0 in"),
            (25.2, "63/64 in"),
            (25.3, "1 in"),
            (-38.1, "-1 1/2 in"),
        ] {
            let near = nearest_64th(Length::from_mm(mm));
            assert_eq!(near.to_string(), wanted);
            assert!(near.error.inch().abs() <= 1.0 / 128.0 + 1e-12);
        }
        let near = nearest_64th(Length::from_mm(36.4));
        assert!((near.error.mm() - 0.1125).abs() < 1e-9);
        assert_eq!((near.whole, near.numerator, near.denominator), (1, 7, 16));
    }

    #[test]
    fn uncertainty_decides_the_last_digit() {
        for (value, half, wanted) in [
            (12.3456, 0.56, "12.35"),
            (12.3456, 5.6, "12.3"),
            (1234.56, 560.0, "1230"),
            (1234.56, 0.0996, "1234.56"),
            (0.04, 56.0, "0"),
            (-0.04, 5.6, "0.0"),
            (9.996, 0.12, "10.00"),
            (1.234_567e9, 2.3e7, "1.235e9"),
            (3.2e-6, 4.5e-7, "3.20e-6"),
            (12.345_678_9, 0.0, "12.3457"),
        ] {
            assert_eq!(to_uncertainty(value, half), wanted, "{value} by {half}");
        }
    }

    #[test]
    fn quantities_and_ranges_carry_their_unit() {
        assert_eq!(quantity(0.036_512_5, &MM, 4), "36.51 mm");
        let (low, high) = (Length::from_mm(12.13), Length::from_mm(14.77));
        assert_eq!(range(low.si(), high.si(), &MM), "12.1 to 14.8 mm");
        let (low, high) = (PSI_GAUGE.to_si(71.0), PSI_GAUGE.to_si(93.0));
        assert_eq!(range(low, high, &PSI_GAUGE), "71 to 93 psi");
    }
}
