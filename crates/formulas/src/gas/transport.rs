//! Viscosity and conductivity of the pure gases, and the rules by which they mix.
//!
//! Each pure property is `ln y = A ln T + B/T + C/T^2 + D` in two ranges; viscosity in
//! micropoise, conductivity in µW/(cm K), as the source prints them.

/// A pure property in two ranges of temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// The temperature at which the ranges meet, K.
    pub meet_k: f64,
    /// Coefficients A, B, C, D below it.
    pub below: [f64; 4],
    /// Coefficients A, B, C, D above it.
    pub above: [f64; 4],
}

impl Fit {
    fn value(&self, inverse_t: f64, ln_t: f64) -> f64 {
        let [a, b, c, d] = if inverse_t * self.meet_k >= 1.0 {
            self.below
        } else {
            self.above
        };
        (a * ln_t + inverse_t * (b + inverse_t * c) + d).exp()
    }
}

/// The fits of one pure gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PureFits {
    /// Viscosity, micropoise.
    pub viscosity: Fit,
    /// Conductivity, µW/(cm K).
    pub conductivity: Fit,
}

/// Viscosity and conductivity at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Transport {
    /// Dynamic viscosity, Pa s.
    pub viscosity: f64,
    /// Thermal conductivity, W/(m K).
    pub conductivity: f64,
}

const PA_S_PER_MICROPOISE: f64 = 1e-7;
const SI_PER_MICROWATT_PER_CM: f64 = 1e-4;

/// The parts of the mixing rules that do not change with temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Mixing {
    /// Shares by volume.
    shares: [f64; 4],
    fits: [PureFits; 4],
    /// `(M_j / M_i)^(1/4)`.
    quarter: [[f64; 4]; 4],
    /// `1 / sqrt(8 (1 + M_i / M_j))`.
    root: [[f64; 4]; 4],
}

impl Mixing {
    pub(super) fn new(shares: [f64; 4], molar_masses: [f64; 4], fits: &[PureFits; 4]) -> Self {
        let pairs =
            |f: fn(f64, f64) -> f64| molar_masses.map(|m_i| molar_masses.map(|m_j| f(m_i, m_j)));
        Self {
            shares,
            fits: *fits,
            quarter: pairs(|m_i, m_j| (m_j / m_i).powf(0.25)),
            root: pairs(|m_i, m_j| 1.0 / (8.0 * (1.0 + m_i / m_j)).sqrt()),
        }
    }

    pub(super) fn at(&self, t_k: f64) -> Transport {
        let inverse_t = 1.0 / t_k;
        let ln_t = t_k.ln();
        let viscosities = self.fits.map(|f| f.viscosity.value(inverse_t, ln_t));
        let conductivities = self.fits.map(|f| f.conductivity.value(inverse_t, ln_t));
        Transport {
            viscosity: self.mixed_viscosity(&viscosities) * PA_S_PER_MICROPOISE,
            conductivity: mixed_conductivity(&self.shares, &conductivities)
                * SI_PER_MICROWATT_PER_CM,
        }
    }

    /// The rule of 1950: each gas is slowed by the others in the measure of its weight.
    fn mixed_viscosity(&self, pure: &[f64; 4]) -> f64 {
        let roots = pure.map(f64::sqrt);
        let mut sum = 0.0;
        for i in 0..4 {
            let mut weight = 0.0;
            for j in 0..4 {
                let c = 1.0 + roots[i] / roots[j] * self.quarter[i][j];
                weight += self.shares[j] * c * c * self.root[i][j];
            }
            sum += self.shares[i] * pure[i] / weight;
        }
        sum
    }
}

/// The mean of the series and the parallel law.
fn mixed_conductivity(shares: &[f64; 4], pure: &[f64; 4]) -> f64 {
    let mut direct = 0.0;
    let mut inverse = 0.0;
    for i in 0..4 {
        direct += shares[i] * pure[i];
        inverse += shares[i] / pure[i];
    }
    0.5 * (direct + 1.0 / inverse)
}

const fn fit(meet_k: f64, below: [f64; 4], above: [f64; 4]) -> Fit {
    Fit {
        meet_k,
        below,
        above,
    }
}

/// The published fits, in the order carbon dioxide, water vapour, oxygen, nitrogen: 200 K
/// (water vapour 373.2 K) to 5000 K.
pub static NASA_FITS: [PureFits; 4] = [
    PureFits {
        viscosity: fit(
            1000.0,
            [0.511_372_58, -229.513_21, 13_710.678, 2.707_553_8],
            [0.639_782_85, -42.637_076, -15_522.605, 1.662_884_3],
        ),
        conductivity: fit(
            1000.0,
            [0.480_565_68, -507.867_20, 35_088.811, 3.674_779_4],
            [0.698_572_77, -118.304_77, -50_688.859, 1.865_055_1],
        ),
    },
    PureFits {
        viscosity: fit(
            1073.2,
            [0.500_195_57, -697.127_96, 88_163.892, 3.083_650_8],
            [0.589_885_38, -537.698_14, 54_263.513, 2.338_637_5],
        ),
        conductivity: fit(
            1073.2,
            [1.096_638_9, -555.134_29, 106_234.08, -0.246_645_50],
            [0.393_679_33, -2_252.422_6, 612_174.58, 5.801_131_7],
        ),
    },
    PureFits {
        viscosity: fit(
            1000.0,
            [0.609_161_80, -52.244_847, -599.740_09, 2.041_080_1],
            [0.722_164_86, 175.508_39, -57_974.816, 1.090_104_4],
        ),
        conductivity: fit(
            1000.0,
            [0.772_291_67, 6.846_321_0, -5_893.337_7, 1.221_036_5],
            [0.909_173_51, 291.241_82, -79_650.171, 0.064_851_631],
        ),
    },
    PureFits {
        viscosity: fit(
            1000.0,
            [0.625_265_77, -31.779_652, -1_640.798_3, 1.745_499_2],
            [0.873_952_09, 561.522_22, -173_948.09, -0.393_359_58],
        ),
        conductivity: fit(
            1000.0,
            [0.854_394_36, 105.732_24, -12_347.848, 0.477_931_28],
            [0.884_071_46, 133.572_93, -11_429.640, 0.244_170_19],
        ),
    },
];
