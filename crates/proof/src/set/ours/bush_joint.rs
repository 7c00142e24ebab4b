//! The braze of a bush against the water test and the spanner.

use super::braze::{SEEN, file_allowed};
use super::shell::file_test_factor;
use super::{OURS, TEST_FACTOR};
use crate::input::{Bush, Dimension, Opening};
use crate::remedy::at_least;
use crate::rules::{BUSH_PUSH_OUT, BUSH_TORQUE};
use crate::set::Asked;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{Wall, file_size, need};
use formulas::vessel::{allow, bush_joint as law};
use reckoning::quantity::{MPA_GAUGE, Moment};
use reckoning::size::Bad;
use reckoning::{Finding, Ref};

/// Torque of a hand on a short spanner, N mm.
const SPANNER_N_MM: f64 = 10e3;

/// Both checks of a bush in a wall.
pub(super) fn checks(
    host: (&str, Option<&Dimension>),
    opening: &Opening,
    asked: &Asked<'_>,
) -> Vec<Finding> {
    let Some(bush) = &opening.bush else {
        return Vec::new();
    };
    vec![
        push(host, opening, bush, asked),
        spanner(host, opening, bush),
    ]
}

/// Files the bush's diameter and the wall it stands in.
fn file_braze(
    sum: &mut Sum,
    (part, wall): (&str, Option<&Dimension>),
    opening: &Opening,
    bad: Bad,
) -> Result<(Ref, Ref), Stop> {
    let hole = need("the hole", &opening.id, opening.hole.as_ref())?;
    let d = file_size(sum, ("d", "hole, filled by the bush"), hole, bad)?;
    let wall = Wall::of(need("the wall", part, wall)?);
    let t = wall.file(sum, "t", "least wall where the bush stands")?;
    wall.hold_as_used(sum, "wall", part);
    Ok((d, t))
}

fn push(
    host: (&str, Option<&Dimension>),
    opening: &Opening,
    bush: &Bush,
    asked: &Asked<'_>,
) -> Finding {
    check(OURS.head(&BUSH_PUSH_OUT, &opening.id), |sum| {
        let pressure = asked.service.pressure.as_ref();
        let known = need("the working pressure", "the boiler", pressure)?;
        let p = sum.know("P", "working pressure, gauge", &MPA_GAUGE, known);
        let k = file_test_factor(sum);
        let test = allow::test_pressure(TEST_FACTOR, known.value.mpa());
        let p_t = sum.settled(&allow::TEST_PRESSURE, &[k, p], test)?;
        let (d, t) = file_braze(sum, host, opening, Bad::Large)?;
        let tau = sum.card(&law::PUSH_OUT, &[p_t, d, t])?;
        let allowed = file_allowed(sum, bush.joint)?;
        let (tau, allowed) = (sum.value(tau), sum.value(allowed));
        let says = format!("{tau:.2} MPa in the braze at the water test, {allowed:.1} MPa allowed");
        let least = at_least(sum.value(t) * tau / allowed);
        let remedy = format!("a wall of {least} mm, or {SEEN}");
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}

fn spanner(host: (&str, Option<&Dimension>), opening: &Opening, bush: &Bush) -> Finding {
    check(OURS.head(&BUSH_TORQUE, &opening.id), |sum| {
        let (d, t) = file_braze(sum, host, opening, Bad::Small)?;
        let allowed = file_allowed(sum, bush.joint)?;
        let torque = sum.card(&law::TORQUE, &[allowed, d, t])?;
        let bears = sum.value(torque);
        let metres = |n_mm: f64| Moment::from_n_mm(n_mm).n_m();
        let says = format!(
            "the braze bears {:.1} N m of the spanner, {:.0} N m are easily given",
            metres(bears),
            metres(SPANNER_N_MM)
        );
        let weak = (bears < SPANNER_N_MM)
            .then(|| "hold the bush with a second spanner, or screw it up by hand".to_owned());
        let remedy = BUSH_TORQUE.remedy.to_owned();
        Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(weak))
    })
}
