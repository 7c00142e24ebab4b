//! Steam that engines are reported to take, against the model with nothing measured.
//!
//! The reports give power, pressure and steam, and no sizes: bore, stroke and speed are of our
//! choosing, such that the engine gives the power that is reported. A report is met when it lies
//! in the band between the ends of what is assumed of the missing quantity, the mechanical loss
//! and the diagram, each taken alone.

use reckoning::quantity::{BAR_GAUGE, HORSEPOWER, KG_PER_H, KILOWATT, MM, PSI_GAUGE, RPM};
use steaming::{Admission, Engine, Exhausts, Load, Missing};

use crate::run;

/// Sizes in mm and turns in a minute, double-acting.
fn engine([bore, stroke, rpm]: [f64; 3], cut_off: f64, sides: f64) -> Engine {
    let (bore_m, stroke_m) = (MM.to_si(bore), MM.to_si(stroke));
    Engine {
        cylinders: 1.0,
        strokes_per_turn: sides,
        bore_m,
        stroke_m,
        stroke_volume_m3: std::f64::consts::FRAC_PI_4 * bore_m * bore_m * stroke_m,
        load: Load::Open {
            strokes_per_s: sides * RPM.to_si(rpm),
            cut_off,
        },
        clearance: value("engine.clearance"),
        compression: value("engine.compression"),
        chest_share: value("engine.chest-pressure"),
        admission: Admission::Share(value("engine.admission-pressure")),
        diagram_factor: value("engine.diagram-factor"),
        mechanical_efficiency: value("engine.mechanical-efficiency"),
        missing: Missing::Reckoned(1.0),
        exhausts: Exhausts::ByLoss(value("engine.heat-loss")),
        closing_pa: None,
        puff_share: value("engine.puff-share"),
        pipe: None,
        pump: None,
    }
}

fn value(id: &str) -> f64 {
    ends(id)[1]
}

/// Low end, value and high end of an assumption.
fn ends(id: &str) -> [f64; 3] {
    let a = steaming::assumption(id).expect("an assumption").assumption;
    [a.low, a.value, a.high]
}

/// Kilograms for a kilowatt hour in the cylinders.
fn indicated(engine: &Engine, gauge_pa: f64) -> f64 {
    let run = run(engine, gauge_pa);
    KG_PER_H.from_si(run.steam_kg_s) / KILOWATT.from_si(run.indicated_w)
}

/// Kilograms for a kilowatt hour at the shaft.
fn brake(engine: &Engine, gauge_pa: f64) -> f64 {
    let run = run(engine, gauge_pa);
    KG_PER_H.from_si(run.steam_kg_s) / KILOWATT.from_si(run.shaft_w)
}

/// Least and greatest by the ends of missing quantity, mechanical loss and diagram together, each
/// drawn in by the root of three: they do not all stand at their ends at once.
fn band(engine: &Engine, of: impl Fn(&Engine) -> f64) -> [f64; 2] {
    let at = |end: usize| {
        let toward = |id: &str, end: usize| {
            let [low, middle, high] = ends(id);
            middle + ([low, high][end] - middle) / 3.0_f64.sqrt()
        };
        of(&Engine {
            missing: Missing::Reckoned(toward("engine.missing", end)),
            mechanical_efficiency: toward("engine.mechanical-efficiency", 1 - end),
            diagram_factor: toward("engine.diagram-factor", 1 - end),
            ..*engine
        })
    };
    [at(0), at(1)]
}

fn within([low, high]: [f64; 2], value: f64, what: &str) {
    assert!(
        low <= value && value <= high,
        "{what}: {value} not in {low} to {high}"
    );
}

/// A magazine's test series as handed down: a quarter horsepower on 100 lb, 20 lb of steam in an
/// hour, 48.7 kg for a kilowatt hour at the shaft. Sizes are ours.
#[test]
fn published_a_quarter_horsepower_takes_twenty_pounds() {
    let small = engine([32.0, 32.0, 700.0], 0.6, 2.0);
    let p = PSI_GAUGE.to_si(100.0);
    let power = run(&small, p).shaft_w;
    assert!(
        (power / HORSEPOWER.to_si(0.25) - 1.0).abs() < 0.1,
        "{power} W"
    );
    within(band(&small, |e| brake(e, p)), 48.7, "quarter horsepower");
}

/// A launch engine of about a horsepower takes 50 lb in an hour (report of its users), 30.4 kg for
/// a kilowatt hour. Sizes are ours.
#[test]
fn published_a_launch_engine_of_a_horsepower() {
    let launch = engine([50.0, 60.0, 500.0], 0.6, 2.0);
    let p = PSI_GAUGE.to_si(100.0);
    let power = run(&launch, p).shaft_w;
    assert!(
        (power / HORSEPOWER.to_si(1.0) - 1.0).abs() < 0.15,
        "{power} W"
    );
    within(band(&launch, |e| brake(e, p)), 30.4, "launch engine");
}

/// A slow beam engine of a horsepower is reckoned to take 80 lb, 48.7 kg for a kilowatt hour.
#[test]
fn published_a_beam_engine_of_a_horsepower() {
    let beam = engine([90.0, 180.0, 110.0], 0.6, 2.0);
    let p = PSI_GAUGE.to_si(50.0);
    let power = run(&beam, p).shaft_w;
    assert!(
        (power / HORSEPOWER.to_si(1.0) - 1.0).abs() < 0.2,
        "{power} W"
    );
    within(band(&beam, |e| brake(e, p)), 48.7, "beam engine");
}

/// Oscillators of toys take 60 to 150 kg for a kilowatt hour (common practice, no source).
#[test]
fn published_toy_oscillators() {
    for sizes in [
        [12.0, 20.0, 1000.0],
        [16.0, 20.0, 800.0],
        [20.0, 25.0, 600.0],
    ] {
        let toy = engine(sizes, 0.85, 1.0);
        let found = brake(&toy, BAR_GAUGE.to_si(2.0));
        assert!((60.0..=150.0).contains(&found), "{sizes:?}: {found}");
    }
}

/// Simple engines above 20 kW take 18.3 to 19.5 kg for an indicated kilowatt hour (Steam Engines,
/// reference series no. 70, 1911). The model, whose numbers are those of small engines, stands a
/// tenth to a fifth below: a full-size cylinder leaks by its slide valve, which is not reckoned by
/// a gap round the piston. The miss is kept as it is.
#[test]
fn published_large_engines_take_more_than_the_model_says() {
    let large = engine([200.0, 250.0, 250.0], 0.35, 2.0);
    let p = BAR_GAUGE.to_si(7.0);
    assert!(run(&large, p).indicated_w > 20e3);
    let found = indicated(&large, p);
    assert!((14.5..18.3).contains(&found), "{found}");
}

/// Of the work of an engine without loss on the same steam, 10.3 kg for a kilowatt hour from
/// 100 lb, the quarter horsepower above has a fifth and the launch engine a third by their
/// reports. The model gives the small one a quarter: it is the better engine of the two.
#[test]
fn published_share_of_an_engine_without_loss() {
    let p = PSI_GAUGE.to_si(100.0);
    let share = |engine: &Engine| {
        let run = run(engine, p);
        run.shaft_w / run.steam_kg_s / run.ideal_j_kg
    };
    let small = share(&engine([32.0, 32.0, 700.0], 0.6, 2.0));
    let launch = share(&engine([50.0, 60.0, 500.0], 0.6, 2.0));
    assert!((0.20..0.28).contains(&small), "{small}");
    assert!((0.27..0.40).contains(&launch), "{launch}");
}
