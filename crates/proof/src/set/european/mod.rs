//! The European vessel standard, whose forms are used with copper by its own factors on strength.

mod end;
mod opening;
mod shell;
mod stress;
mod tube;

pub(super) use stress::{Heat, file_stress};

use super::closed::tubes_as_shells;
use super::{Asked, Joints, RuleSet, Scope, Test, unworked};
use crate::input::{Boiler, Further, TubePlate};
use crate::rules::EN_NOT_WORKED;
use reckoning::{Finding, Seen};

/// EN 13445-3.
pub static EN_13445: RuleSet = RuleSet {
    key: "en-13445",
    title: "EN 13445-3, Unfired pressure vessels: Design",
    edition: "2021",
    seen: Seen::FromMemory,
    how_read: "from memory, all of it",
    stress_basis: "two thirds of the proof stress of annealed copper at metal temperature, or its \
                   tensile strength over 2.4",
    joints: Joints::SEAMLESS,
    test: Test::European,
    inspection: None,
    scope: Scope {
        pressure_bar: f64::INFINITY,
        metal_c: f64::INFINITY,
        shell_mm: 0.0,
        flue_mm: 0.0,
        plate_mm: 0.0,
    },
    departures: &[
        "Copper: the standard lists none; its factors are used on the proof stress and the tensile \
         strength of annealed copper, of which no standard sets the first.",
        "External pressure: the standard lowers the elastic limit of austenitic steel by 1.25; \
         annealed copper is treated the same.",
        "Openings: a bush of another metal than the shell counts as hole, because no hot strength \
         of it is known.",
        "Flat ends: the coefficient is that of an end to which the shell gives no help.",
    ],
    whole,
    shell: shell::checks,
    plate,
    flue: tube::checks,
};

fn whole(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let worked = [Further::FlatEnd, Further::Pipe, Further::CrossTubes];
    let mut found = unworked::further(&EN_13445, &EN_NOT_WORKED, boiler, &worked);
    found.extend(end::checks(boiler, asked));
    let tubes = tubes_as_shells(boiler);
    found.extend(tubes.iter().map(|tube| shell::wall(tube, asked)));
    found
}

fn plate(plate: &TubePlate, _: &Asked<'_>) -> Vec<Finding> {
    let what = "a plate held by tubes";
    let mut found = vec![unworked::one(&EN_13445, &EN_NOT_WORKED, &plate.id, what)];
    let what = "an opening in a plate held by tubes";
    found.extend(unworked::openings(
        &EN_13445,
        &EN_NOT_WORKED,
        &plate.openings,
        what,
    ));
    found
}
