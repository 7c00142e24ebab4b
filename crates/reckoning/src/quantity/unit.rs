//! The one table of units. A factor between units stands here and nowhere else.
//!
//! Sources: SI units and factors of the inch, pound and atmosphere are exact by definition
//! (the 1959 yard and pound agreement, ISO 80000); from memory.

/// The kind of a quantity; each has one SI unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[allow(
    missing_docs,
    reason = "the names are those of the quantity types, documented there"
)]
pub enum Kind {
    Gauge,
    Absolute,
    PressureDrop,
    Stress,
    Temperature,
    TemperatureRise,
    Length,
    Area,
    Volume,
    Mass,
    MassFlow,
    VolumeFlow,
    Power,
    Energy,
    SpecificEnergy,
    SpecificHeat,
    Density,
    SpecificVolume,
    HeatFlux,
    HeatTransfer,
    Conductivity,
    Viscosity,
    MassFlux,
    Speed,
    Rotation,
    Time,
    Angle,
    Force,
    LineForce,
    Moment,
    Stiffness,
    Expansion,
    Ratio,
    Fouling,
}

impl Kind {
    /// The kind in words, as messages use it.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Gauge => "gauge pressure",
            Self::Absolute => "absolute pressure",
            Self::PressureDrop => "pressure difference",
            Self::Stress => "stress",
            Self::Temperature => "temperature",
            Self::TemperatureRise => "temperature rise",
            Self::Length => "length",
            Self::Area => "area",
            Self::Volume => "volume",
            Self::Mass => "mass",
            Self::MassFlow => "mass flow",
            Self::VolumeFlow => "volume flow",
            Self::Power => "power",
            Self::Energy => "energy",
            Self::SpecificEnergy => "specific energy",
            Self::SpecificHeat => "specific heat",
            Self::Density => "density",
            Self::SpecificVolume => "specific volume",
            Self::HeatFlux => "heat flux",
            Self::HeatTransfer => "heat transfer coefficient",
            Self::Conductivity => "conductivity",
            Self::Viscosity => "viscosity",
            Self::MassFlux => "mass flux",
            Self::Speed => "speed",
            Self::Rotation => "speed of rotation",
            Self::Time => "time",
            Self::Angle => "angle",
            Self::Force => "force",
            Self::LineForce => "force per length",
            Self::Moment => "moment",
            Self::Stiffness => "stiffness",
            Self::Expansion => "expansion",
            Self::Ratio => "ratio",
            Self::Fouling => "fouling resistance",
        }
    }

    /// The units of this kind, the SI unit first.
    pub fn units(self) -> impl Iterator<Item = &'static Unit> {
        UNITS.iter().copied().filter(move |u| u.kind == self)
    }

    /// The SI unit of this kind.
    ///
    /// # Panics
    /// Never: a test holds that every kind has one.
    #[must_use]
    pub fn si_unit(self) -> &'static Unit {
        match self.units().next() {
            Some(unit) => unit,
            None => panic!("{self:?} has no unit"),
        }
    }
}

/// A unit: `si = value * factor + offset`.
#[derive(Debug, PartialEq)]
pub struct Unit {
    /// How it is printed.
    pub symbol: &'static str,
    /// Other ways of writing it that are read.
    pub also: &'static [&'static str],
    /// Its kind.
    pub kind: Kind,
    factor: f64,
    offset: f64,
}

impl Unit {
    /// From this unit to SI.
    #[must_use]
    pub fn to_si(&self, value: f64) -> f64 {
        value * self.factor + self.offset
    }

    /// From SI to this unit.
    #[must_use]
    pub fn from_si(&self, si: f64) -> f64 {
        (si - self.offset) / self.factor
    }
}

/// Declares units and the list of all of them. The first of each kind is its SI unit.
macro_rules! units {
    ($($name:ident: $kind:ident = $symbol:literal $(| $also:literal)*, $factor:expr $(, $offset:expr)?;)+) => {
        $(
            #[doc = concat!("The unit ", $symbol, ".")]
            pub static $name: Unit = Unit {
                symbol: $symbol,
                also: &[$($also),*],
                kind: Kind::$kind,
                factor: $factor,
                offset: 0.0 $(+ $offset)?,
            };
        )+
        /// Every unit.
        pub static UNITS: &[&Unit] = &[$(&$name),+];
    };
}

const METRE_PER_INCH: f64 = 0.0254;
const KG_PER_POUND: f64 = 0.453_592_37;
const GRAVITY: f64 = 9.806_65;
const PA_PER_PSI: f64 = KG_PER_POUND * GRAVITY / (METRE_PER_INCH * METRE_PER_INCH);
const M3_PER_PINT: f64 = 4.546_09e-3 / 8.0;
const ICE_POINT: f64 = 273.15;
const PI: f64 = std::f64::consts::PI;
/// The standard atmosphere in pascal (ISO 2533, from memory).
pub(super) const STANDARD_ATMOSPHERE_PA: f64 = 101_325.0;

/// Standard gravity, m/s² (ISO 80000-3, exact by convention).
pub const STANDARD_GRAVITY: f64 = GRAVITY;

units! {
    PA_GAUGE: Gauge = "Pa g" | "Pa", 1.0;
    KPA_GAUGE: Gauge = "kPa g" | "kPa", 1e3;
    BAR_GAUGE: Gauge = "bar" | "bar g" | "barg", 1e5;
    MPA_GAUGE: Gauge = "MPa" | "MPa g", 1e6;
    PSI_GAUGE: Gauge = "psi" | "psi g" | "psig" | "lb/in2" | "lb/sq in", PA_PER_PSI;
    PA_ABSOLUTE: Absolute = "Pa absolute" | "Pa", 1.0;
    KPA_ABSOLUTE: Absolute = "kPa absolute" | "kPa", 1e3;
    BAR_ABSOLUTE: Absolute = "bar absolute" | "bar" | "bar a" | "bara", 1e5;
    HPA_ABSOLUTE: Absolute = "hPa absolute" | "hPa" | "mbar absolute" | "mbar", 1e2;
    MPA_ABSOLUTE: Absolute = "MPa absolute" | "MPa", 1e6;
    PSI_ABSOLUTE: Absolute = "psi absolute" | "psi" | "psia" | "psi a", PA_PER_PSI;
    PA: PressureDrop = "Pa", 1.0;
    KPA: PressureDrop = "kPa", 1e3;
    MBAR: PressureDrop = "mbar", 1e2;
    BAR_DROP: PressureDrop = "bar", 1e5;
    INCH_WATER: PressureDrop = "inH2O" | "in water" | "in wg", METRE_PER_INCH * GRAVITY * 1e3;
    MM_WATER: PressureDrop = "mmH2O" | "mm water" | "mm wg", GRAVITY;
    PA_STRESS: Stress = "Pa", 1.0;
    MPA: Stress = "MPa" | "N/mm2" | "N/mm²", 1e6;
    PSI: Stress = "psi" | "lb/in2", PA_PER_PSI;
    TON_PER_INCH2: Stress = "ton/in²" | "ton/in2" | "tsi", 2240.0 * PA_PER_PSI;
    KELVIN: Temperature = "K", 1.0;
    CELSIUS: Temperature = "°C" | "C" | "degC" | "deg C", 1.0, ICE_POINT;
    FAHRENHEIT: Temperature = "°F" | "F" | "degF" | "deg F", 5.0 / 9.0, ICE_POINT - 32.0 * 5.0 / 9.0;
    KELVIN_RISE: TemperatureRise = "K" | "°C" | "C", 1.0;
    FAHRENHEIT_RISE: TemperatureRise = "°F" | "F", 5.0 / 9.0;
    M: Length = "m", 1.0;
    MM: Length = "mm", 1e-3;
    CM: Length = "cm", 1e-2;
    UM: Length = "µm" | "um" | "micron", 1e-6;
    INCH: Length = "in" | "\"" | "inch" | "inches" | "″", METRE_PER_INCH;
    FOOT: Length = "ft" | "'" | "foot" | "feet", 12.0 * METRE_PER_INCH;
    THOU: Length = "thou", METRE_PER_INCH * 1e-3;
    M2: Area = "m²" | "m2", 1.0;
    MM2: Area = "mm²" | "mm2", 1e-6;
    CM2: Area = "cm²" | "cm2", 1e-4;
    INCH2: Area = "in²" | "in2" | "sq in", METRE_PER_INCH * METRE_PER_INCH;
    FOOT2: Area = "ft²" | "ft2" | "sq ft", 144.0 * METRE_PER_INCH * METRE_PER_INCH;
    M3: Volume = "m³" | "m3", 1.0;
    MM3: Volume = "mm³" | "mm3", 1e-9;
    LITRE: Volume = "l" | "L" | "litre" | "litres", 1e-3;
    MILLILITRE: Volume = "ml" | "mL" | "cm³" | "cm3" | "cc", 1e-6;
    INCH3: Volume = "in³" | "in3" | "cu in", METRE_PER_INCH * METRE_PER_INCH * METRE_PER_INCH;
    PINT: Volume = "pint" | "pints" | "pt", M3_PER_PINT;
    KG: Mass = "kg", 1.0;
    GRAM: Mass = "g", 1e-3;
    POUND: Mass = "lb" | "lbs", KG_PER_POUND;
    OUNCE: Mass = "oz", KG_PER_POUND / 16.0;
    KG_PER_S: MassFlow = "kg/s", 1.0;
    G_PER_S: MassFlow = "g/s", 1e-3;
    KG_PER_H: MassFlow = "kg/h", 1.0 / 3600.0;
    G_PER_H: MassFlow = "g/h", 1e-3 / 3600.0;
    G_PER_MIN: MassFlow = "g/min", 1e-3 / 60.0;
    LB_PER_H: MassFlow = "lb/h", KG_PER_POUND / 3600.0;
    M3_PER_S: VolumeFlow = "m³/s" | "m3/s", 1.0;
    ML_PER_MIN: VolumeFlow = "ml/min" | "mL/min" | "cc/min" | "cm3/min", 1e-6 / 60.0;
    LITRE_PER_MIN: VolumeFlow = "l/min" | "L/min", 1e-3 / 60.0;
    LITRE_PER_H: VolumeFlow = "l/h" | "L/h", 1e-3 / 3600.0;
    PINT_PER_MIN: VolumeFlow = "pint/min" | "pints/min" | "pt/min", M3_PER_PINT / 60.0;
    INCH3_PER_MIN: VolumeFlow = "in³/min" | "in3/min" | "cu in/min", METRE_PER_INCH * METRE_PER_INCH * METRE_PER_INCH / 60.0;
    WATT: Power = "W", 1.0;
    KILOWATT: Power = "kW", 1e3;
    HORSEPOWER: Power = "hp", 550.0 * 12.0 * METRE_PER_INCH * KG_PER_POUND * GRAVITY;
    JOULE: Energy = "J", 1.0;
    KILOJOULE: Energy = "kJ", 1e3;
    MEGAJOULE: Energy = "MJ", 1e6;
    J_PER_KG: SpecificEnergy = "J/kg", 1.0;
    KJ_PER_KG: SpecificEnergy = "kJ/kg", 1e3;
    MJ_PER_KG: SpecificEnergy = "MJ/kg", 1e6;
    BTU_PER_LB: SpecificEnergy = "Btu/lb", 2326.0;
    J_PER_KG_K: SpecificHeat = "J/(kg K)" | "J/kgK" | "J/(kg·K)", 1.0;
    KJ_PER_KG_K: SpecificHeat = "kJ/(kg K)" | "kJ/kgK" | "kJ/(kg·K)", 1e3;
    KG_PER_M3: Density = "kg/m³" | "kg/m3", 1.0;
    G_PER_CM3: Density = "g/cm³" | "g/cm3", 1e3;
    M3_PER_KG: SpecificVolume = "m³/kg" | "m3/kg", 1.0;
    W_PER_M2: HeatFlux = "W/m²" | "W/m2", 1.0;
    KW_PER_M2: HeatFlux = "kW/m²" | "kW/m2", 1e3;
    W_PER_M2_K: HeatTransfer = "W/(m² K)" | "W/(m2 K)" | "W/m2K", 1.0;
    W_PER_M_K: Conductivity = "W/(m K)" | "W/mK", 1.0;
    PA_S: Viscosity = "Pa s" | "Pa·s", 1.0;
    MICRO_PA_S: Viscosity = "µPa s" | "uPa s", 1e-6;
    KG_PER_M2_S: MassFlux = "kg/(m² s)" | "kg/m2s" | "kg/(m2 s)", 1.0;
    KG_PER_M2_H: MassFlux = "kg/(m² h)" | "kg/m2h" | "kg/(m2 h)", 1.0 / 3600.0;
    LB_PER_FT2_H: MassFlux = "lb/(ft² h)" | "lb/ft2h" | "lb/(ft2 h)", KG_PER_POUND / (144.0 * METRE_PER_INCH * METRE_PER_INCH * 3600.0);
    M_PER_S: Speed = "m/s", 1.0;
    M_PER_MIN: Speed = "m/min", 1.0 / 60.0;
    FT_PER_MIN: Speed = "ft/min" | "fpm", 12.0 * METRE_PER_INCH / 60.0;
    PER_S: Rotation = "1/s" | "Hz", 1.0;
    RPM: Rotation = "rpm" | "rev/min" | "r/min", 1.0 / 60.0;
    SECOND: Time = "s" | "sec", 1.0;
    MINUTE: Time = "min" | "minutes", 60.0;
    HOUR: Time = "h" | "hours" | "hr", 3600.0;
    RADIAN: Angle = "rad", 1.0;
    DEGREE: Angle = "°" | "deg" | "degrees", PI / 180.0;
    NEWTON: Force = "N", 1.0;
    POUND_FORCE: Force = "lbf", KG_PER_POUND * GRAVITY;
    N_PER_M_LINE: LineForce = "N/m", 1.0;
    N_PER_MM: LineForce = "N/mm", 1e3;
    N_M: Moment = "N m" | "Nm" | "N·m", 1.0;
    N_MM: Moment = "N mm" | "Nmm" | "N·mm", 1e-3;
    N_PER_M: Stiffness = "N/m", 1.0;
    N_PER_MM_STIFF: Stiffness = "N/mm", 1e3;
    PER_K: Expansion = "1/K", 1.0;
    ONE: Ratio = "" | "1", 1.0;
    PERCENT: Ratio = "%", 1e-2;
    M2_K_PER_W: Fouling = "m² K/W" | "m2 K/W", 1.0;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_kind_begins_with_its_si_unit_and_no_spelling_is_read_two_ways() {
        let mut seen = std::collections::HashSet::new();
        let mut kinds = std::collections::HashSet::new();
        for unit in UNITS {
            if kinds.insert(unit.kind) {
                assert!(
                    (unit.to_si(1.0) - 1.0).abs() < 1e-15,
                    "{} is not SI",
                    unit.symbol
                );
            }
            for spelling in std::iter::once(&unit.symbol).chain(unit.also) {
                assert!(seen.insert((unit.kind, *spelling)), "{spelling} twice");
            }
        }
    }

    /// Published factors, ISO 80000 and the 1959 agreement, from memory; the water column at the
    /// conventional density as used in the thermal trade (1 inH2O = 249.09 Pa).
    #[test]
    fn published_factors() {
        assert!((PSI.to_si(1.0) - 6894.757).abs() < 1e-3);
        assert!((INCH_WATER.to_si(1.0) - 249.089).abs() < 1e-3);
        assert!((HORSEPOWER.to_si(1.0) - 745.6999).abs() < 1e-4);
        assert!((FAHRENHEIT.to_si(212.0) - CELSIUS.to_si(100.0)).abs() < 1e-9);
        assert!((LB_PER_FT2_H.to_si(1.0) / KG_PER_M2_H.to_si(1.0) - 4.8824).abs() < 1e-4);
        assert!((PINT.to_si(1.0) - 568.261e-6).abs() < 1e-9);
    }
}
