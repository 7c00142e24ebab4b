//! The display list: marks on paper, in drawing millimetres, `y` upwards.
//!
//! It knows nothing of SVG or DXF. A mark may be compound (a hatched area, a dimension); every
//! compound mark says what simple marks it stands for, so that a writer may keep it whole or
//! write it out ([`Mark::simple`]).

use crate::{dimension::Dimension, hatch::Hatch};

/// A point on the paper, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct At {
    /// To the right.
    pub x: f64,
    /// Upwards.
    pub y: f64,
}

/// A point on the paper, mm.
#[must_use]
pub fn at(x: f64, y: f64) -> At {
    At { x, y }
}

impl At {
    /// The point moved by this much.
    #[must_use]
    pub fn moved(self, x: f64, y: f64) -> Self {
        at(self.x + x, self.y + y)
    }
}

/// What a mark is for; this decides its line (ISO 128-2: two widths, 0.5 and 0.25 mm).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Layer {
    /// Edges that are seen or cut: wide, continuous.
    Outline,
    /// Edges behind metal: narrow, dashed.
    Hidden,
    /// Axes and centre lines: narrow, long dash and dot.
    Axis,
    /// Hatching of cut metal: narrow, continuous.
    Hatch,
    /// Roots of threads, the water line, crossed diagonals of flats: narrow, continuous.
    Thin,
    /// Dimension, extension and leader lines: narrow, continuous.
    Dimension,
    /// Lettering.
    Text,
}

impl Layer {
    /// All of them, in the order in which they are drawn.
    pub const ALL: [Self; 7] = [
        Self::Hatch,
        Self::Thin,
        Self::Hidden,
        Self::Axis,
        Self::Outline,
        Self::Dimension,
        Self::Text,
    ];

    /// Its name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Outline => "outline",
            Self::Hidden => "hidden",
            Self::Axis => "axis",
            Self::Hatch => "hatch",
            Self::Thin => "thin",
            Self::Dimension => "dimension",
            Self::Text => "text",
        }
    }

    /// Width of its line, mm.
    #[must_use]
    pub fn width(self) -> f64 {
        match self {
            Self::Outline => 0.5,
            _ => 0.25,
        }
    }

    /// Dashes and gaps by turns, mm; nothing for a continuous line.
    #[must_use]
    pub fn dashes(self) -> &'static [f64] {
        match self {
            Self::Hidden => &[3.0, 1.0],
            Self::Axis => &[6.0, 1.0, 0.5, 1.0],
            _ => &[],
        }
    }
}

/// Which point of a text its place is, along the text; across it is always the base line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// Which way a text runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Runs {
    /// Left to right.
    Across,
    /// Upwards, to be read from the right of the sheet.
    Up,
}

/// A line of lettering.
#[derive(Clone, Debug, PartialEq)]
pub struct Text {
    /// Where its anchor is.
    pub at: At,
    /// Which point of it that is.
    pub anchor: Anchor,
    /// Size of the type (em), mm.
    pub size: f64,
    /// Which way it runs.
    pub runs: Runs,
    /// The lettering.
    pub says: String,
}

/// One mark.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// A straight line.
    Line(At, At),
    /// An arc, anticlockwise between two angles in degrees from the `x` axis.
    Arc {
        /// Centre.
        centre: At,
        /// Radius, mm.
        radius: f64,
        /// Where it begins, degrees.
        from: f64,
        /// Where it ends, degrees, greater than `from` by less than 360.
        to: f64,
    },
    /// A circle.
    Circle {
        /// Centre.
        centre: At,
        /// Radius, mm.
        radius: f64,
    },
    /// Straight lines from point to point.
    Open(Vec<At>),
    /// The same, back to the first point.
    Closed(Vec<At>),
    /// A closed area filled with ink: an arrow head.
    Filled(Vec<At>),
    /// Cut metal.
    Hatch(Hatch),
    /// A dimension.
    Dimension(Dimension),
    /// Lettering.
    Text(Text),
}

/// A mark with its layer and the part or feature it shows.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    /// Layer.
    pub layer: Layer,
    /// Id of the part or feature in the plan, where the mark belongs to one.
    pub part: Option<String>,
    /// The mark.
    pub mark: Mark,
}

impl Mark {
    /// The simple marks that it stands for, each with the layer that a compound gives it; a
    /// simple mark stands for itself.
    #[must_use]
    pub fn simple(&self, layer: Layer) -> Vec<(Layer, Self)> {
        match self {
            Self::Hatch(hatch) => hatch
                .lines()
                .into_iter()
                .map(|(a, b)| (Layer::Hatch, Self::Line(a, b)))
                .collect(),
            Self::Dimension(dimension) => dimension.marks(),
            _ => vec![(layer, self.clone())],
        }
    }
}

/// A drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    /// What it shows, in a few words.
    pub title: String,
    /// The same for one who cannot see it.
    pub says: String,
    /// Millimetres on paper for a millimetre of metal.
    pub scale: f64,
    /// Its marks.
    pub items: Vec<Item>,
}

/// An upright box on the paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extent {
    /// Lower left corner.
    pub low: At,
    /// Upper right corner.
    pub high: At,
}

impl Extent {
    /// The least box round some points; none for no points.
    #[must_use]
    pub fn round(points: &[At]) -> Option<Self> {
        let (first, rest) = points.split_first()?;
        let start = Self {
            low: *first,
            high: *first,
        };
        Some(rest.iter().fold(start, |e, p| Self {
            low: at(e.low.x.min(p.x), e.low.y.min(p.y)),
            high: at(e.high.x.max(p.x), e.high.y.max(p.y)),
        }))
    }

    /// The least box round two boxes.
    #[must_use]
    pub fn with(self, other: Self) -> Self {
        Self {
            low: at(self.low.x.min(other.low.x), self.low.y.min(other.low.y)),
            high: at(self.high.x.max(other.high.x), self.high.y.max(other.high.y)),
        }
    }
}

impl Sheet {
    /// An empty sheet.
    #[must_use]
    pub fn new(title: impl Into<String>, scale: f64) -> Self {
        Self {
            title: title.into(),
            says: String::new(),
            scale,
            items: Vec::new(),
        }
    }

    /// Adds a mark.
    pub fn draw(&mut self, layer: Layer, mark: Mark) {
        self.items.push(Item {
            layer,
            part: None,
            mark,
        });
    }

    /// Adds a mark that shows a part or feature.
    pub fn draw_of(&mut self, part: &str, layer: Layer, mark: Mark) {
        self.items.push(Item {
            layer,
            part: Some(part.to_owned()),
            mark,
        });
    }

    /// Every simple mark, with its layer.
    #[must_use]
    pub fn simple(&self) -> Vec<(Layer, Mark)> {
        self.items
            .iter()
            .flat_map(|i| i.mark.simple(i.layer))
            .collect()
    }

    /// The box round everything; none for an empty sheet.
    #[must_use]
    pub fn extent(&self) -> Option<Extent> {
        self.simple()
            .iter()
            .filter_map(|(_, mark)| extent_of(mark))
            .reduce(Extent::with)
    }

    /// Dimensions, in the order of drawing.
    pub fn dimensions(&self) -> impl Iterator<Item = &Dimension> {
        self.items.iter().filter_map(|i| match &i.mark {
            Mark::Dimension(d) => Some(d),
            _ => None,
        })
    }
}

fn extent_of(mark: &Mark) -> Option<Extent> {
    match mark {
        Mark::Line(a, b) => Extent::round(&[*a, *b]),
        // The box of the whole circle holds every arc of it.
        Mark::Arc { centre, radius, .. } | Mark::Circle { centre, radius } => Extent::round(&[
            centre.moved(-radius, -radius),
            centre.moved(*radius, *radius),
        ]),
        Mark::Open(points) | Mark::Closed(points) | Mark::Filled(points) => Extent::round(points),
        Mark::Text(text) => Some(text.extent()),
        Mark::Hatch(_) | Mark::Dimension(_) => None,
    }
}
