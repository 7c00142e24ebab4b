//! The account in sentences and short lists.

use reckoning::quantity::show::figures;
use reckoning::quantity::{
    CELSIUS, G_PER_H, Gauge, KG_PER_H, KG_PER_M2_H, MINUTE, MM, Quantity, RPM, Temperature,
};
use steaming::{Above, FireState, Holding};

use super::{Account, FlameAccount};

/// One heading of the account with its lines.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// Heading.
    pub head: &'static str,
    /// Lines, each a sentence or a row of a list.
    pub lines: Vec<String>,
}

impl Account {
    /// The account as it is read.
    #[must_use]
    pub fn told(&self) -> Vec<Told> {
        let all = [
            ("Steam", self.steam()),
            ("Where the heat goes", self.heat()),
            ("The gas on its way", self.gas()),
            ("Along the flue", self.of_flame(FlameAccount::along)),
            ("Air and burning out", self.of_flame(FlameAccount::air)),
            ("The burner", self.of_flame(FlameAccount::source)),
            ("How the draught is spent", self.draught()),
            ("Steam jets above it", self.of_flame(FlameAccount::jets)),
            ("Metal, sparks and spray", self.metal()),
            ("How long it lasts", self.lasting()),
            ("Its gas", self.of_flame(FlameAccount::gas_lasts)),
            ("How much it holds", self.holding()),
            (
                "Beside it, by rules of the trade",
                self.beside.iter().map(|b| capital(&b.says)).collect(),
            ),
        ];
        all.into_iter()
            .filter(|(_, lines)| !lines.is_empty())
            .map(|(head, lines)| Told { head, lines })
            .collect()
    }

    fn of_flame(&self, told: fn(&FlameAccount) -> Vec<String>) -> Vec<String> {
        self.flame.as_ref().map_or_else(Vec::new, told)
    }

    fn steam(&self) -> Vec<String> {
        let s = &self.state;
        let at = figures(Gauge::from_si(s.water.gauge_pa).bar(), 3);
        let made = figures(KG_PER_H.from_si(s.evaporation_kg_s), 3);
        let asked = match s.steaming_ratio() {
            Some(ratio) => format!(
                " for {} asked, a ratio of {ratio:.2}",
                figures(KG_PER_H.from_si(s.demand_kg_s), 3)
            ),
            None => String::new(),
        };
        let mut lines = vec![format!(
            "At {at} bar the fire makes {made} kg/h of steam{asked}. It burns {} g/h of fuel with \
             {} kg/h of air, and {:.0} % of the fuel's heat comes to the steam.",
            figures(G_PER_H.from_si(s.pass.fuel_kg_s), 3),
            figures(KG_PER_H.from_si(s.pass.air_kg_s), 3),
            100.0 * s.efficiency
        )];
        if let Some(fired) = s.pass.firing.bed() {
            lines.push(format!(
                "The grate burns {} kg on a square metre in an hour; the draught lifts {:.0} % of \
                 the weight of the bed.",
                figures(KG_PER_M2_H.from_si(fired.bed.rate_kg_m2_s), 3),
                100.0 * fired.bed.lift
            ));
        }
        lines
    }

    fn heat(&self) -> Vec<String> {
        let mut lines: Vec<String> = self
            .heat
            .shares()
            .iter()
            .map(|s| {
                format!(
                    "{}: {} W, {:.1} %",
                    s.what,
                    figures(s.heat_w, 3),
                    100.0 * s.share
                )
            })
            .collect();
        lines.push(format!(
            "brought by fuel and air: {} W; not accounted for: {:.0e} of it",
            figures(self.heat.brought_w(), 4),
            self.heat.residual().abs()
        ));
        lines
    }

    fn gas(&self) -> Vec<String> {
        self.path
            .iter()
            .map(|p| {
                format!(
                    "{}: {} °C, {} m/s",
                    p.place,
                    figures(CELSIUS.from_si(p.gas_k), 3),
                    figures(p.speed_m_s, 2)
                )
            })
            .collect()
    }

    fn draught(&self) -> Vec<String> {
        let pa = |what: &str, pa: f64| format!("{what}: {} Pa", figures(pa, 3));
        let mut lines: Vec<String> = self
            .draught
            .spent
            .iter()
            .map(|s| pa(s.place, s.pa))
            .collect();
        lines.push(pa("spent before the chimney", self.draught.spent_pa()));
        if self.state.pass.jets.steam_kg_s > 0.0 {
            lines.push(pa("raised by the jets", self.draught.jets_pa));
        } else {
            lines.push(pa("lost in the chimney", -self.draught.jets_pa));
        }
        lines.push(pa("raised by the hot column", self.draught.column_pa));
        lines
    }

    fn metal(&self) -> Vec<String> {
        let s = &self.state;
        let celsius = |k: f64| figures(Temperature::from_si(k).c(), 3);
        let mut lines = vec![format!(
            "The wetted metal is at {} °C; steam leaves the water at {} mm/s.",
            celsius(s.water.wall_k),
            figures(MM.from_si(s.leaving_m_s), 2)
        )];
        if let Some(dew) = &self.dew {
            let wet = if dew.cold_metal_k < dew.dew_k {
                "metal as cold as the feed runs wet while steam is raised"
            } else {
                "metal as cold as the feed stays dry"
            };
            lines.push(format!(
                "Water settles from the gas below {} °C: {wet}. Sulphur in the fuel raises this by \
                 some tens of degrees, which is left out.",
                celsius(dew.dew_k)
            ));
        }
        if let Some(spark) = self.spark_m {
            lines.push(format!(
                "The gas carries lumps up to {} mm into the tubes.",
                figures(MM.from_si(spark), 2)
            ));
        }
        if let Some(dryer) = &s.pass.dryer {
            lines.push(format!(
                "The coil takes {} W; its steam leaves at {} °C, and gas of {} °C passes it. With \
                 no steam flowing its metal comes near the temperature of that gas.",
                figures(dryer.heat_w, 3),
                celsius(dryer.outlet.t_k),
                celsius(s.pass.arriving_k)
            ));
        }
        lines
    }

    fn lasting(&self) -> Vec<String> {
        let Some(uses) = &self.uses else {
            return Vec::new();
        };
        let minutes = |s: f64| figures(MINUTE.from_si(s), 2);
        let mut lines = Vec::new();
        if let (Some(kg), Some(life)) = (uses.bed_kg, uses.bed_life_s) {
            lines.push(format!(
                "{} g of fuel lie on the grate; as much is burnt in {} min.",
                figures(kg * 1e3, 2),
                minutes(life)
            ));
        }
        if let Some(time) = uses.without_feed_s {
            lines.push(format!(
                "With the feed shut the water falls from the working to the lowest level in {} min.",
                minutes(time)
            ));
        }
        lines
    }

    fn holding(&self) -> Vec<String> {
        let Some(holding) = &self.greatest else {
            return Vec::new();
        };
        let steam = |kg_s: f64| figures(KG_PER_H.from_si(kg_s), 3);
        vec![match holding {
            Holding::UpTo(held) => {
                let why = match held.above {
                    Above::Demand => "faster, the engine asks for more than the fire makes",
                    Above::NoBalance => "faster, the fire has no balance",
                };
                format!(
                    "It holds the engine up to {:.2} of the planned speed{}, which takes {} kg/h; \
                     {why}.",
                    held.speed_share,
                    speed(&held.state),
                    steam(held.steam_kg_s)
                )
            }
            Holding::Beyond => "It holds the engine at ten times the planned speed.".to_owned(),
            Holding::Nothing => "It holds no speed from a tenth of the planned one up.".to_owned(),
            Holding::Plain(kg_s) => format!(
                "No engine draws on it; {} kg/h of steam are there for other work.",
                steam(*kg_s)
            ),
        }]
    }
}

/// The speed as the loop knows it, in working strokes of all ends.
fn speed(held: &FireState) -> String {
    let engine = held.exhaust.and_then(|exhaust| exhaust.engine);
    engine.map_or_else(String::new, |engine| {
        let strokes = RPM.from_si(engine.admitted.strokes_per_s);
        format!(" ({} working strokes a minute)", figures(strokes, 3))
    })
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
