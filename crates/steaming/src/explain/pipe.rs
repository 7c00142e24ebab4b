//! Lines of the steam pipe and of the bed in a puff.

use formulas::balance::LIFT_SHARE;
use formulas::bed::LOSS;
use formulas::engine::{FREE_NUSSELT, LAGGING_HEAT, PIPE_HEAT, PUFF_FLUX, RAYLEIGH};
use formulas::heat::FILM_COEFFICIENT;
use reckoning::quantity::{
    Conductivity, KELVIN, KG_PER_M3, Length, M, ONE, PA_S, Ratio, Temperature, W_PER_M_K,
};
use reckoning::{Ref, Refused};

use super::Filing;
use super::water::Water;
use crate::engine::{Pipe, PipeState};

impl Filing<'_> {
    /// The bed in a puff of the exhaust.
    pub(super) fn in_puffs(
        &mut self,
        flux: Ref,
        [e, phi, lump, rho, mu, depth]: [Ref; 6],
        weight: Ref,
    ) -> Result<(), Refused> {
        let (Some(share), Some(puffed)) = (self.puffs, self.state.puffed_bed()) else {
            return Ok(());
        };
        let flux = self.settle(&PUFF_FLUX, &[flux, share], puffed.flux_kg_m2_s)?;
        let from = [e, phi, lump, rho, mu, flux, depth];
        let bare = self.settle(&LOSS, &from, puffed.bare_pa)?;
        self.settle(&LIFT_SHARE, &[bare, weight], puffed.lift)?;
        Ok(())
    }

    /// Heat that the steam pipe loses.
    pub(super) fn pipe(
        &mut self,
        pipe: &Pipe,
        state: &PipeState,
        water: &Water,
    ) -> Result<Ref, Refused> {
        let steam = self.saturation(water.boiler_p)?.t;
        let names = ("T_a", "temperature of the room");
        let room_k = self.state.inputs.site.air_k;
        let room = self.given::<Temperature>("site.air", names, &KELVIN, room_k);
        let names = ("D_i", "outside diameter of the pipe");
        let outside = self.given::<Length>("engine.pipe.outside", names, &M, pipe.outside_m);
        let names = ("L", "length of pipe in the open");
        let length = self.given::<Length>("engine.pipe.length", names, &M, pipe.length_m);
        let (surface, diameter) = match (pipe.lagging, state.surface) {
            (Some(lagging), Some(solved)) => {
                let names = ("d_l", "thickness of the lagging");
                let field = "engine.pipe.lagging";
                let thick = self.given::<Length>(field, names, &M, lagging.thickness_m);
                let names = ("k", "conductivity of the lagging");
                let field = "engine.pipe.conductivity";
                let k = self.given::<Conductivity>(field, names, &W_PER_M_K, lagging.w_m_k);
                let left = format!("{:.1e} W left", solved.residual);
                let balance = "heat through the lagging against that lost by its surface";
                let names = ("T_w", "temperature of the surface");
                let surface = self.root(names, &KELVIN, solved, (balance, &left));
                let how = (
                    "pipe and lagging",
                    "the lagging lies on both sides of the pipe",
                );
                let names = ("D_o", "diameter over the lagging");
                let over = self.marched(names, &M, state.surface_m, &[outside, thick], how);
                let from = [k, length, outside, over, steam, surface];
                self.working.worked(&LAGGING_HEAT, &from)?;
                (surface, over)
            }
            _ => (steam, outside),
        };
        let h = self.still_air(state, (surface, room, diameter))?;
        let names = ("eps", "emissivity of the surface");
        let field = "engine.pipe.emissivity";
        let eps = self.given::<Ratio>(field, names, &ONE, pipe.emissivity);
        let from = [diameter, length, h, eps, surface, room];
        self.settle(&PIPE_HEAT, &from, state.heat_w)
    }

    /// Coefficient of convection in still air.
    fn still_air(
        &mut self,
        state: &PipeState,
        (surface, room, diameter): (Ref, Ref, Ref),
    ) -> Result<Ref, Refused> {
        let film = (
            "the air beside the pipe",
            "at the mean of both temperatures",
        );
        let from = [surface, room];
        let names = ("rho", "density of the air");
        let rho = self.marched(names, &KG_PER_M3, state.air_kg_m3, &from, film);
        let names = ("mu", "viscosity of the air");
        let mu = self.marched(names, &PA_S, state.air_pa_s, &from, film);
        let names = ("k", "conductivity of the air");
        let k = self.marched(names, &W_PER_M_K, state.air_w_m_k, &from, film);
        let pr = self.marched(("Pr", "Prandtl number"), &ONE, state.prandtl, &from, film);
        let from = [surface, room, diameter, rho, mu, pr];
        let ra = self.settle(&RAYLEIGH, &from, state.rayleigh)?;
        let nu = self.settle(&FREE_NUSSELT, &[ra, pr], state.nusselt)?;
        self.settle(&FILM_COEFFICIENT, &[nu, k, diameter], state.w_m2_k)
    }
}
