//! Which drill goes before a tap, from the maker's own drawers.

use formulas::thread::{HoleLimits, Thread};
use reckoning::quantity::{Length, Ratio};

use crate::words::{Reads, percent};
use crate::workshop::Drill;

/// How much larger a drilled hole comes out than its drill (a published training page on
/// reamers and drills; small drills less).
const OVERSIZE_MM: f64 = 0.05;

/// A drill before a tap with the thread it leaves.
#[derive(Clone, Debug, PartialEq)]
pub struct TappingDrill {
    /// The drill.
    pub drill: Drill,
    /// Share of full depth by the size of the drill.
    pub share: Ratio,
    /// Share of full depth in the hole as it really comes out, a little larger than its drill.
    pub likely: Ratio,
}

/// The drill chosen, with its neighbours in the drawers.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// The thread.
    pub thread: Thread,
    /// Share asked.
    pub asked: Ratio,
    /// The drill chosen.
    pub chosen: TappingDrill,
    /// The next smaller drill, which leaves more thread.
    pub smaller: Option<TappingDrill>,
    /// The next larger drill, which leaves less.
    pub larger: Option<TappingDrill>,
}

/// No drill of the drawers will do.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("no drill at hand leaves between {} and {} of a full {thread}", percent(least.percent()), percent(most.percent()))]
pub struct NoDrill {
    /// Name of the thread.
    pub thread: String,
    /// Least share that would do.
    pub least: Ratio,
    /// Greatest share that would do.
    pub most: Ratio,
}

/// Chooses the drill whose share is nearest to the one asked, within the limits of the form.
///
/// # Errors
/// [`NoDrill`] where no drill lies within the limits.
pub fn choose(thread: &Thread, asked: Ratio, drills: &[Drill]) -> Result<Choice, NoDrill> {
    let limits = thread.series.form().hole_limits();
    let mut row: Vec<TappingDrill> = drills.iter().map(|d| tried(thread, d)).collect();
    row.sort_by(|a, b| a.drill.diameter.mm().total_cmp(&b.drill.diameter.mm()));
    let off = |d: &TappingDrill| (d.share.number() - asked.number()).abs();
    let best = row
        .iter()
        .enumerate()
        .filter(|(_, d)| within(d.share, &limits))
        .min_by(|a, b| off(a.1).total_cmp(&off(b.1)));
    let Some((place, chosen)) = best else {
        return Err(NoDrill {
            thread: thread.name.clone(),
            least: limits.pressure,
            most: limits.tight,
        });
    };
    // The same size may lie in two drawers: a neighbour is a drill of another size.
    let other = |d: &&TappingDrill| d.drill.diameter != chosen.drill.diameter;
    Ok(Choice {
        thread: thread.clone(),
        asked,
        smaller: row[..place].iter().rev().find(other).cloned(),
        larger: row[place + 1..].iter().find(other).cloned(),
        chosen: chosen.clone(),
    })
}

fn within(share: Ratio, limits: &HoleLimits) -> bool {
    limits.pressure <= share && share <= limits.tight
}

fn tried(thread: &Thread, drill: &Drill) -> TappingDrill {
    let share = |hole: Length| {
        let form = thread.series.form();
        Ratio::from_percent(form.depth_share(thread.major.mm(), thread.pitch.mm(), hole.mm()))
    };
    TappingDrill {
        drill: drill.clone(),
        share: share(drill.diameter),
        likely: share(drill.diameter + Length::from_mm(OVERSIZE_MM)),
    }
}

impl Choice {
    /// The choice in one sentence.
    #[must_use]
    pub fn sentence(&self, reads: Reads) -> String {
        let near = |d: &Option<TappingDrill>, word: &str| {
            d.as_ref().map_or_else(String::new, |d| {
                format!("; {word} {}, {}", d.drill.name, percent(d.share.percent()))
            })
        };
        format!(
            "for {} drill {} ({}): {} of a full thread, {} in the hole as it comes out{}{}",
            self.thread.name,
            self.chosen.drill.name,
            reads.size(self.chosen.drill.diameter),
            percent(self.chosen.share.percent()),
            percent(self.chosen.likely.percent()),
            near(&self.smaller, "next smaller"),
            near(&self.larger, "next larger"),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use reckoning::quantity::drill::NUMBER_DRILLS;

    fn tenths() -> Vec<Drill> {
        (5..=140)
            .map(|n| {
                let mm = f64::from(n) / 10.0;
                Drill {
                    name: format!("{mm} mm"),
                    diameter: Length::from_mm(mm),
                }
            })
            .collect()
    }

    fn numbers() -> Vec<Drill> {
        (1..)
            .zip(NUMBER_DRILLS)
            .map(|(n, inch): (u32, _)| Drill {
                name: format!("No {n}"),
                diameter: Length::from_inch(*inch),
            })
            .collect()
    }

    fn chosen(thread: &str, drills: &[Drill]) -> String {
        let thread = Thread::read(thread).expect(thread);
        let choice = choose(&thread, Ratio::from_percent(75.0), drills).expect("a drill");
        choice.chosen.drill.name
    }

    /// Tapping drills as a chart of a vintage engine club (BSW) and public pages (BA) print them.
    #[test]
    fn published_tapping_drills_are_chosen() {
        for (thread, drill) in [("1/4 BSW", "5.1 mm"), ("4 BA", "3 mm"), ("6 BA", "2.3 mm")] {
            assert_eq!(chosen(thread, &tenths()), drill, "{thread}");
        }
    }

    /// Independent calculation: nearest to 75 % from tenths of a millimetre and from numbers.
    #[test]
    fn drills_of_other_drawers_are_chosen_by_their_share() {
        for (thread, metric, number) in [
            ("M6 x 0.75", "5.3 mm", "No 4"),
            ("1/4 x 40 ME", "5.7 mm", "No 1"),
            ("1/4 x 32 ME", "5.6 mm", "No 2"),
            ("1/4 BSF", "5.4 mm", "No 3"),
            ("2 BA", "4 mm", "No 22"),
        ] {
            assert_eq!(chosen(thread, &tenths()), metric, "{thread}");
            assert_eq!(chosen(thread, &numbers()), number, "{thread}");
        }
    }

    #[test]
    fn a_drawer_without_a_fit_drill_is_told() {
        let thread = Thread::read("1/4 x 40 ME").expect("a thread");
        let fractions: Vec<Drill> = [7.0, 8.0]
            .map(|n| Drill {
                name: format!("{n}/32 in"),
                diameter: Length::from_inch(n / 32.0),
            })
            .to_vec();
        let told = choose(&thread, Ratio::from_percent(75.0), &fractions).expect_err("97.6 % jams");
        assert_eq!(
            told.to_string(),
            "no drill at hand leaves between 55 % and 88 % of a full 1/4 x 40 ME"
        );
    }
}
