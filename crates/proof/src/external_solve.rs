//! A tube with pressure outside, turned round: the wall it needs, the ovality it bears.

use crate::external::{Limits, Tube};
use reckoning::solve::{NotSolved, Solved, bracketed};

/// Accuracy of walls and ovalities, mm.
const ACCURACY_MM: f64 = 1e-9;
/// Walls are looked for between these parts of the outside diameter.
const WALL_BRACKET: (f64, f64) = (1e-4, 0.16);
/// Greatest ovality in parts of the outside diameter for which the collapse curve holds.
const MOST_OVALITY: f64 = 0.01;

/// The least wall, mm, at which a tube of the diameter that is held bears `p_mpa` by the limits that
/// count.
///
/// # Errors
/// [`NotSolved`] when no wall up to 0.16 of the diameter does.
pub fn least_wall(tube: Tube, p_mpa: f64, of: Limits) -> Result<Solved, NotSolved> {
    let (low, high) = WALL_BRACKET;
    bracketed(
        low * tube.d_o_mm,
        high * tube.d_o_mm,
        ACCURACY_MM,
        |wall_mm| tube.with_wall(wall_mm).external().least(of).0 - p_mpa,
    )
}

/// The greatest ovality, mm, at which the tube still bears `p_mpa`, at most 1 % of the diameter;
/// `None` where not even a round one does.
#[must_use]
pub fn greatest_ovality(tube: Tube, p_mpa: f64) -> Option<f64> {
    let spare = |delta_mm: f64| Tube { delta_mm, ..tube }.external().least(Limits::All).0 - p_mpa;
    let most = MOST_OVALITY * tube.d_o_mm;
    if spare(most) >= 0.0 {
        return Some(most);
    }
    bracketed(0.0, most, ACCURACY_MM, spare).ok().map(|s| s.x)
}
