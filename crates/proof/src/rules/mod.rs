//! Every rule that this crate applies.

mod code;
mod form;
mod inner;
mod mounting;
mod parts;

pub(crate) use code::*;
pub(crate) use form::*;
pub(crate) use inner::*;
pub(crate) use mounting::*;
pub(crate) use parts::*;

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
];
