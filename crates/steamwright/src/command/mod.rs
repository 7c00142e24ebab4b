//! One module a command.

pub(crate) mod check;
pub(crate) mod files;
pub(crate) mod reckon;
