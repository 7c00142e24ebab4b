//! Vertical, with a water-jacketed firebox and fire tubes to the smokebox.
//!
//! Heights are above the underside of the foundation ring; angles run clockwise seen from above,
//! from the middle of the firehole.

mod bushes;
mod frame;
mod gas;
mod holes;
mod joints;
mod nest;
mod outline;
mod parts;
mod plate;
mod sizes;
mod space;
mod surfaces;
mod vessel;
mod water;

use plan::{Entry, Plan};
use reckoning::quantity::{Length, Mass};
use reckoning::{Known, Origin};

use crate::gas_path::GasSection;
use crate::joint::Joint;
use crate::known::{Reading, shape};
use crate::metal;
use crate::part::{NoShape, Part, Shape, Stock, Turned};
use crate::plant::{Outline, Surfaces};

pub use nest::Nest;
pub use space::WaterSpace;
pub use vessel::{StandingPlate, Vessel};

pub(crate) use frame::Frame;
pub(crate) use sizes::Sizes;

/// All that could be built of a vertical boiler.
#[derive(Debug, Default)]
pub(crate) struct Built {
    pub(crate) parts: Vec<Part>,
    pub(crate) refused: Vec<(String, NoShape)>,
    /// Sizes of a part that the plan leaves out, by the id of the part.
    pub(crate) chosen: Vec<(String, Known<Length>)>,
    pub(crate) joints: Vec<Joint>,
    pub(crate) nest: Option<Nest>,
    pub(crate) water: Option<WaterSpace>,
    pub(crate) surfaces: Surfaces,
    pub(crate) gas_path: Vec<GasSection>,
    pub(crate) outline: Option<Outline>,
    /// The vessel as drawn, whether it stands or not.
    pub(crate) drawn: Option<Frame>,
    /// The vessel, where it stands.
    pub(crate) frame: Option<Frame>,
    pub(crate) sizes: Option<Sizes>,
}

/// Builds parts one after another and notes what is missing.
pub(crate) struct Builder<'a> {
    pub(crate) plan: &'a Plan,
    pub(crate) reading: &'a mut Reading,
    built: Built,
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
        nest,
        drawn,
        frame,
        sizes: Some(sizes),
        ..builder.built
    }
}

impl Builder<'_> {
    fn parts(&mut self, sizes: &Sizes, frame: Option<&Frame>, nest: Option<&Nest>) {
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
        self.bushes(sizes);
        self.smokebox_shell();
        self.dryer();
        self.fittings();
    }

    fn part(
        &mut self,
        id: impl Into<String>,
        name: impl Into<String>,
        metal: &Entry<String>,
        shape: Shape,
        stock: Option<Stock>,
    ) {
        let id = id.into();
        if let Err(refused) = shape.hollow(&id) {
            self.built.refused.push((id, refused));
            return;
        }
        let pressure = !["smokebox", "dryer"].contains(&id.as_str()) && !id.starts_with("fitting.");
        let common = self.plan.boiler.metal.get().filter(|_| pressure);
        let metal_name = metal.get().or(common).cloned();
        if metal_name.is_none() {
            self.reading.miss(metal.path(), "the mass of a part");
        }
        self.built.parts.push(Part {
            id,
            name: name.into(),
            metal: metal_name,
            shape,
            stock,
        });
    }

    fn turned(
        &mut self,
        id: String,
        name: &str,
        metal: &Entry<String>,
        shape: Result<Turned, NoShape>,
    ) {
        match shape {
            Ok(turned) => {
                let stock = Some(Stock::Bar(turned.stock()));
                self.part(id, name, metal, Shape::Turned(turned), stock);
            }
            Err(refused) => self.built.refused.push((id, refused)),
        }
    }
}

/// Mass of each part whose metal is in the table, no better known than its density and the sizes
/// that were chosen for it.
pub(crate) fn masses(built: &Built) -> Vec<(String, Known<Mass>)> {
    let parts = &built.parts;
    parts
        .iter()
        .filter_map(|part| {
            let designation = part.metal.as_deref()?;
            let density = metal::density(designation)?;
            let of = format!("{} at the density of {designation}", part.id);
            let chosen = built.chosen.iter().filter(|(id, _)| *id == part.id);
            let weakest = chosen
                .map(|(_, size)| size.given.origin())
                .fold(density.given.origin(), Origin::max);
            Some((
                part.id.clone(),
                shape(part.mass(density.value), of, weakest),
            ))
        })
        .collect()
}

/// A length taken off the frame.
fn length(mm: f64, of: impl Into<String>, weakest: Origin) -> Known<Length> {
    shape(Length::from_mm(mm), of, weakest)
}
