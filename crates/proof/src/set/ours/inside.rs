//! A tube with pressure inside that is no shell: cross tube, pipe, coil.

use super::shell::file_test_factor;
use super::{OURS, TEST_FACTOR};
use crate::input::{Dimension, Metal};
use crate::metal::{chosen, proof_cold};
use crate::remedy::next_stock;
use crate::rules::TUBE_TEST;
use crate::set::Asked;
use crate::stress;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{Wall, bar, file_size, need};
use formulas::vessel::{allow, ring, shell as law, thick};
use reckoning::quantity::{CELSIUS, MPA, MPA_GAUGE, ONE, Ratio, Temperature};
use reckoning::size::Bad;
use reckoning::{Finding, Known, Origin, Ref, Rule};

/// A tube.
#[derive(Clone, Copy)]
pub(super) struct Tube<'a> {
    pub(super) id: &'a str,
    pub(super) metal: Metal,
    pub(super) outside: Option<&'a Dimension>,
    pub(super) wall: Option<&'a Dimension>,
    /// Greatest temperature of its metal.
    pub(super) at: Option<&'a Known<Temperature>>,
    /// When that is: at work, or while it stands.
    pub(super) when: &'static str,
}

/// A tube as a proof takes it.
pub(super) struct Taken {
    pub(super) p: Ref,
    pub(super) p_mpa: f64,
    pub(super) d: Ref,
    pub(super) t: Ref,
    pub(super) wall: Wall,
}

/// Files pressure, outside and least wall.
pub(super) fn take(sum: &mut Sum, tube: &Tube<'_>, asked: &Asked<'_>) -> Result<Taken, Stop> {
    let pressure = asked.service.pressure.as_ref();
    let known = need("the working pressure", "the boiler", pressure)?;
    let p = sum.know("P", "working pressure, gauge", &MPA_GAUGE, known);
    let outside = need("the outside", tube.id, tube.outside)?;
    let d = file_size(sum, ("D_e", "outside of the tube"), outside, Bad::Large)?;
    let wall = Wall::of(need("the wall", tube.id, tube.wall)?);
    let t = wall.file(sum, "t", "least wall of the tube")?;
    Ok(Taken {
        p,
        p_mpa: known.value.mpa(),
        d,
        t,
        wall,
    })
}

/// Files the wall that pressure asks at a design stress, and gives its line.
fn file_least(sum: &mut Sum, taken: &Taken, f: Ref) -> Result<Ref, Stop> {
    let one = chosen(
        Ratio::from_number(1.0),
        "drawn tube and tube with a seam",
        "small tube is drawn",
        Origin::CommonPractice,
    );
    let z = sum.know("z", "joint efficiency", &ONE, &one);
    sum.card(&law::SHELL_WALL_OUTSIDE, &[taken.p, taken.d, f, z])
}

/// The wall at the temperature of the metal. `cure` is asked where no wall of this metal will do,
/// with the pressure, MPa, the outside, mm, and the temperature.
pub(super) fn wall(
    rule: &'static Rule,
    tube: &Tube<'_>,
    asked: &Asked<'_>,
    cure: fn(f64, f64, Temperature) -> String,
) -> Finding {
    check(OURS.head(rule, tube.id), |sum| {
        let at = need("the metal temperature", tube.id, tube.at)?;
        sum.know("T_m", "greatest metal temperature", &CELSIUS, at);
        let taken = take(sum, tube, asked)?;
        let (when, metal) = (tube.when, tube.metal.words());
        if let Some(most) = stress::listed_to(tube.metal).filter(|most| at.value.c() > *most) {
            let says = format!(
                "{when} the metal reaches {:.0} °C, and no strength of {metal} is counted on above {most:.0} °C",
                at.value.c()
            );
            let remedy = cure(taken.p_mpa, sum.value(taken.d), at.value);
            return Ok(Outcome::plain(Answer::Fails, says, remedy));
        }
        let f = stress::ours(sum, tube.metal, at.value, "f")?;
        let e = file_least(sum, &taken, f)?;
        let (has, least) = (taken.wall.mm(), sum.value(e));
        taken.wall.hold(sum, "wall", tube.id, least);
        let says = format!(
            "{when}, at {:.0} °C, a wall of {has:.2} mm, {least:.2} mm asked",
            at.value.c()
        );
        let remedy = next_stock("a wall", &asked.stock.tube_walls, least);
        Ok(Outcome::compared(has, least, says, remedy))
    })
}

/// The hoop stress at the water test.
pub(super) fn test(tube: &Tube<'_>, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&TUBE_TEST, tube.id), |sum| {
        let taken = take(sum, tube, asked)?;
        let k = file_test_factor(sum);
        let p_t = allow::test_pressure(TEST_FACTOR, taken.p_mpa);
        let p_line = sum.settled(&allow::TEST_PRESSURE, &[k, taken.p], p_t)?;
        let bore = sum.card(&ring::BORE, &[taken.d, taken.t])?;
        let sigma = sum.card(&thick::HOOP, &[p_line, taken.d, bore])?;
        let cold = sum.know(
            "R",
            "0.2 % proof stress, cold",
            &MPA,
            &proof_cold(tube.metal)?,
        );
        let most = sum.card(&allow::TEST_MEMBRANE, &[cold])?;
        let (sigma, most) = (sum.value(sigma), sum.value(most));
        let least = sum.value(taken.d) / 2.0 * (1.0 - ((most - p_t) / (most + p_t)).sqrt());
        taken.wall.hold(sum, "wall", tube.id, least);
        let says = format!(
            "{sigma:.1} MPa at the water test of {} bar, {most:.1} MPa allowed",
            bar(p_t)
        );
        let remedy = next_stock("a wall", &asked.stock.tube_walls, least);
        Ok(Outcome::compared(most, sigma, says, remedy))
    })
}
