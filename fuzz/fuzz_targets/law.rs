//! No text makes the reader of laws fall over.

#![no_main]

use libfuzzer_sys::fuzz_target;
use reckoning::law;

fuzz_target!(|text: &str| {
    let _: Result<f64, law::LawError> = law::run(text, &|_| Some(1.0));
});
