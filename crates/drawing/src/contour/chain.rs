//! Short stretches put together to lines, and lines freed of points that they do not need.

use crate::sheet::At;
use std::collections::BTreeMap;

/// Ends nearer than this are one, mm.
const TOGETHER: f64 = 1e-7;

type Point = [f64; 2];

fn cell(p: Point) -> [i64; 2] {
    p.map(|x| (x / TOGETHER).round() as i64)
}

/// Stretches joined end to end, as far as they go. Ends that are one are equal to the last bit but
/// for rounding, which is far below the size of a cell.
pub(super) fn chained(stretches: &[[Point; 2]]) -> Vec<Vec<Point>> {
    let mut at: BTreeMap<[i64; 2], Vec<usize>> = BTreeMap::new();
    for (i, [a, b]) in stretches.iter().enumerate() {
        if cell(*a) != cell(*b) {
            at.entry(cell(*a)).or_default().push(i);
            at.entry(cell(*b)).or_default().push(i);
        }
    }
    let mut used = vec![false; stretches.len()];
    // Open lines are begun at an end, rings wherever they are met.
    let ends: Vec<[i64; 2]> = at
        .iter()
        .filter(|(_, s)| s.len() == 1)
        .map(|(c, _)| *c)
        .collect();
    let starts = ends.into_iter().chain(at.keys().copied());
    let mut lines = Vec::new();
    for start in starts.collect::<Vec<_>>() {
        while let Some(line) = walk(start, stretches, &at, &mut used) {
            lines.push(line);
        }
    }
    lines
}

fn walk(
    start: [i64; 2],
    stretches: &[[Point; 2]],
    at: &BTreeMap<[i64; 2], Vec<usize>>,
    used: &mut [bool],
) -> Option<Vec<Point>> {
    let mut here = start;
    let mut line: Vec<Point> = Vec::new();
    while let Some(&next) = at.get(&here)?.iter().find(|i| !used[**i]) {
        used[next] = true;
        let [a, b] = stretches[next];
        let (from, to) = if cell(a) == here { (a, b) } else { (b, a) };
        if line.is_empty() {
            line.push(from);
        }
        line.push(to);
        here = cell(to);
    }
    (!line.is_empty()).then_some(line)
}

/// The line without the points from which it would not depart by more than `close`.
pub(super) fn straightened(line: &[At], close: f64) -> Vec<At> {
    let (Some(first), Some(last)) = (line.first(), line.last()) else {
        return Vec::new();
    };
    let off = |p: &At| off_line(*p, *first, *last);
    let farthest = (1..line.len().saturating_sub(1))
        .max_by(|a, b| off(&line[*a]).total_cmp(&off(&line[*b])))
        .filter(|i| off(&line[*i]) > close);
    match farthest {
        None => vec![*first, *last],
        Some(i) => {
            let mut low = straightened(&line[..=i], close);
            low.pop();
            low.extend(straightened(&line[i..], close));
            low
        }
    }
}

/// Distance of a point from a straight line, or from its end where the ends are one.
fn off_line(p: At, a: At, b: At) -> f64 {
    let (x, y) = (b.x - a.x, b.y - a.y);
    let long = x.hypot(y);
    if long < TOGETHER {
        (p.x - a.x).hypot(p.y - a.y)
    } else {
        ((p.x - a.x) * y - (p.y - a.y) * x).abs() / long
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sheet::at;

    #[test]
    fn stretches_become_one_line_and_a_ring() {
        let p = [[0.0, 0.0], [1.0, 0.0], [2.0, 0.0], [2.0, 1.0]];
        let open = chained(&[[p[2], p[1]], [p[0], p[1]], [p[2], p[3]]]);
        assert_eq!(open.len(), 1);
        assert_eq!(open[0].len(), 4);
        let ring = chained(&[[p[1], p[2]], [p[2], p[3]], [p[3], p[1]]]);
        assert_eq!(ring.len(), 1);
        assert_eq!(ring[0].first(), ring[0].last());
    }

    #[test]
    fn a_straight_line_keeps_its_ends_and_a_corner_stays() {
        let line = [at(0.0, 0.0), at(1.0, 0.001), at(2.0, 0.0), at(2.0, 2.0)];
        let kept = straightened(&line, 0.02);
        assert_eq!(kept, [line[0], line[2], line[3]]);
    }
}
