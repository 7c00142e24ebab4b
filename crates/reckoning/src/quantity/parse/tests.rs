//! What makers write, and what they are told where it does not read.

use super::super::{Absolute, Length, UNITS};
use super::*;

fn mm(text: &str) -> f64 {
    match read::<Length>(text) {
        Ok(typed) => {
            assert_eq!(typed.text, text, "the typed text survives");
            typed.value.mm()
        }
        Err(e) => panic!("{e}"),
    }
}

fn told(kind: Kind, text: &str) -> (usize, String) {
    match read_kind(kind, text) {
        Ok(si) => panic!("`{text}` was read as {si}"),
        Err(e) => (e.column, e.to_string()),
    }
}

#[test]
fn lengths_as_makers_write_them() {
    for (text, wanted) in [
        ("1 7/16 in", 36.5125),
        ("1-7/16\"", 36.5125),
        ("1.4375\"", 36.5125),
        ("1 7⁄16 in", 36.5125),
        (" 36.5 mm ", 36.5),
        ("5/32", 3.96875),
        ("1 7/16", 36.5125),
        ("½", 12.7),
        ("1½ in", 38.1),
        ("1 ¾ in.", 44.45),
        ("¼”", 6.35),
        (".5 in", 12.7),
        ("-3/8 in", -9.525),
        ("\u{2212}1 1/2 in", -38.1),
        ("16 swg", 1.6256),
        ("16 S.W.G.", 1.6256),
        ("swg 16", 1.6256),
        ("16 bwg", 1.651),
        ("No 31", 3.048),
        ("#31", 3.048),
        ("No. 31 drill", 3.048),
        ("letter F", 6.5278),
        ("63.5 mm", 63.5),
        ("2 ft 6 in", 762.0),
        ("2' 6 1/2\"", 774.7),
        ("40 thou", 1.016),
        ("1 IN", 25.4),
        ("5e-3 m", 5.0),
    ] {
        let found = mm(text);
        assert!(
            (found - wanted).abs() < 1e-9,
            "`{text}` is read as {found} mm"
        );
    }
}

#[test]
fn other_kinds_as_makers_write_them() {
    for (kind, text, wanted) in [
        (Kind::Gauge, "80 psi", 551_580.583),
        (Kind::Gauge, "80 PSI", 551_580.583),
        (Kind::Gauge, "5.5 bar", 5.5e5),
        (Kind::Gauge, "5.5 bar gauge", 5.5e5),
        (Kind::Absolute, "5.5 bar", 5.5e5),
        (Kind::Absolute, "3 MPa absolute", 3e6),
        (Kind::Absolute, "1 bar abs", 1e5),
        (Kind::Absolute, "14.7 psi", 101_352.932),
        (Kind::Temperature, "350 °F", 449.816_667),
        (Kind::Temperature, "170 ° C", 443.15),
        (Kind::Temperature, "-10 C", 263.15),
        (Kind::MassFlow, "12.5 kg/h", 12.5 / 3600.0),
        (Kind::MassFlow, "12.5 kg / h", 12.5 / 3600.0),
        (Kind::VolumeFlow, "1/4 pint/min", 568.261_25e-6 / 240.0),
        (Kind::Time, "20 min", 1200.0),
        (Kind::Time, "1 h 20 min", 4800.0),
        (Kind::Time, "1h20min", 4800.0),
        (Kind::Time, "-1 h 20 min", -4800.0),
        (Kind::Ratio, "7.5 %", 0.075),
        (Kind::Ratio, "0.85", 0.85),
        (Kind::Ratio, "3/4", 0.75),
        (Kind::SpecificVolume, "1.00215168e-3 m3/kg", 1.002_151_68e-3),
        (Kind::Expansion, "17e-6 1/K", 17e-6),
        (Kind::Rotation, "5 1/s", 5.0),
        (Kind::PressureDrop, "1/2 in water", 124.544_455),
        (Kind::Mass, "2 lb 3 oz", 2.1875 * 0.453_592_37),
        (Kind::Viscosity, "25 μPa s", 25e-6),
    ] {
        let found = read_kind(kind, text).expect(text);
        let off = (found - wanted).abs() / wanted.abs();
        assert!(off < 1e-8, "`{text}` is read as {found}");
    }
}

#[test]
fn what_was_read_and_what_was_meant() {
    for (kind, text, column, wanted) in [
        (
            Kind::Length,
            "80 psi",
            4,
            "`80 psi`: psi is a unit of pressure, a length is wanted, for instance `12 mm` or `1 7/16 in`",
        ),
        (
            Kind::Length,
            "12",
            1,
            "`12`: a length needs a unit, for instance `12 mm` or `1 7/16 in`",
        ),
        (
            Kind::Length,
            "36,5 mm",
            3,
            "`36,5 mm`: a comma stands in the number, write `36.5 mm` if it is the decimal point, `365 mm` if it parts thousands",
        ),
        (
            Kind::Length,
            "36 mn",
            4,
            "`36 mn`: mn is not a unit of length, did you mean `36 mm`?",
        ),
        (
            Kind::Length,
            "36 MM",
            4,
            "`36 MM`: MM is not a unit of length, did you mean `36 mm`?",
        ),
        (
            Kind::Length,
            "16 gauge",
            4,
            "`16 gauge`: a gauge must carry its name, for instance `16 swg` or `16 bwg`",
        ),
        (
            Kind::Length,
            "31 swg",
            1,
            "`31 swg`: no sheet 31 is in the table of swg, it holds 0 to 30",
        ),
        (
            Kind::Length,
            "No 81",
            1,
            "`No 81`: there is no number drill 81, they run from 1 to 80",
        ),
        (
            Kind::Gauge,
            "5 bar absolute",
            3,
            "`5 bar absolute`: bar absolute says a pressure above vacuum, a gauge pressure is wanted, for instance `80 psi` or `5.5 bar`",
        ),
        (
            Kind::Absolute,
            "5 barg",
            3,
            "`5 barg`: barg says a pressure above the atmosphere, an absolute pressure is wanted, for instance `1.013 bar absolute`",
        ),
        (
            Kind::Gauge,
            "No 31",
            1,
            "`No 31`: that is a drill or sheet by its number, a gauge pressure is wanted, for instance `80 psi` or `5.5 bar`",
        ),
        (
            Kind::Length,
            "1/0 in",
            1,
            "`1/0 in`: a fraction over 0 has no value, a length is wanted, for instance `12 mm` or `1 7/16 in`",
        ),
        (
            Kind::Length,
            "1.5 7/16 in",
            5,
            "`1.5 7/16 in`: a second number follows, `7/16 in`, one length is wanted, for instance `12 mm` or `1 7/16 in`",
        ),
        (
            Kind::Time,
            "half an hour",
            1,
            "`half an hour`: it should begin with a number, and begins `half an hour`, a time is wanted, for instance `20 min` or `1 h 20 min`",
        ),
    ] {
        assert_eq!(told(kind, text), (column, wanted.to_owned()));
    }
}

#[test]
fn a_bare_number_of_a_dimensional_kind_is_refused() {
    for (kind, text) in [
        (Kind::Length, "5"),
        (Kind::Length, "0.5"),
        (Kind::Length, "1/3"),
        (Kind::Length, "1/128"),
        (Kind::Length, "4/1"),
        (Kind::Gauge, "1/2"),
        (Kind::Temperature, "0"),
        (Kind::Length, ""),
        (Kind::Length, "   "),
        (Kind::Length, "1e999 mm"),
        (Kind::Length, "16.5 swg"),
        (Kind::Length, "-16 swg"),
        (Kind::Length, "1 in 5 mm"),
        (Kind::Time, "1 h -20 min"),
        (Kind::Gauge, "5 mpa a"),
    ] {
        told(kind, text);
    }
}

#[test]
fn each_kind_has_an_example_that_reads() {
    for unit in UNITS {
        for example in misread::example(unit.kind).split(" or ") {
            let text = example.trim_matches('`');
            if let Err(e) = read_kind(unit.kind, text) {
                panic!("{:?}: {e}", unit.kind);
            }
        }
    }
    assert!((read::<Absolute>("1.01325 bar").expect("reads").value.pa() - 101_325.0).abs() < 1e-6);
}
