//! The loop run on the trials, each by what it was asked.

use formulas::balance::{bed_and_grate_loss, round_area};
use formulas::bed::{BedGas, Packing, loss};
use formulas::draught::{
    JetPump, gas_inlet_speed, jet_pump, mixed_density, mixed_speed, net_blast,
};
use formulas::fuel::{
    combustion_products, higher_heating_value, lower_heating_value, stoichiometric_air,
};
use formulas::gas::{FlueGas, MoleFractions};
use reckoning::quantity::{
    Absolute, Area, Density, Gauge, KG_PER_M2_H, Length, MJ_PER_KG, MassFlow, MassFlux,
    PressureDrop, Quantity, Ratio, SpecificEnergy, Temperature, TemperatureRise,
};
use reckoning::solve::bracketed;
use steaming::{
    Bed, BedFire, Beyond, Boiler, Chimney, ExhaustWater, Fire, FireAir, FireState, Firebox, Firing,
    Inputs, Site, Tubes, air_enthalpy,
};

use super::Outcome;
use super::read::{File, Sheet, files};

/// Heat that makes a kilogram of steam from and at 100 °C, J/kg: as the old reports count it.
const FROM_AND_AT: f64 = 2257e3;
/// Oxygen in dry air by volume.
const OXYGEN_OF_AIR: f64 = 0.2095;
/// The empty share of a rate that carries no fuel off.
const WHOLE: f64 = 1.0;

/// Every outcome of every trial, in the order of the files.
pub(crate) fn outcomes() -> Result<Vec<Outcome>, String> {
    let (assumed, trials) = files()?;
    let mut all = Vec::new();
    for file in &trials {
        let trial = Trial::of(file, assumed.sheet())?;
        all.extend(match trial.head.words("asked")? {
            "rate" => trial.at_rates()?,
            "draught" => trial.at_vacuum()?,
            "bed" => trial.beds()?,
            "jet" => trial.jets()?,
            other => return Err(format!("{}: asked {other}?", file.name)),
        });
    }
    Ok(all)
}

/// One trial with the assumptions of all.
struct Trial<'a> {
    whole: Sheet<'a>,
    head: Sheet<'a>,
    assumed: Sheet<'a>,
}

impl<'a> Trial<'a> {
    fn of(file: &'a File, assumed: Sheet<'a>) -> Result<Self, String> {
        let whole = file.sheet();
        Ok(Self {
            whole,
            head: whole.under("trial")?,
            assumed,
        })
    }

    /// A number of the one set of assumptions.
    fn taken<Q: Quantity>(&self, table: &str, key: &str) -> Result<f64, String> {
        self.assumed.under(table)?.number::<Q>(key)
    }

    fn outcome(
        &self,
        row: Sheet<'_>,
        what: String,
        (measured, found, unit): (f64, f64, &'static str),
        (apart, allowed): (f64, f64),
    ) -> Result<Outcome, String> {
        Ok(Outcome {
            trial: self.head.words("id")?.to_owned(),
            what,
            measured,
            found,
            unit,
            apart,
            allowed,
            missed: row.maybe_words("missed").map(str::to_owned),
        })
    }

    /// Rates of burning are given: steam, efficiency and smoke are asked.
    fn at_rates(&self) -> Result<Vec<Outcome>, String> {
        let mut all = Vec::new();
        let mut ran = Vec::new();
        for row in self.whole.rows()? {
            let rate = row.number::<MassFlux>("rate")?;
            ran.push((row, rate, self.fired(row, rate)?));
        }
        match self.head.maybe_words("compare") {
            None => {
                for (row, rate, fired) in &ran {
                    self.each(*row, *rate, fired, &mut all)?;
                }
            }
            Some("trend") => all.push(self.trend(&ran)?),
            Some("level") => all.extend(self.level(&ran)?),
            Some(other) => return Err(format!("{}: compare {other}?", self.head.file)),
        }
        Ok(all)
    }

    /// Each measured number of a row beside its own.
    fn each(
        &self,
        row: Sheet<'_>,
        rate: f64,
        fired: &Fired,
        all: &mut Vec<Outcome>,
    ) -> Result<(), String> {
        let measured = row.under("measured")?;
        let at = format!("at {:.0} kg/(m² h)", KG_PER_M2_H.from_si(rate));
        let allow = |key| self.taken::<Ratio>("acceptance", key);
        if let Some(m) = measured.maybe::<Ratio>("from-and-at-100")? {
            let what = format!("steam from and at 100 °C to a kilogram of fuel, {at}");
            let values = (m, fired.from_and_at, "");
            let apart = (fired.from_and_at / m - 1.0, allow("evaporation")?);
            all.push(self.outcome(row, what, values, apart)?);
        }
        if let Some(m) = measured.maybe::<Ratio>("efficiency-hhv")? {
            let what = format!("efficiency on the higher heating value, {at}");
            let values = (m, fired.efficiency, "");
            let apart = (fired.efficiency - m, allow("efficiency")?);
            all.push(self.outcome(row, what, values, apart)?);
        }
        if let Some(m) = measured.maybe::<Temperature>("smoke")? {
            let (m, found) = (
                Temperature::from_si(m).c(),
                Temperature::from_si(fired.smoke_k).c(),
            );
            let allowed = self.taken::<TemperatureRise>("acceptance", "smoke")?;
            let what = format!("temperature of the smoke, {at}");
            all.push(self.outcome(row, what, (m, found, "°C"), (found - m, allowed))?);
        }
        Ok(())
    }

    /// How the efficiency of the last row stands to that of the first.
    fn trend(&self, ran: &[(Sheet<'_>, f64, Fired)]) -> Result<Outcome, String> {
        let [(first, _, low), .., (last, _, high)] = ran else {
            return Err(format!("{}: a trend wants two rows", self.head.file));
        };
        let of = |row: &Sheet<'_>| row.under("measured")?.number::<Ratio>("efficiency-hhv");
        let (m, found) = (of(last)? / of(first)?, high.efficiency / low.efficiency);
        let what = "efficiency at the higher rate over that at the lower".to_owned();
        let allowed = self.taken::<Ratio>("acceptance", "trend")?;
        self.outcome(*last, what, (m, found, ""), (found / m - 1.0, allowed))
    }

    /// How even the steam of a kilogram of fuel is along the line.
    fn level(&self, ran: &[(Sheet<'_>, f64, Fired)]) -> Result<Vec<Outcome>, String> {
        let mean = ran.iter().map(|r| r.2.from_and_at).sum::<f64>() / ran.len() as f64;
        let allowed = self.taken::<Ratio>("acceptance", "trend")?;
        ran.iter()
            .map(|(row, rate, fired)| {
                let what = format!(
                    "steam to a kilogram of coke over the mean of the line, at {:.0} kg/(m² h)",
                    KG_PER_M2_H.from_si(*rate)
                );
                let found = fired.from_and_at / mean;
                self.outcome(*row, what, (WHOLE, found, ""), (found - WHOLE, allowed))
            })
            .collect()
    }

    /// The vacuum of the smokebox is given: the share of the bed is asked.
    fn at_vacuum(&self) -> Result<Vec<Outcome>, String> {
        let mut all = Vec::new();
        for row in self.whole.rows()? {
            let vacuum = row.number::<PressureDrop>("vacuum")?;
            let (low, high) = (KG_PER_M2_H.to_si(20.0), KG_PER_M2_H.to_si(800.0));
            let lost = |rate: f64| self.fired(row, rate).map(|f| f.state.pass.loss_pa - vacuum);
            let solved = bracketed(low, high, 1e-9, |rate| lost(rate).unwrap_or(f64::NAN))
                .map_err(|e| format!("{}: {e}", self.head.file))?;
            let fired = self.fired(row, solved.x)?;
            let bed = fired.state.pass.firing.bed().map_or(0.0, |b| b.bed.loss_pa);
            let (m, found) = (
                row.under("measured")?.number::<Ratio>("bed-share")?,
                bed / fired.state.pass.loss_pa,
            );
            let what = format!(
                "share of bed and grate in the vacuum, found at {:.0} kg/(m² h)",
                KG_PER_M2_H.from_si(solved.x)
            );
            let allowed = self.taken::<Ratio>("acceptance", "share")?;
            all.push(self.outcome(row, what, (m, found, ""), (found - m, allowed))?);
        }
        Ok(all)
    }

    /// Rate and lumps are given: the loss of the bed, and the air by the analysis of the smoke.
    fn beds(&self) -> Result<Vec<Outcome>, String> {
        let mut all = Vec::new();
        for row in self.whole.rows()? {
            let fuel = row.words("fuel")?;
            let composition = self.whole.under("fuel")?.under(fuel)?.composition()?;
            let ratio = self.taken::<Ratio>("fire", "air-ratio")?;
            let rate = row.number::<MassFlux>("rate")?;
            let flux = rate * ratio * stoichiometric_air(&composition);
            let gas = combustion_products(&composition, ratio).map_err(|e| e.to_string())?;
            let bare = self.bare(row, &FlueGas::new(&gas.fractions()), flux)?;
            let found = bed_and_grate_loss(self.taken::<Ratio>("fire", "bed-factor")?, 1.0, bare);
            let measured = row.under("measured")?;
            let m = measured.number::<PressureDrop>("bed")?;
            let what = format!(
                "draught over a bed of {fuel}, lumps of {}, at {:.0} kg/(m² h)",
                row.words("lump")?,
                KG_PER_M2_H.from_si(rate)
            );
            let allowed = self.taken::<Ratio>("acceptance", "draught")?;
            all.push(self.outcome(row, what, (m, found, "Pa"), (found / m - 1.0, allowed))?);
            if let Some(oxygen) = measured.maybe::<Ratio>("oxygen")? {
                let m = 1.0 + oxygen / (OXYGEN_OF_AIR - oxygen);
                let what = "air over air needed, by the oxygen in the smoke".to_owned();
                let allowed = self.taken::<Ratio>("acceptance", "air-ratio")?;
                all.push(self.outcome(row, what, (m, ratio, ""), (ratio - m, allowed))?);
            }
        }
        Ok(all)
    }

    /// Loss of a bare bed, Pa.
    fn bare(&self, row: Sheet<'_>, gas: &FlueGas, flux: f64) -> Result<f64, String> {
        let gas_k = self.taken::<Temperature>("fire", "bed-temperature")?;
        let gas = BedGas {
            density: gas.density(gas_k, Absolute::standard_atmosphere().si()),
            viscosity: gas.transport(gas_k).viscosity,
        };
        let depth = row.number::<Length>("depth")?;
        Ok(loss(&self.packing(row)?, &gas, flux, depth))
    }

    fn packing(&self, sheet: Sheet<'_>) -> Result<Packing, String> {
        Ok(Packing {
            voidage: self.taken::<Ratio>("fire", "voidage")?,
            sphericity: self.taken::<Ratio>("fire", "shape")?,
            lump_m: sheet.number::<Length>("lump")?,
        })
    }

    /// Flows and sizes are given: the draught of the jet is asked.
    fn jets(&self) -> Result<Vec<Outcome>, String> {
        let sizes = self.whole.under("jet")?;
        let found = self.jet(sizes)?;
        self.whole
            .rows()?
            .into_iter()
            .map(|row| {
                let m = row.under("measured")?.number::<PressureDrop>("draught")?;
                let what = "draught of the exhaust jet".to_owned();
                let allowed = self.taken::<Ratio>("acceptance", "draught")?;
                self.outcome(row, what, (m, found, "Pa"), (found / m - 1.0, allowed))
            })
            .collect()
    }

    fn jet(&self, sizes: Sheet<'_>) -> Result<f64, String> {
        let (choke, nozzle) = (
            sizes.number::<Length>("choke")?,
            sizes.number::<Length>("nozzle")?,
        );
        let (a_m, a_n) = (round_area(choke), round_area(nozzle));
        let (m_s, rho_s) = (
            sizes.number::<MassFlow>("steam")?,
            sizes.number::<Density>("steam-density")?,
        );
        let m_g = sizes.number::<MassFlow>("gas")?;
        let t_g = sizes.number::<Temperature>("gas-temperature")?;
        let air = FlueGas::new(&MoleFractions::DRY_AIR);
        let rho_g = air.density(t_g, Absolute::standard_atmosphere().si());
        let coefficient = self.taken::<Ratio>("jet", "coefficient")?;
        let u_s = m_s / (coefficient * a_n * rho_s);
        let rho_m = mixed_density(m_s, rho_s, m_g, rho_g);
        let pump = JetPump {
            j: m_s * u_s,
            m_g,
            u_g: gas_inlet_speed(m_g, rho_g, a_m, a_n),
            rho_g,
            rho_m,
            u_m: mixed_speed(m_s + m_g, rho_m, a_m),
            a_m,
            a_e: a_m,
            k_in: self.taken::<Ratio>("jet", "inlet-loss")?,
            k_f: self.taken::<Ratio>("jet", "friction-factor")?
                * sizes.number::<Length>("mixing-length")?
                / choke,
            eta_d: 0.0,
            beta: self.taken::<Ratio>("jet", "momentum-factor")?,
        };
        Ok(net_blast(
            self.taken::<Ratio>("jet", "mixing")?,
            jet_pump(&pump),
        ))
    }
}

/// The loop at one rate.
struct Fired {
    state: FireState,
    from_and_at: f64,
    efficiency: f64,
    smoke_k: f64,
}

impl Trial<'_> {
    /// The loop at a rate of burning in kg/(m² s).
    fn fired(&self, row: Sheet<'_>, rate: f64) -> Result<Fired, String> {
        let boiler = self.whole.under("boiler")?;
        let fuel = self.whole.under("fuel")?;
        let composition = fuel.composition()?;
        let hhv = match row.maybe::<SpecificEnergy>("hhv")? {
            Some(hhv) => hhv,
            None => MJ_PER_KG.to_si(higher_heating_value(&composition)),
        };
        let lhv = lower_heating_value(
            MJ_PER_KG.from_si(hhv),
            composition.hydrogen,
            composition.water,
        );
        let lhv = MJ_PER_KG.to_si(lhv);
        let grate = boiler.number::<Area>("grate")?;
        let burnt = rate * grate;
        let fire = Fire {
            fuel: composition,
            heating_value_j_kg: lhv,
            air: FireAir::ThroughBed {
                ratio: self.taken::<Ratio>("fire", "air-ratio")?,
            },
            burnt_share: self.taken::<Ratio>("burnt-share", fuel.words("name")?)?
                * self.kept(rate)?,
        };
        let inputs = self.inputs(row, fire, burnt * lhv)?;
        let state = steaming::fire::settle_at(&inputs, boiler.number::<Gauge>("pressure")?, burnt)
            .map_err(|e| format!("{}: {e}", self.head.file))?;
        Ok(Fired {
            from_and_at: state.useful_w / FROM_AND_AT / burnt,
            efficiency: state.useful_w / (burnt * hhv),
            smoke_k: state.pass.firing.behind_k(),
            state,
        })
    }

    /// Share of the fuel that the draught does not carry off.
    fn kept(&self, rate: f64) -> Result<f64, String> {
        let share = self.taken::<Ratio>("carried-off", "share")?;
        let at = self.taken::<MassFlux>("carried-off", "at")?;
        Ok(WHOLE - share * (rate / at).powi(2))
    }

    fn inputs(&self, row: Sheet<'_>, fire: Fire, fuel_w: f64) -> Result<Inputs, String> {
        let boiler = self.whole.under("boiler")?;
        let air_k = match boiler.maybe::<Temperature>("air")? {
            Some(air) => air,
            None => self.taken::<Temperature>("fire", "air")?,
        };
        let feed_k = match boiler.maybe::<Temperature>("feed")? {
            Some(feed) => feed,
            None => self.taken::<Temperature>("boiler", "feed")?,
        };
        Ok(Inputs {
            site: Site {
                atmosphere_pa: Absolute::standard_atmosphere().si(),
                air_k,
                air_j_kg: air_enthalpy(air_k),
                feed_k,
            },
            boiler: Boiler {
                dryness: self.taken::<Ratio>("boiler", "dryness")?,
                wall_rise_k: self.taken::<TemperatureRise>("boiler", "wall-rise")?,
                shell_loss_w: self.taken::<Ratio>("boiler", "shell-loss-share")? * fuel_w,
                water_surface_m2: boiler.number::<Area>("grate")?,
                steam_space_m: UNASKED_SPACE_M,
            },
            engine: None,
            plain: None,
            firing: Firing::Bed(self.bed_fire(row, fire)?),
            chimney: OPEN,
            blast: None,
            exhaust_water: ExhaustWater::TakenOut,
            blower: None,
            dryer: None,
            leak: None,
            extra_loss_pa: 0.0,
        })
    }

    fn bed_fire(&self, row: Sheet<'_>, fire: Fire) -> Result<BedFire, String> {
        let boiler = self.whole.under("boiler")?;
        let (packing, depth_m) = match self.whole.under("bed") {
            Ok(bed) => (self.packing(bed)?, bed.number::<Length>("depth")?),
            Err(_) => (self.unasked()?, UNASKED_M.1),
        };
        let (bore_m, length_m) = (
            boiler.number::<Length>("tube-bore")?,
            boiler.number::<Length>("tube-length")?,
        );
        let surface = surfaces(boiler, row)?;
        let count = match boiler.maybe::<Ratio>("tubes")? {
            Some(count) => count,
            None => surface.tubes / (std::f64::consts::PI * bore_m * length_m),
        };
        Ok(BedFire {
            fire,
            bed: Bed {
                grate_m2: boiler.number::<Area>("grate")?,
                packing,
                depth_m,
                lump_kg_m3: UNASKED_KG_M3,
                gas_k: self.taken::<Temperature>("fire", "bed-temperature")?,
                grate_factor: self.taken::<Ratio>("fire", "bed-factor")?,
                ash_factor: 1.0,
                door: None,
                viscosity_factor: 1.0,
            },
            firebox: Firebox {
                area_m2: surface.firebox,
                emissivity: self.taken::<Ratio>("boiler", "firebox-emissivity")?,
            },
            tubes: Tubes {
                bore_m,
                length_m,
                count,
                wall_emissivity: self.taken::<Ratio>("boiler", "tube-emissivity")?,
                entrance_heads: 0.5,
                exit_heads: 1.0,
                beyond: Beyond::AS_PRINTED,
            },
        })
    }

    /// A bed where none is asked: its loss is not read.
    fn unasked(&self) -> Result<Packing, String> {
        Ok(Packing {
            voidage: self.taken::<Ratio>("fire", "voidage")?,
            sphericity: self.taken::<Ratio>("fire", "shape")?,
            lump_m: UNASKED_M.0,
        })
    }
}

/// Lump and depth of a bed whose loss is not read, m.
const UNASKED_M: (f64, f64) = (0.03, 0.15);
/// Density of its lumps, kg/m³; the lift of a bed is not read from these trials.
const UNASKED_KG_M3: f64 = 1300.0;

/// Steam space that is not read: no trial tells of priming.
const UNASKED_SPACE_M: f64 = 0.3;

/// A chimney that is not read: a trial gives its rate or its vacuum.
const OPEN: Chimney = Chimney {
    height_m: 1.0,
    choke_m: 1.0,
    top_m: 1.0,
    parallel_m: 1.0,
    inlet_heads: 0.5,
    friction_heads: 0.1,
    diffuser_share: 0.0,
    momentum_factor: 1.02,
};

/// Surfaces of firebox and tubes, m².
struct Surface {
    firebox: f64,
    tubes: f64,
}

/// As the trial divides them; where a row gives one surface, a tenth of it is in the firebox.
fn surfaces(boiler: Sheet<'_>, row: Sheet<'_>) -> Result<Surface, String> {
    if let Some(whole) = row.maybe::<Area>("surface")? {
        return Ok(Surface {
            firebox: 0.1 * whole,
            tubes: 0.9 * whole,
        });
    }
    Ok(Surface {
        firebox: boiler.number::<Area>("firebox")?,
        tubes: boiler.maybe::<Area>("tube-surface")?.unwrap_or(0.0),
    })
}
