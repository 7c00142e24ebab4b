//! The spring of a safety valve and the pipe to it, for the proof.

use plan::section::{Spring as Planned, SpringGuide, ValvePipe as Piped};
use plan::{Plan, Workshop};
use proof::{Guide, Pipe, Spring, StockSize, ValvePipe, Wire};
use reckoning::size::Bad;

use super::{Fire, dimension, metal, metal_temperature};

/// The spring, where any of it is named.
pub(super) fn spring(it: &Planned) -> Option<Spring> {
    let named = !(it.wire.is_absent()
        && it.coil.is_absent()
        && it.turns.is_absent()
        && it.free_length.is_absent());
    named.then(|| Spring {
        wire: dimension(&it.wire),
        coil: dimension(&it.coil),
        turns: it.turns.known(),
        free: dimension(&it.free_length),
        guide: it.guide.value().map(|guide| match guide {
            SpringGuide::Spindle => Guide::Spindle,
            SpringGuide::FlatEnds => Guide::FlatEnds,
            SpringGuide::LooseEnds => Guide::LooseEnds,
        }),
        metal: it.metal.get().map(|name| Wire::named(name)),
    })
}

fn is_piped(it: &Piped) -> bool {
    !(it.outside.is_absent() && it.wall.is_absent())
}

/// The pipe to the valve, where any of it is named.
pub(super) fn pipe(it: &Piped) -> Option<ValvePipe> {
    is_piped(it).then(|| ValvePipe {
        outside: dimension(&it.outside),
        wall: dimension(&it.wall),
    })
}

/// The pipes of the plan under boiler pressure.
pub(super) fn pipes(plan: &Plan) -> Vec<Pipe> {
    let valves = plan.safety_valves.iter();
    valves
        .filter(|valve| is_piped(&valve.pipe))
        .map(|valve| Pipe {
            id: format!("{}.pipe", super::mount::named("safety-valve", &valve.id)),
            metal: metal(&valve.pipe.metal, plan),
            outside: dimension(&valve.pipe.outside),
            wall: dimension(&valve.pipe.wall),
            metal_temperature: metal_temperature(plan, Fire::Away),
        })
        .collect()
}

/// Spring wire on hand.
#[must_use]
pub fn wires(workshop: &Workshop) -> Vec<StockSize> {
    let pieces = workshop.stock.iter();
    pieces
        .filter(|piece| piece.kind.value() == Some(plan::workshop::StockKind::Wire))
        .filter_map(|piece| {
            let size = piece.across.get()?;
            Some(StockSize {
                text: size.drawn.text.clone(),
                least: size.for_proof(Bad::Small),
            })
        })
        .collect()
}
