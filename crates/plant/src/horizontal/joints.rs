//! The brazed joints of a horizontal boiler.

use std::f64::consts::PI;

use plan::section::StayRun;

use super::Yard;
use super::cross::Crossing;
use super::frame::Frame;
use crate::boiler::{length, round, rows, seen};
use crate::joint::Joint;
use crate::part::quadrature::integral;

/// Error of the length of a saddle, as a share of the radius of the tube.
const RELATIVE_ERROR: f64 = 1e-12;

impl Yard<'_> {
    pub(super) fn joints(&mut self, frame: &Frame) {
        self.end_joints(frame);
        if let Some(crossing) = self.crossing.filter(|tubes| tubes.passes(frame)) {
            self.tube_joints(frame, crossing);
        }
        self.stay_joints(frame);
        self.builder.bush_joints(&self.sizes.walls());
    }

    fn end_joints(&mut self, frame: &Frame) {
        let plan = self.builder.plan;
        let end = &plan.boiler.end;
        let ends = [
            ("end.front", &frame.front, &end.front),
            ("end.back", &frame.back, &end.back),
        ];
        for (id, standing, section) in ends {
            let of = "the straight of the flange, or the thickness of a flat plate";
            let lap = frame.known(standing.lap(), of);
            let path = round(standing.radius, frame.weakest);
            let how = seen(section.joint.value());
            self.builder.joint((id, "barrel"), Some(lap), path, how);
            let lap = frame.known(standing.thickness, "the thickness of the end");
            let path = round(frame.flue, frame.weakest);
            let how = seen(plan.boiler.flue.joint.value());
            self.builder.joint(("flue", id), Some(lap), path, how);
        }
    }

    /// Both ends of a tube: the saddle where it comes out of the flue.
    fn tube_joints(&mut self, frame: &Frame, crossing: &Crossing) {
        let plan = self.builder.plan;
        let how = seen(plan.boiler.cross_tubes.joint.value());
        let of = "round the tube, where it comes out of the flue";
        let path = length(saddle(crossing.outside, frame.flue), of, crossing.weakest);
        let wall = frame.known(frame.flue - frame.flue_bore, "the wall of the flue");
        for i in 1..=crossing.tubes.len() {
            for end in ["left", "right"] {
                let first = format!("cross-tube.{i}");
                self.builder.built.joints.push(Joint {
                    id: format!("{first}/flue.{end}"),
                    first,
                    second: "flue".to_owned(),
                    lap: Some(wall.clone()),
                    path: path.clone(),
                    seen: how,
                });
            }
        }
    }

    fn stay_joints(&mut self, frame: &Frame) {
        let plan = self.builder.plan;
        for (id, stay) in rows(&plan.boiler.stays, |s| &s.id) {
            let tied = stay.run.value() == Some(StayRun::PlateToPlate);
            let Some(diameter) = stay.diameter.likely().filter(|_| tied) else {
                continue;
            };
            let path = length(
                PI * diameter.value.mm(),
                "once round the stay",
                diameter.given.origin(),
            );
            for (end, standing) in [("end.front", &frame.front), ("end.back", &frame.back)] {
                let lap = frame.known(standing.thickness, "the thickness of the end");
                let pair = (&*format!("stay.{id}"), end);
                self.builder.joint(pair, Some(lap), path.clone(), None);
            }
        }
    }
}

/// Length of the line in which a tube of radius `r` passes a flue of radius `flue` square to it.
fn saddle(r: f64, flue: f64) -> f64 {
    let mut f = |a: f64| {
        let (sine, cosine) = a.sin_cos();
        // The line rises by √(flue² − (r sin a)²); across it turns with the tube.
        let rise = r * sine * cosine / (flue * flue - (r * sine).powi(2)).sqrt();
        r * rise.hypot(1.0)
    };
    4.0 * integral(&mut f, 0.0, PI / 2.0, RELATIVE_ERROR * r)
}

#[cfg(test)]
mod tests {
    use super::saddle;

    /// Limit: on a flue that is wide beside it, the line is the round of the tube. Independent
    /// calculation: tube of 3 in a flue of 20.5, by 2 000 000 chords.
    #[test]
    fn independent_saddle() {
        assert!((saddle(1.0, 1e6) / std::f64::consts::TAU - 1.0).abs() < 1e-12);
        assert!((saddle(3.0, 20.5) - SADDLE).abs() < 1e-9);
    }

    const SADDLE: f64 = 18.875_033_853_579;
}
