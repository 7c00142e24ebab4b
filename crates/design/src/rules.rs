//! Every rule that is applied where areas meet.

use reckoning::Rule;

/// The rules of this crate.
pub static RULES: &[&Rule] = &[
    &crate::uncovered::COVERED,
    &crate::uncovered::TESTER_SET,
    &crate::bench::SHAPE,
    &crate::bench::THREAD,
    &crate::bench::REFERS,
];
