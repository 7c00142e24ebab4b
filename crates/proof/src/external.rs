//! A tube with pressure outside: every pressure that limits it, as plain numbers.

use formulas::vessel::lower_bound::lower_bound;
use formulas::vessel::oval::{self, Oval};
use formulas::vessel::{allow, ring, shell_buckling};

/// Factor on collapse at work.
pub(crate) const COLLAPSE_AT_WORK: f64 = 1.5;
/// Factor on collapse at the water test.
pub(crate) const COLLAPSE_AT_TEST: f64 = 1.1;
/// Factor on first yield at work.
pub(crate) const YIELD_AT_WORK: f64 = 1.5;

/// Which diameter stays when the wall changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Held {
    /// Outside, as of drawn tube.
    Outside,
    /// Inside, as of a rolled shell.
    Bore,
}

/// A tube with pressure outside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tube {
    /// Which diameter stays when the wall changes.
    pub held: Held,
    /// Outside diameter, mm.
    pub d_o_mm: f64,
    /// Wall, mm.
    pub wall_mm: f64,
    /// Length between supports, mm.
    pub l_mm: f64,
    /// Ovality, greatest less least diameter, mm.
    pub delta_mm: f64,
    /// Modulus of elasticity, MPa.
    pub e_mpa: f64,
    /// Ratio of lateral to axial strain.
    pub nu: f64,
    /// 0.2 % proof stress at work, MPa.
    pub hot_mpa: f64,
    /// 0.2 % proof stress at the water test, MPa.
    pub cold_mpa: f64,
    /// Design stress at work, MPa.
    pub f_mpa: f64,
    /// Test pressure over working pressure.
    pub test_factor: f64,
}

/// Failing pressures of a tube with one strength of its metal, MPa.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Allowed {
    /// Elastic limit.
    pub sigma_e: f64,
    /// Pressure at which the wall yields.
    pub p_y: f64,
    /// Elastic over yield pressure.
    pub x: f64,
    /// Collapse over yield pressure.
    pub y: f64,
    /// Collapse pressure, lower bound.
    pub p_r: f64,
    /// Working pressure allowed by collapse.
    pub by_collapse: f64,
    /// Pressure at which the oval tube first yields.
    pub q: f64,
    /// Working pressure allowed by first yield.
    pub by_yield: f64,
}

/// Which of the five limits is the least.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Governs {
    /// Collapse at work.
    CollapseAtWork,
    /// Collapse at the water test.
    CollapseAtTest,
    /// First yield at work.
    YieldAtWork,
    /// First yield at the water test.
    YieldAtTest,
    /// Hoop compression at the design stress.
    Stress,
}

impl Governs {
    /// The limit in words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::CollapseAtWork => "collapse at work",
            Self::CollapseAtTest => "collapse at the water test",
            Self::YieldAtWork => "first yield of the oval tube at work",
            Self::YieldAtTest => "first yield of the oval tube at the water test",
            Self::Stress => "hoop compression at the design stress",
        }
    }
}

/// Everything a reader may ask about such a tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct External {
    /// Mean diameter, mm.
    pub d_m_mm: f64,
    /// Mean radius, mm.
    pub r_mm: f64,
    /// Elastic collapse pressure between supports, MPa.
    pub p_m: f64,
    /// Number of lobes there.
    pub lobes: u32,
    /// Radial departure from a circle, mm.
    pub w_0_mm: f64,
    /// Elastic collapse pressure of the long tube, MPa.
    pub q_cr: f64,
    /// At work.
    pub work: Allowed,
    /// At the water test, as working pressure.
    pub test: Allowed,
    /// Working pressure at the design stress, MPa.
    pub cap: f64,
}

/// What work and test share.
struct Shared {
    r_mm: f64,
    p_m: f64,
    w_0_mm: f64,
    q_cr: f64,
}

impl Tube {
    /// The same tube with another wall.
    #[must_use]
    pub fn with_wall(self, wall_mm: f64) -> Self {
        let d_o_mm = match self.held {
            Held::Outside => self.d_o_mm,
            Held::Bore => ring::outside(ring::bore(self.d_o_mm, self.wall_mm), wall_mm),
        };
        Self {
            wall_mm,
            d_o_mm,
            ..self
        }
    }

    /// Works every limit.
    #[must_use]
    pub fn external(&self) -> External {
        let d_m_mm = ring::mean(self.d_o_mm, self.wall_mm);
        let r_mm = ring::radius(d_m_mm);
        let (p_m, lobes) = shell_buckling::finite(shell_buckling::Tube {
            e_mpa: self.e_mpa,
            nu: self.nu,
            r_mm,
            wall_mm: self.wall_mm,
            l_mm: self.l_mm,
        });
        let shared = Shared {
            r_mm,
            p_m,
            w_0_mm: oval::deviation(self.delta_mm),
            q_cr: shell_buckling::long(self.e_mpa, self.nu, r_mm, self.wall_mm),
        };
        let test = self.test_factor;
        External {
            d_m_mm,
            r_mm,
            p_m,
            lobes,
            w_0_mm: shared.w_0_mm,
            q_cr: shared.q_cr,
            work: self.with(&shared, self.hot_mpa, (COLLAPSE_AT_WORK, YIELD_AT_WORK)),
            test: self.with(&shared, self.cold_mpa, (COLLAPSE_AT_TEST * test, test)),
            cap: oval::stress_cap(self.f_mpa, self.wall_mm, self.d_o_mm),
        }
    }

    /// Works the limits of one proof stress, with factors on collapse and on first yield.
    fn with(&self, shared: &Shared, proof_mpa: f64, factors: (f64, f64)) -> Allowed {
        let sigma_e = allow::elastic_limit(proof_mpa);
        let p_y = oval::yield_pressure(sigma_e, self.wall_mm, shared.r_mm);
        let x = allow::ratio(shared.p_m, p_y);
        // Off the curve there is no number, and the limit is seen to be missing.
        let y = lower_bound(x).unwrap_or(f64::NAN);
        let p_r = allow::collapse(y, p_y);
        let q = oval::first_yield(Oval {
            sigma_y_mpa: proof_mpa,
            q_cr_mpa: shared.q_cr,
            r_mm: shared.r_mm,
            t_mm: self.wall_mm,
            w_0_mm: shared.w_0_mm,
        });
        Allowed {
            sigma_e,
            p_y,
            x,
            y,
            p_r,
            by_collapse: allow::pressure(p_r, factors.0),
            q,
            by_yield: allow::pressure(q, factors.1),
        }
    }
}

/// Which limits count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Limits {
    /// All five: the tube itself.
    All,
    /// Collapse and the design stress: the wall that a tube within the roundness of the collapse
    /// curve needs, as the metal beside an opening is counted from.
    Collapse,
}

impl External {
    /// The least of the limits that count, MPa, and which it is.
    #[must_use]
    pub fn least(&self, of: Limits) -> (f64, Governs) {
        let collapse = [
            (self.work.by_collapse, Governs::CollapseAtWork),
            (self.test.by_collapse, Governs::CollapseAtTest),
            (self.cap, Governs::Stress),
        ];
        let first_yield = [
            (self.work.by_yield, Governs::YieldAtWork),
            (self.test.by_yield, Governs::YieldAtTest),
        ];
        let counted = match of {
            Limits::All => first_yield.as_slice(),
            Limits::Collapse => &[],
        };
        let start = (f64::INFINITY, Governs::Stress);
        collapse.iter().chain(counted).fold(start, |least, next| {
            // A limit that cannot be worked wins, so that it is seen and not passed over.
            if next.0.is_nan() || next.0 < least.0 {
                *next
            } else {
                least
            }
        })
    }
}
