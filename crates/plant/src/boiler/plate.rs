//! A flanged plate standing in a tube: what the plan says of it, and its section at any place
//! along the tube. Places along a tube are called heights here, whichever way it lies.

use plan::section::{FlangeSide, TubePlate};
use reckoning::quantity::Length;
use reckoning::{Known, Origin};

use crate::known::{Reading, chosen, weakest};
use crate::part::Stands;

/// Which end of a boiler a plate closes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum End {
    /// The barrel at the top, water below it.
    Upper,
    /// The firebox at its top, water above it.
    Lower,
    /// A horizontal barrel at its front, where lengths begin.
    Front,
    /// A horizontal barrel at its back.
    Back,
}

impl End {
    fn words(self) -> &'static str {
        match self {
            Self::Upper => "the upper tube plate",
            Self::Lower => "the lower tube plate",
            Self::Front => "the front end",
            Self::Back => "the back end",
        }
    }
}

/// A plate in place. Heights are above the datum of the boiler, or behind the front of one that
/// lies.
#[derive(Clone, Debug)]
pub(crate) struct Standing {
    /// Inside radius of the tube that it closes, mm.
    pub(crate) radius: f64,
    /// Height of its lower face, mm.
    pub(crate) low: f64,
    /// Thickness, mm.
    pub(crate) thickness: f64,
    /// The flange: which way it stands, inside radius, height over all, mm.
    pub(crate) flange: Option<(Stands, f64, f64)>,
}

impl Standing {
    /// Height of its upper face, mm.
    pub(crate) fn high(&self) -> f64 {
        self.low + self.thickness
    }

    /// Depth below the convex face, towards the end of the flange, mm.
    fn depth(&self, z: f64) -> f64 {
        match self.flange {
            Some((Stands::Up, ..)) | None => z - self.low,
            Some((Stands::Down, ..)) => self.high() - z,
        }
    }

    /// Lowest and highest metal, mm.
    pub(crate) fn extent(&self) -> (f64, f64) {
        match self.flange {
            None => (self.low, self.high()),
            Some((Stands::Up, _, height)) => (self.low, self.low + height),
            Some((Stands::Down, _, height)) => (self.high() - height, self.high()),
        }
    }

    /// Radius of the plate over its convex side at a height, mm; none where it has no metal.
    pub(crate) fn outer(&self, z: f64) -> Option<f64> {
        let (depth, bend) = (self.depth(z), self.bend());
        self.covers(z).then(|| {
            if depth >= bend {
                self.radius
            } else {
                self.radius - bend + (bend * bend - (bend - depth).powi(2)).sqrt()
            }
        })
    }

    /// Radius of the hollow of the flange at a height, mm; zero in the thickness of the plate,
    /// none where it has no metal.
    pub(crate) fn hollow(&self, z: f64) -> Option<f64> {
        let (depth, bend) = (self.depth(z), self.bend());
        self.covers(z).then(|| {
            if depth <= self.thickness {
                0.0
            } else if depth >= bend {
                self.radius - self.thickness
            } else {
                let inside = bend - self.thickness;
                self.radius - bend + (inside * inside - (bend - depth).powi(2)).sqrt()
            }
        })
    }

    /// Radius over the bend, mm; zero for a flat plate.
    pub(crate) fn bend(&self) -> f64 {
        self.flange
            .map_or(0.0, |(_, inside, _)| inside + self.thickness)
    }

    /// Length over which it touches its tube, mm.
    pub(crate) fn lap(&self) -> f64 {
        self.flange
            .map_or(self.thickness, |(_, _, height)| height - self.bend())
    }

    fn covers(&self, z: f64) -> bool {
        let (low, high) = self.extent();
        low <= z && z <= high
    }

    /// Heights at which its section changes form, mm.
    pub(crate) fn marks(&self) -> Vec<f64> {
        let (low, high) = self.extent();
        let mut marks = vec![low, high, self.low, self.high()];
        match self.flange {
            Some((Stands::Up, ..)) => marks.push(self.low + self.bend()),
            Some((Stands::Down, ..)) => marks.push(self.high() - self.bend()),
            None => {}
        }
        marks
    }
}

/// A plate with the sizes it was drawn from.
#[derive(Clone, Debug)]
pub(crate) struct PlateSizes {
    pub(crate) thickness: Known<Length>,
    pub(crate) flange: Option<FlangeSizes>,
    pub(crate) set_in: Known<Length>,
}

/// A flange with the sizes it was drawn from.
#[derive(Clone, Debug)]
pub(crate) struct FlangeSizes {
    pub(crate) stands: Known<Stands>,
    pub(crate) inside_radius: Known<Length>,
    pub(crate) height: Known<Length>,
}

impl PlateSizes {
    /// The weakest origin among its sizes.
    pub(crate) fn weakest(&self) -> Origin {
        let own = weakest(&[&self.thickness, &self.set_in]);
        self.flange.as_ref().map_or(own, |f| {
            let sizes = weakest(&[&f.inside_radius, &f.height]);
            own.max(sizes).max(f.stands.given.origin())
        })
    }
}

/// A plate in its place: `radius` inside its tube and `low`, the height of its lower face, in
/// millimetres.
pub(crate) fn standing(plate: &PlateSizes, radius: f64, low: f64) -> Standing {
    Standing {
        radius,
        low,
        thickness: plate.thickness.value.mm(),
        flange: plate.flange.as_ref().map(|f| {
            (
                f.stands.value,
                f.inside_radius.value.mm(),
                f.height.value.mm(),
            )
        }),
    }
}

/// Reads a plate; none where a size is missing.
pub(crate) fn plate(reading: &mut Reading, plate: &TubePlate, end: End) -> Option<PlateSizes> {
    let wanted = end.words();
    let thickness = reading.size(&plate.thickness, wanted)?;
    let height = reading.size(&plate.flange_height, wanted)?;
    let flange = if height.value.mm() > 0.0 {
        let inside_radius = reading.size(&plate.inside_radius, wanted)?;
        Some(FlangeSizes {
            stands: side(reading, plate, end),
            inside_radius,
            height,
        })
    } else {
        None
    };
    if reading.taken_away(&plate.set_in, wanted) {
        return None;
    }
    let set_in = plate
        .set_in
        .likely()
        .unwrap_or_else(|| set_in(end, &thickness, flange.as_ref()));
    Some(PlateSizes {
        thickness,
        flange,
        set_in,
    })
}

/// Which way the flange stands; where nothing is said, away from the water, where its joint can be
/// fed and seen.
fn side(reading: &mut Reading, plate: &TubePlate, end: End) -> Known<Stands> {
    let entry = &plate.flange;
    reading.want(entry, end.words());
    match entry.typed() {
        Some(typed) => Known {
            value: stands(end, typed.value),
            given: reckoning::Given::Plan {
                field: entry.path().to_owned(),
                typed: typed.text.clone(),
            },
        },
        None => chosen(
            stands(end, FlangeSide::Outward),
            "the side of the flange",
            "nothing is said: away from the water, where its joint can be fed and seen",
        ),
    }
}

/// The upper plate has the water below it, the lower plate above; a front has it behind, a back
/// before it.
fn stands(end: End, side: FlangeSide) -> Stands {
    match (end, side) {
        (End::Upper | End::Back, FlangeSide::Inward)
        | (End::Lower | End::Front, FlangeSide::Outward) => Stands::Down,
        (End::Upper | End::Back, FlangeSide::Outward)
        | (End::Lower | End::Front, FlangeSide::Inward) => Stands::Up,
    }
}

/// Where nothing is said, the plate stands so that neither it nor its flange comes out of the end
/// of the tube more than its own thickness: a flange that points into the tube leaves the dry face
/// flush, one that points out of it ends flush.
fn set_in(end: End, thickness: &Known<Length>, flange: Option<&FlangeSizes>) -> Known<Length> {
    // Of these only the front closes a tube whose end looks towards falling heights.
    let out = match end {
        End::Upper | End::Lower | End::Back => Stands::Up,
        End::Front => Stands::Down,
    };
    match flange.filter(|f| f.stands.value == out) {
        Some(f) => chosen(
            match end {
                // The dry face is the one from which its flange rises.
                End::Upper | End::Front | End::Back => f.height.value - thickness.value,
                End::Lower => f.height.value,
            },
            "how far the plate is set in",
            "nothing is said: the end of its flange taken as flush with the end of the tube",
        ),
        None => chosen(
            Length::from_mm(0.0),
            "how far the plate is set in",
            "nothing is said: its dry face taken as flush with the end of the tube",
        ),
    }
}

/// What is set in or reaches out by nothing where the plan does not say.
pub(crate) fn or_flush(given: Option<Known<Length>>, what: &'static str) -> Known<Length> {
    given.unwrap_or_else(|| {
        chosen(
            Length::from_mm(0.0),
            "how far it is set in or reaches out",
            format!("nothing is said: {what} taken as flush"),
        )
    })
}
