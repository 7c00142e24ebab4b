//! What the fire and the proof must know of the plant's geometry.

use plant::layout::Pattern;
use plant::{CrossTube, LyingVessel, Plant};
use reckoning::quantity::{Length, Quantity};
use reckoning::{Given, Known, Origin};

use crate::fire::{CrossWay, FlueWay, Geometry, TubeWay, Way};
use crate::proof_door::PlateGeometry;

/// The geometry of the fire; `None` where a part of it is not known.
#[must_use]
pub(crate) fn of_fire(plan: &plan::Plan, plant: &Plant) -> Option<Geometry> {
    let smokebox_m = bore(&plan.smokebox.outside, &plan.smokebox.wall);
    let way = match &plant.lying {
        Some(lying) => Way::Flue(flue(lying)?),
        None => {
            // Over a coal fire there is no chimney without a smokebox.
            smokebox_m?;
            Way::Tubes(tubes(plan, plant)?)
        }
    };
    let water = plant.water.as_ref()?;
    Some(Geometry {
        water_surface_m2: water.surface.value.si(),
        steam_space_m: (water.extent().1 - water.level.value).si(),
        smokebox_m,
        way,
    })
}

fn tubes(plan: &plan::Plan, plant: &Plant) -> Option<TubeWay> {
    let nest = plant.nest.as_ref()?;
    Some(TubeWay {
        // As many as can stand: more asked for is a finding of its own.
        tubes: nest.tubes.len() as f64,
        tube_length_m: nest.length.as_ref()?.value.si(),
        firebox_m2: plant.surfaces.firebox()?.value.si(),
        firebox_bore_m: bore(&plan.boiler.firebox.outside, &plan.boiler.firebox.wall),
        firebox_height_m: plant.firebox_length.as_ref().map(|l| l.value.si()),
    })
}

/// The flue with the tubes across it, measured from its mouth.
fn flue(lying: &LyingVessel) -> Option<FlueWay> {
    let (flue, cross) = (&lying.flue, lying.cross_tubes.as_ref()?);
    let along = |tube: &CrossTube| (tube.along - flue.mouth).si();
    let first = cross.tubes.first().map(along);
    let second = cross.tubes.get(1).map(along);
    let cross = first.map(|first_m| CrossWay {
        count: u32::try_from(cross.tubes.len()).unwrap_or(u32::MAX),
        outside_m: cross.outside.si(),
        first_m,
        spacing_m: second.map_or(0.0, |second_m| second_m - first_m),
    });
    Some(FlueWay {
        bore_m: flue.bore.si(),
        length_m: flue.length.si(),
        cross,
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
        at_mm: at,
        vessel: plant.vessel,
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
