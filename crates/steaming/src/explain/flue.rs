//! Lines of the flue: the place where the burner ends, the first cross tube, and the sums.

use formulas::balance::{FLUE_LOSS, SHARE_SET_FREE};
use formulas::coil::CROSSFLOW_NUSSELT;
use formulas::flue::{
    BURNT_SHARE, FLUE_FLUX, GRAETZ, HYDRAULIC_DIAMETER, LOCAL_NUSSELT, OPEN_AREA, PASSAGE_AREA,
    PASSAGE_REYNOLDS, RADIAL_MIXING_LENGTH, SETTLED_NUSSELT, SOOTY_EMISSIVITY, TUBE_DRAG,
    TUBE_HEAT, TUBE_LOSS, TUBE_SURFACE,
};
use formulas::gas;
use formulas::heat::{
    ABSORBING_PATH, FILM_COEFFICIENT, GAS_ABSORPTIVITY, LOCAL_LOSS, MOMENTUM_CHANGE, PRANDTL,
    REYNOLDS, TUBE_BEAM, TUBE_RADIANT_FLUX,
};
use reckoning::quantity::{KELVIN, Length, M, M_PER_S, ONE, PA, Ratio, W_PER_M2_K, WATT};
use reckoning::{Ref, Refused};

use super::Filing;
use super::draught::Outside;
use super::flame::FlameLines;
use super::water::Water;
use crate::firing::{FlameInFlue, FlameInFlueState};
use crate::flue::{CrossTubes, Crossed, Flue, March, Section};

/// Lines of the flue.
pub(super) struct FlueLines {
    /// Share of the heating value set free.
    pub set_free: Ref,
    /// Share of the fuel that has burnt at the end.
    pub burnt: Ref,
    /// The same at the first cross tube.
    pub burnt_at_first: Option<Ref>,
    pub hottest_k: Ref,
    pub smoke_k: Ref,
    /// Heat to the wall, and to the cross tubes.
    pub heat: (Ref, Ref),
    pub loss: Ref,
}

/// What a section is filed with.
struct At<'a> {
    flame: &'a FlameLines,
    water: &'a Water,
    bore: Ref,
    core: Ref,
}

/// How the numbers of a march came about.
const MARCH: (&str, &str) = (
    "a march along the flue",
    "heat set free, given to the wall and to each cross tube, step by step",
);

impl Filing<'_> {
    pub(super) fn flue(
        &mut self,
        (flame, water, outside): (&FlameLines, &Water, &Outside),
        fired: &FlameInFlue,
        settled: &FlameInFlueState,
    ) -> Result<FlueLines, Refused> {
        let (flue, march) = (&fired.flue, &settled.flue);
        let names = ("D", "bore of the flue");
        let bore = self.given::<Length>("boiler.flue.bore", names, &M, flue.bore_m);
        let names = ("d_k", "outside diameter of the burner in it");
        let core = settled.release.core_m;
        let core = self.given::<Length>("burner.poker.outside", names, &M, core);
        let at = At {
            flame,
            water,
            bore,
            core,
        };
        self.burner_end(&at, fired, &march.behind_burner)?;
        let first = self.first_tube(&at, fired, march.first.as_ref())?;
        let burnt = self.burnt(fired, march.outlet.place_m, flame, march.outlet.burnt)?;
        let names = ("eta", "share set free where the gas burns to the end");
        let share = fired.flame.burnt_share;
        let eta = self.given::<Ratio>("burner.burnt-share", names, &ONE, share);
        let set_free = self.state.burning.burnt_share;
        let [hottest_k, smoke_k, wall, cross] = self.marched_heat(&at, march);
        Ok(FlueLines {
            set_free: self.settle(&SHARE_SET_FREE, &[eta, burnt], set_free)?,
            burnt,
            burnt_at_first: first,
            hottest_k,
            smoke_k,
            heat: (wall, cross),
            loss: self.flue_loss(&at, (flue, settled), smoke_k, outside)?,
        })
    }

    /// Hottest gas, gas that leaves, heat to wall and to cross tubes.
    fn marched_heat(&mut self, at: &At<'_>, march: &March) -> [Ref; 4] {
        let out_k = march.outlet.gas_k;
        let from = [at.bore, at.core];
        [
            ("T_h", "hottest gas of the flue", &KELVIN, march.hottest_k),
            ("T_2", "gas where it leaves the flue", &KELVIN, out_k),
            ("Q_w", "heat to the wall of the flue", &WATT, march.wall_w),
            ("Q_x", "heat to the cross tubes", &WATT, march.cross_w),
        ]
        .map(|(symbol, meaning, unit, si)| self.marched((symbol, meaning), unit, si, &from, MARCH))
    }

    /// Share of the fuel that has burnt at a place.
    fn burnt(
        &mut self,
        fired: &FlameInFlue,
        place_m: f64,
        flame: &FlameLines,
        si: f64,
    ) -> Result<Ref, Refused> {
        let place = self.built(("x", "distance behind the first port"), &M, place_m);
        let names = ("L_p", "length of the burner that carries ports");
        let field = "burner.poker.length";
        let ported = self.given::<Length>(field, names, &M, fired.flame.ported_m);
        let names = ("L_s", "length over which the rest finds its air");
        let field = "burner.mixing-length";
        let mixing = self.given::<Length>(field, names, &M, fired.flame.mixing_m);
        let from = [place, ported, flame.primary_ratio, mixing];
        self.settle(&BURNT_SHARE, &from, si)
    }

    /// The gas where the burner ends: from properties to the flux.
    fn burner_end(
        &mut self,
        at: &At<'_>,
        fired: &FlameInFlue,
        section: &Section,
    ) -> Result<(), Refused> {
        let (flue, fuel, beyond) = (&fired.flue, &at.flame.fuel, fired.flue.beyond);
        let names = ("T", "gas where the burner ends");
        let t = self.marched(names, &KELVIN, section.gas_k, &[at.bore], MARCH);
        let d_h = self
            .working
            .worked(&HYDRAULIC_DIAMETER, &[at.bore, at.core])?;
        let area = self.working.worked(&OPEN_AREA, &[at.bore, at.core])?;
        let flux = self.settle(&FLUE_FLUX, &[at.flame.gas, area], section.flux)?;
        self.rim_and_middle(at, (flue, section), (t, flux))?;
        let cp = self.property(&gas::SPECIFIC_HEAT, t, fuel, section.specific_heat)?;
        let viscosity = (section.viscosity, beyond.viscosity);
        let mu = self.carried_on(&gas::VISCOSITY, t, fuel, viscosity)?;
        let conductivity = (section.conductivity, beyond.conductivity);
        let k = self.carried_on(&gas::CONDUCTIVITY, t, fuel, conductivity)?;
        let re = self.settle(&REYNOLDS, &[flux, d_h, mu], section.reynolds)?;
        let pr = self.settle(&PRANDTL, &[mu, cp, k], section.prandtl)?;
        let nu = self.local_nusselt((re, pr), (at, d_h), section)?;
        self.settle(&FILM_COEFFICIENT, &[nu, k, d_h], section.convection)?;
        let soot = self.soot(fired.flame.soot);
        let flux = (section.radiant_flux, flue.beyond.radiation);
        self.flue_radiation(at, flue, (t, d_h, soot), (section.emissivity, flux))?;
        Ok(())
    }

    /// Speed of the gas where the burner ends, and how far it runs before rim and middle are one.
    fn rim_and_middle(
        &mut self,
        at: &At<'_>,
        (flue, section): (&Flue, &Section),
        (t, flux): (Ref, Ref),
    ) -> Result<(), Refused> {
        let from = [at.flame.fuel.molar_mass, t, at.water.air.p];
        let rho = self.settle(&gas::DENSITY, &from, section.density)?;
        let how = ("flux and density of the gas", "the one over the other");
        let names = ("u", "speed of the gas where the burner ends");
        let speed = self.marched(names, &M_PER_S, section.speed_m_s, &[flux, rho], how);
        let radius = self.built(("R", "half the bore of the flue"), &M, flue.bore_m / 2.0);
        self.working
            .worked(&RADIAL_MIXING_LENGTH, &[speed, radius])?;
        Ok(())
    }

    /// Nusselt number at a place: by the local law, where the flow is laminar.
    fn local_nusselt(
        &mut self,
        (re, pr): (Ref, Ref),
        (at, d_h): (&At<'_>, Ref),
        section: &Section,
    ) -> Result<Ref, Refused> {
        let names = ("s", "diameter of the burner over the bore of the flue");
        let (core, bore) = (self.working.si(at.core), self.working.si(at.bore));
        let from = [at.core, at.bore];
        let how = ("burner and flue", "the one over the other");
        let ratio = self.marched(names, &ONE, core / bore, &from, how);
        let settled = self.working.worked(&SETTLED_NUSSELT, &[ratio])?;
        let names = ("x", "distance from where this bore begins");
        let place = self.built(names, &M, section.place_m);
        let gz = self.working.worked(&GRAETZ, &[re, pr, d_h, place])?;
        if section.reynolds <= 2300.0 {
            return self.settle(&LOCAL_NUSSELT, &[settled, gz], section.nusselt);
        }
        let how = (
            "laminar and turbulent flow",
            "above a Reynolds number of 2300 the flow is not laminar",
        );
        let names = ("Nu", "Nusselt number at this place");
        Ok(self.marched(names, &ONE, section.nusselt, &[re, pr, gz], how))
    }

    /// Emissivity of gas and soot where the burner ends, and the flux.
    fn flue_radiation(
        &mut self,
        at: &At<'_>,
        flue: &Flue,
        (t, d_h, soot): (Ref, Ref, Ref),
        (emissivity, flux): (f64, (f64, f64)),
    ) -> Result<(), Refused> {
        let (water, p) = (at.water, self.pressures(&at.flame.fuel, at.water)?);
        let path = self.working.worked(&TUBE_BEAM, &[d_h])?;
        let gas = self.emissivity(t, path, &p)?;
        let emitted = self.settle(&SOOTY_EMISSIVITY, &[gas, soot], emissivity)?;
        let dense = self
            .working
            .worked(&ABSORBING_PATH, &[path, t, water.wall_k])?;
        let cold = self.emissivity(water.wall_k, dense, &p)?;
        let from = [cold, t, water.wall_k];
        let absorbed = self.working.worked(&GAS_ABSORPTIVITY, &from)?;
        let absorbed = self.working.worked(&SOOTY_EMISSIVITY, &[absorbed, soot])?;
        let names = ("eps_w", "emissivity of the inside of the flue");
        let field = "boiler.flue.emissivity";
        let wall = self.given::<Ratio>(field, names, &ONE, flue.wall_emissivity);
        let from = [wall, emitted, t, absorbed, water.wall_k];
        self.by_law(&TUBE_RADIANT_FLUX, &from, flux)?;
        Ok(())
    }

    /// The first tube across the flue; gives the line of what has burnt there.
    fn first_tube(
        &mut self,
        at: &At<'_>,
        fired: &FlameInFlue,
        met: Option<&Crossed>,
    ) -> Result<Option<Ref>, Refused> {
        let (Some(tubes), Some(met)) = (&fired.flue.cross, met) else {
            return Ok(None);
        };
        let burnt = self.burnt(fired, met.place_m, at.flame, met.burnt)?;
        let names = ("d", "outside diameter of a cross tube");
        let field = "boiler.cross-tubes.outside";
        let d = self.given::<Length>(field, names, &M, tubes.outside_m);
        let none = self.absent("d_k", "burner at the tube", &M);
        let open = self.working.worked(&OPEN_AREA, &[at.bore, none])?;
        let h = self.tube_convection(at, (fired, tubes, met), (d, open))?;
        let names = ("T", "gas before the first tube");
        let t = self.marched(names, &KELVIN, met.gas_k, &[], MARCH);
        let fuel = &at.flame.fuel;
        let cp = self.property(&gas::SPECIFIC_HEAT, t, fuel, met.specific_heat)?;
        let surface = self.settle(&TUBE_SURFACE, &[d, at.bore], met.area_m2)?;
        let from = [at.flame.gas, cp, t, at.water.wall_k, h, surface];
        self.settle(&TUBE_HEAT, &from, met.heat_w)?;
        Ok(Some(burnt))
    }

    /// Convection and radiation to the first tube as one coefficient, and its drag.
    fn tube_convection(
        &mut self,
        at: &At<'_>,
        (fired, tubes, met): (&FlameInFlue, &CrossTubes, &Crossed),
        (d, area): (Ref, Ref),
    ) -> Result<Ref, Refused> {
        let (mu, cp, k) = self.film(at, fired, met)?;
        let narrow = self.working.worked(&PASSAGE_AREA, &[area, d, at.bore])?;
        let from = [at.flame.gas, d, narrow, mu];
        let re = self.settle(&PASSAGE_REYNOLDS, &from, met.reynolds)?;
        let pr = self.settle(&PRANDTL, &[mu, cp, k], met.prandtl)?;
        let nu = self.settle(&CROSSFLOW_NUSSELT, &[re, pr], met.nusselt)?;
        let single = self.working.worked(&FILM_COEFFICIENT, &[nu, k, d])?;
        let drag = self.working.worked(&TUBE_DRAG, &[re])?;
        let t = self.marched(("T", "gas before it"), &KELVIN, met.gas_k, &[], MARCH);
        let from = [at.flame.fuel.molar_mass, t, at.water.air.p];
        let rho = self.settle(&gas::DENSITY, &from, met.density)?;
        let from = [drag, d, at.bore, area, at.flame.gas, rho];
        self.settle(&TUBE_LOSS, &from, met.loss_pa)?;
        let names = ("f_r", "heat to a tube over that to a single one");
        let row = self.given::<Ratio>("burner.row-factor", names, &ONE, tubes.row_factor);
        let how = (
            "convection alone and radiation with it",
            "the radiation of the gas adds to it, over the excess of temperature",
        );
        let names = ("h", "coefficient of the first tube");
        Ok(self.marched(names, &W_PER_M2_K, met.coefficient(), &[single, row], how))
    }

    /// Viscosity, specific heat and conductivity of the film round the first tube.
    fn film(
        &mut self,
        at: &At<'_>,
        fired: &FlameInFlue,
        met: &Crossed,
    ) -> Result<(Ref, Ref, Ref), Refused> {
        let (fuel, beyond) = (&at.flame.fuel, fired.flue.beyond);
        let how = (
            "gas and tube",
            "the film is at the mean of their temperatures",
        );
        let t = self.marched(
            ("T_f", "film of the first tube"),
            &KELVIN,
            met.film_k,
            &[],
            how,
        );
        let burnt = self.state.burning.gas;
        let viscosity = beyond.viscosity * burnt.transport(met.film_k).viscosity;
        let viscosity = (viscosity, beyond.viscosity);
        let conductivity = (met.conductivity, beyond.conductivity);
        let heat = burnt.specific_heat(met.film_k);
        Ok((
            self.carried_on(&gas::VISCOSITY, t, fuel, viscosity)?,
            self.property(&gas::SPECIFIC_HEAT, t, fuel, heat)?,
            self.carried_on(&gas::CONDUCTIVITY, t, fuel, conductivity)?,
        ))
    }

    /// Draught that the flue takes.
    fn flue_loss(
        &mut self,
        at: &At<'_>,
        (flue, settled): (&Flue, &FlameInFlueState),
        smoke_k: Ref,
        outside: &Outside,
    ) -> Result<Ref, Refused> {
        let march = &settled.flue;
        let from = [at.flame.fuel.molar_mass, smoke_k, at.water.air.p];
        let rho = self.settle(&gas::DENSITY, &from, march.outlet.density)?;
        let none = self.absent("d_k", "burner where the gas leaves", &M);
        let area = self.working.worked(&OPEN_AREA, &[at.bore, none])?;
        let flux = self.settle(&FLUE_FLUX, &[at.flame.gas, area], march.outlet.flux)?;
        let from = [flux, outside.density, rho];
        let speed = self.settle(&MOMENTUM_CHANGE, &from, march.momentum_pa)?;
        let names = ("K_b", "velocity heads lost where the gas leaves");
        let field = "burner.smokebox-loss";
        let k_b = self.given::<Ratio>(field, names, &ONE, flue.exit_heads);
        let exit = self.settle(&LOCAL_LOSS, &[k_b, flux, rho], march.exit_pa)?;
        let from = [at.bore];
        let sum = |filing: &mut Self, symbol, meaning, si| {
            filing.marched((symbol, meaning), &PA, si, &from, MARCH)
        };
        let friction = sum(self, "dp_f", "friction of the flue", march.friction_pa);
        let cross = sum(self, "dp_x", "loss at the cross tubes", march.cross_pa);
        let lift = sum(self, "dp_l", "lift of the flue", march.lift_pa);
        let from = [friction, cross, speed, exit, lift];
        self.settle(&FLUE_LOSS, &from, march.loss_pa())
    }
}
