//! Hold points: what is to be measured before the answers stand, each thing once.
//!
//! Several checks may bound the same size. Whoever measures it needs the tightest bound alone.

use reckoning::{Bound, Condition};

use crate::answer::{Judged, Standing};

/// One thing to measure.
#[derive(Clone, Debug, PartialEq)]
pub struct HoldPoint {
    /// The sentence with its limit.
    pub says: String,
    /// The plan field that the measurement fills.
    pub field: Option<String>,
    /// The places whose checks wait for it.
    pub places: Vec<String>,
    bound: Option<Bound>,
}

impl HoldPoint {
    fn of(condition: &Condition, place: &str) -> Self {
        Self {
            says: condition.says.clone(),
            field: condition.field.clone(),
            places: vec![place.to_owned()],
            bound: condition.bound,
        }
    }

    /// Takes a condition that this point answers too, and keeps the tighter limit.
    fn takes(&mut self, condition: &Condition, place: &str) -> bool {
        let tighter = match (self.bound, condition.bound) {
            (Some(mine), Some(other)) if self.field == condition.field => other.tighter_than(mine),
            _ if self.says == condition.says => Some(false),
            _ => None,
        };
        let Some(tighter) = tighter else {
            return false;
        };
        if tighter {
            self.says.clone_from(&condition.says);
            self.bound = condition.bound;
        }
        if !self.places.iter().any(|p| p == place) {
            self.places.push(place.to_owned());
        }
        true
    }
}

/// What is to be measured for the findings that lead, in the order of the findings. Conditions
/// that bound the same field on the same side become one, with the tightest limit.
#[must_use]
pub fn hold_points(judged: &[Judged]) -> Vec<HoldPoint> {
    let mut points: Vec<HoldPoint> = Vec::new();
    let leading = judged.iter().filter(|j| j.standing == Standing::Leads);
    for finding in leading.map(|j| &j.finding) {
        for condition in &finding.conditions {
            if !points
                .iter_mut()
                .any(|p| p.takes(condition, &finding.place))
            {
                points.push(HoldPoint::of(condition, &finding.place));
            }
        }
    }
    points
}

#[cfg(test)]
mod tests {
    use super::HoldPoint;
    use reckoning::{Bound, Condition};

    fn asks(says: &str, bound: Bound) -> Condition {
        Condition {
            says: says.to_owned(),
            field: Some("boiler.barrel.wall".to_owned()),
            bound: Some(bound),
        }
    }

    #[test]
    fn two_least_walls_of_one_field_become_the_greater() {
        let mut point = HoldPoint::of(&asks("at least 1 mm", Bound::AtLeast(1e-3)), "barrel");
        assert!(point.takes(&asks("at least 2 mm", Bound::AtLeast(2e-3)), "bush"));
        assert!(point.takes(&asks("at least 1.5 mm", Bound::AtLeast(1.5e-3)), "bush"));
        assert_eq!(point.says, "at least 2 mm");
        assert_eq!(point.places, ["barrel", "bush"]);
    }

    #[test]
    fn a_least_and_a_greatest_value_stay_two() {
        let mut point = HoldPoint::of(&asks("at least 1 mm", Bound::AtLeast(1e-3)), "barrel");
        assert!(!point.takes(&asks("at most 2 mm", Bound::AtMost(2e-3)), "barrel"));
    }
}
