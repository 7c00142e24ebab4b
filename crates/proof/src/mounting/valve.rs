//! One safety valve: set pressure, inlet, lift.

use crate::input::{Lift, Mountings, Raising, Removed, SafetyValve};
use crate::metal::chosen;
use crate::remedy::at_least;
use crate::rules::{VALVE_INLET, VALVE_SET};
use crate::set::OURS;
use crate::sum::{Outcome, Stop, Sum, check};
use crate::taken::{file_size, need, si, size_mm};
use formulas::relief::valve as law;
use formulas::vessel::ring;
use reckoning::quantity::show::figures;
use reckoning::quantity::{BAR_ABSOLUTE, BAR_GAUGE, MM, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Bound, Finding, Origin, Ref};

/// Greatest set pressure of a further valve, over the design pressure.
const FURTHER: f64 = 1.03;

impl Lift {
    /// Constant of the capacity, kg/h for a square millimetre and bar absolute.
    pub(super) fn constant(self) -> f64 {
        match self {
            Self::Ordinary => 0.05,
            Self::High => 0.10,
            Self::Full => 0.24,
        }
    }

    /// Why the constant was taken.
    pub(super) fn words(self) -> &'static str {
        match self {
            Self::Ordinary => "ordinary lift: none higher is named, or its stop allows no more",
            Self::High => "high lift, as named",
            Self::Full => "full lift, as named",
        }
    }

    /// Lift that the class asks, in parts of the bore.
    pub(super) fn share(self) -> Option<f64> {
        match self {
            Self::Ordinary => None,
            Self::High => Some(1.0 / 8.0),
            Self::Full => Some(1.0 / 4.0),
        }
    }

    fn below(self) -> Self {
        match self {
            Self::Full => Self::High,
            Self::High | Self::Ordinary => Self::Ordinary,
        }
    }
}

/// The lesser of seat and bore at its least, mm.
fn flow_bore_mm(valve: &SafetyValve) -> Option<f64> {
    let seat = size_mm(valve.seat.as_ref()?, Bad::Small);
    let bore = valve.bore.as_ref().map(|d| size_mm(d, Bad::Small));
    Some(bore.map_or(seat, |bore| bore.min(seat)))
}

/// The class of the lift: as named, lowered where the stop allows less.
pub(super) fn class(valve: &SafetyValve) -> Lift {
    let mut class = valve.lift_class.unwrap_or(Lift::Ordinary);
    let lift = valve.lift.as_ref().map(|d| size_mm(d, Bad::Small));
    let (Some(lift), Some(bore)) = (lift, flow_bore_mm(valve)) else {
        return class;
    };
    while class.share().is_some_and(|share| lift < share * bore) {
        class = class.below();
    }
    class
}

/// Files the lift, or holds it open where a class is named and no lift.
pub(super) fn open_lift(sum: &mut Sum, valve: &SafetyValve) -> Result<(), Stop> {
    if let Some(lift) = &valve.lift {
        file_size(sum, ("h", "lift that the stop allows"), lift, Bad::Small)?;
        return Ok(());
    }
    if let (Some(share), Some(bore)) = (class(valve).share(), flow_bore_mm(valve)) {
        let least = share * bore;
        let says = format!("lift of {}, at least {} mm", valve.id, at_least(least));
        sum.hold_within(
            says,
            format!("{}.lift", valve.id),
            Bound::AtLeast(si(least)),
        );
    }
    Ok(())
}

/// Files the least bore of a valve: its seat, or what lies below it.
pub(super) fn file_flow_bore(sum: &mut Sum, valve: &SafetyValve) -> Result<Ref, Stop> {
    let seat = need("the seat", &valve.id, valve.seat.as_ref())?;
    let seat = file_size(sum, ("d", "seat of the valve"), seat, Bad::Small)?;
    let Some(bore) = &valve.bore else {
        // A bore that was taken away again may have been narrower than the seat.
        return match valve.bore_gone {
            Removed::Nothing => Ok(seat),
            Removed::Measurement => Err(Stop::Missing {
                what: "the bore below the seat",
                part: valve.id.clone(),
            }),
        };
    };
    let bore = file_size(sum, ("d_b", "bore below the seat"), bore, Bad::Small)?;
    Ok(sum.w.chosen(Choice {
        symbol: "d",
        meaning: "least bore of the valve",
        value: sum.value(seat).min(sum.value(bore)),
        unit: &MM,
        between: "seat and bore",
        reason: "the lesser",
        from: &[seat, bore],
        cite: None,
    }))
}

/// Files the absolute pressure at a valve, with a share of accumulation above its set pressure.
pub(super) fn file_set(
    sum: &mut Sum,
    valve: &SafetyValve,
    raising: &Raising,
    over: f64,
) -> Result<Ref, Stop> {
    let set = need("the set pressure", &valve.id, valve.set.as_ref())?;
    let air = raising.atmosphere.as_ref();
    let air = need("the pressure of the air", "the boiler", air)?;
    let set = sum.know("P", "set pressure, gauge", &BAR_GAUGE, set);
    let share = chosen(
        Ratio::from_number(over),
        "0 to a tenth",
        "regulations count a plain valve at its set pressure, a measured one at a tenth above",
        Origin::Read,
    );
    let share = sum.know("a", "accumulation", &ONE, &share);
    let air = sum.know("P_a", "pressure of the air", &BAR_ABSOLUTE, air);
    sum.card(&law::ABSOLUTE, &[set, share, air])
}

/// Set pressure and inlet of every valve.
pub(super) fn checks(mounted: &Mountings, raising: &Raising) -> Vec<Finding> {
    let lowest = mounted
        .valves
        .iter()
        .filter_map(|v| v.set.as_ref().map(|set| set.value.bar()))
        .fold(f64::INFINITY, f64::min);
    let mut found = Vec::new();
    for valve in &mounted.valves {
        found.push(set(valve, raising, lowest));
        found.push(inlet(valve));
    }
    found
}

/// The first valve at the design pressure or below, a further one little above.
fn set(valve: &SafetyValve, raising: &Raising, lowest_bar: f64) -> Finding {
    check(OURS.head(&VALVE_SET, &valve.id), |sum| {
        let design = need(
            "the design pressure",
            "the boiler",
            raising.pressure.as_ref(),
        )?;
        let set = need("the set pressure", &valve.id, valve.set.as_ref())?;
        sum.know("P", "design pressure", &BAR_GAUGE, design);
        sum.know("P_s", "set pressure", &BAR_GAUGE, set);
        let further = set.value.bar() > lowest_bar && lowest_bar <= design.value.bar();
        let most = design.value.bar() * if further { FURTHER } else { 1.0 };
        let says = format!(
            "set to {} bar, at most {} bar",
            figures(set.value.bar(), 3),
            figures(most, 3)
        );
        let remedy = format!("set it to {} bar or less", figures(most, 3));
        let outcome = if set.value.bar() <= most {
            crate::sum::Answer::Holds
        } else {
            crate::sum::Answer::Fails
        };
        Ok(Outcome::plain(outcome, says, remedy))
    })
}

/// The way to the valve is no narrower than the valve.
fn inlet(valve: &SafetyValve) -> Finding {
    check(OURS.head(&VALVE_INLET, &valve.id), |sum| {
        let inlet = need("the bore of its bush", &valve.id, valve.inlet.as_ref())?;
        let own = valve.bore.as_ref().or(valve.seat.as_ref());
        let own = need("the bore", &valve.id, own)?;
        let has = file_size(sum, ("d_i", "free bore of the bush"), inlet, Bad::Small)?;
        let has = file_pipe(sum, valve, has)?;
        let asked = file_size(sum, ("d", "bore of the valve"), own, Bad::Large)?;
        let (has, asked) = (sum.value(has), sum.value(asked));
        let says = format!("the way to it is bored {has:.2} mm, the valve {asked:.2} mm");
        let remedy = format!("a bush or pipe bored {} mm", at_least(asked));
        let answer = if has >= asked {
            crate::sum::Answer::Holds
        } else {
            crate::sum::Answer::Fails
        };
        Ok(Outcome::plain(answer, says, remedy))
    })
}

/// Files the bore of a pipe between boiler and valve, and gives the narrower of pipe and bush.
fn file_pipe(sum: &mut Sum, valve: &SafetyValve, bush: Ref) -> Result<Ref, Stop> {
    let Some(pipe) = &valve.pipe else {
        return Ok(bush);
    };
    let outside = need("the outside of its pipe", &valve.id, pipe.outside.as_ref())?;
    let wall = need("the wall of its pipe", &valve.id, pipe.wall.as_ref())?;
    let d = file_size(sum, ("D_o", "outside of the pipe"), outside, Bad::Small)?;
    let t = file_size(sum, ("t", "wall of the pipe"), wall, Bad::Large)?;
    let bore = sum.card(&ring::BORE, &[d, t])?;
    Ok(sum.w.chosen(Choice {
        symbol: "d_i",
        meaning: "narrowest way to the valve",
        value: sum.value(bush).min(sum.value(bore)),
        unit: &MM,
        between: "bush and pipe",
        reason: "the narrower",
        from: &[bush, bore],
        cite: None,
    }))
}
