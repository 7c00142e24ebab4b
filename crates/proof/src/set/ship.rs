//! The rules of a ship register: copper pipe as shell, smoke tubes of steel, bends of flanges.

use super::taking::TakenShell;
use super::{Asked, Joints, RuleSet, Scope, Test, closed, filler, unworked};
use crate::input::{Boiler, Diameter, Exposure, Flange, Flue, Further, Metal, Shell, TubePlate};
use crate::metal::chosen;
use crate::remedy::{at_least, next_stock};
use crate::rules::{SHIP_BEND, SHIP_LEAST_WALL, SHIP_NOT_WORKED, SHIP_PIPE_WALL, SHIP_SMOKE_TUBE};
use crate::stress;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{bar, file_size, need, nominal};
use formulas::vessel::{floor, register, ring};
use reckoning::quantity::{Length, MM, MPA, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin, Ref, Seen};

/// Rules for small fast ships and for naval ships, of one register.
pub static SHIP_REGISTER: RuleSet = RuleSet {
    key: "ship-register",
    title: "Rules of a ship register for copper pipe and the boilers of ships",
    edition: "special service craft, part 15; naval ships, volume 2",
    seen: Seen::FromMemory,
    how_read: "its tables, its corrosion allowance and its radii were read; the form of the wall of \
               pipe and the water test are from memory",
    stress_basis: "the register's own table for annealed copper of a tensile strength of 220 N/mm², \
                   at metal temperature",
    joints: Joints::SEAMLESS,
    test: Test::Times(1.5),
    inspection: None,
    scope: Scope {
        pressure_bar: f64::INFINITY,
        metal_c: 200.0,
        shell_mm: 0.0,
        flue_mm: 0.0,
        plate_mm: 0.0,
    },
    departures: &[
        "Shells: a copper barrel is worked as the register works copper pipe.",
        "Corrosion: its allowance for copper, 0.8 mm, is asked whatever the water.",
        "Openings: its rules for branches were not read.",
    ],
    whole,
    shell,
    plate,
    flue,
};

/// Corrosion allowance of copper pipe, mm.
const CORROSION_MM: f64 = 0.8;
/// Radius of a bend over the plate, and least radius, mm: of end plates, of firebox plates.
const END_BEND: (f64, f64) = (1.75, 38.0);
const FIREBOX_BEND: (f64, f64) = (1.0, 25.0);

fn whole(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let worked = [Further::Flange, Further::Pipe];
    let mut found = unworked::further(&SHIP_REGISTER, &SHIP_NOT_WORKED, boiler, &worked);
    found.push(filler::silver(boiler));
    for plate in &boiler.plates {
        if let Some(flange) = &plate.flange {
            found.push(bend(boiler, plate, flange));
        }
    }
    for tube in boiler.pipes.iter().map(closed::pipe) {
        found.extend([pipe_wall(&tube, asked), least_wall(&tube)]);
    }
    found.extend(unworked::of_ends(&SHIP_REGISTER, &SHIP_NOT_WORKED, boiler));
    found
}

/// The bend of a flange.
fn bend(boiler: &Boiler, plate: &TubePlate, flange: &Flange) -> Finding {
    check(SHIP_REGISTER.head(&SHIP_BEND, &plate.id), |sum| {
        let of_firebox = boiler.flues.iter().any(|f| f.id == flange.closes);
        let (k, least_mm) = if of_firebox { FIREBOX_BEND } else { END_BEND };
        let radius = flange.inside_radius.as_ref();
        let radius = need("the inside radius of the flange", &plate.id, radius)?;
        let has = file_size(
            sum,
            ("r_i", "inside radius of the bend"),
            radius,
            Bad::Small,
        )?;
        let t = need("the thickness", &plate.id, plate.thickness.as_ref())?;
        let t = file_size(sum, ("t", "thickness of the plate"), t, Bad::Large)?;
        let known = chosen(
            Ratio::from_number(k),
            "1.75 for end plates, 1 for firebox plates",
            "what the plate closes",
            Origin::Read,
        );
        let k = sum.know("k", "radius over plate", &ONE, &known);
        let asked = sum.card(&register::BEND_RADIUS, &[k, t])?;
        let (has, asked) = (sum.value(has), sum.value(asked));
        if has < least_mm {
            sum.outside(format!(
                "the register's bends begin at {least_mm} mm, and this has {has:.2} mm"
            ));
        }
        let says = format!("bent to {has:.2} mm, {asked:.2} mm asked by the plate");
        let remedy = format!("a bend of {} mm", at_least(asked));
        Ok(Outcome::plain(kept(has >= asked), says, remedy))
    })
}

/// A least size is kept or it is not: no margin is asked beyond it.
fn kept(enough: bool) -> Answer {
    if enough { Answer::Holds } else { Answer::Fails }
}

fn shell(shell: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![pipe_wall(shell, asked), least_wall(shell)];
    let what = "an opening in a shell";
    let openings = &shell.openings;
    found.extend(unworked::openings(
        &SHIP_REGISTER,
        &SHIP_NOT_WORKED,
        openings,
        what,
    ));
    found
}

fn take<'a>(
    sum: &mut Sum,
    shell: &'a Shell,
    asked: &Asked<'_>,
) -> Result<(TakenShell<'a>, Ref), Stop> {
    let taken = SHIP_REGISTER.take_shell(sum, shell, asked)?;
    unworked::seamless(shell.seam)?;
    let known = stress::register(shell.metal, taken.served.metal)?;
    let f = sum.know("f", "design stress at metal temperature", &MPA, &known);
    Ok((taken, f))
}

/// Pressure and corrosion.
fn pipe_wall(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(SHIP_REGISTER.head(&SHIP_PIPE_WALL, &shell.id), |sum| {
        let (taken, f) = take(sum, shell, asked)?;
        let known = chosen(
            Length::from_mm(CORROSION_MM),
            "0.8 mm for copper, nothing where what flows takes nothing",
            "the more",
            Origin::Read,
        );
        let c = sum.know("c", "corrosion allowance", &MM, &known);
        let inputs = [taken.served.p, taken.sides.outside, f, c];
        let least = sum.card(&register::PIPE_WALL, &inputs)?;
        let (t, least) = (taken.wall.mm(), sum.value(least));
        taken.wall.hold(sum, "wall", &shell.id, least);
        let says = format!("wall {t:.2} mm, {least:.2} mm asked, 0.8 mm of it for corrosion");
        let remedy = next_stock("a wall", &asked.stock.tube_walls, least);
        Ok(Outcome::compared(t, least, says, remedy))
    })
}

/// The table of least nominal walls by nominal diameters.
fn least_wall(shell: &Shell) -> Finding {
    check(SHIP_REGISTER.head(&SHIP_LEAST_WALL, &shell.id), |sum| {
        let wall = need("the wall", &shell.id, shell.wall.as_ref())?;
        let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
        if shell.metal != Metal::Copper {
            let what = "a shell that is not of copper";
            return Err(Stop::NotWorked { what });
        }
        let has = nominal(wall);
        let t = sum.know("t_d", "wall as drawn or made", &MM, &has);
        let meaning = "diameter as drawn or made";
        let outside = match diameter {
            Diameter::Outside(d) => sum.know("D_o", meaning, &MM, &nominal(d)),
            Diameter::Inside(d) => {
                let bore = sum.know("D_i", meaning, &MM, &nominal(d));
                sum.card(&ring::OUTSIDE, &[bore, t])?
            }
        };
        let least = sum.card(&floor::FLOOR_WALL, &[outside])?;
        let (has, least) = (has.value.mm(), sum.value(least));
        let says = format!("wall {has:.2} mm, copper pipe of this size has {least:.1} mm");
        let remedy = format!("a wall of {least:.1} mm");
        Ok(Outcome::plain(kept(has >= least), says, remedy))
    })
}

fn plate(plate: &TubePlate, _: &Asked<'_>) -> Vec<Finding> {
    let what = "a plate held by tubes";
    let mut found = vec![unworked::one(
        &SHIP_REGISTER,
        &SHIP_NOT_WORKED,
        &plate.id,
        what,
    )];
    let what = "an opening in a plate held by tubes";
    let openings = &plate.openings;
    found.extend(unworked::openings(
        &SHIP_REGISTER,
        &SHIP_NOT_WORKED,
        openings,
        what,
    ));
    found
}

fn flue(flue: &Flue, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![match flue.exposure {
        Exposure::Gas => smoke_tube(flue, asked),
        Exposure::FlameSwept => {
            let what = "a tube in the flame with pressure outside";
            unworked::one(&SHIP_REGISTER, &SHIP_NOT_WORKED, &flue.id, what)
        }
    }];
    let what = "an opening in a tube with pressure outside";
    let openings = &flue.openings;
    found.extend(unworked::openings(
        &SHIP_REGISTER,
        &SHIP_NOT_WORKED,
        openings,
        what,
    ));
    found
}

/// The table of smoke tubes, which is of steel.
fn smoke_tube(flue: &Flue, asked: &Asked<'_>) -> Finding {
    check(SHIP_REGISTER.head(&SHIP_SMOKE_TUBE, &flue.id), |sum| {
        if flue.metal != Metal::Steel {
            let what = "a smoke tube that is not of steel";
            return Err(Stop::NotWorked { what });
        }
        let taken = SHIP_REGISTER.take_tube(sum, flue, asked)?;
        let most = sum.card(&register::SMOKE_TUBE, &[taken.t, taken.d_o])?;
        taken.wall.hold_as_used(sum, "wall", &flue.id);
        let (most, p) = (sum.value(most), taken.served.p_mpa);
        let says = format!("the table gives {} bar, {} bar asked", bar(most), bar(p));
        let remedy = SHIP_SMOKE_TUBE.remedy.to_owned();
        Ok(Outcome::compared(most, p, says, remedy))
    })
}
