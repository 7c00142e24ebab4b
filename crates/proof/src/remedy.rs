//! Cures with a number.

use crate::input::StockSize;
use crate::taken::up;

/// The next size that can be had, or that none will do.
pub(crate) fn next_stock(what: &str, stock: &[StockSize], least_mm: f64) -> String {
    let found = stock
        .iter()
        .filter(|s| s.least.mm() >= least_mm)
        .min_by(|a, b| a.least.mm().total_cmp(&b.least.mm()));
    match found {
        Some(size) => format!(
            "{what} of {} ({} mm or more is asked)",
            size.text,
            up(least_mm)
        ),
        None => format!(
            "{what} of {} mm or more; none in stock is as thick",
            up(least_mm)
        ),
    }
}

/// A least size as printed, mm.
pub(crate) fn at_least(mm: f64) -> String {
    up(mm)
}

/// The thinnest size that can be had and that does, where there is one.
pub(crate) fn first_stock(
    what: &str,
    stock: &[StockSize],
    does: impl Fn(f64) -> bool,
) -> Option<String> {
    stock
        .iter()
        .filter(|s| does(s.least.mm()))
        .min_by(|a, b| a.least.mm().total_cmp(&b.least.mm()))
        .map(|size| format!("{what} of {}", size.text))
}
