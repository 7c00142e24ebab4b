//! The flange of an end plate: its lap, its shear, and no peel.

use super::OURS;
use super::braze::{SEEN, file_allowed};
use crate::input::{Boiler, Diameter, Dimension, End, Flange, Metal, Points, TubePlate};
use crate::metal::{braze_strength, chosen, tensile};
use crate::remedy::at_least;
use crate::rules::{JOINT_LAP, JOINT_PEEL, JOINT_SHEAR};
use crate::set::Asked;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_sides, file_size, need, size_mm};
use formulas::vessel::lap as law;
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Finding, Origin, Ref};

/// Share of a lap that is whole, as the maker's guide takes it.
const WHOLE_SHARE: f64 = 0.8;

/// A plate with a flange.
#[derive(Clone, Copy)]
pub(super) struct Flanged<'a> {
    id: &'a String,
    metal: Metal,
    thickness: Option<&'a Dimension>,
}

impl<'a> From<&'a TubePlate> for Flanged<'a> {
    fn from(plate: &'a TubePlate) -> Self {
        Self {
            id: &plate.id,
            metal: plate.metal,
            thickness: plate.thickness.as_ref(),
        }
    }
}

impl<'a> From<&'a End> for Flanged<'a> {
    fn from(end: &'a End) -> Self {
        Self {
            id: &end.id,
            metal: end.metal,
            thickness: end.thickness.as_ref(),
        }
    }
}

/// Every check of the flange of a plate, where it has one.
pub(super) fn checks(boiler: &Boiler, plate: &TubePlate, asked: &Asked<'_>) -> Vec<Finding> {
    let flange = plate.flange.as_ref();
    flange.map_or_else(Vec::new, |flange| all(boiler, plate.into(), flange, asked))
}

/// Every check of the flange of an end. A flat end without one is a butt that opens.
pub(super) fn of_end(boiler: &Boiler, end: &End, asked: &Asked<'_>) -> Vec<Finding> {
    if let Some(flange) = &end.flange {
        return all(boiler, end.into(), flange, asked);
    }
    vec![check(OURS.head(&JOINT_PEEL, &end.id), |_| {
        Err(Stop::Missing {
            what: "the flange",
            part: end.id.clone(),
        })
    })]
}

fn all(boiler: &Boiler, of: Flanged<'_>, flange: &Flange, asked: &Asked<'_>) -> Vec<Finding> {
    vec![
        lap(boiler, of, flange),
        shear(boiler, of, flange, asked),
        peel(boiler, of, flange),
    ]
}

/// The tube that a plate closes.
struct Round<'a> {
    metal: Metal,
    diameter: Option<&'a Diameter>,
    wall: Option<&'a Dimension>,
    inside: bool,
}

/// Finds the shell or flue that a flange closes; pressure is inside a shell.
fn round<'a>(boiler: &'a Boiler, flange: &Flange) -> Result<Round<'a>, Stop> {
    if let Some(shell) = boiler.shells.iter().find(|s| s.id == flange.closes) {
        return Ok(Round {
            metal: shell.metal,
            diameter: shell.diameter.as_ref(),
            wall: shell.wall.as_ref(),
            inside: true,
        });
    }
    let flue = boiler.flues.iter().find(|f| f.id == flange.closes);
    let flue = need("the tube that the plate closes", &flange.closes, flue)?;
    Ok(Round {
        metal: flue.metal,
        diameter: flue.diameter.as_ref(),
        wall: flue.wall.as_ref(),
        inside: false,
    })
}

/// Files the lap of a flange: its height less bend and plate.
pub(super) fn file_lap(sum: &mut Sum, plate: Flanged<'_>, flange: &Flange) -> Result<Ref, Stop> {
    let id = plate.id;
    let h = need("the height of the flange", id, flange.height.as_ref())?;
    let r = need(
        "the radius of the flange",
        id,
        flange.inside_radius.as_ref(),
    )?;
    let t = need("the thickness", id, plate.thickness)?;
    let h = file_size(sum, ("h", "height of the flange over all"), h, Bad::Small)?;
    let r = file_size(sum, ("r", "inside radius of the flange"), r, Bad::Large)?;
    let t = file_size(sum, ("t", "plate at its thickest"), t, Bad::Large)?;
    sum.card(&law::OVERLAP, &[h, r, t])
}

/// Files the shear in the lap of a plate that holds its whole load.
pub(super) fn file_shear(
    sum: &mut Sum,
    boiler: &Boiler,
    flange: &Flange,
    (p, l): (Ref, Ref),
) -> Result<Ref, Stop> {
    let tube = round(boiler, flange)?;
    let diameter = need("the diameter", &flange.closes, tube.diameter)?;
    let wall = need("the wall", &flange.closes, tube.wall)?;
    let wall = Wall::of(wall).file(sum, "t_w", "least wall round the plate")?;
    let bore = file_sides(sum, diameter, wall)?.bore;
    sum.card(&law::SHEAR, &[p, bore, l])
}

/// Three walls of the thinner member.
fn lap(boiler: &Boiler, plate: Flanged<'_>, flange: &Flange) -> Finding {
    check(OURS.head(&JOINT_LAP, plate.id), |sum| {
        let l = file_lap(sum, plate, flange)?;
        let tube = round(boiler, flange)?;
        let wall = need("the wall", &flange.closes, tube.wall)?;
        let thickness = need("the thickness", plate.id, plate.thickness)?;
        let t = file_size(sum, ("t", "plate"), thickness, Bad::Large)?;
        let w = file_size(sum, ("t_w", "wall round the plate"), wall, Bad::Large)?;
        let (metal, thinner) = if size_mm(thickness, Bad::Large) <= size_mm(wall, Bad::Large) {
            (plate.metal, t)
        } else {
            (tube.metal, w)
        };
        let thinner = sum.w.chosen(Choice {
            symbol: "t",
            meaning: "thinner member",
            value: sum.value(thinner),
            unit: &MM,
            between: "plate and wall",
            reason: "the thinner, which fails before a lap of three times it",
            from: &[t, w],
            cite: None,
        });
        let asked = sum.card(&law::RULE_OF_THREE, &[thinner])?;
        file_full_strength(sum, metal, thinner)?;
        let (l, asked) = (sum.value(l), sum.value(asked));
        let height = plate_height(flange)? + asked - l;
        let says = format!("the flange laps {l:.2} mm, {asked:.2} mm asked");
        let remedy = format!("a flange of {} mm over all", at_least(height));
        Ok(Outcome::compared(l, asked, says, remedy))
    })
}

fn plate_height(flange: &Flange) -> Result<f64, Stop> {
    let h = need("the height", "the flange", flange.height.as_ref())?;
    Ok(size_mm(h, Bad::Small))
}

/// Files the lap of full strength, which stands beside.
fn file_full_strength(sum: &mut Sum, metal: Metal, thinner: Ref) -> Result<(), Stop> {
    let t = sum.know("T", "tensile strength", &MPA, &tensile(metal)?);
    let share = chosen(
        Ratio::from_number(WHOLE_SHARE),
        "share of a lap that is whole",
        "as the guide takes it",
        Origin::Read,
    );
    let c = sum.know("C", "share of the lap that is whole", &ONE, &share);
    let l = sum.know("L", "shear strength of the braze", &MPA, &braze_strength());
    sum.card(&law::FULL_STRENGTH, &[t, thinner, c, l])?;
    Ok(())
}

/// The lap in shear.
fn shear(boiler: &Boiler, plate: Flanged<'_>, flange: &Flange, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&JOINT_SHEAR, plate.id), |sum| {
        let pressure = asked.service.pressure.as_ref();
        let p = need("the working pressure", "the boiler", pressure)?;
        let p = sum.know("P", "working pressure, gauge", &MPA_GAUGE, p);
        let l = file_lap(sum, plate, flange)?;
        let tau = file_shear(sum, boiler, flange, (p, l))?;
        let allowed = file_allowed(sum, flange.joint)?;
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let says = format!("{tau:.2} MPa in the lap of the flange, {allowed:.1} MPa allowed");
        let least = sum.value(l) * tau / allowed;
        let remedy = format!("a lap of {} mm, or {SEEN}", at_least(least));
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}

/// No flange is a butt that opens; a flange away from the water is told.
fn peel(boiler: &Boiler, plate: Flanged<'_>, flange: &Flange) -> Finding {
    check(OURS.head(&JOINT_PEEL, plate.id), |sum| {
        let height = need("the height of the flange", plate.id, flange.height.as_ref())?;
        let thickness = need("the thickness", plate.id, plate.thickness)?;
        let points = need("the side of the flange", plate.id, flange.points.as_ref())?;
        let h = file_size(sum, ("h", "height of the flange"), height, Bad::Small)?;
        let t = file_size(sum, ("t", "plate at its thickest"), thickness, Bad::Large)?;
        let (h, t) = (sum.value(h), sum.value(t));
        let remedy = format!("a flange of more than {} mm over all", at_least(t));
        if h <= t {
            let says = "the plate has no flange: its braze is loaded in peel".to_owned();
            return Ok(Outcome::plain(Answer::Fails, says, remedy));
        }
        let opens = round(boiler, flange)?.inside && *points == Points::AwayFromWater;
        let remark = opens.then(|| {
            "the flange points away from the water, so that pressure works at the root of the lap: \
             look for filler all round the root, and ask the boiler tester"
                .to_owned()
        });
        let says = format!("the flange stands {:.2} mm over the plate", h - t);
        Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(remark))
    })
}
