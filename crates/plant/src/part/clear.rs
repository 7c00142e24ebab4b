//! How much metal is left: walls, floors, webs between holes, and where a drill breaks out.
//!
//! Threads are counted at the depth to which they cut: an external thread at its core, an
//! internal thread at its major diameter. Amounts may be negative: by so much the metal is gone.

use reckoning::quantity::Length;

use super::feature::{CrossDepth, CrossHole, End, Form, Point, Span, Surface};
use super::profile;
use super::turned::Turned;

/// Pieces nearer than this along the axis touch, mm.
const TOUCHING_MM: f64 = 1e-9;

/// A radial wall and where it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wall {
    /// Metal between bore and outside, on the radius.
    pub thickness: Length,
    /// Where along the axis.
    pub z: Length,
}

/// What lies beyond the point of a hole drilled along the axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Floor {
    /// Metal of this thickness on the axis.
    Left(Length),
    /// The point has gone through the far face by this much.
    Through(Length),
    /// The point has run into another hole.
    Meets,
}

/// Where the point of a cross hole ends, on its own centre line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TipAt {
    /// In the wall of entry, with this much metal before the bore.
    NearWall(Length),
    /// In the bore, this far short of the opposite wall.
    Bore(Length),
    /// In solid metal or in the opposite wall, with this much metal before the outside.
    FarWall(Length),
    /// Out on the far side by this much.
    Out(Length),
}

impl Turned {
    /// The least radial wall over a stretch, threads and flats counted; none where no bore meets
    /// metal there.
    #[must_use]
    pub fn wall_over(&self, stretch: Span) -> Option<Wall> {
        let (outer, inner) = self.profiles();
        let (from, to) = (stretch.from.mm(), stretch.to.mm());
        profile::walls(&outer.between(from, to), &inner.between(from, to))
            .into_iter()
            .filter_map(|(outside, bore)| bore.map(|bore| (outside, bore)))
            .flat_map(|(outside, bore)| self.walls_of(&outside, &bore))
            .min_by(|a, b| a.thickness.mm().total_cmp(&b.thickness.mm()))
    }

    /// The least radial wall of the whole part.
    #[must_use]
    pub fn least_wall(&self) -> Option<Wall> {
        self.wall_over(self.span())
    }

    /// Walls at the ends of every stretch on which nothing changes form.
    fn walls_of(&self, outside: &profile::Piece, bore: &profile::Piece) -> Vec<Wall> {
        let mut marks = vec![outside.z0, outside.z1];
        let spans = self
            .threads()
            .map(|t| t.2)
            .chain(self.flats().map(|f| f.span));
        for span in spans {
            marks.extend([span.from.mm(), span.to.mm()]);
        }
        marks.retain(|z| outside.z0 <= *z && *z <= outside.z1);
        marks.sort_by(f64::total_cmp);
        marks.dedup();
        let mut walls = Vec::new();
        for pair in marks.windows(2) {
            let middle = 0.5 * (pair[0] + pair[1]);
            let (most, least) = self.limits_at(Length::from_mm(middle));
            for z in [pair[0], pair[1]] {
                let out = outside.radius(z).min(most);
                let hole = bore.radius(z).max(least);
                walls.push(Wall {
                    thickness: Length::from_mm(out - hole),
                    z: Length::from_mm(z),
                });
            }
        }
        walls
    }

    /// Greatest outside radius and least bore radius that threads and flats leave at `z`, mm.
    fn limits_at(&self, z: Length) -> (f64, f64) {
        let (mut most, mut least) = (f64::INFINITY, 0.0_f64);
        for (_, surface, span, thread) in self.threads() {
            if span.holds(z) {
                match surface {
                    Surface::Outside => most = most.min(thread.core.mm() / 2.0),
                    Surface::Inside => least = least.max(thread.major.mm() / 2.0),
                }
            }
        }
        for flats in self.flats().filter(|f| f.span.holds(z)) {
            most = most.min(flats.from_axis.mm());
        }
        (most, least)
    }

    /// What lies beyond the point of the hole drilled along the axis with this id; none where
    /// the id names no such hole.
    #[must_use]
    pub fn floor(&self, id: &str) -> Option<Floor> {
        let Form::Drilled {
            from,
            mouth,
            diameter,
            depth,
            point,
        } = &self.feature(id)?.form
        else {
            return None;
        };
        let reach = (*depth + point.length(*diameter)).mm();
        // Distances are counted from the mouth inwards.
        let inwards = |z: f64| match from {
            End::Low => z - mouth.mm(),
            End::High => mouth.mm() - z,
        };
        let whole = self.span();
        let far = match from {
            End::Low => inwards(whole.to.mm()),
            End::High => inwards(whole.from.mm()),
        };
        if reach >= far {
            return Some(Floor::Through(Length::from_mm(reach - far)));
        }
        let reached = self.solid_from(reach, &inwards);
        Some(if reached > reach {
            Floor::Left(Length::from_mm(reached - reach))
        } else {
            Floor::Meets
        })
    }

    /// How far the axis is solid without a break from a distance on, counted by `inwards`, mm.
    fn solid_from(&self, from: f64, inwards: &dyn Fn(f64) -> f64) -> f64 {
        let (outer, inner) = self.profiles();
        let mut solid: Vec<(f64, f64)> = profile::walls(outer, inner)
            .into_iter()
            .filter(|(_, bore)| bore.is_none())
            .map(|(o, _)| {
                let (a, b) = (inwards(o.z0), inwards(o.z1));
                (a.min(b), a.max(b))
            })
            .collect();
        solid.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut reached = from;
        for (a, b) in solid {
            if a <= reached + TOUCHING_MM && b > reached {
                reached = b;
            }
        }
        reached
    }

    /// Where the point of a cross hole ends; none for a hole that goes right through, or that
    /// has no metal round it.
    #[must_use]
    pub fn tip(&self, hole: &CrossHole) -> Option<TipAt> {
        let tip = match hole.depth {
            CrossDepth::Through => return None,
            CrossDepth::NearWall => 0.0,
            CrossDepth::Blind { bottom, point } => (bottom - point.length(hole.diameter)).mm(),
        };
        let chord = |d: Length| {
            let (r, e) = (d.mm() / 2.0, hole.offset.mm());
            (r > e.abs()).then(|| (r * r - e * e).sqrt())
        };
        let outside = chord(self.outside_at(hole.z)?)?;
        let bore = self.inside_at(hole.z).and_then(chord);
        Some(match bore {
            Some(bore) if tip > bore => TipAt::NearWall(Length::from_mm(tip - bore)),
            Some(bore) if tip > -bore => TipAt::Bore(Length::from_mm(tip + bore)),
            _ if tip > -outside => TipAt::FarWall(Length::from_mm(tip + outside)),
            _ => TipAt::Out(Length::from_mm(-outside - tip)),
        })
    }

    /// How far past the wall of entry the full diameter of a cross hole goes; negative while the
    /// opening into the bore is not yet full. None where there is no bore, where the hole is as
    /// wide as the bore, or where it goes right through.
    #[must_use]
    pub fn past_full_opening(&self, hole: &CrossHole) -> Option<Length> {
        let bottom = match hole.depth {
            CrossDepth::Through => return None,
            CrossDepth::NearWall => 0.0,
            CrossDepth::Blind { bottom, .. } => bottom.mm(),
        };
        let bore = self.inside_at(hole.z)?.mm() / 2.0;
        let corner = hole.offset.mm().abs() + hole.diameter.mm() / 2.0;
        (corner < bore).then(|| Length::from_mm((bore * bore - corner * corner).sqrt() - bottom))
    }

    /// Metal between the edge of a cross hole and the nearer end of the part, along the axis.
    #[must_use]
    pub fn edge_of(&self, hole: &CrossHole) -> Length {
        let (span, half) = (self.span(), hole.diameter / 2.0);
        let low = hole.z - half - span.from;
        let high = span.to - hole.z - half;
        if low < high { low } else { high }
    }

    /// Least metal between two cross holes, reckoned between their centre lines where these run
    /// in metal, less both radii: never more than the true web. Negative: they meet. None where
    /// one of them has no metal on its centre line.
    #[must_use]
    pub fn web(&self, a: &CrossHole, b: &CrossHole) -> Option<Length> {
        let radii = (a.diameter + b.diameter) / 2.0;
        let (of_a, of_b) = (self.lines_in_metal(a), self.lines_in_metal(b));
        of_a.iter()
            .flat_map(|p| of_b.iter().map(|q| between_lines(p, q)))
            .min_by(f64::total_cmp)
            .map(|least| Length::from_mm(least) - radii)
    }

    /// The centre line of a cross hole where it runs in metal: ends in mm, `z` last.
    fn lines_in_metal(&self, hole: &CrossHole) -> Vec<Line> {
        let e = hole.offset.mm();
        let chord = |d: Length| {
            let square = d.mm() * d.mm() / 4.0 - e * e;
            (square > 0.0).then(|| square.sqrt())
        };
        let Some(outside) = self.outside_at(hole.z).and_then(chord) else {
            return Vec::new();
        };
        let bore = self.inside_at(hole.z).and_then(chord);
        let end = match hole.depth {
            CrossDepth::Through => -outside,
            CrossDepth::NearWall => 0.0,
            CrossDepth::Blind { bottom, point } => match point {
                Point::Flat => bottom.mm(),
                Point::Cone(_) => (bottom - point.length(hole.diameter)).mm(),
            },
        };
        let stretches = match bore {
            Some(bore) => vec![(bore, outside), (-outside, -bore)],
            None => vec![(-outside, outside)],
        };
        let (sine, cosine) = hole.azimuth.rad().sin_cos();
        let at = |x: f64| [x * cosine - e * sine, x * sine + e * cosine, hole.z.mm()];
        stretches
            .into_iter()
            .filter(|(_, far)| *far > end)
            .map(|(near, far)| Line(at(near.max(end)), at(far)))
            .collect()
    }
}

/// A straight line between two points, mm.
struct Line([f64; 3], [f64; 3]);

/// Least distance between two straight lines of limited length.
fn between_lines(p: &Line, q: &Line) -> f64 {
    let sub = |a: [f64; 3], b: [f64; 3]| [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
    let dot = |a: [f64; 3], b: [f64; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    let (u, v, w) = (sub(p.1, p.0), sub(q.1, q.0), sub(p.0, q.0));
    let (uu, uv, vv, uw, vw) = (dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w));
    let apart = |s: f64, t: f64| {
        let d = [0, 1, 2].map(|i| w[i] + s * u[i] - t * v[i]);
        dot(d, d).sqrt()
    };
    // The least lies either inside both lines or at an end of one of them.
    let mut least = f64::INFINITY;
    let det = uu * vv - uv * uv;
    if det > 1e-12 * uu * vv {
        let (s, t) = ((uv * vw - vv * uw) / det, (uu * vw - uv * uw) / det);
        if (0.0..=1.0).contains(&s) && (0.0..=1.0).contains(&t) {
            least = apart(s, t);
        }
    }
    // The foot of a square dropped on a line lies on it or at one of its ends.
    for end in [0.0, 1.0] {
        let t = ((vw + end * uv) / vv).clamp(0.0, 1.0);
        least = least.min(apart(end, t));
        let s = ((end * uv - uw) / uu).clamp(0.0, 1.0);
        least = least.min(apart(s, end));
    }
    least
}
