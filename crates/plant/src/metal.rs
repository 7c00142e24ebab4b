//! Metals by the name that plans give them.

use formulas::table;
use reckoning::Known;
use reckoning::quantity::Density;

/// Density of a metal by its designation (`CW024A`); none where the table has no such metal.
///
/// # Panics
/// Never: a test of the tables reads this one.
#[must_use]
pub fn density(designation: &str) -> Option<Known<Density>> {
    let metals = table::find("metals");
    let row = metals.row_of("metal", designation).ok()?;
    let found = table::Found {
        value: metals.value(row, "rho"),
        row: format!("{designation}, {}", metals.words(row, "called")),
    };
    Some(metals.known(found))
}
