//! Openings that lie close: the wall that the ligament between them asks.

use super::OURS;
use super::bush::hoop_wall;
use super::shell::take;
use crate::input::{Opening, Place, Shell};
use crate::metal::chosen;
use crate::remedy::next_stock;
use crate::rules::SHELL_LIGAMENT;
use crate::set::Asked;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_sides, hold_size, need, sides};
use formulas::vessel::ligament;
use reckoning::quantity::{Length, MM};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Finding, Origin, Ref};
use std::f64::consts::TAU;

/// Two openings, how far they lie apart, and the larger hole.
pub(super) struct Pair<'a> {
    names: (&'a str, &'a str),
    pub(super) along_mm: f64,
    pub(super) around_mm: f64,
    hole_mm: f64,
    efficiency: f64,
    pub(super) weakest: Origin,
}

/// The pair of openings that weakens the shell most.
pub(super) fn check_pairs(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&SHELL_LIGAMENT, &shell.id), |sum| {
        let wall = Wall::of(need("the wall", &shell.id, shell.wall.as_ref())?);
        let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
        let outside_mm = sides(diameter, wall.mm()).outside_mm;
        // One opening alone shares its metal with no other, whatever its size.
        for opening in shell.openings.iter().filter(|_| shell.openings.len() > 1) {
            if let Some(hole) = &opening.hole {
                hold_size(sum, &format!("hole of {}", opening.id), hole, Bad::Large);
            }
        }
        let Some(pair) = worst(shell, outside_mm, wall.mm())? else {
            let says = "no two openings share metal".to_owned();
            return Ok(Outcome::plain(
                Answer::Holds,
                says,
                SHELL_LIGAMENT.remedy.to_owned(),
            ));
        };
        weigh(sum, shell, asked, &pair)
    })
}

/// The wall that a pair asks, filed.
fn weigh(
    sum: &mut Sum,
    shell: &Shell,
    asked: &Asked<'_>,
    pair: &Pair<'_>,
) -> Result<Outcome, Stop> {
    if pair.along_mm.hypot(pair.around_mm) <= pair.hole_mm {
        let says = format!("{} and {} run into each other", pair.names.0, pair.names.1);
        return Ok(Outcome::plain(
            Answer::Fails,
            says,
            SHELL_LIGAMENT.remedy.to_owned(),
        ));
    }
    let taken = take(sum, shell, asked)?;
    let lines = file_sides(sum, taken.diameter, taken.t)?;
    let e = file_efficiency(sum, pair)?;
    let t_r = hoop_wall(sum, &taken, &lines, e)?;
    let (t, t_r) = (sum.value(taken.t), sum.value(t_r));
    taken.wall.hold(sum, "wall", &shell.id, t_r);
    let says = format!(
        "between {} and {} the wall is {t:.2} mm, {t_r:.2} mm asked",
        pair.names.0, pair.names.1
    );
    let remedy = next_stock(
        "openings further apart, or a wall",
        &asked.stock.tube_walls,
        t_r,
    );
    Ok(Outcome::compared(t, t_r, says, remedy))
}

/// Files the efficiency of the ligament between a pair.
fn file_efficiency(sum: &mut Sum, pair: &Pair<'_>) -> Result<Ref, Stop> {
    let length = |mm: f64, of: &str| {
        let between = format!("{of} of {} and {}", pair.names.0, pair.names.1);
        let reason = "the pair that weakens the shell most";
        chosen(Length::from_mm(mm), &between, reason, pair.weakest)
    };
    let a = length(pair.along_mm, "distance along the axis");
    let a = sum.know("a", "spacing along the axis", &MM, &a);
    let b = length(pair.around_mm, "distance round the shell");
    let b = sum.know("b", "spacing round the shell", &MM, &b);
    let d = length(pair.hole_mm, "larger hole");
    let d = sum.know("d", "larger hole", &MM, &d);
    let j = if pair.around_mm > 0.0 {
        sum.settled(&ligament::SLANT, &[a, b, d], pair.efficiency)?
    } else {
        sum.settled(&ligament::ROW, &[a, d], pair.efficiency)?
    };
    Ok(sum.w.chosen(Choice {
        symbol: "E",
        meaning: "ligament efficiency",
        value: pair.efficiency.min(1.0),
        unit: &reckoning::quantity::ONE,
        between: "the ligament and the whole shell",
        reason: "no shell is stronger than without holes",
        from: &[j],
        cite: None,
    }))
}

/// The pair of least efficiency among those whose limits of replacement overlap.
fn worst<'a>(shell: &'a Shell, outside_mm: f64, t_mm: f64) -> Result<Option<Pair<'a>>, Stop> {
    let mut worst: Option<Pair<'a>> = None;
    for (i, one) in shell.openings.iter().enumerate() {
        for other in &shell.openings[i + 1..] {
            let pair = measure(one, other, outside_mm)?;
            let apart = pair.along_mm.hypot(pair.around_mm);
            let reach = reach_mm(one, t_mm)? + reach_mm(other, t_mm)?;
            let weaker = worst
                .as_ref()
                .is_none_or(|w| pair.efficiency < w.efficiency);
            if apart < reach && weaker {
                worst = Some(pair);
            }
        }
    }
    Ok(worst)
}

pub(super) fn hole_mm(opening: &Opening) -> Result<f64, Stop> {
    let hole = need("the hole", &opening.id, opening.hole.as_ref())?;
    Ok(crate::taken::size_mm(hole, Bad::Large))
}

/// How far from its centre an opening borrows metal: its diameter, or half of it, the bush
/// within and a wall.
fn reach_mm(opening: &Opening, t_mm: f64) -> Result<f64, Stop> {
    let hole = hole_mm(opening)?;
    Ok(hole.max(hole / 2.0 + t_mm))
}

pub(super) fn measure<'a>(
    one: &'a Opening,
    other: &'a Opening,
    outside_mm: f64,
) -> Result<Pair<'a>, Stop> {
    let place =
        |o: &'a Opening| -> Result<&'a Place, Stop> { need("the place", &o.id, o.place.as_ref()) };
    let (p, q) = (place(one)?, place(other)?);
    let turn = (p.around.value.rad() - q.around.value.rad()).rem_euclid(TAU);
    let around_mm = turn.min(TAU - turn) * outside_mm / 2.0;
    let along_mm = (p.along.value.mm() - q.along.value.mm()).abs();
    let hole_mm = hole_mm(one)?.max(hole_mm(other)?);
    Ok(Pair {
        names: (&one.id, &other.id),
        along_mm,
        around_mm,
        hole_mm,
        efficiency: if around_mm > 0.0 {
            ligament::slant(along_mm, around_mm, hole_mm)
        } else {
            ligament::row(along_mm, hole_mm)
        },
        weakest: [
            p.along.given.origin(),
            p.around.given.origin(),
            q.along.given.origin(),
            q.around.given.origin(),
        ]
        .into_iter()
        .fold(Origin::Read, Origin::max),
    })
}
