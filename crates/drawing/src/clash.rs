//! Lettering that something runs into: what a sheet must not have.

use crate::sheet::{At, Extent, Layer, Mark, Sheet, Text, at};

/// A text and what it runs into.
#[derive(Clone, Debug, PartialEq)]
pub struct Clash {
    /// The text.
    pub text: String,
    /// The other text, or the layer of the line.
    pub with: String,
}

/// Every text that overlaps another text, or that a line of any layer crosses, by the text metric
/// of [`crate::width`]. Marks are taken as they are drawn; an arc as its circle.
#[must_use]
pub fn clashes(sheet: &Sheet) -> Vec<Clash> {
    let marks = sheet.simple();
    let texts: Vec<&Text> = marks
        .iter()
        .filter_map(|(_, mark)| match mark {
            Mark::Text(text) => Some(text),
            _ => None,
        })
        .collect();
    let mut found = Vec::new();
    for (i, text) in texts.iter().enumerate() {
        let space = text.extent();
        let mut clash = |with: String| {
            found.push(Clash {
                text: text.says.clone(),
                with,
            });
        };
        for other in &texts[i + 1..] {
            if overlap(space, other.extent()) {
                clash(other.says.clone());
            }
        }
        for (layer, mark) in &marks {
            if *layer != Layer::Text && crosses(mark, space) {
                clash(layer.name().to_owned());
            }
        }
    }
    found
}

fn overlap(a: Extent, b: Extent) -> bool {
    a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y
}

fn crosses(mark: &Mark, space: Extent) -> bool {
    match mark {
        Mark::Line(a, b) => line_crosses(*a, *b, space),
        Mark::Open(points) => points
            .windows(2)
            .any(|pair| line_crosses(pair[0], pair[1], space)),
        Mark::Closed(points) | Mark::Filled(points) => (0..points.len())
            .any(|i| line_crosses(points[i], points[(i + 1) % points.len()], space)),
        Mark::Circle { centre, radius } | Mark::Arc { centre, radius, .. } => {
            rim_crosses(*centre, *radius, space)
        }
        Mark::Text(_) | Mark::Hatch(_) | Mark::Dimension(_) => false,
    }
}

fn rim_crosses(centre: At, radius: f64, space: Extent) -> bool {
    let apart = |low: f64, high: f64, c: f64| (low - c).max(c - high).max(0.0);
    let nearest = apart(space.low.x, space.high.x, centre.x).hypot(apart(
        space.low.y,
        space.high.y,
        centre.y,
    ));
    let reach = |low: f64, high: f64, c: f64| (c - low).abs().max((high - c).abs());
    let farthest = reach(space.low.x, space.high.x, centre.x).hypot(reach(
        space.low.y,
        space.high.y,
        centre.y,
    ));
    nearest < radius && radius < farthest
}

fn line_crosses(a: At, b: At, space: Extent) -> bool {
    let area = [
        space.low,
        at(space.high.x, space.low.y),
        space.high,
        at(space.low.x, space.high.y),
    ];
    let whole = (a.x - b.x).hypot(a.y - b.y);
    let left: f64 = crate::clip::outside_all((a, b), &[area.to_vec()])
        .iter()
        .map(|(p, q)| (p.x - q.x).hypot(p.y - q.y))
        .sum();
    left < whole - 1e-6
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sheet::Anchor;

    #[test]
    fn a_line_through_a_text_and_a_text_on_a_text_are_found() {
        let mut sheet = Sheet::new("clash", 1.0);
        let text = |x: f64| Mark::Text(Text::new(at(x, 0.0), Anchor::Start, "12"));
        sheet.draw(Layer::Text, text(0.0));
        assert_eq!(clashes(&sheet), []);
        sheet.draw(Layer::Axis, Mark::Line(at(-5.0, 1.0), at(5.0, 1.0)));
        assert_eq!(clashes(&sheet).len(), 1);
        sheet.draw(Layer::Text, text(2.0));
        assert_eq!(clashes(&sheet).len(), 3);
        let round = Mark::Circle {
            centre: at(0.0, 0.0),
            radius: 40.0,
        };
        sheet.draw(Layer::Outline, round);
        assert_eq!(
            clashes(&sheet).len(),
            3,
            "a circle round both touches neither"
        );
    }
}
