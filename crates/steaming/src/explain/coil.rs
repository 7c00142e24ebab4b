//! Lines of the coil, where the steam enters it.

use formulas::balance::LENGTH_RATIO;
use formulas::coil::{
    CRITICAL_REYNOLDS, CROSSFLOW_NUSSELT, LAMINAR_FRICTION, LAMINAR_NUSSELT, RADIATION_COEFFICIENT,
    TURBULENT_FRICTION, TURBULENT_NUSSELT, WHOLE_COEFFICIENT, critical_reynolds,
};
use formulas::heat::FILM_COEFFICIENT;
use reckoning::quantity::{J_PER_KG, KELVIN, Length, M, ONE, Ratio, W_PER_M_K, WATT};
use reckoning::{Card, Ref, Refused};

use super::Filing;
use crate::dryer::{DryerState, TURBULENT_FROM};
use crate::inputs::{CoilPlace, Dryer};

impl Filing<'_> {
    /// Files the coil and gives the line of the enthalpy that it adds.
    pub(super) fn coil(&mut self, coil: &Dryer, state: &DryerState) -> Result<Ref, Refused> {
        let names = ("d_i", "bore of the coil's tube");
        let bore = self.given::<Length>("dryer.wall", names, &M, coil.bore_m);
        let names = ("d_o", "outside diameter of the coil's tube");
        let outside = self.given::<Length>("dryer.outside", names, &M, coil.outside_m);
        let names = ("L", "length of tube in the gas");
        let length = self.given::<Length>("dryer.length", names, &M, coil.length_m);
        self.coil_inside(coil, state, bore)?;
        let h = self.coil_outside(coil, state, outside)?;
        let march = (
            "a march along the coil",
            "the coil takes what the gas of the stirred box that it lies in gives",
        );
        let from = [h, bore, outside, length];
        let names = ("Q_c", "heat taken up by the coil");
        let heat = self.marched(names, &WATT, state.heat_w, &from, march);
        // The enthalpy with which the exhaust was settled; it is the coil's to the accuracy of
        // that balance.
        let gain = self.state.exhaust.map_or(state.gain_j_kg, |e| e.gain_j_kg);
        let names = ("dh", "enthalpy that the coil adds");
        Ok(self.marched(names, &J_PER_KG, gain, &[heat], march))
    }

    fn coil_inside(&mut self, coil: &Dryer, state: &DryerState, bore: Ref) -> Result<(), Refused> {
        let names = ("D", "mean diameter of the coil");
        let turn = self.given::<Length>("dryer.coil", names, &M, coil.coil_m);
        let ratio = self.settle(&LENGTH_RATIO, &[bore, turn], state.ratio)?;
        self.working.worked(&CRITICAL_REYNOLDS, &[ratio])?;
        let steam = (
            "saturated steam at the pressure of the boiler",
            "the steam enters wet",
        );
        let names = ("Re", "Reynolds number inside");
        let re = self.marched(names, &ONE, state.inside_reynolds, &[bore], steam);
        let names = ("Pr", "Prandtl number inside");
        let pr = self.marched(names, &ONE, state.inside_prandtl, &[], steam);
        let nusselt = [&LAMINAR_NUSSELT, &TURBULENT_NUSSELT];
        self.by_flow(nusselt, &[re, pr, ratio], state.inside_nusselt, state)?;
        let friction = [&LAMINAR_FRICTION, &TURBULENT_FRICTION];
        self.by_flow(friction, &[re, ratio], state.friction, state)?;
        Ok(())
    }

    fn coil_outside(
        &mut self,
        coil: &Dryer,
        state: &DryerState,
        outside: Ref,
    ) -> Result<Ref, Refused> {
        let film = (
            "the film between gas and tube",
            "at the mean of their temperatures",
        );
        let names = ("T_f", "temperature of the film");
        let t = self.marched(names, &KELVIN, state.film_k, &[], film);
        let names = ("Re", "Reynolds number outside");
        let re = self.marched(names, &ONE, state.outside_reynolds, &[t, outside], film);
        let names = ("Pr", "Prandtl number outside");
        let pr = self.marched(names, &ONE, state.outside_prandtl, &[t], film);
        let nu = self.settle(&CROSSFLOW_NUSSELT, &[re, pr], state.outside_nusselt)?;
        let k = state.convection_w_m2_k * coil.outside_m / state.outside_nusselt;
        let names = ("k", "conductivity of the film");
        let k = self.marched(names, &W_PER_M_K, k, &[t], film);
        let h = self.settle(
            &FILM_COEFFICIENT,
            &[nu, k, outside],
            state.convection_w_m2_k,
        )?;
        match (coil.place, state.radiation_w_m2_k) {
            (CoilPlace::Firebox { emissivity, view }, Some(radiation)) => {
                let radiation = self.coil_radiation((emissivity, view), state, radiation)?;
                self.settle(&WHOLE_COEFFICIENT, &[h, radiation], state.outside_w_m2_k)
            }
            _ => Ok(h),
        }
    }

    /// Radiation of the fire to the coil.
    fn coil_radiation(
        &mut self,
        (emissivity, view): (f64, f64),
        state: &DryerState,
        radiation: f64,
    ) -> Result<Ref, Refused> {
        let names = ("eps", "emissivity of the outside of the coil");
        let eps = self.given::<Ratio>("dryer.emissivity", names, &ONE, emissivity);
        let names = ("F", "share of the coil that sees the fire");
        let view = self.given::<Ratio>("dryer.view", names, &ONE, view);
        let how = ("the stirred firebox", "its balance holds the coil");
        let names = ("T_g", "temperature of the fire");
        let fire = self.marched(names, &KELVIN, state.gas_k, &[], how);
        let how = (
            "steam and tube",
            "the tube is as hot as its boiling water, nearly",
        );
        let names = ("T_w", "temperature of the tube");
        let tube_k = self.state.water.saturation_k;
        let tube = self.marched(names, &KELVIN, tube_k, &[], how);
        self.settle(&RADIATION_COEFFICIENT, &[eps, view, fire, tube], radiation)
    }

    /// The law that rules at this Reynolds number, or that the two are joined by a line.
    fn by_flow(
        &mut self,
        [laminar, turbulent]: [&'static Card; 2],
        from: &[Ref],
        value: f64,
        state: &DryerState,
    ) -> Result<Ref, Refused> {
        if state.inside_reynolds <= critical_reynolds(state.ratio) {
            self.settle(laminar, from, value)
        } else if state.inside_reynolds >= TURBULENT_FROM {
            self.settle(turbulent, from, value)
        } else {
            let how = (
                "laminar and turbulent flow",
                "between the critical Reynolds number and 22 000 a straight line joins them",
            );
            let gives = &laminar.gives;
            Ok(self.marched((gives.name, gives.meaning), gives.unit, value, from, how))
        }
    }
}
