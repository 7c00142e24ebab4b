//! Sizes as a proof takes them: made where measured, else drawn at the bad end; a wall whose
//! tolerance nobody stated is thinned by an assumption.

use crate::input::{Diameter, Dimension, Removed};
use crate::metal::{SIZE_TOLERANCE, WALL_TOLERANCE};
use crate::sum::{Stop, Sum};
use formulas::vessel::ring;
use reckoning::assumption::Worse;
use reckoning::known::Given;
use reckoning::quantity::show::figures;
use reckoning::quantity::{Gauge, Length, MM, ONE, Quantity, Ratio, TemperatureRise};
use reckoning::size::Bad;
use reckoning::{Assumption, Bound, Card, Known, Ref};

/// A thing or the reason why a check must stop.
pub(crate) fn need<'a, T>(
    what: &'static str,
    part: &str,
    found: Option<&'a T>,
) -> Result<&'a T, Stop> {
    found.ok_or_else(|| Stop::Missing {
        what,
        part: part.to_owned(),
    })
}

/// A size at its bad end with the words that say so.
pub(crate) fn at_bad_end(d: &Dimension, bad: Bad) -> Known<Length> {
    let value = d.size.for_proof(bad);
    let typed = match (&d.size.made, d.size.tolerance) {
        (Some(made), _) => format!("{} as made", made.text),
        (None, None) => d.size.drawn.text.clone(),
        (None, Some(t)) => {
            let by = match bad {
                Bad::Small => t.lower,
                Bad::Large => t.upper,
            };
            format!("{} with {} mm", d.size.drawn.text, figures(by.mm(), 3))
        }
    };
    Known::from_plan(value, d.field.clone(), typed)
}

/// Whether nothing bounds a size but an assumption.
fn loose(d: &Dimension) -> bool {
    d.size.made.is_none() && d.size.tolerance.is_none()
}

/// Whether a size waits for a measurement that was taken away.
fn waits(d: &Dimension) -> bool {
    d.size.made.is_none() && d.removed == Removed::Measurement
}

/// A size that is no wall, at its bad end, mm; where no tolerance is stated, by the assumption.
pub(crate) fn size_mm(d: &Dimension, bad: Bad) -> f64 {
    let drawn = d.size.for_proof(bad).mm();
    if !loose(d) {
        return drawn;
    }
    let share = SIZE_TOLERANCE.worse_end(Worse::WhenHigh);
    match bad {
        Bad::Small => ring::least_size(drawn, share),
        Bad::Large => ring::greatest_size(drawn, share),
    }
}

/// Adds the hold point of a size that nobody has bounded, or whose measurement was taken away.
pub(crate) fn hold_size(sum: &mut Sum, meaning: &str, d: &Dimension, bad: Bad) {
    if loose(d) || waits(d) {
        let used = size_mm(d, bad);
        let (limit, bound) = match bad {
            Bad::Small => (
                format!("at least {} mm", down(used)),
                Bound::AtLeast(si(used)),
            ),
            Bad::Large => (format!("at most {} mm", up(used)), Bound::AtMost(si(used))),
        };
        sum.hold_within(format!("{meaning}, {limit}"), d.field.clone(), bound);
    }
}

/// Files a size that is no wall at its bad end. What nobody has bounded makes a hold point.
pub(crate) fn file_size(
    sum: &mut Sum,
    (symbol, meaning): (&str, &str),
    d: &Dimension,
    bad: Bad,
) -> Result<Ref, Stop> {
    let used = size_mm(d, bad);
    hold_size(sum, meaning, d, bad);
    let given = sum.know(symbol, meaning, &MM, &at_bad_end(d, bad));
    if !loose(d) {
        return Ok(given);
    }
    let share = worse(&SIZE_TOLERANCE, Worse::WhenHigh);
    let share = sum.know("s", SIZE_TOLERANCE.meaning, &ONE, &share);
    let card: &'static Card = match bad {
        Bad::Small => &ring::LEAST_SIZE,
        Bad::Large => &ring::GREATEST_SIZE,
    };
    sum.settled(card, &[given, share], used)
}

/// An assumption at its worse end.
pub(crate) fn worse(assumption: &'static Assumption, worse: Worse) -> Known<Ratio> {
    Known {
        value: Ratio::from_number(assumption.worse_end(worse)),
        given: Given::Assumed { assumption },
    }
}

/// A rise of temperature that is assumed, at its greatest.
pub(crate) fn worse_rise(assumption: &'static Assumption) -> Known<TemperatureRise> {
    Known {
        value: TemperatureRise::from_k(assumption.worse_end(Worse::WhenHigh)),
        given: Given::Assumed { assumption },
    }
}

/// A wall as a proof takes it.
pub(crate) struct Wall {
    known: Known<Length>,
    thinned: bool,
    /// Whether it is to be measured before the answer stands.
    open: bool,
    /// Path of its field.
    pub(crate) field: String,
}

impl Wall {
    /// The wall of a part.
    pub(crate) fn of(d: &Dimension) -> Self {
        Self {
            known: at_bad_end(d, Bad::Small),
            thinned: loose(d),
            open: loose(d) || waits(d),
            field: d.field.clone(),
        }
    }

    /// The least wall, mm.
    pub(crate) fn mm(&self) -> f64 {
        if self.thinned {
            let share = WALL_TOLERANCE.worse_end(Worse::WhenHigh);
            ring::least_wall(self.known.value.mm(), share)
        } else {
            self.known.value.mm()
        }
    }

    /// Files it and gives the line of the least wall.
    pub(crate) fn file(&self, sum: &mut Sum, symbol: &str, meaning: &str) -> Result<Ref, Stop> {
        if !self.thinned {
            return Ok(sum.know(symbol, meaning, &MM, &self.known));
        }
        let drawn = sum.know(
            "t_d",
            "wall as drawn, tolerance not stated",
            &MM,
            &self.known,
        );
        let share = worse(&WALL_TOLERANCE, Worse::WhenHigh);
        let share = sum.know("s", WALL_TOLERANCE.meaning, &ONE, &share);
        sum.settled(&ring::LEAST_WALL, &[drawn, share], self.mm())
    }

    /// Adds the hold point of a wall whose tolerance is not stated or whose measurement was
    /// taken away.
    pub(crate) fn hold(&self, sum: &mut Sum, what: &str, part: &str, least_mm: f64) {
        if self.open {
            let says = format!(
                "{what} of {part}, at its thinnest, at least {} mm",
                up(least_mm)
            );
            let bound = Bound::AtLeast(si(least_mm));
            sum.hold_within(says, self.field.clone(), bound);
        }
    }

    /// Adds the hold point where the check was not turned round: the wall that was used.
    pub(crate) fn hold_as_used(&self, sum: &mut Sum, what: &str, part: &str) {
        self.hold(sum, what, part, self.mm());
    }
}

/// Inside and outside diameter of a shell at the bad end, mm.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sides {
    pub(crate) bore_mm: f64,
    pub(crate) outside_mm: f64,
}

/// The diameters of a shell with this least wall.
pub(crate) fn sides(d: &Diameter, wall_mm: f64) -> Sides {
    match d {
        Diameter::Outside(d) => {
            let outside_mm = size_mm(d, Bad::Large);
            Sides {
                bore_mm: ring::bore(outside_mm, wall_mm),
                outside_mm,
            }
        }
        Diameter::Inside(d) => {
            let bore_mm = size_mm(d, Bad::Large);
            Sides {
                bore_mm,
                outside_mm: ring::outside(bore_mm, wall_mm),
            }
        }
    }
}

/// Lines of the two diameters.
pub(crate) struct SideLines {
    pub(crate) bore: Ref,
    pub(crate) outside: Ref,
}

/// Files the diameters of a shell.
pub(crate) fn file_sides(sum: &mut Sum, d: &Diameter, wall: Ref) -> Result<SideLines, Stop> {
    let now = sides(d, sum.value(wall));
    Ok(match d {
        Diameter::Outside(d) => {
            let outside = file_size(sum, ("D_o", "outside diameter"), d, Bad::Large)?;
            let bore = sum.settled(&ring::BORE, &[outside, wall], now.bore_mm)?;
            SideLines { bore, outside }
        }
        Diameter::Inside(d) => {
            let bore = file_size(sum, ("D_i", "inside diameter"), d, Bad::Large)?;
            let outside = sum.settled(&ring::OUTSIDE, &[bore, wall], now.outside_mm)?;
            SideLines { bore, outside }
        }
    })
}

/// Metres of a bound that was worked in millimetres.
pub(crate) fn si(mm: f64) -> f64 {
    Length::from_mm(mm).si()
}

/// A number of millimetres rounded up to a hundredth, as a least size is printed.
pub(crate) fn up(mm: f64) -> String {
    format!("{:.2}", (mm * 100.0 - 1e-9).ceil() / 100.0)
}

/// A number of millimetres rounded down to a hundredth, as a greatest size is printed.
pub(crate) fn down(mm: f64) -> String {
    format!("{:.2}", (mm * 100.0 + 1e-9).floor() / 100.0)
}

/// A size as made, else as drawn, without its tolerance.
pub(crate) fn nominal(d: &Dimension) -> Known<Length> {
    let typed = d.size.made.as_ref().unwrap_or(&d.size.drawn);
    Known::from_plan(d.size.likely(), d.field.clone(), typed.text.clone())
}

/// A pressure in bar as findings print it.
pub(crate) fn bar(mpa: f64) -> String {
    figures(Gauge::from_mpa(mpa).bar(), 3)
}
