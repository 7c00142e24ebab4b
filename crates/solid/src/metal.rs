//! How a metal gives way: linear, the same in every direction.

/// A metal below its yield.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Metal {
    /// Modulus of elasticity, MPa; greater than nought.
    pub modulus_mpa: f64,
    /// Ratio of lateral to axial strain; above −1 and below 0.5.
    pub poisson: f64,
}

impl Metal {
    /// Stress for strain in the order radial, axial, hoop, shear (engineering strain), MPa.
    pub(crate) fn stiffness(self) -> [[f64; 4]; 4] {
        let (e, nu) = (self.modulus_mpa, self.poisson);
        let k = e / ((1.0 + nu) * (1.0 - 2.0 * nu));
        let (direct, side, shear) = (k * (1.0 - nu), k * nu, e / (2.0 * (1.0 + nu)));
        [
            [direct, side, side, 0.0],
            [side, direct, side, 0.0],
            [side, side, direct, 0.0],
            [0.0, 0.0, 0.0, shear],
        ]
    }

    /// Whether these numbers are those of a solid.
    pub(crate) fn is_solid(self) -> bool {
        self.modulus_mpa.is_finite()
            && self.modulus_mpa > 0.0
            && self.poisson > -1.0
            && self.poisson < 0.5
    }
}
