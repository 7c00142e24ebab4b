//! Files the settled values of a state through the cards, with where each input came from.
//!
//! The cards are worked again beside the state; a test holds the two within 1e-12. What a march
//! in slices gives is filed as such, for no one law gives it.

mod account;
mod bed_air;
mod coil;
mod draught;
mod engine;
mod exhaust;
mod fire;
mod flame;
mod flame_box;
mod flue;
mod pipe;
mod radiation;
mod tank;
mod water;
mod way;
mod wicks;

pub use account::{explain_draught, explain_heat, explain_use};
pub use tank::explain_tank;

use reckoning::quantity::{Quantity, Unit};
use reckoning::working::{Choice, Root};
use reckoning::{Card, Given, Known, Ref, Refused, Working};

use formulas::steam::cards::REGION1_H;

use formulas::balance::{
    DEMAND, EFFICIENCY, EVAPORATION, LEAVING_SPEED, STEAMING_RATIO, TOTAL_FLOW, USEFUL_HEAT,
};
use reckoning::quantity::{KELVIN, KG_PER_S, M2, MassFlow, Power, Temperature, WATT};
use reckoning::solve::Solved;

use crate::state::FireState;

/// Says where the value of a plan field came from.
pub type Origins<'a> = &'a dyn Fn(&'static str) -> Given;

/// The lines that a reader asks for first.
#[derive(Clone, Copy, Debug)]
pub struct Explained {
    /// Fuel burnt.
    pub fuel: Ref,
    /// Temperature of the hottest gas: of that in a firebox, which is stirred.
    pub gas_temperature: Ref,
    /// Temperature of the gas where it comes to the smokebox.
    pub smoke_temperature: Ref,
    /// Loss of the bare bed over its weight, where there is a bed.
    pub lift: Option<Ref>,
    /// The flame, where one burns.
    pub flame: Option<ExplainedFlame>,
    /// Draught lost before the chimney.
    pub draught_lost: Ref,
    /// Back pressure, where there is an engine.
    pub back_pressure: Option<Ref>,
    /// Steam made.
    pub evaporation: Ref,
    /// Steam asked for.
    pub demand: Ref,
    /// Steam made over steam asked for, where any is asked.
    pub steaming_ratio: Option<Ref>,
    /// Efficiency on the lower heating value.
    pub efficiency: Ref,
}

/// The lines of a flame that a reader asks for first.
#[derive(Clone, Copy, Debug)]
pub struct ExplainedFlame {
    /// All the air over the air needed.
    pub air_ratio: Ref,
    /// Primary air over the air needed.
    pub primary_ratio: Ref,
    /// Gradient at the ports over that of blow-off; `None` where wicks burn.
    pub blow_off: Option<Ref>,
    /// Share of the fuel that has burnt at the first cross tube; `None` without one.
    pub burnt_at_first: Option<Ref>,
    /// Share of the fuel that has burnt at the end of the flue; `None` in a firebox.
    pub burnt: Option<Ref>,
}

/// Files a settled state.
///
/// # Errors
/// [`Refused`] where a card cannot be worked on the settled values, which a settled state does
/// not bring about.
pub fn explain(
    state: &FireState,
    origins: Origins<'_>,
    working: &mut Working,
) -> Result<Explained, Refused> {
    let mut filing = Filing {
        working,
        origins,
        state,
        puffs: None,
    };
    let water = filing.water()?;
    let engine = filing.engine(&water)?;
    let blower = filing.blower(&water)?;
    let way = filing.way(&water)?;
    filing.draught(&draught::Before {
        water: &water,
        engine: engine.as_ref(),
        blower: blower.as_ref(),
        way: &way,
    })?;
    let end = filing.result(&water, way.heat, (way.fuel_burnt, way.fuel.heating_value))?;
    let steam = (engine.as_ref().map(|e| e.steam), blower.map(|b| b.steam));
    let (demand, steaming_ratio) = filing.demand(steam, end.evaporation)?;
    Ok(Explained {
        fuel: way.fuel_burnt,
        gas_temperature: way.hottest_k,
        smoke_temperature: way.smoke_k,
        lift: way.lift,
        flame: way.flame.map(|(flame, _)| ExplainedFlame {
            air_ratio: flame.air_ratio,
            primary_ratio: flame.primary_ratio,
            blow_off: flame.blow_off,
            burnt_at_first: flame.burnt.and_then(|(first, _)| first),
            burnt: flame.burnt.map(|(_, end)| end),
        }),
        draught_lost: way.lost,
        back_pressure: engine.map(|e| e.back),
        evaporation: end.evaporation,
        demand,
        steaming_ratio,
        efficiency: end.efficiency,
    })
}

/// The lines of heat and steam at the end.
struct End {
    evaporation: Ref,
    efficiency: Ref,
}

/// Files one state.
struct Filing<'a> {
    working: &'a mut Working,
    origins: Origins<'a>,
    state: &'a FireState,
    /// Share of the time in which the exhaust flows, once it is filed.
    puffs: Option<Ref>,
}

impl Filing<'_> {
    /// A value from outside, given in SI.
    fn given<Q: Quantity>(
        &mut self,
        field: &'static str,
        (symbol, meaning): (&str, &str),
        unit: &'static Unit,
        si: f64,
    ) -> Ref {
        let known = Known {
            value: Q::from_si(si),
            given: (self.origins)(field),
        };
        self.working.know(symbol, meaning, unit, &known)
    }

    /// A settled value in SI, worked again by its card.
    fn settle(&mut self, card: &'static Card, from: &[Ref], si: f64) -> Result<Ref, Refused> {
        self.working
            .settled(card, from, card.gives.unit.from_si(si))
    }

    /// A value in SI that no single law gives.
    fn marched(
        &mut self,
        (symbol, meaning): (&str, &str),
        unit: &'static Unit,
        si: f64,
        from: &[Ref],
        how: (&str, &str),
    ) -> Ref {
        self.working.chosen(Choice {
            symbol,
            meaning,
            value: unit.from_si(si),
            unit,
            between: how.0,
            reason: how.1,
            from,
            cite: None,
        })
    }

    /// A value in SI that no field gives by itself, because it follows from the plan's parts.
    fn built(&mut self, names: (&str, &str), unit: &'static Unit, si: f64) -> Ref {
        let how = (
            "the sizes of the parts",
            "it follows from how they are built together",
        );
        self.marched(names, unit, si, &[], how)
    }

    /// Nothing, where the plant has no such part.
    fn absent(&mut self, symbol: &str, meaning: &str, unit: &'static Unit) -> Ref {
        let how = (
            "a part that may be there or not",
            "the plant has none, or it is shut",
        );
        self.marched((symbol, meaning), unit, 0.0, &[], how)
    }

    /// A root, in SI.
    fn root(
        &mut self,
        (symbol, meaning): (&str, &str),
        unit: &'static Unit,
        solved: Solved,
        (balance, residual): (&str, &str),
    ) -> Ref {
        let solved = Solved {
            x: unit.from_si(solved.x),
            bracket: (
                unit.from_si(solved.bracket.0),
                unit.from_si(solved.bracket.1),
            ),
            ..solved
        };
        self.working.solved(Root {
            symbol,
            meaning,
            unit,
            balance,
            solved,
            residual,
            from: &[],
        })
    }

    /// Steam asked for, and the ratio where any is asked.
    fn demand(
        &mut self,
        (engine, blower): (Option<Ref>, Option<Ref>),
        evaporation: Ref,
    ) -> Result<(Ref, Option<Ref>), Refused> {
        let mut line = |there: Option<Ref>, what| match there {
            Some(line) => line,
            None => self.absent("m", what, &KG_PER_S),
        };
        let engine = line(engine, "steam taken by the engine");
        let blower = line(blower, "steam taken by the blower");
        let engine = self.beside(engine)?;
        let demand = self.settle(&DEMAND, &[engine, blower], self.state.demand_kg_s)?;
        let ratio = match self.state.steaming_ratio() {
            Some(s) => Some(self.settle(&STEAMING_RATIO, &[evaporation, demand], s)?),
            None => None,
        };
        Ok((demand, ratio))
    }

    /// Steam of the engine, with what is asked for beside it.
    fn beside(&mut self, engine: Ref) -> Result<Ref, Refused> {
        let beside_kg_s = self.state.inputs.beside_kg_s();
        if beside_kg_s <= 0.0 {
            return Ok(engine);
        }
        let names = ("m_s", "steam asked for beside the engine");
        let beside = self.given::<MassFlow>("duty.steam", names, &KG_PER_S, beside_kg_s);
        self.working.worked(&TOTAL_FLOW, &[engine, beside])
    }

    /// Enthalpy of the feed, at the pressure of the air.
    fn feed(&mut self, water: &water::Water) -> Result<Ref, Refused> {
        let names = ("T_f", "temperature of the water as it is fed");
        let feed_k = self.state.inputs.site.feed_k;
        let t = self.given::<Temperature>("site.feed-water", names, &KELVIN, feed_k);
        self.settle(&REGION1_H, &[water.air.p, t], self.state.water.feed_j_kg)
    }

    fn result(
        &mut self,
        water: &water::Water,
        (radiant, tubes): (Ref, Ref),
        (fuel, value): (Ref, Ref),
    ) -> Result<End, Refused> {
        let state = self.state;
        let boiler = &state.inputs.boiler;
        let lost = self.given::<Power>(
            "boiler.shell-loss",
            ("Q_l", "heat lost by the outside"),
            &WATT,
            boiler.shell_loss_w,
        );
        let useful = self.settle(&USEFUL_HEAT, &[radiant, tubes, lost], state.useful_w)?;
        let feed = self.feed(water)?;
        let from = [useful, water.steam_h, feed];
        let evaporation = self.settle(&EVAPORATION, &from, state.evaporation_kg_s)?;
        let efficiency = self.settle(&EFFICIENCY, &[useful, fuel, value], state.efficiency)?;
        let surface = self.built(("A", "water surface"), &M2, boiler.water_surface_m2);
        let from = [evaporation, water.steam_density, surface];
        self.settle(&LEAVING_SPEED, &from, state.leaving_m_s)?;
        Ok(End {
            evaporation,
            efficiency,
        })
    }
}
