//! The gas tank against the time that the plant must run.

use reckoning::finding::compare;
use reckoning::quantity::{GRAM, MINUTE, Quantity, Temperature, WATT, show};
use reckoning::{Condition, Finding, Origin, Verdict, Working};

use super::flame_list::TANK_LASTS;

/// How long a gas tank keeps the pressure of its jet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TankTime {
    /// Time with every assumption at its value, s.
    pub lasts_s: f64,
    /// Time with each at the worse end of its range, s.
    pub worst_s: f64,
    /// Why it ends.
    pub ends: TankEnds,
    /// Heat of the gas that the jet passes, W.
    pub jet_w: f64,
    /// Heat of the gas that the tank gives for ever at the pressure of the jet, W; less than nought
    /// where the air is too cold for that pressure.
    pub steady_w: f64,
    /// Temperature of the tank then, K.
    pub end_k: f64,
    /// Gas left then, kg.
    pub left_kg: f64,
}

/// Why gas ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TankEnds {
    /// The tank is empty.
    Empty,
    /// The tank is too cold for the pressure that is asked.
    Cold,
    /// It does not, for as long as anybody asks.
    Beyond,
}

/// What is known of a tank and of the time asked.
#[derive(Clone, Debug, PartialEq)]
pub enum TankAsked {
    /// All that a sum of it needs.
    Known {
        /// How long it lasts.
        time: TankTime,
        /// How long the plant must run, s.
        run_s: f64,
        /// Plan fields that were assumed.
        assumed: Vec<&'static str>,
    },
    /// What the plan does not give.
    Wanting(Vec<String>),
}

/// The finding on a gas tank.
#[must_use]
pub fn tank_lasts(asked: &TankAsked, working: &Working) -> Finding {
    let (verdict, tight, margin, says, conditions) = judged(asked);
    Finding {
        rule: &TANK_LASTS,
        set: "",
        verdict,
        tight,
        conditions,
        place: "gas.tank".to_owned(),
        says,
        remedy: (verdict >= Verdict::Unproved).then(|| TANK_LASTS.remedy.to_owned()),
        margin,
        weakest_origin: Origin::Assumed,
        working: working.clone(),
    }
}

/// Verdict, tightness, margin, sentence and what is to be measured.
fn judged(asked: &TankAsked) -> (Verdict, bool, Option<f64>, String, Vec<Condition>) {
    match asked {
        TankAsked::Wanting(fields) => (
            Verdict::Unproved,
            false,
            None,
            format!(
                "Whether the gas lasts cannot be said: the plan does not give {}.",
                fields.join(", ")
            ),
            Vec::new(),
        ),
        TankAsked::Known {
            time,
            run_s,
            assumed,
        } => {
            let lasting = time.lasts_s / run_s;
            let fails_worst = lasting >= 1.0 && time.worst_s < *run_s;
            let compared = compare(lasting, 1.0, 1.1, !assumed.is_empty(), fails_worst);
            let conditions = assumed
                .iter()
                .filter(|_| compared.verdict == Verdict::MetOnCondition)
                .map(|field| condition(field))
                .collect();
            let says = says(time, *run_s);
            (
                compared.verdict,
                compared.tight,
                Some(lasting),
                says,
                conditions,
            )
        }
    }
}

fn condition(field: &str) -> Condition {
    Condition {
        says: "the time that the gas lasts, taken with the tank in its place".to_owned(),
        field: Some(field.to_owned()),
        bound: None,
    }
}

fn says(time: &TankTime, run_s: f64) -> String {
    let minutes = |s: f64| show::figures(MINUTE.from_si(s), 2);
    let watt = |w: f64| show::quantity(w, &WATT, 2);
    let (more, ends) = match time.ends {
        TankEnds::Empty => ("", "then it is empty".to_owned()),
        TankEnds::Cold => (
            "",
            format!(
                "then it is at {} °C, too cold for the pressure asked, with {} g left",
                show::figures(Temperature::from_si(time.end_k).c(), 2),
                show::figures(GRAM.from_si(time.left_kg), 2)
            ),
        ),
        TankEnds::Beyond => ("more than ", "it is still warm enough then".to_owned()),
    };
    let steady = if time.steady_w > 0.0 {
        format!("{} without chilling", watt(time.steady_w))
    } else {
        "nothing without chilling".to_owned()
    };
    format!(
        "The gas lasts {more}{} min for {} asked, {} at the worst of what is assumed; {ends}. The \
         jet takes {}, of which the tank gives {steady}.",
        minutes(time.lasts_s),
        minutes(run_s),
        minutes(time.worst_s),
        watt(time.jet_w),
    )
}
