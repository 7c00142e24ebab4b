//! Pressure at admission: what the ports take off the pressure in the chest, and what a throttle
//! takes off it to hold a power.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{
    KG_PER_M3, KPA, KPA_ABSOLUTE, LITRE, M, M_PER_S, M2, ONE, PA_ABSOLUTE, PER_S, WATT,
};
use reckoning::{Card, Cite, symbol};
use std::f64::consts::PI;

use super::diagram::{Diagram, expanded_share, returned_share};
use crate::sources::{COMMON_PRACTICE, DERIVED};

/// Mean speed of steam in a port of area `a` while the piston makes its stroke.
#[must_use]
pub fn port_speed(d: f64, s: f64, turns: f64, a: f64) -> f64 {
    PI / 2.0 * d * d * s * turns / a
}

/// Card of [`port_speed`].
pub static PORT_SPEED: Card = Card {
    id: "engine.port-speed",
    law: Law::Closed("u = pi / 2 * D^2 * S * N / A_p"),
    gives: symbol("u", &M_PER_S, "mean speed of steam in the port"),
    takes: &[
        symbol("D", &M, "bore of the cylinder"),
        symbol("S", &M, "stroke"),
        symbol("N", &PER_S, "turns of the crankshaft in a second"),
        symbol("A_p", &M2, "area of the port of one end"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "volume swept by the piston at its mean speed, through the port",
    },
    eval: |v| Ok(port_speed(v[0], v[1], v[2], v[3])),
};

/// Pressure at admission behind a port with steam of mean speed `u`, Pa.
#[must_use]
pub fn wire_drawn(p_c: f64, k: f64, rho: f64, u: f64) -> f64 {
    p_c - k * rho * u * u
}

/// Card of [`wire_drawn`].
pub static WIRE_DRAWN: Card = Card {
    id: "engine.wire-drawn",
    law: Law::Closed("p_1 = p_c - k * rho_c * u^2"),
    gives: symbol("p_1", &PA_ABSOLUTE, "pressure at admission"),
    takes: &[
        symbol("p_c", &PA_ABSOLUTE, "pressure in the chest"),
        symbol("k", &ONE, "loss of the port in squares of its mean speed"),
        symbol("rho_c", &KG_PER_M3, "density of dry steam in the chest"),
        symbol("u", &M_PER_S, "mean speed of steam in the port"),
    ],
    limits: &[Limit::at_least("p_1 / p_c", 0.6)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "loss by the square of the speed; ports choke the engine above 60 to 80 m/s",
    },
    eval: |v| Ok(wire_drawn(v[0], v[1], v[2], v[3])),
};

/// Mean pressure of the diagram that gives a power at the shaft; watts, litres and strokes in a
/// second give kPa.
#[must_use]
pub fn mean_pressure_for(p_s: f64, eta: f64, phi: f64, v: f64, n: f64) -> f64 {
    p_s / (eta * phi * v * n)
}

/// Card of [`mean_pressure_for`].
pub static MEAN_PRESSURE_FOR: Card = Card {
    id: "engine.mean-pressure-for-power",
    law: Law::Closed("p_m = P_s / (eta * phi * V * n)"),
    gives: symbol(
        "p_m",
        &KPA,
        "mean pressure of the diagram that gives the power",
    ),
    takes: &[
        symbol("P_s", &WATT, "power at the shaft"),
        symbol("eta", &ONE, "power at the shaft over indicated power"),
        symbol("phi", &ONE, "diagram factor"),
        symbol("V", &LITRE, "stroke volume of one end"),
        symbol("n", &PER_S, "working strokes in a second"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "work of the diagram, less what friction takes",
    },
    eval: |v| Ok(mean_pressure_for(v[0], v[1], v[2], v[3], v[4])),
};

/// Pressure at admission at which the diagram has this mean pressure; `p_1` of the diagram is not
/// read.
#[must_use]
pub fn throttled_admission(p_m: f64, d: &Diagram) -> f64 {
    (p_m + d.p_b * returned_share(d.q, d.c)) / expanded_share(d.r, d.c)
}

/// Card of [`throttled_admission`].
pub static THROTTLED_ADMISSION: Card = Card {
    id: "engine.throttled-admission",
    law: Law::Closed(
        "p_1 = (p_m + p_b * ((1 - q) + (q + c) * ln((q + c) / c))) \
         / (r + (r + c) * ln((1 + c) / (r + c)))",
    ),
    gives: symbol("p_1", &KPA_ABSOLUTE, "pressure at admission, throttled"),
    takes: &[
        symbol(
            "p_m",
            &KPA,
            "mean pressure of the diagram that gives the power",
        ),
        symbol("p_b", &KPA_ABSOLUTE, "back pressure"),
        symbol("r", &ONE, "cut-off as a share of the stroke"),
        symbol("c", &ONE, "clearance over stroke volume"),
        symbol("q", &ONE, "compression as a share of the stroke"),
    ],
    limits: &[Limit::at_least("p_1 / p_b", 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "the hyperbolic diagram solved for its admission",
    },
    eval: |v| {
        let diagram = Diagram {
            p_1: f64::NAN,
            p_b: v[1],
            r: v[2],
            c: v[3],
            q: v[4],
        };
        Ok(throttled_admission(v[0], &diagram))
    },
};
