//! The widest strip of bare plate between the tubes and the wall round them.
//!
//! A circle that touches the wall at an angle can grow inwards until it touches a tube. The
//! largest such circle is the widest place of the strip: it touches the wall and two tubes, and
//! its diameter is what a strip of even width would be called.

use reckoning::quantity::Length;

use super::At;

/// Diameter of the largest circle inside a wall of radius `wall` that touches the wall and lies
/// clear of tubes of diameter `tube`; none where there are fewer than two tubes, or where a tube
/// reaches the wall.
#[must_use]
pub fn widest_margin(tubes: &[At], tube: Length, wall: Length) -> Option<Length> {
    let (r, big) = (tube.mm() / 2.0, wall.mm());
    let reach = big + r;
    let polar: Vec<(f64, f64, f64)> = tubes
        .iter()
        .map(|t| {
            (
                t.radius().mm(),
                t.y.mm().atan2(t.x.mm()),
                t.radius().mm() + r,
            )
        })
        .collect();
    if tubes.len() < 2 || polar.iter().any(|t| t.2 >= big) {
        return None;
    }
    // A centre at distance ρ from the axis touches wall and tube where ρ plus its distance from
    // the tube is the constant `reach`: an ellipse about the axis.
    let centre = |t: &(f64, f64, f64), angle: f64| {
        (reach * reach - t.0 * t.0) / (2.0 * (reach - t.0 * (angle - t.1).cos()))
    };
    let width = |angle: f64| {
        let furthest = polar.iter().map(|t| centre(t, angle)).fold(0.0, f64::max);
        2.0 * (big - furthest)
    };
    let mut widest: Option<f64> = None;
    for (i, a) in polar.iter().enumerate() {
        // Where one tube alone holds the circle, it does so from straight across.
        let mut angles = vec![a.1 + std::f64::consts::PI];
        for b in &polar[i + 1..] {
            angles.extend(crossings(a, b, reach));
        }
        for found in angles.into_iter().map(width) {
            widest = Some(widest.map_or(found, |w| w.max(found)));
        }
    }
    widest.map(Length::from_mm)
}

/// The angles at which the ellipses of two tubes cross: `A cos + B sin = C`.
fn crossings(a: &(f64, f64, f64), b: &(f64, f64, f64), reach: f64) -> Vec<f64> {
    let (ka, kb) = (reach * reach - a.0 * a.0, reach * reach - b.0 * b.0);
    let c = reach * (ka - kb);
    let (x, y) = (
        ka * b.0 * b.1.cos() - kb * a.0 * a.1.cos(),
        ka * b.0 * b.1.sin() - kb * a.0 * a.1.sin(),
    );
    let size = x.hypot(y);
    if size <= c.abs() {
        return Vec::new();
    }
    let (middle, half) = (y.atan2(x), (c / size).acos());
    vec![middle - half, middle + half]
}

#[cfg(test)]
mod tests {
    use super::super::{Centre, Circle, Pattern, places};
    use super::*;
    use reckoning::quantity::Angle;

    /// A ring of n tubes: the circle between two of them touches the wall midway. By the law of
    /// cosines its centre satisfies (R + r − ρ)² = ρ² + a² − 2 ρ a cos(π/n), and its diameter is
    /// 2 (R − ρ). Independent calculation for R 45, r 5, a 30, n 12.
    #[test]
    fn independent_ring_of_twelve() {
        let circle = Circle {
            count: 12,
            diameter: Length::from_mm(60.0),
            start: Angle::from_deg(0.0),
        };
        let at = places(
            &Pattern::Rings(vec![circle]),
            Centre::Tube,
            Length::from_mm(40.0),
        );
        let found =
            widest_margin(&at, Length::from_mm(10.0), Length::from_mm(45.0)).map(Length::mm);
        let cosine = (std::f64::consts::PI / 12.0).cos();
        let rho = (50.0 * 50.0 - 30.0 * 30.0) / (2.0 * (50.0 - 30.0 * cosine));
        let expected = 2.0 * (45.0 - rho);
        assert!(
            found.is_some_and(|w| (w - expected).abs() < 1e-9),
            "{found:?} {expected}"
        );
        // A little more than the even gap of 45 − 35.
        assert!(expected > 10.0 && expected < 15.0);
    }

    #[test]
    fn a_gap_in_the_ring_widens_the_margin() {
        let circle = Circle {
            count: 12,
            diameter: Length::from_mm(60.0),
            start: Angle::from_deg(0.0),
        };
        let mut at = places(
            &Pattern::Rings(vec![circle]),
            Centre::Tube,
            Length::from_mm(40.0),
        );
        let (tube, wall) = (Length::from_mm(10.0), Length::from_mm(45.0));
        let whole = widest_margin(&at, tube, wall).map(Length::mm);
        at.pop();
        let gapped = widest_margin(&at, tube, wall).map(Length::mm);
        assert!(gapped > whole);
        assert_eq!(widest_margin(&at[..1], tube, wall), None);
    }
}
