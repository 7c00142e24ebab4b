//! Cards of the backward equations, as published: unpolished.

use super::domain::{BACKWARD_K, Fault, in_region1, in_region2, refused};
use crate::sources::IAPWS_R7_97_2012;
use crate::steam::{backward_ph, backward_ps};
use reckoning::quantity::{KELVIN, KJ_PER_KG, KJ_PER_KG_K, MPA_ABSOLUTE, Unit};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, Symbol, symbol};

const T: Symbol = symbol("T", &KELVIN, "temperature");
const P: Symbol = symbol("p", &MPA_ABSOLUTE, "absolute pressure");
const PH: &[Symbol] = &[P, symbol("h", &KJ_PER_KG, "specific enthalpy")];
const PS: &[Symbol] = &[P, symbol("s", &KJ_PER_KG_K, "specific entropy")];

/// A backward equation of one part of one region.
struct Backward {
    id: &'static str,
    /// The second property: its symbol and unit.
    second: (&'static str, &'static Unit),
    equation: fn(f64, f64) -> f64,
    /// Whether the part holds these inputs, in the units of the card.
    part: fn(f64, f64) -> bool,
    region: fn(f64, f64, f64) -> Result<(), Fault>,
}

impl Backward {
    /// The temperature, once the point that it gives has been seen to lie in the region.
    fn eval(&self, v: &[f64]) -> Result<f64, Refused> {
        let (p_mpa, second) = (v[0], v[1]);
        let (symbol, unit) = self.second;
        if !(self.part)(p_mpa, second) {
            let why = "this lies in another part of the region";
            return Err(refused(self.id, "p", p_mpa, why));
        }
        let t_k = (self.equation)(MPA_ABSOLUTE.to_si(p_mpa), unit.to_si(second));
        (self.region)(p_mpa, t_k, BACKWARD_K).map_err(|(fault, why)| match fault {
            "p" => refused(self.id, "p", p_mpa, why),
            _ => refused(self.id, symbol, second, why),
        })?;
        Ok(t_k)
    }
}

/// Pressure, MPa, up to which steam is of part a.
const A_MAX_MPA: f64 = 4.0;
/// Entropy, kJ/(kg K), between parts b and c.
const B_C_ENTROPY: f64 = 5.85;

fn border_mpa(h_kj_kg: f64) -> f64 {
    MPA_ABSOLUTE.from_si(backward_ph::border_b_c(KJ_PER_KG.to_si(h_kj_kg)))
}

/// Temperature of liquid water from its enthalpy.
pub static REGION1_T_PH: Card = Card {
    id: "steam.region1.t-ph",
    law: Law::Words("T = sum n pi^I (eta + 1)^J"),
    gives: T,
    takes: PH,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 11, table 6",
    },
    eval: |v| {
        Backward {
            id: "steam.region1.t-ph",
            second: ("h", &KJ_PER_KG),
            equation: backward_ph::liquid,
            part: |_, _| true,
            region: in_region1,
        }
        .eval(v)
    },
};

/// Temperature of steam up to 4 MPa from its enthalpy.
pub static REGION2A_T_PH: Card = Card {
    id: "steam.region2a.t-ph",
    law: Law::Words("T = sum n pi^I (eta - 2.1)^J"),
    gives: T,
    takes: PH,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 22, table 20",
    },
    eval: |v| {
        Backward {
            id: "steam.region2a.t-ph",
            second: ("h", &KJ_PER_KG),
            equation: backward_ph::steam_a,
            part: |p, _| p <= A_MAX_MPA,
            region: in_region2,
        }
        .eval(v)
    },
};

/// Temperature of steam above 4 MPa, part b, from its enthalpy.
pub static REGION2B_T_PH: Card = Card {
    id: "steam.region2b.t-ph",
    law: Law::Words("T = sum n (pi - 2)^I (eta - 2.6)^J"),
    gives: T,
    takes: PH,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 23, table 21",
    },
    eval: |v| {
        Backward {
            id: "steam.region2b.t-ph",
            second: ("h", &KJ_PER_KG),
            equation: backward_ph::steam_b,
            part: |p, h| p > A_MAX_MPA && p <= border_mpa(h),
            region: in_region2,
        }
        .eval(v)
    },
};

/// Temperature of steam above 4 MPa, part c, from its enthalpy.
pub static REGION2C_T_PH: Card = Card {
    id: "steam.region2c.t-ph",
    law: Law::Words("T = sum n (pi + 25)^I (eta - 1.8)^J"),
    gives: T,
    takes: PH,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 24, table 22",
    },
    eval: |v| {
        Backward {
            id: "steam.region2c.t-ph",
            second: ("h", &KJ_PER_KG),
            equation: backward_ph::steam_c,
            part: |p, h| p > A_MAX_MPA && p >= border_mpa(h),
            region: in_region2,
        }
        .eval(v)
    },
};

/// Temperature of liquid water from its entropy.
pub static REGION1_T_PS: Card = Card {
    id: "steam.region1.t-ps",
    law: Law::Words("T = sum n pi^I (sigma + 2)^J"),
    gives: T,
    takes: PS,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 13, table 8",
    },
    eval: |v| {
        Backward {
            id: "steam.region1.t-ps",
            second: ("s", &KJ_PER_KG_K),
            equation: backward_ps::liquid,
            part: |_, _| true,
            region: in_region1,
        }
        .eval(v)
    },
};

/// Temperature of steam up to 4 MPa from its entropy.
pub static REGION2A_T_PS: Card = Card {
    id: "steam.region2a.t-ps",
    law: Law::Words("T = sum n pi^I (sigma - 2)^J"),
    gives: T,
    takes: PS,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 25, table 25",
    },
    eval: |v| {
        Backward {
            id: "steam.region2a.t-ps",
            second: ("s", &KJ_PER_KG_K),
            equation: backward_ps::steam_a,
            part: |p, _| p <= A_MAX_MPA,
            region: in_region2,
        }
        .eval(v)
    },
};

/// Temperature of steam above 4 MPa, part b, from its entropy.
pub static REGION2B_T_PS: Card = Card {
    id: "steam.region2b.t-ps",
    law: Law::Words("T = sum n pi^I (10 - sigma)^J"),
    gives: T,
    takes: PS,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 26, table 26",
    },
    eval: |v| {
        Backward {
            id: "steam.region2b.t-ps",
            second: ("s", &KJ_PER_KG_K),
            equation: backward_ps::steam_b,
            part: |p, s| p > A_MAX_MPA && s >= B_C_ENTROPY,
            region: in_region2,
        }
        .eval(v)
    },
};

/// Temperature of steam above 4 MPa, part c, from its entropy.
pub static REGION2C_T_PS: Card = Card {
    id: "steam.region2c.t-ps",
    law: Law::Words("T = sum n pi^I (2 - sigma)^J"),
    gives: T,
    takes: PS,
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 27, table 27",
    },
    eval: |v| {
        Backward {
            id: "steam.region2c.t-ps",
            second: ("s", &KJ_PER_KG_K),
            equation: backward_ps::steam_c,
            part: |p, s| p > A_MAX_MPA && s <= B_C_ENTROPY,
            region: in_region2,
        }
        .eval(v)
    },
};

/// Pressure on the border between parts b and c of region 2.
pub static REGION2_BORDER_B_C: Card = Card {
    id: "steam.region2.border-b-c",
    law: Law::Closed("p = 905.84278514723 - 0.67955786399241 * h + 1.2809002730136e-4 * h^2"),
    gives: P,
    takes: &[symbol("h", &KJ_PER_KG, "specific enthalpy")],
    limits: &[Limit::within("p", 6.54, 100.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 20, table 19",
    },
    eval: |v| Ok(border_mpa(v[0])),
};
