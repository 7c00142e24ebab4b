//! A bracketed root of a balance that may itself be refused.

use reckoning::solve::{Solved, bracketed};

use crate::fault::NotSettled;

/// Finds the root of `left` in a bracket. A refusal within the search is the one that is
/// returned, so that a reader hears what could not be worked and not only where.
pub(crate) fn seek(
    balance: &'static str,
    (low, high): (f64, f64),
    accuracy: f64,
    mut left: impl FnMut(f64) -> Result<f64, NotSettled>,
) -> Result<Solved, NotSettled> {
    let mut fault = None;
    let solved = bracketed(low, high, accuracy, |x| match left(x) {
        Ok(left) => left,
        Err(e) => {
            fault = Some(e);
            f64::NAN
        }
    });
    solved.map_err(|why| fault.unwrap_or(NotSettled::Balance { balance, why }))
}
