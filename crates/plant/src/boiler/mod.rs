//! What every form of boiler has in common: parts built one after another, bushes, plates, what
//! leads the gas away.

mod bushes;
mod gas;
mod joints;
mod parts;
mod place;
mod plate;

use plan::{Entry, Plan};
use reckoning::quantity::{Length, Mass};
use reckoning::{Known, Origin};

use crate::gas_path::GasSection;
use crate::joint::Joint;
use crate::known::{Reading, shape};
use crate::metal;
use crate::part::{NoShape, Part, Shape, Stock, Turned};
use crate::plant::{Outline, Surfaces};
use crate::water_space::WaterSpace;
use crate::{horizontal, vertical};

pub(crate) use bushes::Walls;
pub(crate) use gas::duct;
pub(crate) use joints::{round, seen};
pub(crate) use parts::{flanged, rows, seam, shell, stay_bar, stock};
pub(crate) use place::hole;
pub(crate) use plate::{End, PlateSizes, Standing, or_flush, plate, standing};

/// All that could be built of a boiler.
#[derive(Debug, Default)]
pub(crate) struct Built {
    pub(crate) parts: Vec<Part>,
    pub(crate) refused: Vec<(String, NoShape)>,
    /// Sizes of a part that the plan leaves out, by the id of the part.
    pub(crate) chosen: Vec<(String, Known<Length>)>,
    pub(crate) joints: Vec<Joint>,
    pub(crate) water: Option<WaterSpace>,
    pub(crate) surfaces: Surfaces,
    pub(crate) gas_path: Vec<GasSection>,
    pub(crate) outline: Option<Outline>,
    /// What only this form of boiler has.
    pub(crate) form: Form,
}

/// What only one form of boiler has.
#[derive(Debug, Default)]
pub(crate) enum Form {
    /// The plan names no form.
    #[default]
    Unsaid,
    /// A vertical boiler.
    Vertical(Box<vertical::Upright>),
    /// A horizontal boiler.
    Horizontal(Box<horizontal::Lying>),
}

/// Builds parts one after another and notes what is missing.
pub(crate) struct Builder<'a> {
    pub(crate) plan: &'a Plan,
    pub(crate) reading: &'a mut Reading,
    pub(crate) built: Built,
}

impl Builder<'_> {
    pub(crate) fn part(
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

    pub(crate) fn turned(
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

/// A length taken off the shape of the boiler.
pub(crate) fn length(mm: f64, of: impl Into<String>, weakest: Origin) -> Known<Length> {
    shape(Length::from_mm(mm), of, weakest)
}
