//! Physical quantities: one type a kind, SI inside, named doors in and out.
//!
//! Gauge and absolute pressure, pressure difference, stress, temperature and temperature rise are
//! different types. There is no way to make one from a bare number without naming its unit.

mod unit;

pub mod drill;
pub mod parse;
pub mod show;

pub use unit::*;

/// What every quantity can do.
pub trait Quantity: Copy + PartialEq + PartialOrd + std::fmt::Debug + Sized {
    /// The kind, which names its units.
    const KIND: Kind;
    /// Makes it from a value in the SI unit of its kind.
    fn from_si(si: f64) -> Self;
    /// The value in the SI unit of its kind.
    fn si(self) -> f64;

    /// Makes it from a value in `unit`.
    ///
    /// # Panics
    /// When the unit is of another kind, which is a broken promise of the caller.
    #[must_use]
    fn from_unit(value: f64, unit: &Unit) -> Self {
        assert!(
            unit.kind == Self::KIND,
            "{} is not a unit of {}",
            unit.symbol,
            Self::KIND.words()
        );
        Self::from_si(unit.to_si(value))
    }

    /// The value in `unit`.
    ///
    /// # Panics
    /// When the unit is of another kind, which is a broken promise of the caller.
    #[must_use]
    fn in_unit(self, unit: &Unit) -> f64 {
        assert!(
            unit.kind == Self::KIND,
            "{} is not a unit of {}",
            unit.symbol,
            Self::KIND.words()
        );
        unit.from_si(self.si())
    }
}

/// Declares quantities with their named doors.
macro_rules! quantities {
    ($($(#[$doc:meta])* $name:ident { $($from:ident / $get:ident = $unit:ident),+ $(,)? })+) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl Quantity for $name {
            const KIND: Kind = Kind::$name;
            fn from_si(si: f64) -> Self { Self(si) }
            fn si(self) -> f64 { self.0 }
        }

        impl $name {
            $(
                #[doc = concat!("From a value in the unit `", stringify!($unit), "`.")]
                #[must_use]
                pub fn $from(value: f64) -> Self { Self($unit.to_si(value)) }
                #[doc = concat!("The value in the unit `", stringify!($unit), "`.")]
                #[must_use]
                pub fn $get(self) -> f64 { $unit.from_si(self.0) }
            )+
        }
    )+};
}

quantities! {
    /// A pressure above the atmosphere, as a gauge shows it.
    Gauge { from_pa / pa = PA_GAUGE, from_bar / bar = BAR_GAUGE, from_mpa / mpa = MPA_GAUGE, from_psi / psi = PSI_GAUGE }
    /// A pressure above vacuum.
    Absolute { from_pa / pa = PA_ABSOLUTE, from_bar / bar = BAR_ABSOLUTE, from_mpa / mpa = MPA_ABSOLUTE }
    /// A difference of pressure: draught, loss, lift.
    PressureDrop { from_pa / pa = PA, from_kpa / kpa = KPA, from_inch_water / inch_water = INCH_WATER }
    /// A stress or a strength.
    Stress { from_mpa / mpa = MPA, from_psi / psi = PSI, from_ton_in2 / ton_in2 = TON_PER_INCH2 }
    /// A temperature on a scale.
    Temperature { from_k / k = KELVIN, from_c / c = CELSIUS, from_f / f = FAHRENHEIT }
    /// A rise or difference of temperature.
    TemperatureRise { from_k / k = KELVIN_RISE }
    /// A length.
    Length { from_m / m = M, from_mm / mm = MM, from_inch / inch = INCH }
    /// An area.
    Area { from_m2 / m2 = M2, from_mm2 / mm2 = MM2 }
    /// A volume.
    Volume { from_m3 / m3 = M3, from_mm3 / mm3 = MM3, from_litre / litre = LITRE, from_ml / ml = MILLILITRE }
    /// A mass.
    Mass { from_kg / kg = KG, from_g / g = GRAM }
    /// A mass in a time.
    MassFlow { from_kg_s / kg_s = KG_PER_S, from_kg_h / kg_h = KG_PER_H, from_g_h / g_h = G_PER_H }
    /// A volume in a time.
    VolumeFlow { from_m3_s / m3_s = M3_PER_S, from_ml_min / ml_min = ML_PER_MIN }
    /// A power or a flow of heat.
    Power { from_w / w = WATT, from_kw / kw = KILOWATT }
    /// An energy.
    Energy { from_j / j = JOULE, from_kj / kj = KILOJOULE }
    /// An energy in a mass.
    SpecificEnergy { from_j_kg / j_kg = J_PER_KG, from_kj_kg / kj_kg = KJ_PER_KG, from_mj_kg / mj_kg = MJ_PER_KG }
    /// Specific heat or specific entropy.
    SpecificHeat { from_j_kg_k / j_kg_k = J_PER_KG_K, from_kj_kg_k / kj_kg_k = KJ_PER_KG_K }
    /// A density.
    Density { from_kg_m3 / kg_m3 = KG_PER_M3, from_g_cm3 / g_cm3 = G_PER_CM3 }
    /// A volume in a mass.
    SpecificVolume { from_m3_kg / m3_kg = M3_PER_KG }
    /// A flow of heat through an area.
    HeatFlux { from_w_m2 / w_m2 = W_PER_M2, from_kw_m2 / kw_m2 = KW_PER_M2 }
    /// A heat transfer coefficient.
    HeatTransfer { from_w_m2_k / w_m2_k = W_PER_M2_K }
    /// A thermal conductivity.
    Conductivity { from_w_m_k / w_m_k = W_PER_M_K }
    /// A dynamic viscosity.
    Viscosity { from_pa_s / pa_s = PA_S }
    /// A mass flow through an area.
    MassFlux { from_kg_m2_s / kg_m2_s = KG_PER_M2_S, from_kg_m2_h / kg_m2_h = KG_PER_M2_H }
    /// A speed.
    Speed { from_m_s / m_s = M_PER_S, from_m_min / m_min = M_PER_MIN }
    /// Turns in a time.
    Rotation { from_per_s / per_s = PER_S, from_rpm / rpm = RPM }
    /// A time.
    Time { from_s / s = SECOND, from_min / min = MINUTE, from_h / h = HOUR }
    /// An angle.
    Angle { from_rad / rad = RADIAN, from_deg / deg = DEGREE }
    /// A force.
    Force { from_n / n = NEWTON }
    /// A force along a line.
    LineForce { from_n_mm / n_mm = N_PER_MM }
    /// A moment of force.
    Moment { from_n_m / n_m = N_M, from_n_mm / n_mm = N_MM }
    /// A surface tension or stiffness per length.
    Stiffness { from_n_m / n_m = N_PER_M, from_n_mm / n_mm = N_PER_MM_STIFF }
    /// A linear expansion per kelvin.
    Expansion { from_per_k / per_k = PER_K }
    /// A pure number, share or efficiency.
    Ratio { from_number / number = ONE, from_percent / percent = PERCENT }
    /// A thermal resistance of an area (fouling).
    Fouling { from_m2_k_w / m2_k_w = M2_K_PER_W }
}

impl Gauge {
    /// The absolute pressure where the atmosphere is `atmosphere`.
    #[must_use]
    pub fn absolute(self, atmosphere: Absolute) -> Absolute {
        Absolute(self.0 + atmosphere.0)
    }
}

impl Absolute {
    /// The gauge pressure where the atmosphere is `atmosphere`.
    #[must_use]
    pub fn gauge(self, atmosphere: Absolute) -> Gauge {
        Gauge(self.0 - atmosphere.0)
    }

    /// The standard atmosphere.
    #[must_use]
    pub fn standard_atmosphere() -> Absolute {
        Absolute(STANDARD_ATMOSPHERE_PA)
    }
}

/// Adds the four operations that keep the kind.
macro_rules! additive {
    ($($name:ident),+) => {$(
        impl std::ops::Add for $name { type Output = Self; fn add(self, o: Self) -> Self { Self(self.0 + o.0) } }
        impl std::ops::Sub for $name { type Output = Self; fn sub(self, o: Self) -> Self { Self(self.0 - o.0) } }
        impl std::ops::Mul<f64> for $name { type Output = Self; fn mul(self, k: f64) -> Self { Self(self.0 * k) } }
        impl std::ops::Div<f64> for $name { type Output = Self; fn div(self, k: f64) -> Self { Self(self.0 / k) } }
        impl std::ops::Div for $name { type Output = f64; fn div(self, o: Self) -> f64 { self.0 / o.0 } }
        impl std::iter::Sum for $name { fn sum<I: Iterator<Item = Self>>(i: I) -> Self { Self(i.map(|q| q.0).sum()) } }
    )+};
}

additive!(
    PressureDrop,
    Stress,
    TemperatureRise,
    Length,
    Area,
    Volume,
    Mass,
    MassFlow,
    VolumeFlow,
    Power,
    Energy,
    Time,
    Angle,
    Force
);

impl std::ops::Mul for Length {
    type Output = Area;
    fn mul(self, o: Self) -> Area {
        Area(self.0 * o.0)
    }
}

impl std::ops::Mul<Length> for Area {
    type Output = Volume;
    fn mul(self, o: Length) -> Volume {
        Volume(self.0 * o.0)
    }
}

impl std::ops::Mul<Density> for Volume {
    type Output = Mass;
    fn mul(self, o: Density) -> Mass {
        Mass(self.0 * o.0)
    }
}

impl std::ops::Add<TemperatureRise> for Temperature {
    type Output = Self;
    fn add(self, o: TemperatureRise) -> Self {
        Self(self.0 + o.0)
    }
}

impl std::ops::Sub for Temperature {
    type Output = TemperatureRise;
    fn sub(self, o: Self) -> TemperatureRise {
        TemperatureRise(self.0 - o.0)
    }
}
