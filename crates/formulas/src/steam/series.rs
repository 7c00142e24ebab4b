//! The sums over terms `n x^I y^J` of which all the equations consist, and their derivatives.
//!
//! The weights of the derivatives are worked out when the program is built, and the powers by
//! doubling, so that a call is little more than one pass of multiplications side by side.

/// One term of a published sum: exponents and coefficient.
pub(super) type Term = (i32, i32, f64);

/// A published table made ready. Exponents count from the lowest, which the caller divides out.
#[derive(Debug)]
pub(super) struct Series<const N: usize> {
    at: [(u8, u8); N],
    /// In the order of use: J, J (J − 1), 1, I, I (I − 1), I J, each times n.
    weights: [[f64; 6]; N],
}

/// The sums over the terms, each multiplied by what its derivative brings down.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sums {
    /// Σ term
    pub(super) f: f64,
    /// Σ I term
    pub(super) i: f64,
    /// Σ I (I − 1) term
    pub(super) ii: f64,
    /// Σ J term
    pub(super) j: f64,
    /// Σ J (J − 1) term
    pub(super) jj: f64,
    /// Σ I J term
    pub(super) ij: f64,
}

impl<const N: usize> Series<N> {
    /// Makes a table ready; `low` are the lowest exponents in it.
    pub(super) const fn new(terms: &[Term; N], low: (i32, i32)) -> Self {
        let mut at = [(0, 0); N];
        let mut weights = [[0.0; 6]; N];
        let mut k = 0;
        while k < N {
            let (i, j, n) = terms[k];
            at[k] = ((i - low.0) as u8, (j - low.1) as u8);
            let (i, j) = (i as f64, j as f64);
            weights[k] = [
                n * j,
                n * j * (j - 1.0),
                n,
                n * i,
                n * i * (i - 1.0),
                n * i * j,
            ];
            k += 1;
        }
        Self { at, weights }
    }

    /// All sums; `x` and `y` are the powers from zero up.
    #[inline(always)]
    pub(super) fn sums(&self, x: &[f64], y: &[f64]) -> Sums {
        let [j, jj, f, i, ii, ij] = self.first::<6>(x, y);
        Sums {
            f,
            i,
            ii,
            j,
            jj,
            ij,
        }
    }

    /// Only what enthalpy, entropy and specific heat need: Σ J term, Σ J (J − 1) term, Σ term.
    #[inline(always)]
    pub(super) fn caloric(&self, x: &[f64], y: &[f64]) -> [f64; 3] {
        self.first::<3>(x, y)
    }

    /// The sums with the first `M` weights, four terms at a time so that few additions wait for
    /// each other.
    #[inline(always)]
    fn first<const M: usize>(&self, x: &[f64], y: &[f64]) -> [f64; M] {
        let mut sums = [0.0; M];
        let mut k = 0;
        while k + 4 <= N {
            let [a, b, c, d] = std::array::from_fn(|m| self.power(k + m, x, y));
            let w = &self.weights[k..k + 4];
            for (m, sum) in sums.iter_mut().enumerate() {
                *sum += (w[0][m] * a + w[1][m] * b) + (w[2][m] * c + w[3][m] * d);
            }
            k += 4;
        }
        while k < N {
            let power = self.power(k, x, y);
            for (sum, weight) in sums.iter_mut().zip(&self.weights[k]) {
                *sum += weight * power;
            }
            k += 1;
        }
        sums
    }

    /// The plain sum alone, for the backward equations.
    #[inline(always)]
    pub(super) fn value(&self, x: &[f64], y: &[f64]) -> f64 {
        let mut parts = [0.0; 4];
        for k in 0..N {
            parts[k % 4] += self.weights[k][2] * self.power(k, x, y);
        }
        (parts[0] + parts[1]) + (parts[2] + parts[3])
    }

    #[inline(always)]
    fn power(&self, k: usize, x: &[f64], y: &[f64]) -> f64 {
        let (i, j) = self.at[k];
        x[usize::from(i)] * y[usize::from(j)]
    }
}

impl Sums {
    /// The sums when a common power was divided out of every term.
    #[inline(always)]
    pub(super) fn times(self, factor: f64) -> Self {
        Self {
            f: self.f * factor,
            i: self.i * factor,
            ii: self.ii * factor,
            j: self.j * factor,
            jj: self.jj * factor,
            ij: self.ij * factor,
        }
    }
}

/// The powers `x^0 … x^(N-1)`.
#[inline(always)]
pub(super) fn powers<const N: usize>(x: f64) -> [f64; N] {
    let mut table = [1.0; N];
    let mut have = 1;
    while have < N {
        let step = table[have - 1] * x;
        let more = have.min(N - have);
        let (known, new) = table.split_at_mut(have);
        for (new, known) in new.iter_mut().zip(&known[..more]) {
            *new = known * step;
        }
        have += more;
    }
    table
}
