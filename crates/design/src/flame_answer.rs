//! What is told of a flame besides the steam it makes: the jets above it, its tank, and the
//! hottest day for which the safety valve is sized.

use plan::Plan;
use reckoning::Finding;
use steaming::{Inputs, Judging, OverDraught, TankAsked};

use crate::fire::{self, HottestDay};

/// What is told of a flame besides.
#[derive(Clone, Debug)]
pub struct FlameAnswer {
    /// What steam jets in its chimney do; `None` where nothing blows, or where the flame has no
    /// balance even without them.
    pub over: Option<OverDraught>,
    /// How long its gas lasts; `None` for spirit.
    pub tank: Option<TankAsked>,
    /// The hottest day of its tank; `None` for spirit, and where the plan does not give it.
    pub hottest: Option<HottestDay>,
}

/// Looks at the flame of a plan, and adds what its rules find; `None` where a bed burns.
pub(crate) fn flame(
    plan: &Plan,
    inputs: &Inputs,
    judging: &Judging<'_>,
    findings: &mut Vec<Finding>,
) -> Option<FlameAnswer> {
    inputs.firing.flame()?;
    let over = match steaming::over_draught(inputs, judging.working_pa) {
        Ok(over) => over,
        Err(fault) => {
            findings.push(steaming::lives_on_jets(&fault));
            None
        }
    };
    findings.extend(over.as_ref().map(steaming::steam_jets));
    findings.push(steaming::carbon_monoxide(findings, judging.working));
    let tank = fire::lasting(plan, inputs);
    findings.extend(
        tank.as_ref()
            .map(|(asked, working)| steaming::tank_lasts(asked, working)),
    );
    let hottest = fire::hottest_day(plan, inputs);
    findings.extend(
        hottest
            .as_ref()
            .map(|day| steaming::strongest_gas(&day.strongest(), &day.working)),
    );
    Some(FlameAnswer {
        over,
        tank: tank.map(|(asked, _)| asked),
        hottest,
    })
}
