//! The way of the gas through a vertical boiler.

use super::frame::Frame;
use super::nest::Nest;
use super::sizes::Sizes;
use crate::boiler::{Builder, duct, length};
use crate::gas_path::{GasSection, Stretch};

impl Builder<'_> {
    pub(super) fn gas_path(
        &mut self,
        sizes: &Sizes,
        frame: Option<&Frame>,
        nest: Option<&Nest>,
    ) -> Vec<GasSection> {
        let mut path = self.fire(sizes, frame);
        if let Some(nest) = nest {
            let tubes = u32::try_from(nest.tubes.len()).unwrap_or(u32::MAX);
            path.push(duct(Stretch::Tubes, tubes, &nest.bore, nest.length.clone()));
        }
        path.extend(self.smokebox());
        path.extend(self.chimney());
        path
    }

    fn fire(&mut self, sizes: &Sizes, frame: Option<&Frame>) -> Vec<GasSection> {
        let mut path = Vec::new();
        let (grate, fire) = (&self.plan.grate, &self.plan.fire);
        let wanted = "the way of the gas";
        let diameter = self.reading.size(&grate.diameter, wanted);
        let open = self.reading.number(&grate.free_area, wanted);
        let depth = self.reading.number(&fire.depth, wanted);
        if let Some(diameter) = &diameter {
            path.push(GasSection {
                open,
                length: None,
                hydraulic_diameter: None,
                ..duct(Stretch::Grate, 1, diameter, None)
            });
            path.push(GasSection {
                hydraulic_diameter: None,
                ..duct(Stretch::Bed, 1, diameter, depth.clone())
            });
        }
        if let (Some(round), Some(frame)) = (&sizes.firebox, frame) {
            let top = self.grate_top(frame) + depth.map_or(0.0, |d| d.value.mm());
            let high = frame.lower.low - top;
            let of = "from the top of the bed to the crown";
            let long = (high > 0.0).then(|| length(high, of, frame.weakest));
            path.push(duct(Stretch::Firebox, 1, &round.bore, long));
        }
        path
    }

    /// Height of the top of the grate, mm: that of the plan, else of the foundation ring.
    pub(super) fn grate_top(&mut self, frame: &Frame) -> f64 {
        let height = self
            .reading
            .number(&self.plan.grate.height, "the height of the fire");
        height.map_or(frame.ring, |h| h.value.mm())
    }
}
