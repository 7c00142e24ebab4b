//! Every rule that this crate applies.

mod code;
mod end;
mod european;
mod form;
mod inner;
mod mounting;
mod parts;
mod ship;
mod state;
mod trade;

pub(crate) use code::*;
pub(crate) use end::*;
pub(crate) use european::*;
pub(crate) use form::*;
pub(crate) use inner::*;
pub(crate) use mounting::*;
pub(crate) use parts::*;
pub(crate) use ship::*;
pub(crate) use state::*;
pub(crate) use trade::*;

use reckoning::{Cite, Rule, Source};

const fn cite(source: &'static Source, place: &'static str) -> Cite {
    Cite { source, place }
}

/// Every rule, by set.
pub static RULES: &[&Rule] = &[
    &STEAM_RATING,
    &METAL_TEMPERATURE,
    &WETTED_METAL,
    &SHELL_WALL,
    &SHELL_TEST,
    &SHELL_FLOOR,
    &SHELL_LIGAMENT,
    &OPENING_AREA,
    &OPENING_PRESSURE_AREA,
    &OPENING_BRAZE,
    &FLUE_PRESSURE,
    &FLUE_OPENING,
    &PLATE_STAYED,
    &PLATE_MARGIN,
    &PLATE_BETWEEN,
    &PLATE_LIGAMENT,
    &PLATE_OPENING,
    &TUBE_PULL,
    &TUBE_BRAZE,
    &JOINT_LAP,
    &JOINT_SHEAR,
    &JOINT_PEEL,
    &CROWN_CHAIN,
    &TUBE_GROWTH,
    &RING_BENDING,
    &RING_JOINT,
    &FIREHOLE_JOINT,
    &BUSH_PUSH_OUT,
    &BUSH_TORQUE,
    &STAY_METAL,
    &STAY_ROD,
    &STAY_JOINT,
    &STAY_STRAIN,
    &END_FLAT,
    &END_RING,
    &END_STAYED,
    &END_PULL,
    &END_GROWTH,
    &END_OPENING,
    &END_DISHED,
    &OPENING_BETWEEN,
    &OPENING_LAP,
    &GIRDER_BENDING,
    &GIRDER_FOOT,
    &GIRDER_PLATE,
    &THREAD_TURNS,
    &THREAD_SHEAR,
    &STAY_GROWTH,
    &TUBE_WALL,
    &TUBE_TEST,
    &COIL_FLOWING,
    &COIL_STANDING,
    &COIL_STRAIN,
    &VALVE_CAPACITY,
    &VALVE_SET,
    &VALVE_INLET,
    &FEED_MEANS,
    &FEED_CHECK,
    &GAUGE_RANGE,
    &GAUGE_SYPHON,
    &GLASS_ABOVE_CROWN,
    &GLASS_LOWEST,
    &BLOW_DOWN_LOW,
    &FUSIBLE_PLUG,
    &SPRING_RISE,
    &SPRING_STRESS,
    &SPRING_OPEN,
    &SPRING_BUCKLING,
    &GAS_INTERLOCK,
    &CODE_SHELL_WALL,
    &CODE_OPENING_AREA,
    &CODE_EXTERNAL,
    &CODE_STAYED,
    &CODE_ELSEWHERE,
    &CODE_NOT_WORKED,
    &CODE_FLAT_END,
    &CODE_DISHED,
    &EN_SHELL_WALL,
    &EN_OPENING,
    &EN_OPENINGS_APART,
    &EN_EXTERNAL,
    &EN_FLAT_END,
    &EN_NOT_WORKED,
    &BOILER_FURNACE,
    &BOILER_NOT_WORKED,
    &SHIP_PIPE_WALL,
    &SHIP_LEAST_WALL,
    &SHIP_SMOKE_TUBE,
    &SHIP_BEND,
    &SHIP_FILLER,
    &SHIP_NOT_WORKED,
    &STATE_SHELL,
    &STATE_FURNACE,
    &STATE_STAY,
    &STATE_TUBE_PLATE,
    &STATE_BETWEEN,
    &STATE_GIRDER,
    &STATE_UNDER_GIRDERS,
    &STATE_DISHED,
    &STATE_CROSS_TUBES,
    &STATE_NOT_WORKED,
    &TRADE_SHELL,
    &TRADE_FLAT,
    &TRADE_NOT_WORKED,
];
