//! Safety valves: what the boiler can raise, and what a valve passes.

pub mod demand;
pub mod valve;
