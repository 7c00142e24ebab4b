//! The piece that is to be made.

use formulas::cutting::CuttingMetal;
use plant::part::Turned;
use reckoning::Known;
use reckoning::quantity::Length;

/// Whether a piece holds pressure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Service {
    /// It holds steam or water under pressure.
    Pressure,
    /// It does not.
    Open,
}

/// A turned piece as wanted.
#[derive(Clone, Debug)]
pub struct Piece {
    /// Id of the part.
    pub id: String,
    /// Finished shape; its stock is the bar it is cut from.
    pub shape: Turned,
    /// Metal, as far as cutting asks.
    pub metal: CuttingMetal,
    /// Least wall or floor anywhere in it.
    pub least_wall: Known<Length>,
    /// Whether it holds pressure.
    pub service: Service,
}
