//! Parts as every set takes them: service, and sizes at their bad ends.

use super::served::Served;
use super::{Asked, RuleSet};
use crate::input::{Diameter, Flue, Shell, TubePlate};
use crate::sum::{Stop, Sum};
use crate::taken::{SideLines, Wall, down, file_sides, need, si};
use reckoning::quantity::MM;
use reckoning::{Bound, Ref};

/// A shell as a set takes it.
pub(super) struct TakenShell<'a> {
    pub(super) served: Served,
    pub(super) wall: Wall,
    pub(super) diameter: &'a Diameter,
    pub(super) sides: SideLines,
    /// Line of the least wall.
    pub(super) t: Ref,
}

/// A tube with pressure outside as a set takes it.
pub(super) struct TakenTube {
    pub(super) served: Served,
    pub(super) wall: Wall,
    /// Line of the least wall.
    pub(super) t: Ref,
    /// Line of the outside diameter.
    pub(super) d_o: Ref,
    /// Line of the length between supports.
    pub(super) l: Ref,
}

/// A plate as a set takes it.
pub(super) struct TakenPlate {
    pub(super) served: Served,
    pub(super) wall: Wall,
    /// Line of the least thickness.
    pub(super) t: Ref,
}

impl RuleSet {
    /// Files service and sizes of a shell.
    pub(super) fn take_shell<'a>(
        &self,
        sum: &mut Sum,
        shell: &'a Shell,
        asked: &Asked<'_>,
    ) -> Result<TakenShell<'a>, Stop> {
        let served = self.serve(sum, asked, &shell.id, shell.metal_temperature.as_ref())?;
        let wall = Wall::of(need("the wall", &shell.id, shell.wall.as_ref())?);
        let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
        self.keep_wall(sum, "shell", wall.mm(), self.scope.shell_mm);
        let t = wall.file(sum, "t", "least wall of the shell")?;
        let sides = file_sides(sum, diameter, t)?;
        Ok(TakenShell {
            served,
            wall,
            diameter,
            sides,
            t,
        })
    }

    /// Files service and sizes of a tube with pressure outside.
    pub(super) fn take_tube(
        &self,
        sum: &mut Sum,
        flue: &Flue,
        asked: &Asked<'_>,
    ) -> Result<TakenTube, Stop> {
        let served = self.serve(sum, asked, &flue.id, flue.metal_temperature.as_ref())?;
        let diameter = need("the diameter", &flue.id, flue.diameter.as_ref())?;
        let wall = Wall::of(need("the wall", &flue.id, flue.wall.as_ref())?);
        let length = need("the length", &flue.id, flue.length.as_ref())?;
        self.keep_wall(sum, "tube", wall.mm(), self.scope.flue_mm);
        let t = wall.file(sum, "t", "least wall")?;
        let d_o = file_sides(sum, diameter, t)?.outside;
        let l = sum.know("L", "length between supports", &MM, length);
        Ok(TakenTube {
            served,
            wall,
            t,
            d_o,
            l,
        })
    }

    /// Files service and thickness of a plate.
    pub(super) fn take_plate(
        &self,
        sum: &mut Sum,
        plate: &TubePlate,
        asked: &Asked<'_>,
    ) -> Result<TakenPlate, Stop> {
        let served = self.serve(sum, asked, &plate.id, plate.metal_temperature.as_ref())?;
        let wall = Wall::of(need("the thickness", &plate.id, plate.thickness.as_ref())?);
        self.keep_wall(sum, "plate", wall.mm(), self.scope.plate_mm);
        let t = wall.file(sum, "t", "least thickness of the plate")?;
        Ok(TakenPlate { served, wall, t })
    }
}

impl TakenTube {
    /// Hold points of a check that was not turned round: the wall and the ovality that were used,
    /// where they are still to be measured.
    pub(super) fn hold_as_used(
        &self,
        sum: &mut Sum,
        id: &str,
        ovality_open: Option<String>,
        delta_mm: f64,
    ) {
        if let Some(field) = ovality_open {
            let says = format!(
                "ovality of {id}, Dmax - Dmin, at most {} mm",
                down(delta_mm)
            );
            sum.hold_within(says, field, Bound::AtMost(si(delta_mm)));
        }
        self.wall.hold_as_used(sum, "wall", id);
    }
}
