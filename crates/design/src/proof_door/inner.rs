//! What stands in the hot gas, for the proof: the coil.

use plan::Plan;
use plan::section::DryerPlace;
use proof::{Coil, CoilHeat};

use super::{dimension, metal};
use crate::fire;

/// Id of the coil.
const COIL: &str = "dryer";

/// The coil that the plan names.
pub(super) fn coil(plan: &Plan) -> Option<Coil> {
    let it = &plan.dryer;
    let named = !(it.outside.is_absent() && it.wall.is_absent() && it.length.is_absent());
    named.then(|| Coil {
        id: COIL.to_owned(),
        metal: metal(&it.metal, plan),
        outside: dimension(&it.outside),
        wall: dimension(&it.wall),
        length: it.length.likely(),
        // A coil whose turns were taken away again may be a straight element.
        turn: it.coil.likely(),
    })
}

/// How hot it gets. A coil that may lie in the firebox is hotter than the smokebox is.
pub(super) fn heat(plan: &Plan, heat: Option<&fire::CoilHeat>) -> Option<CoilHeat> {
    let place = &plan.dryer.place;
    let elsewhere = place.is_emptied() || place.value() == Some(DryerPlace::Firebox);
    let heat = heat.filter(|_| !elsewhere)?;
    Some(CoilHeat {
        coil: COIL.to_owned(),
        flowing: heat.flowing.clone(),
        standing: Some(heat.standing.clone()),
        flux: heat.flux.clone(),
    })
}
