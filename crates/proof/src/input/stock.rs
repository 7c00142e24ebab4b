//! What can be had: the sizes among which a remedy chooses.

use reckoning::quantity::Length;

/// One size that can be had.
#[derive(Clone, Debug, PartialEq)]
pub struct StockSize {
    /// As the maker calls it (`10 swg`).
    pub text: String,
    /// Least thickness within its standard's tolerance.
    pub least: Length,
}

/// Thicknesses that can be had.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Stock {
    /// Walls of tube.
    pub tube_walls: Vec<StockSize>,
    /// Thicknesses of sheet and plate.
    pub sheets: Vec<StockSize>,
}
