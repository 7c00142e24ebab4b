//! Works on threads, drills, cutting and truth between settings.

use reckoning::{Seen, Source};

/// The works of this field.
pub(super) static SOURCES: &[&Source] = &[
    &ISO_68_1,
    &ISO_261,
    &ISO_724,
    &ISO_898_1,
    &ISO_529,
    &BS_84,
    &WHITWORTH_CHART,
    &BA_PAGES,
    &MODEL_THREADS,
    &MODEL_SERIES,
    &POCKET_BOOK,
    &ISO_228_1,
    &MACHINERYS_HANDBOOK_31,
    &MACHINERYS_HANDBOOK_24,
    &DRILL_TAP_CHART,
    &NAVEDTRA_14345,
    &MACHINE_SHOP_SPEEDS,
    &ISO_1101,
    &METAL_DATA_SHEETS,
    &EN_1057,
    &EN_1652,
    &EN_837_1,
];

/// The metric thread form.
pub static ISO_68_1: Source = Source {
    key: "iso-68-1-1998",
    title: "ISO general purpose screw threads, basic profile, part 1: metric screw threads",
    edition: "first",
    year: 1998,
    publisher: "ISO",
    identifier: "ISO 68-1",
    seen: Seen::FromMemory,
};

/// The metric thread sizes.
pub static ISO_261: Source = Source {
    key: "iso-261-1998",
    title: "ISO general purpose metric screw threads, general plan",
    edition: "second",
    year: 1998,
    publisher: "ISO",
    identifier: "ISO 261",
    seen: Seen::FromMemory,
};

/// The effective and minor diameters of metric threads.
pub static ISO_724: Source = Source {
    key: "iso-724-1993",
    title: "ISO general purpose metric screw threads, basic dimensions",
    edition: "second",
    year: 1993,
    publisher: "ISO",
    identifier: "ISO 724",
    seen: Seen::FromMemory,
};

/// The stress area of a metric thread.
pub static ISO_898_1: Source = Source {
    key: "iso-898-1-2013",
    title: "Mechanical properties of fasteners made of carbon steel and alloy steel, part 1",
    edition: "fifth",
    year: 2013,
    publisher: "ISO",
    identifier: "ISO 898-1",
    seen: Seen::FromMemory,
};

/// The lead of taps.
pub static ISO_529: Source = Source {
    key: "iso-529-1993",
    title: "Short machine taps and hand taps",
    edition: "second",
    year: 1993,
    publisher: "ISO",
    identifier: "ISO 529",
    seen: Seen::FromMemory,
};

/// The Whitworth thread form and its series.
pub static BS_84: Source = Source {
    key: "bs-84-2007",
    title: "Parallel screw threads of Whitworth form: requirements",
    edition: "",
    year: 2007,
    publisher: "BSI",
    identifier: "BS 84",
    seen: Seen::FromMemory,
};

/// A chart of the coarse and fine Whitworth threads with their drills.
pub static WHITWORTH_CHART: Source = Source {
    key: "whitworth-chart",
    title: "chart of BSW and BSF threads of a vintage engine club: diameter, core, effective, drills",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// The British Association threads.
pub static BA_PAGES: Source = Source {
    key: "ba-thread-pages",
    title: "public data pages of the British Association (BA) threads, to BS 93",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "BS 93",
    seen: Seen::Read,
};

/// The constant pitch threads of model work, with the drills used for them.
pub static MODEL_THREADS: Source = Source {
    key: "model-thread-page",
    title: "thread page of a live-steam society: tapping drills for 32 and 40 threads an inch and BA",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// The constant pitch series of model work, as remembered.
pub static MODEL_SERIES: Source = Source {
    key: "model-thread-series",
    title: "constant pitch threads of Whitworth form in model engineering",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Parallel pipe threads.
pub static POCKET_BOOK: Source = Source {
    key: "mechanical-pocket-book",
    title: "Mechanical Engineer's Pocket Book",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Parallel pipe threads beyond the three sizes that were read.
pub static ISO_228_1: Source = Source {
    key: "iso-228-1-2000",
    title: "Pipe threads where pressure-tight joints are not made on the threads, part 1",
    edition: "fourth",
    year: 2000,
    publisher: "ISO",
    identifier: "ISO 228-1",
    seen: Seen::FromMemory,
};

/// Percentage of thread for a tapping drill.
pub static MACHINERYS_HANDBOOK_31: Source = Source {
    key: "machinerys-handbook-31",
    title: "Machinery's Handbook",
    edition: "31st",
    year: 2020,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Length of engagement; met as a quotation only, so it is not marked as read.
pub static MACHINERYS_HANDBOOK_24: Source = Source {
    key: "machinerys-handbook-24",
    title: "Machinery's Handbook (as quoted elsewhere)",
    edition: "24th",
    year: 1992,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Roots and 75 % drills of unified threads.
pub static DRILL_TAP_CHART: Source = Source {
    key: "drill-tap-chart",
    title: "public drill and tap chart with root diameters, 75 % and 50 % drills",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Speeds of drilling and turning.
pub static NAVEDTRA_14345: Source = Source {
    key: "navedtra-14345",
    title: "Rate training manual, machinery repairman: drilling speeds and feeds, page 93",
    edition: "",
    year: 0,
    publisher: "US Navy",
    identifier: "NAVEDTRA 14345",
    seen: Seen::Read,
};

/// Speeds of turning.
pub static MACHINE_SHOP_SPEEDS: Source = Source {
    key: "machine-shop-speeds",
    title: "machine-shop speed and feed sheet, and a mill manual's table, high-speed steel",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// The zone of a coaxiality tolerance.
pub static ISO_1101: Source = Source {
    key: "iso-1101-2017",
    title: "Geometrical product specifications: geometrical tolerancing",
    edition: "fourth",
    year: 2017,
    publisher: "ISO",
    identifier: "ISO 1101",
    seen: Seen::FromMemory,
};

/// Densities of coppers, brasses, bronzes and steels.
pub static METAL_DATA_SHEETS: Source = Source {
    key: "metal-data-sheets",
    title: "Data sheets of wrought and cast copper alloys and of steels, public pages",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "C106, CW510L, CW613N, C37000 and their neighbours",
    seen: Seen::FromMemory,
};

/// Sizes of copper tube.
pub static EN_1057: Source = Source {
    key: "en-1057-2006",
    title: "Copper and copper alloys: seamless, round copper tubes for water and gas in sanitary and heating applications",
    edition: "with amendment 1",
    year: 2006,
    publisher: "CEN",
    identifier: "EN 1057",
    seen: Seen::FromMemory,
};

/// Thicknesses of copper sheet.
pub static EN_1652: Source = Source {
    key: "en-1652-1997",
    title: "Copper and copper alloys: plate, sheet, strip and circles for general purposes",
    edition: "first",
    year: 1997,
    publisher: "CEN",
    identifier: "EN 1652",
    seen: Seen::FromMemory,
};

/// Scales of pressure gauges.
pub static EN_837_1: Source = Source {
    key: "en-837-1-1996",
    title: "Pressure gauges, part 1: Bourdon tube pressure gauges",
    edition: "first",
    year: 1996,
    publisher: "CEN",
    identifier: "EN 837-1",
    seen: Seen::FromMemory,
};
