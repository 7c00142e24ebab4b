//! Integral of a plain function over an interval, to a stated error.
//!
//! The 7-point Gauss rule nested in a 15-point Kronrod rule, halving the interval where the two
//! disagree. Nodes and weights: independent calculation (printed to 16 figures in many tables of
//! quadrature, from memory); a test holds them to exactness for polynomials of degree 22.

/// Positive nodes of the 15-point rule, outermost first; the last is the centre.
const NODES: [f64; 8] = [
    0.991_455_371_120_812_6,
    0.949_107_912_342_758_5,
    0.864_864_423_359_769_1,
    0.741_531_185_599_394_4,
    0.586_087_235_467_691_1,
    0.405_845_151_377_397_2,
    0.207_784_955_007_898_47,
    0.0,
];
/// Weights of the 15-point rule.
const KRONROD: [f64; 8] = [
    0.022_935_322_010_529_224,
    0.063_092_092_629_978_55,
    0.104_790_010_322_250_18,
    0.140_653_259_715_525_92,
    0.169_004_726_639_267_9,
    0.190_350_578_064_785_4,
    0.204_432_940_075_298_9,
    0.209_482_141_084_727_82,
];
/// Weights of the 7-point rule, at nodes 1, 3, 5 and 7.
const GAUSS: [f64; 4] = [
    0.129_484_966_168_869_7,
    0.279_705_391_489_276_66,
    0.381_830_050_505_118_9,
    0.417_959_183_673_469_4,
];
/// Halvings after which an interval is taken as it is; its width is then 2⁻⁴⁰ of the whole.
const DEEPEST: u32 = 40;

/// Both rules over `[a, b]`: the finer value, and by how much they differ.
fn both(f: &mut dyn FnMut(f64) -> f64, a: f64, b: f64) -> (f64, f64) {
    let (centre, half) = (0.5 * (a + b), 0.5 * (b - a));
    let middle = f(centre);
    let (mut fine, mut coarse) = (KRONROD[7] * middle, GAUSS[3] * middle);
    for i in 0..7 {
        let pair = f(centre - half * NODES[i]) + f(centre + half * NODES[i]);
        fine += KRONROD[i] * pair;
        if i % 2 == 1 {
            coarse += GAUSS[i / 2] * pair;
        }
    }
    (half * fine, (half * (fine - coarse)).abs())
}

/// The integral of `f` over `[a, b]`, halved until on every piece the two rules agree within
/// `error` (absolute). Where the function bends or jumps only the few pieces about that place come
/// near `error`; on the others the finer rule is better than the difference by many orders.
pub(crate) fn integral(f: &mut dyn FnMut(f64) -> f64, a: f64, b: f64, error: f64) -> f64 {
    halved(f, (a, b), error, 0)
}

fn halved(f: &mut dyn FnMut(f64) -> f64, (a, b): (f64, f64), error: f64, depth: u32) -> f64 {
    let (value, differs) = both(f, a, b);
    debug_assert!(value.is_finite(), "no number between {a} and {b}");
    if differs <= error || depth == DEEPEST {
        return value;
    }
    let middle = 0.5 * (a + b);
    halved(f, (a, middle), error, depth + 1) + halved(f, (middle, b), error, depth + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Identity: the rule of 15 points is exact to degree 22, the rule of 7 to degree 13.
    #[test]
    fn identity_both_rules_integrate_powers_exactly() {
        for power in 0..=22 {
            let exact = if power % 2 == 0 {
                2.0 / f64::from(power + 1)
            } else {
                0.0
            };
            let (fine, differs) = both(&mut |x| x.powi(power), -1.0, 1.0);
            assert!((fine - exact).abs() < 2e-15, "degree {power}: {fine}");
            if power <= 13 {
                assert!(differs < 2e-15, "degree {power} in the coarse rule");
            }
        }
    }

    /// Closed form: the quarter circle, whose slope is unbounded at one end.
    #[test]
    fn identity_quarter_circle() {
        let area = integral(&mut |x| (1.0 - x * x).sqrt(), 0.0, 1.0, 1e-13);
        assert!((area - std::f64::consts::FRAC_PI_4).abs() < 1e-12);
    }
}
