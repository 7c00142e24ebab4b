//! Family `allow`: from strength to what may be asked of it, at work and at the water test.
//!
//! Sources: EN 13445-3 clause 8 for external pressure; ASME VIII-1 UG-99 for the test; ASME
//! VIII-2 for bending at the test. Fatigue is left out.

use super::positive;
use crate::sources::{ASME_VIII_1, ASME_VIII_2, COMMON_PRACTICE, EN_13445_3};
use reckoning::quantity::{MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &ELASTIC_LIMIT,
    &RATIO,
    &COLLAPSE,
    &ALLOWED,
    &TEST_PRESSURE,
    &TEST_BY_STRESS,
    &TEST_MEMBRANE,
    &BENDING,
    &JOINT,
];

/// Elastic limit; see [`ELASTIC_LIMIT`].
#[must_use]
pub fn elastic_limit(r_p_mpa: f64) -> f64 {
    r_p_mpa / 1.25
}

/// Elastic limit of a metal whose stress and strain part company early, as annealed copper and austenitic steel do.
pub static ELASTIC_LIMIT: Card = Card {
    id: "allow.elastic-limit",
    law: Law::Closed("sigma_e = R_p / 1.25"),
    gives: symbol("sigma_e", &MPA, "elastic limit"),
    takes: &[symbol(
        "R_p",
        &MPA,
        "0.2 % proof stress at metal temperature",
    )],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "8.4.3, austenitic steel; taken for copper too",
    },
    eval: |v| {
        positive(
            elastic_limit(v[0]),
            ELASTIC_LIMIT.id,
            ("R_p", v[0]),
            "there must be a proof stress",
        )
    },
};

/// Elastic over yield pressure; see [`RATIO`].
#[must_use]
pub fn ratio(p_m_mpa: f64, p_y_mpa: f64) -> f64 {
    p_m_mpa / p_y_mpa
}

/// Elastic collapse pressure over yield pressure.
pub static RATIO: Card = Card {
    id: "allow.ratio",
    law: Law::Closed("x = P_m / P_y"),
    gives: symbol("x", &ONE, "elastic over yield pressure"),
    takes: &[
        symbol("P_m", &MPA_GAUGE, "elastic collapse pressure"),
        symbol("P_y", &MPA_GAUGE, "pressure at which the wall yields"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_3,
        place: "8.5.2",
    },
    eval: |v| {
        positive(
            ratio(v[0], v[1]),
            RATIO.id,
            ("P_m", v[0]),
            "there must be a pressure",
        )
    },
};

/// Collapse pressure; see [`COLLAPSE`].
#[must_use]
pub fn collapse(y: f64, p_y_mpa: f64) -> f64 {
    y * p_y_mpa
}

/// Lower bound of the collapse pressure.
pub static COLLAPSE: Card = Card {
    id: "allow.collapse",
    law: Law::Closed("P_r = y * P_y"),
    gives: symbol("P_r", &MPA_GAUGE, "collapse pressure, lower bound"),
    takes: &[
        symbol("y", &ONE, "collapse over yield pressure"),
        symbol("P_y", &MPA_GAUGE, "pressure at which the wall yields"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "8.5.2",
    },
    eval: |v| {
        positive(
            collapse(v[0], v[1]),
            COLLAPSE.id,
            ("y", v[0]),
            "there must be a pressure",
        )
    },
};

/// Allowed pressure; see [`ALLOWED`].
#[must_use]
pub fn pressure(p_c_mpa: f64, k: f64) -> f64 {
    p_c_mpa / k
}

/// Pressure allowed by a factor on a failing pressure: 1.5 at work and 1.1 at the test on collapse.
pub static ALLOWED: Card = Card {
    id: "allow.pressure",
    law: Law::Closed("P = P_c / k"),
    gives: symbol("P", &MPA_GAUGE, "allowed pressure"),
    takes: &[
        symbol(
            "P_c",
            &MPA_GAUGE,
            "pressure at which the part fails or first yields",
        ),
        symbol("k", &ONE, "factor"),
    ],
    limits: &[Limit::at_least("k", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_3,
        place: "8.4.4",
    },
    eval: |v| {
        positive(
            pressure(v[0], v[1]),
            ALLOWED.id,
            ("P_c", v[0]),
            "there must be a pressure",
        )
    },
};

/// Test pressure; see [`TEST_PRESSURE`].
#[must_use]
pub fn test_pressure(k: f64, p_mpa: f64) -> f64 {
    k * p_mpa
}

/// Water test pressure as a multiple of the working pressure.
pub static TEST_PRESSURE: Card = Card {
    id: "allow.test-pressure",
    law: Law::Closed("P_t = k * P"),
    gives: symbol("P_t", &MPA_GAUGE, "water test pressure"),
    takes: &[
        symbol("k", &ONE, "test pressure over working pressure"),
        symbol("P", &MPA_GAUGE, "working pressure, gauge"),
    ],
    limits: &[Limit::at_least("k", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "twice the working pressure once, half as much again at repeats",
    },
    eval: |v| {
        positive(
            test_pressure(v[0], v[1]),
            TEST_PRESSURE.id,
            ("P", v[1]),
            "there must be a pressure",
        )
    },
};

/// Test pressure by stresses; see [`TEST_BY_STRESS`].
#[must_use]
pub fn test_by_stress(p_mpa: f64, s_c_mpa: f64, s_mpa: f64) -> f64 {
    1.3 * p_mpa * s_c_mpa / s_mpa
}

/// Water test pressure from the stresses at test and design temperature.
pub static TEST_BY_STRESS: Card = Card {
    id: "allow.test-by-stress",
    law: Law::Closed("P_t = 1.3 * P * S_c / S"),
    gives: symbol("P_t", &MPA_GAUGE, "water test pressure"),
    takes: &[
        symbol("P", &MPA_GAUGE, "working pressure, gauge"),
        symbol("S_c", &MPA, "allowable stress at test temperature"),
        symbol("S", &MPA, "allowable stress at design temperature"),
    ],
    limits: &[Limit::at_least("S_c / S", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-99(b)",
    },
    eval: |v| {
        positive(
            test_by_stress(v[0], v[1], v[2]),
            TEST_BY_STRESS.id,
            ("P", v[0]),
            "there must be a pressure",
        )
    },
};

/// Membrane stress allowed at the test; see [`TEST_MEMBRANE`].
#[must_use]
pub fn test_membrane(r_mpa: f64) -> f64 {
    0.9 * r_mpa
}

/// Membrane stress allowed at the water test.
pub static TEST_MEMBRANE: Card = Card {
    id: "allow.test-membrane",
    law: Law::Closed("sigma_t = 0.9 * R"),
    gives: symbol("sigma_t", &MPA, "membrane stress allowed at the test"),
    takes: &[symbol("R", &MPA, "yield or proof stress, cold")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.1.6.2",
    },
    eval: |v| {
        positive(
            test_membrane(v[0]),
            TEST_MEMBRANE.id,
            ("R", v[0]),
            "there must be a proof stress",
        )
    },
};

/// Bending stress allowed; see [`BENDING`].
#[must_use]
pub fn bending(f_mpa: f64, r_p_mpa: f64, k: f64) -> f64 {
    (1.5 * f_mpa).min(1.35 * r_p_mpa / k)
}

/// Bending stress allowed in a plate at working pressure, the water test included.
pub static BENDING: Card = Card {
    id: "allow.bending",
    law: Law::Closed("sigma_b = min(1.5 * f, 1.35 * R_p / k)"),
    gives: symbol(
        "sigma_b",
        &MPA,
        "bending stress allowed at working pressure",
    ),
    takes: &[
        symbol("f", &MPA, "design stress at design temperature"),
        symbol("R_p", &MPA, "0.2 % proof stress, cold"),
        symbol("k", &ONE, "test pressure over working pressure"),
    ],
    limits: &[Limit::at_least("k", 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.1.6, membrane and bending at work and at the test, older editions",
    },
    eval: |v| {
        positive(
            bending(v[0], v[1], v[2]),
            BENDING.id,
            ("f", v[0]),
            "there must be a stress",
        )
    },
};

/// Shear allowed in a braze; see [`JOINT`].
#[must_use]
pub fn joint(tau_mpa: f64, e: f64) -> f64 {
    tau_mpa * e
}

/// Shear allowed in a brazed joint.
pub static JOINT: Card = Card {
    id: "allow.joint",
    law: Law::Closed("tau_a = tau_f * E"),
    gives: symbol("tau_a", &MPA, "shear allowed in the braze"),
    takes: &[
        symbol(
            "tau_f",
            &MPA,
            "shear allowed where filler shows on both sides",
        ),
        symbol(
            "E",
            &ONE,
            "joint efficiency, 1 where filler shows on both sides, 0.5 where it cannot be seen",
        ),
    ],
    limits: &[Limit::within("E", 0.0, 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UB-14 and UB-15",
    },
    eval: |v| {
        positive(
            joint(v[0], v[1]),
            JOINT.id,
            ("tau_f", v[0]),
            "there must be a joint",
        )
    },
};
