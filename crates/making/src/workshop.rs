//! What the maker has: drills, a lathe with its holders and dials, a drilling machine.
//!
//! Plain data. Reading it from a file is the work of others.

use reckoning::Known;
use reckoning::quantity::{Length, Ratio, Rotation};

use crate::words::Reads;

/// A drill in a drawer.
#[derive(Clone, Debug, PartialEq)]
pub struct Drill {
    /// As its maker marked it (`5.3 mm`, `No 3`, `letter J`, `9/32 in`).
    pub name: String,
    /// Diameter.
    pub diameter: Length,
}

/// A reamer.
#[derive(Clone, Debug, PartialEq)]
pub struct Reamer {
    /// As marked.
    pub name: String,
    /// Diameter.
    pub diameter: Length,
    /// Length of its lead, over which it cuts under its size.
    pub lead: Length,
    /// How it is turned.
    pub drive: ReamerDrive,
}

/// How a reamer is turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ReamerDrive {
    /// By hand, the spindle standing.
    Hand,
    /// Under power.
    Machine,
}

/// How a part is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hold {
    /// Self-centring chuck with hard jaws.
    ThreeJaw,
    /// Independent chuck, the part set true with a dial.
    FourJawDialled,
    /// Soft jaws bored at the diameter held.
    SoftJaws,
    /// Collet.
    Collet,
    /// Split bush in a chuck, which may close on a thread.
    SplitBush,
    /// V-block with a clamp, under the drilling machine.
    VBlock,
}

impl Hold {
    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::ThreeJaw => "three-jaw chuck",
            Self::FourJawDialled => "four-jaw chuck, set true with the dial",
            Self::SoftJaws => "soft jaws bored to the diameter",
            Self::Collet => "collet",
            Self::SplitBush => "split bush in the chuck",
            Self::VBlock => "V-block and clamp",
        }
    }

    /// Whether it may close on a thread or on a finished fine surface without marking it.
    #[must_use]
    pub fn is_kind(self) -> bool {
        !matches!(self, Self::ThreeJaw | Self::FourJawDialled)
    }
}

/// A holder with what it costs in truth.
#[derive(Clone, Debug)]
pub struct Holder {
    /// Which.
    pub hold: Hold,
    /// Full swing of a dial on a part held in it.
    pub swing: Known<Length>,
    /// Least and greatest diameter that it takes. A collet takes its own size and a tenth of a
    /// millimetre less: a set of collets is a list of holders.
    pub takes: (Length, Length),
    /// Greatest length over which it grips.
    pub grip: Length,
}

/// A feed screw with its dial.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dial {
    /// Travel in a turn.
    pub lead: Length,
    /// Divisions on the dial.
    pub divisions: u16,
}

/// Speeds of a spindle.
#[derive(Clone, Debug, PartialEq)]
pub enum Speeds {
    /// Pulleys or gears: these and no others.
    Steps(Vec<Rotation>),
    /// Any speed between two.
    Range(Rotation, Rotation),
}

/// A lathe.
#[derive(Clone, Debug)]
pub struct Lathe {
    /// Speeds.
    pub speeds: Speeds,
    /// Holders, in any order.
    pub holders: Vec<Holder>,
    /// Dial of the tailstock, where it has one.
    pub tailstock: Option<Dial>,
    /// Dial of the topslide or leadscrew, by which lengths are set, where it has one.
    pub lengths: Option<Dial>,
    /// Width of the parting blade.
    pub blade: Known<Length>,
}

/// A drilling machine.
#[derive(Clone, Debug)]
pub struct DrillingMachine {
    /// Speeds.
    pub speeds: Speeds,
    /// The holder used under it for round work.
    pub holder: Holder,
}

/// A workshop.
#[derive(Clone, Debug)]
pub struct Workshop {
    /// What its dials read.
    pub reads: Reads,
    /// Lathe.
    pub lathe: Lathe,
    /// Drilling machine, if there is one.
    pub drilling: Option<DrillingMachine>,
    /// Drills.
    pub drills: Vec<Drill>,
    /// Reamers.
    pub reamers: Vec<Reamer>,
    /// Threads for which there is a tap, by name.
    pub taps: Vec<String>,
    /// Threads for which there is a die or a change of gears, by name.
    pub dies: Vec<String>,
    /// Share of full thread that the maker wants of a tapped hole.
    pub thread_share: Known<Ratio>,
}

impl Dial {
    /// A travel as turns and divisions, to the nearest division.
    #[must_use]
    pub fn reading(&self, travel: Length) -> Reading {
        let divisions = f64::from(self.divisions);
        let counted = (travel / self.lead * divisions).round();
        let turns = (counted / divisions).floor();
        Reading {
            turns,
            divisions: counted - turns * divisions,
            of: self.divisions,
        }
    }
}

/// A travel on a dial.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Whole turns.
    pub turns: f64,
    /// Divisions beyond.
    pub divisions: f64,
    /// Divisions in a turn.
    pub of: u16,
}

impl std::fmt::Display for Reading {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let plural = if (self.turns - 1.0).abs() < 0.5 {
            ""
        } else {
            "s"
        };
        write!(
            f,
            "{} turn{plural} and {} of {} divisions",
            self.turns, self.divisions, self.of
        )
    }
}

impl Speeds {
    /// The greatest speed not above `wanted`; none where the slowest is above it.
    #[must_use]
    pub fn at_most(&self, wanted: Rotation) -> Option<Rotation> {
        match self {
            Self::Steps(steps) => steps
                .iter()
                .copied()
                .filter(|s| *s <= wanted)
                .max_by(|a, b| a.rpm().total_cmp(&b.rpm())),
            Self::Range(low, _) if wanted < *low => None,
            Self::Range(_, high) => Some(if wanted < *high { wanted } else { *high }),
        }
    }

    /// The slowest.
    #[must_use]
    pub fn slowest(&self) -> Option<Rotation> {
        match self {
            Self::Steps(steps) => steps
                .iter()
                .copied()
                .min_by(|a, b| a.rpm().total_cmp(&b.rpm())),
            Self::Range(low, _) => Some(*low),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Independent sums: 23.455 mm on a lead of 2 mm with 40 divisions is 11 turns and 29.1; on a
    /// lead of 1/8 in, 29.248 mm is 9 turns and 0.673 mm.
    #[test]
    fn a_travel_reads_as_turns_and_divisions() {
        let dial = Dial {
            lead: Length::from_mm(2.0),
            divisions: 40,
        };
        let reading = dial.reading(Length::from_mm(23.455));
        assert_eq!(reading.to_string(), "11 turns and 29 of 40 divisions");
        let inch = Dial {
            lead: Length::from_inch(0.125),
            divisions: 125,
        };
        let reading = inch.reading(Length::from_mm(29.248));
        assert!((reading.turns - 9.0).abs() < 1e-9);
        assert!(
            (reading.divisions - 26.0).abs() < 1e-9,
            "0.673 mm is 26.5 thou, and a little less"
        );
    }

    #[test]
    fn a_full_turn_is_not_shown_as_divisions() {
        let dial = Dial {
            lead: Length::from_mm(2.0),
            divisions: 40,
        };
        let reading = dial.reading(Length::from_mm(3.999));
        assert_eq!(reading.to_string(), "2 turns and 0 of 40 divisions");
    }

    #[test]
    fn a_spindle_runs_at_a_speed_it_has() {
        let steps = Speeds::Steps([200.0, 400.0, 800.0].map(Rotation::from_rpm).to_vec());
        let at = |rpm: f64| {
            steps
                .at_most(Rotation::from_rpm(rpm))
                .map(|r| r.rpm().round())
        };
        assert_eq!(at(955.0), Some(800.0));
        assert_eq!(at(399.0), Some(200.0));
        assert_eq!(at(100.0), None);
    }
}
