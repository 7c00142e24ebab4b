//! The rules of steaming, each with the place where it stands.

use formulas::sources::STEAM_ENGINES_1911;
use reckoning::source::{COMMON_PRACTICE, DERIVED};
use reckoning::{Cite, Rule};

use super::flame_list::{
    AIR, BURNT_AT_END, BURNT_AT_TUBES, CARBON_MONOXIDE, CLEAR_OF_METAL, LIFT, LIGHT_BACK,
    STEAM_JETS, STRONGEST_GAS, TANK_LASTS,
};

/// Steam made against steam asked for.
pub static HOLDS: Rule = Rule {
    id: "steaming.holds",
    sentence: "At working pressure the fire makes the steam that is asked for, with a tenth to \
               spare.",
    remedy: "a smaller nozzle, larger lumps, more tube length, a larger grate",
    cite: Cite {
        source: &DERIVED,
        place: "heat balance of the boiler; the tenth is common practice",
    },
};

/// The bed against the stream through it.
pub static BED_LIFT: Rule = Rule {
    id: "steaming.bed-lift",
    sentence: "The stream through the bed takes no more than eight tenths of the bed's weight.",
    remedy: "larger or heavier lumps, a larger grate, a larger nozzle",
    cite: Cite {
        source: &DERIVED,
        place: "weight of the bed against its loss; the eight tenths are common practice",
    },
};

/// Back pressure on the engine.
pub static BACK_PRESSURE: Rule = Rule {
    id: "steaming.back-pressure",
    sentence: "The engine exhausts against no more than 17 lb per square inch absolute.",
    remedy: "a larger nozzle, a better bell and chimney",
    cite: Cite {
        source: &STEAM_ENGINES_1911,
        place: "allowance for the back pressure of an engine that does not condense",
    },
};

/// Compression against admission.
pub static COMPRESSION: Rule = Rule {
    id: "steaming.compression",
    sentence: "Steam shut in the cylinder is not compressed above the pressure of admission.",
    remedy: "less compression, more clearance, a larger nozzle",
    cite: Cite {
        source: &DERIVED,
        place: "hyperbolic compression into the clearance",
    },
};

/// Heat taken by the engine against its work.
pub static ENGINE_HEAT: Rule = Rule {
    id: "steaming.engine-heat",
    sentence: "The steam gives up at least the heat that the engine turns into work.",
    remedy: "measure the missing quantity, the exhaust or the diagram: their assumed values \
             cannot be true together",
    cite: Cite {
        source: &DERIVED,
        place: "first law for the engine",
    },
};

/// Work of the engine against that of one without loss.
pub static ENGINE_WORK: Rule = Rule {
    id: "steaming.engine-work",
    sentence: "The engine takes no more work from a kilogram of steam than one without loss.",
    remedy: "measure the missing quantity, the clearance or the cut-off: as they stand they cannot \
             be true together",
    cite: Cite {
        source: &DERIVED,
        place: "second law: dry saturated steam that expands at its entropy",
    },
};

/// Power against that asked.
pub static ENGINE_POWER: Rule = Rule {
    id: "steaming.engine-power",
    sentence: "At working pressure the engine can give the power that is asked at its shaft.",
    remedy: "a later cut-off, more speed, a larger cylinder, more pressure, a larger nozzle",
    cite: Cite {
        source: &DERIVED,
        place: "work of the diagram, less what friction and feed pump take",
    },
};

/// Steam in the ports.
pub static PORT_SPEED: Rule = Rule {
    id: "steaming.port-speed",
    sentence: "Steam passes the ports at no more than 80 m/s.",
    remedy: "larger ports, less speed",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "speed above which ports choke an engine, 60 to 80 m/s",
    },
};

/// Least rate of burning.
pub static BURNING_RATE: Rule = Rule {
    id: "steaming.burning-rate",
    sentence: "The fire burns at least 30 kg on a square metre of grate in an hour.",
    remedy: "a smaller grate, a stronger blast",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "least rate at which a small fire keeps alight",
    },
};

/// Steam leaving the water.
pub static DISENGAGEMENT: Rule = Rule {
    id: "steaming.disengagement",
    sentence: "Steam leaves the water surface at no more than 0.05 m/s, and at no more than 0.02 m/s \
               under a steam space lower than 25 mm.",
    remedy: "a larger water surface, more room above it, a higher pressure, a steadier demand",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "rate above which small boilers prime",
    },
};

/// Pressure lost in the coil.
pub static COIL_LOSS: Rule = Rule {
    id: "steaming.coil-loss",
    sentence: "The coil takes less than a twentieth of the pressure in the boiler.",
    remedy: "a larger bore, a shorter coil",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "share of the pressure that a coil may take",
    },
};

/// Water for the time that the plant must run.
pub static WATER_LASTS: Rule = Rule {
    id: "steaming.water-lasts",
    sentence: "Water above the lowest level, with what is fed, lasts for the time that is asked.",
    remedy: "a stronger feed, a larger tank, more water between the levels, a shorter run",
    cite: Cite {
        source: &DERIVED,
        place: "balance of the water in the boiler",
    },
};

/// Feed against demand.
pub static FEED_KEEPS_UP: Rule = Rule {
    id: "steaming.feed-keeps-up",
    sentence: "Each means of feed gives the water that the steam takes, and half as much again.",
    remedy: "a larger plunger, more strokes, another means of feed",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "feed of one and a half times the demand, so that the level can be won back",
    },
};

/// Every rule of steaming.
pub static RULES: &[&Rule] = &[
    &HOLDS,
    &BED_LIFT,
    &BACK_PRESSURE,
    &COMPRESSION,
    &ENGINE_HEAT,
    &ENGINE_WORK,
    &ENGINE_POWER,
    &PORT_SPEED,
    &BURNING_RATE,
    &DISENGAGEMENT,
    &COIL_LOSS,
    &WATER_LASTS,
    &FEED_KEEPS_UP,
    &AIR,
    &BURNT_AT_TUBES,
    &BURNT_AT_END,
    &CLEAR_OF_METAL,
    &LIFT,
    &LIGHT_BACK,
    &STEAM_JETS,
    &CARBON_MONOXIDE,
    &TANK_LASTS,
    &STRONGEST_GAS,
];
