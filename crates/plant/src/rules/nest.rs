//! Rules of the tubes and of the holes in their plates.

use plan::Plan;
use plan::section::{Bush, BushSeat};
use reckoning::quantity::Length;
use reckoning::{Finding, Verdict};

use super::list::{HOLE_CLEAR_OF_BEND, LIGAMENT, TUBE_TOUCHES, TUBES_FIT};
use super::{Held, limit, said, words};
use crate::known::{shape, weakest};
use crate::layout::At;
use crate::part::{Plate, Shape};
use crate::vertical::{Built, Frame, Nest, Sizes};

/// Least ligament of a brazed tube plate, mm, where the plate is no thicker.
const LIGAMENT_MM: f64 = 2.5;

pub(super) fn findings(plan: &Plan, built: &Built) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(nest) = &built.nest {
        found.push(fit(nest));
        found.push(touches(plan, built, nest));
    }
    for id in ["tube-plate.upper", "tube-plate.lower"] {
        let part = built.parts.iter().find(|p| p.id == id);
        if let (Some(Shape::Plate(plate)), Some(sizes)) = (part.map(|p| &p.shape), &built.sizes) {
            found.extend(ligament(id, plate, sizes));
            found.extend(bend(id, plate, sizes));
        }
    }
    found
}

fn fit(nest: &Nest) -> Finding {
    let asked = nest.count.value as usize;
    let says = format!(
        "{asked} tubes are asked for; {} places keep the limits.",
        nest.fit
    );
    let good = asked <= nest.fit && asked > 0;
    let mut finding = said(
        &TUBES_FIT,
        "tubes",
        if good { Verdict::Met } else { Verdict::NotMet },
        says,
    );
    finding.weakest_origin = nest.count.given.origin();
    if !good {
        finding.remedy = Some(format!("{} At most {} tubes.", TUBES_FIT.remedy, nest.fit));
    }
    finding
}

fn thickness<'a>(id: &str, sizes: &'a Sizes) -> Option<&'a reckoning::Known<Length>> {
    let plate = if id == "tube-plate.upper" {
        &sizes.upper
    } else {
        &sizes.lower
    };
    plate.as_ref().map(|p| &p.thickness)
}

fn ligament(id: &str, plate: &Plate, sizes: &Sizes) -> Option<Finding> {
    let narrowest = plate.ligaments().into_iter().next()?;
    let thick = thickness(id, sizes)?;
    let required = if thick.value.mm() > LIGAMENT_MM {
        thick.clone()
    } else {
        limit(LIGAMENT_MM)
    };
    let of = format!(
        "between the holes of {} and {}",
        narrowest.first, narrowest.second
    );
    let tube = sizes.tube.as_ref().map(|t| &t.outside);
    let origin = tube.map_or(thick.given.origin(), |t| weakest(&[thick, t]));
    let finding = Held {
        rule: &LIGAMENT,
        place: id,
        provided: (
            "b",
            &format!("the narrowest metal, {of},"),
            shape(narrowest.width, of.clone(), origin),
        ),
        required: ("b_min", "least ligament", required),
    };
    Some(finding.judged())
}

fn bend(id: &str, plate: &Plate, sizes: &Sizes) -> Option<Finding> {
    plate.flange?;
    let thick = thickness(id, sizes)?;
    let (hole, edge) = plate
        .holes
        .iter()
        .map(|hole| (hole, plate.edge_of(hole)))
        .min_by(|a, b| a.1.mm().total_cmp(&b.1.mm()))?;
    let of = format!("from the hole of {} to the bend", hole.id);
    let finding = Held {
        rule: &HOLE_CLEAR_OF_BEND,
        place: id,
        provided: (
            "c",
            &format!("the flat {of}"),
            shape(edge, of.clone(), thick.given.origin()),
        ),
        required: ("t", "one thickness of the plate", thick.clone()),
    };
    Some(finding.judged())
}

/// Bushes that reach into the barrel, upright stays and bushes in the plates, against the tubes.
fn touches(plan: &Plan, built: &Built, nest: &Nest) -> Finding {
    let mut clear: Vec<(String, f64)> = built
        .parts
        .iter()
        .filter_map(|part| match &part.shape {
            Shape::Plate(plate) => Some(plate),
            _ => None,
        })
        .flat_map(|plate| plate_clear(plate, nest))
        .collect();
    if let Some(frame) = &built.frame {
        let bushes = plan.boiler.bushes.iter();
        clear.extend(bushes.filter_map(|bush| bush_clear(bush, frame, nest)));
    }
    match clear.into_iter().min_by(|a, b| a.1.total_cmp(&b.1)) {
        Some((id, least)) => {
            let says = format!(
                "The nearest to a tube is {id}: {} clear.",
                words(Length::from_mm(least))
            );
            let good = least > 0.0;
            let verdict = if good { Verdict::Met } else { Verdict::NotMet };
            said(&TUBE_TOUCHES, &id, verdict, says)
        }
        None => said(
            &TUBE_TOUCHES,
            "tubes",
            Verdict::Met,
            "No bush or stay stands among the tubes.".to_owned(),
        ),
    }
}

/// What else passes a plate, and how far it stands clear of the nearest tube, mm.
fn plate_clear(plate: &Plate, nest: &Nest) -> Vec<(String, f64)> {
    let others = plate.holes.iter().filter(|h| !h.id.starts_with("tube."));
    others
        .filter_map(|hole| {
            let at = At {
                x: hole.x,
                y: hole.y,
            };
            let radii = (nest.outside.value + hole.diameter) / 2.0;
            let clear = nest.tubes.iter().map(|tube| (at.from(*tube) - radii).mm());
            Some((hole.id.clone(), clear.min_by(f64::total_cmp)?))
        })
        .collect()
}

/// How far the inner end of a bush in the barrel stands clear of the nearest tube, mm, where it
/// stands between the plates. Where no angle is given, the nearest tube all round counts.
fn bush_clear(bush: &Bush, frame: &Frame, nest: &Nest) -> Option<(String, f64)> {
    let (id, reach) = (bush.id.get()?, bush.length_in.likely()?.value.mm());
    let (height, outside) = (bush.height.value()?.mm(), bush.outside.likely()?.value.mm());
    if bush.on.value() != Some(BushSeat::Barrel) || height <= frame.lower.high() {
        return None;
    }
    let tube = nest.outside.value.mm() / 2.0;
    let end = frame.barrel - reach;
    let clear = |at: &At| match bush.angle.value() {
        Some(angle) => {
            let along = At::polar(Length::from_mm(1.0), angle);
            let (x, y) = (along.x.mm(), along.y.mm());
            let out = at.x.mm() * x + at.y.mm() * y;
            let aside = (at.x.mm() * y - at.y.mm() * x).abs();
            // The bush begins at its end and runs outwards from there.
            let short = if out < end { end - out } else { 0.0 };
            short.hypot(aside) - tube - outside / 2.0
        }
        None => end - at.radius().mm() - tube,
    };
    let least = nest.tubes.iter().map(clear).min_by(f64::total_cmp)?;
    Some((format!("bush.{id}"), least))
}
