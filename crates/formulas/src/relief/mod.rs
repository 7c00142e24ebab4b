//! Safety valves: what the boiler can raise, and what a valve passes,
//! and the spring that holds it.

pub mod demand;
pub mod spring;
pub mod valve;
