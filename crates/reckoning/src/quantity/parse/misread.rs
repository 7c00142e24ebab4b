//! What is said when a text does not read: what was read, and what was meant.

use super::super::Kind;
use super::spelling::Stated;

/// A text that does not read as a quantity.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("`{text}`: {read}, {meant}")]
pub struct Misread {
    /// The text.
    pub text: String,
    /// Where the fault begins, in characters from 1.
    pub column: usize,
    /// What was read there.
    pub read: String,
    /// What is wanted, with an example.
    pub meant: String,
}

/// The faults, before they are put into words.
pub(super) enum Fault<'a> {
    NoNumber(&'a str),
    OverNothing,
    Comma {
        before: &'a str,
        after: &'a str,
    },
    NoUnit,
    SizeByName,
    SecondNegative,
    MoreThanOne(&'a str),
    OtherPressure {
        name: &'a str,
        stated: Stated,
    },
    OtherKind {
        name: &'a str,
        other: Kind,
    },
    UnknownUnit {
        name: &'a str,
        near: Option<&'static str>,
        written: &'a str,
    },
}

impl Fault<'_> {
    /// What was read.
    pub(super) fn read(&self, kind: Kind) -> String {
        match self {
            Self::NoNumber(at) => {
                format!("it should begin with a number, and begins `{}`", head(at))
            }
            Self::OverNothing => "a fraction over 0 has no value".into(),
            Self::Comma { .. } => "a comma stands in the number".into(),
            Self::NoUnit => format!("{} needs a unit", with_article(kind)),
            Self::SizeByName => "that is a drill or sheet by its number".into(),
            Self::SecondNegative => "the second number has a sign of its own".into(),
            Self::MoreThanOne(name) => format!("a second number follows, `{name}`"),
            Self::OtherPressure { name, stated } => match stated {
                Stated::Gauge => format!("{name} says a pressure above the atmosphere"),
                Stated::Absolute => format!("{name} says a pressure above vacuum"),
            },
            Self::OtherKind { name, other } => format!("{name} is a unit of {}", plain(*other)),
            Self::UnknownUnit { name, .. } => format!("{name} is not a unit of {}", kind.words()),
        }
    }

    /// What is meant instead.
    pub(super) fn meant(&self, kind: Kind) -> String {
        let example = example(kind);
        match self {
            Self::Comma { before, after } => format!(
                "write `{before}.{after}` if it is the decimal point, `{before}{after}` if it \
                 parts thousands"
            ),
            Self::NoUnit => format!("for instance {example}"),
            Self::SecondNegative => {
                format!("a sign stands before the first, for instance {example}")
            }
            Self::MoreThanOne(_) => {
                format!("one {} is wanted, for instance {example}", kind.words())
            }
            Self::UnknownUnit {
                near: Some(near),
                written,
                ..
            } => format!("did you mean `{written} {near}`?"),
            _ => wanted(kind),
        }
    }
}

/// `a length is wanted, for instance …`
pub(super) fn wanted(kind: Kind) -> String {
    format!(
        "{} is wanted, for instance {}",
        with_article(kind),
        example(kind)
    )
}

fn with_article(kind: Kind) -> String {
    let words = kind.words();
    let article = if words.starts_with(['a', 'e', 'i', 'o', 'u']) {
        "an"
    } else {
        "a"
    };
    format!("{article} {words}")
}

/// The kind that a unit is known for: a bar is one of pressure, gauge or not.
fn plain(kind: Kind) -> &'static str {
    match kind {
        Kind::Gauge | Kind::Absolute => "pressure",
        other => other.words(),
    }
}

/// The first dozen characters, so that a long text does not fill the message.
fn head(text: &str) -> String {
    let mut head: String = text.trim_end().chars().take(12).collect();
    if head.len() < text.trim_end().len() {
        head.push('…');
    }
    head
}

/// An example of each kind as a maker may write it.
pub(super) fn example(kind: Kind) -> &'static str {
    match kind {
        Kind::Gauge => "`80 psi` or `5.5 bar`",
        Kind::Absolute => "`1.013 bar absolute`",
        Kind::PressureDrop => "`1/2 in water` or `120 Pa`",
        Kind::Stress => "`26 MPa` or `3770 psi`",
        Kind::Temperature => "`170 °C` or `350 °F`",
        Kind::TemperatureRise => "`60 K`",
        Kind::Length => "`12 mm` or `1 7/16 in`",
        Kind::Area => "`150 cm2` or `24 in2`",
        Kind::Volume => "`750 ml` or `1 1/2 pint`",
        Kind::Mass => "`2.5 kg` or `5 lb`",
        Kind::MassFlow => "`12.5 kg/h`",
        Kind::VolumeFlow => "`140 ml/min` or `1/4 pint/min`",
        Kind::Power => "`30 W` or `1/8 hp`",
        Kind::Energy => "`250 kJ`",
        Kind::SpecificEnergy => "`46 MJ/kg`",
        Kind::SpecificHeat => "`4.2 kJ/(kg K)`",
        Kind::Density => "`8.94 g/cm3`",
        Kind::SpecificVolume => "`0.25 m3/kg`",
        Kind::HeatFlux => "`40 kW/m2`",
        Kind::HeatTransfer => "`55 W/(m2 K)`",
        Kind::Conductivity => "`330 W/(m K)`",
        Kind::Viscosity => "`25 µPa s`",
        Kind::MassFlux => "`90 kg/(m2 h)`",
        Kind::Speed => "`30 m/min`",
        Kind::Rotation => "`300 rpm`",
        Kind::Time => "`20 min` or `1 h 20 min`",
        Kind::Angle => "`30°`",
        Kind::Force => "`250 N`",
        Kind::LineForce => "`12 N/mm`",
        Kind::Moment => "`8 N m`",
        Kind::Stiffness => "`4 N/mm`",
        Kind::Expansion => "`17e-6 1/K`",
        Kind::Ratio => "`0.75` or `75 %`",
        Kind::Fouling => "`0.0002 m2 K/W`",
    }
}
