//! Family `opening`: replacement of the metal that a hole takes from a shell.
//!
//! Source: ASME VIII-1 UG-37 to UG-41, with the plane factor F and the joint factor E1 both 1.
//! Flat ends, oblique necks and reinforcing pads are left out; so is the exemption for small
//! openings, which was made for large shells.

use super::positive;
use crate::sources::{ASME_VIII_1, DERIVED};
use reckoning::quantity::{MM, MM2, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &AREA_REQUIRED,
    &AREA_REQUIRED_EXTERNAL,
    &AREA_IN_SHELL,
    &AREA_OUTWARD,
    &AREA_INWARD,
    &TIE_SHEAR,
    &BUSH_WALL,
    &BUSH_NEED,
    &STRENGTH,
    &PROVIDED,
];

const NO_HOLE: &str = "there must be an opening and a wall that pressure asks";

/// Area to be replaced under internal pressure; see [`AREA_REQUIRED`].
#[must_use]
pub fn area_required(d_mm: f64, t_r_mm: f64, t_n_mm: f64, f_r: f64) -> f64 {
    d_mm * t_r_mm + 2.0 * t_n_mm * t_r_mm * (1.0 - f_r)
}

/// Area to be replaced at an opening under internal pressure.
pub static AREA_REQUIRED: Card = Card {
    id: "opening.area-required",
    law: Law::Closed("A = d * t_r + 2 * t_n * t_r * (1 - f_r)"),
    gives: symbol("A", &MM2, "area to be replaced"),
    takes: &[
        symbol(
            "d",
            &MM,
            "finished bore; the hole itself where there is no bush",
        ),
        symbol("t_r", &MM, "shell wall that pressure asks, seamless"),
        symbol("t_n", &MM, "wall of the bush set through the shell"),
        symbol("f_r", &ONE, "strength of bush over shell, at most 1"),
    ],
    limits: &[Limit::within("f_r", 0.0, 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-37(c), A",
    },
    eval: |v| {
        let area = area_required(v[0], v[1], v[2], v[3]);
        positive(area, AREA_REQUIRED.id, ("d", v[0]), NO_HOLE)
    },
};

/// Area to be replaced under external pressure; see [`AREA_REQUIRED_EXTERNAL`].
#[must_use]
pub fn area_required_external(d_mm: f64, t_r_mm: f64) -> f64 {
    0.5 * d_mm * t_r_mm
}

/// Area to be replaced at an opening under external pressure: half.
pub static AREA_REQUIRED_EXTERNAL: Card = Card {
    id: "opening.area-required-external",
    law: Law::Closed("A = 0.5 * d * t_r"),
    gives: symbol("A", &MM2, "area to be replaced"),
    takes: &[
        symbol(
            "d",
            &MM,
            "finished bore; the hole itself where there is no bush",
        ),
        symbol("t_r", &MM, "wall that external pressure asks"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-37(d)(1)",
    },
    eval: |v| {
        let area = area_required_external(v[0], v[1]);
        positive(area, AREA_REQUIRED_EXTERNAL.id, ("d", v[0]), NO_HOLE)
    },
};

/// Area to spare in the shell; see [`AREA_IN_SHELL`].
#[must_use]
pub fn area_in_shell(d_mm: f64, t_mm: f64, t_r_mm: f64, t_n_mm: f64, f_r: f64) -> f64 {
    let spare = t_mm - t_r_mm;
    (d_mm * spare).max(2.0 * (t_mm + t_n_mm) * spare) - 2.0 * t_n_mm * spare * (1.0 - f_r)
}

/// Area to spare in the shell beside an opening.
pub static AREA_IN_SHELL: Card = Card {
    id: "opening.area-in-shell",
    law: Law::Closed(
        "A_1 = max(d * (t - t_r), 2 * (t + t_n) * (t - t_r)) - 2 * t_n * (t - t_r) * (1 - f_r)",
    ),
    gives: symbol("A_1", &MM2, "area to spare in the shell"),
    takes: &[
        symbol("d", &MM, "finished bore"),
        symbol("t", &MM, "wall of the shell"),
        symbol("t_r", &MM, "shell wall that pressure asks, seamless"),
        symbol("t_n", &MM, "wall of the bush, 0 where there is none"),
        symbol("f_r", &ONE, "strength of bush over shell, at most 1"),
    ],
    limits: &[Limit::within("f_r", 0.0, 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-37.1, A1",
    },
    eval: |v| {
        let why = "the shell has no wall to spare";
        positive(v[1] - v[2], AREA_IN_SHELL.id, ("t", v[1]), why)?;
        Ok(area_in_shell(v[0], v[1], v[2], v[3], v[4]))
    },
};

/// Area to spare in the bush outside; see [`AREA_OUTWARD`].
#[must_use]
pub fn area_outward(t_n_mm: f64, t_rn_mm: f64, f_r: f64, t_mm: f64, h_mm: f64) -> f64 {
    let spare = t_n_mm - t_rn_mm;
    (5.0 * spare * f_r * t_mm)
        .min(5.0 * spare * f_r * t_n_mm)
        .min(2.0 * spare * f_r * h_mm)
}

/// Area to spare in the part of a bush that stands out of the shell.
pub static AREA_OUTWARD: Card = Card {
    id: "opening.area-outward",
    law: Law::Closed(
        "A_2 = min(5 * (t_n - t_rn) * f_r * t, 5 * (t_n - t_rn) * f_r * t_n, \
         2 * (t_n - t_rn) * f_r * h)",
    ),
    gives: symbol("A_2", &MM2, "area to spare in the bush outside"),
    takes: &[
        symbol("t_n", &MM, "wall of the bush"),
        symbol("t_rn", &MM, "bush wall that pressure asks"),
        symbol("f_r", &ONE, "strength of bush over shell, at most 1"),
        symbol("t", &MM, "wall of the shell"),
        symbol("h", &MM, "how far the bush stands out"),
    ],
    limits: &[Limit::within("f_r", 0.0, 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-37.1, A2",
    },
    eval: |v| {
        let why = "the bush has no wall to spare";
        positive(v[0] - v[1], AREA_OUTWARD.id, ("t_n", v[0]), why)?;
        Ok(area_outward(v[0], v[1], v[2], v[3], v[4]))
    },
};

/// Area of the bush inside; see [`AREA_INWARD`].
#[must_use]
pub fn area_inward(t_n_mm: f64, f_r: f64, t_mm: f64, h_mm: f64) -> f64 {
    2.0 * t_n_mm * f_r * (2.5 * t_mm).min(2.5 * t_n_mm).min(h_mm)
}

/// Area of the part of a bush that stands into the vessel.
pub static AREA_INWARD: Card = Card {
    id: "opening.area-inward",
    law: Law::Closed("A_3 = 2 * t_n * f_r * min(2.5 * t, 2.5 * t_n, h)"),
    gives: symbol("A_3", &MM2, "area of the bush inside"),
    takes: &[
        symbol("t_n", &MM, "wall of the bush"),
        symbol("f_r", &ONE, "strength of bush over shell, at most 1"),
        symbol("t", &MM, "wall of the shell"),
        symbol("h", &MM, "how far the bush stands in"),
    ],
    limits: &[Limit::within("f_r", 0.0, 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-37.1, A3",
    },
    eval: |v| Ok(area_inward(v[0], v[1], v[2], v[3])),
};

/// Shear in the braze that ties a bush in; see [`TIE_SHEAR`].
#[must_use]
pub fn tie_shear(a_mm2: f64, s_mpa: f64, d_mm: f64, t_mm: f64) -> f64 {
    a_mm2 * s_mpa / (0.5 * std::f64::consts::PI * d_mm * t_mm)
}

/// Shear in the braze that must tie the replacing metal to the shell, over half the
/// circumference, with no credit for the shell's own spare wall.
pub static TIE_SHEAR: Card = Card {
    id: "opening.tie-shear",
    law: Law::Closed("tau = A * S / (0.5 * pi * d * t)"),
    gives: symbol("tau", &MPA, "shear in the braze"),
    takes: &[
        symbol("A", &MM2, "area to be replaced"),
        symbol("S", &MPA, "allowable stress of the shell"),
        symbol("d", &MM, "hole cut in the shell"),
        symbol("t", &MM, "wall of the shell"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-41, strength of the attachment",
    },
    eval: |v| {
        let shear = tie_shear(v[0], v[1], v[2], v[3]);
        positive(shear, TIE_SHEAR.id, ("t", v[3]), NO_HOLE)
    },
};

/// Wall of a bush; see [`BUSH_WALL`].
#[must_use]
pub fn bush_wall(d_b_mm: f64, d_mm: f64) -> f64 {
    (d_b_mm - d_mm) / 2.0
}

/// Wall of a bush.
pub static BUSH_WALL: Card = Card {
    id: "opening.bush-wall",
    law: Law::Closed("t_n = (d_b - d) / 2"),
    gives: symbol("t_n", &MM, "wall of the bush"),
    takes: &[
        symbol("d_b", &MM, "outside diameter of the bush"),
        symbol("d", &MM, "bore, over the threads"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a bush",
    },
    eval: |v| {
        positive(
            bush_wall(v[0], v[1]),
            BUSH_WALL.id,
            ("d_b", v[0]),
            "the bush has no wall",
        )
    },
};

/// Bush wall that pressure asks; see [`BUSH_NEED`].
#[must_use]
pub fn bush_need(p_mpa: f64, d_mm: f64, s_mpa: f64) -> f64 {
    p_mpa * d_mm / 2.0 / (s_mpa - 0.6 * p_mpa)
}

/// Wall that pressure asks of a bush.
pub static BUSH_NEED: Card = Card {
    id: "opening.bush-need",
    law: Law::Closed("t_rn = P * d / 2 / (S - 0.6 * P)"),
    gives: symbol("t_rn", &MM, "bush wall that pressure asks"),
    takes: &[
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("d", &MM, "bore, over the threads"),
        symbol("S", &MPA, "allowable stress of the bush"),
    ],
    limits: &[Limit::at_most("P / S", 0.385)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-27(c)(1), for the neck of an opening",
    },
    eval: |v| {
        positive(
            bush_need(v[0], v[1], v[2]),
            BUSH_NEED.id,
            ("P", v[0]),
            "the pressure is more than any wall of this stress can hold",
        )
    },
};

/// Strength of bush over shell; see [`STRENGTH`].
#[must_use]
pub fn strength(s_b_mpa: f64, s_mpa: f64) -> f64 {
    (s_b_mpa / s_mpa).min(1.0)
}

/// Strength of the bush over that of the shell, at most 1.
pub static STRENGTH: Card = Card {
    id: "opening.strength",
    law: Law::Closed("f_r = min(S_b / S, 1)"),
    gives: symbol("f_r", &ONE, "strength of bush over shell, at most 1"),
    takes: &[
        symbol("S_b", &MPA, "allowable stress of the bush"),
        symbol("S", &MPA, "allowable stress of the shell"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-37(a), fr",
    },
    eval: |v| {
        positive(
            strength(v[0], v[1]),
            STRENGTH.id,
            ("S_b", v[0]),
            "there must be a stress",
        )
    },
};

/// Area to spare; see [`PROVIDED`].
#[must_use]
pub fn provided(a_1_mm2: f64, a_2_mm2: f64, a_3_mm2: f64) -> f64 {
    a_1_mm2 + a_2_mm2 + a_3_mm2
}

/// Area to spare at an opening.
pub static PROVIDED: Card = Card {
    id: "opening.provided",
    law: Law::Closed("A_s = A_1 + A_2 + A_3"),
    gives: symbol("A_s", &MM2, "area to spare"),
    takes: &[
        symbol("A_1", &MM2, "in the shell"),
        symbol("A_2", &MM2, "in the bush outside"),
        symbol("A_3", &MM2, "in the bush inside"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-37.1",
    },
    eval: |v| Ok(provided(v[0], v[1], v[2])),
};
