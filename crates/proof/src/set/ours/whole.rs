//! Checks of the boiler as a whole, and of the metal of each part.

use super::{
    OURS, bush_joint, chain, coil, cross, end, firehole, flange, foundation, girder, screwed, stay,
};
use crate::input::{Boiler, Metal, Opening};
use crate::rules::{METAL_TEMPERATURE, STEAM_RATING, WETTED_METAL};
use crate::set::Asked;
use crate::sum::{Answer, Outcome, Stop, check};
use crate::taken::need;
use reckoning::quantity::{BAR_GAUGE, CELSIUS, Temperature};
use reckoning::{Finding, Known};

/// Rating of brazed copper in saturated steam, bar gauge (120 psi).
const STEAM_RATING_BAR: f64 = 8.3;

/// The boiler as a whole: its steam, its flanges, its frame, its bushes and stays.
pub(super) fn checks(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![steam_rating(asked)];
    for plate in &boiler.plates {
        found.extend(flange::checks(boiler, plate, asked));
    }
    if let Some(frame) = &boiler.frame {
        found.push(chain::crown(boiler, frame, asked));
        found.push(chain::growth(boiler, frame, asked));
        found.extend(foundation::checks(boiler, frame, asked));
        let firehole = frame.firehole.as_ref();
        found.extend(firehole.map(|hole| firehole::joint(boiler, frame, hole, asked)));
    }
    found.extend(bushes(boiler, asked));
    for stay in &boiler.stays {
        found.extend(stay::checks(stay, asked));
    }
    for it in &boiler.ends {
        found.extend(flange::of_end(boiler, it, asked));
        found.extend(end::checks(boiler, it, asked));
    }
    found.extend(inner(boiler, asked));
    found
}

/// The braze of every bush.
fn bushes(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let shells = boiler.shells.iter();
    let shells = shells.map(|s| (&s.id, s.wall.as_ref(), &s.openings));
    let plates = boiler.plates.iter();
    let plates = plates.map(|p| (&p.id, p.thickness.as_ref(), &p.openings));
    let ends = boiler.ends.iter();
    let ends = ends.map(|e| (&e.id, e.thickness.as_ref(), &e.openings));
    let mut found = Vec::new();
    for (id, wall, openings) in shells.chain(plates).chain(ends) {
        for opening in openings {
            found.extend(bush_joint::checks((id, wall), opening, asked));
        }
    }
    found
}

/// What stands inside or in the gas, pipes and threads.
fn inner(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for it in &boiler.girders {
        found.extend(girder::checks(it, asked));
    }
    for it in &boiler.screwed {
        found.extend(screwed::checks(it, asked));
    }
    for it in &boiler.cross_tubes {
        found.extend(cross::tubes(it, asked));
    }
    for it in &boiler.pipes {
        found.extend(cross::pipe(it, asked));
    }
    for it in &boiler.coils {
        found.extend(coil::checks(it, asked));
    }
    found
}

/// Brazed joints in steam.
fn steam_rating(asked: &Asked<'_>) -> Finding {
    check(OURS.head(&STEAM_RATING, "boiler"), |sum| {
        let p = need(
            "the working pressure",
            "the boiler",
            asked.service.pressure.as_ref(),
        )?;
        sum.know("P", "working pressure, gauge", &BAR_GAUGE, p);
        let bar = p.value.bar();
        let says =
            format!("brazed copper at {bar:.2} bar, rated to {STEAM_RATING_BAR} bar in steam");
        let above = (bar > STEAM_RATING_BAR).then(|| {
            "above the only published rating of brazed joints in steam: ask the boiler tester first"
                .to_owned()
        });
        let remedy = format!("a working pressure of {STEAM_RATING_BAR} bar or less");
        Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(above))
    })
}

/// Metal no hotter than the tables reach.
pub(super) fn temperature(part: &str, metal: Option<&Known<Temperature>>) -> Finding {
    check(OURS.head(&METAL_TEMPERATURE, part), |sum| {
        let known = need("the metal temperature", part, metal)?;
        sum.know("T_m", "metal temperature", &CELSIUS, known);
        let (at, most) = (known.value.c(), OURS.scope.metal_c);
        let answer = if at <= most {
            Answer::Holds
        } else {
            Answer::Fails
        };
        let says = format!("metal at {at:.0} °C, at most {most:.0} °C");
        let remedy =
            format!("keep the metal at {most:.0} °C or less: under water, or at less pressure");
        Ok(Outcome::plain(answer, says, remedy))
    })
}

/// No brass in a wetted brazed joint.
pub(super) fn wetted(opening: &Opening) -> Option<Finding> {
    let bush = opening.bush.as_ref()?;
    Some(check(OURS.head(&WETTED_METAL, &opening.id), |_| {
        let answer = match bush.metal {
            Metal::Copper | Metal::PhosphorBronze | Metal::Gunmetal => Answer::Holds,
            Metal::Brass | Metal::Steel | Metal::Stainless | Metal::StainlessLow => Answer::Fails,
            Metal::Unlisted => {
                return Err(Stop::Missing {
                    what: "a listed metal",
                    part: opening.id.clone(),
                });
            }
        };
        let says = format!("bush of {}", bush.metal.words());
        Ok(Outcome::plain(answer, says, WETTED_METAL.remedy.to_owned()))
    }))
}
