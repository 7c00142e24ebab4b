//! Cross holes in the plane of section, in millimetres of metal.

use plant::part::{CrossDepth, CrossHole, Turned};

use super::outline::{Edge, Outline};

/// How a hole lies to the plane of section.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Lies {
    /// In it or turned into it, drilled from above (1) or from below (-1).
    In(f64),
    /// Square to it, its centre at this height; in metal or in a bore whose far wall is seen.
    Across { y: f64, drawn: Drawn },
}

/// What is seen of a hole square to the plane.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Drawn {
    /// The plane cuts it in metal.
    Cut,
    /// Its mouth is seen in the wall behind the plane.
    Seen,
    /// It lies in the half taken away.
    Away,
}

/// A cross hole.
#[derive(Clone, Debug)]
pub(super) struct Hole {
    pub(super) id: String,
    pub(super) z: f64,
    r: f64,
    lies: Lies,
    /// Where the full diameter ends, from the axis towards the side of entry.
    bottom: f64,
    /// How far the point reaches beyond.
    point: f64,
}

pub(super) fn of(part: &Turned, outline: &Outline) -> Vec<Hole> {
    part.cross_holes()
        .map(|(id, hole)| {
            let (bottom, point) = match hole.depth {
                CrossDepth::Through => (-outline.greatest() - 1.0, 0.0),
                CrossDepth::NearWall => (0.0, 0.0),
                CrossDepth::Blind { bottom, point } => {
                    (bottom.mm(), point.length(hole.diameter).mm())
                }
            };
            Hole {
                id: id.to_owned(),
                z: hole.z.mm(),
                r: hole.diameter.mm() / 2.0,
                lies: lies(hole, outline, bottom),
                bottom,
                point,
            }
        })
        .collect()
}

fn lies(hole: &CrossHole, outline: &Outline, bottom: f64) -> Lies {
    let (sine, cosine) = (hole.azimuth.rad() - outline.azimuth).sin_cos();
    if cosine.abs() > 0.02 {
        return Lies::In(cosine.signum());
    }
    // With the axis to the right and the azimuth of the plane upwards, a quarter turn on points
    // to the reader, at the half that is taken away.
    let bored = outline.bore(hole.z.mm()) > 0.0;
    let drawn = match (bored, sine > 0.0, hole.depth) {
        (true, _, CrossDepth::Through) | (true, false, _) => Drawn::Seen,
        (true, true, _) => Drawn::Away,
        (false, ..) if bottom <= 0.0 => Drawn::Cut,
        (false, ..) => Drawn::Away,
    };
    Lies::Across {
        y: -hole.offset.mm() * sine,
        drawn,
    }
}

impl Hole {
    /// The area in which it leaves no metal.
    pub(super) fn void(&self, reach: f64) -> Option<Vec<(f64, f64)>> {
        let (z, r) = (self.z, self.r);
        match self.lies {
            Lies::In(side) => {
                let mut area = vec![(z - r, side * reach), (z - r, side * self.bottom)];
                if self.point > 0.0 {
                    area.push((z, side * (self.bottom - self.point)));
                }
                area.extend([(z + r, side * self.bottom), (z + r, side * reach)]);
                Some(area)
            }
            Lies::Across {
                y,
                drawn: Drawn::Cut,
            } => {
                let rim = |i: u32| {
                    let (s, c) = (f64::from(i) * std::f64::consts::TAU / 36.0).sin_cos();
                    (z + r * c, y + r * s)
                };
                Some((0..36).map(rim).collect())
            }
            Lies::Across { .. } => None,
        }
    }

    /// Centre height and radius of the circle that is seen.
    pub(super) fn circle(&self) -> Option<(f64, f64)> {
        match self.lies {
            Lies::Across { y, drawn } if drawn != Drawn::Away => Some((y, self.r)),
            _ => None,
        }
    }

    /// Straight edges in the metal.
    pub(super) fn edges(&self, outline: &Outline) -> Vec<Edge> {
        let Lies::In(side) = self.lies else {
            return Vec::new();
        };
        let mut edges = Vec::new();
        for z in [self.z - self.r, self.z + self.r] {
            let bore = outline.bore(z);
            let (near, far) = if side > 0.0 {
                (outline.above(z), outline.below(z))
            } else {
                (outline.below(z), outline.above(z))
            };
            for (high, low) in [(near, bore), (-bore, -far)] {
                let low = low.max(self.bottom);
                if low < high {
                    edges.push(((z, side * high), (z, side * low)));
                }
            }
        }
        // The bottom is an edge only where it lies in metal.
        if self.bottom.abs() >= outline.bore(self.z) && self.bottom > -outline.greatest() {
            let corner = |z: f64| (z, side * self.bottom);
            let (a, b) = (corner(self.z - self.r), corner(self.z + self.r));
            edges.push((a, b));
            if self.point > 0.0 {
                let tip = (self.z, side * (self.bottom - self.point));
                edges.extend([(a, tip), (tip, b)]);
            }
        }
        edges
    }

    /// Lowest and highest place of its centre line.
    pub(super) fn axis(&self, outline: &Outline) -> (f64, f64) {
        let (above, below) = (outline.above(self.z), outline.below(self.z));
        match self.lies {
            Lies::Across { y, .. } => (y - self.r, y + self.r),
            Lies::In(_) if self.bottom <= -above.max(below) => (-below, above),
            Lies::In(side) => {
                let end = side * (self.bottom - self.point);
                if side > 0.0 {
                    (end, above)
                } else {
                    (-below, end)
                }
            }
        }
    }

    /// A place on it for the arrow of a call-out.
    pub(super) fn tip(&self, outline: &Outline) -> (f64, f64) {
        match self.lies {
            Lies::Across { y, .. } => (self.z, y + self.r),
            Lies::In(side) if side > 0.0 => (self.z + self.r, outline.above(self.z)),
            Lies::In(_) => (self.z + self.r, -outline.below(self.z)),
        }
    }
}
