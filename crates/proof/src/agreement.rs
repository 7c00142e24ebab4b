//! What has to be agreed, and with whom. It is information: the local code has the word.

use crate::set::{Inspection, RuleSet, Test};
use reckoning::Known;
use reckoning::quantity::show::figures;
use reckoning::quantity::{Gauge, Volume};

/// With whom a thing is agreed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Partner {
    /// The club's boiler tester.
    Tester,
    /// The insurer.
    Insurer,
    /// The authority of the place where the boiler is run.
    Authority,
}

impl Partner {
    /// As printed.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Tester => "the boiler tester",
            Self::Insurer => "the insurer",
            Self::Authority => "the authority",
        }
    }
}

/// One thing to be agreed.
#[derive(Clone, Debug, PartialEq)]
pub struct Agreement {
    /// With whom.
    pub with: Partner,
    /// What.
    pub what: String,
}

/// What the agreements are about.
#[derive(Clone, Debug, Default)]
pub struct Hearing {
    /// Pressure for which the boiler is proved.
    pub pressure: Option<Known<Gauge>>,
    /// Water and steam space together.
    pub volume: Option<Known<Volume>>,
}

/// Pressure times volume below which clubs treat a boiler as small, bar litre.
const CLUB_SMALL: f64 = 3.0;
/// Pressure above which the European directive looks at heated pressure equipment, bar.
const DIRECTIVE_BAR: f64 = 0.5;
/// Volume above which it sorts it into categories, litre.
const DIRECTIVE_LITRE: f64 = 2.0;
/// Ends of categories I to III of its table for fired equipment, bar litre.
const CATEGORIES: [(f64, &str); 3] = [(50.0, "I"), (200.0, "II"), (3000.0, "III")];
/// First water test of the hobby, over working pressure.
const FIRST: f64 = 2.0;
/// Rise of the gauge that the steam test allows, over working pressure.
const RISE: f64 = 1.1;

/// What must be agreed for a boiler that is to be proved by a set.
#[must_use]
pub fn agreements(set: &RuleSet, about: &Hearing) -> Vec<Agreement> {
    let mut list = vec![agree(
        Partner::Tester,
        format!("that {} is the set of rules to be met", set.title),
    )];
    list.extend(tests(set, about));
    list.push(agree(
        Partner::Insurer,
        "cover for the boiler under test and at work, and which papers it asks".to_owned(),
    ));
    list.push(category(about));
    list
}

fn agree(with: Partner, what: String) -> Agreement {
    Agreement { with, what }
}

fn tests(set: &RuleSet, about: &Hearing) -> Vec<Agreement> {
    let at = |times: f64| {
        let Some(p) = &about.pressure else {
            return format!("{times} times the working pressure");
        };
        format!("{} bar", figures(times * p.value.bar(), 3))
    };
    let first = match set.test {
        Test::Times(k) => at(k),
        Test::ByStress => format!(
            "1.3 times the working pressure by the ratio of cold to hot stress, and by the hobby {}",
            at(FIRST)
        ),
        Test::European => format!(
            "1.43 times the working pressure, or 1.25 times with the ratio of cold to hot stress, and by the hobby {}",
            at(FIRST)
        ),
    };
    let again = set.inspection.unwrap_or(Inspection::CLUBS);
    vec![
        agree(
            Partner::Tester,
            format!("the first water test, {first}, before anything is mounted"),
        ),
        agree(
            Partner::Tester,
            format!(
                "the water test with mountings and at repeats, {}, for copper {}",
                at(again.repeat),
                every(again.water_years)
            ),
        ),
        agree(
            Partner::Tester,
            format!(
                "the steam test {}, the greatest fire and the steam shut: the gauge stays at or below {}",
                every(again.steam_years),
                at(RISE)
            ),
        ),
    ]
}

/// How often, in words.
fn every(years: u32) -> String {
    match years {
        1 => "every year".to_owned(),
        2 => "every two years".to_owned(),
        3 => "every three years".to_owned(),
        4 => "every four years".to_owned(),
        _ => format!("every {years} years"),
    }
}

/// The thresholds that are known, with the numbers of this boiler; the local code decides.
fn category(about: &Hearing) -> Agreement {
    let defer = "ask which law holds where the boiler is run";
    let (Some(p), Some(v)) = (&about.pressure, &about.volume) else {
        return agree(
            Partner::Authority,
            format!("{defer}: working pressure or volume is not given"),
        );
    };
    let (bar, litre) = (p.value.bar(), v.value.litre());
    let product = bar * litre;
    let club = if product < CLUB_SMALL {
        "below"
    } else {
        "not below"
    };
    let directive = if bar <= DIRECTIVE_BAR {
        "outside the European directive by its pressure".to_owned()
    } else if litre <= DIRECTIVE_LITRE {
        "sound engineering practice by the European directive, from memory".to_owned()
    } else {
        let of = CATEGORIES.iter().find(|(end, _)| product <= *end);
        let name = of.map_or("IV", |(_, name)| *name);
        format!("category {name} by the European directive were it sold, from memory")
    };
    agree(
        Partner::Authority,
        format!(
            "{defer}: {} bar and {} l make {} bar l, {club} the {CLUB_SMALL} bar l of small boilers in clubs, {directive}",
            figures(bar, 3),
            figures(litre, 3),
            figures(product, 3)
        ),
    )
}
