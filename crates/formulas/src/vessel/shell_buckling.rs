//! Family `flue`: elastic collapse of a tube under external pressure.
//!
//! Sources: EN 13445-3 clause 8.5.2 for a tube between plates, pressure on its ends too; Theory
//! of Elastic Stability for the long tube. Stiffened tubes are left out.

use super::positive;
use crate::sources::{ELASTIC_STABILITY, EN_13445_3};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[&FINITE, &LONG];

/// The greatest number of lobes tried. The least pressure lies near 2.7 √(R/L) (R/e)^¼ lobes,
/// so that a tube of R/e 1000 and L = R/10 needs about 50.
const MOST_LOBES: u32 = 100;

/// A tube under external pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tube {
    /// Modulus of elasticity, MPa.
    pub e_mpa: f64,
    /// Ratio of lateral to axial strain.
    pub nu: f64,
    /// Mean radius, mm.
    pub r_mm: f64,
    /// Wall, mm.
    pub wall_mm: f64,
    /// Length between supports, mm.
    pub l_mm: f64,
}

/// Pressure at which a tube collapses elastically into `n` lobes, MPa.
#[must_use]
pub fn lobed(tube: Tube, n: u32) -> f64 {
    let n2 = f64::from(n).powi(2);
    let z2 = (PI * tube.r_mm / tube.l_mm).powi(2);
    let bending = (tube.wall_mm / tube.r_mm).powi(2) / (12.0 * (1.0 - tube.nu.powi(2)));
    let stretch = 1.0 / (n2 / z2 + 1.0).powi(2);
    let strain = (stretch + bending * (n2 - 1.0 + z2).powi(2)) / (n2 - 1.0 + 0.5 * z2);
    tube.e_mpa * tube.wall_mm * strain / tube.r_mm
}

/// Least elastic collapse pressure, MPa, and its number of lobes; see [`FINITE`].
#[must_use]
pub fn finite(tube: Tube) -> (f64, u32) {
    (3..=MOST_LOBES).fold((lobed(tube, 2), 2), |least, n| {
        let p = lobed(tube, n);
        if p < least.0 { (p, n) } else { least }
    })
}

fn tube(v: &[f64]) -> Tube {
    Tube {
        e_mpa: v[0],
        nu: v[1],
        r_mm: v[2],
        wall_mm: v[3],
        l_mm: v[4],
    }
}

fn work_finite(v: &[f64]) -> Result<f64, Refused> {
    let why = "there must be a wall, a radius and a length";
    for (symbol, value) in [("R", v[2]), ("e", v[3]), ("L", v[4])] {
        positive(value, FINITE.id, (symbol, value), why)?;
    }
    let (p, n) = finite(tube(v));
    if n == MOST_LOBES {
        return Err(Refused {
            card: FINITE.id,
            symbol: "L",
            value: v[4],
            why: "so short a tube needs more lobes than are tried",
        });
    }
    positive(p, FINITE.id, ("e", v[3]), why)
}

/// Elastic collapse pressure of a tube between supports, pressure on its ends too.
pub static FINITE: Card = Card {
    id: "flue.elastic",
    law: Law::Words(
        "P_m = E e eps / R, the least over n = 2, 3, ... of \
         eps = (1 / (n^2/Z^2 + 1)^2 + e^2 (n^2 - 1 + Z^2)^2 / (12 R^2 (1 - nu^2))) \
         / (n^2 - 1 + Z^2/2), with Z = pi R / L",
    ),
    gives: symbol("P_m", &MPA_GAUGE, "elastic collapse pressure"),
    takes: &[
        symbol("E", &MPA, "modulus of elasticity at metal temperature"),
        symbol("nu", &ONE, "ratio of lateral to axial strain"),
        symbol("R", &MM, "mean radius"),
        symbol("e", &MM, "wall"),
        symbol("L", &MM, "length between supports"),
    ],
    limits: &[Limit::at_most("e / (2 * R + e)", 0.16)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &EN_13445_3,
        place: "8.5.2.2",
    },
    eval: work_finite,
};

/// Elastic collapse pressure of a long tube; see [`LONG`].
#[must_use]
pub fn long(e_mpa: f64, nu: f64, r_mm: f64, t_mm: f64) -> f64 {
    e_mpa / (4.0 * (1.0 - nu * nu)) * (t_mm / r_mm).powi(3)
}

/// Elastic collapse pressure of a tube so long that its ends do not help. For a shorter tube it
/// errs on the careful side. The thin ring it supposes is judged where the result is used.
pub static LONG: Card = Card {
    id: "flue.elastic-long",
    law: Law::Closed("q_cr = E / (4 * (1 - nu^2)) * (t / R)^3"),
    gives: symbol("q_cr", &MPA_GAUGE, "elastic collapse pressure, long tube"),
    takes: &[
        symbol("E", &MPA, "modulus of elasticity at metal temperature"),
        symbol("nu", &ONE, "ratio of lateral to axial strain"),
        symbol("R", &MM, "mean radius"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ELASTIC_STABILITY,
        place: "7.5, long tube under uniform pressure",
    },
    eval: |v| {
        let p = long(v[0], v[1], v[2], v[3]);
        positive(p, LONG.id, ("t", v[3]), "there must be a wall")
    },
};
