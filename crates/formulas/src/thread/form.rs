//! The three forms of thread side by side, so that a caller need not ask which it has.

use reckoning::Card;
use reckoning::quantity::Ratio;

use super::{
    BA_CORE, BA_DEPTH_SHARE, BA_EFFECTIVE, METRIC_DEPTH_SHARE, METRIC_EFFECTIVE, METRIC_ROOT,
    WHITWORTH_CORE, WHITWORTH_DEPTH_SHARE, WHITWORTH_EFFECTIVE, ba_core, ba_depth_share,
    ba_effective, metric_depth_share, metric_effective, metric_internal_minor, metric_root,
    whitworth_core, whitworth_depth_share, whitworth_effective,
};

/// A form of thread.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Form {
    /// 60 degrees, ISO metric.
    Metric,
    /// 55 degrees, Whitworth.
    Whitworth,
    /// 47.5 degrees, British Association.
    Ba,
}

/// The shares of full depth between which a tapped hole is good.
///
/// The 60 degree basis is not the core, so its limits differ: a hole of the basic minor diameter
/// stands at 83.3 % there and a hole of the tap's own root at 94.4 %. Common practice, no source;
/// the two figures of the 60 degree form follow from its depths.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HoleLimits {
    /// Below this the thread is shallow.
    pub shallow: Ratio,
    /// Below this a thread under pressure is refused.
    pub pressure: Ratio,
    /// Above this the tap works hard.
    pub tight: Ratio,
    /// From here the tap cuts on its root and jams.
    pub jams: Ratio,
}

/// The cards of one form.
#[derive(Clone, Copy, Debug)]
pub struct FormCards {
    /// Effective diameter from major diameter and pitch.
    pub effective: &'static Card,
    /// Root of the external thread from major diameter and pitch.
    pub root: &'static Card,
    /// Share of full depth from major diameter, pitch and hole.
    pub depth_share: &'static Card,
}

impl Form {
    /// Effective diameter, mm.
    #[must_use]
    pub fn effective(self, d_mm: f64, p_mm: f64) -> f64 {
        match self {
            Self::Metric => metric_effective(d_mm, p_mm),
            Self::Whitworth => whitworth_effective(d_mm, p_mm),
            Self::Ba => ba_effective(d_mm, p_mm),
        }
    }

    /// Root diameter of the external thread, mm.
    #[must_use]
    pub fn root(self, d_mm: f64, p_mm: f64) -> f64 {
        match self {
            Self::Metric => metric_root(d_mm, p_mm),
            Self::Whitworth => whitworth_core(d_mm, p_mm),
            Self::Ba => ba_core(d_mm, p_mm),
        }
    }

    /// Basic minor diameter of the internal thread, mm.
    #[must_use]
    pub fn internal_minor(self, d_mm: f64, p_mm: f64) -> f64 {
        match self {
            Self::Metric => metric_internal_minor(d_mm, p_mm),
            Self::Whitworth => whitworth_core(d_mm, p_mm),
            Self::Ba => ba_core(d_mm, p_mm),
        }
    }

    /// Share of the full depth that a hole leaves, percent.
    #[must_use]
    pub fn depth_share(self, d_mm: f64, p_mm: f64, hole_mm: f64) -> f64 {
        match self {
            Self::Metric => metric_depth_share(d_mm, p_mm, hole_mm),
            Self::Whitworth => whitworth_depth_share(d_mm, p_mm, hole_mm),
            Self::Ba => ba_depth_share(d_mm, p_mm, hole_mm),
        }
    }

    /// Tangent of half the thread angle.
    #[must_use]
    pub fn half_angle_tangent(self) -> f64 {
        let degrees: f64 = match self {
            Self::Metric => 60.0,
            Self::Whitworth => 55.0,
            Self::Ba => 47.5,
        };
        (degrees / 2.0).to_radians().tan()
    }

    /// The cards of this form.
    #[must_use]
    pub fn cards(self) -> FormCards {
        let (effective, root, depth_share) = match self {
            Self::Metric => (&METRIC_EFFECTIVE, &METRIC_ROOT, &METRIC_DEPTH_SHARE),
            Self::Whitworth => (
                &WHITWORTH_EFFECTIVE,
                &WHITWORTH_CORE,
                &WHITWORTH_DEPTH_SHARE,
            ),
            Self::Ba => (&BA_EFFECTIVE, &BA_CORE, &BA_DEPTH_SHARE),
        };
        FormCards {
            effective,
            root,
            depth_share,
        }
    }

    /// The shares between which a hole is good.
    #[must_use]
    pub fn hole_limits(self) -> HoleLimits {
        let (tight, jams) = match self {
            Self::Metric => (83.3, 94.4),
            Self::Whitworth | Self::Ba => (88.0, 100.0),
        };
        HoleLimits {
            shallow: Ratio::from_percent(50.0),
            pressure: Ratio::from_percent(55.0),
            tight: Ratio::from_percent(tight),
            jams: Ratio::from_percent(jams),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn identity_the_limits_of_the_metric_form_are_its_own_minor_and_root() {
        let limits = Form::Metric.hole_limits();
        let at = |hole: f64| Form::Metric.depth_share(10.0, 1.0, hole);
        let minor = at(Form::Metric.internal_minor(10.0, 1.0));
        let root = at(Form::Metric.root(10.0, 1.0));
        assert!((minor - limits.tight.percent()).abs() < 0.05, "{minor}");
        assert!((root - limits.jams.percent()).abs() < 0.05, "{root}");
    }

    #[test]
    fn identity_a_whitworth_or_ba_hole_of_the_core_is_a_full_thread() {
        for form in [Form::Whitworth, Form::Ba] {
            let share = form.depth_share(6.0, 0.75, form.root(6.0, 0.75));
            assert!((share - 100.0).abs() < 1e-9);
        }
    }
}
