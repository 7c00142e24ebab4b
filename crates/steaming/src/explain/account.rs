//! Lines of an account of a settled fire: where heat, draught and fuel go. What enters comes from
//! the settled state, whose own lines [`explain`](super::explain) files.

use formulas::balance::{
    BED_MASS, FUEL_HEAT, HEAT_CARRIED, HEAT_SHARE, REST_OF_LOSS, TIME_TO_USE, UNBURNT_HEAT,
};
use reckoning::quantity::{J_PER_KG, KG, KG_PER_M3, KG_PER_S, M, M2, ONE, PA, Unit, WATT};
use reckoning::working::Choice;
use reckoning::{Card, Ref, Refused, Working};

use crate::consumption::Consumption;
use crate::draught::DraughtSplit;
use crate::heat::HeatBalance;
use crate::state::FireState;

/// Files where the heat goes, the whole first.
///
/// # Errors
/// [`Refused`] where a card cannot be worked, which a settled state does not bring about.
pub fn explain_heat(
    state: &FireState,
    heat: &HeatBalance,
    working: &mut Working,
) -> Result<(), Refused> {
    let mut lines = Lines { working };
    let (pass, burning) = (&state.pass, &state.burning);
    let fuel = lines.of_state("m_f", "fuel burnt", &KG_PER_S, pass.fuel_kg_s);
    let value = lines.of_state(
        "H",
        "lower heating value",
        &J_PER_KG,
        burning.heating_value_j_kg,
    );
    let brought = lines.settle(&FUEL_HEAT, &[fuel, value], heat.fuel_w)?;
    let none = lines.of_state("h_0", "enthalpy at 298.15 K", &J_PER_KG, 0.0);
    let air = lines.of_state("m_a", "air", &KG_PER_S, pass.air_kg_s);
    let hot = lines.of_state(
        "h_a",
        "enthalpy of the air",
        &J_PER_KG,
        state.inputs.site.air_j_kg,
    );
    let air = lines.settle(&HEAT_CARRIED, &[air, hot, none], heat.air_w)?;
    let eta = lines.of_state("eta", "share set free", &ONE, burning.burnt_share);
    let unburnt = lines.settle(&UNBURNT_HEAT, &[eta, brought], heat.unburnt_w)?;
    let steam = lines.steam(state, heat)?;
    let smoke = lines.of_state("Q_s", "heat up the chimney", &WATT, heat.smoke_w);
    let coil = lines.of_state("Q_c", "heat to the coil", &WATT, heat.coil_w);
    let shell = lines.of_state("Q_l", "heat lost by the outside", &WATT, heat.shell_w);
    let ways = [steam, coil, smoke, unburnt, shell];
    for (way, share) in ways.into_iter().zip(heat.shares()) {
        lines.settle(&HEAT_SHARE, &[way, brought, air], share.share)?;
    }
    Ok(())
}

/// Files where the draught of a bed goes: what grate and ash take beyond the bare bed.
///
/// # Errors
/// As [`explain_heat`].
pub fn explain_draught(
    state: &FireState,
    split: &DraughtSplit,
    working: &mut Working,
) -> Result<(), Refused> {
    let mut lines = Lines { working };
    if let Some(fired) = state.pass.firing.bed() {
        let whole = lines.of_state("dp", "bed, grate and ash", &PA, fired.bed.loss_pa);
        let bare = lines.of_state("dp_b", "bare bed", &PA, fired.bed.bare_pa);
        let rest = fired.bed.loss_pa - fired.bed.bare_pa;
        lines.settle(&REST_OF_LOSS, &[whole, bare], rest)?;
    }
    for spent in &split.spent {
        lines.of_state("dp", spent.place, &PA, spent.pa);
    }
    lines.of_state("dp_j", "raised by the jets", &PA, split.jets_pa);
    lines.of_state("dp_c", "raised by the hot column", &PA, split.column_pa);
    Ok(())
}

/// Files how long fuel and water last.
///
/// # Errors
/// As [`explain_heat`].
pub fn explain_use(
    state: &FireState,
    uses: &Consumption,
    working: &mut Working,
) -> Result<(), Refused> {
    let mut lines = Lines { working };
    let fired = state.inputs.firing.bed();
    if let (Some(fired), Some(kg), Some(life)) = (fired, uses.bed_kg, uses.bed_life_s) {
        let bed = &fired.bed;
        let from = [
            lines.of_state("e", "empty share of the bed", &ONE, bed.packing.voidage),
            lines.of_state("rho_p", "density of a lump", &KG_PER_M3, bed.lump_kg_m3),
            lines.of_state("L", "depth of the bed", &M, bed.depth_m),
            lines.of_state("A", "area of the grate", &M2, bed.grate_m2),
        ];
        let bed = lines.settle(&BED_MASS, &from, kg)?;
        let fuel = lines.of_state("m_f", "fuel burnt", &KG_PER_S, uses.fuel_kg_s);
        lines.settle(&TIME_TO_USE, &[bed, fuel], life)?;
    }
    if let Some(time) = uses.without_feed_s {
        let names = "water above the lowest level";
        let water = lines.of_state("m_w", names, &KG, uses.water_kg);
        let steam = lines.of_state("m", "steam asked for", &KG_PER_S, uses.demand_kg_s);
        lines.settle(&TIME_TO_USE, &[water, steam], time)?;
    }
    Ok(())
}

struct Lines<'a> {
    working: &'a mut Working,
}

impl Lines<'_> {
    /// Heat taken by feed and water.
    fn steam(&mut self, state: &FireState, heat: &HeatBalance) -> Result<Ref, Refused> {
        let steam = self.of_state("m", "steam made", &KG_PER_S, state.evaporation_kg_s);
        let made = self.of_state(
            "h_s",
            "enthalpy of the steam",
            &J_PER_KG,
            state.water.steam_j_kg,
        );
        let fed = self.of_state(
            "h_f",
            "enthalpy of the feed",
            &J_PER_KG,
            state.water.feed_j_kg,
        );
        self.settle(&HEAT_CARRIED, &[steam, made, fed], heat.steam_w)
    }

    /// A value of the settled state, in SI.
    fn of_state(&mut self, symbol: &str, meaning: &str, unit: &'static Unit, si: f64) -> Ref {
        self.working.chosen(Choice {
            symbol,
            meaning,
            value: unit.from_si(si),
            unit,
            between: "the values of the settled state",
            reason: "its own lines work it",
            from: &[],
            cite: None,
        })
    }

    fn settle(&mut self, card: &'static Card, from: &[Ref], si: f64) -> Result<Ref, Refused> {
        self.working
            .settled(card, from, card.gives.unit.from_si(si))
    }
}
