//! A spirit burner as a whole, against a calculation made apart.

use formulas::spirit::{Spirit, evaporation_flux, flame_film, transfer_number};
use reckoning::quantity::{BAR_ABSOLUTE, CELSIUS, MJ_PER_KG, MM};

fn near(found: f64, wanted: f64, within: f64, what: &str) {
    assert!(
        (found - wanted).abs() <= within,
        "{what}: found {found}, wanted {wanted} within {within}"
    );
}

fn at_one_atmosphere(by_mass: [f64; 3]) -> Spirit {
    Spirit::new(by_mass, 1.01325).expect("the tables have the parts")
}

/// 90 ethanol, 5 methanol and 5 water by mass; ethanol; methanol: heating value, oxygen, transfer
/// number at 20 °C. Independent calculation; its heats of the liquids were its own (0.846 MJ/kg for
/// ethanol, where the table here has 0.850), worth one percent.
#[test]
fn independent_transfer_numbers() {
    for (by_mass, lhv, oxygen, number) in [
        ([0.90, 0.05, 0.05], 25.0, 1.95, 2.68),
        ([1.0, 0.0, 0.0], 26.81, 2.084, 2.93),
        ([0.0, 1.0, 0.0], 19.92, 1.498, 2.50),
    ] {
        let (spirit, what) = (at_one_atmosphere(by_mass), format!("{by_mass:?}"));
        near(MJ_PER_KG.from_si(spirit.heating_value), lhv, 0.05, &what);
        near(spirit.oxygen, oxygen, 0.002, &what);
        let b = transfer_number(&spirit.burning(CELSIUS.to_si(20.0)));
        near(b, number, 0.01 * number, &what);
    }
}

/// Methylated spirit on wicks and cups, g/m²s and kW/m²: independent calculation.
#[test]
fn independent_burning_rates() {
    let spirit = at_one_atmosphere([0.90, 0.05, 0.05]);
    let b = transfer_number(&spirit.burning(CELSIUS.to_si(20.0)));
    for (d_mm, grams, heat) in [
        (10.0, 28.4, 711.0),
        (20.0, 19.5, 489.0),
        (30.0, 16.6, 415.0),
        (50.0, 14.2, 355.0),
        (100.0, 12.4, 311.0),
    ] {
        let flux = evaporation_flux(flame_film(MM.to_si(d_mm)), b);
        near(flux * 1e3, grams, 0.006 * grams, "rate");
        near(
            flux * spirit.heating_value / 1e3,
            heat,
            0.006 * heat,
            "heat",
        );
    }
    near(spirit.air, 8.43, 0.005, "air, kg/kg");
}

#[test]
fn a_spirit_boils_where_the_air_lets_it_and_no_table_is_left() {
    let low = Spirit::new([1.0, 0.0, 0.0], 0.8).expect("inside the tables");
    let sea = at_one_atmosphere([1.0, 0.0, 0.0]);
    near(
        CELSIUS.from_si(sea.boiling),
        78.3,
        0.15,
        "ethanol, handbook, from memory",
    );
    assert!(low.boiling < sea.boiling && low.latent > sea.latent);
    assert!(Spirit::new([1.0, 0.0, 0.0], BAR_ABSOLUTE.to_si(1.0)).is_err());
}
