//! Flat ends by the European vessel standard, without help from stays or shell.

use super::{EN_13445, Heat, file_stress};
use crate::input::{Boiler, Diameter, End, EndShape};
use crate::remedy::next_stock;
use crate::rules::{EN_FLAT_END, EN_NOT_WORKED};
use crate::set::{Asked, unworked};
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_sides, need};
use formulas::vessel::european::FLAT_END;
use reckoning::{Finding, Ref};

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

/// Files the diameter of what an end closes: the bore of a shell, the outside of a flue.
fn file_span(sum: &mut Sum, boiler: &Boiler, end: &End) -> Result<Ref, Stop> {
    let shell = boiler.shells.iter().find(|s| s.id == end.closes);
    if let Some(shell) = shell {
        let wall = Wall::of(need("the wall", &shell.id, shell.wall.as_ref())?);
        return Ok(file_closed(sum, shell.diameter.as_ref(), &wall, &shell.id)?.0);
    }
    let flue = boiler.flues.iter().find(|f| f.id == end.closes);
    let flue = need("the sizes", &end.closes, flue)?;
    let wall = Wall::of(need("the wall", &flue.id, flue.wall.as_ref())?);
    Ok(file_closed(sum, flue.diameter.as_ref(), &wall, &flue.id)?.1)
}

fn file_closed(
    sum: &mut Sum,
    diameter: Option<&Diameter>,
    wall: &Wall,
    id: &str,
) -> Result<(Ref, Ref), Stop> {
    let diameter = need("the diameter", id, diameter)?;
    let t = wall.file(sum, "t", "least wall of what the end closes")?;
    let sides = file_sides(sum, diameter, t)?;
    wall.hold_as_used(sum, "wall", id);
    Ok((sides.bore, sides.outside))
}

fn flat(boiler: &Boiler, end: &End, asked: &Asked<'_>) -> Finding {
    check(EN_13445.head(&EN_FLAT_END, &end.id), |sum| {
        let served = EN_13445.serve(sum, asked, &end.id, end.metal_temperature.as_ref())?;
        let has = Wall::of(need("the thickness", &end.id, end.thickness.as_ref())?);
        has.file(sum, "e_a", "least thickness of the end")?;
        let d = file_span(sum, boiler, end)?;
        let f = file_stress(&mut sum.w, end.metal, Heat::At(served.metal))?;
        let least = sum.card(&FLAT_END, &[d, served.p, f])?;
        let (t, least) = (has.mm(), sum.value(least));
        has.hold(sum, "thickness", &end.id, least);
        let says = format!("end {t:.2} mm, {least:.2} mm asked where nothing stays it");
        let remedy = next_stock("a plate", &asked.stock.sheets, least);
        Ok(Outcome::compared(t, least, says, remedy))
    })
}
