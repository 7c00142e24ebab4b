//! Family `plate`: flat plates held by stays or tubes.
//!
//! Sources: ASME VIII-1 UG-47; the table of stayed surfaces of the National Board Inspection
//! Code, which prints a rectangular form beside it. Girders and gussets are left out.

use super::positive;
use crate::sources::{ASME_VIII_1, DERIVED, NBIC_2};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &WALL,
    &PRESSURE,
    &OBLONG,
    &FIELD_PITCH,
    &LIGAMENT,
    &PIERCED,
    &PITCH,
];

const NO_PLATE: &str = "there must be a plate, a pitch and a stress";

/// Least thickness of a stayed plate; see [`WALL`].
#[must_use]
pub fn wall(p_mm: f64, pressure_mpa: f64, s_mpa: f64, c: f64) -> f64 {
    p_mm * (pressure_mpa / (s_mpa * c)).sqrt()
}

/// Least thickness of a flat plate held by stays at a greatest pitch.
pub static WALL: Card = Card {
    id: "plate.stayed-wall",
    law: Law::Closed("t = p * sqrt(P / (S * C))"),
    gives: symbol("t", &MM, "least plate, before allowances"),
    takes: &[
        symbol("p", &MM, "greatest pitch of the stays"),
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("S", &MPA, "allowable stress at design temperature"),
        symbol(
            "C",
            &ONE,
            "2.1 for stays riveted over or brazed through plates up to 11 mm",
        ),
    ],
    limits: &[Limit::within("C", 2.1, 3.2)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-47(a)(1)",
    },
    eval: |v| {
        let t = wall(v[0], v[1], v[2], v[3]);
        positive(t, WALL.id, ("P", v[1]), NO_PLATE)
    },
};

/// Greatest pressure of a stayed plate; see [`PRESSURE`].
#[must_use]
pub fn pressure(t_mm: f64, s_mpa: f64, c: f64, p_mm: f64) -> f64 {
    t_mm * t_mm * s_mpa * c / (p_mm * p_mm)
}

/// Greatest pressure of a flat plate held by stays at a greatest pitch.
pub static PRESSURE: Card = Card {
    id: "plate.stayed-pressure",
    law: Law::Closed("P = t^2 * S * C / p^2"),
    gives: symbol("P", &MPA_GAUGE, "greatest pressure of the plate, gauge"),
    takes: &[
        symbol("t", &MM, "plate"),
        symbol("S", &MPA, "allowable stress at design temperature"),
        symbol(
            "C",
            &ONE,
            "2.1 for stays riveted over or brazed through plates up to 11 mm",
        ),
        symbol("p", &MM, "greatest pitch of the stays"),
    ],
    limits: &[Limit::within("C", 2.1, 3.2)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-47(a)(2)",
    },
    eval: |v| {
        let p = pressure(v[0], v[1], v[2], v[3]);
        positive(p, PRESSURE.id, ("t", v[0]), NO_PLATE)
    },
};

/// Greatest pressure of a plate with stays in oblongs; see [`OBLONG`].
#[must_use]
pub fn oblong(t_mm: f64, s_mpa: f64, c: f64, l_mm: f64, w_mm: f64) -> f64 {
    2.0 * t_mm * t_mm * s_mpa * c / (l_mm * l_mm + w_mm * w_mm)
}

/// Greatest pressure of a flat plate with stays in oblongs, by the mean square of the pitches.
/// For a long thin oblong it allows nearly twice what the greatest pitch does; it is shown
/// beside, and only for fields that are nearly square.
pub static OBLONG: Card = Card {
    id: "plate.stayed-oblong",
    law: Law::Closed("P = 2 * t^2 * S * C / (l^2 + w^2)"),
    gives: symbol(
        "P",
        &MPA_GAUGE,
        "greatest pressure of the plate, oblong pitch, gauge",
    ),
    takes: &[
        symbol("t", &MM, "plate"),
        symbol("S", &MPA, "allowable stress at design temperature"),
        symbol(
            "C",
            &ONE,
            "2.1 for stays riveted over or brazed through plates up to 11 mm",
        ),
        symbol("l", &MM, "longer pitch"),
        symbol("w", &MM, "shorter pitch"),
    ],
    limits: &[Limit::within("C", 2.1, 3.2)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &NBIC_2,
        place: "S2.10.4",
    },
    eval: |v| {
        let p = oblong(v[0], v[1], v[2], v[3], v[4]);
        positive(p, OBLONG.id, ("t", v[0]), NO_PLATE)
    },
};

/// Pitch of an uneven field of supports; see [`FIELD_PITCH`].
#[must_use]
pub fn field_pitch(d_c_mm: f64, s_mm: f64) -> f64 {
    (d_c_mm / 2.0_f64.sqrt()).max(s_mm)
}

/// Pitch that stands for an uneven field of supports: from the largest circle that touches
/// three supports and holds none, and the triangle of these three. Exact for square, oblong and
/// even triangular fields.
pub static FIELD_PITCH: Card = Card {
    id: "plate.field-pitch",
    law: Law::Closed("p = max(d_c / sqrt(2), s)"),
    gives: symbol("p", &MM, "pitch that stands for the field"),
    takes: &[
        symbol(
            "d_c",
            &MM,
            "largest circle through three supports that holds none",
        ),
        symbol("s", &MM, "middle side of the triangle of these three"),
    ],
    limits: &[Limit::at_most("s / d_c", 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "square field: circle over pitch is the square root of 2",
    },
    eval: |v| {
        let p = field_pitch(v[0], v[1]);
        positive(p, FIELD_PITCH.id, ("d_c", v[0]), NO_PLATE)
    },
};

/// Plate left between two holes; see [`LIGAMENT`].
#[must_use]
pub fn ligament(p_mm: f64, d_mm: f64) -> f64 {
    p_mm - d_mm
}

/// Plate left between two holes.
pub static LIGAMENT: Card = Card {
    id: "plate.ligament",
    law: Law::Closed("b = p - d"),
    gives: symbol("b", &MM, "plate left between two holes"),
    takes: &[
        symbol("p", &MM, "pitch of the holes"),
        symbol("d", &MM, "diameter of the holes"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "distance of centres less a hole",
    },
    eval: |v| {
        positive(
            ligament(v[0], v[1]),
            LIGAMENT.id,
            ("p", v[0]),
            "the holes run into each other",
        )
    },
};

/// Thickness of a plate with an opening; see [`PIERCED`].
#[must_use]
pub fn pierced(t_mm: f64) -> f64 {
    2.0_f64.sqrt() * t_mm
}

/// Least thickness of a flat plate with an opening whose metal is not replaced: as with twice the constant of the plate without one.
pub static PIERCED: Card = Card {
    id: "plate.pierced-wall",
    law: Law::Closed("t_p = sqrt(2) * t"),
    gives: symbol("t_p", &MM, "least plate with an opening"),
    takes: &[symbol("t", &MM, "least plate without an opening")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-39, twice the constant C",
    },
    eval: |v| {
        positive(
            pierced(v[0]),
            PIERCED.id,
            ("t", v[0]),
            "there must be a plate",
        )
    },
};

/// Greatest pitch of a stayed plate; see [`PITCH`].
#[must_use]
pub fn pitch(t_mm: f64, pressure_mpa: f64, s_mpa: f64, c: f64) -> f64 {
    t_mm * (s_mpa * c / pressure_mpa).sqrt()
}

/// Greatest pitch of the supports that a plate bears.
pub static PITCH: Card = Card {
    id: "plate.stayed-pitch",
    law: Law::Closed("p = t * sqrt(S * C / P)"),
    gives: symbol("p", &MM, "greatest pitch that the plate bears"),
    takes: &[
        symbol("t", &MM, "plate"),
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("S", &MPA, "allowable stress at design temperature"),
        symbol("C", &ONE, "constant for the kind of stay"),
    ],
    limits: &[Limit::within("C", 2.1, 3.2)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-47(a)(1), solved for the pitch",
    },
    eval: |v| {
        let p = pitch(v[0], v[1], v[2], v[3]);
        positive(p, PITCH.id, ("P", v[1]), NO_PLATE)
    },
};
