//! Plan and workshop from their files, with every fault in them located.

use plan::{Fault, File, Plan, Problem, Read, Workshop};
use serde_json::{Value, json};
use std::fmt::Write as _;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use crate::output::Failure;

/// A plan and the workshop that serves it, as far as they read.
pub(crate) struct Inputs {
    /// The plan.
    pub(crate) plan: Plan,
    /// The workshop; an empty one where there is no file.
    pub(crate) workshop: Workshop,
    /// The file that the workshop was read from; `None` where there is none.
    pub(crate) workshop_file: Option<PathBuf>,
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
    let workshop = match &beside {
        Some(path) => {
            let (workshop, more) = load::<Workshop>(path)?;
            problems.extend(more);
            workshop
        }
        None => Workshop::blank(),
    };
    Ok(Inputs {
        plan: plan_file,
        workshop,
        workshop_file: beside,
        problems,
    })
}

/// A text that is not TOML, or that a later program wrote, has nothing to work from.
pub(crate) fn readable(inputs: &Inputs) -> Result<(), Failure> {
    let hopeless = inputs.problems.iter().find(|located| {
        matches!(
            located.problem.fault,
            Fault::Syntax { .. } | Fault::FormatNewer { .. }
        )
    });
    match hopeless {
        None => Ok(()),
        Some(located) => Err(Failure {
            says: format!("{} cannot be read", located.problem.file),
            faults: located.frame.lines().map(str::to_owned).collect(),
        }),
    }
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
        workshop_file: Some(PathBuf::from(Workshop::NAME)),
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
    let text = text(path)?;
    let shown = path.display().to_string();
    Ok(located(plan::read_file(&text, &shown), &text))
}

/// The text of a file.
pub(crate) fn text(path: &Path) -> Result<String, Failure> {
    std::fs::read_to_string(path).map_err(|fault| Failure {
        says: format!("{} cannot be read", path.display()),
        faults: vec![why(path, &fault)],
    })
}

fn why(path: &Path, fault: &std::io::Error) -> String {
    match fault.kind() {
        ErrorKind::NotFound => "there is no such file".to_owned(),
        ErrorKind::PermissionDenied => "it may not be opened by you".to_owned(),
        ErrorKind::InvalidData => "it is not text in UTF-8".to_owned(),
        _ if path.is_dir() => "it is a folder; name the file in it".to_owned(),
        _ => fault.to_string(),
    }
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

/// The faults of the files, ahead of everything else.
pub(crate) fn faults(problems: &[Located]) -> String {
    if problems.is_empty() {
        return String::new();
    }
    let mut text = format!(
        "{} in the files; what they touch is left out below.\n\n",
        if problems.len() == 1 {
            "1 fault".to_owned()
        } else {
            format!("{} faults", problems.len())
        }
    );
    for located in problems {
        // Writing to a String cannot fail.
        let _: std::fmt::Result = writeln!(text, "{}", located.frame);
    }
    text
}

/// The faults of the files in JSON.
pub(crate) fn problems(problems: &[Located]) -> Value {
    problems
        .iter()
        .map(|located| {
            let p = &located.problem;
            json!({
                "file": p.file,
                "line": p.place.line,
                "column": p.place.column,
                "path": p.path,
                "read": p.fault.read(),
                "allowed": p.fault.allowed(),
                "help": p.fault.help(),
            })
        })
        .collect()
}
