//! `[gas]` and `[spirit]`: the fuels of a burner.

use reckoning::Size;
use reckoning::quantity::{Gauge, HeatTransfer, Mass, MassFlow, Ratio, Temperature};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::section::mount::Fitted;
use crate::visit::{Section, Visitor};

/// `[gas]`: liquefied gas and how it comes to the jet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Gas {
    /// What is burnt.
    pub fuel: Entry<GasFuel>,
    /// Shares of a mixture.
    pub mixture: GasMixture,
    /// Whether a regulator holds the pressure.
    pub regulator: Entry<Fitted>,
    /// Pressure that it holds.
    pub pressure: Entry<Gauge>,
    /// What the filling valve lets in.
    pub accepts: Entry<GasAccepted>,
    /// Its tank.
    pub tank: GasTank,
}

impl Section for Gas {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.choice(&mut self.fuel, "fuel", "what is filled into the tank");
        v.table("mixture", "shares of a mixture, by mass", &mut self.mixture);
        v.choice(
            &mut self.regulator,
            "regulator",
            "whether a regulator holds the pressure at the jet",
        );
        v.number(
            &mut self.pressure,
            "pressure",
            "gauge pressure at the jet that the regulator holds",
            within("0.01 bar", "6 bar"),
        );
        v.choice(
            &mut self.accepts,
            "accepts",
            "which gases the filling valve lets in, whatever is meant to be burnt",
        );
        v.table("tank", "the tank of the gas", &mut self.tank);
    }
}

/// A gas that is burnt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GasFuel {
    /// Propane.
    Propane,
    /// Normal butane.
    NormalButane,
    /// Isobutane.
    Isobutane,
    /// The mixture whose shares are given.
    Mixture,
}

impl Choice for GasFuel {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Propane, "propane", ""),
        (Self::NormalButane, "n-butane", ""),
        (Self::Isobutane, "isobutane", ""),
        (Self::Mixture, "mixture", "with the shares given"),
    ];
}

/// `[gas.mixture]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct GasMixture {
    /// Propane.
    pub propane: Entry<Ratio>,
    /// Normal butane.
    pub normal_butane: Entry<Ratio>,
    /// Isobutane.
    pub isobutane: Entry<Ratio>,
}

impl Section for GasMixture {
    fn visit(&mut self, v: &mut dyn Visitor) {
        let share = within("0 %", "100 %");
        v.number(
            &mut self.propane,
            "propane",
            "propane in the mixture, by mass",
            share,
        );
        v.number(
            &mut self.normal_butane,
            "n-butane",
            "normal butane in the mixture, by mass",
            share,
        );
        v.number(
            &mut self.isobutane,
            "isobutane",
            "isobutane in the mixture, by mass",
            share,
        );
    }
}

/// What the filling valve lets in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GasAccepted {
    /// Any liquefied gas, propane among them.
    Any,
    /// Butane and isobutane: propane's fitting does not go on.
    Butanes,
    /// What is named as the fuel alone.
    FuelAlone,
}

impl Choice for GasAccepted {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::Any,
            "any",
            "propane too, whatever is meant to be filled",
        ),
        (
            Self::Butanes,
            "butanes",
            "n-butane and isobutane; the fitting of propane does not go on",
        ),
        (Self::FuelAlone, "fuel alone", "what is named as the fuel"),
    ];
}

/// `[gas.tank]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct GasTank {
    /// Inside diameter.
    pub bore: Entry<Size>,
    /// Length inside.
    pub length: Entry<Size>,
    /// Wall, ends included.
    pub wall: Entry<Size>,
    /// Mass of gas when full.
    pub fill: Entry<Mass>,
    /// Temperature when the burner is lit.
    pub temperature: Entry<Temperature>,
    /// Highest temperature that it may ever reach.
    pub hottest: Entry<Temperature>,
    /// Coefficient of heat between tank and air.
    pub film: Entry<HeatTransfer>,
    /// Share of the dry wall that takes up heat as the wetted wall does.
    pub dry_share: Entry<Ratio>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for GasTank {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.bore,
            "bore",
            "inside diameter of the tank",
            within("10 mm", "300 mm"),
        );
        v.size(
            &mut self.length,
            "length",
            "length of the tank inside",
            within("10 mm", "1 m"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of the tank, its ends included",
            within("0.3 mm", "12 mm"),
        );
        v.number(
            &mut self.fill,
            "fill",
            "mass of liquefied gas in the tank when it is filled",
            within("1 g", "20 kg"),
        );
        self.visit_heat(v);
        v.text(&mut self.metal, "metal", "metal of the tank");
    }
}

impl GasTank {
    fn visit_heat(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.temperature,
            "temperature",
            "temperature of the tank when the burner is lit",
            within("-30 °C", "60 °C"),
        );
        v.number(
            &mut self.hottest,
            "hottest",
            "highest temperature that the tank may reach, in the sun or beside the boiler",
            within("20 °C", "80 °C"),
        );
        v.number(
            &mut self.film,
            "film",
            "heat transfer coefficient between the outside of the tank and the air",
            within("1 W/(m2 K)", "100 W/(m2 K)"),
        );
        v.number(
            &mut self.dry_share,
            "dry-share",
            "share of the wall above the liquid that takes up heat as the wall below does",
            within("0", "1"),
        );
    }
}

/// `[spirit]`: spirit burnt on wicks.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Spirit {
    /// What is burnt.
    pub mixture: Entry<SpiritFuel>,
    /// Spirit burnt, weighed.
    pub rate: Entry<MassFlow>,
    /// Rate of burning over that of the law.
    pub rate_factor: Entry<Ratio>,
    /// Its wicks.
    pub wicks: Wicks,
}

impl Section for Spirit {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.choice(&mut self.mixture, "mixture", "what is burnt");
        v.number(
            &mut self.rate,
            "rate",
            "spirit burnt in a time under the boiler, where it was weighed",
            within("0.05 g/min", "100 g/min"),
        );
        v.number(
            &mut self.rate_factor,
            "rate-factor",
            "rate of burning over that which the law of burning wicks gives",
            within("0.2", "4"),
        );
        v.table("wicks", "the wicks, all alike", &mut self.wicks);
    }
}

/// A spirit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpiritFuel {
    /// Ethanol.
    Ethanol,
    /// Methanol.
    Methanol,
    /// Methylated spirit.
    Methylated,
}

impl Choice for SpiritFuel {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Ethanol, "ethanol", ""),
        (Self::Methanol, "methanol", ""),
        (
            Self::Methylated,
            "methylated spirit",
            "90 ethanol, 5 methanol, 5 water",
        ),
    ];
}

/// `[spirit.wicks]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Wicks {
    /// Number.
    pub count: Entry<u32>,
    /// Diameter.
    pub diameter: Entry<Size>,
    /// Height that stands out of its tube.
    pub exposed: Entry<Size>,
    /// Share of the exposed side that gives off vapour.
    pub side_share: Entry<Ratio>,
}

impl Section for Wicks {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(&mut self.count, "count", "number of wicks or cups", (1, 60));
        v.size(
            &mut self.diameter,
            "diameter",
            "diameter of a wick or cup",
            within("2 mm", "150 mm"),
        );
        v.size(
            &mut self.exposed,
            "exposed",
            "height of wick that stands out of its tube",
            within("0 mm", "60 mm"),
        );
        v.number(
            &mut self.side_share,
            "side-share",
            "share of the exposed side of a wick that gives off vapour as its top does",
            within("0", "1"),
        );
    }
}
