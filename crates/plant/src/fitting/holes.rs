//! The holes of a fitting: bores along its axis, cross holes square to it.

use plan::Row;
use plan::section::{Bore, BoreKind, CrossHole, CrossReach, End as Side};
use reckoning::Known;
use reckoning::quantity::Length;

use super::{Draft, thread_id, zero};
use crate::part::{self, CrossDepth, End, Feature, Finish, Form, Point, Span, Surface};

impl Draft {
    pub(super) fn bore(&mut self, bore: &Bore, length: Option<Length>) {
        let (side, kind) = (self.wanted(&bore.from), self.wanted(&bore.kind));
        let thread = self.thread(&bore.thread);
        if kind == Some(BoreKind::Tapped) && bore.thread.get().is_none() {
            self.miss(bore.thread.path());
            return;
        }
        let tapping = thread.as_ref().map(|(_, tapping)| tapping);
        let diameter = self.hole(&bore.diameter, &bore.thread, tapping);
        let full = thread.as_ref().and_then(|_| self.size(&bore.thread_length));
        let (Some(side), Some(kind), Some(diameter), Some(length)) = (side, kind, diameter, length)
        else {
            return;
        };
        // One that was named and taken away again does not say.
        if bore.depth.is_emptied() {
            self.miss(bore.depth.path());
            return;
        }
        let hole = Hole {
            from: end(side),
            whole: Span {
                from: zero(),
                to: length,
            },
            // A depth that is left out means right through.
            depth: self.given(&bore.depth).unwrap_or(length),
        };
        self.push(hole.feature(bore.called(), kind, diameter), &bore.diameter);
        if let (Some((thread, _)), Some(full)) = (thread, full) {
            let form = Form::Threaded {
                surface: Surface::Inside,
                span: hole.whole.first(hole.from, full),
                thread,
            };
            self.made.features.push(Feature::new(thread_id(bore), form));
        }
    }

    pub(super) fn cross(&mut self, row: &CrossHole) {
        let tapping: Option<Known<Length>> = self.thread(&row.thread).map(|(_, tapping)| tapping);
        let at = self.size(&row.at);
        let diameter = self.hole(&row.diameter, &row.thread, tapping.as_ref());
        let (angle, reach) = (self.wanted(&row.angle), self.wanted(&row.reach));
        let (Some(z), Some(diameter), Some(azimuth), Some(reach)) = (at, diameter, angle, reach)
        else {
            return;
        };
        let hole = part::CrossHole {
            z,
            azimuth,
            // An offset that is left out means a hole that crosses the axis.
            offset: row.offset.value().unwrap_or(zero()),
            diameter,
            depth: match reach {
                CrossReach::IntoBore => CrossDepth::NearWall,
                CrossReach::Through => CrossDepth::Through,
            },
        };
        self.push(Feature::new(row.called(), Form::Cross(hole)), &row.diameter);
    }
}

/// A hole along the axis.
#[derive(Clone, Copy)]
struct Hole {
    from: End,
    /// The whole part.
    whole: Span,
    /// Depth at full diameter.
    depth: Length,
}

impl Hole {
    fn feature(self, id: String, kind: BoreKind, diameter: Length) -> Feature {
        let form = match kind {
            BoreKind::Bored => {
                let span = self.whole.first(self.from, self.depth);
                Form::cylinder(Surface::Inside, span, diameter)
            }
            // A reamer or a tap leaves the point of the drill before it.
            BoreKind::Drilled | BoreKind::Reamed | BoreKind::Tapped => Form::Drilled {
                from: self.from,
                mouth: self.whole.face(self.from),
                diameter,
                depth: self.depth,
                point: Point::drill(),
            },
        };
        let finish = match kind {
            BoreKind::Reamed => Finish::Reamed,
            BoreKind::Drilled | BoreKind::Bored | BoreKind::Tapped => Finish::Cut,
        };
        Feature::new(id, form).finished(finish)
    }
}

fn end(side: Side) -> End {
    match side {
        Side::Left => End::Low,
        Side::Right => End::High,
    }
}
