//! Works on draught, engines and steam coils.

use reckoning::{Seen, Source};

/// The works of this field.
pub(super) static SOURCES: &[&Source] = &[
    &ENTRAINMENT_1961,
    &STEAM_ENGINES_1911,
    &NAPIER_RULE,
    &STEAM_GENERATION_35,
    &COIL_CRITICAL_1967,
    &COIL_LAMINAR_1929,
    &COIL_TURBULENT_1959,
    &COIL_LAMINAR_HEAT_1981,
    &COIL_TURBULENT_HEAT_1997,
    &CROSSFLOW_1977,
    &FREE_CONVECTION_1975,
];

/// Entrainment of a round turbulent jet.
pub static ENTRAINMENT_1961: Source = Source {
    key: "jet-entrainment-1961",
    title: "Measurements of entrainment by axisymmetrical turbulent jets",
    edition: "Journal of Fluid Mechanics 11, 21-32",
    year: 1961,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Mean pressure of the diagram against cut-off.
pub static STEAM_ENGINES_1911: Source = Source {
    key: "steam-engines-1911",
    title: "Steam Engines, reference series no. 70",
    edition: "first edition, New York",
    year: 1911,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// The flow of saturated steam through an orifice, as a rule of thumb.
pub static NAPIER_RULE: Source = Source {
    key: "napier-rule",
    title: "Rule for the flow of saturated steam through an orifice, m = p A / 70",
    edition: "as handed down in engineers' pocket books",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Draught of a chimney, and the flow of gas in it.
pub static STEAM_GENERATION_35: Source = Source {
    key: "steam-generation-and-use",
    title: "Steam: its generation and use",
    edition: "35th edition, eighth issue",
    year: 1922,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Where the flow in a coil turns turbulent.
pub static COIL_CRITICAL_1967: Source = Source {
    key: "coil-critical-1967",
    title: "Heat transfer and pressure drop in tube coils",
    edition: "Chemie Ingenieur Technik 39, 781-789, in German",
    year: 1967,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Laminar friction in curved pipes.
pub static COIL_LAMINAR_1929: Source = Source {
    key: "curved-pipes-laminar-1929",
    title: "Streamline flow through curved pipes",
    edition: "Proceedings of the Royal Society A 123, 645-663",
    year: 1929,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Turbulent friction in curved pipes.
pub static COIL_TURBULENT_1959: Source = Source {
    key: "curved-pipes-turbulent-1959",
    title: "Friction factors for turbulent flow in curved pipes",
    edition: "Journal of Basic Engineering 81, 123-132",
    year: 1959,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Laminar heat transfer in a coil.
pub static COIL_LAMINAR_HEAT_1981: Source = Source {
    key: "coil-laminar-heat-1981",
    title: "Fully developed laminar convection from a helical coil",
    edition: "Chemical Engineering Communications 9, 185-200",
    year: 1981,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Turbulent heat transfer in a coil.
pub static COIL_TURBULENT_HEAT_1997: Source = Source {
    key: "coil-turbulent-heat-1997",
    title: "The effects of Prandtl numbers on local and average convective heat transfer characteristics in helical pipes",
    edition: "Journal of Heat Transfer 119, 467-473",
    year: 1997,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Heat transfer to a cylinder across the stream.
pub static CROSSFLOW_1977: Source = Source {
    key: "crossflow-cylinder-1977",
    title: "A correlating equation for forced convection from gases and liquids to a circular cylinder in crossflow",
    edition: "Journal of Heat Transfer 99, 300-306",
    year: 1977,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Free convection from a pipe.
pub static FREE_CONVECTION_1975: Source = Source {
    key: "free-convection-1975",
    title: "Correlating equations for laminar and turbulent free convection from a horizontal cylinder",
    edition: "International Journal of Heat and Mass Transfer 18, 1049-1053",
    year: 1975,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};
