//! Dished ends, pressed on their hollow or on their round side.

use super::OURS;
use super::end::{file_bore, shell};
use crate::input::{Boiler, Curve, Dish, End, Exposure, Pressed};
use crate::metal::{chosen, modulus, proof_hot};
use crate::remedy::next_stock;
use crate::rules::END_DISHED;
use crate::set::Asked;
use crate::set::served::Served;
use crate::stress;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{Wall, bar, file_sides, file_size, need};
use formulas::vessel::{dish as law, ring, viii_external};
use reckoning::quantity::{MPA, MPA_GAUGE, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Finding, Origin, Ref};

/// A dish as a proof takes it.
struct Taken {
    served: Served,
    wall: Wall,
    t: Ref,
    f: Ref,
}

/// The one check of a dish.
pub(super) fn check_dish(boiler: &Boiler, end: &End, dish: &Dish, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&END_DISHED, &end.id), |sum| {
        let metal = end.metal_temperature.as_ref();
        let served = OURS.serve(sum, asked, &end.id, metal)?;
        let wall = Wall::of(need("the thickness", &end.id, end.thickness.as_ref())?);
        let t = wall.file(sum, "t", "least thickness of the dish")?;
        let f = stress::ours(sum, end.metal, served.metal, "f")?;
        let taken = Taken { served, wall, t, f };
        match dish.pressed {
            Pressed::Hollow => hollow(sum, (boiler, end, dish), asked, &taken),
            Pressed::Round => round(sum, (boiler, end, dish), asked, &taken),
        }
    })
}

type Of<'a> = (&'a Boiler, &'a End, &'a Dish);

/// Files the least thickness by the formula of the hollow side.
fn file_least(sum: &mut Sum, (boiler, end, dish): Of<'_>, p: Ref, f: Ref) -> Result<Ref, Stop> {
    let one = chosen(
        Ratio::from_number(1.0),
        "pressed from one piece, or with a seam",
        "pressed from one piece",
        Origin::CommonPractice,
    );
    let e = sum.know("E", "joint efficiency", &ONE, &one);
    match dish.curve {
        Curve::Hemisphere => {
            let bore = file_inside(sum, boiler, end)?;
            let l = sum.card(&ring::RADIUS, &[bore])?;
            sum.card(&law::HEMISPHERE, &[p, l, f, e])
        }
        Curve::Ellipsoid => {
            let bore = file_inside(sum, boiler, end)?;
            sum.card(&law::ELLIPSOID, &[p, bore, f, e])
        }
        Curve::Torisphere => {
            let crown = need("the radius of the crown", &end.id, dish.crown.as_ref())?;
            let knuckle = need("the radius of the knuckle", &end.id, dish.knuckle.as_ref())?;
            let l = file_size(sum, ("L", "inside radius of the crown"), crown, Bad::Large)?;
            let r = file_size(
                sum,
                ("r", "inside radius of the knuckle"),
                knuckle,
                Bad::Small,
            )?;
            let m = sum.card(&law::KNUCKLE, &[l, r])?;
            sum.card(&law::TORISPHERE, &[p, l, m, f, e])
        }
    }
}

/// Files the inside of the tube that a dish closes: the bore of a shell, else that of a flue.
fn file_inside(sum: &mut Sum, boiler: &Boiler, end: &End) -> Result<Ref, Stop> {
    if shell(boiler, &end.closes).is_ok() {
        return file_bore(sum, boiler, &end.closes);
    }
    let flue = boiler.flues.iter().find(|f| f.id == end.closes);
    let flue = need("the sizes", &end.closes, flue)?;
    let diameter = need("the diameter", &flue.id, flue.diameter.as_ref())?;
    let wall = Wall::of(need("the wall", &flue.id, flue.wall.as_ref())?);
    let t = wall.file(sum, "t_f", "least wall of the flue")?;
    wall.hold_as_used(sum, "wall", &flue.id);
    Ok(file_sides(sum, diameter, t)?.bore)
}

fn hollow(sum: &mut Sum, of: Of<'_>, asked: &Asked<'_>, taken: &Taken) -> Result<Outcome, Stop> {
    let least = file_least(sum, of, taken.served.p, taken.f)?;
    let (has, least) = (taken.wall.mm(), sum.value(least));
    taken.wall.hold(sum, "thickness", &of.1.id, least);
    let says = format!("dish of {has:.2} mm, {least:.2} mm asked by pressure on its hollow side");
    let remedy = next_stock("a dish", &asked.stock.sheets, least);
    Ok(Outcome::compared(has, least, says, remedy))
}

/// Files the outside radius of the sphere that stands for a dish.
fn file_sphere(sum: &mut Sum, (boiler, end, dish): Of<'_>, t: Ref) -> Result<Ref, Stop> {
    if dish.curve == Curve::Torisphere {
        let crown = need("the radius of the crown", &end.id, dish.crown.as_ref())?;
        let l = file_size(sum, ("L", "inside radius of the crown"), crown, Bad::Large)?;
        let across = sum.value(l) + sum.value(t);
        return Ok(sum.w.chosen(Choice {
            symbol: "R_o",
            meaning: "outside radius of the crown",
            value: across,
            unit: &reckoning::quantity::MM,
            between: "inside and outside radius",
            reason: "the outside, a thickness more",
            from: &[l, t],
            cite: None,
        }));
    }
    let bore = file_inside(sum, boiler, end)?;
    let outside = sum.card(&ring::OUTSIDE, &[bore, t])?;
    if dish.curve == Curve::Ellipsoid {
        return sum.card(&law::SPHERE_OF_ELLIPSOID, &[outside]);
    }
    sum.card(&ring::RADIUS, &[outside])
}

/// Files the pressure at which a dish buckles, and that of its design stress.
fn file_limits(sum: &mut Sum, of: Of<'_>, taken: &Taken) -> Result<[Ref; 2], Stop> {
    let (_, end, _) = of;
    let r_o = file_sphere(sum, of, taken.t)?;
    let stiff = modulus(end.metal)?;
    let e = sum.know("E", "modulus of elasticity, hot", &MPA, &stiff);
    let hot = proof_hot(end.metal, taken.served.metal)?;
    let s_y = sum.know("S_y", "0.2 % proof stress at work", &MPA, &hot);
    let f_he = sum.card(&law::ELASTIC, &[e, taken.t, r_o])?;
    let f_ic = sum.card(&law::CRITICAL, &[f_he, s_y])?;
    let fs = sum.card(&viii_external::FACTOR, &[f_ic, s_y])?;
    let by_buckling = sum.card(&law::ROUND, &[f_ic, fs, taken.t, r_o])?;
    let cap = sum.card(&law::CAP, &[taken.f, taken.t, r_o])?;
    Ok([by_buckling, cap])
}

/// Files the least of the limits of the round side, and gives it with what governs.
fn file_most(sum: &mut Sum, of: Of<'_>, taken: &Taken) -> Result<(f64, &'static str), Stop> {
    let [by_buckling, cap] = file_limits(sum, of, taken)?;
    let p_h = sum.card(&law::AS_HOLLOW, &[taken.served.p])?;
    let least = file_least(sum, of, p_h, taken.f)?;
    // The formula of the hollow side turned round, by the thickness that it asks.
    let as_hollow = taken.served.p_mpa * taken.wall.mm() / sum.value(least);
    let hollow = "the formula of the hollow side at 1.67 times the pressure";
    let limits = [
        (sum.value(by_buckling), "buckling"),
        (sum.value(cap), "its design stress"),
        (as_hollow, hollow),
    ];
    let start = (f64::INFINITY, "");
    let (most, governs) = limits
        .into_iter()
        .fold(start, |a, b| if b.0 < a.0 { b } else { a });
    sum.w.chosen(Choice {
        symbol: "P_a",
        meaning: "pressure that the dish bears on its round side",
        value: most,
        unit: &MPA_GAUGE,
        between: "buckling, design stress, and the formula of the hollow side",
        reason: governs,
        from: &[by_buckling, cap, least],
        cite: None,
    });
    Ok((most, governs))
}

fn round(sum: &mut Sum, of: Of<'_>, asked: &Asked<'_>, taken: &Taken) -> Result<Outcome, Stop> {
    let (_, end, dish) = of;
    let (most, governs) = file_most(sum, of, taken)?;
    let p = taken.served.p_mpa;
    // Each limit rises at least as fast as the thickness.
    let asked_mm = taken.wall.mm() * p / most;
    taken.wall.hold(sum, "thickness", &end.id, asked_mm);
    let says = format!(
        "bears {} bar on its round side by {governs}, {} bar asked",
        bar(most),
        bar(p)
    );
    let swept = dish.exposure == Some(Exposure::FlameSwept) && most < 1.7 * p;
    let remark = swept.then(|| {
        "the flame touches it, and boiler codes ask about 1.7 times the margin there".to_owned()
    });
    let remedy = next_stock("a dish", &asked.stock.sheets, asked_mm);
    Ok(Outcome::compared(most, p, says, remedy).strained_if(remark))
}
