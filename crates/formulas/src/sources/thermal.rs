//! Works on fuel, flue gas, the fire and heat transfer.

use reckoning::{Seen, Source};

/// The works of this field.
pub(super) static SOURCES: &[&Source] = &[
    &FUEL_81_HHV,
    &ISO_1928,
    &ATOMIC_WEIGHTS,
    &NASA_TP_2002_211556,
    &IJT_25_AIR_GASES,
    &JPCRD_27_CARBON_DIOXIDE,
    &JPCRD_45_CARBON_DIOXIDE,
    &JCP_18_VISCOSITY,
    &MOLPHYS_12_CONDUCTIVITY,
    &CODATA_2018,
    &CEP_48_PACKED_COLUMNS,
    &COMBUSTION_FLAME_19,
    &RADIATIVE_TRANSFER,
    &HEAT_ATLAS_2010,
    &IJHMT_63_TUBES,
    &COAL_ANALYSIS_1884,
    &JANAF_1998,
    &HEAT_TRANSFER_2007,
    &AICHE_12_FLUIDISATION,
    &VDI_77_DRAG,
];

/// Higher heating value from elementary analysis.
pub static FUEL_81_HHV: Source = Source {
    key: "fuel-81-hhv-2002",
    title: "A unified correlation for estimating HHV of solid, liquid and gaseous fuels",
    edition: "Fuel, volume 81, page 1051",
    year: 2002,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Net from gross calorific value.
pub static ISO_1928: Source = Source {
    key: "iso-1928-2009",
    title: "Solid mineral fuels. Determination of gross calorific value by the bomb calorimetric \
            method and calculation of net calorific value",
    edition: "third edition",
    year: 2009,
    publisher: "ISO",
    identifier: "ISO 1928",
    seen: Seen::FromMemory,
};

/// Atomic masses, for the chemistry of burning.
pub static ATOMIC_WEIGHTS: Source = Source {
    key: "iupac-atomic-weights-2013",
    title: "Atomic weights of the elements",
    edition: "conventional values",
    year: 2013,
    publisher: "IUPAC",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Heat capacities and enthalpies of gases.
pub static NASA_TP_2002_211556: Source = Source {
    key: "nasa-tp-2002-211556",
    title: "NASA Glenn Coefficients for Calculating Thermodynamic Properties of Individual Species",
    edition: "read in public copies of its data file",
    year: 2002,
    publisher: "NASA",
    identifier: "NASA/TP-2002-211556",
    seen: Seen::Read,
};

/// Viscosity and conductivity of nitrogen and oxygen.
pub static IJT_25_AIR_GASES: Source = Source {
    key: "ijt-25-air-gases-2004",
    title: "Viscosity and Thermal Conductivity Equations for Nitrogen, Oxygen, Argon, and Air",
    edition: "International Journal of Thermophysics, volume 25, page 21",
    year: 2004,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Viscosity of carbon dioxide.
pub static JPCRD_27_CARBON_DIOXIDE: Source = Source {
    key: "jpcrd-27-carbon-dioxide-1998",
    title: "The Viscosity of Carbon Dioxide",
    edition: "Journal of Physical and Chemical Reference Data, volume 27, page 31",
    year: 1998,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Conductivity of carbon dioxide.
pub static JPCRD_45_CARBON_DIOXIDE: Source = Source {
    key: "jpcrd-45-carbon-dioxide-2016",
    title: "Reference Correlation of the Thermal Conductivity of Carbon Dioxide from the Triple \
            Point to 1100 K and up to 200 MPa",
    edition: "Journal of Physical and Chemical Reference Data, volume 45, 013102",
    year: 2016,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// The mixing rule for viscosity.
pub static JCP_18_VISCOSITY: Source = Source {
    key: "jcp-18-viscosity-1950",
    title: "A viscosity equation for gas mixtures",
    edition: "Journal of Chemical Physics, volume 18, page 517",
    year: 1950,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// The mixing rule for conductivity.
pub static MOLPHYS_12_CONDUCTIVITY: Source = Source {
    key: "molphys-12-conductivity-1967",
    title: "Thermal conductivity of binary, ternary and quaternary mixtures of rare gases",
    edition: "Molecular Physics, volume 12, page 569",
    year: 1967,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// The physical constants.
pub static CODATA_2018: Source = Source {
    key: "codata-2018",
    title: "Recommended values of the fundamental physical constants",
    edition: "2018",
    year: 2018,
    publisher: "CODATA",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Pressure loss of packed beds.
pub static CEP_48_PACKED_COLUMNS: Source = Source {
    key: "cep-48-packed-columns-1952",
    title: "Fluid flow through packed columns",
    edition: "Chemical Engineering Progress, volume 48, page 89",
    year: 1952,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Emissivity of water vapour and carbon dioxide.
pub static COMBUSTION_FLAME_19: Source = Source {
    key: "combustion-flame-19-1972",
    title: "Spectral and total emissivity of water vapor and carbon dioxide",
    edition: "Combustion and Flame, volume 19, page 33; coefficients read in a published copy",
    year: 1972,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Radiation in enclosures; the stirred furnace.
pub static RADIATIVE_TRANSFER: Source = Source {
    key: "radiative-transfer-1967",
    title: "Radiative Transfer",
    edition: "chapters 7 and 14",
    year: 1967,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Heat transfer and pressure loss of tubes.
pub static HEAT_ATLAS_2010: Source = Source {
    key: "heat-atlas-2010",
    title: "VDI Heat Atlas",
    edition: "second edition",
    year: 2010,
    publisher: "VDI",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Turbulent and transitional flow in tubes.
pub static IJHMT_63_TUBES: Source = Source {
    key: "ijhmt-63-tubes-2013",
    title: "On heat transfer in tubes",
    edition: "International Journal of Heat and Mass Transfer, volume 63, page 134",
    year: 2013,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Dry steam coal of South Wales: analysis and heat by calorimeter.
pub static COAL_ANALYSIS_1884: Source = Source {
    key: "coal-analysis-1884",
    title: "Scientific American Supplement, number 441: analyses of Welsh steam coal",
    edition: "number 441",
    year: 1884,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Thermochemical tables of gases.
pub static JANAF_1998: Source = Source {
    key: "janaf-1998",
    title: "NIST-JANAF Thermochemical Tables",
    edition: "fourth edition",
    year: 1998,
    publisher: "NIST",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Air and a worked duct.
pub static HEAT_TRANSFER_2007: Source = Source {
    key: "heat-transfer-2007",
    title: "Fundamentals of Heat and Mass Transfer",
    edition: "sixth edition",
    year: 2007,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Minimum flow for a bed to fluidise.
pub static AICHE_12_FLUIDISATION: Source = Source {
    key: "aiche-12-fluidisation-1966",
    title: "A generalized method for predicting the minimum fluidization velocity",
    edition: "AIChE Journal, volume 12, page 610",
    year: 1966,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Drag of spheres.
pub static VDI_77_DRAG: Source = Source {
    key: "vdi-77-drag-1933",
    title: "Über die grundlegenden Berechnungen bei der Schwerkraftaufbereitung",
    edition: "Zeitschrift des Vereines Deutscher Ingenieure, volume 77, page 318",
    year: 1933,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};
