//! Plan and workshop from their files, with every fault in them located.

use plan::{File, Plan, Problem, Read, Workshop};
use std::path::{Path, PathBuf};

use crate::output::Failure;

/// A plan and the workshop that serves it, as far as they read.
pub(crate) struct Inputs {
    /// The plan.
    pub(crate) plan: Plan,
    /// The workshop; an empty one where there is no file.
    pub(crate) workshop: Workshop,
    /// Faults of both files, each with its frame.
    pub(crate) problems: Vec<Located>,
}

/// A fault of a file, and the lines of the file about it.
pub(crate) struct Located {
    /// The fault.
    pub(crate) problem: Problem,
    /// The fault in words, its line of the file, and a marker below.
    pub(crate) frame: String,
}

/// Reads a plan, and the workshop named, or `workshop.toml` beside the plan or one folder up.
pub(crate) fn read(plan: &Path, workshop: Option<&Path>) -> Result<Inputs, Failure> {
    let (plan_file, mut problems) = load::<Plan>(plan)?;
    let beside = workshop.map(Path::to_owned).or_else(|| find_workshop(plan));
    let workshop = match beside {
        Some(path) => {
            let (workshop, more) = load::<Workshop>(&path)?;
            problems.extend(more);
            workshop
        }
        None => Workshop::blank(),
    };
    Ok(Inputs {
        plan: plan_file,
        workshop,
        problems,
    })
}

/// The plan and workshop that are built into the program.
pub(crate) fn example() -> Inputs {
    const PLAN: &str = include_str!("../../../../examples/launch/plan.toml");
    const WORKSHOP: &str = include_str!("../../../../examples/workshop.toml");
    let (plan, mut problems) = located(plan::read(PLAN, "plan.toml"), PLAN);
    let (workshop, more) = located(plan::read_workshop(WORKSHOP, "workshop.toml"), WORKSHOP);
    problems.extend(more);
    Inputs {
        plan,
        workshop,
        problems,
    }
}

fn find_workshop(plan: &Path) -> Option<PathBuf> {
    let folder = plan.parent()?;
    let folder = if folder.as_os_str().is_empty() {
        Path::new(".")
    } else {
        folder
    };
    [
        folder.join(Workshop::NAME),
        folder.join("..").join(Workshop::NAME),
    ]
    .into_iter()
    .find(|path| path.is_file())
}

fn load<F: File>(path: &Path) -> Result<(F, Vec<Located>), Failure> {
    let shown = path.display().to_string();
    let text = std::fs::read_to_string(path).map_err(|fault| Failure {
        says: format!("{shown} cannot be read: {fault}"),
        faults: Vec::new(),
    })?;
    Ok(located(plan::read_file(&text, &shown), &text))
}

fn located<F>(read: Read<F>, text: &str) -> (F, Vec<Located>) {
    let problems = read
        .problems
        .into_iter()
        .map(|problem| Located {
            frame: problem.frame(text),
            problem,
        })
        .collect();
    (read.content, problems)
}
