//! What the fire must know of the plant's geometry, in SI.

/// The geometry of a fire.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Geometry {
    /// Water surface at the working level, m².
    pub water_surface_m2: f64,
    /// Height of the steam space above it, m.
    pub steam_space_m: f64,
    /// Inside diameter of the smokebox, m; `None` where the plan does not give it.
    pub smokebox_m: Option<f64>,
    /// The way of the gas to the smokebox.
    pub way: Way,
}

/// The way of the gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Way {
    /// Through a wetted firebox and fire tubes.
    Tubes(TubeWay),
    /// Through a centre flue.
    Flue(FlueWay),
}

/// A firebox and its fire tubes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TubeWay {
    /// Fire tubes in the plates.
    pub tubes: f64,
    /// Length of a tube between its ends, m.
    pub tube_length_m: f64,
    /// Wetted side and crown of the firebox, m².
    pub firebox_m2: f64,
    /// Inside diameter of the firebox, m; `None` where the plan does not give it.
    pub firebox_bore_m: Option<f64>,
    /// Height of the firebox between foundation ring and crown, m; `None` where the plan does not
    /// give it.
    pub firebox_height_m: Option<f64>,
}

/// A centre flue and the tubes across it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlueWay {
    /// Bore, m.
    pub bore_m: f64,
    /// Length, m.
    pub length_m: f64,
    /// The tubes across it; `None` where it is plain.
    pub cross: Option<CrossWay>,
}

/// Tubes across a flue.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossWay {
    /// How many.
    pub count: u32,
    /// Outside diameter, m.
    pub outside_m: f64,
    /// Place of the first behind the mouth of the flue, m.
    pub first_m: f64,
    /// Distance from one to the next, m; 0 where there is but one.
    pub spacing_m: f64,
}

impl Geometry {
    /// Firebox and tubes; `None` where the gas takes a flue.
    #[must_use]
    pub fn tubes(&self) -> Option<&TubeWay> {
        match &self.way {
            Way::Tubes(way) => Some(way),
            Way::Flue(_) => None,
        }
    }

    /// The flue; `None` where the gas takes tubes.
    #[must_use]
    pub fn flue(&self) -> Option<&FlueWay> {
        match &self.way {
            Way::Flue(way) => Some(way),
            Way::Tubes(_) => None,
        }
    }
}
