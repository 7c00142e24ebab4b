//! Whole plans through every analysis: the examples against what is known of them, and what must
//! hold for every plan.

mod duty;
mod emptying;
mod example;
mod examples;
mod gas;
mod invariants;
mod sheet;
mod worked;
