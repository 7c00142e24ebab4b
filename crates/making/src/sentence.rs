//! The rows of a card as sentences, with speeds the machines have and depths as the dials read.

use formulas::cutting::spindle_speed;
use formulas::thread::Thread;
use plant::part::{CrossHole, End, Form, Span};
use reckoning::quantity::{Length, Rotation};

use crate::card::{Facing, Machine, Operation, RouteCard, Setting, Work};
use crate::piece::Piece;
use crate::simulate::{Step, WITHIN_MM, simulate};
use crate::words::{Reads, trimmed};
use crate::workshop::{Hold, ReamerDrive, Speeds, Workshop};

/// A setting as printed.
#[derive(Clone, Debug, PartialEq)]
pub struct SettingText {
    /// Number, from 1.
    pub number: usize,
    /// How the piece is held, and which side is open.
    pub heading: String,
    /// Its rows.
    pub rows: Vec<RowText>,
}

/// A row as printed.
#[derive(Clone, Debug, PartialEq)]
pub struct RowText {
    /// Number, through the whole card.
    pub number: usize,
    /// What is done.
    pub says: String,
    /// Speed of the spindle, where it turns under power.
    pub speed: Option<String>,
    /// Reading of the dial, or of the drill stop.
    pub dial: Option<String>,
}

/// A card as sentences.
#[must_use]
pub fn sentences(card: &RouteCard, piece: &Piece, workshop: &Workshop) -> Vec<SettingText> {
    let run = simulate(card, piece);
    card.settings
        .iter()
        .enumerate()
        .map(|(index, setting)| {
            let steps = run.steps.iter().filter(|s| s.place.setting == index);
            let teller = Teller {
                reads: card.reads,
                piece,
                workshop,
                setting,
                stock: card.stock.span(),
            };
            SettingText {
                number: index + 1,
                heading: teller.heading(),
                rows: steps.map(|s| teller.row(s)).collect(),
            }
        })
        .collect()
}

struct Teller<'a> {
    reads: Reads,
    piece: &'a Piece,
    workshop: &'a Workshop,
    setting: &'a Setting,
    /// The bar as it goes into the first setting.
    stock: Span,
}

impl Teller<'_> {
    fn heading(&self) -> String {
        let side = match self.setting.facing {
            Facing::End(End::Low) => "left end outward",
            Facing::End(End::High) => "right end outward",
            Facing::Side => "side up",
        };
        let machine = match self.setting.machine {
            Machine::Lathe => "Lathe",
            Machine::DrillingMachine => "Drilling machine",
        };
        let swing = match self.setting.facing {
            Facing::End(_) => format!(
                "; a dial may swing {}",
                self.reads.error(self.setting.holder.swing.value)
            ),
            Facing::Side => String::new(),
        };
        format!(
            "{machine}, {}, {side}: {}{swing}",
            self.holder(),
            self.held()
        )
    }

    fn holder(&self) -> String {
        let holder = &self.setting.holder;
        match holder.hold {
            Hold::Collet => format!("collet of {}", self.reads.size(holder.takes.1)),
            hold => hold.words().to_owned(),
        }
    }

    /// Over what it is held, from the left end of the piece, and what stands out.
    fn held(&self) -> String {
        let (grip, reads, whole) = (self.setting.grip, self.reads, self.piece.shape.span());
        let out = |outward: Length, jaws: Length| {
            reads.size(Length::from_mm((outward - jaws).mm().abs()))
        };
        match (grip.shared(whole), self.setting.facing) {
            (None, Facing::End(end)) => {
                let (face, jaws) = match end {
                    End::Low => (self.stock.from, grip.from),
                    End::High => (self.stock.to, grip.to),
                };
                format!(
                    "hold the bar over {}, {} of it standing out",
                    reads.size(grip.length()),
                    out(face, jaws)
                )
            }
            _ => {
                let on = self.piece.shape.outside_at(grip.from);
                let on =
                    on.map_or_else(String::new, |d| format!("the {} diameter ", reads.size(d)));
                format!(
                    "hold {on}over {}, from {} to {} from the left end",
                    reads.size(grip.length()),
                    reads.size(grip.from - whole.from),
                    reads.size(grip.to - whole.from)
                )
            }
        }
    }

    fn row(&self, step: &Step<'_>) -> RowText {
        RowText {
            number: step.number,
            says: self.says(step),
            speed: self.speed(step),
            dial: self.dial(&step.operation.work),
        }
    }

    /// What comes off a face, and the length to which the last one is faced.
    fn faced(&self, step: &Step<'_>, end: End, at: Length) -> String {
        let (there, whole) = (step.before.span(), self.piece.shape.span());
        let (off, far) = match end {
            End::Low => (at - there.from, there.to - whole.to),
            End::High => (there.to - at, whole.from - there.from),
        };
        let off = self.reads.size(off);
        let end = end_words(end);
        if far.mm().abs() < WITHIN_MM {
            let long = self.reads.size(whole.length());
            format!("Face the {end} end to a length of {long}, {off} to come off.")
        } else {
            format!("Face the {end} end, {off} to come off.")
        }
    }

    fn says(&self, step: &Step<'_>) -> String {
        let operation: &Operation = step.operation;
        let name = operation.makes.as_deref();
        let of = name.map_or_else(String::new, |n| format!(" ({n})"));
        match &operation.work {
            Work::Face { end, at } => self.faced(step, *end, *at),
            Work::Turn(form) => match chamfer(form) {
                Some(wide) => format!("Chamfer {} at 45 degrees{of}.", self.reads.size(wide)),
                None => format!("Turn {}{of}.", self.turned(form)),
            },
            Work::CentreDrill { mouth, .. } => {
                format!("Centre-drill to a mouth of {}.", self.reads.size(*mouth))
            }
            Work::Drill { drill, depth, .. } => format!(
                "Drill {}, {} deep at full diameter{of}.",
                drill.name,
                self.reads.size(*depth)
            ),
            Work::Bore(form) => format!("Bore {}{of}.", self.turned(form)),
            Work::Ream { form, reamer } => {
                let (form, how) = (self.turned(form), self.reamed(reamer.drive));
                format!("Ream {form} with {}{how}{of}.", reamer.name)
            }
            Work::Countersink(form) => format!("Countersink the mouth, {}{of}.", self.turned(form)),
            Work::Tap { form, tap, .. } => {
                let (form, tap, again) = (self.turned(form), tap.words(), self.again());
                format!("Tap {form}, {tap} as the last, guided square{again}{of}.")
            }
            Work::ScrewCut(form) => format!("Cut the thread {}{of}.", self.turned(form)),
            Work::Part { at, .. } => format!(
                "Part off, {} left on for facing.",
                self.reads.size(self.left_on(*at))
            ),
            Work::CrossDrill { hole, tip } => format!("{}{of}.", self.crossed(hole, *tip)),
            Work::Deburr { feature } => {
                format!("Break the edges and clear the burrs of {feature}.")
            }
        }
    }

    fn reamed(&self, drive: ReamerDrive) -> &'static str {
        match (self.again(), drive) {
            ("", ReamerDrive::Hand) => ", by hand",
            (again, _) => again,
        }
    }

    fn again(&self) -> &'static str {
        match self.setting.facing {
            Facing::Side => " again by hand, to clear the burr",
            Facing::End(_) => "",
        }
    }

    fn crossed(&self, hole: &CrossHole, tip: Option<Length>) -> String {
        let depth = match tip {
            Some(tip) => format!("tip {} deep", self.reads.size(tip)),
            None => "right through".to_owned(),
        };
        let [drill, at] =
            [hole.diameter, hole.z - self.piece.shape.span().from].map(|l| self.reads.size(l));
        format!(
            "Spot on the centre line and cross-drill {drill} at {at} from the left end, {depth}"
        )
    }

    /// Metal left beyond the finished length by a parting cut.
    fn left_on(&self, at: Length) -> Length {
        let span = self.piece.shape.span();
        if at < span.from {
            span.from - at
        } else {
            at - span.to
        }
    }

    fn turned(&self, form: &Form) -> String {
        let reads = self.reads;
        match form {
            Form::Turned { span, from, to, .. } if (*from - *to).mm().abs() < 1e-9 => {
                format!("{} over {}", reads.size(*from), reads.size(span.length()))
            }
            Form::Turned { span, from, to, .. } => format!(
                "from {} to {} over {}",
                reads.size(*from),
                reads.size(*to),
                reads.size(span.length())
            ),
            Form::Drilled {
                diameter, depth, ..
            } => format!("{} over {}", reads.size(*diameter), reads.size(*depth)),
            Form::Threaded { span, thread, .. } => {
                let name = Thread::read(&thread.designation)
                    .map_or_else(|_| thread.designation.clone(), |t| t.name);
                format!("{name} over {}", reads.size(span.length()))
            }
            Form::Cross(hole) => reads.size(hole.diameter),
            Form::Flats(flats) => reads.size(flats.from_axis * 2.0),
            Form::Face { .. } => "the end".to_owned(),
        }
    }

    /// Speed by the diameter at the cutting edge, and the greatest that the machine has below it.
    fn speed(&self, step: &Step<'_>) -> Option<String> {
        let turning = self.piece.metal.turning().high.m_min();
        let drilling = self.piece.metal.drilling().high.m_min();
        let (speed, diameter) = match &step.operation.work {
            Work::Face { .. } => (turning, widest(step, None)?),
            Work::Turn(form) => (turning, widest(step, form.span())?),
            Work::Bore(form) => (turning, inside(form)?),
            Work::Part { .. } => (turning / 2.0, widest(step, None)?),
            Work::CentreDrill { mouth, .. } => (drilling, *mouth),
            Work::Drill { drill, .. } => (drilling, drill.diameter),
            Work::CrossDrill { hole, .. } => (drilling, hole.diameter),
            Work::Ream { form, reamer }
                if self.setting.facing != Facing::Side && reamer.drive == ReamerDrive::Machine =>
            {
                (drilling / 2.0, inside(form)?)
            }
            Work::Ream { .. }
            | Work::Countersink(_)
            | Work::Tap { .. }
            | Work::ScrewCut(_)
            | Work::Deburr { .. } => return None,
        };
        let wanted = Rotation::from_rpm(spindle_speed(speed, diameter.mm()));
        let speeds = self.speeds()?;
        let words = |r: Rotation| trimmed(r.rpm(), 0);
        Some(match (speeds.at_most(wanted), speeds.slowest()) {
            (Some(chosen), _) if words(chosen) == words(wanted) => format!("{} rpm", words(chosen)),
            (Some(chosen), _) => format!("{} rpm (no more than {})", words(chosen), words(wanted)),
            (None, Some(slowest)) => format!(
                "{} rpm is the slowest here, and no more than {} is wanted",
                words(slowest),
                words(wanted)
            ),
            (None, None) => return None,
        })
    }

    fn speeds(&self) -> Option<&Speeds> {
        match self.setting.machine {
            Machine::Lathe => Some(&self.workshop.lathe.speeds),
            Machine::DrillingMachine => self.workshop.drilling.as_ref().map(|d| &d.speeds),
        }
    }

    fn dial(&self, work: &Work) -> Option<String> {
        let lathe = &self.workshop.lathe;
        match work {
            Work::Drill { depth, .. } => Some(format!(
                "tailstock {} from where the full diameter enters",
                lathe.tailstock?.reading(*depth)
            )),
            Work::Turn(form) | Work::Bore(form) | Work::ScrewCut(form) => {
                let far = self.face_to(form.span()?)?;
                Some(format!("{} from the face", lathe.lengths?.reading(far)))
            }
            Work::Part { at, .. } => {
                let far = self.face_to(Span { from: *at, to: *at })?;
                Some(format!(
                    "near side of the blade {} from the face",
                    lathe.lengths?.reading(far)
                ))
            }
            Work::CrossDrill { tip: Some(tip), .. } => Some(format!(
                "drill stop {} from the point touching",
                self.reads.size(*tip)
            )),
            _ => None,
        }
    }

    /// How far the inner end of a stretch lies from the finished face that is outward.
    fn face_to(&self, span: Span) -> Option<Length> {
        let whole = self.piece.shape.span();
        match self.setting.facing {
            Facing::End(End::Low) => Some(span.to - whole.from),
            Facing::End(End::High) => Some(whole.to - span.from),
            Facing::Side => None,
        }
    }
}

/// Width of a cone of 45 degrees; none for another form.
fn chamfer(form: &Form) -> Option<Length> {
    let Form::Turned { span, from, to, .. } = form else {
        return None;
    };
    let rise = (*from - *to).mm().abs() / 2.0;
    let wide = span.length();
    (rise > WITHIN_MM && (rise - wide.mm()).abs() < WITHIN_MM).then_some(wide)
}

fn end_words(end: End) -> &'static str {
    match end {
        End::Low => "left",
        End::High => "right",
    }
}

/// The widest outside that the tool meets before its cut.
fn widest(step: &Step<'_>, over: Option<Span>) -> Option<Length> {
    let whole = step.before.span();
    let span = over.unwrap_or(whole);
    step.before
        .outside()
        .filter(|p| p.span.shared(span).is_some())
        .map(|p| if p.from > p.to { p.from } else { p.to })
        .max_by(|a, b| a.mm().total_cmp(&b.mm()))
}

fn inside(form: &Form) -> Option<Length> {
    match form {
        Form::Turned { from, to, .. } => Some(if from > to { *from } else { *to }),
        Form::Drilled { diameter, .. } => Some(*diameter),
        _ => None,
    }
}
