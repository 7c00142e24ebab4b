//! Steam expanding without loss and in equilibrium through a nozzle: greatest mass flux, the
//! pressure where the flow chokes, and the speed after expansion to the back pressure.
//!
//! Left out: vapour that has not condensed yet (it passes a few percent more), and friction,
//! which the coefficient of the nozzle carries.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{BAR_ABSOLUTE, KG_PER_M2_S, KG_PER_M3, KJ_PER_KG, M_PER_S};
use reckoning::{Card, Cite, Refused, Symbol, symbol};

use crate::sources::DERIVED;
use crate::steam::{OutOfRange, at_ph, at_ps};

/// What an expansion without loss comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expansion {
    /// Greatest mass flux, kg/(m² s).
    pub flux_kg_m2_s: f64,
    /// Pressure at the throat, Pa absolute: the back pressure where the flow does not choke.
    pub throat_pa: f64,
    /// Speed when expanded to the back pressure, m/s.
    pub speed_m_s: f64,
    /// Density when expanded to the back pressure, kg/m³.
    pub density_kg_m3: f64,
}

/// Expands steam of `p_0` (Pa absolute) and `h_0` (J/kg) to `p_b` (Pa absolute).
///
/// # Errors
/// [`OutOfRange`] outside the range of the steam equations.
pub fn expansion(p_0: f64, h_0: f64, p_b: f64) -> Result<Expansion, OutOfRange> {
    let s = at_ph(p_0, h_0)?.s;
    let stream = |p: f64| -> Result<(f64, f64), OutOfRange> {
        let end = at_ps(p, s)?;
        let u = (2.0 * (h_0 - end.h)).sqrt();
        Ok((end.rho * u, u))
    };
    let (flux_back, speed) = stream(p_b)?;
    let density = at_ps(p_b, s)?.rho;
    let (throat, flux) = greatest(|p| Ok(stream(p)?.0), p_b, p_0)?;
    let chokes = flux > flux_back;
    Ok(Expansion {
        flux_kg_m2_s: if chokes { flux } else { flux_back },
        throat_pa: if chokes { throat } else { p_b },
        speed_m_s: speed,
        density_kg_m3: density,
    })
}

/// Place and value of the one maximum of `f` between `low` and `high`, by golden section.
fn greatest(
    f: impl Fn(f64) -> Result<f64, OutOfRange>,
    low: f64,
    high: f64,
) -> Result<(f64, f64), OutOfRange> {
    let share = (5.0_f64.sqrt() - 1.0) / 2.0;
    let (mut a, mut b) = (low, high);
    let (mut left, mut right) = (b - share * (b - a), a + share * (b - a));
    let (mut at_left, mut at_right) = (f(left)?, f(right)?);
    while b - a > 1e-6 * high {
        if at_left > at_right {
            (b, right, at_right) = (right, left, at_left);
            left = b - share * (b - a);
            at_left = f(left)?;
        } else {
            (a, left, at_left) = (left, right, at_right);
            right = a + share * (b - a);
            at_right = f(right)?;
        }
    }
    let middle = f64::midpoint(a, b);
    Ok((middle, f(middle)?))
}

const P_0: Symbol = symbol("p_0", &BAR_ABSOLUTE, "pressure before the nozzle");
const H_0: Symbol = symbol("h_0", &KJ_PER_KG, "enthalpy before the nozzle");
const P_B: Symbol = symbol("p_b", &BAR_ABSOLUTE, "pressure behind the nozzle");
const TAKES: &[Symbol] = &[P_0, H_0, P_B];
const LIMITS: &[Limit] = &[Limit::within("p_b / p_0", 0.01, 1.0)];
const CITE: Cite = Cite {
    source: &DERIVED,
    place: "isentropic flow of steam in equilibrium",
};

fn worked(card: &'static str, v: &[f64]) -> Result<Expansion, Refused> {
    let refuse = |symbol, value, why| Refused {
        card,
        symbol,
        value,
        why,
    };
    if v[0].is_nan() || v[2].is_nan() || v[2] > v[0] {
        return Err(refuse("p_b", v[2], "the pressure behind is the higher one"));
    }
    let (p_0, h_0, p_b) = (
        BAR_ABSOLUTE.to_si(v[0]),
        KJ_PER_KG.to_si(v[1]),
        BAR_ABSOLUTE.to_si(v[2]),
    );
    expansion(p_0, h_0, p_b)
        .map_err(|_| refuse("h_0", v[1], "outside the range of the steam equations"))
}

/// Greatest mass flux of steam through a nozzle.
pub static STEAM_FLUX: Card = Card {
    id: "draught.steam-flux",
    law: Law::Words(
        "the greatest of rho sqrt(2 (h_0 - h)) at the entropy before the nozzle, over all \
         pressures between p_b and p_0",
    ),
    gives: symbol("G", &KG_PER_M2_S, "mass flux of steam in the throat"),
    takes: TAKES,
    limits: LIMITS,
    spread: Spread::Percent(3.0),
    cite: CITE,
    eval: |v| Ok(worked("draught.steam-flux", v)?.flux_kg_m2_s),
};

/// Pressure in the throat of a steam nozzle.
pub static STEAM_THROAT_PRESSURE: Card = Card {
    id: "draught.steam-throat-pressure",
    law: Law::Words("the pressure between p_b and p_0 at which the mass flux is greatest"),
    gives: symbol("p_t", &BAR_ABSOLUTE, "pressure in the throat"),
    takes: TAKES,
    limits: LIMITS,
    spread: Spread::Percent(3.0),
    cite: CITE,
    eval: |v| Ok(BAR_ABSOLUTE.from_si(worked("draught.steam-throat-pressure", v)?.throat_pa)),
};

/// Speed of steam after expansion to the pressure behind the nozzle.
pub static STEAM_SPEED: Card = Card {
    id: "draught.steam-speed",
    law: Law::Words("sqrt(2 (h_0 - h)) at p_b and the entropy before the nozzle"),
    gives: symbol("u_s", &M_PER_S, "speed of the steam jet"),
    takes: TAKES,
    limits: LIMITS,
    spread: Spread::Percent(3.0),
    cite: CITE,
    eval: |v| Ok(worked("draught.steam-speed", v)?.speed_m_s),
};

/// Density of steam after expansion to the pressure behind the nozzle.
pub static STEAM_JET_DENSITY: Card = Card {
    id: "draught.steam-jet-density",
    law: Law::Words("the density at p_b and the entropy before the nozzle"),
    gives: symbol("rho_s", &KG_PER_M3, "density of the expanded steam"),
    takes: TAKES,
    limits: LIMITS,
    spread: Spread::Percent(3.0),
    cite: CITE,
    eval: |v| Ok(worked("draught.steam-jet-density", v)?.density_kg_m3),
};
