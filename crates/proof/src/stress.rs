//! Design stresses: a choice among published tables at the temperature of the metal.

use crate::input::Metal;
use crate::metal::chosen;
use crate::sum::{Stop, Sum};
use formulas::table;
use reckoning::quantity::{MPA, Stress, Temperature};
use reckoning::working::Choice;
use reckoning::{Known, Origin, Ref};

/// The tables of annealed copper among which the least counts.
const COPPER: [(&str, &str); 3] = [
    ("f_pipe", "copper-stress-pipe-code"),
    ("f_ship", "copper-stress-ship-register"),
    ("f_trade", "copper-stress-trade-r220"),
];

/// The single limit of the miniature boiler code, MPa.
const MINIATURE_MPA: f64 = 26.0;

/// A stress from one of the tables of annealed copper.
fn from_table(name: &str, metal: Metal, at: Temperature) -> Result<Known<Stress>, Stop> {
    let table = table::find(name);
    let found = table
        .at::<Temperature, Stress>("T", at, "f")
        .map_err(|_| Stop::NoStrength {
            what: "design stress",
            metal: metal.words(),
            celsius: at.c(),
        })?;
    Ok(table.known(found))
}

/// Least temperature for which the hot strength of stainless steel is listed here, °C.
const STAINLESS_FROM_C: f64 = 600.0;

/// Highest temperature at which a strength of this metal is counted on, °C; `None` for a metal of
/// which none is known.
pub(crate) fn listed_to(metal: Metal) -> Option<f64> {
    match metal {
        Metal::Copper | Metal::PhosphorBronze | Metal::Gunmetal => Some(200.0),
        Metal::Stainless => Some(816.0),
        Metal::StainlessLow => Some(450.0),
        Metal::Brass | Metal::Steel | Metal::Unlisted => None,
    }
}

/// The stress of stainless steel: as listed, and below 600 °C that at 600 °C.
pub(crate) fn stainless(metal: Metal, at: Temperature) -> Result<Known<Stress>, Stop> {
    if listed_to(metal).is_none_or(|most| at.c() > most) {
        return Err(Stop::NoStrength {
            what: "design stress",
            metal: metal.words(),
            celsius: at.c(),
        });
    }
    let hot = Temperature::from_c(at.c().max(STAINLESS_FROM_C));
    let listed = from_table("stainless-stress-316", metal, hot)?;
    if at.c() >= STAINLESS_FROM_C {
        return Ok(listed);
    }
    Ok(chosen(
        listed.value,
        "allowable stresses of stainless steel 316, which fall as it grows hotter",
        "that at 600 °C, for lack of a list below it",
        listed.given.origin(),
    ))
}

/// Our design stress: the miniature code's 26 MPa or the least of the tables for copper, 40 MPa
/// for bronzes. Gives its line.
pub(crate) fn ours(
    sum: &mut Sum,
    metal: Metal,
    at: Temperature,
    symbol: &str,
) -> Result<Ref, Stop> {
    if metal != Metal::Copper {
        let known = match metal {
            Metal::Stainless | Metal::StainlessLow => stainless(metal, at)?,
            _ => bronze(metal, at)?,
        };
        let meaning = "design stress at metal temperature";
        return Ok(sum.know(symbol, meaning, &MPA, &known));
    }
    let miniature = chosen(
        Stress::from_mpa(MINIATURE_MPA),
        "stress bases of model boilers: 21.5, 26 and 41.4 MPa",
        "the miniature boiler code's single limit for annealed copper, part 1, issue 8, 2012, \
         as a trade forum quotes it",
        Origin::Read,
    );
    let mut lines = vec![sum.know("f_mini", "miniature boiler code", &MPA, &miniature)];
    for (table_symbol, name) in COPPER {
        let known = from_table(name, metal, at)?;
        lines.push(sum.know(table_symbol, "at metal temperature", &MPA, &known));
    }
    let least = lines
        .iter()
        .map(|line| sum.value(*line))
        .fold(f64::INFINITY, f64::min);
    Ok(sum.w.chosen(Choice {
        symbol,
        meaning: "design stress at metal temperature",
        value: least,
        unit: &MPA,
        between: "26 MPa and the three tables",
        reason: "the least",
        from: &lines,
        cite: None,
    }))
}

/// The stress of the pressure vessel code for copper, as the pipe code prints it.
pub(crate) fn code(metal: Metal, at: Temperature) -> Result<Known<Stress>, Stop> {
    match metal {
        Metal::Copper => from_table("copper-stress-pipe-code", metal, at),
        Metal::Gunmetal => Ok(chosen(
            Stress::from_mpa(41.0),
            "allowable stresses of cast bronzes",
            "SB-62 castings, about 41 MPa to 200 °C",
            Origin::FromMemory,
        )),
        Metal::PhosphorBronze
        | Metal::Brass
        | Metal::Steel
        | Metal::Stainless
        | Metal::StainlessLow
        | Metal::Unlisted => Err(Stop::NoStrength {
            what: "design stress",
            metal: metal.words(),
            celsius: at.c(),
        }),
    }
}

/// The stress of the ship register for annealed copper.
pub(crate) fn register(metal: Metal, at: Temperature) -> Result<Known<Stress>, Stop> {
    match metal {
        Metal::Copper => from_table("copper-stress-ship-register", metal, at),
        _ => Err(Stop::NoStrength {
            what: "design stress",
            metal: metal.words(),
            celsius: at.c(),
        }),
    }
}

fn bronze(metal: Metal, at: Temperature) -> Result<Known<Stress>, Stop> {
    let listed = matches!(metal, Metal::PhosphorBronze | Metal::Gunmetal);
    if !listed || at.c() > 200.0 {
        return Err(Stop::NoStrength {
            what: "design stress",
            metal: metal.words(),
            celsius: at.c(),
        });
    }
    Ok(chosen(
        Stress::from_mpa(40.0),
        "an eighth of the soft state's 320 MPa, and code values of 41 to 47 MPa",
        "the lowest, to 200 °C",
        Origin::CommonPractice,
    ))
}
