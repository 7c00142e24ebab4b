//! Patterns of tubes in a circle: equal triangles, squares, rings.

use reckoning::quantity::{Angle, Length};

use super::At;

/// Slack in millimetres with which a place on the very limit still counts as inside it.
const ON_LIMIT_MM: f64 = 1e-9;

/// One circle of tubes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Circle {
    /// How many tubes, evenly spaced.
    pub count: u32,
    /// Diameter through their middles; zero for one in the middle.
    pub diameter: Length,
    /// Angle of the first, clockwise from the firehole.
    pub start: Angle,
}

/// How tubes stand.
#[derive(Clone, Debug, PartialEq)]
pub enum Pattern {
    /// Neighbours in equal triangles.
    Triangles {
        /// Middle to middle.
        pitch: Length,
    },
    /// Neighbours in squares.
    Squares {
        /// Middle to middle.
        pitch: Length,
    },
    /// On circles.
    Rings(Vec<Circle>),
}

/// What stands in the middle of the plate.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Centre {
    /// A tube.
    Tube,
    /// The middle of a triangle or of a square of tubes.
    Cell,
    /// The middle between two neighbours.
    Pair,
}

impl Centre {
    /// Every one, in the order in which ties are settled.
    pub const ALL: [Self; 3] = [Self::Tube, Self::Cell, Self::Pair];

    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Tube => "a tube in the middle",
            Self::Cell => "the middle of a cell in the middle",
            Self::Pair => "the middle between two tubes in the middle",
        }
    }

    /// Where the middle of the plate lies in a cell of the pattern, in pitches.
    fn shift(self, height: f64, third: f64) -> (f64, f64) {
        match self {
            Self::Tube => (0.0, 0.0),
            Self::Cell => (0.5, height * third),
            Self::Pair => (0.5, 0.0),
        }
    }
}

/// The places of a pattern whose middles lie within `reach` of the middle of the plate, nearest
/// first; those at one distance in the order of their angle, clockwise from the firehole.
///
/// `centre` is not read for rings, which say themselves where they stand.
#[must_use]
pub fn places(pattern: &Pattern, centre: Centre, reach: Length) -> Vec<At> {
    let mut found = match pattern {
        Pattern::Triangles { pitch } => {
            let height = 0.75_f64.sqrt();
            lattice(
                pitch.mm(),
                (0.5, height),
                centre.shift(height, 1.0 / 3.0),
                reach.mm(),
            )
        }
        Pattern::Squares { pitch } => {
            lattice(pitch.mm(), (0.0, 1.0), centre.shift(1.0, 0.5), reach.mm())
        }
        Pattern::Rings(circles) => circles.iter().flat_map(ring).collect(),
    };
    found.retain(|at| at.radius().mm() <= reach.mm() + ON_LIMIT_MM);
    let clockwise = |at: &At| {
        (-at.y.mm())
            .atan2(at.x.mm())
            .rem_euclid(std::f64::consts::TAU)
    };
    found.sort_by(|a, b| {
        let (ra, rb) = (a.radius().mm(), b.radius().mm());
        if (ra - rb).abs() > ON_LIMIT_MM {
            ra.total_cmp(&rb)
        } else {
            clockwise(a).total_cmp(&clockwise(b))
        }
    });
    found
}

/// Rows of a lattice: each row starts `slant.0` pitches further along and `slant.1` higher.
fn lattice(pitch: f64, slant: (f64, f64), shift: (f64, f64), reach: f64) -> Vec<At> {
    let rows = (reach / (pitch * slant.1)).ceil() + 2.0;
    // A row of the triangular pattern drifts half a pitch; the columns reach far enough for that.
    let columns = (reach / pitch + rows * slant.0).ceil() + 2.0;
    let steps = |n: f64| {
        (0..)
            .map(move |i| f64::from(i) - n)
            .take_while(move |i| *i <= n)
    };
    let mut found = Vec::new();
    for j in steps(rows) {
        for i in steps(columns) {
            found.push(At {
                x: Length::from_mm((i + slant.0 * j - shift.0) * pitch),
                y: Length::from_mm((slant.1 * j - shift.1) * pitch),
            });
        }
    }
    found
}

fn ring(circle: &Circle) -> Vec<At> {
    let step = std::f64::consts::TAU / f64::from(circle.count);
    (0..circle.count)
        .map(|i| {
            let angle = Angle::from_rad(circle.start.rad() + step * f64::from(i));
            At::polar(circle.diameter / 2.0, angle)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn count(pattern: &Pattern, reach: f64) -> usize {
        places(pattern, Centre::Tube, Length::from_mm(reach)).len()
    }

    /// A circle of 90 mm, tubes of 10 mm at a pitch of 13 mm, 4 mm left at the edge: 31 in
    /// triangles, 21 in squares. Independent calculation.
    #[test]
    fn published_counts_in_a_circle() {
        let pitch = Length::from_mm(13.0);
        let reach = 45.0 - 5.0 - 4.0;
        assert_eq!(count(&Pattern::Triangles { pitch }, reach), 31);
        assert_eq!(count(&Pattern::Squares { pitch }, reach), 21);
    }

    /// The numbers of lattice points within a whole number of pitches: 1, 7, 19, 37 for the
    /// triangular lattice, 1, 5, 13, 29 for the square one (the circle problem of number theory,
    /// from memory).
    #[test]
    fn published_points_of_the_lattices() {
        let pitch = Length::from_mm(10.0);
        let triangles = [1, 7, 19, 37];
        let squares = [1, 5, 13, 29];
        for (i, (t, s)) in triangles.into_iter().zip(squares).enumerate() {
            let reach = 10.0 * [0.0, 1.0, 2.0, 3.0][i];
            assert_eq!(count(&Pattern::Triangles { pitch }, reach), t);
            assert_eq!(count(&Pattern::Squares { pitch }, reach), s);
        }
    }

    /// Seven on a circle of 60 mm from the top: coordinates by the sine and cosine.
    /// Independent calculation.
    #[test]
    fn published_seven_on_a_circle() {
        let circle = Circle {
            count: 7,
            diameter: Length::from_mm(60.0),
            start: Angle::from_deg(0.0),
        };
        let at = places(
            &Pattern::Rings(vec![circle]),
            Centre::Tube,
            Length::from_mm(31.0),
        );
        let expected = [
            (30.0, 0.0),
            (18.705, -23.455),
            (-6.676, -29.248),
            (-27.029, -13.017),
        ];
        for (x, y) in expected {
            let near = |p: &At| (p.x.mm() - x).abs() < 5e-4 && (p.y.mm() - y).abs() < 5e-4;
            assert!(at.iter().any(near), "({x}, {y})");
        }
    }

    /// A wider circle adds places and moves none.
    #[test]
    fn identity_places_do_not_depend_on_the_reach() {
        let pitch = Length::from_mm(13.5);
        for pattern in [Pattern::Triangles { pitch }, Pattern::Squares { pitch }] {
            for centre in Centre::ALL {
                let wide = places(&pattern, centre, Length::from_mm(60.0));
                for reach in [5.0, 14.0, 20.0, 27.0, 33.0, 48.0] {
                    let near = places(&pattern, centre, Length::from_mm(reach));
                    assert_eq!(near, wide[..near.len()], "{pattern:?} {centre:?} {reach}");
                    let next = wide.get(near.len()).map(|at| at.radius().mm());
                    assert!(next.is_none_or(|r| r > reach));
                }
            }
        }
    }

    /// No two places are nearer than the pitch, whatever stands in the middle.
    #[test]
    fn identity_pitch_is_the_least_distance() {
        let pitch = Length::from_mm(12.0);
        for pattern in [Pattern::Triangles { pitch }, Pattern::Squares { pitch }] {
            for centre in Centre::ALL {
                let at = places(&pattern, centre, Length::from_mm(40.0));
                let mut least = f64::INFINITY;
                for (i, a) in at.iter().enumerate() {
                    for b in &at[i + 1..] {
                        least = least.min(a.from(*b).mm());
                    }
                }
                assert!(
                    (least - 12.0).abs() < 1e-9,
                    "{pattern:?} {centre:?}: {least}"
                );
            }
        }
    }
}
