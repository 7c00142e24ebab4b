//! Lines of the fire and of the way of its gas, whichever it is.

use formulas::balance::{DRAUGHT_LOST, HEAT_SET_FREE};
use reckoning::quantity::{J_PER_KG, ONE, PA, PressureDrop, Ratio, SpecificEnergy};
use reckoning::{Ref, Refused};

use super::Filing;
use super::draught::Outside;
use super::fire::Fuel;
use super::flame::FlameLines;
use super::water::Water;
use crate::firing::{
    BedFire, BedFireState, Firing, FiringState, FlameInFirebox, FlameInFireboxState, FlameInFlue,
    FlameInFlueState,
};

/// Lines of the fire and of the way of its gas.
pub(super) struct Way {
    /// The gas.
    pub fuel: Fuel,
    /// Fuel burnt.
    pub fuel_burnt: Ref,
    /// Gas that comes to the smokebox.
    pub gas: Ref,
    /// Temperature of the hottest gas.
    pub hottest_k: Ref,
    /// Temperature of the gas where it comes to the smokebox.
    pub smoke_k: Ref,
    /// Heat to the wall round the fire, and to the tubes.
    pub heat: (Ref, Ref),
    /// Draught lost before the chimney.
    pub lost: Ref,
    /// Loss of the bare bed over its weight, where there is a bed.
    pub lift: Option<Ref>,
    /// The flame, where one burns, with the air outside that it was filed with.
    pub flame: Option<(FlameLines, Outside)>,
}

impl Filing<'_> {
    /// Files the fire and the way of its gas.
    pub(super) fn way(&mut self, water: &Water) -> Result<Way, Refused> {
        match (&self.state.inputs.firing, &self.state.pass.firing) {
            (Firing::Bed(fired), FiringState::Bed(settled)) => self.bed_way(water, fired, settled),
            (Firing::Firebox(fired), FiringState::Firebox(settled)) => {
                self.firebox_way(water, fired, settled)
            }
            (Firing::Flue(fired), FiringState::Flue(settled)) => {
                self.flue_way(water, fired, settled)
            }
            _ => unreachable!("a state is of the kind of firing that it was settled for"),
        }
    }

    fn bed_way(
        &mut self,
        water: &Water,
        fired: &BedFire,
        settled: &BedFireState,
    ) -> Result<Way, Refused> {
        let fuel = self.coal(&fired.fire, &settled.bed)?;
        let fire = self.fire(&fuel, water, (fired, settled))?;
        let (gas, gas_k) = (fire.gas, fire.gas_k);
        let tubes = self.tubes(&fuel, (gas, gas_k), water, (&fired.tubes, &settled.tubes))?;
        Ok(Way {
            fuel,
            fuel_burnt: fire.fuel_burnt,
            gas,
            hottest_k: gas_k,
            smoke_k: tubes.smoke_k,
            heat: (fire.radiant, tubes.heat),
            lost: self.lost(fire.bed_loss, tubes.loss)?,
            lift: Some(fire.lift),
            flame: None,
        })
    }

    fn firebox_way(
        &mut self,
        water: &Water,
        fired: &FlameInFirebox,
        settled: &FlameInFireboxState,
    ) -> Result<Way, Refused> {
        let outside = self.outside(water)?;
        let flame = self.flame((&fired.flame, &settled.flame), water, &outside)?;
        let names = ("eta", "share of the heating value set free");
        let share = fired.flame.burnt_share;
        let share = self.given::<Ratio>("burner.burnt-share", names, &ONE, share);
        self.set_free(share, &flame)?;
        let (gas_k, wall) = self.flame_box((&flame.fuel, water), fired, &settled.firebox)?;
        let bank = (&fired.tubes, &settled.tubes);
        let tubes = self.tubes(&flame.fuel, (flame.gas, gas_k), water, bank)?;
        Ok(Way {
            fuel: flame.fuel,
            fuel_burnt: flame.fuel_burnt,
            gas: flame.gas,
            hottest_k: gas_k,
            smoke_k: tubes.smoke_k,
            heat: (wall, tubes.heat),
            lost: self.lost(flame.mouth, tubes.loss)?,
            lift: None,
            flame: Some((flame, outside)),
        })
    }

    fn flue_way(
        &mut self,
        water: &Water,
        fired: &FlameInFlue,
        settled: &FlameInFlueState,
    ) -> Result<Way, Refused> {
        let outside = self.outside(water)?;
        let mut flame = self.flame((&fired.flame, &settled.flame), water, &outside)?;
        let lines = self.flue((&flame, water, &outside), fired, settled)?;
        self.set_free(lines.set_free, &flame)?;
        flame.burnt = Some((lines.burnt_at_first, lines.burnt));
        Ok(Way {
            fuel: flame.fuel,
            fuel_burnt: flame.fuel_burnt,
            gas: flame.gas,
            hottest_k: lines.hottest_k,
            smoke_k: lines.smoke_k,
            heat: lines.heat,
            lost: self.lost(flame.mouth, lines.loss)?,
            lift: None,
            flame: Some((flame, outside)),
        })
    }

    /// Heat set free, with that of the air.
    fn set_free(&mut self, share: Ref, flame: &FlameLines) -> Result<Ref, Refused> {
        let names = ("h_a", "enthalpy of the air above 298.15 K");
        let air_j_kg = self.state.inputs.site.air_j_kg;
        let h_a = self.given::<SpecificEnergy>("site.air", names, &J_PER_KG, air_j_kg);
        let value = flame.fuel.heating_value;
        let from = [share, flame.fuel_burnt, value, flame.air, h_a];
        self.settle(&HEAT_SET_FREE, &from, self.state.pass.heat_w)
    }

    /// Draught lost before the chimney.
    fn lost(&mut self, comes_in: Ref, way: Ref) -> Result<Ref, Refused> {
        let names = ("dp_x", "draught lost in turns, entry and arrester");
        let extra = self.state.inputs.extra_loss_pa;
        let extra = self.given::<PressureDrop>("smokebox.loss", names, &PA, extra);
        self.settle(
            &DRAUGHT_LOST,
            &[comes_in, way, extra],
            self.state.pass.loss_pa,
        )
    }
}
