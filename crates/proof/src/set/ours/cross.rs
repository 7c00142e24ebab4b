//! Cross tubes, water inside and flame outside, and pipes under boiler pressure. The holes of cross
//! tubes are judged as openings of their flue; they do not stiffen it.

use super::inside::{Tube, test, wall};
use super::whole::temperature;
use crate::input::{CrossTubes, Pipe};
use crate::rules::TUBE_WALL;
use crate::set::Asked;
use reckoning::Finding;
use reckoning::quantity::Temperature;

/// Every check of the cross tubes.
pub(super) fn tubes(it: &CrossTubes, asked: &Asked<'_>) -> Vec<Finding> {
    checks(
        &Tube {
            id: &it.id,
            metal: it.metal,
            outside: it.outside.as_ref(),
            wall: it.wall.as_ref(),
            at: it.metal_temperature.as_ref(),
            when: "at work",
        },
        asked,
    )
}

/// Every check of a pipe.
pub(super) fn pipe(it: &Pipe, asked: &Asked<'_>) -> Vec<Finding> {
    checks(
        &Tube {
            id: &it.id,
            metal: it.metal,
            outside: it.outside.as_ref(),
            wall: it.wall.as_ref(),
            at: it.metal_temperature.as_ref(),
            when: "at work",
        },
        asked,
    )
}

fn checks(tube: &Tube<'_>, asked: &Asked<'_>) -> Vec<Finding> {
    vec![
        temperature(tube.id, tube.at),
        wall(&TUBE_WALL, tube, asked, cooler),
        test(tube, asked),
    ]
}

fn cooler(_: f64, _: f64, _: Temperature) -> String {
    "keep the metal under water, or less pressure".to_owned()
}
