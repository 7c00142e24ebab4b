//! The gas fired plant of the independent calculation with one thing changed.

use crate::gf1::fired;
use reckoning::quantity::{Absolute, Quantity};
use steaming::Inputs;
use steaming::burner::Burner;
use steaming::flue::CrossTubes;

/// Gauge pressure at which the metal is at 150 °C: water boils there at 4.762 bar (steam tables,
/// from memory), and the calculation leaves no rise over the water.
pub(crate) fn boiler_pa() -> f64 {
    4.7616e5 - Absolute::standard_atmosphere().si()
}

/// The burner, to be changed.
pub(crate) fn burner_of(inputs: &mut Inputs) -> &mut Burner {
    fired(inputs).flame.burner_mut().expect("a burner")
}

/// The cross tubes, to be changed.
pub(crate) fn tubes_of(inputs: &mut Inputs) -> &mut CrossTubes {
    fired(inputs).flue.cross.as_mut().expect("cross tubes")
}
