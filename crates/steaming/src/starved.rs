//! A flame that gets less air than it needs: by how much the draught falls short, and what would
//! cure it.
//!
//! Nothing is ever reckoned with less air than the fuel needs: no efficiency, no temperature.

use std::fmt;

use formulas::gas::PureLaw;
use reckoning::quantity::{MM, MM2, show};
use reckoning::solve::NotSolved;

use crate::fault::NotSettled;
use crate::fire::Round;
use crate::inputs::Inputs;
use crate::pass::Draw;
use crate::seek::seek;

/// Air over the air needed that a cure must bring: the least that is aimed at.
pub(crate) const WANTED: f64 = 1.2;

/// How far a size is changed in the search for a cure, over the size as drawn.
pub(crate) const GREATEST: f64 = 4.0;

/// What the air falls short by, and the sizes that would cure it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Starved {
    /// What the least air takes of draught beyond what there is, Pa.
    pub short_pa: f64,
    /// Height of the chimney that brings `WANTED` of the air needed, m; `None` where none up to
    /// `GREATEST` of that drawn does.
    pub chimney_m: Option<f64>,
    /// Area of the mouth that brings it, m²; `None` as for the chimney, or where the mouth is shut.
    pub mouth_m2: Option<f64>,
}

impl fmt::Display for Starved {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let short = show::figures(self.short_pa, 2);
        write!(
            f,
            "not enough air: the draught is {short} Pa short of what the flame needs"
        )?;
        let sizes = [
            self.chimney_m
                .map(|m| ("chimney", show::quantity(m, &MM, 3))),
            self.mouth_m2
                .map(|m2| ("mouth", show::quantity(m2, &MM2, 3))),
        ];
        let mut told = sizes.iter().flatten();
        let Some((what, size)) = told.next() else {
            return write!(
                f,
                "; no chimney and no mouth within range bring it {WANTED} of that"
            );
        };
        write!(f, "; a {what} of {size}")?;
        for (what, size) in told {
            write!(f, ", or a {what} of {size},")?;
        }
        write!(f, " brings it {WANTED} of the air it needs")
    }
}

/// The fault of a loop that did not settle: told as a want of air where that is what it is.
pub(crate) fn told(round: &Round<'_>, laws: &[PureLaw; 4], fault: NotSettled) -> NotSettled {
    let inputs = round.inputs;
    let wants_air = match &fault {
        NotSettled::Balance {
            balance,
            why: NotSolved::NoSignChange { at_low, .. },
        } => inputs.firing.flame().is_some() && *balance == round.side.balance() && *at_low < 0.0,
        _ => false,
    };
    if !wants_air {
        return fault;
    }
    let left = |round: &Round<'_>, ratio: f64| Ok(Draw::new(round)?.at(ratio)?.1.residual);
    let least = round.side.bracket().and_then(|(low, _)| left(round, low));
    let Ok(left_pa) = least else {
        return fault;
    };
    let sought = |change: fn(&mut Inputs, f64)| {
        let solved = seek("air of a changed plant", (0.0, GREATEST.ln()), 1e-4, |ln| {
            let mut changed = *inputs;
            change(&mut changed, ln.exp());
            Round::of(&changed, laws, round.water.gauge_pa, |round| {
                left(round, WANTED)
            })
        });
        solved.ok().map(|solved| solved.x.exp())
    };
    NotSettled::NotEnoughAir(Starved {
        short_pa: -left_pa,
        chimney_m: sought(taller).map(|share| share * inputs.chimney.height_m),
        mouth_m2: sought(wider)
            .zip(mouth(inputs))
            .map(|(share, m2)| share * m2),
    })
}

/// The chimney so many times as high.
fn taller(inputs: &mut Inputs, share: f64) {
    let chimney = &mut inputs.chimney;
    chimney.parallel_m += (share - 1.0) * chimney.height_m;
    chimney.height_m *= share;
}

/// The mouth so many times as wide.
fn wider(inputs: &mut Inputs, share: f64) {
    if let Some(flame) = inputs.firing.flame_mut() {
        let wide_m2 = flame.mouth.area_m2().map(|m2| share * m2);
        wide_m2.into_iter().for_each(|m2| flame.mouth.widen(m2));
    }
}

/// Area of the mouth, m².
fn mouth(inputs: &Inputs) -> Option<f64> {
    inputs.firing.flame()?.mouth.area_m2()
}
