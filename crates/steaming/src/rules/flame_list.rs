//! The rules of a flame, each with the place where it stands.

use reckoning::source::{COMMON_PRACTICE, DERIVED};
use reckoning::{Cite, Rule};

/// Air of a flame.
pub static AIR: Rule = Rule {
    id: "flame.air",
    sentence: "A flame gets at least 1.15 of the air that its fuel needs.",
    remedy: "a taller chimney, a wider mouth, a smaller jet, fewer cross tubes",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "least excess of air at which a small flame burns clean",
    },
};

/// Burning out before cold metal crosses the way.
pub static BURNT_AT_TUBES: Rule = Rule {
    id: "flame.burnt-before-tubes",
    sentence: "No more than 3 % of the fuel is unburnt where the gas meets the first cross tube.",
    remedy: "the first cross tube farther from the burner, a shorter burner, more primary air",
    cite: Cite {
        source: &DERIVED,
        place: "chosen here: cold metal ends a flame that has not burnt out",
    },
};

/// Burning out in the flue.
pub static BURNT_AT_END: Rule = Rule {
    id: "flame.burnt-at-end",
    sentence: "No more than 1 % of the fuel is unburnt where the gas leaves the flue.",
    remedy: "a longer flue, a shorter burner, more primary air",
    cite: Cite {
        source: &DERIVED,
        place: "chosen here: what leaves the flue unburnt never burns",
    },
};

/// Flame against metal.
pub static CLEAR_OF_METAL: Rule = Rule {
    id: "flame.clear-of-metal",
    sentence: "A flame ends 2 mm before cold metal.",
    remedy: "more and smaller ports, more primary air, more room",
    cite: Cite {
        source: &DERIVED,
        place: "chosen here, on the length of a laminar diffusion flame",
    },
};

/// Flame on its ports.
pub static LIFT: Rule = Rule {
    id: "flame.lift",
    sentence: "The gradient of the speed at a port is less than half of that at which a flame blows off; up to twice of it only lighting shows whether the flame holds.",
    remedy: "more or wider ports, less primary air, less gas",
    cite: Cite {
        source: &DERIVED,
        place: "gradient of blow-off of a single cold port, known to a factor of two",
    },
};

/// Flame in its ports.
pub static LIGHT_BACK: Rule = Rule {
    id: "flame.light-back",
    sentence: "A port is narrower than a flame can pass, or its stream is faster than a flame runs back, or its mixture too rich.",
    remedy: "narrower ports, a sleeve on the air holes",
    cite: Cite {
        source: &DERIVED,
        place: "quenching of propane, 2 mm between plates and 3 mm in a bore; gradient of flash-back",
    },
};

/// Steam jets above a flame.
pub static STEAM_JETS: Rule = Rule {
    id: "flame.steam-jets",
    sentence: "Steam jets in the chimney of a flame add no more than 0.3 Pa of draught.",
    remedy: "exhaust led outside the chimney",
    cite: Cite {
        source: &DERIVED,
        place: "chosen here: a quarter of the draught of a small chimney",
    },
};

/// Carbon monoxide.
pub static CARBON_MONOXIDE: Rule = Rule {
    id: "flame.carbon-monoxide",
    sentence: "No sign is seen that the flame makes carbon monoxide; how much it makes is never reckoned.",
    remedy: "cure the signs that are named; until then light it in the open air only; ventilation \
             to the local code and a carbon monoxide alarm decide, not this sum",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "flames short of air, cooled before they burn out, or blown about make carbon monoxide",
    },
};

/// Gas for the time that the plant must run.
pub static TANK_LASTS: Rule = Rule {
    id: "flame.tank-lasts",
    sentence: "The gas tank, which its own evaporation chills, keeps the pressure of the jet for the time that is asked.",
    remedy: "a larger tank, a warmer place for it, a gas of higher pressure, a smaller jet",
    cite: Cite {
        source: &DERIVED,
        place: "heat of tank and liquid against the latent heat of what is drawn",
    },
};

/// The gas for which the safety valve is sized.
pub static STRONGEST_GAS: Rule = Rule {
    id: "flame.strongest-gas",
    sentence: "The safety valve is sized for the strongest gas that can be filled, from the hottest tank, with every valve before the jet open.",
    remedy: "a filling valve that takes no stronger gas, a smaller jet",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "a valve passes what the fire can make with nothing holding it back",
    },
};
