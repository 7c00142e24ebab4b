//! Engine, fire, heat, draught, coil and drum.
//!
//! Each stage is a function from a plain struct of what it needs to a plain struct of every
//! value a reader may ask for. Nothing here knows a card inside a loop.
//!
//! At a given pressure [`fire::settle`] finds the one state of engine, exhaust, fire, tubes and
//! chimney in which draught and losses balance. No state is ever sought from a guess.

mod assumptions;
mod band;
pub mod burner;
pub mod consumption;
mod cure;
mod curve;
mod demand;
pub mod draught;
pub mod dryer;
pub mod engine;
mod explain;
mod fault;
pub mod fire;
pub mod firebox;
mod firing;
pub mod flue;
pub mod heat;
mod inputs;
pub mod jets;
mod over_draught;
mod pass;
pub mod rules;
mod seek;
pub mod signs;
mod starved;
mod state;
mod sweep;
pub mod tubes;

pub use assumptions::{ASSUMPTIONS, Entering, assumption, standing};
pub use band::{
    Band, Drawn, Draws, POINTS, Reads, Share, draws, first_order_shares, normal_quantile,
};
pub use cure::{Bundle, Candidates, Cure, Cured, Lever, Stack, cures, metric_steps};
pub use demand::{Above, Held, Holding, greatest_speed};
pub use engine::{
    Admission, Engine, Exhausts, Lagging, Load, Missing, Pipe, Plain, Pump, Supply, Taker,
};
pub use explain::{
    Explained, ExplainedFlame, Origins, explain, explain_draught, explain_heat, explain_tank,
    explain_use,
};
pub use fault::NotSettled;
pub use firing::{
    Bed, BedFire, BedFireState, BedState, Burning, Fire, FireAir, Firebox, Firing, FiringState,
    FlameBox, FlameInFirebox, FlameInFireboxState, FlameInFlue, FlameInFlueState, Opening, ToWater,
};
pub use inputs::{
    Blast, Blower, Boiler, Chimney, CoilPlace, Dryer, ExhaustWater, Inputs, Leak, Site,
    air_enthalpy,
};
pub use over_draught::{OverDraught, over_draught};
pub use rules::{
    CARRIED, Carried, Judging, RULES, StrongestGas, TankAsked, TankEnds, TankTime, carbon_monoxide,
    findings, lives_on_jets, steam_jets, strongest_gas, tank_lasts, water_findings,
};
pub use starved::Starved;
pub use state::{FireState, PassState, WaterState};
pub use sweep::{Crossing, Outlook, Point, Slopes, Stability, Step, Sweep, Word, sweep};
pub use tubes::{Beyond, Tubes};
