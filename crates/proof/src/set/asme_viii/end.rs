//! Ends by the pressure vessel code: flat, and dished with the hollow side pressed.

use super::{ASME_VIII, CODE_ELSEWHERE};
use crate::input::{Boiler, Curve, Dish, End, EndShape, Pressed};
use crate::metal::chosen;
use crate::remedy::next_stock;
use crate::rules::{CODE_DISHED, CODE_FLAT_END};
use crate::set::closed::file_closed;
use crate::set::served::Served;
use crate::set::{Asked, unworked};
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_size, need};
use formulas::vessel::{dish as dishes, flat_end, ring};
use reckoning::quantity::{MPA, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin, Ref};

/// Coefficient of a plate set into a shell.
const SET_IN: f64 = 0.33;

/// Every check of the ends of a boiler.
pub(super) fn checks(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found: Vec<Finding> = unworked::of_ends(&ASME_VIII, &CODE_ELSEWHERE, boiler).collect();
    for end in &boiler.ends {
        match &end.shape {
            EndShape::Flat => found.push(flat(boiler, end, asked)),
            EndShape::Dished(dish) => found.push(dished(boiler, end, dish, asked)),
            EndShape::Annular { .. } => {}
        }
    }
    found
}

/// An end as this set takes it.
struct Taken {
    served: Served,
    wall: Wall,
    s: Ref,
}

fn take(sum: &mut Sum, end: &End, asked: &Asked<'_>) -> Result<Taken, Stop> {
    let served = ASME_VIII.serve(sum, asked, &end.id, end.metal_temperature.as_ref())?;
    let wall = Wall::of(need("the thickness", &end.id, end.thickness.as_ref())?);
    ASME_VIII.keep_wall(sum, "end", wall.mm(), ASME_VIII.scope.shell_mm);
    wall.file(sum, "t_a", "least thickness of the end")?;
    let stress = stress::code(end.metal, served.metal)?;
    let s = sum.know("S", "allowable stress at metal temperature", &MPA, &stress);
    Ok(Taken { served, wall, s })
}

fn close(sum: &mut Sum, end: &End, asked: &Asked<'_>, taken: &Taken, least: Ref) -> Outcome {
    let (t, least) = (taken.wall.mm(), sum.value(least));
    taken.wall.hold(sum, "thickness", &end.id, least);
    let says = format!("end {t:.2} mm, {least:.2} mm asked");
    let remedy = next_stock("a plate", &asked.stock.sheets, least);
    Outcome::compared(t, least, says, remedy)
}

fn flat(boiler: &Boiler, end: &End, asked: &Asked<'_>) -> Finding {
    check(ASME_VIII.head(&CODE_FLAT_END, &end.id), |sum| {
        let taken = take(sum, end, asked)?;
        let d = file_closed(sum, boiler, end)?.span;
        let known = chosen(
            Ratio::from_number(SET_IN),
            "0.17 forged or flanged, 0.20 to 0.33 set into a shell",
            "no brazed end is among the details; the most that is asked of a plate set in",
            Origin::FromMemory,
        );
        let c = sum.know("C", "coefficient of the detail", &ONE, &known);
        let e = ASME_VIII.file_joint(sum, "E", 1.0);
        let least = sum.card(&flat_end::UG34, &[d, c, taken.served.p, taken.s, e])?;
        Ok(close(sum, end, asked, &taken, least))
    })
}

fn dished(boiler: &Boiler, end: &End, dish: &Dish, asked: &Asked<'_>) -> Finding {
    check(ASME_VIII.head(&CODE_DISHED, &end.id), |sum| {
        if dish.pressed == Pressed::Round {
            let what = "a dish that is pressed on its round side";
            return Err(Stop::NotWorked { what });
        }
        let taken = take(sum, end, asked)?;
        let least = file_dish(sum, boiler, end, dish, &taken)?;
        Ok(close(sum, end, asked, &taken, least))
    })
}

/// Files the least thickness of a dish by its curve.
fn file_dish(
    sum: &mut Sum,
    boiler: &Boiler,
    end: &End,
    dish: &Dish,
    taken: &Taken,
) -> Result<Ref, Stop> {
    let (p, s) = (taken.served.p, taken.s);
    let e = ASME_VIII.file_joint(sum, "E", 1.0);
    match dish.curve {
        Curve::Hemisphere => {
            let bore = file_closed(sum, boiler, end)?.bore;
            let r = sum.card(&ring::RADIUS, &[bore])?;
            sum.card(&dishes::HEMISPHERE, &[p, r, s, e])
        }
        Curve::Ellipsoid => {
            let bore = file_closed(sum, boiler, end)?.bore;
            sum.card(&dishes::ELLIPSOID, &[p, bore, s, e])
        }
        Curve::Torisphere => {
            let crown = need("the radius of the crown", &end.id, dish.crown.as_ref())?;
            let l = file_size(sum, ("L", "inside radius of the crown"), crown, Bad::Large)?;
            let knuckle = need("the radius of the knuckle", &end.id, dish.knuckle.as_ref())?;
            let r = file_size(
                sum,
                ("r", "inside radius of the knuckle"),
                knuckle,
                Bad::Small,
            )?;
            let m = sum.card(&dishes::KNUCKLE, &[l, r])?;
            sum.card(&dishes::TORISPHERE, &[p, l, m, s, e])
        }
    }
}
