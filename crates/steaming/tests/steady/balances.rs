//! Heat and mass close, whatever the plant; a plant that cannot be settled is refused.

use crate::changed::bed;
use crate::rl1::{bar, plant};
use proptest::prelude::*;
use steaming::{Dryer, FireState, Inputs, Missing, dryer, fire, tubes};

fn closes(state: &FireState) {
    let pass = &state.pass;
    let heat = pass.firing.to_water();
    let gas = &state.burning.gas;
    let near = |a: f64, b: f64, what: &str| {
        assert!(
            (a - b).abs() <= 1e-6 * a.abs().max(b.abs()),
            "{what}: {a} and {b}"
        );
    };
    let smoke = pass.gas_kg_s * gas.enthalpy(pass.firing.behind_k());
    near(
        pass.heat_w,
        heat.wall_w + heat.tubes_w + smoke,
        "heat set free and where it goes",
    );
    let burnt = 1.0 - state.inputs.firing.bed().expect("a bed").fire.fuel.ash;
    near(
        pass.gas_kg_s,
        pass.air_kg_s + burnt * pass.fuel_kg_s,
        "mass of gas",
    );
    near(pass.loss_pa, pass.jets.net_pa + pass.lift_pa, "draught");
    let rise = state.water.steam_j_kg - state.water.feed_j_kg;
    near(
        state.evaporation_kg_s * rise,
        state.useful_w,
        "heat of the steam",
    );
    if let Some(exhaust) = state.exhaust {
        let engine = exhaust.engine.as_ref().expect("an engine");
        near(
            exhaust.steam_kg_s * (exhaust.supplied_j_kg - exhaust.exhaust_j_kg),
            engine.indicated_w + exhaust.heat_lost_w,
            "heat of the engine",
        );
        let back = engine.back_pa - state.inputs.site.atmosphere_pa;
        near(back, exhaust.puffed_pa, "back pressure");
    }
}

fn positive(state: &FireState) {
    let pass = &state.pass;
    let fired = pass.firing.bed().expect("a bed");
    for (what, value) in [
        ("fuel", pass.fuel_kg_s),
        ("gas", pass.gas_kg_s),
        ("radiant heat", fired.firebox.radiant_w),
        ("tube heat", fired.tubes.heat_w),
        ("bed loss", fired.bed.loss_pa),
        ("vacuum", pass.loss_pa),
        ("evaporation", state.evaporation_kg_s),
        ("demand", state.demand_kg_s),
        ("mixed density", pass.jets.mixed.mixed_kg_m3),
        ("efficiency", state.efficiency),
    ] {
        assert!(value.is_finite() && value > 0.0, "{what} is {value}");
    }
    assert!(state.efficiency < 1.0);
    assert!(pass.firing.behind_k() >= state.water.wall_k);
    assert!(fired.firebox.gas_k > pass.firing.behind_k());
}

#[test]
fn identity_heat_and_mass_close() {
    for nozzle in [1.8, 2.2, 2.6] {
        closes(&fire::settle(&plant(nozzle), bar(4.0)).expect("a balance"));
    }
    let mut open = plant(2.2);
    open.engine.iter_mut().for_each(|e| e.closing_pa = None);
    closes(&fire::settle(&open, bar(4.0)).expect("a balance"));
}

#[test]
fn half_and_twice_the_slices_of_the_tubes_agree() {
    let state = fire::settle(&plant(2.2), bar(4.0)).expect("a balance");
    let stream = tubes::Stream {
        gas_kg_s: state.pass.gas_kg_s,
        inlet_k: state.pass.firing.hottest_k(),
        wall_k: state.water.wall_k,
        pressure_pa: state.inputs.site.atmosphere_pa,
    };
    let bank = state.inputs.firing.tubes().expect("tubes");
    let heat = |slices| {
        tubes::march_in(bank, &stream, &state.burning.gas, slices)
            .expect("a march")
            .heat_w
    };
    let fine = heat(8 * tubes::SLICES);
    converges(|slices| heat(slices) / fine - 1.0, tubes::SLICES);
}

/// At the slices used the error is below a thousandth, and it more than halves when the
/// slices are halved in length.
fn converges(error: impl Fn(usize) -> f64, slices: usize) {
    let [coarse, used, finer] = [slices / 2, slices, 2 * slices].map(|n| error(n).abs());
    assert!(used < 1e-3, "{used}");
    assert!(
        coarse > 2.0 * used && used > 2.0 * finer,
        "{coarse} {used} {finer}"
    );
}

#[test]
fn half_and_twice_the_slices_of_the_coil_agree() {
    let state = fire::settle(&plant(2.2), bar(4.0)).expect("a balance");
    let coil = Dryer {
        place: steaming::CoilPlace::Smokebox,
        bore_m: 3e-3,
        outside_m: 4e-3,
        length_m: 4.0,
        coil_m: 0.04,
        gas_area_m2: 8e-4,
    };
    let meeting = dryer::Meeting {
        steam_kg_s: 2e-4,
        steam_pa: state.water.boiler_pa,
        inlet_j_kg: state.water.steam_j_kg,
        gas_kg_s: state.pass.gas_kg_s,
        gas_k: state.pass.firing.behind_k(),
        gas: &state.burning.gas,
    };
    let settled = |slices| dryer::settle_in(&coil, &meeting, slices).expect("a coil");
    let fine = settled(8 * dryer::SLICES);
    assert!(fine.drying_m < coil.length_m, "the case must superheat");
    converges(
        |slices| settled(slices).heat_w / fine.heat_w - 1.0,
        dryer::SLICES,
    );
}

prop_compose! {
    fn any_plant()(
        nozzle in 1.0..5.0_f64,
        lump in 1e-3..2e-2_f64,
        voidage in 0.36..0.55_f64,
        depth in 1e-2..8e-2_f64,
        tubes in 3.0..40.0_f64,
        bore in 3e-3..2e-2_f64,
        length in 5e-2..0.5_f64,
        choke in 8e-3..2.5e-2_f64,
        missing in 0.0..1.2_f64,
        mixing in 0.2..1.0_f64,
        closing in any::<bool>(),
    ) -> Inputs {
        let mut inputs = plant(nozzle);
        let fired = bed(&mut inputs);
        fired.bed.packing.lump_m = lump;
        fired.bed.packing.voidage = voidage;
        fired.bed.depth_m = depth;
        fired.tubes.count = tubes;
        fired.tubes.bore_m = bore;
        fired.tubes.length_m = length;
        inputs.chimney.choke_m = choke;
        inputs.chimney.top_m = choke;
        inputs.blast.iter_mut().for_each(|b| b.mixing = mixing);
        inputs.engine.iter_mut().for_each(|e| {
            e.missing = Missing::Measured(missing);
            e.closing_pa = closing.then_some(1.15e5);
        });
        inputs
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    #[test]
    fn every_state_balances_and_is_positive_or_is_refused(
        inputs in any_plant(),
        gauge in 0.5..8.0_f64,
    ) {
        if let Ok(state) = fire::settle(&inputs, bar(gauge)) {
            closes(&state);
            positive(&state);
        }
    }
}
