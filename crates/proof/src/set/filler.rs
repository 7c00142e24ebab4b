//! The clause of the ship register on the filler of joints under pressure. It binds inside that set
//! alone.

use super::SHIP_REGISTER;
use crate::input::Boiler;
use crate::metal::chosen;
use crate::rules::SHIP_FILLER;
use crate::sum::{Answer, Outcome, Stop, check};
use crate::taken::need;
use reckoning::quantity::{ONE, Ratio};
use reckoning::{Finding, Origin};

/// Least silver, per cent.
const LEAST: f64 = 49.0;

/// Silver of the fillers that makers use, per cent, by the names of ISO 17672; from memory but for
/// Ag 155 and Ag 156, whose data pages were read.
const SILVER: [(&str, f64); 6] = [
    ("Ag 134", 34.0),
    ("Ag 140", 40.0),
    ("Ag 145", 45.0),
    ("Ag 155", 55.0),
    ("Ag 156", 56.0),
    ("Ag 449", 49.0),
];

/// The silver of the filler.
pub(super) fn silver(boiler: &Boiler) -> Finding {
    check(SHIP_REGISTER.head(&SHIP_FILLER, "boiler"), |sum| {
        let name = need("the filler", "the boiler", boiler.filler.as_ref())?;
        let listed = SILVER.iter().find(|(known, _)| *known == name.trim());
        let Some((_, per_cent)) = listed else {
            return Err(Stop::Missing {
                what: "a filler whose silver is known",
                part: "the boiler".to_owned(),
            });
        };
        let known = chosen(
            Ratio::from_number(*per_cent),
            "fillers by the names of ISO 17672",
            name,
            Origin::FromMemory,
        );
        sum.know("Ag", "silver of the filler, per cent", &ONE, &known);
        let answer = if *per_cent >= LEAST {
            Answer::Holds
        } else {
            Answer::Fails
        };
        let says = format!("{name} holds {per_cent:.0} per cent of silver, {LEAST:.0} asked");
        Ok(Outcome::plain(answer, says, SHIP_FILLER.remedy.to_owned()))
    })
}
