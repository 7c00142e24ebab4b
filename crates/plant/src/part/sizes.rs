//! Sizes of which no shape can be made.

use reckoning::quantity::Length;

use super::feature::{Feature, Form};

/// Why a shape cannot be made at all, whatever the order of work.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NoShape {
    /// A size is not a positive number.
    #[error("{what} of {feature} is {mm} mm")]
    Size {
        /// Id of the feature, or `bar`.
        feature: String,
        /// Which size.
        what: &'static str,
        /// What it is.
        mm: f64,
    },
    /// No metal is left.
    #[error("{feature} leaves no metal")]
    Nothing {
        /// Id of the feature.
        feature: String,
    },
    /// Two sets of flats share a stretch of the axis; the shape between them is not reckoned.
    #[error("flats {feature} share a stretch with flats cut before")]
    FlatsOverlap {
        /// Id of the second.
        feature: String,
    },
}

pub(crate) fn positive(feature: &str, what: &'static str, size: Length) -> Result<(), NoShape> {
    let mm = size.mm();
    if mm > 0.0 && mm.is_finite() {
        return Ok(());
    }
    Err(NoShape::Size {
        feature: feature.to_owned(),
        what,
        mm,
    })
}

/// Refuses a size that is negative or no number.
fn not_negative(feature: &str, what: &'static str, size: Length) -> Result<(), NoShape> {
    let mm = size.mm();
    if mm >= 0.0 && mm.is_finite() {
        return Ok(());
    }
    Err(NoShape::Size {
        feature: feature.to_owned(),
        what,
        mm,
    })
}

/// Refuses a feature whose sizes make no shape.
pub(crate) fn check(feature: &Feature) -> Result<(), NoShape> {
    let id = feature.id.as_str();
    if let Some(span) = feature.form.span() {
        positive(id, "length", span.length())?;
    }
    match &feature.form {
        Form::Face { .. } => Ok(()),
        Form::Turned { from, to, .. } => {
            not_negative(id, "diameter", *from)?;
            not_negative(id, "diameter", *to)?;
            positive(id, "diameter", *from + *to)
        }
        Form::Drilled {
            diameter, depth, ..
        } => {
            positive(id, "diameter", *diameter)?;
            positive(id, "depth", *depth)
        }
        Form::Threaded { thread, .. } => {
            positive(id, "pitch", thread.pitch)?;
            positive(id, "core", thread.core)?;
            positive(id, "depth of thread", thread.major - thread.core)
        }
        Form::Cross(hole) => positive(id, "diameter", hole.diameter),
        Form::Flats(flats) => {
            let count = Length::from_mm(f64::from(flats.count));
            positive(id, "number of flats", count)?;
            positive(id, "distance from the axis", flats.from_axis)
        }
    }
}
