//! Oxygen and air: what a fuel asks of them, and the air ratio from oxygen measured in the dry
//! flue gas.

use reckoning::quantity::ONE;
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, Symbol, symbol};

use super::Composition;
use super::burning::oxygen_demand;
use crate::sources::{DERIVED, thermal};

const AIR: Cite = Cite {
    source: &thermal::ATOMIC_WEIGHTS,
    place: "with dry air of 0.2314 oxygen by mass, 3.773 nitrogen and argon to oxygen by volume",
};

/// Oxygen to burn a kilogram of fuel, kg/kg, from the dry air for it.
#[must_use]
pub fn oxygen_needed(air: f64) -> f64 {
    air * 0.2314
}

/// Card of [`oxygen_needed`].
pub static OXYGEN_NEEDED: Card = Card {
    id: "fuel.oxygen-needed",
    law: Law::Closed("r = AF * 0.2314"),
    gives: symbol("r", &ONE, "oxygen to burn a kilogram of fuel, kg/kg"),
    takes: &[symbol(
        "AF",
        &ONE,
        "dry air to burn a kilogram of fuel, kg/kg",
    )],
    limits: &[],
    spread: Spread::Exact,
    cite: AIR,
    eval: |v| Ok(oxygen_needed(v[0])),
};

/// Volumes of dry air that a volume of fuel vapour needs, from its air by mass and molar mass.
#[must_use]
pub fn air_by_volume(air: f64, molar_mass: f64) -> f64 {
    4.773 * oxygen_needed(air) / 31.998 * molar_mass
}

/// Card of [`air_by_volume`].
pub static AIR_BY_VOLUME: Card = Card {
    id: "fuel.air-by-volume",
    law: Law::Closed("n = 4.773 * AF * 0.2314 / 31.998 * M"),
    gives: symbol("n", &ONE, "volumes of dry air to burn a volume of vapour"),
    takes: &[
        symbol("AF", &ONE, "dry air to burn a kilogram of fuel, kg/kg"),
        symbol("M", &ONE, "molar mass of the fuel, kg/kmol"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: AIR,
    eval: |v| Ok(air_by_volume(v[0], v[1])),
};

/// Share of a gas in the flue once its water is taken out, as an instrument shows it.
#[must_use]
pub fn dry_share(share: f64, h2o: f64) -> f64 {
    share / (1.0 - h2o)
}

/// Card of [`dry_share`].
pub static DRY_SHARE: Card = Card {
    id: "fuel.dry-share",
    law: Law::Closed("y = x / (1 - x_h2o)"),
    gives: symbol("y", &ONE, "share of the gas in the dry flue gas, by volume"),
    takes: &[
        symbol("x", &ONE, "share of the gas in the flue gas, by volume"),
        symbol("x_h2o", &ONE, "water vapour in the flue gas, by volume"),
    ],
    limits: &[Limit::within("x_h2o", 0.0, 0.5)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "what is left when the water is taken out",
    },
    eval: |v| Ok(dry_share(v[0], v[1])),
};

/// Air ratio from the oxygen measured in the dry flue gas of a fuel without sulphur or nitrogen,
/// burnt to the end.
///
/// # Errors
/// [`Refused`] where the oxygen is that of air or more: no air ratio gives it.
pub fn air_ratio_from_oxygen(fuel: &Composition, oxygen: f64) -> Result<f64, Refused> {
    let share = 1.0 - 4.773 * oxygen;
    if share.is_nan() || share <= 0.0 {
        return Err(Refused {
            card: "fuel.air-ratio-from-oxygen",
            symbol: "y",
            value: oxygen,
            why: "as much oxygen as in air, or more",
        });
    }
    let need = oxygen_demand(fuel);
    let carbon = fuel.carbon / 12.011;
    Ok(((1.0 - oxygen) * need + oxygen * carbon) / (need * share))
}

/// Card of [`air_ratio_from_oxygen`].
pub static AIR_RATIO_FROM_OXYGEN: Card = Card {
    id: "fuel.air-ratio-from-oxygen",
    law: Law::Closed(
        "n = C / 12.011 + H / 4.032 - O / 31.998; \
         lambda = ((1 - y) * n + y * C / 12.011) / (n * (1 - 4.773 * y))",
    ),
    gives: symbol("lambda", &ONE, "air ratio"),
    takes: &[
        symbol("y", &ONE, "oxygen in the dry flue gas, by volume"),
        CARBON,
        HYDROGEN,
        OXYGEN,
    ],
    limits: &[Limit::within("y", 0.0, 0.18)],
    spread: Spread::Exact,
    cite: AIR,
    eval: |v| {
        let fuel = Composition {
            carbon: v[1],
            hydrogen: v[2],
            oxygen: v[3],
            nitrogen: 0.0,
            sulphur: 0.0,
            ash: 0.0,
            water: 0.0,
        };
        air_ratio_from_oxygen(&fuel, v[0])
    },
};

const CARBON: Symbol = symbol("C", &ONE, "carbon, mass fraction as fired");
const HYDROGEN: Symbol = symbol("H", &ONE, "hydrogen, mass fraction as fired");
const OXYGEN: Symbol = symbol("O", &ONE, "oxygen, mass fraction as fired");
