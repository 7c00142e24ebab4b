//! A bush in a wide flat plate that is pulled evenly in its own plane.
//!
//! The plate lies between `z` = 0 and its thickness, the bush stands out on both sides. The rim
//! is pulled outwards and cannot move along the axis. This stands for a bush in a thin shell as far
//! as the pull goes that the hole interrupts; a shell is curved and pulled half as hard along its
//! axis, which this is not.

use super::{NoShape, THROUGH, fits, positive};
use crate::body::{Along, Body, Pressed};
use crate::mesh::{Block, Mesh};
use crate::metal::Metal;
use crate::stations::{Fineness, even, from_both, from_low};

/// A bush in a plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BushInPlate {
    /// Thickness of the plate, mm.
    pub plate_mm: f64,
    /// Metal of the plate.
    pub plate: Metal,
    /// Radius of the plate that is looked at, mm.
    pub rim_radius_mm: f64,
    /// Radius of the hole in the plate, filled by the bush, mm.
    pub hole_radius_mm: f64,
    /// Radius of the bush's bore, mm; that of the hole for a hole without a bush.
    pub bore_radius_mm: f64,
    /// How far the bush stands out beyond `z` = 0, mm.
    pub below_mm: f64,
    /// How far it stands out beyond the other face, mm.
    pub above_mm: f64,
    /// Metal of the bush.
    pub bush: Metal,
    /// Pull on the rim, MPa.
    pub pull_mpa: f64,
}

/// Numbers of the metals.
const PLATE: usize = 0;
const BUSH: usize = 1;

impl BushInPlate {
    /// The body. Metals are those of the plate and the bush.
    ///
    /// # Errors
    ///
    /// [`NoShape`] where the sizes make no bush.
    pub fn body(&self, fineness: Fineness) -> Result<Body, NoShape> {
        self.looked_over()?;
        let through = even(0.0, self.plate_mm, THROUGH);
        let first = 0.25 * self.plate_mm;
        let across = from_low(
            self.hole_radius_mm,
            self.rim_radius_mm,
            first,
            self.plate_mm,
        );
        let mut blocks = vec![(
            Block::Square {
                r: across,
                z: through.clone(),
            },
            PLATE,
        )];
        if self.bore_radius_mm < self.hole_radius_mm {
            let wall = self.hole_radius_mm - self.bore_radius_mm;
            let most = 0.25 * wall;
            let r = from_both(self.bore_radius_mm, self.hole_radius_mm, 0.5 * most, most);
            let stretches = [
                (self.below_mm > 0.0).then(|| from_both(-self.below_mm, 0.0, first, first * 2.0)),
                Some(through),
                (self.above_mm > 0.0).then(|| {
                    let top = self.plate_mm + self.above_mm;
                    from_both(self.plate_mm, top, first, first * 2.0)
                }),
            ];
            let square = |z| (Block::Square { r: r.clone(), z }, BUSH);
            blocks.extend(stretches.into_iter().flatten().map(square));
        }
        let blocks: Vec<_> = blocks
            .into_iter()
            .map(|(block, metal)| (block.finer(fineness), metal))
            .collect();
        Ok(self.loaded(Mesh::of(&blocks)))
    }

    fn loaded(&self, mesh: Mesh) -> Body {
        let rim = mesh.between(
            [self.rim_radius_mm, 0.0],
            [self.rim_radius_mm, self.plate_mm],
        );
        let mut body = Body {
            mesh,
            metals: vec![self.plate, self.bush],
            pressed: vec![Pressed {
                edges: rim.clone(),
                pressure_mpa: -self.pull_mpa,
            }],
            held: Vec::new(),
        };
        body.hold(&rim, Along::Axis);
        body
    }

    fn looked_over(&self) -> Result<(), NoShape> {
        positive(&[
            ("the thickness of the plate", self.plate_mm),
            ("the bore of the bush", self.bore_radius_mm),
        ])?;
        fits(&[
            (
                self.bore_radius_mm <= self.hole_radius_mm,
                "the bore of the bush is wider than the bush",
            ),
            (
                self.hole_radius_mm < self.rim_radius_mm,
                "the hole leaves nothing of the plate",
            ),
            (
                self.below_mm >= 0.0 && self.above_mm >= 0.0,
                "the bush ends within the plate",
            ),
        ])
    }
}
