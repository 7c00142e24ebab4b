//! A water tube across a flue: the narrowest passage beside it, the heat that one tube takes
//! from the gas that passes it, and its drag.
//!
//! Heat transfer is that of a single cylinder in a stream ([`crate::coil::crossflow_nusselt`])
//! on the speed in the narrowest passage, with a factor for tubes that stand behind each other.
//! Left out: several tubes in one plane, and what the first tube sees of the hot burner.

use std::f64::consts::PI;

use reckoning::quantity::{
    J_PER_KG_K, KELVIN, KG_PER_M3, KG_PER_S, M, M2, ONE, PA, PA_S, W_PER_M2_K, WATT,
};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::sources::{CYLINDER_DRAG, DERIVED};

const fn derived(place: &'static str) -> Cite {
    Cite {
        source: &DERIVED,
        place,
    }
}

const FLOW: Symbol = symbol("m", &KG_PER_S, "gas in the flue");
const D_TUBE: Symbol = symbol("d", &M, "outside diameter of the cross tube");
const BORE: Symbol = symbol("D", &M, "bore of the flue");
const A_MIN: Symbol = symbol("A_m", &M2, "narrowest area beside the tube");
const RE: Symbol = symbol("Re", &ONE, "Reynolds number on the tube");

/// Narrowest area beside a tube that crosses a flue, m².
#[must_use]
pub fn passage_area(area: f64, d_tube: f64, bore: f64) -> f64 {
    area - d_tube * bore
}

/// Card of [`passage_area`].
pub static PASSAGE_AREA: Card = Card {
    id: "flue.passage-area",
    law: Law::Closed("A_m = A - d * D"),
    gives: A_MIN,
    takes: &[symbol("A", &M2, "open area of the flue"), D_TUBE, BORE],
    limits: &[Limit::within("d / D", 0.0, 0.5)],
    spread: Spread::Exact,
    cite: derived("geometry of a tube across a round bore"),
    eval: |v| Ok(passage_area(v[0], v[1], v[2])),
};

/// Outside area of a tube across a flue, m².
#[must_use]
pub fn tube_surface(d_tube: f64, bore: f64) -> f64 {
    PI * d_tube * bore
}

/// Card of [`tube_surface`].
pub static TUBE_SURFACE: Card = Card {
    id: "flue.tube-surface",
    law: Law::Closed("A = pi * d * D"),
    gives: symbol("A", &M2, "outside area of the tube"),
    takes: &[D_TUBE, BORE],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("geometry of a tube across a round bore"),
    eval: |v| Ok(tube_surface(v[0], v[1])),
};

/// Reynolds number of a cross tube, on the speed in the narrowest passage.
#[must_use]
pub fn passage_reynolds(m: f64, d_tube: f64, a_min: f64, viscosity: f64) -> f64 {
    m * d_tube / (a_min * viscosity)
}

/// Card of [`passage_reynolds`].
pub static PASSAGE_REYNOLDS: Card = Card {
    id: "flue.passage-reynolds",
    law: Law::Closed("Re = m * d / (A_m * mu)"),
    gives: RE,
    takes: &[
        FLOW,
        D_TUBE,
        A_MIN,
        symbol("mu", &PA_S, "viscosity of the film"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition, on the speed in the narrowest passage"),
    eval: |v| Ok(passage_reynolds(v[0], v[1], v[2], v[3])),
};

/// Gas that meets a cross tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Meeting {
    /// Gas in the flue, kg/s.
    pub m: f64,
    /// Its specific heat, J/(kg K).
    pub c_p: f64,
    /// Its temperature before the tube, K.
    pub t: f64,
    /// Temperature of the wall of the tube, K.
    pub t_w: f64,
    /// Heat transfer coefficient, radiation included, W/(m² K).
    pub h: f64,
    /// Outside area of the tube, m².
    pub area: f64,
}

/// Heat that one tube takes from the gas, W: no more than the gas has above the wall.
#[must_use]
pub fn tube_heat(x: &Meeting) -> f64 {
    let stream = x.m * x.c_p;
    stream * (x.t - x.t_w) * (1.0 - (-x.h * x.area / stream).exp())
}

/// Card of [`tube_heat`].
pub static TUBE_HEAT: Card = Card {
    id: "flue.tube-heat",
    law: Law::Closed("Q = m * c_p * (T - T_w) * (1 - exp(-h * A / (m * c_p)))"),
    gives: symbol("Q", &WATT, "heat that the tube takes"),
    takes: &[
        FLOW,
        symbol("c_p", &J_PER_KG_K, "specific heat of the gas"),
        symbol("T", &KELVIN, "temperature of the gas before the tube"),
        symbol("T_w", &KELVIN, "temperature of the wall of the tube"),
        symbol(
            "h",
            &W_PER_M2_K,
            "heat transfer coefficient, radiation included",
        ),
        symbol("A", &M2, "outside area of the tube"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("stream that passes a wall of one temperature"),
    eval: |v| {
        Ok(tube_heat(&Meeting {
            m: v[0],
            c_p: v[1],
            t: v[2],
            t_w: v[3],
            h: v[4],
            area: v[5],
        }))
    },
};

/// Drag coefficient of a cylinder across a slow stream.
#[must_use]
pub fn tube_drag(re: f64) -> f64 {
    1.0 + 10.0 * re.powf(-2.0 / 3.0)
}

/// Card of [`tube_drag`].
pub static TUBE_DRAG: Card = Card {
    id: "flue.tube-drag",
    law: Law::Closed("C_x = 1 + 10 * Re^(-2 / 3)"),
    gives: symbol("C_x", &ONE, "drag coefficient of the tube"),
    takes: &[RE],
    limits: &[Limit::within("Re", 10.0, 2e5)],
    spread: Spread::Percent(25.0),
    cite: Cite {
        source: &CYLINDER_DRAG,
        place: "curve fit of the drag of a cylinder",
    },
    eval: |v| Ok(tube_drag(v[0])),
};

/// A cross tube in the way of the gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Obstacle {
    /// Drag coefficient.
    pub drag: f64,
    /// Outside diameter of the tube, m.
    pub d_tube: f64,
    /// Bore of the flue, m.
    pub bore: f64,
    /// Open area of the flue, m².
    pub area: f64,
}

/// Pressure that a cross tube takes, Pa, from the flow and density of the gas.
#[must_use]
pub fn tube_loss(x: &Obstacle, m: f64, rho: f64) -> f64 {
    let narrow = passage_area(x.area, x.d_tube, x.bore);
    x.drag * (x.d_tube * x.bore / x.area) * m * m / (2.0 * rho * narrow * narrow)
}

/// Card of [`tube_loss`].
pub static TUBE_LOSS: Card = Card {
    id: "flue.tube-loss",
    law: Law::Closed("dp = C_x * (d * D / A) * m^2 / (2 * rho * (A - d * D)^2)"),
    gives: symbol("dp", &PA, "pressure that the tube takes"),
    takes: &[
        symbol("C_x", &ONE, "drag coefficient of the tube"),
        D_TUBE,
        BORE,
        symbol("A", &M2, "open area of the flue"),
        FLOW,
        symbol("rho", &KG_PER_M3, "density of the gas"),
    ],
    limits: &[Limit::within("d / D", 0.0, 0.5)],
    spread: Spread::Percent(30.0),
    cite: derived("drag of the tube shared over the area of the flue, on the narrowest passage"),
    eval: |v| {
        let tube = Obstacle {
            drag: v[0],
            d_tube: v[1],
            bore: v[2],
            area: v[3],
        };
        Ok(tube_loss(&tube, v[4], v[5]))
    },
};
