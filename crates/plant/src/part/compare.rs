//! A simulated part held against the drawing, feature by feature.

use reckoning::quantity::Length;

use super::feature::{CrossHole, Feature, Flats, Form, Span, Surface};
use super::profile::Profile;
use super::turned::Turned;

/// One way in which a part differs from its drawing.
#[derive(Clone, Debug, PartialEq)]
pub enum Difference {
    /// A thread, cross hole or set of flats on the drawing has not been cut.
    Missing {
        /// Id of the feature.
        id: String,
    },
    /// A thread, cross hole or set of flats has been cut that the drawing does not show.
    Extra {
        /// Id of the feature.
        id: String,
    },
    /// A thread, cross hole or set of flats has another form than drawn.
    Form {
        /// Id of the feature.
        id: String,
    },
    /// The outside or the bore has another diameter than drawn. `None` is: no metal outside,
    /// solid inside.
    Diameter {
        /// Outside or inside.
        surface: Surface,
        /// Over which stretch.
        span: Span,
        /// The feature which the drawing shows there.
        feature: Option<String>,
        /// Diameter drawn, in the middle of the stretch.
        drawn: Option<Length>,
        /// Diameter there now.
        made: Option<Length>,
    },
}

impl Turned {
    /// How `self`, as far as the work has got, differs from `drawing` by more than `within`.
    /// Nothing: the part is made.
    #[must_use]
    pub fn differs_from(&self, drawing: &Self, within: Length) -> Vec<Difference> {
        let mut found = Vec::new();
        for feature in drawing.features().iter().filter(|f| counted(f)) {
            let same = self
                .features()
                .iter()
                .find(|f| same_form(&f.form, &feature.form, within));
            let named = self.feature(&feature.id);
            match (same, named) {
                (Some(_), _) => {}
                (None, Some(_)) => found.push(Difference::Form {
                    id: feature.id.clone(),
                }),
                (None, None) => found.push(Difference::Missing {
                    id: feature.id.clone(),
                }),
            }
        }
        for feature in self.features().iter().filter(|f| counted(f)) {
            let drawn = drawing
                .features()
                .iter()
                .any(|f| same_form(&f.form, &feature.form, within));
            if !drawn && drawing.feature(&feature.id).is_none() {
                found.push(Difference::Extra {
                    id: feature.id.clone(),
                });
            }
        }
        for surface in [Surface::Outside, Surface::Inside] {
            found.extend(self.diameters_off(drawing, surface, within));
        }
        found
    }

    fn profile(&self, surface: Surface) -> &Profile {
        let (outer, inner) = self.profiles();
        match surface {
            Surface::Outside => outer,
            Surface::Inside => inner,
        }
    }

    fn diameters_off(&self, drawing: &Self, surface: Surface, within: Length) -> Vec<Difference> {
        let (made, drawn) = (self.profile(surface), drawing.profile(surface));
        let mut marks: Vec<f64> = made
            .pieces()
            .iter()
            .chain(drawn.pieces())
            .flat_map(|p| [p.z0, p.z1])
            .collect();
        marks.sort_by(f64::total_cmp);
        marks.dedup();
        let mut found = Vec::new();
        for pair in marks.windows(2) {
            let span = (pair[0], pair[1]);
            if pair[1] - pair[0] <= within.mm() || same(made, drawn, span, within) {
                continue;
            }
            let middle = 0.5 * (pair[0] + pair[1]);
            let diameter = |p: &Profile| p.radius(middle).map(|r| Length::from_mm(2.0 * r));
            let owner = drawn
                .pieces()
                .iter()
                .find(|p| p.z0 <= middle && middle < p.z1);
            found.push(Difference::Diameter {
                surface,
                span: Span::mm(pair[0], pair[1]),
                feature: owner
                    .and_then(|p| p.owner)
                    .map(|i| drawing.features()[i].id.clone()),
                drawn: diameter(drawn),
                made: diameter(made),
            });
        }
        found
    }
}

/// Whether two profiles agree over a stretch in which each is one piece or a gap.
fn same(a: &Profile, b: &Profile, (from, to): (f64, f64), within: Length) -> bool {
    let ends = |p: &Profile| {
        let cut = p.between(from, to);
        cut.pieces().first().map(|piece| (piece.r0, piece.r1))
    };
    match (ends(a), ends(b)) {
        (None, None) => true,
        (Some(a), Some(b)) => {
            2.0 * (a.0 - b.0).abs() <= within.mm() && 2.0 * (a.1 - b.1).abs() <= within.mm()
        }
        _ => false,
    }
}

/// Features that the profiles do not show.
fn counted(feature: &Feature) -> bool {
    matches!(
        feature.form,
        Form::Threaded { .. } | Form::Cross(_) | Form::Flats(_)
    )
}

fn same_form(a: &Form, b: &Form, within: Length) -> bool {
    let near = |p: Length, q: Length| (p - q).mm().abs() <= within.mm();
    let spans = |p: Span, q: Span| near(p.from, q.from) && near(p.to, q.to);
    match (a, b) {
        (Form::Cross(a), Form::Cross(b)) => {
            near(a.z, b.z)
                && near(a.diameter, b.diameter)
                && near(a.offset, b.offset)
                && a.depth == b.depth
                && round_by(a, b) <= within.mm()
        }
        (Form::Flats(a), Form::Flats(b)) => {
            a.count == b.count
                && near(a.from_axis, b.from_axis)
                && spans(a.span, b.span)
                && turned(a, b)
        }
        (
            Form::Threaded {
                surface: s,
                span: p,
                thread: t,
            },
            Form::Threaded {
                surface: s2,
                span: p2,
                thread: t2,
            },
        ) => s == s2 && t == t2 && spans(*p, *p2),
        _ => false,
    }
}

/// How far apart two holes lie round the part, measured at the radius of the hole, mm.
fn round_by(a: &CrossHole, b: &CrossHole) -> f64 {
    let turn = (a.azimuth.rad() - b.azimuth.rad()).rem_euclid(std::f64::consts::TAU);
    turn.min(std::f64::consts::TAU - turn) * a.diameter.mm()
}

/// Whether two sets of flats stand at the same azimuth, one flat for another.
fn turned(a: &Flats, b: &Flats) -> bool {
    let step = std::f64::consts::TAU / f64::from(a.count);
    let turn = (a.azimuth.rad() - b.azimuth.rad()).rem_euclid(step);
    turn.min(step - turn) < 1e-9
}
