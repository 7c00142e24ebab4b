//! Reading what makers write.
