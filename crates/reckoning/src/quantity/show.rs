//! Showing numbers and quantities.

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
