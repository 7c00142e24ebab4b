//! A gas tank that lives on its own vapour: how it chills while gas is drawn, and how long it
//! gives gas enough.
//!
//! Liquid and metal are one lump; the light part of a mixture boils off first. Left out: frost,
//! which gives its heat to the tank, and the warmth of boiler or cab beside it. Steps of the
//! classical method of fourth order.

use formulas::supply::{
    Drawing, Lpg, Saturated, holding_rate, liquid_share, tank_change, tank_heat, tank_metal,
    tank_surface, tank_volume, warming_area, wet_area,
};
use reckoning::quantity::BAR_ABSOLUTE;
use reckoning::solve::bracketed;

use super::{FuelGas, GasJet};
use crate::fault::NotSettled;

/// A round tank, however it lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tank {
    /// Inside diameter, m.
    pub bore_m: f64,
    /// Length inside, m.
    pub length_m: f64,
    /// Wall, ends included, m.
    pub wall_m: f64,
    /// Density of its metal, kg/m³.
    pub metal_kg_m3: f64,
    /// Specific heat of its metal, J/(kg K).
    pub metal_j_kg_k: f64,
    /// Heat transfer coefficient outside, W/(m² K).
    pub film: f64,
    /// Share of the dry wall that takes up heat as the wetted wall does.
    pub dry_share: f64,
}

impl Tank {
    /// Outside area with both ends, m².
    #[must_use]
    pub fn surface_m2(&self) -> f64 {
        tank_surface(self.bore_m, self.length_m, self.wall_m)
    }

    /// Mass of its metal, kg.
    #[must_use]
    pub fn metal_kg(&self) -> f64 {
        tank_metal(self.surface_m2(), self.wall_m, self.metal_kg_m3)
    }

    /// Area that takes up heat when it holds so much liquid (kg) of a density, m².
    fn warming_m2(&self, left_kg: f64, density: f64) -> f64 {
        let volume = tank_volume(self.bore_m, self.length_m);
        let area = self.surface_m2();
        let wet = wet_area(liquid_share(left_kg, density, volume), area);
        warming_area(wet, area, self.dry_share)
    }
}

/// What is drawn from a tank, and into what air.
#[derive(Clone, Copy, Debug)]
pub struct Draught<'a> {
    /// The gas as it was filled.
    pub gas: &'a Lpg,
    /// Mass filled, kg.
    pub fill_kg: f64,
    /// Temperature when the burner is lit, K.
    pub lit_k: f64,
    /// The jet; its pressure is that which a regulator holds, or [`f64::INFINITY`] without one.
    pub jet: GasJet,
    /// Temperature of the air round the tank, K.
    pub air_k: f64,
    /// Pressure of the air, Pa.
    pub air_pa: f64,
    /// Pressure in the tank below which the fire is too weak, Pa absolute.
    pub least_pa: f64,
    /// Longest time that is of interest, s.
    pub longest_s: f64,
}

/// A tank at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TankState {
    /// Time since the burner was lit, s.
    pub after_s: f64,
    /// Temperature of liquid and metal, K.
    pub tank_k: f64,
    /// Gas left, kg.
    pub left_kg: f64,
    /// Pressure in the tank, Pa absolute.
    pub pressure_pa: f64,
    /// Gas drawn, kg/s.
    pub gas_kg_s: f64,
    /// Its heat by the lower heating value, W.
    pub heat_w: f64,
}

/// What a tank gives and takes at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TankMoment {
    /// Temperature of liquid and metal, K.
    pub tank_k: f64,
    /// Liquid left, kg.
    pub left_kg: f64,
    /// Density of the liquid, kg/m³.
    pub liquid_kg_m3: f64,
    /// Specific heat of the liquid, J/(kg K).
    pub liquid_j_kg_k: f64,
    /// Latent heat of the vapour drawn, J/kg.
    pub latent: f64,
    /// Area that takes up heat, m².
    pub warming_m2: f64,
    /// Heat from the air, W.
    pub warmed_w: f64,
    /// Gas drawn, kg/s; 0 where only the heat is asked.
    pub drawn_kg_s: f64,
    /// Change of the temperature, K/s.
    pub change_k_s: f64,
}

/// What ended a draught.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ended {
    /// The pressure fell to the least that is wanted.
    PressureFell,
    /// The tank is all but empty.
    RanOut,
    /// The longest time went by.
    Lasted,
}

/// A tank drawn down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chilling {
    /// The tank when the burner is lit.
    pub lit: TankState,
    /// The tank at the end.
    pub end: TankState,
    /// What ended it.
    pub ended: Ended,
    /// The tank when the burner is lit, and at the end: what it gives and takes.
    pub lit_moment: TankMoment,
    /// The same at the end.
    pub end_moment: TankMoment,
    /// The full tank at the temperature at which its gas boils at the least pressure.
    pub held_moment: TankMoment,
    /// Gas that the full tank gives for ever at the least pressure, kg/s; less than nought where
    /// the air is colder than the tank would then be.
    pub held_kg_s: f64,
}

/// Share of the fill below which a tank counts as empty.
const EMPTY: f64 = 0.03;

/// Length of a step, s.
const STEP_S: f64 = 5.0;

/// Temperatures between which a boiling point is sought, K.
const BOILS_K: (f64, f64) = (233.15, 353.15);

/// The mass of each part, kg, and the temperature, K.
type Lump = [f64; 4];

/// Draws gas from a tank until its pressure falls, it runs out, or time goes by.
///
/// # Errors
/// [`NotSettled`] where the tank gets colder or hotter than the tables of the gas, or the jet has
/// no pressure from the first.
pub fn chilling(tank: &Tank, draught: &Draught<'_>) -> Result<Chilling, NotSettled> {
    let march = Chill { tank, draught };
    let filled = draught.gas.by_mass.map(|share| share * draught.fill_kg);
    let mut lump = [filled[0], filled[1], filled[2], draught.lit_k];
    let mut after_s = 0.0;
    let left = |lump: &Lump| march.pressure_pa(lump) - draught.least_pa;
    let (end, ended) = loop {
        if left(&lump) <= 0.0 {
            break (lump, Ended::PressureFell);
        }
        if total(&lump) <= EMPTY * draught.fill_kg {
            break (lump, Ended::RanOut);
        }
        if after_s >= draught.longest_s {
            break (lump, Ended::Lasted);
        }
        let next = march.after(&lump, STEP_S)?;
        if left(&next) < 0.0 {
            let fell = |s: f64| march.after(&lump, s).map_or(f64::NAN, |lump| left(&lump));
            let at = bracketed(0.0, STEP_S, 1e-6, fell).map_err(NotSettled::of(
                "pressure of the tank against the least wanted",
            ))?;
            after_s += at.x;
            break (march.after(&lump, at.x)?, Ended::PressureFell);
        }
        (lump, after_s) = (next, after_s + STEP_S);
    };
    let filled = lump_of(&filled, draught.lit_k);
    let held_moment = march.held(&filled)?;
    Ok(Chilling {
        lit: march.state(&filled, 0.0)?,
        end: march.state(&end, after_s)?,
        ended,
        lit_moment: march.rates(&filled)?.at,
        end_moment: march.rates(&end)?.at,
        held_kg_s: holding_rate(held_moment.warmed_w, held_moment.latent),
        held_moment,
    })
}

fn lump_of(parts: &[f64; 3], t_k: f64) -> Lump {
    [parts[0], parts[1], parts[2], t_k]
}

fn total(lump: &Lump) -> f64 {
    lump[0] + lump[1] + lump[2]
}

/// A tank on its way.
struct Chill<'a> {
    tank: &'a Tank,
    draught: &'a Draught<'a>,
}

/// What the tank gives and takes, and what its gas is made of.
struct Rates {
    at: TankMoment,
    heat_w: f64,
    by_mass: [f64; 3],
}

impl Chill<'_> {
    /// The liquid that is left.
    fn liquid(&self, lump: &Lump) -> Lpg {
        let left = total(lump);
        let by_mass = [lump[0] / left, lump[1] / left, lump[2] / left];
        self.draught.gas.with_liquid(by_mass)
    }

    fn pressure_pa(&self, lump: &Lump) -> f64 {
        BAR_ABSOLUTE.to_si(self.liquid(lump).pressure(lump[3]))
    }

    fn outside(&self, t_k: f64) -> NotSettled {
        NotSettled::Plant {
            what: "temperature of the gas tank in K",
            value: t_k,
            why: "it lies outside the tables of the gas",
        }
    }

    fn rates(&self, lump: &Lump) -> Result<Rates, NotSettled> {
        let (d, t_k, left_kg) = (self.draught, lump[3], total(lump));
        let liquid = self.liquid(lump);
        let saturated = liquid.saturated(t_k).ok_or_else(|| self.outside(t_k))?;
        let vapour = liquid.drawn(t_k);
        let gas = FuelGas::of(&liquid, &vapour, t_k).ok_or_else(|| self.outside(t_k))?;
        let own_pa = BAR_ABSOLUTE.to_si(liquid.pressure(t_k));
        let regulated = d.jet.supply_pa < own_pa;
        let supply_pa = if regulated { d.jet.supply_pa } else { own_pa };
        let jet = GasJet { supply_pa, ..d.jet };
        let drawn_kg_s = jet.at_work(&gas, d.air_pa)?.gas_kg_s;
        let at = TankMoment {
            drawn_kg_s,
            ..self.warmed(lump, &saturated)
        };
        let drawing = Drawing {
            heat: at.warmed_w,
            m_jet: drawn_kg_s,
            latent: at.latent,
            liquid: left_kg,
            c_l: at.liquid_j_kg_k,
            metal: self.tank.metal_kg(),
            c_w: self.tank.metal_j_kg_k,
        };
        Ok(Rates {
            heat_w: drawn_kg_s * gas.heating_value_j_kg,
            by_mass: vapour.by_mass,
            at: TankMoment {
                change_k_s: tank_change(&drawing, 1.0),
                ..at
            },
        })
    }

    /// The tank as the air warms it, with nothing drawn.
    fn warmed(&self, lump: &Lump, saturated: &Saturated) -> TankMoment {
        let (tank_k, left_kg) = (lump[3], total(lump));
        let warming_m2 = self.tank.warming_m2(left_kg, saturated.density);
        TankMoment {
            tank_k,
            left_kg,
            liquid_kg_m3: saturated.density,
            liquid_j_kg_k: saturated.liquid_heat,
            latent: saturated.latent,
            warming_m2,
            warmed_w: tank_heat(self.tank.film, warming_m2, self.draught.air_k, tank_k),
            drawn_kg_s: 0.0,
            change_k_s: 0.0,
        }
    }

    fn slope(&self, lump: &Lump) -> Result<Lump, NotSettled> {
        let rates = self.rates(lump)?;
        let [a, b, c] = rates.by_mass.map(|share| -share * rates.at.drawn_kg_s);
        Ok([a, b, c, rates.at.change_k_s])
    }

    /// The tank after so many seconds.
    fn after(&self, lump: &Lump, s: f64) -> Result<Lump, NotSettled> {
        let on = |slope: &Lump, s: f64| -> Lump { std::array::from_fn(|i| lump[i] + s * slope[i]) };
        let k1 = self.slope(lump)?;
        let k2 = self.slope(&on(&k1, s / 2.0))?;
        let k3 = self.slope(&on(&k2, s / 2.0))?;
        let k4 = self.slope(&on(&k3, s))?;
        let mean: Lump = std::array::from_fn(|i| (k1[i] + 2.0 * (k2[i] + k3[i]) + k4[i]) / 6.0);
        Ok(on(&mean, s))
    }

    fn state(&self, lump: &Lump, after_s: f64) -> Result<TankState, NotSettled> {
        let rates = self.rates(lump)?;
        Ok(TankState {
            after_s,
            tank_k: lump[3],
            left_kg: total(lump),
            pressure_pa: self.pressure_pa(lump),
            gas_kg_s: rates.at.drawn_kg_s,
            heat_w: rates.heat_w,
        })
    }

    /// The tank, filled so, at the temperature at which its gas boils at the least pressure.
    fn held(&self, lump: &Lump) -> Result<TankMoment, NotSettled> {
        let liquid = self.liquid(lump);
        let excess = |t: f64| BAR_ABSOLUTE.to_si(liquid.pressure(t)) - self.draught.least_pa;
        let boils = bracketed(BOILS_K.0, BOILS_K.1, 1e-6, excess).map_err(NotSettled::of(
            "boiling point of the gas at the least pressure",
        ))?;
        let t_k = boils.x;
        let saturated = liquid.saturated(t_k).ok_or_else(|| self.outside(t_k))?;
        Ok(self.warmed(&[lump[0], lump[1], lump[2], t_k], &saturated))
    }
}
