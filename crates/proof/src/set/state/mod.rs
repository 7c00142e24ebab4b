//! State boiler regulations with formulas for copper.

mod crown;
mod end;
mod inner;
mod plate;
mod shell;
mod stay;
mod tube;

use super::{Asked, Inspection, Joints, RuleSet, Scope, Test, unworked};
use crate::input::{Boiler, Further, Metal};
use crate::metal::chosen;
use crate::rules::STATE_NOT_WORKED;
use crate::sum::{Stop, Sum};
use reckoning::quantity::{Gauge, Stress, TON_PER_INCH2};
use reckoning::{Finding, Origin, Ref, Seen};

/// Indian Boiler Regulations.
pub static IBR: RuleSet = RuleSet {
    key: "ibr",
    title: "Indian Boiler Regulations",
    edition: "1950 as amended",
    seen: Seen::FromMemory,
    how_read: "its formulas and constants were read, those of stayed plates in part; the stress of \
               shells, the water test and the yearly inspection are from memory",
    stress_basis: "tensile strength over 2.7 or proof stress at metal temperature over 1.5; stays by \
                   their own constant",
    joints: Joints::SEAMLESS,
    test: Test::Times(1.5),
    inspection: Some(Inspection {
        repeat: 1.5,
        water_years: 1,
        steam_years: 1,
        origin: Origin::FromMemory,
    }),
    scope: Scope {
        pressure_bar: f64::INFINITY,
        metal_c: f64::INFINITY,
        shell_mm: 0.0,
        flue_mm: 0.0,
        plate_mm: 0.0,
    },
    departures: &[
        "Volume: the regulations let boilers of less than about 22 l go free; what they would ask is \
         worked here all the same.",
        "Shells: they print no stress for copper; their rule for steel is used on the strength that \
         they ask of copper tube, and on its proof stress.",
        "Furnaces: a brazed or drawn copper tube counts as one with double straps.",
        "Stays and furnaces: their constants for copper know no temperature, and stand for 41 MPa in a \
         stay where published tables give 26 to 35 MPa under steam.",
        "Openings: they let small ones go free; the exemption was made for large shells and is not \
         used.",
        "Girders: the hole of a tube counts in the plate under them, and not its bore.",
    ],
    whole,
    shell: shell::checks,
    plate: plate::checks,
    flue: tube::checks,
};

fn whole(boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let worked = [
        Further::Stay,
        Further::Girder,
        Further::DishedEnd,
        Further::CrossTubes,
    ];
    let mut found = unworked::further(&IBR, &STATE_NOT_WORKED, boiler, &worked);
    found.extend(boiler.stays.iter().map(|s| stay::check_stay(s, asked)));
    for girder in &boiler.girders {
        found.extend(crown::checks(girder, asked));
    }
    found.extend(end::checks(boiler, asked));
    let tubes = boiler.cross_tubes.iter();
    found.extend(tubes.map(|t| inner::cross_tubes(t, asked)));
    found
}

/// Files the tensile strength that the regulations ask of a metal.
fn file_tensile(sum: &mut Sum, metal: Metal) -> Result<Ref, Stop> {
    let (tons, reason, origin) = match metal {
        Metal::Copper => (14.0, "copper tube, regulation 35", Origin::Read),
        Metal::Steel => (
            23.3,
            "the softest boiler plate, 360 MPa",
            Origin::FromMemory,
        ),
        _ => {
            return Err(Stop::NoStrength {
                what: "tensile strength",
                metal: metal.words(),
                celsius: 20.0,
            });
        }
    };
    let known = chosen(
        Stress::from_ton_in2(tons),
        "least tensile strengths by metal",
        reason,
        origin,
    );
    Ok(sum.know("S", "tensile strength", &TON_PER_INCH2, &known))
}

/// A pressure that a form gives, MPa.
fn mpa(psi: f64) -> f64 {
    Gauge::from_psi(psi).mpa()
}
