//! Laminar convection at one place of a flue, round a burner or in the open bore.
//!
//! Left out: the even speed at the inlet (the flow is taken as formed), wall temperature beyond
//! the bulk, and free convection, which must stay small beside the flow.

use std::f64::consts::PI;

use reckoning::quantity::{KG_PER_M2_S, KG_PER_S, M, M2, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::{DERIVED, HEAT_ATLAS_2010};

/// Open area of a bore round a burner, m²; the burner has no size beyond its end.
#[must_use]
pub fn open_area(d: f64, d_k: f64) -> f64 {
    PI / 4.0 * (d * d - d_k * d_k)
}

/// Card of [`open_area`].
pub static OPEN_AREA: Card = Card {
    id: "flue.open-area",
    law: Law::Closed("A = pi / 4 * (D^2 - d_k^2)"),
    gives: symbol("A", &M2, "open area of the flue"),
    takes: &[
        symbol("D", &M, "bore of the flue"),
        symbol("d_k", &M, "outside diameter of the burner in it"),
    ],
    limits: &[Limit::at_most("d_k / D", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "geometry of a ring",
    },
    eval: |v| Ok(open_area(v[0], v[1])),
};

/// Hydraulic diameter of a bore round a burner, m.
#[must_use]
pub fn hydraulic_diameter(d: f64, d_k: f64) -> f64 {
    d - d_k
}

/// Card of [`hydraulic_diameter`].
pub static HYDRAULIC_DIAMETER: Card = Card {
    id: "flue.hydraulic-diameter",
    law: Law::Closed("D_h = D - d_k"),
    gives: symbol("D_h", &M, "hydraulic diameter of the flue"),
    takes: &[
        symbol("D", &M, "bore of the flue"),
        symbol("d_k", &M, "outside diameter of the burner in it"),
    ],
    limits: &[Limit::at_least("D_h", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "four times the area over the wetted edge of a ring",
    },
    eval: |v| Ok(hydraulic_diameter(v[0], v[1])),
};

/// Mass flux in the flue, kg/(m² s).
#[must_use]
pub fn flue_flux(m: f64, area: f64) -> f64 {
    m / area
}

/// Card of [`flue_flux`].
pub static FLUE_FLUX: Card = Card {
    id: "flue.flux",
    law: Law::Closed("G = m / A"),
    gives: symbol("G", &KG_PER_M2_S, "mass flux in the flue"),
    takes: &[
        symbol("m", &KG_PER_S, "gas in the flue"),
        symbol("A", &M2, "open area of the flue"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "continuity",
    },
    eval: |v| Ok(flue_flux(v[0], v[1])),
};

/// Nusselt number far from the inlet of a ring whose outer wall is cold; 3.66 in the open bore.
#[must_use]
pub fn settled_nusselt(ratio: f64) -> f64 {
    3.66 + 1.2 * ratio.sqrt()
}

/// Card of [`settled_nusselt`].
pub static SETTLED_NUSSELT: Card = Card {
    id: "flue.settled-nusselt",
    law: Law::Closed("Nu_s = 3.66 + 1.2 * sqrt(s)"),
    gives: symbol("Nu_s", &ONE, "Nusselt number far from the inlet"),
    takes: &[symbol(
        "s",
        &ONE,
        "diameter of the burner over the bore of the flue",
    )],
    limits: &[Limit::within("s", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &HEAT_ATLAS_2010,
        place: "section G2, annulus with heat through the outer wall, inner wall insulated",
    },
    eval: |v| Ok(settled_nusselt(v[0])),
};

/// Graetz number at the distance `x` (m) from where the flow or its bore begins.
#[must_use]
pub fn graetz(re: f64, pr: f64, d_h: f64, x: f64) -> f64 {
    re * pr * d_h / x
}

/// Card of [`graetz`].
pub static GRAETZ: Card = Card {
    id: "flue.graetz",
    law: Law::Closed("Gz = Re * Pr * D_h / x"),
    gives: symbol("Gz", &ONE, "Graetz number"),
    takes: &[
        symbol("Re", &ONE, "Reynolds number on the hydraulic diameter"),
        symbol("Pr", &ONE, "Prandtl number"),
        symbol("D_h", &M, "hydraulic diameter of the flue"),
        symbol("x", &M, "distance from where this bore begins"),
    ],
    limits: &[
        Limit::at_most("Re", 2300.0),
        Limit::within("Pr", 0.6, 1000.0),
    ],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition",
    },
    eval: |v| Ok(graetz(v[0], v[1], v[2], v[3])),
};

/// Nusselt number at one place of a laminar flue.
#[must_use]
pub fn local_nusselt(settled: f64, graetz: f64) -> f64 {
    let entrance = 1.077 * graetz.cbrt() - 0.7;
    (settled.powi(3) + 0.7_f64.powi(3) + entrance.powi(3)).cbrt()
}

/// Card of [`local_nusselt`].
pub static LOCAL_NUSSELT: Card = Card {
    id: "flue.local-nusselt",
    law: Law::Closed("Nu = (Nu_s^3 + 0.7^3 + (1.077 * Gz^(1 / 3) - 0.7)^3)^(1 / 3)"),
    gives: symbol("Nu", &ONE, "Nusselt number at this place"),
    takes: &[
        symbol("Nu_s", &ONE, "Nusselt number far from the inlet"),
        symbol("Gz", &ONE, "Graetz number"),
    ],
    limits: &[Limit::within("Nu_s", 3.66, 4.87)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &HEAT_ATLAS_2010,
        place: "section G1, local laminar heat transfer at constant wall temperature",
    },
    eval: |v| Ok(local_nusselt(v[0], v[1])),
};
