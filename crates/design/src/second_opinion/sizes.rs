//! Sizes and metals as the sum takes them, each on record.

use proof::{Diameter, Dimension, Flue, Metal, Shell};
use reckoning::known::Given;
use reckoning::size::Bad;

use super::NoOpinion;

/// A size as it was taken.
#[derive(Clone, Debug, PartialEq)]
pub struct SizeTaken {
    /// What it is.
    pub what: String,
    /// Millimetres.
    pub mm: f64,
}

/// A metal as it was taken.
#[derive(Clone, Debug, PartialEq)]
pub struct MetalTaken {
    /// Of which part.
    pub of: String,
    /// Its name.
    pub metal: &'static str,
    /// Modulus of elasticity, MPa.
    pub modulus_mpa: f64,
    /// Ratio of lateral to axial strain.
    pub poisson: f64,
    /// Where the modulus came from.
    pub because: String,
}

/// What was taken so far, and what is missing.
#[derive(Default)]
pub(super) struct Taken {
    pub(super) sizes: Vec<SizeTaken>,
    pub(super) metals: Vec<MetalTaken>,
    pub(super) pressure_mpa: f64,
    lacks: Vec<String>,
}

impl Taken {
    /// A size: made where measured, else drawn at the end of its tolerance that is named. A size
    /// that is missing is noted and comes out as no number; [`Taken::whole`] then refuses.
    pub(super) fn size(&mut self, what: String, size: Option<&Dimension>, bad: Bad) -> f64 {
        let mm = size.map(|d| d.size.for_proof(bad).mm());
        self.number(what, mm)
    }

    /// A length that the plan gives in another way.
    pub(super) fn number(&mut self, what: String, mm: Option<f64>) -> f64 {
        match mm {
            Some(mm) => {
                self.sizes.push(SizeTaken { what, mm });
                mm
            }
            None => {
                self.lacks.push(what);
                f64::NAN
            }
        }
    }

    /// Notes that something is missing.
    pub(super) fn lack(&mut self, what: &str) {
        self.lacks.push(what.to_owned());
    }

    /// The pressure.
    pub(super) fn pressure(&mut self, mpa: Option<f64>) -> f64 {
        if mpa.is_none() {
            self.lack("the design pressure");
        }
        self.pressure_mpa = mpa.unwrap_or(f64::NAN);
        self.pressure_mpa
    }

    /// The elasticity of a metal.
    pub(super) fn metal(&mut self, of: &str, metal: Metal) -> solid::Metal {
        let Some((modulus, nu)) = proof::elastic(metal) else {
            self.lacks
                .push(format!("the elasticity of {} ({of})", metal.words()));
            return solid::Metal {
                modulus_mpa: f64::NAN,
                poisson: f64::NAN,
            };
        };
        let because = match &modulus.given {
            Given::Chosen {
                between, reason, ..
            } => format!("{between}: {reason}"),
            given => given.origin().words().to_owned(),
        };
        let taken = MetalTaken {
            of: of.to_owned(),
            metal: metal.words(),
            modulus_mpa: modulus.value.mpa(),
            poisson: nu.value.number(),
            because,
        };
        let solid = solid::Metal {
            modulus_mpa: taken.modulus_mpa,
            poisson: taken.poisson,
        };
        self.metals.push(taken);
        solid
    }

    /// A shell: the wall at its thin end.
    pub(super) fn shell(&mut self, shell: &Shell) -> solid::Tube {
        let metal = self.metal(&shell.id, shell.metal);
        self.tube(
            &shell.id,
            (shell.diameter.as_ref(), shell.wall.as_ref()),
            metal,
        )
    }

    /// A flue: the wall at its thin end.
    pub(super) fn flue(&mut self, flue: &Flue) -> solid::Tube {
        let metal = self.metal(&flue.id, flue.metal);
        self.tube(
            &flue.id,
            (flue.diameter.as_ref(), flue.wall.as_ref()),
            metal,
        )
    }

    fn tube(
        &mut self,
        id: &str,
        (diameter, wall): (Option<&Diameter>, Option<&Dimension>),
        metal: solid::Metal,
    ) -> solid::Tube {
        let wall_mm = self.size(format!("wall of {id}"), wall, Bad::Small);
        let inside_radius_mm = match diameter {
            Some(Diameter::Inside(d)) => {
                0.5 * self.size(format!("bore of {id}"), Some(d), Bad::Large)
            }
            Some(Diameter::Outside(d)) => {
                0.5 * self.size(format!("outside of {id}"), Some(d), Bad::Large) - wall_mm
            }
            None => self.number(format!("diameter of {id}"), None),
        };
        solid::Tube {
            inside_radius_mm,
            wall_mm,
            metal,
        }
    }

    /// Refuses where something is missing.
    pub(super) fn whole(self, part: &str) -> Result<Self, NoOpinion> {
        if self.lacks.is_empty() {
            Ok(self)
        } else {
            Err(NoOpinion::Wanted {
                part: part.to_owned(),
                lacks: self.lacks,
            })
        }
    }
}
