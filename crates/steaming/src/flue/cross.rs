//! One water tube across the flue.

use formulas::coil::crossflow_nusselt;
use formulas::flue::{
    Meeting, Obstacle, open_area, passage_area, passage_reynolds, tube_drag, tube_heat, tube_loss,
    tube_surface,
};
use formulas::heat::{film_coefficient, prandtl};
use reckoning::Refused;

use super::CrossTubes;
use super::section::{Bore, Crossed, Laws};

/// The film round a tube, and what it lets through by convection.
struct Film {
    k: f64,
    conductivity: f64,
    reynolds: f64,
    prandtl: f64,
    nusselt: f64,
    convection: f64,
}

impl Film {
    fn of(laws: &Laws<'_>, tubes: &CrossTubes, gas_k: f64) -> Self {
        let (bore_m, d) = (laws.flue.bore_m, tubes.outside_m);
        let k = f64::midpoint(gas_k, laws.stream.wall_k);
        let carry = laws.carry(k);
        let narrow = passage_area(open_area(bore_m, 0.0), d, bore_m);
        let re = passage_reynolds(laws.stream.gas_kg_s, d, narrow, carry.viscosity);
        let pr = prandtl(
            carry.viscosity,
            laws.gas.specific_heat(k),
            carry.conductivity,
        );
        let nusselt = crossflow_nusselt(re, pr);
        Self {
            k,
            conductivity: carry.conductivity,
            reynolds: re,
            prandtl: pr,
            nusselt,
            convection: tubes.row_factor * film_coefficient(nusselt, carry.conductivity, d),
        }
    }
}

/// The tube at a place, met by gas of a temperature (K).
pub(super) fn crossed(
    laws: &Laws<'_>,
    (tubes, bore): (&CrossTubes, &Bore),
    place_m: f64,
    gas_k: f64,
) -> Result<Crossed, Refused> {
    let (stream, bore_m, d) = (laws.stream, laws.flue.bore_m, tubes.outside_m);
    let film = Film::of(laws, tubes, gas_k);
    let (_, radiant_flux) = laws.radiation(bore, place_m, gas_k)?;
    // Gas at the temperature of the tube gives it nothing in any way.
    let radiation = if radiant_flux == 0.0 {
        0.0
    } else {
        radiant_flux / (gas_k - stream.wall_k)
    };
    let meeting = Meeting {
        m: stream.gas_kg_s,
        c_p: laws.gas.specific_heat(gas_k),
        t: gas_k,
        t_w: stream.wall_k,
        h: film.convection + radiation,
        area: tube_surface(d, bore_m),
    };
    let obstacle = Obstacle {
        drag: tube_drag(film.reynolds),
        d_tube: d,
        bore: bore_m,
        area: open_area(bore_m, 0.0),
    };
    let density = laws.gas.density(gas_k, stream.pressure_pa);
    Ok(Crossed {
        place_m,
        gas_k,
        burnt: laws.burnt(place_m),
        film_k: film.k,
        reynolds: film.reynolds,
        prandtl: film.prandtl,
        nusselt: film.nusselt,
        conductivity: film.conductivity,
        convection: film.convection,
        radiation,
        specific_heat: meeting.c_p,
        density,
        area_m2: meeting.area,
        heat_w: tube_heat(&meeting),
        loss_pa: tube_loss(&obstacle, stream.gas_kg_s, density),
    })
}
