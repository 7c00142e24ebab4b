//! The signs by which a flame shows that it may make carbon monoxide, as plain values. No amount of
//! it is ever predicted: any one of the signs beyond its limit is a caution.

use formulas::flue::radial_mixing_length;

use crate::burner::SourceState;
use crate::firing::{Firing, FiringState};
use crate::state::FireState;

/// Least air over the air needed (common practice, no source).
pub const LEAST_AIR_RATIO: f64 = 1.15;
/// Least share of the fuel burnt where the gas first meets metal across its way (chosen here).
pub const BURNT_AT_FIRST: f64 = 0.97;
/// Least share of the fuel burnt at the end of a flue (chosen here).
pub const BURNT_AT_END: f64 = 0.99;
/// Room between the tip of a flame and cold metal, m (chosen here).
pub const FLAME_ROOM_M: f64 = 2e-3;
/// Most draught that steam jets may add, Pa: a quarter of that of a small chimney (chosen here).
pub const MOST_ADDED_PA: f64 = 0.3;

/// What a flame shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameSigns {
    /// All the air over the air needed.
    pub air_ratio: f64,
    /// Share of the fuel burnt where the gas meets the first cross tube; `None` without one.
    pub burnt_at_first: Option<f64>,
    /// Share of the fuel burnt at the end of the flue; `None` in a firebox, which is stirred.
    pub burnt_at_end: Option<f64>,
    /// Length of the flame of one port or wick, m; `None` where the primary air is all it needs.
    pub flame_m: Option<f64>,
    /// Distance from port or wick to the nearest cold metal, m.
    pub gap_m: f64,
    /// Draught that steam jets add to that of the chimney, Pa.
    pub added_pa: f64,
    /// Length in which rim and middle of the gas of the flue mix, m; `None` in a firebox.
    pub mixing_m: Option<f64>,
}

impl FireState {
    /// The signs of the flame; `None` where a bed burns.
    #[must_use]
    pub fn flame_signs(&self) -> Option<FlameSigns> {
        let flame = self.pass.firing.flame()?;
        let flue = self.pass.firing.flue().map(|state| &state.flue);
        Some(FlameSigns {
            air_ratio: flame.air_ratio,
            burnt_at_first: flue.and_then(|f| f.first).map(|tube| tube.burnt),
            burnt_at_end: flue.map(|f| f.outlet.burnt),
            flame_m: match &flame.source {
                SourceState::Burner(burner) => burner.ports.flame.map(|f| f.length_m),
                SourceState::Wicks(wicks) => Some(wicks.flame_m),
            },
            gap_m: self.gap_m()?,
            added_pa: self.steam_draught_pa,
            mixing_m: match (&self.inputs.firing, &self.pass.firing) {
                (Firing::Flue(fired), FiringState::Flue(state)) => {
                    let speed = state.flue.behind_burner.speed_m_s;
                    Some(radial_mixing_length(speed, fired.flue.bore_m / 2.0))
                }
                _ => None,
            },
        })
    }

    /// Distance from port or wick to the nearest cold metal, m: in a flue, to its wall.
    fn gap_m(&self) -> Option<f64> {
        match &self.inputs.firing {
            Firing::Bed(_) => None,
            Firing::Firebox(fired) => Some(fired.firebox.gap_m),
            Firing::Flue(fired) => {
                let core_m = fired.flame.burner().map_or(0.0, |burner| burner.outside_m);
                Some((fired.flue.bore_m - core_m) / 2.0)
            }
        }
    }
}
