//! What must hold of the laws of a gas fire whatever the numbers.

use formulas::flue::{Meeting, Poker, burnt_share, tube_heat};
use formulas::fuel::{air_ratio_from_oxygen, combustion_products, dry_share};
use formulas::spirit::Spirit;
use formulas::supply::{Lpg, critical_ratio, jet_flux, jet_speed};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// A jet chokes where its flux is greatest, and its speed there is that of sound in the mouth:
    /// u² = k R T at T = T_0 2 / (k + 1).
    #[test]
    fn identity_a_jet_chokes_at_the_speed_of_sound(
        k in 1.05..1.6_f64, t_0 in 250.0..450.0_f64, molar in 16.0..60.0_f64,
    ) {
        let r_c = critical_ratio(k);
        let flux = |r| jet_flux(2e5, t_0, molar, k, r);
        prop_assert!(flux(r_c) > flux(r_c * 1.01) && flux(r_c) > flux(r_c * 0.99));
        let sound = (2.0 * k / (k + 1.0) * 8_314.462_618 / molar * t_0).sqrt();
        prop_assert!((jet_speed(t_0, molar, k, r_c) / sound - 1.0).abs() < 1e-9);
    }

    /// What has burnt never falls along the flue, never passes the gas there is, and is all of it
    /// far behind the burner.
    #[test]
    fn identity_what_has_burnt_rises_to_the_whole(
        length in 0.005..0.3_f64, lambda_1 in 0.0..1.5_f64, mixing in 0.01..0.1_f64,
        x in 0.0..0.5_f64, step in 0.0..0.05_f64,
    ) {
        let poker = Poker { length, lambda_1, mixing };
        let (here, there) = (burnt_share(&poker, x), burnt_share(&poker, x + step));
        prop_assert!((-1e-12..=1.0 + 1e-12).contains(&here) && there >= here - 1e-12);
        prop_assert!((burnt_share(&poker, 40.0 * mixing + length) - 1.0).abs() < 1e-9);
    }

    /// The oxygen that an instrument shows gives back the air ratio that made it, of gas and of
    /// spirit with its water.
    #[test]
    fn identity_measured_oxygen_gives_back_the_air_ratio(
        air_ratio in 1.0..4.0_f64, propane in 0.0..1.0_f64, ethanol in 0.5..0.95_f64,
    ) {
        let gas = Lpg::new([propane, 1.0 - propane, 0.0]).expect("parts").drawn(288.15);
        let spirit = Spirit::new([ethanol, 0.0, 1.0 - ethanol], 1.0).expect("parts");
        for fuel in [gas.composition, spirit.composition] {
            let flue = combustion_products(&fuel, air_ratio).expect("enough air").fractions();
            let found = air_ratio_from_oxygen(&fuel, dry_share(flue.o2, flue.h2o)).expect("air");
            prop_assert!((found - air_ratio).abs() < 1e-9 * air_ratio);
        }
    }

    /// A tube takes no more than the gas holds above its wall, and more of it the better the film.
    #[test]
    fn identity_a_tube_takes_no_more_than_there_is(
        m in 1e-5..1e-3_f64, t in 500.0..1800.0_f64, h in 5.0..100.0_f64, area in 1e-4..1e-2_f64,
    ) {
        let meeting = Meeting { m, c_p: 1200.0, t, t_w: 420.0, h, area };
        let taken = tube_heat(&meeting);
        prop_assert!(taken > 0.0 && taken <= m * 1200.0 * (t - 420.0));
        let better = Meeting { h: 1.1 * h, ..meeting };
        prop_assert!(tube_heat(&better) >= taken);
    }

    /// Parts of a mixture add up, in the liquid and in the vapour, and the vapour is richer in the
    /// lighter gas than the liquid.
    #[test]
    fn identity_the_parts_of_a_gas_add_up(propane in 0.01..0.98_f64, t in 255.0..340.0_f64) {
        let lpg = Lpg::new([propane, 0.99 - propane, 0.01]).expect("parts");
        let gas = lpg.drawn(t);
        for shares in [lpg.by_mole, gas.by_mole, gas.by_mass] {
            prop_assert!((shares.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        }
        prop_assert!(gas.by_mole[0] > lpg.by_mole[0] && gas.by_mole[1] < lpg.by_mole[1]);
    }
}
