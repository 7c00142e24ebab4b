//! Which fires a plan has: one, or two where a coal boiler is fired on gas as well.

use plan::Plan;
use plan::section::{BoilerForm, BurnerPlace};

/// What burns, and where.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Burns {
    /// Coal on a grate.
    Bed,
    /// A flame in a centre flue.
    Flue,
    /// A flame in the firebox of a coal boiler.
    Firebox,
}

impl Burns {
    /// The fire of a plan; where it has coal and gas, that of coal.
    pub(crate) fn first(plan: &Plan) -> Self {
        let coal = !plan.fire.fuel.is_absent();
        match plan.form.value() {
            Some(BoilerForm::HorizontalCentreFlue) => Self::Flue,
            Some(BoilerForm::VerticalFireTubes) if !coal && has_burner(plan) => Self::Firebox,
            _ => Self::Bed,
        }
    }

    /// The second fire of a coal boiler with a burner.
    pub(crate) fn second(plan: &Plan) -> Option<Self> {
        let vertical = plan.form.value() == Some(BoilerForm::VerticalFireTubes);
        let both = vertical && !plan.fire.fuel.is_absent() && has_burner(plan);
        both.then_some(Self::Firebox)
    }

    /// The place of the burner that does not go with the form of the boiler, as a gap.
    pub(crate) fn misplaced(self, plan: &Plan) -> Option<String> {
        let path = plan.burner.place.path();
        match (self, plan.burner.place.value()) {
            (Self::Flue, Some(BurnerPlace::Firebox)) => {
                Some(format!("{path}: a boiler with a flue has no firebox"))
            }
            (Self::Firebox, Some(BurnerPlace::Flue)) => {
                Some(format!("{path}: a boiler with fire tubes has no flue"))
            }
            (Self::Flue | Self::Firebox, None) => Some(path.to_owned()),
            _ => None,
        }
    }
}

fn has_burner(plan: &Plan) -> bool {
    let b = &plan.burner;
    !(b.place.is_absent() && b.jet.bore.is_absent() && b.ports.count.is_absent())
}
