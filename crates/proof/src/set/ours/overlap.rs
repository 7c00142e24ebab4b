//! Openings that share metal: half of what they ask lies between them; and openings beside a lap.

use super::bush::seamless_wall;
use super::flue_opening::file_wall_asked;
use super::ligament::{hole_mm, measure};
use super::{OURS, flue, shell};
use crate::input::{Flue, Lap, Opening, Place, Shell};
use crate::metal::chosen;
use crate::opening::Side;
use crate::rules::{OPENING_BETWEEN, OPENING_LAP};
use crate::set::Asked;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{file_sides, hold_size, need, up};
use formulas::vessel::{opening as area, overlap as law};
use reckoning::quantity::{Length, MM, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin, Ref};

/// Both checks of the openings of a shell.
pub(super) fn of_shell(it: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![check(OURS.head(&OPENING_BETWEEN, &it.id), |sum| {
        if it.openings.len() < 2 {
            return Ok(alone());
        }
        let taken = shell::take(sum, it, asked)?;
        let lines = file_sides(sum, taken.diameter, taken.t)?;
        let t_r = seamless_wall(sum, &taken, &lines)?;
        taken.wall.hold_as_used(sum, "wall", &it.id);
        let round = Round {
            side: Side::Inside,
            outside_mm: sum.value(lines.outside),
            t: taken.t,
            t_r,
        };
        between(sum, &it.openings, &round)
    })];
    found.extend(beside_laps(&it.id, &it.openings, &it.laps));
    found
}

/// Both checks of the openings of a tube with pressure outside.
pub(super) fn of_flue(it: &Flue, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    if it.openings.len() > 1 {
        found.push(check(OURS.head(&OPENING_BETWEEN, &it.id), |sum| {
            let taken = flue::take(sum, it, asked)?;
            let t_r = file_wall_asked(sum, &taken)?;
            flue::hold_as_used(sum, it, &taken);
            let round = Round {
                side: Side::Outside,
                outside_mm: taken.tube.d_o_mm,
                t: taken.lines.t,
                t_r,
            };
            between(sum, &it.openings, &round)
        }));
    }
    found.extend(beside_laps(&it.id, &it.openings, &it.laps));
    found
}

/// The wall round two openings.
struct Round {
    side: Side,
    outside_mm: f64,
    t: Ref,
    t_r: Ref,
}

fn alone() -> Outcome {
    let says = "no two openings share metal".to_owned();
    Outcome::plain(Answer::Holds, says, OPENING_BETWEEN.remedy.to_owned())
}

/// Two openings whose limits of replacement overlap.
struct Pair<'a> {
    one: &'a Opening,
    other: &'a Opening,
    along_mm: f64,
    around_mm: f64,
    weakest: Origin,
    /// Distance of the middles over the mean diameter.
    spread: f64,
}

/// The closest pair in parts of its mean diameter, where any overlap: limits reach a diameter from
/// each middle.
fn closest<'a>(openings: &'a [Opening], outside_mm: f64) -> Result<Option<Pair<'a>>, Stop> {
    let mut found: Option<Pair<'a>> = None;
    for (i, one) in openings.iter().enumerate() {
        for other in &openings[i + 1..] {
            let at = measure(one, other, outside_mm)?;
            let (d_1, d_2) = (hole_mm(one)?, hole_mm(other)?);
            let apart = at.along_mm.hypot(at.around_mm);
            let pair = Pair {
                one,
                other,
                along_mm: at.along_mm,
                around_mm: at.around_mm,
                weakest: at.weakest,
                spread: 2.0 * apart / (d_1 + d_2),
            };
            let nearer = found.as_ref().is_none_or(|f| pair.spread < f.spread);
            if apart < d_1 + d_2 && nearer {
                found = Some(pair);
            }
        }
    }
    Ok(found)
}

fn between(sum: &mut Sum, openings: &[Opening], round: &Round) -> Result<Outcome, Stop> {
    for opening in openings {
        if let Some(hole) = &opening.hole {
            hold_size(sum, &format!("hole of {}", opening.id), hole, Bad::Large);
        }
    }
    let Some(pair) = closest(openings, round.outside_mm)? else {
        return Ok(alone());
    };
    let of = format!("{} and {}", pair.one.id, pair.other.id);
    let length = |sum: &mut Sum, symbol: &str, meaning: &str, mm: f64| {
        let reason = "the closest pair in parts of its mean diameter";
        let known = chosen(Length::from_mm(mm), &of, reason, pair.weakest);
        sum.know(symbol, meaning, &MM, &known)
    };
    let a = length(sum, "a", "spacing along the axis", pair.along_mm);
    let b = length(sum, "b", "spacing round the shell", pair.around_mm);
    let l = sum.card(&law::APART, &[a, b])?;
    let d_1 = length(sum, "d_1", "hole of the one", hole_mm(pair.one)?);
    let d_2 = length(sum, "d_2", "hole of the other", hole_mm(pair.other)?);
    let least = sum.card(&law::LEAST, &[d_1, d_2])?;
    let (apart, least) = (sum.value(l), sum.value(least));
    let remedy = format!("{of} at least {} mm apart", up(least));
    if apart < least {
        let says = format!("{of} stand {apart:.1} mm apart, {least:.1} mm asked");
        return Ok(Outcome::compared(apart, least, says, remedy));
    }
    let spare = sum.card(&law::BETWEEN, &[l, d_1, d_2, round.t, round.t_r]);
    let Ok(spare) = spare else {
        let says = format!("the wall has nothing to spare between {of}");
        return Ok(Outcome::plain(Answer::Fails, says, remedy));
    };
    let a_1 = file_asked(sum, round, d_1)?;
    let a_2 = file_asked(sum, round, d_2)?;
    let half = sum.card(&law::HALF, &[a_1, a_2])?;
    let (spare, half) = (sum.value(spare), sum.value(half));
    let says = format!("{spare:.1} mm² to spare between {of}, {half:.1} mm² asked");
    let wider = apart + (half - spare) / (sum.value(round.t) - sum.value(round.t_r));
    let remedy = format!("{of} at least {} mm apart", up(wider));
    Ok(Outcome::compared(spare, half, says, remedy))
}

/// Files the metal that an opening asks, its bush not counted.
fn file_asked(sum: &mut Sum, round: &Round, d: Ref) -> Result<Ref, Stop> {
    if round.side == Side::Outside {
        return sum.card(&area::AREA_REQUIRED_EXTERNAL, &[d, round.t_r]);
    }
    let (between, reason) = ("with or without a bush", "bushes are not counted here");
    let t_n = chosen(Length::from_mm(0.0), between, reason, Origin::Read);
    let t_n = sum.know("t_n", "wall of the bush", &MM, &t_n);
    let f_r = chosen(Ratio::from_number(1.0), between, reason, Origin::Read);
    let f_r = sum.know("f_r", "strength of bush over shell", &ONE, &f_r);
    sum.card(&area::AREA_REQUIRED, &[d, round.t_r, t_n, f_r])
}

/// The opening of a wall that lies closest to a lap; none where no lap is told.
fn beside_laps(wall: &str, openings: &[Opening], laps: &[Lap]) -> Option<Finding> {
    if laps.is_empty() || openings.is_empty() {
        return None;
    }
    Some(check(OURS.head(&OPENING_LAP, wall), |sum| {
        let mut worst: Option<Near<'_>> = None;
        for opening in openings {
            let next = nearest(sum, opening, laps)?;
            if worst.as_ref().is_none_or(|w| next.gap_mm < w.gap_mm) {
                worst = Some(next);
            }
        }
        let near = need("an opening", wall, worst.as_ref())?;
        let (gap, of) = (near.gap_mm, &near.lap.of);
        sum.know("z", "middle of the opening", &MM, &near.place.along);
        sum.know("z_a", "lap from", &MM, &near.lap.from);
        sum.know("z_b", "lap to", &MM, &near.lap.to);
        if gap < 0.0 {
            let remedy = format!("{} {} mm further from {of}", near.opening.id, up(-gap));
            let says = format!(
                "{} runs {:.1} mm into the lap of {of}",
                near.opening.id, -gap
            );
            return Ok(Outcome::plain(Answer::Fails, says, remedy));
        }
        let says = format!(
            "{gap:.1} mm of wall between {} and the lap of {of}",
            near.opening.id
        );
        let close = (gap < near.hole_mm / 2.0).then(|| {
            "within its limit of replacement: count no metal of the lap for it".to_owned()
        });
        let remedy = OPENING_LAP.remedy.to_owned();
        Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(close))
    }))
}

/// An opening and the lap nearest to it.
struct Near<'a> {
    opening: &'a Opening,
    place: &'a Place,
    lap: &'a Lap,
    hole_mm: f64,
    gap_mm: f64,
}

fn nearest<'a>(sum: &mut Sum, opening: &'a Opening, laps: &'a [Lap]) -> Result<Near<'a>, Stop> {
    let place = need("the place", &opening.id, opening.place.as_ref())?;
    let hole = need("the hole", &opening.id, opening.hole.as_ref())?;
    hold_size(sum, &format!("hole of {}", opening.id), hole, Bad::Large);
    let (hole_mm, at) = (hole_mm(opening)?, place.along.value.mm());
    let gap = |lap: &Lap| (lap.from.value.mm() - at).max(at - lap.to.value.mm()) - hole_mm / 2.0;
    let lap = laps.iter().min_by(|a, b| gap(a).total_cmp(&gap(b)));
    let lap = need("a lap", &opening.id, lap.as_ref())?;
    Ok(Near {
        opening,
        place,
        lap,
        hole_mm,
        gap_mm: gap(lap),
    })
}
