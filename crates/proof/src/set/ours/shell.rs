//! A shell with pressure inside.

use super::whole::{temperature, wetted};
use super::{OURS, TEST_FACTOR, bush, ligament, overlap};
use crate::input::{Diameter, Shell};
use crate::metal::{chosen, proof_cold, yield_of_standard};
use crate::remedy::next_stock;
use crate::rules::{SHELL_FLOOR, SHELL_TEST, SHELL_WALL};
use crate::set::Asked;
use crate::set::served::Served;
use crate::stress;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{Wall, bar, file_sides, need, sides};
use formulas::vessel::{allow, floor, ring, shell as law};
use reckoning::quantity::{MM, MPA, ONE, Ratio};
use reckoning::{Finding, Origin, Ref};

/// Every check of a shell.
pub(super) fn checks(shell: &Shell, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = vec![
        temperature(&shell.id, shell.metal_temperature.as_ref()),
        wall(shell, asked),
        test(shell, asked),
        thin(shell),
        ligament::check_pairs(shell, asked),
    ];
    for opening in &shell.openings {
        found.extend(wetted(opening));
        found.extend(bush::checks(shell, opening, asked));
    }
    found.extend(overlap::of_shell(shell, asked));
    found
}

/// The sizes of a shell as a proof takes them.
pub(super) struct Taken<'a> {
    pub(super) served: Served,
    pub(super) wall: Wall,
    pub(super) diameter: &'a Diameter,
    /// Line of the least wall.
    pub(super) t: Ref,
    /// Line of the design stress.
    pub(super) f: Ref,
}

/// Files service, wall and design stress of a shell.
pub(super) fn take<'a>(
    sum: &mut Sum,
    shell: &'a Shell,
    asked: &Asked<'_>,
) -> Result<Taken<'a>, Stop> {
    let served = OURS.serve(sum, asked, &shell.id, shell.metal_temperature.as_ref())?;
    let wall = Wall::of(need("the wall", &shell.id, shell.wall.as_ref())?);
    let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
    let t = wall.file(sum, "t", "least wall of the shell")?;
    let f = stress::ours(sum, shell.metal, served.metal, "f")?;
    Ok(Taken {
        served,
        wall,
        diameter,
        t,
        f,
    })
}

/// The wall that a shell of this diameter needs, mm.
fn wall_needed(d: &Diameter, p_mpa: f64, f_mpa: f64, z: f64) -> f64 {
    let now = sides(d, 0.0);
    match d {
        Diameter::Outside(_) => law::shell_wall_outside(p_mpa, now.outside_mm, f_mpa, z),
        Diameter::Inside(_) => law::shell_wall(p_mpa, now.bore_mm, f_mpa, z),
    }
}

/// The wall against internal pressure at the seam.
fn wall(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&SHELL_WALL, &shell.id), |sum| {
        let taken = take(sum, shell, asked)?;
        let z = OURS.joints.seam(shell.seam);
        let z_line = OURS.file_joint(sum, "z", z);
        let e = wall_needed(taken.diameter, taken.served.p_mpa, sum.value(taken.f), z);
        let lines = file_sides(sum, taken.diameter, taken.t)?;
        match taken.diameter {
            Diameter::Outside(_) => {
                let inputs = [taken.served.p, lines.outside, taken.f, z_line];
                sum.settled(&law::SHELL_WALL_OUTSIDE, &inputs, e)?;
            }
            Diameter::Inside(_) => {
                let inputs = [taken.served.p, lines.bore, taken.f, z_line];
                sum.settled(&law::SHELL_WALL, &inputs, e)?;
            }
        }
        taken.wall.hold(sum, "wall", &shell.id, e);
        let t = taken.wall.mm();
        let says = format!("wall {t:.2} mm, {e:.2} mm asked");
        let remedy = next_stock("a wall", &asked.stock.tube_walls, e);
        Ok(Outcome::compared(t, e, says, remedy))
    })
}

/// The membrane stress at the water test.
fn test(shell: &Shell, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&SHELL_TEST, &shell.id), |sum| {
        let taken = take(sum, shell, asked)?;
        let t = taken.wall.mm();
        let now = sides(taken.diameter, t);
        let p_t = allow::test_pressure(TEST_FACTOR, taken.served.p_mpa);
        let d_m = ring::mean(now.outside_mm, t);
        let sigma = law::membrane(p_t, d_m, t);
        let lines = file_sides(sum, taken.diameter, taken.t)?;
        let k = file_test_factor(sum);
        let p_line = sum.settled(&allow::TEST_PRESSURE, &[k, taken.served.p], p_t)?;
        let d_line = sum.settled(&ring::MEAN, &[lines.outside, taken.t], d_m)?;
        sum.settled(&law::MEMBRANE, &[p_line, d_line, taken.t], sigma)?;
        let (most, first) = (
            limit(sum, shell, Strength::Standard)?,
            limit(sum, shell, Strength::Proof)?,
        );
        let least = wall_needed(taken.diameter, p_t, most, 1.0);
        taken.wall.hold(sum, "wall", &shell.id, least);
        let says = format!(
            "{sigma:.1} MPa in the shell at the water test of {} bar, {most:.1} MPa allowed",
            bar(p_t)
        );
        let set = (sigma > first).then(|| {
            format!("above {first:.1} MPa the first test may leave a small set; repeat it, and any further set rejects")
        });
        let remedy = next_stock("a wall", &asked.stock.tube_walls, least);
        Ok(Outcome::compared(most, sigma, says, remedy).strained_if(set))
    })
}

#[derive(Clone, Copy)]
enum Strength {
    Standard,
    Proof,
}

/// Files the membrane stress allowed at the test by one strength.
fn limit(sum: &mut Sum, shell: &Shell, by: Strength) -> Result<f64, Stop> {
    let (symbol, meaning, known) = match by {
        Strength::Standard => (
            "R",
            "yield of the tube standard, cold",
            yield_of_standard(shell.metal)?,
        ),
        Strength::Proof => ("R_p", "0.2 % proof stress, cold", proof_cold(shell.metal)?),
    };
    let strength = sum.know(symbol, meaning, &MPA, &known);
    let allowed = allow::test_membrane(known.value.mpa());
    sum.settled(&allow::TEST_MEMBRANE, &[strength], allowed)?;
    Ok(allowed)
}

/// Files the factor of the water test.
pub(super) fn file_test_factor(sum: &mut Sum) -> Ref {
    let known = chosen(
        Ratio::from_number(TEST_FACTOR),
        "first water tests of model boiler codes, 1.5 to 2, and 3",
        "twice the working pressure, once",
        Origin::Read,
    );
    sum.know("k", "test pressure over working pressure", &ONE, &known)
}

/// The wall that handling and wear ask, whatever the pressure.
fn thin(shell: &Shell) -> Finding {
    check(OURS.head(&SHELL_FLOOR, &shell.id), |sum| {
        let wall = need("the wall", &shell.id, shell.wall.as_ref())?;
        let diameter = need("the diameter", &shell.id, shell.diameter.as_ref())?;
        let drawn = crate::taken::nominal(wall);
        let t = sum.know("t_d", "wall as drawn or made", &MM, &drawn);
        let lines = file_sides(sum, diameter, t)?;
        let least = sum.card(&floor::FLOOR_WALL, &[lines.outside])?;
        let (has, asked) = (drawn.value.mm(), sum.value(least));
        let says = format!("wall {has:.2} mm, copper pipe of this size has {asked:.1} mm");
        let thin = (has < asked).then(|| "little metal for handling, threads and wear".to_owned());
        let remedy = SHELL_FLOOR.remedy.to_owned();
        Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(thin))
    })
}
