//! The widest bare field of a plate held at points.

/// The widest bare field, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Widest {
    /// Diameter of the largest circle through three supports that holds none.
    pub circle_mm: f64,
    /// Middle side of the triangle of these three.
    pub side_mm: f64,
}

/// Slack with which a support counts as lying on a circle and not in it.
const ON_CIRCLE: f64 = 1e-9;

/// The circle through three supports that holds no other and stands for the greatest pitch,
/// `max(d/√2, middle side)`; `None` for fewer than three supports or all in one line.
///
/// `at_mm` are the centres of the supports. Circles whose centre lies outside the triangle of
/// their supports reach past the edge of the nest, where the margin is judged; they are left
/// out.
#[must_use]
pub fn widest_field(at_mm: &[(f64, f64)]) -> Option<Widest> {
    let mut widest: Option<(f64, Widest)> = None;
    for (i, a) in at_mm.iter().enumerate() {
        for (j, b) in at_mm.iter().enumerate().skip(i + 1) {
            for c in &at_mm[j + 1..] {
                let Some(found) = bare(at_mm, [*a, *b, *c]) else {
                    continue;
                };
                let pitch = (found.circle_mm / 2.0_f64.sqrt()).max(found.side_mm);
                if widest.is_none_or(|(most, _)| pitch > most) {
                    widest = Some((pitch, found));
                }
            }
        }
    }
    widest.map(|(_, found)| found)
}

/// The field of three supports, if their circle is bare and its centre lies among them.
fn bare(all: &[(f64, f64)], of: [(f64, f64); 3]) -> Option<Widest> {
    let [a, b, c] = of;
    let away = |p: (f64, f64), q: (f64, f64)| (p.0 - q.0).hypot(p.1 - q.1);
    let mut sides = [away(a, b), away(b, c), away(c, a)];
    sides.sort_by(f64::total_cmp);
    let [short, middle, long] = sides;
    let slack = 1.0 + ON_CIRCLE;
    // An obtuse triangle has the centre of its circle outside.
    if long.powi(2) > (short.powi(2) + middle.powi(2)) * slack {
        return None;
    }
    let twice = 2.0 * (a.0 * (b.1 - c.1) + b.0 * (c.1 - a.1) + c.0 * (a.1 - b.1));
    if twice.abs() <= ON_CIRCLE * long * long {
        return None;
    }
    let square = |p: (f64, f64)| p.0 * p.0 + p.1 * p.1;
    let centre = (
        (square(a) * (b.1 - c.1) + square(b) * (c.1 - a.1) + square(c) * (a.1 - b.1)) / twice,
        (square(a) * (c.0 - b.0) + square(b) * (a.0 - c.0) + square(c) * (b.0 - a.0)) / twice,
    );
    let radius = away(centre, a);
    let empty = all.iter().all(|p| away(centre, *p) * slack >= radius);
    empty.then_some(Widest {
        circle_mm: 2.0 * radius,
        side_mm: middle,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn grid(w: f64, h: f64) -> Vec<(f64, f64)> {
        (0..4)
            .flat_map(|i| (0..4).map(move |j| (f64::from(i) * w, f64::from(j) * h)))
            .collect()
    }

    /// Independent calculation: squares of 20 mm, oblongs of 30 by 15 mm.
    #[test]
    fn independent_even_fields() {
        let pitch = |w: Widest| (w.circle_mm / 2.0_f64.sqrt()).max(w.side_mm);
        let square = widest_field(&grid(20.0, 20.0)).expect("a field");
        assert!((pitch(square) - 20.0).abs() < 1e-9);
        let oblong = widest_field(&grid(30.0, 15.0)).expect("a field");
        assert!((oblong.circle_mm - 33.541_02).abs() < 1e-5);
        assert!((pitch(oblong) - 30.0).abs() < 1e-9);
    }

    #[test]
    fn a_place_left_out_widens_the_field_and_a_line_has_none() {
        let mut gapped = grid(20.0, 20.0);
        gapped.retain(|p| *p != (20.0, 20.0));
        let wide = widest_field(&gapped).expect("a field");
        assert!((wide.circle_mm - 40.0).abs() < 1e-9);
        assert!(widest_field(&[(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)]).is_none());
    }
}
