//! What an end closes, and tubes that are worked as shells.

use crate::input::{Boiler, CrossTubes, Diameter, End, Joint, Pipe, Seam, Shell};
use crate::sum::{Stop, Sum};
use crate::taken::{Wall, file_sides, need};
use reckoning::Ref;

/// Lines of what an end closes.
pub(super) struct Closed {
    /// Bore.
    pub(super) bore: Ref,
    /// Outside diameter.
    pub(super) outside: Ref,
    /// The diameter over which pressure bends a flat end: the bore of a shell, the outside of a
    /// flue.
    pub(super) span: Ref,
}

/// Files the diameters of the shell or flue that an end closes.
pub(super) fn file_closed(sum: &mut Sum, boiler: &Boiler, end: &End) -> Result<Closed, Stop> {
    let shell = boiler.shells.iter().find(|s| s.id == end.closes);
    let flue = boiler.flues.iter().find(|f| f.id == end.closes);
    let (diameter, wall) = match (shell, flue) {
        (Some(shell), _) => (&shell.diameter, &shell.wall),
        (None, Some(flue)) => (&flue.diameter, &flue.wall),
        (None, None) => {
            return Err(Stop::Missing {
                what: "the sizes",
                part: end.closes.clone(),
            });
        }
    };
    let wall = Wall::of(need("the wall", &end.closes, wall.as_ref())?);
    let diameter = need("the diameter", &end.closes, diameter.as_ref())?;
    let t = wall.file(sum, "t_s", "least wall of what it closes")?;
    let sides = file_sides(sum, diameter, t)?;
    wall.hold_as_used(sum, "wall", &end.closes);
    Ok(Closed {
        bore: sides.bore,
        outside: sides.outside,
        span: if shell.is_some() {
            sides.bore
        } else {
            sides.outside
        },
    })
}

/// A pipe as a seamless shell.
pub(super) fn pipe(pipe: &Pipe) -> Shell {
    Shell {
        id: pipe.id.clone(),
        metal: pipe.metal,
        diameter: pipe.outside.clone().map(Diameter::Outside),
        wall: pipe.wall.clone(),
        seam: Seam::Seamless,
        // Its ends are judged by another; the worse counts here, and asks no more than the hoop.
        ends: Joint::Blind,
        metal_temperature: pipe.metal_temperature.clone(),
        openings: Vec::new(),
        laps: Vec::new(),
    }
}

/// Cross tubes, which hold water, as a seamless shell.
pub(super) fn cross_tubes(tubes: &CrossTubes) -> Shell {
    Shell {
        id: tubes.id.clone(),
        metal: tubes.metal,
        diameter: tubes.outside.clone().map(Diameter::Outside),
        wall: tubes.wall.clone(),
        seam: Seam::Seamless,
        ends: tubes.joint,
        metal_temperature: tubes.metal_temperature.clone(),
        openings: Vec::new(),
        laps: Vec::new(),
    }
}

/// Every pipe and every kind of cross tubes as a seamless shell.
pub(super) fn tubes_as_shells(boiler: &Boiler) -> Vec<Shell> {
    let pipes = boiler.pipes.iter().map(pipe);
    pipes
        .chain(boiler.cross_tubes.iter().map(cross_tubes))
        .collect()
}
