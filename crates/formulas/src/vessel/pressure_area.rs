//! Family `pressure-area`: an opening by the areas of pressure and of metal.
//!
//! Source: EN 13445-3 clause 9, radial bush in a cylindrical shell. Pads, welds and rows of
//! openings are left out.

use super::positive;
use crate::sources::EN_13445_3;
use reckoning::quantity::{MM, MM2, MPA, MPA_GAUGE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&SHELL_LENGTH, &BUSH_LENGTH, &PRESSURE];

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
