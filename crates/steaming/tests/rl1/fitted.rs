//! The plant with an engine of which little is known, and everything that belongs to it.

use crate::unmeasured::unmeasured;
use steaming::{Admission, Inputs, Lagging, Pipe, Pump};

/// As there, with ports, a lagged steam pipe and a pump on the engine.
pub(crate) fn fitted(inputs: Inputs) -> Inputs {
    let mut inputs = unmeasured(inputs);
    let e = inputs.engine.as_mut().expect("an engine");
    e.admission = Admission::Ports {
        area_m2: 8e-6,
        loss: 3.0,
    };
    e.pipe = Some(Pipe {
        outside_m: 5e-3,
        length_m: 0.3,
        emissivity: 0.6,
        lagging: Some(Lagging {
            thickness_m: 3e-3,
            w_m_k: 0.05,
        }),
    });
    e.pump = Some(Pump {
        water_m3_s: 6e-7,
        efficiency: 0.3,
    });
    inputs
}
