//! The answer to `stress` in JSON.

use design::second_opinion::SecondOpinion;
use serde_json::{Value, json};

/// The whole answer.
pub(super) fn told(opinion: &SecondOpinion, svg: &str, problems: &Value) -> Value {
    json!({
        "part": opinion.part,
        "what": opinion.what,
        "says": opinion.sentence,
        "decides": false,
        "pressure_mpa": opinion.pressure_mpa,
        "found": found(opinion),
        "greatest_intensity": {
            "r_mm": opinion.peak.r_mm,
            "z_mm": opinion.peak.z_mm,
            "meshes": opinion.peak.values,
            "at_a_sharp_corner": opinion.peak.grows(),
        },
        "beside": beside(opinion),
        "sizes": sizes(opinion),
        "metals": metals(opinion),
        "stands_for": opinion.stands_for,
        "leaves_out": opinion.leaves_out,
        "nodes": opinion.nodes,
        "balance": opinion.left_over,
        "problems": problems,
        "svg": svg,
    })
}

fn found(opinion: &SecondOpinion) -> Value {
    let told = opinion.told.iter();
    told.map(|told| {
        json!({
            "what": told.what,
            "unit": told.unit.words(),
            "value": told.value(),
            "meshes": told.values,
        })
    })
    .collect()
}

fn beside(opinion: &SecondOpinion) -> Value {
    let beside = opinion.beside.iter();
    beside
        .map(|b| {
            json!({
                "rule": b.rule,
                "set": b.set,
                "verdict": b.verdict.words(),
                "says": b.says,
            })
        })
        .collect()
}

fn sizes(opinion: &SecondOpinion) -> Value {
    let sizes = opinion.sizes.iter();
    sizes
        .map(|size| json!({ "what": size.what, "mm": size.mm }))
        .collect()
}

fn metals(opinion: &SecondOpinion) -> Value {
    let metals = opinion.metals.iter();
    metals
        .map(|metal| {
            json!({
                "of": metal.of,
                "metal": metal.metal,
                "modulus_mpa": metal.modulus_mpa,
                "poisson": metal.poisson,
                "because": metal.because,
            })
        })
        .collect()
}
