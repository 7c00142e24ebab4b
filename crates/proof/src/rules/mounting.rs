//! Rules of our set for what is mounted on a boiler.

use super::cite;
use formulas::sources::{COMMON_PRACTICE, EN_13906_1, IBR_1950, MODEL_BOILER_CODE};
use reckoning::Rule;

/// Capacity.
pub(crate) static VALVE_CAPACITY: Rule = Rule {
    id: "ours.valve-capacity",
    sentence: "The safety valves pass all the steam that the fire can raise, and what the heating surface counts for.",
    remedy: "a larger seat, or more valves",
    cite: cite(&IBR_1950, "regulation 293"),
};

/// Set pressure.
pub(crate) static VALVE_SET: Rule = Rule {
    id: "ours.valve-set",
    sentence: "A safety valve opens at the design pressure or below; a further one at most 3 % above it.",
    remedy: "a lower set pressure",
    cite: cite(
        &COMMON_PRACTICE,
        "first valve at the design pressure, a further one 3 % above",
    ),
};

/// Inlet.
pub(crate) static VALVE_INLET: Rule = Rule {
    id: "ours.valve-inlet",
    sentence: "The way to a safety valve is no narrower than the valve.",
    remedy: "a wider bush",
    cite: cite(&IBR_1950, "regulation 296"),
};

/// Feed.
pub(crate) static FEED_MEANS: Rule = Rule {
    id: "ours.feed-means",
    sentence: "A boiler under pressure can be fed at any time, by two means that stand alone.",
    remedy: "a hand pump",
    cite: cite(&COMMON_PRACTICE, "two independent means of feed"),
};

/// Check valve.
pub(crate) static FEED_CHECK: Rule = Rule {
    id: "ours.feed-check",
    sentence: "Every means of feed has its check valve at the boiler.",
    remedy: "a check valve",
    cite: cite(&COMMON_PRACTICE, "check valve nearest to the boiler"),
};

/// Scale of the gauge.
pub(crate) static GAUGE_RANGE: Rule = Rule {
    id: "ours.gauge-range",
    sentence: "The scale of the pressure gauge ends at one to four times the working pressure, usually 1.5 to 2.",
    remedy: "a gauge of another range",
    cite: cite(&MODEL_BOILER_CODE, "pressure gauge"),
};

/// Syphon.
pub(crate) static GAUGE_SYPHON: Rule = Rule {
    id: "ours.gauge-syphon",
    sentence: "A syphon keeps steam out of the pressure gauge.",
    remedy: "a syphon filled with water",
    cite: cite(&COMMON_PRACTICE, "syphon of a pressure gauge"),
};

/// Glass above the crown.
pub(crate) static GLASS_ABOVE_CROWN: Rule = Rule {
    id: "ours.glass-above-crown",
    sentence: "The visible glass begins above the crown of the firebox.",
    remedy: "a higher glass",
    cite: cite(&IBR_1950, "regulation 622, notes"),
};

/// Water in the glass.
pub(crate) static GLASS_LOWEST: Rule = Rule {
    id: "ours.glass-lowest",
    sentence: "The lowest water that is allowed, and the water at work, show in the glass.",
    remedy: "a longer glass",
    cite: cite(&COMMON_PRACTICE, "lowest level marked on the glass"),
};

/// Blow-down.
pub(crate) static BLOW_DOWN_LOW: Rule = Rule {
    id: "ours.blow-down-low",
    sentence: "The blow-down stands at the lowest point of the water leg.",
    remedy: "a lower blow-down",
    cite: cite(&COMMON_PRACTICE, "blow-down above the foundation ring"),
};

/// Fusible plug.
pub(crate) static FUSIBLE_PLUG: Rule = Rule {
    id: "ours.fusible-plug",
    sentence: "A copper crown has a fusible plug that melts above the water at work, or its lack is agreed.",
    remedy: "a fusible plug in the crown",
    cite: cite(&MODEL_BOILER_CODE, "fusible plug"),
};

/// Rise of a spring.
pub(crate) static SPRING_RISE: Rule = Rule {
    id: "ours.spring-rise",
    sentence: "A safety valve reaches the lift that is counted on before the pressure is a tenth above its set \
               pressure.",
    remedy: "a softer spring",
    cite: cite(&IBR_1950, "regulation 294"),
};

/// Stress of a spring.
pub(crate) static SPRING_STRESS: Rule = Rule {
    id: "ours.spring-stress",
    sentence: "The spring of a safety valve bears to have its turns closed.",
    remedy: "a shorter spring, or thicker wire",
    cite: cite(&EN_13906_1, "allowed shear at solid length"),
};

/// Turns of a spring that must not touch.
pub(crate) static SPRING_OPEN: Rule = Rule {
    id: "ours.spring-open",
    sentence: "At full lift no turns of the spring touch, which would gag the valve.",
    remedy: "a longer spring",
    cite: cite(&EN_13906_1, "sum of the least gaps"),
};

/// Buckling of a spring.
pub(crate) static SPRING_BUCKLING: Rule = Rule {
    id: "ours.spring-buckling",
    sentence: "The spring of a safety valve does not buckle, or a spindle keeps it straight.",
    remedy: "a spindle through the spring",
    cite: cite(&EN_13906_1, "buckling"),
};

/// Gas that is shut by itself.
pub(crate) static GAS_INTERLOCK: Rule = Rule {
    id: "ours.gas-interlock",
    sentence: "A gas fire is shut by itself where its flame fails or the water is low, and turned down at \
               working pressure, or it is never left.",
    remedy: "a flame-failure valve and a float that shuts the gas",
    cite: cite(&COMMON_PRACTICE, "gas-fired boilers of the hobby"),
};
