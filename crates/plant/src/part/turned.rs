//! A turned part: a bar less its features.
//!
//! Every feature takes metal away, so the features of a part, cut in any order, leave the same
//! shape. A finished part is [`Turned::finished`]; the order of work is simulated by calling
//! [`Turned::cut`] once an operation on [`Turned::bar`], and [`Turned::part_off`] for the parting.

use reckoning::quantity::{Area, Length, Volume};

use super::cross::{Body, Metal};
use super::feature::{CrossHole, End, Feature, Flats, Form, Span, Surface, Thread};
use super::flats;
use super::profile::{self, Piece, Profile};
use super::sizes::{NoShape, check, positive};

/// Cross-section of the bar from which a part is made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bar {
    /// Round bar of this diameter.
    Round(Length),
    /// Round bar with a bore: a thick tube.
    Hollow {
        /// Outside diameter.
        outside: Length,
        /// Bore.
        bore: Length,
    },
    /// Hexagon, by its size across flats.
    Hexagon(Length),
    /// Square, by its size across flats.
    Square(Length),
}

/// A turned part, whole or as far as the work has got.
#[derive(Clone, Debug, PartialEq)]
pub struct Turned {
    bar: Bar,
    outer: Profile,
    inner: Profile,
    features: Vec<Feature>,
}

impl Turned {
    /// A bar over a stretch of the axis of the part to be made from it.
    ///
    /// # Errors
    /// When a size is not positive.
    pub fn bar(bar: Bar, span: Span) -> Result<Self, NoShape> {
        positive("bar", "length", span.length())?;
        let (outside, bore, flats) = match bar {
            Bar::Round(diameter) => (diameter, None, None),
            Bar::Hollow { outside, bore } => {
                positive("bar", "wall", outside - bore)?;
                (outside, Some(bore), None)
            }
            Bar::Hexagon(across) => (
                across / (std::f64::consts::PI / 6.0).cos(),
                None,
                Some((6, across)),
            ),
            Bar::Square(across) => (across * std::f64::consts::SQRT_2, None, Some((4, across))),
        };
        positive("bar", "size", outside)?;
        let piece = |diameter: Length| Piece {
            z0: span.from.mm(),
            z1: span.to.mm(),
            r0: diameter.mm() / 2.0,
            r1: diameter.mm() / 2.0,
            owner: None,
        };
        if let Some(bore) = bore {
            positive("bar", "bore", bore)?;
        }
        let stock_flats = flats.map(|(count, across)| {
            let form = Form::Flats(Flats {
                span,
                count,
                from_axis: across / 2.0,
                azimuth: reckoning::quantity::Angle::from_rad(0.0),
            });
            Feature::new("bar", form)
        });
        Ok(Self {
            bar,
            outer: Profile::of(piece(outside)),
            inner: bore.map_or_else(Profile::default, |b| Profile::of(piece(b))),
            features: stock_flats.into_iter().collect(),
        })
    }

    /// A bar with all these features cut.
    ///
    /// # Errors
    /// As [`Turned::cut`].
    pub fn finished(bar: Bar, span: Span, features: &[Feature]) -> Result<Self, NoShape> {
        features
            .iter()
            .try_fold(Self::bar(bar, span)?, |shape, feature| shape.cut(feature))
    }

    /// The shape after one more feature is cut. Cutting air leaves the metal as it was.
    ///
    /// # Errors
    /// When a size of the feature is not positive, when two sets of flats share a stretch, or
    /// when no metal is left.
    pub fn cut(&self, feature: &Feature) -> Result<Self, NoShape> {
        check(feature)?;
        let mut shape = self.clone();
        shape.take(feature)?;
        shape.features.push(feature.clone());
        shape.drop_bored_away();
        if shape.outer.pieces().is_empty() {
            return Err(NoShape::Nothing {
                feature: feature.id.clone(),
            });
        }
        Ok(shape)
    }

    /// Takes the metal of a feature from the profiles.
    fn take(&mut self, feature: &Feature) -> Result<(), NoShape> {
        let owner = Some(self.features.len());
        match &feature.form {
            Form::Face { end, at } => self.keep_side(*end, at.mm()),
            Form::Turned {
                surface,
                span,
                from,
                to,
            } => {
                let piece = Piece {
                    z0: span.from.mm(),
                    z1: span.to.mm(),
                    r0: from.mm() / 2.0,
                    r1: to.mm() / 2.0,
                    owner,
                };
                match surface {
                    Surface::Outside => self.outer = self.outer.lowered(piece),
                    Surface::Inside => self.inner = self.inner.raised(piece),
                }
            }
            Form::Drilled { .. } => {
                for piece in drilled(&feature.form, owner) {
                    self.inner = self.inner.raised(piece);
                }
            }
            Form::Flats(flats) => {
                if self.flats().any(|f| f.span.shared(flats.span).is_some()) {
                    return Err(NoShape::FlatsOverlap {
                        feature: feature.id.clone(),
                    });
                }
            }
            Form::Threaded { .. } | Form::Cross(_) => {}
        }
        Ok(())
    }

    /// Parts the piece on the side of `keep` from the rest of the bar. The plane `at` becomes its
    /// face; the blade takes `blade` beyond it. Gives the piece and the remnant, if there is one.
    ///
    /// # Errors
    /// When nothing is left on the side that is kept, or the blade has no width.
    pub fn part_off(
        &self,
        id: &str,
        at: Length,
        blade: Length,
        keep: End,
    ) -> Result<(Self, Option<Self>), NoShape> {
        positive(id, "width of the blade", blade)?;
        let (away, far) = match keep {
            End::Low => (End::High, at + blade),
            End::High => (End::Low, at - blade),
        };
        let piece = self.cut(&Feature::new(id, Form::Face { end: away, at }))?;
        let rest = self.cut(&Feature::new(id, Form::Face { end: keep, at: far }));
        Ok((piece, rest.ok()))
    }

    /// The bar it is made from.
    #[must_use]
    pub fn stock(&self) -> Bar {
        self.bar
    }

    /// Features cut so far, in the order of cutting. Hexagon or square bar brings its own flats,
    /// with the id `bar`.
    #[must_use]
    pub fn features(&self) -> &[Feature] {
        &self.features
    }

    /// The feature with this id.
    #[must_use]
    pub fn feature(&self, id: &str) -> Option<&Feature> {
        self.features.iter().find(|f| f.id == id)
    }

    /// From the lowest to the highest metal.
    ///
    /// # Panics
    /// Never: a shape without metal is not made.
    #[must_use]
    pub fn span(&self) -> Span {
        let (Some(first), Some(last)) = (self.outer.pieces().first(), self.outer.pieces().last())
        else {
            panic!("a turned part has metal")
        };
        Span::mm(first.z0, last.z1)
    }

    /// Stretches of the axis that hold metal without a break; more than one and it has fallen
    /// apart.
    #[must_use]
    pub fn bodies(&self) -> Vec<Span> {
        joined(self.outer.pieces().iter().copied())
    }

    /// Volume of metal. Exact for all that is turned, drilled and bored, and for flats on
    /// cylinders; within [`super::cross::RELATIVE_ERROR`] of the hole where cross holes or flats
    /// on cones need an integral. Thread ridges are not taken off: a thread is reckoned as the
    /// cylinder that it is cut on.
    #[must_use]
    pub fn volume(&self) -> Volume {
        let round: f64 = profile::walls(&self.outer, &self.inner)
            .iter()
            .map(|(outside, bore)| self.wall_volume(outside, bore.as_ref()))
            .sum();
        let holes: Vec<Body> = self.cross_holes().map(|(_, hole)| Body::of(hole)).collect();
        let flats: Vec<Flats> = self.flats().copied().collect();
        Volume::from_mm3(round - self.metal(&flats).removed(&holes))
    }

    /// Outside diameter just above `z`; none where there is no metal.
    #[must_use]
    pub fn outside_at(&self, z: Length) -> Option<Length> {
        self.outer.radius(z.mm()).map(|r| Length::from_mm(2.0 * r))
    }

    /// Bore just above `z`; none where the metal is solid or absent.
    #[must_use]
    pub fn inside_at(&self, z: Length) -> Option<Length> {
        self.inner.radius(z.mm()).map(|r| Length::from_mm(2.0 * r))
    }

    /// Where the surface that a feature left is still there.
    #[must_use]
    pub fn remains(&self, id: &str) -> Vec<Span> {
        let owned = |p: &&Piece| p.owner.is_some_and(|i| self.features[i].id == id);
        let profile = self.outer.pieces().iter().filter(owned).copied();
        let bore = self.inner.pieces().iter().filter(owned).copied();
        let mut spans = joined(profile);
        spans.extend(joined(bore));
        spans
    }

    /// Where the surface of the bar itself is still there, outside.
    #[must_use]
    pub fn bar_remains(&self) -> Vec<Span> {
        joined(
            self.outer
                .pieces()
                .iter()
                .filter(|p| p.owner.is_none())
                .copied(),
        )
    }

    /// Straight pieces of the outside, low end first: stretch, diameter at its low end and at its
    /// high end, id of the feature that made it.
    pub fn outside(&self) -> impl Iterator<Item = Straight<'_>> {
        self.outer.pieces().iter().map(|p| self.straight(p))
    }

    /// Straight pieces of the bore, as [`Turned::outside`]; where there is none the metal is solid.
    pub fn inside(&self) -> impl Iterator<Item = Straight<'_>> {
        self.inner.pieces().iter().map(|p| self.straight(p))
    }

    /// Cross holes with their ids.
    pub fn cross_holes(&self) -> impl Iterator<Item = (&str, &CrossHole)> {
        self.features.iter().filter_map(|f| match &f.form {
            Form::Cross(hole) => Some((f.id.as_str(), hole)),
            _ => None,
        })
    }

    /// Threads: id, surface, stretch, thread.
    pub fn threads(&self) -> impl Iterator<Item = (&str, Surface, Span, &Thread)> {
        self.features.iter().filter_map(|f| match &f.form {
            Form::Threaded {
                surface,
                span,
                thread,
            } => Some((f.id.as_str(), *surface, *span, thread)),
            _ => None,
        })
    }

    /// Sets of flats, those of the bar included.
    pub fn flats(&self) -> impl Iterator<Item = &Flats> {
        self.features.iter().filter_map(|f| match &f.form {
            Form::Flats(flats) => Some(flats),
            _ => None,
        })
    }

    /// Area of metal in the section square to the axis just above `z`, cross holes apart.
    #[must_use]
    pub fn section_at(&self, z: Length) -> Option<Area> {
        let outside = self.outer.radius(z.mm())?;
        let cutters: Vec<&Flats> = self.flats().filter(|f| f.span.holds(z)).collect();
        let area = |r: f64| flats::disc(r, cutters.first().copied());
        let bore = self.inner.radius(z.mm()).map_or(0.0, area);
        Some(Area::from_mm2(area(outside) - bore))
    }

    pub(crate) fn profiles(&self) -> (&Profile, &Profile) {
        (&self.outer, &self.inner)
    }

    pub(crate) fn metal<'a>(&'a self, flats: &'a [Flats]) -> Metal<'a> {
        Metal {
            outer: &self.outer,
            inner: &self.inner,
            flats,
        }
    }

    fn straight(&self, piece: &Piece) -> Straight<'_> {
        Straight {
            span: Span::mm(piece.z0, piece.z1),
            from: Length::from_mm(2.0 * piece.r0),
            to: Length::from_mm(2.0 * piece.r1),
            feature: piece.owner.map(|i| self.features[i].id.as_str()),
        }
    }

    fn keep_side(&mut self, faced: End, at: f64) {
        let (from, to) = match faced {
            End::Low => (at, f64::INFINITY),
            End::High => (f64::NEG_INFINITY, at),
        };
        self.outer = self.outer.between(from, to);
        self.inner = self.inner.between(from, to);
    }

    /// Takes away the stretches where the bore has eaten the whole wall.
    fn drop_bored_away(&mut self) {
        let (outer, inner) = profile::thicker(&self.outer, &self.inner);
        self.outer = outer;
        self.inner = inner;
    }

    fn wall_volume(&self, outside: &Piece, bore: Option<&Piece>) -> f64 {
        let mut volume = 0.0;
        let mut round = vec![(outside.z0, outside.z1)];
        for f in self.flats() {
            let (from, to) = (f.span.from.mm(), f.span.to.mm());
            round = round
                .iter()
                .flat_map(|(a, b)| [(*a, b.min(from)), (a.max(to), *b)])
                .filter(|(a, b)| a < b)
                .collect();
            let within = |p: &Piece| p.between(from, to).map_or(0.0, |p| flats::volume(&p, f));
            volume += within(outside) - bore.map_or(0.0, within);
        }
        for (from, to) in round {
            let within = |p: &Piece| p.between(from, to).map_or(0.0, |p| p.volume());
            volume += within(outside) - bore.map_or(0.0, within);
        }
        volume
    }
}

/// One straight piece of an outline.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Straight<'a> {
    /// Its stretch.
    pub span: Span,
    /// Diameter at the low end.
    pub from: Length,
    /// Diameter at the high end.
    pub to: Length,
    /// The feature that made it; none for the surface of the bar.
    pub feature: Option<&'a str>,
}

/// The pieces that a drill leaves.
fn drilled(form: &Form, owner: Option<usize>) -> Vec<Piece> {
    let Form::Drilled {
        from,
        mouth,
        diameter,
        depth,
        point,
    } = form
    else {
        return Vec::new();
    };
    let (mouth, depth, radius) = (mouth.mm(), depth.mm(), diameter.mm() / 2.0);
    let cone = point.length(*diameter).mm();
    let sign = match from {
        End::Low => 1.0,
        End::High => -1.0,
    };
    let full = mouth + sign * depth;
    let tip = full + sign * cone;
    let between = |a: (f64, f64), b: (f64, f64)| {
        let (low, high) = if a.0 < b.0 { (a, b) } else { (b, a) };
        Piece {
            z0: low.0,
            z1: high.0,
            r0: low.1,
            r1: high.1,
            owner,
        }
    };
    let mut pieces = vec![between((mouth, radius), (full, radius))];
    if cone > 0.0 {
        pieces.push(between((full, radius), (tip, 0.0)));
    }
    pieces
}

/// Pieces that touch, as whole stretches.
fn joined(pieces: impl Iterator<Item = Piece>) -> Vec<Span> {
    let mut spans: Vec<Span> = Vec::new();
    for p in pieces {
        let piece = Span::mm(p.z0, p.z1);
        match spans.last_mut() {
            Some(last) if last.to == piece.from => last.to = piece.to,
            _ => spans.push(piece),
        }
    }
    spans
}
