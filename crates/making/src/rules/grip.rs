//! A piece is held by a surface that is there, long enough for the work that sticks out.

use plant::part::{End, Feature, Form, Span, Surface, Turned};
use reckoning::formula::Cite;
use reckoning::quantity::Length;
use reckoning::{Rule, Verdict};

use super::{Case, Seen};
use crate::card::{Facing, Place, Setting};
use crate::simulate::{Step, WITHIN_MM};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.grip",
    sentence: "Each setting holds a plain surface that is there, clear of the cut, long enough for what sticks out.",
    remedy: "Hold another surface, or hold it before it is cut away.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "length of grip and overhang in the lathe",
    },
};

/// Overhang over grip up to which nothing is said, and up to which care is asked.
const OVERHANG: (f64, f64) = (3.0, 5.0);
/// A disc seated back on the jaws: least grip, share of its diameter, and overhang it may have.
const DISC: (f64, f64, f64) = (3.0, 0.05, 0.5);

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    (0..case.card.settings.len())
        .flat_map(|i| setting(case, i))
        .collect()
}

fn setting(case: &Case<'_>, index: usize) -> Vec<Seen> {
    let setting = &case.card.settings[index];
    let shape = match index.checked_sub(1) {
        Some(before) => &case.run.after_setting[before],
        None => &case.card.stock,
    };
    let steps = case.run.steps.iter();
    let steps: Vec<&Step<'_>> = steps.filter(|s| s.place.setting == index).collect();
    if steps.is_empty() {
        return Vec::new();
    }
    let name = format!("setting {}", index + 1);
    let diameter = match surface(case, setting, shape) {
        Held::On(diameter) => diameter,
        Held::Not(why) => {
            let says = format!("{name}: {why}");
            let seen = Seen::new(&RULE, Verdict::NotMet, name, says);
            let cutters = cutters(case, setting.grip, index);
            return vec![seen.blaming(cutters).else_cured_by("hold another surface")];
        }
    };
    let mut found = in_the_jaws(case, setting, &steps, &name);
    let reads = case.card.reads;
    if let Facing::End(end) = setting.facing {
        found.push(overhang(case, setting, end, (diameter, &steps, &name)));
    } else if found.is_empty() {
        let (on, over) = (reads.size(diameter), reads.size(setting.grip.length()));
        let says = format!("{name}: held on {on} over {over}");
        found.push(Seen::new(&RULE, Verdict::Met, name, says));
    }
    found
}

/// Rows before a setting that cut the stretch it wants to hold.
fn cutters(case: &Case<'_>, grip: Span, setting: usize) -> Vec<Place> {
    case.run
        .steps
        .iter()
        .filter(|s| s.place.setting < setting)
        .filter(|s| s.cut.as_ref().is_some_and(|f| outside_cut(f, grip)))
        .map(|s| s.place)
        .collect()
}

/// Whether a cut changes the outside over a stretch.
fn outside_cut(feature: &Feature, stretch: Span) -> bool {
    match &feature.form {
        Form::Turned { surface, span, .. } | Form::Threaded { surface, span, .. } => {
            *surface == Surface::Outside && span.shared(stretch).is_some()
        }
        Form::Flats(flats) => flats.span.shared(stretch).is_some(),
        Form::Face { .. } | Form::Drilled { .. } | Form::Cross(_) => false,
    }
}

/// What a grip finds.
enum Held {
    /// A plain surface of this diameter.
    On(Length),
    /// Nothing that can be held, and why.
    Not(String),
}

fn surface(case: &Case<'_>, setting: &Setting, shape: &Turned) -> Held {
    let (grip, reads) = (setting.grip, case.card.reads);
    let stretch = format!(
        "the stretch from {} to {}",
        reads.size(grip.from),
        reads.size(grip.to)
    );
    let parts: Vec<_> = shape
        .outside()
        .filter_map(|p| p.span.shared(grip).map(|s| (s.length(), p)))
        .collect();
    let covered: Length = parts.iter().map(|(length, _)| *length).sum();
    let whole = grip.length().mm() > 0.0 && (covered - grip.length()).mm().abs() <= WITHIN_MM;
    let Some(diameter) = parts.first().map(|(_, p)| p.from).filter(|_| whole) else {
        return Held::Not(format!("{stretch} is not all there to be held"));
    };
    let same = |d: Length| (d - diameter).mm().abs() < WITHIN_MM;
    if !parts.iter().all(|(_, p)| same(p.from) && same(p.to)) {
        return Held::Not(format!(
            "{stretch} is stepped or tapered and cannot be held"
        ));
    }
    let mut outside = shape
        .threads()
        .filter(|(_, surface, ..)| *surface == Surface::Outside);
    let threaded = outside.any(|(_, _, span, _)| span.shared(grip).is_some());
    if threaded && !setting.holder.hold.is_kind() {
        return Held::Not(format!("bare jaws would close on a thread over {stretch}"));
    }
    let (least, most) = setting.holder.takes;
    if diameter < least || diameter > most {
        let what = setting.holder.hold.words();
        let [held, least, most] = [diameter, least, most].map(|d| reads.size(d));
        return Held::Not(format!(
            "{held} is outside what the {what} takes, {least} to {most}"
        ));
    }
    Held::On(diameter)
}

/// Rows that would cut in the jaws.
fn in_the_jaws(case: &Case<'_>, setting: &Setting, steps: &[&Step<'_>], name: &str) -> Vec<Seen> {
    steps
        .iter()
        .filter(|s| s.held)
        .filter(|s| match (&s.cut, setting.facing) {
            (Some(f), Facing::End(_)) => outside_cut(f, setting.grip),
            (Some(f), Facing::Side) => f.form.span().is_some_and(|span| {
                matches!(f.form, Form::Cross(_)) && span.shared(setting.grip).is_some()
            }),
            (None, _) => false,
        })
        .map(|s| {
            let says = format!(
                "{name}: row {} ({}) cuts where the piece is held",
                s.number,
                s.operation.work.word()
            );
            Seen::new(&RULE, Verdict::NotMet, name, says)
                .blaming([s.place])
                .else_cured_by(format!(
                    "hold the piece elsewhere, or do row {} in another setting",
                    case.card.number(s.place)
                ))
        })
        .collect()
}

fn overhang(
    case: &Case<'_>,
    setting: &Setting,
    end: End,
    (held, steps, name): (Length, &[&Step<'_>], &str),
) -> Seen {
    let reads = case.card.reads;
    let grip = setting.grip.length();
    let out = steps
        .iter()
        .filter(|s| s.held)
        .map(|s| match end {
            End::Low => (setting.grip.from - s.before.span().from).mm(),
            End::High => (s.before.span().to - setting.grip.to).mm(),
        })
        .fold(0.0_f64, f64::max);
    let out = Length::from_mm(out);
    let says = format!(
        "{name}: {} sticks out of a grip of {} on {}",
        reads.size(out),
        reads.size(grip),
        reads.size(held)
    );
    let disc = grip.mm() >= DISC.0.max(DISC.1 * held.mm()) && out.mm() <= DISC.2 * held.mm();
    let ratio = out / grip;
    if disc || ratio <= OVERHANG.0 {
        return Seen::new(&RULE, Verdict::Met, name, says);
    }
    let wanted = reads.size(out / OVERHANG.0);
    if ratio <= OVERHANG.1 {
        return Seen::new(&RULE, Verdict::MetOnCondition, name, says)
            .on_condition(format!("light cuts in {name}, or a grip of {wanted}"));
    }
    let says = format!("{says}: the piece rocks or is pulled out");
    Seen::new(&RULE, Verdict::NotMet, name, says)
        .else_cured_by(format!("hold {wanted}, or support the end"))
}
