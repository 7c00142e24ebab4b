//! Dished ends by regulations 567, 190 and 223.

use super::{IBR, file_tensile, mpa};
use crate::input::{Boiler, Curve, Dish, End, EndShape, Exposure, Metal, Pressed};
use crate::metal::chosen;
use crate::rules::{STATE_DISHED, STATE_NOT_WORKED};
use crate::set::closed::file_closed;
use crate::set::{Asked, unworked};
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, bar, file_size, need};
use formulas::vessel::{ring, state_crown};
use reckoning::quantity::{ONE, Ratio};
use reckoning::size::Bad;
use reckoning::{Finding, Origin, Ref};

/// Radius of the knuckle over the plate, at least.
const KNUCKLE: f64 = 4.0;

/// Every check of the dished ends of a boiler, and of the openings of all ends.
pub(super) fn checks(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found: Vec<Finding> = unworked::of_ends(&IBR, &STATE_NOT_WORKED, boiler).collect();
    for end in &boiler.ends {
        if let EndShape::Dished(dish) = &end.shape {
            found.push(dished(boiler, end, dish, asked));
        }
    }
    found
}

/// The constant of the dish, by the side that is pressed and what touches it.
fn constant(dish: &Dish, end: &End) -> Result<f64, Stop> {
    if dish.pressed == Pressed::Hollow {
        return Ok(15.0);
    }
    let what = "what touches the dish";
    Ok(match need(what, &end.id, dish.exposure.as_ref())? {
        Exposure::FlameSwept => 10.5,
        Exposure::Gas => 12.0,
    })
}

/// Files the inside radius of the dish, and sees that it is not flatter than what it closes.
fn file_radius(sum: &mut Sum, boiler: &Boiler, end: &End, dish: &Dish) -> Result<Ref, Stop> {
    match dish.curve {
        Curve::Ellipsoid => Err(Stop::NotWorked {
            what: "an ellipsoidal end",
        }),
        Curve::Hemisphere => {
            let bore = file_closed(sum, boiler, end)?.bore;
            sum.card(&ring::RADIUS, &[bore])
        }
        Curve::Torisphere => {
            let crown = need("the radius of the crown", &end.id, dish.crown.as_ref())?;
            let r = file_size(sum, ("R", "inside radius of the crown"), crown, Bad::Large)?;
            let outside = file_closed(sum, boiler, end)?.outside;
            if sum.value(r) > sum.value(outside) {
                sum.outside(format!(
                    "the dish may be no flatter than its diameter, {:.1} mm, and has {:.1} mm",
                    sum.value(outside),
                    sum.value(r)
                ));
            }
            Ok(r)
        }
    }
}

/// Notes a knuckle that is sharper than the regulation asks.
fn keep_knuckle(sum: &mut Sum, end: &End, dish: &Dish, wall: &Wall) -> Result<(), Stop> {
    if dish.curve != Curve::Torisphere {
        return Ok(());
    }
    let knuckle = need("the radius of the knuckle", &end.id, dish.knuckle.as_ref())?;
    let r = file_size(
        sum,
        ("r", "inside radius of the knuckle"),
        knuckle,
        Bad::Small,
    )?;
    let (r, least) = (sum.value(r), KNUCKLE * wall.mm());
    if r < least {
        sum.outside(format!(
            "regulation 567 asks a knuckle of four plates, {least:.2} mm, and this has {r:.2} mm"
        ));
    }
    Ok(())
}

fn dished(boiler: &Boiler, end: &End, dish: &Dish, asked: &Asked<'_>) -> Finding {
    check(IBR.head(&STATE_DISHED, &end.id), |sum| {
        let served = IBR.serve(sum, asked, &end.id, end.metal_temperature.as_ref())?;
        let has = Wall::of(need("the thickness", &end.id, end.thickness.as_ref())?);
        let t = has.file(sum, "t", "thickness of the end at its thinnest")?;
        let inside = file_radius(sum, boiler, end, dish)?;
        keep_knuckle(sum, end, dish, &has)?;
        let most = file_pressure(sum, end, dish, (t, inside))?;
        has.hold_as_used(sum, "thickness", &end.id);
        let (most, p) = (mpa(sum.value(most)), served.p_mpa);
        let says = format!("allowed {} bar as a dish, {} bar asked", bar(most), bar(p));
        Ok(Outcome::compared(
            most,
            p,
            says,
            STATE_DISHED.remedy.to_owned(),
        ))
    })
}

/// Files what the form that fits allows.
fn file_pressure(
    sum: &mut Sum,
    end: &End,
    dish: &Dish,
    (t, inside): (Ref, Ref),
) -> Result<Ref, Stop> {
    let r = match dish.pressed {
        Pressed::Hollow => inside,
        Pressed::Round => sum.card(&state_crown::OUTSIDE_RADIUS, &[inside, t])?,
    };
    let half = dish.curve == Curve::Hemisphere && dish.pressed == Pressed::Round;
    if half && end.metal == Metal::Steel {
        return sum.card(&state_crown::CROWN_HEMISPHERE, &[t, r]);
    }
    let s = file_tensile(sum, end.metal)?;
    let known = chosen(
        Ratio::from_number(constant(dish, end)?),
        "15 with the hollow side pressed, 12 with the round one, 10.5 there in the flame",
        "how the dish stands",
        Origin::Read,
    );
    let k = sum.know("k", "constant of the dish", &ONE, &known);
    sum.card(&state_crown::DISHED, &[k, s, t, r])
}
