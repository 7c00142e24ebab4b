//! Every card there is, by family.

use reckoning::Card;

/// The families, one line each.
pub static FAMILIES: &[&[&Card]] = &[
    crate::draught::CARDS,
    crate::engine::CARDS,
    crate::coil::CARDS,
    crate::bed::CARDS,
    crate::fuel::CARDS,
    crate::gas::CARDS,
    crate::heat::CARDS,
];

/// Every card in the order of the families.
pub fn cards() -> impl Iterator<Item = &'static Card> {
    FAMILIES.iter().flat_map(|family| family.iter().copied())
}

/// The card with this id.
#[must_use]
pub fn find(id: &str) -> Option<&'static Card> {
    cards().find(|card| card.id == id)
}
