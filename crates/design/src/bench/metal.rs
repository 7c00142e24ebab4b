//! The kind of metal, as far as cutting asks, from its standard designation.

use formulas::cutting::CuttingMetal;

/// Designations by the kind that cuts alike (EN material numbers and older trade numbers for the
/// same metals, from memory).
const DESIGNATIONS: &[(CuttingMetal, &[&str])] = &[
    (
        CuttingMetal::Brass,
        &["CW603N", "CW614N", "CW617N", "CZ121", "CZ122"],
    ),
    (
        CuttingMetal::Bronze,
        &[
            "CW450K", "CW451K", "CW452K", "CW453K", "PB102", "CC480K", "CC483K", "CC491K", "LG2",
        ],
    ),
    (
        CuttingMetal::Copper,
        &["CW004A", "CW008A", "CW024A", "C101", "C103", "C106"],
    ),
    (
        CuttingMetal::MildSteel,
        &["S235JR", "S275JR", "11SMn30", "11SMnPb30", "230M07", "EN1A"],
    ),
    (
        CuttingMetal::Stainless,
        &["1.4301", "1.4305", "1.4401", "1.4404", "303", "304", "316"],
    ),
    (
        CuttingMetal::CastIron,
        &["EN-GJL-150", "EN-GJL-200", "EN-GJL-250"],
    ),
];

/// How a metal of this designation cuts; none where the list does not hold it.
pub(super) fn cutting(designation: &str) -> Option<CuttingMetal> {
    let plain = |text: &str| text.replace([' ', '-'], "").to_lowercase();
    let wanted = plain(designation);
    DESIGNATIONS
        .iter()
        .find(|(_, names)| names.iter().any(|n| plain(n) == wanted))
        .map(|(metal, _)| *metal)
}
