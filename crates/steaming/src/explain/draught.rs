//! Lines of the chimney: what is lost before it, and what jets and hot column raise.

use formulas::balance::{
    FRICTION_HEADS, GAS_OVER_STEAM, ROUND_AREA, TOTAL_AREA, TOTAL_FLOW, TOTAL_MOMENTUM,
};
use formulas::draught::{
    BUOYANCY, CAUGHT_SHARE, DRAWN_SHARE, ENTRAINMENT_SHARE, GAS_INLET_SPEED, JET_PUMP,
    JOINT_MIXING, MIXED_DENSITY, MIXED_SPEED, MIXED_TEMPERATURE, NET_BLAST, ORIFICE_FLOW,
};
use formulas::flue::FLUE_FLUX;
use formulas::gas;
use formulas::heat::{FRICTION_FACTOR, REYNOLDS};
use reckoning::quantity::{
    Area, J_PER_KG, J_PER_KG_K, KELVIN, KG_PER_M3, KG_PER_S, Length, M, M2, NEWTON, ONE, Ratio,
    Temperature,
};
use reckoning::{Ref, Refused};

use super::Filing;
use super::engine::EngineLines;
use super::water::{JetLines, Water};
use super::way::Way;
use crate::inputs::ExhaustWater;
use crate::jets::{ChimneyWall, Jet, STEAM_J_KG_K};

/// The lines filed before.
pub(super) struct Before<'a> {
    pub water: &'a Water,
    pub engine: Option<&'a EngineLines>,
    pub blower: Option<&'a JetLines>,
    pub way: &'a Way,
}

/// Lines of the air outside.
#[derive(Clone, Copy)]
pub(super) struct Outside {
    pub molar_mass: Ref,
    pub density: Ref,
}

/// The gas that comes to the chimney.
struct Gas {
    flow: Ref,
    k: Ref,
    density: Ref,
}

/// The mixture.
struct Mixed {
    k: Ref,
    density: Ref,
    flow: Ref,
}

impl Filing<'_> {
    /// Files the chimney.
    pub(super) fn draught(&mut self, before: &Before<'_>) -> Result<(), Refused> {
        let pass = self.state.pass;
        let lost = before.way.lost;
        let outside = match &before.way.flame {
            Some((_, outside)) => outside.density,
            None => self.outside(before.water)?.density,
        };
        let gas = self.chimney_gas(before, lost, outside)?;
        let blast = before.engine.and_then(|e| e.jet.as_ref());
        self.jet_pump(before, blast, &gas)?;
        let names = ("H", "height of the hot column");
        let height = self.state.inputs.chimney.height_m;
        let height = self.given::<Length>("chimney.height", names, &M, height);
        self.settle(&BUOYANCY, &[height, outside, gas.density], pass.lift_pa)?;
        Ok(())
    }

    /// Density of dry air outside.
    pub(super) fn outside(&mut self, water: &Water) -> Result<Outside, Refused> {
        let dry = gas::MoleFractions::DRY_AIR;
        let how = (
            "gases of which the air consists",
            "dry air, its argon counted as nitrogen",
        );
        let mut share = |symbol, meaning, x| self.marched((symbol, meaning), &ONE, x, &[], how);
        let shares = [
            share("x_co2", "carbon dioxide in the air", dry.co2),
            share("x_h2o", "water vapour in the air", dry.h2o),
            share("x_o2", "oxygen in the air", dry.o2),
        ];
        let mass = self.working.worked(&gas::MOLAR_MASS, &shares)?;
        let names = ("T_a", "temperature of the air");
        let air_k = self.state.inputs.site.air_k;
        let t = self.given::<Temperature>("site.air", names, &KELVIN, air_k);
        let from = [mass, t, water.air.p];
        Ok(Outside {
            molar_mass: mass,
            density: self.settle(&gas::DENSITY, &from, self.state.pass.outside_kg_m3)?,
        })
    }

    fn chimney_gas(
        &mut self,
        before: &Before<'_>,
        lost: Ref,
        outside: Ref,
    ) -> Result<Gas, Refused> {
        let state = self.state.pass.chimney;
        let leak = self.leak(lost, outside)?;
        let changed = self.state.inputs.leak.is_some() || self.state.pass.dryer.is_some();
        let k = if changed {
            let how = (
                "heat of the smoke, of the coil and of the air that leaks in",
                "the smokebox is stirred",
            );
            let names = ("T_s", "temperature of the gas that goes to the chimney");
            self.marched(
                names,
                &KELVIN,
                state.gas_k,
                &[before.way.smoke_k, leak],
                how,
            )
        } else {
            before.way.smoke_k
        };
        let flow = self.settle(
            &TOTAL_FLOW,
            &[before.way.gas, leak],
            state.gas_kg_s + state.leak_kg_s,
        )?;
        let density = if self.state.inputs.leak.is_some() {
            let how = ("flue gas and air at one temperature", "their volumes add");
            let names = ("rho_g", "density of the gas in the smokebox");
            self.marched(names, &KG_PER_M3, state.density_kg_m3, &[k, leak], how)
        } else {
            let from = [before.way.fuel.molar_mass, k, before.water.air.p];
            self.settle(&gas::DENSITY, &from, state.density_kg_m3)?
        };
        Ok(Gas { flow, k, density })
    }

    /// Air that leaks into the smokebox.
    fn leak(&mut self, lost: Ref, outside: Ref) -> Result<Ref, Refused> {
        let Some(leak) = self.state.inputs.leak else {
            return Ok(self.absent("m_l", "air that leaks into the smokebox", &KG_PER_S));
        };
        let names = ("C_d", "discharge coefficient of the leaks");
        let field = "smokebox.leak-coefficient";
        let c = self.given::<Ratio>(field, names, &ONE, leak.coefficient);
        let names = ("A", "area of all leaks");
        let area = self.given::<Area>("smokebox.leak", names, &M2, leak.area_m2);
        let leaked = self.state.pass.chimney.leak_kg_s;
        self.settle(&ORIFICE_FLOW, &[c, area, outside, lost], leaked)
    }

    fn jet_pump(
        &mut self,
        before: &Before<'_>,
        blast: Option<&JetLines>,
        gas: &Gas,
    ) -> Result<(), Refused> {
        let jets = self.state.pass.jets;
        let pair = |line: fn(&JetLines) -> Ref| (blast.map(line), before.blower.map(line));
        let steam = self.both(&TOTAL_FLOW, pair(|j| j.steam), jets.steam_kg_s)?;
        let momentum = jets.exhaust_n + jets.blower_n;
        let momentum = self.both(&TOTAL_MOMENTUM, pair(|j| j.momentum), momentum)?;
        let mixed = self.mixed(before, gas, steam)?;
        let (choke, top) = self.chimney()?;
        let areas = [self.state.exhaust_jet, self.state.blower.map(|b| b.jet)];
        let area: f64 = areas.iter().flatten().map(|j| j.area_m2).sum();
        let nozzles = self.both(&TOTAL_AREA, pair(|j| j.area), area)?;
        let from = [gas.flow, gas.density, choke, nozzles];
        let inlet = self.settle(&GAS_INLET_SPEED, &from, jets.inlet_m_s)?;
        let from = [mixed.flow, mixed.density, choke];
        let speed = self.settle(&MIXED_SPEED, &from, jets.mixed_m_s)?;
        let names = ("k_in", "loss of the gas at the bell");
        let bell = self.state.inputs.chimney.inlet_heads;
        let bell = self.given::<Ratio>("chimney.inlet-loss", names, &ONE, bell);
        let wall = self.wall(before, (mixed.flow, mixed.k), (choke, jets.friction_heads))?;
        let [taper, even] = self.losses();
        let from = [
            momentum,
            gas.flow,
            inlet,
            gas.density,
            mixed.density,
            speed,
            choke,
            top,
            bell,
            wall,
            taper,
            even,
        ];
        let raised = self.settle(&JET_PUMP, &from, jets.raised_pa)?;
        let mixing = self.mixing(before.blower, blast, gas, steam)?;
        self.settle(&NET_BLAST, &[mixing, raised], jets.net_pa)?;
        Ok(())
    }

    /// Areas of choke and top.
    fn chimney(&mut self) -> Result<(Ref, Ref), Refused> {
        let chimney = self.state.inputs.chimney;
        let names = ("d_c", "bore of the choke");
        let choke = self.given::<Length>("chimney.choke", names, &M, chimney.choke_m);
        let names = ("d_e", "bore at the top");
        let top = self.given::<Length>("chimney.top", names, &M, chimney.top_m);
        Ok((
            self.working.worked(&ROUND_AREA, &[choke])?,
            self.working.worked(&ROUND_AREA, &[top])?,
        ))
    }

    /// Friction of the wall: as given, or that of a smooth bore.
    fn wall(
        &mut self,
        before: &Before<'_>,
        (flow, k): (Ref, Ref),
        (choke, heads): (Ref, f64),
    ) -> Result<Ref, Refused> {
        let chimney = self.state.inputs.chimney;
        let ChimneyWall::Smooth(length_m) = self.state.inputs.chimney_wall() else {
            let names = ("k_f", "friction of the mixing length");
            return Ok(self.given::<Ratio>("chimney.friction", names, &ONE, heads));
        };
        let viscosity = self
            .state
            .burning
            .gas
            .transport(self.state.pass.jets.mixed.mixed_k)
            .viscosity;
        let mu = self.property(&gas::VISCOSITY, k, &before.way.fuel, viscosity)?;
        let flux = self.working.worked(&FLUE_FLUX, &[flow, choke])?;
        let names = ("d_c", "bore of the choke");
        let bore = self.given::<Length>("chimney.choke", names, &M, chimney.choke_m);
        let re = self.working.worked(&REYNOLDS, &[flux, bore, mu])?;
        let factor = self.working.worked(&FRICTION_FACTOR, &[re])?;
        let names = ("L", "length of the chimney");
        let length = self.given::<Length>("chimney.height", names, &M, length_m);
        self.settle(&FRICTION_HEADS, &[factor, length, bore], heads)
    }

    /// Taper and unevenness of the stream.
    fn losses(&mut self) -> [Ref; 2] {
        let chimney = self.state.inputs.chimney;
        let names = (
            "eta_d",
            "share of the velocity head that a taper gives back",
        );
        let field = "chimney.diffuser-efficiency";
        let taper = self.given::<Ratio>(field, names, &ONE, chimney.diffuser_share);
        let names = (
            "beta",
            "momentum of the mixture over that of an even stream",
        );
        let field = "chimney.momentum-factor";
        let even = self.given::<Ratio>(field, names, &ONE, chimney.momentum_factor);
        [taper, even]
    }

    /// The sum of what exhaust and blower bring; of one alone that one.
    fn both(
        &mut self,
        card: &'static reckoning::Card,
        (first, second): (Option<Ref>, Option<Ref>),
        si: f64,
    ) -> Result<Ref, Refused> {
        let unit = card.gives.unit;
        let mut line = |there: Option<Ref>, what| match there {
            Some(line) => line,
            None => self.absent(card.gives.name, what, unit),
        };
        let first = line(first, "of an exhaust nozzle");
        let second = line(second, "of a blower");
        self.settle(card, &[first, second], si)
    }

    fn mixed(&mut self, before: &Before<'_>, gas: &Gas, steam: Ref) -> Result<Mixed, Refused> {
        let state = self.state.pass.jets.mixed;
        let how = (
            "the states of steam mixing with gas",
            "between that of the ideal vapour and that of steam at one atmosphere",
        );
        let names = ("c_s", "specific heat of the steam");
        let c_s = self.marched(names, &J_PER_KG_K, STEAM_J_KG_K, &[], how);
        let lacks = self.lacking(before);
        let how = (
            "the temperatures of mixture and smokebox",
            "the mean between them at which the heat of the mixture balances",
        );
        let names = ("c_g", "mean specific heat of the gas");
        let c_g = self.marched(names, &J_PER_KG_K, state.gas_j_kg_k, &[gas.k], how);
        let from = [steam, c_s, before.water.air.t, lacks, gas.flow, c_g, gas.k];
        let t = self.settle(&MIXED_TEMPERATURE, &from, state.mixed_k)?;
        let vapour = self.vapour(t, before.water)?;
        let gas_density = if self.state.inputs.leak.is_some() {
            let how = ("flue gas and air at one temperature", "their volumes add");
            let names = ("rho_g", "density of the gas at the mixed temperature");
            self.marched(names, &KG_PER_M3, state.gas_kg_m3, &[t], how)
        } else {
            let from = [before.way.fuel.molar_mass, t, before.water.air.p];
            self.settle(&gas::DENSITY, &from, state.gas_kg_m3)?
        };
        let from = [steam, vapour, gas.flow, gas_density];
        let density = self.settle(&MIXED_DENSITY, &from, state.mixed_kg_m3)?;
        let flow = self.working.worked(&TOTAL_FLOW, &[steam, gas.flow])?;
        Ok(Mixed {
            k: t,
            density,
            flow,
        })
    }

    /// Heat that the steam lacks of dry as it mixes.
    fn lacking(&mut self, before: &Before<'_>) -> Ref {
        let lacks = self.state.pass.jets.mixed.lacks_j_kg;
        let names = ("dh", "heat that the steam lacks of dry");
        match self.state.inputs.exhaust_water {
            ExhaustWater::TakenOut => {
                let how = (
                    "dry and wet steam",
                    "its water is taken out ahead of the nozzle",
                );
                self.marched(names, &J_PER_KG, lacks, &[], how)
            }
            ExhaustWater::DriesInGas => {
                let blast = before.engine.and_then(|e| e.jet.as_ref());
                let lines: Vec<Ref> = blast
                    .into_iter()
                    .chain(before.blower)
                    .map(|j| j.lacks)
                    .collect();
                let how = ("the steam of all jets", "the mean by mass");
                self.marched(names, &J_PER_KG, lacks, &lines, how)
            }
        }
    }

    /// Density of vapour alone.
    fn vapour(&mut self, t: Ref, water: &Water) -> Result<Ref, Refused> {
        let how = ("gases of which the steam consists", "water vapour alone");
        let mut share = |symbol, x| self.marched((symbol, "share in the steam"), &ONE, x, &[], how);
        let shares = [share("x_co2", 0.0), share("x_h2o", 1.0), share("x_o2", 0.0)];
        let mass = self.working.worked(&gas::MOLAR_MASS, &shares)?;
        self.settle(
            &gas::DENSITY,
            &[mass, t, water.air.p],
            self.state.pass.jets.mixed.vapour_kg_m3,
        )
    }

    fn mixing(
        &mut self,
        blower: Option<&JetLines>,
        blast: Option<&JetLines>,
        gas: &Gas,
        steam: Ref,
    ) -> Result<Ref, Refused> {
        let jets = self.state.pass.jets;
        let Some(over) = jets.mixing.gas_over_steam else {
            let how = ("jets and none", "without steam the sum is a plain loss");
            return Ok(self.marched(("x_m", "mixing factor of all jets"), &ONE, 1.0, &[], how));
        };
        let over = self.settle(&GAS_OVER_STEAM, &[gas.flow, steam], over)?;
        let first = (
            self.state.exhaust_jet,
            blast,
            "blast.mixing",
            jets.mixing.exhaust_share,
        );
        let [j_1, x_1, s_1] = self.one_jet(first, gas, over)?;
        let second = (
            self.state.blower.map(|b| b.jet),
            blower,
            "blower.mixing",
            jets.mixing.blower_share,
        );
        let [j_2, x_2, s_2] = self.one_jet(second, gas, over)?;
        self.settle(
            &JOINT_MIXING,
            &[j_1, x_1, s_1, j_2, x_2, s_2],
            jets.mixing.all,
        )
    }

    /// Momentum, mixing factor and share of one jet.
    fn one_jet(
        &mut self,
        (jet, lines, field, share): (Option<Jet>, Option<&JetLines>, &'static str, f64),
        gas: &Gas,
        over: Ref,
    ) -> Result<[Ref; 3], Refused> {
        let (Some(jet), Some(lines)) = (jet, lines) else {
            let momentum = self.absent("J", "momentum of jets that are not there", &NEWTON);
            let how = ("any factor", "without momentum it does not enter");
            let one = self.marched(("x", "its factor"), &ONE, 1.0, &[], how);
            return Ok([momentum, one, one]);
        };
        let names = ("x", "draught found over that of full mixing");
        let factor = self.given::<Ratio>(field, names, &ONE, jet.mixing);
        let names = ("x", "distance from tip to the end of the parallel part");
        let reach = self.given::<Length>("chimney.parallel", names, &M, jet.reach_m);
        let from = [reach, lines.bore, gas.density, lines.density, over];
        let allowed = self.working.worked(&ENTRAINMENT_SHARE, &from)?;
        let caught = self.caught(&jet, lines.bore)?;
        let share = self.settle(&DRAWN_SHARE, &[allowed, caught], share)?;
        Ok([lines.momentum, factor, share])
    }

    /// Share of a jet that the choke catches.
    fn caught(&mut self, jet: &Jet, bore: Ref) -> Result<Ref, Refused> {
        let Some(below_m) = jet.below_m else {
            let how = ("tips below the choke and in it", "it begins in the chimney");
            let names = ("s_c", "share of the jet that the choke catches");
            return Ok(self.marched(names, &ONE, 1.0, &[], how));
        };
        let names = ("x", "distance from the tip up to the choke");
        let below = self.given::<Length>("blast.below-choke", names, &M, below_m);
        let choke_m = self.state.inputs.chimney.choke_m;
        let names = ("D_c", "bore of the choke");
        let choke = self.given::<Length>("chimney.choke", names, &M, choke_m);
        self.settle(&CAUGHT_SHARE, &[bore, below, choke], jet.caught(choke_m))
    }
}
