//! Lines of a gas tank that chills: what the air gives and the vapour takes, when the burner is lit
//! and at the end, and the rate that it holds.

use formulas::supply::{
    HOLDING_RATE, LIQUID_SHARE, TANK_CHANGE, TANK_HEAT, TANK_METAL, TANK_SURFACE, TANK_VOLUME,
    WARMING_AREA, WET_AREA,
};
use reckoning::quantity::{
    J_PER_KG, J_PER_KG_K, KELVIN, KG, KG_PER_M3, KG_PER_S, M, ONE, SECOND, Unit, W_PER_M2_K,
};
use reckoning::working::Choice;
use reckoning::{Ref, Refused, Working};

use crate::burner::{Chilling, Draught, Tank, TankMoment};

/// Files a tank that was drawn down. Its sizes come from the plan; what is filed of them here is
/// filed as given.
///
/// # Errors
/// [`Refused`] where a card cannot be worked, which a tank that was drawn down does not bring about.
pub fn explain_tank(
    tank: &Tank,
    draught: &Draught<'_>,
    chilling: &Chilling,
    working: &mut Working,
) -> Result<(), Refused> {
    let mut lines = Lines { working };
    let walls = lines.walls(tank)?;
    lines.moment(&walls, draught.air_k, &chilling.lit_moment)?;
    lines.moment(&walls, draught.air_k, &chilling.end_moment)?;
    let held = &chilling.held_moment;
    let heat = lines.warmed(&walls, draught.air_k, held)?;
    let latent = lines.given(
        "r",
        "latent heat of the vapour drawn",
        &J_PER_KG,
        held.latent,
    );
    lines
        .working
        .settled(&HOLDING_RATE, &[heat, latent], chilling.held_kg_s)?;
    let how = (
        "a march in time",
        "liquid and metal lose what the vapour takes beyond what the air gives, step by step",
    );
    lines.chosen(
        ("t", "time until the end", &SECOND),
        chilling.end.after_s,
        how,
    );
    Ok(())
}

struct Lines<'a> {
    working: &'a mut Working,
}

/// Lines of the tank itself.
struct Walls {
    surface: Ref,
    volume: Ref,
    metal: Ref,
    metal_heat: Ref,
    film: Ref,
    dry_share: Ref,
}

impl Lines<'_> {
    fn chosen(
        &mut self,
        (symbol, meaning, unit): (&str, &str, &'static Unit),
        si: f64,
        (between, reason): (&str, &str),
    ) -> Ref {
        self.working.chosen(Choice {
            symbol,
            meaning,
            value: unit.from_si(si),
            unit,
            between,
            reason,
            from: &[],
            cite: None,
        })
    }

    fn given(&mut self, symbol: &str, meaning: &str, unit: &'static Unit, si: f64) -> Ref {
        let how = (
            "the tank, its gas and the air",
            "as the plan has it, or the tables of the gas at this temperature",
        );
        self.chosen((symbol, meaning, unit), si, how)
    }

    fn walls(&mut self, tank: &Tank) -> Result<Walls, Refused> {
        let bore = self.given("d", "inside diameter of the tank", &M, tank.bore_m);
        let length = self.given("L", "length of the tank inside", &M, tank.length_m);
        let wall = self.given("t", "wall of the tank", &M, tank.wall_m);
        let rho = self.given("rho", "density of its metal", &KG_PER_M3, tank.metal_kg_m3);
        let names = "specific heat of its metal";
        let metal_heat = self.given("c_w", names, &J_PER_KG_K, tank.metal_j_kg_k);
        let names = "heat transfer coefficient outside the tank";
        let film = self.given("h", names, &W_PER_M2_K, tank.film);
        let names = "share of the dry wall that conducts to the liquid";
        let dry_share = self.given("phi", names, &ONE, tank.dry_share);
        let from = [bore, length, wall];
        let surface = self
            .working
            .settled(&TANK_SURFACE, &from, tank.surface_m2())?;
        let from = [surface, wall, rho];
        Ok(Walls {
            surface,
            volume: self.working.worked(&TANK_VOLUME, &[bore, length])?,
            metal: self.working.settled(&TANK_METAL, &from, tank.metal_kg())?,
            metal_heat,
            film,
            dry_share,
        })
    }

    /// Heat that the air gives to the tank at one moment.
    fn warmed(&mut self, walls: &Walls, air_k: f64, at: &TankMoment) -> Result<Ref, Refused> {
        let left = self.given("m_l", "liquid in the tank", &KG, at.left_kg);
        let rho = self.given(
            "rho_l",
            "density of the liquid",
            &KG_PER_M3,
            at.liquid_kg_m3,
        );
        let from = [left, rho, walls.volume];
        let z = self.working.worked(&LIQUID_SHARE, &from)?;
        let wet = self.working.worked(&WET_AREA, &[z, walls.surface])?;
        let from = [wet, walls.surface, walls.dry_share];
        let area = self.working.settled(&WARMING_AREA, &from, at.warming_m2)?;
        let t_a = self.given("T_a", "temperature of the air", &KELVIN, air_k);
        let t = self.given("T", "temperature of the tank", &KELVIN, at.tank_k);
        let from = [walls.film, area, t_a, t];
        self.working.settled(&TANK_HEAT, &from, at.warmed_w)
    }

    /// How fast the tank chills at one moment.
    fn moment(&mut self, walls: &Walls, air_k: f64, at: &TankMoment) -> Result<(), Refused> {
        let heat = self.warmed(walls, air_k, at)?;
        let drawn = self.given("m_j", "gas drawn", &KG_PER_S, at.drawn_kg_s);
        let latent = self.given("r", "latent heat of the vapour drawn", &J_PER_KG, at.latent);
        let left = self.given("m_l", "liquid in the tank", &KG, at.left_kg);
        let names = "specific heat of the liquid";
        let liquid = self.given("c_l", names, &J_PER_KG_K, at.liquid_j_kg_k);
        let second = self.given("dt", "a second", &SECOND, 1.0);
        let from = [
            heat,
            drawn,
            latent,
            left,
            liquid,
            walls.metal,
            walls.metal_heat,
            second,
        ];
        self.working.settled(&TANK_CHANGE, &from, at.change_k_s)?;
        Ok(())
    }
}
