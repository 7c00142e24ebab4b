//! What each rule compares in a settled state.

use reckoning::Rule;
use reckoning::quantity::{
    BAR_DROP, KG_PER_M2_H, KJ_PER_KG, KPA, M_PER_S, ONE, PA, PSI_ABSOLUTE, Unit, WATT,
};

use super::list::{
    BACK_PRESSURE, BED_LIFT, BURNING_RATE, COIL_LOSS, COMPRESSION, DISENGAGEMENT, ENGINE_HEAT,
    ENGINE_POWER, ENGINE_WORK, HOLDS, PORT_SPEED,
};
use crate::band::Reads;
use crate::engine::{EngineState, Exhausts};
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
/// Mean speed of steam in the ports above which they choke the engine, m/s, and below which it is
/// at ease; common practice.
const PORT_M_S: f64 = 80.0;
const QUIET_PORT_M_S: f64 = 60.0;
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

/// The engine, where there is one.
fn engine(state: &FireState) -> Option<&EngineState> {
    state.exhaust.as_ref()?.engine.as_ref()
}

/// Power asked at the shaft, where one is.
fn asked(state: &FireState) -> Option<f64> {
    state.inputs.engine?.load.asked_w()
}

/// Heat that the steam gives up in the engine, where the dryness of the exhaust tells it: by the
/// balance of heat the two agree of themselves.
fn given_up(state: &FireState) -> Option<f64> {
    let Exhausts::Dryness(_) = state.inputs.engine?.exhausts else {
        return None;
    };
    Some(state.exhaust?.heat_lost_w + engine(state)?.indicated_w)
}

/// Loss of the bare bed, in a puff where the exhaust comes in puffs.
fn greatest_loss(state: &FireState) -> Option<f64> {
    let mean = bed(state)?.bare_pa;
    Some(state.puffed_bed().map_or(mean, |puffed| puffed.bare_pa))
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
        margin: |s| Some(bed(s)?.weight_pa / greatest_loss(s)?),
        wanted: 1.25,
        value: greatest_loss,
        limit: |s| bed(s).map(|b| b.weight_pa),
        unit: &PA,
        what: "loss of the bare bed, in a puff where the exhaust comes in puffs, against its weight",
    },
    Check {
        rule: &BACK_PRESSURE,
        place: "blast.nozzle",
        margin: |s| {
            s.inputs.blast?;
            Some(PSI_ABSOLUTE.to_si(BACK_PSI) / engine(s)?.back_pa)
        },
        wanted: 1.0,
        value: |s| Some(engine(s)?.back_pa),
        limit: |_| Some(PSI_ABSOLUTE.to_si(BACK_PSI)),
        unit: &KPA,
        what: "absolute back pressure",
    },
    Check {
        rule: &COMPRESSION,
        place: "engine.compression",
        margin: |s| engine(s).map(|e| e.admitted.pa / e.compressed_pa),
        wanted: 1.0,
        value: |s| engine(s).map(|e| e.compressed_pa),
        limit: |s| engine(s).map(|e| e.admitted.pa),
        unit: &KPA,
        what: "absolute pressure at the end of compression against that of admission",
    },
    Check {
        rule: &ENGINE_HEAT,
        place: "engine.exhaust-dryness",
        margin: |s| Some(given_up(s)? / engine(s)?.indicated_w),
        wanted: 1.0,
        value: |s| engine(s).map(|e| e.indicated_w),
        limit: given_up,
        unit: &WATT,
        what: "indicated power against the heat that the steam gives up",
    },
    Check {
        rule: &ENGINE_WORK,
        place: "engine",
        margin: |s| engine(s).map(|e| e.ideal_j_kg / e.work_j_kg()),
        wanted: 1.0,
        value: |s| engine(s).map(EngineState::work_j_kg),
        limit: |s| engine(s).map(|e| e.ideal_j_kg),
        unit: &KJ_PER_KG,
        what: "work from a kilogram of steam against that of an engine without loss",
    },
    Check {
        rule: &ENGINE_POWER,
        place: "duty.power",
        margin: |s| Some((engine(s)?.most_w - engine(s)?.pump_w) / asked(s)?),
        wanted: 1.0,
        value: |s| engine(s).map(|e| e.most_w - e.pump_w),
        limit: asked,
        unit: &WATT,
        what: "power at the shaft that the engine can give against that asked",
    },
    Check {
        rule: &PORT_SPEED,
        place: "engine.port-area",
        margin: |s| Some(PORT_M_S / engine(s)?.admitted.port_m_s?),
        wanted: PORT_M_S / QUIET_PORT_M_S,
        value: |s| engine(s)?.admitted.port_m_s,
        limit: |_| Some(PORT_M_S),
        unit: &M_PER_S,
        what: "mean speed of steam in the ports",
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
