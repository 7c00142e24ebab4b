//! Dimensions of a turned part: lengths from the low end below, outside diameters at the sides
//! from which they are seen, all else called out above.

use plant::part::{CrossDepth, CrossHole, Finish, Floor, Form, Point, Surface};
use reckoning::Tolerance;

use super::outline::{Piece, corners};
use super::{View, mm, same};
use crate::layout::{Callout, Measure, Side, about_axis, callouts_above, from_datum};
use crate::lettering::{diameter, figure, short};

impl View<'_> {
    pub(super) fn dimensions(&mut self) {
        let (low, high) = (self.outline.low, self.outline.high);
        let radius = self.outline.greatest() * self.scale;
        let lengths = self.lengths();
        from_datum(&mut self.sheet, Side::Below, -radius, &lengths);
        let (left, right, mut callouts) = self.diameters();
        about_axis(&mut self.sheet, Side::Left, low * self.scale, &left);
        about_axis(&mut self.sheet, Side::Right, high * self.scale, &right);
        callouts.extend(self.bores());
        callouts.extend(self.cones());
        callouts.extend(self.thread_callouts());
        callouts.extend(self.flat_callouts());
        callouts.extend(self.hole_callouts());
        let top = self.sheet.extent().map_or(radius, |e| e.high.y);
        callouts_above(&mut self.sheet, top.max(radius + 4.0), &callouts);
    }

    /// Every place on the axis that no call-out gives, from the low end.
    fn lengths(&self) -> Vec<Measure> {
        let (low, high) = (self.outline.low, self.outline.high);
        let datum = self.at(low, -self.outline.below(low));
        let mut places: Vec<(f64, f64)> = Vec::new();
        let mut add = |z: f64, r: f64| {
            if !same(z, low) && !places.iter().any(|(known, _)| same(*known, z)) {
                places.push((z, r));
            }
        };
        add(high, self.outline.below(high));
        for z in self.outer_places() {
            add(z, self.outline.below(z));
        }
        for z in self.recess_places() {
            add(z, self.outline.bore(z));
        }
        for (_, hole) in self.part.cross_holes() {
            let z = hole.z.mm();
            add(z, self.outline.below(z));
        }
        for flats in self.part.flats() {
            let (from, to) = (flats.span.from.mm(), flats.span.to.mm());
            for z in [from, to].into_iter().filter(|z| *z > low && *z < high) {
                add(z, self.outline.below(z));
            }
        }
        places
            .into_iter()
            .map(|(z, r)| Measure {
                name: format!("length to {}", short(z - low)),
                says: short(z - low),
                points: [datum, self.at(z, -r)],
            })
            .collect()
    }

    /// Corners of the outside, without the inner edge of a chamfer, which its call-out gives.
    fn outer_places(&self) -> Vec<f64> {
        let (low, high) = (self.outline.low, self.outline.high);
        let outside = &self.outline.outside;
        let chamfered = |z: f64| {
            outside.iter().any(|p| {
                let inner = if p.r0 < p.r1 { p.z1 } else { p.z0 };
                chamfer(p).is_some() && same(inner, z)
            })
        };
        corners(outside)
            .into_iter()
            .filter(|(z, .., steps)| *z > low && *z < high && (*steps || !chamfered(*z)))
            .map(|(z, ..)| z)
            .collect()
    }

    /// Ends of bored recesses that are open to neither end.
    fn recess_places(&self) -> Vec<f64> {
        self.outline
            .inside
            .iter()
            .filter(|p| p.is_cylinder() && self.bored(p) && !self.opens(p))
            .flat_map(|p| [p.z0, p.z1])
            .collect()
    }

    fn opens(&self, p: &Piece) -> bool {
        same(p.z0, self.outline.low) || same(p.z1, self.outline.high)
    }

    /// Whether a boring tool, not a drill, made this piece of the bore.
    fn bored(&self, p: &Piece) -> bool {
        let form = p.feature.as_deref().and_then(|id| self.part.feature(id));
        form.is_some_and(|f| matches!(f.form, Form::Turned { .. }))
    }

    /// Outside diameters: at the left, at the right, and called out where neither side sees them.
    fn diameters(&self) -> (Vec<Measure>, Vec<Measure>, Vec<Callout>) {
        let outside = &self.outline.outside;
        let (mut left, mut right, mut callouts) = (Vec::new(), Vec::new(), Vec::new());
        let mut shown: Vec<String> = Vec::new();
        for (i, p) in outside.iter().enumerate() {
            let says = self.said(&p.feature, diameter(mm(2.0 * p.r0)));
            if !p.is_cylinder() || self.told_otherwise(p) || shown.contains(&says) {
                continue;
            }
            shown.push(says.clone());
            let within = |q: &Piece| q.r0.max(q.r1) <= p.r0 + 0.005;
            let name = format!("outside {says}");
            let measure = |z: f64| Measure {
                name: name.clone(),
                says: says.clone(),
                points: [self.at(z, -p.r0), self.at(z, p.r0)],
            };
            if outside[i..].iter().all(within) {
                right.push(measure(self.outline.last_at(p.r0).unwrap_or(p.z1)));
            } else if outside[..i].iter().all(within) {
                left.push(measure(self.outline.first_at(p.r0).unwrap_or(p.z0)));
            } else {
                let tip = self.at(0.5 * (p.z0 + p.z1), p.r0);
                callouts.push(Callout { name, says, tip });
            }
        }
        (left, right, callouts)
    }

    /// Whether a thread of this diameter, or flats over its whole length, give the size already.
    fn told_otherwise(&self, p: &Piece) -> bool {
        let threaded = self.part.threads().any(|(_, surface, span, thread)| {
            surface == Surface::Outside
                && same(thread.major.mm(), 2.0 * p.r0)
                && span.from.mm() < p.z1
                && p.z0 < span.to.mm()
        });
        let bar = p.feature.is_none()
            && self
                .part
                .flats()
                .any(|f| f.count >= 3 && f.span.from.mm() <= p.z0 && p.z1 <= f.span.to.mm());
        threaded || bar
    }

    /// One call-out for each feature that made a cylinder of the bore.
    fn bores(&self) -> Vec<Callout> {
        let mut shown: Vec<Option<&str>> = Vec::new();
        let mut callouts = Vec::new();
        for p in self.outline.inside.iter().filter(|p| p.is_cylinder()) {
            let id = p.feature.as_deref();
            if shown.contains(&id) {
                continue;
            }
            shown.push(id);
            let size = self.said(&p.feature, diameter(mm(2.0 * p.r0)));
            let through = same(p.z0, self.outline.low) && same(p.z1, self.outline.high);
            let drilled = id.and_then(|id| self.drilled(id));
            let says = match drilled {
                Some(how) => format!("{size} {how}"),
                None if through => format!("{size} through"),
                None if self.opens(p) => format!("{size} × {} deep", short(p.z1 - p.z0)),
                None => size,
            };
            callouts.push(Callout {
                name: format!("bore {}", id.unwrap_or("of the bar")),
                says,
                tip: self.at(0.5 * (p.z0 + p.z1), p.r0),
            });
        }
        callouts
    }

    /// How deep a drilled hole goes, and its point where that is not a plain drill's.
    fn drilled(&self, id: &str) -> Option<String> {
        let Form::Drilled { depth, point, .. } = &self.part.feature(id)?.form else {
            return None;
        };
        if let Some(Floor::Through(_)) = self.part.floor(id) {
            return Some("through".to_owned());
        }
        let point = match point {
            Point::Flat => ", flat bottom".to_owned(),
            Point::Cone(_) if *point == Point::drill() => String::new(),
            Point::Cone(angle) => format!(", point {}°", short(angle.deg())),
        };
        Some(format!("× {} deep{point}", figure(*depth)))
    }

    /// Chamfers and tapers, outside and inside; the point of a drill is no taper.
    fn cones(&self) -> Vec<Callout> {
        let outside = self.outline.outside.iter().map(|p| ("outside", p));
        let inside = self
            .outline
            .inside
            .iter()
            .filter(|p| self.bored(p))
            .map(|p| ("inside", p));
        outside
            .chain(inside)
            .filter(|(_, p)| !p.is_cylinder())
            .map(|(where_, p)| {
                let says = chamfer(p).unwrap_or_else(|| {
                    let (a, b) = (diameter(mm(2.0 * p.r0)), diameter(mm(2.0 * p.r1)));
                    format!("taper {a} to {b} × {} long", short(p.z1 - p.z0))
                });
                let middle = 0.5 * (p.z0 + p.z1);
                Callout {
                    name: format!("{where_} cone at {}", short(middle)),
                    says: self.said(&p.feature, says),
                    tip: self.at(middle, p.radius(middle)),
                }
            })
            .collect()
    }

    fn thread_callouts(&self) -> Vec<Callout> {
        self.part
            .threads()
            .map(|(id, surface, span, thread)| {
                let (radius, word) = match surface {
                    Surface::Outside => (thread.major / 2.0, "long"),
                    Surface::Inside => (thread.major / 2.0, "deep"),
                };
                let name = &thread.designation;
                let middle = (span.from + span.to).mm() / 2.0;
                Callout {
                    name: format!("thread {id}"),
                    says: format!("{name} × {} {word}", figure(span.length())),
                    tip: self.at(middle, radius.mm()),
                }
            })
            .collect()
    }

    fn flat_callouts(&self) -> Vec<Callout> {
        self.part
            .flats()
            .map(|flats| {
                let middle = (flats.span.from + flats.span.to).mm() / 2.0;
                let across = figure(flats.from_axis * 2.0);
                let says = match flats.count {
                    1 => format!("flat {} from the axis", figure(flats.from_axis)),
                    2 => format!("2 flats, {across} across"),
                    4 => format!("square, {across} across flats"),
                    6 => format!("hexagon, {across} across flats"),
                    n => format!("{n} flats, {} from the axis", figure(flats.from_axis)),
                };
                Callout {
                    name: format!("flats at {}", short(middle)),
                    says,
                    tip: self.at(middle, self.outline.above(middle)),
                }
            })
            .collect()
    }

    /// Holes of one size, place and depth share a call-out.
    fn hole_callouts(&self) -> Vec<Callout> {
        let mut groups: Vec<(String, Vec<(&CrossHole, usize)>)> = Vec::new();
        for (i, (id, hole)) in self.part.cross_holes().enumerate() {
            let depth = self.depth(hole);
            let says = format!("{}{depth}", diameter(hole.diameter));
            let says = self.said(&Some(id.to_owned()), says);
            let joins = |g: &&mut (String, Vec<(&CrossHole, usize)>)| {
                g.0 == says && g.1.iter().all(|(h, _)| same(h.z.mm(), hole.z.mm()))
            };
            match groups.iter_mut().find(joins) {
                Some((_, holes)) => holes.push((hole, i)),
                None => groups.push((says, vec![(hole, i)])),
            }
        }
        groups
            .into_iter()
            .filter_map(|(says, holes)| {
                let (z, r) = self.holes[holes.first()?.1].tip(&self.outline);
                let says = format!("{says}{}", self.round(&holes));
                Some(Callout {
                    name: format!("cross holes at {}: {says}", short(z)),
                    says,
                    tip: self.at(z, r),
                })
            })
            .collect()
    }

    fn depth(&self, hole: &CrossHole) -> String {
        match hole.depth {
            CrossDepth::Through => " through".to_owned(),
            CrossDepth::NearWall => " into the bore".to_owned(),
            CrossDepth::Blind { bottom, .. } => {
                let deep = self
                    .outline
                    .outside
                    .iter()
                    .find(|p| p.z0 <= hole.z.mm() && hole.z.mm() <= p.z1);
                let outside = deep.map_or(0.0, |p| p.radius(hole.z.mm()));
                format!(" × {} deep", short(outside - bottom.mm()))
            }
        }
    }

    /// Where round the axis holes stand, counted from the top of the drawing.
    fn round(&self, holes: &[(&CrossHole, usize)]) -> String {
        let turn = |hole: &CrossHole| {
            let degrees = (hole.azimuth.rad() - self.outline.azimuth).to_degrees();
            degrees.rem_euclid(360.0).round().rem_euclid(360.0)
        };
        let mut turns: Vec<f64> = holes.iter().map(|(h, _)| turn(h)).collect();
        turns.sort_by(f64::total_cmp);
        let offset = holes.first().map_or(0.0, |(h, _)| h.offset.mm());
        let aside = if same(offset, 0.0) {
            String::new()
        } else {
            format!(", {} off the axis", short(offset.abs()))
        };
        let degrees: Vec<String> = turns.iter().map(|t| format!("{}°", short(*t))).collect();
        match degrees.as_slice() {
            [one] if one == "0°" => aside,
            _ => format!(", at {}{aside}", degrees.join(", ")),
        }
    }

    /// A size with the tolerance and finish of its feature.
    fn said(&self, id: &Option<String>, size: String) -> String {
        let Some(feature) = id.as_deref().and_then(|id| self.part.feature(id)) else {
            return size;
        };
        let within = feature.tolerance.map_or(String::new(), tolerance);
        let finish = match feature.finish {
            Finish::Cut => "",
            Finish::Reamed => " reamed",
            Finish::Lapped => " lapped",
            Finish::Seat => " seat",
            Finish::Knurled => " knurled",
        };
        format!("{size}{within}{finish}")
    }
}

/// The lettering of a chamfer at 45°; none for another cone.
fn chamfer(p: &Piece) -> Option<String> {
    let (along, across) = (p.z1 - p.z0, (p.r1 - p.r0).abs());
    (!p.is_cylinder() && same(along, across)).then(|| format!("{} × 45°", short(along)))
}

fn tolerance(t: Tolerance) -> String {
    let (lower, upper) = (t.lower.mm(), t.upper.mm());
    if same(lower * 100.0, -upper * 100.0) {
        return format!(" ±{}", thousandths(upper));
    }
    let signed = |v: f64| match thousandths(v.abs()) {
        zero if zero == "0" => zero,
        text if v < 0.0 => format!("-{text}"),
        text => format!("+{text}"),
    };
    format!(" {}/{}", signed(upper), signed(lower))
}

/// Tolerances need a figure more than sizes.
fn thousandths(value: f64) -> String {
    let text = format!("{value:.3}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
