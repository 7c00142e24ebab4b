//! Drills by number and letter, sheet and wire by gauge.
//!
//! Sources: the standard wire gauge of BS 3737:1964 (withdrawn), read in a public reprint; the
//! Birmingham gauge and the drill sizes from memory, drills checked at single places against a
//! published tap drill chart. Left out: gauge numbers heavier than 0 and lighter than 30, which
//! no small boiler is made of.

use crate::source::{Seen, Source};

/// The standard wire gauge.
pub static BS_3737_1964: Source = Source {
    key: "bs-3737-1964",
    title: "Specification for legal sizes of wire, the standard wire gauge",
    edition: "withdrawn; public reprint of the table",
    year: 1964,
    publisher: "British Standards Institution",
    identifier: "BS 3737:1964",
    seen: Seen::Read,
};

/// The Birmingham gauge, used for tube walls.
pub static BIRMINGHAM_GAUGE: Source = Source {
    key: "birmingham-gauge",
    title: "Birmingham wire gauge, as printed in tables of tube walls",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// Twist drills by number and letter.
pub static NUMBER_AND_LETTER_DRILLS: Source = Source {
    key: "number-letter-drills",
    title: "Number and letter sizes of twist drills, as printed in workshop tables",
    edition: "",
    year: 0,
    publisher: "",
    identifier: "",
    seen: Seen::FromMemory,
};

/// A sheet or wire by its gauge number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheet {
    /// Gauge number.
    pub number: u32,
    /// Thickness in inches, which defines the gauge.
    pub inch: f64,
    /// Thickness in mm as printed, to check the inch against.
    pub printed_mm: f64,
}

const fn sheet(number: u32, inch: f64, printed_mm: f64) -> Sheet {
    Sheet {
        number,
        inch,
        printed_mm,
    }
}

/// The standard wire gauge ([`BS_3737_1964`]), thick to thin.
pub static SWG: &[Sheet] = &[
    sheet(0, 0.324, 8.230),
    sheet(1, 0.300, 7.620),
    sheet(2, 0.276, 7.010),
    sheet(3, 0.252, 6.401),
    sheet(4, 0.232, 5.893),
    sheet(5, 0.212, 5.385),
    sheet(6, 0.192, 4.877),
    sheet(7, 0.176, 4.470),
    sheet(8, 0.160, 4.064),
    sheet(9, 0.144, 3.658),
    sheet(10, 0.128, 3.251),
    sheet(11, 0.116, 2.946),
    sheet(12, 0.104, 2.642),
    sheet(13, 0.092, 2.337),
    sheet(14, 0.080, 2.032),
    sheet(15, 0.072, 1.829),
    sheet(16, 0.064, 1.626),
    sheet(17, 0.056, 1.422),
    sheet(18, 0.048, 1.219),
    sheet(19, 0.040, 1.016),
    sheet(20, 0.036, 0.914),
    sheet(21, 0.032, 0.813),
    sheet(22, 0.028, 0.711),
    sheet(23, 0.024, 0.610),
    sheet(24, 0.022, 0.559),
    sheet(25, 0.020, 0.508),
    sheet(26, 0.018, 0.457),
    sheet(27, 0.0164, 0.417),
    sheet(28, 0.0148, 0.376),
    sheet(29, 0.0136, 0.345),
    sheet(30, 0.0124, 0.315),
];

/// The Birmingham gauge ([`BIRMINGHAM_GAUGE`]), thick to thin.
pub static BWG: &[Sheet] = &[
    sheet(10, 0.134, 3.404),
    sheet(11, 0.120, 3.048),
    sheet(12, 0.109, 2.769),
    sheet(13, 0.095, 2.413),
    sheet(14, 0.083, 2.108),
    sheet(15, 0.072, 1.829),
    sheet(16, 0.065, 1.651),
    sheet(17, 0.058, 1.473),
    sheet(18, 0.049, 1.245),
    sheet(19, 0.042, 1.067),
    sheet(20, 0.035, 0.889),
    sheet(22, 0.028, 0.711),
];

/// Number drills 1 to 80 in inches, No 1 first ([`NUMBER_AND_LETTER_DRILLS`]).
#[rustfmt::skip]
pub static NUMBER_DRILLS: &[f64] = &[
    0.2280, 0.2210, 0.2130, 0.2090, 0.2055, 0.2040, 0.2010, 0.1990, 0.1960, 0.1935,
    0.1910, 0.1890, 0.1850, 0.1820, 0.1800, 0.1770, 0.1730, 0.1695, 0.1660, 0.1610,
    0.1590, 0.1570, 0.1540, 0.1520, 0.1495, 0.1470, 0.1440, 0.1405, 0.1360, 0.1285,
    0.1200, 0.1160, 0.1130, 0.1110, 0.1100, 0.1065, 0.1040, 0.1015, 0.0995, 0.0980,
    0.0960, 0.0935, 0.0890, 0.0860, 0.0820, 0.0810, 0.0785, 0.0760, 0.0730, 0.0700,
    0.0670, 0.0635, 0.0595, 0.0550, 0.0520, 0.0465, 0.0430, 0.0420, 0.0410, 0.0400,
    0.0390, 0.0380, 0.0370, 0.0360, 0.0350, 0.0330, 0.0320, 0.0310, 0.0292, 0.0280,
    0.0260, 0.0250, 0.0240, 0.0225, 0.0210, 0.0200, 0.0180, 0.0160, 0.0145, 0.0135,
];

/// Letter drills A to Z in inches ([`NUMBER_AND_LETTER_DRILLS`]).
#[rustfmt::skip]
pub static LETTER_DRILLS: &[f64] = &[
    0.234, 0.238, 0.242, 0.246, 0.250, 0.257, 0.261, 0.266, 0.272, 0.277,
    0.281, 0.290, 0.295, 0.302, 0.316, 0.323, 0.332, 0.339, 0.348, 0.358,
    0.368, 0.377, 0.386, 0.397, 0.404, 0.413,
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{INCH, MM};

    #[test]
    fn published_mm_of_each_sheet_is_its_inch_size() {
        for sheet in SWG.iter().chain(BWG) {
            let mm = MM.from_si(INCH.to_si(sheet.inch));
            let off = (mm - sheet.printed_mm).abs();
            assert!(off <= 0.000_5 + 1e-12, "No {}: {off} mm off", sheet.number);
        }
    }

    #[test]
    fn each_row_is_thinner_than_the_one_before() {
        for table in [SWG, BWG] {
            for pair in table.windows(2) {
                assert!(pair[0].number < pair[1].number && pair[1].inch < pair[0].inch);
            }
        }
        assert!(NUMBER_DRILLS.windows(2).all(|pair| pair[1] < pair[0]));
        assert!(LETTER_DRILLS.windows(2).all(|pair| pair[0] < pair[1]));
        assert!(NUMBER_DRILLS[0] < LETTER_DRILLS[0]);
        assert_eq!((NUMBER_DRILLS.len(), LETTER_DRILLS.len()), (80, 26));
    }
}
