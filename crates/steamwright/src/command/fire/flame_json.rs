//! The account of a flame in JSON.

use design::FlameAccount;
use serde_json::{Value, json};
use steaming::burner::{BurnerState, WickState};
use steaming::{TankAsked, TankEnds};

/// The flame, every quantity in SI.
pub(super) fn tell(flame: &FlameAccount) -> Value {
    let s = &flame.signs;
    json!({
        "air": s.air_ratio,
        "primary_air": flame.primary_air,
        "burnt_at_first_tube": s.burnt_at_first,
        "burnt_at_end": s.burnt_at_end,
        "flame_m": s.flame_m,
        "gap_m": s.gap_m,
        "mixing_m": s.mixing_m,
        "best_throat_m": flame.best_throat_m,
        "burner": flame.burner.as_ref().map(burner),
        "wicks": flame.wicks.as_ref().map(wicks),
        "along": along(flame),
        "cross_tubes": cross_tubes(flame),
        "steam_jets": flame.over.map(|over| json!({
            "calm_pa": over.calm_pa,
            "added_pa": over.added_pa,
            "calm_air": over.calm_air,
            "air": over.air,
            "raise_m": over.raise_m,
            "opening_m2": over.opening_m2,
        })),
        "tank": flame.tank.as_ref().map(tank),
        "hottest_day": flame.hottest.as_ref().map(|day| json!({
            "gas": day.gas,
            "tank_k": day.tank_k,
            "pressure_pa": day.heat.pressure_pa,
            "heat_w": day.heat.heat_w,
            "to_water_w": day.heat.to_water_w,
        })),
    })
}

fn burner(b: &BurnerState) -> Value {
    json!({
        "gas_kg_s": b.jet.gas_kg_s,
        "jet_m_s": b.jet.speed_m_s,
        "push_pa": b.primary.push_pa,
        "holes_pa": b.primary.holes_pa,
        "mixing_pa": b.primary.mixing_pa,
        "ports_pa": b.primary.ports_pa,
        "port_m_s": b.ports.speed_m_s,
        "port_w_m2": b.ports.loading_w_m2,
        "gradient_per_s": b.ports.gradient_per_s,
        "blow_off_share": b.ports.blow_off_share,
    })
}

fn wicks(w: &WickState) -> Value {
    json!({ "fuel_kg_s": w.fuel_kg_s, "flame_m": w.flame_m })
}

fn along(flame: &FlameAccount) -> Vec<Value> {
    flame
        .along
        .iter()
        .map(|s| {
            json!({
                "place_m": s.place_m,
                "gas_k": s.gas_k,
                "speed_m_s": s.speed_m_s,
                "burnt": s.burnt,
                "wall_w_m2": s.wall_flux,
            })
        })
        .collect()
}

fn cross_tubes(flame: &FlameAccount) -> Vec<Value> {
    flame
        .tubes
        .iter()
        .map(|t| json!({ "place_m": t.place_m, "gas_k": t.gas_k, "heat_w": t.heat_w }))
        .collect()
}

fn tank(asked: &TankAsked) -> Value {
    match asked {
        TankAsked::Wanting(fields) => json!({ "wanting": fields }),
        TankAsked::Known { time, run_s, .. } => json!({
            "lasts_s": time.lasts_s,
            "worst_s": time.worst_s,
            "run_s": run_s,
            "jet_w": time.jet_w,
            "steady_w": time.steady_w,
            "ends": match time.ends {
                TankEnds::Empty => "empty",
                TankEnds::Cold => "too cold",
                TankEnds::Beyond => "not yet",
            },
        }),
    }
}
