//! A tube with pressure outside by the European vessel standard: collapse at work and at the water
//! test.

use super::{EN_13445, Heat, file_stress};
use crate::external::{COLLAPSE_AT_TEST, COLLAPSE_AT_WORK, Held, Tube};
use crate::input::{Diameter, Flue};
use crate::metal::{chosen, lateral, modulus, proof_cold, proof_hot};
use crate::remedy::first_stock;
use crate::rules::{EN_EXTERNAL, EN_NOT_WORKED};
use crate::set::ours::file_ovality;
use crate::set::taking::TakenTube;
use crate::set::{Asked, unworked};
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::bar;
use formulas::vessel::{allow, european, lower_bound, oval, ring, shell_buckling};
use reckoning::quantity::{MPA, ONE, Ratio};
use reckoning::{Finding, Origin, Ref};

/// Every check of a tube.
pub(super) fn checks(flue: &Flue, asked: &Asked<'_>) -> Vec<Finding> {
    let head = EN_13445.head(&EN_EXTERNAL, &flue.id);
    let mut found = vec![check(head, |sum| external(sum, flue, asked))];
    found.extend(unworked::openings(
        &EN_13445,
        &EN_NOT_WORKED,
        &flue.openings,
        "an opening in a tube with pressure outside",
    ));
    found
}

/// Lines of a tube's metal and shape.
struct Lines {
    delta: Ref,
    e: Ref,
    nu: Ref,
    hot: Ref,
    cold: Ref,
    /// Field of an ovality that is still to be measured.
    open: Option<String>,
}

fn file_lines(sum: &mut Sum, flue: &Flue, taken: &TakenTube) -> Result<Lines, Stop> {
    let (delta, open) = file_ovality(sum, flue, taken.d_o)?;
    let hot = proof_hot(flue.metal, taken.served.metal)?;
    let cold = proof_cold(flue.metal)?;
    let e = modulus(flue.metal)?;
    Ok(Lines {
        delta,
        e: sum.know("E", "modulus of elasticity, hot", &MPA, &e),
        nu: sum.know("nu", "ratio of lateral to axial strain", &ONE, &lateral()),
        hot: sum.know("R_h", "0.2 % proof stress at work", &MPA, &hot),
        cold: sum.know("R_c", "0.2 % proof stress, cold", &MPA, &cold),
        open,
    })
}

fn external(sum: &mut Sum, flue: &Flue, asked: &Asked<'_>) -> Result<Outcome, Stop> {
    let taken = EN_13445.take_tube(sum, flue, asked)?;
    let lines = file_lines(sum, flue, &taken)?;
    let d = sum.card(&ring::MEAN, &[taken.d_o, taken.t])?;
    let r = sum.card(&ring::RADIUS, &[d])?;
    let elastic = [lines.e, lines.nu, r, taken.t, taken.l];
    let p_m = sum.card(&shell_buckling::FINITE, &elastic)?;
    let w_0 = sum.card(&oval::DEVIATION, &[lines.delta])?;
    sum.card(&oval::ROUNDNESS, &[w_0, taken.d_o])?;
    let wall = [taken.t, r, p_m];
    let at_work = collapse(sum, wall, lines.hot, COLLAPSE_AT_WORK)?;
    let at_test = collapse(sum, wall, lines.cold, COLLAPSE_AT_TEST)?;
    let f_20 = file_stress(&mut sum.w, flue.metal, Heat::Cold)?;
    let f_t = file_stress(&mut sum.w, flue.metal, Heat::At(taken.served.metal))?;
    let p_t = sum.card(&european::TEST_PRESSURE, &[taken.served.p, f_20, f_t])?;
    let delta_mm = sum.value(lines.delta);
    taken.hold_as_used(sum, &flue.id, lines.open.clone(), delta_mm);
    let [work, test, p_t] = [at_work, at_test, p_t].map(|line| sum.value(line));
    let p = taken.served.p_mpa;
    let says = format!(
        "bears {} bar at work and {} bar at the water test, {} and {} bar asked",
        bar(work),
        bar(test),
        bar(p),
        bar(p_t)
    );
    let remedy = cure(flue, asked, tube(sum, flue, &taken, &lines, p_t / p), p);
    if work / p < test / p_t {
        Ok(Outcome::compared(work, p, says, remedy))
    } else {
        Ok(Outcome::compared(test, p_t, says, remedy))
    }
}

/// Files the pressure allowed by collapse with one proof stress and a factor.
fn collapse(sum: &mut Sum, [t, r, p_m]: [Ref; 3], proof: Ref, k: f64) -> Result<Ref, Stop> {
    let known = chosen(
        Ratio::from_number(k),
        "1.5 at work and 1.1 at the water test",
        "the factor of the clause on collapse",
        Origin::FromMemory,
    );
    let sigma_e = sum.card(&allow::ELASTIC_LIMIT, &[proof])?;
    let p_y = sum.card(&oval::YIELD, &[sigma_e, t, r])?;
    let x = sum.card(&allow::RATIO, &[p_m, p_y])?;
    let y = sum.card(&lower_bound::LOWER_BOUND, &[x])?;
    let p_r = sum.card(&allow::COLLAPSE, &[y, p_y])?;
    let k = sum.know("k", "factor on collapse", &ONE, &known);
    sum.card(&allow::ALLOWED, &[p_r, k])
}

/// The same tube as numbers, to be tried with other walls.
fn tube(sum: &Sum, flue: &Flue, taken: &TakenTube, lines: &Lines, test_factor: f64) -> Tube {
    let held = match flue.diameter {
        Some(Diameter::Inside(_)) => Held::Bore,
        Some(Diameter::Outside(_)) | None => Held::Outside,
    };
    Tube {
        held,
        d_o_mm: sum.value(taken.d_o),
        wall_mm: sum.value(taken.t),
        l_mm: sum.value(taken.l),
        delta_mm: sum.value(lines.delta),
        e_mpa: sum.value(lines.e),
        nu: sum.value(lines.nu),
        hot_mpa: sum.value(lines.hot),
        cold_mpa: sum.value(lines.cold),
        // This standard knows no limit of plain stress here.
        f_mpa: f64::INFINITY,
        test_factor,
    }
}

/// The first wall in stock that bears it.
fn cure(flue: &Flue, asked: &Asked<'_>, tube: Tube, p_mpa: f64) -> String {
    let bears = |wall_mm: f64| {
        let state = tube.with_wall(wall_mm).external();
        state.work.by_collapse.min(state.test.by_collapse) >= p_mpa
    };
    first_stock("a wall", &asked.stock.tube_walls, bears)
        .unwrap_or_else(|| format!("a lower pressure or a smaller tube for {}", flue.id))
}
