//! The launch example against its hand-worked sheet: shapes, strength and steam worked away from
//! the program, and the balances of the settled fire added up again.
//!
//! Where several lines of one symbol stand in a working, they are taken in their order.

use design::Checked;
use reckoning::quantity::Quantity;
use reckoning::working::Basis;
use reckoning::{Finding, Working};
use steaming::{BedFireState, FireState};

use crate::example::{LAUNCHED, findings};
use crate::sheet::Sheet;

fn finding<'a>(checked: &'a Checked, rule: &str, place: &str) -> &'a Finding {
    findings(checked)
        .find(|f| f.rule.id == rule && f.place == place)
        .unwrap_or_else(|| panic!("no {rule} at {place}"))
}

/// Values that a card gave in a working, in their order and in the unit of the line.
fn by_card(working: &Working, card: &str) -> Vec<f64> {
    let lines = working.lines().iter();
    lines
        .filter(|line| matches!(&line.basis, Basis::Worked { card: c, .. } if c.id == card))
        .map(|line| line.value)
        .collect()
}

fn first(found: &Finding, card: &str) -> f64 {
    let values = by_card(&found.working, card);
    *values
        .first()
        .unwrap_or_else(|| panic!("{} works no {card}", found.rule.id))
}

fn line(found: &Finding, symbol: &str) -> f64 {
    let mut lines = found.working.lines().iter();
    let line = lines.rfind(|line| line.symbol == symbol);
    line.unwrap_or_else(|| panic!("{} has no {symbol}", found.rule.id))
        .value
}

#[test]
fn worked_shapes_surfaces_and_water() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let plant = &checked.resolved.plant;
    let nest = plant.nest.as_ref().expect("a nest");
    let between = nest.between_plates.as_ref().expect("a length");
    let cm2 = |area: &Option<reckoning::Known<reckoning::quantity::Area>>| {
        area.as_ref().expect("an area").value.si() * 1e4
    };
    let water = plant.water.as_ref().expect("water");
    let ml = |si: f64| si * 1e6;
    let reserve = water.reserve.as_ref().expect("a reserve");
    for (name, found) in [
        ("tubes.count", f64::from(nest.count.value)),
        ("tubes.length", between.value.mm()),
        ("surface.tubes", cm2(&plant.surfaces.tubes_inside)),
        ("surface.firebox-side", cm2(&plant.surfaces.firebox_side)),
        ("surface.crown", cm2(&plant.surfaces.crown)),
        ("surface.grate", cm2(&plant.surfaces.grate)),
        ("water.volume", ml(water.water.value.si())),
        ("water.reserve", ml(reserve.value.si())),
        ("water.surface", water.surface.value.si() * 1e4),
        ("water.steam", ml(water.steam.value.si())),
        ("mass.barrel", grams(checked, "barrel")),
        ("mass.firebox", grams(checked, "firebox")),
        ("mass.tube", grams(checked, "tube.1")),
    ] {
        sheet.holds("geometry", name, found);
    }
}

fn grams(checked: &Checked, id: &str) -> f64 {
    let masses = &checked.resolved.plant.masses;
    let mass = masses.iter().find(|(part, _)| part == id);
    mass.unwrap_or_else(|| panic!("no mass of {id}"))
        .1
        .value
        .si()
        * 1e3
}

#[test]
fn worked_wall_of_the_barrel() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let wall = finding(checked, "ours.shell-wall", "barrel");
    let test = finding(checked, "ours.shell-test", "barrel");
    let margin = wall.margin.expect("a margin");
    for (name, found) in [
        ("stress.shell", line(wall, "f")),
        ("shell.asked", first(wall, "vessel.shell-wall-outside")),
        ("shell.margin", margin),
        ("shell.test", first(test, "vessel.membrane")),
    ] {
        sheet.holds("strength", name, found);
    }
    sheet.holds("strength", "stress.temperature", line(wall, "T_m"));
}

#[test]
fn worked_collapse_of_the_firebox() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let flue = finding(checked, "ours.flue-pressure", "firebox");
    let allowed = by_card(&flue.working, "allow.pressure");
    let [work, work_yield, test, test_yield] = allowed[..] else {
        panic!("{} allowed pressures", allowed.len());
    };
    let bar = |mpa: f64| mpa * 10.0;
    sheet.holds("strength", "stress.fire", line(flue, "f"));
    sheet.holds("strength", "firebox.length", line(flue, "L"));
    for (name, mpa) in [
        ("firebox.elastic", first(flue, "flue.elastic")),
        ("firebox.collapse-work", work),
        ("firebox.first-yield-work", work_yield),
        ("firebox.collapse-test", test),
        ("firebox.first-yield-test", test_yield),
        ("firebox.stress", first(flue, "flue.stress-cap")),
        ("firebox.bears", line(flue, "P_a")),
    ] {
        sheet.holds("strength", name, bar(mpa));
    }
}

#[test]
fn worked_margins_of_the_tube_plates() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    for plate in ["upper", "lower"] {
        let strip = finding(checked, "ours.plate-margin", &format!("tube-plate.{plate}"));
        let bending = first(strip, "plate.strip-supported");
        sheet.holds(
            "strength",
            &format!("plate.{plate}.strip"),
            line(strip, "m"),
        );
        sheet.holds("strength", &format!("plate.{plate}.bending"), bending);
        let margin = strip.margin.expect("a margin");
        sheet.holds("strength", &format!("plate.{plate}.margin"), margin);
    }
}

#[test]
fn worked_area_beside_the_valve_bush() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let area = finding(checked, "ours.opening-area", "bush.valve");
    for (name, card) in [
        ("opening.asked", "opening.area-required"),
        ("opening.shell", "opening.area-in-shell"),
        ("opening.outward", "opening.area-outward"),
        ("opening.inward", "opening.area-inward"),
    ] {
        sheet.holds("strength", name, first(area, card));
    }
    sheet.holds("strength", "opening.margin", area.margin.expect("a margin"));
}

fn state(checked: &Checked) -> &FireState {
    checked.steaming.working_state().expect("a settled fire")
}

/// A number of the sheet at the gain of the coil that the loop found: the engine hardly feels it.
fn at_gain(sheet: &Sheet, name: &str, gain_kj_kg: f64) -> f64 {
    let at = |gain: u32| sheet.value("engine", &format!("{name}.{gain}"));
    let (low, high) = if gain_kj_kg < 100.0 {
        (0, 100)
    } else {
        (100, 200)
    };
    let share = (gain_kj_kg - f64::from(low)) / 100.0;
    at(low) + share * (at(high) - at(low))
}

#[test]
fn worked_demand_of_the_engine() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let state = state(checked);
    let exhaust = state.exhaust.expect("an engine");
    let engine = exhaust.engine.expect("an engine");
    let gain = state.pass.dryer.expect("a coil").gain_j_kg / 1e3;
    assert!((0.0..200.0).contains(&gain), "{gain}");
    let swept = state.inputs.engine.expect("an engine").stroke_volume_m3;
    sheet.holds("engine", "engine.swept", swept * 1e6);
    sheet.holds("engine", "engine.admission", engine.admitted.pa / 1e3);
    for (name, found) in [
        ("engine.back-pressure", engine.back_pa / 1e3),
        ("engine.demand", state.demand_kg_s * 3600.0),
        ("engine.power", engine.indicated_w),
    ] {
        let wanted = at_gain(&sheet, name, gain);
        let off = (found / wanted - 1.0).abs();
        assert!(off < 5e-4, "{name}: {found} against {wanted} of the sheet");
    }
}

/// Enthalpy of the flue gas by the table of the sheet, straight between its rows, J/kg.
fn gas_enthalpy(sheet: &Sheet, kelvin: f64) -> f64 {
    let row = (kelvin / 100.0).floor() * 100.0;
    let at = |t: f64| 1e3 * sheet.value("fire", &format!("gas.enthalpy.{t:.0}"));
    at(row) + (kelvin - row) / 100.0 * (at(row + 100.0) - at(row))
}

fn balances(what: &str, one: f64, other: f64, of: f64, share: f64) {
    let left = (one - other).abs() / of;
    assert!(
        left < share,
        "{what}: {one} against {other}, {left:.2e} of {of}"
    );
}

/// The bed with its firebox and tubes.
fn fired(state: &FireState) -> &BedFireState {
    state.pass.firing.bed().expect("a bed")
}

/// Coal, air and gas by the elements of the coal; heat by its lower value.
#[test]
fn worked_coal_air_and_heat_set_free() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let state = state(checked);
    let (pass, value) = (&state.pass, state.burning.heating_value_j_kg / 1e6);
    sheet.holds("fire", "coal.lower-value", value);
    sheet.holds("fire", "coal.air", pass.air_kg_s / pass.fuel_kg_s);
    sheet.holds("fire", "coal.flue-gas", pass.gas_kg_s / pass.fuel_kg_s);
    sheet.holds("fire", "steam.saturation", state.water.saturation_k);
    sheet.holds("fire", "air.density", pass.outside_kg_m3);
    let bed = &fired(state).bed;
    sheet.holds("fire", "bed.gas-density", bed.gas_kg_m3);
    let heat = 1e-3 * (state.water.steam_j_kg - state.water.feed_j_kg);
    sheet.holds("fire", "steam.heat", heat);
}

/// The heat of the coal is found again in firebox, tubes, coil and the gas that leaves.
#[test]
fn worked_heat_of_the_settled_fire() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let state = state(checked);
    let pass = &state.pass;
    let coil = pass.dryer.expect("a coil");
    let gas = |kelvin: f64| pass.gas_kg_s * gas_enthalpy(&sheet, kelvin);
    // Air at 15 °C brings a little less than nothing, counted from 25 °C: 10 K of 1.006 kJ/(kg K).
    let air = -10.0 * 1006.0 * pass.air_kg_s;
    let free = 0.88 * pass.fuel_kg_s * 1e6 * sheet.value("fire", "coal.lower-value") + air;
    balances("heat set free", pass.heat_w, free, free, 1e-3);
    let fired = fired(state);
    let (hot, out) = (fired.firebox.gas_k, fired.tubes.outlet.gas_k);
    let behind = coil.gas_k;
    // Stefan and Boltzmann's constant; side and crown of the firebox as the sheet has them.
    let side = sheet.value("geometry", "surface.firebox-side");
    let area = 1e-4 * (side + sheet.value("geometry", "surface.crown"));
    let wall = sheet.value("fire", "steam.saturation") + 8.0;
    let radiant = 0.75 * 5.670_374e-8 * area * (hot.powi(4) - wall.powi(4));
    balances("radiation", fired.firebox.radiant_w, radiant, radiant, 2e-3);
    balances("firebox", free, radiant + gas(hot), free, 5e-3);
    balances("tubes", fired.tubes.heat_w, gas(hot) - gas(out), free, 5e-3);
    balances("coil", coil.heat_w, gas(out) - gas(behind), free, 5e-3);
    let steam = state.demand_kg_s * coil.gain_j_kg;
    balances("steam in the coil", coil.heat_w, steam, steam, 1e-3);
    let made = radiant + gas(hot) - gas(out) - 60.0;
    let heat = 1e3 * sheet.value("fire", "steam.heat");
    balances(
        "evaporation",
        state.evaporation_kg_s * heat,
        made,
        made,
        6e-3,
    );
}

/// The draught that jet and hot column make is what bed, tubes and turns take.
#[test]
fn worked_draught_of_the_settled_fire() {
    let (sheet, checked) = (Sheet::of_the_launch(), &LAUNCHED.checked);
    let state = state(checked);
    let (pass, fired) = (&state.pass, fired(state));
    let bed = &fired.bed;
    let flux = pass.air_kg_s / (1e-4 * sheet.value("geometry", "surface.grate"));
    let inertial = sheet.value("fire", "bed.inertial") * flux * flux;
    let viscous = sheet.value("fire", "bed.viscous-shape") * bed.gas_pa_s * flux;
    balances("bed", bed.loss_pa, inertial + viscous, bed.loss_pa, 5e-3);
    let tubes = fired.tubes.loss_pa();
    // Turns and entry of the smokebox, assumed at 1.5 Pa.
    balances(
        "all losses",
        pass.loss_pa,
        bed.loss_pa + tubes + 1.5,
        pass.loss_pa,
        1e-9,
    );
    let column = 9.806_65 * 0.120;
    let lift = column * (sheet.value("fire", "air.density") - pass.chimney.density_kg_m3);
    // Air without its argon lifts a hundredth less; of the whole draught that is nothing.
    balances("hot column", pass.lift_pa, lift, lift, 1e-2);
    balances(
        "draught",
        pass.jets.net_pa + lift,
        pass.loss_pa,
        pass.loss_pa,
        1e-3,
    );
    balances(
        "jet",
        pass.jets.net_pa,
        by_momentum(state),
        pass.jets.net_pa,
        5e-3,
    );
}

/// Draught of the exhaust jet by the momentum of steam, gas and mixture in the choke, with the
/// assumed 0.1 and 0.18 heads of inlet and friction, 1.02 of an uneven stream, and 0.45 of all.
fn by_momentum(state: &FireState) -> f64 {
    let (jets, gas) = (&state.pass.jets, &state.pass.chimney);
    let choke = std::f64::consts::FRAC_PI_4 * 0.016 * 0.016;
    let nozzle = std::f64::consts::FRAC_PI_4 * 0.0025 * 0.0025;
    let steam = state.demand_kg_s;
    let flow = gas.gas_kg_s + gas.leak_kg_s;
    let exhaust = state.exhaust.expect("an engine");
    let jet = steam / (0.95 * nozzle * exhaust.exhaust_kg_m3);
    let inlet = flow / (gas.density_kg_m3 * (choke - nozzle));
    let density = jets.mixed.mixed_kg_m3;
    let mixed = (steam + flow) / (density * choke);
    let head = density * mixed * mixed / 2.0;
    let momentum = (steam * jet + flow * inlet - 1.02 * (steam + flow) * mixed) / choke;
    let raised = momentum - 1.1 * gas.density_kg_m3 * inlet * inlet / 2.0 - 0.18 * head;
    jets.mixing.all * raised
}

/// Every number of the sheet is looked at by a test above, or is told here with the reason.
#[test]
fn every_number_of_the_sheet_is_compared() {
    let sheet = Sheet::of_the_launch();
    let source = include_str!("worked.rs");
    for section in ["geometry", "strength", "engine", "fire"] {
        for name in sheet.names(section) {
            let family = name.trim_end_matches(|c: char| c.is_ascii_digit() || c == '.');
            let plate = name.replace("upper", "{plate}").replace("lower", "{plate}");
            let read = [name.as_str(), family, plate.as_str()];
            // The molar mass stands in the density of the gas in the bed.
            let told = name == "coal.molar-mass";
            assert!(told || read.iter().any(|n| source.contains(n)), "{name}");
        }
    }
}
