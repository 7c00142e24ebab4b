//! A bush in a barrel, as a bush in a flat plate that is pulled evenly by the barrel's hoop stress.

use proof::{Opening, Shell};
use reckoning::size::Bad;
use solid::{BushInPlate, Kind};

use super::read::{Line, Place, Read};
use super::sizes::Taken;
use super::{Case, NoOpinion, Shape};

/// Radius of the plate that is looked at, in parts of that of the hole: farther out the hole is
/// not felt by a fiftieth.
const SEEN: f64 = 8.0;

pub(super) fn case(
    shell: &Shell,
    opening: &Opening,
    pressure_mpa: Option<f64>,
) -> Result<Case, NoOpinion> {
    let id = &opening.id;
    let Some(bush) = &opening.bush else {
        return Err(NoOpinion::Unknown {
            asked: id.clone(),
            has: Vec::new(),
        });
    };
    let mut taken = Taken::default();
    let tube = taken.shell(shell);
    let hole = 0.5 * taken.size(format!("hole of {id}"), opening.hole.as_ref(), Bad::Large);
    let bore = 0.5 * taken.size(format!("bore of {id}"), bush.bore.as_ref(), Bad::Large);
    let out = format!("reach of {id} outwards");
    let above_mm = taken.size(out, bush.stands_out.as_ref(), Bad::Small);
    let inwards = format!("reach of {id} inwards");
    let below_mm = taken.size(inwards, bush.stands_in.as_ref(), Bad::Small);
    let pull_mpa = taken.pressure(pressure_mpa) * tube.inside_radius_mm / tube.wall_mm;
    let shape = BushInPlate {
        plate_mm: tube.wall_mm,
        plate: tube.metal,
        rim_radius_mm: SEEN * hole,
        hole_radius_mm: hole,
        bore_radius_mm: bore,
        below_mm,
        above_mm,
        bush: taken.metal(id, bush.metal),
        pull_mpa,
    };
    Ok(Case {
        what: format!("the bush in the wall of {}", shell.id),
        taken: taken.whole(id)?,
        formula: "opening-area",
        reads: reads(&shape),
        shape: Shape::Bush(shape),
        stands_for: stands_for(pull_mpa),
        leaves_out: LEAVES_OUT.map(str::to_owned).to_vec(),
    })
}

fn stands_for(pull_mpa: f64) -> Vec<String> {
    vec![
        format!(
            "the metal of bush and wall together round the hole, in a flat plate of the wall's \
             thickness that is pulled by {pull_mpa:.2} MPa in every direction, the mean hoop \
             stress of the shell"
        ),
        "the bore over the thread, as if the thread were turned away".to_owned(),
    ]
}

const LEAVES_OUT: [&str; 3] = [
    "the curve of the shell, and that it is pulled half as hard along its axis: a bare round hole \
     has 2.5 times the hoop stress at its edge in a shell and 2 times in this plate",
    "the pressure on the faces, what is screwed into the bush, and its flange",
    "the fillets of filler: inside corners are sharp, so that the greatest stress there grows \
     with a finer mesh and means nothing",
];

fn reads(bush: &BushInPlate) -> Vec<Read> {
    let (hole, bore, t) = (bush.hole_radius_mm, bush.bore_radius_mm, bush.plate_mm);
    let across = |metal, r, kind| {
        Place::Even(Line {
            metal,
            kind,
            from: [r, 0.0],
            to: [r, t],
        })
    };
    vec![
        Read::new(
            "hoop stress of the wall beside the bush, its mean through the wall",
            across(0, hole, Kind::Hoop),
        ),
        Read::new(
            "hoop stress at the bore of the bush, its mean over the thickness of the wall",
            across(1, bore, Kind::Hoop),
        ),
        Read::new(
            "pull on the joint of bush and wall, its mean through the wall",
            across(0, hole, Kind::Radial),
        ),
    ]
}
