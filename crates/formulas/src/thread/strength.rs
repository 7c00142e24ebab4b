//! What a thread carries and how deep its hole must be: stress area, length of engagement, depth
//! of a blind tapped hole.
//!
//! Shear of threads in a weaker metal than the screw is left out: the length here is that of
//! equal metals, and the trade's rule in diameters stands beside it in the order rules.

use std::f64::consts::PI;

use reckoning::quantity::{MM, MM2, ONE};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};

use crate::sources::{COMMON_PRACTICE, ISO_898_1, MACHINERYS_HANDBOOK_24};

/// Area of a screw in tension, mm²; see [`STRESS_AREA`].
#[must_use]
pub fn stress_area(d_e_mm: f64, d_r_mm: f64) -> f64 {
    PI / 4.0 * ((d_e_mm + d_r_mm) / 2.0).powi(2)
}

/// Area of a screw in tension.
pub static STRESS_AREA: Card = Card {
    id: "thread.stress-area",
    law: Law::Closed("A_s = pi / 4 * ((d_e + d_r) / 2)^2"),
    gives: symbol("A_s", &MM2, "area of the screw in tension"),
    takes: &[
        symbol("d_e", &MM, "effective diameter"),
        symbol("d_r", &MM, "root diameter of the screw"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ISO_898_1,
        place: "nominal stress area",
    },
    eval: |v| Ok(stress_area(v[0], v[1])),
};

/// Length of engagement at which screw and thread are equally strong, mm; see
/// [`ENGAGEMENT_LENGTH`].
///
/// # Errors
/// [`Refused`] when the bore is so large that no thread is left to carry.
pub fn engagement_length(
    a_s_mm2: f64,
    d_e_mm: f64,
    k_mm: f64,
    p_mm: f64,
    tangent: f64,
) -> Result<f64, Refused> {
    let share = 0.5 + (d_e_mm - k_mm) * tangent / p_mm;
    if share <= 0.0 {
        return Err(Refused {
            card: ENGAGEMENT_LENGTH.id,
            symbol: "K",
            value: k_mm,
            why: "the bore leaves no thread to carry",
        });
    }
    Ok(2.0 * a_s_mm2 / (PI * k_mm * share))
}

/// Length of engagement at which a screw and a thread of the same metal are equally strong.
///
/// The bore is that of the hole as drilled. The source prints 0.57735, the tangent of the half
/// angle of a 60 degree thread; other forms bring their own tangent.
pub static ENGAGEMENT_LENGTH: Card = Card {
    id: "thread.engagement-length",
    law: Law::Closed("L_e = 2 * A_s / (pi * K * (1 / 2 + (E - K) * t / P))"),
    gives: symbol("L_e", &MM, "length of engagement for equal strength"),
    takes: &[
        symbol("A_s", &MM2, "area of the screw in tension"),
        symbol("E", &MM, "effective diameter of the screw"),
        symbol("K", &MM, "bore of the tapped hole"),
        symbol("P", &MM, "pitch"),
        symbol("t", &ONE, "tangent of half the thread angle"),
    ],
    limits: &[Limit::at_least("E - K", 0.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &MACHINERYS_HANDBOOK_24,
        place: "length of engagement of mating threads",
    },
    eval: |v| engagement_length(v[0], v[1], v[2], v[3], v[4]),
};

/// Depth of the full diameter of a blind hole that is to be tapped, mm; see [`BLIND_DEPTH`].
#[must_use]
pub fn blind_depth(l_mm: f64, lead_pitches: f64, p_mm: f64) -> f64 {
    l_mm + (lead_pitches + 1.0) * p_mm
}

/// Depth of the full diameter of a blind hole that is to be tapped: the thread wanted, the lead of
/// the tap, and one pitch to spare. The point of the drill is extra.
pub static BLIND_DEPTH: Card = Card {
    id: "thread.blind-depth",
    law: Law::Closed("t = L + (n + 1) * P"),
    gives: symbol("t", &MM, "depth of the full diameter"),
    takes: &[
        symbol("L", &MM, "length of full thread"),
        symbol("n", &ONE, "lead of the tap, in pitches"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[Limit::within("n", 1.0, 12.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "thread, lead and one pitch",
    },
    eval: |v| Ok(blind_depth(v[0], v[1], v[2])),
};
