//! The design stress of the European vessel standard.

use crate::input::Metal;
use crate::metal::{chosen, proof_cold, proof_hot};
use crate::sum::Stop;
use formulas::vessel::european::DESIGN_STRESS;
use reckoning::quantity::{MPA, Stress, Temperature};
use reckoning::{Known, Origin, Ref, Working};

/// Whether the metal is at work or at the water test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(in crate::set) enum Heat {
    /// At the water test.
    Cold,
    /// At work, at this temperature.
    At(Temperature),
}

/// The least tensile strength that standards of copper ask.
fn tensile(metal: Metal) -> Result<Known<Stress>, Stop> {
    if metal != Metal::Copper {
        return Err(Stop::NoStrength {
            what: "tensile strength",
            metal: metal.words(),
            celsius: 20.0,
        });
    }
    Ok(chosen(
        Stress::from_mpa(200.0),
        "tensile strengths that standards ask of annealed copper, 200 to 220 MPa",
        "the lowest, of sheet",
        Origin::Read,
    ))
}

/// Files the design stress of a metal.
pub(in crate::set) fn file_stress(w: &mut Working, metal: Metal, heat: Heat) -> Result<Ref, Stop> {
    let (symbol, meaning, proof) = match heat {
        Heat::Cold => ("R_c", "0.2 % proof stress, cold", proof_cold(metal)?),
        Heat::At(at) => ("R_h", "0.2 % proof stress at work", proof_hot(metal, at)?),
    };
    let proof = w.know(symbol, meaning, &MPA, &proof);
    let tensile = w.know("R_m", "tensile strength, cold", &MPA, &tensile(metal)?);
    Ok(w.worked(&DESIGN_STRESS, &[proof, tensile])?)
}
