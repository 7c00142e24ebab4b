//! Every card there is, by family.

use reckoning::Card;

/// The families, one line each.
pub static FAMILIES: &[&[&Card]] = &[
    crate::thread::CARDS,
    crate::cutting::CARDS,
    crate::steam::CARDS,
    crate::draught::CARDS,
    crate::engine::CARDS,
    crate::balance::CARDS,
    crate::coil::CARDS,
    crate::bed::CARDS,
    crate::fuel::CARDS,
    crate::gas::CARDS,
    crate::heat::CARDS,
    crate::supply::CARDS,
    crate::burner::CARDS,
    crate::flue::CARDS,
    crate::spirit::CARDS,
    crate::vessel::ring::CARDS,
    crate::vessel::allow::CARDS,
    crate::vessel::floor::CARDS,
    crate::vessel::shell::CARDS,
    crate::vessel::ligament::CARDS,
    crate::vessel::opening::CARDS,
    crate::vessel::pressure_area::CARDS,
    crate::vessel::shell_buckling::CARDS,
    crate::vessel::oval::CARDS,
    crate::vessel::lower_bound::CARDS,
    crate::vessel::viii_external::CARDS,
    crate::vessel::furnace::CARDS,
    crate::vessel::plate_stayed::CARDS,
    crate::vessel::plate_disc::CARDS,
    crate::vessel::stay::CARDS,
    crate::vessel::stay_rod::CARDS,
    crate::vessel::lap::CARDS,
    crate::vessel::tie::CARDS,
    crate::vessel::foundation::CARDS,
    crate::vessel::bush_joint::CARDS,
    crate::vessel::annulus::CARDS,
    crate::vessel::dish::CARDS,
    crate::vessel::flat_end::CARDS,
    crate::vessel::girder::CARDS,
    crate::vessel::heated::CARDS,
    crate::vessel::overlap::CARDS,
    crate::vessel::thick::CARDS,
    crate::thread::shear::CARDS,
    crate::vessel::european::CARDS,
    crate::vessel::register::CARDS,
    crate::vessel::state::CARDS,
    crate::vessel::state_crown::CARDS,
    crate::vessel::factor_of_safety::CARDS,
    crate::relief::valve::CARDS,
    crate::relief::demand::CARDS,
    crate::trade::CARDS,
    crate::relief::spring::CARDS,
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
