//! Heat capacity and enthalpy of the pure gases: NASA nine-coefficient polynomials.
//!
//! `cp/R = a1 T^-2 + a2 T^-1 + a3 + a4 T + a5 T^2 + a6 T^3 + a7 T^4` and its integral with the
//! constant b1, in two ranges that meet at 1000 K. The entropy constant is left out.

/// Universal gas constant, J/(kmol K) (CODATA 2018, exact).
pub(crate) const UNIVERSAL_GAS_CONSTANT: f64 = 8_314.462_618_153_24;

/// The temperature at which enthalpies of gas are counted as nought.
pub const REFERENCE_TEMPERATURE_K: f64 = 298.15;

/// Where the two ranges of the polynomials meet.
pub(super) const BREAK_K: f64 = 1000.0;

/// A polynomial over one range: a1 to a7, then b1.
pub(super) type Range = [f64; 8];

/// A pure gas.
pub(super) struct PureGas {
    /// Molar mass, kg/kmol.
    pub(super) molar_mass: f64,
    /// Below and above [`BREAK_K`].
    pub(super) ranges: [Range; 2],
}

/// Value of `cp/R`, with coefficients already summed over a mixture or of one gas.
pub(super) fn heat_capacity(a: &Range, t: f64) -> f64 {
    (a[0] / t + a[1]) / t + a[2] + t * (a[3] + t * (a[4] + t * (a[5] + t * a[6])))
}

/// Value of `h/R`, K, on the scale of the elements.
pub(super) fn enthalpy(a: &Range, t: f64) -> f64 {
    -a[0] / t
        + a[1] * t.ln()
        + t * (a[2] + t * (a[3] / 2.0 + t * (a[4] / 3.0 + t * (a[5] / 4.0 + t * a[6] / 5.0))))
        + a[7]
}

/// Carbon dioxide.
pub(super) static CARBON_DIOXIDE: PureGas = PureGas {
    molar_mass: 44.0095,
    ranges: [
        [
            4.943_650_540e4,
            -6.264_116_010e2,
            5.301_725_240,
            2.503_813_816e-3,
            -2.127_308_728e-7,
            -7.689_988_780e-10,
            2.849_677_801e-13,
            -4.528_198_460e4,
        ],
        [
            1.176_962_419e5,
            -1.788_791_477e3,
            8.291_523_190,
            -9.223_156_780e-5,
            4.863_676_880e-9,
            -1.891_053_312e-12,
            6.330_036_590e-16,
            -3.908_350_590e4,
        ],
    ],
};

/// Water vapour.
pub(super) static WATER_VAPOUR: PureGas = PureGas {
    molar_mass: 18.015_28,
    ranges: [
        [
            -3.947_960_830e4,
            5.755_731_020e2,
            9.317_826_530e-1,
            7.222_712_860e-3,
            -7.342_557_370e-6,
            4.955_043_490e-9,
            -1.336_933_246e-12,
            -3.303_974_310e4,
        ],
        [
            1.034_972_096e6,
            -2.412_698_562e3,
            4.646_110_780,
            2.291_998_307e-3,
            -6.836_830_480e-7,
            9.426_468_930e-11,
            -4.822_380_530e-15,
            -1.384_286_509e4,
        ],
    ],
};

/// Oxygen.
pub(super) static OXYGEN: PureGas = PureGas {
    molar_mass: 31.9988,
    ranges: [
        [
            -3.425_563_420e4,
            4.847_000_970e2,
            1.119_010_961,
            4.293_889_240e-3,
            -6.836_300_520e-7,
            -2.023_372_700e-9,
            1.039_040_018e-12,
            -3.391_454_870e3,
        ],
        [
            -1.037_939_022e6,
            2.344_830_282e3,
            1.819_732_036,
            1.267_847_582e-3,
            -2.188_067_988e-7,
            2.053_719_572e-11,
            -8.193_467_050e-16,
            -1.689_010_929e4,
        ],
    ],
};

/// Nitrogen.
pub(super) static NITROGEN: PureGas = PureGas {
    molar_mass: 28.0134,
    ranges: [
        [
            2.210_371_497e4,
            -3.818_461_820e2,
            6.082_738_360,
            -8.530_914_410e-3,
            1.384_646_189e-5,
            -9.625_793_620e-9,
            2.519_705_809e-12,
            7.108_460_860e2,
        ],
        [
            5.877_124_060e5,
            -2.239_249_073e3,
            6.066_949_220,
            -6.139_685_500e-4,
            1.491_806_679e-7,
            -1.923_105_485e-11,
            1.061_954_386e-15,
            1.283_210_415e4,
        ],
    ],
};
