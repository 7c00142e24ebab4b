//! The one door to a root finder: a bracketed root of one unknown.
//!
//! There is no solve from a guess. A caller states the bracket, and hears plainly when the
//! function does not change sign in it.

use basin::{BrentRoot, BrentRootError};

/// A root with the evidence for it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Solved {
    /// The unknown.
    pub x: f64,
    /// What is left of the balance there.
    pub residual: f64,
    /// The bracket in which it was looked for.
    pub bracket: (f64, f64),
    /// How many times the balance was worked.
    pub rounds: usize,
}

/// Why no root was returned.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NotSolved {
    /// The balance has the same sign at both ends.
    #[error(
        "no balance between {low} and {high}: it is {at_low} at the one end and {at_high} at the other"
    )]
    NoSignChange {
        /// Lower end.
        low: f64,
        /// Upper end.
        high: f64,
        /// Balance at the lower end.
        at_low: f64,
        /// Balance at the upper end.
        at_high: f64,
    },
    /// The balance could not be worked at a point of the bracket.
    #[error("the balance cannot be worked at {x}")]
    NotWorked {
        /// Where.
        x: f64,
    },
    /// The root finder gave up.
    #[error("no balance to the accuracy asked between {low} and {high}")]
    NotConverged {
        /// Lower end.
        low: f64,
        /// Upper end.
        high: f64,
    },
}

/// Finds the root of `balance` in the bracket `low ..= high`.
///
/// `accuracy` is the absolute accuracy wanted of the unknown. The balance must be continuous and
/// change sign over the bracket; where it is monotone the root is the only one.
///
/// # Errors
/// [`NotSolved`] when there is no sign change, the balance cannot be worked somewhere, or the
/// accuracy is not reached in 200 rounds.
pub fn bracketed(
    low: f64,
    high: f64,
    accuracy: f64,
    mut balance: impl FnMut(f64) -> f64,
) -> Result<Solved, NotSolved> {
    let finder = BrentRoot::new(low, high)
        .with_absolute_position_tolerance(accuracy)
        .with_max_iter(200);
    let answer = finder.solve(|x| Ok::<_, std::convert::Infallible>(balance(x)));
    match answer {
        Ok(r) if r.converged() => Ok(Solved {
            x: r.root(),
            residual: r.value(),
            bracket: (low, high),
            rounds: usize::try_from(r.function_evals()).unwrap_or(usize::MAX),
        }),
        Ok(_) => Err(NotSolved::NotConverged { low, high }),
        Err(BrentRootError::NotBracketed {
            lower,
            upper,
            f_lower,
            f_upper,
        }) => Err(NotSolved::NoSignChange {
            low: lower,
            high: upper,
            at_low: f_lower,
            at_high: f_upper,
        }),
        Err(BrentRootError::NonFiniteValue { x, .. }) => Err(NotSolved::NotWorked { x }),
        Err(_) => Err(NotSolved::NotWorked { x: low }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_the_root_and_says_when_there_is_none() {
        let solved = bracketed(0.0, 2.0, 1e-12, |x| x * x - 2.0).expect("a root");
        assert!((solved.x - 2.0_f64.sqrt()).abs() < 1e-11);
        let none = bracketed(2.0, 3.0, 1e-12, |x| x * x - 2.0);
        assert!(matches!(none, Err(NotSolved::NoSignChange { at_low, .. }) if at_low > 0.0));
        let bad = bracketed(0.0, 3.0, 1e-12, |_| f64::NAN);
        assert!(matches!(bad, Err(NotSolved::NotWorked { .. })));
    }
}
