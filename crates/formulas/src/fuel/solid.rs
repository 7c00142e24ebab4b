//! The solid fuels of the published tables.

use reckoning::Known;
use reckoning::quantity::{Density, Quantity, Ratio};

use super::Composition;
use crate::table::{self, Found, NoValue, Table};

/// The tables of analyses, each from one source.
const ANALYSES: [&str; 3] = ["fuel-typical", "fuel-steam-coal", "fuel-wood"];

/// The table of densities.
const LUMPS: &str = "fuel-lumps";

/// A solid fuel with the rows it stands on.
#[derive(Clone, Copy, Debug)]
pub struct SolidFuel {
    /// Composition as fired.
    pub composition: Composition,
    analysis: &'static Table,
    row: usize,
    lumps: &'static Table,
    lump_row: usize,
}

/// The fuel of this name: `anthracite`, `steam coal`, `charcoal`, `wood`.
///
/// # Errors
/// [`NoValue::NoRow`] where no table has it.
pub fn solid_fuel(name: &str) -> Result<SolidFuel, NoValue> {
    let lumps = table::find(LUMPS);
    let lump_row = lumps.row_of("fuel", name)?;
    let found = ANALYSES.map(table::find).into_iter().find_map(|analysis| {
        let row = analysis.row_of("fuel", name).ok()?;
        Some((analysis, row))
    });
    let (analysis, row) = found.ok_or_else(|| NoValue::NoRow {
        table: "analyses of fuels".to_owned(),
        row: name.to_owned(),
    })?;
    Ok(SolidFuel {
        composition: composition(analysis, row),
        analysis,
        row,
        lumps,
        lump_row,
    })
}

fn composition(table: &Table, row: usize) -> Composition {
    let share = |column| table.value::<Ratio>(row, column).number();
    Composition {
        carbon: share("C"),
        hydrogen: share("H"),
        oxygen: share("O"),
        nitrogen: share("N"),
        sulphur: share("S"),
        ash: share("A"),
        water: share("W"),
    }
}

impl SolidFuel {
    /// A column of the analysis (`C`, `H`, `O`, `N`, `S`, `A`, `W`) as it enters a working.
    ///
    /// # Panics
    /// When there is no such column, which is a broken promise of the caller.
    #[must_use]
    pub fn share(&self, column: &str) -> Known<Ratio> {
        cell(self.analysis, self.row, column)
    }

    /// Density of a light lump, as it enters a working.
    #[must_use]
    pub fn light_lump(&self) -> Known<Density> {
        cell(self.lumps, self.lump_row, "low")
    }

    /// Density of a heavy lump, as it enters a working.
    #[must_use]
    pub fn heavy_lump(&self) -> Known<Density> {
        cell(self.lumps, self.lump_row, "high")
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
    use reckoning::Origin;

    #[test]
    fn every_fuel_of_a_plan_is_in_the_tables() {
        for name in ["anthracite", "steam coal", "charcoal", "wood"] {
            let fuel = solid_fuel(name).expect(name);
            assert!((fuel.composition.sum() - 1.0).abs() < 2e-4, "{name}");
            assert!(fuel.light_lump().value < fuel.heavy_lump().value, "{name}");
            let carbon = fuel.share("C").value.number();
            assert!((carbon - fuel.composition.carbon).abs() < 1e-15, "{name}");
        }
        assert!(matches!(solid_fuel("peat"), Err(NoValue::NoRow { .. })));
    }

    #[test]
    fn an_analysis_that_was_read_says_so() {
        let origin = |name: &str| solid_fuel(name).map(|f| f.share("C").given.origin());
        assert_eq!(origin("steam coal"), Ok(Origin::Read));
        assert_eq!(origin("anthracite"), Ok(Origin::CommonPractice));
    }
}
