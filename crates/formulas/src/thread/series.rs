//! The series: published rows of sizes and pitches.
//!
//! Every row is held against its own form when it is read, so that a row which was copied wrongly
//! is refused. Unified threads are left out.

use std::sync::LazyLock;

use reckoning::quantity::Length;

use super::Form;
use crate::table;

/// A series of threads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Series {
    /// ISO metric, coarse.
    MetricCoarse,
    /// ISO metric, fine.
    MetricFine,
    /// British Association.
    Ba,
    /// Whitworth, coarse.
    Whitworth,
    /// Whitworth, fine.
    WhitworthFine,
    /// Brass thread: 26 to the inch at every size.
    Brass,
    /// Constant pitch threads of model work: 40, 32 and 26 to the inch.
    Model,
    /// Parallel pipe thread, which seals on a face and not on the thread.
    Pipe,
}

impl Series {
    /// Form of its threads.
    #[must_use]
    pub fn form(self) -> Form {
        match self {
            Self::MetricCoarse | Self::MetricFine => Form::Metric,
            Self::Ba => Form::Ba,
            Self::Whitworth | Self::WhitworthFine | Self::Brass | Self::Model | Self::Pipe => {
                Form::Whitworth
            }
        }
    }

    /// As makers call it.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::MetricCoarse | Self::MetricFine => "metric",
            Self::Ba => "BA",
            Self::Whitworth => "BSW",
            Self::WhitworthFine => "BSF",
            Self::Brass => "BSB",
            Self::Model => "ME",
            Self::Pipe => "G",
        }
    }
}

/// A thread of a series.
#[derive(Clone, Debug, PartialEq)]
pub struct Thread {
    /// Its series.
    pub series: Series,
    /// Its name (`M10 x 1`, `1/4 x 40 ME`, `2 BA`, `G 1/8`).
    pub name: String,
    /// Size as its series names it (`10`, `1/4`, `2`).
    pub size: String,
    /// Pitch in millimetres or threads in the inch, as its series writes it.
    pub pitch_as_written: String,
    /// Major diameter.
    pub major: Length,
    /// Pitch.
    pub pitch: Length,
}

impl Thread {
    /// Effective diameter.
    #[must_use]
    pub fn effective(&self) -> Length {
        Length::from_mm(
            self.series
                .form()
                .effective(self.major.mm(), self.pitch.mm()),
        )
    }

    /// Root of the external thread.
    #[must_use]
    pub fn root(&self) -> Length {
        Length::from_mm(self.series.form().root(self.major.mm(), self.pitch.mm()))
    }

    /// Basic minor diameter of the internal thread.
    #[must_use]
    pub fn internal_minor(&self) -> Length {
        Length::from_mm(
            self.series
                .form()
                .internal_minor(self.major.mm(), self.pitch.mm()),
        )
    }
}

/// Each series with its table.
const TABLES: [(Series, &str); 7] = [
    (Series::MetricCoarse, "threads-metric-coarse"),
    (Series::MetricFine, "threads-metric-fine"),
    (Series::Ba, "threads-ba"),
    (Series::Whitworth, "threads-bsw"),
    (Series::WhitworthFine, "threads-bsf"),
    (Series::Model, "threads-me"),
    (Series::Pipe, "threads-g"),
];

/// Sizes in which brass thread is cut; its pitch is one at every size.
const BRASS: [(&str, f64); 7] = [
    ("1/4", 0.25),
    ("5/16", 0.3125),
    ("3/8", 0.375),
    ("7/16", 0.4375),
    ("1/2", 0.5),
    ("5/8", 0.625),
    ("3/4", 0.75),
];

static ROWS: LazyLock<Vec<Thread>> = LazyLock::new(|| {
    let tabled = TABLES.iter().flat_map(|(series, name)| {
        let table = table::find(name);
        (0..table.len()).map(move |row| {
            let size = table.words(row, "size");
            let written = table.words(row, "written");
            thread(
                *series,
                (size, written),
                (table.value(row, "D"), table.value(row, "P")),
            )
        })
    });
    let brass = BRASS.iter().map(|(size, inch)| {
        let (major, pitch) = (Length::from_inch(*inch), Length::from_inch(1.0 / 26.0));
        thread(Series::Brass, (size, "26"), (major, pitch))
    });
    tabled.chain(brass).collect()
});

/// Every thread of every series.
#[must_use]
pub fn rows() -> &'static [Thread] {
    &ROWS
}

fn thread(
    series: Series,
    (size, written): (&str, &str),
    (major, pitch): (Length, Length),
) -> Thread {
    let name = match series {
        Series::MetricCoarse | Series::MetricFine => format!("M{size} x {written}"),
        Series::Model => format!("{size} x {written} ME"),
        Series::Pipe => format!("G {size}"),
        Series::Ba | Series::Whitworth | Series::WhitworthFine | Series::Brass => {
            format!("{size} {}", series.words())
        }
    };
    Thread {
        series,
        name,
        size: size.to_owned(),
        pitch_as_written: written.to_owned(),
        major,
        pitch,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::table::{FILES, read};

    fn altered(name: &str, from: &str, to: &str) -> String {
        let text = FILES
            .iter()
            .find(|(n, _)| *n == name)
            .map(|(_, t)| *t)
            .expect(name);
        let altered = text.replacen(from, to, 1);
        assert_ne!(altered, text, "{from}");
        match read(name, &altered) {
            Ok(_) => "nothing".to_owned(),
            Err(faults) => faults[0].to_string(),
        }
    }

    /// Three faults met in public data: a core of D - 1.6 p, an effective diameter of D - 0.2 p,
    /// and a major diameter of 6 p where the exponent 1.2 was lost.
    #[test]
    fn published_rows_that_are_wrong_are_refused() {
        for (from, to) in [
            ("4.7, 0.81, 4.214, 3.728", "4.7, 0.81, 4.214, 3.404"),
            ("4.7, 0.81, 4.214, 3.728", "4.7, 0.81, 4.538, 3.728"),
            ("4.7, 0.81, 4.214, 3.728", "4.86, 0.81, 4.214, 3.728"),
        ] {
            let told = altered("threads-ba", from, to);
            assert!(told.contains("row 2 breaks the rule"), "{told}");
        }
        let told = altered("threads-bsw", ".2180, 0.1860", ".2180, 0.1680");
        assert!(told.contains("row 1/4 breaks the rule"), "{told}");
    }

    /// The law of the series as its public pages give it: pitch 0.9^n to two figures, diameter
    /// 6 p^1.2 of the unrounded pitch to two figures.
    #[test]
    fn published_law_of_the_ba_series_gives_its_rows() {
        let two = |x: f64| {
            reckoning::quantity::show::figures(x, 2)
                .parse::<f64>()
                .expect("a number")
        };
        let ba: Vec<&Thread> = rows().iter().filter(|t| t.series == Series::Ba).collect();
        assert_eq!(ba.len(), 17);
        for (n, thread) in ba.into_iter().enumerate() {
            let p = 0.9_f64.powi(i32::try_from(n).expect("small"));
            assert!((thread.pitch.mm() - two(p)).abs() < 1e-9, "{}", thread.name);
            assert!(
                (thread.major.mm() - two(6.0 * p.powf(1.2))).abs() < 1e-9,
                "{}",
                thread.name
            );
        }
    }

    /// 4 BA 38.5 and 6 BA 47.9 threads in the inch, public data pages.
    #[test]
    fn published_threads_in_the_inch_of_ba() {
        for (name, wanted) in [("4 BA", 38.5), ("6 BA", 47.9)] {
            let thread = Thread::read(name).expect(name);
            assert!((1.0 / thread.pitch.inch() - wanted).abs() < 0.05, "{name}");
        }
    }

    #[test]
    fn names_are_told_apart() {
        let mut names: Vec<&str> = rows().iter().map(|t| t.name.as_str()).collect();
        names.sort_unstable();
        let count = names.len();
        names.dedup();
        assert_eq!(names.len(), count);
    }
}
