//! Radiation between gas, bed and cold walls.

use reckoning::quantity::{KELVIN, M, M2, M3, ONE, W_PER_M2, WATT};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::sources::thermal;

/// Constant of black radiation, W/(m² K⁴) (CODATA 2018).
/// Stefan-Boltzmann constant, W/(m² K⁴).
pub(crate) const SIGMA: f64 = 5.670_374_419e-8;

const T_G: Symbol = symbol("T_g", &KELVIN, "temperature of the gas");
const T_W: Symbol = symbol("T_w", &KELVIN, "temperature of the wall");

fn fourth(t: f64) -> f64 {
    let square = t * t;
    square * square
}

/// Mean beam length of a box of gas, m; see [`BOX_BEAM`].
#[must_use]
pub fn box_beam(volume_m3: f64, wall_m2: f64) -> f64 {
    3.6 * volume_m3 / wall_m2
}

/// Mean beam length of a box of gas.
pub static BOX_BEAM: Card = Card {
    id: "heat.box-beam",
    law: Law::Closed("L = 3.6 * V / A"),
    gives: symbol("L", &M, "mean beam length"),
    takes: &[
        symbol("V", &M3, "volume of gas"),
        symbol("A", &M2, "all the surface round it"),
    ],
    limits: &[],
    spread: Spread::Percent(5.0),
    cite: Cite {
        source: &thermal::RADIATIVE_TRANSFER,
        place: "mean beam length of an arbitrary shape",
    },
    eval: |v| Ok(box_beam(v[0], v[1])),
};

/// Mean beam length of a long tube, m; see [`TUBE_BEAM`].
#[must_use]
pub fn tube_beam(d_m: f64) -> f64 {
    0.9 * d_m
}

/// Mean beam length of a long tube, from the general rule 3.6 V / A.
pub static TUBE_BEAM: Card = Card {
    id: "heat.tube-beam",
    law: Law::Closed("L = 0.9 * d"),
    gives: symbol("L", &M, "mean beam length"),
    takes: &[symbol("d", &M, "bore of the tube")],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::RADIATIVE_TRANSFER,
        place: "mean beam length 3.6 V / A of a long cylinder",
    },
    eval: |v| Ok(tube_beam(v[0])),
};

/// Emissivity of gas and bed together; see [`FIRE_EMISSIVITY`].
#[must_use]
pub fn fire_emissivity(bed: f64, bed_share: f64, gas: f64) -> f64 {
    bed * bed_share + gas * (1.0 - bed_share)
}

/// Emissivity of a fire of gas over a glowing bed.
pub static FIRE_EMISSIVITY: Card = Card {
    id: "heat.fire-emissivity",
    law: Law::Closed("eps_f = eps_b * C_b + eps_g * (1 - C_b)"),
    gives: symbol("eps_f", &ONE, "emissivity of the fire"),
    takes: &[
        symbol("eps_b", &ONE, "emissivity of the bed"),
        symbol("C_b", &ONE, "share of the view that the bed fills"),
        symbol("eps_g", &ONE, "emissivity of the gas"),
    ],
    limits: &[Limit::within("C_b", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::RADIATIVE_TRANSFER,
        place: "stirred furnace, grey plane equivalent",
    },
    eval: |v| Ok(fire_emissivity(v[0], v[1], v[2])),
};

/// Effective emissivity between fire and wall; see [`ENCLOSURE_EMISSIVITY`].
#[must_use]
pub fn enclosure_emissivity(wall: f64, fire: f64) -> f64 {
    1.0 / (1.0 / wall + 1.0 / fire - 1.0)
}

/// Effective emissivity between the fire and the wall round it.
pub static ENCLOSURE_EMISSIVITY: Card = Card {
    id: "heat.enclosure-emissivity",
    law: Law::Closed("eps_e = 1 / (1 / eps_s + 1 / eps_f - 1)"),
    gives: symbol("eps_e", &ONE, "effective emissivity"),
    takes: &[
        symbol("eps_s", &ONE, "emissivity of the wall"),
        symbol("eps_f", &ONE, "emissivity of the fire"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::RADIATIVE_TRANSFER,
        place: "stirred furnace, grey plane equivalent",
    },
    eval: |v| Ok(enclosure_emissivity(v[0], v[1])),
};

/// Heat radiated from a fire to the wall round it, W; see [`RADIANT_HEAT`].
#[must_use]
pub fn radiant_heat(area_m2: f64, eps: f64, gas_k: f64, wall_k: f64) -> f64 {
    SIGMA * area_m2 * eps * (fourth(gas_k) - fourth(wall_k))
}

/// Heat radiated from a stirred fire to the cold wall round it.
pub static RADIANT_HEAT: Card = Card {
    id: "heat.radiant-heat",
    law: Law::Closed("Q_r = 5.670374419e-8 * A_e * eps_e * (T_g^4 - T_w^4)"),
    gives: symbol("Q_r", &WATT, "heat radiated to the wall"),
    takes: &[
        symbol("A_e", &M2, "cold wall that sees the fire"),
        symbol("eps_e", &ONE, "effective emissivity"),
        T_G,
        T_W,
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::RADIATIVE_TRANSFER,
        place: "stirred furnace",
    },
    eval: |v| Ok(radiant_heat(v[0], v[1], v[2], v[3])),
};

/// Flux radiated by gas to the wall of a tube, W/m²; see [`TUBE_RADIANT_FLUX`].
#[must_use]
pub fn tube_radiant_flux(
    wall_eps: f64,
    gas_eps: f64,
    gas_k: f64,
    absorbed: f64,
    wall_k: f64,
) -> f64 {
    SIGMA * (wall_eps + 1.0) / 2.0 * (gas_eps * fourth(gas_k) - absorbed * fourth(wall_k))
}

/// Flux radiated by gas to the wall of a tube.
pub static TUBE_RADIANT_FLUX: Card = Card {
    id: "heat.tube-radiant-flux",
    law: Law::Closed("q = 5.670374419e-8 * (eps_w + 1) / 2 * (eps_g * T_g^4 - a_g * T_w^4)"),
    gives: symbol("q", &W_PER_M2, "flux radiated from the gas to the wall"),
    takes: &[
        symbol("eps_w", &ONE, "emissivity of the wall"),
        symbol("eps_g", &ONE, "emissivity of the gas"),
        T_G,
        symbol(
            "a_g",
            &ONE,
            "absorptivity of the gas for radiation from the wall",
        ),
        T_W,
    ],
    limits: &[Limit::within("eps_w", 0.7, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::RADIATIVE_TRANSFER,
        place: "gas and a wall that is nearly black",
    },
    eval: |v| Ok(tube_radiant_flux(v[0], v[1], v[2], v[3], v[4])),
};
