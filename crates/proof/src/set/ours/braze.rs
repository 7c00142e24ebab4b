//! Shear allowed in a braze by how it can be seen.

use super::OURS;
use crate::input::Joint;
use crate::metal::braze_shear;
use crate::sum::{Stop, Sum};
use formulas::vessel::allow;
use reckoning::Ref;
use reckoning::quantity::MPA;

/// The words for a joint that does not bear its load.
pub(super) const SEEN: &str = "a joint that shows filler on both sides";

/// Files the shear allowed in a joint.
pub(super) fn file_allowed(sum: &mut Sum, joint: Joint) -> Result<Ref, Stop> {
    let shear = sum.know("tau_f", "shear allowed in the braze", &MPA, &braze_shear());
    let e = OURS.file_joint(sum, "E_j", OURS.joints.joint(joint));
    sum.card(&allow::JOINT, &[shear, e])
}
