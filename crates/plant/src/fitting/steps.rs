//! The outside of a fitting: its steps, left to right.

use plan::Row;
use plan::section::{Fitting, Step};
use reckoning::quantity::Length;

use super::{Draft, thread_id, zero};
use crate::part::{End, Feature, Form, Span, Surface};

impl Draft {
    /// Draws the steps; gives the length of all together.
    pub(super) fn steps(&mut self, fitting: &Fitting) -> Option<Length> {
        let steps = &fitting.steps;
        if steps.is_empty() {
            self.miss(&format!("fitting.{}.step", fitting.called()));
            return None;
        }
        let diameters: Vec<Option<Length>> = steps.iter().map(|s| self.size(&s.diameter)).collect();
        let mut reached = Some(zero());
        for (index, step) in steps.iter().enumerate() {
            let length = self.size(&step.length);
            let end = reached.zip(length).map(|(from, length)| from + length);
            if let (Some(from), Some(to), Some(diameter)) = (reached, end, diameters[index]) {
                let free = free_end(&diameters, index);
                self.step(step, (Span { from, to }, diameter), free);
            }
            reached = end;
        }
        reached
    }

    fn step(&mut self, step: &Step, (span, diameter): (Span, Length), free: End) {
        let cylinder = Form::cylinder(Surface::Outside, span, diameter);
        self.push(Feature::new(step.called(), cylinder), &step.diameter);
        if let Some((thread, _)) = self.thread(&step.thread)
            && let Some(full) = self.size(&step.thread_length)
        {
            let form = Form::Threaded {
                surface: Surface::Outside,
                span: span.first(free, full),
                thread,
            };
            self.made.features.push(Feature::new(thread_id(step), form));
        }
        if let Some(chamfer) = self.given(&step.chamfer) {
            let small = diameter - chamfer * 2.0;
            let (from, to) = match free {
                End::Low => (small, diameter),
                End::High => (diameter, small),
            };
            let form = Form::Turned {
                surface: Surface::Outside,
                span: span.first(free, chamfer),
                from,
                to,
            };
            let id = format!("{}-chamfer", step.called());
            self.made.features.push(Feature::new(id, form));
        }
    }
}

/// The end at which a die or a nut comes on: where nothing wider stands before it. Where both
/// ends are open it is the end of the part itself, else the left.
fn free_end(diameters: &[Option<Length>], index: usize) -> End {
    let own = diameters[index];
    let open = |side: &[Option<Length>]| side.iter().all(|d| *d <= own);
    let (left, right) = (open(&diameters[..index]), open(&diameters[index + 1..]));
    let last = index > 0 && index + 1 == diameters.len();
    if right && (last || !left) {
        End::High
    } else {
        End::Low
    }
}
