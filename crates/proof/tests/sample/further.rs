//! Invented ends, girders and cross tubes, to be hung on the sample.

use super::{celsius, exact, flange, length};
use proof::{
    Boiler, CrossTubes, Curve, Dish, End, EndShape, Exposure, Feet, Girder, Joint, Metal, Pipe,
    Pressed, Standing,
};

/// A flat end of the barrel, 7 mm thick.
pub fn flat_end() -> End {
    End {
        id: "end.flat".into(),
        metal: Metal::Copper,
        thickness: Some(exact("end.thickness", 7.0)),
        closes: "barrel".into(),
        flange: Some(flange("barrel")),
        shape: EndShape::Flat,
        stayed: None,
        openings: Vec::new(),
        metal_temperature: celsius(159.0),
    }
}

/// A dished end of the barrel: crown 100, knuckle 12, plate 3 mm.
pub fn dished_end() -> End {
    End {
        id: "end.dished".into(),
        thickness: Some(exact("dish.thickness", 3.0)),
        shape: EndShape::Dished(Box::new(dish())),
        ..flat_end()
    }
}

pub fn dish() -> Dish {
    Dish {
        curve: Curve::Torisphere,
        crown: Some(exact("dish.crown", 100.0)),
        knuckle: Some(exact("dish.knuckle", 12.0)),
        pressed: Pressed::Hollow,
        exposure: Some(Exposure::Gas),
    }
}

/// Girders of steel: 6 mm of web, 15 deep, 60 long, 20 apart.
pub fn girder() -> Girder {
    Girder {
        id: "girders".into(),
        metal: Metal::Steel,
        depth: Some(exact("girder.depth", 15.0)),
        thickness: Some(exact("girder.thickness", 6.0)),
        span: Some(length("girder.span", 60.0)),
        pitch: Some(length("girder.pitch", 20.0)),
        feet: Feet::OnPlates(Box::new(standing())),
        metal_temperature: celsius(159.0),
    }
}

pub fn standing() -> Standing {
    Standing {
        foot: Some(exact("girder.foot", 8.0)),
        plate: Some(exact("plate.thickness", 3.0)),
        metal: Metal::Steel,
        pitch: Some(length("nest.pitch", 16.0)),
        hole: Some(exact("tube.outside", 10.0)),
        length: Some(length("firebox.length", 60.0)),
    }
}

/// Cross tubes of steel, 25 by 7 mm.
pub fn cross_tubes() -> CrossTubes {
    CrossTubes {
        id: "cross-tubes".into(),
        metal: Metal::Steel,
        flue: "firebox".into(),
        count: None,
        outside: Some(exact("cross.outside", 25.0)),
        wall: Some(exact("cross.wall", 7.0)),
        length: Some(length("cross.length", 75.0)),
        joint: Joint::SeenBothSides,
        metal_temperature: celsius(159.0),
    }
}

/// A steam pipe of copper, 10 by 1.2 mm.
pub fn pipe() -> Pipe {
    Pipe {
        id: "pipe.steam".into(),
        metal: Metal::Copper,
        outside: Some(exact("pipe.outside", 10.0)),
        wall: Some(exact("pipe.wall", 1.2)),
        metal_temperature: celsius(159.0),
    }
}

/// Hangs all of these on a boiler.
pub fn furnished(mut boiler: Boiler) -> Boiler {
    boiler.ends = vec![flat_end(), dished_end()];
    boiler.girders = vec![girder()];
    boiler.cross_tubes = vec![cross_tubes()];
    boiler.pipes = vec![pipe()];
    boiler.filler = Some("Ag 155".to_owned());
    boiler
}
