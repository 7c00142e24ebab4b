//! A bed of coal on a grate, in a wetted firebox with fire tubes.
//!
//! The air that the draught pulls through the bed rules the fuel: the unknown of the loop is the
//! fuel, between 4 and 800 kg on a square metre of grate in an hour. Below that no fire keeps
//! alight, above it no grate burns; a root there is not returned.

use formulas::balance::{
    air_for_fuel, bed_and_grate_loss, draught_lost, flow_for_fuel, flux_on_area, heat_set_free,
    lift_share,
};
use formulas::bed::{BedGas, Packing, loss, weight};
use formulas::fuel::{Composition, combustion_products, flue_mass, stoichiometric_air};
use formulas::gas::{FlueGas, PureLaw};
use reckoning::quantity::KG_PER_M2_H;

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

/// Fuel and how it burns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fire {
    /// Composition as fired.
    pub fuel: Composition,
    /// Lower heating value as fired, J/kg.
    pub heating_value_j_kg: f64,
    /// Air supplied over air needed.
    pub air_ratio: f64,
    /// Share of the air that comes through the bed.
    pub primary_share: f64,
    /// Share of the heating value set free.
    pub burnt_share: f64,
}

impl Fire {
    /// The flue gas and the masses for a kilogram of fuel, on these laws of the pure gases.
    fn burning(&self, laws: &[PureLaw; 4]) -> Result<Burning, NotSettled> {
        let air = stoichiometric_air(&self.fuel);
        let products = combustion_products(&self.fuel, self.air_ratio)?;
        Ok(Burning {
            gas: FlueGas::with_laws(&products.fractions(), laws),
            air_kg_kg: air_for_fuel(self.air_ratio, air),
            flue_kg_kg: flue_mass(self.air_ratio, air, self.fuel.ash),
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
    /// Weight of the bed on its area, Pa.
    pub weight_pa: f64,
    /// Loss of the bare bed over its weight.
    pub lift: f64,
}

/// What stays the same while the fuel is sought.
pub(crate) struct BedSide<'a> {
    fired: &'a BedFire,
    around: &'a Around,
    burning: Burning,
    gas: BedGas,
    weight_pa: f64,
}

impl<'a> BedSide<'a> {
    pub(super) fn new(
        fired: &'a BedFire,
        around: &'a Around,
        laws: &[PureLaw; 4],
    ) -> Result<Self, NotSettled> {
        let bed = &fired.bed;
        let burning = fired.fire.burning(laws)?;
        let gas = BedGas {
            density: burning.gas.density(bed.gas_k, around.air.pa),
            viscosity: bed.viscosity_factor * burning.gas.transport(bed.gas_k).viscosity,
        };
        let voidage = bed.packing.voidage;
        Ok(Self {
            fired,
            around,
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
        let burning = &self.burning;
        let air_kg_s = flow_for_fuel(burning.air_kg_kg, fuel_kg_s);
        let gas_kg_s = flow_for_fuel(burning.flue_kg_kg, fuel_kg_s);
        let (burnt, value) = (burning.burnt_share, burning.heating_value_j_kg);
        let heat_w = heat_set_free(burnt, fuel_kg_s, value, air_kg_s, self.around.air.j_kg);
        let fire = firebox::Fire { heat_w, gas_kg_s };
        let way = (&self.fired.firebox, &self.fired.tubes);
        let (firebox, tubes) = self
            .around
            .box_and_tubes(way, &fire, (&burning.gas, taker))?;
        let bed = self.bed(fuel_kg_s, air_kg_s);
        Ok(HotGas {
            burning: *burning,
            fuel_kg_s,
            air_kg_s,
            gas_kg_s,
            heat_w,
            loss_pa: draught_lost(bed.loss_pa, tubes.loss_pa(), self.around.extra_loss_pa),
            behind_k: tubes.outlet.gas_k,
            state: FiringState::Bed(BedFireState {
                bed,
                firebox,
                tubes,
            }),
        })
    }

    fn bed(&self, fuel_kg_s: f64, air_kg_s: f64) -> BedState {
        let bed = &self.fired.bed;
        let flux = flux_on_area(self.fired.fire.primary_share, air_kg_s, bed.grate_m2);
        let bare_pa = loss(&bed.packing, &self.gas, flux, bed.depth_m);
        BedState {
            rate_kg_m2_s: flux_on_area(1.0, fuel_kg_s, bed.grate_m2),
            flux_kg_m2_s: flux,
            gas_k: bed.gas_k,
            gas_kg_m3: self.gas.density,
            gas_pa_s: self.gas.viscosity,
            bare_pa,
            loss_pa: bed_and_grate_loss(bed.grate_factor, bed.ash_factor, bare_pa),
            weight_pa: self.weight_pa,
            lift: lift_share(bare_pa, self.weight_pa),
        }
    }
}
