//! Family `pressure-area`: an opening by the areas of pressure and of metal.
//!
//! Source: EN 13445-3 clause 9, radial bush in a cylindrical shell. Pads, welds and rows of
//! openings are left out.

use super::positive;
use crate::sources::EN_13445_3;
use reckoning::quantity::{MM, MM2, MPA, MPA_GAUGE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SHELL_LENGTH,
    &BUSH_LENGTH,
    &SHELL_METAL,
    &BUSH_METAL,
    &SHELL_PRESSURE,
    &BUSH_PRESSURE,
    &PRESSURE,
];

/// Length of shell that helps; see [`SHELL_LENGTH`].
#[must_use]
pub fn shell_length(r_is_mm: f64, e_mm: f64) -> f64 {
    ((2.0 * r_is_mm + e_mm) * e_mm).sqrt()
}

/// Length of shell beside an opening that carries load for it.
pub static SHELL_LENGTH: Card = Card {
    id: "pressure-area.shell-length",
    law: Law::Closed("l_so = sqrt((2 * r_is + e) * e)"),
    gives: symbol("l_so", &MM, "length of shell that helps"),
    takes: &[
        symbol("r_is", &MM, "inside radius of the shell"),
        symbol("e", &MM, "wall of the shell"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.2, length of shell",
    },
    eval: |v| {
        let length = shell_length(v[0], v[1]);
        positive(length, SHELL_LENGTH.id, ("e", v[1]), "there must be a wall")
    },
};

/// Length of bush that helps; see [`BUSH_LENGTH`].
#[must_use]
pub fn bush_length(d_eb_mm: f64, e_b_mm: f64) -> f64 {
    ((d_eb_mm - e_b_mm) * e_b_mm).sqrt()
}

/// Length of a bush, from the shell, that carries load for the opening.
pub static BUSH_LENGTH: Card = Card {
    id: "pressure-area.bush-length",
    law: Law::Closed("l_bo = sqrt((d_eb - e_b) * e_b)"),
    gives: symbol("l_bo", &MM, "length of bush that helps"),
    takes: &[
        symbol("d_eb", &MM, "outside diameter of the bush"),
        symbol("e_b", &MM, "wall of the bush"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.2, length of nozzle",
    },
    eval: |v| {
        let length = bush_length(v[0], v[1]);
        positive(
            length,
            BUSH_LENGTH.id,
            ("e_b", v[1]),
            "there must be a wall",
        )
    },
};

/// Metal of the shell; see [`SHELL_METAL`].
#[must_use]
pub fn shell_metal(l_so_mm: f64, e_mm: f64) -> f64 {
    l_so_mm * e_mm
}

/// Metal of the shell within its length.
pub static SHELL_METAL: Card = Card {
    id: "pressure-area.shell-metal",
    law: Law::Closed("A_fs = l_so * e"),
    gives: symbol("A_fs", &MM2, "metal of the shell within its length"),
    takes: &[
        symbol("l_so", &MM, "length of shell that helps"),
        symbol("e", &MM, "wall of the shell"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.2",
    },
    eval: |v| {
        positive(
            shell_metal(v[0], v[1]),
            SHELL_METAL.id,
            ("e", v[1]),
            "there must be a wall",
        )
    },
};

/// Metal of the bush; see [`BUSH_METAL`].
#[must_use]
pub fn bush_metal(e_b_mm: f64, e_mm: f64, l_bo_mm: f64, h_out_mm: f64, h_in_mm: f64) -> f64 {
    e_b_mm * (e_mm + h_out_mm.min(l_bo_mm) + h_in_mm.min(0.5 * l_bo_mm))
}

/// Metal of a bush set through the shell, within its length outside and half of it inside.
pub static BUSH_METAL: Card = Card {
    id: "pressure-area.bush-metal",
    law: Law::Closed("A_fb = e_b * (e + min(h_out, l_bo) + min(h_in, 0.5 * l_bo))"),
    gives: symbol("A_fb", &MM2, "metal of the bush within its length"),
    takes: &[
        symbol("e_b", &MM, "wall of the bush"),
        symbol("e", &MM, "wall of the shell"),
        symbol("l_bo", &MM, "length of bush that helps"),
        symbol("h_out", &MM, "how far the bush stands out"),
        symbol("h_in", &MM, "how far the bush stands in"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.2, nozzle set through",
    },
    eval: |v| {
        positive(
            bush_metal(v[0], v[1], v[2], v[3], v[4]),
            BUSH_METAL.id,
            ("e_b", v[0]),
            "there must be a wall",
        )
    },
};

/// Pressure area of the shell; see [`SHELL_PRESSURE`].
#[must_use]
pub fn shell_pressure(r_is_mm: f64, l_so_mm: f64, d_eb_mm: f64) -> f64 {
    r_is_mm * (l_so_mm + d_eb_mm / 2.0)
}

/// Pressure area of the shell, to the middle of the bush.
pub static SHELL_PRESSURE: Card = Card {
    id: "pressure-area.shell-pressure",
    law: Law::Closed("A_ps = r_is * (l_so + d_eb / 2)"),
    gives: symbol("A_ps", &MM2, "pressure area of the shell"),
    takes: &[
        symbol("r_is", &MM, "inside radius of the shell"),
        symbol("l_so", &MM, "length of shell that helps"),
        symbol("d_eb", &MM, "outside diameter of the bush"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.2",
    },
    eval: |v| {
        positive(
            shell_pressure(v[0], v[1], v[2]),
            SHELL_PRESSURE.id,
            ("r_is", v[0]),
            "there must be a wall",
        )
    },
};

/// Pressure area of the bush; see [`BUSH_PRESSURE`].
#[must_use]
pub fn bush_pressure(d_ib_mm: f64, e_mm: f64, l_bo_mm: f64, h_out_mm: f64) -> f64 {
    d_ib_mm / 2.0 * (e_mm + h_out_mm.min(l_bo_mm))
}

/// Pressure area of the bush through the shell and outside.
pub static BUSH_PRESSURE: Card = Card {
    id: "pressure-area.bush-pressure",
    law: Law::Closed("A_pb = d_ib / 2 * (e + min(h_out, l_bo))"),
    gives: symbol("A_pb", &MM2, "pressure area of the bush"),
    takes: &[
        symbol("d_ib", &MM, "bore of the bush"),
        symbol("e", &MM, "wall of the shell"),
        symbol("l_bo", &MM, "length of bush that helps"),
        symbol("h_out", &MM, "how far the bush stands out"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.2",
    },
    eval: |v| {
        positive(
            bush_pressure(v[0], v[1], v[2], v[3]),
            BUSH_PRESSURE.id,
            ("d_ib", v[0]),
            "there must be a wall",
        )
    },
};

/// Areas and stresses at an opening.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Areas {
    /// Metal of the shell within its length, mm².
    pub shell_metal_mm2: f64,
    /// Metal of the bush within its length, mm².
    pub bush_metal_mm2: f64,
    /// Pressure in the shell out to its length, mm².
    pub shell_pressure_mm2: f64,
    /// Pressure in the bush, mm².
    pub bush_pressure_mm2: f64,
    /// Design stress of the shell, MPa.
    pub shell_stress_mpa: f64,
    /// Design stress of the bush, MPa.
    pub bush_stress_mpa: f64,
}

/// Greatest pressure at an opening; see [`PRESSURE`].
#[must_use]
pub fn pressure(at: Areas) -> f64 {
    let strength =
        at.shell_metal_mm2 * at.shell_stress_mpa + at.bush_metal_mm2 * at.bush_stress_mpa;
    let load = at.shell_pressure_mm2
        + at.bush_pressure_mm2
        + 0.5 * (at.shell_metal_mm2 + at.bush_metal_mm2);
    strength / load
}

/// Greatest pressure that the metal round an opening holds.
pub static PRESSURE: Card = Card {
    id: "pressure-area.pressure",
    law: Law::Closed("P = (A_fs * f_s + A_fb * f_b) / (A_ps + A_pb + 0.5 * (A_fs + A_fb))"),
    gives: symbol("P", &MPA_GAUGE, "greatest pressure at the opening, gauge"),
    takes: &[
        symbol("A_fs", &MM2, "metal of the shell within its length"),
        symbol("A_fb", &MM2, "metal of the bush within its length"),
        symbol("A_ps", &MM2, "pressure area of the shell"),
        symbol("A_pb", &MM2, "pressure area of the bush"),
        symbol("f_s", &MPA, "design stress of the shell"),
        symbol(
            "f_b",
            &MPA,
            "design stress of the bush, at most that of the shell",
        ),
    ],
    limits: &[Limit::at_most("f_b / f_s", 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.2, solved for the pressure",
    },
    eval: |v| {
        let areas = Areas {
            shell_metal_mm2: v[0],
            bush_metal_mm2: v[1],
            shell_pressure_mm2: v[2],
            bush_pressure_mm2: v[3],
            shell_stress_mpa: v[4],
            bush_stress_mpa: v[5],
        };
        let why = "there must be metal at the opening";
        positive(pressure(areas), PRESSURE.id, ("A_fs", v[0]), why)
    },
};
