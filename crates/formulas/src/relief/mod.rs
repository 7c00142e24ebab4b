//! Safety valves: what the boiler can raise, and what a valve passes.

pub mod demand;
pub mod valve;

use reckoning::Refused;

/// A result that must be a positive number; otherwise the input named is refused.
fn positive(
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
