//! The tables that are part of the program.

use super::{Table, read};
use std::sync::LazyLock;

/// Name and text of each file under `tables/`.
pub static FILES: &[(&str, &str)] = &[
    (
        "copper-stress-pipe-code",
        include_str!("../../tables/copper-stress-pipe-code.toml"),
    ),
    (
        "copper-stress-ship-register",
        include_str!("../../tables/copper-stress-ship-register.toml"),
    ),
    (
        "copper-stress-trade-r220",
        include_str!("../../tables/copper-stress-trade-r220.toml"),
    ),
    (
        "fuel-ethanol",
        include_str!("../../tables/fuel-ethanol.toml"),
    ),
    ("fuel-gases", include_str!("../../tables/fuel-gases.toml")),
    (
        "fuel-isobutane",
        include_str!("../../tables/fuel-isobutane.toml"),
    ),
    ("fuel-lumps", include_str!("../../tables/fuel-lumps.toml")),
    (
        "fuel-methanol",
        include_str!("../../tables/fuel-methanol.toml"),
    ),
    (
        "fuel-n-butane",
        include_str!("../../tables/fuel-n-butane.toml"),
    ),
    (
        "fuel-propane",
        include_str!("../../tables/fuel-propane.toml"),
    ),
    (
        "fuel-spirits",
        include_str!("../../tables/fuel-spirits.toml"),
    ),
    (
        "fuel-steam-coal",
        include_str!("../../tables/fuel-steam-coal.toml"),
    ),
    (
        "fuel-typical",
        include_str!("../../tables/fuel-typical.toml"),
    ),
    (
        "fuel-vapour-pressure",
        include_str!("../../tables/fuel-vapour-pressure.toml"),
    ),
    ("fuel-wood", include_str!("../../tables/fuel-wood.toml")),
    (
        "cutting-speeds-drilling",
        include_str!("../../tables/cutting-speeds-drilling.toml"),
    ),
    (
        "cutting-speeds-turning",
        include_str!("../../tables/cutting-speeds-turning.toml"),
    ),
    ("metals", include_str!("../../tables/metals.toml")),
    (
        "spring-wire-stainless",
        include_str!("../../tables/spring-wire-stainless.toml"),
    ),
    (
        "stainless-stress-316",
        include_str!("../../tables/stainless-stress-316.toml"),
    ),
    ("threads-ba", include_str!("../../tables/threads-ba.toml")),
    ("threads-bsf", include_str!("../../tables/threads-bsf.toml")),
    ("threads-bsw", include_str!("../../tables/threads-bsw.toml")),
    ("threads-g", include_str!("../../tables/threads-g.toml")),
    ("threads-me", include_str!("../../tables/threads-me.toml")),
    (
        "threads-metric-coarse",
        include_str!("../../tables/threads-metric-coarse.toml"),
    ),
    (
        "threads-metric-fine",
        include_str!("../../tables/threads-metric-fine.toml"),
    ),
];

static TABLES: LazyLock<Vec<(&str, Table)>> = LazyLock::new(|| {
    let load = |&(name, text): &(&'static str, &str)| match read(&format!("{name}.toml"), text) {
        Ok(table) => (name, table),
        Err(faults) => {
            let told: Vec<String> = faults.iter().map(ToString::to_string).collect();
            panic!("a table of ours does not read:\n{}", told.join("\n"))
        }
    };
    FILES.iter().map(load).collect()
});

/// Every table, with its name.
///
/// # Panics
/// When a table does not read, which is a broken promise of ours; a test reads them all.
pub fn embedded() -> impl Iterator<Item = (&'static str, &'static Table)> {
    TABLES.iter().map(|(name, table)| (*name, table))
}

/// The table of this name.
///
/// # Panics
/// As [`embedded`], and when there is no table of this name.
#[must_use]
pub fn find(name: &str) -> &'static Table {
    match embedded().find(|(n, _)| *n == name) {
        Some((_, table)) => table,
        None => panic!("there is no table {name}"),
    }
}
