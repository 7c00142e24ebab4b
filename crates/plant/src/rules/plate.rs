//! Rules of plates that close a tube: their flanges and their holes.

use reckoning::quantity::Length;
use reckoning::{Finding, Known, Verdict};

use super::list::{FLANGE, HOLE_CLEAR_OF_BEND, LIGAMENT};
use super::{Held, limit, said, words};
use crate::boiler::{Built, PlateSizes, Standing};
use crate::known::{shape, weakest};
use crate::part::{Plate, Shape};

/// Least ligament of a brazed plate, mm, where the plate is no thicker.
pub(super) const LIGAMENT_MM: f64 = 2.5;

pub(super) fn flange((id, plate): (&str, &Standing)) -> Option<Finding> {
    plate.flange?;
    let lap = plate.lap();
    let verdict = if lap > 0.0 {
        Verdict::Met
    } else {
        Verdict::NotMet
    };
    let says = format!(
        "The straight of the flange is {} high.",
        words(Length::from_mm(lap))
    );
    Some(said(&FLANGE, id, verdict, says))
}

/// The metal between the holes of a plate and between holes and bend; `wide` is the size of the
/// tubes that pass it.
pub(super) fn holes(
    built: &Built,
    (id, sizes): (&str, Option<&PlateSizes>),
    wide: Option<&Known<Length>>,
) -> Vec<Finding> {
    let part = built.parts.iter().find(|part| part.id == id);
    let (Some(Shape::Plate(plate)), Some(sizes)) = (part.map(|part| &part.shape), sizes) else {
        return Vec::new();
    };
    let thick = &sizes.thickness;
    let between = ligament(id, plate, (thick, wide));
    between.into_iter().chain(bend(id, plate, thick)).collect()
}

fn ligament(
    id: &str,
    plate: &Plate,
    (thick, wide): (&Known<Length>, Option<&Known<Length>>),
) -> Option<Finding> {
    let narrowest = plate.ligaments().into_iter().next()?;
    let required = if thick.value.mm() > LIGAMENT_MM {
        thick.clone()
    } else {
        limit(LIGAMENT_MM)
    };
    let of = format!(
        "between the holes of {} and {}",
        narrowest.first, narrowest.second
    );
    let origin = wide.map_or(thick.given.origin(), |wide| weakest(&[thick, wide]));
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

fn bend(id: &str, plate: &Plate, thick: &Known<Length>) -> Option<Finding> {
    plate.flange?;
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
