//! Metals by the name that plans give them.

use formulas::table;
use reckoning::Known;
use reckoning::quantity::{Density, Quantity, SpecificHeat};

/// Density of a metal by its designation (`CW024A`); none where the table has no such metal.
///
/// # Panics
/// Never: a test of the tables reads this one.
#[must_use]
pub fn density(designation: &str) -> Option<Known<Density>> {
    of(designation, "rho")
}

/// Specific heat of a metal by its designation; none where the table has no such metal.
///
/// # Panics
/// Never: a test of the tables reads this one.
#[must_use]
pub fn specific_heat(designation: &str) -> Option<Known<SpecificHeat>> {
    of(designation, "c")
}

fn of<Q: Quantity>(designation: &str, column: &str) -> Option<Known<Q>> {
    let metals = table::find("metals");
    let row = metals.row_of("metal", designation).ok()?;
    let found = table::Found {
        value: metals.value(row, column),
        row: format!("{designation}, {}", metals.words(row, "called")),
    };
    Some(metals.known(found))
}
