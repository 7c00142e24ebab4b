//! Works that report trials of boilers, to which whole states are held.

use reckoning::{Seen, Source};

/// The works of this field.
pub(super) static SOURCES: &[&Source] = &[
    &TRIALS_1872,
    &TRIALS_1829,
    &LOCOMOTIVE_DRAUGHT,
    &BOILER_1911,
    &ECONOMY_LINE,
    &OWNER_REPORT,
];

/// Trial of a portable engine with Welsh coal.
pub static TRIALS_1872: Source = Source {
    key: "scientific-american-supplement-441",
    title: "Scientific American Supplement, number 441: lecture on the efficiency of boilers, quoting the journal of the Royal Agricultural Society, volume ix",
    edition: "number 441",
    year: 1884,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// The locomotive that won the trials of 1829, as three handbooks give it.
pub static TRIALS_1829: Source = Source {
    key: "steam-engine-handbooks-1836-1857",
    title: "Accounts of the locomotive trials of 1829 in handbooks of 1836, 1840 and 1857",
    edition: "",
    year: 1857,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Vacuum of firebox and smokebox of a locomotive.
pub static LOCOMOTIVE_DRAUGHT: Source = Source {
    key: "treatise-steam-engine-locomotive-draught",
    title: "A treatise on the steam engine: experiments on the draught of a locomotive",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Trials of marine boilers.
pub static BOILER_1911: Source = Source {
    key: "encyclopaedia-1911-boiler",
    title: "Encyclopaedia Britannica, 11th edition: article on boilers, tables of trials",
    edition: "11th edition",
    year: 1911,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Rates of equal economy of locomotives.
pub static ECONOMY_LINE: Source = Source {
    key: "locomotive-economy-line",
    title: "Sixty trials of forty-five locomotives on coke, and the law of equal economy drawn through them",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};

/// Vacuum in the smokebox of a garden locomotive.
pub static OWNER_REPORT: Source = Source {
    key: "owner-report-draught",
    title: "An owner's report of the draught of a locomotive of 7 1/4 in gauge",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::Read,
};
