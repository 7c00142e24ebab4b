//! Rules of a horizontal boiler: ends, flue, cross tubes, bushes along the barrel, burner.

use std::f64::consts::FRAC_PI_2;

use plan::Plan;
use plan::section::{Bush, BushSeat, StayRun};
use reckoning::quantity::{Angle, DEGREE, Length, Quantity, show};
use reckoning::{Finding, Known, Verdict};

use super::list::{
    BURNER_FITS, BUSH_CLEAR, CROSS_TUBE_BORE, CROSS_TUBE_DROWNED, CROSS_TUBE_ENDS,
    CROSS_TUBE_PASSES, CROSS_TUBE_SLOPE, CROSS_TUBES_APART, ENDS_STAND, FLUE_CLEAR, STAY_CLEAR,
};
use super::plate::LIGAMENT_MM;
use super::{Held, limit, plate, room, said, words};
use crate::boiler::{Built, Standing};
use crate::horizontal::{CrossAt, Crossing, Frame, Lying, Sizes};
use crate::part::{Shape, Stands};

/// Least water round the flue, mm.
const CLEAR_MM: f64 = 5.0;
/// Least slope of a cross tube.
const SLOPE_DEG: f64 = 10.0;
/// Least bore of a cross tube, mm.
const BORE_MM: f64 = 4.5;

pub(super) fn findings(plan: &Plan, built: &Built, lying: &Lying) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(frame) = &lying.drawn {
        found.extend(vessel(&lying.sizes, frame));
        if let Some(crossing) = &lying.crossing {
            found.extend(tubes(&lying.sizes, frame, crossing));
            found.extend(bushes(plan, built, (frame, crossing)));
            found.extend(stays(plan, frame, crossing));
            found.extend(burner(plan, frame, crossing));
        }
    }
    let flue = lying.sizes.flue.as_ref().map(|flue| &flue.outside);
    let ends = [
        ("end.front", &lying.sizes.front),
        ("end.back", &lying.sizes.back),
    ];
    for (id, end) in ends {
        found.extend(plate::holes(built, (id, end.as_ref()), flue));
    }
    found
}

fn vessel(sizes: &Sizes, frame: &Frame) -> Vec<Finding> {
    let mut found = vec![stands(frame)];
    let ends = [("end.front", &frame.front), ("end.back", &frame.back)];
    found.extend(ends.into_iter().filter_map(plate::flange));
    let clear = Held {
        rule: &FLUE_CLEAR,
        place: "flue",
        provided: ("w", "the least water round the flue", frame.clear_known()),
        required: ("w_min", "least width", limit(CLEAR_MM)),
    };
    found.push(clear.judged());
    let lowest = sizes.lowest.as_ref();
    found.push(room::cover("flue", &frame.crown_known(), lowest));
    if let Some(working) = &sizes.working {
        let top = frame.axis() + frame.barrel;
        found.push(room::level(
            working,
            lowest,
            ("the top of the barrel inside", top),
        ));
    }
    found
}

fn stands(frame: &Frame) -> Finding {
    let mm = |v: f64| words(Length::from_mm(v));
    let (front, back) = (wet_front(&frame.front), wet_back(&frame.back));
    let good = front < back && frame.clear() > 0.0 && frame.flue_bore > 0.0;
    let says = format!(
        "From the front of the barrel: last metal of the front end {}, first metal of the back end {}; the flue is {} wide in a barrel of {}, {} below its middle.",
        mm(front),
        mm(back),
        mm(2.0 * frame.flue),
        mm(2.0 * frame.barrel),
        mm(frame.below)
    );
    said(&ENDS_STAND, "barrel", verdict(good), says)
}

/// Where the metal of the front end ends towards the water.
fn wet_front(end: &Standing) -> f64 {
    match end.flange {
        Some((Stands::Up, ..)) => end.extent().1,
        Some((Stands::Down, ..)) | None => end.high(),
    }
}

/// Where the metal of the back end begins from the water.
fn wet_back(end: &Standing) -> f64 {
    match end.flange {
        Some((Stands::Down, ..)) => end.extent().0,
        Some((Stands::Up, ..)) | None => end.low,
    }
}

fn tubes(sizes: &Sizes, frame: &Frame, crossing: &Crossing) -> Vec<Finding> {
    if crossing.tubes.is_empty() {
        return Vec::new();
    }
    let mut found = vec![passes(frame, crossing)];
    found.extend(sizes.across().map(|across| bore(&across.round.bore)));
    found.extend(apart(frame, crossing));
    found.extend(slope(crossing));
    found.extend(ends(frame, crossing));
    found.extend(drowned(sizes, frame, crossing));
    found
}

fn passes(frame: &Frame, crossing: &Crossing) -> Finding {
    let says = format!(
        "A cross tube of {} stands in a flue of {}; beside it {:.0} mm² are left.",
        words(Length::from_mm(2.0 * crossing.outside)),
        words(Length::from_mm(2.0 * frame.flue_bore)),
        crossing.beside(frame)
    );
    let good = crossing.passes(frame);
    said(&CROSS_TUBE_PASSES, "cross-tubes", verdict(good), says)
}

fn bore(bore: &Known<Length>) -> Finding {
    Held {
        rule: &CROSS_TUBE_BORE,
        place: "cross-tubes",
        provided: ("d_i", "the bore of a cross tube", bore.clone()),
        required: ("d_min", "least bore", limit(BORE_MM)),
    }
    .judged()
}

fn apart(frame: &Frame, crossing: &Crossing) -> Option<Finding> {
    let ends = crossing.clear_of_ends(frame)?;
    let (least, of) = match crossing.apart() {
        Some(apart) if apart < ends => (apart, "between neighbouring cross tubes"),
        _ => (ends, "between a cross tube and an end"),
    };
    let held = Held {
        rule: &CROSS_TUBES_APART,
        place: "cross-tubes",
        provided: ("b", &format!("the least {of}"), crossing.known(least, of)),
        required: ("b_min", "the least metal between holes", limit(LIGAMENT_MM)),
    };
    Some(held.judged())
}

fn slope(crossing: &Crossing) -> Option<Finding> {
    let (tube, slope) = crossing.flattest()?;
    let degrees = |rad: f64| show::quantity(rad, &DEGREE, 3);
    let least = Angle::from_deg(SLOPE_DEG).si();
    let says = format!(
        "The flattest is cross-tube.{} with {}; asked are {}.",
        tube + 1,
        degrees(slope),
        degrees(least)
    );
    // A slope turned step by step misses a whole number of degrees by the last digits of a float.
    let good = slope >= least - 1e-9;
    Some(said(&CROSS_TUBE_SLOPE, "cross-tubes", verdict(good), says))
}

fn ends(frame: &Frame, crossing: &Crossing) -> Option<Finding> {
    let (tube, clear) = crossing.clear_of_barrel(frame)?;
    let of = format!("from the end of cross-tube.{} to the barrel", tube + 1);
    let quarter = "a quarter of its bore, so that the way in is no narrower than the tube";
    let held = Held {
        rule: &CROSS_TUBE_ENDS,
        place: "cross-tubes",
        provided: ("c", &format!("the way {of}"), crossing.known(clear, &of)),
        required: (
            "c_min",
            quarter,
            crossing.known(crossing.bore / 2.0, quarter),
        ),
    };
    Some(held.judged())
}

fn drowned(sizes: &Sizes, frame: &Frame, crossing: &Crossing) -> Option<Finding> {
    let (lowest, highest) = (sizes.lowest.as_ref()?, crossing.highest(frame)?);
    let says = format!(
        "The highest end of a cross tube stands {} above the datum, the lowest water {}.",
        words(Length::from_mm(highest)),
        words(lowest.value)
    );
    let good = lowest.value.mm() > highest;
    Some(said(
        &CROSS_TUBE_DROWNED,
        "cross-tubes",
        verdict(good),
        says,
    ))
}

/// Bushes in the barrel against flue, cross tubes, ends and each other.
fn bushes(plan: &Plan, built: &Built, (frame, crossing): (&Frame, &Crossing)) -> Option<Finding> {
    let bushes = plan.boiler.bushes.iter();
    let mut clear: Vec<(String, f64)> = bushes
        .filter_map(|bush| bush_clear(bush, frame, crossing))
        .collect();
    let barrel = built.parts.iter().find(|part| part.id == "barrel");
    if let Some(Shape::Shell(barrel)) = barrel.map(|part| &part.shape) {
        let between = barrel.ligaments().into_iter();
        clear.extend(between.map(|l| (format!("{} and {}", l.first, l.second), l.width.mm())));
    }
    let (id, least) = clear.into_iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
    let says = format!(
        "The nearest to flue, cross tubes, ends or another bush: {id}, {} clear.",
        words(Length::from_mm(least))
    );
    let place = id.split(' ').next().unwrap_or(&id);
    Some(said(&BUSH_CLEAR, place, verdict(least > 0.0), says))
}

/// How far a bush in the barrel stands clear of flue, cross tubes and ends, mm. Where no angle is
/// given, the nearest all round counts.
fn bush_clear(bush: &Bush, frame: &Frame, crossing: &Crossing) -> Option<(String, f64)> {
    let (id, along) = (bush.id.get()?, bush.along.value()?.mm());
    if bush.on.value() != Some(BushSeat::Barrel) {
        return None;
    }
    let half = bush.outside.likely()?.value.mm() / 2.0;
    let reach = bush.length_in.likely().map_or(0.0, |l| l.value.mm());
    let front = along - half - wet_front(&frame.front);
    let back = wet_back(&frame.back) - along - half;
    let over_tube = |tube: &CrossAt| (tube.along - along).abs() < half + crossing.outside;
    // The ends of a tube stand out of the flue all round, wherever it is turned.
    let round = if crossing.tubes.iter().any(over_tube) {
        crossing.half
    } else {
        frame.flue
    };
    let end = frame.barrel - reach;
    let (short, aside) = match bush.angle.value() {
        Some(angle) => {
            let (sine, cosine) = angle.rad().sin_cos();
            (
                end + frame.below * cosine,
                (frame.below * sine).abs() - half,
            )
        }
        None => (end - frame.below, 0.0),
    };
    let inner = short.max(0.0).hypot(aside.max(0.0)) - round;
    Some((format!("bush.{id}"), inner.min(front).min(back)))
}

/// Stays from end to end against what stands across the barrel.
fn stays(plan: &Plan, frame: &Frame, crossing: &Crossing) -> Option<Finding> {
    let stays = plan.boiler.stays.iter();
    let tied = stays.filter(|stay| stay.run.value() == Some(StayRun::PlateToPlate));
    let clear = tied.filter_map(|stay| {
        let id = stay.id.get()?;
        let half = stay.diameter.likely()?.value.mm() / 2.0;
        let (sine, cosine) = stay.angle.value()?.rad().sin_cos();
        let reach = stay.radius.value()?.mm();
        let at = (reach * sine, reach * cosine);
        let tubes = crossing.tubes.iter().map(|tube| {
            let sides = (-crossing.half, crossing.half);
            // The flue lies below the middle of the barrel.
            let middle = (at.0, at.1 + frame.below);
            beside(middle, tube.angle, (sides, crossing.outside))
        });
        let bushes = plan.boiler.bushes.iter().filter_map(|bush| {
            let half = bush.outside.likely()?.value.mm() / 2.0;
            let reach = bush.length_in.likely()?.value.mm();
            let angle = FRAC_PI_2 - bush.angle.value()?.rad();
            let on_barrel = bush.on.value() == Some(BushSeat::Barrel);
            let sides = (frame.barrel - reach, frame.barrel);
            on_barrel.then(|| beside(at, angle, (sides, half)))
        });
        let least = tubes.chain(bushes).min_by(f64::total_cmp)?;
        Some((format!("stay.{id}"), least - half))
    });
    let (id, least) = clear.min_by(|a, b| a.1.total_cmp(&b.1))?;
    let says = format!(
        "The nearest to a cross tube or a bush of the barrel: {id}, {} clear.",
        words(Length::from_mm(least))
    );
    Some(said(&STAY_CLEAR, &id, verdict(least > 0.0), says))
}

/// Distance of a point from a bar that runs from `sides.0` to `sides.1` at an angle, `half` wide to
/// either side, mm.
fn beside(point: (f64, f64), angle: f64, (sides, half): ((f64, f64), f64)) -> f64 {
    let (sine, cosine) = angle.sin_cos();
    let along = point.0 * cosine + point.1 * sine;
    let across = (point.1 * cosine - point.0 * sine).abs();
    let short = (sides.0 - along).max(along - sides.1).max(0.0);
    short.hypot((across - half).max(0.0))
}

/// A poker in the flue, before the first cross tube.
fn burner(plan: &Plan, frame: &Frame, crossing: &Crossing) -> Option<Finding> {
    let poker = &plan.burner.poker;
    let (outside, length) = (poker.outside.likely()?, poker.length.likely()?);
    let first = crossing
        .tubes
        .first()
        .map(|tube| tube.along - crossing.outside);
    let way = first.unwrap_or(frame.back.high()) - frame.mouth();
    let says = format!(
        "The burner is {} wide and its ports reach {} into a flue of {}; {} of it are bare.",
        words(outside.value),
        words(length.value),
        words(Length::from_mm(2.0 * frame.flue_bore)),
        words(Length::from_mm(way))
    );
    let good = outside.value.mm() < 2.0 * frame.flue_bore && length.value.mm() < way;
    let mut finding = said(&BURNER_FITS, "burner", verdict(good), says);
    finding.weakest_origin = crossing.weakest;
    Some(finding)
}

fn verdict(good: bool) -> Verdict {
    if good { Verdict::Met } else { Verdict::NotMet }
}
