//! How much room a vertical boiler takes.

use reckoning::quantity::Length;

use super::frame::Frame;
use super::sizes::Sizes;
use crate::boiler::{Builder, length};
use crate::known::weakest;
use crate::plant::Outline;

impl Builder<'_> {
    /// From the lowest point to the top of the chimney; the choke is taken to stand in the roof of
    /// the smokebox.
    pub(super) fn outline(&mut self, sizes: &Sizes, frame: Option<&Frame>) -> Option<Outline> {
        let frame = frame?;
        let barrel = sizes.barrel.as_ref()?;
        let lagging = self.plan.boiler.lagging.thickness.likely();
        let coat = lagging.as_ref().map_or(0.0, |l| l.value.mm());
        let width = length(
            barrel.outside.value.mm() + 2.0 * coat,
            "the barrel with its lagging",
            frame.weakest,
        );
        let smoke = self
            .reading
            .size(&self.plan.smokebox.height, "the height of the plant");
        let chimney = self
            .reading
            .size(&self.plan.chimney.height, "the height of the plant");
        let pan = self.plan.ash.pan_depth.value().map(Length::mm);
        let grate = self.plan.grate.height.value().map(Length::mm);
        let low = pan.zip(grate).map_or(frame.barrel_low, |(pan, grate)| {
            frame.barrel_low.min(grate - pan)
        });
        let height = smoke.zip(chimney).map(|(smoke, chimney)| {
            let top = frame.upper.high() + smoke.value.mm() + chimney.value.mm();
            let weakest = weakest(&[&smoke, &chimney]).max(frame.weakest);
            let of = "from the lowest point to the top of the chimney, whose choke stands in the roof of the smokebox";
            length(top - low, of, weakest)
        });
        Some(Outline {
            width,
            height,
            length: None,
        })
    }
}
