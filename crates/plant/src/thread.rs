//! Threads that a plan names, as features need them.

use formulas::thread::{self, NotAThread};
use plan::Entry;
use reckoning::Known;
use reckoning::quantity::Length;

use crate::known::{Reading, chosen};
use crate::part::Thread;

/// What a thread by a name that is in no table is wanted for.
pub(crate) const BY_NAME: &str = "a thread by a name that the tables hold";

/// The thread that a field names; none where it is empty.
pub(crate) fn read(entry: &Entry<String>) -> Option<Result<(Thread, thread::Thread), NotAThread>> {
    let found = thread::Thread::read(entry.get()?);
    Some(found.map(|full| {
        let thread = Thread {
            designation: full.name.clone(),
            major: full.major,
            core: full.root(),
            pitch: full.pitch,
        };
        (thread, full)
    }))
}

/// The thread that a field names; a name that is in no table is a gap.
pub(crate) fn named(
    entry: &Entry<String>,
    reading: &mut Reading,
) -> Option<(Thread, thread::Thread)> {
    let read = read(entry)?;
    if read.is_err() {
        reading.miss(entry.path(), BY_NAME);
    }
    read.ok()
}

/// The hole under an inside thread for which no drill is chosen yet.
pub(crate) fn tapping(thread: &thread::Thread) -> Known<Length> {
    chosen(
        thread.internal_minor(),
        format!("minor and major diameter of {}", thread.name),
        "a hole at the minor diameter bears the whole thread; the tapping drill is chosen later",
    )
}
