//! The answer: values on three meshes, the greatest stress, the formulas beside them, one sentence.

use proof::Proof;
use reckoning::{Finding, Verdict};
use solid::{Body, Fineness, Kind, Solved, solve};

use super::read::{Read, Told, Unit};
use super::sizes::{MetalTaken, SizeTaken};
use super::{Case, NoOpinion, Shape};

/// The three meshes.
const MESHES: [Fineness; 3] = [Fineness(1), Fineness(2), Fineness(4)];
/// A greatest stress that the last halving raises by more than this share is that of a sharp
/// corner, where it has no end.
const SETTLED: f64 = 0.02;

/// The greatest stress intensity of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct PeakTold {
    /// Distance from the axis, mm.
    pub r_mm: f64,
    /// Place along it, mm.
    pub z_mm: f64,
    /// Its values on the three meshes, MPa.
    pub values: [f64; 3],
}

impl PeakTold {
    /// Whether it still grows from mesh to mesh: the sharp corner of a model, not a stress.
    #[must_use]
    pub fn grows(&self) -> bool {
        let [_, before, last] = self.values;
        (last - before).abs() > SETTLED * last.abs()
    }
}

/// What a rule set found about the part by its formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Beside {
    /// Id of the rule.
    pub rule: &'static str,
    /// Rule set.
    pub set: &'static str,
    /// Its answer.
    pub verdict: Verdict,
    /// What it found, with numbers.
    pub says: String,
}

/// A second opinion on one part. It stands beside the formulas and decides nothing.
#[derive(Clone, Debug)]
pub struct SecondOpinion {
    /// Id of the part.
    pub part: String,
    /// What it is, in words.
    pub what: String,
    /// What stands for it.
    pub shape: Shape,
    /// Pressure, MPa.
    pub pressure_mpa: f64,
    /// Sizes taken.
    pub sizes: Vec<SizeTaken>,
    /// Metals taken.
    pub metals: Vec<MetalTaken>,
    /// Values read.
    pub told: Vec<Told>,
    /// The greatest stress intensity.
    pub peak: PeakTold,
    /// What the rule sets found, the leading set first.
    pub beside: Vec<Beside>,
    /// What of the part is represented.
    pub stands_for: Vec<String>,
    /// What is not.
    pub leaves_out: Vec<String>,
    /// One sentence.
    pub sentence: String,
    /// Number of nodes of the three meshes.
    pub nodes: [usize; 3],
    /// What the balance of the finest mesh leaves over, in parts of the load.
    pub left_over: f64,
    /// The finest mesh.
    pub body: Body,
    /// Its answer.
    pub solved: Solved,
}

pub(super) fn told(part: &str, case: Case, proof: &Proof) -> Result<SecondOpinion, NoOpinion> {
    let mut runs = Vec::new();
    for fineness in MESHES {
        runs.push(run(part, &case.shape, fineness)?);
    }
    let values = values(&case, &runs);
    let mut beside = beside(part, proof);
    // The sort is stable: within each half the leading set stays first.
    beside.sort_by_key(|b| !b.rule.contains(case.formula));
    let nodes = [0, 1, 2].map(|i| runs[i].0.mesh.nodes.len());
    let peak = peak(&runs);
    let sentence = sentence(part, &values, &beside);
    let (Some(peak), Some((body, solved))) = (peak, runs.pop()) else {
        return Err(NoOpinion::NotSolved {
            part: part.to_owned(),
            why: solid::NotSolved::NotHeld,
        });
    };
    Ok(SecondOpinion {
        part: part.to_owned(),
        what: case.what,
        shape: case.shape,
        pressure_mpa: case.taken.pressure_mpa,
        sizes: case.taken.sizes,
        metals: case.taken.metals,
        told: values,
        peak,
        beside,
        stands_for: case.stands_for,
        leaves_out: case.leaves_out,
        sentence,
        nodes,
        left_over: solved.balance.left_over(),
        body,
        solved,
    })
}

/// What is read on all three meshes.
fn values(case: &Case, runs: &[(Body, Solved)]) -> Vec<Told> {
    let on_all = |read: &Read| {
        let at = |i: usize| {
            let (body, solved) = runs.get(i)?;
            read.of(body, solved)
        };
        Some(Told {
            what: read.what.clone(),
            values: [at(0)?, at(1)?, at(2)?],
            unit: read.unit(),
        })
    };
    case.reads.iter().filter_map(on_all).collect()
}

fn run(part: &str, shape: &Shape, fineness: Fineness) -> Result<(Body, Solved), NoOpinion> {
    let body = shape.body(fineness).map_err(|why| NoOpinion::Shape {
        part: part.to_owned(),
        why,
    })?;
    let solved = solve(&body).map_err(|why| NoOpinion::NotSolved {
        part: part.to_owned(),
        why,
    })?;
    Ok((body, solved))
}

fn peak(runs: &[(Body, Solved)]) -> Option<PeakTold> {
    let at = |i: usize| {
        let (body, solved): &(Body, Solved) = runs.get(i)?;
        let peak = solved.peak(&body.mesh, Kind::Intensity)?;
        Some((body.mesh.nodes[peak.node], peak.mpa))
    };
    let [first, second, last] = [at(0)?, at(1)?, at(2)?];
    Some(PeakTold {
        r_mm: last.0[0],
        z_mm: last.0[1],
        values: [first.1, second.1, last.1],
    })
}

/// What the rule sets compared about this part, the leading set first.
fn beside(part: &str, proof: &Proof) -> Vec<Beside> {
    proof
        .leading()
        .chain(proof.beside())
        .filter(|f| f.place == part && f.margin.is_some())
        .map(|f: &Finding| Beside {
            rule: f.rule.id,
            set: f.set,
            verdict: f.verdict,
            says: f.says.clone(),
        })
        .collect()
}

fn sentence(part: &str, values: &[Told], beside: &[Beside]) -> String {
    let stresses = values.iter().filter(|told| told.unit == Unit::Mpa).take(3);
    let found: Vec<String> = stresses
        .map(|told| format!("{} {:.1} MPa", told.what, told.value()))
        .collect();
    let formula = match beside.first() {
        Some(first) => format!(
            "the formula of the rule set {} says: {}",
            first.set, first.says
        ),
        None => "no rule set has a formula for it here".to_owned(),
    };
    format!(
        "By finite elements, {part}: {}; {formula}. This stands beside and decides nothing.",
        found.join(", ")
    )
}
