//! The index of assumptions: numbers nobody has measured yet.

use crate::areas::areas;
use crate::{capital, cited, head, row};
use plan::{Registered, What};
use reckoning::Assumption;

/// The page.
pub(crate) fn page() -> String {
    let mut out = String::from(
        "# Assumptions\n\nA number that nobody has measured in your plant yet has a value, a range \
         and a source. The ends of the range are its 5 % and 95 % points. A prediction is given \
         with its band over all of them; a proof takes the worse end and is at best met on \
         condition. To replace one, give its field in the plan.\n",
    );
    let fields = plan::fields();
    for area in areas().iter().filter(|area| !area.assumptions.is_empty()) {
        out += &format!("\n## {}\n", capital(area.home));
        out += &head(&["what", "value", "range", "field", "from"]);
        for assumption in &area.assumptions {
            out += &row(&cells(assumption, &fields));
        }
    }
    out
}

fn cells(assumption: &Assumption, fields: &[Registered]) -> [String; 5] {
    let unit = assumption.unit.symbol;
    let is_field = fields
        .iter()
        .any(|field| field.path == assumption.field() && matches!(field.what, What::Field(_)));
    let field = if is_field {
        format!("`{}`", assumption.id)
    } else {
        "the size or tool that it speaks of".to_owned()
    };
    [
        assumption.meaning.to_owned(),
        format!("{} {unit}", assumption.value),
        format!("{} to {} {unit}", assumption.low, assumption.high),
        field,
        cited(&assumption.cite),
    ]
}
