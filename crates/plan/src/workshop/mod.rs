//! The workshop: every section of a `workshop.toml`, which serves every plan of its maker.

mod heat;
mod lathe;
mod tools;

pub use heat::{Bath, Gas, Stock, StockKind, Torch};
pub use lathe::{DialUnit, DrillingMachine, Holding, HoldingKind, Lathe, RotaryTable};
pub use tools::{DrillSeries, DrillSet, Reamer, ReamerKind, Threading};

use reckoning::Typed;
use reckoning::quantity::Length;

use crate::entry::Entry;
use crate::field::within;
use crate::file::File;
use crate::visit::{Section, Visitor};

/// A workshop.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Workshop {
    /// Version of the format.
    pub format: Entry<u32>,
    /// Whose workshop.
    pub name: Entry<String>,
    /// Lathe.
    pub lathe: Lathe,
    /// Means of holding work in the lathe and beside it.
    pub holdings: Vec<Holding>,
    /// Drilling machine.
    pub drilling_machine: DrillingMachine,
    /// Rotary table.
    pub rotary_table: RotaryTable,
    /// Sets of drills and single ones.
    pub drill_sets: Vec<DrillSet>,
    /// Body diameters of the centre drills.
    pub centre_drills: Entry<Vec<Typed<Length>>>,
    /// Reamers.
    pub reamers: Vec<Reamer>,
    /// Taps and dies.
    pub threading: Threading,
    /// Torch nozzles.
    pub torches: Vec<Torch>,
    /// Pickling bath.
    pub bath: Bath,
    /// Material on hand.
    pub stock: Vec<Stock>,
}

impl File for Workshop {
    const NAME: &'static str = "workshop.toml";
    const FORMAT: u32 = 1;

    fn format(&self) -> &Entry<u32> {
        &self.format
    }
}

impl Section for Workshop {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(
            &mut self.format,
            "format",
            "version of the format of this file",
            (1, Self::FORMAT),
        );
        v.text(&mut self.name, "name", "what the workshop is called");
        v.numbers(
            &mut self.centre_drills,
            "centre-drills",
            "body diameters of the centre drills",
            within("1 mm", "25 mm"),
        );
        v.table("lathe", "the lathe", &mut self.lathe);
        v.rows("holding", "a means of holding work", &mut self.holdings);
        v.table(
            "drilling-machine",
            "the drilling machine",
            &mut self.drilling_machine,
        );
        v.table("rotary-table", "the rotary table", &mut self.rotary_table);
        v.rows(
            "drill-set",
            "a set of drills, or a single one",
            &mut self.drill_sets,
        );
        v.rows("reamer", "a reamer", &mut self.reamers);
        v.table(
            "threading",
            "taps, dies and screw-cutting",
            &mut self.threading,
        );
        v.rows("torch", "a torch with one nozzle", &mut self.torches);
        v.table("bath", "the pickling bath", &mut self.bath);
        v.rows("stock", "material on hand", &mut self.stock);
    }
}
