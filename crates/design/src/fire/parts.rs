//! Each part of the plan as the steady loop wants it.

use formulas::balance::jets_area;
use formulas::bed::Packing;
use formulas::fuel::{higher_heating_value, lower_heating_value, solid_fuel};
use plan::Plan;
use plan::section::{DryerPlace, Fuel};
use reckoning::quantity::{Length, MJ_PER_KG, PressureDrop, Quantity};
use reckoning::{Given, Known, Origin};
use std::f64::consts::{FRAC_PI_4, PI};
use steaming::{
    Bed, Beyond, Blast, Blower, Boiler, Chimney, CoilPlace, Dryer, Fire, FireAir, Firebox, Leak,
    Opening, Tubes,
};

use super::burns::Burns;
use super::{Geometry, Taken};

/// A whole number, or a gap.
pub(crate) fn count(taken: &mut Taken, path: &str, value: Option<u32>) -> Option<f64> {
    if value.is_none() {
        taken.gaps.push(path.to_owned());
    }
    value.map(f64::from)
}

/// The solid fuel of a plan as the tables name it.
fn fuel_name(plan: &Plan) -> Option<&'static str> {
    Some(match plan.fire.fuel.value()? {
        Fuel::Anthracite => "anthracite",
        Fuel::SteamCoal => "steam coal",
        Fuel::Charcoal => "charcoal",
        Fuel::Wood => "wood",
    })
}

/// Fuel and how it burns.
pub(crate) fn fire(plan: &Plan, taken: &mut Taken) -> Option<Fire> {
    let f = &plan.fire;
    let air = fire_air(plan, taken);
    let Some(name) = fuel_name(plan) else {
        taken.gaps.push(f.fuel.path().to_owned());
        return None;
    };
    let burnt_share = taken.number_for(&f.burnt_share, name);
    taken.not_taken_away(&f.moisture);
    taken.not_taken_away(&f.ash);
    taken.not_taken_away(&f.heating_value);
    let as_sold = solid_fuel(name).ok()?.composition;
    let water = f.moisture.value().map_or(as_sold.water, Quantity::si);
    let ash = f.ash.value().map_or(as_sold.ash, Quantity::si);
    let fuel = as_sold.with_water_and_ash(water, ash);
    let worked = lower_heating_value(higher_heating_value(&fuel), fuel.hydrogen, fuel.water);
    let heating_value_j_kg = f
        .heating_value
        .value()
        .map_or_else(|| MJ_PER_KG.to_si(worked), Quantity::si);
    Some(Fire {
        fuel,
        heating_value_j_kg,
        air: air?,
        burnt_share: burnt_share?,
    })
}

/// How the fire gets its air: through holes over it as well, where the plan has some.
fn fire_air(plan: &Plan, taken: &mut Taken) -> Option<FireAir> {
    let f = &plan.fire;
    let holes = &f.air_holes;
    if holes.count.is_absent() && holes.bore.is_absent() {
        taken.not_taken_away(&f.bed_air);
        taken.not_taken_away(&holes.coefficient);
        return Some(FireAir::ThroughBed {
            ratio: taken.number(&f.air_ratio)?,
        });
    }
    let count = count(taken, holes.count.path(), holes.count.value());
    let bore = taken.size(&holes.bore);
    let coefficient = taken.number(&holes.coefficient);
    let bed_factor = taken.number(&f.bed_air);
    Some(FireAir::WithHoles {
        bed_factor: bed_factor?,
        holes: Opening {
            area_m2: jets_area(count?, bore?),
            coefficient: coefficient?,
        },
    })
}

/// The door of the ash pan; `None` where the plan names none.
fn door(plan: &Plan, taken: &mut Taken) -> Option<Option<Opening>> {
    let ash = &plan.ash;
    if ash.door.is_absent() {
        taken.not_taken_away(&ash.door_coefficient);
        return Some(None);
    }
    let area = taken.wanted(&ash.door);
    let coefficient = taken.number(&ash.door_coefficient);
    Some(Some(Opening {
        area_m2: area?,
        coefficient: coefficient?,
    }))
}

/// The bed on the grate.
pub(crate) fn bed(plan: &Plan, taken: &mut Taken) -> Option<Bed> {
    let grate = taken.size(&plan.grate.diameter);
    let lump = taken.wanted(&plan.fire.lump);
    let depth = taken.wanted(&plan.fire.depth);
    let voidage = taken.number(&plan.fire.voidage);
    let sphericity = taken.number(&plan.fire.shape);
    let gas_k = taken.number(&plan.fire.bed_temperature);
    // Without a fuel, which the fire itself misses, no density belongs to it.
    let lump_kg_m3 =
        fuel_name(plan).and_then(|name| taken.number_for(&plan.fire.lump_density, name));
    let grate_factor = taken.number(&plan.grate.bed_factor);
    let ash_factor = taken.number(&plan.ash.bed_factor);
    let door = door(plan, taken);
    let grate = grate?;
    Some(Bed {
        grate_m2: FRAC_PI_4 * grate * grate,
        packing: Packing {
            voidage: voidage?,
            sphericity: sphericity?,
            lump_m: lump?,
        },
        depth_m: depth?,
        lump_kg_m3: lump_kg_m3?,
        gas_k: gas_k?,
        grate_factor: grate_factor?,
        ash_factor: ash_factor?,
        door: door?,
        viscosity_factor: 1.0,
    })
}

/// The boiler as a vessel of steam.
pub(crate) fn boiler(
    plan: &Plan,
    geometry: Option<&Geometry>,
    taken: &mut Taken,
) -> Option<Boiler> {
    let dryness = taken.number(&plan.boiler.dryness);
    let wall_rise_k = taken.number(&plan.boiler.wall_rise);
    let shell_loss_w = taken.number(&plan.boiler.shell_loss);
    Some(Boiler {
        dryness: dryness?,
        wall_rise_k: wall_rise_k?,
        shell_loss_w: shell_loss_w?,
        water_surface_m2: geometry?.water_surface_m2,
        steam_space_m: geometry?.steam_space_m,
    })
}

/// The wetted box round the fire.
pub(crate) fn firebox(
    plan: &Plan,
    geometry: Option<&Geometry>,
    taken: &mut Taken,
) -> Option<Firebox> {
    let emissivity = taken.number(&plan.boiler.firebox.emissivity);
    Some(Firebox {
        area_m2: geometry?.tubes()?.firebox_m2,
        emissivity: emissivity?,
    })
}

/// Fire tubes.
pub(crate) fn tubes(plan: &Plan, geometry: Option<&Geometry>, taken: &mut Taken) -> Option<Tubes> {
    let t = &plan.boiler.tubes;
    let outside = taken.size(&t.outside);
    let wall = taken.size(&t.wall);
    let wall_emissivity = taken.number(&t.emissivity);
    let way = geometry?.tubes()?;
    Some(Tubes {
        bore_m: outside? - 2.0 * wall?,
        length_m: way.tube_length_m,
        count: way.tubes,
        wall_emissivity: wall_emissivity?,
        entrance_heads: ENTRANCE_HEADS,
        exit_heads: EXIT_HEADS,
        beyond: Beyond::AS_PRINTED,
    })
}

/// Loss of a sharp-edged entrance and of an exit into a large space, in velocity heads
/// (textbooks of fluid flow, from memory).
const ENTRANCE_HEADS: f64 = 0.5;
const EXIT_HEADS: f64 = 1.0;

/// The chimney with its bell and choke.
pub(crate) fn chimney(plan: &Plan, burns: Burns, taken: &mut Taken) -> Option<Chimney> {
    let c = &plan.chimney;
    let choke = taken.size(&c.choke);
    let height = taken.size(&c.height);
    taken.not_taken_away(&c.parallel);
    taken.not_taken_away(&c.top);
    let parallel = c.parallel.likely().or_else(|| c.height.likely());
    let parallel = taken.keep::<Length>(c.parallel.path(), parallel);
    let top = c.top.likely().or_else(|| c.choke.likely());
    let top = taken.keep::<Length>(c.top.path(), top);
    // A blast wants a bell, and fills a mixing length of which the heads are known; over a flame
    // a plain tube stands, whose friction the loop works.
    let (inlet_heads, friction_heads) = match burns {
        Burns::Bed => (taken.number(&c.inlet_loss), taken.number(&c.friction)),
        Burns::Flue | Burns::Firebox => (taken.number_for(&c.inlet_loss, "a flame"), Some(0.0)),
    };
    let momentum_factor = taken.number(&c.momentum_factor);
    let diffuser_share = taken.number(&c.diffuser_efficiency);
    Some(Chimney {
        height_m: height?,
        choke_m: choke?,
        top_m: top?,
        parallel_m: parallel?,
        inlet_heads: inlet_heads?,
        friction_heads: friction_heads?,
        diffuser_share: diffuser_share?,
        momentum_factor: momentum_factor?,
    })
}

/// The exhaust nozzle; `None` where the plan names none.
pub(crate) fn blast(plan: &Plan, taken: &mut Taken) -> Option<Blast> {
    let b = &plan.blast;
    if b.nozzle.is_absent() {
        return None;
    }
    let nozzle = taken.size(&b.nozzle);
    let below = taken.size(&b.below_choke);
    let coefficient = taken.number(&b.coefficient);
    let mixing = taken.number(&b.mixing);
    Some(Blast {
        nozzle_m: nozzle?,
        below_choke_m: below?,
        coefficient: coefficient?,
        mixing: mixing?,
    })
}

/// The blower with its valve open; `None` where the plan names none. The steady loop runs with it
/// shut: it is for raising steam.
#[must_use]
pub(crate) fn blower(plan: &Plan, taken: &mut Taken) -> Option<Blower> {
    let b = &plan.blower;
    if b.jets.is_absent() && b.bore.is_absent() {
        return None;
    }
    let jets = count(taken, b.jets.path(), b.jets.value());
    let bore = taken.size(&b.bore);
    let coefficient = taken.number(&b.coefficient);
    let mixing = taken.number(&b.mixing);
    Some(Blower {
        jets: jets?,
        bore_m: bore?,
        coefficient: coefficient?,
        mixing: mixing?,
    })
}

/// The coil; `None` where the plan names none.
pub(crate) fn dryer(plan: &Plan, geometry: Option<&Geometry>, taken: &mut Taken) -> Option<Dryer> {
    let d = &plan.dryer;
    if d.outside.is_absent() && d.length.is_absent() {
        return None;
    }
    let outside = taken.size(&d.outside);
    let wall = taken.size(&d.wall);
    let length = taken.size(&d.length);
    let coil = taken.size(&d.coil);
    let (place, around) = match d.place.value() {
        Some(DryerPlace::Firebox) => {
            let (emissivity, view) = (taken.number(&d.emissivity), taken.number(&d.view));
            let place = CoilPlace::Firebox {
                emissivity: emissivity?,
                view: view?,
            };
            (place, geometry?.tubes()?.firebox_bore_m)
        }
        Some(DryerPlace::Smokebox) => (CoilPlace::Smokebox, geometry?.smokebox_m),
        None => {
            taken.gaps.push(d.place.path().to_owned());
            return None;
        }
    };
    let Some(around) = around else {
        taken.gaps.push(plan.smokebox.outside.path().to_owned());
        return None;
    };
    let (outside, coil) = (outside?, coil?);
    // A close coil stands in the way of the gas as a ring of the tube's width.
    let gas_area_m2 = FRAC_PI_4 * around * around - PI * coil * outside;
    Some(Dryer {
        place,
        bore_m: outside - 2.0 * wall?,
        outside_m: outside,
        length_m: length?,
        coil_m: coil,
        gas_area_m2,
    })
}

/// Draught lost between tubes and chimney, Pa. For a flame it is a number of velocity heads of
/// the burner's, unless the plan gives pascals.
pub(crate) fn extra_loss(plan: &Plan, burns: Burns, taken: &mut Taken) -> Option<f64> {
    let loss = &plan.smokebox.loss;
    match burns {
        Burns::Bed => taken.number(loss),
        Burns::Flue | Burns::Firebox => {
            taken.not_taken_away(loss);
            let known = loss.known().unwrap_or_else(|| Known {
                value: PressureDrop::from_si(0.0),
                given: Given::Chosen {
                    between: "the losses of the smokebox".to_owned(),
                    reason: "it is told in velocity heads of the gas that comes to it".to_owned(),
                    weakest: Origin::Assumed,
                },
            });
            taken.keep(loss.path(), Some(known))
        }
    }
}

/// Air that leaks into the smokebox.
pub(crate) fn leak(plan: &Plan, taken: &mut Taken) -> Option<Leak> {
    let area = taken.number(&plan.smokebox.leak);
    let coefficient = taken.number(&plan.smokebox.leak_coefficient);
    Some(Leak {
        area_m2: area?,
        coefficient: coefficient?,
    })
}
