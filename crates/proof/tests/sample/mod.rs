//! An invented small vertical boiler, and tools to break it.
#![allow(
    dead_code,
    unreachable_pub,
    reason = "each test file uses a part of this module"
)]

pub mod ends;
pub mod further;
pub mod mounted;

use proof::{
    Boiler, Bush, Coil, CoilHeat, CrossTubes, Diameter, Dimension, Exposure, FeedMeans, Field,
    Firehole, Flange, Flue, Frame, Joint, Lap, Layout, Metal, Nest, OURS, Opening, Place, Points,
    Proof, Removed, Ring, RuleSet, SafetyValve, Seam, Service, Shell, Stay, StayEnds, StayRun,
    Stock, StockSize, TubePlate, prove,
};
use reckoning::quantity::{Angle, Area, Gauge, HeatFlux, Length, Ratio, Temperature};
use reckoning::{Finding, Known, Size, Tolerance, Typed};

pub fn mm(x: f64) -> Length {
    Length::from_mm(x)
}

/// A drawn size whose tolerance is nothing.
pub fn exact(field: &str, x: f64) -> Dimension {
    let mut size = Size::drawn(mm(x), format!("{x} mm"));
    size.tolerance = Some(Tolerance {
        lower: mm(0.0),
        upper: mm(0.0),
    });
    Dimension {
        field: field.to_owned(),
        size,
        removed: Removed::Nothing,
    }
}

/// A drawn size whose tolerance nobody stated.
pub fn loose(field: &str, x: f64) -> Dimension {
    Dimension {
        field: field.to_owned(),
        size: Size::drawn(mm(x), format!("{x} mm")),
        removed: Removed::Nothing,
    }
}

/// A size as measured.
pub fn made(field: &str, x: f64) -> Dimension {
    let mut size = Size::drawn(mm(x), format!("{x} mm"));
    size.made = Some(Typed {
        value: mm(x),
        text: format!("{x} mm"),
    });
    Dimension {
        field: field.to_owned(),
        size,
        removed: Removed::Nothing,
    }
}

pub fn length(field: &str, x: f64) -> Known<Length> {
    Known::from_plan(mm(x), field, format!("{x} mm"))
}

pub fn celsius(x: f64) -> Option<Known<Temperature>> {
    Some(Known::from_plan(
        Temperature::from_c(x),
        "metal temperature",
        format!("{x} °C"),
    ))
}

pub fn service(mpa: f64) -> Service {
    Service {
        pressure: Some(Known::from_plan(
            Gauge::from_mpa(mpa),
            "boiler.pressure",
            format!("{mpa} MPa"),
        )),
        coils: vec![heat(320.0, 450.0)],
    }
}

/// How hot the coil of the sample gets, flowing and standing, °C.
pub fn heat(flowing: f64, standing: f64) -> CoilHeat {
    CoilHeat {
        coil: "coil".into(),
        flowing: celsius(flowing),
        standing: celsius(standing),
        flux: Some(Known::from_plan(HeatFlux::from_kw_m2(20.0), "flux", "")),
    }
}

/// Tubes of 10 mm across the firebox.
pub fn cross_tubes() -> CrossTubes {
    CrossTubes {
        id: "cross-tubes".into(),
        metal: Metal::Copper,
        flue: "firebox".into(),
        count: count(3.0),
        outside: Some(exact("cross.outside", 10.0)),
        wall: Some(exact("cross.wall", 0.9)),
        length: Some(length("cross.length", 70.0)),
        joint: Joint::SeenBothSides,
        metal_temperature: celsius(170.0),
    }
}

/// A coil of stainless steel.
pub fn coil() -> Coil {
    Coil {
        id: "coil".into(),
        metal: Metal::Stainless,
        outside: Some(exact("coil.outside", 6.0)),
        wall: Some(exact("coil.wall", 1.0)),
        length: Some(length("coil.length", 400.0)),
        turn: Some(length("coil.turn", 60.0)),
    }
}

pub fn stock() -> Stock {
    let sizes = |all: &[f64]| {
        all.iter()
            .map(|x| StockSize {
                text: format!("{x} mm"),
                least: mm(*x),
            })
            .collect()
    };
    Stock {
        tube_walls: sizes(&[0.9, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0]),
        sheets: sizes(&[1.6, 2.0, 2.5, 3.0, 4.0, 5.0]),
    }
}

pub fn bush(id: &str, along: f64, degrees: f64) -> Opening {
    Opening {
        id: id.to_owned(),
        hole: Some(exact(&format!("{id}.hole"), 20.0)),
        bush: Some(Bush {
            metal: Metal::PhosphorBronze,
            bore: Some(exact(&format!("{id}.bore"), 14.0)),
            stands_out: Some(exact(&format!("{id}.out"), 6.0)),
            stands_in: Some(exact(&format!("{id}.in"), 3.0)),
            joint: Joint::SeenBothSides,
        }),
        place: Some(Place {
            along: length(&format!("{id}.along"), along),
            around: Known::from_plan(Angle::from_deg(degrees), format!("{id}.around"), ""),
        }),
    }
}

pub fn barrel() -> Shell {
    Shell {
        id: "barrel".into(),
        metal: Metal::Copper,
        diameter: Some(Diameter::Inside(exact("barrel.bore", 100.0))),
        wall: Some(exact("barrel.wall", 2.5)),
        seam: Seam::Seamless,
        ends: Joint::SeenBothSides,
        metal_temperature: celsius(159.0),
        openings: vec![
            bush("bush.safety", 20.0, 0.0),
            bush("bush.feed", 100.0, 90.0),
        ],
        laps: vec![Lap {
            of: "end.flat".into(),
            from: length("end.flat", 150.0),
            to: length("end.flat", 170.0),
        }],
    }
}

pub fn plate() -> TubePlate {
    TubePlate {
        id: "plate.upper".into(),
        metal: Metal::Copper,
        thickness: Some(exact("plate.thickness", 3.0)),
        nest: Nest {
            layout: Layout::Triangle,
            field: Field::Even,
            count: count(12.0),
            pitch: Some(length("nest.pitch", 16.0)),
            outside: Some(exact("tube.outside", 10.0)),
            hole: Some(exact("tube.hole", 10.0)),
            wall: Some(exact("tube.wall", 0.9)),
            joint: Joint::SeenBothSides,
        },
        flange: Some(flange("barrel")),
        openings: vec![Opening {
            id: "bush.gauge".into(),
            hole: Some(exact("bush.gauge.hole", 12.0)),
            bush: None,
            place: None,
        }],
        margin: Some(length("plate.margin", 15.0)),
        metal_temperature: celsius(165.0),
    }
}

pub fn count(n: f64) -> Option<Known<Ratio>> {
    Some(Known::from_plan(
        Ratio::from_number(n),
        "tubes.count",
        format!("{n}"),
    ))
}

pub fn flange(closes: &str) -> Flange {
    Flange {
        closes: closes.to_owned(),
        height: Some(exact("flange.height", 17.0)),
        inside_radius: Some(exact("flange.radius", 5.0)),
        points: Some(Points::TowardsWater),
        joint: Joint::SeenBothSides,
    }
}

/// The crown of the firebox.
pub fn crown() -> TubePlate {
    let mut crown = plate();
    crown.id = "plate.lower".into();
    crown.flange = Some(flange("firebox"));
    crown.openings.clear();
    crown
}

pub fn frame() -> Frame {
    Frame {
        shell: "barrel".into(),
        firebox: "firebox".into(),
        crown: "plate.lower".into(),
        upper: "plate.upper".into(),
        ring: Ring {
            id: "foundation-ring".into(),
            metal: Metal::Copper,
            depth: Some(exact("ring.depth", 8.0)),
            joint: Joint::SeenBothSides,
            metal_temperature: celsius(165.0),
        },
        firehole: Some(Firehole {
            id: "firehole".into(),
            joint: Joint::SeenBothSides,
        }),
    }
}

/// A stay across the leg: 20 mm square, 4 mm thick, 12.5 mm long.
pub fn stay() -> Stay {
    Stay {
        id: "stay.one".into(),
        metal: Metal::Copper,
        run: StayRun::AcrossLeg,
        diameter: Some(exact("stay.diameter", 4.0)),
        bore: None,
        field: Some(Known::from_plan(
            Area::from_mm2(400.0),
            "stay.field",
            "20 mm square",
        )),
        plate: Some(exact("firebox.wall", 2.5)),
        ends: StayEnds::Brazed,
        joint: Joint::SeenBothSides,
        beside: None,
        length: Some(length("leg", 12.5)),
        height: Some(length("stay.height", 40.0)),
        metal_temperature: celsius(165.0),
    }
}

pub fn firebox() -> Flue {
    Flue {
        id: "firebox".into(),
        metal: Metal::Copper,
        diameter: Some(Diameter::Outside(exact("firebox.outside", 75.0))),
        wall: Some(exact("firebox.wall", 2.5)),
        length: Some(length("firebox.length", 250.0)),
        ovality: Some(made("firebox.ovality", 0.5)),
        exposure: Exposure::FlameSwept,
        metal_temperature: celsius(170.0),
        openings: vec![Opening {
            id: "firehole".into(),
            hole: Some(exact("firehole.hole", 12.0)),
            bush: None,
            place: None,
        }],
        laps: Vec::new(),
    }
}

pub fn tubes() -> Flue {
    Flue {
        id: "tubes".into(),
        metal: Metal::Copper,
        diameter: Some(Diameter::Outside(exact("tube.outside", 10.0))),
        wall: Some(exact("tube.wall", 0.9)),
        length: Some(length("tube.length", 150.0)),
        ovality: Some(made("tube.ovality", 0.05)),
        exposure: Exposure::Gas,
        metal_temperature: celsius(165.0),
        openings: Vec::new(),
        laps: Vec::new(),
    }
}

pub fn boiler() -> Boiler {
    Boiler {
        shells: vec![barrel()],
        plates: vec![plate(), crown()],
        flues: vec![firebox(), tubes()],
        frame: Some(frame()),
        stays: vec![stay(), ends::long_stay()],
        ends: ends::all(),
        girders: vec![ends::girder()],
        screwed: vec![ends::screwed()],
        cross_tubes: vec![cross_tubes()],
        coils: vec![coil()],
        ..Boiler::default()
    }
}

/// A plain valve set to 5 bar.
pub fn valve() -> SafetyValve {
    SafetyValve {
        id: "safety-valve.one".into(),
        lift_class: None,
        set: Some(Known::from_plan(Gauge::from_bar(5.0), "valve.set", "5 bar")),
        seat: Some(exact("valve.seat", 10.0)),
        bore: None,
        lift: None,
        coefficient: None,
        inlet: Some(exact("bush.bore", 11.0)),
        spring: None,
        pipe: None,
        bore_gone: Removed::Nothing,
        coefficient_gone: Removed::Nothing,
    }
}

pub fn feed() -> FeedMeans {
    FeedMeans {
        id: "feed.hand".into(),
        check_valve: Some(exact("feed.check-valve", 4.0)),
    }
}

/// The whole boiler at 5 bar.
pub fn proof_of(boiler: &Boiler) -> Proof {
    proof_at(boiler, 0.5)
}

pub fn proof_at(boiler: &Boiler, mpa: f64) -> Proof {
    prove(boiler, &service(mpa), &stock(), None)
}

/// The findings of one rule.
pub fn all<'a>(proof: &'a Proof, rule: &str) -> Vec<&'a Finding> {
    proof
        .sets
        .iter()
        .flat_map(|s| &s.findings)
        .filter(|f| f.rule.id == rule)
        .collect()
}

/// The only or first finding of one rule.
pub fn first<'a>(proof: &'a Proof, rule: &str) -> &'a Finding {
    all(proof, rule)
        .first()
        .copied()
        .unwrap_or_else(|| panic!("no finding of {rule}"))
}

pub fn ours() -> &'static RuleSet {
    &OURS
}
