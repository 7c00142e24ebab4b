//! What each rule compares in a settled state.

use reckoning::Rule;
use reckoning::quantity::{BAR_DROP, KG_PER_M2_H, KPA, M_PER_S, ONE, PA, PSI_ABSOLUTE, Unit, WATT};

use super::list::{
    BACK_PRESSURE, BED_LIFT, BURNING_RATE, COIL_LOSS, COMPRESSION, DISENGAGEMENT, ENGINE_HEAT,
    HOLDS,
};
use crate::band::Reads;
use crate::firing::BedState;
use crate::state::FireState;

/// Fastest steam through the water surface, m/s, under a steam space of the height and under a
/// lower one, with that height in m; common practice.
const LEAVING_M_S: (f64, f64) = (0.05, 0.02);
const LOW_SPACE_M: f64 = 0.025;

fn leaving_limit(s: &FireState) -> f64 {
    if s.inputs.boiler.steam_space_m < LOW_SPACE_M {
        LEAVING_M_S.1
    } else {
        LEAVING_M_S.0
    }
}
/// Least rate of burning, kg/(m² h); common practice.
const LEAST_RATE_KG_M2_H: f64 = 30.0;
/// Allowance for back pressure, lb/in² absolute.
const BACK_PSI: f64 = 17.0;

/// What a state has to say to a comparison that is made up for one plant.
pub(super) type Read<'a> = &'a dyn Fn(&FireState) -> Option<f64>;

/// One comparison as it is put to a settled sweep.
#[derive(Clone, Copy)]
pub(super) struct Asked<'a> {
    pub(super) rule: &'static Rule,
    pub(super) place: &'a str,
    pub(super) margin: Read<'a>,
    pub(super) wanted: f64,
    pub(super) value: Read<'a>,
    pub(super) limit: Read<'a>,
    pub(super) unit: &'static Unit,
    pub(super) what: &'static str,
}

impl Check {
    pub(super) fn asked(&self) -> Asked<'_> {
        Asked {
            rule: self.rule,
            place: self.place,
            margin: &self.margin,
            wanted: self.wanted,
            value: &self.value,
            limit: &self.limit,
            unit: self.unit,
            what: self.what,
        }
    }
}

/// One comparison of a state, the same for every plant.
pub(super) struct Check {
    pub(super) rule: &'static Rule,
    pub(super) place: &'static str,
    /// Provided over required, the number that the rule compares.
    pub(super) margin: Reads,
    /// Margin below which a met check is marked.
    pub(super) wanted: f64,
    /// The value spoken of, its limit and the unit of both.
    pub(super) value: Reads,
    pub(super) limit: Reads,
    pub(super) unit: &'static Unit,
    pub(super) what: &'static str,
}

/// The bed, where there is one.
fn bed(state: &FireState) -> Option<&BedState> {
    state.pass.firing.bed().map(|fired| &fired.bed)
}

pub(super) static CHECKS: &[Check] = &[
    Check {
        rule: &HOLDS,
        place: "fire",
        margin: FireState::steaming_ratio,
        wanted: 1.1,
        value: FireState::steaming_ratio,
        limit: |_| Some(1.0),
        unit: &ONE,
        what: "steam made over steam asked for",
    },
    Check {
        rule: &BED_LIFT,
        place: "fire",
        margin: |s| bed(s).map(|b| b.weight_pa / b.bare_pa),
        wanted: 1.25,
        value: |s| bed(s).map(|b| b.bare_pa),
        limit: |s| bed(s).map(|b| b.weight_pa),
        unit: &PA,
        what: "loss of the bare bed against its weight",
    },
    Check {
        rule: &BACK_PRESSURE,
        place: "blast.nozzle",
        margin: |s| {
            s.inputs.blast?;
            Some(PSI_ABSOLUTE.to_si(BACK_PSI) / s.exhaust?.engine.back_pa)
        },
        wanted: 1.0,
        value: |s| Some(s.exhaust?.engine.back_pa),
        limit: |_| Some(PSI_ABSOLUTE.to_si(BACK_PSI)),
        unit: &KPA,
        what: "absolute back pressure",
    },
    Check {
        rule: &COMPRESSION,
        place: "engine.compression",
        margin: |s| {
            s.exhaust
                .map(|e| e.engine.admission_pa / e.engine.compressed_pa)
        },
        wanted: 1.0,
        value: |s| s.exhaust.map(|e| e.engine.compressed_pa),
        limit: |s| s.exhaust.map(|e| e.engine.admission_pa),
        unit: &KPA,
        what: "absolute pressure at the end of compression against that of admission",
    },
    Check {
        rule: &ENGINE_HEAT,
        place: "engine.exhaust-dryness",
        margin: |s| {
            s.exhaust
                .map(|e| (e.heat_lost_w + e.engine.indicated_w) / e.engine.indicated_w)
        },
        wanted: 1.0,
        value: |s| s.exhaust.map(|e| e.engine.indicated_w),
        limit: |s| s.exhaust.map(|e| e.heat_lost_w + e.engine.indicated_w),
        unit: &WATT,
        what: "indicated power against the heat that the steam gives up",
    },
    Check {
        rule: &BURNING_RATE,
        place: "fire",
        margin: |s| bed(s).map(|b| b.rate_kg_m2_s / KG_PER_M2_H.to_si(LEAST_RATE_KG_M2_H)),
        wanted: 1.0,
        value: |s| bed(s).map(|b| b.rate_kg_m2_s),
        limit: |_| Some(KG_PER_M2_H.to_si(LEAST_RATE_KG_M2_H)),
        unit: &KG_PER_M2_H,
        what: "fuel on a square metre of grate",
    },
    Check {
        rule: &DISENGAGEMENT,
        place: "boiler",
        margin: |s| Some(leaving_limit(s) / s.leaving_m_s),
        wanted: 1.0,
        value: |s| Some(s.leaving_m_s),
        limit: |s| Some(leaving_limit(s)),
        unit: &M_PER_S,
        what: "speed of steam through the water surface",
    },
    Check {
        rule: &COIL_LOSS,
        place: "dryer",
        margin: |s| s.pass.dryer.map(|d| 0.05 * s.water.boiler_pa / d.loss_pa),
        wanted: 1.0,
        value: |s| s.pass.dryer.map(|d| d.loss_pa),
        limit: |s| Some(0.05 * s.water.boiler_pa),
        unit: &BAR_DROP,
        what: "pressure lost in the coil",
    },
];
