//! What nobody has measured of a plant's steaming, with its range.
//!
//! The id of each is the plan field that replaces it. `set` puts a value in SI into the inputs;
//! it does nothing where the plant has no such part.

use reckoning::quantity::{KELVIN, KELVIN_RISE, KG_PER_M3, ONE, PA, WATT};
use reckoning::source::{COMMON_PRACTICE, DERIVED};
use reckoning::{Assumption, Cite};

use crate::inputs::Inputs;

/// An assumption and where it enters.
#[derive(Clone, Copy, Debug)]
pub struct Entering {
    /// The number with its range.
    pub assumption: &'static Assumption,
    /// Puts a value in SI into the inputs.
    pub set: fn(&mut Inputs, f64),
    /// Reads the value in SI from the inputs; `None` where the plant has no such part.
    pub get: fn(&Inputs) -> Option<f64>,
}

const TRADE: Cite = Cite {
    source: &COMMON_PRACTICE,
    place: "range met with in small plants",
};
const CALIBRATION: Cite = Cite {
    source: &DERIVED,
    place: "a value to be found by trial; the range is that of a trial calculation",
};

/// Shorthand so that the table below reads as one.
const fn ratio(
    id: &'static str,
    meaning: &'static str,
    [value, low, high]: [f64; 3],
    cite: Cite,
) -> Assumption {
    Assumption {
        id,
        meaning,
        unit: &ONE,
        value,
        low,
        high,
        variable: id,
        cite,
    }
}

static VOIDAGE: Assumption = ratio(
    "fire.voidage",
    "empty share of the bed",
    [0.42, 0.40, 0.50],
    TRADE,
);
static SHAPE: Assumption = ratio(
    "fire.shape",
    "sphericity of the lumps",
    [0.70, 0.65, 0.80],
    TRADE,
);
static BED_TEMPERATURE: Assumption = Assumption {
    id: "fire.bed-temperature",
    meaning: "mean temperature of the gas in the bed",
    unit: &KELVIN,
    value: 1250.0,
    low: 1150.0,
    high: 1350.0,
    variable: "fire.bed-temperature",
    cite: TRADE,
};
static BED_FACTOR: Assumption = ratio(
    "grate.bed-factor",
    "loss of bed, grate and clean ash over that of the bare bed",
    [1.15, 1.05, 1.40],
    TRADE,
);
static ASH_FACTOR: Assumption = ratio(
    "ash.bed-factor",
    "loss with the ash that has built up over that when clean",
    [1.10, 1.05, 2.0],
    TRADE,
);
static AIR_RATIO: Assumption = ratio(
    "fire.air-ratio",
    "air supplied over air needed",
    [1.5, 1.3, 1.8],
    TRADE,
);
static BURNT_SHARE: Assumption = ratio(
    "fire.burnt-share",
    "share of the heating value set free",
    [0.88, 0.82, 0.93],
    TRADE,
);
static LUMP_DENSITY: Assumption = Assumption {
    id: "fire.lump-density",
    meaning: "density of a lump",
    unit: &KG_PER_M3,
    value: 1500.0,
    low: 1400.0,
    high: 1600.0,
    variable: "fire.lump-density",
    cite: TRADE,
};
static EMISSIVITY: Assumption = ratio(
    "boiler.firebox.emissivity",
    "effective emissivity between the fire and the wetted box",
    [0.75, 0.50, 0.85],
    CALIBRATION,
);
static WALL_RISE: Assumption = Assumption {
    id: "boiler.wall-rise",
    meaning: "rise of the wetted metal over the saturation temperature",
    unit: &KELVIN_RISE,
    value: 8.0,
    low: 5.0,
    high: 20.0,
    variable: "boiler.wall-rise",
    cite: TRADE,
};
static BOILER_DRYNESS: Assumption = ratio(
    "boiler.dryness",
    "dryness of the steam as it leaves the water",
    [0.97, 0.90, 0.98],
    TRADE,
);
static SHELL_LOSS: Assumption = Assumption {
    id: "boiler.shell-loss",
    meaning: "heat lost by the outside of the boiler",
    unit: &WATT,
    value: 60.0,
    low: 35.0,
    high: 120.0,
    variable: "boiler.shell-loss",
    cite: TRADE,
};
static MIXING: Assumption = ratio(
    "blast.mixing",
    "draught found over that of full mixing",
    [0.45, 0.35, 0.60],
    CALIBRATION,
);
static COEFFICIENT: Assumption = ratio(
    "blast.coefficient",
    "coefficient of the exhaust nozzle",
    [0.95, 0.90, 0.97],
    TRADE,
);
/// Exhaust and blower share the chimney, so that what is not known of the one is not known of the
/// other.
static BLOWER_MIXING: Assumption = Assumption {
    variable: "blast.mixing",
    ..ratio(
        "blower.mixing",
        "draught found over that of full mixing",
        [0.45, 0.30, 0.60],
        CALIBRATION,
    )
};
static BLOWER_COEFFICIENT: Assumption = ratio(
    "blower.coefficient",
    "discharge coefficient of a blower jet",
    [0.85, 0.80, 0.90],
    TRADE,
);
static MISSING: Assumption = ratio(
    "engine.missing",
    "steam supplied beyond what the diagram shows, over what it shows",
    [0.60, 0.35, 1.0],
    CALIBRATION,
);
static CHEST: Assumption = ratio(
    "engine.chest-pressure",
    "absolute pressure at admission over that in the boiler",
    [0.92, 0.85, 0.95],
    TRADE,
);
static DIAGRAM: Assumption = ratio(
    "engine.diagram-factor",
    "mean pressure of the real diagram over that of the drawn one",
    [0.90, 0.80, 0.94],
    TRADE,
);
static EXHAUST_DRYNESS: Assumption = ratio(
    "engine.exhaust-dryness",
    "dryness of the exhaust where the steam comes straight from the boiler",
    [0.93, 0.88, 0.95],
    TRADE,
);
static INLET_LOSS: Assumption = ratio(
    "chimney.inlet-loss",
    "loss of the gas at the bell, in velocity heads",
    [0.10, 0.06, 0.50],
    TRADE,
);
static FRICTION: Assumption = ratio(
    "chimney.friction",
    "friction of the mixing length, in velocity heads of the mixture",
    [0.18, 0.10, 0.30],
    TRADE,
);
static SMOKEBOX_LOSS: Assumption = Assumption {
    id: "smokebox.loss",
    meaning: "draught lost in turns, arrester and entry",
    unit: &PA,
    value: 1.5,
    low: 1.0,
    high: 5.0,
    variable: "smokebox.loss",
    cite: TRADE,
};

/// Every assumption of the steady loop.
pub static ASSUMPTIONS: &[Entering] = &[
    Entering {
        assumption: &VOIDAGE,
        set: |i, v| i.bed.packing.voidage = v,
        get: |i| Some(i.bed.packing.voidage),
    },
    Entering {
        assumption: &SHAPE,
        set: |i, v| i.bed.packing.sphericity = v,
        get: |i| Some(i.bed.packing.sphericity),
    },
    Entering {
        assumption: &BED_TEMPERATURE,
        set: |i, v| i.bed.gas_k = v,
        get: |i| Some(i.bed.gas_k),
    },
    Entering {
        assumption: &BED_FACTOR,
        set: |i, v| i.bed.grate_factor = v,
        get: |i| Some(i.bed.grate_factor),
    },
    Entering {
        assumption: &ASH_FACTOR,
        set: |i, v| i.bed.ash_factor = v,
        get: |i| Some(i.bed.ash_factor),
    },
    Entering {
        assumption: &LUMP_DENSITY,
        set: |i, v| i.bed.lump_kg_m3 = v,
        get: |i| Some(i.bed.lump_kg_m3),
    },
    Entering {
        assumption: &AIR_RATIO,
        set: |i, v| i.fire.air_ratio = v,
        get: |i| Some(i.fire.air_ratio),
    },
    Entering {
        assumption: &BURNT_SHARE,
        set: |i, v| i.fire.burnt_share = v,
        get: |i| Some(i.fire.burnt_share),
    },
    Entering {
        assumption: &EMISSIVITY,
        set: |i, v| i.firebox.emissivity = v,
        get: |i| Some(i.firebox.emissivity),
    },
    Entering {
        assumption: &WALL_RISE,
        set: |i, v| i.boiler.wall_rise_k = v,
        get: |i| Some(i.boiler.wall_rise_k),
    },
    Entering {
        assumption: &BOILER_DRYNESS,
        set: |i, v| i.boiler.dryness = v,
        get: |i| Some(i.boiler.dryness),
    },
    Entering {
        assumption: &SHELL_LOSS,
        set: |i, v| i.boiler.shell_loss_w = v,
        get: |i| Some(i.boiler.shell_loss_w),
    },
    Entering {
        assumption: &MIXING,
        set: |i, v| i.blast.iter_mut().for_each(|b| b.mixing = v),
        get: |i| i.blast.map(|b| b.mixing),
    },
    Entering {
        assumption: &COEFFICIENT,
        set: |i, v| i.blast.iter_mut().for_each(|b| b.coefficient = v),
        get: |i| i.blast.map(|b| b.coefficient),
    },
    Entering {
        assumption: &BLOWER_MIXING,
        set: |i, v| i.blower.iter_mut().for_each(|b| b.mixing = v),
        get: |i| i.blower.map(|b| b.mixing),
    },
    Entering {
        assumption: &BLOWER_COEFFICIENT,
        set: |i, v| i.blower.iter_mut().for_each(|b| b.coefficient = v),
        get: |i| i.blower.map(|b| b.coefficient),
    },
    Entering {
        assumption: &MISSING,
        set: |i, v| i.engine.iter_mut().for_each(|e| e.missing = v),
        get: |i| i.engine.map(|e| e.missing),
    },
    Entering {
        assumption: &CHEST,
        set: |i, v| i.engine.iter_mut().for_each(|e| e.chest_share = v),
        get: |i| i.engine.map(|e| e.chest_share),
    },
    Entering {
        assumption: &DIAGRAM,
        set: |i, v| i.engine.iter_mut().for_each(|e| e.diagram_factor = v),
        get: |i| i.engine.map(|e| e.diagram_factor),
    },
    Entering {
        assumption: &EXHAUST_DRYNESS,
        set: |i, v| i.engine.iter_mut().for_each(|e| e.exhaust_dryness = v),
        get: |i| i.engine.map(|e| e.exhaust_dryness),
    },
    Entering {
        assumption: &INLET_LOSS,
        set: |i, v| i.chimney.inlet_heads = v,
        get: |i| Some(i.chimney.inlet_heads),
    },
    Entering {
        assumption: &FRICTION,
        set: |i, v| i.chimney.friction_heads = v,
        get: |i| Some(i.chimney.friction_heads),
    },
    Entering {
        assumption: &SMOKEBOX_LOSS,
        set: |i, v| i.extra_loss_pa = v,
        get: |i| Some(i.extra_loss_pa),
    },
];

/// The assumption that this plan field replaces.
#[must_use]
pub fn assumption(field: &str) -> Option<&'static Entering> {
    ASSUMPTIONS.iter().find(|e| e.assumption.id == field)
}
