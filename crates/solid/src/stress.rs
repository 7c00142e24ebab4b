//! Stress at a point of a body of revolution, and what is reckoned from it.

/// Stress, MPa; pull is positive.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Stress {
    /// Across the axis.
    pub radial: f64,
    /// Along the axis.
    pub axial: f64,
    /// Round the axis.
    pub hoop: f64,
    /// Shear in the plane through the axis.
    pub shear: f64,
}

/// Which stress is spoken of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Across the axis.
    Radial,
    /// Along the axis.
    Axial,
    /// Round the axis.
    Hoop,
    /// Shear in the plane through the axis.
    Shear,
    /// By distortion.
    VonMises,
    /// Greatest difference of principal stresses (Tresca).
    Intensity,
}

impl Stress {
    /// From radial, axial, hoop, shear.
    pub(crate) fn from_array([radial, axial, hoop, shear]: [f64; 4]) -> Self {
        Self {
            radial,
            axial,
            hoop,
            shear,
        }
    }

    /// One kind of it, MPa.
    #[must_use]
    pub fn of(self, kind: Kind) -> f64 {
        match kind {
            Kind::Radial => self.radial,
            Kind::Axial => self.axial,
            Kind::Hoop => self.hoop,
            Kind::Shear => self.shear,
            Kind::VonMises => self.von_mises(),
            Kind::Intensity => self.intensity(),
        }
    }

    /// Equivalent stress by distortion.
    #[must_use]
    pub fn von_mises(self) -> f64 {
        let (r, z, t, s) = (self.radial, self.axial, self.hoop, self.shear);
        let sum = (r - z).powi(2) + (z - t).powi(2) + (t - r).powi(2);
        (0.5 * sum + 3.0 * s * s).sqrt()
    }

    /// Principal stresses: two in the plane through the axis, greater first, and the hoop.
    #[must_use]
    pub fn principal(self) -> [f64; 3] {
        let middle = 0.5 * (self.radial + self.axial);
        let half = (0.5 * (self.radial - self.axial)).hypot(self.shear);
        [middle + half, middle - half, self.hoop]
    }

    /// Greatest difference of two principal stresses.
    #[must_use]
    pub fn intensity(self) -> f64 {
        let [a, b, c] = self.principal();
        a.max(b).max(c) - a.min(b).min(c)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn identity_a_bar_and_a_twist_have_their_known_equivalents() {
        let bar = Stress::from_array([0.0, 30.0, 0.0, 0.0]);
        assert!((bar.von_mises() - 30.0).abs() < 1e-12 && (bar.intensity() - 30.0).abs() < 1e-12);
        let twist = Stress::from_array([0.0, 0.0, 0.0, 10.0]);
        assert!((twist.von_mises() - 10.0 * 3.0_f64.sqrt()).abs() < 1e-12);
        assert!((twist.intensity() - 20.0).abs() < 1e-12);
        let even = Stress::from_array([7.0, 7.0, 7.0, 0.0]);
        assert!(even.von_mises().abs() < 1e-12 && even.intensity().abs() < 1e-12);
    }
}
