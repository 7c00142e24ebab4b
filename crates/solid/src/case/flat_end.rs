//! A shell with a flat end plate, whole or with a flue through its middle.
//!
//! The plate lies across the axis, its dry face at `z` = 0 and its water face at its thickness;
//! the water is above. Shell and flue run up to a plane of symmetry, where they cannot move along
//! the axis: the middle of a boiler whose ends are alike, or a length beyond which nothing
//! changes. Pressure acts on everything that the water touches.

use super::rim::{PLATE, Rim, SHELL, outer};
use super::{NoShape, THROUGH, Tube, fits, positive};
use crate::body::{Along, Body, Pressed};
use crate::mesh::{Block, Mesh};
use crate::metal::Metal;
use crate::stations::{Fineness, even, from_both, from_high, from_low, joined};

/// Number of the flue's metal.
const FLUE: usize = 2;

/// A shell with a flat end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlatEnd {
    /// The shell.
    pub shell: Tube,
    /// Thickness of the plate, mm.
    pub plate_mm: f64,
    /// Metal of the plate.
    pub plate: Metal,
    /// How plate and shell meet.
    pub rim: Rim,
    /// The flue that passes through the middle, flush with the dry face; `None` for a whole plate.
    pub flue: Option<Tube>,
    /// From the dry face to the plane of symmetry, mm.
    pub length_mm: f64,
    /// Pressure, MPa.
    pub pressure_mpa: f64,
}

impl FlatEnd {
    /// Numbers of the metals of shell, plate and flue in the body.
    pub const METALS: [usize; 3] = [SHELL, PLATE, FLUE];

    /// The body. Metals are those of the shell, the plate and the flue.
    ///
    /// # Errors
    ///
    /// [`NoShape`] where the sizes make no end.
    pub fn body(&self, fineness: Fineness) -> Result<Body, NoShape> {
        self.looked_over()?;
        let mut blocks = outer(self);
        let through = even(0.0, self.plate_mm, THROUGH);
        blocks.push((
            Block::Square {
                r: self.across_the_flat(),
                z: through.clone(),
            },
            PLATE,
        ));
        if let Some(flue) = self.flue {
            let r = even(flue.inside_radius_mm, flue.outside_radius_mm(), THROUGH);
            let z = joined(through, self.up(self.plate_mm, &flue));
            blocks.push((Block::Square { r, z }, FLUE));
        }
        let blocks: Vec<_> = blocks
            .into_iter()
            .map(|(block, metal)| (block.finer(fineness), metal))
            .collect();
        Ok(self.loaded(Mesh::of(&blocks)))
    }

    /// The radius to which the flat of the plate runs, mm.
    #[must_use]
    pub fn flat_to_mm(&self) -> f64 {
        match self.rim {
            Rim::Square => self.shell.inside_radius_mm,
            Rim::Flanged {
                inside_radius_mm, ..
            } => self.shell.inside_radius_mm - inside_radius_mm - self.plate_mm,
        }
    }

    fn loaded(&self, mesh: Mesh) -> Body {
        let (top, inside) = (self.length_mm, self.shell.inside_radius_mm);
        let end = self
            .flue
            .map_or([0.0, self.plate_mm], |flue| [flue.outside_radius_mm(), top]);
        let wet = mesh.between([inside, top], end);
        let mut cut = mesh.between([self.shell.outside_radius_mm(), top], [inside, top]);
        let mut metals = vec![self.shell.metal, self.plate];
        if let Some(flue) = self.flue {
            cut.extend(mesh.between(end, [flue.inside_radius_mm, top]));
            metals.push(flue.metal);
        }
        let pressure_mpa = self.pressure_mpa;
        let mut body = Body {
            mesh,
            metals,
            pressed: vec![Pressed {
                edges: wet,
                pressure_mpa,
            }],
            held: Vec::new(),
        };
        body.hold(&cut, Along::Axis);
        body
    }

    /// Stations along a tube from a place where it is disturbed to the plane of symmetry.
    fn up(&self, from: f64, tube: &Tube) -> Vec<f64> {
        from_low(
            from,
            self.length_mm,
            0.25 * tube.wall_mm.min(self.plate_mm),
            0.6 * tube.reach(),
        )
    }

    pub(super) fn up_the_shell(&self, from: f64) -> Vec<f64> {
        self.up(from, &self.shell)
    }

    fn across_the_flat(&self) -> Vec<f64> {
        let to = self.flat_to_mm();
        let first = 0.25 * self.plate_mm.min(self.shell.wall_mm);
        let most = 1.5 * self.plate_mm;
        match self.flue {
            Some(flue) => from_both(flue.outside_radius_mm(), to, first, most),
            None => from_high(0.0, to, first, most),
        }
    }

    fn looked_over(&self) -> Result<(), NoShape> {
        positive(&[
            (
                "the inside radius of the shell",
                self.shell.inside_radius_mm,
            ),
            ("the wall of the shell", self.shell.wall_mm),
            ("the thickness of the plate", self.plate_mm),
        ])?;
        if let Some(flue) = self.flue {
            positive(&[
                ("the inside radius of the flue", flue.inside_radius_mm),
                ("the wall of the flue", flue.wall_mm),
            ])?;
        }
        let (mut reach, mut low) = (self.plate_mm, 0.0);
        let mut room = self.shell.inside_radius_mm;
        if let Rim::Flanged {
            inside_radius_mm,
            height_mm,
            points,
        } = self.rim
        {
            positive(&[("the radius inside the flange", inside_radius_mm)])?;
            let bend = inside_radius_mm + self.plate_mm;
            fits(&[(height_mm > bend, "the flange has no straight lip")])?;
            room -= bend;
            match points {
                super::Points::TowardsWater => reach = height_mm,
                super::Points::AwayFromWater => low = inside_radius_mm,
            }
        }
        let hole = self.flue.map_or(0.0, |flue| flue.outside_radius_mm());
        fits(&[
            (room > hole, "the plate has no flat part"),
            (
                self.length_mm > reach - low,
                "the shell ends before the plate does",
            ),
        ])
    }
}
