//! Viscosity and conductivity of the pure gases by kinetic theory, fitted as
//! ln y = A ln T + B/T + C/T^2 + D: sums made elsewhere on that theory are repeated on it,
//! and so test the code apart from the data.
//!
//! Independent calculation: cantera 3.2.0, gri30.yaml. Written by
//! tools/gas_grid.py.

use formulas::gas::{PureLaw, Transport};

/// Carbon dioxide, water vapour, oxygen, nitrogen; 300 to 2500 K.
pub(crate) static KINETIC_THEORY: [PureLaw; 4] = [
    |t| at(&CARBON_DIOXIDE, t),
    |t| at(&WATER_VAPOUR, t),
    |t| at(&OXYGEN, t),
    |t| at(&NITROGEN, t),
];

/// Viscosity in micropoise below and above 1000 K, then conductivity in µW/(cm K).
type Fits = [[f64; 4]; 4];

fn at(fits: &Fits, t: f64) -> Transport {
    let value = |[a, b, c, d]: [f64; 4]| (a * t.ln() + b / t + c / (t * t) + d).exp();
    let side = usize::from(t > 1000.0);
    Transport {
        viscosity: 1e-7 * value(fits[side]),
        conductivity: 1e-4 * value(fits[2 + side]),
    }
}

static CARBON_DIOXIDE: Fits = [
    [0.575632, -146.5092, 3247.39, 2.182879],
    [0.642947, 10.7997, -43307.11, 1.607013],
    [0.558204, -444.5954, 33023.78, 3.095140],
    [0.567654, -418.4742, 23819.60, 3.012949],
];

static WATER_VAPOUR: Fits = [
    [0.832145, -208.7512, 23073.83, 0.330915],
    [0.523672, -815.3732, 179954.55, 2.911228],
    [1.549657, 250.9874, -20904.34, -3.869396],
    [0.510684, -1635.7679, 431518.63, 4.739853],
];

static OXYGEN: Fits = [
    [0.622905, -24.9837, -3287.62, 1.897261],
    [0.648785, 16.5434, -11732.51, 1.685489],
    [0.587767, -267.0227, 30954.68, 2.777118],
    [0.893949, 418.9255, -165978.70, 0.172755],
];

static NITROGEN: Fits = [
    [0.626745, -18.8539, -3164.81, 1.720776],
    [0.648595, 14.3701, -9381.29, 1.542919],
    [0.832274, -6.7058, 6445.95, 0.782110],
    [0.502555, -675.0846, 183924.32, 3.550479],
];
