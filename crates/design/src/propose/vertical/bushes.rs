//! Bushes in the barrel: what the boiler is fed, drained, read and emptied through.

use formulas::thread::Thread;
use reckoning::Origin;

use super::At;
use super::water::{crown, upper_face};
use crate::propose::choice::{Choice, mm, plain, text};
use crate::propose::draft::{length_mm, size_mm};

/// Fine metric threads, the small before the large, with their diameters in mm.
const THREADS: &[(&str, f64)] = &[
    ("M8x1", 8.0),
    ("M10x1", 10.0),
    ("M12x1", 12.0),
    ("M14x1", 14.0),
    ("M16x1", 16.0),
    ("M20x1", 20.0),
    ("M24x1.5", 24.0),
];
/// Metal of the bushes.
const METAL: &str = "CW451K";
/// Straight wall of the barrel between a bush and the upper plate, mm.
const BELOW_PLATE_MM: f64 = 8.0;

/// Where a bush stands.
struct Stand {
    id: &'static str,
    purpose: &'static str,
    height: f64,
    angle: f64,
    thread: (String, f64),
}

impl Stand {
    fn words(&self) -> String {
        format!(
            "{} {} at {} mm and {}°",
            self.id,
            self.thread.0,
            plain(self.height),
            self.angle
        )
    }
}

/// The smallest thread at least as wide, one whose tap is on hand before any other.
fn thread(at: &At<'_>, least: f64) -> Option<(String, f64)> {
    let wide = |(_, d): &&(&str, f64)| *d >= least;
    let listed = |(name, _): &&(&str, f64)| Thread::read(name).is_ok();
    let mut fit = THREADS.iter().filter(listed).filter(wide);
    let first = fit.clone().next()?;
    let tapped = fit.find(|(name, d)| {
        let near = *d <= 1.25 * first.1;
        near && at.shop.taps.iter().any(|tap| tap == name)
    });
    let (name, diameter) = tapped.unwrap_or(first);
    Some(((*name).to_owned(), *diameter))
}

pub(super) fn choice(at: &At<'_>) -> Option<Choice> {
    let mut choice = Choice::of("bushes");
    let stands = stands(at)?;
    let told: Vec<String> = stands.iter().map(Stand::words).collect();
    for stand in stands {
        let path = |key: &str| format!("boiler.bush.{}.{key}", stand.id);
        choice = choice
            .set(path("purpose"), text(stand.purpose))
            .set(path("on"), text("barrel"))
            .set(path("height"), mm(stand.height))
            .set(path("angle"), text(&format!("{}°", stand.angle)))
            .set(path("thread"), text(&stand.thread.0))
            .set(path("outside"), mm(stand.thread.1 + 2.0 * at.sizes.rim))
            .set(path("length-out"), mm(6.0))
            .set(path("length-in"), mm(3.0))
            .set(path("joint"), text("seen both sides"))
            .set(path("metal"), text(METAL));
    }
    Some(
        choice
            .told(format!("in the barrel {}", told.join(", ")))
            .between("fine threads from M8x1, those with a tap on hand first")
            .because(
                "the smallest that passes what it serves; steam is taken as high as the barrel \
                 goes, water as low; the filler is seen on both sides, for the bushes are brazed in before the \
                 barrel is closed",
                Origin::CommonPractice,
            ),
    )
}

fn stands(at: &At<'_>) -> Option<Vec<Stand>> {
    let small = thread(at, 0.0)?;
    let valve = thread(at, at.sizes.seat + 1.0)?;
    let rim = at.sizes.rim;
    let (face, crown) = (upper_face(at)?, crown(at)?);
    let ring = size_mm(&at.plan.boiler.foundation_ring.depth)?;
    let top = |thread: &(String, f64)| (face - BELOW_PLATE_MM - thread.1 / 2.0 - rim).floor();
    let glass = &at.plan.water_gauge;
    let (bottom, up) = (length_mm(&glass.bottom)?, length_mm(&glass.top)?);
    let stand = |id, purpose, height, angle| Stand {
        id,
        purpose,
        height,
        angle,
        thread: small.clone(),
    };
    let drain = (ring + small.1 / 2.0 + rim + 1.0).floor();
    Some(vec![
        Stand {
            id: "valve",
            purpose: "safety valve",
            height: top(&valve),
            angle: 90.0,
            thread: valve,
        },
        stand("steam", "steam outlet", top(&small), 180.0),
        stand("gauge", "pressure gauge", top(&small), 270.0),
        stand("glass-top", "water gauge, top", up, 135.0),
        stand("glass-bottom", "water gauge, bottom", bottom, 135.0),
        stand("feed-hand", "feed", (crown + 12.0).ceil(), 225.0),
        stand("feed-engine", "feed", (crown + 12.0).ceil(), 315.0),
        stand("blow-down", "blow-down", drain, 270.0),
    ])
}
