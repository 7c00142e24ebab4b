//! Where stays and bushes stand.

use plan::Entry;
use plan::section::StayRun;
use reckoning::quantity::{Angle, Length};

use super::Builder;
use super::bushes::seat;
use super::parts::rows;
use crate::layout::At;
use crate::part::Hole;

impl Builder<'_> {
    /// The holes of stays and bushes that pass a plate.
    pub(crate) fn holes_through(&mut self, plate: &str) -> Vec<Hole> {
        let mut found = Vec::new();
        for (id, stay) in rows(&self.plan.boiler.stays, |s| &s.id) {
            if stay.run.value() == Some(StayRun::PlateToPlate) {
                let at = self.place(&stay.radius, &stay.angle, "a stay");
                let diameter = self.reading.size(&stay.diameter, "a stay");
                let both = at.zip(diameter);
                found.extend(both.map(|(at, d)| hole(format!("stay.{id}"), at, d.value)));
            }
        }
        for (id, bush) in rows(&self.plan.boiler.bushes, |b| &b.id) {
            if seat(bush) == Some(plate) {
                let at = self.place(&bush.radius, &bush.angle, "a bush");
                let outside = self.reading.size(&bush.outside, "a bush");
                let both = at.zip(outside);
                found.extend(both.map(|(at, d)| hole(format!("bush.{id}"), at, d.value)));
            }
        }
        found
    }

    pub(crate) fn place(
        &mut self,
        radius: &Entry<Length>,
        at: &Entry<Angle>,
        wanted_for: &'static str,
    ) -> Option<At> {
        let radius = self.reading.number(radius, wanted_for)?.value;
        Some(At::polar(radius, self.angle(at, wanted_for)))
    }

    /// An angle clockwise from where angles begin. One that is not given is noted as a gap, and the
    /// part is set there.
    pub(crate) fn angle(&mut self, entry: &Entry<Angle>, wanted_for: &'static str) -> Angle {
        let known = self.reading.number(entry, wanted_for);
        known.map_or(Angle::from_rad(0.0), |k| k.value)
    }
}

/// A hole through a plate.
pub(crate) fn hole(id: String, at: At, diameter: Length) -> Hole {
    Hole {
        id,
        x: at.x,
        y: at.y,
        diameter,
    }
}
