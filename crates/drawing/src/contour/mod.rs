//! Lines of equal stress in the section of a round part: black on white, each level by its label,
//! no colours.
//!
//! Only what lies in the window asked is drawn. Labels stand outside the metal, on leaders to the
//! ends of lines on faces that look upwards, to the right or to the left; a line without one is a
//! step from the lines beside it.

mod chain;
mod label;
mod levels;
mod lines;

use solid::{Body, Kind, Solved};

use crate::layout::{scale_for, title_line};
use crate::sheet::{At, Layer, Mark, Sheet, at};
use lines::Field;

/// Room on the paper for the section, mm.
const FRAME: (f64, f64) = (150.0, 110.0);
/// Half the size of the cross at the greatest stress, mm.
const CROSS: f64 = 1.5;
/// How far a straight line may stand from the points that it replaces, mm.
const CLOSE: f64 = 0.02;

/// Which way the axis of the part runs on the paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Upwards {
    /// Along the axis as it is counted.
    Along,
    /// Against it.
    Against,
}

/// A picture of a stress.
#[derive(Clone, Debug)]
pub struct Picture<'a> {
    /// Title.
    pub title: &'a str,
    /// Mesh.
    pub body: &'a Body,
    /// Stresses.
    pub solved: &'a Solved,
    /// Which stress.
    pub kind: Kind,
    /// Lower left and upper right of what is drawn, distance from the axis and place along it, mm.
    pub window: [[f64; 2]; 2],
    /// Which way is up.
    pub upwards: Upwards,
    /// What is said at the cross that marks the greatest stress.
    pub peak: &'a str,
}

/// The section with its lines of equal stress.
#[must_use]
pub fn section(picture: &Picture<'_>) -> Sheet {
    let field = Field::of(picture);
    let (wide, high) = field.size();
    let scale = scale_for(wide, high, FRAME);
    let mut sheet = Sheet::new(picture.title, scale);
    let paper = |p: [f64; 2]| match picture.upwards {
        Upwards::Along => at(p[0] * scale, p[1] * scale),
        Upwards::Against => at(p[0] * scale, -p[1] * scale),
    };
    let drawn = |lines: Vec<Vec<[f64; 2]>>| -> Vec<Vec<At>> {
        let on_paper = |line: Vec<[f64; 2]>| line.into_iter().map(paper).collect::<Vec<At>>();
        lines
            .into_iter()
            .map(|line| chain::straightened(&on_paper(line), CLOSE))
            .collect()
    };
    let outline = drawn(field.outline());
    for line in &outline {
        sheet.draw(Layer::Outline, Mark::Open(line.clone()));
    }
    for line in drawn(field.joints()) {
        sheet.draw(Layer::Hidden, Mark::Open(line));
    }
    let rim = drawn(field.rim());
    let mut labels = label::Labels::new(&rim);
    if let Some((place, _)) = field.greatest() {
        let p = paper(place);
        cross(&mut sheet, p);
        labels.peak(p, picture.peak);
    }
    let levels = field.levels();
    for level in &levels {
        let lines = drawn(field.lines(*level));
        for line in &lines {
            sheet.draw(Layer::Thin, Mark::Open(line.clone()));
        }
        labels.level(&levels::shown(*level), &lines);
    }
    labels.write(&mut sheet);
    finish(sheet, &levels, field.off_axis())
}

/// The mark of the greatest stress.
fn cross(sheet: &mut Sheet, p: At) {
    for (x, y) in [(CROSS, CROSS), (CROSS, -CROSS)] {
        let stroke = Mark::Line(p.moved(-x, -y), p.moved(x, y));
        sheet.draw(Layer::Outline, stroke);
    }
}

fn finish(mut sheet: Sheet, levels: &[f64], from_axis: f64) -> Sheet {
    let step = match levels {
        [first, second, ..] => format!("lines every {} MPa", levels::shown(second - first)),
        _ => "no lines".to_owned(),
    };
    let axis = crate::lettering::short(from_axis);
    let view = format!("half section, its left edge {axis} from the axis · {step}, labels in MPa");
    title_line(&mut sheet, &view);
    sheet
}

/// A kind of stress in words.
#[must_use]
pub fn kind_words(kind: Kind) -> &'static str {
    match kind {
        Kind::Radial => "stress across the axis",
        Kind::Axial => "stress along the axis",
        Kind::Hoop => "hoop stress",
        Kind::Shear => "shear stress",
        Kind::VonMises => "equivalent stress by distortion",
        Kind::Intensity => "stress intensity, the greatest difference of principal stresses",
    }
}
