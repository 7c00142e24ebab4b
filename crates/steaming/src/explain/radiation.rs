//! Lines of the radiation of the gas where it enters the tubes.

use formulas::gas::PARTIAL_PRESSURE;
use formulas::heat::{
    ABSORBING_PATH, CARBON_DIOXIDE_EMISSIVITY, GAS_ABSORPTIVITY, GAS_EMISSIVITY, OVERLAP,
    TUBE_BEAM, TUBE_RADIANT_FLUX, WATER_VAPOUR_EMISSIVITY,
};
use reckoning::quantity::{ONE, Ratio};
use reckoning::{Card, Ref, Refused};

use super::Filing;
use super::fire::Fuel;
use super::water::Water;
use crate::tubes::{March, Tubes};

/// Pressures of the gas, of its water vapour and of its carbon dioxide.
pub(super) struct Pressures {
    gas: Ref,
    h2o: Ref,
    co2: Ref,
}

impl Filing<'_> {
    /// The flux radiated where the gas enters: its laws are carried furthest here.
    pub(super) fn tube_radiation(
        &mut self,
        (fuel, water): (&Fuel, &Water),
        (gas_k, bore): (Ref, Ref),
        (tubes, march): (&Tubes, &March),
    ) -> Result<(), Refused> {
        let p = self.pressures(fuel, water)?;
        let path = self.working.worked(&TUBE_BEAM, &[bore])?;
        let emitted = self.emissivity(gas_k, path, &p)?;
        let from = [path, gas_k, water.wall_k];
        let dense = self.working.worked(&ABSORBING_PATH, &from)?;
        let cold = self.emissivity(water.wall_k, dense, &p)?;
        let from = [cold, gas_k, water.wall_k];
        let absorbed = self.working.worked(&GAS_ABSORPTIVITY, &from)?;
        let names = ("eps_w", "emissivity of the inside of the tubes");
        let field = "boiler.tubes.emissivity";
        let wall = self.given::<Ratio>(field, names, &ONE, tubes.wall_emissivity);
        let flux = march.inlet.radiant_flux;
        let factor = tubes.beyond.radiation;
        let from = [wall, emitted, gas_k, absorbed, water.wall_k];
        self.by_law(&TUBE_RADIANT_FLUX, &from, (flux, factor))?;
        Ok(())
    }

    /// Pressures of the gas and of what radiates in it.
    pub(super) fn pressures(&mut self, fuel: &Fuel, water: &Water) -> Result<Pressures, Refused> {
        let [co2, h2o, _] = fuel.shares;
        let p = water.air.p;
        Ok(Pressures {
            gas: p,
            h2o: self.working.worked(&PARTIAL_PRESSURE, &[h2o, p])?,
            co2: self.working.worked(&PARTIAL_PRESSURE, &[co2, p])?,
        })
    }

    pub(super) fn emissivity(&mut self, t: Ref, path: Ref, p: &Pressures) -> Result<Ref, Refused> {
        let from = [t, p.gas, p.h2o, path];
        let water = self.working.worked(&WATER_VAPOUR_EMISSIVITY, &from)?;
        let from = [t, p.gas, p.co2, path];
        let carbon = self.working.worked(&CARBON_DIOXIDE_EMISSIVITY, &from)?;
        let hidden = self.working.worked(&OVERLAP, &[p.h2o, p.co2, path])?;
        self.working
            .worked(&GAS_EMISSIVITY, &[water, carbon, hidden])
    }

    /// What a law gives times the factor with which the state was settled.
    pub(super) fn by_law(
        &mut self,
        card: &'static Card,
        from: &[Ref],
        (si, factor): (f64, f64),
    ) -> Result<Ref, Refused> {
        if factor.to_bits() == 1.0_f64.to_bits() {
            return self.settle(card, from, si);
        }
        let law = self.working.worked(card, from)?;
        let how = (
            "the law as it is carried on, and a part more or less",
            "the state was settled with a factor on this law",
        );
        let gives = &card.gives;
        Ok(self.marched((gives.name, gives.meaning), gives.unit, si, &[law], how))
    }
}
