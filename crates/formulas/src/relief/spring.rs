//! Family `spring`: the compression spring of a safety valve.
//!
//! Source: EN 13906-1, from memory. Springs with ends that are not ground, fatigue and relaxation
//! are left out: a valve blows seldom, and its set pressure is looked at every year.

use crate::sources::{DERIVED, EN_13906_1};
use crate::vessel::positive;
use reckoning::Refused;
use reckoning::quantity::{MM, MPA, MPA_GAUGE, N_PER_MM_STIFF, NEWTON, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &INDEX,
    &RATE,
    &SHEAR,
    &CURVED,
    &SOLID,
    &SPACE,
    &SEAT_FORCE,
    &LIFTED,
    &RISE,
    &SHORTENED,
    &CLOSED_FORCE,
    &STATIC,
    &BUCKLING,
];

const NOTHING: &str = "there must be a spring under load";
const TOO_SHORT: &str = "the spring is shorter than that";

/// Coil over wire; see [`INDEX`].
#[must_use]
pub fn index(coil_mm: f64, wire_mm: f64) -> f64 {
    coil_mm / wire_mm
}

/// Mean diameter of the coil over the wire.
pub static INDEX: Card = Card {
    id: "spring.index",
    law: Law::Closed("w = D / d"),
    gives: symbol("w", &ONE, "coil over wire"),
    takes: &[
        symbol("D", &MM, "mean diameter of the coil"),
        symbol("d", &MM, "wire"),
    ],
    limits: &[Limit::within("w", 4.0, 20.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13906_1,
        place: "coiling ratio",
    },
    eval: |v| positive(index(v[0], v[1]), INDEX.id, ("d", v[1]), NOTHING),
};

/// Rate of a spring; see [`RATE`].
#[must_use]
pub fn rate(g_mpa: f64, wire_mm: f64, coil_mm: f64, turns: f64) -> f64 {
    g_mpa * wire_mm.powi(4) / (8.0 * coil_mm.powi(3) * turns)
}

/// Rate of a compression spring.
pub static RATE: Card = Card {
    id: "spring.rate",
    law: Law::Closed("R = G * d^4 / (8 * D^3 * n)"),
    gives: symbol("R", &N_PER_MM_STIFF, "rate"),
    takes: &[
        symbol("G", &MPA, "shear modulus"),
        symbol("d", &MM, "wire"),
        symbol("D", &MM, "mean diameter of the coil"),
        symbol("n", &ONE, "working turns"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13906_1,
        place: "spring rate",
    },
    eval: |v| positive(rate(v[0], v[1], v[2], v[3]), RATE.id, ("n", v[3]), NOTHING),
};

/// Shear in the wire; see [`SHEAR`].
#[must_use]
pub fn shear(f_n: f64, coil_mm: f64, wire_mm: f64) -> f64 {
    8.0 * coil_mm * f_n / (PI * wire_mm.powi(3))
}

/// Shear in the wire, its curve not counted, as static loads are judged.
pub static SHEAR: Card = Card {
    id: "spring.shear",
    law: Law::Closed("tau = 8 * D * F / (pi * d^3)"),
    gives: symbol("tau", &MPA, "shear in the wire"),
    takes: &[
        symbol("F", &NEWTON, "force"),
        symbol("D", &MM, "mean diameter of the coil"),
        symbol("d", &MM, "wire"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13906_1,
        place: "shear stress",
    },
    eval: |v| positive(shear(v[0], v[1], v[2]), SHEAR.id, ("d", v[2]), NOTHING),
};

/// Shear at the inside of the coil; see [`CURVED`].
#[must_use]
pub fn curved(w: f64, tau_mpa: f64) -> f64 {
    (w + 0.5) / (w - 0.75) * tau_mpa
}

/// Shear at the inside of the coil, its curve counted.
pub static CURVED: Card = Card {
    id: "spring.curved",
    law: Law::Closed("tau_k = (w + 0.5) / (w - 0.75) * tau"),
    gives: symbol("tau_k", &MPA, "shear at the inside of the coil"),
    takes: &[
        symbol("w", &ONE, "coil over wire"),
        symbol("tau", &MPA, "shear in the wire"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13906_1,
        place: "stress correction",
    },
    eval: |v| positive(curved(v[0], v[1]), CURVED.id, ("w", v[0]), NOTHING),
};

/// Length of a closed spring; see [`SOLID`].
#[must_use]
pub fn solid(turns: f64, wire_mm: f64) -> f64 {
    (turns + 2.0) * wire_mm
}

/// Length of a spring with ground ends when its turns touch.
pub static SOLID: Card = Card {
    id: "spring.solid",
    law: Law::Closed("L_c = (n + 2) * d"),
    gives: symbol("L_c", &MM, "length with its turns closed"),
    takes: &[symbol("n", &ONE, "working turns"), symbol("d", &MM, "wire")],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13906_1,
        place: "solid length, ends closed and ground",
    },
    eval: |v| positive(solid(v[0], v[1]), SOLID.id, ("d", v[1]), NOTHING),
};

/// Least sum of the gaps; see [`SPACE`].
#[must_use]
pub fn space(turns: f64, coil_mm: f64, wire_mm: f64) -> f64 {
    turns * (0.0015 * coil_mm * coil_mm / wire_mm + 0.1 * wire_mm)
}

/// Least sum of the gaps between the turns at the greatest load.
pub static SPACE: Card = Card {
    id: "spring.space",
    law: Law::Closed("S_a = n * (0.0015 * D^2 / d + 0.1 * d)"),
    gives: symbol("S_a", &MM, "least sum of the gaps"),
    takes: &[
        symbol("n", &ONE, "working turns"),
        symbol("D", &MM, "mean diameter of the coil"),
        symbol("d", &MM, "wire"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13906_1,
        place: "sum of the least gaps",
    },
    eval: |v| positive(space(v[0], v[1], v[2]), SPACE.id, ("d", v[2]), NOTHING),
};

/// Force at the set pressure; see [`SEAT_FORCE`].
#[must_use]
pub fn seat_force(p_mpa: f64, seat_mm: f64) -> f64 {
    p_mpa * PI / 4.0 * seat_mm * seat_mm
}

/// Force that holds the valve on its seat at the set pressure.
pub static SEAT_FORCE: Card = Card {
    id: "spring.seat-force",
    law: Law::Closed("F_0 = P * pi / 4 * d_s^2"),
    gives: symbol("F_0", &NEWTON, "force at the set pressure"),
    takes: &[
        symbol("P", &MPA_GAUGE, "set pressure, gauge"),
        symbol("d_s", &MM, "diameter of the line on which the valve seats"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "pressure over area",
    },
    eval: |v| {
        positive(
            seat_force(v[0], v[1]),
            SEAT_FORCE.id,
            ("d_s", v[1]),
            NOTHING,
        )
    },
};

/// Force at full lift; see [`LIFTED`].
#[must_use]
pub fn lifted(f_0_n: f64, rate_n_mm: f64, lift_mm: f64) -> f64 {
    f_0_n + rate_n_mm * lift_mm
}

/// Force of the spring at full lift.
pub static LIFTED: Card = Card {
    id: "spring.lifted",
    law: Law::Closed("F_h = F_0 + R * h"),
    gives: symbol("F_h", &NEWTON, "force at full lift"),
    takes: &[
        symbol("F_0", &NEWTON, "force at the set pressure"),
        symbol("R", &N_PER_MM_STIFF, "rate"),
        symbol("h", &MM, "lift"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "rate over lift",
    },
    eval: |v| positive(lifted(v[0], v[1], v[2]), LIFTED.id, ("F_0", v[0]), NOTHING),
};

/// Rise of pressure to full lift; see [`RISE`].
#[must_use]
pub fn spring_rise(f_0_n: f64, rate_n_mm: f64, lift_mm: f64) -> f64 {
    rate_n_mm * lift_mm / f_0_n
}

/// Rise of the pressure to full lift over the set pressure, no lip of the valve helping.
pub static RISE: Card = Card {
    id: "spring.rise",
    law: Law::Closed("a = R * h / F_0"),
    gives: symbol("a", &ONE, "rise of pressure to full lift"),
    takes: &[
        symbol("F_0", &NEWTON, "force at the set pressure"),
        symbol("R", &N_PER_MM_STIFF, "rate"),
        symbol("h", &MM, "lift"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "force of the spring over area of the seat",
    },
    eval: |v| {
        positive(
            spring_rise(v[0], v[1], v[2]),
            RISE.id,
            ("F_0", v[0]),
            NOTHING,
        )
    },
};

/// Length of a spring under load; see [`SHORTENED`].
#[must_use]
pub fn shortened(free_mm: f64, f_n: f64, rate_n_mm: f64) -> f64 {
    free_mm - f_n / rate_n_mm
}

/// Length of a spring under load.
pub static SHORTENED: Card = Card {
    id: "spring.shortened",
    law: Law::Closed("L = L_0 - F / R"),
    gives: symbol("L", &MM, "length under load"),
    takes: &[
        symbol("L_0", &MM, "free length"),
        symbol("F", &NEWTON, "force"),
        symbol("R", &N_PER_MM_STIFF, "rate"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "force over rate",
    },
    eval: |v| {
        positive(
            shortened(v[0], v[1], v[2]),
            SHORTENED.id,
            ("L_0", v[0]),
            TOO_SHORT,
        )
    },
};

/// Force with the turns closed; see [`CLOSED_FORCE`].
#[must_use]
pub fn closed_force(free_mm: f64, solid_mm: f64, rate_n_mm: f64) -> f64 {
    rate_n_mm * (free_mm - solid_mm)
}

/// Force that closes the turns of a spring.
pub static CLOSED_FORCE: Card = Card {
    id: "spring.closed-force",
    law: Law::Closed("F_c = R * (L_0 - L_c)"),
    gives: symbol("F_c", &NEWTON, "force with the turns closed"),
    takes: &[
        symbol("L_0", &MM, "free length"),
        symbol("L_c", &MM, "length with its turns closed"),
        symbol("R", &N_PER_MM_STIFF, "rate"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "rate over travel",
    },
    eval: |v| {
        positive(
            closed_force(v[0], v[1], v[2]),
            CLOSED_FORCE.id,
            ("L_0", v[0]),
            TOO_SHORT,
        )
    },
};

/// Shear allowed in a spring; see [`STATIC`].
#[must_use]
pub fn static_limit(tensile_mpa: f64) -> f64 {
    0.56 * tensile_mpa
}

/// Shear allowed in a cold-wound spring with its turns closed.
pub static STATIC: Card = Card {
    id: "spring.static",
    law: Law::Closed("tau_z = 0.56 * R_m"),
    gives: symbol("tau_z", &MPA, "shear allowed"),
    takes: &[symbol("R_m", &MPA, "tensile strength of the wire")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13906_1,
        place: "allowed shear of cold-coiled springs at solid length",
    },
    eval: |v| positive(static_limit(v[0]), STATIC.id, ("R_m", v[0]), NOTHING),
};

/// Travel at which a spring of free length `free_mm` buckles, mm; see [`BUCKLING`]. `None` where it
/// never does.
#[must_use]
pub fn buckling(free_mm: f64, coil_mm: f64, modulus: [f64; 2], held: f64) -> Option<f64> {
    let [e, g] = modulus;
    let soft = 1.0 - g / e;
    let slender = PI * coil_mm / (held * free_mm);
    let within = 1.0 - soft / (0.5 + g / e) * slender * slender;
    (within >= 0.0).then(|| free_mm * 0.5 / soft * (1.0 - within.sqrt()))
}

/// Travel at which a spring buckles.
pub static BUCKLING: Card = Card {
    id: "spring.buckling",
    law: Law::Closed(
        "s_K = L_0 * 0.5 / (1 - G / E) * (1 - sqrt(1 - (1 - G / E) / (0.5 + G / E) * (pi * D / (nu * L_0))^2))",
    ),
    gives: symbol("s_K", &MM, "travel at which it buckles"),
    takes: &[
        symbol("L_0", &MM, "free length"),
        symbol("D", &MM, "mean diameter of the coil"),
        symbol("E", &MPA, "modulus of elasticity"),
        symbol("G", &MPA, "shear modulus"),
        symbol(
            "nu",
            &ONE,
            "how the ends are held: 0.5 both flat and guided, 1 both free to turn",
        ),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &EN_13906_1,
        place: "buckling",
    },
    eval: |v| {
        buckling(v[0], v[1], [v[2], v[3]], v[4]).ok_or(Refused {
            card: BUCKLING.id,
            symbol: "L_0",
            value: v[0],
            why: "a spring as short as this never buckles",
        })
    },
};
