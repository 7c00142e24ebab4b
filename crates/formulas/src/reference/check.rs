//! Wanted values against what the cards give.

use super::{Case, Evidence, ReferenceFile};
use reckoning::quantity::Unit;
use reckoning::quantity::show::figures;
use reckoning::{Breach, Refused, Source};

/// One wanted value with what was found.
#[derive(Clone, Debug)]
pub struct Check {
    /// Id of the card.
    pub card: &'static str,
    /// The work that the value comes from.
    pub source: &'static Source,
    /// Table, equation or page.
    pub place: String,
    /// Kind of evidence.
    pub kind: Evidence,
    /// How and when the place was seen.
    pub seen: String,
    /// File and line of the case.
    pub at: String,
    /// Inputs as written, by symbol.
    pub given: Vec<(&'static str, String)>,
    /// Symbol of the result.
    pub symbol: &'static str,
    /// Unit of the values below.
    pub unit: &'static Unit,
    /// The wanted value.
    pub wanted: f64,
    /// The wanted value as written, with the unit and the figures of its source.
    pub written: String,
    /// What the card gives, or why it gives nothing.
    pub found: Result<f64, Refused>,
    /// Greatest distance allowed.
    pub tolerance: f64,
    /// Why that distance.
    pub because: String,
    /// Limits broken that the file does not expect.
    pub unexpected: Vec<Breach>,
    /// Limits that the file expects to be broken, and that were kept.
    pub not_broken: Vec<String>,
}

impl Check {
    /// Found less wanted; `None` where nothing was found.
    #[must_use]
    pub fn deviation(&self) -> Option<f64> {
        self.found.as_ref().ok().map(|found| found - self.wanted)
    }

    /// Whether the found value lies within the tolerance and the limits are as expected.
    #[must_use]
    pub fn is_met(&self) -> bool {
        self.deviation().is_some_and(|d| d.abs() <= self.tolerance)
            && self.unexpected.is_empty()
            && self.not_broken.is_empty()
    }
}

impl std::fmt::Display for Check {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} {}", self.at, self.card)?;
        for (symbol, text) in &self.given {
            write!(f, " {symbol}=\"{text}\"")?;
        }
        let unit = self.unit.symbol;
        let wanted = figures(self.wanted, 9);
        write!(f, "\n    wanted {} = {wanted} {unit}", self.symbol)?;
        match &self.found {
            Ok(found) => {
                let off = figures((found - self.wanted).abs(), 3);
                let found = figures(*found, 9);
                let tolerance = figures(self.tolerance, 3);
                write!(f, ", found {found}: {off} off, {tolerance} allowed")?;
            }
            Err(refused) => write!(f, ", found nothing: {refused}")?,
        }
        for breach in &self.unexpected {
            write!(f, "\n    lies outside a limit: {breach}")?;
        }
        for expr in &self.not_broken {
            write!(
                f,
                "\n    should lie outside the limit on {expr}, and does not"
            )?;
        }
        Ok(())
    }
}

/// Works every case of the files and compares, in the order of the files.
#[must_use]
pub fn checks(files: &[ReferenceFile]) -> Vec<Check> {
    files
        .iter()
        .flat_map(|file| file.cases.iter().map(move |case| check(file, case)))
        .collect()
}

fn check(file: &ReferenceFile, case: &Case) -> Check {
    let card = case.card;
    let worked = card.work(&case.given);
    let breaches = worked.as_ref().map_or(&[][..], |w| &w.breaches);
    let expected = |b: &Breach| case.breaches.iter().any(|expr| expr == b.expr);
    let broken = |expr: &String| breaches.iter().any(|b| b.expr == expr);
    Check {
        card: card.id,
        source: file.provenance.source,
        place: file.provenance.place.clone(),
        kind: file.provenance.kind,
        seen: file.provenance.seen.clone(),
        at: format!("{}:{}", file.file, case.line),
        given: card
            .takes
            .iter()
            .map(|s| s.name)
            .zip(case.written.iter().cloned())
            .collect(),
        symbol: card.gives.name,
        unit: card.gives.unit,
        wanted: case.wanted,
        written: case.wanted_written.clone(),
        unexpected: breaches.iter().filter(|b| !expected(b)).cloned().collect(),
        not_broken: case
            .breaches
            .iter()
            .filter(|e| !broken(e))
            .cloned()
            .collect(),
        found: worked.map(|w| w.value),
        tolerance: case.tolerance,
        because: case.because.clone(),
    }
}
