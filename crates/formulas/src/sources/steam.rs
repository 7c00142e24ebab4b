//! Works on the properties of water and steam.

use reckoning::{Seen, Source};

const IAPWS: &str = "International Association for the Properties of Water and Steam";

/// The works of this field.
pub(super) static SOURCES: &[&Source] = &[
    &IAPWS_R7_97_2012,
    &IAPWS_R12_08,
    &IAPWS_R15_11,
    &IAPWS_R1_76_2014,
];

/// The industrial formulation of the thermodynamic properties. The part on metastable vapour was
/// read in a reproduction of the text; the rest is from memory and proved by its tables.
pub static IAPWS_R7_97_2012: Source = Source {
    key: "iapws-r7-97-2012",
    title: "Revised release on the IAPWS industrial formulation 1997 for the thermodynamic properties of water and steam",
    edition: "revision of 2012",
    year: 2012,
    publisher: IAPWS,
    identifier: "R7-97(2012)",
    seen: Seen::FromMemory,
};

/// Viscosity.
pub static IAPWS_R12_08: Source = Source {
    key: "iapws-r12-08",
    title: "Release on the IAPWS formulation 2008 for the viscosity of ordinary water substance",
    edition: "",
    year: 2008,
    publisher: IAPWS,
    identifier: "R12-08",
    seen: Seen::FromMemory,
};

/// Thermal conductivity.
pub static IAPWS_R15_11: Source = Source {
    key: "iapws-r15-11",
    title: "Release on the IAPWS formulation 2011 for the thermal conductivity of ordinary water substance",
    edition: "",
    year: 2011,
    publisher: IAPWS,
    identifier: "R15-11",
    seen: Seen::FromMemory,
};

/// Surface tension.
pub static IAPWS_R1_76_2014: Source = Source {
    key: "iapws-r1-76-2014",
    title: "Revised release on surface tension of ordinary water substance",
    edition: "revision of 2014",
    year: 2014,
    publisher: IAPWS,
    identifier: "R1-76(2014)",
    seen: Seen::FromMemory,
};
