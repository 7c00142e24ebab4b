//! First proposals: duties that can be met, duties that cannot, and what must hold for all.

mod beginnings;
mod forbidden;
mod kept;
mod largest;
mod met;
