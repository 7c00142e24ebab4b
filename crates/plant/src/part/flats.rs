//! Round sections cut by flats. Lengths are in millimetres.

use std::f64::consts::PI;

use super::feature::Flats;
use super::profile::Piece;
use super::quadrature::integral;

/// Error of the volume of a cone cut by flats, as a share of the cone.
const RELATIVE_ERROR: f64 = 1e-11;

/// Area of a disc of radius `r` inside the flats, mm².
pub(crate) fn disc(r: f64, flats: Option<&Flats>) -> f64 {
    let round = PI * r * r;
    let Some(flats) = flats else {
        return round;
    };
    let (n, a) = (f64::from(flats.count), flats.from_axis.mm());
    if r <= a {
        return round;
    }
    // The flats meet within the disc: the section is the whole polygon.
    if flats.count >= 3 && r * (PI / n).cos() >= a {
        return n * a * a * (PI / n).tan();
    }
    let half = (a / r).acos();
    round - n * r * r * (half - half.sin() * half.cos())
}

/// Volume of a piece inside the flats, mm³: exact on a cylinder.
pub(crate) fn volume(piece: &Piece, flats: &Flats) -> f64 {
    let length = piece.z1 - piece.z0;
    if piece.r0.total_cmp(&piece.r1).is_eq() {
        return length * disc(piece.r0, Some(flats));
    }
    let a = flats.from_axis.mm();
    let mut marks = vec![piece.z0, piece.z1];
    for r in [a, a / (PI / f64::from(flats.count)).cos()] {
        let share = (r - piece.r0) / (piece.r1 - piece.r0);
        if share > 0.0 && share < 1.0 {
            marks.push(piece.z0 + share * length);
        }
    }
    marks.sort_by(f64::total_cmp);
    let mut area = |z: f64| disc(piece.radius(z), Some(flats));
    marks
        .windows(2)
        .map(|m| integral(&mut area, m[0], m[1], RELATIVE_ERROR * piece.volume()))
        .sum()
}
