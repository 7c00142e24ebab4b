//! The equations of water and steam against the verification tables of their releases.
//!
//! IAPWS R7-97(2012), R12-08 and R15-11; table 18 of R7-97 was read in a reproduction of its text,
//! the other printed values are from memory. Tolerance: half a unit of the last printed figure,
//! nine figures unless said otherwise.

use formulas::steam::{
    Point, backward_ph, backward_ps, conductivity, metastable, region1, region2, saturation,
    viscosity,
};

/// Half a unit of the ninth figure, relative, at its worst (a leading 1).
const NINE_FIGURES: f64 = 5e-9;

/// A backward equation with its rows of p (MPa), h or s (kJ), T (K).
type Backward = (fn(f64, f64) -> f64, [[f64; 3]; 3]);

#[track_caller]
fn agrees(found: f64, printed: f64, relative: f64) {
    let off = (found / printed - 1.0).abs();
    assert!(off <= relative, "{found} against {printed}: off by {off:e}");
}

/// Rows of T (K), p (MPa), v, h, u, s, cp, w as the release prints them (kJ, m³, kg, K, m/s).
fn table(rows: &[[f64; 8]], point: fn(f64, f64) -> Point) {
    for &[t, p_mpa, v, h, u, s, cp, w] in rows {
        let at = point(p_mpa * 1e6, t);
        for (found, printed) in [
            (at.v, v),
            (at.h / 1e3, h),
            (at.u / 1e3, u),
            (at.s / 1e3, s),
            (at.cp / 1e3, cp),
            (at.w(), w),
        ] {
            agrees(found, printed, NINE_FIGURES);
        }
    }
}

#[test]
fn published_region1_table_5() {
    table(
        &[
            [
                300.0,
                3.0,
                1.00215168e-3,
                115.331273,
                112.324818,
                0.392294792,
                4.17301218,
                1507.73921,
            ],
            [
                300.0,
                80.0,
                9.71180894e-4,
                184.142828,
                106.448356,
                0.368563852,
                4.01008987,
                1634.69054,
            ],
            [
                500.0,
                3.0,
                1.20241800e-3,
                975.542239,
                971.934985,
                2.58041912,
                4.65580682,
                1240.71337,
            ],
        ],
        region1::point,
    );
}

#[test]
fn published_region2_table_15() {
    table(
        &[
            [
                300.0, 0.0035, 39.4913866, 2549.91145, 2411.69160, 8.52238967, 1.91300162,
                427.920172,
            ],
            [
                700.0, 0.0035, 92.3015898, 3335.68375, 3012.62819, 10.1749996, 2.08141274,
                644.289068,
            ],
            [
                700.0,
                30.0,
                5.42946619e-3,
                2631.49474,
                2468.61076,
                5.17540298,
                10.3505092,
                480.386523,
            ],
        ],
        region2::point,
    );
}

#[test]
fn published_metastable_table_18() {
    table(
        &[
            [
                450.0,
                1.0,
                0.192516540,
                2768.81115,
                2576.29461,
                6.56660377,
                2.76349265,
                498.408101,
            ],
            [
                440.0,
                1.0,
                0.186212297,
                2740.15123,
                2553.93894,
                6.50218759,
                2.98166443,
                489.363295,
            ],
            [
                450.0,
                1.5,
                0.121685206,
                2721.34539,
                2538.81758,
                6.29170440,
                3.62795578,
                481.941819,
            ],
        ],
        metastable::point,
    );
}

#[test]
fn published_backward_tables_7_9_24_29() {
    let ph: [Backward; 4] = [
        (
            backward_ph::liquid,
            [
                [3.0, 500.0, 391.798509],
                [80.0, 500.0, 378.108626],
                [80.0, 1500.0, 611.041229],
            ],
        ),
        (
            backward_ph::steam_a,
            [
                [0.001, 3000.0, 534.433241],
                [3.0, 3000.0, 575.373370],
                [3.0, 4000.0, 1010.77577],
            ],
        ),
        (
            backward_ph::steam_b,
            [
                [5.0, 3500.0, 801.299102],
                [5.0, 4000.0, 1015.31583],
                [25.0, 3500.0, 875.279054],
            ],
        ),
        (
            backward_ph::steam_c,
            [
                [40.0, 2700.0, 743.056411],
                [60.0, 2700.0, 791.137067],
                [60.0, 3200.0, 882.756860],
            ],
        ),
    ];
    let ps: [Backward; 4] = [
        (
            backward_ps::liquid,
            [
                [3.0, 0.5, 307.842258],
                [80.0, 0.5, 309.979785],
                [80.0, 3.0, 565.899909],
            ],
        ),
        (
            backward_ps::steam_a,
            [
                [0.1, 7.5, 399.517097],
                [0.1, 8.0, 514.127081],
                [2.5, 8.0, 1039.84917],
            ],
        ),
        (
            backward_ps::steam_b,
            [
                [8.0, 6.0, 600.484040],
                [8.0, 7.5, 1064.95556],
                [90.0, 6.0, 1038.01126],
            ],
        ),
        (
            backward_ps::steam_c,
            [
                [20.0, 5.75, 697.992849],
                [80.0, 5.25, 854.011484],
                [80.0, 5.75, 949.017998],
            ],
        ),
    ];
    for (equation, rows) in ph.iter().chain(&ps) {
        for &[p_mpa, second, t] in rows {
            agrees(equation(p_mpa * 1e6, second * 1e3), t, NINE_FIGURES);
        }
    }
    // The border between the parts, printed at one point below table 19.
    agrees(backward_ph::border_b_c(0.3516004323e7), 100e6, NINE_FIGURES);
}

#[test]
fn published_saturation_tables_35_36() {
    for (t, p_mpa) in [
        (300.0, 0.353658941e-2),
        (500.0, 2.63889776),
        (600.0, 12.3443146),
    ] {
        agrees(saturation::pressure(t), p_mpa * 1e6, NINE_FIGURES);
    }
    for (p_mpa, t) in [(0.1, 372.755919), (1.0, 453.035632), (10.0, 584.149488)] {
        agrees(saturation::temperature(p_mpa * 1e6), t, NINE_FIGURES);
    }
    // The border between regions 2 and 3, printed at one point below table 1.
    agrees(
        region2::border_to_region3(623.15),
        16.5291643e6,
        NINE_FIGURES,
    );
}

#[test]
fn published_viscosity_r12_08_table_4() {
    for (t, rho, micro_pa_s) in [
        (298.15, 998.0, 889.735100),
        (298.15, 1200.0, 1437.649467),
        (373.15, 1000.0, 307.883622),
        (433.15, 1.0, 14.538324),
        (433.15, 1000.0, 217.685358),
        (873.15, 1.0, 32.619287),
        (873.15, 100.0, 35.802262),
        (873.15, 600.0, 77.430195),
        (1173.15, 1.0, 44.217245),
        (1173.15, 100.0, 47.640433),
        (1173.15, 400.0, 64.154608),
    ] {
        // Six decimals are printed.
        let found = viscosity::viscosity(rho, t) * 1e6;
        assert!(
            (found - micro_pa_s).abs() <= 0.5e-6,
            "{found} against {micro_pa_s}"
        );
    }
}

#[test]
fn published_conductivity_r15_11() {
    // Table 4: without the enhancement.
    for (t, rho, milli) in [
        (298.15, 0.0, 18.4341883),
        (298.15, 998.0, 607.712868),
        (298.15, 1200.0, 799.038144),
        (873.15, 0.0, 79.1034659),
    ] {
        agrees(conductivity::background(rho, t) * 1e3, milli, NINE_FIGURES);
    }
}

/// A card refuses what its release does not cover, and names the input at fault.
#[test]
fn cards_refuse_outside_their_region() {
    for (id, inputs, symbol) in [
        ("steam.saturation.temperature", &[23.0][..], "p"),
        ("steam.saturation.pressure", &[650.0], "T"),
        ("steam.region1.v", &[0.1, 380.0], "p"),
        ("steam.region1.h", &[20.0, 630.0], "T"),
        ("steam.region1.s", &[101.0, 300.0], "p"),
        ("steam.region2.v", &[0.1, 370.0], "p"),
        ("steam.region2.cp", &[20.0, 630.0], "p"),
        ("steam.region2.h", &[1.0, 1080.0], "T"),
        ("steam.region2.w", &[f64::NAN, 500.0], "p"),
        ("steam.metastable.v", &[1.0, 460.0], "T"),
        ("steam.metastable.v", &[1.0, 400.0], "T"),
        ("steam.metastable.v", &[11.0, 500.0], "p"),
        ("steam.region1.t-ph", &[0.1, 500.0], "p"),
        ("steam.region1.t-ph", &[0.1, -100.0], "h"),
        ("steam.region2a.t-ph", &[0.1, 2600.0], "p"),
        ("steam.region2a.t-ph", &[5.0, 3500.0], "p"),
        ("steam.region2b.t-ps", &[8.0, 5.8], "p"),
        ("steam.region2c.t-ps", &[3.0, 5.8], "p"),
        ("steam.wet-density", &[958.0, 0.6, 1.2], "x"),
        ("steam.viscosity", &[-1.0, 400.0], "rho"),
        ("steam.conductivity-background", &[1.0, 1200.0], "T"),
        ("steam.surface-tension", &[648.0], "T"),
    ] {
        let card = formulas::register::find(id).expect("a card");
        let refused = card.work(inputs).expect_err(id);
        assert_eq!((refused.card, refused.symbol), (id, symbol), "{refused}");
    }
}

/// Where the ends of two regions meet, the state filed from a solver lies on the border to within
/// rounding, and both cards take it.
#[test]
fn cards_take_states_settled_on_the_saturation_line() {
    for i in 1..=300 {
        let p_mpa = f64::from(i) * 0.01;
        let t_k = saturation::temperature(p_mpa * 1e6);
        for id in ["steam.region1.h", "steam.region2.h"] {
            let card = formulas::register::find(id).expect("a card");
            assert!(card.work(&[p_mpa, t_k]).is_ok(), "{id} at {p_mpa} MPa");
        }
    }
}
