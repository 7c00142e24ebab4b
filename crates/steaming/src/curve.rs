//! A smooth law, worked at a few Chebyshev points and read many times between them.
//!
//! Only for what a balance asks thousands of times: a test beside each use holds it to the law.

/// Chebyshev polynomials through `N` points of an interval.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Curve<const N: usize> {
    low: f64,
    high: f64,
    weights: [f64; N],
}

impl<const N: usize> Curve<N> {
    /// Curves of `K` laws that are worked together.
    pub(crate) fn of<const K: usize, E>(
        (low, high): (f64, f64),
        mut laws: impl FnMut(f64) -> Result<[f64; K], E>,
    ) -> Result<[Self; K], E> {
        let none = Self {
            low,
            high,
            weights: [0.0; N],
        };
        let mut curves = [none; K];
        for point in 0..N {
            let angle = std::f64::consts::PI * (point as f64 + 0.5) / N as f64;
            let x = f64::midpoint(low, high) + (high - low) / 2.0 * angle.cos();
            let values = laws(x)?;
            for order in 0..N {
                let share = if order == 0 { 1.0 } else { 2.0 } / N as f64;
                let wave = share * (order as f64 * angle).cos();
                for (curve, value) in curves.iter_mut().zip(values) {
                    curve.weights[order] += wave * value;
                }
            }
        }
        Ok(curves)
    }

    /// Whether the interval holds a point.
    pub(crate) fn holds(&self, x: f64) -> bool {
        self.low <= x && x <= self.high
    }

    /// The curve at a point of its interval.
    pub(crate) fn at(&self, x: f64) -> f64 {
        let s = (2.0 * x - self.low - self.high) / (self.high - self.low);
        let (mut next, mut after) = (0.0, 0.0);
        for weight in self.weights[1..].iter().rev() {
            (next, after) = (weight + 2.0 * s * next - after, next);
        }
        self.weights[0] + s * next - after
    }
}
