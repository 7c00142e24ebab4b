//! Speed in the lathe and the drilling machine: turns of the spindle for a cutting speed, and the
//! speeds that metals stand.
//!
//! Cutting force and spring are left out: no specific force was found for copper and bronze.

use std::f64::consts::PI;

use reckoning::quantity::{M_PER_MIN, MM, RPM, Speed};
use reckoning::{Card, Cite, Law, Spread, symbol};

use crate::sources::DERIVED;
use crate::table;

/// Turns of the spindle, rev/min; see [`SPINDLE_SPEED`].
#[must_use]
pub fn spindle_speed(v_m_min: f64, d_mm: f64) -> f64 {
    1000.0 * v_m_min / (PI * d_mm)
}

/// Turns of the spindle for a cutting speed at a diameter.
pub static SPINDLE_SPEED: Card = Card {
    id: "cutting.spindle-speed",
    law: Law::Closed("n = 1000 * v / (pi * D)"),
    gives: symbol("n", &RPM, "turns of the spindle"),
    takes: &[
        symbol("v", &M_PER_MIN, "cutting speed"),
        symbol("D", &MM, "diameter at the cutting edge"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "speed at the rim of a turning bar",
    },
    eval: |v| Ok(spindle_speed(v[0], v[1])),
};

/// The kinds of metal that cut alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CuttingMetal {
    /// Brass that cuts freely.
    Brass,
    /// Tin bronze and gunmetal.
    Bronze,
    /// Copper.
    Copper,
    /// Mild steel.
    MildSteel,
    /// Austenitic stainless steel.
    Stainless,
    /// Grey cast iron.
    CastIron,
}

/// The speeds that a metal stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpeedRange {
    /// Careful speed.
    pub low: Speed,
    /// Greatest speed.
    pub high: Speed,
}

impl CuttingMetal {
    /// Every kind.
    pub const ALL: [Self; 6] = [
        Self::Brass,
        Self::Bronze,
        Self::Copper,
        Self::MildSteel,
        Self::Stainless,
        Self::CastIron,
    ];

    /// As the tables name it.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Brass => "free-cutting brass",
            Self::Bronze => "tin bronze",
            Self::Copper => "copper",
            Self::MildSteel => "mild steel",
            Self::Stainless => "stainless steel",
            Self::CastIron => "grey cast iron",
        }
    }

    /// Speeds for turning with high-speed steel.
    #[must_use]
    pub fn turning(self) -> SpeedRange {
        self.range("cutting-speeds-turning")
    }

    /// Speeds for drilling with high-speed steel.
    #[must_use]
    pub fn drilling(self) -> SpeedRange {
        self.range("cutting-speeds-drilling")
    }

    fn range(self, name: &str) -> SpeedRange {
        let table = table::find(name);
        match table.row_of("metal", self.words()) {
            Ok(row) => SpeedRange {
                low: table.value(row, "low"),
                high: table.value(row, "high"),
            },
            Err(missing) => panic!("a table of ours lacks a metal: {missing}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_metal_has_its_speeds() {
        for metal in CuttingMetal::ALL {
            assert!(metal.turning().low < metal.turning().high);
            assert!(metal.drilling().low < metal.drilling().high);
        }
    }
}
