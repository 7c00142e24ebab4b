//! What metal can be had: the stock on hand first, then what the standards list, then what is made
//! to order.
//!
//! Sizes of copper tube after EN 1057 and thicknesses of sheet after EN 1652, from memory, the
//! walls of the larger tubes as a maker of tube lists them.

use plan::Workshop;
use plan::workshop::StockKind;
use reckoning::quantity::Length;

/// Where a piece comes from; later is dearer.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Source {
    /// It lies in the workshop under this id.
    OnHand(String),
    /// A size that a standard lists.
    Listed,
    /// A wall that a listed tube is not sold with.
    ToOrder,
}

impl Source {
    pub(super) fn words(&self) -> String {
        match self {
            Self::OnHand(id) => format!("on hand ({id})"),
            Self::Listed => "a listed size".to_owned(),
            Self::ToOrder => "a wall to order".to_owned(),
        }
    }
}

/// A tube that can be had.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct TubeSize {
    pub(super) outside: f64,
    pub(super) wall: f64,
    pub(super) source: Source,
    /// Longest piece on hand, mm; `None` where it is bought.
    pub(super) longest: Option<f64>,
}

impl TubeSize {
    pub(super) fn bore(&self) -> f64 {
        self.outside - 2.0 * self.wall
    }

    pub(super) fn words(&self) -> String {
        let (outside, wall) = (
            super::choice::plain(self.outside),
            super::choice::plain(self.wall),
        );
        format!("tube of {outside} mm by {wall} mm, {}", self.source.words())
    }
}

/// A sheet that can be had.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SheetSize {
    pub(super) thickness: f64,
    pub(super) source: Source,
}

/// Outside diameters of copper tube, mm, each with its walls.
const TUBES: &[(f64, &[f64])] = &[
    (6.0, &[0.6, 0.8, 1.0]),
    (8.0, &[0.6, 0.8, 1.0]),
    (10.0, &[0.6, 0.8, 1.0]),
    (12.0, &[0.6, 0.8, 1.0]),
    (15.0, &[0.7, 0.8, 1.0]),
    (18.0, &[0.8, 1.0]),
    (22.0, &[0.9, 1.0, 1.2, 1.5]),
    (28.0, &[0.9, 1.0, 1.2, 1.5]),
    (35.0, &[1.0, 1.2, 1.5]),
    (42.0, &[1.0, 1.2, 1.5]),
    (54.0, &[1.0, 1.2, 2.0]),
    (66.7, &[1.2, 2.0]),
    (76.1, &[1.5, 2.0]),
    (88.9, &[2.0]),
    (108.0, &[1.5, 2.5]),
    (133.0, &[1.5, 3.0]),
    (159.0, &[2.0, 3.0]),
    (219.0, &[3.0]),
];
/// Walls that a tube is made with to order, mm.
const ORDERED: &[f64] = &[1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0];
/// Thicknesses of copper sheet, mm.
const SHEETS: &[f64] = &[1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0];

/// What can be had.
#[derive(Clone, Debug)]
pub(super) struct Shop {
    /// Tubes by outside, then wall, those on hand first among equals.
    pub(super) tubes: Vec<TubeSize>,
    /// Sheets by thickness, those on hand first among equals.
    pub(super) sheets: Vec<SheetSize>,
    /// Names of the taps on hand.
    pub(super) taps: Vec<String>,
}

impl Shop {
    /// What can be had of a metal.
    pub(super) fn of(workshop: &Workshop, metal: &str) -> Self {
        let (mut tubes, mut sheets) = on_hand(workshop, metal);
        for &(outside, walls) in TUBES {
            tubes.extend(of_outside(outside, walls));
        }
        sheets.extend(SHEETS.iter().map(|&thickness| SheetSize {
            thickness,
            source: Source::Listed,
        }));
        sort(&mut tubes);
        sheets.sort_by(|a, b| {
            let apart = a.thickness.total_cmp(&b.thickness);
            apart.then_with(|| a.source.cmp(&b.source))
        });
        sheets.dedup_by(|b, a| same(a.thickness, b.thickness));
        let taps = workshop.threading.taps.get();
        Self {
            tubes,
            sheets,
            taps: taps.map_or_else(Vec::new, Clone::clone),
        }
    }

    /// Every tube of an outside diameter, thinnest first; those of any wall where none is listed.
    pub(super) fn walls(&self, outside: f64) -> Vec<TubeSize> {
        let listed = self.tubes.iter().filter(|t| same(t.outside, outside));
        let mut walls: Vec<TubeSize> = listed.cloned().collect();
        if walls.is_empty() {
            walls = of_outside(outside, &[]);
        }
        walls
    }

    /// The thinnest sheet of at least a thickness, one on hand before a listed one.
    pub(super) fn sheet(&self, least: f64) -> Option<&SheetSize> {
        let on_hand = |s: &&SheetSize| matches!(s.source, Source::OnHand(_));
        let thick = |s: &&SheetSize| s.thickness >= least;
        let first = self.sheets.iter().filter(thick).find(on_hand);
        first.or_else(|| self.sheets.iter().find(thick))
    }

    /// The next thicker sheet.
    pub(super) fn thicker(&self, than: f64) -> Option<&SheetSize> {
        self.sheets
            .iter()
            .find(|s| s.thickness > than && !same(s.thickness, than))
    }
}

/// Tubes and sheets of a metal that lie in the workshop.
fn on_hand(workshop: &Workshop, metal: &str) -> (Vec<TubeSize>, Vec<SheetSize>) {
    let mut tubes = Vec::new();
    let mut sheets = Vec::new();
    for piece in &workshop.stock {
        let ours = piece.metal.get().is_some_and(|name| name == metal);
        let (Some(id), Some(wall), true) = (piece.id.get(), piece.wall.likely(), ours) else {
            continue;
        };
        let (wall, source) = (wall.value.mm(), Source::OnHand(id.clone()));
        match (piece.kind.value(), piece.across.likely()) {
            (Some(StockKind::Tube), Some(across)) => tubes.push(TubeSize {
                outside: across.value.mm(),
                wall,
                source,
                longest: piece.length.value().map(Length::mm),
            }),
            (Some(StockKind::Sheet), _) => sheets.push(SheetSize {
                thickness: wall,
                source,
            }),
            _ => {}
        }
    }
    (tubes, sheets)
}

fn of_outside(outside: f64, walls: &[f64]) -> Vec<TubeSize> {
    let tube = |&wall: &f64, source: Source| TubeSize {
        outside,
        wall,
        source,
        longest: None,
    };
    let listed = walls.iter().map(|w| tube(w, Source::Listed));
    let most = walls.last().copied().unwrap_or(0.0);
    // A heavier wall than an eighth of the outside is a bar, not a tube.
    let thicker = ORDERED
        .iter()
        .filter(|&&wall| wall > most && wall <= outside / 8.0);
    listed
        .chain(thicker.map(|w| tube(w, Source::ToOrder)))
        .collect()
}

fn sort(tubes: &mut Vec<TubeSize>) {
    tubes.sort_by(|a, b| {
        let apart = a.outside.total_cmp(&b.outside);
        apart
            .then(a.wall.total_cmp(&b.wall))
            .then_with(|| a.source.cmp(&b.source))
    });
    tubes.dedup_by(|b, a| same(a.outside, b.outside) && same(a.wall, b.wall));
}

/// Whether two sizes in millimetres are one: to the hundredth.
pub(super) fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 0.01
}
