//! The greatest evaporation that a safety valve must pass: the stronger of blast and blower.

use super::HottestDay;
use super::coil_heat::{self, CoilHeat, Heated};
use formulas::steam::Saturated;
use reckoning::quantity::{KG_PER_H, MassFlow, PERCENT, Quantity, Temperature, show};
use reckoning::{Given, Known, Origin};
use steaming::burner::GREATEST_SHARE;
use steaming::{Blower, Entering, FireState, Inputs};

/// Rise of pressure over the set pressure at which a valve must pass everything, as a share of
/// the set pressure (the tenth of the clubs' accumulation test).
const ACCUMULATION: f64 = 0.10;

/// A fire at its greatest.
#[derive(Clone, Debug)]
pub struct Greatest {
    /// Its evaporation with the feed shut.
    pub steam: Known<MassFlow>,
    /// How hot it makes the coil.
    pub coil: Option<CoilHeat>,
}

/// The greatest evaporation of a fire with its feed shut, at the pressure that the valve may
/// reach, and how hot it makes the coil.
///
/// The fire is settled once with the engine's blast and once with the blower alone, each at the
/// 90 % point of its band, and its heat evaporates water that is already boiling. `None` where
/// neither has a balance.
#[must_use]
pub fn greatest(
    inputs: &Inputs,
    blower: Option<Blower>,
    assumed: &[&'static Entering],
    valve_pa: f64,
) -> Option<Greatest> {
    let reached = valve_pa * (1.0 + ACCUMULATION);
    let latent = Saturated::at_pressure(reached + inputs.site.atmosphere_pa)
        .ok()?
        .h_lg();
    let evaporation = |inputs: &Inputs| {
        let draws = steaming::draws(inputs, reached, assumed).ok()?;
        let band = draws.band(|state: &FireState| Some(state.useful_w)).ok()?;
        Some((band.high / latent, coil_heat::heated(&draws)))
    };
    let by_blast = evaporation(inputs);
    let by_blower = blower.and_then(|jets| {
        evaporation(&Inputs {
            engine: None,
            plain: None,
            blower: Some(jets),
            ..*inputs
        })
    });
    let fires = || by_blast.into_iter().chain(by_blower);
    let greatest = fires().map(|fire| fire.0).max_by(f64::total_cmp)?;
    let weakest = weakest(assumed);
    let heated: Vec<Heated> = fires().filter_map(|fire| fire.1).collect();
    let steam = Known {
        value: MassFlow::from_si(greatest),
        given: Given::Chosen {
            between: format!(
                "by the blast {}, by the blower {}",
                words(by_blast.map(|fire| fire.0)),
                words(by_blower.map(|fire| fire.0))
            ),
            reason: "the stronger fire at the 90 % point of its band, feed shut, a tenth over \
                     the set pressure"
                .to_owned(),
            weakest,
        },
    };
    Some(Greatest {
        steam,
        coil: coil_heat::worst(&heated, weakest),
    })
}

/// The weakest of what a fire rests on.
fn weakest(assumed: &[&'static Entering]) -> Origin {
    if assumed.is_empty() {
        Origin::FromMemory
    } else {
        Origin::Assumed
    }
}

/// The greatest evaporation of a gas fire, from its hottest day; how hot it makes the coil is
/// that of the fire as it is meant to burn.
#[must_use]
pub(crate) fn greatest_on_gas(
    inputs: &Inputs,
    day: &HottestDay,
    assumed: &[&'static Entering],
    valve_pa: f64,
) -> Option<Greatest> {
    let reached = valve_pa * (1.0 + ACCUMULATION);
    let latent = Saturated::at_pressure(reached + inputs.site.atmosphere_pa)
        .ok()?
        .h_lg();
    let celsius = show::figures(Temperature::from_si(day.tank_k).c(), 3);
    let steam = Known {
        value: MassFlow::from_si(day.heat.to_water_w / latent),
        given: Given::Chosen {
            between: "the gases that the filling valve lets in".to_owned(),
            reason: format!(
                "{} in a tank of {celsius} °C, regulator and hand valve open: {} W through the jet, \
                 of which {} % come to the water; feed shut, a tenth over the set pressure",
                day.gas,
                show::figures(day.heat.heat_w, 3),
                show::figures(PERCENT.from_si(GREATEST_SHARE), 2)
            ),
            weakest: Origin::CommonPractice,
        },
    };
    // Only a coil asks for the fire once more at that pressure.
    let fire = inputs
        .dryer
        .and_then(|_| steaming::draws(inputs, reached, assumed).ok());
    let heated: Vec<Heated> = fire.iter().filter_map(coil_heat::heated).collect();
    Some(Greatest {
        steam,
        coil: fire.and_then(|_| coil_heat::worst(&heated, Origin::Assumed)),
    })
}

impl Greatest {
    /// The greater of two fires of one boiler, and the hotter coil.
    pub(crate) fn or(self, other: Self) -> Self {
        let standing = |g: &Self| g.coil.as_ref().map(|coil| coil.standing.value.si());
        let coil = if standing(&other) > standing(&self) {
            other.coil
        } else {
            self.coil
        };
        let steam = if other.steam.value.si() > self.steam.value.si() {
            other.steam
        } else {
            self.steam
        };
        Self { steam, coil }
    }
}

fn words(flow: Option<f64>) -> String {
    flow.map_or("none".to_owned(), |kg_s| show::quantity(kg_s, &KG_PER_H, 3))
}
