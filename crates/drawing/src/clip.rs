//! What is left of a straight line outside convex areas.

use crate::sheet::{At, at};

/// Stretches shorter than this are not drawn, mm.
const LEAST: f64 = 1e-6;

/// The share of a line inside a convex area, as the two shares at which it enters and leaves.
fn inside(line: (At, At), area: &[At]) -> Option<(f64, f64)> {
    let (a, b) = line;
    let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
    // The sign of the area tells on which side of each edge its inside lies.
    let cross = |p: At, q: At| p.x * q.y - q.x * p.y;
    let n = area.len();
    let turn: f64 = (0..n).map(|i| cross(area[i], area[(i + 1) % n])).sum();
    for i in 0..n {
        let (p, q) = (area[i], area[(i + 1) % n]);
        let within =
            |r: At| turn.signum() * ((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
        let (wa, wb) = (within(a), within(b));
        if wa <= LEAST && wb <= LEAST {
            return None;
        }
        if wa < 0.0 {
            enters = enters.max(wa / (wa - wb));
        } else if wb < 0.0 {
            leaves = leaves.min(wa / (wa - wb));
        }
    }
    (enters < leaves).then_some((enters, leaves))
}

/// The stretches of a line outside all of these convex areas. An edge of an area is outside.
pub(crate) fn outside_all(line: (At, At), areas: &[Vec<At>]) -> Vec<(At, At)> {
    let (a, b) = line;
    let point = |s: f64| at(a.x + (b.x - a.x) * s, a.y + (b.y - a.y) * s);
    let mut left: Vec<(f64, f64)> = vec![(0.0, 1.0)];
    for (enters, leaves) in areas.iter().filter_map(|area| inside(line, area)) {
        left = left
            .iter()
            .flat_map(|(s, t)| [(*s, t.min(enters)), (s.max(leaves), *t)])
            .filter(|(s, t)| s < t)
            .collect();
    }
    left.into_iter()
        .map(|(s, t)| (point(s), point(t)))
        .filter(|(p, q)| (p.x - q.x).hypot(p.y - q.y) > LEAST)
        .collect()
}
