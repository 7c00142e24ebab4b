//! Pressure parts that the plan names and no rule was applied to.
//!
//! Silence would read as a pass. Each such part is unproved, by name.

use plan::Plan;
use reckoning::source::COMMON_PRACTICE;
use reckoning::{Cite, Finding, Origin, Rule, Verdict, Working};

use crate::answer::lies_in;

/// Id of the gas tank.
const GAS_TANK: &str = "gas.tank";

/// Every pressure part is looked at.
pub(crate) static COVERED: Rule = Rule {
    id: "design.covered",
    sentence: "Every part that the plan names and that bears pressure has been held against a \
               rule.",
    remedy: "have it proved by other means, and show the boiler tester how",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "a tester signs for the whole boiler",
    },
};

/// The tester's rule set is known here.
pub(crate) static TESTER_SET: Rule = Rule {
    id: "design.tester-set",
    sentence: "The rule set that the boiler tester or the club names is one that is worked here.",
    remedy: "name a rule set that is worked here, or have the boiler proved by the one named by \
             other means",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "the tester says by which rules a boiler is judged",
    },
};

/// One finding for each pressure part of the plan that no finding speaks of, and one where the
/// tester's rule set is not worked here.
pub(crate) fn findings<'a>(plan: &Plan, found: impl Iterator<Item = &'a Finding>) -> Vec<Finding> {
    let places: Vec<&str> = found.map(|f| f.place.as_str()).collect();
    let unproved = pressure_parts(plan)
        .into_iter()
        .filter(|id| !places.iter().any(|place| lies_in(place, id)))
        .map(|id| {
            let says = says_of(&id);
            open(&COVERED, id, says)
        });
    unproved.chain(tester_set(plan)).collect()
}

/// Why nothing is said of a part.
fn says_of(id: &str) -> String {
    if id == GAS_TANK {
        return "The gas tank is a pressure vessel of its own, under the rules for gas tanks and \
                not those for boilers: nothing is said of its strength here. It is tested to \
                twice the vapour pressure of its gas at the hottest it may reach."
            .to_owned();
    }
    format!("No rule here is worked for {id} yet: nothing is said of it.")
}

fn tester_set(plan: &Plan) -> Option<Finding> {
    let named = plan.tester_set.get()?;
    if proof::find_set(named).is_some() {
        return None;
    }
    let worked: Vec<&str> = proof::SETS.iter().map(|set| set.key).collect();
    let says = format!(
        "The plan names the rule set `{named}`; worked here are {}.",
        worked.join(", ")
    );
    Some(open(&TESTER_SET, plan.tester_set.path().to_owned(), says))
}

fn open(rule: &'static Rule, place: String, says: String) -> Finding {
    Finding {
        rule,
        set: "",
        verdict: Verdict::Unproved,
        tight: false,
        conditions: Vec::new(),
        place,
        says,
        remedy: Some(rule.remedy.to_owned()),
        margin: None,
        weakest_origin: Origin::Read,
        working: Working::new(),
    }
}

/// The ids of the parts that bear pressure, as far as the plan names them.
fn pressure_parts(plan: &Plan) -> Vec<String> {
    let boiler = &plan.boiler;
    let mut ids: Vec<String> = Vec::new();
    let mut add = |named: bool, id: &str| {
        if named {
            ids.push(id.to_owned());
        }
    };
    add(!boiler.barrel.wall.is_absent(), "barrel");
    add(!boiler.firebox.wall.is_absent(), "firebox");
    add(!boiler.foundation_ring.depth.is_absent(), "foundation-ring");
    add(!boiler.firehole.wall.is_absent(), "firehole");
    add(
        !boiler.tube_plate.upper.thickness.is_absent(),
        "tube-plate.upper",
    );
    add(
        !boiler.tube_plate.lower.thickness.is_absent(),
        "tube-plate.lower",
    );
    add(!boiler.tubes.wall.is_absent(), "tubes");
    add(!plan.dryer.outside.is_absent(), "dryer");
    add(!plan.water_gauge.glass.is_absent(), "water-gauge");
    add(!boiler.flue.wall.is_absent(), "flue");
    add(!boiler.end.front.thickness.is_absent(), "end.front");
    add(!boiler.end.back.thickness.is_absent(), "end.back");
    add(!boiler.cross_tubes.wall.is_absent(), "cross-tubes");
    add(!plan.gas.tank.wall.is_absent(), GAS_TANK);
    ids.extend(rows(plan));
    ids
}

/// The ids of bushes, stays and safety valves.
fn rows(plan: &Plan) -> impl Iterator<Item = String> {
    let (boiler, valves) = (&plan.boiler, &plan.safety_valves);
    let bushes = boiler.bushes.iter().map(|bush| ("bush", &bush.id));
    let stays = boiler.stays.iter().map(|stay| ("stay", &stay.id));
    let valves = valves.iter().map(|valve| ("safety-valve", &valve.id));
    bushes
        .chain(stays)
        .chain(valves)
        .filter_map(|(prefix, id)| Some(format!("{prefix}.{}", id.get()?)))
}
