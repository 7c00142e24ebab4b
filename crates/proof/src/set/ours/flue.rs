//! A tube with pressure outside: firebox, centre flue, fire tube.

use super::shell::file_test_factor;
use super::whole::{temperature, wetted};
use super::{OURS, TEST_FACTOR, flue_opening, overlap};
use crate::external::{
    Allowed, COLLAPSE_AT_TEST, COLLAPSE_AT_WORK, External, Held, Limits, Tube, YIELD_AT_WORK,
};
use crate::external_solve::{greatest_ovality, least_wall};
use crate::input::{Diameter, Exposure, Flue};
use crate::metal::{OVALITY, chosen, lateral, modulus, proof_cold, proof_hot};
use crate::remedy::next_stock;
use crate::rules::FLUE_PRESSURE;
use crate::set::Asked;
use crate::set::served::Served;
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, at_bad_end, bar, down, file_sides, need, si, worse};
use formulas::vessel::{allow, furnace, lower_bound, oval, ring, shell_buckling};
use reckoning::assumption::Worse;
use reckoning::quantity::{INCH, Length, MM, MPA, MPA_GAUGE, ONE, Quantity, Ratio};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Bound, Finding, Origin, Ref};

/// Factors of the boiler codes for a flame-swept furnace of the better classes.
const FURNACE_ON_YIELD: f64 = 2.5;
const FURNACE_ON_COLLAPSE: f64 = 3.0;
/// Constants for copper furnaces with double straps.
const IBR_FIRST: f64 = 725.0;
const IBR_SECOND: f64 = 25.0;

/// Every check of a tube with pressure outside.
pub(super) fn checks(flue: &Flue, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![
        temperature(&flue.id, flue.metal_temperature.as_ref()),
        pressure(flue, asked),
    ];
    for opening in &flue.openings {
        found.extend(wetted(opening));
        found.push(flue_opening::check_opening(flue, opening, asked));
    }
    found.extend(overlap::of_flue(flue, asked));
    found
}

/// A tube as a proof takes it: the numbers and their lines.
pub(super) struct Taken {
    pub(super) served: Served,
    pub(super) tube: Tube,
    pub(super) wall: Wall,
    pub(super) lines: Lines,
    /// Whether nobody has measured the ovality.
    ovality_open: Option<String>,
}

/// Lines of what went in.
pub(super) struct Lines {
    pub(super) d_o: Ref,
    pub(super) t: Ref,
    pub(super) l: Ref,
    pub(super) delta: Ref,
    pub(super) e: Ref,
    pub(super) nu: Ref,
    pub(super) hot: Ref,
    pub(super) cold: Ref,
    pub(super) f: Ref,
}

impl Lines {
    /// The numbers of the lines.
    fn tube(&self, sum: &Sum, held: Held) -> Tube {
        Tube {
            held,
            d_o_mm: sum.value(self.d_o),
            wall_mm: sum.value(self.t),
            l_mm: sum.value(self.l),
            delta_mm: sum.value(self.delta),
            e_mpa: sum.value(self.e),
            nu: sum.value(self.nu),
            hot_mpa: sum.value(self.hot),
            cold_mpa: sum.value(self.cold),
            f_mpa: sum.value(self.f),
            test_factor: TEST_FACTOR,
        }
    }
}

/// Files what a tube brings.
pub(super) fn take(sum: &mut Sum, flue: &Flue, asked: &Asked<'_>) -> Result<Taken, Stop> {
    let served = OURS.serve(sum, asked, &flue.id, flue.metal_temperature.as_ref())?;
    let diameter = need("the diameter", &flue.id, flue.diameter.as_ref())?;
    let wall = Wall::of(need("the wall", &flue.id, flue.wall.as_ref())?);
    let length = need("the length", &flue.id, flue.length.as_ref())?;
    let t = wall.file(sum, "t", "least wall")?;
    let d_o = file_sides(sum, diameter, t)?.outside;
    let (delta, ovality_open) = file_ovality(sum, flue, d_o)?;
    let hot = proof_hot(flue.metal, served.metal)?;
    let cold = proof_cold(flue.metal)?;
    let modulus = modulus(flue.metal)?;
    let held = match diameter {
        Diameter::Outside(_) => Held::Outside,
        Diameter::Inside(_) => Held::Bore,
    };
    let lines = Lines {
        d_o,
        t,
        l: sum.know("L", "length between supports", &MM, length),
        delta,
        e: sum.know("E", "modulus of elasticity, hot", &MPA, &modulus),
        nu: sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral()),
        hot: sum.know("R_h", "0.2 % proof stress at work", &MPA, &hot),
        cold: sum.know("R_c", "0.2 % proof stress, cold", &MPA, &cold),
        f: stress::ours(sum, flue.metal, served.metal, "f")?,
    };
    Ok(Taken {
        served,
        tube: lines.tube(sum, held),
        wall,
        lines,
        ovality_open,
    })
}

/// Files the ovality: measured, allowed, or assumed at its worse end. The words say where it is
/// still to be measured.
pub(crate) fn file_ovality(
    sum: &mut Sum,
    flue: &Flue,
    d_o: Ref,
) -> Result<(Ref, Option<String>), Stop> {
    let meaning = "ovality, Dmax - Dmin";
    if let Some(d) = &flue.ovality {
        let known = at_bad_end(d, Bad::Large);
        let delta = sum.know("delta", meaning, &MM, &known);
        let open = d.size.made.is_none().then(|| d.field.clone());
        return Ok((delta, open));
    }
    let share = worse(&OVALITY, Worse::WhenHigh);
    let u = sum.know("u", OVALITY.meaning, &ONE, &share);
    let delta_mm = ring::ovality(share.value.number(), sum.value(d_o));
    let delta = sum.settled(&ring::OVALITY, &[u, d_o], delta_mm)?;
    Ok((delta, Some(format!("{}.ovality", flue.id))))
}

/// External pressure by the least of five limits.
fn pressure(flue: &Flue, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&FLUE_PRESSURE, &flue.id), |sum| {
        let taken = take(sum, flue, asked)?;
        let p = taken.served.p_mpa;
        let state = taken.tube.external();
        explain(sum, &taken, &state)?;
        hold(sum, flue, &taken);
        let (most, governs) = state.least(Limits::All);
        let furnace = beside(sum, &taken, &state)?;
        let says = format!(
            "bears {} bar by {}, {} bar asked",
            bar(most),
            governs.words(),
            bar(p)
        );
        let swept = flue.exposure == Exposure::FlameSwept && p > furnace;
        let remark = swept.then(|| {
            format!(
                "the flame sweeps it, and the furnace form of boiler codes allows {} bar",
                bar(furnace)
            )
        });
        let remedy = cure(flue, &taken, asked);
        Ok(Outcome::compared(most, p, says, remedy).strained_if(remark))
    })
}

/// Hold points: the ovality that is still to be measured, the wall of unstated tolerance.
fn hold(sum: &mut Sum, flue: &Flue, taken: &Taken) {
    let p = taken.served.p_mpa;
    if let (Some(field), Some(most)) = (&taken.ovality_open, greatest_ovality(taken.tube, p)) {
        let says = format!(
            "ovality of {}, Dmax - Dmin, at most {} mm",
            flue.id,
            down(most)
        );
        sum.hold_within(says, field.clone(), Bound::AtMost(si(most)));
    }
    if let Ok(wall) = least_wall(taken.tube, p, Limits::All) {
        taken.wall.hold(sum, "wall", &flue.id, wall.x);
    }
}

/// Hold points of a check that was not turned round: the ovality and the wall that were used.
pub(super) fn hold_as_used(sum: &mut Sum, flue: &Flue, taken: &Taken) {
    if let Some(field) = &taken.ovality_open {
        let says = format!(
            "ovality of {}, Dmax - Dmin, at most {} mm",
            flue.id,
            down(taken.tube.delta_mm)
        );
        sum.hold_within(says, field.clone(), Bound::AtMost(si(taken.tube.delta_mm)));
    }
    taken.wall.hold_as_used(sum, "wall", &flue.id);
}

/// The next wall, and the ovality that would do at this wall.
fn cure(flue: &Flue, taken: &Taken, asked: &Asked<'_>) -> String {
    let p = taken.served.p_mpa;
    let wall = match least_wall(taken.tube, p, Limits::All) {
        Ok(wall) => next_stock("a wall", &asked.stock.tube_walls, wall.x),
        Err(_) => {
            "a lower pressure or a smaller tube: no wall of this diameter bears it".to_owned()
        }
    };
    match greatest_ovality(taken.tube, p) {
        Some(most) if most < taken.tube.delta_mm => format!(
            "{wall}; or {} trued to an ovality of at most {} mm",
            flue.id,
            down(most)
        ),
        _ => wall,
    }
}

/// The lines of the limits with one strength: by collapse, by first yield.
fn explain_strength(
    sum: &mut Sum,
    lines: (&Lines, &Shared),
    proof: Ref,
    at: &Allowed,
    factors: (Ref, Ref),
) -> Result<[Ref; 2], Stop> {
    let (given, shared) = lines;
    let sigma_e = sum.settled(&allow::ELASTIC_LIMIT, &[proof], at.sigma_e)?;
    let p_y = sum.settled(&oval::YIELD, &[sigma_e, given.t, shared.r], at.p_y)?;
    let x = sum.settled(&allow::RATIO, &[shared.p_m, p_y], at.x)?;
    let y = sum.settled(&lower_bound::LOWER_BOUND, &[x], at.y)?;
    let p_r = sum.settled(&allow::COLLAPSE, &[y, p_y], at.p_r)?;
    let by_collapse = sum.settled(&allow::ALLOWED, &[p_r, factors.0], at.by_collapse)?;
    let first = [proof, shared.q_cr, shared.r, given.t, shared.w_0];
    let q = sum.settled(&oval::FIRST_YIELD, &first, at.q)?;
    let by_yield = sum.settled(&allow::ALLOWED, &[q, factors.1], at.by_yield)?;
    Ok([by_collapse, by_yield])
}

/// Lines that work and test share.
struct Shared {
    r: Ref,
    p_m: Ref,
    w_0: Ref,
    q_cr: Ref,
}

fn factor(sum: &mut Sum, meaning: &str, value: f64) -> Ref {
    let known = chosen(
        Ratio::from_number(value),
        "1.5 at work and 1.1 at the test on collapse, 1.5 and 1 on first yield",
        meaning,
        Origin::FromMemory,
    );
    sum.know("k", meaning, &ONE, &known)
}

/// Files what work and test share.
fn explain_shared(sum: &mut Sum, given: &Lines, state: &External) -> Result<Shared, Stop> {
    let d_m = sum.settled(&ring::MEAN, &[given.d_o, given.t], state.d_m_mm)?;
    let r = sum.settled(&ring::RADIUS, &[d_m], state.r_mm)?;
    let finite = [given.e, given.nu, r, given.t, given.l];
    let p_m = sum.settled(&shell_buckling::FINITE, &finite, state.p_m)?;
    let w_0 = sum.settled(&oval::DEVIATION, &[given.delta], state.w_0_mm)?;
    sum.card(&oval::ROUNDNESS, &[w_0, given.d_o])?;
    let long = [given.e, given.nu, r, given.t];
    let q_cr = sum.settled(&shell_buckling::LONG, &long, state.q_cr)?;
    Ok(Shared { r, p_m, w_0, q_cr })
}

/// Files every line of the state.
fn explain(sum: &mut Sum, taken: &Taken, state: &External) -> Result<(), Stop> {
    let given = &taken.lines;
    let shared = explain_shared(sum, given, state)?;
    let lines = (given, &shared);
    let work = (
        factor(sum, "factor on collapse at work", COLLAPSE_AT_WORK),
        factor(sum, "factor on first yield at work", YIELD_AT_WORK),
    );
    let at_work = explain_strength(sum, lines, given.hot, &state.work, work)?;
    let on_collapse = "factor on collapse at the test, 1.1, times test over working pressure";
    let test = (
        factor(sum, on_collapse, COLLAPSE_AT_TEST * TEST_FACTOR),
        file_test_factor(sum),
    );
    let at_test = explain_strength(sum, lines, given.cold, &state.test, test)?;
    let cap = [given.f, given.t, given.d_o];
    let cap = sum.settled(&oval::STRESS_CAP, &cap, state.cap)?;
    let (least, governs) = state.least(Limits::All);
    sum.w.chosen(Choice {
        symbol: "P_a",
        meaning: "working pressure that the tube bears",
        value: least,
        unit: &MPA_GAUGE,
        between: "collapse and first yield, at work and at the test, and the design stress",
        reason: governs.words(),
        from: &[at_work[0], at_work[1], at_test[0], at_test[1], cap],
        cite: None,
    });
    Ok(())
}

/// Files the boiler codes' forms beside, and gives what the furnace form allows, MPa.
fn beside(sum: &mut Sum, taken: &Taken, state: &External) -> Result<f64, Stop> {
    let given = &taken.lines;
    let d = sum.settled(&ring::MEAN, &[given.d_o, given.t], state.d_m_mm)?;
    let u = sum.card(&ring::PER_CENT, &[given.delta, d])?;
    let constant = |sum: &mut Sum, symbol: &str, value: f64, between: &str| {
        let known = chosen(
            Ratio::from_number(value),
            between,
            "flame-swept, better class; straps, as a brazed copper tube has no lap",
            Origin::Read,
        );
        sum.know(symbol, "constant of the form", &ONE, &known)
    };
    let s_1 = constant(
        sum,
        "S_1",
        FURNACE_ON_YIELD,
        "2.0 out of the flame, 2.5, 3.5 lowest class",
    );
    let s_2 = constant(sum, "S_2", FURNACE_ON_COLLAPSE, "one value");
    let plastic = [given.hot, given.t, d, given.l, u, s_1];
    let plastic = sum.card(&furnace::PLASTIC, &plastic)?;
    let elastic = sum.card(&furnace::ELASTIC, &[given.e, given.t, d, given.l, s_2])?;
    ibr(sum, taken);
    Ok(sum.value(plastic).min(sum.value(elastic)))
}

/// Files the copper furnace of the state regulations, where it gives a pressure at all.
fn ibr(sum: &mut Sum, taken: &Taken) {
    let given = &taken.lines;
    // Below 0.8 mm of plate the form has nothing left to give, and nothing is filed.
    if Length::from_mm(taken.tube.wall_mm).in_unit(&INCH) * 32.0 <= 1.0 {
        return;
    }
    let constant = |sum: &mut Sum, symbol: &str, value: f64| {
        let known = chosen(
            Ratio::from_number(value),
            "copper with double straps, or lapped",
            "double straps",
            Origin::Read,
        );
        sum.know(symbol, "constant for copper", &ONE, &known)
    };
    let c = constant(sum, "C", IBR_FIRST);
    let c_1 = constant(sum, "C_1", IBR_SECOND);
    for (card, constant) in [(&furnace::IBR_SHORT, c), (&furnace::IBR_LONG, c_1)] {
        // Shown beside only: a form that gives nothing for a long tube is left out.
        let _ = sum.card(card, &[constant, given.t, given.d_o, given.l]);
    }
}
