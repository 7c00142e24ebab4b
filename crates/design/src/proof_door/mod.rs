//! The door from a plan to the proof: pressure parts and service as plain data.

mod frame;
mod hung;
mod inner;
mod lap;
mod lying;
mod mount;
mod spring;

pub use mount::{mountings, raising};
pub use spring::wires;

use crate::fire::CoilHeat;
use formulas::steam;
use formulas::thread::Thread;
use plan::section::{BoilerForm, BushSeat, Joint as Brazed, Seam as Closed};
use plan::{Entry, Plan};
use plant::Plant;
use proof::{
    Boiler, Bush, Diameter, Dimension, Exposure, Flue, Joint, Metal, Nest, Opening, Place, Removed,
    Seam, Service, Shell, Stock, StockSize, TubePlate,
};
use reckoning::quantity::{Angle, Length, Quantity, Temperature, show};
use reckoning::size::Bad;
use reckoning::{Given, Known, Origin, Size, Tolerance};

/// What the proof must know of the plant's geometry.
#[derive(Clone, Debug)]
pub struct PlateGeometry {
    /// How the tubes stand.
    pub layout: proof::Layout,
    /// Whether places are left out.
    pub field: proof::Field,
    /// Widest strip of bare plate between an outer tube and the wall, of the upper plate.
    pub upper_margin: Option<Known<Length>>,
    /// The same of the lower plate.
    pub lower_margin: Option<Known<Length>>,
    /// How many tubes stand in the plates.
    pub tubes: usize,
    /// Width of the water leg.
    pub leg: Option<Known<Length>>,
    /// Length of a fire tube between the plates.
    pub tube_length: Option<Known<Length>>,
    /// Length of the firebox between foundation ring and crown.
    pub firebox_length: Option<Known<Length>>,
    /// Middles of the tubes, mm, towards the firehole and a quarter turn from it.
    pub at_mm: Vec<(f64, f64)>,
    /// How plates, barrel and ring stand.
    pub vessel: Option<plant::Vessel>,
}

/// The pressure for which the plant is proved.
#[must_use]
pub fn service(plan: &Plan, coil: Option<&CoilHeat>) -> Service {
    Service {
        pressure: plan.boiler.design_pressure.known(),
        coils: inner::heat(plan, coil).into_iter().collect(),
    }
}

/// The pressure parts that a plan names, as far as it goes.
#[must_use]
pub fn boiler(plan: &Plan, plant: &Plant) -> Boiler {
    let lies = plan.form.value() == Some(BoilerForm::HorizontalCentreFlue);
    if lies {
        return lying::boiler(plan, plant.lying.as_ref());
    }
    upright(plan, crate::geometry::of_plates(plant).as_ref())
}

fn upright(plan: &Plan, geometry: Option<&PlateGeometry>) -> Boiler {
    Boiler {
        shells: vec![barrel(plan, geometry)],
        plates: geometry.map_or_else(Vec::new, |g| plates(plan, g)),
        flues: vec![firebox(plan, geometry), fire_tubes(plan, geometry)],
        frame: Some(frame::frame(plan)),
        stays: frame::stays(plan, geometry),
        coils: inner::coil(plan).into_iter().collect(),
        pipes: spring::pipes(plan),
        filler: plan.boiler.filler.get().cloned(),
        screwed: lap::screwed(plan),
        ..Boiler::default()
    }
}

/// Thicknesses on hand: what a cure may ask for.
#[must_use]
pub fn stock(workshop: &plan::Workshop) -> Stock {
    let mut stock = Stock::default();
    for piece in &workshop.stock {
        let Some(wall) = piece.wall.get() else {
            continue;
        };
        let size = StockSize {
            text: wall.drawn.text.clone(),
            least: wall.for_proof(Bad::Small),
        };
        match piece.kind.value() {
            Some(plan::workshop::StockKind::Tube) => stock.tube_walls.push(size),
            Some(plan::workshop::StockKind::Sheet) => stock.sheets.push(size),
            _ => {}
        }
    }
    stock
}

pub(crate) fn dimension(entry: &Entry<Size>) -> Option<Dimension> {
    entry.get().map(|size| Dimension {
        field: entry.path().to_owned(),
        size: size.clone(),
        removed: if entry.is_part_emptied("made") || entry.is_part_emptied("tolerance") {
            Removed::Measurement
        } else {
            Removed::Nothing
        },
    })
}

/// A metal by its standard name: that of the part, else that of the boiler. A metal that was taken
/// away again leaves the part without one.
pub(crate) fn metal(own: &Entry<String>, plan: &Plan) -> Metal {
    if own.is_emptied() {
        return Metal::Unlisted;
    }
    own.get()
        .or_else(|| plan.boiler.metal.get())
        .map_or(Metal::Unlisted, |name| Metal::named(name))
}

pub(crate) fn joint(entry: &Entry<Brazed>) -> Joint {
    match entry.value() {
        Some(Brazed::SeenBothSides) => Joint::SeenBothSides,
        // A joint of which nothing is said is taken as the worse.
        Some(Brazed::SeenOneSide) | None => Joint::Blind,
    }
}

/// The temperature of metal that water wets on one side: that of the plan, else saturation at the
/// design pressure and, where fire touches it, the rise of the wetted wall at its worse end.
pub(crate) fn metal_temperature(plan: &Plan, fire: Fire) -> Option<Known<Temperature>> {
    if let Some(known) = plan.boiler.design_temperature.known() {
        return Some(known);
    }
    // A temperature that was named and taken away again is not known.
    if plan.boiler.design_temperature.is_emptied() || plan.boiler.wall_rise.is_emptied() {
        return None;
    }
    let pressure = plan.boiler.design_pressure.value()?;
    let absolute = pressure.absolute(crate::fire::atmosphere(plan).value);
    let saturation = steam::saturation::t_sat(absolute.si()).ok()?;
    let (rise, weakest, of) = match fire {
        Fire::Away => (0.0, Origin::FromMemory, "water alone touches it"),
        Fire::Touches => match plan.boiler.wall_rise.value() {
            Some(rise) => (
                rise.si(),
                Origin::FromMemory,
                "with the rise that the plan names",
            ),
            None => {
                let assumed = steaming::assumption(plan.boiler.wall_rise.path())?.assumption;
                let rise = assumed.unit.to_si(assumed.high);
                (
                    rise,
                    Origin::Assumed,
                    "with the assumed rise of a wall in the fire, at its worse end",
                )
            }
        },
    };
    let at = show::quantity(saturation, Temperature::KIND.si_unit(), 4);
    Some(Known {
        value: Temperature::from_si(saturation + rise),
        given: Given::Chosen {
            between: format!("saturation at the design pressure, {at}, and a rise of {rise} K"),
            reason: of.to_owned(),
            weakest,
        },
    })
}

/// Whether the fire touches a wall that water wets.
#[derive(Clone, Copy)]
pub(crate) enum Fire {
    Touches,
    Away,
}

fn barrel(plan: &Plan, geometry: Option<&PlateGeometry>) -> Shell {
    let b = &plan.boiler.barrel;
    Shell {
        id: "barrel".to_owned(),
        metal: metal(&b.metal, plan),
        diameter: diameter(&b.outside, &b.bore),
        wall: dimension(&b.wall),
        seam: seam(&b.seam),
        ends: joint(&plan.boiler.tube_plate.upper.joint),
        metal_temperature: metal_temperature(plan, Fire::Away),
        openings: barrel_openings(plan),
        laps: vessel(geometry).map_or_else(Vec::new, lap::of_barrel),
    }
}

fn vessel(geometry: Option<&PlateGeometry>) -> Option<&plant::Vessel> {
    geometry.and_then(|g| g.vessel.as_ref())
}

/// The seam along a wall.
fn seam(entry: &Entry<Closed>) -> Seam {
    match entry.value() {
        Some(Closed::Seamless) => Seam::Seamless,
        Some(Closed::ButtStrap) => Seam::ButtStrap,
        Some(Closed::LapSeenBothSides) => Seam::LapSeenBothSides,
        // A seam of which nothing is said is taken as the worst.
        Some(Closed::LapSeenOneSide) | None => Seam::LapBlind,
    }
}

fn barrel_openings(plan: &Plan) -> Vec<Opening> {
    let mut openings = bushes_on(plan, BushSeat::Barrel);
    openings.extend(bushes_without_a_seat(plan));
    openings.extend(firehole(plan));
    openings
}

/// Bushes that sit nobody knows where: openings of some wall, of which nothing can be proved.
fn bushes_without_a_seat(plan: &Plan) -> impl Iterator<Item = Opening> {
    let bushes = plan.boiler.bushes.iter();
    let unseated = bushes.filter(|bush| bush.on.value().is_none());
    unseated.map(|bush| Opening {
        hole: None,
        place: None,
        ..bush_opening(bush, plan)
    })
}

fn bushes_on(plan: &Plan, seat: BushSeat) -> Vec<Opening> {
    plan.boiler
        .bushes
        .iter()
        .filter(|bush| bush.on.value() == Some(seat))
        .map(|bush| bush_opening(bush, plan))
        .collect()
}

fn bush_opening(bush: &plan::section::Bush, plan: &Plan) -> Opening {
    let lies = plan.form.value() == Some(BoilerForm::HorizontalCentreFlue);
    let along = if lies { &bush.along } else { &bush.height };
    let place = along.known().zip(bush.angle.known());
    Opening {
        id: bush_id(bush),
        hole: dimension(&bush.outside),
        bush: Some(Bush {
            metal: metal(&bush.metal, plan),
            // A thread that was taken away may have been wider than the bore.
            bore: thread_bore(bush)
                .or_else(|| dimension(&bush.bore).filter(|_| !bush.thread.is_emptied())),
            stands_out: dimension(&bush.length_out),
            stands_in: dimension(&bush.length_in),
            joint: joint(&bush.joint),
        }),
        place: place.map(|(along, around)| Place { along, around }),
    }
}

/// The name of a bush. One without a name still needs its proof; its path in the plan names it then.
fn bush_id(bush: &plan::section::Bush) -> String {
    let id = bush.id.get().map_or_else(|| bush.id.path(), String::as_str);
    format!("bush.{id}")
}

/// The thread of a bush, where it is one that is known.
fn thread(bush: &plan::section::Bush) -> Option<Thread> {
    Thread::read(&bush.thread.typed()?.value).ok()
}

/// The bore over the thread of a bush: the major diameter.
fn thread_bore(bush: &plan::section::Bush) -> Option<Dimension> {
    let typed = bush.thread.typed()?;
    let thread = thread(bush)?;
    let mut size = Size::drawn(thread.major, format!("{} over its thread", typed.text));
    // The major diameter of a thread is the standard's, not the maker's.
    let none = Length::from_si(0.0);
    size.tolerance = Some(Tolerance {
        lower: none,
        upper: none,
    });
    Some(Dimension {
        field: bush.thread.path().to_owned(),
        size,
        removed: Removed::Nothing,
    })
}

/// The firehole where it passes a wall: its tube stands in both walls of the leg.
fn firehole(plan: &Plan) -> Option<Opening> {
    let f = &plan.boiler.firehole;
    let outside = dimension(&f.outside).or_else(|| {
        let (bore, wall) = (f.bore.get()?, f.wall.get()?);
        let value = bore.for_proof(Bad::Large) + wall.for_proof(Bad::Large) * 2.0;
        let text = format!("{} and twice {}", bore.drawn.text, wall.drawn.text);
        Some(Dimension {
            field: f.bore.path().to_owned(),
            size: Size::drawn(value, text),
            removed: Removed::Nothing,
        })
    });
    let named = !(f.bore.is_absent() && f.outside.is_absent());
    named.then(|| Opening {
        id: "firehole".to_owned(),
        hole: outside,
        bush: None,
        place: f.height.known().map(|along| Place {
            along,
            around: datum_angle(),
        }),
    })
}

/// Angles are measured from the middle of the firehole.
fn datum_angle() -> Known<Angle> {
    Known {
        value: Angle::from_deg(0.0),
        given: Given::Chosen {
            between: "the angles of the plan".to_owned(),
            reason: "the firehole is where they are measured from".to_owned(),
            weakest: Origin::Read,
        },
    }
}

fn firebox(plan: &Plan, geometry: Option<&PlateGeometry>) -> Flue {
    let f = &plan.boiler.firebox;
    Flue {
        id: "firebox".to_owned(),
        metal: metal(&f.metal, plan),
        diameter: diameter(&f.outside, &f.bore),
        wall: dimension(&f.wall),
        length: geometry.and_then(|g| g.firebox_length.clone()),
        ovality: dimension(&f.ovality),
        exposure: Exposure::FlameSwept,
        metal_temperature: metal_temperature(plan, Fire::Touches),
        openings: firehole(plan).into_iter().collect(),
        laps: vessel(geometry).map_or_else(Vec::new, lap::of_firebox),
    }
}

pub(crate) fn diameter(outside: &Entry<Size>, bore: &Entry<Size>) -> Option<Diameter> {
    dimension(outside)
        .map(Diameter::Outside)
        .or_else(|| dimension(bore).map(Diameter::Inside))
}

fn fire_tubes(plan: &Plan, geometry: Option<&PlateGeometry>) -> Flue {
    let t = &plan.boiler.tubes;
    Flue {
        id: "tubes".to_owned(),
        metal: metal(&t.metal, plan),
        diameter: dimension(&t.outside).map(Diameter::Outside),
        wall: dimension(&t.wall),
        length: geometry.and_then(|g| g.tube_length.clone()),
        ovality: None,
        exposure: Exposure::Gas,
        metal_temperature: metal_temperature(plan, Fire::Touches),
        openings: Vec::new(),
        laps: Vec::new(),
    }
}

/// The crown of the firebox meets the fire; the upper plate meets what has left it.
fn fire_at(seat: BushSeat) -> Fire {
    match seat {
        BushSeat::LowerTubePlate => Fire::Touches,
        BushSeat::UpperTubePlate | BushSeat::Barrel | BushSeat::FrontEnd | BushSeat::BackEnd => {
            Fire::Away
        }
    }
}

fn nest(plan: &Plan, geometry: &PlateGeometry) -> Nest {
    let tubes = &plan.boiler.tubes;
    Nest {
        layout: geometry.layout,
        field: geometry.field.clone(),
        count: Some(frame::tube_count(geometry)),
        pitch: tubes.pitch.likely(),
        outside: dimension(&tubes.outside),
        // A hole that was taken away again may have been wider than the tube.
        hole: dimension(&tubes.hole)
            .or_else(|| dimension(&tubes.outside).filter(|_| !tubes.hole.is_emptied())),
        wall: dimension(&tubes.wall),
        joint: joint(&tubes.joint),
    }
}

fn plates(plan: &Plan, geometry: &PlateGeometry) -> Vec<TubePlate> {
    let pair = &plan.boiler.tube_plate;
    let nest = nest(plan, geometry);
    [
        (
            "tube-plate.upper",
            &pair.upper,
            &geometry.upper_margin,
            BushSeat::UpperTubePlate,
            "barrel",
        ),
        (
            "tube-plate.lower",
            &pair.lower,
            &geometry.lower_margin,
            BushSeat::LowerTubePlate,
            "firebox",
        ),
    ]
    .into_iter()
    .map(|(id, plate, margin, seat, closes)| TubePlate {
        id: id.to_owned(),
        metal: metal(&plate.metal, plan),
        thickness: dimension(&plate.thickness),
        nest: nest.clone(),
        flange: frame::flange(plate, closes),
        openings: bushes_on(plan, seat),
        margin: margin.clone(),
        metal_temperature: metal_temperature(plan, fire_at(seat)),
    })
    .collect()
}
