//! The engine of a plan as the steady loop wants it, with its load, its pipe and its pump; and
//! steam that is asked for without an engine being described.

use plan::Plan;
use plan::section::{Acting, FeedKind};
use reckoning::quantity::{Quantity, VolumeFlow};
use reckoning::{Given, Known, Origin};
use std::f64::consts::FRAC_PI_4;
use steaming::{Admission, Engine, Exhausts, Lagging, Load, Missing, Pipe, Plain, Pump};

use super::Taken;
use super::parts::count;
use super::supply::feeds_m3_s;

/// What a plan says of the steam that is taken.
pub(crate) struct Asking {
    /// The engine, where it is whole.
    pub(crate) engine: Option<Engine>,
    /// Steam beside it or without one.
    pub(crate) plain: Option<Plain>,
}

/// The engine and the plain steam of a plan. Where no engine is described and steam is asked for,
/// no engine is wanted; else what is missing of it is a gap.
pub(crate) fn asking(plan: &Plan, taken: &mut Taken) -> Asking {
    taken.not_taken_away(&plan.duty.steam);
    taken.not_taken_away(&plan.duty.power);
    let described = is_described(plan);
    let steam = plan.duty.steam.known();
    let without = steam.is_some() && !described;
    let engine = if without { None } else { engine(plan, taken) };
    let plain = steam.and_then(|known| {
        let steam_kg_s = taken.keep(plan.duty.steam.path(), Some(known))?;
        let exhaust_dryness = if without {
            taken.number(&plan.engine.exhaust_dryness)?
        } else {
            // It is not led to the nozzle beside an engine.
            1.0
        };
        Some(Plain {
            steam_kg_s,
            exhaust_dryness,
        })
    });
    Asking { engine, plain }
}

/// Whether the plan says anything of an engine's cylinders, or once did.
fn is_described(plan: &Plan) -> bool {
    let e = &plan.engine;
    !(e.cylinders.is_absent()
        && e.acting.is_absent()
        && e.bore.is_absent()
        && e.stroke.is_absent()
        && e.speed.is_absent()
        && e.cut_off.is_absent())
}

/// The engine; `None` where a number is wanted.
fn engine(plan: &Plan, taken: &mut Taken) -> Option<Engine> {
    let e = &plan.engine;
    let cylinders = count(taken, e.cylinders.path(), e.cylinders.value());
    let sides = sides(plan, taken);
    let (bore, stroke) = (taken.size(&e.bore), taken.size(&e.stroke));
    let load = load(plan, cylinders.zip(sides).map(|(n, s)| n * s), taken);
    let clearance = taken.number(&e.clearance);
    let compression = taken.number(&e.compression);
    let chest_share = taken.number(&e.chest_pressure);
    let admission = admission(plan, taken);
    let diagram_factor = taken.number(&e.diagram_factor);
    let mechanical_efficiency = taken.number(&e.mechanical_efficiency);
    let missing = missing(plan, taken);
    let exhausts = exhausts(plan, taken);
    let puff_share = taken.number(&e.puff_share);
    let pipe = pipe(plan, taken);
    let pump = pump(plan, taken);
    taken.not_taken_away(&e.rod);
    taken.not_taken_away(&e.exhaust_pressure_at_compression);
    let (bore, stroke) = (bore?, stroke?);
    let section = section(plan, bore)?;
    Some(Engine {
        cylinders: cylinders?,
        strokes_per_turn: cylinders? * sides?,
        bore_m: bore,
        stroke_m: stroke,
        stroke_volume_m3: section * stroke,
        load: load?,
        clearance: clearance?,
        compression: compression?,
        chest_share: chest_share?,
        admission: admission?,
        diagram_factor: diagram_factor?,
        mechanical_efficiency: mechanical_efficiency?,
        missing: missing?,
        exhausts: exhausts?,
        closing_pa: e.exhaust_pressure_at_compression.value().map(Quantity::si),
        puff_share: puff_share?,
        pipe,
        pump,
    })
}

/// Section that a stroke sweeps, m². The rod takes its own from one side of a double-acting piston:
/// the mean of both ends is what a stroke sweeps.
fn section(plan: &Plan, bore: f64) -> Option<f64> {
    let e = &plan.engine;
    let rod = e.rod.likely().map_or(0.0, |rod| rod.value.si());
    Some(match e.acting.value()? {
        Acting::Single => FRAC_PI_4 * bore * bore,
        Acting::Double => FRAC_PI_4 * (bore * bore - 0.5 * rod * rod),
    })
}

/// On how many sides of a piston the steam acts.
fn sides(plan: &Plan, taken: &mut Taken) -> Option<f64> {
    let acting = &plan.engine.acting;
    if acting.value().is_none() {
        taken.gaps.push(acting.path().to_owned());
    }
    acting.value().map(|acting| match acting {
        Acting::Single => 1.0,
        Acting::Double => 2.0,
    })
}

/// Speed, cut-off and power: with a power asked, the one that was never given is found.
fn load(plan: &Plan, strokes_per_turn: Option<f64>, taken: &mut Taken) -> Option<Load> {
    let (speed, cut_off) = (&plan.engine.speed, &plan.engine.cut_off);
    let power = plan.duty.power.known();
    let shaft_w = power.and_then(|known| taken.keep(plan.duty.power.path(), Some(known)));
    let free_speed = shaft_w.is_some() && speed.is_absent() && !cut_off.is_absent();
    let free_cut_off = shaft_w.is_some() && cut_off.is_absent() && !speed.is_absent();
    if free_speed {
        let (cut_off, shaft_w) = (taken.wanted(cut_off)?, shaft_w?);
        return Some(Load::BySpeed { cut_off, shaft_w });
    }
    let turns = taken.wanted(speed);
    let strokes = strokes_per_turn.zip(turns).map(|(per, turns)| per * turns);
    if free_cut_off {
        let (strokes_per_s, shaft_w) = (strokes?, shaft_w?);
        return Some(Load::ByCutOff {
            strokes_per_s,
            shaft_w,
        });
    }
    let cut_off = taken.wanted(cut_off)?;
    let strokes_per_s = strokes?;
    Some(match shaft_w {
        Some(shaft_w) => Load::Throttled {
            strokes_per_s,
            cut_off,
            shaft_w,
        },
        None => Load::Open {
            strokes_per_s,
            cut_off,
        },
    })
}

fn admission(plan: &Plan, taken: &mut Taken) -> Option<Admission> {
    let e = &plan.engine;
    taken.not_taken_away(&e.port_area);
    if let Some(area) = e.port_area.known() {
        let area_m2 = taken.keep(e.port_area.path(), Some(area));
        let loss = taken.number(&e.port_loss);
        return Some(Admission::Ports {
            area_m2: area_m2?,
            loss: loss?,
        });
    }
    taken.number(&e.admission_pressure).map(Admission::Share)
}

/// Measured, else reckoned from walls and leaks, with the doubt about both as the assumption of
/// the same name.
fn missing(plan: &Plan, taken: &mut Taken) -> Option<Missing> {
    let measured = plan.engine.missing.value().is_some();
    let value = taken.number(&plan.engine.missing)?;
    Some(if measured {
        Missing::Measured(value)
    } else {
        Missing::Reckoned(value)
    })
}

/// Dryness as measured, else the balance of heat.
fn exhausts(plan: &Plan, taken: &mut Taken) -> Option<Exhausts> {
    let dryness = &plan.engine.exhaust_dryness;
    taken.not_taken_away(dryness);
    if let Some(known) = dryness.known() {
        let x = taken.keep(dryness.path(), Some(known))?;
        return Some(Exhausts::Dryness(x));
    }
    taken.number(&plan.engine.heat_loss).map(Exhausts::ByLoss)
}

/// The steam pipe; `None` where the plan says nothing of one.
fn pipe(plan: &Plan, taken: &mut Taken) -> Option<Pipe> {
    let pipe = &plan.engine.pipe;
    if pipe.outside.is_absent() && pipe.length.is_absent() && pipe.lagging.is_absent() {
        return None;
    }
    let outside = taken.size(&pipe.outside);
    let length = taken.size(&pipe.length);
    let emissivity = taken.number(&pipe.emissivity);
    taken.not_taken_away(&pipe.lagging);
    let lagging = if pipe.lagging.get().is_some() {
        let thickness = taken.size(&pipe.lagging);
        let conductivity = taken.number(&pipe.conductivity);
        thickness.zip(conductivity)
    } else {
        None
    };
    Some(Pipe {
        outside_m: outside?,
        length_m: length?,
        emissivity: emissivity?,
        lagging: lagging.map(|(thickness_m, w_m_k)| Lagging { thickness_m, w_m_k }),
    })
}

/// The feed pump on the engine. Where a power is asked of the shaft, one whose feed cannot be told
/// is a gap.
fn pump(plan: &Plan, taken: &mut Taken) -> Option<Pump> {
    let driven =
        |means: &&plan::section::FeedMeans| means.kind.value() == Some(FeedKind::EnginePump);
    let means = plan.feed.means.iter().find(driven)?;
    let feeds = feeds_m3_s(means);
    if feeds.is_none() && plan.duty.power.get().is_some() {
        taken.gaps.push(means.rate.path().to_owned());
    }
    let known = means.rate.known().unwrap_or(Known {
        value: VolumeFlow::from_si(feeds?),
        given: Given::Chosen {
            between: "what a pump feeds, as measured or as it sweeps".to_owned(),
            reason: "what its plunger sweeps in its strokes, times its efficiency".to_owned(),
            weakest: Origin::Read,
        },
    });
    let water_m3_s = taken.keep("feed.means.<id>.rate", Some(known))?;
    let efficiency = taken.number(&plan.engine.pump_efficiency)?;
    Some(Pump {
        water_m3_s,
        efficiency,
    })
}
