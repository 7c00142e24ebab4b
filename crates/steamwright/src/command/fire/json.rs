//! The account of a fire in JSON, as `docs/json.md` promises it.

use design::{Account, NoAccount};
use serde_json::{Value, json};
use steaming::{Above, Holding};

use crate::command::page::working;

/// The whole account, every quantity in SI.
pub(super) fn tell(account: &Account) -> Value {
    let s = &account.state;
    let told: Vec<Value> = account
        .told()
        .into_iter()
        .map(|told| json!({ "head": told.head, "lines": told.lines }))
        .collect();
    json!({
        "gauge_pa": s.water.gauge_pa,
        "steaming_ratio": s.steaming_ratio(),
        "evaporation_kg_s": s.evaporation_kg_s,
        "demand_kg_s": s.demand_kg_s,
        "fuel_kg_s": s.pass.fuel_kg_s,
        "air_kg_s": s.pass.air_kg_s,
        "efficiency": s.efficiency,
        "wall_k": s.water.wall_k,
        "leaving_m_s": s.leaving_m_s,
        "heat": heat(account),
        "gas": gas(account),
        "draught": draught(account),
        "dew_k": account.dew.map(|d| d.dew_k),
        "spark_m": account.spark_m,
        "lasting": lasting(account),
        "holding": account.greatest.as_ref().map(holding),
        "flame": account.flame.as_ref().map(super::flame_json::tell),
        "beside": beside(account),
        "told": told,
        "working": working(&account.working),
    })
}

/// The gas fire of a boiler that has one besides.
pub(super) fn on_gas(account: Option<&Result<Account, NoAccount>>) -> Value {
    match account {
        None => Value::Null,
        Some(Ok(account)) => tell(account),
        Some(Err(why)) => json!({ "without_balance": why.to_string() }),
    }
}

fn heat(account: &Account) -> Value {
    let ways: Vec<Value> = account
        .heat
        .shares()
        .iter()
        .map(|s| json!({ "what": s.what, "heat_w": s.heat_w, "share": s.share }))
        .collect();
    json!({
        "brought_w": account.heat.brought_w(),
        "ways": ways,
        "residual": account.heat.residual(),
    })
}

fn gas(account: &Account) -> Vec<Value> {
    account
        .path
        .iter()
        .map(|p| json!({ "place": p.place, "gas_k": p.gas_k, "speed_m_s": p.speed_m_s }))
        .collect()
}

fn draught(account: &Account) -> Value {
    let spent: Vec<Value> = account
        .draught
        .spent
        .iter()
        .map(|s| json!({ "place": s.place, "pa": s.pa }))
        .collect();
    json!({
        "spent": spent,
        "jets_pa": account.draught.jets_pa,
        "column_pa": account.draught.column_pa,
    })
}

fn lasting(account: &Account) -> Value {
    account.uses.as_ref().map_or(Value::Null, |uses| {
        json!({
            "bed_kg": uses.bed_kg,
            "bed_life_s": uses.bed_life_s,
            "water_kg": uses.water_kg,
            "without_feed_s": uses.without_feed_s,
        })
    })
}

fn holding(holding: &Holding) -> Value {
    match holding {
        Holding::UpTo(held) => json!({
            "speed_share": held.speed_share,
            "steam_kg_s": held.steam_kg_s,
            "bound": match held.above {
                Above::Demand => "demand",
                Above::NoBalance => "no balance",
            },
        }),
        Holding::Beyond => json!({ "bound": "none" }),
        Holding::Nothing => json!({ "bound": "nothing held" }),
        Holding::Plain(kg_s) => json!({ "steam_kg_s": kg_s, "bound": "no engine" }),
    }
}

fn beside(account: &Account) -> Vec<Value> {
    account
        .beside
        .iter()
        .map(|b| {
            json!({
                "what": b.what,
                "least": b.least,
                "most": b.most,
                "here": b.here,
                "unit": b.unit.symbol,
                "says": b.says,
            })
        })
        .collect()
}
