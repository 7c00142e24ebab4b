//! One module a command.

pub(crate) mod card;
pub(crate) mod check;
pub(crate) mod draw;
pub(crate) mod files;
pub(crate) mod fire;
pub(crate) mod largest;
pub(crate) mod page;
pub(crate) mod propose;
pub(crate) mod reckon;
pub(crate) mod stress;
