//! Family `thread-shear`: threads stripped by a pull, of the screw and of the bush.
//!
//! Source: the handbook's formulas for the shear area of mating threads, from memory. Uneven sharing
//! among the first threads is left out; the allowed stress carries it.

use crate::sources::{COMMON_PRACTICE, DERIVED, MACHINERYS_HANDBOOK_24};
use crate::vessel::positive;
use reckoning::quantity::{MM, MM2, MPA, MPA_GAUGE, NEWTON, ONE};
use reckoning::{Card, Cite, Law, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SCREW_SHEAR,
    &BUSH_SHEAR,
    &BLOW_OUT,
    &STRESS,
    &ALLOWED,
    &TURNS,
];

const NOTHING: &str = "there must be a thread and a push";

/// Shear area of the screw; see [`SCREW_SHEAR`].
#[must_use]
pub fn screw_shear(l_mm: f64, p_mm: f64, k_mm: f64, e_mm: f64, tangent: f64) -> f64 {
    PI * l_mm * k_mm * (0.5 + (e_mm - k_mm) * tangent / p_mm)
}

/// Area in which the threads of a screw shear.
pub static SCREW_SHEAR: Card = Card {
    id: "thread-shear.screw",
    law: Law::Closed("A_s = pi * L * K * (1 / 2 + (E - K) * t / P)"),
    gives: symbol("A_s", &MM2, "shear area of the screw"),
    takes: &[
        symbol("L", &MM, "length engaged"),
        symbol("P", &MM, "pitch"),
        symbol("K", &MM, "minor diameter of the bush at its largest"),
        symbol("E", &MM, "effective diameter of the screw at its least"),
        symbol("t", &ONE, "tangent of half the thread angle"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &MACHINERYS_HANDBOOK_24,
        place: "shear area of external threads",
    },
    eval: |v| {
        positive(
            screw_shear(v[0], v[1], v[2], v[3], v[4]),
            SCREW_SHEAR.id,
            ("E", v[3]),
            NOTHING,
        )
    },
};

/// Shear area of the bush; see [`BUSH_SHEAR`].
#[must_use]
pub fn bush_shear(l_mm: f64, p_mm: f64, d_mm: f64, e_mm: f64, tangent: f64) -> f64 {
    PI * l_mm * d_mm * (0.5 + (d_mm - e_mm) * tangent / p_mm)
}

/// Area in which the threads of a bush shear.
pub static BUSH_SHEAR: Card = Card {
    id: "thread-shear.bush",
    law: Law::Closed("A_n = pi * L * D * (1 / 2 + (D - E) * t / P)"),
    gives: symbol("A_n", &MM2, "shear area of the bush"),
    takes: &[
        symbol("L", &MM, "length engaged"),
        symbol("P", &MM, "pitch"),
        symbol("D", &MM, "major diameter of the screw at its least"),
        symbol("E", &MM, "effective diameter of the bush at its largest"),
        symbol("t", &ONE, "tangent of half the thread angle"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &MACHINERYS_HANDBOOK_24,
        place: "shear area of internal threads",
    },
    eval: |v| {
        positive(
            bush_shear(v[0], v[1], v[2], v[3], v[4]),
            BUSH_SHEAR.id,
            ("D", v[2]),
            NOTHING,
        )
    },
};

/// Push of the pressure on a screw; see [`BLOW_OUT`].
#[must_use]
pub fn blow_out(p_mpa: f64, d_mm: f64) -> f64 {
    p_mpa * PI / 4.0 * d_mm * d_mm
}

/// Push of the pressure on what is screwed in, counted to the tips of its threads.
pub static BLOW_OUT: Card = Card {
    id: "thread-shear.blow-out",
    law: Law::Closed("F = P * pi / 4 * D^2"),
    gives: symbol("F", &NEWTON, "push on the screw"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("D", &MM, "major diameter"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "pressure over area",
    },
    eval: |v| positive(blow_out(v[0], v[1]), BLOW_OUT.id, ("D", v[1]), NOTHING),
};

/// Shear in the threads; see [`STRESS`].
#[must_use]
pub fn stress(f_n: f64, a_mm2: f64) -> f64 {
    f_n / a_mm2
}

/// Shear in the threads.
pub static STRESS: Card = Card {
    id: "thread-shear.stress",
    law: Law::Closed("tau = F / A"),
    gives: symbol("tau", &MPA, "shear in the threads"),
    takes: &[
        symbol("F", &NEWTON, "push"),
        symbol("A", &MM2, "shear area"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "load over area",
    },
    eval: |v| positive(stress(v[0], v[1]), STRESS.id, ("A", v[1]), NOTHING),
};

/// Shear allowed in threads; see [`ALLOWED`].
#[must_use]
pub fn allowed(f_mpa: f64) -> f64 {
    0.5 * f_mpa
}

/// Shear allowed in threads.
pub static ALLOWED: Card = Card {
    id: "thread-shear.allowed",
    law: Law::Closed("tau_a = 0.5 * f"),
    gives: symbol("tau_a", &MPA, "shear allowed"),
    takes: &[symbol("f", &MPA, "design stress")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "half the design stress",
    },
    eval: |v| positive(allowed(v[0]), ALLOWED.id, ("f", v[0]), NOTHING),
};

/// Full threads engaged; see [`TURNS`].
#[must_use]
pub fn turns(l_mm: f64, p_mm: f64) -> f64 {
    l_mm / p_mm
}

/// Full threads engaged.
pub static TURNS: Card = Card {
    id: "thread-shear.turns",
    law: Law::Closed("z = L / P"),
    gives: symbol("z", &ONE, "full threads engaged"),
    takes: &[
        symbol("L", &MM, "length engaged"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "length over pitch",
    },
    eval: |v| positive(turns(v[0], v[1]), TURNS.id, ("P", v[1]), NOTHING),
};
