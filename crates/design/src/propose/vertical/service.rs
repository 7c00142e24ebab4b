//! What the boiler is proved for, and of what it is made.

use reckoning::Origin;

use super::At;
use crate::propose::choice::{Choice, plain, text};

/// Room between working and design pressure, so that the valve stays shut at work.
const OVER: f64 = 1.1;
/// Step of the design pressure, bar.
const STEP_BAR: f64 = 0.25;

pub(super) fn choice(at: &At<'_>) -> Option<Choice> {
    let working = at.plan.duty.pressure.value()?.bar();
    let design = (OVER * working / STEP_BAR).ceil() * STEP_BAR;
    let high = at.demand.high_words();
    Some(
        Choice::of("service")
            .set(
                "boiler.design-pressure",
                text(&format!("{} bar", plain(design))),
            )
            .set("boiler.metal", text("CW024A"))
            .set("boiler.filler", text("Ag 155"))
            .between("design pressures in steps of a quarter of a bar")
            .because(
                format!(
                    "a tenth over working pressure keeps the valve shut at work; the boiler is \
                     sized for {high}"
                ),
                Origin::CommonPractice,
            ),
    )
}

pub(super) fn lagging(at: &At<'_>) -> Option<Choice> {
    Some(
        Choice::of("lagging")
            .set("boiler.lagging.material", text("wool felt under brass"))
            .set(
                "boiler.lagging.thickness",
                crate::propose::choice::mm(at.sizes.lagging),
            )
            .between("felts of 3, 4 and 6 mm, and none")
            .because(
                "the thickest that the room leaves round the barrel",
                Origin::CommonPractice,
            ),
    )
}
