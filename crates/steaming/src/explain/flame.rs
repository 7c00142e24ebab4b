//! Lines of a gas flame: jet, primary air, ports, and the mouth.

use formulas::balance::{ABSOLUTE_PRESSURE, TOTAL_FLOW};
use formulas::balance::{FLOW_FOR_FUEL, ROUND_AREA};
use formulas::burner::{
    BLOW_OFF_GRADIENT, BLOW_OFF_SHARE, FLAME_LENGTH, JET_PUSH, MIXING_LOSS, MIXTURE_DENSITY,
    PORT_LOADING, PORT_RICHNESS, PORT_SPEED, PRIMARY_AIR_RATIO, RICH_RATIO, ROUND_GRADIENT,
    SLOT_GRADIENT,
};
use formulas::draught::OPENING_LOSS;
use formulas::fuel::AIR_BY_VOLUME;
use formulas::supply::{
    CRITICAL_RATIO, HEAT_RATE, JET_FLOW, JET_FLUX, JET_MOUTH_PRESSURE, JET_RATIO, JET_SPEED,
    JET_THRUST,
};
use reckoning::quantity::{
    Area, BAR_GAUGE, Gauge, KELVIN, KG_PER_S, Length, M, M2, M3_PER_S, ONE, PA, Ratio, Temperature,
};
use reckoning::{Ref, Refused};

use super::Filing;
use super::draught::Outside;
use super::fire::Fuel;
use super::water::Water;
use crate::burner::{
    Burner, BurnerState, Flame, FlameState, GasJetState, Mouth, PortShape, PrimaryState, Source,
    SourceState, Throat, ThroatShape,
};

/// Lines of a flame.
#[derive(Clone, Copy)]
pub(super) struct FlameLines {
    /// The gas that it burns to.
    pub fuel: Fuel,
    /// Fuel burnt.
    pub fuel_burnt: Ref,
    /// All the air.
    pub air: Ref,
    /// Gas.
    pub gas: Ref,
    /// All the air over the air needed.
    pub air_ratio: Ref,
    /// Primary air over the air needed.
    pub primary_ratio: Ref,
    /// Suction behind the mouth.
    pub mouth: Ref,
    /// Gradient at the ports over that of blow-off, of a gas burner.
    pub blow_off: Option<Ref>,
    /// Share burnt at the first cross tube, if there is one, and at the end of the flue.
    pub burnt: Option<(Option<Ref>, Ref)>,
}

/// What gives a flame its fuel, filed.
pub(super) struct Fed {
    pub fuel: Fuel,
    /// Fuel burnt.
    pub burnt: Ref,
    /// Primary air, and over the air needed.
    pub primary: Ref,
    pub primary_ratio: Ref,
    pub blow_off: Option<Ref>,
}

/// Lines of the jet.
struct JetLines {
    gas: Ref,
    thrust: Ref,
    molar_mass: Ref,
}

impl Filing<'_> {
    pub(super) fn flame(
        &mut self,
        (flame, state): (&Flame, &FlameState),
        water: &Water,
        outside: &Outside,
    ) -> Result<FlameLines, Refused> {
        let left = format!("{:.1e} Pa left", self.state.pass.left_pa);
        let balance = (
            "draught of jets and hot column against the losses of mouth, flue or tubes, and turns",
            left.as_str(),
        );
        let names = ("lambda", "all the air over the air that the fuel needs");
        let air_ratio = self.root(names, &ONE, self.state.balance, balance);
        let fed = match (&flame.source, &state.source) {
            (Source::Burner(burner), SourceState::Burner(at_work)) => {
                self.burner((burner, at_work), air_ratio, (water, outside))?
            }
            (Source::Wicks(wicks), SourceState::Wicks(at_work)) => {
                self.wicks(wicks, at_work, air_ratio)?
            }
            _ => unreachable!("a flame is of the kind of source that it was settled for"),
        };
        let (fuel, burnt) = (fed.fuel, fed.burnt);
        let pass = &self.state.pass;
        let (air_kg_s, gas_kg_s) = (pass.air_kg_s, pass.gas_kg_s);
        let air = self.settle(&FLOW_FOR_FUEL, &[fuel.air, burnt], air_kg_s)?;
        let gas = self.settle(&FLOW_FOR_FUEL, &[fuel.flue, burnt], gas_kg_s)?;
        let mouth = self.mouth((flame, state), (air, fed.primary), outside)?;
        Ok(FlameLines {
            fuel,
            fuel_burnt: burnt,
            air,
            gas,
            air_ratio,
            primary_ratio: fed.primary_ratio,
            mouth,
            blow_off: fed.blow_off,
            burnt: None,
        })
    }

    /// Elements of the gas, its heating value, and what it burns to.
    fn gas_fuel(&mut self, burner: &Burner, air_ratio: Ref) -> Result<Fuel, Refused> {
        let x = burner.gas.composition;
        let mut share = |symbol, meaning, value| {
            self.given::<Ratio>("gas.fuel", (symbol, meaning), &ONE, value)
        };
        let composition = [
            share("C", "carbon in the gas, mass fraction", x.carbon),
            share("H", "hydrogen in the gas, mass fraction", x.hydrogen),
            share("O", "oxygen in the gas, mass fraction", x.oxygen),
            share("S", "sulphur in the gas, mass fraction", x.sulphur),
            share("N", "nitrogen in the gas, mass fraction", x.nitrogen),
            share("W", "water in the gas, mass fraction", x.water),
            share("A", "ash of the gas, mass fraction", x.ash),
        ];
        self.fuel(composition, air_ratio, "gas.fuel")
    }

    fn jet(
        &mut self,
        burner: &Burner,
        state: &GasJetState,
        water: &Water,
    ) -> Result<JetLines, Refused> {
        let (jet, gas, p_a) = (&burner.jet, &burner.gas, water.air.p);
        let names = ("p_g", "pressure before the jet");
        let gauge = jet.supply_pa - self.state.inputs.site.atmosphere_pa;
        let gauge = self.given::<Gauge>("gas.pressure", names, &BAR_GAUGE, gauge);
        let p_0 = self.settle(&ABSOLUTE_PRESSURE, &[gauge, p_a], jet.supply_pa)?;
        let names = ("T_0", "temperature of the gas before the jet");
        let field = "gas.tank.temperature";
        let t_0 = self.given::<Temperature>(field, names, &KELVIN, gas.gas_k);
        let names = ("M_g", "molar mass of the gas, kg/kmol");
        let molar_mass = self.given::<Ratio>("gas.fuel", names, &ONE, gas.molar_mass);
        let names = ("k", "isentropic exponent of the gas");
        let k = self.given::<Ratio>("gas.fuel", names, &ONE, gas.exponent);
        let names = ("d_j", "bore of the jet");
        let bore = self.given::<Length>("burner.jet.bore", names, &M, jet.bore_m);
        let area = self.working.worked(&ROUND_AREA, &[bore])?;
        let names = ("C_d", "discharge coefficient of the jet");
        let field = "burner.jet.coefficient";
        let c_d = self.given::<Ratio>(field, names, &ONE, jet.coefficient);
        let critical = self.settle(&CRITICAL_RATIO, &[k], state.critical)?;
        let r = self.settle(&JET_RATIO, &[p_a, p_0, critical], state.ratio)?;
        let flux = self.settle(&JET_FLUX, &[p_0, t_0, molar_mass, k, r], state.flux)?;
        let flow = self.settle(&JET_FLOW, &[c_d, area, flux], state.gas_kg_s)?;
        let speed = self.settle(&JET_SPEED, &[t_0, molar_mass, k, r], state.speed_m_s)?;
        let p_e = self.settle(&JET_MOUTH_PRESSURE, &[r, p_0], state.mouth_pa)?;
        let from = [flow, speed, p_e, p_a, area];
        Ok(JetLines {
            gas: flow,
            thrust: self.settle(&JET_THRUST, &from, state.thrust_n)?,
            molar_mass,
        })
    }

    /// A gas burner: gas, jet, throat, holes and ports.
    fn burner(
        &mut self,
        (burner, state): (&Burner, &BurnerState),
        air_ratio: Ref,
        (water, outside): (&Water, &Outside),
    ) -> Result<Fed, Refused> {
        let fuel = self.gas_fuel(burner, air_ratio)?;
        let jet = self.jet(burner, &state.jet, water)?;
        let primary = &state.primary;
        let air = self.primary_air(primary);
        let throat = &burner.throat;
        let names = ("T_m", "temperature of the mixture at the ports");
        let field = "burner.throat.mixture-temperature";
        let t_m = self.given::<Temperature>(field, names, &KELVIN, throat.mixture_k);
        let from = [
            water.air.p,
            t_m,
            jet.gas,
            jet.molar_mass,
            air,
            outside.molar_mass,
        ];
        let rho = self.settle(&MIXTURE_DENSITY, &from, primary.mixture_kg_m3)?;
        let both = self.working.worked(&TOTAL_FLOW, &[jet.gas, air])?;
        self.throat(burner, primary, (jet.thrust, both, rho))?;
        let names = ("C_h", "discharge coefficient of the air holes");
        let field = "burner.air-holes.coefficient";
        let c_h = self.given::<Ratio>(field, names, &ONE, burner.holes_coefficient);
        let names = ("A_h", "area of all air holes");
        let holes = self.given::<Area>("burner.air-holes.bore", names, &M2, burner.holes_m2);
        let from = [air, outside.density, c_h, holes];
        self.settle(&OPENING_LOSS, &from, primary.holes_pa)?;
        let from = [air, fuel.need, jet.gas];
        let ratio = self.settle(&PRIMARY_AIR_RATIO, &from, primary.ratio)?;
        let flows = (both, rho, jet.gas);
        let blow_off = self.ports((burner, state), flows, (ratio, t_m, fuel.heating_value))?;
        self.port_flame(state, &fuel, (ratio, t_m, jet.molar_mass))?;
        Ok(Fed {
            fuel,
            burnt: jet.gas,
            primary: air,
            primary_ratio: ratio,
            blow_off: Some(blow_off),
        })
    }

    /// The flame of one port, where it must still find air.
    fn port_flame(
        &mut self,
        state: &BurnerState,
        fuel: &Fuel,
        (ratio, t_m, molar_mass): (Ref, Ref, Ref),
    ) -> Result<(), Refused> {
        let Some(flame) = &state.ports.flame else {
            return Ok(());
        };
        let volumes = self
            .working
            .worked(&AIR_BY_VOLUME, &[fuel.need, molar_mass])?;
        let wants = self.settle(&PORT_RICHNESS, &[ratio, volumes], flame.wants)?;
        let how = (
            "all the ports",
            "gas and primary air, at the temperature of the air, shared evenly",
        );
        let names = ("Q", "mixture through one port");
        let flow = self.marched(names, &M3_PER_S, flame.flow_m3_s, &[], how);
        let names = ("T_a", "temperature of the air");
        let air_k = self.state.inputs.site.air_k;
        let t_a = self.given::<Temperature>("site.air", names, &KELVIN, air_k);
        self.settle(&FLAME_LENGTH, &[flow, t_a, t_m, wants], flame.length_m)?;
        Ok(())
    }

    /// The primary air: the root of the throat, or all the air where the mouth is shut.
    fn primary_air(&mut self, primary: &PrimaryState) -> Ref {
        let names = ("m_a", "primary air");
        match primary.balance {
            Some(solved) => {
                let left = format!("{:.1e} Pa left", solved.residual);
                let balance = "push of the jet against mixing, ports, air holes and the mouth";
                self.root(names, &KG_PER_S, solved, (balance, &left))
            }
            None => {
                let how = (
                    "primary and secondary air",
                    "the mouth is shut, so that all the air is primary",
                );
                self.marched(names, &KG_PER_S, primary.air_kg_s, &[], how)
            }
        }
    }

    /// Push of the jet, and what mixing takes of it.
    fn throat(
        &mut self,
        burner: &Burner,
        primary: &PrimaryState,
        (thrust, both, rho): (Ref, Ref, Ref),
    ) -> Result<(), Refused> {
        let throat = &burner.throat;
        let names = ("d_t", "least bore of the throat");
        let bore = self.given::<Length>("burner.throat.bore", names, &M, throat.bore_m);
        let area = self.working.worked(&ROUND_AREA, &[bore])?;
        let names = ("x", "share of the thrust that mixing and alignment leave");
        let field = "burner.throat.momentum-share";
        let x = self.given::<Ratio>(field, names, &ONE, throat.momentum_share);
        self.settle(&JET_PUSH, &[x, thrust, area], primary.push_pa)?;
        let [beta, k_f, eta_d, s] = self.throat_heads(throat);
        let from = [beta, k_f, eta_d, s, both, rho, area];
        self.settle(&MIXING_LOSS, &from, primary.mixing_pa)?;
        Ok(())
    }

    /// Unevenness, friction, and what a taper gives back of how wide it is.
    fn throat_heads(&mut self, throat: &Throat) -> [Ref; 4] {
        let (given_back, widening) = match throat.shape {
            ThroatShape::Parallel => (0.0, 1.0),
            ThroatShape::Taper { tube_m, given_back } => {
                (given_back, (throat.bore_m / tube_m).powi(2))
            }
        };
        [
            (
                "burner.throat.momentum-factor",
                "beta",
                "momentum of the mixture over that of an even stream",
                throat.momentum_factor,
            ),
            (
                "burner.throat.friction",
                "k_f",
                "friction of throat and tube in velocity heads",
                throat.friction_heads,
            ),
            (
                "burner.throat.diffuser-efficiency",
                "eta_d",
                "share of the velocity head that the taper gives back",
                given_back,
            ),
            (
                "burner.throat.tube",
                "s",
                "area of the throat over that of the tube into which it tapers",
                widening,
            ),
        ]
        .map(|(field, symbol, meaning, value)| {
            self.given::<Ratio>(field, (symbol, meaning), &ONE, value)
        })
    }

    /// Loss, speed and loading of the ports, and how near the flame is to blowing off.
    fn ports(
        &mut self,
        (burner, state): (&Burner, &BurnerState),
        (both, rho, gas): (Ref, Ref, Ref),
        (ratio, t_m, heating_value): (Ref, Ref, Ref),
    ) -> Result<Ref, Refused> {
        let (ports, at) = (&burner.ports, &state.ports);
        let names = ("C_p", "discharge coefficient of the ports");
        let field = "burner.ports.coefficient";
        let c_p = self.given::<Ratio>(field, names, &ONE, ports.coefficient);
        let names = ("A_p", "area of all ports");
        let area = self.given::<Area>("burner.ports.count", names, &M2, ports.area_m2());
        let from = [both, rho, c_p, area];
        self.settle(&OPENING_LOSS, &from, state.primary.ports_pa)?;
        let speed = self.settle(&PORT_SPEED, &[both, rho, area], at.speed_m_s)?;
        let heat = self.working.worked(&HEAT_RATE, &[gas, heating_value])?;
        self.settle(&PORT_LOADING, &[heat, area], at.loading_w_m2)?;
        let gradient = match ports.shape {
            PortShape::Round { bore_m } => {
                let names = ("d", "bore of a port");
                let bore = self.given::<Length>("burner.ports.bore", names, &M, bore_m);
                self.settle(&ROUND_GRADIENT, &[speed, bore], at.gradient_per_s)?
            }
            PortShape::Slot { width_m, .. } => {
                let names = ("w", "width of a slot");
                let width = self.given::<Length>("burner.ports.width", names, &M, width_m);
                self.settle(&SLOT_GRADIENT, &[speed, width], at.gradient_per_s)?
            }
        };
        let rich = self.settle(&RICH_RATIO, &[ratio], at.rich_ratio)?;
        let blow_off = self.settle(&BLOW_OFF_GRADIENT, &[rich, t_m], at.blow_off_per_s)?;
        self.settle(&BLOW_OFF_SHARE, &[gradient, blow_off], at.blow_off_share)
    }

    /// Suction behind the mouth.
    fn mouth(
        &mut self,
        (flame, state): (&Flame, &FlameState),
        (air, primary): (Ref, Ref),
        outside: &Outside,
    ) -> Result<Ref, Refused> {
        let Mouth::Open {
            area_m2,
            coefficient,
        } = flame.mouth
        else {
            let how = (
                "push of the jet, mixing, air holes and ports",
                "the mouth is shut, so that the burner pushes with what is left of its jet",
            );
            let names = ("dp_m", "suction behind the ports");
            return Ok(self.marched(names, &PA, state.mouth_pa, &[primary], how));
        };
        let how = (
            "primary and secondary air",
            "what the jet does not draw comes through the mouth",
        );
        let names = ("m_s", "secondary air");
        let secondary = state.secondary_kg_s;
        let secondary = self.marched(names, &KG_PER_S, secondary, &[air, primary], how);
        let names = ("C_s", "discharge coefficient of the mouth");
        let field = "burner.mouth.coefficient";
        let c_s = self.given::<Ratio>(field, names, &ONE, coefficient);
        let names = ("A_s", "free area of the mouth");
        let area = self.given::<Area>("burner.mouth.area", names, &M2, area_m2);
        let from = [secondary, outside.density, c_s, area];
        self.settle(&OPENING_LOSS, &from, state.mouth_pa)
    }
}
