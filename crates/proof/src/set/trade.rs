//! The factor of safety of the trade's books: common practice, without a test of its own behind it.

use super::{Asked, Inspection, Joints, RuleSet, Scope, Test, unworked};
use crate::input::{Boiler, Flue, Metal, Shell, TubePlate};
use crate::metal::chosen;
use crate::remedy::{at_least, next_stock};
use crate::rules::{TRADE_FLAT, TRADE_NOT_WORKED, TRADE_SHELL};
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{file_sides, file_size, need};
use formulas::vessel::factor_of_safety as law;
use reckoning::quantity::{INCH, Length, MM, ONE, PSI, Quantity, Ratio, Stress, Unit};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Finding, Origin, Ref, Seen};

/// An eighth of the tensile strength.
pub static TRADE: RuleSet = RuleSet {
    key: "trade",
    title: "Factor of safety of the trade's books on model boilers",
    edition: "common practice",
    seen: Seen::CommonPractice,
    how_read: "at second hand, in pages of the hobby that quote the books",
    stress_basis: "25 000 lb/in² over 8, whatever the temperature of the metal",
    joints: Joints {
        both_sides: 1.0,
        lap_along: 0.8,
        strap_along: 0.8,
        blind: 0.5,
        below_one: Origin::CommonPractice,
    },
    test: Test::Times(2.0),
    inspection: Some(Inspection::CLUBS),
    scope: Scope {
        pressure_bar: f64::INFINITY,
        metal_c: 185.0,
        shell_mm: 0.0,
        flue_mm: 0.0,
        plate_mm: 0.0,
    },
    departures: &[
        "Joints: the books leave the joint out; its efficiency stands beside the strength here.",
        "Diameter: the books write it without saying which; the outside one is taken.",
        "Temperature: the first form knows none; it is used up to 185 °C, above which the published \
         tables of copper fall below it. The second form stands beside.",
        "Stayed flats: a third thicker than the wall that the barrel needs; against the wall that it \
         has, the plate is marked tight.",
    ],
    whole,
    shell,
    plate,
    flue,
};

/// Tensile strength, lb/in², and factor of safety.
const STRENGTH_PSI: f64 = 25_000.0;
const SAFETY: f64 = 8.0;
/// Tensile strength of the second form, lb/in², and its factor for temperature.
const HOT_PSI: f64 = 16_000.0;
const HOT: f64 = 0.8;

fn number(sum: &mut Sum, symbol: &str, meaning: &str, value: f64) -> Ref {
    given(sum, (symbol, meaning), &ONE, Ratio::from_number(value))
}

fn given<Q: Quantity>(
    sum: &mut Sum,
    (symbol, meaning): (&str, &str),
    unit: &'static Unit,
    value: Q,
) -> Ref {
    let known = chosen(
        value,
        "the trade's books",
        "as they print it",
        Origin::CommonPractice,
    );
    sum.know(symbol, meaning, unit, &known)
}

/// Walls that a barrel needs by both forms, mm, with the line of the first.
struct Needed {
    first: Ref,
    first_mm: f64,
    second_mm: f64,
}

/// Files what both forms ask of a barrel.
fn file_needed(sum: &mut Sum, shell: &Shell, p: Ref, d: Ref) -> Result<Needed, Stop> {
    if shell.metal != Metal::Copper {
        let what = "a barrel that is not of copper";
        return Err(Stop::NotWorked { what });
    }
    let e = TRADE.file_joint(sum, "E", TRADE.joints.seam(shell.seam));
    let k = number(sum, "k", "factor of safety", SAFETY);
    let meaning = ("U", "tensile strength of copper, cold");
    let u = given(sum, meaning, &PSI, Stress::from_psi(STRENGTH_PSI));
    let first = sum.card(&law::SHELL_WALL, &[p, d, u, k, e])?;
    let meaning = ("U", "tensile strength, second form");
    let u = given(sum, meaning, &PSI, Stress::from_psi(HOT_PSI));
    let h = number(sum, "h", "factor for temperature, second form", HOT);
    let second = sum.card(&law::SHELL_WALL_HOT, &[p, d, u, k, h, e])?;
    let mm = |line: Ref, sum: &Sum| Length::from_unit(sum.value(line), &INCH).mm();
    Ok(Needed {
        first,
        first_mm: mm(first, sum),
        second_mm: mm(second, sum),
    })
}

fn shell(shell: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![wall(shell, asked)];
    let what = "an opening in a shell";
    let openings = &shell.openings;
    found.extend(unworked::openings(
        &TRADE,
        &TRADE_NOT_WORKED,
        openings,
        what,
    ));
    found
}

fn wall(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(TRADE.head(&TRADE_SHELL, &shell.id), |sum| {
        let taken = TRADE.take_shell(sum, shell, asked)?;
        let needed = file_needed(sum, shell, taken.served.p, taken.sides.outside)?;
        let (t, least) = (taken.wall.mm(), needed.first_mm);
        taken.wall.hold(sum, "wall", &shell.id, least);
        let says = format!("wall {t:.2} mm, {least:.2} mm asked at an eighth of the strength");
        let remark = (t < needed.second_mm).then(|| {
            format!(
                "the trade's second form, for hot copper, asks {:.2} mm",
                needed.second_mm
            )
        });
        let remedy = next_stock("a wall", &asked.stock.tube_walls, least);
        Ok(Outcome::compared(t, least, says, remedy).strained_if(remark))
    })
}

fn plate(plate: &TubePlate, _: &Asked<'_>) -> Vec<Finding> {
    let what = "an opening in a stayed flat";
    let openings = &plate.openings;
    unworked::openings(&TRADE, &TRADE_NOT_WORKED, openings, what).collect()
}

fn flue(flue: &Flue, _: &Asked<'_>) -> Vec<Finding> {
    let what = "a tube with pressure outside";
    let mut found = vec![unworked::one(&TRADE, &TRADE_NOT_WORKED, &flue.id, what)];
    let what = "an opening in a tube with pressure outside";
    let openings = &flue.openings;
    found.extend(unworked::openings(
        &TRADE,
        &TRADE_NOT_WORKED,
        openings,
        what,
    ));
    found
}

fn whole(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = unworked::further(&TRADE, &TRADE_NOT_WORKED, boiler, &[]);
    for plate in &boiler.plates {
        found.push(flat(boiler, plate, asked));
    }
    found.extend(unworked::of_ends(&TRADE, &TRADE_NOT_WORKED, boiler));
    found
}

/// Files the greatest wall that a barrel of the boiler needs, and tells the greatest that one has.
fn file_barrel(sum: &mut Sum, boiler: &Boiler, asked: &Asked<'_>) -> Result<(Ref, f64), Stop> {
    need("a barrel", "the boiler", boiler.shells.first())?;
    let (mut lines, mut has_mm) = (Vec::new(), 0.0_f64);
    for shell in &boiler.shells {
        let taken = TRADE.take_shell(sum, shell, asked)?;
        // The thickest wall makes the barrel largest, and the flats with it.
        let wall = need("the wall", &shell.id, shell.wall.as_ref())?;
        let meaning = ("t", "wall of the barrel at its thickest");
        let thickest = file_size(sum, meaning, wall, Bad::Large)?;
        let outside = file_sides(sum, taken.diameter, thickest)?.outside;
        let needed = file_needed(sum, shell, taken.served.p, outside)?;
        lines.push((needed.first, needed.first_mm));
        has_mm = has_mm.max(taken.wall.mm());
    }
    let most = lines.iter().map(|(_, mm)| *mm).fold(0.0, f64::max);
    let from: Vec<Ref> = lines.iter().map(|(line, _)| *line).collect();
    let line = sum.w.chosen(Choice {
        symbol: "t",
        meaning: "wall that the barrel needs",
        value: most,
        unit: &MM,
        between: "every barrel of the boiler",
        reason: "the greatest",
        from: &from,
        cite: None,
    });
    Ok((line, has_mm))
}

/// A stayed flat against the barrel.
fn flat(boiler: &Boiler, plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(TRADE.head(&TRADE_FLAT, &plate.id), |sum| {
        let taken = TRADE.take_plate(sum, plate, asked)?;
        let (barrel, barrel_mm) = file_barrel(sum, boiler, asked)?;
        let least = sum.card(&law::FLAT, &[barrel])?;
        let (t, least) = (taken.wall.mm(), sum.value(least));
        taken.wall.hold(sum, "thickness", &plate.id, least);
        let says = format!("plate {t:.2} mm, {least:.2} mm asked by the barrel that is needed");
        let of_barrel = law::flat(barrel_mm);
        let remark = (t < of_barrel).then(|| {
            format!(
                "four thirds of the barrel as it is are {} mm",
                at_least(of_barrel)
            )
        });
        let remedy = next_stock("a plate", &asked.stock.sheets, least);
        Ok(Outcome::compared(t, least, says, remedy).strained_if(remark))
    })
}
