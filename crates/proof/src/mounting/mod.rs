//! Safety valves, feed, gauges, blow-down and fusible plug: what a boiler tester looks for beside
//! the strength of the parts. They belong to our own set.

mod capacity;
mod feed;
mod gauge;
mod interlock;
mod spring;
mod valve;
mod water;

use crate::input::{Mountings, Raising};
use reckoning::Finding;

/// Every check of what is mounted on a boiler.
///
/// What is missing is unproved; a boiler without a valve or a means of feed is not met.
#[must_use]
pub fn mountings(mounted: &Mountings, raising: &Raising) -> Vec<Finding> {
    let mut found = vec![capacity::check_capacity(mounted, raising)];
    found.extend(valve::checks(mounted, raising));
    found.extend(spring::checks(mounted));
    found.extend(feed::checks(mounted));
    found.extend(gauge::checks(&mounted.gauge, raising));
    found.extend(water::checks(mounted, raising));
    found.extend(interlock::checks(mounted));
    found
}
