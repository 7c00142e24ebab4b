//! The gas at one place of the flue: what it is, and what it gives there.

use formulas::flue::{
    burnt_share, flue_flux, graetz, hydraulic_diameter, local_nusselt, open_area, settled_nusselt,
    soot_left, sooty_emissivity,
};
use formulas::gas::{FlueGas, partial_pressure};
use formulas::heat::{
    GasPath, absorptivity, emissivity, film_coefficient, friction_factor, friction_loss,
    nusselt_transition, nusselt_turbulent, prandtl, reynolds, tube_beam, tube_radiant_flux,
};
use reckoning::Refused;
use reckoning::quantity::{Absolute, Quantity};

use super::march::Stream;
use super::{Flue, Release};

/// Where laminar flow ends and turbulent flow begins, as in the laws of a tube.
const LAMINAR_TO: f64 = 2300.0;
const TURBULENT_FROM: f64 = 4000.0;

/// Below this excess over the wall (K) the radiation is left out: the quotient of two vanishing
/// numbers would be noise.
const SPENT_K: f64 = 1e-3;

/// The state of the gas at one place of the flue.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Distance behind the mouth, m.
    pub place_m: f64,
    /// Temperature, K.
    pub gas_k: f64,
    /// Share of the fuel that has burnt.
    pub burnt: f64,
    /// Density, kg/m³.
    pub density: f64,
    /// Specific heat, J/(kg K).
    pub specific_heat: f64,
    /// Viscosity, Pa s.
    pub viscosity: f64,
    /// Conductivity, W/(m K).
    pub conductivity: f64,
    /// Mass flux, kg/(m² s).
    pub flux: f64,
    /// Speed, m/s.
    pub speed_m_s: f64,
    /// Reynolds number on the hydraulic diameter.
    pub reynolds: f64,
    /// Prandtl number.
    pub prandtl: f64,
    /// Nusselt number on the hydraulic diameter.
    pub nusselt: f64,
    /// Heat transfer coefficient by convection, W/(m² K).
    pub convection: f64,
    /// Emissivity of gas and soot.
    pub emissivity: f64,
    /// Flux by radiation to the wall, W/m².
    pub radiant_flux: f64,
    /// Flux to the wall by both, W/m².
    pub wall_flux: f64,
    /// Pressure lost by friction on a metre, Pa/m.
    pub friction_pa_m: f64,
}

/// A cross tube in the gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crossed {
    /// Distance behind the mouth, m.
    pub place_m: f64,
    /// Temperature of the gas before it, K.
    pub gas_k: f64,
    /// Share of the fuel that has burnt there.
    pub burnt: f64,
    /// Temperature of the film, K.
    pub film_k: f64,
    /// Reynolds number on the speed beside the tube.
    pub reynolds: f64,
    /// Prandtl number of the film.
    pub prandtl: f64,
    /// Nusselt number of a single tube.
    pub nusselt: f64,
    /// Conductivity of the film, W/(m K).
    pub conductivity: f64,
    /// Heat transfer coefficient by convection, W/(m² K).
    pub convection: f64,
    /// Heat transfer coefficient by radiation, W/(m² K).
    pub radiation: f64,
    /// Specific heat of the gas before it, J/(kg K).
    pub specific_heat: f64,
    /// Density of the gas before it, kg/m³.
    pub density: f64,
    /// Outside area, m².
    pub area_m2: f64,
    /// Heat that it takes, W.
    pub heat_w: f64,
    /// Pressure that it takes, Pa.
    pub loss_pa: f64,
}

impl Crossed {
    /// Heat transfer coefficient by convection and radiation, W/(m² K).
    #[must_use]
    pub fn coefficient(&self) -> f64 {
        self.convection + self.radiation
    }
}

/// A stretch of flue over which the open bore stays the same.
#[derive(Clone, Copy)]
pub(super) struct Bore {
    /// Where it begins behind the mouth, m.
    pub from_m: f64,
    /// Hydraulic diameter, m.
    pub hydraulic_m: f64,
    /// Mass flux, kg/(m² s).
    pub flux: f64,
    /// Nusselt number far from where it begins.
    pub settled: f64,
}

/// What stays the same along the flue.
pub(super) struct Laws<'a> {
    pub flue: &'a Flue,
    pub release: &'a Release,
    pub stream: &'a Stream,
    pub gas: &'a FlueGas,
    bores: [Bore; 2],
}

impl<'a> Laws<'a> {
    pub(super) fn new(
        flue: &'a Flue,
        release: &'a Release,
        stream: &'a Stream,
        gas: &'a FlueGas,
    ) -> Self {
        let bore = |from_m, core_m: f64| Bore {
            from_m,
            hydraulic_m: hydraulic_diameter(flue.bore_m, core_m),
            flux: flue_flux(stream.gas_kg_s, open_area(flue.bore_m, core_m)),
            settled: settled_nusselt(core_m / flue.bore_m),
        };
        Self {
            flue,
            release,
            stream,
            gas,
            bores: [bore(0.0, release.core_m), bore(release.ported_m, 0.0)],
        }
    }

    /// The bore round the burner, or that behind it.
    pub(super) fn bore(&self, behind_burner: bool) -> &Bore {
        &self.bores[usize::from(behind_burner)]
    }

    /// Share of the fuel that has burnt at a place.
    pub(super) fn burnt(&self, place_m: f64) -> f64 {
        let poker = formulas::flue::Poker {
            length: self.release.ported_m,
            lambda_1: self.release.primary_ratio,
            mixing: self.release.mixing_m,
        };
        burnt_share(&poker, place_m)
    }

    /// Viscosity and conductivity with the factors of the flue.
    pub(super) fn carry(&self, t_k: f64) -> formulas::gas::Transport {
        let (beyond, transport) = (&self.flue.beyond, self.gas.transport(t_k));
        formulas::gas::Transport {
            viscosity: beyond.viscosity * transport.viscosity,
            conductivity: beyond.conductivity * transport.conductivity,
        }
    }

    /// The gas at a place, which may be the end of either bore.
    pub(super) fn section(
        &self,
        bore: &Bore,
        place_m: f64,
        gas_k: f64,
    ) -> Result<Section, Refused> {
        let stirring = self.stirring(place_m);
        let specific_heat = self.gas.specific_heat(gas_k);
        let carry = self.carry(gas_k);
        let density = self.gas.density(gas_k, self.stream.pressure_pa);
        let re = reynolds(bore.flux, bore.hydraulic_m, carry.viscosity);
        let pr = prandtl(carry.viscosity, specific_heat, carry.conductivity);
        let nusselt = self.nusselt(bore, (re, pr), place_m);
        let convection = film_coefficient(nusselt, carry.conductivity, bore.hydraulic_m);
        let (emissivity, radiant_flux) = self.radiation(bore, place_m, gas_k)?;
        let friction = friction_factor(re);
        Ok(Section {
            place_m,
            gas_k,
            burnt: self.burnt(place_m),
            density,
            specific_heat,
            viscosity: carry.viscosity,
            conductivity: carry.conductivity,
            flux: bore.flux,
            speed_m_s: bore.flux / density,
            reynolds: re,
            prandtl: pr,
            nusselt,
            convection,
            emissivity,
            radiant_flux,
            wall_flux: stirring * convection * (gas_k - self.stream.wall_k) + radiant_flux,
            friction_pa_m: stirring
                * friction_loss(friction, 1.0 / bore.hydraulic_m, bore.flux, density),
        })
    }

    /// Friction and convection over those of a plain flue.
    fn stirring(&self, place_m: f64) -> f64 {
        let behind = |cross: &&super::CrossTubes| place_m > cross.first_m;
        self.flue
            .cross
            .as_ref()
            .filter(behind)
            .map_or(1.0, |c| c.stirring)
    }

    /// Nusselt number at a place: local where the flow is laminar, settled where it is turbulent.
    fn nusselt(&self, bore: &Bore, (re, pr): (f64, f64), place_m: f64) -> f64 {
        let laminar = |re: f64| {
            let gz = graetz(re, pr, bore.hydraulic_m, place_m - bore.from_m);
            local_nusselt(bore.settled, gz)
        };
        let slender = bore.hydraulic_m / self.flue.length_m;
        if re <= LAMINAR_TO {
            laminar(re)
        } else if re >= TURBULENT_FROM {
            nusselt_turbulent(re, pr, slender)
        } else {
            let turbulent = nusselt_turbulent(TURBULENT_FROM, pr, slender);
            nusselt_transition(re, laminar(LAMINAR_TO), turbulent)
        }
    }

    /// Emissivity of gas and soot, and the flux by radiation.
    pub(super) fn radiation(
        &self,
        bore: &Bore,
        place_m: f64,
        gas_k: f64,
    ) -> Result<(f64, f64), Refused> {
        let wall_k = self.stream.wall_k;
        let p_bar = Absolute::from_si(self.stream.pressure_pa).bar();
        let fractions = self.gas.fractions();
        let path = GasPath {
            p_bar,
            h2o_bar: partial_pressure(fractions.h2o, p_bar),
            co2_bar: partial_pressure(fractions.co2, p_bar),
            path_m: tube_beam(bore.hydraulic_m),
        };
        let behind_m = place_m - self.release.ported_m;
        let soot = if behind_m <= 0.0 {
            self.release.soot
        } else {
            soot_left(self.release.soot, behind_m)
        };
        let emitted = sooty_emissivity(emissivity(&path, gas_k)?, soot);
        if (gas_k - wall_k).abs() < SPENT_K {
            return Ok((emitted, 0.0));
        }
        let absorbed = sooty_emissivity(absorptivity(&path, gas_k, wall_k)?, soot);
        let wall = self.flue.wall_emissivity;
        let flux = tube_radiant_flux(wall, emitted, gas_k, absorbed, wall_k);
        Ok((emitted, self.flue.beyond.radiation * flux))
    }
}
