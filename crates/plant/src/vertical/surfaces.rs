//! Surfaces of a vertical boiler that pass heat.

use std::f64::consts::PI;

use reckoning::Known;
use reckoning::quantity::Area;

use super::frame::Frame;
use super::nest::Nest;
use super::sizes::Sizes;
use crate::boiler::Builder;
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
        if let Some(frame) = frame {
            surfaces.firebox_side = self.side(sizes, frame);
            if let Some(nest) = nest {
                tubes(&mut surfaces, frame, nest);
            }
        }
        surfaces
    }

    /// The wall of the firebox between fire and water: below the ring there is no water behind it,
    /// below the grate no fire before it.
    fn side(&mut self, sizes: &Sizes, frame: &Frame) -> Option<Known<Area>> {
        let low = self.grate_top(frame).max(frame.ring);
        let high = frame.lower.low - low;
        let hole = sizes
            .firehole
            .as_ref()
            .map_or(0.0, |h| disc(h.outside.value.mm()));
        let side = 2.0 * PI * frame.firebox_bore * high - hole;
        let of = "the firebox inside, from grate or ring to crown, less the firehole";
        (high > 0.0).then(|| area(side, of, frame))
    }
}

fn tubes(surfaces: &mut Surfaces, frame: &Frame, nest: &Nest) {
    let count = f64::from(u32::try_from(nest.tubes.len()).unwrap_or(u32::MAX));
    let (bore, outside) = (nest.bore.value.mm(), nest.outside.value.mm());
    let crown = disc(2.0 * frame.firebox_bore) - count * disc(bore);
    surfaces.crown = Some(area(crown, "the crown, less the bores of the tubes", frame));
    if let Some(between) = &nest.between_plates {
        let long = count * PI * between.value.mm();
        let inside = "the bores of the tubes between the plates";
        surfaces.tubes_inside = Some(area(long * bore, inside, frame));
        let wet = "the outsides of the tubes between the plates";
        surfaces.tubes_outside = Some(area(long * outside, wet, frame));
    }
}

fn disc(diameter: f64) -> f64 {
    PI / 4.0 * diameter * diameter
}

fn area(mm2: f64, of: &str, frame: &Frame) -> Known<Area> {
    shape(Area::from_mm2(mm2), of, frame.weakest)
}
