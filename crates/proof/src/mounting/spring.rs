//! The spring of a safety valve, where the maker winds it: set pressure, rise to lift, stress,
//! turns that must not touch, buckling.

use super::valve::{class, file_flow_bore};
use crate::input::{Guide, Mountings, SafetyValve, Spring, StockSize, Wire};
use crate::metal::chosen;
use crate::remedy::at_least;
use crate::rules::{SPRING_BUCKLING, SPRING_OPEN, SPRING_RISE, SPRING_STRESS};
use crate::set::OURS;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{down, file_size, need};
use formulas::relief::spring as law;
use formulas::table;
use reckoning::quantity::{Length, MM, MPA, MPA_GAUGE, ONE, Ratio, Stress};
use reckoning::size::Bad;
use reckoning::working::Choice;
use reckoning::{Finding, Known, Origin, Ref};

/// Rise of pressure within which a valve must reach its lift, over its set pressure.
const ACCUMULATION: f64 = 0.10;
/// Lift of a plain valve, in parts of its bore.
const ORDINARY_LIFT: f64 = 1.0 / 24.0;

/// Every check of the spring of each valve that has one of its own.
pub(super) fn checks(mounted: &Mountings) -> Vec<Finding> {
    let mut found = Vec::new();
    for valve in &mounted.valves {
        let Some(spring) = &valve.spring else {
            continue;
        };
        let it = Wound {
            valve,
            spring,
            wires: &mounted.wires,
        };
        found.extend([rise(&it), stress(&it), open(&it), buckling(&it)]);
    }
    found
}

/// A valve with its spring and the wire on hand.
#[derive(Clone, Copy)]
struct Wound<'a> {
    valve: &'a SafetyValve,
    spring: &'a Spring,
    wires: &'a [StockSize],
}

/// Lines of a spring.
struct Lines {
    wire: Ref,
    coil: Ref,
    turns: Ref,
    rate: Ref,
    force: Ref,
}

/// Files the spring, stiff end of its sizes, and the force of its set pressure.
fn file(sum: &mut Sum, it: &Wound<'_>) -> Result<Lines, Stop> {
    let (id, spring) = (&it.valve.id, it.spring);
    let wire = need("the wire of the spring", id, spring.wire.as_ref())?;
    let wire = file_size(sum, ("d", "wire of the spring"), wire, Bad::Large)?;
    let coil = need("the coil of the spring", id, spring.coil.as_ref())?;
    let coil = file_size(sum, ("D", "mean diameter of the coil"), coil, Bad::Small)?;
    let turns = need("the turns of the spring", id, spring.turns.as_ref())?;
    let turns = sum.know("n", "turns that work", &ONE, turns);
    sum.card(&law::INDEX, &[coil, wire])?;
    let shear = moduli(it)?;
    let g = sum.know("G", "shear modulus", &MPA, &shear.1);
    let rate = sum.card(&law::RATE, &[g, wire, coil, turns])?;
    let set = need("the set pressure", id, it.valve.set.as_ref())?;
    let p = sum.know("P", "set pressure, gauge", &MPA_GAUGE, set);
    let seat = need("the seat", id, it.valve.seat.as_ref())?;
    let seat = file_size(
        sum,
        ("d_s", "line on which the valve seats"),
        seat,
        Bad::Small,
    )?;
    let force = sum.card(&law::SEAT_FORCE, &[p, seat])?;
    Ok(Lines {
        wire,
        coil,
        turns,
        rate,
        force,
    })
}

/// Modulus of elasticity and shear modulus of the wire.
fn moduli(it: &Wound<'_>) -> Result<(Known<Stress>, Known<Stress>), Stop> {
    let metal = need(
        "the metal of the spring",
        &it.valve.id,
        it.spring.metal.as_ref(),
    )?;
    if *metal != Wire::Stainless {
        return Err(Stop::NoStrength {
            what: "stiffness",
            metal: "this spring wire",
            celsius: 20.0,
        });
    }
    let of = |mpa: f64, between: &str| {
        chosen(
            Stress::from_mpa(mpa),
            between,
            "the stiffer: cold",
            Origin::FromMemory,
        )
    };
    Ok((
        of(185e3, "modulus of elasticity of stainless spring wire"),
        of(73e3, "70 to 73 GPa, shear moduli of stainless spring wire"),
    ))
}

/// Files the lift that is counted on: that of the class, or the stop's where that is more.
fn file_lift(sum: &mut Sum, it: &Wound<'_>) -> Result<Ref, Stop> {
    let bore = file_flow_bore(sum, it.valve)?;
    let share = class(it.valve).share().unwrap_or(ORDINARY_LIFT);
    let lift = share * sum.value(bore);
    Ok(sum.w.chosen(Choice {
        symbol: "h",
        meaning: "lift that is counted on",
        value: lift,
        unit: &MM,
        between: "a 24th of the bore of a plain valve, an eighth, a quarter",
        reason: class(it.valve).words(),
        from: &[bore],
        cite: None,
    }))
}

/// The rise of pressure to the lift.
fn rise(it: &Wound<'_>) -> Finding {
    check(OURS.head(&SPRING_RISE, &it.valve.id), |sum| {
        let lines = file(sum, it)?;
        let h = file_lift(sum, it)?;
        let a = sum.card(&law::RISE, &[lines.force, lines.rate, h])?;
        let (a, lift) = (sum.value(a), sum.value(h));
        let pressed = sum.value(lines.force) / sum.value(lines.rate);
        let says = format!(
            "screwed down by {pressed:.2} mm it holds the set pressure, and reaches {lift:.2} mm of lift {:.1} % above it, 10 % allowed",
            100.0 * a
        );
        let turns = sum.value(lines.turns) * a / ACCUMULATION;
        let remedy = format!(
            "a spring of {} turns, or of thinner wire{}",
            at_least(turns),
            thinner(
                it.wires,
                sum.value(lines.wire) * (ACCUMULATION / a).powf(0.25)
            )
        );
        Ok(Outcome::compared(ACCUMULATION, a, says, remedy))
    })
}

/// The thickest wire on hand that is thin enough.
fn thinner(wires: &[StockSize], most_mm: f64) -> String {
    let found = wires
        .iter()
        .filter(|w| w.least.mm() <= most_mm)
        .max_by(|a, b| a.least.mm().total_cmp(&b.least.mm()));
    match found {
        Some(wire) => format!(
            ": {} is on hand, at most {} mm is asked",
            wire.text,
            down(most_mm)
        ),
        None => format!(
            ": at most {} mm, and none on hand is as thin",
            down(most_mm)
        ),
    }
}

/// Files the free length and the length with the turns closed.
fn file_lengths(
    sum: &mut Sum,
    it: &Wound<'_>,
    lines: &Lines,
    bad: Bad,
) -> Result<(Ref, Ref), Stop> {
    let free = need(
        "the free length of the spring",
        &it.valve.id,
        it.spring.free.as_ref(),
    )?;
    let free = file_size(sum, ("L_0", "free length"), free, bad)?;
    Ok((free, sum.card(&law::SOLID, &[lines.turns, lines.wire])?))
}

/// The shear with the turns closed.
fn stress(it: &Wound<'_>) -> Finding {
    check(OURS.head(&SPRING_STRESS, &it.valve.id), |sum| {
        let lines = file(sum, it)?;
        let (free, solid) = file_lengths(sum, it, &lines, Bad::Large)?;
        let closed = sum.card(&law::CLOSED_FORCE, &[free, solid, lines.rate])?;
        let tau = sum.card(&law::SHEAR, &[closed, lines.coil, lines.wire])?;
        let w = sum.card(&law::INDEX, &[lines.coil, lines.wire])?;
        sum.card(&law::CURVED, &[w, tau])?;
        let strength = tensile(Length::from_mm(sum.value(lines.wire)))?;
        let r_m = sum.know("R_m", "least tensile strength of the wire", &MPA, &strength);
        let most = sum.card(&law::STATIC, &[r_m])?;
        let (tau, most) = (sum.value(tau), sum.value(most));
        let says = format!("{tau:.0} MPa with its turns closed, {most:.0} MPa allowed");
        let travel = (sum.value(free) - sum.value(solid)) * most / tau;
        let remedy = format!(
            "a free length of {} mm or less",
            down(sum.value(solid) + travel)
        );
        Ok(Outcome::compared(most, tau, says, remedy))
    })
}

fn tensile(wire: Length) -> Result<Known<Stress>, Stop> {
    let table = table::find("spring-wire-stainless");
    let found = table
        .at::<Length, Stress>("d", wire, "R")
        .map_err(|_| Stop::NoStrength {
            what: "tensile strength",
            metal: "spring wire of this diameter",
            celsius: 20.0,
        })?;
    Ok(table.known(found))
}

/// The room between the turns when the valve is open.
fn open(it: &Wound<'_>) -> Finding {
    check(OURS.head(&SPRING_OPEN, &it.valve.id), |sum| {
        let lines = file(sum, it)?;
        let (free, solid) = file_lengths(sum, it, &lines, Bad::Small)?;
        let h = match &it.valve.lift {
            Some(stop) => file_size(sum, ("h", "lift that the stop allows"), stop, Bad::Large)?,
            None => file_lift(sum, it)?,
        };
        let lifted = sum.card(&law::LIFTED, &[lines.force, lines.rate, h])?;
        let length = sum.card(&law::SHORTENED, &[free, lifted, lines.rate])?;
        let space = sum.card(&law::SPACE, &[lines.turns, lines.coil, lines.wire])?;
        let (has, asked) = (sum.value(length), sum.value(solid) + sum.value(space));
        let says =
            format!("{has:.2} mm long at full lift, {asked:.2} mm asked so that no turns touch");
        let remedy = format!(
            "a free length of {} mm",
            at_least(sum.value(free) + asked - has)
        );
        Ok(Outcome::compared(has, asked, says, remedy))
    })
}

/// Buckling, unless a rod keeps it straight.
fn buckling(it: &Wound<'_>) -> Finding {
    check(OURS.head(&SPRING_BUCKLING, &it.valve.id), |sum| {
        let what = "what keeps the spring straight";
        let guide = need(what, &it.valve.id, it.spring.guide.as_ref())?;
        let held = match guide {
            Guide::Spindle => return Ok(straight("a rod through the spring keeps it straight")),
            Guide::FlatEnds => 0.5,
            Guide::LooseEnds => 1.0,
        };
        let lines = file(sum, it)?;
        let (free, _) = file_lengths(sum, it, &lines, Bad::Large)?;
        let h = file_lift(sum, it)?;
        let lifted = sum.card(&law::LIFTED, &[lines.force, lines.rate, h])?;
        let travel = sum.value(lifted) / sum.value(lines.rate);
        let Some(bends) = file_buckling(sum, it, (free, lines.coil), held)? else {
            return Ok(straight("a spring as short as this never buckles"));
        };
        let says = format!("pressed by {travel:.2} mm, it buckles at {bends:.2} mm");
        let remedy = SPRING_BUCKLING.remedy.to_owned();
        Ok(Outcome::compared(bends, travel, says, remedy))
    })
}

fn straight(why: &str) -> Outcome {
    let remedy = SPRING_BUCKLING.remedy.to_owned();
    Outcome::plain(Answer::Holds, why.to_owned(), remedy)
}

/// Files the travel at which a spring buckles, mm; none where it never does.
fn file_buckling(
    sum: &mut Sum,
    it: &Wound<'_>,
    (free, coil): (Ref, Ref),
    held: f64,
) -> Result<Option<f64>, Stop> {
    let (e, g) = moduli(it)?;
    let stiff = [e.value.mpa(), g.value.mpa()];
    if law::buckling(sum.value(free), sum.value(coil), stiff, held).is_none() {
        return Ok(None);
    }
    let nu = chosen(
        Ratio::from_number(held),
        "0.5 between flat ends, 1 between ends that tilt",
        "as the plan says",
        Origin::FromMemory,
    );
    let e = sum.know("E", "modulus of elasticity", &MPA, &e);
    let g = sum.know("G", "shear modulus", &MPA, &g);
    let nu = sum.know("nu", "how the ends are held", &ONE, &nu);
    let bends = sum.card(&law::BUCKLING, &[free, coil, e, g, nu])?;
    Ok(Some(sum.value(bends)))
}
