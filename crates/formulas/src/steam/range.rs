//! The range that this module serves, and the refusal outside it.

use reckoning::quantity::CELSIUS;

/// Least pressure served, Pa: that of the saturation line at 0 °C, rounded up as the release does.
pub const P_MIN_PA: f64 = 611.213;
/// Greatest pressure served, Pa. The equations go further; the metastable one does not, and no
/// plant of this kind comes near.
pub const P_MAX_PA: f64 = 10e6;
/// Greatest temperature served, K (800 °C).
pub const T_MAX_K: f64 = 1073.15;
/// Temperature, K, at which region 1 ends (350 °C).
pub const T_REGION1_MAX_K: f64 = 623.15;

/// Least temperature served, K (0 °C).
#[must_use]
#[inline]
pub fn t_min_k() -> f64 {
    CELSIUS.to_si(0.0)
}

/// A value outside the range that the steam equations serve.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("steam and water: {what} {value} {unit} lies outside {low} to {high} {unit}")]
pub struct OutOfRange {
    /// Which value.
    pub what: &'static str,
    /// What it was.
    pub value: f64,
    /// Its unit.
    pub unit: &'static str,
    /// Least value served.
    pub low: f64,
    /// Greatest value served.
    pub high: f64,
}

/// Passes a value that lies in `low ..= high`; what is not a number does not.
#[inline]
pub(super) fn within(
    what: &'static str,
    unit: &'static str,
    value: f64,
    (low, high): (f64, f64),
) -> Result<f64, OutOfRange> {
    if low <= value && value <= high {
        Ok(value)
    } else {
        Err(OutOfRange {
            what,
            value,
            unit,
            low,
            high,
        })
    }
}

#[inline]
pub(super) fn served_pressure(p_pa: f64) -> Result<f64, OutOfRange> {
    within("pressure", "Pa", p_pa, (P_MIN_PA, P_MAX_PA))
}

#[inline]
pub(super) fn served_temperature(t_k: f64) -> Result<f64, OutOfRange> {
    within("temperature", "K", t_k, (t_min_k(), T_MAX_K))
}
