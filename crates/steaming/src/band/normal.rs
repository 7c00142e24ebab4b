//! The normal law turned round.
//!
//! Source: The percentage points of the normal distribution, Applied Statistics 37 (1988),
//! algorithm AS 241, the form of about seven figures; from memory, and checked against a table.

/// The standard normal deviate below which lies a share `p` of the law.
#[must_use]
pub fn normal_quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        return q * polynomial(&A, r) / polynomial(&B, r);
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = (-tail.ln()).sqrt();
    let size = if r <= 5.0 {
        polynomial(&C, r - 1.6) / polynomial(&D, r - 1.6)
    } else {
        polynomial(&E, r - 5.0) / polynomial(&F, r - 5.0)
    };
    if q < 0.0 { -size } else { size }
}

fn polynomial(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

const A: [f64; 4] = [
    3.387_132_717_9,
    50.434_271_938,
    159.291_132_02,
    59.109_374_720,
];
const B: [f64; 4] = [1.0, 17.895_169_469, 78.757_757_664, 67.187_563_600];
const C: [f64; 4] = [
    1.423_437_277_7,
    2.756_815_390_0,
    1.306_728_481_6,
    0.170_238_211_03,
];
const D: [f64; 3] = [1.0, 0.737_001_642_50, 0.120_211_329_75];
const E: [f64; 4] = [
    6.657_905_115_0,
    3.081_226_386_0,
    0.428_682_943_37,
    0.017_337_203_997,
];
const F: [f64; 3] = [1.0, 0.241_978_942_25, 0.012_258_202_635];

#[cfg(test)]
mod tests {
    use super::normal_quantile;

    /// Percentage points printed in tables of the normal law, from memory.
    #[test]
    fn published_percentage_points() {
        for (p, z) in [
            (0.5, 0.0),
            (0.75, 0.674_489_75),
            (0.9, 1.281_551_57),
            (0.95, 1.644_853_63),
            (0.975, 1.959_963_98),
            (0.999, 3.090_232_31),
            (0.000_01, -4.264_890_79),
        ] {
            let found = normal_quantile(p);
            assert!((found - z).abs() < 1e-6, "{p}: {found} for {z}");
        }
    }
}
