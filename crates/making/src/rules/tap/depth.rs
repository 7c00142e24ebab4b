//! Whether the hole is deep enough for the lead of the tap.

use formulas::thread::{BLIND_DEPTH, blind_depth};
use plant::part::{End, Turned};
use reckoning::quantity::{Length, MM, ONE, Ratio};
use reckoning::{Verdict, Working};

use super::{RULE, Tapping};
use crate::rules::{Case, Seen, drawn, of_the_trade};
use crate::simulate::{Step, WITHIN_MM};

pub(super) fn look(
    case: &Case<'_>,
    step: &Step<'_>,
    tapping: &Tapping<'_>,
    hole: Length,
) -> Option<Seen> {
    let (row, words) = (step.number, tapping.tap.words());
    let new = |verdict, says: String| Seen::new(&RULE, verdict, tapping.id, says);
    let found = match room(&step.before, tapping, hole) {
        Room::Open => {
            let says = format!("row {row} taps a hole that is open at the far end of the thread");
            return Some(new(Verdict::Met, says));
        }
        Room::Deep(deep) => deep,
    };
    let (length, pitch) = (tapping.span.length(), tapping.thread.pitch);
    let wanted = blind_depth(length.mm(), tapping.tap.pitches(), pitch.mm());
    let wanted = Length::from_mm(wanted);
    let lines = working(case, tapping, length, wanted);
    let sizes = [found, length, wanted, wanted - found];
    let [deep, thread, wants, short] = sizes.map(|l| case.card.reads.size(l));
    if found.mm() + WITHIN_MM >= wanted.mm() {
        let says = format!(
            "row {row}: {deep} of full hole for {thread} of thread, the {words} wants {wants}"
        );
        return Some(new(Verdict::Met, says).with(lines));
    }
    let says = format!(
        "row {row}: the hole is {short} too shallow: {deep} of full diameter, and the {words} wants \
         {wants} for {thread} of thread"
    );
    let seen = new(Verdict::NotMet, says).with(lines).blaming([step.place]);
    Some(seen.else_cured_by(format!(
        "drill {short} deeper, or draw the thread {short} shorter"
    )))
}

/// What lies beyond the far end of a thread.
enum Room {
    /// A space at least as wide as the thread, or the open air.
    Open,
    /// The hole ends so deep from the mouth of the thread.
    Deep(Length),
}

fn room(shape: &Turned, tapping: &Tapping<'_>, hole: Length) -> Room {
    let mouth = match tapping.end {
        End::Low => tapping.span.from,
        End::High => tapping.span.to,
    };
    let inwards = |z: Length| match tapping.end {
        End::Low => (z - mouth).mm(),
        End::High => (mouth - z).mm(),
    };
    let mut pieces: Vec<(f64, f64, Length)> = shape
        .inside()
        .map(|p| {
            let (a, b) = (inwards(p.span.from), inwards(p.span.to));
            let narrow = if p.from < p.to { p.from } else { p.to };
            (a.min(b), a.max(b), narrow)
        })
        .collect();
    pieces.sort_by(|a, b| a.0.total_cmp(&b.0));
    let far = inwards(shape.span().from).max(inwards(shape.span().to));
    let mut reached = tapping.span.length().mm();
    for (from, to, narrow) in pieces {
        let wide = narrow.mm() + WITHIN_MM >= hole.mm();
        if wide && from <= reached + WITHIN_MM && to > reached {
            if narrow >= tapping.thread.major {
                return Room::Open;
            }
            reached = to;
        }
    }
    if reached + WITHIN_MM >= far {
        return Room::Open;
    }
    Room::Deep(Length::from_mm(reached))
}

fn working(case: &Case<'_>, tapping: &Tapping<'_>, length: Length, wanted: Length) -> Working {
    let mut lines = Working::new();
    let lead = Ratio::from_number(tapping.tap.pitches());
    let lead = of_the_trade(lead, "taps of the set", tapping.tap.words());
    let inputs = [
        lines.know(
            "L",
            "length of full thread",
            &MM,
            &drawn(case, tapping.id, length),
        ),
        lines.know("n", "lead of the tap, in pitches", &ONE, &lead),
        lines.know(
            "P",
            "pitch",
            &MM,
            &drawn(case, tapping.id, tapping.thread.pitch),
        ),
    ];
    if lines.settled(&BLIND_DEPTH, &inputs, wanted.mm()).is_err() {
        return Working::new();
    }
    lines
}
