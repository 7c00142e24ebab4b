//! What must hold for every boiler: more wall or less pressure never lowers a margin; taking a
//! number away never turns a check into a pass; a state and its working agree.

mod sample;

use proof::{Boiler, Diameter, Dimension, Proof, Removed, prove};
use proptest::prelude::*;
use reckoning::{Finding, Verdict};
use sample::{boiler, exact, length, loose, made, proof_at, service, stock};

/// How far from a pass: a check that is not proved is no better than one that is not met.
fn rank(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Met => 0,
        Verdict::MetOnCondition => 1,
        Verdict::Unproved | Verdict::NotMet => 2,
    }
}

/// Pairs of the same check in two proofs.
fn pairs<'a>(
    before: &'a Proof,
    after: &'a Proof,
) -> impl Iterator<Item = (&'a Finding, &'a Finding)> {
    let all = |p: &'a Proof| p.sets.iter().flat_map(|s| &s.findings);
    all(before).filter_map(move |b| {
        all(after)
            .find(|a| a.rule.id == b.rule.id && a.place == b.place)
            .map(|a| (b, a))
    })
}

/// The margin; a check that fails without one counts as below all others.
fn margin(f: &Finding) -> Option<f64> {
    match (f.margin, f.verdict) {
        (Some(m), _) => Some(m),
        (None, Verdict::NotMet) => Some(0.0),
        (None, _) => None,
    }
}

fn never_lower(worse: &Proof, better: &Proof, apart_from: &[&str]) -> Result<(), TestCaseError> {
    for (w, b) in pairs(worse, better) {
        if let (Some(low), Some(high)) = (margin(w), margin(b)) {
            prop_assert!(
                high >= low * (1.0 - 1e-9) || apart_from.contains(&w.rule.id),
                "{} at {}: {low} fell to {high}: {} / {}",
                w.rule.id,
                w.place,
                w.says,
                b.says
            );
        }
    }
    Ok(())
}

/// The sample with these walls, mm, its diameters known from outside or inside.
fn walled(shell: f64, firebox: f64, tube: f64, plate: f64, outside: bool) -> Boiler {
    let mut boiler = boiler();
    boiler.shells[0].wall = Some(exact("barrel.wall", shell));
    if outside {
        boiler.shells[0].diameter = Some(Diameter::Outside(exact("barrel.outside", 100.0)));
    }
    boiler.flues[0].wall = Some(exact("firebox.wall", firebox));
    boiler.flues[1].wall = Some(exact("tube.wall", tube));
    boiler.plates[0].nest.wall = Some(exact("tube.wall", tube));
    boiler.plates[0].thickness = Some(exact("plate.thickness", plate));
    boiler.cross_tubes[0].wall = Some(exact("cross.wall", tube));
    boiler.girders[0].depth = Some(exact("girder.depth", 10.0 + plate));
    for end in &mut boiler.ends {
        end.thickness = Some(exact("end.thickness", 1.0 + plate));
    }
    boiler
}

/// What a thicker wall may make worse, for it is no primary stress: the room between tubes and the
/// straight of a flange, which it fills, the load from unequal growth, which it stiffens, and the
/// outside of the barrel by which the trade measures its flats.
const NO_STRENGTH: &[&str] = &[
    "ours.plate-ligament",
    "ours.joint-lap",
    "ours.joint-shear",
    "ours.tube-growth",
    "ours.crown-chain",
    "trade.stayed-flat",
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn more_wall_never_lowers_a_margin(
        walls in prop::array::uniform4(0.7_f64..4.0),
        more in prop::array::uniform4(0.0_f64..1.0),
        outside in any::<bool>(),
        mpa in 0.1_f64..0.9,
    ) {
        let [a, b, c, d] = walls;
        let [e, f, g, h] = more;
        let c = 0.4 + 0.2 * c;
        let thin = proof_at(&walled(a, b, c, d, outside), mpa);
        let thick = proof_at(&walled(a + e, b + f, c + 0.2 * g, d + h, outside), mpa);
        never_lower(&thin, &thick, NO_STRENGTH)?;
    }

    #[test]
    fn less_pressure_never_lowers_a_margin(
        walls in prop::array::uniform4(0.7_f64..4.0),
        mpa in 0.1_f64..0.9,
        less in 0.05_f64..1.0,
    ) {
        let [a, b, c, d] = walls;
        let boiler = walled(a, b, 0.4 + 0.2 * c, d, false);
        never_lower(&proof_at(&boiler, mpa), &proof_at(&boiler, mpa * less), &[])?;
    }

    #[test]
    fn a_closer_pitch_or_a_rounder_tube_never_lowers_a_margin(
        pitch in 14.0_f64..40.0,
        closer in 0.0_f64..3.0,
        oval in 0.0_f64..0.75,
        rounder in 0.0_f64..1.0,
    ) {
        let made_with = |pitch: f64, oval: f64| {
            let mut boiler = boiler();
            boiler.plates[0].nest.pitch = Some(length("nest.pitch", pitch));
            boiler.flues[0].ovality = Some(made("firebox.ovality", oval));
            proof_at(&boiler, 0.5)
        };
        let wide = made_with(pitch, oval);
        let close = made_with(pitch - closer.min(pitch - 13.0), oval * rounder);
        never_lower(&wide, &close, &["ours.plate-ligament", "ibr.between-tubes"])?;
    }

    #[test]
    fn emptying_a_value_never_makes_a_pass(
        walls in prop::array::uniform4(0.8_f64..4.0),
        oval in 0.0_f64..2.0,
        mpa in 0.2_f64..0.9,
    ) {
        let [a, b, c, d] = walls;
        let mut whole = walled(a, b, 0.4 + 0.2 * c, d, false);
        whole.flues[0].ovality = Some(made("firebox.ovality", oval));
        let before = proof_at(&whole, mpa);
        for (name, empty) in EMPTIED {
            let mut emptied = whole.clone();
            empty(&mut emptied);
            let after = proof_at(&emptied, mpa);
            for (b, a) in pairs(&before, &after) {
                let better = rank(a.verdict) < rank(b.verdict);
                // A measured ovality worse than any assumed one leaves a hold point that the
                // removed number breaks.
                let open = *name == "flue ovality"
                    && a.conditions.iter().any(|c| limit_mm(&c.says) < oval);
                prop_assert!(!better || open, "{name}: {} {} became {}", b.rule.id, b.says, a.says);
            }
        }
    }
}

/// The number of millimetres in a hold point.
fn limit_mm(says: &str) -> f64 {
    let words: Vec<&str> = says.split(' ').collect();
    words
        .iter()
        .zip(words.iter().skip(1))
        .find_map(|(number, unit)| (*unit == "mm").then(|| number.parse().ok()).flatten())
        .unwrap_or(f64::INFINITY)
}

/// Takes the tolerance and the measurement away.
fn loosen(d: &mut Option<Dimension>) {
    if let Some(d) = d {
        *d = loose(&d.field, d.size.drawn.value.mm());
    }
}

type Emptying = (&'static str, fn(&mut Boiler));

const EMPTIED: &[Emptying] = &[
    ("end thickness", |b| b.ends[1].thickness = None),
    ("flat end thickness", |b| b.ends[0].thickness = None),
    ("dish thickness", |b| b.ends[3].thickness = None),
    ("end tolerance", |b| loosen(&mut b.ends[1].thickness)),
    ("flue off the middle", |b| {
        if let proof::EndShape::Annular { off, .. } = &mut b.ends[1].shape {
            *off = None;
        }
    }),
    ("end flange", |b| b.ends[0].flange = None),
    ("cross tube wall", |b| b.cross_tubes[0].wall = None),
    ("cross tube outside", |b| b.cross_tubes[0].outside = None),
    ("cross tube tolerance", |b| {
        loosen(&mut b.cross_tubes[0].wall);
    }),
    ("coil wall", |b| b.coils[0].wall = None),
    ("coil outside", |b| b.coils[0].outside = None),
    ("coil turn", |b| b.coils[0].turn = None),
    ("girder depth", |b| b.girders[0].depth = None),
    ("girder span", |b| b.girders[0].span = None),
    ("thread", |b| b.screwed[0].thread = None),
    ("thread length", |b| b.screwed[0].engaged = None),
    ("long stay beside", |b| b.stays[1].beside = None),
    ("long stay field", |b| b.stays[1].field = None),
    ("shell wall", |b| b.shells[0].wall = None),
    ("shell diameter", |b| b.shells[0].diameter = None),
    ("shell temperature", |b| {
        b.shells[0].metal_temperature = None;
    }),
    ("shell wall tolerance", |b| loosen(&mut b.shells[0].wall)),
    ("hole", |b| b.shells[0].openings[0].hole = None),
    ("place", |b| b.shells[0].openings[0].place = None),
    ("bore", |b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            bush.bore = None;
        }
    }),
    ("stands out", |b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            bush.stands_out = None;
        }
    }),
    ("stands in", |b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            bush.stands_in = None;
        }
    }),
    ("plate thickness", |b| b.plates[0].thickness = None),
    ("plate tolerance", |b| loosen(&mut b.plates[0].thickness)),
    ("pitch", |b| b.plates[0].nest.pitch = None),
    ("tube outside", |b| b.plates[0].nest.outside = None),
    ("tube wall", |b| b.plates[0].nest.wall = None),
    ("margin", |b| b.plates[0].margin = None),
    ("plate temperature", |b| {
        b.plates[0].metal_temperature = None;
    }),
    ("flue diameter", |b| b.flues[0].diameter = None),
    ("flue wall", |b| b.flues[0].wall = None),
    ("flue wall tolerance", |b| loosen(&mut b.flues[0].wall)),
    ("flue length", |b| b.flues[0].length = None),
    ("flue ovality", |b| b.flues[0].ovality = None),
    ("flue temperature", |b| b.flues[0].metal_temperature = None),
    ("firehole", |b| b.flues[0].openings[0].hole = None),
];

#[test]
fn without_a_pressure_nothing_but_the_metal_is_met() {
    let nothing = proof::Service::default();
    let proof = prove(&boiler(), &nothing, &stock(), None);
    for f in proof.sets.iter().flat_map(|s| &s.findings) {
        let needs_none = [
            "ours.metal-temperature",
            "ours.wetted-metal",
            "ours.shell-floor",
            "ours.plate-ligament",
            "ours.shell-ligament",
            "ours.joint-lap",
            "ours.joint-peel",
            "ours.bush-torque",
            "ours.stay-metal",
            "ours.stay-strain",
            "en-13445.openings-apart",
            "ship-register.least-wall",
            "ours.end-growth",
            "ours.thread-turns",
            "ours.opening-lap",
            "ship-register.filler",
        ];
        let unproved = f.verdict == Verdict::Unproved;
        assert!(unproved || needs_none.contains(&f.rule.id), "{}", f.rule.id);
    }
}

/// A wall measured thinner than its tolerance fails; taking the measurement away leaves it open.
#[test]
fn a_measurement_taken_away_leaves_its_condition_open() {
    let mut thin = boiler();
    thin.shells[0].wall = Some(made("barrel.wall", 0.9));
    let measured = proof_at(&thin, 0.5);
    let before = sample::first(&measured, "ours.shell-wall");
    assert_eq!(before.verdict, Verdict::NotMet);
    let mut emptied = exact("barrel.wall", 2.5);
    emptied.removed = Removed::Measurement;
    thin.shells[0].wall = Some(emptied);
    let after_all = proof_at(&thin, 0.5);
    for rule in ["ours.shell-wall", "ours.shell-test", "ours.opening-area"] {
        let after = sample::first(&after_all, rule);
        assert_eq!(after.verdict, Verdict::MetOnCondition, "{}", after.says);
        let field = after.conditions[0].field.as_deref();
        assert_eq!(field, Some("barrel.wall"));
    }
}

/// A hole, a bore or a diameter of which no tolerance is stated is taken at the worse end of an
/// assumption, and is to be measured.
#[test]
fn a_tolerance_taken_away_never_improves_and_makes_a_hold_point() {
    let narrow = proof_at(&boiler(), 0.5);
    for empty in LOOSENED {
        let mut looser = boiler();
        empty(&mut looser);
        let after = proof_at(&looser, 0.5);
        let mut held = 0;
        for (b, a) in pairs(&narrow, &after) {
            assert!(
                rank(a.verdict) >= rank(b.verdict),
                "{}: {}",
                b.rule.id,
                a.says
            );
            if let (Some(b), Some(a)) = (b.margin, a.margin) {
                assert!(a <= b * (1.0 + 1e-12), "{b} rose to {a}");
            }
            held += usize::from(!a.conditions.is_empty() && b.conditions.is_empty());
        }
        assert!(held > 0, "no hold point");
    }
}

const LOOSENED: &[fn(&mut Boiler)] = &[
    |b| loosen(&mut b.shells[0].openings[0].hole),
    |b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            loosen(&mut bush.bore);
        }
    },
    |b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            loosen(&mut bush.stands_out);
        }
    },
    |b| loosen(&mut b.plates[0].nest.outside),
    |b| b.shells[0].diameter = Some(Diameter::Inside(loose("barrel.bore", 100.0))),
    |b| b.flues[0].diameter = Some(Diameter::Outside(loose("firebox.outside", 75.0))),
];

/// Filing a settled value works its card again; the two agree.
#[test]
fn identity_state_and_working_agree() {
    for mpa in [0.2, 0.5, 0.9] {
        let proof = prove(&boiler(), &service(mpa), &stock(), None);
        for f in proof.sets.iter().flat_map(|s| &s.findings) {
            let apart = f.working.disagreement();
            assert!(apart < 1e-12, "{} at {}: {apart}", f.rule.id, f.place);
        }
    }
}

#[test]
fn an_assumption_is_never_plainly_met_and_names_its_limit() {
    let mut assumed = boiler();
    assumed.flues[0].ovality = None;
    loosen(&mut assumed.shells[0].wall);
    loosen(&mut assumed.plates[0].thickness);
    let proof = proof_at(&assumed, 0.5);
    for rule in ["ours.flue-pressure", "ours.shell-wall", "ours.plate-stayed"] {
        let f = sample::first(&proof, rule);
        assert_eq!(f.verdict, Verdict::MetOnCondition, "{rule}: {}", f.says);
        assert!(f.conditions.iter().all(|c| limit_mm(&c.says).is_finite()));
        assert_eq!(f.weakest_origin, reckoning::Origin::Assumed);
    }
    let flue = sample::first(&proof, "ours.flue-pressure");
    assert_eq!(
        flue.conditions[0].says,
        "ovality of firebox, Dmax - Dmin, at most 0.75 mm"
    );
    let shell = sample::first(&proof, "ours.shell-wall");
    assert_eq!(
        shell.conditions[0].says,
        "wall of barrel, at its thinnest, at least 0.98 mm"
    );
}
