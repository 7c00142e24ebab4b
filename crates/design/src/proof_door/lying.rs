//! A horizontal boiler with a centre flue, for the proof.

use plan::Plan;
use plan::section::{BushSeat, Stay as Planned, TubePlate};
use plant::{LyingVessel, StandingPlate};
use proof::{
    Bare, Boiler, CrossTubes, Dimension, End, EndShape, Exposure, Flue, Joint, Opening, Place,
    Removed, Shell, Stay, StayRun, Support,
};
use reckoning::quantity::{Angle, Area, Length, Ratio};
use reckoning::size::Bad;
use reckoning::{Given, Known, Origin, Size, Tolerance};
use std::f64::consts::PI;

use super::{
    Fire, bushes_on, bushes_without_a_seat, diameter, dimension, frame, hung, inner, joint, lap,
    metal, metal_temperature, seam, spring,
};

/// The pressure parts that a plan names, as far as it goes.
pub(super) fn boiler(plan: &Plan, vessel: Option<&LyingVessel>) -> Boiler {
    Boiler {
        shells: vec![barrel(plan, vessel)],
        flues: vec![flue(plan, vessel)],
        ends: ends(plan, vessel),
        cross_tubes: cross_tubes(plan, vessel).into_iter().collect(),
        stays: plan
            .boiler
            .stays
            .iter()
            .map(|s| stay(s, plan, vessel))
            .collect(),
        coils: inner::coil(plan).into_iter().collect(),
        pipes: spring::pipes(plan),
        filler: plan.boiler.filler.get().cloned(),
        screwed: lap::screwed(plan),
        ..Boiler::default()
    }
}

fn shape<Q>(value: Q, of: &str) -> Known<Q> {
    Known {
        value,
        given: Given::Shape {
            of: of.to_owned(),
            weakest: Origin::Read,
        },
    }
}

fn laps(vessel: Option<&LyingVessel>) -> Vec<proof::Lap> {
    vessel.map_or_else(Vec::new, |v| {
        vec![
            lap::of_plate("end.front", &v.front),
            lap::of_plate("end.back", &v.back),
        ]
    })
}

fn barrel(plan: &Plan, vessel: Option<&LyingVessel>) -> Shell {
    let b = &plan.boiler.barrel;
    let ends = [&plan.boiler.end.front, &plan.boiler.end.back].map(|end| joint(&end.joint));
    let mut openings = bushes_on(plan, BushSeat::Barrel);
    openings.extend(bushes_without_a_seat(plan));
    Shell {
        id: "barrel".to_owned(),
        metal: metal(&b.metal, plan),
        diameter: diameter(&b.outside, &b.bore),
        wall: dimension(&b.wall),
        seam: seam(&b.seam),
        // The worse of the two.
        ends: if ends.contains(&Joint::Blind) {
            Joint::Blind
        } else {
            Joint::SeenBothSides
        },
        metal_temperature: metal_temperature(plan, Fire::Away),
        openings,
        laps: laps(vessel),
    }
}

fn flue(plan: &Plan, vessel: Option<&LyingVessel>) -> Flue {
    let f = &plan.boiler.flue;
    Flue {
        id: "flue".to_owned(),
        metal: metal(&f.metal, plan),
        diameter: diameter(&f.outside, &f.bore),
        wall: dimension(&f.wall),
        length: vessel.map(|v| v.between_ends.clone()),
        ovality: dimension(&f.ovality),
        exposure: Exposure::FlameSwept,
        metal_temperature: metal_temperature(plan, Fire::Touches),
        openings: crossings(plan, vessel),
        laps: seats(vessel),
    }
}

/// The stretches of the flue that stand in the ends.
fn seats(vessel: Option<&LyingVessel>) -> Vec<proof::Lap> {
    let seat = |of: &str, plate: &StandingPlate| {
        let mut bare = *plate;
        bare.flange = None;
        lap::of_plate(of, &bare)
    };
    vessel.map_or_else(Vec::new, |v| {
        vec![seat("end.front", &v.front), seat("end.back", &v.back)]
    })
}

/// Whether the plan has cross tubes.
fn are_crossed(plan: &Plan) -> bool {
    let it = &plan.boiler.cross_tubes;
    let named = !(it.wall.is_absent() && it.outside.is_absent());
    named && it.count.value() != Some(0)
}

/// The holes of the cross tubes in the flue, two a tube. The tubes themselves are not counted as
/// metal beside their holes.
fn crossings(plan: &Plan, vessel: Option<&LyingVessel>) -> Vec<Opening> {
    if !are_crossed(plan) {
        return Vec::new();
    }
    let hole = dimension(&plan.boiler.cross_tubes.outside);
    let Some(crossing) = vessel.and_then(|v| v.cross_tubes.as_ref()) else {
        // Tubes that nobody knows the places of are openings of which nothing can be proved.
        return vec![Opening {
            id: "cross-tubes.holes".to_owned(),
            hole: None,
            bush: None,
            place: None,
        }];
    };
    let mut found = Vec::new();
    for (tube, i) in crossing.tubes.iter().zip(1..) {
        for (side, turn) in [("right", 0.0), ("left", 180.0)] {
            let around = tube.angle.rad() + Angle::from_deg(turn).rad();
            found.push(Opening {
                id: format!("cross-tube.{i}.{side}"),
                hole: hole.clone(),
                bush: None,
                place: Some(Place {
                    along: shape(tube.along, "the places of the cross tubes"),
                    around: shape(Angle::from_rad(around), "the angles of the cross tubes"),
                }),
            });
        }
    }
    found
}

fn cross_tubes(plan: &Plan, vessel: Option<&LyingVessel>) -> Option<CrossTubes> {
    let it = &plan.boiler.cross_tubes;
    are_crossed(plan).then(|| CrossTubes {
        id: "cross-tubes".to_owned(),
        metal: metal(&it.metal, plan),
        flue: "flue".to_owned(),
        count: it.count.value().map(|n| {
            shape(
                Ratio::from_number(f64::from(n)),
                "the number of the cross tubes",
            )
        }),
        outside: dimension(&it.outside),
        wall: dimension(&it.wall),
        length: vessel
            .and_then(|v| v.cross_tubes.as_ref())
            .map(|c| shape(c.length, "the flue and the reach of the tubes")),
        joint: joint(&it.joint),
        metal_temperature: metal_temperature(plan, Fire::Touches),
    })
}

fn ends(plan: &Plan, vessel: Option<&LyingVessel>) -> Vec<End> {
    let pair = &plan.boiler.end;
    [
        ("end.front", &pair.front, BushSeat::FrontEnd),
        ("end.back", &pair.back, BushSeat::BackEnd),
    ]
    .into_iter()
    .map(|(id, plate, seat)| end((id, plate, seat), plan, vessel))
    .collect()
}

fn end(
    (id, plate, seat): (&str, &TubePlate, BushSeat),
    plan: &Plan,
    vessel: Option<&LyingVessel>,
) -> End {
    let flue = &plan.boiler.flue;
    End {
        id: id.to_owned(),
        metal: metal(&plate.metal, plan),
        thickness: dimension(&plate.thickness),
        closes: "barrel".to_owned(),
        flange: frame::flange(plate, "barrel"),
        shape: EndShape::Annular {
            flue: "flue".to_owned(),
            off: dimension(&flue.below).or_else(|| middle(plan)),
            joint: joint(&flue.joint),
        },
        stayed: stayed(plan, vessel),
        openings: bushes_on(plan, seat),
        // Gas that has left the flue turns at the one, the burner glows at the other.
        metal_temperature: metal_temperature(plan, Fire::Touches),
    }
}

/// A flue of which no distance from the middle was ever named stands in the middle.
fn middle(plan: &Plan) -> Option<Dimension> {
    let entry = &plan.boiler.flue.below;
    let none = Length::from_m(0.0);
    let mut size = Size::drawn(none, "in the middle");
    size.tolerance = Some(Tolerance {
        lower: none,
        upper: none,
    });
    entry.is_absent().then(|| Dimension {
        field: entry.path().to_owned(),
        size,
        removed: Removed::Nothing,
    })
}

/// The widest bare field of an end among its stays; `None` where it has none. The wall of the barrel
/// and that of the flue hold it too.
fn stayed(plan: &Plan, vessel: Option<&LyingVessel>) -> Option<Bare> {
    let vessel = vessel?;
    let stays = hung::places(plan).filter(|all| !all.is_empty())?;
    let mut held = vec![Support {
        at_mm: (-vessel.flue.below.mm(), 0.0),
        radius_mm: vessel.flue.outside.mm() / 2.0,
    }];
    held.extend(stays.into_iter().map(|at_mm| Support {
        at_mm,
        radius_mm: 0.0,
    }));
    let edge = vessel.front_field.outer.value.mm() / 2.0;
    let widest = proof::empty_circle(&held, edge)?;
    let of = "the end among stays, flue and barrel";
    Some(Bare {
        circle: shape(Length::from_mm(widest.circle_mm), of),
        side: shape(Length::from_mm(widest.side_mm), of),
    })
}

fn stay(it: &Planned, plan: &Plan, vessel: Option<&LyingVessel>) -> Stay {
    let id = it.id.get().map_or_else(|| it.id.path(), String::as_str);
    let pair = &plan.boiler.end;
    let field = vessel.and_then(|v| {
        let wall = hung::flue_wall(v.flue.outside / 2.0, v.flue.below);
        hung::among(it, plan, &wall, v.front_field.outer.value / 2.0)
    });
    Stay {
        id: format!("stay.{id}"),
        metal: metal(&it.metal, plan),
        run: StayRun::EndToEnd,
        diameter: dimension(&it.diameter),
        bore: dimension(&it.bore),
        field,
        plate: frame::thinner([&pair.front.thickness, &pair.back.thickness].map(dimension)),
        ends: frame::stay_ends(it),
        // The plan does not say how far the filler of a stay can be seen: the worse is taken.
        joint: Joint::Blind,
        beside: section(plan),
        length: vessel.map(|v| v.between_ends.clone()),
        height: None,
        metal_temperature: metal_temperature(plan, Fire::Touches),
    }
}

/// Section of the barrel, at its thickest.
fn section(plan: &Plan) -> Option<Known<Area>> {
    let b = &plan.boiler.barrel;
    let wall = b.wall.get()?.for_proof(Bad::Large).mm();
    let mean = match b.outside.get() {
        Some(outside) => outside.for_proof(Bad::Large).mm() - wall,
        None => b.bore.get()?.for_proof(Bad::Large).mm() + wall,
    };
    Some(shape(
        Area::from_mm2(PI * mean * wall),
        "the wall of the barrel",
    ))
}
