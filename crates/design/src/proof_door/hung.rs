//! The plate that hangs on each stay, worked from the plan.

use std::f64::consts::TAU;

use plan::Plan;
use plan::section::{Stay, StayRun};
use plant::layout::At;
use proof::{stay_field, stay_field_within};
use reckoning::quantity::{Angle, Area, Length};
use reckoning::{Given, Known, Origin};

/// Points that stand for the round wall of a flue.
const ROUND: u32 = 72;

fn area(mm2: f64, of: &str) -> Known<Area> {
    Known {
        value: Area::from_mm2(mm2),
        given: Given::Shape {
            of: of.to_owned(),
            weakest: Origin::Read,
        },
    }
}

/// Middle of a stay between two plates, mm, seen along the axis.
fn at(stay: &Stay) -> Option<(f64, f64)> {
    let at = At::polar(stay.radius.value()?, stay.angle.value()?);
    Some((at.x.mm(), at.y.mm()))
}

/// The middles of all stays between the plates; `None` where one is placed nowhere, which may stand
/// anywhere.
pub(super) fn places(plan: &Plan) -> Option<Vec<(f64, f64)>> {
    let stays = plan.boiler.stays.iter();
    stays.filter(|s| between_plates(s)).map(at).collect()
}

/// Whether a stay ties two plates; one of which nothing is said may.
pub(super) fn between_plates(stay: &Stay) -> bool {
    stay.run.value() != Some(StayRun::FireboxToBarrel)
}

/// The plate that hangs on a stay among tubes and further stays, within a wall.
pub(super) fn among(
    stay: &Stay,
    plan: &Plan,
    tubes: &[(f64, f64)],
    wall: Length,
) -> Option<Known<Area>> {
    let of = at(stay)?;
    let mut others = places(plan)?;
    others.extend_from_slice(tubes);
    let field = stay_field(of, &others, wall.mm());
    Some(area(
        field,
        "plate nearer to the stay than to tubes and other stays",
    ))
}

/// Points on the wall of a flue whose middle lies `below` that of the plate.
pub(super) fn flue_wall(radius: Length, below: Length) -> Vec<(f64, f64)> {
    // Angles are told from the top: what lies below has its middle at falling `x`.
    let (r, x) = (radius.mm(), -below.mm());
    (0..ROUND)
        .map(|i| (TAU * f64::from(i) / f64::from(ROUND)).sin_cos())
        .map(|(sin, cos)| (x + r * cos, r * sin))
        .collect()
}

/// A stay across a water leg, rolled out: round the barrel, and height.
fn unrolled(stay: &Stay, radius: f64) -> Option<(f64, f64)> {
    let angle: Angle = stay.angle.value()?;
    Some((angle.rad() * radius, stay.height.value()?.mm()))
}

/// The wall of the leg that hangs on a stay across it: half way to its neighbours, up to ring and
/// crown. The wider wall counts.
pub(super) fn across(
    stay: &Stay,
    plan: &Plan,
    barrel: Length,
    (ring, crown): (Length, Length),
) -> Option<Known<Area>> {
    let radius = barrel.mm();
    let of = unrolled(stay, radius)?;
    let round = TAU * radius;
    let mut others = vec![(of.0 - round, of.1), (of.0 + round, of.1)];
    for other in plan.boiler.stays.iter().filter(|s| !between_plates(s)) {
        let (x, y) = unrolled(other, radius)?;
        others.extend([(x - round, y), (x, y), (x + round, y)]);
    }
    let (low, high) = (ring.mm(), crown.mm());
    let (left, right) = (of.0 - round, of.0 + round);
    let edge = vec![(left, low), (right, low), (right, high), (left, high)];
    let field = stay_field_within(of, &others, edge);
    Some(area(
        field,
        "wall nearer to the stay than to other stays, from ring to crown",
    ))
}
