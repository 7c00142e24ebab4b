//! Lines of spirit wicks.

use formulas::balance::ROUND_AREA;
use formulas::spirit::{
    EVAPORATION_FLUX, FLAME_FILM, FLAME_HEIGHT, SPIRIT_BURNT, TRANSFER_NUMBER, WICK_AREA,
};
use reckoning::quantity::{
    J_PER_KG, J_PER_KG_K, KELVIN, KG_PER_S, KILOWATT, Length, M, M2, ONE, Ratio, SpecificEnergy,
    SpecificHeat, Temperature,
};
use reckoning::{Ref, Refused};

use super::Filing;
use super::fire::Fuel;
use super::flame::Fed;
use crate::burner::{WickState, Wicks};

/// The field that names the spirit.
const SPIRIT: &str = "spirit.mixture";

impl Filing<'_> {
    /// Wicks: the spirit, and what its flame evaporates.
    pub(super) fn wicks(
        &mut self,
        wicks: &Wicks,
        state: &WickState,
        air_ratio: Ref,
    ) -> Result<Fed, Refused> {
        let fuel = self.spirit(wicks, air_ratio)?;
        let flux = self.evaporated(wicks, state, &fuel)?;
        let names = ("d", "diameter of a wick");
        let field = "spirit.wicks.diameter";
        let d = self.given::<Length>(field, names, &M, wicks.diameter_m);
        let film = self.settle(&FLAME_FILM, &[d], state.film)?;
        let flux = self.settle(&EVAPORATION_FLUX, &[film, flux], state.flux)?;
        let top = self.working.worked(&ROUND_AREA, &[d])?;
        let side = self.built(
            ("A_s", "side of a wick that stands out"),
            &M2,
            wicks.surfaces().1,
        );
        let names = ("s", "share of that side that burns");
        let field = "spirit.wicks.side-share";
        let share = self.given::<Ratio>(field, names, &ONE, wicks.side_share);
        let area = self.settle(&WICK_AREA, &[top, side, share], state.area_m2)?;
        let names = ("k", "rate of burning over that of the law");
        let k = self.given::<Ratio>("spirit.rate-factor", names, &ONE, wicks.rate_factor);
        let names = ("n", "number of wicks");
        let n = self.given::<Ratio>("spirit.wicks.count", names, &ONE, wicks.count);
        let burnt = self.settle(&SPIRIT_BURNT, &[k, flux, n, area], state.fuel_kg_s)?;
        self.wick_flame(wicks, state, (burnt, d))?;
        Ok(Fed {
            fuel,
            burnt,
            primary: self.absent("m_a", "primary air", &KG_PER_S),
            primary_ratio: self.absent("lambda_1", "primary air over the air needed", &ONE),
            blow_off: None,
        })
    }

    fn wick_flame(
        &mut self,
        wicks: &Wicks,
        state: &WickState,
        (burnt, d): (Ref, Ref),
    ) -> Result<(), Refused> {
        let how = (
            "all the wicks",
            "each gives its share of the heat of the spirit",
        );
        let one_w = state.fuel_kg_s / wicks.count * wicks.spirit.heating_value;
        let names = ("Q", "heat of the spirit of one wick");
        let heat = self.marched(names, &KILOWATT, one_w, &[burnt], how);
        self.settle(&FLAME_HEIGHT, &[heat, d], state.flame_m)?;
        Ok(())
    }

    fn spirit(&mut self, wicks: &Wicks, air_ratio: Ref) -> Result<Fuel, Refused> {
        let x = wicks.spirit.composition;
        let composition = [
            ("C", "carbon in the spirit, mass fraction", x.carbon),
            ("H", "hydrogen in the spirit, mass fraction", x.hydrogen),
            ("O", "oxygen in the spirit, mass fraction", x.oxygen),
            ("S", "sulphur in the spirit, mass fraction", x.sulphur),
            ("N", "nitrogen in the spirit, mass fraction", x.nitrogen),
            ("W", "water in the spirit, mass fraction", x.water),
            ("A", "ash of the spirit, mass fraction", x.ash),
        ]
        .map(|(symbol, meaning, value)| {
            self.given::<Ratio>(SPIRIT, (symbol, meaning), &ONE, value)
        });
        self.fuel(composition, air_ratio, SPIRIT)
    }

    /// The transfer number.
    fn evaporated(
        &mut self,
        wicks: &Wicks,
        state: &WickState,
        fuel: &Fuel,
    ) -> Result<Ref, Refused> {
        let spirit = &wicks.spirit;
        let names = ("r", "oxygen to burn a kilogram of the spirit");
        let oxygen = self.given::<Ratio>(SPIRIT, names, &ONE, spirit.oxygen);
        let names = ("h_fg", "latent heat of the spirit");
        let latent = self.given::<SpecificEnergy>(SPIRIT, names, &J_PER_KG, spirit.latent);
        let names = ("c_l", "specific heat of the spirit");
        let heat = self.given::<SpecificHeat>(SPIRIT, names, &J_PER_KG_K, spirit.liquid_heat);
        let names = ("T_b", "boiling temperature of the spirit");
        let boiling = self.given::<Temperature>(SPIRIT, names, &KELVIN, spirit.boiling);
        let names = ("T_a", "temperature of the spirit that feeds the wicks");
        let feed = self.given::<Temperature>("site.air", names, &KELVIN, wicks.feed_k);
        let from = [fuel.heating_value, oxygen, latent, heat, boiling, feed];
        self.settle(&TRANSFER_NUMBER, &from, state.transfer)
    }
}
