//! Speed, force and spring in the lathe: turns of the spindle, the main cutting force, and how far
//! an overhanging bar springs away from it.
//!
//! Tool life, temperature and chip thickness are left out.

use std::f64::consts::PI;

use reckoning::quantity::{M_PER_MIN, MM, MPA, NEWTON, RPM};
use reckoning::{Card, Cite, Law, Spread, symbol};

use crate::sources::{DATA_HANDBOOK, DERIVED};

/// Turns of the spindle, rev/min; see [`SPINDLE_SPEED`].
#[must_use]
pub fn spindle_speed(v_m_min: f64, d_mm: f64) -> f64 {
    1000.0 * v_m_min / (PI * d_mm)
}

/// Turns of the spindle for a cutting speed at a diameter.
pub static SPINDLE_SPEED: Card = Card {
    id: "cutting.spindle-speed",
    law: Law::Closed("n = 1000 * v / (pi * D)"),
    gives: symbol("n", &RPM, "turns of the spindle"),
    takes: &[
        symbol("v", &M_PER_MIN, "cutting speed"),
        symbol("D", &MM, "diameter at the cutting edge"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "speed at the rim of a turning bar",
    },
    eval: |v| Ok(spindle_speed(v[0], v[1])),
};

/// Main cutting force, N; see [`FORCE`].
#[must_use]
pub fn force(k_c_mpa: f64, a_p_mm: f64, f_mm: f64) -> f64 {
    k_c_mpa * a_p_mm * f_mm
}

/// Main cutting force of a turning tool.
pub static FORCE: Card = Card {
    id: "cutting.force",
    law: Law::Closed("F = k_c * a_p * f"),
    gives: symbol("F", &NEWTON, "main cutting force"),
    takes: &[
        symbol("k_c", &MPA, "specific cutting force of the metal"),
        symbol("a_p", &MM, "depth of cut"),
        symbol("f", &MM, "feed in a turn"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DATA_HANDBOOK,
        place: "section 5.7",
    },
    eval: |v| Ok(force(v[0], v[1], v[2])),
};

/// Spring of a round bar at its free end, mm; see [`BAR_SPRING`].
#[must_use]
pub fn bar_spring(f_n: f64, l_mm: f64, e_mpa: f64, d_mm: f64) -> f64 {
    let i = PI * d_mm.powi(4) / 64.0;
    f_n * l_mm.powi(3) / (3.0 * e_mpa * i)
}

/// Spring of a round bar held at one end under a force at the other.
pub static BAR_SPRING: Card = Card {
    id: "cutting.bar-spring",
    law: Law::Closed("I = pi * D^4 / 64; s = F * L^3 / (3 * E * I)"),
    gives: symbol("s", &MM, "spring at the cut"),
    takes: &[
        symbol("F", &NEWTON, "force at the cut"),
        symbol("L", &MM, "overhang"),
        symbol("E", &MPA, "elastic modulus"),
        symbol("D", &MM, "least diameter between the jaws and the cut"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "elastic line of a cantilever",
    },
    eval: |v| Ok(bar_spring(v[0], v[1], v[2], v[3])),
};
