//! The drills in the drawers, one by one.

use making::Reads;
use making::workshop::Drill;
use plan::workshop::{DrillSeries, DrillSet};
use reckoning::quantity::drill::{LETTER_DRILLS, NUMBER_DRILLS};
use reckoning::quantity::{Length, show};

use super::workshop::Taking;

/// Two sizes nearer than this are one.
const SAME_MM: f64 = 1e-4;

/// The drills of one set; what it lacks is noted as a gap.
pub(super) fn of_set(set: &DrillSet, taking: &mut Taking) -> Vec<Drill> {
    let Some(series) = taking.wanted(&set.series) else {
        return Vec::new();
    };
    match series {
        DrillSeries::Metric => stepped(set, taking, |size| Reads::Millimetres.size(size)),
        DrillSeries::Fractional => {
            stepped(set, taking, |size| show::nearest_64th(size).to_string())
        }
        DrillSeries::Number => {
            let named = (1_u32..).map(|n| format!("No {n}"));
            listed(set, named.zip(NUMBER_DRILLS))
        }
        DrillSeries::Letter => {
            let named = ('A'..='Z').map(|l| format!("letter {l}"));
            listed(set, named.zip(LETTER_DRILLS))
        }
        DrillSeries::Single => single(set, taking),
    }
}

/// From the smallest to the largest by a step.
fn stepped(set: &DrillSet, taking: &mut Taking, name: fn(Length) -> String) -> Vec<Drill> {
    let limits = (
        taking.wanted(&set.from),
        taking.wanted(&set.to),
        taking.wanted(&set.by),
    );
    let (Some(from), Some(to), Some(by)) = limits else {
        return Vec::new();
    };
    (0_u32..)
        .map(|n| from + by * f64::from(n))
        .take_while(|size| size.mm() <= to.mm() + SAME_MM)
        .map(|diameter| Drill {
            name: name(diameter),
            diameter,
        })
        .collect()
}

/// The whole of a series, or the part between two sizes.
fn listed<'a>(set: &DrillSet, series: impl Iterator<Item = (String, &'a f64)>) -> Vec<Drill> {
    let (from, to) = (set.from.value(), set.to.value());
    series
        .map(|(name, inch)| Drill {
            name,
            diameter: Length::from_inch(*inch),
        })
        .filter(|d| from.is_none_or(|f| f.mm() <= d.diameter.mm() + SAME_MM))
        .filter(|d| to.is_none_or(|t| d.diameter.mm() <= t.mm() + SAME_MM))
        .collect()
}

fn single(set: &DrillSet, taking: &mut Taking) -> Vec<Drill> {
    let Some(sizes) = set.sizes.get() else {
        taking.gaps.push(set.sizes.path().to_owned());
        return Vec::new();
    };
    sizes
        .iter()
        .map(|size| Drill {
            name: size.text.clone(),
            diameter: size.value,
        })
        .collect()
}
