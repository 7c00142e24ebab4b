//! What the fire and the proof must know of the plant's geometry.

use plant::Plant;
use plant::layout::Pattern;
use reckoning::quantity::{Length, Quantity};
use reckoning::{Given, Known, Origin};

use crate::fire::Geometry;
use crate::proof_door::PlateGeometry;

/// The geometry of the fire; `None` where a part of it is not known.
#[must_use]
pub(crate) fn of_fire(plan: &plan::Plan, plant: &Plant) -> Option<Geometry> {
    let nest = plant.nest.as_ref()?;
    let smokebox = &plan.smokebox;
    let outside = smokebox.outside.likely()?.value;
    let wall = smokebox.wall.likely()?.value;
    let water = plant.water.as_ref()?;
    Some(Geometry {
        // As many as can stand: more asked for is a finding of its own.
        tubes: nest.tubes.len() as f64,
        tube_length_m: nest.length.as_ref()?.value.si(),
        firebox_m2: plant.surfaces.firebox()?.value.si(),
        water_surface_m2: water.surface.value.si(),
        steam_space_m: (water.extent().1 - water.level.value).si(),
        smokebox_m: (outside - wall * 2.0).si(),
        firebox_bore_m: bore(&plan.boiler.firebox.outside, &plan.boiler.firebox.wall),
    })
}

/// Inside of a round shell, m.
fn bore(
    outside: &plan::Entry<reckoning::Size>,
    wall: &plan::Entry<reckoning::Size>,
) -> Option<f64> {
    Some((outside.likely()?.value - wall.likely()?.value * 2.0).si())
}

/// The geometry of the plates and what they hold; `None` where the nest is not known.
#[must_use]
pub(crate) fn of_plates(plant: &Plant) -> Option<PlateGeometry> {
    let nest = plant.nest.as_ref()?;
    let at: Vec<(f64, f64)> = nest.tubes.iter().map(|at| (at.x.mm(), at.y.mm())).collect();
    let field =
        proof::widest_field(&at).map_or(proof::Field::Even, |widest| proof::Field::Gapped {
            circle: off_the_shape(widest.circle_mm, "the widest bare circle among the tubes"),
            side: off_the_shape(widest.side_mm, "the middle side of its three tubes"),
        });
    Some(PlateGeometry {
        layout: match nest.pattern {
            Pattern::Squares { .. } => proof::Layout::Square,
            _ => proof::Layout::Triangle,
        },
        field,
        tubes: nest.tubes.len(),
        leg: plant.water.as_ref().map(|water| water.leg.clone()),
        upper_margin: nest.upper_margin.clone(),
        lower_margin: nest.lower_margin.clone(),
        tube_length: nest.between_plates.clone(),
        firebox_length: plant.firebox_length.clone(),
    })
}

fn off_the_shape(mm: f64, of: &str) -> Known<Length> {
    Known {
        value: Length::from_mm(mm),
        given: Given::Shape {
            of: of.to_owned(),
            weakest: Origin::Read,
        },
    }
}
