//! Dished ends with pressure on their hollow side.

use proof::{Boiler, Curve, Dish, End, Pressed, Shell};
use reckoning::size::Bad;
use solid::{DishedEnd, Kind};

use super::read::{Line, Place, Read};
use super::sizes::Taken;
use super::{Case, NoOpinion, Shape};

/// Length of cylinder under the dish, in parts of √(R t): beyond, nothing of the dish is felt.
const FELT: f64 = 8.0;

pub(super) fn case(
    boiler: &Boiler,
    end: &End,
    dish: &Dish,
    pressure_mpa: Option<f64>,
) -> Result<Case, NoOpinion> {
    let refused = |why: &str| NoOpinion::NotRound {
        part: end.id.clone(),
        why: why.to_owned(),
    };
    if dish.pressed == Pressed::Round {
        return Err(refused(
            "pressure on its round side may buckle it out of round, which a linear sum cannot tell",
        ));
    }
    let shell = boiler.shells.iter().find(|s| s.id == end.closes);
    let Some(shell) = shell else {
        return Err(NoOpinion::Wanted {
            part: end.id.clone(),
            lacks: vec!["the shell that it closes".to_owned()],
        });
    };
    if dish.curve == Curve::Ellipsoid {
        return Err(refused(
            "only crowns and knuckles of one radius are laid out",
        ));
    }
    let mut taken = Taken::default();
    let dished = sizes(&mut taken, (end, dish, shell), pressure_mpa);
    Ok(Case {
        what: "the dished end of the barrel".to_owned(),
        taken: taken.whole(&end.id)?,
        formula: "dish",
        reads: reads(&dished),
        shape: Shape::Dished(dished),
        stands_for: vec![
            "dish and shell as one piece of metal with a common inside, pressure on the hollow side"
                .to_owned(),
        ],
        leaves_out: vec![
            "openings in the dish, and the lap of its joint with the shell".to_owned(),
            "what forming has thinned beyond the thickness named".to_owned(),
        ],
    })
}

/// The sizes of a dish: that of a half sphere is the shell's own.
fn sizes(
    taken: &mut Taken,
    (end, dish, shell): (&End, &Dish, &Shell),
    pressure_mpa: Option<f64>,
) -> DishedEnd {
    let thickness = format!("thickness of {}", end.id);
    let thickness_mm = taken.size(thickness, end.thickness.as_ref(), Bad::Small);
    let tube = taken.shell(shell);
    let inside = tube.inside_radius_mm;
    let (crown_mm, knuckle_mm) = if dish.curve == Curve::Hemisphere {
        (inside, inside)
    } else {
        let crown = format!("radius of the crown of {}", end.id);
        let knuckle = format!("radius of the knuckle of {}", end.id);
        (
            taken.size(crown, dish.crown.as_ref(), Bad::Large),
            taken.size(knuckle, dish.knuckle.as_ref(), Bad::Small),
        )
    };
    DishedEnd {
        shell: tube,
        crown_mm,
        knuckle_mm,
        thickness_mm,
        metal: taken.metal(&end.id, end.metal),
        length_mm: FELT * ((inside + 0.5 * tube.wall_mm) * tube.wall_mm).sqrt(),
        pressure_mpa: taken.pressure(pressure_mpa),
    }
}

fn reads(dish: &DishedEnd) -> Vec<Read> {
    let apex = dish.apex_mm();
    let inside = dish.shell.inside_radius_mm;
    let crown = Line {
        metal: 1,
        kind: Kind::Radial,
        from: [0.0, apex],
        to: [0.0, apex + dish.thickness_mm],
    };
    let seam = |kind| Line {
        metal: 1,
        kind,
        from: [inside, 0.0],
        to: [inside + dish.thickness_mm, 0.0],
    };
    vec![
        Read::new("even pull of the crown at the axis", Place::Even(crown)),
        Read::new(
            "bending of the dish along the axis where it leaves the shell",
            Place::Bending(seam(Kind::Axial)),
        ),
        Read::new(
            "even hoop stress of the dish where it leaves the shell",
            Place::Even(seam(Kind::Hoop)),
        ),
        Read::new("how far the crown gives way", Place::Moves([0.0, apex])),
    ]
}
