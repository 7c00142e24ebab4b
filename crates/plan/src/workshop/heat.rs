//! `[[torch]]`, `[bath]`, `[[stock]]`: what brazing needs, and the material on hand.

use reckoning::Size;
use reckoning::quantity::{Length, MassFlow, Power};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Row, Section, Visitor};

/// `[[torch]]`: a torch with one nozzle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Torch {
    /// Id.
    pub id: Entry<String>,
    /// Gas that it burns.
    pub gas: Entry<Gas>,
    /// Bore of the burner tube at its mouth.
    pub nozzle: Entry<Length>,
    /// Gas burnt when full on.
    pub gas_rate: Entry<MassFlow>,
    /// Heat that a can of water took up from it, measured.
    pub heat_to_water: Entry<Power>,
}

impl Row for Torch {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Torch {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the torch with this nozzle");
        v.choice(&mut self.gas, "gas", "gas that it burns");
        v.number(
            &mut self.nozzle,
            "nozzle",
            "bore of the burner at its mouth",
            within("1 mm", "80 mm"),
        );
        v.number(
            &mut self.gas_rate,
            "gas-rate",
            "gas burnt when full on",
            within("5 g/h", "20 kg/h"),
        );
        v.number(
            &mut self.heat_to_water,
            "heat-to-water",
            "heat that a weighed can of water took up from it, measured",
            within("20 W", "100 kW"),
        );
    }
}

/// Gas of a torch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gas {
    /// Propane with air.
    Propane,
    /// Butane with air.
    Butane,
    /// Acetylene with oxygen.
    OxyAcetylene,
    /// Propane with oxygen.
    OxyPropane,
}

impl Choice for Gas {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Propane, "propane", "propane with air"),
        (Self::Butane, "butane", "butane with air"),
        (Self::OxyAcetylene, "oxy-acetylene", "acetylene with oxygen"),
        (Self::OxyPropane, "oxy-propane", "propane with oxygen"),
    ];
}

/// `[bath]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Bath {
    /// What it holds.
    pub pickle: Entry<String>,
    /// Length.
    pub length: Entry<Length>,
    /// Width.
    pub width: Entry<Length>,
    /// Depth of liquid.
    pub depth: Entry<Length>,
}

impl Section for Bath {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.text(&mut self.pickle, "pickle", "what the bath holds");
        v.number(
            &mut self.length,
            "length",
            "length of the bath",
            within("50 mm", "3 m"),
        );
        v.number(
            &mut self.width,
            "width",
            "width of the bath",
            within("50 mm", "3 m"),
        );
        v.number(
            &mut self.depth,
            "depth",
            "depth of the liquid",
            within("20 mm", "2 m"),
        );
    }
}

/// `[[stock]]`: a piece, or several alike.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Stock {
    /// Id.
    pub id: Entry<String>,
    /// What it is.
    pub kind: Entry<StockKind>,
    /// Metal.
    pub metal: Entry<String>,
    /// Diameter, or size across flats.
    pub across: Entry<Size>,
    /// Wall of a tube, thickness of a sheet.
    pub wall: Entry<Size>,
    /// Length.
    pub length: Entry<Length>,
    /// Width of a sheet.
    pub width: Entry<Length>,
    /// How many pieces.
    pub count: Entry<u32>,
    /// Price of a piece, in the maker's money.
    pub price: Entry<String>,
}

impl Row for Stock {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Stock {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the piece");
        v.choice(&mut self.kind, "kind", "what it is");
        v.text(&mut self.metal, "metal", "its metal, by its standard name");
        v.size(
            &mut self.across,
            "across",
            "diameter of round bar or tube, size across flats of other bar",
            within("0.5 mm", "600 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of a tube, thickness of a sheet",
            within("0.1 mm", "60 mm"),
        );
        v.number(
            &mut self.length,
            "length",
            "length of the piece",
            within("5 mm", "7 m"),
        );
        v.number(
            &mut self.width,
            "width",
            "width of a sheet",
            within("5 mm", "3 m"),
        );
        v.count(
            &mut self.count,
            "count",
            "how many pieces there are",
            (1, 1000),
        );
        v.text(
            &mut self.price,
            "price",
            "price of a piece, in the maker's money",
        );
    }
}

/// What a piece of stock is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StockKind {
    /// Round bar.
    RoundBar,
    /// Hexagon bar.
    HexagonBar,
    /// Square bar.
    SquareBar,
    /// Tube.
    Tube,
    /// Sheet.
    Sheet,
    /// Wire.
    Wire,
}

impl Choice for StockKind {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::RoundBar, "round bar", ""),
        (Self::HexagonBar, "hexagon bar", ""),
        (Self::SquareBar, "square bar", ""),
        (Self::Tube, "tube", ""),
        (Self::Sheet, "sheet", ""),
        (Self::Wire, "wire", "for springs"),
    ];
}
