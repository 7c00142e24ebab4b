//! The gas tank of a plan: how long it keeps the pressure of its jet.

use formulas::supply::Lpg;
use plan::Plan;
use plan::section::Fitted;
use reckoning::quantity::{Density, Quantity, SpecificHeat};
use reckoning::{Known, Working};
use steaming::burner::{Burner, Chilling, Draught, Ended, GasJet, Tank, chilling};
use steaming::{Entering, Inputs, TankAsked, TankEnds, TankTime};

use super::{Taken, gas};

/// Share of the gauge pressure at lighting below which a fire without a regulator is taken to be
/// too weak (chosen here).
const WEAK: f64 = 0.5;

/// How often the time asked is marched: a tank that lasts longer lasts.
const LONGEST: f64 = 4.0;

/// A tank with what a sum of it needs.
struct Asked {
    tank: Tank,
    liquid: Lpg,
    fill_kg: f64,
    lit_k: f64,
    run_s: f64,
    regulated: bool,
    taken: Taken,
}

/// How long the gas of a plan lasts, with its lines; `None` where it burns no gas.
pub(crate) fn lasting(plan: &Plan, inputs: &Inputs) -> Option<(TankAsked, Working)> {
    let burner = inputs.firing.flame()?.burner()?;
    let mut taken = Taken::default();
    let asked = asked(plan, &mut taken);
    let mut working = Working::new();
    let Some(asked) = asked.filter(|_| taken.gaps.is_empty()) else {
        return Some((TankAsked::Wanting(taken.gaps), working));
    };
    let asked = Asked { taken, ..asked };
    let likely = time(&asked, (burner, inputs), &asked.tank, &mut working);
    // The lines are those of the tank as it is most likely.
    let worst = time(
        &asked,
        (burner, inputs),
        &asked.worst(),
        &mut Working::new(),
    );
    let told = match likely.zip(worst) {
        Some((likely, worst)) => TankAsked::Known {
            time: told(&likely, &worst, burner),
            run_s: asked.run_s,
            assumed: asked.assumed().collect(),
        },
        None => TankAsked::Wanting(vec![
            "a gas.tank.temperature within the tables of its gas".to_owned(),
        ]),
    };
    Some((told, working))
}

fn asked(plan: &Plan, taken: &mut Taken) -> Option<Asked> {
    let t = &plan.gas.tank;
    let liquid = gas::liquid(plan, taken);
    let bore = taken.size(&t.bore);
    let length = taken.size(&t.length);
    let wall = taken.size(&t.wall);
    let fill = taken.wanted(&t.fill);
    let lit = taken.wanted(&t.temperature);
    let film = taken.number(&t.film);
    let dry_share = taken.number(&t.dry_share);
    let run = taken.wanted(&plan.duty.run);
    let metal = t.metal.get().map(String::as_str);
    let density = metal.and_then(plant::density);
    let heat = metal.and_then(plant::specific_heat);
    let metal_kg_m3 = taken.keep::<Density>(t.metal.path(), density);
    let metal_j_kg_k = heat.map(|heat: Known<SpecificHeat>| heat.value.si());
    Some(Asked {
        tank: Tank {
            bore_m: bore?,
            length_m: length?,
            wall_m: wall?,
            metal_kg_m3: metal_kg_m3?,
            metal_j_kg_k: metal_j_kg_k?,
            film: film?,
            dry_share: dry_share?,
        },
        liquid: liquid?,
        fill_kg: fill?,
        lit_k: lit?,
        run_s: run?,
        regulated: plan.gas.regulator.value() == Some(Fitted::Fitted),
        taken: Taken::default(),
    })
}

impl Asked {
    /// The tank with what is assumed of it at the worse end: less heat from the air.
    fn worst(&self) -> Tank {
        let low = |field: &str| {
            let mut assumed = self.taken.assumed.iter();
            let entering: Option<&&Entering> = assumed.find(|e| e.assumption.field() == field);
            entering.map(|e| e.assumption.unit.to_si(e.assumption.low))
        };
        let drawn = &self.tank;
        Tank {
            film: low("gas.tank.film").unwrap_or(drawn.film),
            dry_share: low("gas.tank.dry-share").unwrap_or(drawn.dry_share),
            ..*drawn
        }
    }

    fn assumed(&self) -> impl Iterator<Item = &'static str> {
        self.taken.assumed.iter().map(|e| e.assumption.field())
    }
}

/// The tank drawn down by the jet of the burner, with its lines.
fn time(
    asked: &Asked,
    (burner, inputs): (&Burner, &Inputs),
    tank: &Tank,
    working: &mut Working,
) -> Option<Chilling> {
    let site = &inputs.site;
    let lit_pa = burner.jet.supply_pa;
    let (held_pa, least_pa) = if asked.regulated {
        (lit_pa, lit_pa)
    } else {
        let gauge_pa = lit_pa - site.atmosphere_pa;
        (f64::INFINITY, site.atmosphere_pa + WEAK * gauge_pa)
    };
    let draught = Draught {
        gas: &asked.liquid,
        fill_kg: asked.fill_kg,
        lit_k: asked.lit_k,
        jet: GasJet {
            supply_pa: held_pa,
            ..burner.jet
        },
        air_k: site.air_k,
        air_pa: site.atmosphere_pa,
        least_pa,
        longest_s: LONGEST * asked.run_s,
    };
    let drawn = chilling(tank, &draught).ok()?;
    steaming::explain_tank(tank, &draught, &drawn, working).ok()?;
    Some(drawn)
}

fn told(likely: &Chilling, worst: &Chilling, burner: &Burner) -> TankTime {
    TankTime {
        lasts_s: likely.end.after_s,
        worst_s: worst.end.after_s,
        ends: match likely.ended {
            Ended::PressureFell => TankEnds::Cold,
            Ended::RanOut => TankEnds::Empty,
            Ended::Lasted => TankEnds::Beyond,
        },
        jet_w: likely.lit.heat_w,
        steady_w: likely.held_kg_s * burner.gas.heating_value_j_kg,
        end_k: likely.end.tank_k,
        left_kg: likely.end.left_kg,
    }
}
