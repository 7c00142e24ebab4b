//! The fire tubes of a plan: which places they take.

use plan::Plan;
use plan::section::TubeLayout;
use reckoning::Known;
use reckoning::quantity::Length;

use super::frame::Frame;
use super::sizes::Sizes;
use crate::known::{Reading, Round, chosen, shape};
use crate::layout::{At, Centre, Circle, Pattern, places, widest_margin};

/// The tubes in their plates.
#[derive(Clone, Debug)]
pub struct Nest {
    /// How they stand.
    pub pattern: Pattern,
    /// Middles of the tubes, `tube.1` first.
    pub tubes: Vec<At>,
    /// Places that keep every limit, whether a tube stands there or not.
    pub fit: usize,
    /// Greatest distance of a middle from the axis at which every limit is kept.
    pub reach: Length,
    /// How many tubes the plan asks for, or were chosen.
    pub count: Known<u32>,
    /// Outside diameter of a tube.
    pub outside: Known<Length>,
    /// Bore of a tube.
    pub bore: Known<Length>,
    /// Diameter of the holes in the plates.
    pub hole: Known<Length>,
    /// Length of a tube, end to end.
    pub length: Option<Known<Length>>,
    /// Length of a tube between the wet faces of the plates.
    pub between_plates: Option<Known<Length>>,
    /// Widest bare strip between tubes and wall, in the upper plate.
    pub upper_margin: Option<Known<Length>>,
    /// The same in the lower plate.
    pub lower_margin: Option<Known<Length>>,
}

/// What limits the places.
struct Limits {
    /// Greatest distance of a middle from the axis at which margin and bend are kept, mm.
    kept: f64,
    /// Greatest distance at which the hole still lies inside the wall, mm.
    possible: f64,
    /// In words.
    words: String,
}

impl Nest {
    /// How many tubes of another outside diameter the plates hold in the same pattern, with the
    /// same metal between neighbours and the same margin; `None` for rings, which are drawn.
    #[must_use]
    pub fn fit_of(&self, outside: Length) -> Option<usize> {
        let wider = outside - self.outside.value;
        let pattern = match self.pattern {
            Pattern::Triangles { pitch } => Pattern::Triangles {
                pitch: pitch + wider,
            },
            Pattern::Squares { pitch } => Pattern::Squares {
                pitch: pitch + wider,
            },
            Pattern::Rings(_) => return None,
        };
        Some(best(&pattern, self.reach.mm() - wider.mm() / 2.0).1)
    }

    /// The nest that the plan describes, where pattern and tubes are known and the plates hold it.
    pub(crate) fn of(
        plan: &Plan,
        sizes: &Sizes,
        frame: &Frame,
        reading: &mut Reading,
    ) -> Option<Self> {
        // A tube without a bore is told as a part without a shape.
        let tube = sizes
            .tube
            .as_ref()
            .filter(|tube| tube.bore.value.mm() > 0.0)?;
        let pattern = pattern(plan, reading)?;
        let hole = hole(plan, tube, reading)?;
        let limits = limits(plan, frame, (tube.outside.value, hole.value), reading)?;
        let (centre, fit) = best(&pattern, limits.kept);
        let possible = places(&pattern, centre, Length::from_mm(limits.possible));
        let count = count(plan, &pattern, fit, (centre, &limits));
        let tubes: Vec<At> = possible.into_iter().take(count.value as usize).collect();
        let margin = |wall: f64| margin(&tubes, tube, wall, frame);
        let (upper_margin, lower_margin) = (margin(frame.barrel), margin(frame.firebox_bore));
        let (length, between_plates) = lengths(sizes, frame).unzip();
        Some(Self {
            pattern,
            fit,
            reach: Length::from_mm(limits.kept),
            count,
            outside: tube.outside.clone(),
            bore: tube.bore.clone(),
            hole,
            length,
            between_plates,
            upper_margin,
            lower_margin,
            tubes,
        })
    }
}

/// The holes in the plates: as the plan says, else as wide as the tube.
fn hole(plan: &Plan, tube: &Round, reading: &mut Reading) -> Option<Known<Length>> {
    let hole = &plan.boiler.tubes.hole;
    if reading.taken_away(hole, "the holes in the tube plates") {
        return None;
    }
    Some(hole.likely().unwrap_or_else(|| {
        chosen(
            tube.outside.value,
            "the diameter of the holes in the tube plates",
            "nothing is said: the outside of the tube",
        )
    }))
}

fn margin(tubes: &[At], tube: &Round, wall: f64, frame: &Frame) -> Option<Known<Length>> {
    let found = widest_margin(tubes, tube.outside.value, Length::from_mm(wall))?;
    let weakest = frame.weakest.max(tube.outside.given.origin());
    Some(shape(
        found,
        "the largest circle between the tubes and the wall round the plate",
        weakest,
    ))
}

/// Length of a tube end to end, and between the wet faces of the plates.
fn lengths(sizes: &Sizes, frame: &Frame) -> Option<(Known<Length>, Known<Length>)> {
    let between = frame.between_plates();
    let plates = frame.upper.thickness + frame.lower.thickness;
    let whole = between + plates + 2.0 * sizes.projection.value.mm();
    let known = |mm: f64, of: &str| shape(Length::from_mm(mm), of, frame.weakest);
    let end_to_end = "from dry face to dry face of the tube plates, with what reaches beyond";
    (between > 0.0).then(|| {
        (
            known(whole, end_to_end),
            known(between, "from wet face to wet face of the tube plates"),
        )
    })
}

fn pattern(plan: &Plan, reading: &mut Reading) -> Option<Pattern> {
    let t = &plan.boiler.tubes;
    let wanted = "the tube nest";
    reading.want(&t.layout, wanted);
    match t.layout.value()? {
        TubeLayout::Triangular => Some(Pattern::Triangles {
            pitch: reading.size(&t.pitch, wanted)?.value,
        }),
        TubeLayout::Square => Some(Pattern::Squares {
            pitch: reading.size(&t.pitch, wanted)?.value,
        }),
        TubeLayout::Rings => {
            let circles: Option<Vec<Circle>> = t
                .rings
                .iter()
                .map(|r| {
                    reading.want(&r.count, wanted);
                    let start = r.start.value();
                    Some(Circle {
                        count: r.count.value()?,
                        diameter: reading.size(&r.circle, wanted)?.value,
                        // Where a ring begins matters to nothing but the drawing: at the firehole.
                        start: start.unwrap_or(reckoning::quantity::Angle::from_rad(0.0)),
                    })
                })
                .collect();
            let circles = circles?;
            if circles.is_empty() {
                reading.miss("boiler.tubes.ring", wanted);
            }
            (!circles.is_empty()).then_some(Pattern::Rings(circles))
        }
    }
}

fn limits(
    plan: &Plan,
    frame: &Frame,
    (outside, hole): (Length, Length),
    reading: &mut Reading,
) -> Option<Limits> {
    let margin = reading
        .size(&plan.boiler.tubes.margin, "the tube nest")?
        .value
        .mm();
    let (outside, hole) = (outside.mm() / 2.0, hole.mm() / 2.0);
    let mut kept = f64::INFINITY;
    let mut possible = f64::INFINITY;
    for plate in [&frame.upper, &frame.lower] {
        let flat = plate.radius - plate.bend();
        kept = kept.min(plate.radius - margin - outside);
        // One thickness of flat plate between the hole and the bend, where there is one.
        if plate.flange.is_some() {
            kept = kept.min(flat - plate.thickness - hole);
        }
        possible = possible.min(plate.radius - outside);
    }
    let words = format!(
        "the margin of {} and one thickness of flat plate between hole and bend",
        plan.boiler
            .tubes
            .margin
            .typed()
            .map_or_else(String::new, |t| t.value.drawn.text.clone())
    );
    Some(Limits {
        kept,
        possible,
        words,
    })
}

/// What to put in the middle so that most tubes fit, and how many fit.
fn best(pattern: &Pattern, kept: f64) -> (Centre, usize) {
    let mut best = (Centre::Tube, 0);
    if kept < 0.0 {
        return best;
    }
    for centre in Centre::ALL {
        let fit = places(pattern, centre, Length::from_mm(kept)).len();
        if fit > best.1 {
            best = (centre, fit);
        }
    }
    best
}

fn count(
    plan: &Plan,
    pattern: &Pattern,
    fit: usize,
    (centre, limits): (Centre, &Limits),
) -> Known<u32> {
    let entry = &plan.boiler.tubes.count;
    if let Some(typed) = entry.typed() {
        return Known {
            value: typed.value,
            given: reckoning::Given::Plan {
                field: entry.path().to_owned(),
                typed: typed.text.clone(),
            },
        };
    }
    if let Pattern::Rings(circles) = pattern {
        let all: u32 = circles.iter().map(|c| c.count).sum();
        return shape(all, "the rings listed", reckoning::Origin::Read);
    }
    let most = u32::try_from(fit).unwrap_or(u32::MAX);
    chosen(
        most,
        format!("the places that keep {}", limits.words),
        format!("as many as there are, {}", centre.words()),
    )
}
