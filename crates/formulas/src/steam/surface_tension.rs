//! Surface tension of water against its vapour: release R1-76.

use super::saturation::T_CRITICAL_K;

/// Surface tension, N/m, at a temperature (K). The bare equation; published from the triple point
/// to the critical point.
#[must_use]
pub fn surface_tension(t_k: f64) -> f64 {
    let away = 1.0 - t_k / T_CRITICAL_K;
    235.8e-3 * away.powf(1.256) * (1.0 - 0.625 * away)
}
