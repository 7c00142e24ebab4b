//! A cylinder with a dished end: a knuckle and a crown, or a half sphere.
//!
//! The cylinder stands below `z` = 0, the tangent line at which the dish begins; pressure is on
//! the hollow side. At the lower cut nothing moves along the axis.

use super::{NoShape, THROUGH, Tube, fits, positive};
use crate::body::{Along, Body, Pressed};
use crate::mesh::{Block, Mesh};
use crate::metal::Metal;
use crate::stations::{Fineness, even, from_both, from_high};

/// A cylinder with a dished end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DishedEnd {
    /// The cylinder.
    pub shell: Tube,
    /// Inside radius of the crown, mm; that of the shell for a half sphere, and more else.
    pub crown_mm: f64,
    /// Inside radius of the knuckle, mm; that of the shell for a half sphere, and less else.
    pub knuckle_mm: f64,
    /// Thickness of the dish, mm.
    pub thickness_mm: f64,
    /// Metal of the dish.
    pub metal: Metal,
    /// Length of cylinder, mm.
    pub length_mm: f64,
    /// Pressure, MPa.
    pub pressure_mpa: f64,
}

/// Numbers of the metals.
const SHELL: usize = 0;
const DISH: usize = 1;

impl DishedEnd {
    /// The body. Metals are those of the shell and the dish.
    ///
    /// # Errors
    ///
    /// [`NoShape`] where the sizes make no dish.
    pub fn body(&self, fineness: Fineness) -> Result<Body, NoShape> {
        self.looked_over()?;
        let mesh = Mesh::of(&self.blocks(fineness));
        let (inside, low) = (self.shell.inside_radius_mm, -self.length_mm);
        let hollow = mesh.between([0.0, self.apex_mm()], [inside, low]);
        let cut = mesh.between([inside, low], [self.shell.outside_radius_mm(), low]);
        let pressed = Pressed {
            edges: hollow,
            pressure_mpa: self.pressure_mpa,
        };
        let mut body = Body {
            mesh,
            metals: vec![self.shell.metal, self.metal],
            pressed: vec![pressed],
            held: Vec::new(),
        };
        body.hold(&cut, Along::Axis);
        Ok(body)
    }

    /// Angle of the knuckle from the tangent line, degrees.
    fn turn(&self) -> f64 {
        let across = self.shell.inside_radius_mm - self.knuckle_mm;
        (across / (self.crown_mm - self.knuckle_mm))
            .acos()
            .to_degrees()
    }

    /// Height of the centre of the crown over the tangent line, mm.
    fn centre(&self) -> f64 {
        if self.is_half_sphere() {
            return 0.0;
        }
        -(self.crown_mm - self.knuckle_mm) * self.turn().to_radians().sin()
    }

    /// Height of the hollow side at the axis over the tangent line, mm.
    #[must_use]
    pub fn apex_mm(&self) -> f64 {
        self.centre() + self.crown_mm
    }

    fn is_half_sphere(&self) -> bool {
        let inside = self.shell.inside_radius_mm;
        (self.crown_mm - inside)
            .abs()
            .max((self.knuckle_mm - inside).abs())
            < 1e-9 * inside
    }

    fn blocks(&self, fineness: Fineness) -> Vec<(Block, usize)> {
        let inside = self.shell.inside_radius_mm;
        let layers = self.layers();
        let least = self.shell.wall_mm.min(self.thickness_mm);
        let (first, most) = (0.5 * least, 0.5 * self.shell.reach());
        let arc = |across: f64, z: f64, radius: f64, degrees: Vec<f64>| Block::Arc {
            centre: [across, z],
            radii: layers[1].iter().map(|t| radius + t).collect(),
            degrees,
        };
        let mut blocks = vec![(
            Block::Square {
                r: layers[0].iter().map(|t| inside + t).collect(),
                z: from_high(-self.length_mm, 0.0, first, most),
            },
            SHELL,
        )];
        // Stations along an arc, from lengths to angles.
        let turned = |from: f64, to: f64, radius: f64| -> Vec<f64> {
            let per = radius.to_radians();
            from_both(from, to, first / per, most / per)
        };
        if self.is_half_sphere() {
            blocks.push((arc(0.0, 0.0, inside, turned(0.0, 90.0, inside)), DISH));
        } else {
            let turn = self.turn();
            let knuckle = turned(0.0, turn, self.knuckle_mm);
            let crown = turned(turn, 90.0, self.crown_mm);
            blocks.push((
                arc(inside - self.knuckle_mm, 0.0, self.knuckle_mm, knuckle),
                DISH,
            ));
            blocks.push((arc(0.0, self.centre(), self.crown_mm, crown), DISH));
        }
        blocks
            .into_iter()
            .map(|(block, metal)| (block.finer(fineness), metal))
            .collect()
    }

    /// Stations through the walls of shell and dish from the common inside: the thicker one has a
    /// layer more, beyond the thinner.
    fn layers(&self) -> [Vec<f64>; 2] {
        let walls = [self.shell.wall_mm, self.thickness_mm];
        let least = walls[0].min(walls[1]);
        walls.map(|wall| {
            let mut layers = even(0.0, least, THROUGH);
            if wall > least {
                layers.push(wall);
            }
            layers
        })
    }

    fn looked_over(&self) -> Result<(), NoShape> {
        positive(&[
            (
                "the inside radius of the shell",
                self.shell.inside_radius_mm,
            ),
            ("the wall of the shell", self.shell.wall_mm),
            ("the radius of the crown", self.crown_mm),
            ("the radius of the knuckle", self.knuckle_mm),
            ("the thickness of the dish", self.thickness_mm),
            ("the length of the cylinder", self.length_mm),
        ])?;
        let inside = self.shell.inside_radius_mm;
        let torus = self.knuckle_mm < inside && self.crown_mm > inside;
        fits(&[(
            self.is_half_sphere() || torus,
            "a dish has a knuckle of less and a crown of more than the radius of the shell",
        )])
    }
}
