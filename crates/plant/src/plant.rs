//! The plant: what a plan describes, as parts and spaces.

use plan::Plan;
use plan::section::BoilerForm;
use reckoning::quantity::{Area, Length, Mass};
use reckoning::{Finding, Known};

use crate::boiler::{Built, Form, masses};
use crate::gas_path::{GasSection, Stretch};
use crate::horizontal::{self, LyingVessel};
use crate::joint::Joint;
use crate::known::{Gap, Reading, shape};
use crate::part::Part;
use crate::rules;
use crate::vertical::{self, Nest, Vessel};
use crate::water_space::WaterSpace;

/// Surfaces that pass heat, as far as they are known.
#[derive(Clone, Debug, Default)]
pub struct Surfaces {
    /// Grate.
    pub grate: Option<Known<Area>>,
    /// Side of the firebox with water behind it, on the side of the fire.
    pub firebox_side: Option<Known<Area>>,
    /// Crown of the firebox, on the side of the fire, less the bores of the tubes.
    pub crown: Option<Known<Area>>,
    /// Tubes, on the side of the gas.
    pub tubes_inside: Option<Known<Area>>,
    /// Tubes, on the side of the water.
    pub tubes_outside: Option<Known<Area>>,
    /// Flue, on the side of the fire, between the ends and less the cross tubes.
    pub flue: Option<Known<Area>>,
    /// Cross tubes, on the side of the fire; nought without any.
    pub cross_tubes: Option<Known<Area>>,
}

impl Surfaces {
    /// Side and crown of the firebox together.
    #[must_use]
    pub fn firebox(&self) -> Option<Known<Area>> {
        let (side, crown) = (self.firebox_side.as_ref()?, self.crown.as_ref()?);
        let weakest = side.given.origin().max(crown.given.origin());
        Some(shape(
            side.value + crown.value,
            "side and crown of the firebox",
            weakest,
        ))
    }
}

/// The room that the plant takes.
#[derive(Clone, Debug)]
pub struct Outline {
    /// Greatest width of the boiler, lagging included.
    pub width: Known<Length>,
    /// Height over all, chimney included.
    pub height: Option<Known<Length>>,
    /// Length over all, of a boiler that lies.
    pub length: Option<Known<Length>>,
}

/// A plan as geometry. What the plan does not give is absent; [`Resolved::gaps`] names it.
#[derive(Clone, Debug, Default)]
pub struct Plant {
    /// Parts.
    pub parts: Vec<Part>,
    /// Joints.
    pub joints: Vec<Joint>,
    /// How plates, barrel and ring of a vertical boiler stand, as drawn.
    pub vessel: Option<Vessel>,
    /// How barrel, flue, ends and cross tubes of a horizontal boiler lie, as drawn.
    pub lying: Option<LyingVessel>,
    /// Fire tubes in their plates.
    pub nest: Option<Nest>,
    /// Water and steam.
    pub water: Option<WaterSpace>,
    /// Surfaces that pass heat.
    pub surfaces: Surfaces,
    /// The way of the gas, in its order.
    pub gas_path: Vec<GasSection>,
    /// Mass of each part whose metal is known, by its id.
    pub masses: Vec<(String, Known<Mass>)>,
    /// Length of the firebox wall between foundation ring and crown.
    pub firebox_length: Option<Known<Length>>,
    /// The room it takes.
    pub outline: Option<Outline>,
}

impl Plant {
    /// The part with this id.
    #[must_use]
    pub fn part(&self, id: &str) -> Option<&Part> {
        self.parts.iter().find(|part| part.id == id)
    }

    /// A stretch of the way of the gas.
    #[must_use]
    pub fn gas(&self, stretch: Stretch) -> Option<&GasSection> {
        self.gas_path
            .iter()
            .find(|section| section.stretch == stretch)
    }

    /// Mass of metal of all parts whose metal is known; none where there is no such part.
    #[must_use]
    pub fn metal(&self) -> Option<Known<Mass>> {
        let weakest = self.masses.iter().map(|(_, m)| m.given.origin()).max()?;
        Some(shape(
            self.masses.iter().map(|(_, mass)| mass.value).sum(),
            format!("{} parts, those whose metal is known", self.masses.len()),
            weakest,
        ))
    }
}

/// What became of a plan.
#[derive(Clone, Debug, Default)]
pub struct Resolved {
    /// The plant, as far as the plan goes.
    pub plant: Plant,
    /// What its geometry was held against.
    pub findings: Vec<Finding>,
    /// Fields that would let more be worked out.
    pub gaps: Vec<Gap>,
}

/// Works out the parts of a plan.
#[must_use]
pub fn resolve(plan: &Plan) -> Resolved {
    let mut reading = Reading::default();
    reading.want(&plan.form, "the parts of the boiler");
    let built = match plan.form.value() {
        Some(BoilerForm::VerticalFireTubes) => vertical::build(plan, &mut reading),
        Some(BoilerForm::HorizontalCentreFlue) => horizontal::build(plan, &mut reading),
        None => Built::default(),
    };
    Resolved {
        findings: rules::findings(plan, &built),
        plant: plant(built),
        gaps: reading.gaps,
    }
}

fn plant(built: Built) -> Plant {
    let mut plant = Plant {
        masses: masses(&built),
        parts: built.parts,
        joints: built.joints,
        water: built.water,
        surfaces: built.surfaces,
        gas_path: built.gas_path,
        outline: built.outline,
        ..Plant::default()
    };
    match built.form {
        Form::Unsaid => {}
        Form::Vertical(upright) => {
            plant.vessel = upright.drawn.as_ref().map(Vessel::of);
            let frame = upright.frame.as_ref();
            plant.firebox_length = frame.map(vertical::Frame::firebox_length);
            plant.nest = upright.nest;
        }
        Form::Horizontal(lying) => plant.lying = LyingVessel::of(&lying),
    }
    plant
}
