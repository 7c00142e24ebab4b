//! Features: what is cut from the stock of a turned part, each with its id.
//!
//! Positions `z` run along the axis of the part from its datum; azimuths run round it.

use reckoning::Tolerance;
use reckoning::quantity::{Angle, Length};

/// A stretch of the axis, half open: `from <= z < to`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Low end.
    pub from: Length,
    /// High end.
    pub to: Length,
}

impl Span {
    /// From `from` to `to` in millimetres.
    #[must_use]
    pub fn mm(from: f64, to: f64) -> Self {
        Self {
            from: Length::from_mm(from),
            to: Length::from_mm(to),
        }
    }

    /// Its length.
    #[must_use]
    pub fn length(self) -> Length {
        self.to - self.from
    }

    /// Whether `z` lies in it.
    #[must_use]
    pub fn holds(self, z: Length) -> bool {
        self.from <= z && z < self.to
    }

    /// What it shares with another; none where they do not overlap.
    #[must_use]
    pub fn shared(self, other: Self) -> Option<Self> {
        let from = if self.from > other.from {
            self.from
        } else {
            other.from
        };
        let to = if self.to < other.to {
            self.to
        } else {
            other.to
        };
        (from < to).then_some(Self { from, to })
    }

    /// A stretch of this length that runs inwards from a plane facing an end.
    #[must_use]
    pub fn inwards(plane: Length, facing: End, length: Length) -> Self {
        match facing {
            End::Low => Self {
                from: plane,
                to: plane + length,
            },
            End::High => Self {
                from: plane - length,
                to: plane,
            },
        }
    }

    /// The plane at one of its ends.
    #[must_use]
    pub fn face(self, end: End) -> Length {
        match end {
            End::Low => self.from,
            End::High => self.to,
        }
    }

    /// So much of it, from one of its ends.
    #[must_use]
    pub fn first(self, end: End, length: Length) -> Self {
        Self::inwards(self.face(end), end, length)
    }

    /// What of it lies between a stretch within it and one of its ends.
    #[must_use]
    pub fn way_out(self, within: Self, end: End) -> Self {
        match end {
            End::Low => Self {
                from: self.from,
                to: within.from,
            },
            End::High => Self {
                from: within.to,
                to: self.to,
            },
        }
    }

    /// Whether it holds the whole of another.
    #[must_use]
    pub fn covers(self, other: Self) -> bool {
        self.from <= other.from && other.to <= self.to
    }
}

/// An end of a part along its axis.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum End {
    /// The end of least `z`.
    Low,
    /// The end of greatest `z`.
    High,
}

/// How the bottom of a hole is shaped.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Point {
    /// Square across, as left by an end mill, a half-round bit or a boring tool.
    Flat,
    /// A cone of this included angle, as left by a drill.
    Cone(Angle),
}

impl Point {
    /// Included angle of the point of an ordinary twist drill, degrees (common practice).
    pub const DRILL_DEG: f64 = 118.0;

    /// The point of an ordinary twist drill.
    #[must_use]
    pub fn drill() -> Self {
        Self::Cone(Angle::from_deg(Self::DRILL_DEG))
    }

    /// How far the point reaches beyond the full diameter.
    #[must_use]
    pub fn length(self, diameter: Length) -> Length {
        match self {
            Self::Flat => Length::from_mm(0.0),
            Self::Cone(included) => diameter / 2.0 / (included.rad() / 2.0).tan(),
        }
    }
}

/// Outside or inside of the metal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Surface {
    /// Turned: metal lies towards the axis.
    Outside,
    /// Bored: metal lies away from the axis.
    Inside,
}

/// A thread by its standard name, with the sizes that geometry needs.
#[derive(Clone, Debug, PartialEq)]
pub struct Thread {
    /// Name in its series (`ME 1/4 x 40`, `M8 x 1`).
    pub designation: String,
    /// Major diameter.
    pub major: Length,
    /// Diameter at the root of the external thread.
    pub core: Length,
    /// Pitch.
    pub pitch: Length,
}

/// How far a cross hole goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CrossDepth {
    /// Right through, both walls.
    Through,
    /// Through the wall of entry only, ending in the bore on the plane of the axis.
    NearWall,
    /// To a depth. `bottom` is how far from the plane of the axis the full diameter ends,
    /// positive on the side of entry, negative past the axis.
    Blind {
        /// Where the full diameter ends.
        bottom: Length,
        /// The shape of the bottom.
        point: Point,
    },
}

/// A hole drilled square to the axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossHole {
    /// Where its centre line lies along the axis.
    pub z: Length,
    /// Azimuth of the side from which it is drilled.
    pub azimuth: Angle,
    /// Distance of its centre line from the axis, positive in the direction of growing azimuth.
    pub offset: Length,
    /// Diameter.
    pub diameter: Length,
    /// How far it goes.
    pub depth: CrossDepth,
}

/// Flats evenly spaced round the axis: one, two, a square, a hexagon.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flats {
    /// Over which stretch.
    pub span: Span,
    /// How many.
    pub count: u8,
    /// Distance of each from the axis: half the size across flats.
    pub from_axis: Length,
    /// Azimuth of the middle of the first.
    pub azimuth: Angle,
}

/// The geometry of a feature.
#[derive(Clone, Debug, PartialEq)]
pub enum Form {
    /// All metal beyond the plane `at` towards `end` is gone: faced, parted or sawn.
    Face {
        /// Which end is faced.
        end: End,
        /// Where the plane lies.
        at: Length,
    },
    /// A cylinder, a cone, a chamfer or a groove, outside or inside: the diameter runs straight
    /// from `from` at the low end of the span to `to` at its high end.
    Turned {
        /// Outside or inside.
        surface: Surface,
        /// Over which stretch.
        span: Span,
        /// Diameter at the low end.
        from: Length,
        /// Diameter at the high end.
        to: Length,
    },
    /// A hole drilled along the axis from one end.
    Drilled {
        /// From which end.
        from: End,
        /// The plane from which its depth is measured.
        mouth: Length,
        /// Diameter.
        diameter: Length,
        /// Depth of the full diameter below the mouth.
        depth: Length,
        /// Shape of the bottom.
        point: Point,
    },
    /// A thread on a surface that is turned, drilled or bored by another feature.
    Threaded {
        /// On which surface.
        surface: Surface,
        /// Over which stretch it is full.
        span: Span,
        /// Which thread.
        thread: Thread,
    },
    /// A hole square to the axis.
    Cross(CrossHole),
    /// Flats.
    Flats(Flats),
}

/// Features that must share one axis, and how truly.
#[derive(Clone, Debug, PartialEq)]
pub struct Coaxial {
    /// Name of the group within the part.
    pub group: String,
    /// Diameter of the zone in which the axis must lie (ISO 1101); an eccentricity of half of it
    /// is allowed.
    pub zone: Length,
}

/// How the surface is finished, where that matters to the order of work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Finish {
    /// As left by the cutting tool.
    Cut,
    /// Reamed.
    Reamed,
    /// Lapped or ground.
    Lapped,
    /// A seat on which a ball or cone closes.
    Seat,
    /// Knurled.
    Knurled,
}

/// One feature of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct Feature {
    /// Id within its part.
    pub id: String,
    /// Geometry.
    pub form: Form,
    /// Tolerance on its size, where one is asked.
    pub tolerance: Option<Tolerance>,
    /// The group whose axis it shares.
    pub coaxial: Option<Coaxial>,
    /// Finish.
    pub finish: Finish,
}

impl Feature {
    /// A feature as cut, without tolerance or group.
    #[must_use]
    pub fn new(id: impl Into<String>, form: Form) -> Self {
        Self {
            id: id.into(),
            form,
            tolerance: None,
            coaxial: None,
            finish: Finish::Cut,
        }
    }

    /// The same with a tolerance.
    #[must_use]
    pub fn within(mut self, tolerance: Tolerance) -> Self {
        self.tolerance = Some(tolerance);
        self
    }

    /// The same in a group that shares one axis.
    #[must_use]
    pub fn true_to(mut self, group: impl Into<String>, zone: Length) -> Self {
        self.coaxial = Some(Coaxial {
            group: group.into(),
            zone,
        });
        self
    }

    /// The same with a finish.
    #[must_use]
    pub fn finished(mut self, finish: Finish) -> Self {
        self.finish = finish;
        self
    }
}

impl Form {
    /// A cylinder over `span`.
    #[must_use]
    pub fn cylinder(surface: Surface, span: Span, diameter: Length) -> Self {
        Self::Turned {
            surface,
            span,
            from: diameter,
            to: diameter,
        }
    }

    /// Diameter of a hole along the axis; none for what is not one, and for cones.
    #[must_use]
    pub fn bore(&self) -> Option<Length> {
        match self {
            Self::Drilled { diameter, .. } => Some(*diameter),
            Self::Turned {
                surface: Surface::Inside,
                from,
                to,
                ..
            } if from == to => Some(*from),
            _ => None,
        }
    }

    /// Whether it is a thread on this surface.
    #[must_use]
    pub fn threads(&self, on: Surface) -> bool {
        matches!(self, Self::Threaded { surface, .. } if *surface == on)
    }

    /// The stretch of the axis it touches; none for a face, which has no length.
    #[must_use]
    pub fn span(&self) -> Option<Span> {
        match self {
            Self::Face { .. } => None,
            Self::Turned { span, .. } | Self::Threaded { span, .. } => Some(*span),
            Self::Flats(flats) => Some(flats.span),
            Self::Cross(hole) => Some(Span {
                from: hole.z - hole.diameter / 2.0,
                to: hole.z + hole.diameter / 2.0,
            }),
            Self::Drilled {
                from,
                mouth,
                diameter,
                depth,
                point,
            } => {
                let reach = *depth + point.length(*diameter);
                Some(Span::inwards(*mouth, *from, reach))
            }
        }
    }
}
