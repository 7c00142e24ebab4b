//! How the metals of pressure parts give way, for a sum that asks it of several.

use crate::input::Metal;
use crate::metal::{chosen, lateral, modulus};
use reckoning::quantity::{Ratio, Stress};
use reckoning::{Known, Origin};

/// Modulus of elasticity at work and ratio of lateral to axial strain; `None` for a metal of which
/// they are not kept here.
#[must_use]
pub fn elastic(metal: Metal) -> Option<(Known<Stress>, Known<Ratio>)> {
    match metal {
        Metal::Copper => Some((modulus(metal).ok()?, lateral())),
        Metal::PhosphorBronze => Some(of(
            115e3,
            "moduli of phosphor bronze rod, 110 000 to 121 000 MPa",
        )),
        Metal::Gunmetal => Some(of(83e3, "moduli of cast gunmetal, 80 000 to 95 000 MPa")),
        _ => None,
    }
}

fn of(mpa: f64, between: &str) -> (Known<Stress>, Known<Ratio>) {
    let reason = "the usual one of handbooks, cold";
    let nu = chosen(
        Ratio::from_number(0.34),
        "handbook values of copper alloys, 0.33 to 0.35",
        "the middle; it hardly matters",
        Origin::FromMemory,
    );
    let modulus = chosen(Stress::from_mpa(mpa), between, reason, Origin::FromMemory);
    (modulus, nu)
}
