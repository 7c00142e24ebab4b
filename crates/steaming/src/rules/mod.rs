//! The rules of steaming, applied to a settled sweep.
//!
//! Where numbers are assumed, a check takes the worse decile of its band, and is at best met on
//! the condition that what decides it is measured. A check whose value is met but whose worse
//! decile is not is unproved. So is every check while a law of the working is carried beyond its
//! published range, unless an assumption in the band carries that doubt.

mod carried;
mod checks;
mod flame;
mod flame_list;
mod list;
mod tank;
mod water;

pub use carried::{CARRIED, Carried};
pub use flame::{StrongestGas, carbon_monoxide, lives_on_jets, steam_jets, strongest_gas};
pub use flame_list::{
    AIR, BURNT_AT_END, BURNT_AT_TUBES, CARBON_MONOXIDE, CLEAR_OF_METAL, LIFT, LIGHT_BACK,
    STEAM_JETS, STRONGEST_GAS, TANK_LASTS,
};
pub use list::{
    BACK_PRESSURE, BED_LIFT, BURNING_RATE, COIL_LOSS, COMPRESSION, DISENGAGEMENT, ENGINE_HEAT,
    ENGINE_POWER, ENGINE_WORK, FEED_KEEPS_UP, HOLDS, PORT_SPEED, RULES, WATER_LASTS,
};
pub use tank::{TankAsked, TankEnds, TankTime, tank_lasts};
pub use water::water_findings;

use reckoning::finding::{Compared, compare};
use reckoning::quantity::show;
use reckoning::{Assumption, Condition, Finding, Origin, Rule, Verdict, Working};

use self::checks::{Asked, CHECKS, Check};
use self::flame::FLAME_CHECKS;
use crate::band::{Band, Draws};
use crate::fault::NotSettled;
use crate::state::FireState;
use crate::sweep::Sweep;

/// What the rules are applied to.
#[derive(Clone, Copy, Debug)]
pub struct Judging<'a> {
    /// The sweep; the working pressure is one of its points.
    pub sweep: &'a Sweep,
    /// Working pressure, Pa gauge.
    pub working_pa: f64,
    /// Pressure at which the valve lifts, Pa gauge.
    pub valve_pa: f64,
    /// The draws at the working pressure; `None` where nothing is assumed.
    pub draws: Option<&'a Draws>,
    /// The lines that the state rests on.
    pub working: &'a Working,
}

/// Applies every rule to the state at the working pressure. Met checks are kept; a rule whose
/// part the plant does not have is not raised.
#[must_use]
pub fn findings(judging: &Judging<'_>) -> Vec<Finding> {
    let Some(state) = judging.sweep.state_at(judging.working_pa) else {
        return unsettled(judging);
    };
    let found = checks()
        .filter_map(|check| judged(&check.asked(), state, judging))
        .collect();
    flame::completed(state, found)
}

/// Every comparison of a state, in the order in which they are told.
fn checks() -> impl Iterator<Item = &'static Check> {
    CHECKS.iter().chain(FLAME_CHECKS)
}

/// Without a state nothing can be said of any rule; the one that matters says so, and of a flame
/// that starves the one of its air.
fn unsettled(judging: &Judging<'_>) -> Vec<Finding> {
    let refusal = judging.sweep.refusal_at(judging.working_pa);
    let why = refusal.map_or_else(
        || "the working pressure was not asked of the sweep".to_owned(),
        ToString::to_string,
    );
    // A flame that starves is no want of knowledge: it is known not to hold.
    let starves = matches!(refusal, Some(NotSettled::NotEnoughAir(_)));
    let holds = Finding {
        rule: &HOLDS,
        set: "",
        verdict: if starves {
            Verdict::NotMet
        } else {
            Verdict::Unproved
        },
        tight: false,
        conditions: Vec::new(),
        place: "fire".to_owned(),
        says: format!("The fire has no balance at working pressure: {why}."),
        remedy: Some(if starves { AIR.remedy } else { HOLDS.remedy }.to_owned()),
        margin: None,
        weakest_origin: judging.working.weakest(),
        working: judging.working.clone(),
    };
    let air = starves.then(|| Finding {
        rule: &AIR,
        place: "burner".to_owned(),
        says: format!("The flame has {why}."),
        ..holds.clone()
    });
    std::iter::once(holds).chain(air).collect()
}

/// The margin of each check that the state can be asked, in the order of the list.
pub(crate) fn margins(state: &FireState) -> impl Iterator<Item = (&'static Rule, f64)> + '_ {
    checks().filter_map(|check| Some((check.rule, (check.margin)(state)?)))
}

fn judged(check: &Asked<'_>, state: &FireState, judging: &Judging<'_>) -> Option<Finding> {
    let margin = (check.margin)(state)?;
    let (value, limit) = ((check.value)(state)?, (check.limit)(state)?);
    let assumed = judging.draws.is_some_and(|d| !d.assumed.is_empty());
    let broken = carried::uncarried(judging.working, judging.draws);
    let beyond = !broken.is_empty();
    let band = judging
        .draws
        .filter(|d| !d.assumed.is_empty())
        .map(|d| d.band(check.margin));
    let compared = match &band {
        None => compare(margin, 1.0, check.wanted, false, beyond),
        Some(Err(_)) => compare(margin, 1.0, check.wanted, assumed, beyond || margin >= 1.0),
        Some(Ok(band)) => worst(margin, band, check.wanted, &broken),
    };
    let band = band.and_then(Result::ok);
    let met = matches!(compared.verdict, Verdict::Met | Verdict::MetOnCondition);
    let own: Origin = check.rule.cite.source.seen.into();
    Some(Finding {
        rule: check.rule,
        set: "",
        verdict: compared.verdict,
        tight: compared.tight,
        conditions: match (&band, compared.verdict) {
            (Some(band), Verdict::MetOnCondition) => conditions(band),
            _ => Vec::new(),
        },
        place: check.place.to_owned(),
        says: says(check, (value, limit), band.as_ref(), judging),
        remedy: (!met).then(|| remedy(check, state, compared.verdict, band.as_ref())),
        margin: Some(margin),
        weakest_origin: if assumed {
            Origin::Assumed
        } else {
            own.max(judging.working.weakest())
        },
        working: judging.working.clone(),
    })
}

/// The check at the worse decile: met there on condition, met only at the value unproved.
fn worst(margin: f64, band: &Band, wanted: f64, broken: &[String]) -> Compared {
    let fails_there = band.worse_decile().is_none_or(|low| low < 1.0);
    let unproved = !broken.is_empty() || (margin >= 1.0 && fails_there);
    compare(margin, 1.0, wanted, band.is_moved(), unproved)
}

/// Shares below this do not decide a check, and are not asked to be measured for it.
const DECIDES: f64 = 0.05;

/// What is to be measured: what decides, or where nothing alone does, what does most.
fn conditions(band: &Band) -> Vec<Condition> {
    let deciding = band.shares.iter().filter(|s| s.share >= DECIDES).count();
    band.shares
        .iter()
        .take(if deciding > 0 { deciding } else { 1 })
        .map(|s| {
            let a = s.entering.assumption;
            let unit = a.unit.symbol;
            if CARRIED.iter().any(|c| c.assumption == a.id) {
                return firing(a);
            }
            Condition {
                says: format!(
                    "{} measured between {} and {} {unit}",
                    a.meaning, a.low, a.high
                )
                .trim_end()
                .to_owned(),
                field: Some(a.field().to_owned()),
                bound: None,
            }
        })
        .collect()
}

/// A doubt about a law is not measured on a part; a firing shows it with all the rest.
fn firing(a: &Assumption) -> Condition {
    Condition {
        says: format!(
            "a firing makes the steam that was reckoned with: {}, between {} and {}",
            a.meaning, a.low, a.high
        ),
        field: None,
        bound: None,
    }
}

fn says(
    check: &Asked<'_>,
    (value, limit): (f64, f64),
    band: Option<&Band>,
    judging: &Judging<'_>,
) -> String {
    let number = |si: f64| show::figures(check.unit.from_si(si), 3);
    let mut text = format!(
        "{}: {} for {} {}",
        check.what,
        number(value),
        number(limit),
        check.unit.symbol
    )
    .trim_end()
    .to_owned();
    text.push_str(&band.map_or_else(String::new, spread));
    text.push('.');
    for breach in carried::uncarried(judging.working, judging.draws) {
        text.push_str(&format!(" A law is carried too far: {breach}."));
    }
    if std::ptr::eq(check.rule, &HOLDS)
        && let Some(outlook) = judging.sweep.outlook(judging.working_pa, judging.valve_pa)
    {
        text.push(' ');
        text.push_str(&outlook.sentence);
    }
    text
}

/// How far the margin may lie from its value.
fn spread(band: &Band) -> String {
    let mut text = format!(
        "; provided over required {} to {} for 8 of 10 of what may be true",
        show::figures(band.low, 3),
        show::figures(band.high, 3)
    );
    if band.without_balance > 0 {
        text.push_str(&format!(
            "; {} of {} points have no balance",
            band.without_balance,
            band.without_balance + band.found.len()
        ));
    }
    text
}

fn remedy(check: &Asked<'_>, state: &FireState, verdict: Verdict, band: Option<&Band>) -> String {
    let flame = state.pass.firing.flame().is_some();
    let remedy = if flame && std::ptr::eq(check.rule, &HOLDS) {
        MORE_OF_A_FLAME
    } else {
        check.rule.remedy
    };
    match (verdict, band.and_then(Band::dominant)) {
        (Verdict::Unproved, Some(share)) => format!(
            "measure {} ({}), which decides it most; or {remedy}",
            share.entering.assumption.meaning, share.entering.assumption.id
        ),
        _ => remedy.to_owned(),
    }
}

/// What makes more steam of a flame.
const MORE_OF_A_FLAME: &str = "a larger jet where the air allows it, more cross tubes, a better \
                               lagged shell, a slower engine";
