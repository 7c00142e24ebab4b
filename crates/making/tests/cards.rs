//! Cards proposed for generated bushes make the bush and break no rule; no card, however it is
//! shuffled, upsets the simulation.

mod bench;

use bench::{cross, cylinder, drilled, dryer_bush, mm, piece, tapped_bush, thread, workshop};
use making::card::{Place, RouteCard};
use making::{Piece, check, propose, sentences, simulate};
use plant::part::{End, Finish, Surface};
use proptest::prelude::*;
use reckoning::Verdict;

/// What a generated bush has in its head.
#[derive(Clone, Copy, Debug)]
enum Head {
    /// A plain bore right through.
    Through,
    /// A blind reamed bore from the spigot end.
    BlindReamed,
    /// A tapped hole from the head end, over a bore right through.
    Tapped,
}

/// A bush in whole millimetres and tenths.
#[derive(Clone, Copy, Debug)]
struct Bush {
    spigot: (f64, f64),
    head: (f64, f64),
    bore: f64,
    inside: Head,
    threaded: bool,
    crossed: bool,
}

impl Bush {
    fn piece(&self) -> Piece {
        let (long, whole) = (self.spigot.1, self.spigot.1 + self.head.1);
        let mut features = vec![
            cylinder("head", Surface::Outside, (long, whole), self.head.0),
            cylinder("spigot", Surface::Outside, (0.0, long), self.spigot.0)
                .true_to("true", mm(0.1)),
        ];
        if self.threaded {
            features.push(thread(
                "outer",
                Surface::Outside,
                (0.0, long - 1.0),
                "M12x1",
            ));
        }
        match self.inside {
            Head::Through => features
                .push(drilled("bore", End::Low, 0.0, (self.bore, whole)).true_to("true", mm(0.1))),
            Head::BlindReamed => features.push(
                drilled("bore", End::Low, 0.0, (5.0, whole - 5.0))
                    .finished(Finish::Reamed)
                    .true_to("true", mm(0.1)),
            ),
            Head::Tapped => {
                features.push(drilled("bore", End::Low, 0.0, (self.bore, whole)));
                features.push(drilled("tapping", End::High, whole, (5.5, 11.0)));
                features.push(
                    thread(
                        "inner",
                        Surface::Inside,
                        (whole - 7.0, whole),
                        "1/4 x 40 ME",
                    )
                    .true_to("true", mm(0.1)),
                );
            }
        }
        if self.crossed {
            features.push(cross("vent", long + 1.5 + 1.5, 2.0));
        }
        piece("bush", self.head.0.ceil() + 2.0, whole, &features)
    }
}

fn bushes() -> impl Strategy<Value = Bush> {
    (
        (100..=140_u32, 8..=14_u32),
        (160..=220_u32, 12..=18_u32),
        25..=45_u32,
        prop_oneof![
            Just(Head::Through),
            Just(Head::BlindReamed),
            Just(Head::Tapped)
        ],
        any::<bool>(),
        any::<bool>(),
    )
        .prop_map(|(spigot, head, bore, inside, threaded, crossed)| {
            let tenth = |n: u32| f64::from(n) / 10.0;
            let outside = if threaded { 12.0 } else { tenth(spigot.0) };
            Bush {
                spigot: (outside, f64::from(spigot.1)),
                head: (tenth(head.0), f64::from(head.1)),
                bore: tenth(bore),
                inside,
                threaded,
                crossed,
            }
        })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn a_proposed_card_makes_the_piece_and_breaks_no_rule(bush in bushes()) {
        let shop = workshop();
        let proposal = propose(&bush.piece(), &shop).expect("a card");
        let checked = check(&proposal.card, &proposal.piece);
        for f in &checked.findings {
            prop_assert!(f.verdict <= Verdict::MetOnCondition, "{}: {}", f.rule.id, f.says);
        }
        prop_assert!(checked.run.differs.is_empty(), "{:?}", checked.run.differs);
        let made = checked.run.shape.volume().mm3();
        let drawn = proposal.piece.shape.volume().mm3();
        prop_assert!((made - drawn).abs() < 1e-6 * drawn, "{made} and {drawn}");
        prop_assert_eq!(proposal.faults, 0);
        prop_assert!(proposal.lacks.iter().all(|l| l.contains("M12 x 1")), "{:?}", proposal.lacks);
    }

    #[test]
    fn no_row_puts_metal_back(bush in bushes()) {
        let proposal = propose(&bush.piece(), &workshop()).expect("a card");
        let run = simulate(&proposal.card, &proposal.piece);
        for step in &run.steps {
            let (before, after) = (step.before.volume().mm3(), step.after.volume().mm3());
            prop_assert!(after <= before + 1e-6 * before, "row {} adds {}", step.number, after - before);
        }
    }
}

/// One change made to a card.
#[derive(Clone, Copy, Debug)]
enum Change {
    Move(usize, usize),
    Drop(usize),
    Double(usize),
    Swap(usize, usize),
}

fn changes() -> impl Strategy<Value = Vec<Change>> {
    let one = prop_oneof![
        (0..40_usize, 0..40_usize).prop_map(|(a, b)| Change::Move(a, b)),
        (0..40_usize).prop_map(Change::Drop),
        (0..40_usize).prop_map(Change::Double),
        (0..4_usize, 0..4_usize).prop_map(|(a, b)| Change::Swap(a, b)),
    ];
    proptest::collection::vec(one, 1..6)
}

fn changed(card: &RouteCard, change: Change) -> RouteCard {
    let places: Vec<Place> = card.rows().map(|(p, _)| p).collect();
    if places.is_empty() {
        return card.clone();
    }
    let at = |n: usize| places[n % places.len()];
    match change {
        Change::Move(a, b) => {
            let taken = card.without(at(a));
            let rows: Vec<Place> = taken.rows().map(|(p, _)| p).collect();
            if rows.is_empty() {
                return taken;
            }
            card.moved(at(a), rows[b % rows.len()])
        }
        Change::Drop(a) => card.without(at(a)),
        Change::Double(a) => {
            let operation = card.settings[at(a).setting].rows[at(a).row]
                .operation
                .clone();
            card.inserted(at(a), operation)
        }
        Change::Swap(a, b) => {
            let mut card = card.clone();
            let count = card.settings.len();
            card.settings.swap(a % count, b % count);
            card
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn no_card_is_too_odd_to_be_judged(second in any::<bool>(), changes in changes()) {
        let piece = if second { tapped_bush() } else { dryer_bush() };
        let shop = workshop();
        let proposal = propose(&piece, &shop).expect("a card");
        let card = changes.iter().fold(proposal.card.clone(), |card, c| changed(&card, *c));
        let checked = check(&card, &proposal.piece);
        for f in checked.findings.iter().filter(|f| f.verdict == Verdict::NotMet) {
            prop_assert!(f.remedy.as_ref().is_some_and(|r| !r.is_empty()), "{}", f.says);
        }
        let printed = sentences(&card, &proposal.piece, &shop);
        prop_assert_eq!(printed.len(), card.settings.len());
        if checked.breaks_no_rule() {
            prop_assert!(checked.run.differs.is_empty());
        }
    }
}

/// A remedy that moves a row is tried here on the card it was given for: it does what it says.
#[test]
fn a_remedy_followed_leaves_fewer_faults() {
    let proposal = propose(&dryer_bush(), &workshop()).expect("a card");
    let part = proposal
        .card
        .rows()
        .find(|(_, r)| r.operation.work.word() == "part off")
        .expect("a row")
        .0;
    let wrong = proposal.card.moved(part, Place { row: 6, ..part });
    let faults = |card: &RouteCard| {
        let checked = check(card, &proposal.piece);
        checked
            .findings
            .iter()
            .filter(|f| f.verdict == Verdict::NotMet)
            .count()
    };
    assert!(faults(&wrong) > 0);
    let right = wrong.moved(Place { row: 6, ..part }, part);
    assert_eq!(faults(&right), 0);
}

#[test]
fn a_card_reads_as_sentences_in_the_units_of_the_dials() {
    let mut shop = workshop();
    let proposal = propose(&dryer_bush(), &shop).expect("a card");
    let printed = sentences(&proposal.card, &proposal.piece, &shop);
    assert_eq!(printed.len(), 3);
    let drill = &printed[0].rows[2];
    assert_eq!(drill.says, "Drill 4.9 mm, 16 mm deep at full diameter.");
    // 16 mm on a lead of 1.5 mm with 60 divisions: 10 turns and 1 mm, 40 divisions.
    let dial = drill.dial.as_deref().expect("a dial");
    assert!(
        dial.starts_with("tailstock 10 turns and 40 of 60 divisions"),
        "{dial}"
    );
    // 45 m/min at 16 mm is 895 rpm; the drill may run faster than this lathe turns.
    assert_eq!(printed[0].rows[0].speed.as_deref(), Some("895 rpm"));
    assert_eq!(drill.speed.as_deref(), Some("2500 rpm (no more than 2923)"));
    assert!(
        proposal.settings.starts_with("3 settings, proved least"),
        "{}",
        proposal.settings
    );
    shop.reads = making::Reads::Inches;
    let proposal = propose(&dryer_bush(), &shop).expect("a card");
    let printed = sentences(&proposal.card, &proposal.piece, &shop);
    assert_eq!(
        printed[0].rows[2].says,
        "Drill 4.9 mm, 0.63 in deep at full diameter."
    );
}

#[test]
fn what_stands_against_a_card_is_told() {
    let mut shop = workshop();
    shop.reamers.clear();
    let told = propose(&dryer_bush(), &shop)
        .expect_err("no reamer")
        .to_string();
    assert_eq!(told, "seat wants a reamer of 5 mm, and none is at hand");
    let mut shop = workshop();
    shop.drilling = None;
    let told = propose(&dryer_bush(), &shop)
        .expect_err("no drilling machine")
        .to_string();
    assert!(told.contains("no drilling machine"), "{told}");
    let mut shop = workshop();
    shop.lathe.holders.clear();
    let told = propose(&dryer_bush(), &shop)
        .expect_err("no holder")
        .to_string();
    assert_eq!(
        told,
        "no holder of the workshop can hold the piece in the bar"
    );
    let mut shop = workshop();
    shop.taps.clear();
    let proposal = propose(&tapped_bush(), &shop).expect("a card");
    assert_eq!(
        proposal.lacks,
        ["plug wants a tap of 1/4 x 40 ME, and none is listed"]
    );
}
