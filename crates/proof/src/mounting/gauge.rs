//! The pressure gauge: its scale and its syphon.

use crate::input::{Fitted, PressureGauge, Raising};
use crate::rules::{GAUGE_RANGE, GAUGE_SYPHON};
use crate::set::OURS;
use crate::sum::{Answer, Outcome, check};
use crate::taken::need;
use reckoning::Finding;
use reckoning::quantity::BAR_GAUGE;
use reckoning::quantity::show::figures;

/// Range of the scale over working pressure that is allowed, and that is usual.
const ALLOWED: (f64, f64) = (1.0, 4.0);
const USUAL: (f64, f64) = (1.5, 2.0);

/// Both checks of the gauge.
pub(super) fn checks(gauge: &PressureGauge, raising: &Raising) -> Vec<Finding> {
    vec![range(gauge, raising), syphon(gauge)]
}

fn range(gauge: &PressureGauge, raising: &Raising) -> Finding {
    check(OURS.head(&GAUGE_RANGE, "pressure-gauge"), |sum| {
        let p = need(
            "the working pressure",
            "the boiler",
            raising.pressure.as_ref(),
        )?;
        let range = need(
            "the end of the scale",
            "pressure-gauge",
            gauge.range.as_ref(),
        )?;
        sum.know("P", "working pressure", &BAR_GAUGE, p);
        sum.know("P_g", "end of the scale", &BAR_GAUGE, range);
        let bar = p.value.bar();
        let times = range.value.bar() / bar;
        let within = |(low, high): (f64, f64)| low <= times && times <= high;
        let answer = if within(ALLOWED) {
            Answer::Holds
        } else {
            Answer::Fails
        };
        let says = format!(
            "the scale ends at {} times the working pressure",
            figures(times, 3)
        );
        let remedy = format!(
            "a gauge to {} to {} bar, with a red line at {} bar",
            figures(USUAL.0 * bar, 3),
            figures(USUAL.1 * bar, 3),
            figures(bar, 3)
        );
        let odd = (!within(USUAL)).then(|| format!("usual is {}", remedy.clone()));
        Ok(Outcome::plain(answer, says, remedy).strained_if(odd))
    })
}

fn syphon(gauge: &PressureGauge) -> Finding {
    check(OURS.head(&GAUGE_SYPHON, "pressure-gauge"), |_| {
        let fitted = need("the syphon", "pressure-gauge", gauge.syphon.as_ref())?;
        let (answer, says) = match fitted {
            Fitted::Yes => (Answer::Holds, "a syphon keeps steam out of the gauge"),
            Fitted::No => (Answer::Fails, "steam reaches the gauge"),
        };
        let remedy = GAUGE_SYPHON.remedy.to_owned();
        Ok(Outcome::plain(answer, says.to_owned(), remedy))
    })
}
