//! The door from a plan to the steady loop.
//!
//! Everything that the loop needs is taken here, with its origin. A field that is empty is taken
//! from the assumption of the same name; where there is none it is a gap, and the loop is not run.

mod burns;
mod coil_heat;
mod engine;
mod flame;
mod gas;
mod greatest;
mod hottest;
mod parts;
mod supply;
mod taken;
mod tank;
mod way;

pub use coil_heat::CoilHeat;
pub(crate) use greatest::greatest_on_gas;
pub use greatest::{Greatest, greatest};
pub use hottest::HottestDay;
pub(crate) use hottest::hottest_day;
pub use supply::{consumption, cures, feed_means, water, water_asked};
pub use taken::{Taken, TakenNumber};
pub(crate) use tank::lasting;
pub use way::{CrossWay, FlueWay, Geometry, TubeWay, Way};

use self::burns::Burns;

use plan::Plan;
use reckoning::quantity::Absolute;
use reckoning::{Given, Known, Origin, Refused, Working};
use steaming::{BedFire, Blower, Engine, ExhaustWater, Firing, Inputs, Plain, Site};

/// The inputs of the loop and what was taken to make them.
#[derive(Clone, Debug)]
pub struct Door {
    /// The inputs; `None` where something is wanted that the plan does not give.
    pub inputs: Option<Inputs>,
    /// Surroundings, where they are whole.
    pub site: Option<Site>,
    /// The engine, where it is whole.
    pub engine: Option<Engine>,
    /// Steam asked for beside the engine, or without one.
    pub plain: Option<Plain>,
    /// The blower with its valve open. The loop itself runs with it shut.
    pub blower: Option<Blower>,
    /// What was taken, assumed and missed.
    pub taken: Taken,
}

/// Takes the inputs of the steady loop from a plan and the geometry of its plant. Of a plan with
/// coal and gas it is the fire of coal.
#[must_use]
pub fn door(plan: &Plan, geometry: Option<&Geometry>) -> Door {
    door_of(plan, geometry, Burns::first(plan))
}

/// The same of the gas fire of a coal boiler; `None` where the plan has but one fire.
#[must_use]
pub fn door_on_gas(plan: &Plan, geometry: Option<&Geometry>) -> Option<Door> {
    Burns::second(plan).map(|burns| door_of(plan, geometry, burns))
}

fn door_of(plan: &Plan, geometry: Option<&Geometry>, burns: Burns) -> Door {
    let mut taken = Taken::default();
    let site = site(plan, &mut taken);
    let asking = engine::asking(plan, &mut taken);
    let inputs = inputs((plan, geometry), burns, (site, &asking), &mut taken);
    let blower = parts::blower(plan, &mut taken);
    taken.assumed.extend(steaming::standing());
    taken.gaps.extend(burns.misplaced(plan));
    let whole = taken.gaps.is_empty();
    Door {
        inputs: inputs.filter(|_| whole),
        site,
        engine: asking.engine,
        plain: asking.plain,
        blower,
        taken,
    }
}

fn inputs(
    (plan, geometry): (&Plan, Option<&Geometry>),
    burns: Burns,
    (site, asking): (Option<Site>, &engine::Asking),
    taken: &mut Taken,
) -> Option<Inputs> {
    // Every part is taken before the first `?`, so that all gaps are named at once.
    let firing = match burns {
        Burns::Bed => bed(plan, geometry, taken),
        Burns::Flue => flame::in_flue(plan, geometry, site, taken),
        Burns::Firebox => flame::in_firebox(plan, geometry, site, taken),
    };
    let boiler = parts::boiler(plan, geometry, taken);
    let chimney = parts::chimney(plan, burns, taken);
    let blast = parts::blast(plan, taken);
    let dryer = parts::dryer(plan, geometry, taken);
    let leak = parts::leak(plan, taken);
    let extra_loss_pa = parts::extra_loss(plan, burns, taken);
    Some(Inputs {
        site: site?,
        boiler: boiler?,
        engine: asking.engine,
        plain: asking.plain,
        firing: firing?,
        chimney: chimney?,
        blast,
        exhaust_water: ExhaustWater::TakenOut,
        blower: None,
        dryer,
        leak,
        extra_loss_pa: extra_loss_pa?,
    })
}

fn bed(plan: &Plan, geometry: Option<&Geometry>, taken: &mut Taken) -> Option<Firing> {
    let fire = parts::fire(plan, taken);
    let bed = parts::bed(plan, taken);
    let firebox = parts::firebox(plan, geometry, taken);
    let tubes = parts::tubes(plan, geometry, taken);
    Some(Firing::Bed(BedFire {
        fire: fire?,
        bed: bed?,
        firebox: firebox?,
        tubes: tubes?,
    }))
}

fn site(plan: &Plan, taken: &mut Taken) -> Option<Site> {
    let atmosphere = taken.number(&plan.site.atmosphere);
    let air = taken.number(&plan.site.air);
    let feed = taken.number(&plan.site.feed_water);
    let (atmosphere_pa, air_k, feed_k) = (atmosphere?, air?, feed?);
    Some(Site {
        atmosphere_pa,
        air_k,
        air_j_kg: steaming::air_enthalpy(air_k),
        feed_k,
    })
}

/// The pressure of the air: that of the plan, else the standard atmosphere as a choice.
#[must_use]
pub fn atmosphere(plan: &Plan) -> Known<Absolute> {
    plan.site.atmosphere.known().unwrap_or_else(|| Known {
        value: Absolute::standard_atmosphere(),
        given: Given::Chosen {
            between: "the pressures of the air at low heights".to_owned(),
            reason: "the standard atmosphere, for the plan names none".to_owned(),
            weakest: Origin::Assumed,
        },
    })
}

/// Files a settled state with the origins that were taken at the door.
///
/// # Errors
/// [`Refused`] where a card cannot be worked on the settled values.
pub fn explain(
    state: &steaming::FireState,
    taken: &Taken,
    working: &mut Working,
) -> Result<steaming::Explained, Refused> {
    let origins = |field: &'static str| {
        taken.given(field).unwrap_or_else(|| Given::Chosen {
            between: "the sizes of the plan".to_owned(),
            reason: "it follows from the geometry of the parts".to_owned(),
            weakest: Origin::Read,
        })
    };
    steaming::explain(state, &origins, working)
}
