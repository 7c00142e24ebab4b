//! Pipes, and what is screwed together.

use super::{Dimension, Metal};
use formulas::thread::Thread;
use reckoning::Known;
use reckoning::quantity::{Length, Temperature};

/// A pipe under boiler pressure, as between a bush and a valve.
#[derive(Clone, Debug)]
pub struct Pipe {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// Outside diameter.
    pub outside: Option<Dimension>,
    /// Wall.
    pub wall: Option<Dimension>,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}

/// A plug, valve or union screwed into a bush under pressure.
#[derive(Clone, Debug)]
pub struct Screwed {
    /// Id in the plan.
    pub id: String,
    /// The thread, where it is one that is known.
    pub thread: Option<Thread>,
    /// Metal of the bush.
    pub bush: Metal,
    /// Metal of what is screwed in.
    pub screw: Metal,
    /// Length of full thread engaged.
    pub engaged: Option<Known<Length>>,
    /// Greatest temperature of the metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}
