//! Flat ends, whole or with a flue through their middle; the foundation ring is one of these, with
//! the firebox for its flue.

use proof::{Boiler, Dimension, End, Flue, Frame, Points, Shell};
use reckoning::size::Bad;
use solid::{FlatEnd, Kind, Rim, Tube};

use super::read::{Line, Place, Read};
use super::sizes::Taken;
use super::{Case, NoOpinion, Shape};

/// The foundation ring between barrel and firebox.
pub(super) fn ring(
    boiler: &Boiler,
    frame: &Frame,
    pressure_mpa: Option<f64>,
) -> Result<Case, NoOpinion> {
    let id = &frame.ring.id;
    let (Some(shell), Some(firebox)) = (
        boiler.shells.iter().find(|s| s.id == frame.shell),
        boiler.flues.iter().find(|f| f.id == frame.firebox),
    ) else {
        return Err(wants(id, "the shell and the firebox that it joins"));
    };
    let mut taken = Taken::default();
    if boiler.plates.iter().all(|p| p.nest.count.is_none()) {
        // Without them the crown hangs on the ring, with a load that is not known here.
        taken.lack("the tubes that tie the crown to the upper plate");
    }
    let depth = frame.ring.depth.as_ref();
    let plate_mm = taken.size(format!("depth of {id}"), depth, Bad::Small);
    let long = firebox.length.as_ref().map(|known| known.value.mm());
    let long = taken.number(format!("length of {} over the ring", firebox.id), long);
    let end = FlatEnd {
        shell: taken.shell(shell),
        plate_mm,
        plate: taken.metal(id, frame.ring.metal),
        rim: Rim::Square,
        flue: Some(taken.flue(firebox)),
        length_mm: plate_mm + long,
        pressure_mpa: taken.pressure(pressure_mpa),
    };
    Ok(Case {
        what: "the ring between barrel and firebox".to_owned(),
        taken: taken.whole(id)?,
        formula: "ring-bending",
        reads: reads(&end, ["the ring", "the barrel", "the firebox"]),
        shape: Shape::Flat(end),
        stands_for: RING_STANDS_FOR.map(str::to_owned).to_vec(),
        leaves_out: RING_LEAVES_OUT.map(str::to_owned).to_vec(),
    })
}

const RING_STANDS_FOR: [&str; 2] = [
    "the ring with both walls over it as one piece of metal, pressure on all that the water touches",
    "barrel and firebox held along the axis at the height of the crown, which the tubes tie to the \
     upper plate",
];
const RING_LEAVES_OUT: [&str; 3] = [
    "the firehole, bushes and stays",
    "what the firebox grows more than the barrel when steam is raised",
    SHARP,
];
const END_LEAVES_OUT: [&str; 3] = [
    "bushes and stays in the end, cross tubes in the flue",
    "what the flue grows more than the barrel when it is fired",
    SHARP,
];
const SHARP: &str = "the fillets of filler: inside corners are sharp, so that the greatest stress \
                     there grows with a finer mesh and means nothing";

fn wants(part: &str, what: &str) -> NoOpinion {
    NoOpinion::Wanted {
        part: part.to_owned(),
        lacks: vec![what.to_owned()],
    }
}

/// A flat end of a shell.
pub(super) fn end(
    boiler: &Boiler,
    end: &End,
    through: Option<(&String, Option<&Dimension>)>,
    pressure_mpa: Option<f64>,
) -> Result<Case, NoOpinion> {
    let Some(shell) = boiler.shells.iter().find(|s| s.id == end.closes) else {
        return Err(wants(&end.id, "the shell that it closes"));
    };
    let called = through.map(|(id, _)| boiler.flues.iter().find(|f| f.id == *id));
    if let Some(None) = called {
        return Err(wants(&end.id, "the flue that passes through it"));
    }
    let flue = called.flatten();
    let mut taken = Taken::default();
    let aside = through.map(|(_, off)| taken.size("flue off the axis".to_owned(), off, Bad::Large));
    let aside = aside.filter(|mm| *mm > 0.0);
    let flat = flat(&mut taken, (end, shell, flue), aside, pressure_mpa);
    let what = match flue {
        Some(_) => "the flat end of the barrel round its flue",
        None => "the flat end of the barrel",
    };
    Ok(Case {
        what: what.to_owned(),
        taken: taken.whole(&end.id)?,
        formula: "end",
        reads: reads(&flat, ["the plate", "the barrel", "the flue"]),
        shape: Shape::Flat(flat),
        stands_for: stands_for(aside),
        leaves_out: END_LEAVES_OUT.map(str::to_owned).to_vec(),
    })
}

/// The sizes of a flat end.
fn flat(
    taken: &mut Taken,
    (end, shell, flue): (&End, &Shell, Option<&Flue>),
    aside: Option<f64>,
    pressure_mpa: Option<f64>,
) -> FlatEnd {
    let thickness = format!("thickness of {}", end.id);
    let plate_mm = taken.size(thickness, end.thickness.as_ref(), Bad::Small);
    let mut tube = taken.shell(shell);
    if let Some(aside) = aside {
        // Round the flue's axis out to the farthest wall.
        tube.inside_radius_mm += aside;
    }
    let flue_tube = flue.map(|flue| taken.flue(flue));
    // Half the way to the other end; with no flue to tell it, a length beyond which nothing of
    // the end is felt.
    let half = match flue {
        Some(flue) => {
            let between = flue.length.as_ref().map(|known| 0.5 * known.value.mm());
            taken.number("half the length between the ends".to_owned(), between)
        }
        None => FELT * ((tube.inside_radius_mm + 0.5 * tube.wall_mm) * tube.wall_mm).sqrt(),
    };
    FlatEnd {
        shell: tube,
        plate_mm,
        plate: taken.metal(&end.id, end.metal),
        rim: rim(taken, end),
        flue: flue_tube,
        length_mm: plate_mm + half,
        pressure_mpa: taken.pressure(pressure_mpa),
    }
}

fn stands_for(aside: Option<f64>) -> Vec<String> {
    let mut says = vec![
        "the end, its shell and what passes through its middle as one piece of metal, pressure on \
         all that the water touches"
            .to_owned(),
        "a boiler whose two ends are alike: the plane half-way between them does not move"
            .to_owned(),
    ];
    if let Some(aside) = aside {
        says.push(format!(
            "the widest strip of the plate all round: the flue stands {aside:.1} mm off the axis, \
             which no body of revolution does, and the shell is taken wider by as much. The plate \
             is narrower on the other side, and the shell less stressed than here"
        ));
    }
    says
}

/// Lengths √(R t) over which an end is felt along its shell, with room.
const FELT: f64 = 8.0;

fn rim(taken: &mut Taken, end: &End) -> Rim {
    let Some(flange) = &end.flange else {
        return Rim::Square;
    };
    let id = &end.id;
    let height_mm = taken.size(
        format!("height of the flange of {id}"),
        flange.height.as_ref(),
        Bad::Small,
    );
    let inside_radius_mm = taken.size(
        format!("radius inside the flange of {id}"),
        flange.inside_radius.as_ref(),
        Bad::Small,
    );
    let points = match flange.points {
        Some(Points::AwayFromWater) => solid::Points::AwayFromWater,
        Some(Points::TowardsWater) => solid::Points::TowardsWater,
        None => {
            taken.number(format!("side to which the flange of {id} points"), None);
            solid::Points::TowardsWater
        }
    };
    Rim::Flanged {
        inside_radius_mm,
        height_mm,
        points,
    }
}

/// What is read of a flat end. Lines across the plate run from the dry face to the wet one.
fn reads(end: &FlatEnd, [plate, shell, flue]: [&str; 3]) -> Vec<Read> {
    let edge = end.flat_to_mm();
    let mut reads = match end.flue {
        None => vec![Read::new(
            "pull across the axis at the middle of the dry face",
            on_the_dry_face(0.0),
        )],
        Some(tube) => beside_the_flue(end, tube, [plate, flue]).to_vec(),
    };
    let (middle, place) = match end.flue {
        Some(tube) => (0.5 * (tube.outside_radius_mm() + edge), "half-way between"),
        None => (0.0, "at its middle"),
    };
    reads.extend([
        Read::new(
            format!("bending of {plate} at its edge beside {shell}"),
            Place::Bending(through(end, edge)),
        ),
        Read::new(
            format!("even pull of {plate} at its edge beside {shell}"),
            Place::Even(through(end, edge)),
        ),
        Read::new(
            format!("how far {plate} gives way {place}"),
            Place::Moves([middle, 0.0]),
        ),
    ]);
    reads
}

fn beside_the_flue(end: &FlatEnd, tube: Tube, [plate, flue]: [&str; 2]) -> [Read; 3] {
    let (outside, top) = (tube.outside_radius_mm(), end.length_mm);
    [
        Read::new(
            format!("bending of {plate} beside {flue}"),
            Place::Bending(through(end, outside)),
        ),
        Read::new(
            "pull across the axis on the dry face, half-way between",
            on_the_dry_face(0.5 * (outside + end.flat_to_mm())),
        ),
        Read::new(
            format!("pull that {flue} carries along the axis"),
            Place::Pull([[tube.inside_radius_mm, top], [outside, top]]),
        ),
    ]
}

/// A line through the plate at a distance from the axis.
fn through(end: &FlatEnd, r: f64) -> Line {
    Line {
        metal: PLATE,
        kind: Kind::Radial,
        from: [r, 0.0],
        to: [r, end.plate_mm],
    }
}

fn on_the_dry_face(r: f64) -> Place {
    Place::At {
        metal: PLATE,
        at: [r, 0.0],
        kind: Kind::Radial,
    }
}

/// Number of the metal of the plate.
const PLATE: usize = FlatEnd::METALS[1];
