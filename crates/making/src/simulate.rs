//! A card run on the shape of the bar, one row after another.
//!
//! Nothing here judges: every row is carried out as written, as far as the shape allows, and what
//! happened is recorded for the rules. Metal that is gone stays gone.

use plant::part::{
    CrossDepth, CrossHole, Difference, End, Feature, Form, NoShape, Point, Span, Surface, TipAt,
    Turned,
};
use reckoning::quantity::Length;

use crate::card::{Facing, Operation, Place, RouteCard, Work};
use crate::piece::Piece;

/// How closely a simulated shape is held against the drawing.
pub(crate) const WITHIN_MM: f64 = 1e-6;

/// What happened in one row.
#[derive(Clone, Debug)]
pub struct Step<'a> {
    /// Where the row stands.
    pub place: Place,
    /// Its number on the card.
    pub number: usize,
    /// The operation.
    pub operation: &'a Operation,
    /// The shape before it.
    pub before: Turned,
    /// The shape after it.
    pub after: Turned,
    /// What was really cut, where the face then stood; none where the row cuts nothing.
    pub cut: Option<Feature>,
    /// How far the face outward stood proud of its finished place, measured along the outward
    /// direction; nought once it is faced.
    pub proud: Length,
    /// Whether the holder had hold of the piece: after parting it has not.
    pub held: bool,
    /// Whether the metal changed.
    pub removed: bool,
    /// Why nothing could be cut, if so.
    pub refused: Option<NoShape>,
}

impl Step<'_> {
    /// The feature it finishes, or the word of its operation.
    pub(crate) fn what(&self) -> String {
        let word = self.operation.work.word();
        self.operation
            .makes
            .clone()
            .unwrap_or_else(|| word.to_owned())
    }
}

/// A card that has been run.
#[derive(Clone, Debug)]
pub struct Simulated<'a> {
    /// Row by row.
    pub steps: Vec<Step<'a>>,
    /// The shape after each setting.
    pub after_setting: Vec<Turned>,
    /// How the last shape differs from the drawing; empty where the piece is made.
    pub differs: Vec<Difference>,
    /// The last shape.
    pub shape: Turned,
}

/// Runs a card.
#[must_use]
pub fn simulate<'a>(card: &'a RouteCard, piece: &Piece) -> Simulated<'a> {
    let mut shape = card.stock.clone();
    let mut steps = Vec::new();
    let mut after_setting = Vec::new();
    for (index, setting) in card.settings.iter().enumerate() {
        let mut held = true;
        for (row, r) in setting.rows.iter().enumerate() {
            let place = Place {
                setting: index,
                row,
            };
            let step = run(&r.operation, &shape, &piece.shape, setting.facing, held);
            let step = Step {
                place,
                number: card.number(place),
                ..step
            };
            shape = step.after.clone();
            held = held && !matches!(r.operation.work, Work::Part { .. });
            steps.push(step);
        }
        after_setting.push(shape.clone());
    }
    let mut differs = shape.differs_from(&piece.shape, Length::from_mm(WITHIN_MM));
    differs.retain(|d| in_metal(d, &shape, &piece.shape));
    Simulated {
        steps,
        after_setting,
        differs,
        shape,
    }
}

/// Whether a difference lies in metal: a hole drawn beyond the end of the piece is only air.
fn in_metal(difference: &Difference, made: &Turned, drawn: &Turned) -> bool {
    match difference {
        Difference::Diameter {
            surface: Surface::Inside,
            span,
            ..
        } => {
            let middle = (span.from + span.to) / 2.0;
            made.outside_at(middle).is_some() || drawn.outside_at(middle).is_some()
        }
        _ => true,
    }
}

fn run<'a>(
    operation: &'a Operation,
    shape: &Turned,
    drawn: &Turned,
    facing: Facing,
    held: bool,
) -> Step<'a> {
    let place = Place { setting: 0, row: 0 };
    let proud = proud(shape, drawn, facing);
    let cut = feature(operation, shape, drawn, facing);
    let done = match (&operation.work, &cut) {
        (Work::Part { at, blade }, _) => {
            let at = *at + shift(shape, drawn, facing);
            shape
                .part_off("part", at, *blade, kept(facing))
                .map(|(piece, _)| piece)
        }
        (_, Some(feature)) => shape.cut(feature),
        (_, None) => Ok(shape.clone()),
    };
    let (after, refused) = match done {
        Ok(after) => (after, None),
        Err(why) => (shape.clone(), Some(why)),
    };
    Step {
        place,
        number: 0,
        operation,
        removed: changed(shape, &after, cut.as_ref()),
        before: shape.clone(),
        after,
        cut,
        proud,
        held,
        refused,
    }
}

/// The end that stays with the piece when it is parted.
fn kept(facing: Facing) -> End {
    match facing {
        Facing::End(end) => end,
        Facing::Side => End::Low,
    }
}

/// How far the outward face stands beyond its finished place.
fn proud(shape: &Turned, drawn: &Turned, facing: Facing) -> Length {
    match facing {
        Facing::End(End::Low) => drawn.span().from - shape.span().from,
        Facing::End(End::High) => shape.span().to - drawn.span().to,
        Facing::Side => Length::from_mm(0.0),
    }
}

/// What an operation really cuts, where the face stands now.
fn feature(
    operation: &Operation,
    shape: &Turned,
    drawn: &Turned,
    facing: Facing,
) -> Option<Feature> {
    let form = match &operation.work {
        Work::Face { end, at } => Form::Face { end: *end, at: *at },
        Work::Turn(form)
        | Work::Bore(form)
        | Work::Ream { form, .. }
        | Work::Countersink(form)
        | Work::ScrewCut(form)
        | Work::Tap { form, .. } => shifted(form, shape, drawn, facing),
        Work::CentreDrill { end, mouth } => centre(shape, *end, *mouth),
        Work::Drill { end, drill, depth } => Form::Drilled {
            from: *end,
            mouth: face(shape, *end),
            diameter: drill.diameter,
            depth: *depth,
            point: Point::drill(),
        },
        Work::CrossDrill { hole, tip } => Form::Cross(CrossHole {
            depth: cross_depth(shape, drawn, hole, *tip),
            ..*hole
        }),
        Work::Part { .. } | Work::Deburr { .. } => return None,
    };
    let id = operation
        .makes
        .clone()
        .unwrap_or_else(|| operation.work.word().to_owned());
    let drawn = operation.makes.as_ref().and_then(|id| drawn.feature(id));
    Some(match drawn {
        Some(f) => Feature { form, ..f.clone() },
        None => Feature::new(id, form),
    })
}

fn face(shape: &Turned, end: End) -> Length {
    match end {
        End::Low => shape.span().from,
        End::High => shape.span().to,
    }
}

/// How far the outward face lies from its finished place, along the axis.
fn shift(shape: &Turned, drawn: &Turned, facing: Facing) -> Length {
    match facing {
        Facing::End(end) => face(shape, end) - face(drawn, end),
        Facing::Side => Length::from_mm(0.0),
    }
}

/// A form measured from the outward face as it stands.
fn shifted(form: &Form, shape: &Turned, drawn: &Turned, facing: Facing) -> Form {
    let by = shift(shape, drawn, facing);
    let mut form = form.clone();
    match &mut form {
        Form::Turned { span, .. } | Form::Threaded { span, .. } => {
            span.from = span.from + by;
            span.to = span.to + by;
        }
        Form::Drilled { mouth, .. } => *mouth = *mouth + by,
        Form::Flats(flats) => {
            flats.span.from = flats.span.from + by;
            flats.span.to = flats.span.to + by;
        }
        Form::Face { .. } | Form::Cross(_) => {}
    }
    form
}

/// The cone of a centre drill: 60 degrees included.
fn centre(shape: &Turned, end: End, mouth: Length) -> Form {
    let depth = Length::from_mm(formulas::cutting::countersink(mouth.mm(), 0.0, 60.0));
    let nought = Length::from_mm(0.0);
    let at = face(shape, end);
    let (span, from, to) = match end {
        End::Low => (
            Span {
                from: at,
                to: at + depth,
            },
            mouth,
            nought,
        ),
        End::High => (
            Span {
                from: at - depth,
                to: at,
            },
            nought,
            mouth,
        ),
    };
    Form::Turned {
        surface: Surface::Inside,
        span,
        from,
        to,
    }
}

/// Where a cross hole ends when its tip goes in so far from the outside as it stands.
///
/// Where that does what the drawing asks of the finished piece, it is the depth drawn: a hole
/// through the near wall is one whose corners have passed it and whose tip leaves the far wall.
fn cross_depth(
    shape: &Turned,
    drawn: &Turned,
    hole: &CrossHole,
    tip: Option<Length>,
) -> CrossDepth {
    let (Some(tip), Some(outside)) = (tip, shape.outside_at(hole.z)) else {
        return CrossDepth::Through;
    };
    let point = match hole.depth {
        CrossDepth::Blind { point, .. } => point,
        CrossDepth::NearWall | CrossDepth::Through => Point::drill(),
    };
    let bottom = outside / 2.0 - tip + point.length(hole.diameter);
    let made = CrossHole {
        depth: CrossDepth::Blind { bottom, point },
        ..*hole
    };
    let as_drawn = match hole.depth {
        CrossDepth::Through => matches!(drawn.tip(&made), Some(TipAt::Out(_))),
        CrossDepth::NearWall => {
            let open = drawn
                .past_full_opening(&made)
                .is_some_and(|past| past.mm() > -WITHIN_MM);
            open && matches!(drawn.tip(&made), Some(TipAt::Bore(_)))
        }
        CrossDepth::Blind { bottom: asked, .. } => (bottom - asked).mm().abs() < WITHIN_MM,
    };
    if as_drawn { hole.depth } else { made.depth }
}

/// Whether a cut took metal, or a thread its place.
fn changed(before: &Turned, after: &Turned, cut: Option<&Feature>) -> bool {
    match cut.map(|f| &f.form) {
        Some(Form::Threaded {
            surface,
            span,
            thread,
        }) => !before
            .threads()
            .any(|(_, s, p, t)| s == *surface && p.covers(*span) && t == thread),
        Some(Form::Cross(hole)) => {
            !before.cross_holes().any(|(_, h)| h == hole) && before.outside_at(hole.z).is_some()
        }
        _ => !before
            .differs_from(after, Length::from_mm(WITHIN_MM))
            .is_empty(),
    }
}
