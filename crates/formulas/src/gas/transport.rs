//! Viscosity and conductivity of a mixture: the pure gases, and the rules by which they mix.

use reckoning::quantity::MICRO_PA_S;

use super::pure;
use crate::steam;

/// Viscosity and conductivity at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Transport {
    /// Dynamic viscosity, Pa s.
    pub viscosity: f64,
    /// Thermal conductivity, W/(m K).
    pub conductivity: f64,
}

/// What a pure gas has at a temperature in kelvin.
pub type PureLaw = fn(f64) -> Transport;

/// The reference equations, in the order carbon dioxide, water vapour, oxygen, nitrogen.
pub static REFERENCE_LAWS: [PureLaw; 4] = [carbon_dioxide, water_vapour, oxygen, nitrogen];

fn carbon_dioxide(t_k: f64) -> Transport {
    Transport {
        viscosity: MICRO_PA_S.to_si(pure::carbon_dioxide_viscosity(t_k)),
        conductivity: pure::carbon_dioxide_conductivity(t_k),
    }
}

fn water_vapour(t_k: f64) -> Transport {
    Transport {
        viscosity: steam::viscosity::thin(t_k),
        conductivity: steam::conductivity::thin(t_k),
    }
}

fn oxygen(t_k: f64) -> Transport {
    let mu = pure::oxygen_viscosity(t_k);
    Transport {
        viscosity: MICRO_PA_S.to_si(mu),
        conductivity: pure::oxygen_conductivity(t_k, mu),
    }
}

fn nitrogen(t_k: f64) -> Transport {
    let mu = pure::nitrogen_viscosity(t_k);
    Transport {
        viscosity: MICRO_PA_S.to_si(mu),
        conductivity: pure::nitrogen_conductivity(t_k, mu),
    }
}

/// The parts of the mixing rules that do not change with temperature.
#[derive(Clone, Copy, Debug)]
pub(super) struct Mixing {
    /// Shares by volume.
    shares: [f64; 4],
    laws: [PureLaw; 4],
    /// `(M_j / M_i)^(1/4)`.
    quarter: [[f64; 4]; 4],
    /// `1 / sqrt(8 (1 + M_i / M_j))`.
    root: [[f64; 4]; 4],
}

impl Mixing {
    pub(super) fn new(shares: [f64; 4], molar_masses: [f64; 4], laws: &[PureLaw; 4]) -> Self {
        let pairs =
            |f: fn(f64, f64) -> f64| molar_masses.map(|m_i| molar_masses.map(|m_j| f(m_i, m_j)));
        Self {
            shares,
            laws: *laws,
            quarter: pairs(|m_i, m_j| (m_j / m_i).powf(0.25)),
            root: pairs(|m_i, m_j| 1.0 / (8.0 * (1.0 + m_i / m_j)).sqrt()),
        }
    }

    pub(super) fn at(&self, t_k: f64) -> Transport {
        let pure = self.laws.map(|law| law(t_k));
        Transport {
            viscosity: self.mixed_viscosity(&pure.map(|p| p.viscosity)),
            conductivity: mixed_conductivity(&self.shares, &pure.map(|p| p.conductivity)),
        }
    }

    /// The rule of 1950: each gas is slowed by the others in the measure of its weight.
    fn mixed_viscosity(&self, pure: &[f64; 4]) -> f64 {
        let roots = pure.map(f64::sqrt);
        let mut sum = 0.0;
        for i in 0..4 {
            let mut weight = 0.0;
            for j in 0..4 {
                let c = 1.0 + roots[i] / roots[j] * self.quarter[i][j];
                weight += self.shares[j] * c * c * self.root[i][j];
            }
            sum += self.shares[i] * pure[i] / weight;
        }
        sum
    }
}

/// The mean of the series and the parallel law.
fn mixed_conductivity(shares: &[f64; 4], pure: &[f64; 4]) -> f64 {
    let mut direct = 0.0;
    let mut inverse = 0.0;
    for i in 0..4 {
        direct += shares[i] * pure[i];
        inverse += shares[i] / pure[i];
    }
    0.5 * (direct + 1.0 / inverse)
}
