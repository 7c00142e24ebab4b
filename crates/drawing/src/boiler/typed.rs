//! What the maker wrote for a dimension: inches and gauge numbers stay as they were typed,
//! millimetres lose their unit, which the title gives.

use std::collections::BTreeMap;

use plan::{Entry, Plan};
use reckoning::quantity::Length;
use reckoning::{Size, Tolerance, Typed};

use crate::lettering::figure;

/// The texts, by the name of the dimension.
pub(super) fn typed(plan: &Plan) -> BTreeMap<String, String> {
    let b = &plan.boiler;
    let plates = &b.tube_plate;
    let sizes: [(&'static str, &Entry<Size>); 16] = [
        ("outside diameter of the barrel", &b.barrel.outside),
        ("inside diameter of the barrel", &b.barrel.bore),
        ("wall of the barrel", &b.barrel.wall),
        ("length of the barrel", &b.barrel.length),
        ("outside diameter of the firebox", &b.firebox.outside),
        ("inside diameter of the firebox", &b.firebox.bore),
        ("wall of the firebox", &b.firebox.wall),
        ("height of the firebox", &b.firebox.height),
        ("height of the foundation ring", &b.foundation_ring.depth),
        ("thickness of the upper tube plate", &plates.upper.thickness),
        ("thickness of the lower tube plate", &plates.lower.thickness),
        ("outside diameter of a tube", &b.tubes.outside),
        ("wall of a tube", &b.tubes.wall),
        ("opening of the firehole", &b.firehole.bore),
        ("bore of the nozzle", &plan.blast.nozzle),
        ("bore of the chimney", &plan.chimney.choke),
    ];
    let heights: [(&'static str, &Entry<Length>); 3] = [
        ("height of the grate", &plan.grate.height),
        ("height of the water level", &b.water_level.working),
        ("height of the firehole", &b.firehole.height),
    ];
    let sizes = sizes
        .into_iter()
        .filter_map(|(name, entry)| Some((name.to_owned(), size(entry.get()?))));
    let heights = heights
        .into_iter()
        .filter_map(|(name, entry)| Some((name.to_owned(), words(entry.typed()?))));
    let bushes = b.bushes.iter().filter_map(|bush| {
        let name = format!("height of bush.{}", bush.id.get()?);
        Some((name, words(bush.height.typed()?)))
    });
    sizes.chain(heights).chain(bushes).collect()
}

/// A size in the maker's words, with its tolerance.
pub(crate) fn size(size: &Size) -> String {
    let mut text = words(&size.drawn);
    if let Some(tolerance) = size.tolerance {
        text += &within(tolerance, in_millimetres(&size.drawn.text));
    }
    text
}

/// A tolerance behind its size; its unit is written where that of the size is another.
fn within(t: Tolerance, same_unit: bool) -> String {
    let unit = if same_unit { "" } else { " mm" };
    let (up, down) = (figure(t.upper), figure(t.lower * -1.0));
    if up == down {
        format!(" ±{up}{unit}")
    } else {
        format!(" +{up}/−{down}{unit}")
    }
}

/// A length in the maker's words.
pub(crate) fn words(typed: &Typed<Length>) -> String {
    if in_millimetres(&typed.text) {
        figure(typed.value)
    } else {
        typed.text.trim().to_owned()
    }
}

fn in_millimetres(text: &str) -> bool {
    text.trim_end().ends_with("mm")
}
