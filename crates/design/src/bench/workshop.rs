//! The door from a workshop file to the making of parts.
//!
//! A holder, a drawer or a reamer of which a number is missing is left out and the field named:
//! nothing stands in for a tool whose size is not known. The swing of a holder, the width of the
//! blade and the share of thread may be assumed, and are shown as assumed.

use making::Reads;
use making::workshop::{
    Dial, DrillingMachine, Hold, Holder, Lathe, Reamer, ReamerDrive, Speeds, Workshop as Shop,
};
use plan::workshop::{DialUnit, Holding, HoldingKind, Lathe as Machine, ReamerKind, Threading};
use plan::{Choice, Entry, Row, Workshop};
use reckoning::quantity::{Length, Ratio};
use reckoning::{Assumption, Given, Known, Origin, Typed};

use super::{assumed, drills};

/// A collet closes by so much under its size, mm (common practice for collets of one size).
const COLLET_CLOSES_MM: f64 = 0.1;

/// A workshop as the making of parts sees it, and what was missing.
#[derive(Clone, Debug)]
pub struct Tools {
    /// The workshop; `None` where no card can be written in it.
    pub shop: Option<Shop>,
    /// What was taken, assumed and missed.
    pub taking: Taking,
}

/// What was taken at the door of a workshop.
#[derive(Clone, Debug, Default)]
pub struct Taking {
    /// Fields that are wanted and empty.
    pub gaps: Vec<String>,
    /// What is left out and why, a sentence each.
    pub left_out: Vec<String>,
    /// The assumptions that stand in for empty fields, with those fields.
    pub assumed: Vec<(String, &'static Assumption)>,
}

impl Taking {
    /// A value that the file must give.
    pub(super) fn wanted<T: Copy>(&mut self, entry: &Entry<T>) -> Option<T> {
        let value = entry.value();
        if value.is_none() {
            self.gaps.push(entry.path().to_owned());
        }
        value
    }

    fn noted<Q>(&mut self, entry: &str, known: Known<Q>) -> Known<Q> {
        if let Given::Assumed { assumption } = known.given {
            self.assumed.push((entry.to_owned(), assumption));
        }
        known
    }
}

/// The tools of a workshop.
#[must_use]
pub fn tools(workshop: &Workshop) -> Tools {
    let mut taking = Taking::default();
    let shop = shop(workshop, &mut taking);
    Tools { shop, taking }
}

fn shop(workshop: &Workshop, taking: &mut Taking) -> Option<Shop> {
    // Everything is taken before the first `?`, so that all gaps are named at once.
    let machine = &workshop.lathe;
    let reads = taking.wanted(&machine.reads).map(|unit| match unit {
        DialUnit::Millimetres => Reads::Millimetres,
        DialUnit::Inches => Reads::Inches,
    });
    let speeds = speeds(machine, taking);
    let holders = holders(&workshop.holdings, taking);
    let drilling = drilling(workshop, taking);
    let drills = workshop
        .drill_sets
        .iter()
        .flat_map(|set| drills::of_set(set, taking))
        .collect();
    let reamers = reamers(workshop, taking);
    let (blade, thread_share) = (blade(machine, taking), thread_share(workshop, taking));
    let threading = &workshop.threading;
    Some(Shop {
        reads: reads?,
        lathe: Lathe {
            speeds: speeds?,
            holders,
            tailstock: dial(&machine.tailstock_lead, &machine.tailstock_divisions),
            lengths: dial(&machine.top_slide_lead, &machine.top_slide_divisions),
            blade,
        },
        drilling,
        drills,
        reamers,
        taps: threading
            .taps
            .get()
            .cloned()
            .into_iter()
            .flatten()
            .collect(),
        dies: dies(threading),
        thread_share,
    })
}

fn blade(machine: &Machine, taking: &mut Taking) -> Known<Length> {
    let known = machine.blade.known_or(&assumed::BLADE);
    taking.noted(machine.blade.path(), known)
}

fn thread_share(workshop: &Workshop, taking: &mut Taking) -> Known<Ratio> {
    let share = &workshop.threading.share;
    taking.noted(share.path(), share.known_or(&assumed::SHARE))
}

/// Steps where they are listed, else the range between slowest and fastest.
fn speeds(machine: &Machine, taking: &mut Taking) -> Option<Speeds> {
    if let Some(steps) = machine.speeds.get().filter(|s| !s.is_empty()) {
        return Some(Speeds::Steps(steps.iter().map(|s| s.value).collect()));
    }
    let slowest = taking.wanted(&machine.slowest);
    let fastest = taking.wanted(&machine.fastest);
    Some(Speeds::Range(slowest?, fastest?))
}

/// A dial, where both its lead and its divisions are known. Without it a depth is given as a size.
fn dial(lead: &Entry<Length>, divisions: &Entry<u32>) -> Option<Dial> {
    Some(Dial {
        lead: lead.value()?,
        divisions: u16::try_from(divisions.value()?).ok()?,
    })
}

fn holders(holdings: &[Holding], taking: &mut Taking) -> Vec<Holder> {
    let mut found = Vec::new();
    for holding in holdings {
        let Some(kind) = taking.wanted(&holding.kind) else {
            continue;
        };
        let hold = match kind {
            HoldingKind::ThreeJaw => Hold::ThreeJaw,
            HoldingKind::FourJaw => Hold::FourJawDialled,
            HoldingKind::SoftJaws => Hold::SoftJaws,
            HoldingKind::Collets => Hold::Collet,
            // It is taken with the drilling machine.
            HoldingKind::VeeBlock => continue,
            HoldingKind::Mandrel | HoldingKind::Faceplate | HoldingKind::Vice => {
                let (word, id) = (kind.name(), holding.called());
                let says = format!("{id}: no card is written for work held in a {word} yet");
                taking.left_out.push(says);
                continue;
            }
        };
        found.extend(turning(holding, (kind, hold), taking));
    }
    if found.is_empty() {
        taking.gaps.push("holding".to_owned());
    }
    found
}

/// A holder of the lathe: one for each size of collet.
fn turning(
    holding: &Holding,
    (kind, hold): (HoldingKind, Hold),
    taking: &mut Taking,
) -> Vec<Holder> {
    let grip = taking.wanted(&holding.grip);
    let takes = if hold == Hold::Collet {
        collet_sizes(holding, taking)
    } else {
        let (least, greatest) = (
            taking.wanted(&holding.least),
            taking.wanted(&holding.greatest),
        );
        least.zip(greatest).into_iter().collect()
    };
    let swing = holding.run_out.known().or_else(|| assumed::swing_of(kind));
    let (Some(grip), Some(swing)) = (grip, swing) else {
        return Vec::new();
    };
    if takes.is_empty() {
        return Vec::new();
    }
    let swing = taking.noted(holding.run_out.path(), swing);
    takes
        .into_iter()
        .map(|takes| Holder {
            hold,
            swing: swing.clone(),
            takes,
            grip,
        })
        .collect()
}

fn collet_sizes(holding: &Holding, taking: &mut Taking) -> Vec<(Length, Length)> {
    let Some(sizes) = holding.sizes.get() else {
        taking.gaps.push(holding.sizes.path().to_owned());
        return Vec::new();
    };
    sizes
        .iter()
        .map(|Typed { value, .. }| (*value - Length::from_mm(COLLET_CLOSES_MM), *value))
        .collect()
}

/// The drilling machine with the vee-block used under it; `None` where either is not listed.
fn drilling(workshop: &Workshop, taking: &mut Taking) -> Option<DrillingMachine> {
    let machine = &workshop.drilling_machine;
    if machine.speeds.is_absent() && machine.capacity.is_absent() {
        return None;
    }
    let speeds = machine.speeds.get().filter(|s| !s.is_empty());
    if speeds.is_none() {
        taking.gaps.push(machine.speeds.path().to_owned());
    }
    let block = workshop
        .holdings
        .iter()
        .find(|h| h.kind.value() == Some(HoldingKind::VeeBlock));
    let Some(block) = block else {
        let says = "drilling machine: no vee-block is listed to hold round work under it";
        taking.left_out.push(says.to_owned());
        return None;
    };
    let (least, greatest, grip) = (
        taking.wanted(&block.least),
        taking.wanted(&block.greatest),
        taking.wanted(&block.grip),
    );
    Some(DrillingMachine {
        speeds: Speeds::Steps(speeds?.iter().map(|s| s.value).collect()),
        holder: Holder {
            hold: Hold::VBlock,
            swing: still(),
            takes: (least?, greatest?),
            grip: grip?,
        },
    })
}

/// Work in a vee-block does not turn.
fn still() -> Known<Length> {
    Known {
        value: Length::from_mm(0.0),
        given: Given::Chosen {
            between: "no swing".to_owned(),
            reason: "the work does not turn in it".to_owned(),
            weakest: Origin::Read,
        },
    }
}

fn reamers(workshop: &Workshop, taking: &mut Taking) -> Vec<Reamer> {
    let mut found = Vec::new();
    for reamer in &workshop.reamers {
        let (size, lead) = (taking.wanted(&reamer.size), taking.wanted(&reamer.lead));
        let kind = taking.wanted(&reamer.kind);
        let (Some(diameter), Some(lead), Some(kind)) = (size, lead, kind) else {
            continue;
        };
        let (word, drive) = match kind {
            ReamerKind::Hand => ("hand reamer", ReamerDrive::Hand),
            ReamerKind::Machine => ("machine reamer", ReamerDrive::Machine),
        };
        let typed = reamer.size.typed().map_or("", |t| t.text.as_str());
        found.push(Reamer {
            name: format!("the {typed} {word}"),
            diameter,
            lead,
            drive,
        });
    }
    found
}

/// Threads for which there is a die, and those whose pitch the lathe cuts.
fn dies(threading: &Threading) -> Vec<String> {
    let mut names: Vec<String> = threading
        .dies
        .get()
        .cloned()
        .into_iter()
        .flatten()
        .collect();
    let pitches = threading.pitches.get().into_iter().flatten();
    for pitch in pitches {
        let same = |p: Length| (p - pitch.value).mm().abs() < PITCH_MM;
        let cut = formulas::thread::rows().iter().filter(|t| same(t.pitch));
        names.extend(cut.map(|t| t.name.clone()));
    }
    names
}

/// Two pitches nearer than this are one: nearer than any two in the tables.
const PITCH_MM: f64 = 1e-3;
