//! Water and steam by the industrial formulation of 1997: regions 1 (liquid), 2 (steam), 2 with
//! metastable vapour, and 4 (saturation), with viscosity, conductivity and surface tension.
//!
//! Sources: IAPWS releases R7-97(2012), R12-08, R15-11, R1-76(2014). Served: 611.213 Pa to 10 MPa,
//! 0 to 800 °C; what lies outside is refused with its value and range. Left out: region 3 (near
//! the critical point), region 5 (above 800 °C), ice.
//!
//! For solvers: [`Saturated::at_pressure`], [`at_ph`], [`at_ps`], [`at_pt`], [`wet`], [`transport`];
//! all plain SI on `f64` (Pa absolute, K, kg/m³, J/kg), no heap. The modules hold the bare
//! equations, one a function.

pub mod backward_ph;
pub mod backward_ps;
pub mod cards;
pub mod conductivity;
mod gibbs;
mod inverse;
pub mod metastable;
mod range;
pub mod region1;
pub mod region2;
mod saturated;
pub mod saturation;
mod series;
mod state;
pub mod surface_tension;
pub mod transport;
pub mod viscosity;

pub use cards::CARDS;
pub use gibbs::Point;
pub use inverse::{at_ph, at_ps};
pub use range::{OutOfRange, P_MAX_PA, P_MIN_PA, T_MAX_K, T_REGION1_MAX_K, t_min_k};
pub use saturated::{Saturated, dryness, wet_density};
pub use state::{Phase, State, at_pt, metastable_at_pt, point_at, wet};
