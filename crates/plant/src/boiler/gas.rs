//! What leads the gas away: smokebox, coil, chimney.

use std::f64::consts::PI;

use plan::section::DryerPlace;
use reckoning::Known;
use reckoning::quantity::{Area, Length};

use super::Builder;
use crate::gas_path::{GasSection, Stretch};
use crate::known::shape;

/// Round ways side by side.
pub(crate) fn duct(
    stretch: Stretch,
    ways: u32,
    bore: &Known<Length>,
    long: Option<Known<Length>>,
) -> GasSection {
    let area = bore.value * bore.value * (PI / 4.0) * f64::from(ways);
    GasSection {
        stretch,
        ways,
        area: shape(area, "the round of its bore", bore.given.origin()),
        length: long,
        hydraulic_diameter: Some(bore.clone()),
        open: None,
    }
}

impl Builder<'_> {
    pub(crate) fn smokebox(&mut self) -> Vec<GasSection> {
        let s = &self.plan.smokebox;
        let wanted = "the way of the gas";
        let outside = self.reading.size(&s.outside, wanted);
        let wall = self.reading.size(&s.wall, wanted);
        let height = self.reading.size(&s.height, wanted);
        let (Some(outside), Some(wall)) = (outside, wall) else {
            return Vec::new();
        };
        let weakest = crate::known::weakest(&[&outside, &wall]);
        let bore = shape(
            outside.value - wall.value * 2.0,
            "the smokebox inside",
            weakest,
        );
        if bore.value.mm() <= 0.0 {
            return Vec::new();
        }
        let mut path = vec![duct(Stretch::Smokebox, 1, &bore, height)];
        path.extend(self.coil(&bore));
        path
    }

    /// The least area beside a coil that lies in the smokebox: the turns lie over each other.
    fn coil(&mut self, bore: &Known<Length>) -> Option<GasSection> {
        let d = &self.plan.dryer;
        if d.place.value() != Some(DryerPlace::Smokebox) {
            return None;
        }
        let (tube, coil) = (d.outside.likely()?, d.coil.likely()?);
        let box_area = bore.value * bore.value * (PI / 4.0);
        let turn = coil.value * tube.value * PI;
        let weakest = crate::known::weakest(&[bore, &tube, &coil]);
        let area: Area = box_area - turn;
        Some(GasSection {
            stretch: Stretch::Coil,
            ways: 1,
            area: shape(area, "the smokebox less one turn of the coil", weakest),
            length: None,
            hydraulic_diameter: None,
            open: None,
        })
    }

    pub(crate) fn chimney(&mut self) -> Vec<GasSection> {
        let c = &self.plan.chimney;
        let wanted = "the way of the gas";
        let choke = self.reading.size(&c.choke, wanted);
        let height = self.reading.size(&c.height, wanted);
        let (Some(choke), Some(height)) = (choke, height) else {
            return Vec::new();
        };
        // A chimney of which no parallel part or top is named is parallel all the way.
        let parallel = c.parallel.likely();
        let mut path = vec![duct(
            Stretch::Choke,
            1,
            &choke,
            parallel.clone().or(Some(height.clone())),
        )];
        if let Some(parallel) = parallel.filter(|p| p.value < height.value) {
            let top = c.top.likely().unwrap_or_else(|| choke.clone());
            let weakest = crate::known::weakest(&[&height, &parallel, &top]);
            let rest = shape(
                height.value - parallel.value,
                "the chimney above its parallel part",
                weakest,
            );
            path.push(duct(Stretch::Chimney, 1, &top, Some(rest)));
        }
        path
    }
}
