//! Plates, tubes and shells against closed forms and independent sums.
#![allow(
    clippy::unwrap_used,
    reason = "a test may stop at what it did not expect"
)]

use plant::part::{
    Flange, Hole, Outline, Part, Plate, Run, Seam, Shape, Shell, ShellHole, Stands, Tube,
};
use reckoning::quantity::{Angle, Density, Length};

fn mm(v: f64) -> Length {
    Length::from_mm(v)
}

fn close(found: f64, expected: f64, relative: f64) {
    let off = (found / expected - 1.0).abs();
    assert!(
        off <= relative,
        "{found} against {expected}: off by {off:e}"
    );
}

fn flanged() -> Plate {
    Plate {
        outline: Outline::Disc { diameter: mm(95.0) },
        thickness: mm(2.5),
        flange: Some(Flange {
            stands: Stands::Up,
            inside_radius: mm(3.0),
            height: mm(12.0),
        }),
        holes: Vec::new(),
    }
}

/// A flanged plate 95 × 2.5, radius 3, height 12. Independent calculation: rings of 1 µm height
/// summed in this test.
#[test]
fn independent_flanged_plate() {
    let (steps, h) = (12_000, 12.0 / 12_000.0);
    let ring = |z: f64| {
        // Seen from the middle plane of the bend: outside radius 5.5 about (42, 5.5).
        let outer = if z < 5.5 {
            42.0 + (5.5_f64.powi(2) - (5.5 - z).powi(2)).sqrt()
        } else {
            47.5
        };
        let inner = if z < 2.5 {
            0.0
        } else if z < 5.5 {
            42.0 + (3.0_f64.powi(2) - (5.5 - z).powi(2)).sqrt()
        } else {
            45.0
        };
        std::f64::consts::PI * (outer * outer - inner * inner)
    };
    let sum: f64 = (0..steps).map(|i| ring((f64::from(i) + 0.5) * h) * h).sum();
    close(flanged().volume().mm3(), sum, 2e-6);
}

#[test]
fn ligaments_and_edges() {
    let hole = |id: &str, x, y| Hole {
        id: id.to_owned(),
        x: mm(x),
        y: mm(y),
        diameter: mm(10.0),
    };
    let plate = Plate {
        holes: vec![
            hole("a", 0.0, 0.0),
            hole("b", 13.0, 0.0),
            hole("c", 30.0, 0.0),
        ],
        ..flanged()
    };
    let ligaments = plate.ligaments();
    assert!((ligaments[0].width.mm() - 3.0).abs() < 1e-12);
    assert_eq!(
        (ligaments[0].first.as_str(), ligaments[0].second.as_str()),
        ("a", "b")
    );
    // The flat part is 95 − 2 (3 + 2.5) = 84 mm across.
    assert!((plate.edge_of(&plate.holes[2]).mm() - 7.0).abs() < 1e-12);
    let without = flanged().volume().mm3() - plate.volume().mm3();
    close(without, 3.0 * std::f64::consts::PI * 25.0 * 2.5, 1e-12);
}

/// Masses of stock: 10 mm brass bar 0.665 kg/m is a bar; here copper tube 101.6 × 3.251,
/// 8.98 kg/m, and sheet 3 × 300 × 300, 2.414 kg, at 8.94 g/cm³. Independent calculation.
#[test]
fn independent_stock_masses() {
    let copper = Density::from_g_cm3(8.94);
    let tube = Tube {
        outside: mm(101.6),
        wall: mm(3.251),
        run: Run::Straight { length: mm(1000.0) },
    };
    close((tube.volume() * copper).kg(), 8.98, 0.005 / 8.98);
    let sheet = Part {
        id: "sheet".to_owned(),
        name: "sheet".to_owned(),
        metal: Some("CW024A".to_owned()),
        shape: Shape::Plate(Plate {
            outline: Outline::Rectangle {
                length: mm(300.0),
                width: mm(300.0),
            },
            thickness: mm(3.0),
            flange: None,
            holes: Vec::new(),
        }),
        stock: None,
    };
    close(sheet.mass(copper).kg(), 2.414, 0.0005 / 2.414);
}

/// A radial hole takes from a thin wall nearly the cylinder of its length, and never less.
#[test]
fn a_hole_in_a_shell_takes_a_little_more_than_a_disc() {
    let shell = Shell {
        bore: mm(95.0),
        wall: mm(2.5),
        length: mm(200.0),
        seam: Seam::Drawn,
        holes: vec![ShellHole {
            id: "bush.gauge".to_owned(),
            z: mm(100.0),
            azimuth: Angle::from_deg(90.0),
            diameter: mm(14.0),
        }],
    };
    let disc = std::f64::consts::PI * 49.0 * 2.5;
    let taken = shell.holes_volume().mm3();
    assert!(
        taken > disc && taken < disc * 1.02,
        "{taken} against {disc}"
    );
    let whole = std::f64::consts::PI * 97.5 * 2.5 * 200.0;
    close(shell.volume().mm3(), whole - taken, 1e-14);
}
