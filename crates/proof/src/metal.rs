//! What is supposed of the metals: assumptions with their range, and choices with their reason.

use crate::input::Metal;
use crate::sum::Stop;
use formulas::sources::{COMMON_PRACTICE, COPPER_TUBE_HANDBOOK, EN_13445_3};
use reckoning::known::Given;
use reckoning::quantity::{
    Conductivity, Expansion, KELVIN_RISE, ONE, Quantity, Ratio, Stress, Temperature,
};
use reckoning::{Assumption, Cite, Known, Origin};

/// Every assumption of this crate.
pub static ASSUMPTIONS: &[&Assumption] = &[
    &WALL_TOLERANCE,
    &SIZE_TOLERANCE,
    &OVALITY,
    &TUBE_GROWTH_RISE,
    &FIREBOX_GROWTH_RISE,
];

/// How much thinner than drawn a wall may be whose tolerance nobody stated.
pub(crate) static WALL_TOLERANCE: Assumption = Assumption {
    id: "proof.wall-tolerance",
    meaning: "share by which the wall may be thinner than drawn",
    unit: &ONE,
    value: 0.05,
    low: 0.0,
    high: 0.115,
    variable: "proof.wall-tolerance",
    cite: Cite {
        source: &COPPER_TUBE_HANDBOOK,
        place: "least wall of drawn tube, 0.031 in of 0.035 in",
    },
};

/// How far a size other than a wall may lie from the drawn one where nobody stated a tolerance.
pub(crate) static SIZE_TOLERANCE: Assumption = Assumption {
    id: "proof.size-tolerance",
    meaning: "share by which a diameter or reach may depart from the drawn one",
    unit: &ONE,
    value: 0.005,
    low: 0.0,
    high: 0.01,
    variable: "proof.size-tolerance",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "bores and holes cut in a home workshop, 0.1 to 0.2 mm in 20 mm",
    },
};

/// How oval a tube may be that nobody has measured.
pub(crate) static OVALITY: Assumption = Assumption {
    id: "proof.ovality",
    meaning: "ovality, Dmax - Dmin, in parts of the diameter",
    unit: &ONE,
    value: 0.005,
    low: 0.001,
    high: 0.01,
    variable: "proof.ovality",
    cite: Cite {
        source: &EN_13445_3,
        place: "8.5.1, 0.5 % of the radius either way",
    },
};

/// Highest metal temperature for which a proof stress is supposed, °C.
const HOT_PROOF_TO_C: f64 = 185.0;

/// A number chosen with its reason.
pub(crate) fn chosen<Q: Quantity>(
    value: Q,
    between: &str,
    reason: &str,
    weakest: Origin,
) -> Known<Q> {
    Known {
        value,
        given: Given::Chosen {
            between: between.to_owned(),
            reason: reason.to_owned(),
            weakest,
        },
    }
}

fn no_strength(what: &'static str, metal: Metal, at: Temperature) -> Stop {
    Stop::NoStrength {
        what,
        metal: metal.words(),
        celsius: at.c(),
    }
}

/// 0.2 % proof stress of annealed copper at the water test.
pub(crate) fn proof_cold(metal: Metal) -> Result<Known<Stress>, Stop> {
    match metal {
        Metal::Copper => Ok(chosen(
            Stress::from_mpa(45.0),
            "measured 0.2 % proof stresses of annealed copper, 45 to 54 MPa",
            "the lowest that was seen; the sheet standards set no least value",
            Origin::Read,
        )),
        Metal::Gunmetal => Ok(chosen(
            Stress::from_mpa(90.0),
            "0.2 % proof stress of cast gunmetal, 90 to 110 MPa",
            "the lowest, of sand castings",
            Origin::FromMemory,
        )),
        Metal::PhosphorBronze => Ok(chosen(
            Stress::from_mpa(140.0),
            "0.2 % proof stress of phosphor bronze rod by its state",
            "as brazing leaves it, soft",
            Origin::FromMemory,
        )),
        Metal::Stainless | Metal::StainlessLow => Ok(chosen(
            Stress::from_mpa(170.0),
            "0.2 % proof stresses of stainless steel 316 and 316L, 170 to 220 MPa",
            "the lowest, of 316L",
            Origin::FromMemory,
        )),
        _ => Err(no_strength(
            "proof stress",
            metal,
            Temperature::from_c(20.0),
        )),
    }
}

/// 0.2 % proof stress of annealed copper at work.
pub(crate) fn proof_hot(metal: Metal, at: Temperature) -> Result<Known<Stress>, Stop> {
    if metal != Metal::Copper || at.c() > HOT_PROOF_TO_C {
        return Err(no_strength("proof stress", metal, at));
    }
    Ok(chosen(
        Stress::from_mpa(35.0),
        "proof stress at up to 185 °C, of which none was seen",
        "the cold 45 MPa times 0.78, the ratio of allowable stresses that rest on yield at \
         150 and at 38 °C",
        Origin::CommonPractice,
    ))
}

/// Yield stress of annealed copper tube under load, cold, that the tube standard asks.
pub(crate) fn yield_of_standard(metal: Metal) -> Result<Known<Stress>, Stop> {
    match metal {
        Metal::Copper => Ok(chosen(
            Stress::from_mpa(62.0),
            "least yield of annealed tube (0.5 % under load), and 0.2 % proof of 45 MPa",
            "ASTM B75M sets it; between the two a first set may show at the test",
            Origin::Read,
        )),
        _ => Err(no_strength(
            "yield stress",
            metal,
            Temperature::from_c(20.0),
        )),
    }
}

/// Modulus of elasticity of copper at work.
pub(crate) fn modulus(metal: Metal) -> Result<Known<Stress>, Stop> {
    match metal {
        Metal::Copper => Ok(chosen(
            Stress::from_mpa(110e3),
            "117 000 MPa at 20 °C, and less when hot",
            "about 110 000 MPa at 180 °C",
            Origin::FromMemory,
        )),
        Metal::Stainless | Metal::StainlessLow => Ok(chosen(
            Stress::from_mpa(193e3),
            "193 000 MPa at 20 °C, and less when hot",
            "the greater, which strains more",
            Origin::FromMemory,
        )),
        _ => Err(no_strength("modulus", metal, Temperature::from_c(180.0))),
    }
}

/// Expansion of copper.
pub(crate) fn expansion(metal: Metal) -> Result<Known<Expansion>, Stop> {
    match metal {
        Metal::Copper => Ok(chosen(
            Expansion::from_per_k(17e-6),
            "handbook values of copper, 16.5e-6 to 17.7e-6 for one kelvin",
            "the middle",
            Origin::FromMemory,
        )),
        Metal::Stainless | Metal::StainlessLow => Ok(chosen(
            Expansion::from_per_k(18.5e-6),
            "handbook values of stainless steel 316, 16e-6 cold to 18.5e-6 for one kelvin to 600 °C",
            "the greatest",
            Origin::FromMemory,
        )),
        _ => Err(no_strength("expansion", metal, Temperature::from_c(100.0))),
    }
}

/// Conductivity of a metal.
pub(crate) fn conductivity(metal: Metal) -> Result<Known<Conductivity>, Stop> {
    match metal {
        Metal::Copper => Ok(chosen(
            Conductivity::from_w_m_k(305.0),
            "data pages of deoxidised copper, 305 to 340 W/(m K)",
            "the least, which is strained most",
            Origin::Read,
        )),
        Metal::Stainless | Metal::StainlessLow => Ok(chosen(
            Conductivity::from_w_m_k(15.0),
            "15 W/(m K) cold, and more when hot",
            "the least, which is strained most",
            Origin::FromMemory,
        )),
        _ => Err(no_strength(
            "conductivity",
            metal,
            Temperature::from_c(100.0),
        )),
    }
}

/// How far the tubes may be hotter or colder than the shell.
pub(crate) static TUBE_GROWTH_RISE: Assumption = Assumption {
    id: "proof.tube-growth",
    meaning: "difference of the tubes and the shell",
    unit: &KELVIN_RISE,
    value: 8.0,
    low: 0.0,
    high: 15.0,
    variable: "proof.tube-growth",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "tubes under water follow it within a few kelvin, their dry tops do not",
    },
};

/// How far the firebox may be hotter than the shell.
pub(crate) static FIREBOX_GROWTH_RISE: Assumption = Assumption {
    id: "proof.firebox-growth",
    meaning: "firebox over shell",
    unit: &KELVIN_RISE,
    value: 10.0,
    low: 0.0,
    high: 20.0,
    variable: "proof.firebox-growth",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "raising of steam, the leg still cold",
    },
};

/// Tensile strength of annealed copper.
pub(crate) fn tensile(metal: Metal) -> Result<Known<Stress>, Stop> {
    match metal {
        Metal::Copper => Ok(chosen(
            Stress::from_mpa(215.0),
            "tensile strengths of annealed copper, 200 to 230 MPa",
            "the usual; the lap asked by three walls is longer",
            Origin::FromMemory,
        )),
        _ => Err(no_strength(
            "tensile strength",
            metal,
            Temperature::from_c(20.0),
        )),
    }
}

/// Shear strength of a silver braze, its lower bound.
pub(crate) fn braze_strength() -> Known<Stress> {
    chosen(
        Stress::from_mpa(100.0),
        "100 to 172 MPa, the shear strengths printed for silver brazes",
        "the lower",
        Origin::CommonPractice,
    )
}

/// Ratio of lateral to axial strain.
pub(crate) fn lateral() -> Known<Ratio> {
    chosen(
        Ratio::from_number(0.34),
        "handbook values of copper, 0.33 to 0.35",
        "the middle; it hardly matters",
        Origin::FromMemory,
    )
}

/// Shear allowed in a silver-brazed joint whose filler shows on both sides.
pub(crate) fn braze_shear() -> Known<Stress> {
    chosen(
        Stress::from_mpa(12.0),
        "an eighth of 100 to 172 MPa, the shear strengths printed for silver brazes",
        "the lower; no table for boilers was found",
        Origin::CommonPractice,
    )
}
