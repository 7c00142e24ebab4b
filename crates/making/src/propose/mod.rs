//! A route card for a turned piece, from the maker's own workshop.
//!
//! A few cards are written, one for each end that may be outward first and each way of holding
//! the piece when it is turned round. Each is run and judged; the one with the fewest faults,
//! then the fewest conditions, is proposed. The order inside a setting follows the trade: face,
//! centre, drill, bore, turn, chamfer, thread, ream, part.

mod hold;
mod rows;
mod settle;
mod sort;

use formulas::cutting::{BAR_LENGTH, bar_length};
use formulas::thread::NotAThread;
use plant::part::{Bar, End, Feature, NoShape, Span, Surface, Turned};
use reckoning::quantity::{Length, MM, ONE, Ratio};
use reckoning::{Known, Working};

use crate::card::{Facing, Machine, Operation, RouteCard, Setting, Work};
use crate::check::count;
use crate::piece::Piece;
use crate::rules::of_the_trade;
use crate::tapping::{Choice, NoDrill};
use crate::workshop::{Hold, Holder, Workshop};
use hold::{is_inside, nearest, passes_jaws, plain, without};
use rows::{Turning, across};
use sort::{Sorted, face, other, sort};

/// Metal on the first face, mm: the saw cut is faced off.
const TO_FACE_MM: f64 = 0.5;
/// Metal left on the parted face, mm.
const LEFT_ON_MM: f64 = 0.4;
/// Distance from the parting cut to the jaws, mm.
const CLEAR_MM: f64 = 3.0;
/// Least length of grip on a finished surface, mm.
const LEAST_GRIP_MM: f64 = 3.0;

/// A card with what was chosen for it.
#[derive(Clone, Debug)]
pub struct Proposal {
    /// The card.
    pub card: RouteCard,
    /// The piece, with the holes under its threads drilled as chosen.
    pub piece: Piece,
    /// The drills chosen for tapping.
    pub tapping: Vec<Choice>,
    /// How many settings there are, and whether fewer are possible, in a sentence.
    pub settings: String,
    /// What the workshop lacks, a sentence each.
    pub lacks: Vec<String>,
    /// Length of bar it takes.
    pub bar_length: Length,
    /// The sum of that length.
    pub working: Working,
    /// Rules broken or left open on the best card; nought where the piece can be made as drawn.
    pub faults: usize,
}

/// Why no card is written.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NoCard {
    /// A feature that is not yet ordered here.
    #[error("{feature}: {why}")]
    Feature {
        /// Id of the feature.
        feature: String,
        /// Why.
        why: &'static str,
    },
    /// The bar is not round.
    #[error("only round bar is ordered yet")]
    Bar,
    /// A tool that the workshop lacks.
    #[error("{feature} wants {wanted} of {size}, and none is at hand")]
    Tool {
        /// Id of the feature.
        feature: String,
        /// What is wanted.
        wanted: &'static str,
        /// Its size.
        size: String,
    },
    /// Nothing holds the piece for a setting it needs.
    #[error("no holder of the workshop can hold the piece {when}")]
    NoHolder {
        /// For which setting.
        when: &'static str,
    },
    /// The piece is drilled across, and there is no drilling machine.
    #[error("the piece is drilled across its axis, and the workshop has no drilling machine")]
    NoDrillingMachine,
    /// A thread that is not known.
    #[error(transparent)]
    Thread(#[from] NotAThread),
    /// No drill fits before a tap.
    #[error(transparent)]
    Drill(#[from] NoDrill),
    /// The drawing is no shape.
    #[error(transparent)]
    Shape(#[from] NoShape),
}

/// Writes a card.
///
/// # Errors
/// [`NoCard`] where a feature, a tool or a holder stands against it.
pub fn propose(piece: &Piece, workshop: &Workshop) -> Result<Proposal, NoCard> {
    let Bar::Round(bar) = piece.shape.stock() else {
        return Err(NoCard::Bar);
    };
    let settled = settle::settle(piece, workshop)?;
    let writer = Writer {
        piece: &settled.piece,
        workshop,
        bar,
    };
    let (card, faults) = writer.best()?;
    let (bar_length, working) = writer.bar_length(&card);
    Ok(Proposal {
        settings: settings(&card, &settled.piece),
        lacks: lacks(&settled.piece, workshop),
        bar_length,
        working,
        faults,
        card,
        tapping: settled.choices,
        piece: settled.piece,
    })
}

/// How many settings, against the sides from which the drawing must be cut.
fn settings(card: &RouteCard, piece: &Piece) -> String {
    let mut sides = vec!["the left end is faced", "the right end is faced"];
    if piece.shape.cross_holes().next().is_some() {
        sides.push("a hole crosses the axis");
    }
    let count = card.settings.len();
    let proved = if count == sides.len() {
        "proved least: each is a side of its own"
    } else {
        "not proved least"
    };
    format!("{count} settings, {proved} ({})", sides.join(", "))
}

/// What a holder costs in trouble: those that are at hand before those that must be made or set.
fn trouble(hold: Hold) -> u8 {
    match hold {
        Hold::Collet | Hold::ThreeJaw | Hold::VBlock => 0,
        Hold::SoftJaws | Hold::SplitBush => 1,
        Hold::FourJawDialled => 2,
    }
}

fn lacks(piece: &Piece, workshop: &Workshop) -> Vec<String> {
    piece
        .shape
        .threads()
        .filter_map(|(id, surface, _, thread)| {
            let wanted = formulas::thread::Thread::read(&thread.designation).ok()?;
            let (tool, names) = match surface {
                Surface::Inside => ("tap", &workshop.taps),
                Surface::Outside => ("die", &workshop.dies),
            };
            let has = names
                .iter()
                .filter_map(|n| formulas::thread::Thread::read(n).ok())
                .any(|t| t == wanted);
            (!has).then(|| format!("{id} wants a {tool} of {}, and none is listed", wanted.name))
        })
        .collect()
}

struct Writer<'a> {
    piece: &'a Piece,
    workshop: &'a Workshop,
    bar: Length,
}

impl Writer<'_> {
    /// The card with the fewest faults, then conditions, then least work left for the second
    /// setting, then least trouble in holding, then least swing.
    fn best(&self) -> Result<(RouteCard, usize), NoCard> {
        let mut refused = None;
        let mut cards = Vec::new();
        for end in [End::Low, End::High] {
            match self.cards(end) {
                Ok(found) => cards.extend(found),
                Err(why) => refused = refused.or(Some(why)),
            }
        }
        let rank = |card: &RouteCard| {
            let trouble: u8 = card.settings.iter().map(|s| trouble(s.holder.hold)).sum();
            let later = card.settings.get(1).map_or(0, |s| s.rows.len());
            (count(card, self.piece), later, trouble)
        };
        let swing = |card: &RouteCard| -> f64 {
            card.settings
                .iter()
                .map(|s| s.holder.swing.value.mm())
                .sum()
        };
        let ranked = cards.into_iter().map(|card| (rank(&card), card));
        let best = ranked.min_by(|a, b| a.0.cmp(&b.0).then(swing(&a.1).total_cmp(&swing(&b.1))));
        match best {
            Some((((faults, _), ..), card)) => Ok((card, faults)),
            None => Err(refused.unwrap_or(NoCard::NoHolder { when: "in the bar" })),
        }
    }

    /// Every card that begins with this end outward.
    fn cards(&self, end: End) -> Result<Vec<RouteCard>, NoCard> {
        let sorted = sort(&self.piece.shape, end)?;
        let bar = self.bar_setting(&sorted)?;
        let stock = self.stock(&bar, end)?;
        let across = self.across(&sorted, &bar)?;
        let turned = self.parted(&stock, &bar)?;
        let mut cards = Vec::new();
        for (holder, grip) in self.holds(&turned, &sorted.reversed, other(end)) {
            let reversed = Setting {
                machine: Machine::Lathe,
                holder,
                grip,
                facing: Facing::End(other(end)),
                rows: self
                    .turning(other(end), &sorted.reversed, Length::from_mm(1.0))
                    .rows()?,
            };
            let mut settings = vec![bar.clone(), reversed];
            settings.extend(across.clone());
            cards.push(RouteCard {
                part: self.piece.id.clone(),
                stock: stock.clone(),
                settings,
                reads: self.workshop.reads,
            });
        }
        if cards.is_empty() {
            return Err(NoCard::NoHolder {
                when: "when it is turned round",
            });
        }
        Ok(cards)
    }

    fn turning<'b>(&'b self, end: End, features: &'b [&'b Feature], beyond: Length) -> Turning<'b> {
        Turning {
            drawing: &self.piece.shape,
            workshop: self.workshop,
            end,
            features,
            beyond,
            bar: self.bar,
        }
    }

    fn bar_setting(&self, sorted: &Sorted<'_>) -> Result<Setting, NoCard> {
        let end = sorted.first;
        let blade = self.workshop.lathe.blade.value;
        let holder = self
            .takes(self.bar)
            .min_by(|a, b| {
                trouble(a.hold)
                    .cmp(&trouble(b.hold))
                    .then(b.grip.mm().total_cmp(&a.grip.mm()))
            })
            .ok_or(NoCard::NoHolder { when: "in the bar" })?;
        let left = Length::from_mm(LEFT_ON_MM);
        let beyond = left + blade;
        let mut rows = self.turning(end, &sorted.bar, beyond).rows()?;
        let far = face(&self.piece.shape, other(end));
        let (at, jaws) = match end {
            End::Low => (far + left, far + beyond + Length::from_mm(CLEAR_MM)),
            End::High => (far - left, far - beyond - Length::from_mm(CLEAR_MM)),
        };
        rows.push(Operation::on_the_way(Work::Part { at, blade }).into());
        let grip = Span::inwards(jaws, end, holder.grip);
        Ok(Setting {
            machine: Machine::Lathe,
            holder: holder.clone(),
            grip,
            facing: Facing::End(end),
            rows,
        })
    }

    /// The bar as it goes into the first setting.
    fn stock(&self, bar: &Setting, end: End) -> Result<Turned, NoCard> {
        let face = face(&self.piece.shape, end);
        let proud = Length::from_mm(TO_FACE_MM);
        let span = match end {
            End::Low => Span {
                from: face - proud,
                to: bar.grip.to,
            },
            End::High => Span {
                from: bar.grip.from,
                to: face + proud,
            },
        };
        Ok(Turned::bar(self.piece.shape.stock(), span)?)
    }

    fn across(&self, sorted: &Sorted<'_>, bar: &Setting) -> Result<Option<Setting>, NoCard> {
        if sorted.across.is_empty() {
            return Ok(None);
        }
        let Some(machine) = &self.workshop.drilling else {
            return Err(NoCard::NoDrillingMachine);
        };
        let drawing = &self.piece.shape;
        let mut made = bar.rows.clone();
        made.extend(
            self.turning(other(sorted.first), &sorted.reversed, Length::from_mm(1.0))
                .rows()?,
        );
        let holes: Vec<Span> = sorted.across.iter().filter_map(|f| f.form.span()).collect();
        let grip = plain(drawing)
            .into_iter()
            .filter(|(_, d)| machine.holder.takes.0 <= *d && *d <= machine.holder.takes.1)
            .flat_map(|(span, _)| without(span, &holes))
            .max_by(|a, b| a.length().mm().total_cmp(&b.length().mm()))
            .filter(|s| s.length().mm() >= LEAST_GRIP_MM)
            .ok_or(NoCard::NoHolder {
                when: "to be drilled across",
            })?;
        Ok(Some(Setting {
            machine: Machine::DrillingMachine,
            holder: machine.holder.clone(),
            grip,
            facing: Facing::Side,
            rows: across(drawing, &sorted.across, &made),
        }))
    }

    /// The piece as it drops from the bar.
    fn parted(&self, stock: &Turned, bar: &Setting) -> Result<Turned, NoCard> {
        let card = RouteCard {
            part: self.piece.id.clone(),
            stock: stock.clone(),
            settings: vec![bar.clone()],
            reads: self.workshop.reads,
        };
        Ok(crate::simulate::simulate(&card, self.piece).shape)
    }

    /// Every way of holding the turned piece with this end outward.
    fn holds(&self, shape: &Turned, later: &[&Feature], outward: End) -> Vec<(Holder, Span)> {
        let cut: Vec<Span> = later
            .iter()
            .filter(|f| !is_inside(f))
            .filter_map(|f| f.form.span())
            .collect();
        let end = face(&self.piece.shape, outward);
        let clear = Length::from_mm(LEAST_GRIP_MM);
        let open = match outward {
            End::Low => Span {
                from: end + clear,
                to: shape.span().to,
            },
            End::High => Span {
                from: shape.span().from,
                to: end - clear,
            },
        };
        plain(shape)
            .into_iter()
            .filter_map(|(span, d)| span.shared(open).map(|s| (s, d)))
            .flat_map(|(span, d)| without(span, &cut).into_iter().map(move |s| (s, d)))
            .filter(|(span, d)| {
                span.length().mm() >= LEAST_GRIP_MM && passes_jaws(shape, *span, *d, outward)
            })
            .flat_map(|(span, d)| {
                self.takes(d)
                    .map(move |h| (h.clone(), nearest(span, h.grip, outward)))
            })
            .collect()
    }

    fn takes(&self, diameter: Length) -> impl Iterator<Item = &Holder> {
        self.workshop.lathe.holders.iter().filter(move |h| {
            h.takes.0 <= diameter && diameter <= h.takes.1 && h.hold != Hold::VBlock
        })
    }

    fn bar_length(&self, card: &RouteCard) -> (Length, Working) {
        let length = self.piece.shape.span().length();
        let facing = Length::from_mm(TO_FACE_MM + LEFT_ON_MM);
        let held: Length = card.settings.iter().take(1).map(|s| s.grip.length()).sum();
        let grip = held + Length::from_mm(CLEAR_MM);
        let blade = &self.workshop.lathe.blade;
        let typed = self.workshop.reads.size(length);
        let drawn = Known::from_plan(length, format!("{}.length", self.piece.id), typed);
        let allowed = |length, reason| of_the_trade(length, "allowances of the card", reason);
        let one = of_the_trade(Ratio::from_number(1.0), "pieces on the card", "one");
        let facings = allowed(facing, "metal on both faces");
        let grips = allowed(grip, "grip of the holder, and clear of the blade");
        let mut lines = Working::new();
        let inputs = [
            lines.know("n", "number of parts", &ONE, &one),
            lines.know("L", "length of the part", &MM, &drawn),
            lines.know("b", "width of the parting blade", &MM, blade),
            lines.know("f", "facing allowance", &MM, &facings),
            lines.know("g", "grip and clearance", &MM, &grips),
        ];
        let value = bar_length(1.0, length.mm(), blade.value.mm(), facing.mm(), grip.mm());
        if lines.settled(&BAR_LENGTH, &inputs, value).is_err() {
            lines = Working::new();
        }
        (Length::from_mm(value), lines)
    }
}
