//! The engine as it is told: plain numbers in SI with the unit in each name.

/// A simple expansion engine of one or more equal cylinders.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Engine {
    /// Number of cylinders.
    pub cylinders: f64,
    /// Working strokes of all ends in a turn of the crankshaft.
    pub strokes_per_turn: f64,
    /// Bore of a cylinder, m.
    pub bore_m: f64,
    /// Stroke, m.
    pub stroke_m: f64,
    /// Stroke volume of one end, m³: the mean of both where a rod takes its share.
    pub stroke_volume_m3: f64,
    /// What is held, and what follows from it.
    pub load: Load,
    /// Clearance over stroke volume.
    pub clearance: f64,
    /// Part of the return stroke that is compression.
    pub compression: f64,
    /// Pressure in the chest over pressure in the boiler, both absolute.
    pub chest_share: f64,
    /// From the chest into the cylinder.
    pub admission: Admission,
    /// Mean pressure of the real diagram over that of the drawn one.
    pub diagram_factor: f64,
    /// Power at the shaft over indicated power.
    pub mechanical_efficiency: f64,
    /// Steam supplied beyond what the diagram shows.
    pub missing: Missing,
    /// What tells the state of the exhaust.
    pub exhausts: Exhausts,
    /// Pressure in the cylinder when the exhaust closes, Pa; `None` where it is the back
    /// pressure that the loop finds.
    pub closing_pa: Option<f64>,
    /// Share of the time in which the exhaust of a slow engine flows.
    pub puff_share: f64,
    /// The steam pipe; `None` where nothing is known of it.
    pub pipe: Option<Pipe>,
    /// A feed pump that the engine drives.
    pub pump: Option<Pump>,
}

/// Speed, cut-off and power: two are held and the third follows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Load {
    /// The regulator is open, and the power follows.
    Open {
        /// Working strokes of all ends in a second.
        strokes_per_s: f64,
        /// Cut-off as a share of the stroke.
        cut_off: f64,
    },
    /// The regulator is closed so far that the engine gives no more than the power asked.
    Throttled {
        /// Working strokes of all ends in a second.
        strokes_per_s: f64,
        /// Cut-off as a share of the stroke.
        cut_off: f64,
        /// Power asked at the shaft, W.
        shaft_w: f64,
    },
    /// The engine runs as fast as the power asks.
    BySpeed {
        /// Cut-off as a share of the stroke.
        cut_off: f64,
        /// Power asked at the shaft, W.
        shaft_w: f64,
    },
    /// Steam is admitted as long as the power asks.
    ByCutOff {
        /// Working strokes of all ends in a second.
        strokes_per_s: f64,
        /// Power asked at the shaft, W.
        shaft_w: f64,
    },
}

impl Load {
    /// Power asked at the shaft, W; `None` where none is.
    #[must_use]
    pub fn asked_w(&self) -> Option<f64> {
        match *self {
            Self::Open { .. } => None,
            Self::Throttled { shaft_w, .. }
            | Self::BySpeed { shaft_w, .. }
            | Self::ByCutOff { shaft_w, .. } => Some(shaft_w),
        }
    }

    /// The load with as many times the strokes, or as many times the power where the speed
    /// follows from it.
    #[must_use]
    pub fn faster(self, share: f64) -> Self {
        match self {
            Self::Open {
                strokes_per_s,
                cut_off,
            } => Self::Open {
                strokes_per_s: strokes_per_s * share,
                cut_off,
            },
            Self::Throttled {
                strokes_per_s,
                cut_off,
                shaft_w,
            } => Self::Throttled {
                strokes_per_s: strokes_per_s * share,
                cut_off,
                shaft_w: shaft_w * share,
            },
            Self::BySpeed { cut_off, shaft_w } => Self::BySpeed {
                cut_off,
                shaft_w: shaft_w * share,
            },
            Self::ByCutOff {
                strokes_per_s,
                shaft_w,
            } => Self::ByCutOff {
                strokes_per_s: strokes_per_s * share,
                shaft_w: shaft_w * share,
            },
        }
    }
}

/// From the chest into the cylinder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Admission {
    /// Pressure at admission over that in the chest, both absolute.
    Share(f64),
    /// Through ports that draw the steam finer the faster it passes.
    Ports {
        /// Area of the port of one end, m².
        area_m2: f64,
        /// Pressure taken over density times the square of the mean speed.
        loss: f64,
    },
}

/// Steam supplied beyond what the diagram shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Missing {
    /// Measured, over the indicated steam.
    Measured(f64),
    /// Reckoned from walls and leaks, times this factor.
    Reckoned(f64),
}

/// What tells the state of the exhaust.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Exhausts {
    /// Its dryness where the steam comes straight from the boiler.
    Dryness(f64),
    /// The balance of heat, with a loss in W on a square metre of bores and covers for a kelvin.
    ByLoss(f64),
}

/// The steam pipe from the boiler to the engine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pipe {
    /// Outside diameter, m.
    pub outside_m: f64,
    /// Length in the open, m.
    pub length_m: f64,
    /// Emissivity of its surface.
    pub emissivity: f64,
    /// What it wears; `None` where it is bare.
    pub lagging: Option<Lagging>,
}

/// Lagging of a pipe.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lagging {
    /// Thickness, m.
    pub thickness_m: f64,
    /// Conductivity, W/(m K).
    pub w_m_k: f64,
}

/// A feed pump that the engine drives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pump {
    /// Water that it feeds, m³/s.
    pub water_m3_s: f64,
    /// Work on the water over work on the pump.
    pub efficiency: f64,
}

/// Steam that is asked for without an engine being described.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plain {
    /// Steam, kg/s.
    pub steam_kg_s: f64,
    /// Dryness of what is left of it, where it is led to a nozzle.
    pub exhaust_dryness: f64,
}
