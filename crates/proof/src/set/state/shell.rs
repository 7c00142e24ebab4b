//! Shells by regulation 366.

use super::{IBR, file_tensile, mpa};
use crate::input::Shell;
use crate::metal::proof_hot;
use crate::rules::{STATE_NOT_WORKED, STATE_SHELL};
use crate::set::{Asked, unworked};
use crate::sum::{Outcome, check};
use crate::taken::bar;
use formulas::vessel::state;
use reckoning::Finding;
use reckoning::quantity::MPA;

/// Every check of a shell.
pub(super) fn checks(shell: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![wall(shell, asked)];
    let what = "an opening in a shell";
    let openings = &shell.openings;
    found.extend(unworked::openings(&IBR, &STATE_NOT_WORKED, openings, what));
    found
}

fn wall(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(IBR.head(&STATE_SHELL, &shell.id), |sum| {
        let taken = IBR.take_shell(sum, shell, asked)?;
        unworked::seamless(shell.seam)?;
        let s = file_tensile(sum, shell.metal)?;
        let proof = proof_hot(shell.metal, taken.served.metal)?;
        let proof = sum.know("E_t", "0.2 % proof stress at work", &MPA, &proof);
        let f = sum.card(&state::SHELL_STRESS, &[s, proof])?;
        let e = IBR.file_joint(sum, "E", IBR.joints.seam(shell.seam));
        let most = sum.card(&state::SHELL, &[f, e, taken.t, taken.sides.bore])?;
        taken.wall.hold_as_used(sum, "wall", &shell.id);
        let (most, p) = (mpa(sum.value(most)), taken.served.p_mpa);
        let says = format!(
            "allowed {} bar by its wall, {} bar asked",
            bar(most),
            bar(p)
        );
        Ok(Outcome::compared(
            most,
            p,
            says,
            STATE_SHELL.remedy.to_owned(),
        ))
    })
}
