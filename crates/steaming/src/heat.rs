//! Where the heat of the fuel goes, in a settled state.
//!
//! Heat is counted above 298.15 K, the temperature from which the heating value of the fuel and
//! the enthalpies of the gases are reckoned. What is not burnt is one number: coal through the
//! grate, sparks, and gas that leaves unburnt are not told apart.

use formulas::balance::{fuel_heat, heat_carried, heat_share, unburnt_heat};

use crate::state::FireState;

/// The heat of fuel and air, and every way that it goes, in W.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatBalance {
    /// Lower heating value of the fuel burnt.
    pub fuel_w: f64,
    /// Brought by the air: less than nought where it is colder than 25 °C.
    pub air_w: f64,
    /// Never set free.
    pub unburnt_w: f64,
    /// Taken by feed and water: it leaves the boiler as steam.
    pub steam_w: f64,
    /// Lost by the outside of the boiler.
    pub shell_w: f64,
    /// Taken by the coil.
    pub coil_w: f64,
    /// Carried up the chimney by the flue gas.
    pub smoke_w: f64,
}

/// One way that the heat goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatShare {
    /// Where it goes.
    pub what: &'static str,
    /// How much, W.
    pub heat_w: f64,
    /// Over the heat of fuel and air.
    pub share: f64,
}

impl HeatBalance {
    /// The balance of a settled state.
    #[must_use]
    pub fn of(state: &FireState) -> Self {
        let (pass, burning) = (&state.pass, &state.burning);
        let fuel_w = fuel_heat(pass.fuel_kg_s, burning.heating_value_j_kg);
        Self {
            fuel_w,
            air_w: heat_carried(pass.air_kg_s, state.inputs.site.air_j_kg, 0.0),
            unburnt_w: unburnt_heat(burning.burnt_share, fuel_w),
            steam_w: heat_carried(
                state.evaporation_kg_s,
                state.water.steam_j_kg,
                state.water.feed_j_kg,
            ),
            shell_w: state.inputs.boiler.shell_loss_w,
            coil_w: pass.dryer.map_or(0.0, |d| d.heat_w),
            smoke_w: heat_carried(pass.gas_kg_s, burning.gas.enthalpy(pass.smoke_k), 0.0),
        }
    }

    /// Heat of fuel and air, W.
    #[must_use]
    pub fn brought_w(&self) -> f64 {
        self.fuel_w + self.air_w
    }

    /// Every way that the heat goes, the useful ones first.
    #[must_use]
    pub fn shares(&self) -> [HeatShare; 5] {
        [
            ("water and steam", self.steam_w),
            ("drying coil", self.coil_w),
            ("smoke", self.smoke_w),
            ("fuel not burnt", self.unburnt_w),
            ("outside of the boiler", self.shell_w),
        ]
        .map(|(what, heat_w)| HeatShare {
            what,
            heat_w,
            share: heat_share(heat_w, self.fuel_w, self.air_w),
        })
    }

    /// Heat brought less all that goes, over what is brought: what the solver left.
    #[must_use]
    pub fn residual(&self) -> f64 {
        1.0 - self.shares().iter().map(|s| s.share).sum::<f64>()
    }
}
