//! The way of the gas through a horizontal boiler: mouth, flue beside the burner, bare flue,
//! crossings, smokebox, chimney.

use std::f64::consts::PI;

use reckoning::quantity::{Area, Length};

use super::Yard;
use super::cross::Crossing;
use super::frame::Frame;
use crate::boiler::duct;
use crate::gas_path::{GasSection, Stretch};
use crate::known::{shape, weakest};

impl Yard<'_> {
    pub(super) fn gas_path(&mut self, frame: Option<&Frame>) -> Vec<GasSection> {
        let mut path = Vec::new();
        path.extend(self.mouth());
        if let Some(frame) = frame {
            path.extend(self.through_flue(frame));
            let tubes = self.crossing.filter(|tubes| !tubes.tubes.is_empty());
            path.extend(tubes.map(|tubes| crossings(frame, tubes)));
        }
        path.extend(self.builder.smokebox());
        path.extend(self.builder.chimney());
        path
    }

    fn mouth(&mut self) -> Option<GasSection> {
        let mouth = &self.builder.plan.burner.mouth;
        let area = self
            .builder
            .reading
            .number(&mouth.area, "the way of the gas")?;
        Some(GasSection {
            stretch: Stretch::Mouth,
            ways: 1,
            area,
            length: None,
            hydraulic_diameter: None,
            open: None,
        })
    }

    /// The flue, beside a poker that lies in its mouth and beyond it.
    fn through_flue(&mut self, frame: &Frame) -> Vec<GasSection> {
        let bore = frame.known(2.0 * frame.flue_bore, "the bore of the flue");
        let whole = frame.known(frame.flue_length(), "the flue from end to end");
        let poker = &self.builder.plan.burner.poker;
        let sizes = poker.outside.likely().zip(poker.length.likely());
        let Some((outside, length)) = sizes
            .filter(|(outside, length)| outside.value < bore.value && length.value < whole.value)
        else {
            return vec![duct(Stretch::Flue, 1, &bore, Some(whole))];
        };
        let origin = weakest(&[&bore, &outside, &length]);
        let ring = (bore.value * bore.value - outside.value * outside.value) * (PI / 4.0);
        let gap: Length = bore.value - outside.value;
        let rest: Length = whole.value - length.value;
        vec![
            GasSection {
                stretch: Stretch::Burner,
                ways: 1,
                area: shape(ring, "the flue beside the burner", origin),
                length: Some(length),
                hydraulic_diameter: Some(shape(
                    gap,
                    "the bore of the flue less the outside of the burner",
                    origin,
                )),
                open: None,
            },
            duct(
                Stretch::Flue,
                1,
                &bore,
                Some(shape(rest, "the flue beyond the burner", origin)),
            ),
        ]
    }
}

/// Past the cross tubes, one after another: the least area beside one, over its diameter.
fn crossings(frame: &Frame, tubes: &Crossing) -> GasSection {
    let beside = Area::from_mm2(tubes.beside(frame));
    GasSection {
        stretch: Stretch::Crossings,
        ways: 1,
        area: shape(
            beside,
            "the bore of the flue less a cross tube over its width",
            tubes.weakest,
        ),
        length: Some(tubes.known(2.0 * tubes.outside, "the outside of a cross tube")),
        hydraulic_diameter: None,
        open: None,
    }
}
