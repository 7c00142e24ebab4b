//! The gas tank of a plan: how long it keeps the pressure of its jet.

use formulas::supply::{Lpg, TANK_METAL, TANK_SURFACE};
use plan::Plan;
use plan::section::Fitted;
use reckoning::quantity::{Density, KG_PER_M3, Length, M, Quantity, SpecificHeat};
use reckoning::{Known, Refused, Working};
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
    // A working that cannot be filed leaves the answer without its lines, not without a number.
    if explain(plan, &mut working).is_err() {
        working = Working::new();
    }
    let worst = asked.worst();
    let time = time(&asked, burner, inputs, &asked.tank)
        .zip(time(&asked, burner, inputs, &worst))
        .map(|(likely, worst)| told(&likely, &worst, burner));
    Some((
        match time {
            Some(time) => TankAsked::Known {
                time,
                run_s: asked.run_s,
                assumed: asked.assumed().collect(),
            },
            None => TankAsked::Wanting(vec![
                "gas.tank.temperature within the tables of its gas".to_owned(),
            ]),
        },
        working,
    ))
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

/// The tank drawn down by the jet of the burner.
fn time(asked: &Asked, burner: &Burner, inputs: &Inputs, tank: &Tank) -> Option<Chilling> {
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
    chilling(tank, &draught).ok()
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

/// The lines of the tank: its surface and its metal.
fn explain(plan: &Plan, working: &mut Working) -> Result<(), Refused> {
    let t = &plan.gas.tank;
    let mut size = |symbol, meaning, entry: &plan::Entry<reckoning::Size>| {
        entry
            .likely()
            .map(|known| working.know::<Length>(symbol, meaning, &M, &known))
    };
    let (Some(bore), Some(length), Some(wall)) = (
        size("d", "inside diameter of the tank", &t.bore),
        size("L", "length of the tank inside", &t.length),
        size("t", "wall of the tank", &t.wall),
    ) else {
        return Ok(());
    };
    let surface = working.worked(&TANK_SURFACE, &[bore, length, wall])?;
    let metal = t.metal.get().map(String::as_str);
    if let Some(density) = metal.and_then(plant::density) {
        let density = working.know::<Density>("rho", "density of its metal", &KG_PER_M3, &density);
        working.worked(&TANK_METAL, &[surface, wall, density])?;
    }
    Ok(())
}
