//! The primary air that a gas jet draws: one bracketed root of the momentum of the throat.

use formulas::balance::round_area;
use formulas::burner::{
    self as laws, Mixture, blow_off_gradient, blow_off_share, flame_length, jet_push, mixing_loss,
    mixture_density, port_loading, port_richness, port_speed, primary_air_ratio, rich_ratio,
    round_gradient, slot_gradient,
};
use formulas::draught::opening_loss;
use formulas::fuel::air_by_volume;
use reckoning::Refused;
use reckoning::solve::{NotSolved, Solved, bracketed};

use super::{Burner, GasJetState, PortShape, ThroatShape};
use crate::firing::Air;

/// Most primary air for which the balance is sought, over the gas.
const MOST_AIR: f64 = 200.0;

/// Accuracy of the primary air, over the gas.
const ACCURACY: f64 = 1e-10;

/// Throat, air holes and ports with gas and primary air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PrimaryState {
    /// Primary air, kg/s.
    pub air_kg_s: f64,
    /// Primary air over the air that the gas needs.
    pub ratio: f64,
    /// Density of gas and air once mixed, kg/m³.
    pub mixture_kg_m3: f64,
    /// Push of the jet, Pa.
    pub push_pa: f64,
    /// Spent in mixing and friction, Pa.
    pub mixing_pa: f64,
    /// Spent in the ports, Pa.
    pub ports_pa: f64,
    /// Spent in the air holes, Pa.
    pub holes_pa: f64,
    /// Pressure outside the ports above that of the air, Pa.
    pub outside_pa: f64,
    /// The root; `None` where the mouth is shut, and the pressure outside the ports is what is
    /// left of the push.
    pub balance: Option<Solved>,
}

/// The flame at the ports.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PortsState {
    /// Mean speed, m/s.
    pub speed_m_s: f64,
    /// Heat of the gas on the area of the ports, W/m².
    pub loading_w_m2: f64,
    /// Gradient of the speed at the wall of a port, 1/s.
    pub gradient_per_s: f64,
    /// Gas over the gas that the primary air could burn.
    pub rich_ratio: f64,
    /// Gradient at which the flame blows off, 1/s.
    pub blow_off_per_s: f64,
    /// The one over the other.
    pub blow_off_share: f64,
    /// The flame of one port; `None` where the primary air is all that it needs.
    pub flame: Option<PortFlame>,
}

/// The flame of one port.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PortFlame {
    /// Volumes of secondary air that a volume of the mixture still needs.
    pub wants: f64,
    /// Mixture through one port, at the temperature of the air, m³/s.
    pub flow_m3_s: f64,
    /// Length, m.
    pub length_m: f64,
}

/// A burner with its gas, against the air.
#[derive(Clone, Copy)]
pub(super) struct Drawing<'a> {
    pub burner: &'a Burner,
    pub jet: &'a GasJetState,
    pub air: &'a Air,
    /// Air that a kilogram of gas needs, kg/kg.
    pub need: f64,
}

impl Drawing<'_> {
    /// The throat with so much primary air (kg/s), and the pressure that is left over once it has
    /// mixed and passed holes and ports, Pa.
    pub(super) fn pushed(&self, air_kg_s: f64) -> PrimaryState {
        let (b, gas_kg_s) = (self.burner, self.jet.gas_kg_s);
        let air = self.air;
        let mixture = self.mixture(air_kg_s);
        let mixture_k = b.throat.mixture_k;
        let mixture_kg_m3 = mixture_density(air.pa, mixture_k, &mixture);
        let m = gas_kg_s + air_kg_s;
        let area = round_area(b.throat.bore_m);
        let push_pa = jet_push(b.throat.momentum_share, self.jet.thrust_n, area);
        let mixing_pa = mixing_loss(&self.throat(), m, mixture_kg_m3);
        let ports = (b.ports.coefficient, b.ports.area_m2());
        let ports_pa = opening_loss(m, mixture_kg_m3, ports.0, ports.1);
        let holes_pa = opening_loss(air_kg_s, air.kg_m3, b.holes_coefficient, b.holes_m2);
        PrimaryState {
            air_kg_s,
            ratio: primary_air_ratio(air_kg_s, self.need, gas_kg_s),
            mixture_kg_m3,
            push_pa,
            mixing_pa,
            ports_pa,
            holes_pa,
            outside_pa: push_pa - mixing_pa - ports_pa - holes_pa,
            balance: None,
        }
    }

    fn throat(&self) -> laws::Throat {
        let throat = &self.burner.throat;
        let (eta_d, widening) = match throat.shape {
            ThroatShape::Parallel => (0.0, 1.0),
            ThroatShape::Taper { tube_m, given_back } => {
                (given_back, (throat.bore_m / tube_m).powi(2))
            }
        };
        laws::Throat {
            area: round_area(throat.bore_m),
            beta: throat.momentum_factor,
            k_f: throat.friction_heads,
            eta_d,
            widening,
        }
    }

    /// The primary air that the jet draws where `outside_pa` stands above the pressure of the air
    /// outside the ports when so much primary air (kg/s) is drawn. No more than `most_kg_s` is
    /// drawn where that much is all the air there is.
    pub(super) fn drawn(
        &self,
        most_kg_s: Option<f64>,
        outside_pa: impl Fn(f64) -> f64,
    ) -> Result<PrimaryState, NotSolved> {
        let gas_kg_s = self.jet.gas_kg_s;
        let most = MOST_AIR * gas_kg_s;
        let most = most_kg_s.filter(|air| *air < most).unwrap_or(most);
        let solved = bracketed(0.0, most, ACCURACY * gas_kg_s, |air_kg_s| {
            self.pushed(air_kg_s).outside_pa - outside_pa(air_kg_s)
        })?;
        Ok(PrimaryState {
            outside_pa: outside_pa(solved.x),
            balance: Some(solved),
            ..self.pushed(solved.x)
        })
    }

    /// The flame at the ports.
    pub(super) fn ports(&self, primary: &PrimaryState) -> Result<PortsState, Refused> {
        let b = self.burner;
        let area = b.ports.area_m2();
        let m = self.jet.gas_kg_s + primary.air_kg_s;
        let speed_m_s = port_speed(m, primary.mixture_kg_m3, area);
        let heat_w = self.jet.gas_kg_s * b.gas.heating_value_j_kg;
        let gradient_per_s = match b.ports.shape {
            PortShape::Round { bore_m } => round_gradient(speed_m_s, bore_m),
            PortShape::Slot { width_m, .. } => slot_gradient(speed_m_s, width_m),
        };
        let rich = rich_ratio(primary.ratio);
        let blow_off_per_s = blow_off_gradient(rich, b.throat.mixture_k);
        Ok(PortsState {
            speed_m_s,
            loading_w_m2: port_loading(heat_w, area),
            gradient_per_s,
            rich_ratio: rich,
            blow_off_per_s,
            blow_off_share: blow_off_share(gradient_per_s, blow_off_per_s),
            flame: self.flame(primary)?,
        })
    }

    /// The flame of one port, where it must still find air.
    fn flame(&self, primary: &PrimaryState) -> Result<Option<PortFlame>, Refused> {
        let b = self.burner;
        let volumes = air_by_volume(self.need, b.gas.molar_mass);
        let wants = port_richness(primary.ratio, volumes);
        if wants <= 0.0 {
            return Ok(None);
        }
        let mixture = self.mixture(primary.air_kg_s);
        let cold_kg_m3 = mixture_density(self.air.pa, self.air.k, &mixture);
        let flow_m3_s = (mixture.m_g + mixture.m_a) / (cold_kg_m3 * b.ports.count);
        Ok(Some(PortFlame {
            wants,
            flow_m3_s,
            length_m: flame_length(flow_m3_s, self.air.k, b.throat.mixture_k, wants)?,
        }))
    }

    fn mixture(&self, air_kg_s: f64) -> Mixture {
        Mixture {
            m_g: self.jet.gas_kg_s,
            molar_g: self.burner.gas.molar_mass,
            m_a: air_kg_s,
            molar_a: self.air.molar_mass,
        }
    }
}
