//! A horizontal boiler worked out from an invented plan, and the rules of its geometry.
#![allow(
    clippy::unwrap_used,
    reason = "a test may stop at what it did not expect"
)]

mod example;
mod plans;
mod rules;
mod worked;
