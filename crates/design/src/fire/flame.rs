//! A flame of gas or spirit and its surroundings, as the steady loop wants them.

use formulas::heat::box_beam;
use formulas::spirit::Spirit;
use plan::Plan;
use plan::section::SpiritFuel;
use reckoning::quantity::{Absolute, Quantity, Ratio};
use reckoning::{Given, Known, Origin};
use std::f64::consts::{FRAC_PI_2, FRAC_PI_4, PI};
use steaming::burner::{
    Burner, Flame, Mouth, PortShape, Ports, Source, Throat, ThroatShape, Wicks,
};
use steaming::flue::{CrossTubes, Flue, Lie};
use steaming::{Beyond, Firing, FlameBox, FlameInFirebox, FlameInFlue, Site};

use super::way::{FlueWay, TubeWay};
use super::{Geometry, Taken, gas, parts};

/// What a flame burns.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Fuel {
    Gas,
    Spirit,
}

impl Fuel {
    /// The choice on which some assumptions depend.
    fn name(self) -> &'static str {
        match self {
            Self::Gas => "gas",
            Self::Spirit => "spirit",
        }
    }

    fn of(plan: &Plan, taken: &mut Taken) -> Option<Self> {
        let (gas, spirit) = (&plan.gas.fuel, &plan.spirit.mixture);
        match (gas.is_absent(), spirit.is_absent()) {
            (false, true) => Some(Self::Gas),
            (true, false) => Some(Self::Spirit),
            (true, true) => {
                taken.gaps.push(gas.path().to_owned());
                None
            }
            (false, false) => {
                let path = spirit.path();
                taken
                    .gaps
                    .push(format!("{path}: the plan names a gas as well"));
                None
            }
        }
    }
}

/// Where a flame burns, which says what must be known of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Place {
    /// In a centre flue.
    Flue,
    /// In the firebox of a coal boiler.
    Firebox,
}

/// The flame in its flue.
pub(crate) fn in_flue(
    plan: &Plan,
    geometry: Option<&Geometry>,
    site: Option<Site>,
    taken: &mut Taken,
) -> Option<Firing> {
    let flame = flame(plan, Place::Flue, site, taken);
    let flue = flue(plan, geometry.and_then(Geometry::flue), taken);
    Some(Firing::Flue(FlameInFlue {
        flame: flame?,
        flue: flue?,
    }))
}

/// The flame in the firebox of a boiler with fire tubes.
pub(crate) fn in_firebox(
    plan: &Plan,
    geometry: Option<&Geometry>,
    site: Option<Site>,
    taken: &mut Taken,
) -> Option<Firing> {
    let flame = flame(plan, Place::Firebox, site, taken);
    let tubes = parts::tubes(plan, geometry, taken);
    let convection = taken.number(&plan.boiler.firebox.convection);
    let (flame, tubes) = (flame?, tubes?);
    let way = geometry.and_then(Geometry::tubes)?;
    let firebox = flame_box(way, &flame, (tubes.wall_emissivity, convection?))?;
    Some(Firing::Firebox(FlameInFirebox {
        flame,
        firebox,
        tubes,
    }))
}

/// The firebox round a flame: a round box, its wall sooted as the tubes are.
fn flame_box(
    way: &TubeWay,
    flame: &Flame,
    (wall_emissivity, convection): (f64, f64),
) -> Option<FlameBox> {
    let (bore, height) = (way.firebox_bore_m?, way.firebox_height_m?);
    let volume = FRAC_PI_4 * bore * bore * height;
    let around = PI * bore * height + FRAC_PI_2 * bore * bore;
    let burner_m = flame.burner().map_or(0.0, |burner| burner.outside_m);
    let beside = (bore - burner_m) / 2.0;
    Some(FlameBox {
        area_m2: way.firebox_m2,
        beam_m: box_beam(volume, around),
        wall_emissivity,
        convection,
        gap_m: if beside < height { beside } else { height },
    })
}

/// The flame with its fuel and the way of its air.
fn flame(plan: &Plan, place: Place, site: Option<Site>, taken: &mut Taken) -> Option<Flame> {
    let b = &plan.burner;
    let fuel = Fuel::of(plan, taken);
    let mouth = mouth(plan, taken);
    let burnt_share = taken.number(&b.burnt_share);
    let soot = fuel.and_then(|fuel| taken.number_for(&b.flame_emissivity, fuel.name()));
    // In a firebox, which is stirred, nobody asks how far along it the fuel burns.
    let (ported_m, mixing_m) = match place {
        Place::Flue => (
            taken.size(&b.poker.length),
            fuel.and_then(|fuel| taken.number_for(&b.mixing_length, fuel.name())),
        ),
        Place::Firebox => (Some(0.0), Some(0.0)),
    };
    let source = match fuel? {
        Fuel::Gas => Source::Burner(burner(plan, site, taken)?),
        Fuel::Spirit => Source::Wicks(wicks(plan, site, taken)?),
    };
    Some(Flame {
        source,
        mouth: mouth?,
        ported_m: ported_m?,
        mixing_m: mixing_m?,
        burnt_share: burnt_share?,
        soot: soot?,
    })
}

/// The opening for secondary air; an area of nought shuts it.
fn mouth(plan: &Plan, taken: &mut Taken) -> Option<Mouth> {
    let m = &plan.burner.mouth;
    let area_m2 = taken.wanted(&m.area)?;
    if area_m2 == 0.0 {
        return Some(Mouth::Shut);
    }
    Some(Mouth::Open {
        area_m2,
        coefficient: taken.number(&m.coefficient)?,
    })
}

fn burner(plan: &Plan, site: Option<Site>, taken: &mut Taken) -> Option<Burner> {
    let b = &plan.burner;
    let air_pa = site.map(|site| site.atmosphere_pa);
    let supply = gas::supply(plan, air_pa, taken);
    let jet = gas::jet(plan, supply.as_ref(), air_pa, taken);
    let throat = throat(plan, taken);
    let holes = parts::count(taken, b.air_holes.count.path(), b.air_holes.count.value());
    let hole = taken.size(&b.air_holes.bore);
    let holes_coefficient = taken.number(&b.air_holes.coefficient);
    let ports = ports(plan, taken);
    let outside = taken.size(&b.poker.outside);
    let hole = hole?;
    Some(Burner {
        gas: supply?.gas,
        jet: jet?,
        throat: throat?,
        holes_m2: holes? * FRAC_PI_4 * hole * hole,
        holes_coefficient: holes_coefficient?,
        ports: ports?,
        outside_m: outside?,
    })
}

fn throat(plan: &Plan, taken: &mut Taken) -> Option<Throat> {
    let t = &plan.burner.throat;
    let bore = taken.size(&t.bore);
    taken.not_taken_away(&t.tube);
    let shape = if t.tube.is_absent() {
        Some(ThroatShape::Parallel)
    } else {
        let (tube, back) = (taken.size(&t.tube), taken.number(&t.diffuser_efficiency));
        tube.zip(back)
            .map(|(tube_m, given_back)| ThroatShape::Taper { tube_m, given_back })
    };
    let momentum_share = taken.number(&t.momentum_share);
    let momentum_factor = taken.number(&t.momentum_factor);
    let friction_heads = taken.number(&t.friction);
    let mixture_k = taken.number(&t.mixture_temperature);
    Some(Throat {
        bore_m: bore?,
        shape: shape?,
        momentum_share: momentum_share?,
        momentum_factor: momentum_factor?,
        friction_heads: friction_heads?,
        mixture_k: mixture_k?,
    })
}

/// The ports: slots where a width is given, else round holes.
fn ports(plan: &Plan, taken: &mut Taken) -> Option<Ports> {
    let p = &plan.burner.ports;
    let count = parts::count(taken, p.count.path(), p.count.value());
    let shape = if p.width.is_absent() && p.length.is_absent() {
        taken
            .size(&p.bore)
            .map(|bore_m| PortShape::Round { bore_m })
    } else {
        let (width, length) = (taken.size(&p.width), taken.size(&p.length));
        width
            .zip(length)
            .map(|(width_m, length_m)| PortShape::Slot { width_m, length_m })
    };
    let coefficient = taken.number(&p.coefficient);
    Some(Ports {
        count: count?,
        shape: shape?,
        coefficient: coefficient?,
    })
}

fn wicks(plan: &Plan, site: Option<Site>, taken: &mut Taken) -> Option<Wicks> {
    let (s, w) = (&plan.spirit, &plan.spirit.wicks);
    let count = parts::count(taken, w.count.path(), w.count.value());
    let diameter = taken.size(&w.diameter);
    let exposed = taken.size(&w.exposed);
    let side_share = taken.number(&w.side_share);
    taken.not_taken_away(&s.rate);
    let rate_factor = if s.rate.value().is_some() {
        Some(1.0)
    } else {
        taken.number(&s.rate_factor)
    };
    let mixture = s.mixture.value();
    if mixture.is_none() {
        taken.gaps.push(s.mixture.path().to_owned());
    }
    let site = site?;
    let air_bar = Absolute::from_si(site.atmosphere_pa).bar();
    let by_law = Wicks {
        spirit: Spirit::new(by_mass(mixture?), air_bar).ok()?,
        feed_k: site.air_k,
        count: count?,
        diameter_m: diameter?,
        exposed_m: exposed?,
        side_share: side_share?,
        rate_factor: rate_factor?,
    };
    match s.rate.typed() {
        Some(_) => weighed(plan, by_law, taken),
        None => Some(by_law),
    }
}

/// Wicks whose spirit was weighed: the law takes the factor that gives it.
fn weighed(plan: &Plan, by_law: Wicks, taken: &mut Taken) -> Option<Wicks> {
    let s = &plan.spirit;
    let rate = s.rate.typed()?;
    let known = Known {
        value: Ratio::from_si(by_law.weighed(rate.value.si())),
        given: Given::Chosen {
            between: "the law of burning wicks and the spirit that was weighed".to_owned(),
            reason: format!("{} were burnt ({})", rate.text, s.rate.path()),
            weakest: Origin::Read,
        },
    };
    Some(Wicks {
        rate_factor: taken.keep(s.rate_factor.path(), Some(known))?,
        ..by_law
    })
}

/// Ethanol, methanol and water in a spirit, by mass.
fn by_mass(mixture: SpiritFuel) -> [f64; 3] {
    match mixture {
        SpiritFuel::Ethanol => [1.0, 0.0, 0.0],
        SpiritFuel::Methanol => [0.0, 1.0, 0.0],
        SpiritFuel::Methylated => [0.90, 0.05, 0.05],
    }
}

fn flue(plan: &Plan, way: Option<&FlueWay>, taken: &mut Taken) -> Option<Flue> {
    let wall_emissivity = taken.number(&plan.boiler.flue.emissivity);
    let exit_heads = taken.number(&plan.burner.smokebox_loss);
    let crossed = way.is_some_and(|way| way.cross.is_some());
    let factors = crossed.then(|| {
        (
            taken.number(&plan.burner.row_factor),
            taken.number(&plan.burner.friction_factor),
        )
    });
    let way = way?;
    let cross = match (way.cross, factors) {
        (Some(cross), Some((row_factor, stirring))) => Some(CrossTubes {
            count: cross.count,
            outside_m: cross.outside_m,
            first_m: cross.first_m,
            spacing_m: cross.spacing_m,
            row_factor: row_factor?,
            stirring: stirring?,
        }),
        _ => None,
    };
    Some(Flue {
        bore_m: way.bore_m,
        length_m: way.length_m,
        lie: Lie::Level,
        wall_emissivity: wall_emissivity?,
        cross,
        exit_heads: exit_heads?,
        beyond: Beyond::AS_PRINTED,
    })
}
