//! Published trials of boilers: what they asked, what was measured, what the loop gives.

pub(crate) mod read;
mod run;

pub(crate) use read::files;
pub(crate) use run::outcomes;

/// One number of a trial beside what the loop gives.
#[derive(Clone, Debug)]
pub(crate) struct Outcome {
    /// Id of the trial.
    pub(crate) trial: String,
    /// What was measured.
    pub(crate) what: String,
    /// As measured, in the unit in which it is told.
    pub(crate) measured: f64,
    /// As the loop gives it.
    pub(crate) found: f64,
    /// Unit, empty for a ratio.
    pub(crate) unit: &'static str,
    /// How far apart they lie, in the unit of the acceptance.
    pub(crate) apart: f64,
    /// How far apart they may lie.
    pub(crate) allowed: f64,
    /// Why it lies outside, where the file of the trial says so.
    pub(crate) missed: Option<String>,
}

impl Outcome {
    /// Whether it lies within the acceptance of its kind.
    pub(crate) fn is_hit(&self) -> bool {
        self.apart.abs() <= self.allowed
    }
}
