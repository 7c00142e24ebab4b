//! The plant of the independent calculation with an engine of which little is known.

use steaming::{Admission, Exhausts, Inputs, Missing};

/// The plant with an engine of which nothing was measured but its sizes.
pub(crate) fn unmeasured(mut inputs: Inputs) -> Inputs {
    let e = inputs.engine.as_mut().expect("an engine");
    e.chest_share = 0.97;
    e.admission = Admission::Share(0.95);
    e.missing = Missing::Reckoned(1.0);
    e.exhausts = Exhausts::ByLoss(100.0);
    e.closing_pa = None;
    inputs
}
