//! Lines of fuel, bed, firebox and tubes.

use formulas::balance::{
    AIR_FOR_FUEL, BED_AND_GRATE_LOSS, FLOW_FOR_FUEL, FLUX_ON_AREA, HEAT_CARRIED, HEAT_SET_FREE,
    LENGTH_RATIO, LIFT_SHARE, TUBE_LOSS,
};
use formulas::fuel::{
    CARBON_DIOXIDE_SHARE, FLUE_MASS, OXYGEN_SHARE, STOICHIOMETRIC_AIR, WATER_VAPOUR_SHARE,
};
use formulas::heat::{
    FILM_COEFFICIENT, LOCAL_LOSS, MOMENTUM_CHANGE, NUSSELT_LAMINAR, NUSSELT_TURBULENT, PRANDTL,
    RADIANT_HEAT, REYNOLDS, TUBE_FLUX,
};
use formulas::{bed, gas};
use reckoning::quantity::{
    Area, Density, J_PER_KG, KELVIN, KG_PER_M3, KG_PER_S, Length, M, M2, ONE, PA, Ratio,
    SpecificEnergy, Temperature,
};
use reckoning::{Card, Ref, Refused};

use super::Filing;
use super::bed_air::Airs;
use super::water::Water;
use crate::firebox::Settled;
use crate::firing::{Bed, BedFire, BedFireState, BedState, Fire, FireAir, Firebox};
use crate::tubes::{March, Section, Tubes};

/// Lines of the fuel and of its gas.
#[derive(Clone, Copy)]
pub(super) struct Fuel {
    pub need: Ref,
    pub air: Ref,
    pub flue: Ref,
    pub heating_value: Ref,
    pub molar_mass: Ref,
    /// Carbon dioxide, water vapour, oxygen.
    pub shares: [Ref; 3],
}

/// Lines of bed and firebox.
pub(super) struct FireLines {
    pub fuel_burnt: Ref,
    pub gas: Ref,
    pub gas_k: Ref,
    pub radiant: Ref,
    pub bed_loss: Ref,
    pub lift: Ref,
}

/// Lines of the tubes.
pub(super) struct TubeLines {
    pub smoke_k: Ref,
    pub heat: Ref,
    pub loss: Ref,
}

/// How the numbers of a march came about.
const MARCH: (&str, &str) = (
    "a march along the tube in slices",
    "each slice is an exchanger at the wall's temperature, with the gas as it is at its middle",
);

impl Filing<'_> {
    /// Carbon, hydrogen, oxygen, sulphur, nitrogen, water and ash.
    fn composition(&mut self, fire: &Fire) -> [Ref; 7] {
        let x = fire.fuel;
        let mut share = |field, symbol, meaning, value| {
            self.given::<Ratio>(field, (symbol, meaning), &ONE, value)
        };
        [
            share("fire.fuel", "C", "carbon, mass fraction as fired", x.carbon),
            share(
                "fire.fuel",
                "H",
                "hydrogen, mass fraction as fired",
                x.hydrogen,
            ),
            share("fire.fuel", "O", "oxygen, mass fraction as fired", x.oxygen),
            share(
                "fire.fuel",
                "S",
                "sulphur, mass fraction as fired",
                x.sulphur,
            ),
            share(
                "fire.fuel",
                "N",
                "nitrogen, mass fraction as fired",
                x.nitrogen,
            ),
            share(
                "fire.moisture",
                "W",
                "water, mass fraction as fired",
                x.water,
            ),
            share("fire.ash", "A", "ash, mass fraction as fired", x.ash),
        ]
    }

    /// Coal, and what it burns to.
    pub(super) fn coal(&mut self, fire: &Fire, bed: &BedState) -> Result<Fuel, Refused> {
        let composition = self.composition(fire);
        let names = ("lambda", "air ratio");
        let lambda = match fire.air {
            FireAir::ThroughBed { ratio } => {
                self.given::<Ratio>("fire.air-ratio", names, &ONE, ratio)
            }
            FireAir::WithHoles { .. } => {
                let how = (
                    "air of the bed and air of the holes over it",
                    "both together, at the draught that the bed leaves; worked below",
                );
                self.marched(names, &ONE, bed.air_ratio, &[], how)
            }
        };
        self.fuel(composition, lambda, "fire.heating-value")
    }

    /// Air and gas for a kilogram of a fuel, from the shares of carbon, hydrogen, oxygen, sulphur,
    /// nitrogen, water and ash, at an air ratio; its heating value is that of a field.
    pub(super) fn fuel(
        &mut self,
        [c, h, o, s, n, w, ash]: [Ref; 7],
        lambda: Ref,
        heating_value: &'static str,
    ) -> Result<Fuel, Refused> {
        let need = self.working.worked(&STOICHIOMETRIC_AIR, &[c, h, o, s])?;
        let burning = &self.state.burning;
        let air = self.settle(&AIR_FOR_FUEL, &[lambda, need], burning.air_kg_kg)?;
        let flue = self.settle(&FLUE_MASS, &[lambda, need, ash], burning.flue_kg_kg)?;
        let from = [c, h, o, s, n, w, lambda];
        let fractions = burning.gas.fractions();
        let shares = [
            self.settle(&CARBON_DIOXIDE_SHARE, &from, fractions.co2)?,
            self.settle(&WATER_VAPOUR_SHARE, &from, fractions.h2o)?,
            self.settle(&OXYGEN_SHARE, &from, fractions.o2)?,
        ];
        let names = ("H_u", "lower heating value as fired");
        let value = burning.heating_value_j_kg;
        let heating_value = self.given::<SpecificEnergy>(heating_value, names, &J_PER_KG, value);
        Ok(Fuel {
            need,
            air,
            flue,
            heating_value,
            molar_mass: self.settle(&gas::MOLAR_MASS, &shares, burning.gas.molar_mass())?,
            shares,
        })
    }

    /// A property of the flue gas at a temperature.
    pub(super) fn property(
        &mut self,
        card: &'static Card,
        t: Ref,
        fuel: &Fuel,
        si: f64,
    ) -> Result<Ref, Refused> {
        let [co2, h2o, o2] = fuel.shares;
        self.settle(card, &[t, co2, h2o, o2], si)
    }

    /// A property of the flue gas times the factor with which the state was settled.
    pub(super) fn carried_on(
        &mut self,
        card: &'static Card,
        t: Ref,
        fuel: &Fuel,
        (si, factor): (f64, f64),
    ) -> Result<Ref, Refused> {
        let [co2, h2o, o2] = fuel.shares;
        self.by_law(card, &[t, co2, h2o, o2], (si, factor))
    }

    pub(super) fn fire(
        &mut self,
        fuel: &Fuel,
        water: &Water,
        (fired, settled): (&BedFire, &BedFireState),
    ) -> Result<FireLines, Refused> {
        let (pass, inputs) = (self.state.pass, self.state.inputs);
        let left = format!("{:.1e} Pa left", pass.left_pa);
        let balance = (
            "draught of jets and hot column against the losses of bed, tubes and turns",
            left.as_str(),
        );
        let names = ("m_f", "fuel burnt");
        let fuel_burnt = self.root(names, &KG_PER_S, self.state.balance, balance);
        let air = self.settle(&FLOW_FOR_FUEL, &[fuel.air, fuel_burnt], pass.air_kg_s)?;
        let gas = self.settle(&FLOW_FOR_FUEL, &[fuel.flue, fuel_burnt], pass.gas_kg_s)?;
        let (bed_loss, lift) = self.bed((fuel, water), (air, fuel_burnt), (fired, &settled.bed))?;
        let names = ("eta", "share of the heating value set free");
        let burnt = self.given::<Ratio>("fire.burnt-share", names, &ONE, fired.fire.burnt_share);
        let names = ("h_a", "enthalpy of the air above 298.15 K");
        let h_a = self.given::<SpecificEnergy>("site.air", names, &J_PER_KG, inputs.site.air_j_kg);
        let from = [burnt, fuel_burnt, fuel.heating_value, air, h_a];
        self.settle(&HEAT_SET_FREE, &from, pass.heat_w)?;
        let (gas_k, radiant) = self.firebox(water, (&fired.firebox, &settled.firebox))?;
        Ok(FireLines {
            fuel_burnt,
            gas,
            gas_k,
            radiant,
            bed_loss,
            lift,
        })
    }

    /// Temperature of the gas in the firebox, and the heat radiated there.
    fn firebox(
        &mut self,
        water: &Water,
        (firebox, state): (&Firebox, &Settled),
    ) -> Result<(Ref, Ref), Refused> {
        let left = format!("{:.1e} W left", state.balance.residual);
        let balance = "heat set free against what the gas carries on and what the wall receives";
        let names = ("T_g", "temperature of the gas in the stirred firebox");
        let gas_k = self.root(names, &KELVIN, state.balance, (balance, &left));
        let names = ("A_e", "wetted wall that sees the fire");
        let area = self.built(names, &M2, firebox.area_m2);
        let names = (
            "eps_e",
            "effective emissivity between the fire and that wall",
        );
        let field = "boiler.firebox.emissivity";
        let eps = self.given::<Ratio>(field, names, &ONE, firebox.emissivity);
        let from = [area, eps, gas_k, water.wall_k];
        let radiant = self.settle(&RADIANT_HEAT, &from, state.radiant_w)?;
        Ok((gas_k, radiant))
    }

    fn bed(
        &mut self,
        (fuel, water): (&Fuel, &Water),
        (air, fuel_burnt): (Ref, Ref),
        (fired, state): (&BedFire, &BedState),
    ) -> Result<(Ref, Ref), Refused> {
        let bed = &fired.bed;
        let names = ("A_g", "area of the grate");
        let grate = self.given::<Area>("grate.diameter", names, &M2, bed.grate_m2);
        let flux = self.bed_fluxes((air, fuel_burnt), grate, state)?;
        let names = ("T_b", "mean temperature of the gas in the bed");
        let t = self.given::<Temperature>("fire.bed-temperature", names, &KELVIN, bed.gas_k);
        let [rho, mu] = match fired.fire.air {
            FireAir::ThroughBed { .. } => {
                let from = [fuel.molar_mass, t, water.air.p];
                let rho = self.settle(&gas::DENSITY, &from, state.gas_kg_m3)?;
                let viscosity = (state.gas_pa_s, bed.viscosity_factor);
                [rho, self.carried_on(&gas::VISCOSITY, t, fuel, viscosity)?]
            }
            FireAir::WithHoles { .. } => self.gas_of_thick_bed(t, state),
        };
        let [e, phi, lump, depth] = self.packing(bed);
        let from = [e, phi, lump, rho, mu, flux, depth];
        let bare = self.settle(&bed::LOSS, &from, state.bare_pa)?;
        let loss = self.grate(bare, (bed, state))?;
        let air = Airs {
            water,
            need: fuel.need,
            fuel_burnt,
            sizes: [depth, lump],
            loss,
        };
        let loss = self.bed_air(&air, fired, state)?;
        let names = ("rho_p", "density of a lump");
        let solid = self.given::<Density>("fire.lump-density", names, &KG_PER_M3, bed.lump_kg_m3);
        let weight = self.settle(&bed::WEIGHT, &[e, solid, rho, depth], state.weight_pa)?;
        let lift = self.settle(&LIFT_SHARE, &[bare, weight], state.lift)?;
        self.in_puffs(flux, [e, phi, lump, rho, mu, depth], weight)?;
        Ok((loss, lift))
    }

    /// Air and fuel over the area of the grate; gives the line of the air.
    fn bed_fluxes(
        &mut self,
        (air, fuel_burnt): (Ref, Ref),
        grate: Ref,
        state: &BedState,
    ) -> Result<Ref, Refused> {
        let names = ("s", "share of the air that comes through the bed");
        let how = (
            "air through the bed and air over it",
            "all of it comes through the bed where no holes over the fire are drawn",
        );
        let primary = self.marched(names, &ONE, state.primary_share, &[], how);
        let from = [primary, air, grate];
        let flux = self.settle(&FLUX_ON_AREA, &from, state.flux_kg_m2_s)?;
        let how = (
            "the whole flow or a part of it",
            "all the fuel burns on the grate",
        );
        let whole = self.marched(("s", "share of the fuel"), &ONE, 1.0, &[], how);
        let from = [whole, fuel_burnt, grate];
        self.settle(&FLUX_ON_AREA, &from, state.rate_kg_m2_s)?;
        Ok(flux)
    }

    /// Voidage, sphericity, lumps and depth.
    fn packing(&mut self, bed: &Bed) -> [Ref; 4] {
        let packing = bed.packing;
        let names = ("e", "voidage of the bed");
        let e = self.given::<Ratio>("fire.voidage", names, &ONE, packing.voidage);
        let names = ("phi", "sphericity of the lumps");
        let phi = self.given::<Ratio>("fire.shape", names, &ONE, packing.sphericity);
        let names = ("d", "size of the lumps");
        let lump = self.given::<Length>("fire.lump", names, &M, packing.lump_m);
        let names = ("L", "depth of the bed");
        let depth = self.given::<Length>("fire.depth", names, &M, bed.depth_m);
        [e, phi, lump, depth]
    }

    fn grate(&mut self, bare: Ref, (bed, state): (&Bed, &BedState)) -> Result<Ref, Refused> {
        let names = (
            "k_g",
            "loss of bed, grate and clean ash over that of the bare bed",
        );
        let grate = self.given::<Ratio>("grate.bed-factor", names, &ONE, bed.grate_factor);
        let names = (
            "k_a",
            "loss with the ash that has built up over that when clean",
        );
        let ash = self.given::<Ratio>("ash.bed-factor", names, &ONE, bed.ash_factor);
        self.settle(&BED_AND_GRATE_LOSS, &[grate, ash, bare], state.loss_pa)
    }

    pub(super) fn tubes(
        &mut self,
        fuel: &Fuel,
        (gas, gas_k): (Ref, Ref),
        water: &Water,
        (tubes, march): (&Tubes, &March),
    ) -> Result<TubeLines, Refused> {
        let names = ("n", "number of tubes");
        let count = self.given::<Ratio>("boiler.tubes.count", names, &ONE, tubes.count);
        let names = ("d", "bore of a tube");
        let bore = self.given::<Length>("boiler.tubes.outside", names, &M, tubes.bore_m);
        let names = ("L", "length of a tube");
        let length = self.built(names, &M, tubes.length_m);
        let flux = self.settle(&TUBE_FLUX, &[gas, count, bore], march.flux)?;
        self.tube_inlet((fuel, gas_k), (flux, bore, length), (tubes, march))?;
        self.tube_radiation((fuel, water), (gas_k, bore), (tubes, march))?;
        let from = [gas_k, water.wall_k, flux, bore, length];
        let names = ("T_2", "temperature of the smoke behind the tubes");
        let smoke_k = self.marched(names, &KELVIN, march.outlet.gas_k, &from, MARCH);
        let enthalpy = |t| self.state.burning.gas.enthalpy(t);
        let (h_1, h_2) = (enthalpy(march.inlet.gas_k), enthalpy(march.outlet.gas_k));
        let h_1 = self.property(&gas::ENTHALPY, gas_k, fuel, h_1)?;
        let h_2 = self.property(&gas::ENTHALPY, smoke_k, fuel, h_2)?;
        let heat = self.settle(&HEAT_CARRIED, &[gas, h_1, h_2], march.heat_w)?;
        let path = (flux, bore, length);
        let ends = (gas_k, smoke_k);
        let loss = self.tube_loss((fuel, water), ends, path, (tubes, march))?;
        Ok(TubeLines {
            smoke_k,
            heat,
            loss,
        })
    }

    /// Draught that the tubes take.
    fn tube_loss(
        &mut self,
        (fuel, water): (&Fuel, &Water),
        (hot, smoke): (Ref, Ref),
        (flux, bore, length): (Ref, Ref, Ref),
        (tubes, march): (&Tubes, &March),
    ) -> Result<Ref, Refused> {
        let mut density = |t, si| {
            let from = [fuel.molar_mass, t, water.air.p];
            self.settle(&gas::DENSITY, &from, si)
        };
        let rho_1 = density(hot, march.inlet.density)?;
        let rho_2 = density(smoke, march.outlet.density)?;
        let names = ("K_1", "velocity heads lost where the gas enters");
        let edge = (
            "sharp and rounded ends of a tube",
            "a sharp edge, the worse of them",
        );
        let k_1 = self.marched(names, &ONE, tubes.entrance_heads, &[], edge);
        let names = ("K_2", "velocity heads lost where the gas leaves");
        let room = (
            "an exit into a large and a small space",
            "the smokebox is large, so that the whole head is lost",
        );
        let k_2 = self.marched(names, &ONE, tubes.exit_heads, &[], room);
        let entrance = self.settle(&LOCAL_LOSS, &[k_1, flux, rho_1], march.entrance_pa)?;
        let exit = self.settle(&LOCAL_LOSS, &[k_2, flux, rho_2], march.exit_pa)?;
        let from = [flux, rho_1, rho_2];
        let momentum = self.settle(&MOMENTUM_CHANGE, &from, march.momentum_pa)?;
        let names = ("dp_f", "loss by friction");
        let from = [flux, bore, length];
        let friction = self.marched(names, &PA, march.friction_pa, &from, MARCH);
        let from = [entrance, friction, exit, momentum];
        self.settle(&TUBE_LOSS, &from, march.loss_pa())
    }

    /// The gas where it enters: from properties to the coefficient of convection.
    fn tube_inlet(
        &mut self,
        (fuel, t): (&Fuel, Ref),
        (flux, bore, length): (Ref, Ref, Ref),
        (tubes, march): (&Tubes, &March),
    ) -> Result<(), Refused> {
        let at: Section = march.inlet;
        let cp = self.property(&gas::SPECIFIC_HEAT, t, fuel, at.specific_heat)?;
        let beyond = tubes.beyond;
        let viscosity = (at.viscosity, beyond.viscosity);
        let mu = self.carried_on(&gas::VISCOSITY, t, fuel, viscosity)?;
        let conductivity = (at.conductivity, beyond.conductivity);
        let k = self.carried_on(&gas::CONDUCTIVITY, t, fuel, conductivity)?;
        let re = self.settle(&REYNOLDS, &[flux, bore, mu], at.reynolds)?;
        let pr = self.settle(&PRANDTL, &[mu, cp, k], at.prandtl)?;
        let slender = tubes.bore_m / tubes.length_m;
        let d_l = self.settle(&LENGTH_RATIO, &[bore, length], slender)?;
        let from = [re, pr, d_l];
        let nu = if at.reynolds <= 2300.0 {
            self.settle(&NUSSELT_LAMINAR, &from, at.nusselt)?
        } else if at.reynolds >= 4000.0 {
            self.settle(&NUSSELT_TURBULENT, &from, at.nusselt)?
        } else {
            let how = (
                "laminar and turbulent flow",
                "between Reynolds numbers of 2300 and 4000 a straight line joins them",
            );
            self.marched(("Nu", "mean Nusselt number"), &ONE, at.nusselt, &from, how)
        };
        self.settle(&FILM_COEFFICIENT, &[nu, k, bore], at.convection)?;
        Ok(())
    }
}
