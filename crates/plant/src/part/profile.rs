//! Radius along the axis, as straight pieces. Exact: cutting a straight piece from straight
//! pieces gives straight pieces.
//!
//! Inside this module lengths are plain numbers in millimetres.

/// One straight piece of a profile, over `z0 <= z < z1`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Piece {
    /// Low end, mm.
    pub(crate) z0: f64,
    /// High end, mm.
    pub(crate) z1: f64,
    /// Radius at the low end, mm.
    pub(crate) r0: f64,
    /// Radius at the high end, mm.
    pub(crate) r1: f64,
    /// Index of the feature that made the surface; none for the surface of the stock.
    pub(crate) owner: Option<usize>,
}

impl Piece {
    /// Radius at `z`, mm.
    pub(crate) fn radius(&self, z: f64) -> f64 {
        // At its own ends the radius is returned as entered, free of rounding.
        if z <= self.z0 {
            self.r0
        } else if z >= self.z1 {
            self.r1
        } else {
            self.r0 + (self.r1 - self.r0) * (z - self.z0) / (self.z1 - self.z0)
        }
    }

    /// The part of this piece between `from` and `to`; none where they do not overlap.
    pub(crate) fn between(&self, from: f64, to: f64) -> Option<Self> {
        let (z0, z1) = (self.z0.max(from), self.z1.min(to));
        (z0 < z1).then(|| Self {
            z0,
            z1,
            r0: self.radius(z0),
            r1: self.radius(z1),
            owner: self.owner,
        })
    }

    /// Volume inside the frustum, mm³.
    pub(crate) fn volume(&self) -> f64 {
        let (a, b) = (self.r0, self.r1);
        std::f64::consts::PI * (self.z1 - self.z0) * (a * a + a * b + b * b) / 3.0
    }
}

/// Which of two surfaces stays.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stays {
    /// Turning: the smaller radius.
    Smaller,
    /// Boring: the larger radius.
    Larger,
}

/// Pieces in order of `z`, never overlapping. A gap is "no metal" outside and "solid" inside.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Profile {
    pieces: Vec<Piece>,
}

impl Profile {
    /// A profile of one piece.
    pub(crate) fn of(piece: Piece) -> Self {
        Self {
            pieces: vec![piece],
        }
    }

    /// Its pieces.
    pub(crate) fn pieces(&self) -> &[Piece] {
        &self.pieces
    }

    /// Radius just above `z` (`z` belongs to the piece that begins there); none in a gap.
    pub(crate) fn radius(&self, z: f64) -> Option<f64> {
        self.pieces
            .iter()
            .find(|p| p.z0 <= z && z < p.z1)
            .map(|p| p.radius(z))
    }

    /// Stretches that its pieces cover without a gap.
    pub(crate) fn bodies(&self) -> Vec<(f64, f64)> {
        let mut bodies: Vec<(f64, f64)> = Vec::new();
        for p in &self.pieces {
            match bodies.last_mut() {
                Some(last) if last.1.total_cmp(&p.z0).is_eq() => last.1 = p.z1,
                _ => bodies.push((p.z0, p.z1)),
            }
        }
        bodies
    }

    /// Only what lies between `from` and `to`.
    pub(crate) fn between(&self, from: f64, to: f64) -> Self {
        Self {
            pieces: self
                .pieces
                .iter()
                .filter_map(|p| p.between(from, to))
                .collect(),
        }
    }

    /// Turned down to `cut` where it stands out beyond it.
    pub(crate) fn lowered(&self, cut: Piece) -> Self {
        let mut pieces = Vec::new();
        for p in &self.pieces {
            pieces.extend(p.between(f64::NEG_INFINITY, cut.z0));
            if let (Some(here), Some(tool)) = (p.between(cut.z0, cut.z1), cut.between(p.z0, p.z1)) {
                pieces.extend(pick(here, tool, Stays::Smaller));
            }
            pieces.extend(p.between(cut.z1, f64::INFINITY));
        }
        Self { pieces }
    }

    /// Bored out to `cut` where it is smaller, and in its gaps.
    pub(crate) fn raised(&self, cut: Piece) -> Self {
        let mut pieces = Vec::new();
        let mut reached = cut.z0;
        for p in &self.pieces {
            pieces.extend(p.between(f64::NEG_INFINITY, cut.z0));
            let (Some(here), Some(tool)) = (p.between(cut.z0, cut.z1), cut.between(p.z0, p.z1))
            else {
                pieces.extend(p.between(cut.z1, f64::INFINITY));
                continue;
            };
            pieces.extend(cut.between(reached, here.z0));
            pieces.extend(pick(here, tool, Stays::Larger));
            reached = here.z1;
            pieces.extend(p.between(cut.z1, f64::INFINITY));
        }
        pieces.extend(cut.between(reached, cut.z1));
        pieces.sort_by(|a, b| a.z0.total_cmp(&b.z0));
        Self { pieces }
    }
}

/// Two pieces over the same span: what stays, split where they cross.
fn pick(here: Piece, tool: Piece, stays: Stays) -> Vec<Piece> {
    let sign = match stays {
        Stays::Smaller => 1.0,
        Stays::Larger => -1.0,
    };
    let low = sign * (tool.r0 - here.r0);
    let high = sign * (tool.r1 - here.r1);
    if low > 0.0 && high > 0.0 {
        vec![here]
    } else if low <= 0.0 && high <= 0.0 {
        vec![tool]
    } else {
        let z = here.z0 + (here.z1 - here.z0) * low / (low - high);
        let (first, second) = if low > 0.0 {
            (here, tool)
        } else {
            (tool, here)
        };
        first
            .between(here.z0, z)
            .into_iter()
            .chain(second.between(z, here.z1))
            .collect()
    }
}

/// Spans over which both profiles are single pieces, as `(outer, inner)`; the inner is missing
/// where the metal is solid.
pub(crate) fn walls(outer: &Profile, inner: &Profile) -> Vec<(Piece, Option<Piece>)> {
    let mut spans = Vec::new();
    for o in outer.pieces() {
        let mut reached = o.z0;
        for i in inner.pieces() {
            let Some(hole) = i.between(o.z0, o.z1) else {
                continue;
            };
            spans.extend(o.between(reached, hole.z0).map(|solid| (solid, None)));
            spans.extend(o.between(hole.z0, hole.z1).map(|wall| (wall, Some(hole))));
            reached = hole.z1;
        }
        spans.extend(o.between(reached, o.z1).map(|solid| (solid, None)));
    }
    spans
}

/// Both profiles only where the outside stands outside the bore: elsewhere the metal is gone.
pub(crate) fn thicker(outer: &Profile, inner: &Profile) -> (Profile, Profile) {
    let (mut out, mut hole) = (Profile::default(), Profile::default());
    let eaten = walls(outer, inner)
        .iter()
        .any(|(o, i)| i.is_some_and(|i| i.r0 >= o.r0 || i.r1 >= o.r1));
    if !eaten {
        // The drill may run on beyond the metal; the bore does not.
        for body in outer.bodies() {
            hole.pieces.extend(inner.between(body.0, body.1).pieces);
        }
        return (outer.clone(), hole);
    }
    for (o, i) in walls(outer, inner) {
        let Some(i) = i else {
            out.pieces.push(o);
            continue;
        };
        if let Some((from, to)) = thicker_between(&o, &i) {
            out.pieces.extend(o.between(from, to));
            hole.pieces.extend(i.between(from, to));
        }
    }
    (out, hole)
}

/// The stretch of a common span over which `o` is the larger.
fn thicker_between(o: &Piece, i: &Piece) -> Option<(f64, f64)> {
    let (low, high) = (o.r0 - i.r0, o.r1 - i.r1);
    let crossing = o.z0 + (o.z1 - o.z0) * low / (low - high);
    match (low > 0.0, high > 0.0) {
        (true, true) => Some((o.z0, o.z1)),
        (true, false) => Some((o.z0, crossing)),
        (false, true) => Some((crossing, o.z1)),
        (false, false) => None,
    }
}
