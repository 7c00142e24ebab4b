//! The European standard of shell boilers: its furnace form alone, which asks more of a tube in
//! the flame than the vessel standard does.

use super::ours::file_ovality;
use super::taking::TakenTube;
use super::{Asked, Joints, RuleSet, Scope, Test, unworked};
use crate::input::{Boiler, Exposure, Flue, Shell, TubePlate};
use crate::metal::{chosen, modulus, proof_hot};
use crate::rules::{BOILER_FURNACE, BOILER_NOT_WORKED};
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::bar;
use formulas::vessel::{furnace, ring};
use reckoning::quantity::{MPA, ONE, Ratio};
use reckoning::{Finding, Origin, Ref, Seen};

/// EN 12953-3.
pub static EN_12953: RuleSet = RuleSet {
    key: "en-12953",
    title: "EN 12953-3, Shell boilers: Design and calculation for pressure parts",
    edition: "2016",
    seen: Seen::FromMemory,
    how_read: "from memory, all but the factors of the furnace form, which a state regulation \
               prints",
    stress_basis: "the proof stress of annealed copper at metal temperature",
    joints: Joints::SEAMLESS,
    test: Test::European,
    inspection: None,
    scope: Scope {
        pressure_bar: f64::INFINITY,
        metal_c: f64::INFINITY,
        shell_mm: 0.0,
        flue_mm: LEAST_FURNACE_MM,
        plate_mm: 0.0,
    },
    departures: &[
        "Copper: the standard is of steel; the form is used with the proof stress and the modulus of \
         copper.",
        "Water test: as the vessel standard asks it.",
    ],
    whole,
    shell,
    plate,
    flue,
};

/// Least wall of a furnace, mm.
const LEAST_FURNACE_MM: f64 = 7.0;
/// Factors on yielding, in the flame and out of it.
const IN_FLAME: f64 = 2.5;
const OUT_OF_FLAME: f64 = 2.0;
/// Factor on elastic collapse.
const ON_COLLAPSE: f64 = 3.0;
/// Ovality that counts where none is measured, per cent of the mean diameter.
const UNMEASURED: f64 = 1.5;

fn whole(boiler: &Boiler, _: &Asked<'_>) -> Vec<Finding> {
    let mut found = unworked::further(&EN_12953, &BOILER_NOT_WORKED, boiler, &[]);
    found.extend(unworked::of_ends(&EN_12953, &BOILER_NOT_WORKED, boiler));
    found
}

fn shell(shell: &Shell, _: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![unworked::one(
        &EN_12953,
        &BOILER_NOT_WORKED,
        &shell.id,
        "a shell",
    )];
    let what = "an opening in a shell";
    let openings = &shell.openings;
    found.extend(unworked::openings(
        &EN_12953,
        &BOILER_NOT_WORKED,
        openings,
        what,
    ));
    found
}

fn plate(plate: &TubePlate, _: &Asked<'_>) -> Vec<Finding> {
    let what = "a plate held by tubes";
    let mut found = vec![unworked::one(
        &EN_12953,
        &BOILER_NOT_WORKED,
        &plate.id,
        what,
    )];
    let what = "an opening in a plate held by tubes";
    let openings = &plate.openings;
    found.extend(unworked::openings(
        &EN_12953,
        &BOILER_NOT_WORKED,
        openings,
        what,
    ));
    found
}

fn flue(flue: &Flue, asked: &Asked<'_>) -> Vec<Finding> {
    let head = EN_12953.head(&BOILER_FURNACE, &flue.id);
    let mut found = vec![check(head, |sum| furnace(sum, flue, asked))];
    let what = "an opening in a furnace";
    let openings = &flue.openings;
    found.extend(unworked::openings(
        &EN_12953,
        &BOILER_NOT_WORKED,
        openings,
        what,
    ));
    found
}

fn furnace(sum: &mut Sum, flue: &Flue, asked: &Asked<'_>) -> Result<Outcome, Stop> {
    let taken = EN_12953.take_tube(sum, flue, asked)?;
    let d = sum.card(&ring::MEAN, &[taken.d_o, taken.t])?;
    let u = file_ovality_per_cent(sum, flue, &taken, d)?;
    let hot = proof_hot(flue.metal, taken.served.metal)?;
    let hot = sum.know("R_h", "0.2 % proof stress at work", &MPA, &hot);
    let e = modulus(flue.metal)?;
    let e = sum.know("E", "modulus of elasticity, hot", &MPA, &e);
    let s_1 = match flue.exposure {
        Exposure::FlameSwept => factor(IN_FLAME, "in the flame, better class"),
        Exposure::Gas => factor(OUT_OF_FLAME, "out of the flame"),
    };
    let s_1 = sum.know("S_1", "factor on yielding", &ONE, &s_1);
    let s_2 = factor(ON_COLLAPSE, "one value");
    let s_2 = sum.know("S_2", "factor on elastic collapse", &ONE, &s_2);
    let plastic = sum.card(&furnace::PLASTIC, &[hot, taken.t, d, taken.l, u, s_1])?;
    let elastic = sum.card(&furnace::ELASTIC, &[e, taken.t, d, taken.l, s_2])?;
    let (most, p) = (
        sum.value(plastic).min(sum.value(elastic)),
        taken.served.p_mpa,
    );
    let says = format!(
        "bears {} bar by the furnace form, {} bar asked",
        bar(most),
        bar(p)
    );
    let remedy = BOILER_FURNACE.remedy.to_owned();
    Ok(Outcome::compared(most, p, says, remedy))
}

fn factor(value: f64, reason: &str) -> reckoning::Known<Ratio> {
    let between = "2.0 out of the flame, 2.5 in it, 3.5 in the lowest class; 3.0 on collapse";
    chosen(Ratio::from_number(value), between, reason, Origin::Read)
}

/// Files the ovality in per cent: as measured or allowed, else what the form counts where nobody
/// has measured.
fn file_ovality_per_cent(
    sum: &mut Sum,
    flue: &Flue,
    taken: &TakenTube,
    d: Ref,
) -> Result<Ref, Stop> {
    if flue.ovality.is_some() {
        let (delta, open) = file_ovality(sum, flue, taken.d_o)?;
        taken.hold_as_used(sum, &flue.id, open, sum.value(delta));
        return sum.card(&ring::PER_CENT, &[delta, d]);
    }
    let known = chosen(
        Ratio::from_number(UNMEASURED),
        "as measured, or 1.5 per cent",
        "nobody has measured it",
        Origin::FromMemory,
    );
    let most_mm = UNMEASURED / 100.0 * sum.value(d);
    taken.hold_as_used(sum, &flue.id, Some(format!("{}.ovality", flue.id)), most_mm);
    Ok(sum.know("u", "ovality in per cent", &ONE, &known))
}
