//! A flame at a total air ratio: how its air divides, and what it burns to.

use formulas::balance::{air_for_fuel, flow_for_fuel};
use formulas::draught::opening_loss;
use formulas::fuel::{Composition, combustion_products, flue_mass, stoichiometric_air};
use formulas::gas::{FlueGas, PureLaw};
use reckoning::solve::bracketed;

use super::primary::{Drawing, PortsState, PrimaryState};
use super::{Burner, Flame, GasJetState, Mouth, Source, WickState};
use crate::fault::NotSettled;
use crate::firing::{Air, Around, Burning};
use crate::inputs::Site;

/// Room between the least air and the first at which the mouth passes any, as a share: at the
/// least itself the root of the primary air would lie on the end of its bracket.
const MOUTH_OPENS: f64 = 1e-6;

/// Most air for which a balance is sought, over the air needed. The gas of any fuel is then
/// colder than a boiler.
const MOST: f64 = 100.0;

/// A flame at work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameState {
    /// Fuel, kg/s.
    pub fuel_kg_s: f64,
    /// What gives it.
    pub source: SourceState,
    /// All the air over the air that the fuel needs.
    pub air_ratio: f64,
    /// Primary air over the air that the fuel needs.
    pub primary_ratio: f64,
    /// Secondary air, kg/s.
    pub secondary_kg_s: f64,
    /// Suction behind the mouth, Pa; less than nought where the burner pushes.
    pub mouth_pa: f64,
}

/// What gives a flame its fuel, at work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SourceState {
    /// A gas burner.
    Burner(BurnerState),
    /// Spirit wicks.
    Wicks(WickState),
}

/// A gas burner at work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BurnerState {
    /// The jet.
    pub jet: GasJetState,
    /// Throat, air holes and ports.
    pub primary: PrimaryState,
    /// The flame at the ports.
    pub ports: PortsState,
}

impl FlameState {
    /// The burner at work; `None` where wicks burn.
    #[must_use]
    pub fn burner(&self) -> Option<&BurnerState> {
        match &self.source {
            SourceState::Burner(burner) => Some(burner),
            SourceState::Wicks(_) => None,
        }
    }

    /// The wicks at work; `None` where a burner burns.
    #[must_use]
    pub fn wicks(&self) -> Option<&WickState> {
        match &self.source {
            SourceState::Wicks(wicks) => Some(wicks),
            SourceState::Burner(_) => None,
        }
    }
}

/// A burner with nothing round its ports but air.
///
/// # Errors
/// [`NotSettled`] where no gas comes to the jet, or the thrust of the jet has no balance.
pub fn in_open_air(burner: &Burner, site: &Site) -> Result<BurnerState, NotSettled> {
    let air = Air::of(site);
    let jet = burner.jet.at_work(&burner.gas, site.atmosphere_pa)?;
    let drawing = Drawing {
        burner,
        jet: &jet,
        air: &air,
        need: stoichiometric_air(&burner.gas.composition),
    };
    let primary = drawing
        .drawn(None, |_| 0.0)
        .map_err(NotSettled::of(PRIMARY))?;
    Ok(BurnerState {
        jet,
        primary,
        ports: drawing.ports(&primary)?,
    })
}

/// A flame prepared: its fuel does not depend on its air.
pub(crate) struct FlameSide<'a> {
    flame: &'a Flame,
    around: &'a Around,
    laws: [PureLaw; 4],
    fuelled: Fuelled<'a>,
    fuel_kg_s: f64,
    composition: Composition,
    heating_value_j_kg: f64,
    /// Air that a kilogram of fuel needs, kg/kg.
    need: f64,
}

enum Fuelled<'a> {
    Burner(&'a Burner, GasJetState),
    Wicks(WickState),
}

/// A flame with its air and what it burns to.
pub(crate) struct Aired {
    pub state: FlameState,
    /// What burns; its share is that of the source, as if the gas had room to burn out.
    pub burning: Burning,
    pub air_kg_s: f64,
    pub gas_kg_s: f64,
}

impl<'a> FlameSide<'a> {
    pub(crate) fn new(
        flame: &'a Flame,
        around: &'a Around,
        laws: &[PureLaw; 4],
    ) -> Result<Self, NotSettled> {
        let (fuelled, fuel_kg_s, composition, heating_value_j_kg) = match &flame.source {
            Source::Burner(burner) => {
                let gas = &burner.gas;
                let jet = burner.jet.at_work(gas, around.air.pa)?;
                let fuelled = Fuelled::Burner(burner, jet);
                (
                    fuelled,
                    jet.gas_kg_s,
                    gas.composition,
                    gas.heating_value_j_kg,
                )
            }
            Source::Wicks(wicks) => {
                let (spirit, state) = (&wicks.spirit, wicks.at_work());
                let fuelled = Fuelled::Wicks(state);
                if flame.mouth == Mouth::Shut {
                    return Err(NotSettled::Plant {
                        what: "area of the mouth in m2",
                        value: 0.0,
                        why: "wicks get all their air through it",
                    });
                }
                (
                    fuelled,
                    state.fuel_kg_s,
                    spirit.composition,
                    spirit.heating_value,
                )
            }
        };
        Ok(Self {
            flame,
            around,
            laws: *laws,
            fuelled,
            fuel_kg_s,
            composition,
            heating_value_j_kg,
            need: stoichiometric_air(&composition),
        })
    }

    /// Air ratios between which a balance is sought: from that with which the fuel just burns, or
    /// that of the primary air alone, to that at which all its heat leaves the gas no hotter than
    /// this temperature (K).
    pub(crate) fn bracket(&self, coldest_k: f64) -> Result<(f64, f64), NotSettled> {
        let low = self.least()?;
        let excess = |ratio: f64| match self.burning(ratio) {
            Ok(burning) => {
                let set_free = self.flame.burnt_share * self.heating_value_j_kg;
                let brought = burning.air_kg_kg * self.around.air.j_kg;
                set_free + brought - burning.flue_kg_kg * burning.gas.enthalpy(coldest_k)
            }
            Err(_) => f64::NAN,
        };
        let high = bracketed(low, MOST, 1e-6, excess).map_err(NotSettled::of(
            "heat of the flame against the air that cools it",
        ))?;
        Ok((low, high.x))
    }

    /// The least air ratio: at it the fuel burns, and the mouth passes something or nothing.
    fn least(&self) -> Result<f64, NotSettled> {
        let primary = match (&self.fuelled, &self.flame.mouth) {
            (Fuelled::Burner(burner, jet), Mouth::Open { .. }) => {
                let alone = self.drawing(burner, jet).drawn(None, |_| 0.0);
                alone.map_err(NotSettled::of(PRIMARY))?.ratio
            }
            (Fuelled::Burner(..), Mouth::Shut) | (Fuelled::Wicks(_), _) => 0.0,
        };
        Ok(if primary < 1.0 {
            1.0
        } else {
            primary * (1.0 + MOUTH_OPENS)
        })
    }

    fn drawing<'b>(&'b self, burner: &'b Burner, jet: &'b GasJetState) -> Drawing<'b> {
        Drawing {
            burner,
            jet,
            air: &self.around.air,
            need: self.need,
        }
    }

    fn burning(&self, ratio: f64) -> Result<Burning, NotSettled> {
        let products = combustion_products(&self.composition, ratio)?;
        Ok(Burning {
            gas: FlueGas::with_laws(&products.fractions(), &self.laws),
            air_kg_kg: air_for_fuel(ratio, self.need),
            flue_kg_kg: flue_mass(ratio, self.need, self.composition.ash),
            heating_value_j_kg: self.heating_value_j_kg,
            burnt_share: self.flame.burnt_share,
        })
    }

    /// The flame at an air ratio.
    pub(crate) fn at(&self, ratio: f64) -> Result<Aired, NotSettled> {
        let burning = self.burning(ratio)?;
        let air_kg_s = flow_for_fuel(burning.air_kg_kg, self.fuel_kg_s);
        let (source, primary_kg_s, primary_ratio, mouth_pa) = match &self.fuelled {
            Fuelled::Burner(burner, jet) => {
                let drawing = self.drawing(burner, jet);
                let primary = self.primary(&drawing, air_kg_s)?;
                let ports = drawing.ports(&primary)?;
                let state = BurnerState {
                    jet: *jet,
                    primary,
                    ports,
                };
                let (air, ratio) = (primary.air_kg_s, primary.ratio);
                (SourceState::Burner(state), air, ratio, -primary.outside_pa)
            }
            Fuelled::Wicks(state) => {
                let mouth_pa = self.mouth_pa(air_kg_s);
                (SourceState::Wicks(*state), 0.0, 0.0, mouth_pa)
            }
        };
        Ok(Aired {
            state: FlameState {
                fuel_kg_s: self.fuel_kg_s,
                source,
                air_ratio: ratio,
                primary_ratio,
                secondary_kg_s: air_kg_s - primary_kg_s,
                mouth_pa,
            },
            burning,
            air_kg_s,
            gas_kg_s: flow_for_fuel(burning.flue_kg_kg, self.fuel_kg_s),
        })
    }

    /// How the jet shares the air with the mouth.
    fn primary(&self, drawing: &Drawing<'_>, air_kg_s: f64) -> Result<PrimaryState, NotSettled> {
        match self.flame.mouth {
            Mouth::Open { .. } => {
                let suction = |primary: f64| -self.mouth_pa(air_kg_s - primary);
                let drawn = drawing.drawn(Some(air_kg_s), suction);
                drawn.map_err(NotSettled::of(PRIMARY))
            }
            Mouth::Shut => Ok(drawing.pushed(air_kg_s)),
        }
    }

    /// Suction behind the mouth when it passes so much air (kg/s), Pa.
    fn mouth_pa(&self, air_kg_s: f64) -> f64 {
        match self.flame.mouth {
            Mouth::Open {
                area_m2,
                coefficient,
            } => opening_loss(air_kg_s, self.around.air.kg_m3, coefficient, area_m2),
            Mouth::Shut => 0.0,
        }
    }
}

const PRIMARY: &str = "thrust of the gas jet against what the primary air takes";
