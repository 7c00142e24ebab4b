//! Surfaces of a horizontal boiler that pass heat.

use std::f64::consts::PI;

use reckoning::quantity::Area;

use super::Yard;
use super::frame::Frame;
use crate::known::shape;
use crate::plant::Surfaces;

impl Yard<'_> {
    pub(super) fn surfaces(&self, frame: Option<&Frame>) -> Surfaces {
        let mut surfaces = Surfaces::default();
        let Some((frame, tubes)) = frame.zip(self.crossing) else {
            return surfaces;
        };
        if !tubes.passes(frame) {
            return surfaces;
        }
        let count = f64::from(u32::try_from(tubes.tubes.len()).unwrap_or(u32::MAX));
        let area = |mm2: f64, of: &str| shape(Area::from_mm2(mm2), of, tubes.weakest);
        let (holes, outside) = if count > 0.0 {
            (
                2.0 * count * tubes.hole_area(frame),
                count * tubes.outside_area(frame),
            )
        } else {
            (0.0, 0.0)
        };
        let side = 2.0 * PI * frame.flue_bore * frame.between_ends() - holes;
        surfaces.flue = Some(area(
            side,
            "the inside of the flue between the wet faces of the ends, less the cross tubes",
        ));
        surfaces.cross_tubes = Some(area(
            outside,
            "the outsides of the cross tubes within the flue",
        ));
        surfaces
    }
}
