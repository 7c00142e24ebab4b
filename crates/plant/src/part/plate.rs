//! A plate: a disc, a ring or a rectangle, flat or flanged, with its holes.

use std::f64::consts::PI;

use reckoning::quantity::{Area, Length, Volume};

/// Outline of a plate, over the flange where there is one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outline {
    /// A disc.
    Disc {
        /// Overall diameter.
        diameter: Length,
    },
    /// A ring.
    Ring {
        /// Outside diameter.
        outside: Length,
        /// Inside diameter.
        inside: Length,
    },
    /// A rectangle, centred on the origin.
    Rectangle {
        /// Along x.
        length: Length,
        /// Along y.
        width: Length,
    },
}

/// Which way a flange stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stands {
    /// Towards growing `z`.
    Up,
    /// Towards falling `z`.
    Down,
}

/// A flange round the outer edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flange {
    /// Which way it stands.
    pub stands: Stands,
    /// Radius inside the bend.
    pub inside_radius: Length,
    /// Height over all, the thickness of the plate included.
    pub height: Length,
}

/// A round hole through a plate.
#[derive(Clone, Debug, PartialEq)]
pub struct Hole {
    /// Id within the plate.
    pub id: String,
    /// From the centre.
    pub x: Length,
    /// From the centre.
    pub y: Length,
    /// Diameter.
    pub diameter: Length,
}

/// A plate.
#[derive(Clone, Debug, PartialEq)]
pub struct Plate {
    /// Outline.
    pub outline: Outline,
    /// Thickness.
    pub thickness: Length,
    /// Flange, on a disc.
    pub flange: Option<Flange>,
    /// Holes.
    pub holes: Vec<Hole>,
}

/// The metal between two holes.
#[derive(Clone, Debug, PartialEq)]
pub struct Ligament {
    /// Id of one.
    pub first: String,
    /// Id of the other.
    pub second: String,
    /// Edge to edge; negative where they run into each other.
    pub width: Length,
}

impl Plate {
    /// Volume of metal: closed forms. Holes are taken as lying in the flat part and apart from
    /// each other; [`Plate::ligaments`] and [`Plate::edge_of`] tell whether they do.
    #[must_use]
    pub fn volume(&self) -> Volume {
        let holes: f64 = self.holes.iter().map(|h| disc(h.diameter.mm())).sum();
        let t = self.thickness.mm();
        Volume::from_mm3(self.blank_volume() - holes * t)
    }

    fn blank_volume(&self) -> f64 {
        let t = self.thickness.mm();
        match (self.outline, self.flange) {
            (Outline::Disc { diameter }, None) => disc(diameter.mm()) * t,
            (Outline::Disc { diameter }, Some(flange)) => flanged(diameter.mm(), t, &flange),
            (Outline::Ring { outside, inside }, _) => (disc(outside.mm()) - disc(inside.mm())) * t,
            (Outline::Rectangle { length, width }, _) => length.mm() * width.mm() * t,
        }
    }

    /// Diameter of the flat part: to the start of the bend, or the whole disc.
    #[must_use]
    pub fn flat_diameter(&self) -> Option<Length> {
        match (self.outline, self.flange) {
            (Outline::Disc { diameter }, Some(flange)) => {
                Some(diameter - (flange.inside_radius + self.thickness) * 2.0)
            }
            (Outline::Disc { diameter }, None) => Some(diameter),
            (Outline::Ring { outside, .. }, _) => Some(outside),
            (Outline::Rectangle { .. }, _) => None,
        }
    }

    /// Area of one face, holes taken out: the flat part of a flanged plate, else the whole.
    #[must_use]
    pub fn face_area(&self) -> Area {
        let holes: f64 = self.holes.iter().map(|h| disc(h.diameter.mm())).sum();
        let whole = match (self.outline, self.flat_diameter()) {
            (Outline::Rectangle { length, width }, _) => length.mm() * width.mm(),
            (Outline::Ring { outside, inside }, _) => disc(outside.mm()) - disc(inside.mm()),
            (Outline::Disc { diameter }, flat) => disc(flat.unwrap_or(diameter).mm()),
        };
        Area::from_mm2(whole - holes)
    }

    /// Metal between every pair of holes, narrowest first.
    #[must_use]
    pub fn ligaments(&self) -> Vec<Ligament> {
        let mut found = Vec::new();
        for (i, a) in self.holes.iter().enumerate() {
            for b in &self.holes[i + 1..] {
                let apart = (a.x - b.x).mm().hypot((a.y - b.y).mm());
                let width = Length::from_mm(apart) - (a.diameter + b.diameter) / 2.0;
                found.push(Ligament {
                    first: a.id.clone(),
                    second: b.id.clone(),
                    width,
                });
            }
        }
        found.sort_by(|a, b| a.width.mm().total_cmp(&b.width.mm()));
        found
    }

    /// Metal between a hole and the edge of the flat part, the inner edge of a ring included.
    #[must_use]
    pub fn edge_of(&self, hole: &Hole) -> Length {
        let from_centre = hole.x.mm().hypot(hole.y.mm());
        let r = hole.diameter.mm() / 2.0;
        let least = match (self.outline, self.flat_diameter()) {
            (Outline::Rectangle { length, width }, _) => {
                let along = length.mm() / 2.0 - hole.x.mm().abs();
                along.min(width.mm() / 2.0 - hole.y.mm().abs()) - r
            }
            (Outline::Ring { outside, inside }, _) => {
                let outer = outside.mm() / 2.0 - from_centre;
                outer.min(from_centre - inside.mm() / 2.0) - r
            }
            (Outline::Disc { diameter }, flat) => {
                flat.unwrap_or(diameter).mm() / 2.0 - from_centre - r
            }
        };
        Length::from_mm(least)
    }
}

/// Area of a disc of diameter `d`, mm².
fn disc(d: f64) -> f64 {
    PI * d * d / 4.0
}

/// Volume of a flanged disc: flat part, quarter ring of the bend by the theorem of the travelled
/// centroid, and lip; mm³.
fn flanged(diameter: f64, t: f64, flange: &Flange) -> f64 {
    let (inner, outer) = (flange.inside_radius.mm(), flange.inside_radius.mm() + t);
    let flat = diameter - 2.0 * outer;
    // Quarter ring: area, and area times the distance of its centroid from the centre of the bend.
    let area = PI / 4.0 * (outer * outer - inner * inner);
    let moment = (outer.powi(3) - inner.powi(3)) / 3.0;
    let bend = 2.0 * PI * (flat / 2.0 * area + moment);
    let lip = flange.height.mm() - outer;
    disc(flat) * t + bend + (disc(diameter) - disc(diameter - 2.0 * t)) * lip
}
