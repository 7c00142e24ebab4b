//! A plan that keeps every rule, invented for these tests, and ways to change it.

use plan::Plan;
use plant::{Resolved, resolve};
use reckoning::{Finding, Verdict};

/// A vertical boiler, invented.
pub(crate) const GOOD: &str = r#"
format = 1
form = "vertical, wet firebox, fire tubes"

[room]
height = "500 mm"
width = "140 mm"
mass = "9 kg"

[boiler]
metal = "CW024A"

[boiler.water-level]
working = "140 mm"
lowest = "110 mm"

[boiler.lagging]
thickness = "6 mm"

[boiler.barrel]
outside = "108 mm"
wall = "2.5 mm"
length = "220 mm"
seam = "seamless"

[boiler.firebox]
outside = "84 mm"
wall = "2 mm"
height = "80 mm"
seam = "seamless"

[boiler.foundation-ring]
depth = "8 mm"
set-in = "2 mm"
joint = "seen both sides"

[boiler.firehole]
bore = "22 mm"
wall = "2 mm"
height = "34 mm"

[boiler.tube-plate.upper]
thickness = "3 mm"
flange-height = "14 mm"
inside-radius = "3 mm"
flange = "away from the water"
set-in = "11 mm"

[boiler.tube-plate.lower]
thickness = "3 mm"
flange-height = "14 mm"
inside-radius = "3 mm"
flange = "away from the water"
set-in = "0 mm"

[boiler.tubes]
outside = "10 mm"
wall = "0.8 mm"
layout = "triangular"
pitch = "13.5 mm"
margin = "4 mm"
count = 12
projection = "1 mm"
hole = "10 mm"
joint = "seen both sides"

[[boiler.bush]]
id = "valve"
on = "upper tube plate"
radius = "35.4 mm"
angle = "0°"
thread = "M10x1"
outside = "14 mm"
length-out = "6 mm"
length-in = "3 mm"
metal = "CW451K"

[[boiler.bush]]
id = "steam"
on = "barrel"
height = "190 mm"
angle = "180°"
thread = "M8x1"
bore = "5 mm"
outside = "12 mm"
length-out = "6 mm"
length-in = "3 mm"
metal = "CW451K"

[[boiler.stay]]
id = "leg"
run = "firebox to barrel"
diameter = "4 mm"
height = "50 mm"
angle = "120°"

[grate]
diameter = "76 mm"
free-area = "40 %"
height = "12 mm"

[fire]
depth = "30 mm"

[smokebox]
outside = "108 mm"
wall = "1 mm"
height = "50 mm"

[chimney]
choke = "16 mm"
parallel = "80 mm"
top = "20 mm"
height = "120 mm"

[dryer]
outside = "5 mm"
wall = "0.7 mm"
length = "400 mm"
coil = "60 mm"
place = "smokebox"
"#;

/// The plan of this text.
///
/// # Panics
/// When the text does not read.
pub(crate) fn plan(text: &str) -> Plan {
    let read = plan::read(text, "plan.toml");
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    read.content
}

/// The good plan with pieces of its text replaced, resolved.
pub(crate) fn changed(changes: &[(&str, &str)]) -> Resolved {
    let mut text = GOOD.to_owned();
    for (from, to) in changes {
        assert!(text.contains(from), "the plan has no `{from}`");
        text = text.replacen(from, to, 1);
    }
    resolve(&plan(&text))
}

/// The findings of one rule.
pub(crate) fn of<'a>(resolved: &'a Resolved, rule: &'a str) -> impl Iterator<Item = &'a Finding> {
    resolved.findings.iter().filter(move |f| f.rule.id == rule)
}

/// Whether a rule is broken.
pub(crate) fn broken(resolved: &Resolved, rule: &str) -> bool {
    of(resolved, rule).any(|f| f.verdict == Verdict::NotMet)
}
