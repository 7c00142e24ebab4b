//! `steamwright stress`: a second opinion on a round part by finite elements.

mod json;
mod words;

use super::files;
use crate::output::{Answer, Failure};
use clap::{Args, ValueEnum};
use design::second_opinion::{NoOpinion, SecondOpinion, Shape, second_opinion};
use drawing::Sheet;
use drawing::contour::{Picture, Upwards, section};
use solid::Kind;
use std::path::PathBuf;

/// What was asked.
#[derive(Args)]
pub(crate) struct Arguments {
    /// The plan file
    plan: PathBuf,
    /// Id of the part: the foundation ring, an end of the barrel, or a bush such as `bush.valve`
    part: String,
    /// The picture in SVG in place of the words
    #[arg(long)]
    picture: bool,
    /// The stress that the picture shows
    #[arg(long, value_enum, default_value = "intensity")]
    of: Of,
    /// The workshop file; else `workshop.toml` beside the plan or one folder up
    #[arg(long, value_name = "FILE")]
    workshop: Option<PathBuf>,
}

/// Stresses by name.
#[derive(Clone, Copy, ValueEnum)]
enum Of {
    /// Greatest difference of principal stresses
    Intensity,
    /// Equivalent stress by distortion
    VonMises,
    /// Across the axis
    Radial,
    /// Along the axis
    Axial,
    /// Round the axis
    Hoop,
    /// In the plane through the axis
    Shear,
}

impl Of {
    fn kind(self) -> Kind {
        match self {
            Self::Intensity => Kind::Intensity,
            Self::VonMises => Kind::VonMises,
            Self::Radial => Kind::Radial,
            Self::Axial => Kind::Axial,
            Self::Hoop => Kind::Hoop,
            Self::Shear => Kind::Shear,
        }
    }
}

/// Reads the files and solves the part.
pub(crate) fn run(asked: &Arguments) -> Result<Answer, Failure> {
    let inputs = files::read(&asked.plan, asked.workshop.as_deref())?;
    files::readable(&inputs)?;
    let opinion =
        second_opinion(&inputs.plan, &inputs.workshop, &asked.part).map_err(|why| refused(&why))?;
    let sheet = picture(&opinion, asked.of.kind());
    let svg = drawing::svg(&sheet);
    let json = json::told(&opinion, &svg, &files::problems(&inputs.problems));
    let words = if asked.picture {
        svg
    } else {
        files::faults(&inputs.problems) + &words::tell(&opinion)
    };
    Ok(Answer {
        words,
        json,
        code: u8::from(!inputs.problems.is_empty()),
    })
}

fn picture(opinion: &SecondOpinion, kind: Kind) -> Sheet {
    let peak = if opinion.peak.grows() {
        "greatest, at a corner taken as sharp".to_owned()
    } else {
        "greatest".to_owned()
    };
    let title = format!(
        "{}: {} by finite elements, at {:.2} MPa",
        opinion.part,
        drawing::contour::kind_words(kind),
        opinion.pressure_mpa
    );
    section(&Picture {
        title: &title,
        body: &opinion.body,
        solved: &opinion.solved,
        kind,
        window: opinion.shape.window(),
        upwards: match opinion.shape {
            // The dry face of a flat end is the one that leaders can reach.
            Shape::Flat(_) => Upwards::Against,
            Shape::Dished(_) | Shape::Bush(_) => Upwards::Along,
        },
        peak: &peak,
    })
}

fn refused(why: &NoOpinion) -> Failure {
    let faults = match why {
        NoOpinion::Unknown { has, .. } if has.is_empty() => {
            vec!["the plan has no part that can".to_owned()]
        }
        NoOpinion::Unknown { has, .. } => vec![format!("it has {}", has.join(", "))],
        NoOpinion::Wanted { lacks, .. } => lacks.clone(),
        NoOpinion::NotRound { .. } | NoOpinion::Shape { .. } | NoOpinion::NotSolved { .. } => {
            Vec::new()
        }
    };
    Failure {
        says: why.to_string(),
        faults,
    }
}
