//! Lines of water and steam: the boiler, the air's pressure, and the blower.

use formulas::balance::{
    ABSOLUTE_PRESSURE, DENSITY_FROM_VOLUME, ENTHALPY_LACKING, JET_MOMENTUM, JET_STEAM, JETS_AREA,
    WALL_TEMPERATURE, WET_ENTHALPY,
};
use formulas::draught::{STEAM_FLUX, STEAM_JET_DENSITY, STEAM_SPEED};
use formulas::steam::cards::{REGION1_H, REGION2_H, REGION2_V, SATURATION_TEMPERATURE};
use reckoning::quantity::{
    Absolute, BAR_ABSOLUTE, BAR_GAUGE, Gauge, KELVIN_RISE, Length, M, ONE, Ratio, TemperatureRise,
};
use reckoning::{Ref, Refused};

use super::Filing;

/// Lines of the boiler and of the air's pressure.
pub(super) struct Water {
    pub boiler_p: Ref,
    pub gauge_p: Ref,
    pub wall_k: Ref,
    pub steam_h: Ref,
    pub steam_density: Ref,
    pub air: Line,
}

/// Saturation at one pressure.
pub(super) struct Line {
    pub p: Ref,
    pub t: Ref,
    pub h_l: Ref,
    pub h_g: Ref,
}

/// Lines of a jet.
pub(super) struct JetLines {
    pub steam: Ref,
    pub area: Ref,
    pub bore: Ref,
    pub density: Ref,
    pub momentum: Ref,
    pub lacks: Ref,
}

impl Filing<'_> {
    pub(super) fn water(&mut self) -> Result<Water, Refused> {
        let (water, inputs) = (self.state.water, self.state.inputs);
        let names = ("p_a", "pressure of the air");
        let p_a = self.given::<Absolute>(
            "site.atmosphere",
            names,
            &BAR_ABSOLUTE,
            inputs.site.atmosphere_pa,
        );
        let air = self.saturation(p_a)?;
        let names = ("p_g", "pressure in the boiler");
        let gauge = self.given::<Gauge>("duty.pressure", names, &BAR_GAUGE, water.gauge_pa);
        let boiler_p = self.settle(&ABSOLUTE_PRESSURE, &[gauge, p_a], water.boiler_pa)?;
        let line = self.saturation(boiler_p)?;
        let names = (
            "dT",
            "rise of the wetted metal over the saturation temperature",
        );
        let rise = self.given::<TemperatureRise>(
            "boiler.wall-rise",
            names,
            &KELVIN_RISE,
            inputs.boiler.wall_rise_k,
        );
        let wall_k = self.settle(&WALL_TEMPERATURE, &[line.t, rise], water.wall_k)?;
        let names = ("x", "dryness of the steam as it leaves the water");
        let dryness = self.given::<Ratio>("boiler.dryness", names, &ONE, inputs.boiler.dryness);
        let from = [line.h_l, line.h_g, dryness];
        let steam_h = self.settle(&WET_ENTHALPY, &from, water.steam_j_kg)?;
        let steam_density = self.dry_density(line.p, line.t, water.steam_kg_m3)?;
        Ok(Water {
            boiler_p,
            gauge_p: gauge,
            wall_k,
            steam_h,
            steam_density,
            air,
        })
    }

    /// Saturation temperature and the enthalpies of both phases.
    pub(super) fn saturation(&mut self, p: Ref) -> Result<Line, Refused> {
        let t = self.working.worked(&SATURATION_TEMPERATURE, &[p])?;
        Ok(Line {
            p,
            t,
            h_l: self.working.worked(&REGION1_H, &[p, t])?,
            h_g: self.working.worked(&REGION2_H, &[p, t])?,
        })
    }

    /// Density of dry steam, settled.
    pub(super) fn dry_density(&mut self, p: Ref, t: Ref, si: f64) -> Result<Ref, Refused> {
        let v = self.working.worked(&REGION2_V, &[p, t])?;
        self.settle(&DENSITY_FROM_VOLUME, &[v], si)
    }

    pub(super) fn blower(&mut self, water: &Water) -> Result<Option<JetLines>, Refused> {
        let (Some(blower), Some(state)) = (self.state.inputs.blower, self.state.blower) else {
            return Ok(None);
        };
        let from = [water.boiler_p, water.steam_h, water.air.p];
        let flux = self.settle(&STEAM_FLUX, &from, state.expansion.flux_kg_m2_s)?;
        let speed = self.settle(&STEAM_SPEED, &from, state.expansion.speed_m_s)?;
        let density = self.settle(&STEAM_JET_DENSITY, &from, state.expansion.density_kg_m3)?;
        let names = ("n", "number of jets");
        let jets = self.given::<Ratio>("blower.jets", names, &ONE, blower.jets);
        let names = ("d", "bore of a jet");
        let bore = self.given::<Length>("blower.bore", names, &M, blower.bore_m);
        let area = self.settle(&JETS_AREA, &[jets, bore], state.jet.area_m2)?;
        let names = ("C", "discharge coefficient of a jet");
        let c = self.given::<Ratio>("blower.coefficient", names, &ONE, blower.coefficient);
        let steam = self.settle(&JET_STEAM, &[c, area, flux], state.jet.steam_kg_s)?;
        let momentum = self.settle(&JET_MOMENTUM, &[steam, speed], state.jet.momentum_n())?;
        let from = [water.air.h_g, water.steam_h];
        let lacks = self.settle(&ENTHALPY_LACKING, &from, state.jet.lacks_j_kg)?;
        Ok(Some(JetLines {
            steam,
            area,
            bore,
            density,
            momentum,
            lacks,
        }))
    }
}
