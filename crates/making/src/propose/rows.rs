//! The rows of a setting in the lathe, and of a setting across the axis.

use formulas::cutting::{cross_deepest, cross_tip};
use formulas::thread::TapLead;
use plant::part::{CrossDepth, CrossHole, End, Feature, Finish, Form, Point, Surface, Turned};
use reckoning::quantity::Length;

use super::NoCard;
use super::sort::{face, open_to, through};
use crate::card::{Operation, Row, Work};
use crate::rules::{CENTRE_SHARE, OVERSIZE_MM};
use crate::simulate::WITHIN_MM;
use crate::workshop::{Drill, Reamer, Workshop};

/// A hole as wide as this on a drill of the same size, mm.
const SAME_SIZE_MM: f64 = 0.005;
/// Metal on the diameter left for a reamer below and above 6 mm, mm, and for boring.
const TO_REAM_MM: (f64, f64) = (0.05, 0.10);
const TO_BORE_MM: f64 = 0.3;
/// How far past the least depth the tip of a cross drill is sent where there is room, mm.
const PAST_MM: f64 = 0.5;

/// One setting in the lathe.
pub(super) struct Turning<'a> {
    pub(super) drawing: &'a Turned,
    pub(super) workshop: &'a Workshop,
    /// The end outward.
    pub(super) end: End,
    pub(super) features: &'a [&'a Feature],
    /// How much longer than the piece a hole right through is drilled.
    pub(super) beyond: Length,
    /// Diameter of the bar.
    pub(super) bar: Length,
}

impl Turning<'_> {
    /// Face, centre, drill, bore, turn, chamfer, screw-cut, countersink, tap, ream.
    pub(super) fn rows(&self) -> Result<Vec<Row>, NoCard> {
        let at = face(self.drawing, self.end);
        let face = Work::Face { end: self.end, at };
        let mut rows: Vec<Operation> = vec![match self.faced() {
            Some(id) => Operation::making(id, face),
            None => Operation::on_the_way(face),
        }];
        let (holes, reams) = self.holes()?;
        rows.extend(holes);
        rows.extend(self.outside());
        rows.extend(self.threads_outside());
        rows.extend(self.mouths());
        rows.extend(self.taps());
        rows.extend(reams);
        Ok(rows.into_iter().map(Row::from).collect())
    }

    fn faced(&self) -> Option<&str> {
        self.drawing.features().iter().find_map(|f| match f.form {
            Form::Face { end, .. } if end == self.end => Some(f.id.as_str()),
            _ => None,
        })
    }

    /// Drilled and bored holes, narrow before wide, and the reaming that comes last.
    fn holes(&self) -> Result<(Vec<Operation>, Vec<Operation>), NoCard> {
        let mut holes: Vec<(Length, &Feature)> = self
            .features
            .iter()
            .filter_map(|f| f.form.bore().map(|d| (d, *f)))
            .collect();
        holes.sort_by(|a, b| a.0.mm().total_cmp(&b.0.mm()));
        let (mut rows, mut reams) = (Vec::new(), Vec::new());
        for (size, hole) in holes {
            let depth = self.depth(&hole.form);
            if hole.finish == Finish::Reamed {
                let reamer = self.reamer(hole, size)?;
                let drill = self.largest(hole, reamed_from(size))?;
                self.drilled(&mut rows, None, drill, depth);
                reams.push(Operation::making(
                    hole.id.clone(),
                    Work::Ream {
                        form: hole.form.clone(),
                        reamer,
                    },
                ));
            } else if let (Some(drill), Form::Drilled { .. }) = (self.exact(size), &hole.form) {
                self.drilled(&mut rows, Some(&hole.id), drill, depth);
            } else {
                self.bored(&mut rows, hole, (size, depth))?;
            }
        }
        Ok((rows, reams))
    }

    fn bored(
        &self,
        rows: &mut Vec<Operation>,
        hole: &Feature,
        (size, depth): (Length, Length),
    ) -> Result<(), NoCard> {
        if !self.is_open(hole, rows) {
            let drill = self.largest(hole, size - Length::from_mm(TO_BORE_MM))?;
            let flat = matches!(hole.form, Form::Turned { .. }) && !self.reaches_far(&hole.form);
            let point = Point::drill().length(drill.diameter);
            let depth = if flat { depth - point } else { depth };
            if depth.mm() <= 0.0 {
                return Err(NoCard::Feature {
                    feature: hole.id.clone(),
                    why: "it is too shallow to be drilled before it is bored",
                });
            }
            self.drilled(rows, None, drill, depth);
        }
        rows.push(Operation::making(
            hole.id.clone(),
            Work::Bore(hole.form.clone()),
        ));
        Ok(())
    }

    /// Whether a bored stretch ends at the far face.
    fn reaches_far(&self, form: &Form) -> bool {
        let whole = self.drawing.span();
        form.span().is_some_and(|s| match self.end {
            End::Low => (whole.to - s.to).mm().abs() < WITHIN_MM,
            End::High => (s.from - whole.from).mm().abs() < WITHIN_MM,
        })
    }

    /// Whether a hole drilled in these rows, or before in the first setting, runs through it all.
    fn is_open(&self, hole: &Feature, rows: &[Operation]) -> bool {
        let Some(span) = hole.form.span() else {
            return false;
        };
        let whole = self.drawing.span();
        let wanted = match self.end {
            End::Low => span.to - whole.from,
            End::High => whole.to - span.from,
        };
        let here = rows
            .iter()
            .any(|r| matches!(&r.work, Work::Drill { depth, .. } if *depth >= wanted));
        let before = self.drawing.features().iter().any(|f| {
            !self.features.iter().any(|own| own.id == f.id) && through(self.drawing, &f.form)
        });
        here || before
    }

    fn drilled(&self, rows: &mut Vec<Operation>, makes: Option<&str>, drill: Drill, depth: Length) {
        let first = !rows.iter().any(|r| matches!(r.work, Work::Drill { .. }));
        if first && !self.open_mouth() {
            rows.push(Operation::on_the_way(Work::CentreDrill {
                end: self.end,
                mouth: drill.diameter * CENTRE_SHARE,
            }));
        }
        let work = Work::Drill {
            end: self.end,
            drill,
            depth,
        };
        rows.push(match makes {
            Some(id) => Operation::making(id, work),
            None => Operation::on_the_way(work),
        });
    }

    /// Whether a hole made from the other end is open at this one.
    fn open_mouth(&self) -> bool {
        self.drawing.features().iter().any(|f| {
            !self.features.iter().any(|own| own.id == f.id) && through(self.drawing, &f.form)
        })
    }

    /// Depth of the full diameter from the outward face.
    fn depth(&self, form: &Form) -> Length {
        let whole = self.drawing.span();
        match form {
            Form::Drilled { .. } if through(self.drawing, form) => whole.length() + self.beyond,
            Form::Drilled { mouth, depth, .. } => {
                let down = match self.end {
                    End::Low => *mouth - whole.from,
                    End::High => whole.to - *mouth,
                };
                *depth + down
            }
            _ => match (form.span(), self.end) {
                _ if self.reaches_far(form) => whole.length() + self.beyond,
                (Some(span), End::Low) => span.to - whole.from,
                (Some(span), End::High) => whole.to - span.from,
                (None, _) => whole.length(),
            },
        }
    }

    /// Cylinders from the widest down, then cones and chamfers.
    fn outside(&self) -> Vec<Operation> {
        let mut turned: Vec<(&Feature, Length, Length)> = self
            .features
            .iter()
            .filter_map(|f| match &f.form {
                Form::Turned {
                    surface: Surface::Outside,
                    from,
                    to,
                    ..
                } => Some((*f, *from, *to)),
                _ => None,
            })
            .filter(|(_, from, to)| *from < self.bar || *to < self.bar)
            .collect();
        turned.sort_by(|a, b| {
            let key = |t: &(&Feature, Length, Length)| (t.1 != t.2, -t.1.mm().min(t.2.mm()));
            let (a, b) = (key(a), key(b));
            a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
        });
        turned
            .into_iter()
            .map(|(f, ..)| Operation::making(f.id.clone(), Work::Turn(self.whole_way(&f.form))))
            .collect()
    }

    /// A cylinder is turned from the outward end inwards, past what is turned smaller afterwards.
    fn whole_way(&self, form: &Form) -> Form {
        let mut form = form.clone();
        let whole = self.drawing.span();
        if let Form::Turned { span, from, to, .. } = &mut form
            && from == to
            && open_to(
                self.drawing,
                Surface::Outside,
                (*span, (*from, *to)),
                self.end,
            )
        {
            match self.end {
                End::Low => span.from = whole.from,
                End::High => span.to = whole.to,
            }
        }
        form
    }

    fn threads_outside(&self) -> Vec<Operation> {
        self.features
            .iter()
            .filter(|f| f.form.threads(Surface::Outside))
            .map(|f| Operation::making(f.id.clone(), Work::ScrewCut(f.form.clone())))
            .collect()
    }

    /// Cones inside: the mouths of holes.
    fn mouths(&self) -> Vec<Operation> {
        self.features
            .iter()
            .filter(|f| matches!(&f.form, Form::Turned { surface: Surface::Inside, from, to, .. } if from != to))
            .map(|f| Operation::making(f.id.clone(), Work::Countersink(f.form.clone())))
            .collect()
    }

    fn taps(&self) -> Vec<Operation> {
        self.features
            .iter()
            .filter(|f| f.form.threads(Surface::Inside))
            .map(|f| {
                let whole = self.drawing.span();
                let far = match self.end {
                    End::Low => whole.to - Length::from_mm(WITHIN_MM),
                    End::High => whole.from,
                };
                let tap = match self.drawing.inside_at(far) {
                    Some(_) => TapLead::Second,
                    None => TapLead::Bottoming,
                };
                Operation::making(
                    f.id.clone(),
                    Work::Tap {
                        form: f.form.clone(),
                        end: self.end,
                        tap,
                    },
                )
            })
            .collect()
    }

    fn reamer(&self, hole: &Feature, size: Length) -> Result<Reamer, NoCard> {
        let same = |r: &&Reamer| (r.diameter - size).mm().abs() < SAME_SIZE_MM;
        self.workshop
            .reamers
            .iter()
            .find(same)
            .cloned()
            .ok_or_else(|| NoCard::Tool {
                feature: hole.id.clone(),
                wanted: "a reamer",
                size: self.workshop.reads.size(size),
            })
    }

    fn exact(&self, size: Length) -> Option<Drill> {
        let same = |d: &&Drill| (d.diameter - size).mm().abs() < WITHIN_MM;
        self.workshop.drills.iter().find(same).cloned()
    }

    /// The largest drill not above a size.
    fn largest(&self, hole: &Feature, most: Length) -> Result<Drill, NoCard> {
        self.workshop
            .drills
            .iter()
            .filter(|d| d.diameter.mm() <= most.mm() + WITHIN_MM)
            .max_by(|a, b| a.diameter.mm().total_cmp(&b.diameter.mm()))
            .cloned()
            .ok_or_else(|| NoCard::Tool {
                feature: hole.id.clone(),
                wanted: "a drill",
                size: format!("up to {}", self.workshop.reads.size(most)),
            })
    }
}

/// The largest drill that leaves metal for a reamer.
fn reamed_from(size: Length) -> Length {
    let left = if size.mm() < 6.0 {
        TO_REAM_MM.0
    } else {
        TO_REAM_MM.1
    };
    size - Length::from_mm(left + OVERSIZE_MM)
}

/// The rows of a setting across the axis: each hole, then the last pass through every bore that
/// it opens into. `made` are the rows before it.
pub(super) fn across(drawing: &Turned, holes: &[&Feature], made: &[Row]) -> Vec<Row> {
    let mut rows: Vec<Operation> = holes
        .iter()
        .filter_map(|f| match &f.form {
            Form::Cross(hole) => Some((f, *hole)),
            _ => None,
        })
        .map(|(f, hole)| {
            let tip = tip(drawing, &hole);
            Operation::making(f.id.clone(), Work::CrossDrill { hole, tip })
        })
        .collect();
    rows.extend(passes(drawing, holes, made));
    rows.into_iter().map(Row::from).collect()
}

/// How deep the tip of a cross drill goes from the finished outside; none for right through.
fn tip(drawing: &Turned, hole: &CrossHole) -> Option<Length> {
    let outside = drawing.outside_at(hole.z)? / 2.0;
    match hole.depth {
        CrossDepth::Through => None,
        CrossDepth::Blind { bottom, point } => Some(outside - bottom + point.length(hole.diameter)),
        CrossDepth::NearWall => {
            let bore = drawing.inside_at(hole.z)? / 2.0;
            let point = Point::drill().length(hole.diameter);
            let least = cross_tip(
                outside.mm(),
                bore.mm(),
                hole.diameter.mm() / 2.0,
                point.mm(),
            )
            .ok()?;
            let most = cross_deepest(outside.mm(), bore.mm());
            let past = least + PAST_MM;
            Some(Length::from_mm(if past < most {
                past
            } else {
                f64::midpoint(least, most)
            }))
        }
    }
}

/// Fine bores are passed through again with their own tool; plain ones are deburred.
fn passes(drawing: &Turned, holes: &[&Feature], made: &[Row]) -> Vec<Operation> {
    let at: Vec<Length> = holes
        .iter()
        .filter_map(|f| match &f.form {
            Form::Cross(hole) => Some(hole.z),
            _ => None,
        })
        .collect();
    let opened = |f: &&Feature| {
        let inside = match &f.form {
            Form::Drilled { .. } => true,
            Form::Turned { surface, .. } | Form::Threaded { surface, .. } => {
                *surface == Surface::Inside
            }
            _ => false,
        };
        inside
            && f.form
                .span()
                .is_some_and(|s| at.iter().any(|z| s.holds(*z)))
    };
    let bores: Vec<&Feature> = drawing.features().iter().filter(opened).collect();
    bores
        .into_iter()
        .map(|bore| {
            let again = made.iter().find(|r| {
                r.operation.makes.as_deref() == Some(bore.id.as_str())
                    && matches!(r.operation.work, Work::Ream { .. } | Work::Tap { .. })
            });
            match again {
                Some(row) => row.operation.clone(),
                None => Operation::on_the_way(Work::Deburr {
                    feature: bore.id.clone(),
                }),
            }
        })
        .collect()
}
