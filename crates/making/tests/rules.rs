//! Each rule of order fires on a card made to break it, and is silent on its neighbour.

mod bench;

use bench::{dryer_bush, mm, tapped_bush, workshop};
use making::card::{Place, RouteCard, Work};
use making::workshop::Hold;
use making::{Piece, Proposal, check, propose};
use plant::part::Span;
use reckoning::{Assumption, Finding, Verdict};

fn proposed(piece: &Piece) -> Proposal {
    propose(piece, &workshop()).expect("a card")
}

fn of(rule: &str, card: &RouteCard, piece: &Piece) -> Vec<Finding> {
    let found = check(card, piece).findings;
    found.into_iter().filter(|f| f.rule.id == rule).collect()
}

/// The fault that a rule finds on a card; the remedy must be there.
fn fault(rule: &str, card: &RouteCard, piece: &Piece) -> (String, String) {
    let found = of(rule, card, piece);
    let fault = found.iter().find(|f| f.verdict == Verdict::NotMet);
    let fault = fault.unwrap_or_else(|| panic!("{rule} is silent: {found:#?}"));
    (fault.says.clone(), fault.remedy.clone().expect("a remedy"))
}

fn silent(rule: &str, card: &RouteCard, piece: &Piece) {
    for f in of(rule, card, piece) {
        assert!(
            f.verdict <= Verdict::MetOnCondition,
            "{}: {}",
            f.rule.id,
            f.says
        );
    }
}

fn place(card: &RouteCard, word: &str) -> Place {
    let found = card.rows().find(|(_, r)| r.operation.work.word() == word);
    found.unwrap_or_else(|| panic!("no row to {word}")).0
}

fn making(card: &RouteCard, feature: &str) -> Place {
    let found = card
        .rows()
        .find(|(_, r)| r.operation.makes.as_deref() == Some(feature));
    found.unwrap_or_else(|| panic!("no row makes {feature}")).0
}

#[test]
fn making_whole_fires_on_a_row_left_out() {
    let p = proposed(&dryer_bush());
    let card = p.card.without(making(&p.card, "spigot"));
    let (says, _) = fault("making.whole", &card, &p.piece);
    assert!(says.contains("14 mm and 10 mm is drawn"), "{says}");
}

#[test]
fn making_whole_fires_on_a_length_measured_from_a_raw_face() {
    let p = proposed(&dryer_bush());
    let face = place(&p.card, "face");
    let last = Place { row: 6, ..face };
    let card = p.card.moved(face, last);
    let (says, remedy) = fault("making.whole", &card, &p.piece);
    assert!(says.contains("stood 0.5 mm proud"), "{says}");
    assert_eq!(remedy, "move row 7 (face) after row 1");
}

#[test]
fn making_whole_silent_on_the_card_proposed() {
    for piece in [dryer_bush(), tapped_bush()] {
        let p = proposed(&piece);
        silent("making.whole", &p.card, &p.piece);
    }
}

#[test]
fn making_metal_fires_on_a_row_written_twice() {
    let p = proposed(&dryer_bush());
    let at = making(&p.card, "head");
    let row = p.card.settings[at.setting].rows[at.row].operation.clone();
    let card = p.card.inserted(
        Place {
            row: at.row + 1,
            ..at
        },
        row,
    );
    let (says, remedy) = fault("making.metal", &card, &p.piece);
    assert_eq!(says, "row 5 (turn) cuts nothing: the metal is not there");
    assert_eq!(remedy, "strike row 5 (turn) out");
}

#[test]
fn making_metal_silent_on_a_reamer_passed_through_again() {
    let p = proposed(&dryer_bush());
    let reams = p
        .card
        .rows()
        .filter(|(_, r)| r.operation.work.word() == "ream")
        .count();
    assert_eq!(reams, 2);
    silent("making.metal", &p.card, &p.piece);
}

#[test]
fn making_reach_fires_on_a_cross_hole_in_the_lathe() {
    let p = proposed(&dryer_bush());
    let card = p
        .card
        .moved(making(&p.card, "inlet"), Place { setting: 0, row: 5 });
    let (says, remedy) = fault("making.reach", &card, &p.piece);
    assert!(
        says.starts_with("row 6 (cross-drill) cannot be reached in setting 1"),
        "{says}"
    );
    assert!(
        remedy.starts_with("move row 6 (cross-drill) before row 12, in setting 3"),
        "{remedy}"
    );
}

#[test]
fn making_reach_fires_on_a_spigot_behind_its_head() {
    // Head outward first: the spigot lies behind it, and no ordinary tool goes there.
    let p = proposed(&tapped_bush());
    let card = p
        .card
        .moved(making(&p.card, "spigot"), making(&p.card, "plug"));
    let (says, remedy) = fault("making.reach", &card, &p.piece);
    assert!(
        says.ends_with("wider metal stands in front of it"),
        "{says}"
    );
    assert!(remedy.ends_with("in setting 2"), "{remedy}");
}

#[test]
fn making_reach_silent_on_a_reamer_passed_through_by_hand() {
    let p = proposed(&dryer_bush());
    silent("making.reach", &p.card, &p.piece);
}

#[test]
fn making_grip_fires_on_bare_jaws_on_a_thread() {
    let p = proposed(&dryer_bush());
    let mut card = p.card.clone();
    let jaws = workshop().lathe.holders[0].clone();
    card.settings[1].holder = jaws;
    card.settings[1].grip = Span::mm(1.0, 8.0);
    let (says, _) = fault("making.grip", &card, &p.piece);
    assert!(says.contains("bare jaws would close on a thread"), "{says}");
    card.settings[1].holder.hold = Hold::SplitBush;
    silent("making.grip", &card, &p.piece);
}

#[test]
fn making_grip_fires_on_a_short_grip_and_on_a_step() {
    let p = proposed(&dryer_bush());
    let mut card = p.card.clone();
    let face = card.settings[0].grip.from;
    card.settings[0].grip.to = face + mm(5.0);
    let (says, remedy) = fault("making.grip", &card, &p.piece);
    assert!(
        says.contains("26.9 mm sticks out of a grip of 5 mm"),
        "{says}"
    );
    assert!(remedy.contains("8.97 mm"), "{remedy}");
    let mut card = p.card.clone();
    card.settings[1].grip = Span::mm(8.5, 12.0);
    let (says, _) = fault("making.grip", &card, &p.piece);
    assert!(says.contains("is stepped or tapered"), "{says}");
}

#[test]
fn making_grip_silent_on_a_grip_a_third_as_long_as_the_overhang() {
    let p = proposed(&dryer_bush());
    let mut card = p.card.clone();
    card.settings[0].grip.to = card.settings[0].grip.from + mm(9.0);
    silent("making.grip", &card, &p.piece);
}

#[test]
fn making_part_last_fires_on_parting_before_the_thread() {
    let p = proposed(&dryer_bush());
    let part = place(&p.card, "part off");
    let card = p.card.moved(part, making(&p.card, "spigot-thread"));
    let (says, remedy) = fault("making.part-last", &card, &p.piece);
    assert_eq!(
        says,
        "row 8 (screw-cut) comes after row 7 has parted the piece off: nothing holds it"
    );
    assert_eq!(remedy, "move row 7 (part off) after row 9");
}

#[test]
fn making_part_last_silent_on_parting_last() {
    let p = proposed(&dryer_bush());
    silent("making.part-last", &p.card, &p.piece);
}

#[test]
fn making_start_fires_on_a_drill_without_a_centre() {
    let p = proposed(&dryer_bush());
    let centre = place(&p.card, "centre-drill");
    let (says, remedy) = fault("making.start", &p.card.without(centre), &p.piece);
    // 16 mm deep at 0.01 to 0.02 mm in each millimetre.
    assert!(says.contains("0.16 mm to 0.32 mm off the axis"), "{says}");
    assert_eq!(remedy, "centre-drill after row 1");
    let late = p.card.moved(centre, Place { row: 3, ..centre });
    let (_, remedy) = fault("making.start", &late, &p.piece);
    assert!(remedy.contains("move row"), "{remedy}");
}

#[test]
fn making_start_silent_on_a_hole_that_follows_a_hole() {
    // The tapping drill of the second setting follows the bore of the first.
    let p = proposed(&tapped_bush());
    let centres = p
        .card
        .rows()
        .filter(|(_, r)| r.operation.work.word() == "centre-drill")
        .count();
    assert_eq!(centres, 1);
    silent("making.start", &p.card, &p.piece);
}

/// Drills the row at a place so deep.
fn deep(card: &RouteCard, at: Place, depth: f64) -> RouteCard {
    let mut card = card.clone();
    if let Work::Drill { depth: d, .. } = &mut card.settings[at.setting].rows[at.row].operation.work
    {
        *d = mm(depth);
    }
    card
}

#[test]
fn making_floor_fires_on_a_point_through_the_back() {
    // 20 mm deep, and 0.3004 of 4.9 mm of point: 0.47 mm beyond a back at 21 mm.
    let p = proposed(&dryer_bush());
    let card = deep(&p.card, place(&p.card, "drill"), 20.0);
    let (says, remedy) = fault("making.floor", &card, &p.piece);
    assert!(says.contains("breaks out of the back by 0.47 mm"), "{says}");
    // A floor of 0.3 of the drill is wanted: 21 - 1.47 - 1.47.
    assert!(remedy.contains("no deeper than 18.06 mm"), "{remedy}");
}

#[test]
fn making_floor_silent_on_the_deepest_that_leaves_a_floor() {
    let p = proposed(&dryer_bush());
    silent(
        "making.floor",
        &deep(&p.card, place(&p.card, "drill"), 18.0),
        &p.piece,
    );
}

#[test]
fn making_floor_fires_on_a_through_hole_that_stops_in_the_piece() {
    // 22 mm long; half a millimetre and a point of 0.9 mm beyond it are wanted.
    let p = proposed(&tapped_bush());
    let card = deep(&p.card, making(&p.card, "bore"), 21.0);
    let (says, _) = fault("making.floor", &card, &p.piece);
    assert!(
        says.contains("tip of 21.9 mm") && says.contains("23.4 mm is wanted"),
        "{says}"
    );
}

#[test]
fn making_tap_fires_on_a_hole_too_shallow_for_the_tap() {
    // 8 mm of thread, a lead of 5 pitches and one pitch of 0.635 mm: 11.81 mm.
    let p = proposed(&tapped_bush());
    let card = deep(&p.card, making(&p.card, "tapping"), 10.0);
    let (says, remedy) = fault("making.tap", &card, &p.piece);
    assert!(says.contains("1.81 mm too shallow"), "{says}");
    assert!(remedy.contains("1.81 mm deeper"), "{remedy}");
}

#[test]
fn making_tap_fires_on_a_tap_before_its_drill() {
    let p = proposed(&tapped_bush());
    let (tap, drill) = (making(&p.card, "plug"), making(&p.card, "tapping"));
    let (says, remedy) = fault("making.tap", &p.card.moved(tap, drill), &p.piece);
    // The bore of 3 mm is there already: a hole far too small for the tap.
    assert!(says.contains("the tap cuts on its root and jams"), "{says}");
    assert!(remedy.starts_with("move row"), "{remedy}");
}

#[test]
fn making_tap_silent_on_a_hole_deep_enough() {
    let p = proposed(&tapped_bush());
    silent("making.tap", &p.card, &p.piece);
    silent(
        "making.tap",
        &deep(&p.card, making(&p.card, "tapping"), 11.82),
        &p.piece,
    );
}

/// Puts another drill into the first drilling row.
fn with_drill(card: &RouteCard, size: f64) -> RouteCard {
    let mut card = card.clone();
    let at = place(&card, "drill");
    if let Work::Drill { drill, .. } = &mut card.settings[at.setting].rows[at.row].operation.work {
        drill.diameter = mm(size);
    }
    card
}

#[test]
fn making_ream_fires_where_nothing_is_left_to_cut() {
    let p = proposed(&dryer_bush());
    let (says, _) = fault("making.ream", &with_drill(&p.card, 4.97), &p.piece);
    assert!(says.contains("-0.02 mm is left to cut"), "{says}");
}

/// A published training page drills 4.85 mm for a reamer of 5 mm, which leaves 0.10 mm.
#[test]
fn making_ream_silent_on_a_published_drill() {
    let p = proposed(&dryer_bush());
    let card = with_drill(&p.card, 4.85);
    silent("making.ream", &card, &p.piece);
    let found = of("making.ream", &card, &p.piece);
    assert!(
        found[0].says.contains("0.1 mm is left to cut"),
        "{}",
        found[0].says
    );
}

#[test]
fn making_cross_burr_fires_on_a_reamed_bore_not_passed_again() {
    let p = proposed(&dryer_bush());
    let again = Place { setting: 2, row: 1 };
    let (says, remedy) = fault("making.cross-burr", &p.card.without(again), &p.piece);
    assert!(says.contains("a burr stands in a finished bore"), "{says}");
    assert_eq!(remedy, "ream seat after row 11");
}

/// Independent calculation: R0 6, bore 6, drill 3 opens fully with its tip at 4.303.
#[test]
fn making_cross_burr_fires_on_a_tip_short_of_full_opening_or_through_the_far_wall() {
    let p = proposed(&dryer_bush());
    for (depth, told) in [
        (5.0, "short of its full width"),
        (10.0, "marks the far wall"),
    ] {
        let mut card = p.card.clone();
        let at = making(&card, "inlet");
        if let Work::CrossDrill { tip, .. } =
            &mut card.settings[at.setting].rows[at.row].operation.work
        {
            *tip = Some(mm(depth));
        }
        let (says, _) = fault("making.cross-burr", &card, &p.piece);
        assert!(says.contains(told), "{says}");
    }
}

#[test]
fn making_cross_burr_silent_on_a_plain_bore_deburred() {
    let p = proposed(&tapped_bush());
    silent("making.cross-burr", &p.card, &p.piece);
}

#[test]
fn making_wall_fires_under_the_least_wall() {
    let p = proposed(&dryer_bush());
    let mut thin = p.piece.clone();
    thin.least_wall.value = mm(1.6);
    // The chamfer of 8 mm over a bore of 5 mm leaves 1.5 mm.
    let (says, _) = fault("making.wall", &p.card, &thin);
    assert!(
        says.contains("leaves 1.5 mm") && says.contains("0.1 mm is missing"),
        "{says}"
    );
}

#[test]
fn making_wall_silent_at_the_least_wall() {
    let p = proposed(&dryer_bush());
    let mut thin = p.piece.clone();
    thin.least_wall.value = mm(1.5);
    silent("making.wall", &p.card, &thin);
}

/// Independent calculation: one more setting of 0.08 mm swing puts 0.040 mm between the axes,
/// more than the 0.025 mm of a zone of 0.05 mm; the dial shows 0.08 mm.
#[test]
fn making_truth_fires_on_a_three_jaw_chuck_and_a_fine_zone() {
    let (card, piece) = turned_round(0.05);
    let (says, remedy) = fault("making.truth", &card, &piece);
    assert!(
        says.contains("0.04 mm apart at the worst and 0.04 mm likely"),
        "{says}"
    );
    assert!(says.contains("0.025 mm is allowed"), "{says}");
    assert!(
        remedy.contains("until a dial on plug swings no more than 0.05 mm"),
        "{remedy}"
    );
}

#[test]
fn making_truth_silent_on_a_wider_zone() {
    let (card, piece) = turned_round(0.1);
    silent("making.truth", &card, &piece);
}

/// The tapped bush, its spigot turned after it is turned round in the three-jaw chuck.
fn turned_round(zone: f64) -> (RouteCard, Piece) {
    let mut p = proposed(&tapped_bush());
    p.card.settings[1].holder = workshop().lathe.holders[0].clone();
    let features: Vec<_> = p
        .piece
        .shape
        .features()
        .iter()
        .map(|f| match &f.coaxial {
            Some(c) => f.clone().true_to(c.group.clone(), mm(zone)),
            None => f.clone(),
        })
        .collect();
    let piece = bench::piece("tapped-bush", 18.0, 22.0, &features);
    (p.card, piece)
}

static SWING: Assumption = Assumption {
    id: "holding.swing",
    meaning: "swing of a chuck that nobody has measured",
    unit: &reckoning::quantity::MM,
    value: 0.05,
    low: 0.02,
    high: 0.09,
    variable: "holding.swing",
    cite: reckoning::Cite {
        source: &reckoning::source::COMMON_PRACTICE,
        place: "invented for this test",
    },
};

#[test]
fn an_assumed_swing_enters_at_its_worse_end_and_is_met_on_condition_at_best() {
    for (zone, verdict) in [(0.08, Verdict::NotMet), (0.2, Verdict::MetOnCondition)] {
        let (mut card, piece) = turned_round(zone);
        card.settings[1].holder.swing = reckoning::Known::assumed(&SWING);
        let found = of("making.truth", &card, &piece);
        assert_eq!(found[0].verdict, verdict, "{}", found[0].says);
        assert_eq!(found[0].weakest_origin, reckoning::Origin::Assumed);
    }
}

#[test]
fn a_thread_that_is_not_known_leaves_the_tapping_unproved() {
    let p = proposed(&tapped_bush());
    let mut card = p.card.clone();
    let at = making(&card, "plug");
    let work = &mut card.settings[at.setting].rows[at.row].operation.work;
    if let Work::Tap {
        form: plant::part::Form::Threaded { thread, .. },
        ..
    } = work
    {
        thread.designation = "odd 6 x 1".to_owned();
    }
    let found = of("making.tap", &card, &p.piece);
    assert!(
        found.iter().any(|f| f.verdict == Verdict::Unproved),
        "{found:#?}"
    );
}

#[test]
fn every_rule_is_told_on_every_card() {
    let p = proposed(&dryer_bush());
    let found = check(&p.card, &p.piece).findings;
    for rule in making::RULES {
        assert!(
            found.iter().any(|f| f.rule.id == rule.id),
            "{} says nothing",
            rule.id
        );
    }
    for f in &found {
        assert!(f.working.disagreement() < 1e-12, "{}", f.rule.id);
    }
}
