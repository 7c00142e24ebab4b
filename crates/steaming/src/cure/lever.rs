//! The sizes that a maker can change, and the stock values that he can change them to.

use reckoning::quantity::{MM, MM2, show};
use std::f64::consts::FRAC_PI_4;

use crate::burner::Flame;
use crate::firing::{Bed, FireAir};
use crate::inputs::{Chimney, Inputs};

/// A size that a maker can change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lever {
    /// Bore of the blast nozzle.
    Nozzle,
    /// Size of the lumps of fuel.
    Lump,
    /// The bundle of fire tubes.
    Tubes,
    /// Diameter of the grate.
    Grate,
    /// Choke and height of the chimney.
    Stack,
    /// Air holes over the fire.
    AirHoles,
    /// Bore of the gas jet.
    GasJet,
    /// Opening for the secondary air of a flame.
    Mouth,
}

/// A bundle of fire tubes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bundle {
    /// Number of tubes.
    pub count: f64,
    /// Length, m.
    pub length_m: f64,
    /// Bore, m.
    pub bore_m: f64,
}

/// A chimney; a taper keeps its ratio of top to choke.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stack {
    /// Bore of the choke, m.
    pub choke_m: f64,
    /// Height, m; the parallel part grows and shrinks by as much.
    pub height_m: f64,
}

/// The stock values of each size, in any order. An empty list leaves the size alone.
#[derive(Clone, Copy, Debug, Default)]
pub struct Candidates<'a> {
    /// Bores of the nozzle, m.
    pub nozzle_m: &'a [f64],
    /// Sizes of lumps, m.
    pub lump_m: &'a [f64],
    /// Bundles that the plates hold at their pitch.
    pub tubes: &'a [Bundle],
    /// Diameters of the grate that the firebox takes, m.
    pub grate_m: &'a [f64],
    /// Chimneys.
    pub stack: &'a [Stack],
    /// Free areas of all air holes over the fire, m².
    pub holes_m2: &'a [f64],
    /// Bores of the gas jet, m.
    pub jet_m: &'a [f64],
    /// Free areas of the opening for secondary air, m².
    pub mouth_m2: &'a [f64],
}

/// Sizes from `from_mm` to `to_mm` in steps of so many hundredths of a millimetre, m: drills for
/// nozzles come in steps of five.
#[must_use]
pub fn metric_steps(from_mm: f64, to_mm: f64, hundredths: u32) -> Vec<f64> {
    let step = f64::from(hundredths) / 100.0;
    let count = ((to_mm - from_mm) / step).round();
    (0u32..)
        .map(f64::from)
        .take_while(|i| *i <= count)
        .map(|i| MM.to_si(from_mm + i * step))
        .collect()
}

/// One change of one size.
#[derive(Clone, Copy, Debug)]
pub(super) struct Change {
    pub(super) candidate: usize,
    what: What,
}

#[derive(Clone, Copy, Debug)]
enum What {
    Nozzle(f64),
    Lump(f64),
    Tubes(Bundle),
    Grate(f64),
    Stack(Stack),
    AirHoles(f64),
    GasJet(f64),
    Mouth(f64),
}

impl Lever {
    /// Every lever, in the order of the trade's first resort.
    pub const ALL: [Self; 8] = [
        Self::Nozzle,
        Self::Lump,
        Self::Tubes,
        Self::Grate,
        Self::Stack,
        Self::AirHoles,
        Self::GasJet,
        Self::Mouth,
    ];

    /// The size in words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Nozzle => "bore of the blast nozzle",
            Self::Lump => "size of the lumps",
            Self::Tubes => "fire tubes",
            Self::Grate => "diameter of the grate",
            Self::Stack => "chimney",
            Self::AirHoles => "air holes over the fire",
            Self::GasJet => "bore of the gas jet",
            Self::Mouth => "opening for secondary air",
        }
    }

    /// The size as drawn, in words.
    pub(super) fn drawn(self, inputs: &Inputs) -> String {
        self.present(inputs)
            .map_or_else(|| "none".to_owned(), What::words)
    }

    /// The size as drawn; `None` where the plant has no such part.
    fn present(self, inputs: &Inputs) -> Option<What> {
        Some(match self {
            Self::Nozzle => What::Nozzle(inputs.blast?.nozzle_m),
            Self::Lump => What::Lump(inputs.firing.bed()?.bed.packing.lump_m),
            Self::Tubes => {
                let tubes = inputs.firing.tubes()?;
                What::Tubes(Bundle {
                    count: tubes.count,
                    length_m: tubes.length_m,
                    bore_m: tubes.bore_m,
                })
            }
            Self::Grate => {
                let grate_m2 = inputs.firing.bed()?.bed.grate_m2;
                What::Grate((grate_m2 / FRAC_PI_4).sqrt())
            }
            Self::Stack => What::Stack(Stack {
                choke_m: inputs.chimney.choke_m,
                height_m: inputs.chimney.height_m,
            }),
            Self::AirHoles => What::AirHoles(holes(inputs)?),
            Self::GasJet => What::GasJet(inputs.firing.flame()?.burner()?.jet.bore_m),
            Self::Mouth => What::Mouth(inputs.firing.flame()?.mouth.area_m2()?),
        })
    }
}

impl Candidates<'_> {
    /// The changes of one lever, nearest first.
    pub(super) fn changes(&self, lever: Lever, inputs: &Inputs) -> Option<Vec<Change>> {
        let here = lever.present(inputs)?;
        let each = |sizes: &[f64], what: fn(f64) -> What| -> Vec<What> {
            sizes.iter().copied().map(what).collect()
        };
        let all: Vec<What> = match lever {
            Lever::Nozzle => each(self.nozzle_m, What::Nozzle),
            Lever::Lump => each(self.lump_m, What::Lump),
            Lever::Tubes => self.tubes.iter().copied().map(What::Tubes).collect(),
            Lever::Grate => each(self.grate_m, What::Grate),
            Lever::Stack => self.stack.iter().copied().map(What::Stack).collect(),
            Lever::AirHoles => each(self.holes_m2, What::AirHoles),
            Lever::GasJet => each(self.jet_m, What::GasJet),
            Lever::Mouth => each(self.mouth_m2, What::Mouth),
        };
        let mut changes: Vec<Change> = all
            .into_iter()
            .enumerate()
            .map(|(candidate, what)| Change { candidate, what })
            .collect();
        changes.sort_by(|a, b| a.what.from(here).total_cmp(&b.what.from(here)));
        (!changes.is_empty()).then_some(changes)
    }
}

/// Free area of the air holes over the fire, m².
fn holes(inputs: &Inputs) -> Option<f64> {
    match inputs.firing.bed()?.fire.air {
        FireAir::ThroughBed { .. } => None,
        FireAir::WithHoles { holes, .. } => Some(holes.area_m2),
    }
}

/// Changes the bed where there is one.
fn bed(inputs: &mut Inputs, change: impl FnOnce(&mut Bed)) {
    if let Some(fired) = inputs.firing.bed_mut() {
        change(&mut fired.bed);
    }
}

impl Stack {
    /// Gives a chimney this choke and height; its taper and its bell stay as they are.
    fn put_on(self, chimney: &mut Chimney) {
        chimney.top_m *= self.choke_m / chimney.choke_m;
        chimney.parallel_m += self.height_m - chimney.height_m;
        chimney.choke_m = self.choke_m;
        chimney.height_m = self.height_m;
    }
}

impl Change {
    /// The plant with this change.
    pub(super) fn made(&self, inputs: &Inputs) -> Inputs {
        let mut changed = *inputs;
        match self.what {
            What::Nozzle(bore_m) => changed.blast.iter_mut().for_each(|b| b.nozzle_m = bore_m),
            What::Lump(lump_m) => bed(&mut changed, |bed| bed.packing.lump_m = lump_m),
            What::Tubes(bundle) => {
                if let Some(tubes) = changed.firing.tubes_mut() {
                    tubes.count = bundle.count;
                    tubes.length_m = bundle.length_m;
                    tubes.bore_m = bundle.bore_m;
                }
            }
            What::Grate(across_m) => {
                bed(&mut changed, |bed| {
                    bed.grate_m2 = FRAC_PI_4 * across_m * across_m;
                });
            }
            What::Stack(stack) => stack.put_on(&mut changed.chimney),
            What::AirHoles(area_m2) => {
                if let Some(fired) = changed.firing.bed_mut()
                    && let FireAir::WithHoles { holes, .. } = &mut fired.fire.air
                {
                    holes.area_m2 = area_m2;
                }
            }
            What::GasJet(bore_m) => {
                let flame = changed.firing.flame_mut();
                if let Some(burner) = flame.and_then(Flame::burner_mut) {
                    burner.jet.bore_m = bore_m;
                }
            }
            What::Mouth(area_m2) => {
                if let Some(flame) = changed.firing.flame_mut() {
                    flame.mouth.widen(area_m2);
                }
            }
        }
        changed
    }

    pub(super) fn words(&self) -> String {
        self.what.words()
    }
}

impl What {
    /// How far this is from another, as the sum of the logarithms of the ratios of their sizes.
    fn from(self, other: Self) -> f64 {
        let apart = |a: f64, b: f64| (a / b).ln().abs();
        match (self, other) {
            (Self::Nozzle(a), Self::Nozzle(b))
            | (Self::Lump(a), Self::Lump(b))
            | (Self::Grate(a), Self::Grate(b))
            | (Self::AirHoles(a), Self::AirHoles(b))
            | (Self::GasJet(a), Self::GasJet(b))
            | (Self::Mouth(a), Self::Mouth(b)) => apart(a, b),
            (Self::Tubes(a), Self::Tubes(b)) => {
                apart(a.count, b.count) + apart(a.length_m, b.length_m) + apart(a.bore_m, b.bore_m)
            }
            (Self::Stack(a), Self::Stack(b)) => {
                apart(a.choke_m, b.choke_m) + apart(a.height_m, b.height_m)
            }
            _ => f64::INFINITY,
        }
    }

    fn words(self) -> String {
        let mm = |m: f64| show::quantity(m, &MM, 3);
        match self {
            Self::Nozzle(m) => format!("a blast nozzle of {}", mm(m)),
            Self::Lump(m) => format!("lumps of {}", mm(m)),
            Self::Tubes(b) => format!(
                "{} tubes of {} bore and {} length",
                b.count,
                mm(b.bore_m),
                mm(b.length_m)
            ),
            Self::Grate(m) => format!("a grate of {}", mm(m)),
            Self::Stack(s) => format!(
                "a chimney of {} choke and {} height",
                mm(s.choke_m),
                mm(s.height_m)
            ),
            Self::AirHoles(m2) => {
                format!("{} of air holes over the fire", show::quantity(m2, &MM2, 3))
            }
            Self::GasJet(m) => format!("a gas jet of {}", mm(m)),
            Self::Mouth(m2) => {
                format!("{} for the secondary air", show::quantity(m2, &MM2, 3))
            }
        }
    }
}
