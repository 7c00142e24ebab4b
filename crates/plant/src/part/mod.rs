//! Parts: what each is, to the last feature.
//!
//! A part has an id, which is its name in the plan, a metal, a shape and the stock it is cut
//! from. Four shapes serve a small steam plant: [`Turned`] (bushes, fittings, stays, nozzles),
//! [`Plate`] (tube plates, rings, grates), [`Tube`] (fire tubes, pipes, coils) and [`Shell`]
//! (barrels, fireboxes, chimneys).
//!
//! A turned part is a bar less its [`Feature`]s. Each feature only takes metal away, so the
//! finished part does not depend on the order in which they are cut:
//!
//! ```
//! use plant::part::{Bar, Feature, Form, Point, End, Span, Surface, Turned};
//! use reckoning::quantity::Length;
//! let mm = Length::from_mm;
//! let bar = Turned::bar(Bar::Round(mm(20.0)), Span::mm(0.0, 30.0))?;
//! let spigot = Feature::new("spigot", Form::cylinder(Surface::Outside, Span::mm(0.0, 8.0), mm(14.0)));
//! let bore = Feature::new("bore", Form::Drilled {
//!     from: End::Low, mouth: mm(0.0), diameter: mm(6.0), depth: mm(14.0), point: Point::drill(),
//! });
//! let turned_first = bar.cut(&spigot)?.cut(&bore)?;
//! let drilled_first = bar.cut(&bore)?.cut(&spigot)?;
//! assert_eq!(turned_first.volume(), drilled_first.volume());
//! let (bush, rest) = turned_first.part_off("face", mm(12.0), mm(2.0), End::Low)?;
//! assert_eq!(bush.span(), Span::mm(0.0, 12.0));
//! assert!(rest.is_some());
//! # Ok::<(), plant::part::NoShape>(())
//! ```

mod clear;
mod compare;
pub mod cross;
mod feature;
mod flats;
mod plate;
pub(crate) mod profile;
pub(crate) mod quadrature;
mod sizes;
mod tube;
mod turned;

use reckoning::quantity::{Density, Length, Mass, Volume};

pub use clear::{Floor, TipAt, Wall};
pub use compare::Difference;
pub use feature::{
    Coaxial, CrossDepth, CrossHole, End, Feature, Finish, Flats, Form, Point, Span, Surface, Thread,
};
pub use plate::{Flange, Hole, Ligament, Outline, Plate, Stands};
pub use sizes::NoShape;
pub use tube::{Run, Seam, Shell, ShellHole, Tube};
pub use turned::{Bar, Straight, Turned};

/// The form in which metal is bought.
#[derive(Clone, Debug, PartialEq)]
pub enum Stock {
    /// Bar.
    Bar(Bar),
    /// Sheet of this thickness.
    Sheet(Length),
    /// Tube.
    Tube {
        /// Outside diameter.
        outside: Length,
        /// Wall.
        wall: Length,
    },
}

/// What a part looks like.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// Turned from bar.
    Turned(Turned),
    /// Cut from sheet or plate.
    Plate(Plate),
    /// A length of tube.
    Tube(Tube),
    /// A cylinder of sheet or tube.
    Shell(Shell),
}

impl Shape {
    /// Volume of metal.
    #[must_use]
    pub fn volume(&self) -> Volume {
        match self {
            Self::Turned(turned) => turned.volume(),
            Self::Plate(plate) => plate.volume(),
            Self::Tube(tube) => tube.volume(),
            Self::Shell(shell) => shell.volume(),
        }
    }
}

impl Shape {
    /// Refuses a tube or shell without bore, wall or length; the other shapes refuse when made.
    pub(crate) fn hollow(&self, id: &str) -> Result<(), NoShape> {
        let (bore, wall, length) = match self {
            Self::Turned(_) | Self::Plate(_) => return Ok(()),
            Self::Tube(tube) => (tube.bore(), tube.wall, tube.length()),
            Self::Shell(shell) => (shell.bore, shell.wall, shell.length),
        };
        sizes::positive(id, "bore", bore)?;
        sizes::positive(id, "wall", wall)?;
        sizes::positive(id, "length", length)
    }
}

/// One part.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Id: its name in the plan (`firebox.tube-plate.upper`).
    pub id: String,
    /// Name in words (`upper tube plate`).
    pub name: String,
    /// Designation of its metal as the plan names it (`CW024A`), where it does.
    pub metal: Option<String>,
    /// Shape.
    pub shape: Shape,
    /// What it is cut from, where the plan or the form of boiler says so.
    pub stock: Option<Stock>,
}

impl Part {
    /// Mass at this density.
    #[must_use]
    pub fn mass(&self, density: Density) -> Mass {
        self.shape.volume() * density
    }
}
