//! Tube, straight or coiled, and shells rolled from sheet or cut from tube, with radial holes.

use std::f64::consts::PI;

use reckoning::quantity::{Angle, Area, Length, Volume};

use super::cross::{Body, Metal};
use super::feature::{CrossDepth, CrossHole};
use super::plate::Ligament;
use super::profile::{Piece, Profile};

/// How a tube runs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Run {
    /// Straight.
    Straight {
        /// Length.
        length: Length,
    },
    /// Wound into turns.
    Wound {
        /// Diameter of the turns, on the centre line of the tube.
        mean_diameter: Length,
        /// Length along the centre line.
        length: Length,
    },
}

/// A tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tube {
    /// Outside diameter.
    pub outside: Length,
    /// Wall.
    pub wall: Length,
    /// How it runs.
    pub run: Run,
}

impl Tube {
    /// Bore.
    #[must_use]
    pub fn bore(&self) -> Length {
        self.outside - self.wall * 2.0
    }

    /// Length along the centre line.
    #[must_use]
    pub fn length(&self) -> Length {
        match self.run {
            Run::Straight { length } | Run::Wound { length, .. } => length,
        }
    }

    /// Area of metal in the section.
    #[must_use]
    pub fn metal_section(&self) -> Area {
        let t = self.wall.mm();
        Area::from_mm2(PI * (self.outside.mm() - t) * t)
    }

    /// Area of the bore.
    #[must_use]
    pub fn bore_section(&self) -> Area {
        Area::from_mm2(PI / 4.0 * self.bore().mm() * self.bore().mm())
    }

    /// Volume of metal; exact for a bend too, where the wall keeps its section.
    #[must_use]
    pub fn volume(&self) -> Volume {
        self.metal_section() * self.length()
    }
}

/// How a shell is closed along its length.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Seam {
    /// Drawn tube: no seam.
    Drawn,
    /// A brazed lap or butt with a strap.
    Brazed,
    /// The plan does not say.
    Unsaid,
}

/// A radial hole in a shell.
#[derive(Clone, Debug, PartialEq)]
pub struct ShellHole {
    /// Id within the shell.
    pub id: String,
    /// Height of its centre.
    pub z: Length,
    /// Azimuth.
    pub azimuth: Angle,
    /// Diameter.
    pub diameter: Length,
}

/// A cylinder of sheet or tube from `z` = 0 to its length.
#[derive(Clone, Debug, PartialEq)]
pub struct Shell {
    /// Bore.
    pub bore: Length,
    /// Wall.
    pub wall: Length,
    /// Length.
    pub length: Length,
    /// How it is closed.
    pub seam: Seam,
    /// Radial holes.
    pub holes: Vec<ShellHole>,
}

impl Shell {
    /// Outside diameter.
    #[must_use]
    pub fn outside(&self) -> Length {
        self.bore + self.wall * 2.0
    }

    /// Volume of metal: the cylinder less its holes (see [`super::cross::RELATIVE_ERROR`]). What a
    /// lap or a strap adds is left out.
    #[must_use]
    pub fn volume(&self) -> Volume {
        let t = self.wall.mm();
        let ring = PI * (self.bore.mm() + t) * t * self.length.mm();
        Volume::from_mm3(ring) - self.holes_volume()
    }

    /// Volume that the holes take out of the wall.
    #[must_use]
    pub fn holes_volume(&self) -> Volume {
        let cylinder = |diameter: Length| {
            Profile::of(Piece {
                z0: 0.0,
                z1: self.length.mm(),
                r0: diameter.mm() / 2.0,
                r1: diameter.mm() / 2.0,
                owner: None,
            })
        };
        let metal = Metal {
            outer: &cylinder(self.outside()),
            inner: &cylinder(self.bore),
            flats: &[],
        };
        let holes: Vec<Body> = self.holes.iter().map(|h| Body::of(&h.cross())).collect();
        Volume::from_mm3(metal.removed(&holes))
    }

    /// Metal between every pair of holes, narrowest first, along the inside of the wall laid flat.
    #[must_use]
    pub fn ligaments(&self) -> Vec<Ligament> {
        let mut found = Vec::new();
        for (i, a) in self.holes.iter().enumerate() {
            for b in &self.holes[i + 1..] {
                let turn = (a.azimuth - b.azimuth).rad().rem_euclid(2.0 * PI);
                let round = turn.min(2.0 * PI - turn) * self.bore.mm() / 2.0;
                let apart = (a.z - b.z).mm().hypot(round);
                found.push(Ligament {
                    first: a.id.clone(),
                    second: b.id.clone(),
                    width: Length::from_mm(apart) - (a.diameter + b.diameter) / 2.0,
                });
            }
        }
        found.sort_by(|a, b| a.width.mm().total_cmp(&b.width.mm()));
        found
    }

    /// Length of the strip from which it is rolled, round the middle of the wall, without lap.
    #[must_use]
    pub fn developed(&self) -> Length {
        (self.bore + self.wall) * PI
    }
}

impl ShellHole {
    /// The same hole as a cross hole through the wall of entry.
    #[must_use]
    pub fn cross(&self) -> CrossHole {
        CrossHole {
            z: self.z,
            azimuth: self.azimuth,
            offset: Length::from_mm(0.0),
            diameter: self.diameter,
            depth: CrossDepth::NearWall,
        }
    }
}
