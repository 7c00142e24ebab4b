//! A flanged plate standing in a tube, by its section at any height.

use reckoning::Known;
use reckoning::quantity::Length;

use crate::part::Stands;

/// A tube plate in place. Heights are above the datum of the boiler.
#[derive(Clone, Debug)]
pub(crate) struct Standing {
    /// Inside radius of the tube that it closes, mm.
    pub(crate) radius: f64,
    /// Height of its lower face, mm.
    pub(crate) low: f64,
    /// Thickness, mm.
    pub(crate) thickness: f64,
    /// The flange: which way it stands, inside radius, height over all, mm.
    pub(crate) flange: Option<(Stands, f64, f64)>,
}

impl Standing {
    /// Height of its upper face, mm.
    pub(crate) fn high(&self) -> f64 {
        self.low + self.thickness
    }

    /// Depth below the convex face, towards the end of the flange, mm.
    fn depth(&self, z: f64) -> f64 {
        match self.flange {
            Some((Stands::Up, ..)) | None => z - self.low,
            Some((Stands::Down, ..)) => self.high() - z,
        }
    }

    /// Lowest and highest metal, mm.
    pub(crate) fn extent(&self) -> (f64, f64) {
        match self.flange {
            None => (self.low, self.high()),
            Some((Stands::Up, _, height)) => (self.low, self.low + height),
            Some((Stands::Down, _, height)) => (self.high() - height, self.high()),
        }
    }

    /// Radius of the plate over its convex side at a height, mm; none where it has no metal.
    pub(crate) fn outer(&self, z: f64) -> Option<f64> {
        let (depth, bend) = (self.depth(z), self.bend());
        self.covers(z).then(|| {
            if depth >= bend {
                self.radius
            } else {
                self.radius - bend + (bend * bend - (bend - depth).powi(2)).sqrt()
            }
        })
    }

    /// Radius of the hollow of the flange at a height, mm; zero in the thickness of the plate,
    /// none where it has no metal.
    pub(crate) fn hollow(&self, z: f64) -> Option<f64> {
        let (depth, bend) = (self.depth(z), self.bend());
        self.covers(z).then(|| {
            if depth <= self.thickness {
                0.0
            } else if depth >= bend {
                self.radius - self.thickness
            } else {
                let inside = bend - self.thickness;
                self.radius - bend + (inside * inside - (bend - depth).powi(2)).sqrt()
            }
        })
    }

    /// Radius over the bend, mm; zero for a flat plate.
    pub(crate) fn bend(&self) -> f64 {
        self.flange
            .map_or(0.0, |(_, inside, _)| inside + self.thickness)
    }

    /// Length over which it touches its tube, mm.
    pub(crate) fn lap(&self) -> f64 {
        self.flange
            .map_or(self.thickness, |(_, _, height)| height - self.bend())
    }

    fn covers(&self, z: f64) -> bool {
        let (low, high) = self.extent();
        low <= z && z <= high
    }

    /// Heights at which its section changes form, mm.
    pub(crate) fn marks(&self) -> Vec<f64> {
        let (low, high) = self.extent();
        let mut marks = vec![low, high, self.low, self.high()];
        match self.flange {
            Some((Stands::Up, ..)) => marks.push(self.low + self.bend()),
            Some((Stands::Down, ..)) => marks.push(self.high() - self.bend()),
            None => {}
        }
        marks
    }
}

/// A plate with the sizes it was drawn from.
#[derive(Clone, Debug)]
pub(crate) struct PlateSizes {
    pub(crate) thickness: Known<Length>,
    pub(crate) flange: Option<FlangeSizes>,
    pub(crate) set_in: Known<Length>,
}

/// A flange with the sizes it was drawn from.
#[derive(Clone, Debug)]
pub(crate) struct FlangeSizes {
    pub(crate) stands: Known<Stands>,
    pub(crate) inside_radius: Known<Length>,
    pub(crate) height: Known<Length>,
}
