//! Horizontal, with one flue from end to end and water tubes across it.
//!
//! Heights are above the underside of the barrel; lengths run from the front of the barrel, where
//! the burner stands; angles of bushes and stays run clockwise seen from the front, from the top.

mod cross;
mod frame;
mod gas;
mod joints;
mod lie;
mod outline;
mod parts;
mod sizes;
mod space;
mod stick;
mod surfaces;
mod water;

use plan::Plan;

use crate::boiler::{Builder, Built, Form};
use crate::known::Reading;

pub use lie::{CrossTube, CrossTubes, EndField, FlueInPlace, LyingVessel};

pub(crate) use cross::{At as CrossAt, Crossing};
pub(crate) use frame::Frame;
pub(crate) use sizes::Sizes;
pub(crate) use water::Room;

/// What only a horizontal boiler has.
#[derive(Debug)]
pub(crate) struct Lying {
    /// The vessel as drawn, whether it stands or not.
    pub(crate) drawn: Option<Frame>,
    /// The cross tubes; none where they are not known.
    pub(crate) crossing: Option<Crossing>,
    pub(crate) sizes: Sizes,
}

/// Builds what the plan allows.
pub(crate) fn build(plan: &Plan, reading: &mut Reading) -> Built {
    let sizes = Sizes::read(plan, reading);
    let drawn = Frame::of(&sizes);
    let frame = drawn.clone().filter(Frame::stands);
    let crossing = drawn.as_ref().and_then(|frame| Crossing::of(&sizes, frame));
    let mut yard = Yard {
        builder: Builder {
            plan,
            reading,
            built: Built::default(),
        },
        sizes: &sizes,
        crossing: crossing.as_ref(),
    };
    yard.parts(frame.as_ref());
    let water = frame.as_ref().and_then(|frame| yard.water(frame));
    let surfaces = yard.surfaces(frame.as_ref());
    let gas_path = yard.gas_path(frame.as_ref());
    let outline = yard.outline(frame.as_ref());
    let built = yard.builder.built;
    Built {
        water,
        surfaces,
        gas_path,
        outline,
        form: Form::Horizontal(Box::new(Lying {
            drawn,
            crossing,
            sizes,
        })),
        ..built
    }
}

/// Builds the parts of a horizontal boiler.
struct Yard<'a> {
    builder: Builder<'a>,
    sizes: &'a Sizes,
    crossing: Option<&'a Crossing>,
}
