//! Why a balance was refused.

use formulas::steam::OutOfRange;
use reckoning::Refused;
use reckoning::solve::NotSolved;

use crate::starved::Starved;

/// The loop found no state, and says which balance or value was at fault.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NotSettled {
    /// A balance has no root in its bracket.
    #[error("{balance}: {why}")]
    Balance {
        /// The balance, in words.
        balance: &'static str,
        /// What the search met.
        why: NotSolved,
    },
    /// A steam state lies outside the published equations.
    #[error(transparent)]
    Steam(#[from] OutOfRange),
    /// A formula refused its inputs.
    #[error(transparent)]
    Formula(#[from] Refused),
    /// A flame gets less air than it needs.
    #[error("{0}")]
    NotEnoughAir(Starved),
    /// A bed makes more gas than the air over it can burn.
    #[error(
        "bed and holes over the fire bring {ratio:.2} of the air that the fuel needs; open the \
         holes, thin the fire, or fire larger lumps"
    )]
    Smothered {
        /// Air over air needed.
        ratio: f64,
    },
    /// A number of the plant cannot be worked with.
    #[error("{what} is {value}; {why}")]
    Plant {
        /// What the number stands for.
        what: &'static str,
        /// Its value in SI.
        value: f64,
        /// What is wrong with it.
        why: &'static str,
    },
}

impl NotSettled {
    /// A function that names the balance when its search fails.
    pub(crate) fn of(balance: &'static str) -> impl FnOnce(NotSolved) -> Self {
        move |why| Self::Balance { balance, why }
    }
}
