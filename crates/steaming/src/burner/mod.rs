//! What gives a flame its fuel and its air: the gas jet with its throat and ports, wicks, and the
//! mouth through which the rest of the air comes.
//!
//! Primary air is set by the momentum of the jet and hardly feels the chimney; secondary air is
//! set by fractions of a pascal of draught. The two meet in the mouth, whose suction stands behind
//! the ports. Left out: radiant plates, bell mouths, and wind.

mod air;
mod hottest;
mod jet;
mod primary;
mod tank;
mod wicks;

pub(crate) use air::{Aired, FlameSide};
pub use air::{BurnerState, FlameState, SourceState, in_open_air};
pub use hottest::{GREATEST_SHARE, Hottest, greatest_heat};
pub use jet::{FuelGas, GasJet, GasJetState};
pub use primary::{PortFlame, PortsState, PrimaryState};
pub use tank::{Chilling, Draught, Ended, Tank, TankMoment, TankState, chilling};
pub use wicks::{WickState, Wicks};

use std::f64::consts::FRAC_PI_4;

/// A flame and the way of its air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flame {
    /// What gives it its fuel.
    pub source: Source,
    /// Where its secondary air comes in.
    pub mouth: Mouth,
    /// Length over which fuel leaves the source, from the mouth, m.
    pub ported_m: f64,
    /// Length over which what leaves the source finds the rest of its air, m.
    pub mixing_m: f64,
    /// Share of the heating value set free.
    pub burnt_share: f64,
    /// Emissivity of the soot in it; 0 for a blue one.
    pub soot: f64,
}

/// What gives a flame its fuel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Source {
    /// A gas burner.
    Burner(Burner),
    /// Spirit wicks.
    Wicks(Wicks),
}

/// Where secondary air comes in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mouth {
    /// Through an opening.
    Open {
        /// Free area, m².
        area_m2: f64,
        /// Discharge coefficient.
        coefficient: f64,
    },
    /// Nowhere: all the air is primary, and the burner pushes.
    Shut,
}

impl Mouth {
    /// Its free area, m²; `None` where it is shut.
    #[must_use]
    pub fn area_m2(&self) -> Option<f64> {
        match self {
            Self::Open { area_m2, .. } => Some(*area_m2),
            Self::Shut => None,
        }
    }

    /// Gives an open mouth this free area, m²; a shut one stays shut.
    pub fn widen(&mut self, wide_m2: f64) {
        if let Self::Open { area_m2, .. } = self {
            *area_m2 = wide_m2;
        }
    }
}

/// A self-aspirating gas burner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Burner {
    /// The gas as it comes to the jet.
    pub gas: FuelGas,
    /// The jet.
    pub jet: GasJet,
    /// Throat and mixing tube.
    pub throat: Throat,
    /// Area of all air holes, m².
    pub holes_m2: f64,
    /// Discharge coefficient of the air holes.
    pub holes_coefficient: f64,
    /// The ports.
    pub ports: Ports,
    /// Outside diameter of the tube that holds the ports, m.
    pub outside_m: f64,
}

/// The tube in which gas and primary air mix.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Throat {
    /// Least bore, m.
    pub bore_m: f64,
    /// How it goes on.
    pub shape: ThroatShape,
    /// Share of the thrust of the jet that mixing and alignment leave.
    pub momentum_share: f64,
    /// Momentum of the mixture over that of an even stream.
    pub momentum_factor: f64,
    /// Friction, in velocity heads of the mixture.
    pub friction_heads: f64,
    /// Temperature of the mixture in a warm burner, K.
    pub mixture_k: f64,
}

/// How a throat goes on towards the ports.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ThroatShape {
    /// In one bore.
    Parallel,
    /// It tapers into a wider tube.
    Taper {
        /// Bore of that tube, m.
        tube_m: f64,
        /// Share of the velocity head that the taper gives back.
        given_back: f64,
    },
}

/// The ports of a burner, all alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ports {
    /// How many.
    pub count: f64,
    /// Their shape.
    pub shape: PortShape,
    /// Discharge coefficient.
    pub coefficient: f64,
}

/// The shape of a port.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PortShape {
    /// A round hole of this bore, m.
    Round {
        /// Bore, m.
        bore_m: f64,
    },
    /// A slot.
    Slot {
        /// Width, m.
        width_m: f64,
        /// Length, m.
        length_m: f64,
    },
}

impl Ports {
    /// Area of all ports, m².
    #[must_use]
    pub fn area_m2(&self) -> f64 {
        self.count
            * match self.shape {
                PortShape::Round { bore_m } => FRAC_PI_4 * bore_m * bore_m,
                PortShape::Slot { width_m, length_m } => width_m * length_m,
            }
    }
}

impl Flame {
    /// The burner; `None` where wicks burn.
    #[must_use]
    pub fn burner(&self) -> Option<&Burner> {
        match &self.source {
            Source::Burner(burner) => Some(burner),
            Source::Wicks(_) => None,
        }
    }

    /// As [`Self::burner`], to be changed.
    pub fn burner_mut(&mut self) -> Option<&mut Burner> {
        match &mut self.source {
            Source::Burner(burner) => Some(burner),
            Source::Wicks(_) => None,
        }
    }

    /// The wicks; `None` where a burner burns.
    #[must_use]
    pub fn wicks(&self) -> Option<&Wicks> {
        match &self.source {
            Source::Wicks(wicks) => Some(wicks),
            Source::Burner(_) => None,
        }
    }

    /// As [`Self::wicks`], to be changed.
    pub fn wicks_mut(&mut self) -> Option<&mut Wicks> {
        match &mut self.source {
            Source::Wicks(wicks) => Some(wicks),
            Source::Burner(_) => None,
        }
    }
}
