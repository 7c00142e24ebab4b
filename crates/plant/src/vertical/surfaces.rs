//! Surfaces of a vertical boiler that pass heat.

use std::f64::consts::PI;

use reckoning::quantity::Area;

use super::Builder;
use super::frame::Frame;
use super::nest::Nest;
use super::sizes::Sizes;
use crate::known::shape;
use crate::plant::Surfaces;

impl Builder<'_> {
    pub(super) fn surfaces(
        &mut self,
        sizes: &Sizes,
        frame: Option<&Frame>,
        nest: Option<&Nest>,
    ) -> Surfaces {
        let mut surfaces = Surfaces::default();
        if let Some(diameter) = self.reading.size(&self.plan.grate.diameter, "the grate") {
            let area = diameter.value * diameter.value * (PI / 4.0);
            surfaces.grate = Some(shape(
                area,
                "the round of the grate",
                diameter.given.origin(),
            ));
        }
        let Some(frame) = frame else { return surfaces };
        // Below the ring there is no water behind the wall, below the grate no fire before it.
        let low = self.grate_top(frame).max(frame.ring);
        let hole = sizes
            .firehole
            .as_ref()
            .map_or(0.0, |h| PI / 4.0 * h.outside.value.mm().powi(2));
        let side = 2.0 * PI * frame.firebox_bore * (frame.lower.low - low) - hole;
        let area = |mm2: f64, of: &str| Some(shape(Area::from_mm2(mm2), of, frame.weakest));
        if frame.lower.low > low {
            surfaces.firebox_side = area(
                side,
                "the firebox inside, from grate or ring to crown, less the firehole",
            );
        }
        let crown = PI * frame.firebox_bore.powi(2);
        if let Some(nest) = nest {
            let count = f64::from(u32::try_from(nest.tubes.len()).unwrap_or(u32::MAX));
            let (bore, outside) = (nest.bore.value.mm(), nest.outside.value.mm());
            let ends = count * PI / 4.0 * bore * bore;
            surfaces.crown = area(crown - ends, "the crown, less the bores of the tubes");
            if let Some(between) = &nest.between_plates {
                let long = between.value.mm();
                surfaces.tubes_inside = area(
                    count * PI * bore * long,
                    "the bores of the tubes between the plates",
                );
                surfaces.tubes_outside = area(
                    count * PI * outside * long,
                    "the outsides of the tubes between the plates",
                );
            }
        }
        surfaces
    }
}
