//! No text makes the reader of quantities fall over, in any kind.

#![no_main]

use libfuzzer_sys::fuzz_target;
use reckoning::quantity::{UNITS, parse};

fuzz_target!(|text: &str| {
    for unit in UNITS {
        if let Err(misread) = parse::read_kind(unit.kind, text) {
            assert!(misread.column <= text.chars().count() + 1);
        }
    }
});
