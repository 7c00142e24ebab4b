//! Where each equation is published: the regions of R7-97(2012), figure 1.

use crate::steam::gibbs::Point;
use crate::steam::range::{T_MAX_K, T_REGION1_MAX_K, t_min_k};
use crate::steam::region2::border_to_region3;
use crate::steam::{metastable_at_pt, region1, region2, saturation};
use reckoning::Refused;
use reckoning::quantity::MPA_ABSOLUTE;

const P_ALL_MPA: f64 = 100.0;
/// Temperature, K, from which steam reaches 100 MPa without meeting region 3.
const T_REGION3_MAX_K: f64 = 863.15;
/// A state settled on the saturation line stands to either side of it by rounding.
const ROUNDING: f64 = 1e-9;
/// By how much, K, the backward equations may miss the border of their region; R7-97, table 23.
pub(super) const BACKWARD_K: f64 = 0.025;

/// A refusal, so that a domain needs to name the fault alone.
pub(super) fn refused(
    card: &'static str,
    symbol: &'static str,
    value: f64,
    why: &'static str,
) -> Refused {
    Refused {
        card,
        symbol,
        value,
        why,
    }
}

/// Liquid water at `p` (MPa) and `T` (K).
pub(super) fn water(card: &'static str, v: &[f64]) -> Result<Point, Refused> {
    let (p_mpa, t_k) = (v[0], v[1]);
    in_region1(p_mpa, t_k, 0.0).map_err(|(symbol, why)| {
        let value = if symbol == "p" { p_mpa } else { t_k };
        refused(card, symbol, value, why)
    })?;
    Ok(region1::point(MPA_ABSOLUTE.to_si(p_mpa), t_k))
}

/// Steam at `p` (MPa) and `T` (K).
pub(super) fn steam(card: &'static str, v: &[f64]) -> Result<Point, Refused> {
    let (p_mpa, t_k) = (v[0], v[1]);
    in_region2(p_mpa, t_k, 0.0).map_err(|(symbol, why)| {
        let value = if symbol == "p" { p_mpa } else { t_k };
        refused(card, symbol, value, why)
    })?;
    Ok(region2::point(MPA_ABSOLUTE.to_si(p_mpa), t_k))
}

/// Metastable vapour at `p` (MPa) and `T` (K).
pub(super) fn metastable(card: &'static str, v: &[f64]) -> Result<Point, Refused> {
    let (p_mpa, t_k) = (v[0], v[1]);
    metastable_at_pt(MPA_ABSOLUTE.to_si(p_mpa), t_k).map_err(|e| match e.what {
        "pressure" => refused(card, "p", p_mpa, "published for 611.213 Pa to 10 MPa"),
        "temperature" => refused(card, "T", t_k, "metastable vapour is colder than saturated"),
        _ => refused(card, "T", t_k, "published up to 5 % equilibrium moisture"),
    })
}

/// The symbol at fault and what is wrong with it.
pub(super) type Fault = (&'static str, &'static str);

/// Whether `p` (MPa) and `T` (K) lie in region 1, the temperature being known to `slack_k`.
pub(super) fn in_region1(p_mpa: f64, t_k: f64, slack_k: f64) -> Result<(), Fault> {
    if !(t_min_k() - slack_k <= t_k && t_k <= T_REGION1_MAX_K + slack_k) {
        return Err(("T", "region 1 is published for 0 to 350 °C"));
    }
    let p_pa = MPA_ABSOLUTE.to_si(p_mpa);
    let boiling = saturation::pressure(t_k - slack_k);
    if !(boiling * (1.0 - ROUNDING) <= p_pa && p_mpa <= P_ALL_MPA) {
        return Err((
            "p",
            "water is liquid from its saturation pressure up; published to 100 MPa",
        ));
    }
    Ok(())
}

/// Whether `p` (MPa) and `T` (K) lie in region 2, the temperature being known to `slack_k`.
pub(super) fn in_region2(p_mpa: f64, t_k: f64, slack_k: f64) -> Result<(), Fault> {
    if !(t_min_k() - slack_k <= t_k && t_k <= T_MAX_K + slack_k) {
        return Err(("T", "region 2 is published for 0 to 800 °C"));
    }
    let ceiling_mpa = if t_k <= T_REGION1_MAX_K {
        MPA_ABSOLUTE.from_si(saturation::pressure(t_k + slack_k))
    } else if t_k <= T_REGION3_MAX_K {
        MPA_ABSOLUTE.from_si(border_to_region3(t_k + slack_k))
    } else {
        P_ALL_MPA
    };
    if !(0.0 < p_mpa && p_mpa <= ceiling_mpa * (1.0 + ROUNDING)) {
        return Err((
            "p",
            "region 2 is published up to the saturation pressure, above 350 °C up to region 3",
        ));
    }
    Ok(())
}
