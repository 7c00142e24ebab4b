//! Flat ends by the European vessel standard, without help from stays or shell.

use super::{EN_13445, Heat, file_stress};
use crate::input::{Boiler, End, EndShape};
use crate::remedy::next_stock;
use crate::rules::{EN_FLAT_END, EN_NOT_WORKED};
use crate::set::closed::file_closed;
use crate::set::{Asked, unworked};
use crate::sum::{Outcome, check};
use crate::taken::{Wall, need};
use formulas::vessel::european::FLAT_END;
use reckoning::Finding;

/// Every check of the flat ends of a boiler.
pub(super) fn checks(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found: Vec<Finding> = unworked::of_ends(&EN_13445, &EN_NOT_WORKED, boiler).collect();
    for end in &boiler.ends {
        if matches!(end.shape, EndShape::Flat) {
            found.push(flat(boiler, end, asked));
        }
    }
    found
}

fn flat(boiler: &Boiler, end: &End, asked: &Asked<'_>) -> Finding {
    check(EN_13445.head(&EN_FLAT_END, &end.id), |sum| {
        let served = EN_13445.serve(sum, asked, &end.id, end.metal_temperature.as_ref())?;
        let has = Wall::of(need("the thickness", &end.id, end.thickness.as_ref())?);
        has.file(sum, "e_a", "least thickness of the end")?;
        let d = file_closed(sum, boiler, end)?.span;
        let f = file_stress(&mut sum.w, end.metal, Heat::At(served.metal))?;
        let least = sum.card(&FLAT_END, &[d, served.p, f])?;
        let (t, least) = (has.mm(), sum.value(least));
        has.hold(sum, "thickness", &end.id, least);
        let says = format!("end {t:.2} mm, {least:.2} mm asked where nothing stays it");
        let remedy = next_stock("a plate", &asked.stock.sheets, least);
        Ok(Outcome::compared(t, least, says, remedy))
    })
}
