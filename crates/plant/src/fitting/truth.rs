//! Demands that features of a fitting run true with each other.

use plan::Row;
use plan::section::{Coaxial, Fitting};
use reckoning::quantity::Length;

use super::{Draft, Fault};
use crate::part;

impl Draft {
    /// Puts the features of each demand into its group.
    pub(super) fn demands(&mut self, fitting: &Fitting) {
        for demand in &fitting.coaxial {
            let zone = self.wanted(&demand.within);
            let Some(ids) = demand.of.get() else {
                self.miss(demand.of.path());
                continue;
            };
            if ids.len() < 2 {
                self.made.faults.push(Fault::Alone {
                    field: demand.of.path().to_owned(),
                    group: demand.called(),
                    count: ids.len(),
                });
            }
            for id in zone
                .iter()
                .flat_map(|zone| ids.iter().map(move |id| (id, *zone)))
            {
                self.join(fitting, demand, id);
            }
        }
    }

    fn join(&mut self, fitting: &Fitting, demand: &Coaxial, (id, zone): (&String, Length)) {
        let field = demand.of.path().to_owned();
        let bores: Vec<String> = fitting.bores.iter().map(Row::called).collect();
        let tappable = bores.contains(id);
        let known: Vec<String> = fitting.steps.iter().map(Row::called).chain(bores).collect();
        if !known.contains(id) {
            let id = id.clone();
            self.made.faults.push(Fault::Stranger { field, id, known });
            return;
        }
        // In a tapped bore it is the thread that must run true; the hole under it only leads the
        // tap.
        let thread = format!("{id}-thread");
        let tapped = tappable && self.made.feature(&thread).is_some();
        let wanted = if tapped { &thread } else { id };
        let Some(feature) = self.made.features.iter_mut().find(|f| f.id == *wanted) else {
            // A feature with a gap is not drawn; the gap is told.
            return;
        };
        let group = demand.called();
        match &feature.coaxial {
            None => feature.coaxial = Some(part::Coaxial { group, zone }),
            Some(other) => self.made.faults.push(Fault::Twice {
                field,
                id: id.clone(),
                first: other.group.clone(),
                second: group,
            }),
        }
    }
}
