//! Where the water stands: the glass, the blow-down, and what warns of low water.

use crate::input::{BlowDown, Fitted, Heating, Mountings, Raising, WaterGauge};
use crate::metal::chosen;
use crate::rules::{BLOW_DOWN_LOW, FUSIBLE_PLUG, GLASS_ABOVE_CROWN, GLASS_LOWEST};
use crate::set::OURS;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{down, need, up};
use formulas::relief::valve as law;
use formulas::steam::cards::SATURATION_TEMPERATURE;
use reckoning::quantity::{BAR_ABSOLUTE, BAR_GAUGE, CELSIUS, Length, MM, ONE, Ratio, Temperature};
use reckoning::{Finding, Known, Origin};

/// How far above saturation a plug must melt, so that it does not creep at work, K.
const PLUG_ABOVE_K: f64 = 20.0;

/// Every check of the water.
pub(super) fn checks(mounted: &Mountings, raising: &Raising) -> Vec<Finding> {
    vec![
        above_crown(&mounted.glass),
        lowest(&mounted.glass),
        blow_down(&mounted.blow_down),
        plug(mounted, raising),
    ]
}

/// Files a height and gives it in millimetres.
fn height(
    sum: &mut Sum,
    symbol: &str,
    what: &'static str,
    found: Option<&Known<Length>>,
) -> Result<f64, Stop> {
    let known = need(what, "the boiler", found)?;
    sum.know(symbol, what, &MM, known);
    Ok(known.value.mm())
}

fn told(holds: bool) -> Answer {
    if holds { Answer::Holds } else { Answer::Fails }
}

/// The bottom of the glass lies above the crown.
fn above_crown(glass: &WaterGauge) -> Finding {
    check(OURS.head(&GLASS_ABOVE_CROWN, "water-gauge"), |sum| {
        let bottom = height(sum, "z_b", "the bottom of the glass", glass.bottom.as_ref())?;
        let crown = height(sum, "z_c", "the height of the crown", glass.crown.as_ref())?;
        let says = format!("the glass begins {:.1} mm above the crown", bottom - crown);
        let remedy = format!("a glass whose visible part begins above {} mm", up(crown));
        Ok(Outcome::plain(told(bottom > crown), says, remedy))
    })
}

/// The lowest water shows in the glass, and so does the water at work.
fn lowest(glass: &WaterGauge) -> Finding {
    check(OURS.head(&GLASS_LOWEST, "water-gauge"), |sum| {
        let bottom = height(sum, "z_b", "the bottom of the glass", glass.bottom.as_ref())?;
        let top = height(sum, "z_t", "the top of the glass", glass.top.as_ref())?;
        let lowest = height(sum, "z_l", "the lowest water", glass.lowest.as_ref())?;
        let working = height(sum, "z_w", "the working water", glass.working.as_ref())?;
        let shows = bottom <= lowest && lowest <= working && working <= top;
        let says = format!(
            "the glass shows {bottom:.1} to {top:.1} mm, the water stands at {lowest:.1} to {working:.1} mm"
        );
        let remedy = format!(
            "a glass from {} mm to {} mm or more",
            down(lowest),
            up(working)
        );
        Ok(Outcome::plain(told(shows), says, remedy))
    })
}

/// The blow-down stands no higher above the ring than its own bush.
fn blow_down(it: &BlowDown) -> Finding {
    check(OURS.head(&BLOW_DOWN_LOW, "blow-down"), |sum| {
        let at = height(sum, "z", "the height of the blow-down", it.height.as_ref())?;
        let ring = height(
            sum,
            "z_r",
            "the top of the foundation ring",
            it.ring_top.as_ref(),
        )?;
        let d = height(sum, "d", "the outside of its bush", it.outside.as_ref())?;
        let says = format!("its middle stands {:.1} mm above the ring", at - ring);
        let remedy = format!("its middle at {} mm or lower", down(ring + d));
        Ok(Outcome::plain(told(at - ring <= d), says, remedy))
    })
}

/// Files the temperature of the water at work.
fn file_saturation(sum: &mut Sum, raising: &Raising) -> Result<f64, Stop> {
    let p = need(
        "the working pressure",
        "the boiler",
        raising.pressure.as_ref(),
    )?;
    let air = need(
        "the pressure of the air",
        "the boiler",
        raising.atmosphere.as_ref(),
    )?;
    let p = sum.know("P", "working pressure", &BAR_GAUGE, p);
    let none = chosen(
        Ratio::from_number(0.0),
        "0 to a tenth",
        "at work",
        Origin::Read,
    );
    let none = sum.know("a", "accumulation", &ONE, &none);
    let air = sum.know("P_a", "pressure of the air", &BAR_ABSOLUTE, air);
    let p = sum.card(&law::ABSOLUTE, &[p, none, air])?;
    let t = sum.card(&SATURATION_TEMPERATURE, &[p])?;
    Ok(Temperature::from_k(sum.w.si(t)).c())
}

/// A plug melts above the water and is there, or its lack is told.
fn plug(mounted: &Mountings, raising: &Raising) -> Finding {
    let plug = &mounted.plug;
    check(OURS.head(&FUSIBLE_PLUG, "fusible-plug"), |sum| {
        let fitted = need(
            "whether there is a plug",
            "fusible-plug",
            plug.fitted.as_ref(),
        )?;
        if *fitted == Fitted::No {
            let says = "no fusible plug in the crown".to_owned();
            let remark = instead(mounted).to_owned();
            let remedy = FUSIBLE_PLUG.remedy.to_owned();
            return Ok(Outcome::plain(Answer::Holds, says, remedy).strained_if(Some(remark)));
        }
        let melts = need(
            "the melting temperature",
            "fusible-plug",
            plug.melts.as_ref(),
        )?;
        sum.know("T_p", "melting temperature of the core", &CELSIUS, melts);
        let least = file_saturation(sum, raising)? + PLUG_ABOVE_K;
        let at = melts.value.c();
        let says = format!("the core melts at {at:.0} °C, at least {least:.0} °C asked");
        let remedy = format!("a core that melts at {least:.0} °C or above, as tin at 232 °C");
        Ok(Outcome::plain(told(at >= least), says, remedy))
    })
}

/// What stands for a plug that is not there.
fn instead(mounted: &Mountings) -> &'static str {
    let gas = mounted.heating == Some(Heating::Gas);
    match (gas, mounted.interlocks.water) {
        (true, Some(Fitted::Yes)) => {
            "the float that shuts the gas stands for it: try it before every run, and ask the \
             boiler tester"
        }
        (true, _) => {
            "gas burns on whatever a plug does, and here no float shuts it: the glass alone warns \
             of low water; ask the boiler tester what must stand for the plug"
        }
        (false, _) => {
            "the glass alone warns of low water: never leave the fire, and ask the boiler tester \
             what must stand for the plug"
        }
    }
}
