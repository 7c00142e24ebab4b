//! Lines of the air of a bed: its ash pan door, what the bed takes by its depth, and what comes
//! through holes over the fire.

use formulas::balance::{BOTH_LOSSES, WHOLE_AIR_RATIO};
use formulas::bed::BED_AIR_RATIO;
use formulas::draught::{OPENING_LOSS, ORIFICE_FLOW};
use reckoning::quantity::{Area, KG_PER_M3, KG_PER_S, M2, ONE, PA_S, Ratio};
use reckoning::{Ref, Refused};

use super::Filing;
use super::water::Water;
use crate::firing::{BedFire, BedState, FireAir, Opening};

/// The lines filed before.
pub(super) struct Airs<'a> {
    pub water: &'a Water,
    pub need: Ref,
    pub fuel_burnt: Ref,
    /// Depth of the bed and size of its lumps.
    pub sizes: [Ref; 2],
    /// Loss of bed, grate and ash.
    pub loss: Ref,
}

impl Filing<'_> {
    /// Files door and holes; gives the line of all that is lost below the crown.
    pub(super) fn bed_air(
        &mut self,
        airs: &Airs<'_>,
        fired: &BedFire,
        state: &BedState,
    ) -> Result<Ref, Refused> {
        if fired.bed.door.is_none() && !fired.has_holes() {
            return Ok(airs.loss);
        }
        let outside = self.outside(airs.water)?.density;
        let loss = match &fired.bed.door {
            Some(door) => self.pan_door(airs.loss, (door, state), outside)?,
            None => airs.loss,
        };
        if let FireAir::WithHoles { bed_factor, holes } = fired.fire.air {
            let first = self.air_of_bed(airs, (bed_factor, state.bed_ratio))?;
            let area = self.built(("A", "air holes over the fire, all"), &M2, holes.area_m2);
            let names = ("C_d", "discharge coefficient of a hole");
            let field = "fire.air-holes.coefficient";
            let c_d = self.given::<Ratio>(field, names, &ONE, holes.coefficient);
            let from = [c_d, area, outside, loss];
            let second = self.working.worked(&ORIFICE_FLOW, &from)?;
            let from = [first, second, airs.need, airs.fuel_burnt];
            self.settle(&WHOLE_AIR_RATIO, &from, state.air_ratio)?;
        }
        Ok(loss)
    }

    fn pan_door(
        &mut self,
        loss: Ref,
        (door, state): (&Opening, &BedState),
        outside: Ref,
    ) -> Result<Ref, Refused> {
        let how = (
            "all air and a part of it",
            "the air that goes through the bed",
        );
        let names = ("m", "air through the door of the ash pan");
        let air = state.primary_share * self.state.pass.air_kg_s;
        let air = self.marched(names, &KG_PER_S, air, &[], how);
        let names = ("C_d", "discharge coefficient of the door");
        let c_d = self.given::<Ratio>("ash.door-coefficient", names, &ONE, door.coefficient);
        let names = ("A", "free area of the door");
        let area = self.given::<Area>("ash.door", names, &M2, door.area_m2);
        let door = self
            .working
            .worked(&OPENING_LOSS, &[air, outside, c_d, area])?;
        let both = state.door_pa + state.loss_pa;
        self.settle(&BOTH_LOSSES, &[door, loss], both)
    }

    /// Air of the bed over the air that its fuel needs.
    fn air_of_bed(&mut self, airs: &Airs<'_>, (factor, ratio): (f64, f64)) -> Result<Ref, Refused> {
        let law = self.working.worked(&BED_AIR_RATIO, &airs.sizes)?;
        let names = ("k", "air of the bed over that of the law");
        let factor = self.given::<Ratio>("fire.bed-air", names, &ONE, factor);
        let how = ("the law by depth and lump", "times the factor of this bed");
        let names = ("lambda_b", "air of the bed over air needed");
        Ok(self.marched(names, &ONE, ratio, &[law, factor], how))
    }

    /// Density and viscosity of the gas in a bed over which more air comes.
    pub(super) fn gas_of_thick_bed(&mut self, t: Ref, state: &BedState) -> [Ref; 2] {
        let how = (
            "what rises from a thick bed",
            "taken as the fuel burnt in the air that it needs, within a few hundredths",
        );
        let names = ("rho", "density of the gas in the bed");
        let rho = self.marched(names, &KG_PER_M3, state.gas_kg_m3, &[t], how);
        let names = ("mu", "viscosity of the gas in the bed");
        [rho, self.marched(names, &PA_S, state.gas_pa_s, &[t], how)]
    }
}
