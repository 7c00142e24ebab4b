//! Same plan, same program: same bytes, whatever the number of threads.

use std::path::PathBuf;
use std::process::Command;

/// What `check --json` prints of an example with so many threads.
fn printed(example: &str, threads: &str) -> Vec<u8> {
    let examples = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../examples");
    let output = Command::new(env!("CARGO_BIN_EXE_steamwright"))
        .arg("check")
        .arg(examples.join(example).join("plan.toml"))
        .arg("--json")
        .env("RAYON_NUM_THREADS", threads)
        .output()
        .expect("the command runs");
    assert!(!output.stdout.is_empty(), "{example} prints nothing");
    output.stdout
}

#[test]
fn the_same_plan_gives_the_same_bytes_with_one_thread_and_with_two() {
    for example in ["launch", "mill-engine", "half-written"] {
        let one = printed(example, "1");
        assert!(one == printed(example, "1"), "{example}: twice with one");
        assert!(one == printed(example, "2"), "{example}: with one and two");
    }
}
