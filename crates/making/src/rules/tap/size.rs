//! Whether the hole has the right size for its tap.

use formulas::thread::{HoleLimits, Thread};
use reckoning::quantity::{Length, MM, Ratio};
use reckoning::{Verdict, Working};

use super::{RULE, Tapping};
use crate::piece::Service;
use crate::rules::{Case, Seen, drawn};
use crate::simulate::Step;
use crate::words::percent;

/// A verdict on a share of thread: what is wrong, and which drill is better.
struct Judged {
    verdict: Verdict,
    wrong: &'static str,
    better: &'static str,
}

pub(super) fn look(
    case: &Case<'_>,
    step: &Step<'_>,
    tapping: &Tapping<'_>,
    hole: Length,
) -> Option<Seen> {
    let Ok(named) = Thread::read(&tapping.thread.designation) else {
        let says = format!(
            "{} is not a thread that is known here",
            tapping.thread.designation
        );
        let seen = Seen::new(&RULE, Verdict::Unproved, tapping.id, says);
        return Some(seen.else_cured_by("name the thread by its standard series"));
    };
    let form = named.series.form();
    let share = form.depth_share(named.major.mm(), named.pitch.mm(), hole.mm());
    let size = |length| drawn(case, tapping.id, length);
    let mut lines = Working::new();
    let inputs = [
        lines.know("D", "major diameter", &MM, &size(named.major)),
        lines.know("P", "pitch", &MM, &size(named.pitch)),
        lines.know("d", "hole", &MM, &size(hole)),
    ];
    lines
        .settled(form.cards().depth_share, &inputs, share)
        .ok()?;
    let limits = form.hole_limits();
    let judged = judge(Ratio::from_percent(share), &limits, case.piece.service);
    let (row, name, wrong) = (step.number, &named.name, judged.wrong);
    let (hole, share) = (case.card.reads.size(hole), percent(share));
    let says =
        format!("row {row} taps {name} in a hole of {hole}, {share} of a full thread{wrong}");
    let found = Seen::new(&RULE, judged.verdict, tapping.id, says).with(lines);
    let by_hand = format!("{name} runs in by hand over its whole length");
    Some(match judged.verdict {
        Verdict::Met => found,
        Verdict::MetOnCondition => found.on_condition(by_hand).else_cured_by(judged.better),
        _ => found.blaming([step.place]).else_cured_by(judged.better),
    })
}

fn judge(share: Ratio, limits: &HoleLimits, service: Service) -> Judged {
    let judged = |verdict, wrong, better| Judged {
        verdict,
        wrong,
        better,
    };
    let (bad, careful) = (Verdict::NotMet, Verdict::MetOnCondition);
    if share >= limits.jams {
        judged(bad, ": the tap cuts on its root and jams", "drill larger")
    } else if share < limits.pressure && service == Service::Pressure {
        judged(bad, ": too shallow for pressure", "drill smaller")
    } else if share > limits.tight {
        judged(careful, ": tight, the tap works hard", "drill larger")
    } else if share < limits.shallow {
        judged(careful, ": a shallow thread", "drill smaller")
    } else {
        judged(Verdict::Met, "", "")
    }
}
