//! A card held against the rules, and for each fault the nearest order that avoids it.

use std::collections::BTreeMap;

use reckoning::{Finding, Verdict};

use crate::card::{Operation, Place, RouteCard};
use crate::piece::Piece;
use crate::rules::{Case, Seen, look};
use crate::simulate::{Simulated, simulate};

/// A card that was run and judged.
#[derive(Debug)]
pub struct Checked<'a> {
    /// The run.
    pub run: Simulated<'a>,
    /// What the rules found, good and bad.
    pub findings: Vec<Finding>,
}

impl Checked<'_> {
    /// Whether no rule is broken or left open.
    #[must_use]
    pub fn breaks_no_rule(&self) -> bool {
        self.findings
            .iter()
            .all(|f| matches!(f.verdict, Verdict::Met | Verdict::MetOnCondition))
    }
}

/// Runs a card on the shape and holds it against every rule.
#[must_use]
pub fn check<'a>(card: &'a RouteCard, piece: &Piece) -> Checked<'a> {
    let run = simulate(card, piece);
    let seen = look(&Case {
        card,
        piece,
        run: &run,
    });
    let mut search = Search::new(card, piece, &seen);
    let findings = seen.into_iter().map(|s| finding(s, &mut search)).collect();
    Checked { run, findings }
}

/// How many rules a card breaks or leaves open, and how many conditions it makes.
pub(crate) fn count(card: &RouteCard, piece: &Piece) -> (usize, usize) {
    let run = simulate(card, piece);
    let seen = look(&Case {
        card,
        piece,
        run: &run,
    });
    let of = |wanted: &[Verdict]| seen.iter().filter(|s| wanted.contains(&s.verdict)).count();
    (
        of(&[Verdict::NotMet, Verdict::Unproved]),
        of(&[Verdict::MetOnCondition]),
    )
}

fn finding(seen: Seen, search: &mut Search<'_>) -> Finding {
    let remedy = match seen.verdict {
        Verdict::Met => None,
        Verdict::NotMet => Some(
            search
                .cure(&seen)
                .or_else(|| seen.otherwise.clone())
                .unwrap_or_else(|| seen.rule.remedy.to_owned()),
        ),
        Verdict::MetOnCondition | Verdict::Unproved => Some(
            seen.otherwise
                .clone()
                .unwrap_or_else(|| seen.rule.remedy.to_owned()),
        ),
    };
    let own = seen.rule.cite.source.seen.into();
    Finding {
        rule: seen.rule,
        set: "",
        verdict: seen.verdict,
        tight: false,
        conditions: seen.conditions,
        place: seen.place,
        says: seen.says,
        remedy,
        margin: seen.margin,
        weakest_origin: seen.working.weakest().max(own),
        working: seen.working,
    }
}

/// A fault by its rule and place, so that it can be found again on another card.
type Key = (&'static str, String);

/// A changed card: in words, how far it is from the one given, the faults left on it, and how
/// many conditions it makes.
struct Change {
    says: String,
    far: usize,
    left: Vec<Key>,
    asks: usize,
}

impl Change {
    /// Fewest faults, then fewest conditions, then nearest.
    fn rank(&self) -> (usize, usize, usize) {
        (self.left.len(), self.asks, self.far)
    }
}

/// The search for a near order. Every row is tried in every place at most once.
struct Search<'a> {
    card: &'a RouteCard,
    piece: &'a Piece,
    faults: usize,
    moves: BTreeMap<Place, Vec<Change>>,
}

impl<'a> Search<'a> {
    fn new(card: &'a RouteCard, piece: &'a Piece, seen: &[Seen]) -> Self {
        Self {
            card,
            piece,
            faults: keys(seen).len(),
            moves: BTreeMap::new(),
        }
    }

    /// The smallest change of order that takes this fault away and leaves fewer faults in all.
    fn cure(&mut self, seen: &Seen) -> Option<String> {
        let key = (seen.rule.id, seen.place.clone());
        let faults = self.faults;
        let cures = |c: &Change| c.left.len() < faults && !c.left.contains(&key);
        for row in &seen.blamed {
            if !self.moves.contains_key(row) {
                let tried = self.tried(*row);
                self.moves.insert(*row, tried);
            }
        }
        let struck: Vec<Change> = if seen.idle {
            seen.blamed.iter().map(|row| self.struck(*row)).collect()
        } else {
            Vec::new()
        };
        let moves = seen
            .blamed
            .iter()
            .filter_map(|row| self.moves.get(row))
            .flatten();
        let found = struck
            .iter()
            .chain(moves)
            .filter(|c| cures(c))
            .min_by_key(|c| c.rank());
        if let Some(change) = found {
            return Some(change.says.clone());
        }
        let near = seen.blamed.first().map_or(0, |row| self.card.number(*row));
        seen.missing
            .iter()
            .flat_map(|operation| self.added(operation, near))
            .filter(cures)
            .min_by_key(Change::rank)
            .map(|c| c.says)
    }

    /// The row struck out.
    fn struck(&self, row: Place) -> Change {
        let word = self.card.settings[row.setting].rows[row.row]
            .operation
            .work
            .word();
        let says = format!("strike row {} ({word}) out", self.card.number(row));
        self.changed(says, 0, &self.card.without(row))
    }

    /// The row moved to every other place.
    fn tried(&self, from: Place) -> Vec<Change> {
        let taken = self.card.without(from);
        let word = self.card.settings[from.setting].rows[from.row]
            .operation
            .work
            .word();
        let number = self.card.number(from);
        places(&taken)
            .filter(|to| *to != from)
            .map(|to| {
                let card = self.card.moved(from, to);
                let far = number.abs_diff(card.number(to));
                let says = format!("move row {number} ({word}) {}", self.beside(from, to));
                self.changed(says, far, &card)
            })
            .collect()
    }

    /// Where a moved row comes to stand, by the numbers of the card as given.
    fn beside(&self, from: Place, to: Place) -> String {
        let back = |row: usize| {
            let shifted = to.setting == from.setting && row >= from.row;
            Place {
                setting: to.setting,
                row: if shifted { row + 1 } else { row },
            }
        };
        let rows = self.card.settings[to.setting].rows.len();
        let left = if to.setting == from.setting {
            rows - 1
        } else {
            rows
        };
        let setting = if to.setting == from.setting {
            String::new()
        } else {
            format!(", in setting {}", to.setting + 1)
        };
        match to.row.checked_sub(1) {
            Some(before) => format!("after row {}{setting}", self.card.number(back(before))),
            None if left > 0 => format!("before row {}{setting}", self.card.number(back(0))),
            None => format!("to setting {}", to.setting + 1),
        }
    }

    /// An operation added in every place, the nearest to row `near` being the nearest card.
    fn added(&self, operation: &Operation, near: usize) -> Vec<Change> {
        let word = operation.work.word();
        let what = operation
            .makes
            .as_ref()
            .map_or_else(String::new, |id| format!(" {id}"));
        places(self.card)
            .map(|at| {
                let card = self.card.inserted(at, operation.clone());
                let says = match at.row.checked_sub(1) {
                    Some(row) => format!(
                        "{word}{what} after row {}",
                        self.card.number(Place { row, ..at })
                    ),
                    None => format!("{word}{what} first in setting {}", at.setting + 1),
                };
                self.changed(says, self.card.number(at).abs_diff(near), &card)
            })
            .collect()
    }

    fn changed(&self, says: String, far: usize, card: &RouteCard) -> Change {
        let run = simulate(card, self.piece);
        let seen = look(&Case {
            card,
            piece: self.piece,
            run: &run,
        });
        Change {
            says,
            far,
            left: keys(&seen),
            asks: seen
                .iter()
                .filter(|s| s.verdict == Verdict::MetOnCondition)
                .count(),
        }
    }
}

/// Every place at which a row may be put.
fn places(card: &RouteCard) -> impl Iterator<Item = Place> + '_ {
    card.settings
        .iter()
        .enumerate()
        .flat_map(|(setting, s)| (0..=s.rows.len()).map(move |row| Place { setting, row }))
}

/// The faults of a card. An answer left open counts as one.
fn keys(seen: &[Seen]) -> Vec<Key> {
    seen.iter()
        .filter(|s| matches!(s.verdict, Verdict::NotMet | Verdict::Unproved))
        .map(|s| (s.rule.id, s.place.clone()))
        .collect()
}
