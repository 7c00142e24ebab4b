//! The widest bare field of a flat plate between stays, flues and its own edge: the largest circle
//! with its centre on the plate that holds no support.

use crate::field::Widest;

/// A round support: a stay by its middle (radius 0), a flue by its wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Support {
    /// Middle, mm.
    pub at_mm: (f64, f64),
    /// Radius, mm; 0 for a stay.
    pub radius_mm: f64,
}

/// Slack with which a support counts as lying on a circle and not in it.
const ON_CIRCLE: f64 = 1e-9;

/// A circle of bare plate, with the middles of what it meets.
struct Found {
    centre: (f64, f64),
    radius: f64,
    touched: Vec<(f64, f64)>,
}

/// The bare field of a round plate of radius `edge_mm` about the origin that stands for the
/// greatest pitch, `max(d/√2, middle side)`.
///
/// The edge, the root of a flange or the wall, holds the plate along its whole line, and so does
/// the wall of a flue. A field between two lines counts with its full width. `None` for an edge
/// that is no length.
#[must_use]
pub fn empty_circle(held: &[Support], edge_mm: f64) -> Option<Widest> {
    if !(edge_mm.is_finite() && edge_mm > 0.0) {
        return None;
    }
    // The edge is a circle of negative radius: what touches it lies within.
    let mut round = vec![Support {
        at_mm: (0.0, 0.0),
        radius_mm: -edge_mm,
    }];
    round.extend_from_slice(held);
    candidates(&round, edge_mm)
        .filter(|found| is_bare(found, &round))
        .map(|found| widest(&found))
        .max_by(|a, b| pitch(*a).total_cmp(&pitch(*b)))
}

/// The greatest pitch that a field stands for, mm.
fn pitch(of: Widest) -> f64 {
    (of.circle_mm / 2.0_f64.sqrt()).max(of.side_mm)
}

fn widest(found: &Found) -> Widest {
    let mut sides: Vec<f64> = Vec::new();
    for (i, a) in found.touched.iter().enumerate() {
        for b in &found.touched[i + 1..] {
            sides.push((a.0 - b.0).hypot(a.1 - b.1));
        }
    }
    sides.sort_by(f64::total_cmp);
    // Two lines, or the edge alone, hold a strip of the circle's width.
    let side_mm = if sides.len() < 3 {
        2.0 * found.radius
    } else {
        sides[1]
    };
    Widest {
        circle_mm: 2.0 * found.radius,
        side_mm,
    }
}

fn is_bare(found: &Found, round: &[Support]) -> bool {
    let slack = ON_CIRCLE * (1.0 + found.radius);
    found.radius > 0.0
        && round.iter().all(|held| {
            let away = (found.centre.0 - held.at_mm.0).hypot(found.centre.1 - held.at_mm.1);
            let room = if held.radius_mm < 0.0 {
                -held.radius_mm - away
            } else {
                away - held.radius_mm
            };
            room >= found.radius - slack
        })
}

/// Every circle that three supports hold fast, or the edge and one, or the edge alone.
fn candidates(round: &[Support], edge_mm: f64) -> impl Iterator<Item = Found> {
    let mut all = vec![Found {
        centre: (0.0, 0.0),
        radius: edge_mm,
        touched: Vec::new(),
    }];
    all.extend(round[1..].iter().map(|held| opposite(held, edge_mm)));
    for (i, a) in round.iter().enumerate() {
        for (j, b) in round.iter().enumerate().skip(i + 1) {
            for c in &round[j + 1..] {
                all.extend(through([*a, *b, *c]));
            }
        }
    }
    all.into_iter()
}

/// The circle between one support and the edge farthest from it.
fn opposite(held: &Support, edge_mm: f64) -> Found {
    let (x, y) = held.at_mm;
    let off = x.hypot(y);
    let radius = (edge_mm + off - held.radius_mm) / 2.0;
    let (ux, uy) = if off > 0.0 {
        (x / off, y / off)
    } else {
        (1.0, 0.0)
    };
    let centre = (-ux * (edge_mm - radius), -uy * (edge_mm - radius));
    Found {
        centre,
        radius,
        touched: Vec::new(),
    }
}

/// The circles that touch three circles from outside; a circle of negative radius from inside.
fn through(of: [Support; 3]) -> Vec<Found> {
    let [a, b, c] = of;
    let square = |h: Support| h.at_mm.0.powi(2) + h.at_mm.1.powi(2) - h.radius_mm.powi(2);
    // Two planes in middle and radius; the circles lie on their common line.
    let plane = |h: Support| {
        let across = [
            2.0 * (h.at_mm.0 - a.at_mm.0),
            2.0 * (h.at_mm.1 - a.at_mm.1),
            2.0 * (h.radius_mm - a.radius_mm),
        ];
        (across, square(h) - square(a))
    };
    let Some((from, along)) = common_line(plane(b), plane(c)) else {
        return Vec::new();
    };
    let off = [
        from[0] - a.at_mm.0,
        from[1] - a.at_mm.1,
        from[2] + a.radius_mm,
    ];
    // Distance and radius agree where this sum, its last term taken off, is nothing.
    let sum = |u: [f64; 3], v: [f64; 3]| u[0] * v[0] + u[1] * v[1] - u[2] * v[2];
    roots(sum(along, along), sum(along, off), sum(off, off))
        .into_iter()
        .map(|s| {
            let [x, y, radius] = [0, 1, 2].map(|k: usize| from[k] + s * along[k]);
            Found {
                centre: (x, y),
                radius,
                touched: of.iter().map(|h| touch((x, y), radius, h)).collect(),
            }
        })
        .collect()
}

/// A plane: what stands square on it, and how far off it lies.
type Plane = ([f64; 3], f64);

/// The common line of two planes: a point of it, and its way, whose greatest part is 1.
fn common_line((p, d): Plane, (q, e): Plane) -> Option<([f64; 3], [f64; 3])> {
    let way = [
        p[1] * q[2] - p[2] * q[1],
        p[2] * q[0] - p[0] * q[2],
        p[0] * q[1] - p[1] * q[0],
    ];
    // The coordinate that changes most along the line is set to nothing at its point.
    let k = (0..3).max_by(|i, j| way[*i].abs().total_cmp(&way[*j].abs()))?;
    let (i, j) = ((k + 1) % 3, (k + 2) % 3);
    let size = |of: [f64; 3]| of.iter().map(|x| x * x).sum::<f64>().sqrt();
    if way[k].abs() <= ON_CIRCLE * size(p) * size(q) {
        return None;
    }
    let mut from = [0.0; 3];
    from[i] = (d * q[j] - e * p[j]) / way[k];
    from[j] = (e * p[i] - d * q[i]) / way[k];
    Some((from, way.map(|x| x / way[k])))
}

/// Real roots of `a x² + 2 b x + c`.
fn roots(a: f64, b: f64, c: f64) -> Vec<f64> {
    let within = b * b - a * c;
    if within < 0.0 {
        return Vec::new();
    }
    // The sum that does not lose figures gives one root, the product of both the other.
    let larger = -(b + within.sqrt().copysign(b));
    if larger == 0.0 {
        return Vec::new();
    }
    let mut found = vec![c / larger];
    if a.abs() > ON_CIRCLE {
        found.push(larger / a);
    }
    found
}

/// Where a circle meets what holds it.
fn touch(centre: (f64, f64), radius: f64, held: &Support) -> (f64, f64) {
    if held.radius_mm == 0.0 {
        return held.at_mm;
    }
    let to = (held.at_mm.0 - centre.0, held.at_mm.1 - centre.1);
    let away = to.0.hypot(to.1);
    // Within the edge the circle meets it away from the middle of the plate.
    let way = if held.radius_mm < 0.0 { -1.0 } else { 1.0 };
    if away == 0.0 {
        return (centre.0 + radius, centre.1);
    }
    (
        centre.0 + way * radius * to.0 / away,
        centre.1 + way * radius * to.1 / away,
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn stay(x: f64, y: f64) -> Support {
        Support {
            at_mm: (x, y),
            radius_mm: 0.0,
        }
    }

    /// Independent calculation: a disc alone, a ring, a disc halved by one stay off its middle.
    #[test]
    fn independent_fields_of_few_supports() {
        let disc = empty_circle(&[], 40.0).expect("a field");
        assert!((disc.circle_mm - 80.0).abs() < 1e-9);
        let flue = Support {
            at_mm: (0.0, 0.0),
            radius_mm: 20.0,
        };
        let ring = empty_circle(&[flue], 50.0).expect("a field");
        assert!((ring.circle_mm - 30.0).abs() < 1e-9 && (ring.side_mm - 30.0).abs() < 1e-9);
        let flue = Support {
            at_mm: (0.0, -10.0),
            radius_mm: 20.0,
        };
        let low = empty_circle(&[flue], 50.0).expect("a field");
        assert!((low.circle_mm - 40.0).abs() < 1e-9, "{low:?}");
        let beside = empty_circle(&[stay(0.0, 10.0)], 40.0).expect("a field");
        assert!((beside.circle_mm - 50.0).abs() < 1e-9);
    }

    /// Independent calculation: four stays on a square of 40 mm in a wide ring of edge, so that the
    /// field between edge and stays, 2 (60 - 28.28) / 2 across the corners and more across the
    /// sides, gives way to the square within, which stands for 40 mm.
    #[test]
    fn independent_a_square_of_four_stays() {
        let four = [
            stay(20.0, 20.0),
            stay(-20.0, 20.0),
            stay(20.0, -20.0),
            stay(-20.0, -20.0),
        ];
        let near = empty_circle(&four, 42.0).expect("a field");
        assert!((pitch(near) - 40.0).abs() < 1e-9, "{near:?}");
        assert!((near.circle_mm - 40.0 * 2.0_f64.sqrt()).abs() < 1e-9);
        // A circle that meets the edge and two stays: its middle at x where 80 - x =
        // sqrt((x - 20)^2 + 400), so that x = 46.667 and its diameter is 66.667.
        let far = empty_circle(&four, 80.0).expect("a field");
        assert!((far.circle_mm - 200.0 / 3.0).abs() < 1e-9, "{far:?}");
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// A search over a fine grid finds no circle larger than the exact one.
        #[test]
        fn independent_no_point_of_the_plate_lies_further_from_every_support(
            at in prop::collection::vec((-35.0_f64..35.0, -35.0_f64..35.0, 0.0_f64..8.0), 0..6),
        ) {
            let held: Vec<Support> = at
                .iter()
                .map(|(x, y, r)| Support { at_mm: (*x, *y), radius_mm: *r })
                .collect();
            let found = candidates_of(&held, 50.0);
            for i in -24..=24 {
                for j in -24..=24 {
                    let c = (2.0 * f64::from(i), 2.0 * f64::from(j));
                    let room = held
                        .iter()
                        .map(|h| (c.0 - h.at_mm.0).hypot(c.1 - h.at_mm.1) - h.radius_mm)
                        .fold(50.0 - c.0.hypot(c.1), f64::min);
                    prop_assert!(2.0 * room <= found + 1e-6, "{room} at {c:?}, {found}");
                }
            }
        }
    }

    /// Diameter of the largest bare circle, whatever pitch it stands for.
    fn candidates_of(held: &[Support], edge_mm: f64) -> f64 {
        let mut round = vec![Support {
            at_mm: (0.0, 0.0),
            radius_mm: -edge_mm,
        }];
        round.extend_from_slice(held);
        candidates(&round, edge_mm)
            .filter(|f| is_bare(f, &round))
            .map(|f| 2.0 * f.radius)
            .fold(0.0, f64::max)
    }
}
