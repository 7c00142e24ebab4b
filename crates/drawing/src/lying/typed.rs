//! What the maker wrote for a dimension of a horizontal boiler.

use std::collections::BTreeMap;

use plan::{Entry, Plan};
use reckoning::Size;
use reckoning::quantity::{Angle, Length};

use crate::boiler::{length_typed, size_typed};

/// The texts, by the name of the dimension.
pub(super) fn typed(plan: &Plan) -> BTreeMap<String, String> {
    sizes(plan).chain(places(plan)).collect()
}

fn sizes(plan: &Plan) -> impl Iterator<Item = (String, String)> {
    let b = &plan.boiler;
    let (flue, tubes) = (&b.flue, &b.cross_tubes);
    let sizes: [(&'static str, &Entry<Size>); 18] = [
        ("outside diameter of the barrel", &b.barrel.outside),
        ("inside diameter of the barrel", &b.barrel.bore),
        ("wall of the barrel", &b.barrel.wall),
        ("length of the barrel", &b.barrel.length),
        ("outside diameter of the flue", &flue.outside),
        ("inside diameter of the flue", &flue.bore),
        ("wall of the flue", &flue.wall),
        ("flue below the middle", &flue.below),
        ("thickness of the front end", &b.end.front.thickness),
        ("thickness of the back end", &b.end.back.thickness),
        ("outside diameter of a cross tube", &tubes.outside),
        ("wall of a cross tube", &tubes.wall),
        ("first cross tube", &tubes.first),
        ("spacing of the cross tubes", &tubes.spacing),
        ("outside diameter of the burner", &plan.burner.poker.outside),
        ("length of the ports", &plan.burner.poker.length),
        ("bore of the chimney", &plan.chimney.choke),
        ("outside diameter of the smokebox", &plan.smokebox.outside),
    ];
    sizes
        .into_iter()
        .filter_map(|(name, entry)| Some((name.to_owned(), size_typed(entry.get()?))))
}

/// Levels, angles, and where bushes stand.
fn places(plan: &Plan) -> impl Iterator<Item = (String, String)> {
    let (b, tubes) = (&plan.boiler, &plan.boiler.cross_tubes);
    let levels: [(&'static str, &Entry<Length>); 2] = [
        ("height of the water level", &b.water_level.working),
        ("height of the lowest water", &b.water_level.lowest),
    ];
    let angles: [(&'static str, &Entry<Angle>); 2] = [
        ("incline of the first cross tube", &tubes.incline),
        ("turn of the cross tubes", &tubes.turn),
    ];
    let levels = levels
        .into_iter()
        .filter_map(|(name, entry)| Some((name.to_owned(), length_typed(entry.typed()?))));
    let angles = angles
        .into_iter()
        .filter_map(|(name, entry)| Some((name.to_owned(), entry.typed()?.text.clone())));
    let bushes = b.bushes.iter().flat_map(|bush| {
        let id = bush.id.get().map_or("", String::as_str);
        let along = bush.along.typed().map(length_typed);
        let angle = bush.angle.typed().map(|angle| angle.text.clone());
        let place = along.map(|text| (format!("place of bush.{id}"), text));
        let turned = angle.map(|text| (format!("angle of bush.{id}"), text));
        place.into_iter().chain(turned)
    });
    levels.chain(angles).chain(bushes)
}
