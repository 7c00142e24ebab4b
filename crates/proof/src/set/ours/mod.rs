//! Our own set: the published rule that fits small brazed copper best for each part, with each
//! departure said.

mod braze;
mod bush;
mod bush_joint;
mod chain;
mod coil;
mod cross;
mod dish;
mod end;
mod firehole;
mod flange;
mod flue;
mod flue_opening;
mod foundation;
mod girder;
mod inside;
mod ligament;
mod overlap;
mod plate;
mod screwed;
mod shell;
mod stay;
mod tube;
mod whole;

pub(crate) use flue::file_ovality;
pub(crate) use plate::{file_pitch, file_stay_constant};

use super::{Inspection, Joints, RuleSet, Scope, Test};
use reckoning::{Origin, Seen};

/// The rules of this program.
pub static OURS: RuleSet = RuleSet {
    key: "ours",
    title: "Rules for small brazed copper boilers, gathered for this program",
    edition: "1",
    seen: Seen::FromMemory,
    how_read: "each rule names its source and whether it was read",
    stress_basis: "the least of 26 MPa (miniature boiler code) and three published tables for \
                   annealed copper at metal temperature",
    joints: Joints {
        both_sides: 1.0,
        lap_along: 0.8,
        strap_along: 0.8,
        blind: 0.5,
        below_one: Origin::CommonPractice,
    },
    test: Test::Times(TEST_FACTOR),
    inspection: Some(Inspection::CLUBS),
    scope: Scope {
        pressure_bar: 10.0,
        metal_c: 200.0,
        shell_mm: 0.0,
        flue_mm: 0.0,
        plate_mm: 0.0,
    },
    departures: &[
        "Openings: the code exempts small ones from calculation; here every opening is \
         calculated, because a 20 mm hole in a 100 mm shell is not small.",
        "Stayed plates: the code's stays are screwed or welded through plates of 8 mm and more; \
         brazing a tube through the plate is taken as the same, C 2.1.",
        "External pressure: EN 13445-3 lowers the elastic limit of austenitic steel by 1.25; \
         annealed copper, whose stress and strain part company as early, is treated the same.",
        "External pressure: first yield of an oval tube and the design stress are added to the \
         collapse curve, because small copper flues fail by yielding helped by ovality.",
        "Openings in tube plates: no credit for a bush; the plate is to be as thick as with twice \
         the constant of the code, whatever the opening's size.",
        "Water test: twice the working pressure once; half as much again at repeats.",
        "Flame-swept tubes: boiler codes ask about 1.7 times the margin of the vessel code; a \
         tube above their furnace form is marked tight.",
    ],
    whole: whole::checks,
    shell: shell::checks,
    plate: plate::checks,
    flue: flue::checks,
};

/// Test pressure over working pressure.
pub(super) const TEST_FACTOR: f64 = 2.0;
