//! Ends, girders, threads and a long stay for the sample, of 5 bar and a barrel of 100 mm.

use super::{celsius, exact, flange, length};
use formulas::thread::Thread;
use proof::{
    Bare, Curve, Dish, End, EndShape, Feet, Girder, Joint, Metal, Pressed, Screwed, Standing, Stay,
    StayEnds, StayRun,
};
use reckoning::Known;
use reckoning::quantity::Area;

/// An end of the barrel.
pub fn end(id: &str, thickness: f64, shape: EndShape) -> End {
    End {
        id: id.into(),
        metal: Metal::Copper,
        thickness: Some(exact(&format!("{id}.thickness"), thickness)),
        closes: "barrel".into(),
        flange: Some(flange("barrel")),
        shape,
        stayed: None,
        openings: Vec::new(),
        metal_temperature: celsius(160.0),
    }
}

/// A disc of 8 mm.
pub fn flat() -> End {
    let mut flat = end("end.flat", 8.0, EndShape::Flat);
    if let Some(flange) = &mut flat.flange {
        flange.height = Some(exact("flange.height", 24.0));
    }
    let mut bush = super::bush("bush.end", 0.0, 0.0);
    bush.place = None;
    flat.openings = vec![bush];
    flat
}

/// A ring of 3 mm round the firebox of 75 mm.
pub fn ring() -> End {
    end(
        "end.ring",
        3.0,
        EndShape::Annular {
            flue: "firebox".into(),
            off: Some(exact("flue.below", 0.0)),
            joint: Joint::SeenBothSides,
        },
    )
}

/// A disc of 3 mm among stays.
pub fn stayed() -> End {
    let mut stayed = end("end.stayed", 3.0, EndShape::Flat);
    stayed.stayed = Some(Bare {
        circle: length("stays", 28.0),
        side: length("stays", 20.0),
    });
    stayed
}

/// A dish of 3 mm.
pub fn dished(curve: Curve, pressed: Pressed) -> End {
    let dish = Dish {
        curve,
        crown: Some(exact("dish.crown", 100.0)),
        knuckle: Some(exact("dish.knuckle", 10.0)),
        pressed,
        exposure: None,
    };
    end("end.dished", 3.0, EndShape::Dished(Box::new(dish)))
}

pub fn all() -> Vec<End> {
    vec![
        flat(),
        ring(),
        stayed(),
        dished(Curve::Hemisphere, Pressed::Hollow),
    ]
}

/// The girder of the strength sheet: 15 mm deep, 6 mm thick, 60 mm long, 20 mm apart.
pub fn girder() -> Girder {
    Girder {
        id: "girder".into(),
        metal: Metal::Copper,
        depth: Some(exact("girder.depth", 16.0)),
        thickness: Some(exact("girder.thickness", 6.0)),
        span: Some(length("girder.span", 60.0)),
        pitch: Some(length("girder.pitch", 20.0)),
        feet: Feet::OnPlates(Box::new(Standing {
            foot: Some(exact("girder.foot", 6.0)),
            plate: Some(exact("girder.plate", 3.0)),
            metal: Metal::Copper,
            pitch: Some(length("tubes.pitch", 16.0)),
            hole: Some(exact("tubes.hole", 10.0)),
            length: Some(length("firebox.top", 60.0)),
        })),
        metal_temperature: celsius(165.0),
    }
}

/// A valve of M10 x 1 in a bush of 11.5 mm.
pub fn screwed() -> Screwed {
    Screwed {
        id: "bush.safety".into(),
        thread: Thread::read("M10x1").ok(),
        bush: Metal::PhosphorBronze,
        screw: Metal::PhosphorBronze,
        engaged: Some(length("bush.length", 11.5)),
        metal_temperature: celsius(159.0),
    }
}

/// A stay of 5 mm from end to end.
pub fn long_stay() -> Stay {
    let area = |mm2: f64| Some(Known::from_plan(Area::from_mm2(mm2), "area", ""));
    Stay {
        id: "stay.long".into(),
        metal: Metal::Copper,
        run: StayRun::EndToEnd,
        diameter: Some(exact("stay.diameter", 5.0)),
        bore: None,
        field: area(400.0),
        plate: Some(exact("end.thickness", 5.0)),
        ends: StayEnds::Brazed,
        joint: Joint::SeenBothSides,
        beside: area(765.8),
        length: Some(length("stay.length", 250.0)),
        height: None,
        metal_temperature: celsius(160.0),
    }
}
