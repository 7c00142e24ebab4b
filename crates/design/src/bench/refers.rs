//! Demands that features run true with each other.

use plant::part::Coaxial;

use super::fitting::Draft;
use super::rules::{REFERS, against};
use super::workshop::name;

/// Puts the features of each demand into its group.
pub(super) fn demands(draft: &mut Draft<'_>) {
    for demand in &draft.fitting.coaxial {
        let group = name(&demand.id);
        let Some(zone) = demand.within.value() else {
            draft.gaps.push(demand.within.path().to_owned());
            continue;
        };
        let Some(ids) = demand.of.get() else {
            draft.gaps.push(demand.of.path().to_owned());
            continue;
        };
        let path = demand.of.path();
        if ids.len() < 2 {
            let says = format!("{group} names {} feature; truth is between two", ids.len());
            draft
                .findings
                .push(against(&REFERS, path, says, REFERS.remedy));
        }
        for id in ids {
            join(
                draft,
                path,
                id,
                &Coaxial {
                    group: group.clone(),
                    zone,
                },
            );
        }
    }
}

fn join(draft: &mut Draft<'_>, path: &str, id: &str, demand: &Coaxial) {
    let steps = draft.fitting.steps.iter().map(|s| name(&s.id));
    let bores = draft.fitting.bores.iter().map(|b| name(&b.id));
    let known: Vec<String> = steps.chain(bores).collect();
    if !known.iter().any(|k| k == id) {
        let says = format!("there is no step or bore `{id}`");
        let remedy = format!("name one of {}", known.join(", "));
        draft.findings.push(against(&REFERS, path, says, remedy));
        return;
    }
    // In a tapped bore it is the thread that must run true; the hole under it only leads the tap.
    let thread = format!("{id}-thread");
    let tapped = draft.fitting.bores.iter().any(|b| name(&b.id) == id)
        && draft.features.iter().any(|f| f.id == thread);
    let wanted = if tapped { thread.as_str() } else { id };
    let Some(feature) = draft.features.iter_mut().find(|f| f.id == wanted) else {
        // A feature with a gap is not drawn; the gap is told.
        return;
    };
    match &feature.coaxial {
        None => feature.coaxial = Some(demand.clone()),
        Some(other) => {
            let says = format!("`{id}` stands in {} and in {}", other.group, demand.group);
            let remedy = "put all that must run true with it into one demand";
            draft.findings.push(against(&REFERS, path, says, remedy));
        }
    }
}
