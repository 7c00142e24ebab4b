//! Openings of a shell by the European vessel standard: each by its areas, and whether they stand
//! alone.

use super::EN_13445;
use super::shell::take;
use crate::input::{Bush, Opening, Place, Shell};
use crate::metal::chosen;
use crate::opening::{file_bush, file_hole};
use crate::rules::{EN_OPENING, EN_OPENINGS_APART};
use crate::set::Asked;
use crate::set::taking::TakenShell;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{bar, file_size, hold_size, need, size_mm};
use formulas::vessel::{european, pressure_area as law, ring};
use reckoning::quantity::{Area, Length, MM, MM2};
use reckoning::size::Bad;
use reckoning::{Finding, Origin, Ref};
use std::f64::consts::TAU;

/// Greatest opening without a bush, in parts of the shell's bore.
const MOST_OF_BORE: f64 = 0.5;

/// Every check of the openings of a shell.
pub(super) fn checks(shell: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let openings = shell.openings.iter();
    let mut found: Vec<Finding> = openings.map(|o| by_areas(shell, o, asked)).collect();
    if shell.openings.len() > 1 {
        found.push(apart(shell, asked));
    }
    found
}

/// Lines of metal and pressure areas: shell, bush, and the pressure on each.
struct Areas {
    metal: Ref,
    bush: Ref,
    pressed: Ref,
    pressed_bush: Ref,
}

fn by_areas(shell: &Shell, opening: &Opening, asked: &Asked<'_>) -> Finding {
    check(EN_13445.head(&EN_OPENING, &opening.id), |sum| {
        let (taken, f) = take(sum, shell, asked)?;
        let counted = opening.bush.as_ref().filter(|b| b.metal == shell.metal);
        let areas = match counted {
            Some(bush) => with_bush(sum, opening, bush, &taken)?,
            None => bare(sum, opening, &taken)?,
        };
        let inputs = [
            areas.metal,
            areas.bush,
            areas.pressed,
            areas.pressed_bush,
            f,
            f,
        ];
        let most = sum.card(&law::PRESSURE, &inputs)?;
        taken.wall.hold_as_used(sum, "wall", &shell.id);
        let (most, p) = (sum.value(most), taken.served.p_mpa);
        let by = match counted {
            Some(_) => "shell and bush",
            None => "the shell alone",
        };
        let says = format!(
            "by {by} the opening holds {} bar, {} bar asked",
            bar(most),
            bar(p)
        );
        let more = 100.0 * (p / most - 1.0);
        let remedy = format!("a shell with {more:.0} % more metal beside the opening");
        Ok(Outcome::compared(most, p, says, remedy))
    })
}

/// Files the length of shell that helps, and its metal.
fn file_shell(sum: &mut Sum, taken: &TakenShell<'_>) -> Result<(Ref, Ref, Ref), Stop> {
    let r = sum.card(&ring::RADIUS, &[taken.sides.bore])?;
    let l_so = sum.card(&law::SHELL_LENGTH, &[r, taken.t])?;
    let metal = sum.card(&law::SHELL_METAL, &[l_so, taken.t])?;
    Ok((r, l_so, metal))
}

fn bare(sum: &mut Sum, opening: &Opening, taken: &TakenShell<'_>) -> Result<Areas, Stop> {
    let hole = need("the hole", &opening.id, opening.hole.as_ref())?;
    let meaning = ("d", "hole, of which no bush counts");
    let d = file_size(sum, meaning, hole, Bad::Large)?;
    let most = MOST_OF_BORE * sum.value(taken.sides.bore);
    if sum.value(d) > most {
        sum.outside(format!(
            "clause 9 ends at half the bore of the shell, {most:.1} mm, and the opening has {:.1} mm",
            sum.value(d)
        ));
    }
    let (r, l_so, metal) = file_shell(sum, taken)?;
    let none = "no bush counts";
    let no_metal = chosen(
        Area::from_mm2(0.0),
        "with or without a bush",
        none,
        Origin::Read,
    );
    let no_length = chosen(
        Length::from_mm(0.0),
        "with or without a bush",
        none,
        Origin::Read,
    );
    let bush = sum.know("A_fb", "metal of the bush", &MM2, &no_metal);
    let zero = sum.know("l_bo", "length of bush that helps", &MM, &no_length);
    Ok(Areas {
        metal,
        bush,
        pressed: sum.card(&law::SHELL_PRESSURE, &[r, l_so, d])?,
        pressed_bush: sum.card(&law::BUSH_PRESSURE, &[d, taken.t, zero, zero])?,
    })
}

fn with_bush(
    sum: &mut Sum,
    opening: &Opening,
    bush: &Bush,
    taken: &TakenShell<'_>,
) -> Result<Areas, Stop> {
    let hole = file_hole(sum, opening)?;
    let lines = file_bush(sum, opening, bush, &hole)?;
    let (r, l_so, metal) = file_shell(sum, taken)?;
    let l_bo = sum.card(&law::BUSH_LENGTH, &[hole.cut, lines.wall])?;
    let of_bush = [lines.wall, taken.t, l_bo, lines.out, lines.inwards];
    let pressed_bush = [hole.d, taken.t, l_bo, lines.out];
    Ok(Areas {
        metal,
        bush: sum.card(&law::BUSH_METAL, &of_bush)?,
        pressed: sum.card(&law::SHELL_PRESSURE, &[r, l_so, hole.cut])?,
        pressed_bush: sum.card(&law::BUSH_PRESSURE, &pressed_bush)?,
    })
}

/// Two openings and how far apart their middles are.
struct Pair<'a> {
    one: &'a Opening,
    other: &'a Opening,
    apart_mm: f64,
    weakest: Origin,
    /// Distance less half of both holes.
    free_mm: f64,
}

/// Whether the nearest two stand alone.
fn apart(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(EN_13445.head(&EN_OPENINGS_APART, &shell.id), |sum| {
        let taken = EN_13445.take_shell(sum, shell, asked)?;
        let pair = nearest(shell, sum.value(taken.sides.bore))?;
        let pair = need("two openings", &shell.id, pair.as_ref())?;
        let names = format!("{} and {}", pair.one.id, pair.other.id);
        let between = format!("distance of {names}");
        let reason = "the two that have least shell between them";
        let has = chosen(
            Length::from_mm(pair.apart_mm),
            &between,
            reason,
            pair.weakest,
        );
        sum.know("L", "distance of the middles", &MM, &has);
        let d_1 = file_cut(sum, "d_1", pair.one)?;
        let d_2 = file_cut(sum, "d_2", pair.other)?;
        let (_, l_so, _) = file_shell(sum, &taken)?;
        let least = sum.card(&european::APART, &[d_1, d_2, l_so])?;
        let least = sum.value(least);
        let says = format!("{names} are {:.1} mm apart", pair.apart_mm);
        if pair.apart_mm < least {
            sum.outside(format!(
                "openings are judged one by one from {least:.1} mm apart"
            ));
        }
        let remedy = EN_OPENINGS_APART.remedy.to_owned();
        Ok(Outcome::plain(Answer::Holds, says, remedy))
    })
}

fn file_cut(sum: &mut Sum, symbol: &str, opening: &Opening) -> Result<Ref, Stop> {
    let hole = need("the hole", &opening.id, opening.hole.as_ref())?;
    hold_size(sum, &format!("hole of {}", opening.id), hole, Bad::Large);
    file_size(sum, (symbol, "hole cut in the shell"), hole, Bad::Large)
}

/// The pair with the least shell between them, measured round the bore.
fn nearest(shell: &Shell, bore_mm: f64) -> Result<Option<Pair<'_>>, Stop> {
    let mut nearest: Option<Pair<'_>> = None;
    for (i, one) in shell.openings.iter().enumerate() {
        for other in &shell.openings[i + 1..] {
            let pair = measure(one, other, bore_mm)?;
            let nearer = nearest.as_ref().is_none_or(|n| pair.free_mm < n.free_mm);
            if nearer {
                nearest = Some(pair);
            }
        }
    }
    Ok(nearest)
}

fn measure<'a>(one: &'a Opening, other: &'a Opening, bore_mm: f64) -> Result<Pair<'a>, Stop> {
    let place =
        |o: &'a Opening| -> Result<&'a Place, Stop> { need("the place", &o.id, o.place.as_ref()) };
    let hole = |o: &'a Opening| -> Result<f64, Stop> {
        Ok(size_mm(
            need("the hole", &o.id, o.hole.as_ref())?,
            Bad::Large,
        ))
    };
    let (p, q) = (place(one)?, place(other)?);
    let turn = (p.around.value.rad() - q.around.value.rad()).rem_euclid(TAU);
    let around_mm = turn.min(TAU - turn) * bore_mm / 2.0;
    let apart_mm = around_mm.hypot(p.along.value.mm() - q.along.value.mm());
    let origins = [
        p.along.given.origin(),
        p.around.given.origin(),
        q.along.given.origin(),
        q.around.given.origin(),
    ];
    Ok(Pair {
        one,
        other,
        apart_mm,
        weakest: origins.into_iter().fold(Origin::Read, Origin::max),
        free_mm: apart_mm - (hole(one)? + hole(other)?) / 2.0,
    })
}
