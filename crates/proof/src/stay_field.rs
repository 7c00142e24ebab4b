//! The plate that hangs on one stay: all that lies nearer to it than to any other support.

use std::f64::consts::TAU;

/// Sides of the polygon that stands round the edge of a plate.
const SIDES: u32 = 180;

/// Area of plate nearer to the support at `of` than to any in `others`, mm², within a round plate
/// of radius `edge_mm` about the origin; all places in mm.
///
/// The plate counts right up to its edge, which leaves the load of a stay near the wall too large
/// rather than too small. The supports' own sections are not taken off.
#[must_use]
pub fn stay_field(of: (f64, f64), others: &[(f64, f64)], edge_mm: f64) -> f64 {
    let half = TAU / f64::from(2 * SIDES);
    let corner = edge_mm / half.cos();
    let edge: Vec<(f64, f64)> = (0..SIDES)
        .map(|i| (2.0 * f64::from(i) * half).sin_cos())
        .map(|(sin, cos)| (corner * cos, corner * sin))
        .collect();
    stay_field_within(of, others, edge)
}

/// As [`stay_field`], within an edge of straight sides that bulges nowhere inwards, its corners
/// given in their order against the clock, mm.
#[must_use]
pub fn stay_field_within(of: (f64, f64), others: &[(f64, f64)], edge: Vec<(f64, f64)>) -> f64 {
    let mut cell = edge;
    for other in others.iter().filter(|other| **other != of) {
        cell = nearer(&cell, of, *other);
    }
    area(&cell)
}

/// The part of a cell that is nearer to one point than to another.
fn nearer(cell: &[(f64, f64)], of: (f64, f64), other: (f64, f64)) -> Vec<(f64, f64)> {
    let across = (other.0 - of.0, other.1 - of.1);
    let middle = ((other.0 + of.0) / 2.0, (other.1 + of.1) / 2.0);
    let beyond = |p: (f64, f64)| (p.0 - middle.0) * across.0 + (p.1 - middle.1) * across.1;
    let mut kept = Vec::with_capacity(cell.len() + 1);
    for (a, b) in cell.iter().zip(cell.iter().cycle().skip(1)) {
        let (from, to) = (beyond(*a), beyond(*b));
        if from <= 0.0 {
            kept.push(*a);
        }
        if (from < 0.0 && to > 0.0) || (from > 0.0 && to < 0.0) {
            let share = from / (from - to);
            kept.push((a.0 + share * (b.0 - a.0), a.1 + share * (b.1 - a.1)));
        }
    }
    kept
}

fn area(cell: &[(f64, f64)]) -> f64 {
    cell.iter()
        .zip(cell.iter().cycle().skip(1))
        .map(|(a, b)| a.0 * b.1 - b.0 * a.1)
        .sum::<f64>()
        / 2.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::f64::consts::PI;

    /// Independent calculation: 20 mm square is 400 mm², an even triangle of 16 mm 221.70 mm².
    #[test]
    fn independent_even_fields() {
        let square: Vec<(f64, f64)> = (-3..=3)
            .flat_map(|i| (-3..=3).map(move |j| (20.0 * f64::from(i), 20.0 * f64::from(j))))
            .collect();
        assert!((stay_field((0.0, 0.0), &square, 70.0) - 400.0).abs() < 1e-9);
        let triangle: Vec<(f64, f64)> = (0..6)
            .map(|i| (f64::from(i) * PI / 3.0).sin_cos())
            .map(|(sin, cos)| (16.0 * cos, 16.0 * sin))
            .collect();
        assert!((stay_field((0.0, 0.0), &triangle, 70.0) - 221.7025).abs() < 1e-3);
    }

    /// Independent calculation: of a strip of 100 by 40 mm the middle one of three stays 30 mm apart
    /// holds 30 by 40 mm.
    #[test]
    fn independent_field_in_a_strip() {
        let strip = vec![(-50.0, 0.0), (50.0, 0.0), (50.0, 40.0), (-50.0, 40.0)];
        let beside = [(-30.0, 20.0), (30.0, 20.0)];
        let field = stay_field_within((0.0, 20.0), &beside, strip);
        assert!((field - 1200.0).abs() < 1e-9, "{field}");
    }

    #[test]
    fn a_stay_alone_holds_the_whole_plate_and_a_neighbour_takes_half() {
        let alone = stay_field((0.0, 0.0), &[], 50.0);
        let whole = PI * 2500.0;
        assert!(alone >= whole && alone < whole * 1.0002, "{alone}");
        let half = stay_field((-10.0, 0.0), &[(10.0, 0.0), (-10.0, 0.0)], 50.0);
        assert!((half / alone - 0.5).abs() < 1e-9);
    }
}
