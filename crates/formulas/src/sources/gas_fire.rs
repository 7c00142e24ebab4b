//! Works on gas and spirit burners, their fuels and their flues.

use reckoning::{Seen, Source};

/// The works of this field.
pub(super) static SOURCES: &[&Source] = &[
    &REFERENCE_EQUATIONS,
    &ISO_6976,
    &HEATS_OF_FORMATION,
    &BIOGAS_STOVES_1996,
    &FLAMES_AND_EXPLOSIONS,
    &CYLINDER_DRAG,
    &CYLINDER_STEADY_1970,
    &DIFFUSION_FLAMES_1977,
    &DROPLET_BURNING,
    &FLAME_HEIGHTS_1983,
    &SMALL_POOLS,
];

/// Saturation and ideal-gas heat of the liquid fuels.
pub static REFERENCE_EQUATIONS: Source = Source {
    key: "reference-equations-of-fuels",
    title: "Reference equations of state of propane, n-butane, isobutane, ethanol and methanol",
    edition: "Journal of Chemical and Engineering Data 54, 2009 (propane); Journal of Physical \
              and Chemical Reference Data 35, 2006 (butanes) and 43, 2014 (ethanol); Fluid Phase \
              Equilibria 349, 2013 (methanol); values of a general library of fluid properties",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Heating values of gases.
pub static ISO_6976: Source = Source {
    key: "iso-6976-1995",
    title: "Natural gas. Calculation of calorific values, density, relative density and Wobbe \
            index from composition",
    edition: "second edition",
    year: 1995,
    publisher: "ISO",
    identifier: "ISO 6976",
    seen: Seen::FromMemory,
};

/// Heats of formation, from which heating values of spirits follow.
pub static HEATS_OF_FORMATION: Source = Source {
    key: "heats-of-formation",
    title: "CRC Handbook of Chemistry and Physics: standard enthalpies of formation",
    edition: "any recent edition",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// A rule for the flow of gas through a jet at low pressure.
pub static BIOGAS_STOVES_1996: Source = Source {
    key: "biogas-stoves-1996",
    title: "Biogas stoves, course notes: flow of gas through an injector",
    edition: "excerpt",
    year: 1996,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Stability of flames on ports: gradients at the wall.
pub static FLAMES_AND_EXPLOSIONS: Source = Source {
    key: "flames-and-explosions",
    title: "Combustion, Flames and Explosions of Gases",
    edition: "third edition",
    year: 1987,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Drag of a cylinder across a slow stream.
pub static CYLINDER_DRAG: Source = Source {
    key: "viscous-fluid-flow",
    title: "Viscous Fluid Flow",
    edition: "drag of a cylinder across the stream, curve fit 1 + 10 Re^(-2/3)",
    year: 1974,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Drag of a cylinder, solved for steady flow.
pub static CYLINDER_STEADY_1970: Source = Source {
    key: "cylinder-steady-1970",
    title: "Numerical solutions for steady flow past a circular cylinder at Reynolds numbers up \
            to 100",
    edition: "Journal of Fluid Mechanics 42, page 471",
    year: 1970,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Length of laminar diffusion flames.
pub static DIFFUSION_FLAMES_1977: Source = Source {
    key: "laminar-diffusion-flames-1977",
    title: "The prediction of laminar jet diffusion flame sizes",
    edition: "Combustion and Flame 29, page 219",
    year: 1977,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Mass transfer from a burning liquid.
pub static DROPLET_BURNING: Source = Source {
    key: "burning-of-liquid-fuels-1953",
    title: "The combustion of liquid fuels",
    edition: "Fourth Symposium on Combustion, page 847",
    year: 1953,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Height of flames over pools.
pub static FLAME_HEIGHTS_1983: Source = Source {
    key: "flame-heights-1983",
    title: "Luminous heights of turbulent diffusion flames",
    edition: "Fire Safety Journal 5, page 103",
    year: 1983,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Burning rates of small pools of ethanol, as remembered.
pub static SMALL_POOLS: Source = Source {
    key: "small-pools-of-ethanol",
    title: "Burning rates of small pools of ethanol in still air",
    edition: "several papers, figures from memory",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};
