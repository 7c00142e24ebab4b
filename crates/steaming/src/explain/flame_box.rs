//! Lines of a stirred firebox round a flame.

use formulas::balance::{WALL_CONVECTION, WALL_HEAT};
use formulas::flue::SOOTY_EMISSIVITY;
use formulas::heat::{ENCLOSURE_EMISSIVITY, RADIANT_HEAT};
use reckoning::quantity::{HeatTransfer, KELVIN, M, M2, ONE, Ratio, W_PER_M2_K};
use reckoning::{Ref, Refused};

use super::Filing;
use super::fire::Fuel;
use super::water::Water;
use crate::firebox::FlameSettled;
use crate::firing::FlameInFirebox;

impl Filing<'_> {
    /// Temperature of the gas, and the heat to the wall.
    pub(super) fn flame_box(
        &mut self,
        (fuel, water): (&Fuel, &Water),
        fired: &FlameInFirebox,
        state: &FlameSettled,
    ) -> Result<(Ref, Ref), Refused> {
        let of = &fired.firebox;
        let left = format!("{:.1e} W left", state.balance.residual);
        let balance = "heat set free against what the gas carries on and what the wall receives";
        let names = ("T_g", "temperature of the gas in the stirred firebox");
        let gas_k = self.root(names, &KELVIN, state.balance, (balance, &left));
        let p = self.pressures(fuel, water)?;
        let beam = self.built(("L", "mean beam length of the gas"), &M, of.beam_m);
        let gas = self.emissivity(gas_k, beam, &p)?;
        let soot = self.soot(fired.flame.soot);
        let emitted = self.settle(&SOOTY_EMISSIVITY, &[gas, soot], state.gas_emissivity)?;
        let names = ("eps_s", "emissivity of the wall of the firebox");
        let field = "boiler.tubes.emissivity";
        let wall = self.given::<Ratio>(field, names, &ONE, of.wall_emissivity);
        let from = [wall, emitted];
        let effective = self.settle(&ENCLOSURE_EMISSIVITY, &from, state.effective)?;
        let area = self.built(("A_e", "wetted wall that sees the flame"), &M2, of.area_m2);
        let from = [area, effective, gas_k, water.wall_k];
        let radiant = self.settle(&RADIANT_HEAT, &from, state.radiant_w)?;
        let names = (
            "h",
            "heat transfer coefficient by convection in the firebox",
        );
        let field = "boiler.firebox.convection";
        let h = self.given::<HeatTransfer>(field, names, &W_PER_M2_K, of.convection);
        let from = [h, area, gas_k, water.wall_k];
        let convected = self.settle(&WALL_CONVECTION, &from, state.convected_w)?;
        let wall = self.settle(&WALL_HEAT, &[radiant, convected], state.wall_w())?;
        Ok((gas_k, wall))
    }

    /// Emissivity of the soot in the flame.
    pub(super) fn soot(&mut self, soot: f64) -> Ref {
        let names = ("eps_s", "emissivity of the soot in the flame");
        self.given::<Ratio>("burner.flame-emissivity", names, &ONE, soot)
    }
}
