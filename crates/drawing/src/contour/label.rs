//! Labels of lines: outside the metal, on leaders to ends that can be seen from above, from the
//! right or from the left.

use crate::layout::{Callout, callouts_above, callouts_left, callouts_right};
use crate::sheet::{At, Extent, Sheet, at};

/// Most labels on each side.
const MOST: usize = 12;
/// Ends nearer to each other than this share one label's room, mm.
const APART: f64 = 1.5;
/// Room between the metal and the first label, mm.
const ROOM: f64 = 4.0;
/// How far below the upper edge the labels at the sides begin, so that they keep clear of the row
/// above, mm.
const UNDER: f64 = 14.0;
/// A face is looked at along two rays this far on either side of a point, mm; what they meet
/// nearer than this is the face itself.
const BESIDE: f64 = 0.2;

/// A label on its way to the sheet.
struct Label {
    says: String,
    tip: At,
    /// Length of its line, mm; of each level the longest is labelled first.
    long: f64,
}

/// From which side an end is seen.
#[derive(Clone, Copy, PartialEq, Eq)]
enum From {
    Above,
    Right,
    Left,
}

impl From {
    /// How far a point lies aside of the ray from another, and how far along it.
    fn seen(self, from: At, p: At) -> (f64, f64) {
        let (x, y) = (p.x - from.x, p.y - from.y);
        match self {
            Self::Above => (x, y),
            Self::Right => (y, x),
            Self::Left => (y, -x),
        }
    }
}

/// The labels of a picture.
pub(super) struct Labels<'a> {
    /// The edge of what is drawn, where the window cuts it too.
    rim: &'a [Vec<At>],
    edge: Option<Extent>,
    sides: Vec<(From, Label)>,
    peak: Option<Callout>,
}

impl<'a> Labels<'a> {
    pub(super) fn new(rim: &'a [Vec<At>]) -> Self {
        let points: Vec<At> = rim.iter().flatten().copied().collect();
        Self {
            rim,
            edge: Extent::round(&points),
            sides: Vec::new(),
            peak: None,
        }
    }

    /// The cross at the greatest stress.
    pub(super) fn peak(&mut self, tip: At, says: &str) {
        self.peak = Some(Callout {
            name: "greatest stress".to_owned(),
            says: says.to_owned(),
            tip,
        });
    }

    /// The lines of one level: each that has an end in sight.
    pub(super) fn level(&mut self, says: &str, lines: &[Vec<At>]) {
        for line in lines {
            let (Some(first), Some(last)) = (line.first(), line.last()) else {
                continue;
            };
            let long = line.windows(2).map(|p| far(p[0], p[1])).sum();
            let seen = [From::Above, From::Right, From::Left]
                .into_iter()
                .find_map(|from| {
                    let tip = [first, last].into_iter().find(|p| self.sees(from, **p))?;
                    Some((from, *tip))
                });
            if let Some((from, tip)) = seen {
                let says = says.to_owned();
                self.sides.push((from, Label { says, tip, long }));
            }
        }
    }

    /// Writes them round the metal.
    pub(super) fn write(self, sheet: &mut Sheet) {
        let Some(edge) = self.edge else {
            return;
        };
        let (mut above, mut right, mut left) = (Vec::new(), Vec::new(), Vec::new());
        for (from, label) in self.sides {
            let low = label.tip.y < edge.high.y - UNDER;
            match from {
                From::Above => above.push(label),
                From::Right if low => right.push(label),
                From::Left if low => left.push(label),
                From::Right | From::Left => {}
            }
        }
        let mut above = chosen(above, "above", |tip| tip.x);
        above.extend(self.peak);
        callouts_above(sheet, edge.high.y + ROOM, &above);
        let right = chosen(right, "right", |tip| tip.y);
        callouts_right(sheet, at(edge.high.x + ROOM, edge.low.y), &right);
        let left = chosen(left, "left", |tip| tip.y);
        callouts_left(sheet, at(edge.low.x - ROOM, edge.low.y), &left);
    }

    /// Whether nothing stands between a point of the edge and this side.
    fn sees(&self, from: From, p: At) -> bool {
        let aside = match from {
            From::Above => (BESIDE, 0.0),
            From::Right | From::Left => (0.0, BESIDE),
        };
        let rays = [p.moved(-aside.0, -aside.1), p.moved(aside.0, aside.1)];
        let stretches = || self.rim.iter().flat_map(|line| line.windows(2));
        let meets = |ray: At| {
            stretches().any(|pair| {
                let (a, along_a) = from.seen(ray, pair[0]);
                let (b, along_b) = from.seen(ray, pair[1]);
                (a < 0.0) != (b < 0.0) && along_a + (along_b - along_a) * a / (a - b) > BESIDE
            })
        };
        !rays.into_iter().any(meets)
    }
}

/// The labels that find room: of each level the longest line first, then the others.
fn chosen(mut labels: Vec<Label>, side: &str, along: fn(&At) -> f64) -> Vec<Callout> {
    labels.sort_by(|a, b| b.long.total_cmp(&a.long));
    let mut kept: Vec<Label> = Vec::new();
    let (mut rest, mut firsts): (Vec<Label>, Vec<Label>) = (Vec::new(), Vec::new());
    for label in labels {
        if firsts.iter().any(|f| f.says == label.says) {
            rest.push(label);
        } else {
            firsts.push(label);
        }
    }
    for label in firsts.into_iter().chain(rest) {
        let crowded = kept
            .iter()
            .any(|k| (along(&k.tip) - along(&label.tip)).abs() < APART);
        if kept.len() < MOST && !crowded {
            kept.push(label);
        }
    }
    kept.into_iter()
        .enumerate()
        .map(|(i, label)| Callout {
            name: format!("line {} {side}, {} MPa", i + 1, label.says),
            says: label.says,
            tip: label.tip,
        })
        .collect()
}

fn far(a: At, b: At) -> f64 {
    (a.x - b.x).hypot(a.y - b.y)
}
