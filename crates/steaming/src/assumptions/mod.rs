//! What nobody has measured of a plant's steaming, with its range.
//!
//! The id of each begins with the plan field that replaces it, except for those in [`standing`], which are
//! about a law and not about a plant. `set` puts a value in SI into the inputs;
//! it does nothing where the plant has no such part.

mod flame;
mod fuels;
mod numbers;

use reckoning::Assumption;

use self::fuels::*;
use self::numbers::*;
use crate::engine::{Admission, Exhausts, Missing, Pipe, Pump};
use crate::firing::{Bed, Fire, FireAir, Opening};
use crate::inputs::{CoilPlace, Inputs, air_enthalpy};
use crate::rules::CARRIED;
use crate::tubes::{Beyond, Tubes};

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

/// Every assumption of the steady loop.
pub static ASSUMPTIONS: &[Entering] = &[
    Entering {
        assumption: &VOIDAGE,
        set: |i, v| bed(i, |b| b.packing.voidage = v),
        get: |i| Some(i.firing.bed()?.bed.packing.voidage),
    },
    Entering {
        assumption: &SHAPE,
        set: |i, v| bed(i, |b| b.packing.sphericity = v),
        get: |i| Some(i.firing.bed()?.bed.packing.sphericity),
    },
    Entering {
        assumption: &BED_TEMPERATURE,
        set: |i, v| bed(i, |b| b.gas_k = v),
        get: |i| Some(i.firing.bed()?.bed.gas_k),
    },
    Entering {
        assumption: &BED_FACTOR,
        set: |i, v| bed(i, |b| b.grate_factor = v),
        get: |i| Some(i.firing.bed()?.bed.grate_factor),
    },
    Entering {
        assumption: &ASH_FACTOR,
        set: |i, v| bed(i, |b| b.ash_factor = v),
        get: |i| Some(i.firing.bed()?.bed.ash_factor),
    },
    lump(&LUMP_ANTHRACITE),
    lump(&LUMP_STEAM_COAL),
    lump(&LUMP_CHARCOAL),
    lump(&LUMP_WOOD),
    Entering {
        assumption: &AIR_RATIO,
        set: |i, v| {
            fire(i, |f| {
                if let FireAir::ThroughBed { ratio } = &mut f.air {
                    *ratio = v;
                }
            });
        },
        get: |i| match i.firing.bed()?.fire.air {
            FireAir::ThroughBed { ratio } => Some(ratio),
            FireAir::WithHoles { .. } => None,
        },
    },
    Entering {
        assumption: &BED_AIR,
        set: |i, v| with_holes(i, |factor, _| *factor = v),
        get: |i| Some(holes_of(i)?.0),
    },
    Entering {
        assumption: &AIR_HOLES,
        set: |i, v| with_holes(i, |_, holes| holes.coefficient = v),
        get: |i| Some(holes_of(i)?.1.coefficient),
    },
    Entering {
        assumption: &PAN_DOOR,
        set: |i, v| bed(i, |b| b.door.iter_mut().for_each(|d| d.coefficient = v)),
        get: |i| Some(i.firing.bed()?.bed.door?.coefficient),
    },
    burnt(&BURNT_ANTHRACITE),
    burnt(&BURNT_STEAM_COAL),
    burnt(&BURNT_CHARCOAL),
    burnt(&BURNT_WOOD),
    Entering {
        assumption: &EMISSIVITY,
        set: |i, v| {
            let fired = i.firing.bed_mut();
            fired.into_iter().for_each(|f| f.firebox.emissivity = v);
        },
        get: |i| Some(i.firing.bed()?.firebox.emissivity),
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
        set: |i, v| {
            i.engine.iter_mut().for_each(|e| {
                if let Missing::Reckoned(factor) = &mut e.missing {
                    *factor = v;
                }
            });
        },
        get: |i| match i.engine?.missing {
            Missing::Reckoned(factor) => Some(factor),
            Missing::Measured(_) => None,
        },
    },
    Entering {
        assumption: &ADMISSION,
        set: |i, v| {
            i.engine.iter_mut().for_each(|e| {
                if let Admission::Share(share) = &mut e.admission {
                    *share = v;
                }
            });
        },
        get: |i| match i.engine?.admission {
            Admission::Share(share) => Some(share),
            Admission::Ports { .. } => None,
        },
    },
    Entering {
        assumption: &PORT_LOSS,
        set: |i, v| {
            i.engine.iter_mut().for_each(|e| {
                if let Admission::Ports { loss, .. } = &mut e.admission {
                    *loss = v;
                }
            });
        },
        get: |i| match i.engine?.admission {
            Admission::Ports { loss, .. } => Some(loss),
            Admission::Share(_) => None,
        },
    },
    Entering {
        assumption: &MECHANICAL,
        set: |i, v| {
            i.engine
                .iter_mut()
                .for_each(|e| e.mechanical_efficiency = v);
        },
        get: |i| i.engine.map(|e| e.mechanical_efficiency),
    },
    Entering {
        assumption: &HEAT_LOSS,
        set: |i, v| {
            i.engine.iter_mut().for_each(|e| {
                if let Exhausts::ByLoss(loss) = &mut e.exhausts {
                    *loss = v;
                }
            });
        },
        get: |i| match i.engine?.exhausts {
            Exhausts::ByLoss(loss) => Some(loss),
            Exhausts::Dryness(_) => None,
        },
    },
    Entering {
        assumption: &PUFF,
        set: |i, v| i.engine.iter_mut().for_each(|e| e.puff_share = v),
        get: |i| i.engine.map(|e| e.puff_share),
    },
    Entering {
        assumption: &PUMP_EFFICIENCY,
        set: |i, v| pump(i).into_iter().for_each(|p| p.efficiency = v),
        get: |i| Some(i.engine?.pump?.efficiency),
    },
    Entering {
        assumption: &PIPE_EMISSIVITY,
        set: |i, v| pipe(i).into_iter().for_each(|p| p.emissivity = v),
        get: |i| Some(i.engine?.pipe?.emissivity),
    },
    Entering {
        assumption: &PIPE_CONDUCTIVITY,
        set: |i, v| {
            let lagging = pipe(i).and_then(|p| p.lagging.as_mut());
            lagging.into_iter().for_each(|l| l.w_m_k = v);
        },
        get: |i| Some(i.engine?.pipe?.lagging?.w_m_k),
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
        set: |i, v| i.plain.iter_mut().for_each(|p| p.exhaust_dryness = v),
        get: |i| match (i.engine, i.plain) {
            (None, Some(plain)) => Some(plain.exhaust_dryness),
            _ => None,
        },
    },
    Entering {
        assumption: &INLET_LOSS,
        set: |i, v| i.chimney.inlet_heads = v,
        get: |i| i.firing.bed().map(|_| i.chimney.inlet_heads),
    },
    Entering {
        assumption: &INLET_PLAIN,
        set: |i, v| i.chimney.inlet_heads = v,
        get: |i| i.firing.flame().map(|_| i.chimney.inlet_heads),
    },
    Entering {
        assumption: &FRICTION,
        set: |i, v| i.chimney.friction_heads = v,
        get: |i| i.firing.bed().map(|_| i.chimney.friction_heads),
    },
    Entering {
        assumption: &SMOKEBOX_LOSS,
        set: |i, v| i.extra_loss_pa = v,
        get: |i| i.firing.bed().map(|_| i.extra_loss_pa),
    },
    Entering {
        assumption: &ATMOSPHERE,
        set: |i, v| i.site.atmosphere_pa = v,
        get: |i| Some(i.site.atmosphere_pa),
    },
    Entering {
        assumption: &AIR,
        set: |i, v| {
            i.site.air_k = v;
            i.site.air_j_kg = air_enthalpy(v);
        },
        get: |i| Some(i.site.air_k),
    },
    Entering {
        assumption: &FEED,
        set: |i, v| i.site.feed_k = v,
        get: |i| Some(i.site.feed_k),
    },
    Entering {
        assumption: &CLEARANCE,
        set: |i, v| i.engine.iter_mut().for_each(|e| e.clearance = v),
        get: |i| i.engine.map(|e| e.clearance),
    },
    Entering {
        assumption: &COMPRESSION,
        set: |i, v| i.engine.iter_mut().for_each(|e| e.compression = v),
        get: |i| i.engine.map(|e| e.compression),
    },
    Entering {
        assumption: &MOMENTUM_FACTOR,
        set: |i, v| i.chimney.momentum_factor = v,
        get: |i| Some(i.chimney.momentum_factor),
    },
    Entering {
        assumption: &DIFFUSER,
        set: |i, v| {
            if i.chimney.tapers() {
                i.chimney.diffuser_share = v;
            }
        },
        get: |i| i.chimney.tapers().then_some(i.chimney.diffuser_share),
    },
    Entering {
        assumption: &TUBE_EMISSIVITY,
        // A firebox round a flame is sooted as its tubes are.
        set: |i, v| {
            tubes(i, |t| t.wall_emissivity = v);
            let fired = i.firing.flame_box_mut();
            fired
                .into_iter()
                .for_each(|f| f.firebox.wall_emissivity = v);
        },
        get: |i| Some(i.firing.tubes()?.wall_emissivity),
    },
    Entering {
        assumption: &COIL_EMISSIVITY,
        set: |i, v| over_fire(i, |emissivity, _| *emissivity = v),
        get: |i| Some(i.dryer?.over_fire()?.0),
    },
    Entering {
        assumption: &COIL_VIEW,
        set: |i, v| over_fire(i, |_, view| *view = v),
        get: |i| Some(i.dryer?.over_fire()?.1),
    },
    Entering {
        assumption: &LEAK,
        set: |i, v| i.leak.iter_mut().for_each(|l| l.area_m2 = v),
        get: |i| i.leak.map(|l| l.area_m2),
    },
    Entering {
        assumption: &LEAK_COEFFICIENT,
        set: |i, v| i.leak.iter_mut().for_each(|l| l.coefficient = v),
        get: |i| i.leak.map(|l| l.coefficient),
    },
    Entering {
        assumption: &TUBE_RADIATION,
        set: |i, v| carry(i, |b| b.radiation = v),
        get: |i| Some(beyond(i)?.radiation),
    },
    Entering {
        assumption: &GAS_CONDUCTIVITY,
        set: |i, v| carry(i, |b| b.conductivity = v),
        get: |i| Some(beyond(i)?.conductivity),
    },
    Entering {
        assumption: &GAS_VISCOSITY,
        set: |i, v| {
            carry(i, |b| b.viscosity = v);
            bed(i, |b| b.viscosity_factor = v);
        },
        get: |i| Some(beyond(i)?.viscosity),
    },
    flame::JET_COEFFICIENT,
    flame::MOMENTUM_SHARE,
    flame::MOMENTUM_FACTOR,
    flame::THROAT_FRICTION,
    flame::DIFFUSER,
    flame::MIXTURE,
    flame::HOLES,
    flame::PORTS,
    flame::MOUTH,
    flame::MIXING_GAS,
    flame::MIXING_SPIRIT,
    flame::BURNT,
    flame::SOOT_GAS,
    flame::SOOT_SPIRIT,
    flame::ROW,
    flame::STIRRING,
    flame::SMOKEBOX,
    flame::FLUE_EMISSIVITY,
    flame::CONVECTION,
    flame::RATE,
    flame::SIDE,
    flame::TANK_FILM,
    flame::TANK_DRY,
];

/// The density of a lump of one fuel.
const fn lump(assumption: &'static Assumption) -> Entering {
    Entering {
        assumption,
        set: |i, v| bed(i, |b| b.lump_kg_m3 = v),
        get: |i| Some(i.firing.bed()?.bed.lump_kg_m3),
    }
}

/// The share of the heating value of one fuel that is set free.
const fn burnt(assumption: &'static Assumption) -> Entering {
    Entering {
        assumption,
        set: |i, v| fire(i, |f| f.burnt_share = v),
        get: |i| Some(i.firing.bed()?.fire.burnt_share),
    }
}

/// Changes the coal and its burning where there is a bed.
fn fire(inputs: &mut Inputs, change: impl FnOnce(&mut Fire)) {
    if let Some(fired) = inputs.firing.bed_mut() {
        change(&mut fired.fire);
    }
}

/// Factor of the bed's air and the holes over the fire, where there are some.
fn holes_of(inputs: &Inputs) -> Option<(f64, Opening)> {
    match inputs.firing.bed()?.fire.air {
        FireAir::ThroughBed { .. } => None,
        FireAir::WithHoles { bed_factor, holes } => Some((bed_factor, holes)),
    }
}

/// Changes them.
fn with_holes(inputs: &mut Inputs, change: impl FnOnce(&mut f64, &mut Opening)) {
    fire(inputs, |f| {
        if let FireAir::WithHoles { bed_factor, holes } = &mut f.air {
            change(bed_factor, holes);
        }
    });
}

/// Changes the bed where there is one.
fn bed(inputs: &mut Inputs, change: impl FnOnce(&mut Bed)) {
    if let Some(fired) = inputs.firing.bed_mut() {
        change(&mut fired.bed);
    }
}

/// Changes emissivity and view of a coil over the fire.
fn over_fire(inputs: &mut Inputs, change: impl FnOnce(&mut f64, &mut f64)) {
    if let Some(dryer) = &mut inputs.dryer
        && let CoilPlace::Firebox { emissivity, view } = &mut dryer.place
    {
        change(emissivity, view);
    }
}

/// Changes the fire tubes where there are any.
fn tubes(inputs: &mut Inputs, change: impl FnOnce(&mut Tubes)) {
    if let Some(tubes) = inputs.firing.tubes_mut() {
        change(tubes);
    }
}

/// Factors on the laws of the hot gas.
fn beyond(inputs: &Inputs) -> Option<&Beyond> {
    let tubes = inputs.firing.tubes().map(|tubes| &tubes.beyond);
    tubes.or_else(|| inputs.firing.flue().map(|fired| &fired.flue.beyond))
}

/// Changes them.
fn carry(inputs: &mut Inputs, change: impl FnOnce(&mut Beyond)) {
    if let Some(fired) = inputs.firing.flue_mut() {
        change(&mut fired.flue.beyond);
    } else {
        tubes(inputs, |t| change(&mut t.beyond));
    }
}

fn pump(inputs: &mut Inputs) -> Option<&mut Pump> {
    inputs.engine.as_mut()?.pump.as_mut()
}

fn pipe(inputs: &mut Inputs) -> Option<&mut Pipe> {
    inputs.engine.as_mut()?.pipe.as_mut()
}

/// The doubt about laws that a fire carries beyond what they were published for: it belongs into
/// the band of every plant, because no field of a plan can replace it.
pub fn standing() -> impl Iterator<Item = &'static Entering> {
    CARRIED.iter().filter_map(|c| assumption(c.assumption))
}

/// The assumption of this id: that of a plan field which replaces it, followed by the choice on
/// which it depends where there is one.
#[must_use]
pub fn assumption(id: &str) -> Option<&'static Entering> {
    ASSUMPTIONS.iter().find(|e| e.assumption.id == id)
}
