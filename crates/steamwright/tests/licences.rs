//! Licences and origins of everything the build pulls in.

use std::process::Command;

/// Licences that may be in the tree. Copyleft ones are not.
const ALLOWED: &[&str] = &[
    "MIT",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "ISC",
    "Zlib",
    "Unicode-3.0",
    "Unlicense",
    "0BSD",
    "CC0-1.0",
    "BSL-1.0",
    "Apache-2.0 WITH LLVM-exception",
    "MIT-0",
];

/// Whether an SPDX expression can be met by allowed licences alone.
fn allowed(expression: &str) -> bool {
    let Ok(read) = spdx::Expression::parse_mode(expression, spdx::ParseMode::LAX) else {
        return false;
    };
    read.evaluate(|wanted| ALLOWED.contains(&wanted.to_string().as_str()))
}

#[test]
fn every_package_has_an_allowed_licence_and_comes_from_the_registry() {
    let out = Command::new(env!("CARGO"))
        .args(["metadata", "--format-version", "1", "--locked"])
        .current_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/../.."))
        .output()
        .expect("cargo metadata");
    assert!(
        out.status.success(),
        "{}",
        String::from_utf8_lossy(&out.stderr)
    );
    let tree: serde_json::Value = serde_json::from_slice(&out.stdout).expect("JSON");
    let packages = tree["packages"].as_array().expect("packages");
    assert!(packages.len() > 10, "the tree was not read");
    let mut faults = Vec::new();
    for package in packages {
        let name = package["name"].as_str().unwrap_or("?");
        match package["license"].as_str() {
            Some(licence) if allowed(licence) => {}
            other => faults.push(format!("{name}: licence {other:?}")),
        }
        let source = package["source"].as_str();
        if source.is_some_and(|s| !s.starts_with("registry+")) {
            faults.push(format!("{name}: comes from {source:?}"));
        }
    }
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}

#[test]
fn a_copyleft_licence_would_be_seen() {
    assert!(allowed("MIT OR Apache-2.0") && allowed("(MIT OR GPL-3.0-only) AND Unicode-3.0"));
    assert!(!allowed("GPL-3.0-only") && !allowed("MIT AND LGPL-2.1-only"));
    assert!(!allowed("(MIT OR Apache-2.0) AND MPL-2.0"));
}
