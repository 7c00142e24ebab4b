//! Drills by number and letter, sheet by gauge.
