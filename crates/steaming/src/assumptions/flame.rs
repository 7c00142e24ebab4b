//! The numbers of a gas or spirit flame that are assumed, each with its range and where it enters.
//!
//! No measured set of a small internally fired gas boiler was found: the ranges are those met with
//! in the trade, and of trial calculations. The length over which the gas finds its air is the
//! largest unknown of them all.

use reckoning::quantity::{CELSIUS, MM, ONE, Unit, W_PER_M2_K};
use reckoning::source::{COMMON_PRACTICE, DERIVED};
use reckoning::{Assumption, Cite};

use super::Entering;
use crate::burner::{Burner, Flame, Mouth, ThroatShape, Wicks};
use crate::flue::{CrossTubes, Flue};
use crate::inputs::Inputs;

const TRADE: Cite = Cite {
    source: &COMMON_PRACTICE,
    place: "range met with in small burners",
};
const CHOSEN: Cite = Cite {
    source: &DERIVED,
    place: "chosen here from a trial calculation of a small gas fired flue; no measurement",
};

const fn number(
    id: &'static str,
    meaning: &'static str,
    unit: &'static Unit,
    [value, low, high]: [f64; 3],
    cite: Cite,
) -> Assumption {
    Assumption {
        id,
        meaning,
        unit,
        value,
        low,
        high,
        variable: id,
        cite,
    }
}

/// A hole of a hundredth more or less is 11 % of the gas: the made jet must be weighed.
static JET_COEFFICIENT_IS: Assumption = number(
    "burner.jet.coefficient",
    "discharge coefficient of the gas jet",
    &ONE,
    [0.85, 0.80, 0.90],
    TRADE,
);
static MOMENTUM_SHARE_IS: Assumption = number(
    "burner.throat.momentum-share",
    "share of the thrust of the jet that mixing and alignment leave",
    &ONE,
    [0.90, 0.75, 0.95],
    CHOSEN,
);
static MOMENTUM_FACTOR_IS: Assumption = number(
    "burner.throat.momentum-factor",
    "momentum of gas and air in the throat over that of an even stream",
    &ONE,
    [1.05, 1.02, 1.33],
    CHOSEN,
);
static THROAT_FRICTION_IS: Assumption = number(
    "burner.throat.friction",
    "friction of the mixing tube, in velocity heads",
    &ONE,
    [0.35, 0.25, 0.60],
    CHOSEN,
);
static DIFFUSER_IS: Assumption = number(
    "burner.throat.diffuser-efficiency",
    "share of the velocity head that the taper of the throat gives back",
    &ONE,
    [0.60, 0.50, 0.70],
    CHOSEN,
);
/// The body heats up as it runs.
static MIXTURE_IS: Assumption = number(
    "burner.throat.mixture-temperature",
    "temperature of gas and primary air at the ports of a warm burner",
    &CELSIUS,
    [50.0, 35.0, 150.0],
    CHOSEN,
);
static HOLES_IS: Assumption = number(
    "burner.air-holes.coefficient",
    "discharge coefficient of the air holes",
    &ONE,
    [0.62, 0.58, 0.70],
    TRADE,
);
static PORTS_IS: Assumption = number(
    "burner.ports.coefficient",
    "discharge coefficient of the ports",
    &ONE,
    [0.70, 0.60, 0.80],
    CHOSEN,
);
static MOUTH_IS: Assumption = number(
    "burner.mouth.coefficient",
    "discharge coefficient of the opening for secondary air",
    &ONE,
    [0.60, 0.55, 0.70],
    TRADE,
);
static MIXING_GAS_IS: Assumption = number(
    "burner.mixing-length for gas",
    "length over which what leaves a port finds the rest of its air",
    &MM,
    [30.0, 15.0, 80.0],
    CHOSEN,
);
static MIXING_SPIRIT_IS: Assumption = number(
    "burner.mixing-length for spirit",
    "length over which what leaves a wick finds its air: the height of its flame",
    &MM,
    [32.0, 20.0, 50.0],
    TRADE,
);
static BURNT_IS: Assumption = number(
    "burner.burnt-share",
    "share of the heating value that a flame sets free where it burns to the end",
    &ONE,
    [0.98, 0.95, 0.99],
    TRADE,
);
/// A blue flame has next to none, a yellow one a tenth and more.
static SOOT_GAS_IS: Assumption = number(
    "burner.flame-emissivity for gas",
    "emissivity that soot adds to a blue flame",
    &ONE,
    [0.01, 0.005, 0.04],
    CHOSEN,
);
/// Methanol at the low end, ethanol that burns a little yellow at the high one.
static SOOT_SPIRIT_IS: Assumption = number(
    "burner.flame-emissivity for spirit",
    "emissivity that soot adds to a flame of spirit",
    &ONE,
    [0.04, 0.02, 0.10],
    CHOSEN,
);
static ROW_IS: Assumption = number(
    "burner.row-factor",
    "heat to a cross tube over that to a single tube in an even stream",
    &ONE,
    [1.0, 0.8, 1.3],
    CHOSEN,
);
static STIRRING_IS: Assumption = number(
    "burner.friction-factor",
    "friction and heat on the wall behind cross tubes over those of a plain flue",
    &ONE,
    [1.0, 0.95, 1.6],
    CHOSEN,
);
static SMOKEBOX_IS: Assumption = number(
    "burner.smokebox-loss",
    "loss between flue and chimney, in velocity heads of the gas that leaves the flue",
    &ONE,
    [1.0, 0.7, 2.0],
    CHOSEN,
);
/// Sooted copper; the law of the flux wants at least 0.7.
static FLUE_EMISSIVITY_IS: Assumption = number(
    "boiler.flue.emissivity",
    "emissivity of the inside of the flue",
    &ONE,
    [0.80, 0.70, 0.90],
    TRADE,
);
static CONVECTION_IS: Assumption = number(
    "boiler.firebox.convection",
    "heat transfer coefficient by convection in a firebox with a flame and no bed",
    &W_PER_M2_K,
    [10.0, 5.0, 15.0],
    CHOSEN,
);
static RATE_IS: Assumption = number(
    "spirit.rate-factor",
    "rate of burning of a wick over that which its law gives",
    &ONE,
    [1.0, 0.6, 1.7],
    CHOSEN,
);
static SIDE_IS: Assumption = number(
    "spirit.wicks.side-share",
    "share of the exposed side of a wick that gives off vapour as its top does",
    &ONE,
    [0.6, 0.4, 0.9],
    TRADE,
);
/// Bright copper in still air at the low end, a painted tank in a breeze at the high one.
static TANK_FILM_IS: Assumption = number(
    "gas.tank.film",
    "heat transfer coefficient between the outside of the gas tank and the air",
    &W_PER_M2_K,
    [9.0, 5.0, 18.0],
    CHOSEN,
);
/// Thin steel at the low end, thick copper at the high one.
static TANK_DRY_IS: Assumption = number(
    "gas.tank.dry-share",
    "share of the wall above the liquid that takes up heat as the wall below does",
    &ONE,
    [0.7, 0.4, 0.95],
    CHOSEN,
);

// Where each enters. Those of the tank stand beside the loop: they have no place in its inputs.

pub(super) const JET_COEFFICIENT: Entering = Entering {
    assumption: &JET_COEFFICIENT_IS,
    set: |i, v| burner(i, |b| b.jet.coefficient = v),
    get: |i| Some(i.firing.flame()?.burner()?.jet.coefficient),
};

pub(super) const MOMENTUM_SHARE: Entering = Entering {
    assumption: &MOMENTUM_SHARE_IS,
    set: |i, v| burner(i, |b| b.throat.momentum_share = v),
    get: |i| Some(i.firing.flame()?.burner()?.throat.momentum_share),
};

pub(super) const MOMENTUM_FACTOR: Entering = Entering {
    assumption: &MOMENTUM_FACTOR_IS,
    set: |i, v| burner(i, |b| b.throat.momentum_factor = v),
    get: |i| Some(i.firing.flame()?.burner()?.throat.momentum_factor),
};

pub(super) const THROAT_FRICTION: Entering = Entering {
    assumption: &THROAT_FRICTION_IS,
    set: |i, v| burner(i, |b| b.throat.friction_heads = v),
    get: |i| Some(i.firing.flame()?.burner()?.throat.friction_heads),
};

pub(super) const DIFFUSER: Entering = Entering {
    assumption: &DIFFUSER_IS,
    set: |i, v| {
        burner(i, |b| {
            if let ThroatShape::Taper { given_back, .. } = &mut b.throat.shape {
                *given_back = v;
            }
        });
    },
    get: |i| match i.firing.flame()?.burner()?.throat.shape {
        ThroatShape::Parallel => None,
        ThroatShape::Taper { given_back, .. } => Some(given_back),
    },
};

pub(super) const MIXTURE: Entering = Entering {
    assumption: &MIXTURE_IS,
    set: |i, v| burner(i, |b| b.throat.mixture_k = v),
    get: |i| Some(i.firing.flame()?.burner()?.throat.mixture_k),
};

pub(super) const HOLES: Entering = Entering {
    assumption: &HOLES_IS,
    set: |i, v| burner(i, |b| b.holes_coefficient = v),
    get: |i| Some(i.firing.flame()?.burner()?.holes_coefficient),
};

pub(super) const PORTS: Entering = Entering {
    assumption: &PORTS_IS,
    set: |i, v| burner(i, |b| b.ports.coefficient = v),
    get: |i| Some(i.firing.flame()?.burner()?.ports.coefficient),
};

pub(super) const MOUTH: Entering = Entering {
    assumption: &MOUTH_IS,
    set: |i, v| {
        flame(i, |f| {
            if let Mouth::Open { coefficient, .. } = &mut f.mouth {
                *coefficient = v;
            }
        });
    },
    get: |i| match i.firing.flame()?.mouth {
        Mouth::Open { coefficient, .. } => Some(coefficient),
        Mouth::Shut => None,
    },
};

pub(super) const MIXING_GAS: Entering = Entering {
    assumption: &MIXING_GAS_IS,
    set: |i, v| flame(i, |f| f.mixing_m = v),
    get: |i| {
        let flame = &i.firing.flue()?.flame;
        flame.burner().map(|_| flame.mixing_m)
    },
};

pub(super) const MIXING_SPIRIT: Entering = Entering {
    assumption: &MIXING_SPIRIT_IS,
    set: |i, v| flame(i, |f| f.mixing_m = v),
    get: |i| {
        let flame = &i.firing.flue()?.flame;
        flame.wicks().map(|_| flame.mixing_m)
    },
};

pub(super) const BURNT: Entering = Entering {
    assumption: &BURNT_IS,
    set: |i, v| flame(i, |f| f.burnt_share = v),
    get: |i| Some(i.firing.flame()?.burnt_share),
};

pub(super) const SOOT_GAS: Entering = Entering {
    assumption: &SOOT_GAS_IS,
    set: |i, v| flame(i, |f| f.soot = v),
    get: |i| {
        let flame = i.firing.flame()?;
        flame.burner().map(|_| flame.soot)
    },
};

pub(super) const SOOT_SPIRIT: Entering = Entering {
    assumption: &SOOT_SPIRIT_IS,
    set: |i, v| flame(i, |f| f.soot = v),
    get: |i| {
        let flame = i.firing.flame()?;
        flame.wicks().map(|_| flame.soot)
    },
};

pub(super) const ROW: Entering = Entering {
    assumption: &ROW_IS,
    set: |i, v| cross(i, |c| c.row_factor = v),
    get: |i| Some(i.firing.flue()?.flue.cross?.row_factor),
};

pub(super) const STIRRING: Entering = Entering {
    assumption: &STIRRING_IS,
    set: |i, v| cross(i, |c| c.stirring = v),
    get: |i| Some(i.firing.flue()?.flue.cross?.stirring),
};

pub(super) const SMOKEBOX: Entering = Entering {
    assumption: &SMOKEBOX_IS,
    set: |i, v| flue(i, |f| f.exit_heads = v),
    get: |i| Some(i.firing.flue()?.flue.exit_heads),
};

pub(super) const FLUE_EMISSIVITY: Entering = Entering {
    assumption: &FLUE_EMISSIVITY_IS,
    set: |i, v| flue(i, |f| f.wall_emissivity = v),
    get: |i| Some(i.firing.flue()?.flue.wall_emissivity),
};

pub(super) const CONVECTION: Entering = Entering {
    assumption: &CONVECTION_IS,
    set: |i, v| {
        let fired = i.firing.flame_box_mut();
        fired.into_iter().for_each(|f| f.firebox.convection = v);
    },
    get: |i| Some(i.firing.flame_box()?.firebox.convection),
};

pub(super) const RATE: Entering = Entering {
    assumption: &RATE_IS,
    set: |i, v| wicks(i, |w| w.rate_factor = v),
    get: |i| Some(i.firing.flame()?.wicks()?.rate_factor),
};

pub(super) const SIDE: Entering = Entering {
    assumption: &SIDE_IS,
    set: |i, v| wicks(i, |w| w.side_share = v),
    get: |i| Some(i.firing.flame()?.wicks()?.side_share),
};

pub(super) const TANK_FILM: Entering = Entering {
    assumption: &TANK_FILM_IS,
    set: |_, _| {},
    get: |_| None,
};

pub(super) const TANK_DRY: Entering = Entering {
    assumption: &TANK_DRY_IS,
    set: |_, _| {},
    get: |_| None,
};

/// Changes the flame where there is one.
fn flame(inputs: &mut Inputs, change: impl FnOnce(&mut Flame)) {
    inputs.firing.flame_mut().map(change);
}

/// Changes the gas burner where there is one.
fn burner(inputs: &mut Inputs, change: impl FnOnce(&mut Burner)) {
    flame(inputs, |f| {
        f.burner_mut().map(change);
    });
}

/// Changes the wicks where there are any.
fn wicks(inputs: &mut Inputs, change: impl FnOnce(&mut Wicks)) {
    flame(inputs, |f| {
        f.wicks_mut().map(change);
    });
}

/// Changes the flue where there is one.
fn flue(inputs: &mut Inputs, change: impl FnOnce(&mut Flue)) {
    if let Some(fired) = inputs.firing.flue_mut() {
        change(&mut fired.flue);
    }
}

/// Changes the cross tubes where there are any.
fn cross(inputs: &mut Inputs, change: impl FnOnce(&mut CrossTubes)) {
    flue(inputs, |f| {
        f.cross.as_mut().map(change);
    });
}
