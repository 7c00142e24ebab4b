//! The independent calculation RL-1: a vertical boiler of 45 mm grate with an engine of
//! 20 x 20 mm, invented for it. Its assumptions are listed here as it lists them.

use formulas::bed::Packing;
use formulas::fuel::Composition;
use reckoning::quantity::{Absolute, BAR_GAUGE, CELSIUS, MM, Quantity, RPM};
use steaming::{
    Admission, Bed, BedFire, Beyond, Blast, Boiler, Chimney, Engine, ExhaustWater, Exhausts, Fire,
    FireAir, Firebox, Firing, Inputs, Load, Missing, Site, Tubes,
};

fn mm(x: f64) -> f64 {
    MM.to_si(x)
}

pub(crate) fn bar(x: f64) -> f64 {
    BAR_GAUGE.to_si(x)
}

/// Anthracite as fired: composition from memory, in the class of the published analyses.
const ANTHRACITE: Composition = Composition {
    carbon: 0.865,
    hydrogen: 0.032,
    oxygen: 0.022,
    nitrogen: 0.010,
    sulphur: 0.008,
    ash: 0.040,
    water: 0.023,
};

/// The plant with a blast nozzle of this bore in millimetres.
pub(crate) fn plant(nozzle_mm: f64) -> Inputs {
    let atmosphere_pa = Absolute::standard_atmosphere().si();
    let bore = mm(20.0);
    Inputs {
        site: Site {
            atmosphere_pa,
            air_k: CELSIUS.to_si(20.0),
            air_j_kg: 0.0,
            feed_k: CELSIUS.to_si(15.0),
        },
        boiler: Boiler {
            dryness: 0.97,
            wall_rise_k: 8.0,
            shell_loss_w: 60.0,
            water_surface_m2: 7e-3,
            steam_space_m: 60e-3,
        },
        engine: Some(Engine {
            cylinders: 1.0,
            strokes_per_turn: 2.0,
            bore_m: bore,
            stroke_m: mm(20.0),
            stroke_volume_m3: std::f64::consts::FRAC_PI_4 * bore * bore * mm(20.0),
            load: Load::Open {
                strokes_per_s: 2.0 * RPM.to_si(600.0),
                cut_off: 0.75,
            },
            clearance: 0.10,
            compression: 0.10,
            chest_share: 0.92,
            admission: Admission::Share(1.0),
            diagram_factor: 0.9,
            mechanical_efficiency: 0.65,
            missing: Missing::Measured(0.60),
            exhausts: Exhausts::Dryness(0.93),
            closing_pa: Some(1.15e5),
            puff_share: 0.6,
            pipe: None,
            pump: None,
        }),
        plain: None,
        firing: Firing::Bed(BedFire {
            fire: Fire {
                fuel: ANTHRACITE,
                heating_value_j_kg: 32.97e6,
                air: FireAir::ThroughBed { ratio: 1.5 },
                burnt_share: 0.88,
            },
            bed: Bed {
                grate_m2: std::f64::consts::FRAC_PI_4 * mm(45.0) * mm(45.0),
                packing: Packing {
                    voidage: 0.42,
                    sphericity: 0.7,
                    lump_m: mm(6.0),
                },
                depth_m: mm(30.0),
                lump_kg_m3: 1500.0,
                gas_k: 1150.0,
                grate_factor: 1.15,
                ash_factor: 1.0,
                door: None,
                viscosity_factor: 1.0,
            },
            firebox: Firebox {
                area_m2: 9.817e-3,
                emissivity: 0.75,
            },
            tubes: Tubes {
                bore_m: mm(9.5),
                length_m: mm(150.0),
                count: 12.0,
                wall_emissivity: 0.8,
                entrance_heads: 0.5,
                exit_heads: 1.0,
                beyond: Beyond::AS_PRINTED,
            },
        }),
        chimney: Chimney {
            height_m: 0.20,
            choke_m: mm(12.0),
            top_m: mm(12.0),
            parallel_m: 0.20,
            inlet_heads: 0.1,
            friction_heads: 0.18,
            diffuser_share: 0.0,
            momentum_factor: 1.02,
        },
        blast: Some(Blast {
            nozzle_m: mm(nozzle_mm),
            below_choke_m: mm(15.0),
            coefficient: 0.95,
            mixing: 0.45,
        }),
        exhaust_water: ExhaustWater::TakenOut,
        blower: None,
        dryer: None,
        leak: None,
        extra_loss_pa: 1.5,
    }
}
