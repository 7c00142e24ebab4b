//! The account of a flame in sentences and short lists.

use reckoning::quantity::show::figures;
use reckoning::quantity::{CELSIUS, G_PER_H, MINUTE, MM, MM2, Quantity, Temperature, WATT, show};
use steaming::{OverDraught, TankAsked, TankEnds};

use super::flame::FlameAccount;

impl FlameAccount {
    /// Air and burning out.
    pub(super) fn air(&self) -> Vec<String> {
        let s = &self.signs;
        let mut lines = vec![format!(
            "The flame gets {:.2} of the air it needs, {:.2} of it as primary air.",
            s.air_ratio, self.primary_air
        )];
        let percent = |share: f64| figures(100.0 * share, 3);
        if let Some(burnt) = s.burnt_at_first {
            lines.push(format!(
                "{} % of the fuel has burnt where the gas meets the first cross tube.",
                percent(burnt)
            ));
        }
        if let (Some(burnt), Some(mixing)) = (s.burnt_at_end, s.mixing_m) {
            lines.push(format!(
                "{} % has burnt at the end of the flue. Rim and middle of the gas mix of themselves in {}: where \
                 air comes in as a ring, ports along the flue and tubes across it do the mixing.",
                percent(burnt),
                show::quantity(mixing, &MM, 2)
            ));
        }
        if let Some(flame) = s.flame_m {
            lines.push(format!(
                "The flame of one port or wick is {} long; {} are there.",
                show::quantity(flame, &MM, 2),
                show::quantity(s.gap_m, &MM, 2)
            ));
        }
        lines
    }

    /// The burner or the wicks at work.
    pub(super) fn source(&self) -> Vec<String> {
        let mut lines = Vec::new();
        if let Some(b) = &self.burner {
            let (jet, ports) = (&b.jet, &b.ports);
            lines.push(format!(
                "{} g/h of gas leave the jet at {} m/s and push with {} Pa; air holes take {} Pa of \
                 that, mixing {} Pa, ports {} Pa.",
                figures(G_PER_H.from_si(jet.gas_kg_s), 3),
                figures(jet.speed_m_s, 3),
                figures(b.primary.push_pa, 3),
                figures(b.primary.holes_pa, 3),
                figures(b.primary.mixing_pa, 3),
                figures(b.primary.ports_pa, 2)
            ));
            lines.push(format!(
                "At the ports the mixture runs at {} m/s under {} W/mm²; its gradient is {:.2} of \
                 that at which a flame blows off.",
                figures(ports.speed_m_s, 2),
                figures(ports.loading_w_m2 * MM2.to_si(1.0), 2),
                ports.blow_off_share
            ));
        }
        if let Some(throat) = self.best_throat_m {
            lines.push(format!(
                "Were there no air holes to hold it back, a throat of {} would draw the most air; \
                 from half to twice its area it draws nearly as much.",
                show::quantity(throat, &MM, 2)
            ));
        }
        if let Some(w) = &self.wicks {
            lines.push(format!(
                "The wicks burn {} g/h of spirit; a burner that gets hot boils off more, which is \
                 left out.",
                figures(G_PER_H.from_si(w.fuel_kg_s), 3)
            ));
        }
        lines
    }

    /// The flue at its places, and the tubes across it.
    pub(super) fn along(&self) -> Vec<String> {
        let sections = self.along.iter().map(|s| {
            format!(
                "{} behind the mouth: {} °C, {} m/s, {} % burnt, {} kW/m² to the wall",
                show::quantity(s.place_m, &MM, 3),
                figures(CELSIUS.from_si(s.gas_k), 3),
                figures(s.speed_m_s, 2),
                figures(100.0 * s.burnt, 3),
                figures(s.wall_flux / 1e3, 2)
            )
        });
        let tubes = self.tubes.iter().zip(1..).map(|(t, number)| {
            format!(
                "cross tube {number}, at {}: gas of {} °C gives it {} W, {} kW/m²",
                show::quantity(t.place_m, &MM, 3),
                figures(CELSIUS.from_si(t.gas_k), 3),
                figures(t.heat_w, 2),
                figures(t.heat_w / t.area_m2 / 1e3, 2)
            )
        });
        sections.chain(tubes).collect()
    }

    /// The tank, and its hottest day.
    pub(super) fn gas_lasts(&self) -> Vec<String> {
        let mut lines = Vec::new();
        let minutes = |s: f64| figures(MINUTE.from_si(s), 2);
        match &self.tank {
            Some(TankAsked::Known { time, .. }) => {
                let more = match time.ends {
                    TankEnds::Beyond => "more than ",
                    TankEnds::Cold | TankEnds::Empty => "",
                };
                lines.push(format!(
                    "The gas lasts {more}{} min, {} at the worst of what is assumed; the tank is at {} \
                     °C then.",
                    minutes(time.lasts_s),
                    minutes(time.worst_s),
                    figures(Temperature::from_si(time.end_k).c(), 2)
                ));
            }
            Some(TankAsked::Wanting(fields)) => lines.push(format!(
                "Whether the gas lasts cannot be said without {}.",
                fields.join(", ")
            )),
            None => {}
        }
        if let Some(day) = &self.hottest {
            lines.push(format!(
                "On its hottest day, at {} °C and with {}, an open jet passes {} of gas; the safety \
                 valve must bear it.",
                figures(Temperature::from_si(day.tank_k).c(), 3),
                day.gas,
                show::quantity(day.heat.heat_w, &WATT, 3)
            ));
        }
        lines
    }

    /// Steam jets above it.
    pub(super) fn jets(&self) -> Vec<String> {
        self.over.iter().map(over).collect()
    }
}

fn over(over: &OverDraught) -> String {
    match (over.added_pa, over.air) {
        (Some(added), Some(air)) => format!(
            "The steam jets add {} Pa to a draught of {} Pa: the flame gets {air:.2} of the air it needs \
             instead of {:.2}.",
            figures(added, 2),
            figures(over.calm_pa, 2),
            over.calm_air
        ),
        _ => format!(
            "The steam jets draw more air than the flame can warm; without them it gets {:.2} of the air \
             it needs.",
            over.calm_air
        ),
    }
}
