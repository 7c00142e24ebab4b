//! Numbers that know their unit, their origin and their working.
//!
//! This crate knows nothing of boilers. It holds the quantities and the one table of units,
//! the reading and showing of what makers write, formula cards with their printed law, the
//! lines of a working, findings with their verdicts, assumptions with their range, and the one
//! door to a root finder.

pub mod assumption;
pub mod finding;
pub mod formula;
pub mod known;
pub mod law;
pub mod quantity;
pub mod size;
pub mod solve;
pub mod source;
pub mod working;

pub use assumption::Assumption;
pub use finding::{Bound, Condition, Finding, Origin, Rule, Verdict};
pub use formula::{Breach, Card, Cite, Law, Limit, Refused, Spread, Symbol, symbol};
pub use known::{Given, Known};
pub use size::{Size, Tolerance, Typed};
pub use source::{Seen, Source};
pub use working::{Line, Ref, Working};
