//! The demand for steam, and how high it may lie while numbers of the engine are assumed.

use plan::{Plan, put};
use plant::Plant;
use reckoning::quantity::{KG_PER_H, Quantity, show};
use steaming::engine::EngineState;

use crate::steam_answer::Asked;

/// The engine's demand at working pressure, its exhaust let into the open air.
#[derive(Clone, Debug)]
pub(super) struct Demand {
    /// With every assumption at its value, kg/s.
    pub(super) likely: f64,
    /// At the high end of its range, kg/s.
    pub(super) high: f64,
    /// The plan field whose value nobody measured and that moves it most.
    pub(super) most: Option<&'static str>,
    /// Density of the water as it is fed, kg/m³.
    pub(super) feed_kg_m3: f64,
    /// Density of the steam in the boiler, kg/m³.
    pub(super) steam_kg_m3: f64,
}

impl Demand {
    /// The demand of a plan; `None` where its engine or pressure is not whole.
    ///
    /// Each assumption of the engine is put to both ends of its range by itself. What each adds
    /// is taken together by the root of the sum of squares, as for errors that do not depend on
    /// each other.
    pub(super) fn of(plan: &Plan) -> Option<Self> {
        let alone = asks(plan)?;
        let likely = alone.steam_kg_s;
        let plant = Plant::default();
        let assumed = Asked::of(plan, &plant).unlit().taken.assumed;
        let engine = assumed
            .iter()
            .map(|entering| entering.assumption)
            .filter(|assumption| assumption.id.starts_with("engine."));
        let mut squares = 0.0;
        let mut most: Option<(&'static str, f64)> = None;
        for assumption in engine {
            let more = [assumption.low, assumption.high]
                .into_iter()
                .filter_map(|end| {
                    let mut trial = plan.clone();
                    // What is missing is assumed as a factor on what is reckoned; the field takes
                    // the product.
                    let value = if assumption.id == plan.engine.missing.path() {
                        end * alone.missing
                    } else {
                        end
                    };
                    let literal = format!("\"{value} {}\"", assumption.unit.symbol);
                    put(&mut trial, assumption.id, &literal).ok()?;
                    Some(asks(&trial)?.steam_kg_s - likely)
                })
                .filter(|more| *more > 0.0)
                .max_by(f64::total_cmp);
            let Some(more) = more else { continue };
            squares += more * more;
            if most.is_none_or(|(_, before)| more > before) {
                most = Some((assumption.id, more));
            }
        }
        Some(Self {
            likely,
            high: likely + squares.sqrt(),
            most: most.map(|(id, _)| id),
            feed_kg_m3: feed(plan)?,
            steam_kg_m3: steam(plan)?,
        })
    }

    /// The high end in words.
    pub(super) fn high_words(&self) -> String {
        let shown = |kg_s: f64| show::quantity(kg_s, &KG_PER_H, 3);
        let why = self.most.map_or(String::new(), |field| {
            format!("; nobody has measured {field}, which moves it most")
        });
        format!(
            "{}, the high end of a demand of {}{why}",
            shown(self.high),
            shown(self.likely)
        )
    }
}

/// Density of the water as it is fed.
fn feed(plan: &Plan) -> Option<f64> {
    let site = Asked::of(plan, &Plant::default()).door.site?;
    let feed = formulas::steam::at_pt(site.atmosphere_pa, site.feed_k);
    feed.ok().map(|water| water.rho)
}

/// Density of the steam in the boiler.
fn steam(plan: &Plan) -> Option<f64> {
    let air = crate::fire::atmosphere(plan).value;
    let boiler = plan.duty.pressure.value()?.absolute(air);
    let line = formulas::steam::Saturated::at_pressure(boiler.si());
    line.ok().map(|line| line.rho_g)
}

fn asks(plan: &Plan) -> Option<EngineState> {
    let plant = Plant::default();
    let alone = Asked::of(plan, &plant).unlit().engine_alone?;
    (alone.steam_kg_s > 0.0).then_some(alone)
}
