//! Safety valve, blower, feed, gauges, drain and plug.

use plant::Plant;
use reckoning::Origin;
use reckoning::quantity::{KG_PER_M2_H, LITRE, Length, Quantity, RPM};

use super::At;
use crate::propose::choice::{Choice, mm, plain, text};
use crate::propose::fire;

/// Seats of a safety valve, mm.
pub(super) const SEATS_MM: [f64; 12] = [
    3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0, 14.0, 17.0, 20.0,
];
/// Jets of a blower.
const JETS: u32 = 3;
/// Bores of a jet, mm.
const JETS_MM: [f64; 8] = [0.4, 0.5, 0.6, 0.7, 0.8, 1.0, 1.2, 1.5];
/// Least rate of burning at which a small fire keeps alight.
const ALIGHT_KG_M2_H: f64 = 30.0;
/// Ends of the scales of pressure gauges (EN 837-1, from memory), bar.
const SCALES_BAR: [f64; 10] = [1.0, 1.6, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 40.0, 60.0];
/// Feed over demand that is asked for, with a tenth to spare.
const FEED: f64 = 1.65;
/// Comfortable strokes of a hand pump, and fastest strokes of a small plunger, in a minute.
const BY_HAND_RPM: f64 = 40.0;
const FASTEST_RPM: f64 = 600.0;

/// The valve, its seat as the capacity asked.
pub(super) fn valve(at: &At<'_>) -> Option<Choice> {
    let first = at.plan.safety_valves.first();
    let id = first
        .and_then(|v| v.id.get())
        .map_or("first", String::as_str);
    let set = at.plan.boiler.design_pressure.typed()?;
    let path = |key: &str| format!("safety-valve.{id}.{key}");
    Some(
        Choice::of("safety valve")
            .set(path("bush"), text("valve"))
            .set(path("set"), text(&set.text))
            .set(path("seat"), mm(at.sizes.seat))
            .set(path("lift-class"), text("ordinary"))
            .between("seats of 3 to 20 mm in a plain valve")
            .because(
                "the smallest that passes all the steam that the stronger of blast and blower \
                 can raise; no higher lift is counted, for none was measured",
                Origin::Assumed,
            ),
    )
}

/// The blower, as weak as keeps a fire alight.
pub(super) fn blower(at: &At<'_>, plant: &Plant) -> Option<Choice> {
    let with = |bore: f64| {
        Choice::of("blower")
            .set("blower.jets", JETS.to_string())
            .set("blower.bore", mm(bore))
            .between(format!(
                "{JETS} jets of {} to {} mm",
                JETS_MM[0],
                JETS_MM[JETS_MM.len() - 1]
            ))
    };
    let least = KG_PER_M2_H.to_si(ALIGHT_KG_M2_H);
    let burns = |bore: &&f64| {
        fire::blown(at.plan, plant, Length::from_mm(**bore)).is_some_and(|rate| rate >= least)
    };
    let found = JETS_MM.iter().find(burns);
    let reason = match found {
        Some(_) => {
            "the smallest with which the fire burns 30 kg on a square metre in an hour while the \
             engine stands: a stronger one asks a larger safety valve"
        }
        None => "the largest: with none the fire keeps alight while the engine stands",
    };
    let bore = found.unwrap_or(&JETS_MM[JETS_MM.len() - 1]);
    Some(with(*bore).because(reason, Origin::Assumed))
}

/// Jets for a fire that has none yet, so that the search has something to blow.
pub(super) fn first_blower(_: &At<'_>) -> Option<Choice> {
    Some(
        Choice::of("blower")
            .set("blower.jets", JETS.to_string())
            .set("blower.bore", mm(JETS_MM[0])),
    )
}

/// A pump that feeds enough.
struct Pump {
    id: &'static str,
    kind: &'static str,
    /// Plunger and stroke, mm.
    size: (f64, f64),
    rpm: f64,
    efficiency: f64,
}

impl Pump {
    /// The smallest plunger and stroke that sweep enough, m³/s.
    fn of(
        (id, kind): (&'static str, &'static str),
        asked_m3_s: f64,
        (rpm, efficiency): (f64, f64),
    ) -> Option<Self> {
        Some(Self {
            id,
            kind,
            size: swept(asked_m3_s, (rpm, efficiency))?,
            rpm,
            efficiency,
        })
    }

    fn words(&self) -> String {
        let (plunger, stroke) = self.size;
        format!(
            "{} of {} mm plunger and {} mm stroke",
            self.kind,
            plain(plunger),
            plain(stroke)
        )
    }

    fn set(&self, choice: Choice) -> Choice {
        let path = |key: &str| format!("feed.means.{}.{key}", self.id);
        let (plunger, stroke) = self.size;
        let efficiency = format!("{} %", plain(100.0 * self.efficiency));
        choice
            .set(path("kind"), text(self.kind))
            .set(path("bush"), text(&format!("feed-{}", self.id)))
            .set(path("plunger"), mm(plunger))
            .set(path("stroke"), mm(stroke))
            .set(path("strokes"), text(&format!("{} rpm", plain(self.rpm))))
            .set(path("efficiency"), text(&efficiency))
            .set(
                path("check-valve"),
                mm(if plunger < 8.0 { 3.0 } else { 4.0 }),
            )
    }
}

/// Two pumps and a tank; only the tank where the maker has pumps of his own.
pub(super) fn feed(at: &At<'_>) -> Option<Choice> {
    let tank = tank(at)?;
    let choice = Choice::of("feed").set("feed.tank", tank.clone());
    if !at.plan.feed.means.iter().all(|m| ours(m.id.get())) {
        let reason = "the least that holds what the run takes at the high end of the demand";
        return Some(choice.between("tanks").because(reason, Origin::Assumed));
    }
    let asked = FEED * at.demand.high / at.demand.feed_kg_m3;
    let engine_rpm = RPM.from_si(at.plan.engine.speed.value()?.si());
    let gear = (engine_rpm / FASTEST_RPM).ceil();
    let hand = Pump::of(("hand", "hand pump"), asked, (BY_HAND_RPM, 0.8))?;
    let driven = Pump::of(("engine", "engine pump"), asked, (engine_rpm / gear, 0.7))?;
    let told = format!(
        "{}; {}; a tank of {}",
        hand.words(),
        driven.words(),
        tank.trim_matches('"')
    );
    let geared = if gear > 1.0 {
        format!(", geared down {gear} to 1 from the engine")
    } else {
        String::new()
    };
    let reason = format!(
        "two means that stand alone, each the smallest that feeds half as much again as the \
         engine takes at its highest; the pump on the engine makes {} strokes a minute{geared}; \
         the tank holds what the run takes",
        plain(driven.rpm)
    );
    Some(
        driven
            .set(hand.set(choice))
            .told(told)
            .between("plungers of 3 to 40 mm")
            .because(reason, Origin::Assumed),
    )
}

fn ours(id: Option<&String>) -> bool {
    id.is_some_and(|id| id == "hand" || id == "engine")
}

/// The smallest plunger and stroke that sweep enough, m³/s, at strokes in a minute.
fn swept(asked_m3_s: f64, (rpm, efficiency): (f64, f64)) -> Option<(f64, f64)> {
    const PLUNGERS: [f64; 13] = [
        3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 20.0, 25.0, 32.0, 40.0,
    ];
    const STROKES: [f64; 9] = [6.0, 8.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0];
    let sweeps = |d: f64, s: f64| {
        let (d, s) = (Length::from_mm(d).si(), Length::from_mm(s).si());
        std::f64::consts::FRAC_PI_4 * d * d * s * RPM.to_si(rpm) * efficiency
    };
    PLUNGERS
        .iter()
        .flat_map(|d| STROKES.iter().map(|s| (*d, *s)))
        // A stroke between one and four plungers long packs well.
        .filter(|(d, s)| (1.0..=4.0).contains(&(s / d)))
        .filter(|(d, s)| sweeps(*d, *s) >= asked_m3_s)
        .min_by(|a, b| sweeps(a.0, a.1).total_cmp(&sweeps(b.0, b.1)))
}

/// A tank that holds what the run takes, in quarters of a litre.
fn tank(at: &At<'_>) -> Option<String> {
    let run = at.plan.duty.run.value()?.si();
    let litres = LITRE.from_si(at.demand.high * run / at.demand.feed_kg_m3);
    let quarter = (4.0 * litres).ceil() / 4.0;
    Some(text(&format!("{} l", plain(quarter))))
}

pub(super) fn gauge(at: &At<'_>) -> Option<Choice> {
    let design = at.plan.boiler.design_pressure.value()?.bar();
    let scale = SCALES_BAR.iter().find(|s| **s >= 1.5 * design)?;
    Some(
        Choice::of("pressure gauge")
            .set(
                "pressure-gauge.range",
                text(&format!("{} bar", plain(*scale))),
            )
            .set("pressure-gauge.syphon", text("fitted"))
            .set("pressure-gauge.bush", text("gauge"))
            .between("scales to 1, 1.6, 2.5, 4, 6, 10, 16 bar and on")
            .because(
                "the first that ends at one and a half times the design pressure or above",
                Origin::FromMemory,
            ),
    )
}

pub(super) fn drain(_: &At<'_>) -> Option<Choice> {
    Some(
        Choice::of("drain and plug")
            .set("blow-down.bush", text("blow-down"))
            .set("blow-down.bore", mm(4.0))
            .set("fusible-plug.plug", text("fitted"))
            .set("fusible-plug.melts", text("232 °C"))
            .between("cores of tin and of its alloys")
            .because(
                "the drain stands at the foot of the water leg; tin melts well above the water \
                 at work",
                Origin::FromMemory,
            ),
    )
}
