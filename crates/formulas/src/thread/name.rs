//! Threads by the names that makers write.
//!
//! Read are: `M10x1`, `M10 x 1`, `M10` (coarse); `2BA`, `2 BA`, `BA 2`; `1/4 BSW`, `BSF 3/8`,
//! `3/8 x 20 BSF`; `1/4 x 40 ME`, `ME 1/4 x 40`; `1/2 BSB`, `1/2 x 26 brass`; `G 1/8`,
//! `1/8 BSP`. A size without a series (`5/16 x 32`) is refused: threads of 55 and 60 degrees share
//! it. Taper pipe threads are not read.

use super::series::{Series, Thread, rows};

/// Text that names no thread of the tables.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotAThread {
    /// No series is named, or one that is not in the tables.
    #[error("`{text}` names no series; write one of M, BA, BSW, BSF, BSB, ME or G with it")]
    NoSeries {
        /// What was read.
        text: String,
    },
    /// The series has no such size.
    #[error("`{text}` is not in the {series} series; near it: {}", near.join(", "))]
    NoSize {
        /// What was read.
        text: String,
        /// Name of the series.
        series: &'static str,
        /// Nearest sizes of the series.
        near: Vec<String>,
    },
}

/// Words that name a series, the longer before the shorter that they hold.
const WORDS: &[(&str, &[Series])] = &[
    ("brass", &[Series::Brass]),
    ("bsb", &[Series::Brass]),
    ("bsw", &[Series::Whitworth]),
    ("bsf", &[Series::WhitworthFine]),
    ("bsp", &[Series::Pipe]),
    ("me", &[Series::Model]),
    ("ba", &[Series::Ba]),
    ("g", &[Series::Pipe]),
    ("m", &[Series::MetricCoarse, Series::MetricFine]),
];

impl Thread {
    /// The thread that a text names.
    ///
    /// # Errors
    /// [`NotAThread`] with the nearest sizes of the series, or where no series is named.
    pub fn read(text: &str) -> Result<Self, NotAThread> {
        let plain: String = text
            .to_lowercase()
            .replace('×', "x")
            .chars()
            .filter(|c| !c.is_whitespace() && *c != '"')
            .collect();
        let named = WORDS.iter().find_map(|(word, series)| {
            let rest = plain
                .strip_prefix(word)
                .or_else(|| plain.strip_suffix(word))?;
            rest.starts_with(|c: char| c.is_ascii_digit())
                .then_some((rest, *series))
        });
        let Some((rest, series)) = named else {
            return Err(NotAThread::NoSeries {
                text: text.to_owned(),
            });
        };
        let size = rest
            .trim_end_matches("in")
            .replace("in", "")
            .replace("tpi", "");
        let of_series = || rows().iter().filter(|t| series.contains(&t.series));
        of_series()
            .find(|t| t.is_written(&size))
            .cloned()
            .ok_or_else(|| NotAThread::NoSize {
                text: text.to_owned(),
                series: series[0].words(),
                near: near(&size, of_series()),
            })
    }

    /// Whether `size` (`1/4x40`, `1/4`, `10x1.0`, `2`) writes this thread within its series.
    fn is_written(&self, size: &str) -> bool {
        let (major, pitch) = match size.split_once(['x', '-']) {
            Some((major, pitch)) => (major, Some(pitch)),
            None => (size, None),
        };
        let same = |a: &str, b: &str| a == b || number(a).is_some_and(|x| number(b) == Some(x));
        if !same(major, &self.size) {
            return false;
        }
        match (pitch, self.series) {
            (Some(pitch), _) => same(pitch, &self.pitch_as_written),
            // A fine or constant pitch thread is not named by its size alone.
            (None, series) => !matches!(series, Series::MetricFine | Series::Model),
        }
    }
}

fn number(text: &str) -> Option<f64> {
    match text.split_once('/') {
        Some((a, b)) => Some(a.parse::<f64>().ok()? / b.parse::<f64>().ok()?),
        None => text.parse().ok(),
    }
}

/// Up to three names of the series, the nearest in size first.
fn near<'a>(size: &str, series: impl Iterator<Item = &'a Thread>) -> Vec<String> {
    let major = size.split(['x', '-']).next().and_then(number);
    let mut sizes: Vec<(f64, &Thread)> = series
        .map(|t| {
            let apart = match (major, number(&t.size)) {
                (Some(a), Some(b)) => (a - b).abs(),
                _ => f64::INFINITY,
            };
            (apart, t)
        })
        .collect();
    sizes.sort_by(|a, b| a.0.total_cmp(&b.0));
    sizes
        .into_iter()
        .take(3)
        .map(|(_, t)| t.name.clone())
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn names_as_makers_write_them() {
        for (text, name) in [
            ("M10x1", "M10 x 1"),
            ("m10 × 1.0", "M10 x 1"),
            ("M6", "M6 x 1"),
            ("M6x0.75", "M6 x 0.75"),
            ("2BA", "2 BA"),
            ("BA 2", "2 BA"),
            ("1/4 x 40 ME", "1/4 x 40 ME"),
            ("ME 1/4 x 40", "1/4 x 40 ME"),
            ("1/4-32 ME", "1/4 x 32 ME"),
            ("G 1/8", "G 1/8"),
            ("1/8 BSP", "G 1/8"),
            ("3/8 BSF", "3/8 BSF"),
            ("3/8 in x 20 BSF", "3/8 BSF"),
            ("BSW 1/4", "1/4 BSW"),
            ("1/2 x 26 brass", "1/2 BSB"),
        ] {
            let found = Thread::read(text).expect(text);
            assert_eq!(found.name, name, "{text}");
            let again = Thread::read(&found.name).expect("its own name");
            assert_eq!(again, found);
        }
    }

    #[test]
    fn a_size_without_a_series_or_outside_it_is_refused() {
        assert!(matches!(
            Thread::read("5/16 x 32"),
            Err(NotAThread::NoSeries { .. })
        ));
        assert!(matches!(
            Thread::read("ME 1/4"),
            Err(NotAThread::NoSize { .. })
        ));
        let Err(NotAThread::NoSize { near, .. }) = Thread::read("ME 1/4 x 36") else {
            panic!("36 threads an inch is no model series")
        };
        assert!(near.contains(&"1/4 x 40 ME".to_owned()), "{near:?}");
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]
        #[test]
        fn no_text_is_too_odd_to_be_refused(text in "\\PC{0,24}") {
            let _ = Thread::read(&text);
        }
    }
}
