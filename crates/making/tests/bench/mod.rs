#![allow(missing_docs, unreachable_pub)]
//! An invented workshop and two invented bushes.

use formulas::cutting::CuttingMetal;
use making::workshop::{
    Dial, Drill, DrillingMachine, Hold, Holder, Lathe, Reamer, ReamerDrive, Speeds, Workshop,
};
use making::{Piece, Reads, Service};
use plant::part::{
    Bar, CrossDepth, CrossHole, End, Feature, Finish, Form, Point, Span, Surface, Thread, Turned,
};
use reckoning::Known;
use reckoning::quantity::drill::{LETTER_DRILLS, NUMBER_DRILLS};
use reckoning::quantity::{Angle, Length, Ratio, Rotation};

pub fn mm(x: f64) -> Length {
    Length::from_mm(x)
}

fn holder(hold: Hold, swing: f64, takes: (f64, f64), grip: f64) -> Holder {
    let typed = format!("{swing} mm");
    Holder {
        hold,
        swing: Known::from_plan(mm(swing), "holding.run-out", typed),
        takes: (mm(takes.0), mm(takes.1)),
        grip: mm(grip),
    }
}

fn drills() -> Vec<Drill> {
    let metric = (10..=130).map(|n| Drill {
        name: format!("{:.1} mm", f64::from(n) / 10.0),
        diameter: mm(f64::from(n) / 10.0),
    });
    let number = NUMBER_DRILLS.iter().enumerate().map(|(i, inch)| Drill {
        name: format!("No {}", i + 1),
        diameter: Length::from_inch(*inch),
    });
    let letter = ('A'..='Z').zip(LETTER_DRILLS).map(|(l, inch)| Drill {
        name: format!("letter {l}"),
        diameter: Length::from_inch(*inch),
    });
    metric.chain(number).chain(letter).collect()
}

pub fn workshop() -> Workshop {
    let dial = Dial {
        lead: mm(1.0),
        divisions: 50,
    };
    let collets = [4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0]
        .map(|d| holder(Hold::Collet, 0.02, (d - 0.1, d), 25.0));
    let mut holders = vec![
        holder(Hold::ThreeJaw, 0.08, (2.0, 80.0), 18.0),
        holder(Hold::FourJawDialled, 0.01, (3.0, 80.0), 18.0),
    ];
    holders.extend(collets);
    Workshop {
        reads: Reads::Millimetres,
        lathe: Lathe {
            speeds: Speeds::Range(Rotation::from_rpm(100.0), Rotation::from_rpm(2500.0)),
            holders,
            tailstock: Some(Dial {
                lead: mm(1.5),
                divisions: 60,
            }),
            lengths: Some(dial),
            blade: Known::from_plan(mm(2.0), "lathe.blade", "2 mm"),
        },
        drilling: Some(DrillingMachine {
            speeds: Speeds::Steps(
                [480.0, 840.0, 1420.0, 2500.0]
                    .map(Rotation::from_rpm)
                    .to_vec(),
            ),
            holder: holder(Hold::VBlock, 0.0, (4.0, 40.0), 40.0),
        }),
        drills: drills(),
        reamers: vec![Reamer {
            name: "5 mm reamer".to_owned(),
            diameter: mm(5.0),
            lead: mm(6.0),
            drive: ReamerDrive::Hand,
        }],
        taps: vec!["M10x1".to_owned(), "1/4 x 40 ME".to_owned()],
        dies: vec!["M10x1".to_owned()],
        thread_share: Known::from_plan(Ratio::from_percent(75.0), "threading.share", "75 %"),
    }
}

pub fn cylinder(id: &str, surface: Surface, span: (f64, f64), diameter: f64) -> Feature {
    Feature::new(
        id,
        Form::cylinder(surface, Span::mm(span.0, span.1), mm(diameter)),
    )
}

pub fn drilled(id: &str, from: End, mouth: f64, size: (f64, f64)) -> Feature {
    let form = Form::Drilled {
        from,
        mouth: mm(mouth),
        diameter: mm(size.0),
        depth: mm(size.1),
        point: Point::drill(),
    };
    Feature::new(id, form)
}

pub fn thread(id: &str, surface: Surface, span: (f64, f64), named: &str) -> Feature {
    let known = formulas::thread::Thread::read(named).expect(named);
    let form = Form::Threaded {
        surface,
        span: Span::mm(span.0, span.1),
        thread: Thread {
            designation: known.name.clone(),
            major: known.major,
            core: known.root(),
            pitch: known.pitch,
        },
    };
    Feature::new(id, form)
}

pub fn cross(id: &str, z: f64, diameter: f64) -> Feature {
    let hole = CrossHole {
        z: mm(z),
        azimuth: Angle::from_deg(0.0),
        offset: mm(0.0),
        diameter: mm(diameter),
        depth: CrossDepth::NearWall,
    };
    Feature::new(id, Form::Cross(hole))
}

pub fn piece(id: &str, bar: f64, length: f64, features: &[Feature]) -> Piece {
    let shape = Turned::finished(Bar::Round(mm(bar)), Span::mm(0.0, length), features);
    Piece {
        id: id.to_owned(),
        shape: shape.expect("a shape"),
        metal: CuttingMetal::Bronze,
        least_wall: Known::from_plan(mm(1.0), "least-wall", "1 mm"),
        service: Service::Pressure,
    }
}

/// A threaded spigot, a head, a blind reamed bore, and a cross hole into it.
pub fn dryer_bush() -> Piece {
    let chamfer = Form::Turned {
        surface: Surface::Outside,
        span: Span::mm(0.0, 1.0),
        from: mm(8.0),
        to: mm(10.0),
    };
    piece(
        "dryer-bush",
        16.0,
        21.0,
        &[
            cylinder("spigot", Surface::Outside, (0.0, 9.0), 10.0).true_to("true", mm(0.05)),
            thread("spigot-thread", Surface::Outside, (0.0, 8.0), "M10x1"),
            Feature::new("spigot-chamfer", chamfer),
            cylinder("head", Surface::Outside, (9.0, 21.0), 14.0),
            drilled("seat", End::Low, 0.0, (5.0, 16.0))
                .finished(Finish::Reamed)
                .true_to("true", mm(0.05)),
            cross("inlet", 15.0, 3.0),
        ],
    )
}

/// A plain spigot, a head tapped for a fitting, a through bore, and a cross hole into it.
pub fn tapped_bush() -> Piece {
    piece(
        "tapped-bush",
        18.0,
        22.0,
        &[
            cylinder("spigot", Surface::Outside, (0.0, 10.0), 12.0).true_to("true", mm(0.1)),
            cylinder("head", Surface::Outside, (10.0, 22.0), 16.0),
            drilled("bore", End::Low, 0.0, (3.0, 24.0)),
            drilled("tapping", End::High, 22.0, (5.5, 12.0)),
            thread("plug", Surface::Inside, (14.0, 22.0), "1/4 x 40 ME").true_to("true", mm(0.1)),
            cross("vent", 7.0, 2.0),
        ],
    )
}
