//! The leading dimensions of a horizontal boiler.
//!
//! Along the axis: lengths from the front below, heights on the left, the rest called out on the
//! right. Across it: the diameter of the barrel below, levels on the left, the rest called out.

use reckoning::quantity::{Angle, DEGREE, Length, Quantity};

use super::View;
use super::across::at_angles;
use super::sizes::{Bush, CrossTubes, LyingBoiler, Over, Pipe};
use crate::boiler::TubePlate;
use crate::layout::{Callout, Measure, Side, about_axis, callouts_right, from_datum};
use crate::lettering::{DIAMETER, figure, short};
use crate::sheet::{At, at};

/// Room between metal and the nearest extension of a dimension, mm.
const ROOM: f64 = 3.0;

impl View {
    pub(super) fn along_dimensions(&mut self, boiler: &LyingBoiler) {
        let (low, high) = boiler.ends();
        let heights = self.heights(boiler, at(0.0, 0.0));
        let front = self.paper(low) - ROOM;
        from_datum(&mut self.sheet, Side::Left, front, &heights);
        let deep = self.lowest_bush(boiler);
        let lengths = self.lengths(boiler);
        from_datum(&mut self.sheet, Side::Below, deep - ROOM, &lengths);
        let mut callouts = self.shells(boiler);
        callouts.extend(self.details(boiler));
        let edge = at(self.paper(high) + 8.0, 0.0);
        callouts_right(&mut self.sheet, edge, &callouts);
    }

    pub(super) fn across_dimensions(&mut self, boiler: &LyingBoiler) {
        let reach = self.reach(boiler);
        let barrel = &boiler.barrel;
        let (r, axis) = (self.paper(barrel.outside / 2.0), self.paper(barrel.axis));
        let levels = self.levels(boiler, -r);
        from_datum(&mut self.sheet, Side::Left, -reach - ROOM, &levels);
        let (name, size) = diameter_of(boiler, "barrel", barrel);
        let half = self.paper(size / 2.0);
        let over = Measure {
            says: across(boiler, &name, size),
            points: [at(-half, axis), at(half, axis)],
            name,
        };
        about_axis(&mut self.sheet, Side::Below, axis - reach - ROOM, &[over]);
        let callouts = self.round_callouts(boiler);
        callouts_right(&mut self.sheet, at(reach + 8.0, 0.0), &callouts);
    }

    /// How far bushes reach below the barrel in the section along the axis, or its underside.
    fn lowest_bush(&self, boiler: &LyingBoiler) -> f64 {
        let below = boiler.bushes.iter().filter(|b| b.over == Over::Bottom);
        let ends = below.map(|bush| self.paper(boiler.barrel.axis - end_of(boiler, bush)));
        ends.fold(
            self.paper(boiler.barrel.axis - boiler.barrel.outside / 2.0),
            f64::min,
        )
    }

    /// How far anything reaches from the middle of the section across.
    fn reach(&self, boiler: &LyingBoiler) -> f64 {
        let bushes = boiler.bushes.iter().map(|b| self.paper(end_of(boiler, b)));
        bushes.fold(self.paper(boiler.barrel.outside / 2.0), f64::max)
    }

    /// Levels of the water above the underside of the barrel, taken at a place across.
    fn levels(&self, boiler: &LyingBoiler, x: f64) -> Vec<Measure> {
        let levels = [
            ("height of the lowest water", boiler.lowest),
            ("height of the water level", boiler.water_level),
        ];
        let known = levels.into_iter().filter_map(|(n, z)| Some((n, z?)));
        known
            .map(|(name, z)| Measure {
                name: name.to_owned(),
                says: says(boiler, name, z),
                points: [at(x, 0.0), at(x, self.paper(z))],
            })
            .collect()
    }

    fn heights(&self, boiler: &LyingBoiler, datum: At) -> Vec<Measure> {
        let mut heights = self.levels(boiler, datum.x);
        let (name, size) = diameter_of(boiler, "barrel", &boiler.barrel);
        let (low, high) = (
            self.paper(boiler.barrel.axis - size / 2.0),
            self.paper(boiler.barrel.axis + size / 2.0),
        );
        heights.push(Measure {
            says: across(boiler, &name, size),
            points: [datum.moved(0.0, low), datum.moved(0.0, high)],
            name,
        });
        heights.extend(boiler.chimney.map(|chimney| {
            let x = self.paper(chimney.along - chimney.mouth / 2.0);
            Measure {
                name: "height of the chimney".to_owned(),
                says: figure(chimney.top),
                points: [datum, at(x, self.paper(chimney.top))],
            }
        }));
        heights
    }

    /// Lengths from the front of the barrel.
    fn lengths(&self, boiler: &LyingBoiler) -> Vec<Measure> {
        let barrel = &boiler.barrel;
        let under = self.paper(barrel.axis - barrel.outside / 2.0);
        let length = |name: String, says: String, to: At| Measure {
            name,
            says,
            points: [at(0.0, under), to],
        };
        let name = "length of the barrel";
        let end = at(self.paper(barrel.to), under);
        let mut lengths = vec![length(name.to_owned(), says(boiler, name, barrel.to), end)];
        lengths.extend(boiler.smokebox.map(|smokebox| {
            let under = self.paper(smokebox.axis - smokebox.outside / 2.0);
            let end = at(self.paper(smokebox.to), under);
            length(
                "length over the smokebox".to_owned(),
                figure(smokebox.to),
                end,
            )
        }));
        let below = boiler.bushes.iter().filter(|b| b.over == Over::Bottom);
        lengths.extend(below.map(|bush| {
            let name = format!("place of {}", bush.id);
            let end = self.paper(barrel.axis - end_of(boiler, bush));
            let to = at(self.paper(bush.along), end);
            let says = says(boiler, &name, bush.along);
            length(name, says, to)
        }));
        lengths
    }

    fn call(&self, name: impl Into<String>, says: String, tip: At) -> Callout {
        Callout {
            name: name.into(),
            says,
            tip,
        }
    }

    fn shells(&self, boiler: &LyingBoiler) -> Vec<Callout> {
        let (barrel, flue) = (&boiler.barrel, &boiler.flue);
        let far = barrel.from + (barrel.to - barrel.from) * 0.93;
        let top = barrel.axis + barrel.outside / 2.0;
        let wall = |what: &str, pipe: &Pipe| {
            let thick = says(boiler, &format!("wall of the {what}"), pipe.wall);
            format!("{what}, {thick} wall")
        };
        let (name, size) = diameter_of(boiler, "flue", flue);
        let of_flue = format!(
            "flue {} × {} wall, {} below the middle",
            across(boiler, &name, size),
            says(boiler, "wall of the flue", flue.wall),
            says(boiler, "flue below the middle", barrel.axis - flue.axis),
        );
        let near = flue.from + (flue.to - flue.from) * 0.96;
        let edge = flue.axis + flue.outside / 2.0;
        let mut callouts = vec![
            self.call(
                "wall of the barrel",
                wall("barrel", barrel),
                self.spot(far, top),
            ),
            self.call("flue", of_flue, self.spot(near, edge)),
        ];
        let ends = [("front end", &boiler.front), ("back end", &boiler.back)];
        callouts.extend(ends.map(|(what, end)| self.end_callout(boiler, what, end)));
        callouts
    }

    /// A place of the section along the axis.
    fn spot(&self, along: Length, height: Length) -> At {
        at(self.paper(along), self.paper(height))
    }

    fn end_callout(&self, boiler: &LyingBoiler, what: &str, end: &TubePlate) -> Callout {
        let name = format!("thickness of the {what}");
        let said = format!("{what}, {} thick", says(boiler, &name, end.thickness));
        // The arrow ends in the flat part, between flue and bend.
        let bend = end.flange.map_or(Length::from_mm(0.0), |f| f.inside_radius);
        let flat = end.outside / 2.0 - end.thickness - bend;
        let flue = boiler.flue.axis - boiler.flue.outside / 2.0;
        let low = boiler.barrel.axis - flat;
        let along = end.underside + end.thickness / 2.0;
        self.call(name, said, self.spot(along, (flue + low) / 2.0))
    }

    fn details(&self, boiler: &LyingBoiler) -> Vec<Callout> {
        let flue = &boiler.flue;
        let mut callouts = Vec::new();
        if let Some(tubes) = &boiler.tubes {
            callouts.extend(self.tube_callouts(boiler, tubes));
        }
        if let Some(poker) = boiler.poker {
            let said = format!(
                "burner {}, ports over {} from the mouth",
                across(boiler, "outside diameter of the burner", poker.outside),
                says(boiler, "length of the ports", poker.length),
            );
            let tip = self.spot(flue.from + poker.length, flue.axis + poker.outside / 4.0);
            callouts.push(self.call("burner", said, tip));
        }
        if let Some(chimney) = boiler.chimney {
            let name = "bore of the chimney";
            let said = format!("chimney, choke {}", across(boiler, name, chimney.choke));
            let y = chimney.bottom + (chimney.taper - chimney.bottom) * 0.3;
            let tip = self.spot(chimney.along + chimney.choke / 2.0, y);
            callouts.push(self.call(name, said, tip));
        }
        let top = boiler.bushes.iter().filter(|b| b.over == Over::Top);
        callouts.extend(top.map(|bush| {
            let name = format!("place of {}", bush.id);
            let place = says(boiler, &name, bush.along);
            let said = format!("{}, {place} from the front", bush.id);
            let end = boiler.barrel.axis + end_of(boiler, bush);
            self.call(name, said, self.spot(bush.along + bush.hole / 2.0, end))
        }));
        callouts
    }

    /// What the tubes are, told of the last; where they stand, told of the first.
    fn tube_callouts(&self, boiler: &LyingBoiler, tubes: &CrossTubes) -> Vec<Callout> {
        let (Some(first), Some(last)) = (tubes.tubes.first(), tubes.tubes.last()) else {
            return Vec::new();
        };
        let axis = boiler.flue.axis;
        let quarter = boiler.flue.bore() / 4.0;
        let over = across(boiler, "outside diameter of a cross tube", tubes.outside);
        let wall = says(boiler, "wall of a cross tube", tubes.wall);
        let count = tubes.tubes.len();
        let what = format!("{count} cross tubes {over} × {wall} wall");
        let from_mouth = first.along - boiler.flue.from;
        let mut place = format!(
            "first {} from the mouth",
            says(boiler, "first cross tube", from_mouth)
        );
        if let [a, b, ..] = tubes.tubes.as_slice() {
            let apart = says(boiler, "spacing of the cross tubes", b.along - a.along);
            place += &format!(", then every {apart}");
        }
        let half = tubes.outside / 2.0;
        vec![
            self.call(
                "cross tubes",
                what,
                self.spot(last.along + half, axis - quarter),
            ),
            self.call(
                "place of the cross tubes",
                place,
                self.spot(first.along + half, axis - quarter * 1.3),
            ),
        ]
    }

    fn round_callouts(&self, boiler: &LyingBoiler) -> Vec<Callout> {
        let (barrel, flue) = (&boiler.barrel, &boiler.flue);
        let thick = says(boiler, "wall of the barrel", barrel.wall);
        let (name, size) = diameter_of(boiler, "flue", flue);
        let below = says(boiler, "flue below the middle", barrel.axis - flue.axis);
        let of_flue = format!(
            "flue {}, {below} below the middle",
            across(boiler, &name, size)
        );
        let mut callouts = vec![
            self.call(
                "wall of the barrel",
                format!("barrel, {thick} wall"),
                self.on(barrel, barrel.outside / 2.0, 35.0),
            ),
            self.call("flue", of_flue, self.on(flue, flue.outside / 2.0, -12.0)),
        ];
        let tubes = boiler.tubes.as_ref();
        if let Some((tubes, first)) = tubes.and_then(|t| Some((t, t.tubes.first()?))) {
            let tip = self.on(flue, tubes.length / 2.0, DEGREE.from_si(first.angle.si()));
            let said = turns_of_tubes(boiler, first.angle);
            callouts.push(self.call("cross tubes", said, tip));
        }
        let groups = at_angles(&boiler.bushes);
        callouts.extend(groups.iter().map(|group| self.bush_callout(boiler, group)));
        callouts
    }

    /// A place about the axis of a pipe in the section across it, against the clock from the right.
    fn on(&self, pipe: &Pipe, radius: Length, degrees: f64) -> At {
        let (sine, cosine) = degrees.to_radians().sin_cos();
        let r = self.paper(radius);
        at(r * cosine, self.paper(pipe.axis) + r * sine)
    }

    /// Bushes at one angle, told of the first.
    fn bush_callout(&self, boiler: &LyingBoiler, group: &[&Bush]) -> Callout {
        let bush = group[0];
        let name = format!("angle of {}", bush.id);
        let ids: Vec<&str> = group.iter().map(|b| b.id.as_str()).collect();
        let said = format!(
            "{} at {}",
            ids.join(", "),
            turned(boiler, &name, bush.angle)
        );
        let from_right = 90.0 - DEGREE.from_si(bush.angle.si());
        let tip = self.on(&boiler.barrel, end_of(boiler, bush), from_right);
        self.call(name, said, tip)
    }
}

/// Distance of the outer end of a bush from the axis of the barrel.
fn end_of(boiler: &LyingBoiler, bush: &Bush) -> Length {
    boiler.barrel.bore() / 2.0 - bush.inward + bush.part.span().to
}

fn turns_of_tubes(boiler: &LyingBoiler, first: Angle) -> String {
    let incline = turned(boiler, "incline of the first cross tube", first);
    let mut said = format!("first cross tube {incline} above level");
    if let Some(turn) = boiler.typed.get("turn of the cross tubes") {
        said += &format!(", each {turn} on from the last");
    }
    said
}

/// The diameter that the maker gives for a pipe, and its name; the other follows from the wall.
fn diameter_of(boiler: &LyingBoiler, what: &str, pipe: &Pipe) -> (String, Length) {
    let inside = format!("inside diameter of the {what}");
    let outside = format!("outside diameter of the {what}");
    if boiler.typed.contains_key(&inside) && !boiler.typed.contains_key(&outside) {
        (inside, pipe.bore())
    } else {
        (outside, pipe.outside)
    }
}

/// What the maker wrote for a dimension, else its length in millimetres.
fn says(boiler: &LyingBoiler, name: &str, length: Length) -> String {
    let typed = boiler.typed.get(name).cloned();
    typed.unwrap_or_else(|| figure(length))
}

/// The same for a diameter, with its sign.
fn across(boiler: &LyingBoiler, name: &str, length: Length) -> String {
    format!("{DIAMETER}{}", says(boiler, name, length))
}

/// The same for an angle.
fn turned(boiler: &LyingBoiler, name: &str, angle: Angle) -> String {
    let typed = boiler.typed.get(name).cloned();
    typed.unwrap_or_else(|| format!("{}°", short(DEGREE.from_si(angle.si()))))
}
