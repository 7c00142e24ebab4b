//! Viscosity and conductivity of the pure gases by kinetic theory, fitted in the form that the
//! gas family reads: sums made elsewhere on that theory are repeated on it, and so test the
//! code apart from the data.
//!
//! Independent calculation: cantera 3.2.0, gri30.yaml. Written by
//! tools/gas_grid.py.

use formulas::gas::{Fit, PureFits};

/// Carbon dioxide, water vapour, oxygen, nitrogen; 300 to 2500 K.
pub(crate) static KINETIC_THEORY: [PureFits; 4] = [
    // Carbon dioxide.
    PureFits {
        viscosity: Fit {
            meet_k: 1000.0,
            below: [0.575632, -146.5092, 3247.39, 2.182879],
            above: [0.642947, 10.7997, -43307.11, 1.607013],
        },
        conductivity: Fit {
            meet_k: 1000.0,
            below: [0.558204, -444.5954, 33023.78, 3.095140],
            above: [0.567654, -418.4742, 23819.60, 3.012949],
        },
    },
    // Water vapour.
    PureFits {
        viscosity: Fit {
            meet_k: 1000.0,
            below: [0.832145, -208.7512, 23073.83, 0.330915],
            above: [0.523672, -815.3732, 179954.55, 2.911228],
        },
        conductivity: Fit {
            meet_k: 1000.0,
            below: [1.549657, 250.9874, -20904.34, -3.869396],
            above: [0.510684, -1635.7679, 431518.63, 4.739853],
        },
    },
    // Oxygen.
    PureFits {
        viscosity: Fit {
            meet_k: 1000.0,
            below: [0.622905, -24.9837, -3287.62, 1.897261],
            above: [0.648785, 16.5434, -11732.51, 1.685489],
        },
        conductivity: Fit {
            meet_k: 1000.0,
            below: [0.587767, -267.0227, 30954.68, 2.777118],
            above: [0.893949, 418.9255, -165978.70, 0.172755],
        },
    },
    // Nitrogen.
    PureFits {
        viscosity: Fit {
            meet_k: 1000.0,
            below: [0.626745, -18.8539, -3164.81, 1.720776],
            above: [0.648595, 14.3701, -9381.29, 1.542919],
        },
        conductivity: Fit {
            meet_k: 1000.0,
            below: [0.832274, -6.7058, 6445.95, 0.782110],
            above: [0.502555, -675.0846, 183924.32, 3.550479],
        },
    },
];
