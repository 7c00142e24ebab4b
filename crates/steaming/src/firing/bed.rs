//! A bed of coal on a grate, in a wetted firebox with fire tubes.
//!
//! The air that the draught pulls through the bed rules the fuel: the unknown of the loop is the
//! fuel, between 4 and 800 kg on a square metre of grate in an hour. Below that no fire keeps
//! alight, above it no grate burns; a root there is not returned.

use formulas::balance::{
    air_for_fuel, bed_and_grate_loss, both_losses, draught_lost, flow_for_fuel, flux_on_area,
    heat_set_free, lift_share,
};
use formulas::bed::{BedGas, Packing, loss, weight};
use formulas::draught::opening_loss;
use formulas::fuel::{Composition, combustion_products, flue_mass, stoichiometric_air};
use formulas::gas::{FlueGas, PureLaw};
use reckoning::quantity::KG_PER_M2_H;

use super::bed_air::{self, FireAir, Opening};
use super::{Around, Burning, Firebox, FiringState, HotGas};
use crate::fault::NotSettled;
use crate::firebox::{self, Taker};
use crate::tubes::{March, Tubes};

/// Rates of burning between which the balance is sought, kg/(m² h).
const RATES_KG_M2_H: (f64, f64) = (4.0, 800.0);

/// A bed on a grate, and the firebox and tubes that its gas passes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BedFire {
    /// Fuel and how it burns.
    pub fire: Fire,
    /// The bed on the grate.
    pub bed: Bed,
    /// The wetted box round the fire.
    pub firebox: Firebox,
    /// Fire tubes.
    pub tubes: Tubes,
}

impl BedFire {
    /// Whether air comes over the fire as well as through it.
    #[must_use]
    pub fn has_holes(&self) -> bool {
        matches!(self.fire.air, FireAir::WithHoles { .. })
    }
}

/// Fuel and how it burns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fire {
    /// Composition as fired.
    pub fuel: Composition,
    /// Lower heating value as fired, J/kg.
    pub heating_value_j_kg: f64,
    /// How it gets its air.
    pub air: FireAir,
    /// Share of the heating value set free.
    pub burnt_share: f64,
}

impl Fire {
    /// The flue gas and the masses for a kilogram of fuel at an air ratio, on these laws of the
    /// pure gases.
    fn burning(&self, ratio: f64, laws: &[PureLaw; 4]) -> Result<Burning, NotSettled> {
        let air = stoichiometric_air(&self.fuel);
        let products = combustion_products(&self.fuel, ratio)?;
        Ok(Burning {
            gas: FlueGas::with_laws(&products.fractions(), laws),
            air_kg_kg: air_for_fuel(ratio, air),
            flue_kg_kg: flue_mass(ratio, air, self.fuel.ash),
            heating_value_j_kg: self.heating_value_j_kg,
            burnt_share: self.burnt_share,
        })
    }
}

/// The bed on the grate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bed {
    /// Area of the grate, m².
    pub grate_m2: f64,
    /// Lumps and the room between them.
    pub packing: Packing,
    /// Depth, m.
    pub depth_m: f64,
    /// Density of a lump, kg/m³.
    pub lump_kg_m3: f64,
    /// Mean temperature of the gas in it, K.
    pub gas_k: f64,
    /// Loss of bed, grate and clean ash together over that of the bare bed.
    pub grate_factor: f64,
    /// Loss with the ash that has built up over that when clean.
    pub ash_factor: f64,
    /// Door or damper of the ash pan; `None` where the pan stands open.
    pub door: Option<Opening>,
    /// Factor on the viscosity of its gas, as [`Beyond`](crate::tubes::Beyond) has it.
    pub viscosity_factor: f64,
}

/// The settled bed with its firebox and tubes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BedFireState {
    /// The bed.
    pub bed: BedState,
    /// The firebox.
    pub firebox: firebox::Settled,
    /// The tubes.
    pub tubes: March,
}

/// The bed with air flowing through it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BedState {
    /// Fuel over grate area, kg/(m² s).
    pub rate_kg_m2_s: f64,
    /// Air through the bed over all air.
    pub primary_share: f64,
    /// Air through the bed over the air that the fuel needs.
    pub bed_ratio: f64,
    /// All air over the air that the fuel needs.
    pub air_ratio: f64,
    /// Primary air over grate area, kg/(m² s).
    pub flux_kg_m2_s: f64,
    /// Temperature of the gas in the bed, K.
    pub gas_k: f64,
    /// Density of the gas in the bed, kg/m³.
    pub gas_kg_m3: f64,
    /// Viscosity of the gas in the bed, Pa s.
    pub gas_pa_s: f64,
    /// Loss of the bare bed, Pa.
    pub bare_pa: f64,
    /// Loss of bed, grate and ash, Pa.
    pub loss_pa: f64,
    /// Loss at the door of the ash pan, Pa.
    pub door_pa: f64,
    /// Weight of the bed on its area, Pa.
    pub weight_pa: f64,
    /// Loss of the bare bed over its weight.
    pub lift: f64,
}

/// What stays the same while the fuel is sought.
pub(crate) struct BedSide<'a> {
    fired: &'a BedFire,
    around: &'a Around,
    laws: &'a [PureLaw; 4],
    /// Air that a kilogram of the fuel needs, kg/kg.
    need: f64,
    bed_ratio: f64,
    /// What it burns to where all air comes through the bed.
    burning: Option<Burning>,
    gas: BedGas,
    weight_pa: f64,
}

impl<'a> BedSide<'a> {
    pub(super) fn new(
        fired: &'a BedFire,
        around: &'a Around,
        laws: &'a [PureLaw; 4],
    ) -> Result<Self, NotSettled> {
        let bed = &fired.bed;
        let fire = &fired.fire;
        let bed_ratio = fire.air.bed_ratio(bed);
        let burning = match fire.air {
            FireAir::ThroughBed { ratio } => Some(fire.burning(ratio, laws)?),
            FireAir::WithHoles { .. } => None,
        };
        // A thick bed gives off gas that is not burnt yet; its own gas is taken as burnt, for
        // density and viscosity of both lie within a few hundredths.
        let in_bed = match &burning {
            Some(burning) => burning.gas,
            None => fire.burning(1.0, laws)?.gas,
        };
        let gas = BedGas {
            density: in_bed.density(bed.gas_k, around.air.pa),
            viscosity: bed.viscosity_factor * in_bed.transport(bed.gas_k).viscosity,
        };
        let voidage = bed.packing.voidage;
        Ok(Self {
            fired,
            around,
            laws,
            need: stoichiometric_air(&fire.fuel),
            bed_ratio,
            burning,
            gas,
            weight_pa: weight(voidage, bed.lump_kg_m3, gas.density, bed.depth_m),
        })
    }

    /// Least and greatest fuel, kg/s.
    pub(super) fn bracket(&self) -> (f64, f64) {
        let at = |rate| self.fired.bed.grate_m2 * KG_PER_M2_H.to_si(rate);
        (at(RATES_KG_M2_H.0), at(RATES_KG_M2_H.1))
    }

    /// The gas behind the tubes when so much fuel burns, kg/s.
    pub(super) fn at(
        &self,
        fuel_kg_s: f64,
        taker: Option<Taker<'_>>,
    ) -> Result<HotGas, NotSettled> {
        let bed = self.bed(fuel_kg_s)?;
        let burning = match &self.burning {
            Some(burning) => *burning,
            None => self.fired.fire.burning(bed.air_ratio, self.laws)?,
        };
        let air_kg_s = flow_for_fuel(burning.air_kg_kg, fuel_kg_s);
        let gas_kg_s = flow_for_fuel(burning.flue_kg_kg, fuel_kg_s);
        let (burnt, value) = (burning.burnt_share, burning.heating_value_j_kg);
        let heat_w = heat_set_free(burnt, fuel_kg_s, value, air_kg_s, self.around.air.j_kg);
        let fire = firebox::Fire { heat_w, gas_kg_s };
        let way = (&self.fired.firebox, &self.fired.tubes);
        let (firebox, tubes) = self
            .around
            .box_and_tubes(way, &fire, (&burning.gas, taker))?;
        let before_pa = both_losses(bed.door_pa, bed.loss_pa);
        Ok(HotGas {
            burning,
            fuel_kg_s,
            air_kg_s,
            gas_kg_s,
            heat_w,
            loss_pa: draught_lost(before_pa, tubes.loss_pa(), self.around.extra_loss_pa),
            behind_k: tubes.outlet.gas_k,
            state: FiringState::Bed(BedFireState {
                bed,
                firebox,
                tubes,
            }),
        })
    }

    /// The bed when so much fuel burns, kg/s.
    fn bed(&self, fuel_kg_s: f64) -> Result<BedState, NotSettled> {
        let bed = &self.fired.bed;
        let primary_kg_s = bed_air::primary(self.bed_ratio, self.need, fuel_kg_s);
        let flux = flux_on_area(1.0, primary_kg_s, bed.grate_m2);
        let bare_pa = loss(&bed.packing, &self.gas, flux, bed.depth_m);
        let loss_pa = bed_and_grate_loss(bed.grate_factor, bed.ash_factor, bare_pa);
        let outside = self.around.air.kg_m3;
        let door_pa = bed.door.map_or(0.0, |door| {
            opening_loss(primary_kg_s, outside, door.coefficient, door.area_m2)
        });
        let burnt = (self.bed_ratio, self.need, fuel_kg_s);
        let suction = (both_losses(door_pa, loss_pa), outside);
        let air_ratio = self.fired.fire.air.whole_ratio(burnt, suction)?;
        Ok(BedState {
            rate_kg_m2_s: flux_on_area(1.0, fuel_kg_s, bed.grate_m2),
            primary_share: self.bed_ratio / air_ratio,
            bed_ratio: self.bed_ratio,
            air_ratio,
            flux_kg_m2_s: flux,
            gas_k: bed.gas_k,
            gas_kg_m3: self.gas.density,
            gas_pa_s: self.gas.viscosity,
            bare_pa,
            loss_pa,
            door_pa,
            weight_pa: self.weight_pa,
            lift: lift_share(bare_pa, self.weight_pa),
        })
    }
}
