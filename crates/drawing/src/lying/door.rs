//! The door from a resolved plan to its sections: places and the maker's own words, nothing worked
//! out.
//!
//! Left out: stays and bushes in the ends, which are shown by their holes in the view of the end;
//! tank, jet, air holes and ports of the burner; lagging; the metal of the chimney.

use plan::Plan;
use plan::section::BurnerPlace;
use plant::part::{Shape, Shell, ShellHole};
use plant::{LyingVessel, Plant, Resolved, StandingPlate};
use reckoning::quantity::Length;

use super::sizes::{Bush, Chimney, CrossTube, CrossTubes, LyingBoiler, Over, Pipe, Poker};
use super::typed::typed;
use crate::boiler::{Hand, NotDrawn, TubePlate, in_words, name, side};

/// Tables of the plan that must be filled for a section.
const NEEDED: [&str; 4] = ["form", "boiler.barrel.", "boiler.flue.", "boiler.end."];

/// What the sections show of a resolved plan. A vessel that cannot be built is drawn as its sizes
/// are.
///
/// # Errors
/// When a size of the vessel is missing.
pub fn of_plant(plan: &Plan, resolved: &Resolved) -> Result<LyingBoiler, NotDrawn> {
    lying(plan, &resolved.plant).ok_or_else(|| NotDrawn {
        wanted: resolved
            .gaps
            .iter()
            .map(|gap| gap.field.clone())
            .filter(|field| NEEDED.iter().any(|table| field.starts_with(table)))
            .collect(),
    })
}

fn lying(plan: &Plan, plant: &Plant) -> Option<LyingBoiler> {
    let vessel = plant.lying.as_ref()?;
    let shell = shell(plant, "barrel")?;
    let barrel = Pipe {
        outside: shell.outside(),
        wall: shell.wall,
        from: Length::from_mm(0.0),
        to: shell.length,
        axis: vessel.axis,
    };
    let flue = Pipe {
        outside: vessel.flue.outside,
        wall: (vessel.flue.outside - vessel.flue.bore) / 2.0,
        from: vessel.flue.mouth,
        to: vessel.flue.mouth + vessel.flue.length,
        axis: vessel.axis - vessel.flue.below,
    };
    let smokebox = smokebox(plant, &barrel);
    let typed = typed(plan);
    Some(LyingBoiler {
        name: name(plan),
        tubes: tubes(vessel),
        bushes: bushes(plan, plant, shell),
        chimney: smokebox.and_then(|smokebox| chimney(plan, &smokebox)),
        poker: poker(plan),
        front: plate(&vessel.front),
        back: plate(&vessel.back),
        water_level: plan.boiler.water_level.working.value(),
        lowest: plan.boiler.water_level.lowest.value(),
        notes: in_words(&typed).into_iter().collect(),
        barrel,
        flue,
        smokebox,
        typed,
    })
}

fn shell<'a>(plant: &'a Plant, id: &str) -> Option<&'a Shell> {
    match &plant.part(id)?.shape {
        Shape::Shell(shell) => Some(shell),
        _ => None,
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

fn tubes(vessel: &LyingVessel) -> Option<CrossTubes> {
    let crossing = vessel.cross_tubes.as_ref()?;
    let tubes = crossing.tubes.iter().zip(1..).map(|(tube, i)| CrossTube {
        id: format!("cross-tube.{i}"),
        along: tube.along,
        angle: tube.angle,
    });
    let tubes: Vec<CrossTube> = tubes.collect();
    (!tubes.is_empty()).then(|| CrossTubes {
        tubes,
        outside: crossing.outside,
        wall: (crossing.outside - crossing.bore) / 2.0,
        length: crossing.length,
    })
}

/// Bushes in the barrel. In the section along the axis one on top or below stays there; one between
/// goes to the nearer side, or to the other where that alone has room.
fn bushes(plan: &Plan, plant: &Plant, barrel: &Shell) -> Vec<Bush> {
    let mut taken: Vec<(Hand, &ShellHole)> = Vec::new();
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
            along: hole.z,
            angle: hole.azimuth,
            // Towards where angles begin is the right of an upright boiler and the top of this.
            over: match hand {
                Hand::Right => Over::Top,
                Hand::Left => Over::Bottom,
            },
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

/// The smokebox behind the barrel, on its axis.
fn smokebox(plant: &Plant, barrel: &Pipe) -> Option<Pipe> {
    let shell = shell(plant, "smokebox")?;
    Some(Pipe {
        outside: shell.outside(),
        wall: shell.wall,
        from: barrel.to,
        to: barrel.to + shell.length,
        axis: barrel.axis,
    })
}

/// The chimney on the middle of the smokebox, its choke in the roof.
fn chimney(plan: &Plan, smokebox: &Pipe) -> Option<Chimney> {
    let c = &plan.chimney;
    let bottom = smokebox.axis + smokebox.outside / 2.0;
    let choke = c.choke.likely()?.value;
    let top = bottom + c.height.likely()?.value;
    Some(Chimney {
        along: (smokebox.from + smokebox.to) / 2.0,
        choke,
        mouth: c.top.likely().map_or(choke, |m| m.value),
        bottom,
        taper: c.parallel.likely().map_or(top, |p| bottom + p.value),
        top,
    })
}

fn poker(plan: &Plan) -> Option<Poker> {
    let burner = &plan.burner;
    let in_flue = burner.place.value() == Some(BurnerPlace::Flue);
    in_flue.then_some(())?;
    Some(Poker {
        outside: burner.poker.outside.likely()?.value,
        length: burner.poker.length.likely()?.value,
    })
}
