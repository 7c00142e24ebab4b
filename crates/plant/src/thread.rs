//! Threads that a plan names, as features need them.

use formulas::thread;
use plan::Entry;

use crate::known::Reading;
use crate::part::Thread;

/// The thread that a field names; a name that is in no table is a gap.
pub(crate) fn named(
    entry: &Entry<String>,
    reading: &mut Reading,
) -> Option<(Thread, thread::Thread)> {
    let text = entry.get()?;
    let Ok(found) = thread::Thread::read(text) else {
        reading.miss(entry.path(), "a thread by a name that the tables hold");
        return None;
    };
    let thread = Thread {
        designation: found.name.clone(),
        major: found.major,
        core: found.root(),
        pitch: found.pitch,
    };
    Some((thread, found))
}
