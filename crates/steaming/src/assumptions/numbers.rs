//! The numbers that are assumed, each with its range.
//!
//! Lower and upper ends are the 5 % and 95 % points of a split normal law. They are chosen so
//! that the tails of that law stay within what can be: an area stays above nought.

use reckoning::quantity::{
    BAR_ABSOLUTE, CELSIUS, KELVIN, KELVIN_RISE, MM2, ONE, PA, W_PER_M_K, W_PER_M2_K, WATT,
};
use reckoning::source::{COMMON_PRACTICE, DERIVED};
use reckoning::{Assumption, Cite};

pub(super) const TRADE: Cite = Cite {
    source: &COMMON_PRACTICE,
    place: "range met with in small plants",
};
const CALIBRATION: Cite = Cite {
    source: &DERIVED,
    place: "a value to be found by trial; the range is that of a trial calculation",
};

/// Shorthand so that the table below reads as one.
pub(super) const fn ratio(
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

pub(super) static VOIDAGE: Assumption = ratio(
    "fire.voidage",
    "empty share of the bed",
    [0.42, 0.40, 0.50],
    TRADE,
);
pub(super) static SHAPE: Assumption = ratio(
    "fire.shape",
    "sphericity of the lumps",
    [0.70, 0.65, 0.80],
    TRADE,
);
pub(super) static BED_TEMPERATURE: Assumption = Assumption {
    id: "fire.bed-temperature",
    meaning: "mean temperature of the gas in the bed",
    unit: &KELVIN,
    value: 1250.0,
    low: 1150.0,
    high: 1350.0,
    variable: "fire.bed-temperature",
    cite: TRADE,
};
pub(super) static BED_FACTOR: Assumption = ratio(
    "grate.bed-factor",
    "loss of bed, grate and clean ash over that of the bare bed",
    [1.15, 1.05, 1.40],
    TRADE,
);
pub(super) static ASH_FACTOR: Assumption = ratio(
    "ash.bed-factor",
    "loss with the ash that has built up over that when clean",
    [1.10, 1.05, 2.0],
    TRADE,
);
pub(super) static AIR_RATIO: Assumption = ratio(
    "fire.air-ratio",
    "air supplied over air needed",
    [1.5, 1.3, 1.8],
    TRADE,
);
pub(super) static EMISSIVITY: Assumption = ratio(
    "boiler.firebox.emissivity",
    "effective emissivity between the fire and the wetted box",
    [0.75, 0.50, 0.85],
    CALIBRATION,
);
pub(super) static WALL_RISE: Assumption = Assumption {
    id: "boiler.wall-rise",
    meaning: "rise of the wetted metal over the saturation temperature",
    unit: &KELVIN_RISE,
    value: 8.0,
    low: 5.0,
    high: 20.0,
    variable: "boiler.wall-rise",
    cite: TRADE,
};
pub(super) static BOILER_DRYNESS: Assumption = ratio(
    "boiler.dryness",
    "dryness of the steam as it leaves the water",
    [0.97, 0.90, 0.98],
    TRADE,
);
pub(super) static SHELL_LOSS: Assumption = Assumption {
    id: "boiler.shell-loss",
    meaning: "heat lost by the outside of the boiler",
    unit: &WATT,
    value: 60.0,
    low: 35.0,
    high: 120.0,
    variable: "boiler.shell-loss",
    cite: TRADE,
};
pub(super) static MIXING: Assumption = ratio(
    "blast.mixing",
    "draught found over that of full mixing",
    [0.45, 0.35, 0.60],
    CALIBRATION,
);
pub(super) static COEFFICIENT: Assumption = ratio(
    "blast.coefficient",
    "coefficient of the exhaust nozzle",
    [0.95, 0.90, 0.97],
    TRADE,
);
/// Exhaust and blower share the chimney, so that what is not known of the one is not known of the
/// other.
pub(super) static BLOWER_MIXING: Assumption = Assumption {
    variable: "blast.mixing",
    ..ratio(
        "blower.mixing",
        "draught found over that of full mixing",
        [0.45, 0.30, 0.60],
        CALIBRATION,
    )
};
pub(super) static BLOWER_COEFFICIENT: Assumption = ratio(
    "blower.coefficient",
    "discharge coefficient of a blower jet",
    [0.85, 0.80, 0.90],
    TRADE,
);
pub(super) static MISSING: Assumption = ratio(
    "engine.missing",
    "missing quantity over what the walls and leaks of the engine are reckoned to take",
    [1.0, 0.55, 1.7],
    Cite {
        source: &DERIVED,
        place: "steam that engines of 5 W to 25 kW are reported to take, against that reckoned",
    },
);
pub(super) static ADMISSION: Assumption = ratio(
    "engine.admission-pressure",
    "pressure in the cylinder up to cut-off over that in the chest, both absolute",
    [0.95, 0.90, 0.975],
    TRADE,
);
/// The mean speed is less than the greatest by pi / 2, and the stream narrows behind the edge.
pub(super) static PORT_LOSS: Assumption = ratio(
    "engine.port-loss",
    "pressure that a port takes over density times the square of its mean speed",
    [3.0, 1.5, 6.0],
    Cite {
        source: &DERIVED,
        place: "half the square of the greatest speed behind a sharp edge",
    },
);
pub(super) static MECHANICAL: Assumption = ratio(
    "engine.mechanical-efficiency",
    "power at the shaft over power in the cylinder",
    [0.65, 0.50, 0.78],
    TRADE,
);
/// Chest, covers and pipes lose some six times what bare bores and covers would at 15 W/(m² K).
pub(super) static HEAT_LOSS: Assumption = Assumption {
    id: "engine.heat-loss",
    meaning: "heat that the engine loses on a square metre of bores and covers for a kelvin",
    unit: &W_PER_M2_K,
    value: 100.0,
    low: 50.0,
    high: 200.0,
    variable: "engine.heat-loss",
    cite: CALIBRATION,
};
pub(super) static PUFF: Assumption = ratio(
    "engine.puff-share",
    "share of the time in which the exhaust of a slow engine flows",
    [0.60, 0.50, 0.70],
    TRADE,
);
pub(super) static PUMP_EFFICIENCY: Assumption = ratio(
    "engine.pump-efficiency",
    "work on the water over work on the feed pump that the engine drives",
    [0.30, 0.20, 0.50],
    TRADE,
);
/// Tarnished copper to paint; a polished pipe has less, and loses less.
pub(super) static PIPE_EMISSIVITY: Assumption = ratio(
    "engine.pipe.emissivity",
    "emissivity of the surface of the steam pipe",
    [0.60, 0.30, 0.80],
    TRADE,
);
pub(super) static PIPE_CONDUCTIVITY: Assumption = Assumption {
    id: "engine.pipe.conductivity",
    meaning: "conductivity of the lagging of the steam pipe",
    unit: &W_PER_M_K,
    value: 0.05,
    low: 0.04,
    high: 0.10,
    variable: "engine.pipe.conductivity",
    cite: TRADE,
};
pub(super) static CHEST: Assumption = ratio(
    "engine.chest-pressure",
    "absolute pressure in the steam chest over that in the boiler",
    [0.97, 0.93, 0.985],
    TRADE,
);
pub(super) static DIAGRAM: Assumption = ratio(
    "engine.diagram-factor",
    "mean pressure of the real diagram over that of the drawn one",
    [0.90, 0.80, 0.94],
    TRADE,
);
/// Water that the boiler sends over leaves by the exhaust: the two dryness figures move together.
pub(super) static EXHAUST_DRYNESS: Assumption = Assumption {
    variable: "boiler.dryness",
    ..ratio(
        "engine.exhaust-dryness",
        "dryness of the exhaust where the steam comes straight from the boiler",
        [0.93, 0.88, 0.95],
        TRADE,
    )
};
pub(super) static INLET_LOSS: Assumption = ratio(
    "chimney.inlet-loss",
    "loss of the gas at the bell, in velocity heads",
    [0.10, 0.06, 0.50],
    TRADE,
);
/// A plain tube on the smokebox, without the bell that a blast wants; a rounded edge at the low end.
pub(super) static INLET_PLAIN: Assumption = ratio(
    "chimney.inlet-loss for a flame",
    "loss of the gas where it enters a plain chimney, in velocity heads",
    [0.50, 0.20, 0.60],
    TRADE,
);
pub(super) static FRICTION: Assumption = ratio(
    "chimney.friction",
    "friction of the mixing length, in velocity heads of the mixture",
    [0.18, 0.10, 0.30],
    TRADE,
);
pub(super) static SMOKEBOX_LOSS: Assumption = Assumption {
    id: "smokebox.loss",
    meaning: "draught lost in turns, arrester and entry",
    unit: &PA,
    value: 1.5,
    low: 1.0,
    high: 5.0,
    variable: "smokebox.loss",
    cite: TRADE,
};
/// Weather, and places up to 300 m above the sea.
pub(super) static ATMOSPHERE: Assumption = Assumption {
    id: "site.atmosphere",
    meaning: "pressure of the air where the plant is run",
    unit: &BAR_ABSOLUTE,
    value: 1.013_25,
    low: 0.965,
    high: 1.035,
    variable: "site.atmosphere",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "the standard atmosphere; weather, and heights up to 300 m",
    },
};
pub(super) static AIR: Assumption = Assumption {
    id: "site.air",
    meaning: "temperature of the air that feeds the fire",
    unit: &CELSIUS,
    value: 20.0,
    low: 2.0,
    high: 30.0,
    variable: "site.air",
    cite: TRADE,
};
/// The lower end keeps the tail of the law above freezing.
pub(super) static FEED: Assumption = Assumption {
    id: "site.feed-water",
    meaning: "temperature of the water as it is fed",
    unit: &CELSIUS,
    value: 15.0,
    low: 8.0,
    high: 25.0,
    variable: "site.feed-water",
    cite: TRADE,
};
pub(super) static CLEARANCE: Assumption = ratio(
    "engine.clearance",
    "volume of port and clearance at one end over the stroke volume",
    [0.10, 0.06, 0.18],
    TRADE,
);
pub(super) static COMPRESSION: Assumption = ratio(
    "engine.compression",
    "part of the return stroke that is left when the exhaust closes",
    [0.10, 0.06, 0.25],
    TRADE,
);
/// An even stream has 1; a fully turbulent one about 1.02; one that is not mixed through has more.
pub(super) static MOMENTUM_FACTOR: Assumption = ratio(
    "chimney.momentum-factor",
    "momentum of the mixture over that of an even stream",
    [1.02, 1.01, 1.10],
    Cite {
        source: &DERIVED,
        place: "profile of a turbulent stream in a pipe; the upper end is one not mixed through",
    },
);
/// The emissivity law is fitted to paths of 1 bar cm and more, and carried on smoothly to the
/// hundredth of that in a narrow tube. Its radiation is some hundredths of the heat there.
pub(super) static TUBE_RADIATION: Assumption = ratio(
    "gas.tube-radiation",
    "radiation of the gas in a narrow tube over that of the law carried on to short paths; \
     no field replaces it",
    [1.0, 0.55, 2.0],
    CALIBRATION,
);
/// How far reference equations and kinetic theory lie apart for the gases of a fire.
const TRANSPORT: Cite = Cite {
    source: &DERIVED,
    place: "distance of the reference equations from a kinetic theory of the same gas",
};
pub(super) static GAS_CONDUCTIVITY: Assumption = ratio(
    "gas.conductivity",
    "conductivity of the hot gas over that of the law carried on; no field replaces it",
    [1.0, 0.95, 1.06],
    TRANSPORT,
);
pub(super) static GAS_VISCOSITY: Assumption = ratio(
    "gas.viscosity",
    "viscosity of the hot gas over that of the law carried on; no field replaces it",
    [1.0, 0.95, 1.06],
    TRANSPORT,
);
pub(super) static DIFFUSER: Assumption = ratio(
    "chimney.diffuser-efficiency",
    "share of the velocity head that the taper gives back",
    [0.60, 0.35, 0.75],
    TRADE,
);
/// Sooted copper; the law of the flux wants at least 0.7.
pub(super) static TUBE_EMISSIVITY: Assumption = ratio(
    "boiler.tubes.emissivity",
    "emissivity of the inside of the tubes",
    [0.80, 0.70, 0.90],
    TRADE,
);
/// No smokebox is tight: a door, a tube-plate edge and the holes of pipes always leak.
pub(super) static LEAK: Assumption = Assumption {
    id: "smokebox.leak",
    meaning: "area of all the leaks into the smokebox together",
    unit: &MM2,
    value: 5.0,
    low: 3.0,
    high: 20.0,
    variable: "smokebox.leak",
    cite: TRADE,
};
pub(super) static LEAK_COEFFICIENT: Assumption = ratio(
    "smokebox.leak-coefficient",
    "discharge coefficient of the leaks",
    [0.60, 0.55, 0.75],
    TRADE,
);
pub(super) static COIL_EMISSIVITY: Assumption = ratio(
    "dryer.emissivity",
    "emissivity of the outside of a coil over the fire",
    [0.80, 0.70, 0.90],
    TRADE,
);
pub(super) static COIL_VIEW: Assumption = ratio(
    "dryer.view",
    "share of a coil over the fire that sees it",
    [0.70, 0.50, 0.90],
    TRADE,
);
pub(super) static BED_AIR: Assumption = ratio(
    "fire.bed-air",
    "air of the bed over that which its depth in lumps gives",
    [1.0, 0.85, 1.2],
    CALIBRATION,
);
pub(super) static AIR_HOLES: Assumption = ratio(
    "fire.air-holes.coefficient",
    "discharge coefficient of the air holes over the fire",
    [0.62, 0.58, 0.70],
    TRADE,
);
pub(super) static PAN_DOOR: Assumption = ratio(
    "ash.door-coefficient",
    "discharge coefficient of the door of the ash pan",
    [0.60, 0.55, 0.70],
    TRADE,
);
