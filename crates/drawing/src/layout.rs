//! Dimension schemes that do not overlap, by construction.
//!
//! Three schemes serve. *From a datum*: parallel dimensions that all start at one end, shortest
//! nearest the part; nothing crosses the room between the datum and the end of a row, and a text
//! too long for its row goes beyond the datum, where no extension line runs. *About an axis*:
//! diameters, smallest nearest the part; a text too long goes beyond the largest. *Call-outs*:
//! leaders to rows or to a column of texts, in an order in which no leader passes a text.

use crate::dimension::{ARROW, Arrows, Dimension, Lines};
use crate::lettering::{TYPE, width};
use crate::sheet::{Anchor, At, Layer, Mark, Sheet, Text, at};

/// Distance of the first dimension line from the part, mm.
pub(crate) const FIRST: f64 = 10.0;
/// Distance between dimension lines, mm.
pub(crate) const ROW: f64 = 7.0;
/// Distance between the base line of a text and its dimension line, mm.
const LIFT: f64 = 1.4;
/// Free room at the ends of a text, mm.
const ROOM: f64 = 1.5;

/// On which side of the part dimension lines are stacked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Side {
    /// Below: lengths across.
    Below,
    /// To the left: lengths upwards.
    Left,
    /// To the right: lengths upwards.
    Right,
}

impl Side {
    /// A point by its place along the dimension lines and its distance out of the part's edge.
    fn place(self, edge: f64, along: f64, out: f64) -> At {
        match self {
            Self::Below => at(along, edge - out),
            Self::Left => at(edge - out, along),
            Self::Right => at(edge + out, along),
        }
    }

    fn along(self, point: At) -> f64 {
        match self {
            Self::Below => point.x,
            Self::Left | Self::Right => point.y,
        }
    }

    /// A text on the line at this place: above it as read from below or from the right.
    fn text(self, place: At, anchor: Anchor, says: &str) -> Text {
        match self {
            Self::Below => Text::new(place.moved(0.0, LIFT), anchor, says),
            Self::Left | Self::Right => Text::new(place.moved(-LIFT, 0.0), anchor, says).upwards(),
        }
    }
}

/// A measure from the datum to a point, or across the axis.
#[derive(Clone, Debug)]
pub(crate) struct Measure {
    /// What it is.
    pub(crate) name: String,
    /// Its lettering.
    pub(crate) says: String,
    /// The points measured: datum first, or low side first.
    pub(crate) points: [At; 2],
}

/// Stacks dimensions from a datum; gives the distance from the edge that they take up.
pub(crate) fn from_datum(sheet: &mut Sheet, side: Side, edge: f64, measures: &[Measure]) -> f64 {
    let mut measures = measures.to_vec();
    let long = |m: &Measure| side.along(m.points[1]) - side.along(m.points[0]);
    measures.sort_by(|a, b| long(a).total_cmp(&long(b)));
    let mut out = FIRST;
    for m in measures {
        let wide = width(&m.says, TYPE);
        let fits = long(&m) >= wide + 2.0 * ROOM;
        let before = wide + ARROW + 2.0 * ROOM;
        row(
            sheet,
            side,
            edge,
            out,
            &m,
            if fits { None } else { Some(Spill::Low(before)) },
        );
        out += ROW;
    }
    out
}

/// Stacks dimensions about an axis; gives the distance from the edge that they take up.
pub(crate) fn about_axis(sheet: &mut Sheet, side: Side, edge: f64, measures: &[Measure]) -> f64 {
    let mut measures = measures.to_vec();
    let high = |m: &Measure| side.along(m.points[1]);
    measures.sort_by(|a, b| high(a).total_cmp(&high(b)));
    let top = measures.last().map(high);
    let mut out = FIRST;
    for m in measures {
        let long = high(&m) - side.along(m.points[0]);
        let wide = width(&m.says, TYPE);
        let spill = match top {
            Some(top) if long < wide + 2.0 * ROOM => {
                // Clear of the arrow head and of the last extension line, whichever is farther.
                let start = (top - high(&m)).max(ARROW) + ROOM;
                Some(Spill::High(start, start + wide + ROOM))
            }
            _ => None,
        };
        row(sheet, side, edge, out, &m, spill);
        out += ROW;
    }
    out
}

/// Where a text goes that does not fit between its arrows.
#[derive(Clone, Copy)]
enum Spill {
    /// Beyond the low end; the line runs on by this much.
    Low(f64),
    /// Beyond the high end: the text starts at the first distance, the line ends at the second.
    High(f64, f64),
}

fn row(sheet: &mut Sheet, side: Side, edge: f64, out: f64, m: &Measure, spill: Option<Spill>) {
    let (low, high) = (side.along(m.points[0]), side.along(m.points[1]));
    let ends = [side.place(edge, low, out), side.place(edge, high, out)];
    // Arrow heads need room for both and a stretch of line between them.
    let arrows = if high - low >= 3.0 * ARROW {
        Arrows::Within
    } else {
        Arrows::Outside
    };
    let tail = match arrows {
        Arrows::Within => 0.0,
        Arrows::Outside => 2.0 * ARROW,
    };
    let (beyond, place, anchor) = match spill {
        None => ([tail; 2], 0.5 * (low + high), Anchor::Middle),
        Some(Spill::Low(by)) => ([by.max(tail), tail], low - ARROW - ROOM, Anchor::End),
        Some(Spill::High(from, to)) => ([tail, to.max(tail)], high + from, Anchor::Start),
    };
    let text = side.text(side.place(edge, place, out), anchor, &m.says);
    let lines = Lines::Span {
        points: m.points,
        ends,
        arrows,
        beyond,
    };
    let dimension = Dimension {
        measures: m.name.clone(),
        lines,
        text,
    };
    sheet.draw(Layer::Dimension, Mark::Dimension(dimension));
}

/// A call-out: an edge, and what is said of it.
#[derive(Clone, Debug)]
pub(crate) struct Callout {
    /// What it is.
    pub(crate) name: String,
    /// Its lettering.
    pub(crate) says: String,
    /// The place that its arrow touches.
    pub(crate) tip: At,
}

/// Writes call-outs above the part, the one farthest right lowest, so that a leader going up
/// passes only rows whose texts begin to its right.
pub(crate) fn callouts_above(sheet: &mut Sheet, edge: f64, callouts: &[Callout]) -> f64 {
    let mut callouts = callouts.to_vec();
    callouts.sort_by(|a, b| b.tip.x.total_cmp(&a.tip.x));
    let mut x = f64::INFINITY;
    let mut y = edge;
    for c in callouts {
        // Leaders keep apart so that they can be told from each other.
        x = (c.tip.x + 2.0).min(x - 3.0);
        y += ROW;
        let shelf = at(x + width(&c.says, TYPE) + ROOM, y);
        let bend = at(x, y);
        let foot = at(x, edge);
        let text = Text::new(bend.moved(ROOM, LIFT), Anchor::Start, &*c.says);
        let points = vec![c.tip, foot, bend, shelf];
        called(sheet, c, points, text);
    }
    y
}

/// Writes call-outs in a column to the right of `edge.x`, in the order of their heights and none
/// lower than `edge.y`.
pub(crate) fn callouts_right(sheet: &mut Sheet, edge: At, callouts: &[Callout]) {
    column(sheet, edge, callouts, Anchor::Start);
}

/// The same to the left of `edge.x`.
pub(crate) fn callouts_left(sheet: &mut Sheet, edge: At, callouts: &[Callout]) {
    column(sheet, edge, callouts, Anchor::End);
}

/// Call-outs in a column whose texts run from `edge.x` to the right (anchored at their start) or
/// to the left (at their end).
fn column(sheet: &mut Sheet, edge: At, callouts: &[Callout], anchor: Anchor) {
    let mut callouts = callouts.to_vec();
    callouts.sort_by(|a, b| b.tip.y.total_cmp(&a.tip.y));
    let mut heights: Vec<f64> = Vec::new();
    for c in &callouts {
        let under = heights.last().map_or(f64::INFINITY, |y| y - ROW);
        heights.push((c.tip.y + 4.0).min(under));
    }
    // Those pushed too low push the others up again.
    let mut least = edge.y;
    for y in heights.iter_mut().rev() {
        *y = y.max(least);
        least = *y + ROW;
    }
    let away = if anchor == Anchor::End { -1.0 } else { 1.0 };
    for (c, y) in callouts.into_iter().zip(heights) {
        let knee = at(edge.x, y);
        let shelf = knee.moved(away * (width(&c.says, TYPE) + 2.0 * ROOM), 0.0);
        let text = Text::new(knee.moved(away * ROOM, LIFT), anchor, &*c.says);
        let points = vec![c.tip, knee, shelf];
        called(sheet, c, points, text);
    }
}

fn called(sheet: &mut Sheet, callout: Callout, points: Vec<At>, text: Text) {
    let dimension = Dimension {
        measures: callout.name,
        lines: Lines::Leader(points),
        text,
    };
    sheet.draw(Layer::Dimension, Mark::Dimension(dimension));
}

/// A scale in words (`2 : 1`).
pub(crate) fn scale_words(scale: f64) -> String {
    let short = crate::lettering::short;
    if scale < 1.0 {
        format!("1 : {}", short(1.0 / scale))
    } else {
        format!("{} : 1", short(scale))
    }
}

/// The scale of ISO 5455 at which a thing fills most of a frame, without leaving it.
pub(crate) fn scale_for(wide_mm: f64, high_mm: f64, frame: (f64, f64)) -> f64 {
    const SCALES: [f64; 10] = [20.0, 10.0, 5.0, 2.0, 1.0, 0.5, 0.2, 0.1, 0.05, 0.02];
    let fits = |s: &f64| wide_mm * s <= frame.0 && high_mm * s <= frame.1;
    SCALES
        .into_iter()
        .find(fits)
        // A thing too large for the smallest scale is drawn at it and leaves the frame.
        .unwrap_or(SCALES[SCALES.len() - 1])
}

/// Writes the line of the title under everything.
pub(crate) fn title_line(sheet: &mut Sheet, view: &str) {
    let Some(extent) = sheet.extent() else {
        return;
    };
    let scale = scale_words(sheet.scale);
    let name = Text::new(extent.low.moved(0.0, -10.0), Anchor::Start, &*sheet.title);
    let says = format!("scale {scale} · dimensions in mm · {view}");
    let below = Text::new(extent.low.moved(0.0, -15.5), Anchor::Start, &*says);
    sheet.says = format!("{}: {says}", sheet.title);
    sheet.draw(Layer::Text, Mark::Text(name));
    sheet.draw(Layer::Text, Mark::Text(below));
}
