//! Rules of the fire tubes.

use plan::Plan;
use plan::section::{Bush, BushSeat};
use reckoning::quantity::Length;
use reckoning::{Finding, Verdict};

use super::list::{TUBE_TOUCHES, TUBES_FIT};
use super::{plate, said, words};
use crate::boiler::Built;
use crate::layout::At;
use crate::part::{Plate, Shape};
use crate::vertical::{Frame, Nest, Upright};

pub(super) fn findings(plan: &Plan, built: &Built, upright: &Upright) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(nest) = &upright.nest {
        found.push(fit(nest));
        found.push(touches(plan, built, upright, nest));
    }
    let sizes = &upright.sizes;
    let tube = sizes.tube.as_ref().map(|tube| &tube.outside);
    let plates = [
        ("tube-plate.upper", &sizes.upper),
        ("tube-plate.lower", &sizes.lower),
    ];
    for (id, plate) in plates {
        found.extend(plate::holes(built, (id, plate.as_ref()), tube));
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

/// Bushes that reach into the barrel, upright stays and bushes in the plates, against the tubes.
fn touches(plan: &Plan, built: &Built, upright: &Upright, nest: &Nest) -> Finding {
    let mut clear: Vec<(String, f64)> = built
        .parts
        .iter()
        .filter_map(|part| match &part.shape {
            Shape::Plate(plate) => Some(plate),
            _ => None,
        })
        .flat_map(|plate| plate_clear(plate, nest))
        .collect();
    if let Some(frame) = &upright.frame {
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
