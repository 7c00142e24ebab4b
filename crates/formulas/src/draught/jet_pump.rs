//! The jet pump of blast nozzle and chimney: steam and gas mix in a parallel choke, and the
//! momentum of the control volume gives the pressure that the smokebox may lie below the air.
//!
//! Left out: the sharing of one choke by jets that do not meet, which the mixing factor carries.

use reckoning::formula::{Law, Limit, Refused, Spread};
use reckoning::quantity::{
    J_PER_KG, J_PER_KG_K, KELVIN, KG_PER_M3, KG_PER_S, M, M_PER_S, M2, NEWTON, ONE, PA,
};
use reckoning::{Card, Cite, symbol};

use crate::sources::{COMMON_PRACTICE, DERIVED, ENTRAINMENT_1961};

/// Speed of the gas beside the nozzle as it enters the choke.
#[must_use]
pub fn gas_inlet_speed(m_g: f64, rho_g: f64, a_m: f64, a_n: f64) -> f64 {
    m_g / (rho_g * (a_m - a_n))
}

/// Card of [`gas_inlet_speed`].
pub static GAS_INLET_SPEED: Card = Card {
    id: "draught.gas-inlet-speed",
    law: Law::Closed("u_g = m_g / (rho_g * (A_m - A_n))"),
    gives: symbol("u_g", &M_PER_S, "speed of the gas as it enters the choke"),
    takes: &[
        symbol("m_g", &KG_PER_S, "gas"),
        symbol("rho_g", &KG_PER_M3, "density of the gas in the smokebox"),
        symbol("A_m", &M2, "area of the choke"),
        symbol("A_n", &M2, "bore area of the nozzles"),
    ],
    limits: &[Limit::at_most("A_n / A_m", 0.5)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "continuity",
    },
    eval: |v| Ok(gas_inlet_speed(v[0], v[1], v[2], v[3])),
};

/// What the mixed temperature follows from.
#[derive(Clone, Copy, Debug)]
pub struct Mixing {
    /// Steam, kg/s.
    pub m_s: f64,
    /// Specific heat of the steam, J/(kg K).
    pub c_s: f64,
    /// Temperature of dry steam before mixing, K.
    pub t_s: f64,
    /// Heat that the steam lacks of dry, J/kg; 0 in the dry form.
    pub dh: f64,
    /// Gas, kg/s.
    pub m_g: f64,
    /// Mean specific heat of the gas between mixture and smokebox, J/(kg K).
    pub c_g: f64,
    /// Temperature in the smokebox, K.
    pub t_g: f64,
}

/// Temperature of steam and gas once mixed. The wet form dries the steam's water in the gas.
#[must_use]
pub fn mixed_temperature(mix: &Mixing) -> f64 {
    let steam = mix.m_s * (mix.c_s * mix.t_s - mix.dh);
    let gas = mix.m_g * mix.c_g * mix.t_g;
    (steam + gas) / (mix.m_s * mix.c_s + mix.m_g * mix.c_g)
}

/// Card of [`mixed_temperature`].
pub static MIXED_TEMPERATURE: Card = Card {
    id: "draught.mixed-temperature",
    law: Law::Closed("T_m = (m_s * (c_s * T_s - dh) + m_g * c_g * T_g) / (m_s * c_s + m_g * c_g)"),
    gives: symbol("T_m", &KELVIN, "temperature of steam and gas once mixed"),
    takes: &[
        symbol("m_s", &KG_PER_S, "steam"),
        symbol("c_s", &J_PER_KG_K, "specific heat of the steam"),
        symbol("T_s", &KELVIN, "temperature of dry steam before mixing"),
        symbol("dh", &J_PER_KG, "heat that the steam lacks of dry"),
        symbol("m_g", &KG_PER_S, "gas"),
        symbol("c_g", &J_PER_KG_K, "mean specific heat of the gas"),
        symbol("T_g", &KELVIN, "temperature in the smokebox"),
    ],
    limits: &[Limit::at_least("T_m", 340.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "heat balance of the mixture",
    },
    eval: |v| {
        Ok(mixed_temperature(&Mixing {
            m_s: v[0],
            c_s: v[1],
            t_s: v[2],
            dh: v[3],
            m_g: v[4],
            c_g: v[5],
            t_g: v[6],
        }))
    },
};

/// Density of the mixture: the volumes of steam and gas add, each at the mixed temperature.
#[must_use]
pub fn mixed_density(m_s: f64, rho_v: f64, m_g: f64, rho_g: f64) -> f64 {
    (m_s + m_g) / (m_s / rho_v + m_g / rho_g)
}

/// Card of [`mixed_density`].
pub static MIXED_DENSITY: Card = Card {
    id: "draught.mixed-density",
    law: Law::Closed("rho_m = (m_s + m_g) / (m_s / rho_v + m_g / rho_g)"),
    gives: symbol("rho_m", &KG_PER_M3, "density of steam and gas once mixed"),
    takes: &[
        symbol("m_s", &KG_PER_S, "steam"),
        symbol(
            "rho_v",
            &KG_PER_M3,
            "density of vapour at the mixed temperature",
        ),
        symbol("m_g", &KG_PER_S, "gas"),
        symbol(
            "rho_g",
            &KG_PER_M3,
            "density of gas at the mixed temperature",
        ),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "volumes of ideal gases add",
    },
    eval: |v| Ok(mixed_density(v[0], v[1], v[2], v[3])),
};

/// Speed of the mixture in the choke.
#[must_use]
pub fn mixed_speed(m: f64, rho_m: f64, a_m: f64) -> f64 {
    m / (rho_m * a_m)
}

/// Card of [`mixed_speed`].
pub static MIXED_SPEED: Card = Card {
    id: "draught.mixed-speed",
    law: Law::Closed("u_m = M / (rho_m * A_m)"),
    gives: symbol("u_m", &M_PER_S, "speed of the mixture in the choke"),
    takes: &[
        symbol("M", &KG_PER_S, "steam and gas"),
        symbol("rho_m", &KG_PER_M3, "density of steam and gas once mixed"),
        symbol("A_m", &M2, "area of the choke"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "continuity",
    },
    eval: |v| Ok(mixed_speed(v[0], v[1], v[2])),
};

/// What the momentum balance of the choke follows from.
#[derive(Clone, Copy, Debug)]
pub struct JetPump {
    /// Momentum of all steam jets, N.
    pub j: f64,
    /// Gas, kg/s.
    pub m_g: f64,
    /// Speed of the gas as it enters, m/s.
    pub u_g: f64,
    /// Density of the gas as it enters, kg/m³.
    pub rho_g: f64,
    /// Density of the mixture, kg/m³.
    pub rho_m: f64,
    /// Speed of the mixture, m/s.
    pub u_m: f64,
    /// Area of the choke, m².
    pub a_m: f64,
    /// Area at the top of the taper, m²; equal to `a_m` in a parallel chimney.
    pub a_e: f64,
    /// Loss of the gas inlet, in velocity heads.
    pub k_in: f64,
    /// Wall friction of the mixing length, in velocity heads (f L/D).
    pub k_f: f64,
    /// Share of the velocity head that the taper gives back.
    pub eta_d: f64,
    /// Momentum of the mixture over that of an even stream.
    pub beta: f64,
}

/// Pressure that the jets raise between smokebox and open air, before the mixing factor.
#[must_use]
pub fn jet_pump(p: &JetPump) -> f64 {
    let m_u = p.rho_m * p.u_m * p.a_m * p.u_m;
    let momentum = (p.j + p.m_g * p.u_g - p.beta * m_u) / p.a_m;
    let inlet = (1.0 + p.k_in) * p.rho_g * p.u_g.powi(2) / 2.0;
    let head = p.rho_m * p.u_m.powi(2) / 2.0;
    momentum - inlet - p.k_f * head + p.eta_d * head * (1.0 - (p.a_m / p.a_e).powi(2))
}

/// Card of [`jet_pump`].
pub static JET_PUMP: Card = Card {
    id: "draught.jet-pump",
    law: Law::Closed(
        "F = (J + m_g * u_g - beta * rho_m * u_m^2 * A_m) / A_m; \
         q = rho_m * u_m^2 / 2; \
         dp = F - (1 + k_in) * rho_g * u_g^2 / 2 - k_f * q + eta_d * q * (1 - (A_m / A_e)^2)",
    ),
    gives: symbol("dp", &PA, "pressure that the jets raise"),
    takes: &[
        symbol("J", &NEWTON, "momentum of the steam jets"),
        symbol("m_g", &KG_PER_S, "gas"),
        symbol("u_g", &M_PER_S, "speed of the gas as it enters the choke"),
        symbol("rho_g", &KG_PER_M3, "density of the gas in the smokebox"),
        symbol("rho_m", &KG_PER_M3, "density of steam and gas once mixed"),
        symbol("u_m", &M_PER_S, "speed of the mixture in the choke"),
        symbol("A_m", &M2, "area of the choke"),
        symbol("A_e", &M2, "area at the top of the taper"),
        symbol("k_in", &ONE, "loss of the gas inlet"),
        symbol("k_f", &ONE, "wall friction of the mixing length"),
        symbol("eta_d", &ONE, "share of the velocity head given back"),
        symbol(
            "beta",
            &ONE,
            "momentum of the mixture over that of an even stream",
        ),
    ],
    limits: &[
        Limit::at_least("A_e / A_m", 1.0),
        Limit::within("eta_d", 0.0, 0.8),
    ],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "momentum of the control volume of a parallel choke",
    },
    eval: jet_pump_card,
};

fn jet_pump_card(v: &[f64]) -> Result<f64, Refused> {
    Ok(jet_pump(&JetPump {
        j: v[0],
        m_g: v[1],
        u_g: v[2],
        rho_g: v[3],
        rho_m: v[4],
        u_m: v[5],
        a_m: v[6],
        a_e: v[7],
        k_in: v[8],
        k_f: v[9],
        eta_d: v[10],
        beta: v[11],
    }))
}

/// Share of the gas that the jet can take in over the distance `x` from tip to the end of the
/// parallel part; 1 where the distance is enough.
#[must_use]
pub fn entrainment_share(x: f64, d: f64, rho_g: f64, rho_s: f64, w: f64) -> f64 {
    (0.32 * (x / d) * (rho_g / rho_s).sqrt() / (1.0 + w)).min(1.0)
}

/// Card of [`entrainment_share`].
pub static ENTRAINMENT_SHARE: Card = Card {
    id: "draught.entrainment-share",
    law: Law::Closed("s = min(1, 0.32 * (x / d) * sqrt(rho_g / rho_s) / (1 + w))"),
    gives: symbol("s", &ONE, "share of the mixing that the distance allows"),
    takes: &[
        symbol("x", &M, "distance from tip to the end of the parallel part"),
        symbol("d", &M, "bore of the nozzle"),
        symbol("rho_g", &KG_PER_M3, "density of the gas taken in"),
        symbol("rho_s", &KG_PER_M3, "density of the steam jet"),
        symbol("w", &ONE, "gas over steam by mass"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &ENTRAINMENT_1961,
        place: "law of entrainment of a round jet",
    },
    eval: |v| Ok(entrainment_share(v[0], v[1], v[2], v[3], v[4])),
};

/// Half of the angle by which a free jet widens, degrees.
const WIDENS_DEG: f64 = 12.0;

/// Share of a free jet's section that a choke catches, `x` above the tip; 1 where the jet is still
/// narrower than the choke.
#[must_use]
pub fn caught_share(d: f64, x: f64, d_c: f64) -> f64 {
    let jet = d + 2.0 * x * WIDENS_DEG.to_radians().tan();
    (d_c / jet).powi(2).min(1.0)
}

/// Card of [`caught_share`].
pub static CAUGHT_SHARE: Card = Card {
    id: "draught.caught-share",
    law: Law::Closed("s = min(1, (D_c / (d + 2 * x * sin(12 * pi / 180) / cos(12 * pi / 180)))^2)"),
    gives: symbol("s", &ONE, "share of the jet that the choke catches"),
    takes: &[
        symbol("d", &M, "bore of the nozzle"),
        symbol("x", &M, "distance from tip to choke"),
        symbol("D_c", &M, "bore of the choke"),
    ],
    limits: &[Limit::at_least("x", 0.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "a free jet widens by about 12 degrees to each side; what meets the wall is lost",
    },
    eval: |v| Ok(caught_share(v[0], v[1], v[2])),
};

/// Share of full mixing that a jet comes to: what the distance allows of what the choke catches.
#[must_use]
pub fn drawn_share(s_e: f64, s_c: f64) -> f64 {
    s_e * s_c
}

/// Card of [`drawn_share`].
pub static DRAWN_SHARE: Card = Card {
    id: "draught.drawn-share",
    law: Law::Closed("s = s_e * s_c"),
    gives: symbol("s", &ONE, "share of full mixing"),
    takes: &[
        symbol("s_e", &ONE, "share of the mixing that the distance allows"),
        symbol("s_c", &ONE, "share of the jet that the choke catches"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "what misses the choke mixes with nothing in it",
    },
    eval: |v| Ok(drawn_share(v[0], v[1])),
};

/// Mixing factor of two jets in one chimney, weighted by momentum; each entry is momentum,
/// mixing factor and share of the mixing. A jet that is shut off has no momentum.
#[must_use]
pub fn joint_mixing(first: [f64; 3], second: [f64; 3]) -> f64 {
    let [j_1, x_1, s_1] = first;
    let [j_2, x_2, s_2] = second;
    (j_1 * x_1 * s_1 + j_2 * x_2 * s_2) / (j_1 + j_2)
}

/// Card of [`joint_mixing`].
pub static JOINT_MIXING: Card = Card {
    id: "draught.joint-mixing",
    law: Law::Closed("x_m = (J_1 * x_1 * s_1 + J_2 * x_2 * s_2) / (J_1 + J_2)"),
    gives: symbol("x_m", &ONE, "mixing factor of all jets"),
    takes: &[
        symbol("J_1", &NEWTON, "momentum of the exhaust jet"),
        symbol("x_1", &ONE, "mixing factor of nozzle and chimney"),
        symbol(
            "s_1",
            &ONE,
            "share of the exhaust's mixing that the distance allows",
        ),
        symbol("J_2", &NEWTON, "momentum of the blower's jets"),
        symbol("x_2", &ONE, "mixing factor of blower and chimney"),
        symbol(
            "s_2",
            &ONE,
            "share of the blower's mixing that the distance allows",
        ),
    ],
    limits: &[Limit::within("x_m", 0.2, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "mean weighted by momentum",
    },
    eval: |v| Ok(joint_mixing([v[0], v[1], v[2]], [v[3], v[4], v[5]])),
};

/// What is left of the pressure after mixing and alignment: a share of what is raised, and the
/// whole of a loss, where the jets raise less than bell and wall take.
#[must_use]
pub fn net_blast(x_m: f64, dp: f64) -> f64 {
    (x_m * dp).min(dp)
}

/// Card of [`net_blast`].
pub static NET_BLAST: Card = Card {
    id: "draught.net-blast",
    law: Law::Closed("dp_n = min(dp, x_m * dp)"),
    gives: symbol("dp_n", &PA, "draught of the jets"),
    takes: &[
        symbol("x_m", &ONE, "mixing factor of all jets"),
        symbol("dp", &PA, "pressure that the jets raise"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the mixing factor",
    },
    eval: |v| Ok(net_blast(v[0], v[1])),
};
