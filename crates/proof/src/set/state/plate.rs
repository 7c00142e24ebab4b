//! Tube plates by regulation 580, which is of steel tubes expanded in.

use super::IBR;
use crate::input::{Metal, TubePlate};
use crate::remedy::{at_least, next_stock};
use crate::rules::{STATE_BETWEEN, STATE_NOT_WORKED, STATE_TUBE_PLATE};
use crate::set::{Asked, unworked};
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{file_size, need};
use formulas::vessel::state;
use reckoning::quantity::{INCH, Length, MM, Quantity};
use reckoning::size::Bad;
use reckoning::{Finding, Ref};

/// Every check of a tube plate.
pub(super) fn checks(plate: &TubePlate, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![thickness(plate, asked), between(plate, asked)];
    let what = "an opening in a plate held by tubes";
    let openings = &plate.openings;
    found.extend(unworked::openings(&IBR, &STATE_NOT_WORKED, openings, what));
    found
}

/// Notes that the regulation was not made for such a plate.
fn keep_steel(sum: &mut Sum, plate: &TubePlate) {
    if plate.metal != Metal::Steel {
        sum.outside(format!(
            "regulation 580 is of steel tubes expanded into steel, and this is {}",
            plate.metal.words()
        ));
    }
}

fn file_tube(sum: &mut Sum, plate: &TubePlate) -> Result<Ref, Stop> {
    let tube = plate.nest.outside.as_ref();
    let tube = need("the outside of the tubes", &plate.id, tube)?;
    file_size(
        sum,
        ("D", "outside of the tubes, and hole"),
        tube,
        Bad::Large,
    )
}

fn thickness(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(IBR.head(&STATE_TUBE_PLATE, &plate.id), |sum| {
        let taken = IBR.take_plate(sum, plate, asked)?;
        keep_steel(sum, plate);
        let d = file_tube(sum, plate)?;
        let least = sum.card(&state::TUBE_PLATE, &[d])?;
        let least = Length::from_unit(sum.value(least), &INCH).mm();
        let t = taken.wall.mm();
        taken.wall.hold(sum, "thickness", &plate.id, least);
        let says = format!("plate {t:.2} mm, {least:.2} mm asked by its tubes");
        let remedy = next_stock("a plate", &asked.stock.sheets, least);
        Ok(Outcome::compared(t, least, says, remedy))
    })
}

fn between(plate: &TubePlate, asked: &Asked<'_>) -> Finding {
    check(IBR.head(&STATE_BETWEEN, &plate.id), |sum| {
        let taken = IBR.take_plate(sum, plate, asked)?;
        keep_steel(sum, plate);
        let d = file_tube(sum, plate)?;
        let pitch = plate.nest.pitch.as_ref();
        let pitch = need("the pitch of the tubes", &plate.id, pitch)?;
        let p = sum.know("p", "pitch of the tubes", &MM, pitch);
        let has = sum.card(&state::BETWEEN, &[p, d, taken.t])?;
        let least = sum.card(&state::BETWEEN_ASKED, &[d])?;
        let (has, least) = (sum.value(has), sum.value(least));
        let thick = taken.wall.mm() * least / has;
        taken.wall.hold(sum, "thickness", &plate.id, thick);
        let says = format!("{has:.4} in² of plate between two tubes, {least:.4} in² asked");
        let remedy = format!("a plate of {} mm, or a larger pitch", at_least(thick));
        Ok(Outcome::compared(has, least, says, remedy))
    })
}
