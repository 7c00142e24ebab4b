//! Rules of the trade beside the answer: what a maker who knows them by heart will hold it
//! against, and why they differ. None of them decides anything.

use formulas::trade::{BORE_OF_SHARE, SURFACE_EVAPORATION, SWEPT_STEAM, TUBE_SHAPE};
use plan::Plan;
use plant::Plant;
use reckoning::quantity::show::figures;
use reckoning::quantity::{
    Area, Density, INCH, KG_PER_H, KG_PER_M2_H, KG_PER_M3, Length, M2, M3, MM, MM2, MassFlux, ONE,
    PER_S, Quantity, Ratio, Rotation, Unit, Volume,
};
use reckoning::{Given, Known, Origin, Ref, Refused, Working};
use steaming::FireState;

/// One rule of the trade with what it gives here.
#[derive(Clone, Debug)]
pub struct Beside {
    /// What it speaks of.
    pub what: &'static str,
    /// The least that it gives, SI.
    pub least: f64,
    /// The most that it gives, SI.
    pub most: f64,
    /// What is worked out here, SI.
    pub here: f64,
    /// Unit in which it is told.
    pub unit: &'static Unit,
    /// Rule, answer and difference as sentences.
    pub says: String,
    /// The lines of it.
    pub working: Working,
}

/// A rule as the trade has it.
struct Practice {
    what: &'static str,
    rule: &'static str,
    differs: &'static str,
    unit: &'static Unit,
}

/// The rules that this plan can be held against, at a settled fire.
#[must_use]
pub fn beside(plan: &Plan, plant: &Plant, state: &FireState) -> Vec<Beside> {
    [
        surface(plant, state),
        swept(state),
        // Nozzle and choke go by the grate on which a bed burns.
        state.pass.firing.bed().and_then(|_| nozzle(plan, plant)),
        state.pass.firing.bed().and_then(|_| choke(plan, plant)),
        shape(plan, plant),
    ]
    .into_iter()
    .filter_map(|rule| rule?.ok())
    .collect()
}

/// Evaporation of a square metre, kg/(m² h), by practice with coal.
const SURFACE: (f64, f64) = (15.2, 30.0);

/// The same with gas or spirit.
const SURFACE_ON_GAS: (f64, f64) = (8.0, 15.0);

/// Surface that passes heat to the water, on the side of the fire.
fn heated(plant: &Plant, state: &FireState) -> Option<Known<Area>> {
    let surfaces = &plant.surfaces;
    let (first, second, of) = match state.pass.firing.flue() {
        None => (
            surfaces.firebox()?,
            surfaces.tubes_inside.clone()?,
            "firebox and tubes on the side of the fire",
        ),
        Some(_) => (
            surfaces.flue.clone()?,
            surfaces.cross_tubes.clone()?,
            "flue and cross tubes on the side of the fire",
        ),
    };
    Some(Known {
        value: first.value + second.value,
        given: off_shape(of),
    })
}

fn surface(plant: &Plant, state: &FireState) -> Option<Result<Beside, Refused>> {
    let area = heated(plant, state)?;
    let (ends, says, differs) = match state.pass.firing.flame() {
        None => (
            SURFACE,
            "15.2 kg an hour from a square metre, and to 30 when forced",
            "It knows neither bed nor draught, which decide at this size.",
        ),
        Some(_) => (
            SURFACE_ON_GAS,
            "8 to 15 kg an hour from a square metre with gas or spirit",
            "It knows neither the air of the flame nor the cross tubes, which decide at this size.",
        ),
    };
    let practice = Practice {
        what: "steam from the heating surface",
        rule: says,
        differs,
        unit: &KG_PER_H,
    };
    Some(
        practice.told(ends, KG_PER_H.from_si(state.evaporation_kg_s), |w, s| {
            let rate = w.know(
                "s",
                "steam from a square metre, by the rule",
                &KG_PER_M2_H,
                &rule::<MassFlux>(&KG_PER_M2_H, s),
            );
            let area = w.know::<Area>("A", "heating surface", &M2, &area);
            w.worked(&SURFACE_EVAPORATION, &[rate, area])
        }),
    )
}

/// How often the swept volume is counted, by practice.
const SWEPT: (f64, f64) = (1.5, 2.0);

fn swept(state: &FireState) -> Option<Result<Beside, Refused>> {
    let (engine, run) = (state.inputs.engine?, state.exhaust?.engine?);
    let volume = Known::<Volume> {
        value: Volume::from_si(engine.stroke_volume_m3),
        given: off_shape("bore and stroke of one end, less the rod where it stands in the way"),
    };
    let strokes = Known::<Rotation> {
        value: Rotation::from_si(run.admitted.strokes_per_s),
        given: off_shape("speed, cylinders and working ends"),
    };
    let density = Known::<Density> {
        value: Density::from_si(state.water.steam_kg_m3),
        given: off_shape("dry steam at the pressure of the boiler"),
    };
    let practice = Practice {
        what: "steam that the engine asks for",
        rule: "half as much again as the swept volume holds at boiler pressure, to twice as much",
        differs: "It leaves cut-off and clearance out and has one allowance for all engines.",
        unit: &KG_PER_H,
    };
    Some(
        practice.told(SWEPT, KG_PER_H.from_si(run.steam_kg_s), |w, k| {
            let from = [
                w.know("k", "allowance of the rule", &ONE, &rule::<Ratio>(&ONE, k)),
                w.know("V", "volume swept in a stroke", &M3, &volume),
                w.know("n", "working strokes of all ends", &PER_S, &strokes),
                w.know(
                    "rho",
                    "density of dry steam in the boiler",
                    &KG_PER_M3,
                    &density,
                ),
            ];
            w.worked(&SWEPT_STEAM, &from)
        }),
    )
}

fn nozzle(plan: &Plan, plant: &Plant) -> Option<Result<Beside, Refused>> {
    let practice = Practice {
        what: "bore of the exhaust nozzle",
        rule: "one two-hundredth of the area of the grate",
        differs: "It knows nothing of the bed, of the ash or of the tubes.",
        unit: &MM,
    };
    bore(practice, 0.005, plant, plan.blast.nozzle.likely()?.value)
}

fn choke(plan: &Plan, plant: &Plant) -> Option<Result<Beside, Refused>> {
    let practice = Practice {
        what: "bore of the choke",
        rule: "one eighteenth of the area of the grate",
        differs: "The best choke goes with the nozzle and with the gas that a kilogram of steam moves.",
        unit: &MM,
    };
    bore(
        practice,
        1.0 / 18.0,
        plant,
        plan.chimney.choke.likely()?.value,
    )
}

fn bore(
    practice: Practice,
    share: f64,
    plant: &Plant,
    here: Length,
) -> Option<Result<Beside, Refused>> {
    let grate = plant.surfaces.grate.clone()?;
    Some(practice.told((share, share), here.mm(), |w, s| {
        let share = w.know(
            "s",
            "share of the area of the grate",
            &ONE,
            &rule::<Ratio>(&ONE, s),
        );
        let grate = w.know::<Area>("A", "area of the grate", &MM2, &grate);
        w.worked(&BORE_OF_SHARE, &[share, grate])
    }))
}

/// Length of a tube over the square of its bore, in inches, by practice.
const SHAPE: (f64, f64) = (50.0, 70.0);

fn shape(plan: &Plan, plant: &Plant) -> Option<Result<Beside, Refused>> {
    let length = plant.nest.as_ref()?.length.clone()?;
    let outside = plan.boiler.tubes.outside.likely()?.value;
    let wall = plan.boiler.tubes.wall.likely()?.value;
    let bore = Known::<Length> {
        value: outside - wall * 2.0,
        given: off_shape("outside of the tube less its walls"),
    };
    let mut working = Working::new();
    let length = working.know("L", "length of a tube", &INCH, &length);
    let bore = working.know("d", "bore of a tube", &INCH, &bore);
    let worked = working.worked(&TUBE_SHAPE, &[length, bore]);
    let practice = Practice {
        what: "length of a tube over the square of its bore, in inches",
        rule: "fifty to seventy",
        differs: "It comes from tubes in which the gas whirls; in these it runs in layers, and number times length decides.",
        unit: &ONE,
    };
    Some(worked.map(|line| {
        let here = working.line(line).value;
        practice.beside((SHAPE.0, SHAPE.1), here, working)
    }))
}

impl Practice {
    /// Works the rule at both of its ends.
    fn told(
        self,
        ends: (f64, f64),
        here: f64,
        work: impl Fn(&mut Working, f64) -> Result<Ref, Refused>,
    ) -> Result<Beside, Refused> {
        let mut working = Working::new();
        let low = work(&mut working, ends.0)?;
        let high = if ends.1 > ends.0 {
            work(&mut working, ends.1)?
        } else {
            low
        };
        let value = |r| self.unit.from_si(working.si(r));
        let gives = (value(low), value(high));
        Ok(self.beside(gives, here, working))
    }

    fn beside(&self, (least, most): (f64, f64), here: f64, working: Working) -> Beside {
        let number = |v: f64| {
            format!("{} {}", figures(v, 3), self.unit.symbol)
                .trim_end()
                .to_owned()
        };
        let gives = if most > least {
            format!("{} to {}", figures(least, 3), number(most))
        } else {
            number(least)
        };
        let says = format!(
            "{}: {gives} by the rule of the trade ({}; common practice, no source), {} here. {}",
            self.what,
            self.rule,
            number(here),
            self.differs
        );
        Beside {
            what: self.what,
            least: self.unit.to_si(least),
            most: self.unit.to_si(most),
            here: self.unit.to_si(here),
            unit: self.unit,
            says,
            working,
        }
    }
}

/// A number of the rule itself.
fn rule<Q: Quantity>(unit: &'static Unit, value: f64) -> Known<Q> {
    Known {
        value: Q::from_unit(value, unit),
        given: Given::Chosen {
            between: "what the trade goes by".to_owned(),
            reason: "common practice, no source".to_owned(),
            weakest: Origin::CommonPractice,
        },
    }
}

fn off_shape(of: &str) -> Given {
    Given::Shape {
        of: of.to_owned(),
        weakest: Origin::Read,
    }
}
