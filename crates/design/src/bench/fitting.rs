//! The door from a fitting of the plan to a piece to be made.
//!
//! Every fitting is taken as holding pressure, which asks the more of it. Sizes are those of the
//! drawing: a piece is made to its drawing, whatever an earlier one measured. A field that is
//! wanted and empty is a gap; a drawing that makes no piece is a finding.

use formulas::thread::Thread;
use making::{Piece, Service};
use plan::section::{Bore, BoreKind, CrossReach, End as Side, Fitting, Step};
use plan::{Choice, Entry};
use plant::part::{
    Bar, CrossDepth, CrossHole, End, Feature, Finish, Form, Point, Span, Surface,
    Thread as CutThread, Turned,
};
use reckoning::quantity::Length;
use reckoning::{Finding, Size};

use super::rules::{SHAPE, THREAD, against};
use super::workshop::name;
use super::{metal, refers, shape};

/// A fitting as drawn.
#[derive(Clone, Debug)]
pub(super) struct Drawing {
    /// The piece; `None` where a gap or a fault stands against it.
    pub(super) piece: Option<Piece>,
    /// What is wrong with the drawing.
    pub(super) findings: Vec<Finding>,
    /// Fields that are wanted and empty.
    pub(super) gaps: Vec<String>,
    /// Features that no card is written for yet.
    pub(super) not_ordered: Vec<String>,
}

/// The piece that a fitting describes.
pub(super) fn drawing(fitting: &Fitting) -> Drawing {
    let mut draft = Draft::new(fitting);
    let piece = draft.piece();
    let whole = draft.gaps.is_empty() && draft.findings.is_empty();
    Drawing {
        piece: piece.filter(|_| whole),
        findings: draft.findings,
        gaps: draft.gaps,
        not_ordered: draft.not_ordered,
    }
}

/// A fitting on the way to a piece.
pub(super) struct Draft<'a> {
    pub(super) fitting: &'a Fitting,
    pub(super) features: Vec<Feature>,
    pub(super) findings: Vec<Finding>,
    pub(super) gaps: Vec<String>,
    not_ordered: Vec<String>,
}

impl<'a> Draft<'a> {
    fn new(fitting: &'a Fitting) -> Self {
        Self {
            fitting,
            features: Vec::new(),
            findings: Vec::new(),
            gaps: Vec::new(),
            not_ordered: Vec::new(),
        }
    }

    fn piece(&mut self) -> Option<Piece> {
        // Everything is taken before the first `?`, so that all gaps are named at once.
        let fitting = self.fitting;
        self.wanted(&fitting.kind);
        let metal = self.metal();
        let bar = self.drawn(&fitting.bar);
        let least_wall = fitting.least_wall.known();
        if least_wall.is_none() {
            self.gaps.push(fitting.least_wall.path().to_owned());
        }
        let length = self.outside(bar);
        for bore in &fitting.bores {
            self.bore(bore, length);
        }
        for row in &fitting.cross_holes {
            self.cross(row);
        }
        refers::demands(self);
        let (bar, length) = (bar?, length?);
        if !self.gaps.is_empty() {
            return None;
        }
        let span = Span {
            from: Length::from_mm(0.0),
            to: length,
        };
        let turned = self.turned(bar, span)?;
        self.findings.extend(shape::faults(fitting, &turned));
        Some(Piece {
            id: name(&fitting.id),
            shape: turned,
            metal: metal?,
            least_wall: least_wall?,
            service: Service::Pressure,
        })
    }

    /// The bar less its features; a fault where no shape is left.
    fn turned(&mut self, bar: Length, span: Span) -> Option<Turned> {
        match Turned::finished(Bar::Round(bar), span, &self.features) {
            Ok(turned) => Some(turned),
            Err(no_shape) => {
                let place = format!("fitting.{}", name(&self.fitting.id));
                let says = no_shape.to_string();
                self.findings
                    .push(against(&SHAPE, &place, says, SHAPE.remedy));
                None
            }
        }
    }

    /// A value that the plan must give.
    fn wanted<T: Copy>(&mut self, entry: &Entry<T>) -> Option<T> {
        let value = entry.value();
        if value.is_none() {
            self.gaps.push(entry.path().to_owned());
        }
        value
    }

    /// A size that the plan must give, as drawn.
    fn drawn(&mut self, entry: &Entry<Size>) -> Option<Length> {
        let drawn = entry.get().map(|size| size.drawn.value);
        if drawn.is_none() {
            self.gaps.push(entry.path().to_owned());
        }
        drawn
    }

    fn metal(&mut self) -> Option<formulas::cutting::CuttingMetal> {
        let entry = &self.fitting.metal;
        let Some(designation) = entry.get() else {
            self.gaps.push(entry.path().to_owned());
            return None;
        };
        let cuts = metal::cutting(designation);
        if cuts.is_none() {
            self.gaps.push(format!(
                "{}: it is not known how {designation} cuts",
                entry.path()
            ));
        }
        cuts
    }

    /// The thread that a field names; none where it is empty or unknown, which is then told.
    fn thread(&mut self, entry: &Entry<String>) -> Option<CutThread> {
        match Thread::read(entry.get()?) {
            Ok(thread) => Some(CutThread {
                designation: thread.name.clone(),
                major: thread.major,
                core: thread.root(),
                pitch: thread.pitch,
            }),
            Err(unknown) => {
                let says = unknown.to_string();
                self.findings
                    .push(against(&THREAD, entry.path(), says, THREAD.remedy));
                None
            }
        }
    }

    /// The steps, left to right; gives the length of the whole.
    fn outside(&mut self, bar: Option<Length>) -> Option<Length> {
        let steps = &self.fitting.steps;
        if steps.is_empty() {
            self.gaps
                .push(format!("fitting.{}.step", name(&self.fitting.id)));
            return None;
        }
        let mut at = Some(Length::from_mm(0.0));
        for (index, step) in steps.iter().enumerate() {
            let (diameter, length) = (self.drawn(&step.diameter), self.drawn(&step.length));
            let end = at.zip(length).map(|(at, length)| at + length);
            if let (Some(from), Some(to), Some(diameter)) = (at, end, diameter) {
                let span = Span { from, to };
                if let Some(bar) = bar.filter(|bar| *bar < diameter) {
                    self.findings.extend(shape::wider(step, diameter, bar));
                }
                self.step(step, (span, diameter), free_end(steps, index));
            }
            at = end;
        }
        at
    }

    fn step(&mut self, step: &Step, (span, diameter): (Span, Length), free: End) {
        let id = name(&step.id);
        let cylinder = Form::cylinder(Surface::Outside, span, diameter);
        let mut feature = Feature::new(id.clone(), cylinder);
        feature.tolerance = step.diameter.get().and_then(|size| size.tolerance);
        self.features.push(feature);
        if let Some(thread) = self.thread(&step.thread)
            && let Some(full) = self.drawn(&step.thread_length)
        {
            self.findings
                .extend(shape::thread_on(step, (span, diameter), (&thread, full)));
            let form = Form::Threaded {
                surface: Surface::Outside,
                span: stretch(span, free, full),
                thread,
            };
            self.features
                .push(Feature::new(format!("{id}-thread"), form));
        }
        if let Some(chamfer) = step.chamfer.get().map(|size| size.drawn.value) {
            self.findings
                .extend(shape::chamfer(step, (span, diameter), chamfer));
            let small = diameter - chamfer * 2.0;
            let (from, to) = match free {
                End::Low => (small, diameter),
                End::High => (diameter, small),
            };
            let form = Form::Turned {
                surface: Surface::Outside,
                span: stretch(span, free, chamfer),
                from,
                to,
            };
            self.features
                .push(Feature::new(format!("{id}-chamfer"), form));
        }
    }

    fn bore(&mut self, bore: &Bore, length: Option<Length>) {
        let (side, kind) = (self.wanted(&bore.from), self.wanted(&bore.kind));
        let thread = match kind {
            Some(BoreKind::Tapped) if bore.thread.get().is_none() => {
                self.gaps.push(bore.thread.path().to_owned());
                None
            }
            _ => self.thread(&bore.thread),
        };
        // The hole under a thread gets the size of the drill that is chosen for it.
        let diameter = match (&thread, bore.diameter.get()) {
            (Some(_), None) => bore
                .thread
                .get()
                .and_then(|t| Thread::read(t).ok())
                .map(|t| t.internal_minor()),
            _ => self.drawn(&bore.diameter),
        };
        let full = match thread {
            Some(_) => self.drawn(&bore.thread_length),
            None => None,
        };
        let (Some(side), Some(kind), Some(diameter), Some(length)) = (side, kind, diameter, length)
        else {
            return;
        };
        let depth = bore.depth.get().map_or(length, |size| size.drawn.value);
        let hole = Hole {
            from: end(side),
            length,
            depth,
        };
        self.features.push(hole.feature(bore, kind, diameter));
        if let (Some(thread), Some(full)) = (thread, full) {
            let form = Form::Threaded {
                surface: Surface::Inside,
                span: stretch(hole.span(depth), hole.from, full),
                thread,
            };
            let id = format!("{}-thread", name(&bore.id));
            self.features.push(Feature::new(id, form));
        }
    }

    fn cross(&mut self, row: &plan::section::CrossHole) {
        let (at, diameter) = (self.drawn(&row.at), self.drawn(&row.diameter));
        let (angle, reach) = (self.wanted(&row.angle), self.wanted(&row.reach));
        if self.thread(&row.thread).is_some() {
            self.not_ordered.push(name(&row.id));
        }
        let (Some(z), Some(diameter), Some(azimuth), Some(reach)) = (at, diameter, angle, reach)
        else {
            return;
        };
        let hole = CrossHole {
            z,
            azimuth,
            offset: row.offset.value().unwrap_or(Length::from_mm(0.0)),
            diameter,
            depth: match reach {
                CrossReach::IntoBore => CrossDepth::NearWall,
                CrossReach::Through => CrossDepth::Through,
            },
        };
        let mut feature = Feature::new(name(&row.id), Form::Cross(hole));
        feature.tolerance = row.diameter.get().and_then(|size| size.tolerance);
        self.features.push(feature);
    }
}

/// A hole along the axis.
#[derive(Clone, Copy)]
struct Hole {
    from: End,
    /// Length of the whole part.
    length: Length,
    /// Depth at full diameter.
    depth: Length,
}

impl Hole {
    fn mouth(self) -> Length {
        match self.from {
            End::Low => Length::from_mm(0.0),
            End::High => self.length,
        }
    }

    /// The stretch from the mouth to a depth.
    fn span(self, depth: Length) -> Span {
        match self.from {
            End::Low => Span {
                from: self.mouth(),
                to: self.mouth() + depth,
            },
            End::High => Span {
                from: self.mouth() - depth,
                to: self.mouth(),
            },
        }
    }

    fn feature(self, bore: &Bore, kind: BoreKind, diameter: Length) -> Feature {
        let form = match kind {
            BoreKind::Bored => Form::cylinder(Surface::Inside, self.span(self.depth), diameter),
            BoreKind::Drilled | BoreKind::Reamed | BoreKind::Tapped => Form::Drilled {
                from: self.from,
                mouth: self.mouth(),
                diameter,
                depth: self.depth,
                point: Point::drill(),
            },
        };
        let mut feature = Feature::new(name(&bore.id), form);
        if kind == BoreKind::Reamed {
            feature.finish = Finish::Reamed;
        }
        feature.tolerance = bore.diameter.get().and_then(|size| size.tolerance);
        feature
    }
}

fn end(side: Side) -> End {
    match side {
        Side::Left => End::Low,
        Side::Right => End::High,
    }
}

/// The end at which a die or a nut comes on: the left where nothing wider stands before it.
fn free_end(steps: &[Step], index: usize) -> End {
    let drawn = |s: &Step| s.diameter.get().map(|d| d.drawn.value);
    let own = drawn(&steps[index]);
    let open = |side: &[Step]| side.iter().all(|s| drawn(s) <= own);
    if !open(&steps[..index]) && open(&steps[index + 1..]) {
        End::High
    } else {
        End::Low
    }
}

/// So much of a stretch, from one of its ends.
fn stretch(span: Span, from: End, length: Length) -> Span {
    match from {
        End::Low => Span {
            from: span.from,
            to: span.from + length,
        },
        End::High => Span {
            from: span.to - length,
            to: span.to,
        },
    }
}

/// What sort of part it is, in the words of the plan.
pub(super) fn kind_words(fitting: &Fitting) -> Option<&'static str> {
    let kind = fitting.kind.value()?;
    plan::section::FittingKind::NAMES
        .iter()
        .find(|(k, ..)| *k == kind)
        .map(|(_, word, _)| *word)
}
