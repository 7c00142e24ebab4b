//! The liquid fuels of the published tables: what they are made of, what they give, and their
//! saturated liquid and vapour from row to row of a table, never beyond it.

use reckoning::Known;
use reckoning::quantity::{
    Density, Quantity, Ratio, SpecificEnergy, SpecificHeat, Temperature, TemperatureRise,
};

use super::vapour::{boiling_temperature, vapour_pressure};
use crate::fuel::Molecule;
use crate::table::{self, Found, NoValue, Table};

/// The tables of heating values and molecules, each from one source.
const HEATS: [&str; 2] = ["fuel-gases", "fuel-spirits"];

/// The table of the coefficients of [`super::VAPOUR_PRESSURE`] and [`super::SPIRIT_BOILING`].
const PRESSURES: &str = "fuel-vapour-pressure";

/// The coefficients of a vapour pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vapour {
    /// First coefficient.
    pub a: f64,
    /// Second coefficient, K.
    pub b: f64,
    /// Third coefficient, K.
    pub c: f64,
}

/// A saturated fuel at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Saturated {
    /// Latent heat, J/kg.
    pub latent: f64,
    /// Density of the liquid, kg/m³.
    pub density: f64,
    /// Specific heat of the liquid, J/(kg K).
    pub liquid_heat: f64,
    /// Compressibility of the vapour.
    pub compressibility: f64,
}

/// A liquid fuel of one substance, with the rows it stands on.
#[derive(Clone, Copy, Debug)]
pub struct Fluid {
    /// Its molecule.
    pub molecule: Molecule,
    /// Lower heating value, J/kg.
    pub heating_value: f64,
    /// Coefficients of its vapour pressure.
    pub vapour: Vapour,
    heats: &'static Table,
    heats_row: usize,
    pressures: &'static Table,
    pressures_row: usize,
    saturation: &'static Table,
}

/// The fuel of this name: `propane`, `n-butane`, `isobutane`, `ethanol`, `methanol`.
///
/// # Errors
/// [`NoValue::NoRow`] where no table has it.
pub fn fluid(name: &str) -> Result<Fluid, NoValue> {
    let pressures = table::find(PRESSURES);
    let pressures_row = pressures.row_of("fuel", name)?;
    let found = HEATS.map(table::find).into_iter().find_map(|heats| {
        let row = heats.row_of("fuel", name).ok()?;
        Some((heats, row))
    });
    let (heats, heats_row) = found.ok_or_else(|| NoValue::NoRow {
        table: "heating values of liquid fuels".to_owned(),
        row: name.to_owned(),
    })?;
    let atoms = |column| heats.value::<Ratio>(heats_row, column).number();
    let kelvin = |column| {
        pressures
            .value::<TemperatureRise>(pressures_row, column)
            .si()
    };
    Ok(Fluid {
        molecule: Molecule {
            carbon: atoms("C"),
            hydrogen: atoms("H"),
            oxygen: atoms("O"),
        },
        heating_value: heats.value::<SpecificEnergy>(heats_row, "LHV").si(),
        vapour: Vapour {
            a: pressures.value::<Ratio>(pressures_row, "A").number(),
            b: kelvin("B"),
            c: kelvin("C"),
        },
        heats,
        heats_row,
        pressures,
        pressures_row,
        saturation: table::find(pressures.words(pressures_row, "saturation")),
    })
}

impl Fluid {
    /// Vapour pressure, bar absolute.
    #[must_use]
    pub fn pressure(&self, t_k: f64) -> f64 {
        vapour_pressure(self.vapour.a, self.vapour.b, self.vapour.c, t_k)
    }

    /// Boiling temperature, K, at `p` bar absolute.
    #[must_use]
    pub fn boiling(&self, p: f64) -> f64 {
        boiling_temperature(self.vapour.a, self.vapour.b, self.vapour.c, p)
    }

    /// Molar heat of the thin vapour over the gas constant; none outside the table.
    #[must_use]
    pub fn molar_heat(&self, t_k: f64) -> Option<f64> {
        self.along::<Ratio>("c", t_k)
    }

    /// Liquid and vapour at saturation; none outside the table. Nothing here allocates.
    #[must_use]
    pub fn saturated(&self, t_k: f64) -> Option<Saturated> {
        Some(Saturated {
            latent: self.along::<SpecificEnergy>("r", t_k)?,
            density: self.along::<Density>("rho_l", t_k)?,
            liquid_heat: self.along::<SpecificHeat>("c_l", t_k)?,
            compressibility: self.along::<Ratio>("Z", t_k)?,
        })
    }

    fn along<Q: Quantity>(&self, column: &str, t_k: f64) -> Option<f64> {
        let found: Option<Q> = self
            .saturation
            .value_at("T", Temperature::from_si(t_k), column);
        found.map(Quantity::si)
    }

    /// A value of saturation (`r`, `rho_l`, `c_l`, `c`, `Z`) as it enters a working.
    ///
    /// # Errors
    /// [`NoValue::Outside`] where the table ends before the temperature.
    ///
    /// # Panics
    /// When there is no such column, which is a broken promise of the caller.
    pub fn known_at<Q: Quantity>(&self, column: &str, t_k: f64) -> Result<Known<Q>, NoValue> {
        let found = self.saturation.at("T", Temperature::from_si(t_k), column)?;
        Ok(self.saturation.known(found))
    }

    /// A number of atoms (`C`, `H`, `O`) as it enters a working.
    ///
    /// # Panics
    /// When there is no such column, which is a broken promise of the caller.
    #[must_use]
    pub fn atoms(&self, column: &str) -> Known<Ratio> {
        cell(self.heats, self.heats_row, column)
    }

    /// The lower heating value as it enters a working.
    #[must_use]
    pub fn known_heating_value(&self) -> Known<SpecificEnergy> {
        cell(self.heats, self.heats_row, "LHV")
    }

    /// The coefficients `A`, `B`, `C` of the vapour pressure as they enter a working.
    #[must_use]
    pub fn coefficients(&self) -> (Known<Ratio>, Known<TemperatureRise>, Known<TemperatureRise>) {
        (
            cell(self.pressures, self.pressures_row, "A"),
            cell(self.pressures, self.pressures_row, "B"),
            cell(self.pressures, self.pressures_row, "C"),
        )
    }
}

fn cell<Q: Quantity>(table: &'static Table, row: usize, column: &str) -> Known<Q> {
    table.known(Found {
        value: table.value(row, column),
        row: table.words(row, "fuel").to_owned(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_fuel_has_its_rows_and_its_table_agrees_with_its_vapour_pressure() {
        for (name, t_k) in [
            ("propane", 263.15),
            ("n-butane", 303.15),
            ("isobutane", 323.15),
            ("ethanol", 373.15),
            ("methanol", 363.15),
        ] {
            let fluid = fluid(name).expect(name);
            let table: Known<reckoning::quantity::Absolute> =
                fluid.known_at("p", t_k).expect("a row");
            let fit = reckoning::quantity::BAR_ABSOLUTE.to_si(fluid.pressure(t_k));
            assert!((fit / table.value.si() - 1.0).abs() < 0.003, "{name}");
            assert!(
                (fluid.boiling(fluid.pressure(t_k)) - t_k).abs() < 1e-9,
                "{name}"
            );
            assert!(fluid.molar_heat(t_k).is_some_and(|c| c > 5.0), "{name}");
            assert!(fluid.saturated(t_k).is_some() && fluid.saturated(500.0).is_none());
        }
        assert!(matches!(fluid("coal gas"), Err(NoValue::NoRow { .. })));
    }
}
