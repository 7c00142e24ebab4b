//! The independent calculation GF-1: a propane burner in a level flue of 38 mm with eight cross
//! tubes, invented for it. Its assumptions are listed here as it lists them.

use formulas::heat::box_beam;
use formulas::spirit::Spirit;
use formulas::supply::Lpg;
use reckoning::quantity::{Absolute, BAR_GAUGE, CELSIUS, MM, MM2, Quantity};
use steaming::burner::{
    Burner, Flame, FuelGas, GasJet, Mouth, PortShape, Ports, Source, Throat, ThroatShape, Wicks,
};
use steaming::flue::{CrossTubes, Flue, Lie};
use steaming::{
    Beyond, Boiler, Chimney, ExhaustWater, Firing, FlameBox, FlameInFirebox, FlameInFlue, Inputs,
    Site, Tubes, air_enthalpy,
};

pub(crate) fn mm(x: f64) -> f64 {
    MM.to_si(x)
}

/// Propane of this temperature, °C.
pub(crate) fn propane(celsius: f64) -> FuelGas {
    let liquid = Lpg::new([1.0, 0.0, 0.0]).expect("a fuel of the tables");
    FuelGas::over(&liquid, CELSIUS.to_si(celsius)).expect("a temperature of the tables")
}

/// A gauge pressure before the jet in bar, as absolute pressure in Pa.
pub(crate) fn supply(bar: f64) -> f64 {
    BAR_GAUGE.to_si(bar) + Absolute::standard_atmosphere().si()
}

pub(crate) fn burner() -> Burner {
    Burner {
        gas: propane(15.0),
        jet: GasJet {
            bore_m: mm(0.175),
            coefficient: 0.85,
            supply_pa: supply(1.5),
        },
        throat: Throat {
            bore_m: mm(7.0),
            shape: ThroatShape::Parallel,
            momentum_share: 0.9,
            momentum_factor: 1.05,
            friction_heads: 0.35,
            mixture_k: 323.15,
        },
        holes_m2: 4.0 * std::f64::consts::FRAC_PI_4 * mm(2.2) * mm(2.2),
        holes_coefficient: 0.62,
        ports: Ports {
            count: 24.0,
            shape: PortShape::Slot {
                width_m: mm(0.8),
                length_m: mm(10.0),
            },
            coefficient: 0.70,
        },
        outside_m: mm(12.0),
    }
}

pub(crate) fn flue() -> Flue {
    Flue {
        bore_m: mm(38.0),
        length_m: mm(200.0),
        lie: Lie::Level,
        wall_emissivity: 0.8,
        cross: Some(CrossTubes {
            count: 8,
            outside_m: mm(6.0),
            first_m: mm(90.0),
            spacing_m: mm(14.5),
            row_factor: 1.0,
            stirring: 1.0,
        }),
        exit_heads: 1.0,
        beyond: Beyond::AS_PRINTED,
    }
}

/// The plant.
pub(crate) fn gas_plant() -> Inputs {
    let air_k = CELSIUS.to_si(15.0);
    Inputs {
        site: Site {
            atmosphere_pa: Absolute::standard_atmosphere().si(),
            air_k,
            air_j_kg: air_enthalpy(air_k),
            feed_k: air_k,
        },
        boiler: Boiler {
            dryness: 0.97,
            wall_rise_k: 0.0,
            shell_loss_w: 20.0,
            water_surface_m2: 1e-2,
            steam_space_m: 30e-3,
        },
        engine: None,
        plain: None,
        firing: Firing::Flue(FlameInFlue {
            flame: Flame {
                source: Source::Burner(burner()),
                mouth: Mouth::Open {
                    area_m2: MM2.to_si(400.0),
                    coefficient: 0.6,
                },
                ported_m: mm(72.0),
                mixing_m: mm(30.0),
                burnt_share: 0.98,
                soot: 0.0,
            },
            flue: flue(),
        }),
        chimney: Chimney {
            height_m: mm(150.0),
            choke_m: mm(35.0),
            top_m: mm(35.0),
            parallel_m: mm(150.0),
            inlet_heads: 0.5,
            friction_heads: 0.0,
            diffuser_share: 0.0,
            momentum_factor: 1.0,
        },
        blast: None,
        exhaust_water: ExhaustWater::TakenOut,
        blower: None,
        dryer: None,
        leak: None,
        extra_loss_pa: 0.0,
    }
}

/// Four wicks of methylated spirit in the same flue; invented for these tests.
pub(crate) fn spirit_plant() -> Inputs {
    let mut inputs = gas_plant();
    let spirit = Spirit::new([0.90, 0.05, 0.05], 1.013_25).expect("a spirit of the tables");
    let flame = &mut fired(&mut inputs).flame;
    flame.source = Source::Wicks(Wicks {
        spirit,
        feed_k: CELSIUS.to_si(20.0),
        count: 4.0,
        diameter_m: mm(10.0),
        exposed_m: mm(5.0),
        side_share: 0.6,
        rate_factor: 1.0,
    });
    flame.mixing_m = mm(32.0);
    flame.soot = 0.04;
    inputs
}

/// The burner in the firebox of a vertical boiler, of 60 mm bore and 60 mm height with 14 tubes of
/// 10 mm by 120 mm, whose grate was taken out; invented for these tests.
pub(crate) fn in_firebox() -> Inputs {
    let mut inputs = gas_plant();
    let flame = fired(&mut inputs).flame;
    let (bore, height) = (mm(60.0), mm(60.0));
    let crown = std::f64::consts::FRAC_PI_4 * bore * bore;
    let side = std::f64::consts::PI * bore * height;
    inputs.firing = Firing::Firebox(FlameInFirebox {
        flame,
        firebox: FlameBox {
            area_m2: side + crown,
            beam_m: box_beam(crown * height, side + 2.0 * crown),
            wall_emissivity: 0.8,
            convection: 10.0,
            gap_m: mm(40.0),
        },
        tubes: Tubes {
            bore_m: mm(10.0),
            length_m: mm(120.0),
            count: 14.0,
            wall_emissivity: 0.8,
            entrance_heads: 0.5,
            exit_heads: 1.0,
            beyond: Beyond::AS_PRINTED,
        },
    });
    inputs
}

/// The flame in its flue, to be changed.
pub(crate) fn fired(inputs: &mut Inputs) -> &mut FlameInFlue {
    inputs.firing.flue_mut().expect("a flue")
}
