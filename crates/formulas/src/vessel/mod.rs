//! Strength of pressure parts: shells, ligaments, openings, flues under external pressure, flat
//! plates and stays, one family a file.
//!
//! Thicknesses are the least left after tolerance, forming and corrosion; pressures are gauge.

pub mod allow;
pub mod annulus;
pub mod bush_joint;
pub mod dish;
pub mod european;
pub mod factor_of_safety;
pub mod flat_end;
pub mod floor;
pub mod foundation;
pub mod furnace;
pub mod girder;
pub mod heated;
pub mod lap;
pub mod ligament;
pub mod lower_bound;
pub mod opening;
pub mod oval;
pub mod overlap;
pub mod plate_disc;
pub mod plate_stayed;
pub mod pressure_area;
pub mod register;
pub mod ring;
pub mod shell;
pub mod shell_buckling;
pub mod state;
pub mod state_crown;
pub mod stay;
pub mod stay_rod;
pub mod thick;
pub mod tie;
pub mod viii_external;

use reckoning::Refused;

/// A result that must be a positive number; otherwise the input named is refused.
pub(crate) fn positive(
    result: f64,
    card: &'static str,
    (symbol, value): (&'static str, f64),
    why: &'static str,
) -> Result<f64, Refused> {
    if result.is_finite() && result > 0.0 {
        Ok(result)
    } else {
        Err(Refused {
            card,
            symbol,
            value,
            why,
        })
    }
}
