//! The missing quantity reckoned from walls and leaks.
//!
//! What is taken for the wall, the film and the gap are the middle of what is met with in small
//! engines; how far an engine may lie off is the factor on the whole, which is drawn.

use formulas::engine::{
    Lost, SwungWall, leak, leak_area, missing_quantity, superheat_relief, wall_area, wall_heat,
    wall_share, wall_steam,
};
use reckoning::quantity::{INCH2, LB_PER_H, PSI_ABSOLUTE};

use super::admit::Admitted;
use super::given::Engine;

/// Cast iron, W/(m K), kg/m³ and J/(kg K) (textbooks of heat transfer, from memory). Bronze takes
/// the same heat within a twentieth, for the film holds back most of it.
pub(crate) const IRON: [f64; 3] = [50.0, 7200.0, 460.0];
/// Film of condensing steam, W/(m² K): the middle of 5 to 20 kW/(m² K).
pub(crate) const FILM_W_M2_K: f64 = 1e4;
/// Surface of the ports over that of cover and piston: common practice.
pub(crate) const PORTS: f64 = 0.6;
/// Clear gap round a piston that leaks as much as valve and rings do, m.
pub(crate) const GAP_M: f64 = 1e-6;

/// Condensation and leakage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LostState {
    /// Swing of the wall's surface over that of the steam.
    pub share: f64,
    /// Surface that the steam meets up to cut-off, m².
    pub area_m2: f64,
    /// Heat that the wall takes in from one admission, J.
    pub heat_j: f64,
    /// Condensation over that with saturated steam.
    pub relief: f64,
    /// Steam condensed in a stroke, kg.
    pub condensed_kg: f64,
    /// Area past which steam leaks, m².
    pub leak_m2: f64,
    /// Steam that leaks, kg/s.
    pub leak_kg_s: f64,
}

/// Temperatures and heat of evaporation that the walls meet.
#[derive(Clone, Copy, Debug)]
pub(super) struct Met {
    pub(super) admission_k: f64,
    pub(super) exhaust_k: f64,
    pub(super) latent_j_kg: f64,
}

impl LostState {
    /// With saturated steam.
    pub(super) fn of(engine: &Engine, admitted: &Admitted, met: &Met) -> Self {
        let [k, rho, c] = IRON;
        let wall = SwungWall {
            k,
            rho,
            c,
            turns: admitted.turns_per_s,
        };
        let share = wall_share(&wall, FILM_W_M2_K);
        let area_m2 = wall_area(engine.bore_m, engine.stroke_m, PORTS, admitted.cut_off);
        let heat_j = wall_heat(share, met.admission_k - met.exhaust_k, area_m2, &wall);
        let leak_m2 = leak_area(engine.cylinders, engine.bore_m, GAP_M);
        let lb_h = leak(INCH2.from_si(leak_m2), PSI_ABSOLUTE.from_si(admitted.pa));
        let relief = superheat_relief(0.0);
        Self {
            share,
            area_m2,
            heat_j,
            relief,
            condensed_kg: wall_steam(relief, heat_j, met.latent_j_kg),
            leak_m2,
            leak_kg_s: LB_PER_H.to_si(lb_h),
        }
    }

    /// With steam that is superheated by so many kelvin.
    pub(super) fn superheated(&self, superheat_k: f64, latent_j_kg: f64) -> Self {
        let relief = superheat_relief(superheat_k);
        Self {
            relief,
            condensed_kg: wall_steam(relief, self.heat_j, latent_j_kg),
            ..*self
        }
    }

    /// Missing quantity over the indicated steam of a stroke.
    pub(super) fn missing(&self, factor: f64, strokes_per_s: f64, indicated_kg: f64) -> f64 {
        let lost = Lost {
            m_c: self.condensed_kg,
            m_l: self.leak_kg_s,
            n: strokes_per_s,
            m_i: indicated_kg,
        };
        missing_quantity(factor, &lost)
    }
}
