//! The outline of a turned part in the plane of section, in millimetres of metal.

use plant::part::{Flats, Straight, Turned};

use super::same;

/// A straight piece: ends along the axis and distances from it there.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    pub(super) z0: f64,
    pub(super) z1: f64,
    pub(super) r0: f64,
    pub(super) r1: f64,
    /// The feature that made it.
    pub(super) feature: Option<String>,
}

impl Piece {
    pub(super) fn is_cylinder(&self) -> bool {
        same(self.r0, self.r1)
    }

    pub(super) fn radius(&self, z: f64) -> f64 {
        self.r0 + (self.r1 - self.r0) * (z - self.z0) / (self.z1 - self.z0)
    }

    fn slope(&self) -> f64 {
        (self.r1 - self.r0) / (self.z1 - self.z0)
    }

    fn between(&self, z0: f64, z1: f64) -> Self {
        Self {
            z0,
            z1,
            r0: self.radius(z0),
            r1: self.radius(z1),
            feature: self.feature.clone(),
        }
    }
}

impl From<Straight<'_>> for Piece {
    fn from(s: Straight<'_>) -> Self {
        Self {
            z0: s.span.from.mm(),
            z1: s.span.to.mm(),
            r0: s.from.mm() / 2.0,
            r1: s.to.mm() / 2.0,
            feature: s.feature.map(str::to_owned),
        }
    }
}

/// Outline in the plane.
pub(crate) struct Outline {
    pub(crate) low: f64,
    pub(crate) high: f64,
    /// Azimuth that is drawn upwards, radians.
    pub(super) azimuth: f64,
    /// Outside as turned, without flats.
    pub(super) outside: Vec<Piece>,
    /// Bore.
    pub(super) inside: Vec<Piece>,
    /// Outside in the plane, above and below the axis, flats cut.
    faces: [Vec<Piece>; 2],
}

/// A line in the plane: places on the axis and distances from it, negative below.
pub(crate) type Edge = ((f64, f64), (f64, f64));

impl Outline {
    pub(crate) fn of(part: &Turned) -> Self {
        let outside: Vec<Piece> = part.outside().map(Piece::from).collect();
        let first_hole = part.cross_holes().next().map(|(_, h)| h.azimuth.rad());
        let first_flat = part.flats().next().map(|f| f.azimuth.rad());
        // A part that is round all over looks the same in every plane.
        let azimuth = first_hole.or(first_flat).unwrap_or(0.0);
        let face = |turn: f64| {
            part.flats().fold(outside.clone(), |pieces, flats| {
                cut(&pieces, flats, azimuth + turn)
            })
        };
        let faces = [face(0.0), face(std::f64::consts::PI)];
        Self {
            low: part.span().from.mm(),
            high: part.span().to.mm(),
            azimuth,
            inside: part.inside().map(Piece::from).collect(),
            faces,
            outside,
        }
    }

    /// The greatest distance from the axis.
    pub(super) fn greatest(&self) -> f64 {
        self.outside
            .iter()
            .flat_map(|p| [p.r0, p.r1])
            .fold(0.0, f64::max)
    }

    /// Radius of the bore at `z`, the wider at a step; nought in solid metal.
    pub(super) fn bore(&self, z: f64) -> f64 {
        reach(&self.inside, z)
    }

    /// Distance of the outside from the axis at `z`, the wider at a step.
    pub(super) fn above(&self, z: f64) -> f64 {
        reach(&self.faces[0], z)
    }

    /// The same below the axis.
    pub(super) fn below(&self, z: f64) -> f64 {
        reach(&self.faces[1], z)
    }

    /// The highest place at which a cylinder of this radius is seen above the axis.
    pub(super) fn last_at(&self, r: f64) -> Option<f64> {
        self.cylinders(r).last().map(|p| p.z1)
    }

    /// The lowest such place.
    pub(super) fn first_at(&self, r: f64) -> Option<f64> {
        self.cylinders(r).next().map(|p| p.z0)
    }

    fn cylinders(&self, r: f64) -> impl Iterator<Item = &Piece> {
        self.faces[0]
            .iter()
            .filter(move |p| p.is_cylinder() && same(p.r0, r))
    }

    /// Cut metal as quadrangles side by side.
    pub(crate) fn quads(&self) -> Vec<[(f64, f64); 4]> {
        let mut quads = Vec::new();
        for (face, side) in self.faces.iter().zip([1.0, -1.0]) {
            let mut marks: Vec<f64> = face
                .iter()
                .chain(&self.inside)
                .flat_map(|p| [p.z0, p.z1])
                .collect();
            marks.sort_by(f64::total_cmp);
            marks.dedup();
            for pair in marks.windows(2) {
                let (a, b) = (pair[0], pair[1]);
                let over = |pieces: &[Piece]| holding(pieces, 0.5 * (a + b)).cloned();
                let Some(o) = over(face) else { continue };
                let (i0, i1) =
                    over(&self.inside).map_or((0.0, 0.0), |i| (i.radius(a), i.radius(b)));
                quads.push([
                    (a, side * i0),
                    (b, side * i1),
                    (b, side * o.radius(b)),
                    (a, side * o.radius(a)),
                ]);
            }
        }
        quads
    }

    /// Lines of the outline: cut edges, and edges of the bore seen behind the plane.
    pub(crate) fn edges(&self) -> Vec<Edge> {
        let mut edges = Vec::new();
        for (face, side) in self.faces.iter().zip([1.0, -1.0]) {
            for p in face.iter().chain(&self.inside) {
                edges.push(((p.z0, side * p.r0), (p.z1, side * p.r1)));
            }
            for (z, r0, r1, _) in corners(face) {
                edges.push(((z, side * r0), (z, side * r1)));
            }
        }
        // Each corner of the bore is a ring, seen across the whole bore.
        for (z, r0, r1, _) in corners(&self.inside) {
            let r = r0.max(r1);
            edges.push(((z, -r), (z, r)));
        }
        edges.retain(|(a, b)| !(same(a.0, b.0) && same(a.1, b.1)));
        edges
    }
}

/// Corners of an outline: place, radius before and after, and whether the radius steps there.
/// Where the pieces end the radius beyond is nought.
pub(super) fn corners(pieces: &[Piece]) -> Vec<(f64, f64, f64, bool)> {
    let mut found = Vec::new();
    for (i, p) in pieces.iter().enumerate() {
        let before = i
            .checked_sub(1)
            .map(|i| &pieces[i])
            .filter(|q| same(q.z1, p.z0));
        match before {
            None => found.push((p.z0, 0.0, p.r0, true)),
            Some(q) => {
                let steps = !same(q.r1, p.r0);
                if steps || (q.slope() - p.slope()).abs() > 1e-6 {
                    found.push((p.z0, q.r1, p.r0, steps));
                }
            }
        }
        if pieces.get(i + 1).is_none_or(|q| !same(p.z1, q.z0)) {
            found.push((p.z1, p.r1, 0.0, true));
        }
    }
    found
}

fn holding(pieces: &[Piece], z: f64) -> Option<&Piece> {
    pieces.iter().find(|p| p.z0 <= z && z <= p.z1)
}

fn reach(pieces: &[Piece], z: f64) -> f64 {
    pieces
        .iter()
        .filter(|p| p.z0 <= z && z <= p.z1)
        .map(|p| p.radius(z))
        .fold(0.0, f64::max)
}

/// The outline on the side of this azimuth after flats are cut.
fn cut(pieces: &[Piece], flats: &Flats, azimuth: f64) -> Vec<Piece> {
    let limit = (0..flats.count)
        .map(|k| {
            let step = std::f64::consts::TAU / f64::from(flats.count) * f64::from(k);
            (flats.azimuth.rad() + step - azimuth).cos()
        })
        .filter(|cosine| *cosine > 1e-9)
        .map(|cosine| flats.from_axis.mm() / cosine)
        .fold(f64::INFINITY, f64::min);
    let (from, to) = (flats.span.from.mm(), flats.span.to.mm());
    let mut left = Vec::new();
    for p in pieces {
        let mut marks = vec![p.z0, p.z1, from, to];
        if !p.is_cylinder() {
            marks.push(p.z0 + (limit - p.r0) / p.slope());
        }
        marks.retain(|z| p.z0 <= *z && *z <= p.z1);
        marks.sort_by(f64::total_cmp);
        marks.dedup();
        for pair in marks.windows(2) {
            let mut piece = p.between(pair[0], pair[1]);
            let middle = 0.5 * (pair[0] + pair[1]);
            if from <= middle && middle < to && piece.radius(middle) > limit {
                (piece.r0, piece.r1) = (limit, limit);
            }
            left.push(piece);
        }
    }
    left
}
