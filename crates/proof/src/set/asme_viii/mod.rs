//! The pressure vessel code. At this size its external and stayed-plate clauses do not reach, and
//! say so; its numbers stand beside.

mod end;

use super::closed::tubes_as_shells;
use super::taking::{TakenPlate, TakenShell, TakenTube};
use super::{Asked, Joints, RuleSet, Scope, Test, unworked};
use crate::input::{Boiler, Diameter, Flue, Further, Opening, Shell, TubePlate};
use crate::metal::{chosen, modulus};
use crate::opening::{Round, Side, replace};
use crate::remedy::next_stock;
use crate::rules::{
    CODE_ELSEWHERE, CODE_EXTERNAL, CODE_NOT_WORKED, CODE_OPENING_AREA, CODE_SHELL_WALL, CODE_STAYED,
};
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::bar;
use formulas::vessel::{plate_stayed, ring, shell as law, viii_external};
use reckoning::quantity::{MPA, ONE, Ratio, Stress};
use reckoning::{Finding, Origin, Ref, Seen};

/// ASME VIII, Divisions 1 and 2.
pub static ASME_VIII: RuleSet = RuleSet {
    key: "asme-viii",
    title: "ASME Boiler and Pressure Vessel Code, Section VIII",
    edition: "2021",
    seen: Seen::FromMemory,
    how_read: "from memory, all but the stresses of copper, which were read in the pipe code",
    stress_basis: "allowable stress of annealed copper tube at metal temperature, as the pipe \
                   code prints it",
    joints: Joints {
        both_sides: 1.0,
        lap_along: 1.0,
        strap_along: 0.5,
        blind: 0.5,
        below_one: Origin::FromMemory,
    },
    test: Test::ByStress,
    inspection: None,
    scope: Scope {
        pressure_bar: f64::INFINITY,
        metal_c: 204.0,
        shell_mm: 1.5,
        flue_mm: 5.0,
        plate_mm: 8.0,
    },
    departures: &[
        "External pressure: the material chart of annealed copper was not found; the closed form \
         of Division 2 stands in its place.",
        "Openings: calculated whatever their size; the exemption of UG-36(c)(3) is not used.",
        "Flat ends: no brazed end is among the details that UG-34 draws; the most that it asks of a \
         plate set into a shell is used.",
    ],
    whole,
    shell: shell_checks,
    plate: plate_checks,
    flue: flue_checks,
};

/// Ends, pipes and cross tubes; flanges, frames and stays, that this set is not worked for.
fn whole(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let worked = [
        Further::FlatEnd,
        Further::DishedEnd,
        Further::Pipe,
        Further::CrossTubes,
    ];
    let mut found = unworked::further(&ASME_VIII, &CODE_NOT_WORKED, boiler, &worked);
    found.extend(end::checks(boiler, asked));
    let tubes = tubes_as_shells(boiler);
    found.extend(tubes.iter().map(|tube| shell_wall(tube, asked)));
    found
}

/// A shell as this set takes it, with its stress.
fn take<'a>(
    sum: &mut Sum,
    shell: &'a Shell,
    asked: &Asked<'_>,
) -> Result<(TakenShell<'a>, Ref), Stop> {
    let taken = ASME_VIII.take_shell(sum, shell, asked)?;
    let stress = stress::code(shell.metal, taken.served.metal)?;
    let s = sum.know("S", "allowable stress at metal temperature", &MPA, &stress);
    Ok((taken, s))
}

/// Files the wall against hoop stress.
fn hoop(sum: &mut Sum, (taken, s): (&TakenShell<'_>, Ref), e: Ref) -> Result<Ref, Stop> {
    match taken.diameter {
        Diameter::Outside(_) => {
            let r = sum.card(&ring::RADIUS, &[taken.sides.outside])?;
            sum.card(&law::UG27_HOOP_OUTSIDE, &[taken.served.p, r, s, e])
        }
        Diameter::Inside(_) => {
            let r = sum.card(&ring::RADIUS, &[taken.sides.bore])?;
            sum.card(&law::UG27_HOOP, &[taken.served.p, r, s, e])
        }
    }
}

fn shell_checks(shell: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![shell_wall(shell, asked)];
    found.extend(shell.openings.iter().map(|o| opening_area(shell, o, asked)));
    found
}

fn shell_wall(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(ASME_VIII.head(&CODE_SHELL_WALL, &shell.id), |sum| {
        let (taken, s) = take(sum, shell, asked)?;
        let e = ASME_VIII.file_joint(sum, "E", ASME_VIII.joints.seam(shell.seam));
        let by_hoop = hoop(sum, (&taken, s), e)?;
        let e = ASME_VIII.file_joint(sum, "E", ASME_VIII.joints.joint(shell.ends));
        let r = sum.card(&ring::RADIUS, &[taken.sides.bore])?;
        let by_axial = sum.card(&law::UG27_AXIAL, &[taken.served.p, r, s, e])?;
        let least = sum.value(by_hoop).max(sum.value(by_axial));
        taken.wall.hold(sum, "wall", &shell.id, least);
        let t = taken.wall.mm();
        let says = format!("wall {t:.2} mm, {least:.2} mm asked");
        let remedy = next_stock("a wall", &asked.stock.tube_walls, least);
        Ok(Outcome::compared(t, least, says, remedy))
    })
}

fn opening_area(shell: &Shell, opening: &Opening, asked: &Asked<'_>) -> Finding {
    check(ASME_VIII.head(&CODE_OPENING_AREA, &opening.id), |sum| {
        let (taken, s) = take(sum, shell, asked)?;
        let one = chosen(
            Ratio::from_number(1.0),
            "efficiency of the shell beside an opening",
            "1, away from the seam",
            Origin::FromMemory,
        );
        let e = sum.know("E", "joint efficiency", &ONE, &one);
        let t_r = hoop(sum, (&taken, s), e)?;
        let metal = taken.served.metal;
        let round = Round {
            side: Side::Inside,
            diameter_mm: sum.value(taken.sides.bore),
            p: taken.served.p,
            t: taken.t,
            t_r,
            s,
            bush_stress: &|sum, bush| {
                let known = stress::code(bush, metal)?;
                Ok(sum.know("S_b", "allowable stress of the bush", &MPA, &known))
            },
        };
        let outcome = replace(sum, opening, &round)?;
        taken.wall.hold_as_used(sum, "wall", &shell.id);
        Ok(outcome)
    })
}

fn flue_checks(flue: &Flue, asked: &Asked<'_>) -> Vec<Finding> {
    let head = ASME_VIII.head(&CODE_EXTERNAL, &flue.id);
    let mut found = vec![check(head, |sum| external(sum, flue, asked))];
    found.extend(unworked::openings(
        &ASME_VIII,
        &CODE_ELSEWHERE,
        &flue.openings,
        "an opening in a tube with pressure outside",
    ));
    found
}

fn external(sum: &mut Sum, flue: &Flue, asked: &Asked<'_>) -> Result<Outcome, Stop> {
    let TakenTube {
        served,
        wall,
        t,
        d_o,
        l,
    } = ASME_VIII.take_tube(sum, flue, asked)?;
    let e = sum.know(
        "E",
        "modulus of elasticity, hot",
        &MPA,
        &modulus(flue.metal)?,
    );
    let allowable = stress::code(flue.metal, served.metal)?;
    let s_y = chosen(
        Stress::from_mpa(1.5 * allowable.value.mpa()),
        "yield stress at temperature, of which none was seen",
        "the allowable stress is two thirds of it or less",
        Origin::CommonPractice,
    );
    let s_y = sum.know("S_y", "yield stress at metal temperature", &MPA, &s_y);
    let p_a = closed_form(sum, [d_o, t, l, e, s_y])?;
    wall.hold_as_used(sum, "wall", &flue.id);
    let (p_a, p) = (sum.value(p_a), served.p_mpa);
    let says = format!("bears {} bar, {} bar asked", bar(p_a), bar(p));
    Ok(Outcome::compared(
        p_a,
        p,
        says,
        CODE_EXTERNAL.remedy.to_owned(),
    ))
}

/// Files the chain of the closed form.
fn closed_form(sum: &mut Sum, [d_o, t, l, e, s_y]: [Ref; 5]) -> Result<Ref, Stop> {
    let m_x = sum.card(&viii_external::LENGTH, &[l, d_o, t])?;
    let c_h = sum.card(&viii_external::SHAPE, &[m_x, d_o, t])?;
    let f_he = sum.card(&viii_external::ELASTIC, &[c_h, e, t, d_o])?;
    let f_ic = sum.card(&viii_external::CRITICAL, &[f_he, s_y])?;
    let fs = sum.card(&viii_external::FACTOR, &[f_ic, s_y])?;
    sum.card(&viii_external::PRESSURE, &[f_ic, fs, t, d_o])
}

fn plate_checks(plate: &TubePlate, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![stayed(plate, asked)];
    found.extend(unworked::openings(
        &ASME_VIII,
        &CODE_ELSEWHERE,
        &plate.openings,
        "an opening in a stayed plate",
    ));
    found
}

fn stayed(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(ASME_VIII.head(&CODE_STAYED, &plate.id), |sum| {
        let TakenPlate { served, wall, .. } = ASME_VIII.take_plate(sum, plate, asked)?;
        let allowable = stress::code(plate.metal, served.metal)?;
        let s = sum.know(
            "S",
            "allowable stress at metal temperature",
            &MPA,
            &allowable,
        );
        let pitch = crate::set::ours::file_pitch(sum, plate)?;
        let c = crate::set::ours::file_stay_constant(sum);
        let least = sum.card(&plate_stayed::WALL, &[pitch, served.p, s, c])?;
        let (t, least) = (wall.mm(), sum.value(least));
        wall.hold(sum, "thickness", &plate.id, least);
        let says = format!("plate {t:.2} mm, {least:.2} mm asked by the pitch");
        let remedy = next_stock("a plate", &asked.stock.sheets, least);
        Ok(Outcome::compared(t, least, says, remedy))
    })
}
