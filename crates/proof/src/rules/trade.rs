//! Rules of the trade's books.

use super::cite;
use formulas::sources::TRADE_BOOKS;
use reckoning::Rule;

/// Shells.
pub(crate) static TRADE_SHELL: Rule = Rule {
    id: "trade.shell-wall",
    sentence: "A barrel is worked at an eighth of the tensile strength of copper.",
    remedy: "a thicker wall",
    cite: cite(&TRADE_BOOKS, "factor of safety of 8"),
};

/// Flats.
pub(crate) static TRADE_FLAT: Rule = Rule {
    id: "trade.stayed-flat",
    sentence: "A stayed flat is a third thicker than the barrel has to be.",
    remedy: "a thicker plate",
    cite: cite(&TRADE_BOOKS, "stayed flats, four thirds of the barrel"),
};

/// What the trade's rules do not reach.
pub(crate) static TRADE_NOT_WORKED: Rule = Rule {
    id: "trade.not-worked",
    sentence: "Parts of which the trade's rules say nothing with a number are not left unjudged.",
    remedy: "judge the part by another rule set",
    cite: cite(&TRADE_BOOKS, "tubes, openings and joints, left to the eye"),
};
