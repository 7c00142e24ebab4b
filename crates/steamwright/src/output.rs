//! What a command hands back, and the one place that prints it.

use serde_json::Value;
use std::fmt::Write as _;
use std::process::ExitCode;

/// The answer of a command.
pub(crate) struct Answer {
    /// In words, with line ends.
    pub(crate) words: String,
    /// The same in JSON.
    pub(crate) json: Value,
    /// Exit code: 0 where nothing is against, 1 where something is not met or unproved.
    pub(crate) code: u8,
}

/// Why a command could not work.
pub(crate) struct Failure {
    /// What could not be done.
    pub(crate) says: String,
    /// The single faults, one a line.
    pub(crate) faults: Vec<String>,
}

/// How an answer is printed.
#[derive(Clone, Copy)]
pub(crate) enum Form {
    Words,
    Json,
}

/// The exit code of a command that could not work.
const COULD_NOT_WORK: u8 = 2;

/// Prints an answer to the one stream or a failure to the other.
pub(crate) fn finish(answer: Result<Answer, Failure>, form: Form) -> ExitCode {
    match answer {
        Ok(answer) => {
            let text = match form {
                Form::Words => answer.words,
                Form::Json => format!("{:#}\n", answer.json),
            };
            print(&mut std::io::stdout().lock(), &text, answer.code)
        }
        Err(failure) => {
            let mut text = format!("{}\n", failure.says);
            for fault in failure.faults {
                // Writing to a String cannot fail.
                let _: std::fmt::Result = writeln!(text, "  {fault}");
            }
            print(&mut std::io::stderr().lock(), &text, COULD_NOT_WORK)
        }
    }
}

/// A reader that closes the pipe early has what it wanted; any other fault of the stream is ours.
fn print(stream: &mut impl std::io::Write, text: &str, code: u8) -> ExitCode {
    match stream
        .write_all(text.as_bytes())
        .and_then(|()| stream.flush())
    {
        Err(e) if e.kind() != std::io::ErrorKind::BrokenPipe => ExitCode::from(COULD_NOT_WORK),
        _ => ExitCode::from(code),
    }
}
