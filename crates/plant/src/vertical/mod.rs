//! Vertical, with a water-jacketed firebox and fire tubes to the smokebox.
//!
//! Heights are above the underside of the foundation ring; angles run clockwise seen from above,
//! from the middle of the firehole.

mod frame;
mod gas;
mod holes;
mod joints;
mod nest;
mod outline;
mod parts;
mod sizes;
mod space;
mod surfaces;
mod vessel;
mod water;

use plan::Plan;

use crate::boiler::{Builder, Built, Form};
use crate::known::Reading;

pub use nest::Nest;
pub use vessel::{StandingPlate, Vessel};

pub(crate) use frame::Frame;
pub(crate) use sizes::Sizes;
pub(crate) use vessel::in_place;
pub(crate) use water::Room;

/// What only a vertical boiler has.
#[derive(Debug)]
pub(crate) struct Upright {
    pub(crate) nest: Option<Nest>,
    /// The vessel as drawn, whether it stands or not.
    pub(crate) drawn: Option<Frame>,
    /// The vessel, where it stands.
    pub(crate) frame: Option<Frame>,
    pub(crate) sizes: Sizes,
}

/// Builds what the plan allows.
pub(crate) fn build(plan: &Plan, reading: &mut Reading) -> Built {
    let sizes = Sizes::read(plan, reading);
    let drawn = Frame::of(&sizes);
    let frame = drawn.clone().filter(Frame::stands);
    let nest = frame
        .as_ref()
        .and_then(|frame| Nest::of(plan, &sizes, frame, reading));
    let mut builder = Builder {
        plan,
        reading,
        built: Built::default(),
    };
    builder.parts(&sizes, frame.as_ref(), nest.as_ref());
    let water = frame
        .as_ref()
        .zip(nest.as_ref())
        .and_then(|(frame, nest)| builder.water(&sizes, frame, nest));
    Built {
        water,
        surfaces: builder.surfaces(&sizes, frame.as_ref(), nest.as_ref()),
        gas_path: builder.gas_path(&sizes, frame.as_ref(), nest.as_ref()),
        outline: builder.outline(&sizes, frame.as_ref()),
        form: Form::Vertical(Box::new(Upright {
            nest,
            drawn,
            frame,
            sizes,
        })),
        ..builder.built
    }
}

impl Builder<'_> {
    fn parts(&mut self, sizes: &Sizes, frame: Option<&Frame>, nest: Option<&Nest>) {
        let walls = sizes.walls();
        self.shells(sizes);
        if let Some(frame) = frame {
            self.ring(frame);
            self.plates(sizes, frame, nest);
            if let Some(nest) = nest {
                self.tubes(nest, sizes);
            }
            self.firehole(sizes, frame);
            self.stays(frame);
            self.joints(sizes, frame, nest);
        }
        self.bushes(&walls);
        self.smokebox_shell();
        self.dryer();
        self.fittings();
    }
}
