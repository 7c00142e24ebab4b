//! The door from a resolved plan to its section: places and the maker's own words, nothing worked
//! out.
//!
//! Left out, because the plan does not say where they stand or what they are made of: drying coil,
//! blower jets, ash pan, lagging, and the metal of nozzle and chimney. Stays, and bushes in a tube
//! plate, are shown by their holes in the plan of the plate.

use std::collections::BTreeMap;

use plan::Plan;
use plant::part::{Shape, Shell, ShellHole};
use plant::{Plant, Resolved, StandingPlate, Vessel};
use reckoning::quantity::Length;

use super::typed::typed;
use super::{
    Bush, Chimney, Cylinder, FireTube, Firehole, Grate, Hand, Nozzle, TubePlate, VerticalBoiler,
};

/// Tubes whose middles lie nearer to the same line than this stand in one row, mm.
const ONE_ROW: f64 = 1e-6;

/// Sine of the greatest angle from the plane of section at which a bush still stands in it.
const IN_PLANE: f64 = 1e-9;

/// The plan lacks sizes without which there is no section.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotDrawn {
    /// Paths of the fields that are wanted.
    pub wanted: Vec<String>,
}

/// Tables of the plan that must be filled for a section.
const NEEDED: [&str; 5] = [
    "form",
    "boiler.barrel.",
    "boiler.firebox.",
    "boiler.foundation-ring.",
    "boiler.tube-plate.",
];

/// What the section shows of a resolved plan. A vessel that cannot be built is drawn as its sizes
/// are.
///
/// # Errors
/// When a size of the vessel is missing.
pub fn of_plant(plan: &Plan, resolved: &Resolved) -> Result<VerticalBoiler, NotDrawn> {
    vertical(plan, &resolved.plant).ok_or_else(|| NotDrawn {
        wanted: resolved
            .gaps
            .iter()
            .map(|gap| gap.field.clone())
            .filter(|field| NEEDED.iter().any(|table| field.starts_with(table)))
            .collect(),
    })
}

fn vertical(plan: &Plan, plant: &Plant) -> Option<VerticalBoiler> {
    let vessel = plant.vessel?;
    let (barrel, firebox) = (shell(plant, "barrel")?, shell(plant, "firebox")?);
    let (tubes, row_beside) = tubes(plant, &vessel);
    let bushes = bushes(plan, plant, barrel, vessel.barrel_low);
    let roof = roof(plan, &vessel);
    let chimney = chimney(plan, roof);
    let typed = typed(plan);
    let notes = notes(plant, turned_in(row_beside, !bushes.is_empty()), &typed);
    let barrel = cylinder(barrel, vessel.barrel_low);
    Some(VerticalBoiler {
        name: name(plan),
        barrel,
        firebox: cylinder(firebox, Length::from_mm(0.0)),
        upper_plate: plate(&vessel.upper),
        lower_plate: plate(&vessel.lower),
        tubes,
        ring_top: vessel.ring_high,
        firehole: firehole(plan, plant),
        smokebox: smokebox(plant, &vessel, &barrel),
        nozzle: nozzle(plan, chimney),
        chimney,
        grate: grate(plan),
        water_level: plan.boiler.water_level.working.value(),
        bushes,
        typed,
        notes,
    })
}

/// Name and issue of the plant.
pub(crate) fn name(plan: &Plan) -> String {
    let name = plan.name.get().map_or("Boiler", String::as_str);
    match plan.issue.get() {
        Some(issue) => format!("{name}, issue {issue}"),
        None => name.to_owned(),
    }
}

/// What the reader must know of the picture.
fn notes(
    plant: &Plant,
    turned_in: Option<&'static str>,
    typed: &BTreeMap<String, String>,
) -> Vec<String> {
    let mut notes: Vec<String> = turned_in.map(str::to_owned).into_iter().collect();
    notes.extend(in_words(typed));
    if plant.part("smokebox").is_none() {
        notes.push("no smokebox: its outside or wall is not given".to_owned());
    }
    notes
}

/// The note on sizes that are not in millimetres.
pub(crate) fn in_words(typed: &BTreeMap<String, String>) -> Option<String> {
    let others = typed.values().any(|t| t.chars().any(char::is_alphabetic));
    others.then(|| "sizes in other units as typed".to_owned())
}

/// What stands beside the plane of section and is drawn in it.
fn turned_in(row_beside: bool, bushes: bool) -> Option<&'static str> {
    match (row_beside, bushes) {
        (false, false) => None,
        (false, true) => Some("bushes turned into it"),
        (true, false) => Some("tubes of the row nearest to it"),
        (true, true) => Some("bushes and the nearest row of tubes turned into it"),
    }
}

fn shell<'a>(plant: &'a Plant, id: &str) -> Option<&'a Shell> {
    match &plant.part(id)?.shape {
        Shape::Shell(shell) => Some(shell),
        _ => None,
    }
}

fn cylinder(shell: &Shell, bottom: Length) -> Cylinder {
    Cylinder {
        outside: shell.outside(),
        wall: shell.wall,
        bottom,
        top: bottom + shell.length,
    }
}

fn plate(plate: &StandingPlate) -> TubePlate {
    TubePlate {
        outside: plate.outside,
        thickness: plate.thickness,
        underside: plate.underside,
        flange: plate.flange,
    }
}

/// The row of tubes nearest to the plane through the firehole, and whether it stands beside it.
fn tubes(plant: &Plant, vessel: &Vessel) -> (Vec<FireTube>, bool) {
    let Some(nest) = &plant.nest else {
        return (Vec::new(), false);
    };
    let Some(length) = &nest.length else {
        return (Vec::new(), false);
    };
    let beside = |y: Length| y.mm().abs();
    let nearest = nest
        .tubes
        .iter()
        .map(|t| t.y)
        .min_by(|a, b| beside(*a).total_cmp(&beside(*b)));
    let Some(row) = nearest else {
        return (Vec::new(), false);
    };
    // Both ends reach as far beyond the dry faces.
    let faces = vessel.lower.underside + vessel.upper.underside + vessel.upper.thickness;
    let middle = faces / 2.0;
    let tubes = nest
        .tubes
        .iter()
        .zip(1..)
        .filter(|(at, _)| beside(at.y - row) < ONE_ROW)
        .map(|(at, i)| FireTube {
            id: format!("tube.{i}"),
            x: at.x,
            outside: nest.outside.value,
            wall: (nest.outside.value - nest.bore.value) / 2.0,
            bottom: middle - length.value / 2.0,
            top: middle + length.value / 2.0,
        })
        .collect();
    (tubes, beside(row) >= ONE_ROW)
}

fn firehole(plan: &Plan, plant: &Plant) -> Option<Firehole> {
    let Shape::Tube(tube) = &plant.part("firehole")?.shape else {
        return None;
    };
    Some(Firehole {
        height: plan.boiler.firehole.height.value()?,
        opening: tube.bore(),
        wall: tube.wall,
    })
}

/// Bushes in the barrel. One that stands in the plane is drawn where it stands, whatever it meets
/// there; one turned into the plane goes to the nearer side, or to the other where that alone has
/// room.
fn bushes(plan: &Plan, plant: &Plant, barrel: &Shell, low: Length) -> Vec<Bush> {
    let firehole = barrel.holes.iter().filter(|h| h.id == "firehole");
    let mut taken: Vec<(Hand, &ShellHole)> = firehole.map(|h| (Hand::Right, h)).collect();
    let rows = plan.boiler.bushes.iter();
    rows.filter_map(|row| {
        let id = format!("bush.{}", row.id.get()?);
        let hole = barrel.holes.iter().find(|h| h.id == id)?;
        let Shape::Turned(part) = &plant.part(&id)?.shape else {
            return None;
        };
        let hand = side(hole, &taken);
        taken.push((hand, hole));
        Some(Bush {
            hand,
            height: hole.z + low,
            hole: hole.diameter,
            inward: row
                .length_in
                .likely()
                .map_or(Length::from_mm(0.0), |l| l.value),
            part: part.clone(),
            id,
        })
    })
    .collect()
}

/// The side to which a bush goes among those that stand already.
pub(crate) fn side(hole: &ShellHole, taken: &[(Hand, &ShellHole)]) -> Hand {
    let (across, towards) = hole.azimuth.rad().sin_cos();
    // A quarter turn from the firehole counts as towards it.
    let nearer = if towards > -IN_PLANE {
        Hand::Right
    } else {
        Hand::Left
    };
    let meets = |hand: Hand| {
        let mut there = taken.iter().filter(|(h, _)| *h == hand);
        there
            .any(|(_, other)| (other.z - hole.z).mm().abs() < (other.diameter + hole.diameter).mm())
    };
    let turned = across.abs() > IN_PLANE;
    if turned && meets(nearer) && !meets(nearer.other()) {
        nearer.other()
    } else {
        nearer
    }
}

/// Height of the roof of the smokebox, in which the choke stands.
fn roof(plan: &Plan, vessel: &Vessel) -> Option<Length> {
    let height = plan.smokebox.height.likely()?.value;
    Some(vessel.upper.underside + vessel.upper.thickness + height)
}

/// The smokebox from the upper plate, or from the end of the barrel where it would not go into it.
fn smokebox(plant: &Plant, vessel: &Vessel, barrel: &Cylinder) -> Option<Cylinder> {
    let shell = shell(plant, "smokebox")?;
    let face = vessel.upper.underside + vessel.upper.thickness;
    let goes_in = shell.outside() <= barrel.outside - barrel.wall * 2.0;
    let bottom = if goes_in || face > barrel.top {
        face
    } else {
        barrel.top
    };
    Some(Cylinder {
        bottom,
        top: face + shell.length,
        ..cylinder(shell, face)
    })
}

fn chimney(plan: &Plan, roof: Option<Length>) -> Option<Chimney> {
    let c = &plan.chimney;
    let (bottom, choke) = (roof?, c.choke.likely()?.value);
    let top = bottom + c.height.likely()?.value;
    Some(Chimney {
        choke,
        mouth: c.top.likely().map_or(choke, |m| m.value),
        bottom,
        taper: c.parallel.likely().map_or(top, |p| bottom + p.value),
        top,
    })
}

fn nozzle(plan: &Plan, chimney: Option<Chimney>) -> Option<Nozzle> {
    Some(Nozzle {
        bore: plan.blast.nozzle.likely()?.value,
        tip: chimney?.bottom - plan.blast.below_choke.likely()?.value,
    })
}

fn grate(plan: &Plan) -> Option<Grate> {
    Some(Grate {
        top: plan.grate.height.value()?,
        thickness: None,
        diameter: plan.grate.diameter.likely()?.value,
    })
}
