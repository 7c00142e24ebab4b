//! Ends that no nest of tubes holds: flat, flat with a flue through them, dished.

use super::{Dimension, Exposure, Flange, Joint, Metal, Opening};
use reckoning::Known;
use reckoning::quantity::{Length, Temperature};

/// An end of a shell or flue.
#[derive(Clone, Debug)]
pub struct End {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// Thickness, of a dished end at its thinnest.
    pub thickness: Option<Dimension>,
    /// Id of the shell or flue that it closes.
    pub closes: String,
    /// Its flange, where it has one.
    pub flange: Option<Flange>,
    /// What shape it has.
    pub shape: EndShape,
    /// Largest circle of bare plate that meets no stay, flue or wall, from
    /// [`crate::empty_circle`]; of a flat end that stays hold. `None` where none hold it.
    pub stayed: Option<Bare>,
    /// Openings in it that are not flues.
    pub openings: Vec<Opening>,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}

/// The shape of an end.
#[derive(Clone, Debug)]
pub enum EndShape {
    /// A flat disc.
    Flat,
    /// A flat ring round a flue.
    Annular {
        /// Id of the flue that passes through it.
        flue: String,
        /// How far the middle of the flue lies off that of the end.
        off: Option<Dimension>,
        /// The joint of flue and end.
        joint: Joint,
    },
    /// Dished.
    Dished(Box<Dish>),
}

/// The widest bare field of a flat end that stays hold.
#[derive(Clone, Debug)]
pub struct Bare {
    /// Diameter of the largest circle of plate that holds no support and no edge.
    pub circle: Known<Length>,
    /// Middle side of the triangle of the three that it meets.
    pub side: Known<Length>,
}

/// A dished end.
#[derive(Clone, Debug)]
pub struct Dish {
    /// Its curve.
    pub curve: Curve,
    /// Inside radius of the crown, of a torisphere.
    pub crown: Option<Dimension>,
    /// Inside radius of the knuckle, of a torisphere.
    pub knuckle: Option<Dimension>,
    /// On which side the pressure is.
    pub pressed: Pressed,
    /// Whether flame touches it.
    pub exposure: Option<Exposure>,
}

/// The curve of a dished end.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Curve {
    /// Half a sphere.
    Hemisphere,
    /// Half an ellipsoid, twice as wide as high.
    Ellipsoid,
    /// A crown of one radius and a knuckle of another.
    Torisphere,
}

/// On which side of a dish the pressure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Pressed {
    /// On its hollow side, as in the end of a shell.
    Hollow,
    /// On its round side, as on the crown of a firebox.
    Round,
}
