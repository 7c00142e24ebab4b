//! How much room a horizontal boiler takes.

use super::Yard;
use super::frame::Frame;
use crate::boiler::length;
use crate::known::weakest;
use crate::plant::Outline;

impl Yard<'_> {
    /// The smokebox lies behind the barrel on its axis; the choke is taken to stand in its roof.
    pub(super) fn outline(&mut self, frame: Option<&Frame>) -> Option<Outline> {
        let frame = frame?;
        let plan = self.builder.plan;
        let wanted = "the room that the plant takes";
        let reading = &mut *self.builder.reading;
        let box_out = reading.size(&plan.smokebox.outside, wanted);
        let box_long = reading.size(&plan.smokebox.height, wanted);
        let chimney = reading.size(&plan.chimney.height, wanted);
        let coat = plan.boiler.lagging.thickness.likely();
        let coat = coat.as_ref().map_or(0.0, |l| l.value.mm());
        let barrel = 2.0 * (frame.axis() + coat);
        let box_wide = box_out.as_ref().map_or(0.0, |out| out.value.mm());
        let width = frame.known(
            barrel.max(box_wide),
            "the wider of barrel with lagging and smokebox",
        );
        let height = box_out.as_ref().zip(chimney).map(|(out, chimney)| {
            let top = frame.axis() + out.value.mm() / 2.0 + chimney.value.mm();
            let low = (-coat).min(frame.axis() - out.value.mm() / 2.0);
            let weakest = weakest(&[out, &chimney]).max(frame.weakest);
            let of = "from the lowest point to the top of the chimney, whose choke stands in the roof of the smokebox";
            length(top - low, of, weakest)
        });
        let long = box_long.map(|long| {
            let front = frame.mouth().min(frame.front.extent().0).min(0.0);
            let weakest = weakest(&[&long]).max(frame.weakest);
            let of = "from the mouth of the flue to the back of the smokebox, without the burner";
            length(frame.barrel_length + long.value.mm() - front, of, weakest)
        });
        Some(Outline {
            width,
            height,
            length: long,
        })
    }
}
