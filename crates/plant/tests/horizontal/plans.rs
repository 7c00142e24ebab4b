//! A plan that keeps every rule, invented for these tests, and ways to change it.

use plan::Plan;
use plant::{Resolved, resolve};
use reckoning::{Finding, Verdict};

/// A horizontal boiler, invented.
pub(crate) const GOOD: &str = r#"
format = 1
form = "horizontal, centre flue, cross tubes"

[room]
height = "240 mm"
width = "100 mm"
length = "230 mm"
mass = "3 kg"

[boiler]
metal = "CW024A"

[boiler.water-level]
working = "68 mm"
lowest = "65 mm"

[boiler.lagging]
thickness = "5 mm"

[boiler.barrel]
outside = "80 mm"
wall = "2 mm"
length = "180 mm"
seam = "seamless"

[boiler.flue]
outside = "41 mm"
wall = "1.5 mm"
below = "6 mm"
projection = "1 mm"
ovality = "0.2 mm"
seam = "seamless"
joint = "seen both sides"

[boiler.end.front]
thickness = "3 mm"
flange-height = "12 mm"
inside-radius = "3 mm"
flange = "towards the water"
set-in = "0 mm"

[boiler.end.back]
thickness = "3 mm"
flange-height = "12 mm"
inside-radius = "3 mm"
flange = "away from the water"

[boiler.cross-tubes]
count = 3
outside = "6 mm"
wall = "0.7 mm"
first = "80 mm"
spacing = "20 mm"
incline = "50°"
turn = "40°"
projection = "1.5 mm"
joint = "seen both sides"

[[boiler.stay]]
id = "top"
run = "plate to plate"
diameter = "5 mm"
radius = "26 mm"
angle = "0°"

[[boiler.bush]]
id = "valve"
on = "barrel"
along = "60 mm"
angle = "0°"
thread = "M8x1"
bore = "5 mm"
outside = "12 mm"
length-out = "6 mm"
length-in = "3 mm"
metal = "CW451K"

[[boiler.bush]]
id = "drain"
on = "barrel"
along = "30 mm"
angle = "180°"
thread = "M6x0.75"
bore = "4 mm"
outside = "10 mm"
length-out = "6 mm"
length-in = "2 mm"
metal = "CW451K"

[[boiler.bush]]
id = "feed"
on = "barrel"
along = "140 mm"
angle = "250°"
thread = "M6x0.75"
bore = "5 mm"
outside = "10 mm"
length-out = "6 mm"
length-in = "4 mm"
metal = "CW451K"

[[boiler.bush]]
id = "gauge"
on = "back end"
radius = "24.9 mm"
angle = "50°"
thread = "M6x0.75"
outside = "8 mm"
length-out = "6 mm"
length-in = "2 mm"
metal = "CW451K"

[burner]
place = "flue"

[burner.poker]
outside = "12 mm"
length = "60 mm"

[burner.mouth]
area = "400 mm2"

[smokebox]
outside = "84 mm"
wall = "1 mm"
height = "40 mm"
metal = "CW024A"

[chimney]
choke = "30 mm"
height = "130 mm"
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

/// The text of the good plan with pieces replaced.
pub(crate) fn text(changes: &[(&str, &str)]) -> String {
    let mut text = GOOD.to_owned();
    for (from, to) in changes {
        assert!(text.contains(from), "the plan has no `{from}`");
        text = text.replacen(from, to, 1);
    }
    text
}

/// The good plan with pieces of its text replaced, resolved.
pub(crate) fn changed(changes: &[(&str, &str)]) -> Resolved {
    resolve(&plan(&text(changes)))
}

/// The findings of one rule.
pub(crate) fn of<'a>(resolved: &'a Resolved, rule: &'a str) -> impl Iterator<Item = &'a Finding> {
    resolved.findings.iter().filter(move |f| f.rule.id == rule)
}

/// Whether a rule is broken.
pub(crate) fn broken(resolved: &Resolved, rule: &str) -> bool {
    of(resolved, rule).any(|f| f.verdict == Verdict::NotMet)
}
