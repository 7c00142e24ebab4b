//! The plant of the independent calculation with one thing changed.

use steaming::{BedFire, Inputs};

/// The bed with its firebox and tubes.
pub(crate) fn bed(inputs: &mut Inputs) -> &mut BedFire {
    inputs.firing.bed_mut().expect("a bed")
}
