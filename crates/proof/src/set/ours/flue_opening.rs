//! An opening in a tube with pressure outside: a firehole, a cross tube.

use super::OURS;
use super::flue::{Taken, take};
use crate::external::Limits;
use crate::external_solve::least_wall;
use crate::input::{Flue, Opening};
use crate::opening::{Round, Side, replace};
use crate::rules::FLUE_OPENING;
use crate::set::Asked;
use crate::stress;
use crate::sum::{Stop, Sum, check};
use reckoning::quantity::MM;
use reckoning::quantity::show::figures;
use reckoning::working::Root;
use reckoning::{Finding, Ref};

/// Half the area that external pressure asks.
pub(super) fn check_opening(flue: &Flue, opening: &Opening, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&FLUE_OPENING, &opening.id), |sum| {
        let taken = take(sum, flue, asked)?;
        let t_r = file_wall_asked(sum, &taken)?;
        let given = &taken.lines;
        let metal = taken.served.metal;
        let round = Round {
            side: Side::Outside,
            diameter_mm: taken.tube.d_o_mm,
            p: taken.served.p,
            t: given.t,
            t_r,
            s: given.f,
            bush_stress: &|sum, bush| stress::ours(sum, bush, metal, "f_b"),
        };
        let outcome = replace(sum, opening, &round)?;
        super::flue::hold_as_used(sum, flue, &taken);
        Ok(outcome)
    })
}

/// Files the wall that external pressure asks of a round tube.
pub(super) fn file_wall_asked(sum: &mut Sum, taken: &Taken) -> Result<Ref, Stop> {
    let solved = least_wall(taken.tube, taken.served.p_mpa, Limits::Collapse)?;
    let given = &taken.lines;
    Ok(sum.w.solved(Root {
            symbol: "t_r",
            meaning: "wall that external pressure asks of a round tube",
            unit: &MM,
            balance: "least of collapse at work, collapse at the test and design stress, less the working pressure",
            solved,
            residual: &format!("{} MPa", figures(solved.residual, 2)),
            from: &[
                given.d_o,
                given.l,
                given.e,
                given.nu,
                given.hot,
                given.cold,
                given.f,
            ],
        }))
}
