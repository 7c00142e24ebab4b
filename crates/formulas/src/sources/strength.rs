//! Works on the strength of pressure parts.

use reckoning::{Seen, Source};

/// The works of this field.
pub(super) static SOURCES: &[&Source] = &[
    &EN_13445_3,
    &ASME_VIII_1,
    &ASME_VIII_2,
    &NBIC_2,
    &EN_12953_3,
    &BS_2790,
    &IBR_1950,
    &STRESS_FORMULAS_7,
    &ELASTIC_STABILITY,
    &COPPER_TUBE_HANDBOOK,
    &DESIGN_OF_MACHINE_ELEMENTS,
    &STRENGTH_OF_MATERIALS_2,
    &SPECIAL_SERVICE_CRAFT,
    &COPPER_TRADE_WORKING_PRESSURES,
    &BRAZING_GUIDE,
    &LAP_TESTS,
    &ISO_4126_7,
    &MODEL_BOILER_CODE,
    &VALVE_SIZES,
    &EN_13906_1,
    &ASME_II_D,
    &EN_10270_3,
    &EN_13445_5,
    &COPPER_PIPE_FORM,
    &NAVAL_SHIPS,
    &IBR_1950_STRESS,
    &TRADE_BOOKS,
];

/// Unfired pressure vessels, design.
pub static EN_13445_3: Source = Source {
    key: "en-13445-3-2021",
    title: "Unfired pressure vessels, Part 3: Design",
    edition: "",
    year: 2021,
    publisher: "CEN",
    identifier: "EN 13445-3",
    seen: Seen::FromMemory,
};

/// Pressure vessel code, design by rules.
pub static ASME_VIII_1: Source = Source {
    key: "asme-viii-1-2021",
    title: "Boiler and Pressure Vessel Code, Section VIII, Division 1",
    edition: "",
    year: 2021,
    publisher: "ASME",
    identifier: "BPVC.VIII.1",
    seen: Seen::FromMemory,
};

/// Pressure vessel code, alternative rules.
pub static ASME_VIII_2: Source = Source {
    key: "asme-viii-2-2021",
    title: "Boiler and Pressure Vessel Code, Section VIII, Division 2",
    edition: "",
    year: 2021,
    publisher: "ASME",
    identifier: "BPVC.VIII.2",
    seen: Seen::FromMemory,
};

/// Inspection code, the table of stayed surfaces.
pub static NBIC_2: Source = Source {
    key: "nbic-2",
    title: "National Board Inspection Code, Part 2: Inspection, Supplement 2",
    edition: "",
    year: 0,
    publisher: "National Board",
    identifier: "NB-23",
    seen: Seen::Read,
};

/// Shell boilers, design.
pub static EN_12953_3: Source = Source {
    key: "en-12953-3-2016",
    title: "Shell boilers, Part 3: Design and calculation for pressure parts",
    edition: "",
    year: 2016,
    publisher: "CEN",
    identifier: "EN 12953-3",
    seen: Seen::FromMemory,
};

/// Welded shell boilers, design.
pub static BS_2790: Source = Source {
    key: "bs-2790-1992",
    title: "Design and manufacture of shell boilers of welded construction",
    edition: "",
    year: 1992,
    publisher: "BSI",
    identifier: "BS 2790",
    seen: Seen::FromMemory,
};

/// State boiler regulations with formulas for copper.
pub static IBR_1950: Source = Source {
    key: "ibr-1950",
    title: "Indian Boiler Regulations",
    edition: "as amended",
    year: 1950,
    publisher: "Central Boilers Board",
    identifier: "IBR 1950",
    seen: Seen::Read,
};

/// Handbook of stress formulas.
pub static STRESS_FORMULAS_7: Source = Source {
    key: "stress-formulas-7",
    title: "Formulas for Stress and Strain",
    edition: "7th edition",
    year: 2002,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Textbook on buckling.
pub static ELASTIC_STABILITY: Source = Source {
    key: "elastic-stability",
    title: "Theory of Elastic Stability",
    edition: "2nd edition",
    year: 1961,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Handbook of copper tube with rated pressures.
pub static COPPER_TUBE_HANDBOOK: Source = Source {
    key: "copper-tube-handbook",
    title: "Copper Tube Handbook",
    edition: "",
    year: 0,
    publisher: "trade association for copper",
    identifier: "",
    seen: Seen::Read,
};

/// Textbook of machine design.
pub static DESIGN_OF_MACHINE_ELEMENTS: Source = Source {
    key: "design-of-machine-elements",
    title: "Design of Machine Elements",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Textbook with the clamped circular plate.
pub static STRENGTH_OF_MATERIALS_2: Source = Source {
    key: "strength-of-materials-2",
    title: "Strength of Materials, Part II",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Rules for small fast ships, with copper pipe.
pub static SPECIAL_SERVICE_CRAFT: Source = Source {
    key: "special-service-craft",
    title: "Rules for the classification of special service craft",
    edition: "",
    year: 0,
    publisher: "classification society",
    identifier: "",
    seen: Seen::Read,
};

/// Design stresses of copper tube by temper, as the trade publishes them.
pub static COPPER_TRADE_WORKING_PRESSURES: Source = Source {
    key: "copper-trade-working-pressures",
    title: "Copper tube: maximum working pressures, questions and answers of a trade association",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Joint design with silver brazes.
pub static BRAZING_GUIDE: Source = Source {
    key: "brazing-guide",
    title: "A maker's guide to silver brazing, chapter on joint design",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Tests of brazed laps by many workshops.
pub static LAP_TESTS: Source = Source {
    key: "lap-tests",
    title: "Strength of brazed lap joints: a round robin of ten workshops",
    edition: "",
    year: 0,
    publisher: "AWS, committee C3",
    identifier: "",
    seen: Seen::Read,
};

/// Safety devices, common data.
pub static ISO_4126_7: Source = Source {
    key: "iso-4126-7",
    title: "Safety devices for protection against excessive pressure, Part 7: Common data",
    edition: "",
    year: 0,
    publisher: "ISO",
    identifier: "ISO 4126-7",
    seen: Seen::FromMemory,
};

/// A page of the hobby with rules for the size of safety valves.
pub static VALVE_SIZES: Source = Source {
    key: "valve-sizes",
    title: "Sizes of safety valves for small boilers, a page of the hobby",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// State rules for model boilers of the hobby.
pub static MODEL_BOILER_CODE: Source = Source {
    key: "model-boiler-code",
    title: "Administrative code of a state, model hobby boilers",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "13 NCAC 13 .0423",
    seen: Seen::Read,
};

/// Cylindrical helical springs, compression.
pub static EN_13906_1: Source = Source {
    key: "en-13906-1-2013",
    title: "Cylindrical helical springs made from round wire and bar, Part 1: Compression springs",
    edition: "",
    year: 2013,
    publisher: "CEN",
    identifier: "EN 13906-1",
    seen: Seen::FromMemory,
};

/// Allowable stresses of metals under pressure.
pub static ASME_II_D: Source = Source {
    key: "asme-ii-d",
    title: "Boiler and Pressure Vessel Code, Section II, Part D: Properties",
    edition: "",
    year: 0,
    publisher: "ASME",
    identifier: "BPVC.II.D",
    seen: Seen::FromMemory,
};

/// Stainless wire for springs.
pub static EN_10270_3: Source = Source {
    key: "en-10270-3",
    title: "Steel wire for mechanical springs, Part 3: Stainless spring steel wire",
    edition: "",
    year: 2011,
    publisher: "CEN",
    identifier: "EN 10270-3",
    seen: Seen::FromMemory,
};

/// Unfired pressure vessels, tests.
pub static EN_13445_5: Source = Source {
    key: "en-13445-5-2021",
    title: "Unfired pressure vessels, Part 5: Inspection and testing",
    edition: "",
    year: 2021,
    publisher: "CEN",
    identifier: "EN 13445-5",
    seen: Seen::FromMemory,
};

/// The form of the wall of copper pipe, whose tables and corrosion allowance were read.
pub static COPPER_PIPE_FORM: Source = Source {
    key: "copper-pipe-form",
    title: "Rules for the classification of special service craft, the form of the wall of pipe",
    edition: "",
    year: 0,
    publisher: "classification society",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Rules for naval ships, with smoke tubes and flanges of boilers.
pub static NAVAL_SHIPS: Source = Source {
    key: "naval-ships",
    title: "Rules for the classification of naval ships",
    edition: "",
    year: 0,
    publisher: "classification society",
    identifier: "",
    seen: Seen::Read,
};

/// The clause of the state regulations on the stress of shells, which was not read.
pub static IBR_1950_STRESS: Source = Source {
    key: "ibr-1950-stress",
    title: "Indian Boiler Regulations, the clause on permitted stress",
    edition: "as amended",
    year: 1950,
    publisher: "Central Boilers Board",
    identifier: "IBR 1950",
    seen: Seen::FromMemory,
};

/// The trade's books, at second hand.
pub static TRADE_BOOKS: Source = Source {
    key: "trade-books",
    title: "Books of the trade on model boilers, as pages of the hobby quote them",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::CommonPractice,
};
