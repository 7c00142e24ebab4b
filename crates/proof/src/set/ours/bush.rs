//! Openings of a shell: area, pressure area, braze.

use super::OURS;
use super::shell::{Taken, take};
use crate::input::{Bush, Diameter, Opening, Shell};
use crate::metal::{braze_shear, chosen};
use crate::opening::{Round, Side, file_bush, file_hole, replace};
use crate::rules::{OPENING_AREA, OPENING_BRAZE, OPENING_PRESSURE_AREA};
use crate::set::Asked;
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{SideLines, bar, file_sides};
use formulas::vessel::{allow, opening as law, pressure_area, ring, shell as wall_law};
use reckoning::quantity::{MPA, ONE, Ratio};
use reckoning::{Finding, Origin, Ref};

/// Every check of one opening.
pub(super) fn checks(shell: &Shell, opening: &Opening, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![area(shell, opening, asked)];
    if let Some(bush) = &opening.bush {
        found.push(by_pressure_area(shell, opening, bush, asked));
        found.push(braze(shell, opening, bush, asked));
    }
    found
}

/// Files the seamless wall that pressure asks, by UG-27.
pub(super) fn seamless_wall(
    sum: &mut Sum,
    taken: &Taken<'_>,
    lines: &SideLines,
) -> Result<Ref, Stop> {
    let one = chosen(
        Ratio::from_number(1.0),
        "efficiency of the shell beside an opening",
        "1, away from the seam",
        Origin::FromMemory,
    );
    let e = sum.know("E", "joint efficiency", &ONE, &one);
    hoop_wall(sum, taken, lines, e)
}

/// Files the wall that pressure asks at an efficiency, by UG-27.
pub(super) fn hoop_wall(
    sum: &mut Sum,
    taken: &Taken<'_>,
    lines: &SideLines,
    e: Ref,
) -> Result<Ref, Stop> {
    match taken.diameter {
        Diameter::Outside(_) => {
            let r = sum.card(&ring::RADIUS, &[lines.outside])?;
            sum.card(
                &wall_law::UG27_HOOP_OUTSIDE,
                &[taken.served.p, r, taken.f, e],
            )
        }
        Diameter::Inside(_) => {
            let r = sum.card(&ring::RADIUS, &[lines.bore])?;
            sum.card(&wall_law::UG27_HOOP, &[taken.served.p, r, taken.f, e])
        }
    }
}

/// Area replacement.
fn area(shell: &Shell, opening: &Opening, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&OPENING_AREA, &opening.id), |sum| {
        let taken = take(sum, shell, asked)?;
        let lines = file_sides(sum, taken.diameter, taken.t)?;
        let t_r = seamless_wall(sum, &taken, &lines)?;
        let metal = taken.served.metal;
        let round = Round {
            side: Side::Inside,
            diameter_mm: sum.value(lines.bore),
            p: taken.served.p,
            t: taken.t,
            t_r,
            s: taken.f,
            bush_stress: &|sum, bush| stress::ours(sum, bush, metal, "f_b"),
        };
        let outcome = replace(sum, opening, &round)?;
        taken.wall.hold_as_used(sum, "wall", &shell.id);
        Ok(outcome)
    })
}

/// The pressure-area method.
fn by_pressure_area(shell: &Shell, opening: &Opening, bush: &Bush, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&OPENING_PRESSURE_AREA, &opening.id), |sum| {
        let taken = take(sum, shell, asked)?;
        let lines = file_sides(sum, taken.diameter, taken.t)?;
        let hole = file_hole(sum, opening)?;
        let parts = file_bush(sum, opening, bush, &hole)?;
        let f_b = stress::ours(sum, bush.metal, taken.served.metal, "f_b")?;
        // The clause does not count a bush as stronger than its shell.
        let f_b = if sum.value(f_b) > sum.value(taken.f) {
            taken.f
        } else {
            f_b
        };
        let r = sum.card(&ring::RADIUS, &[lines.bore])?;
        let l_so = sum.card(&pressure_area::SHELL_LENGTH, &[r, taken.t])?;
        let l_bo = sum.card(&pressure_area::BUSH_LENGTH, &[hole.cut, parts.wall])?;
        let a_fs = sum.card(&pressure_area::SHELL_METAL, &[l_so, taken.t])?;
        let bush_metal = [parts.wall, taken.t, l_bo, parts.out, parts.inwards];
        let a_fb = sum.card(&pressure_area::BUSH_METAL, &bush_metal)?;
        let a_ps = sum.card(&pressure_area::SHELL_PRESSURE, &[r, l_so, hole.cut])?;
        let a_pb = sum.card(
            &pressure_area::BUSH_PRESSURE,
            &[hole.d, taken.t, l_bo, parts.out],
        )?;
        let areas = [a_fs, a_fb, a_ps, a_pb, taken.f, f_b];
        let most = sum.card(&pressure_area::PRESSURE, &areas)?;
        taken.wall.hold_as_used(sum, "wall", &shell.id);
        let (most, p) = (sum.value(most), taken.served.p_mpa);
        let says = format!("the opening holds {} bar, {} bar asked", bar(most), bar(p));
        let remedy = format!(
            "a bush or shell with {:.0} % more metal",
            100.0 * (p / most - 1.0)
        );
        Ok(Outcome::compared(most, p, says, remedy))
    })
}

/// The braze of a bush.
fn braze(shell: &Shell, opening: &Opening, bush: &Bush, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&OPENING_BRAZE, &opening.id), |sum| {
        let taken = take(sum, shell, asked)?;
        let lines = file_sides(sum, taken.diameter, taken.t)?;
        let t_r = seamless_wall(sum, &taken, &lines)?;
        let hole = file_hole(sum, opening)?;
        let parts = file_bush(sum, opening, bush, &hole)?;
        let f_b = stress::ours(sum, bush.metal, taken.served.metal, "f_b")?;
        let f_r = sum.card(&law::STRENGTH, &[f_b, taken.f])?;
        let a = sum.card(&law::AREA_REQUIRED, &[hole.d, t_r, parts.wall, f_r])?;
        let tau = sum.card(&law::TIE_SHEAR, &[a, taken.f, hole.cut, taken.t])?;
        let shear = sum.know("tau_f", "shear allowed in the braze", &MPA, &braze_shear());
        let e = OURS.file_joint(sum, "E_j", OURS.joints.joint(bush.joint));
        let allowed = sum.card(&allow::JOINT, &[shear, e])?;
        taken.wall.hold_as_used(sum, "wall", &shell.id);
        let (allowed, tau) = (sum.value(allowed), sum.value(tau));
        let says = format!("{tau:.2} MPa in the braze, {allowed:.1} MPa allowed");
        let remedy = format!(
            "{}, of {} mm where the bush passes",
            OPENING_BRAZE.remedy,
            crate::remedy::at_least(sum.value(taken.t) * tau / allowed)
        );
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}
