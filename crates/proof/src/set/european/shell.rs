//! A shell with pressure inside by the European vessel standard.

use super::{EN_13445, Heat, file_stress, opening};
use crate::input::{Diameter, Shell};
use crate::remedy::next_stock;
use crate::rules::EN_SHELL_WALL;
use crate::set::Asked;
use crate::set::taking::TakenShell;
use crate::set::unworked::seamless;
use crate::sum::{Outcome, Stop, Sum, check};
use formulas::vessel::shell as law;
use reckoning::{Finding, Ref};

/// Every check of a shell.
pub(super) fn checks(shell: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![wall(shell, asked)];
    found.extend(opening::checks(shell, asked));
    found
}

/// Files service, sizes and design stress of a shell.
pub(super) fn take<'a>(
    sum: &mut Sum,
    shell: &'a Shell,
    asked: &Asked<'_>,
) -> Result<(TakenShell<'a>, Ref), Stop> {
    let taken = EN_13445.take_shell(sum, shell, asked)?;
    let f = file_stress(&mut sum.w, shell.metal, Heat::At(taken.served.metal))?;
    Ok((taken, f))
}

/// The wall of a shell, or of a tube that is worked as one.
pub(super) fn wall(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(EN_13445.head(&EN_SHELL_WALL, &shell.id), |sum| {
        let (taken, f) = take(sum, shell, asked)?;
        seamless(shell.seam)?;
        let z = EN_13445.file_joint(sum, "z", EN_13445.joints.seam(shell.seam));
        let p = taken.served.p;
        let least = match taken.diameter {
            Diameter::Outside(_) => {
                sum.card(&law::SHELL_WALL_OUTSIDE, &[p, taken.sides.outside, f, z])?
            }
            Diameter::Inside(_) => sum.card(&law::SHELL_WALL, &[p, taken.sides.bore, f, z])?,
        };
        let (t, least) = (taken.wall.mm(), sum.value(least));
        taken.wall.hold(sum, "wall", &shell.id, least);
        let says = format!("wall {t:.2} mm, {least:.2} mm asked by the formula of EN 13445-3");
        let remedy = next_stock("a wall", &asked.stock.tube_walls, least);
        Ok(Outcome::compared(t, least, says, remedy))
    })
}
