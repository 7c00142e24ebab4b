//! The water test that a set asks.

use super::european::{Heat, file_stress};
use super::{RuleSet, Test};
use crate::input::Metal;
use crate::metal::chosen;
use crate::stress;
use crate::sum::Stop;
use formulas::vessel::allow;
use formulas::vessel::european::TEST_PRESSURE;
use reckoning::quantity::{Gauge, MPA, MPA_GAUGE, ONE, Ratio, Temperature};
use reckoning::{Known, Origin, Working};

/// A water test with its working.
#[derive(Clone, Debug)]
pub struct WaterTest {
    /// Test pressure.
    pub pressure: Gauge,
    /// The lines.
    pub working: Working,
}

impl RuleSet {
    /// The water test pressure for a boiler of this metal, its hottest part at `metal_at`.
    ///
    /// # Errors
    /// [`Stop`] when no stress is known for the metal or at that temperature.
    pub fn water_test(
        &self,
        pressure: &Known<Gauge>,
        metal: Metal,
        metal_at: Temperature,
    ) -> Result<WaterTest, Stop> {
        let mut w = Working::new();
        let p = w.know("P", "working pressure, gauge", &MPA_GAUGE, pressure);
        let p_t = match self.test {
            Test::Times(k) => {
                let known = chosen(
                    Ratio::from_number(k),
                    "first water tests, 1.3 to 3 times the working pressure by rule set",
                    self.title,
                    Origin::from(self.seen),
                );
                let k = w.know("k", "test pressure over working pressure", &ONE, &known);
                w.worked(&allow::TEST_PRESSURE, &[k, p])?
            }
            Test::ByStress => {
                // Water of the coldest row of the stress tables, or colder.
                let cold = stress::code(metal, Temperature::from_f(100.0))?;
                let hot = stress::code(metal, metal_at)?;
                let cold = w.know("S_c", "allowable stress at the test", &MPA, &cold);
                let hot = w.know("S", "allowable stress at work", &MPA, &hot);
                w.worked(&allow::TEST_BY_STRESS, &[p, cold, hot])?
            }
            Test::European => {
                let cold = file_stress(&mut w, metal, Heat::Cold)?;
                let hot = file_stress(&mut w, metal, Heat::At(metal_at))?;
                w.worked(&TEST_PRESSURE, &[p, cold, hot])?
            }
        };
        let pressure = Gauge::from_mpa(w.line(p_t).value);
        Ok(WaterTest {
            pressure,
            working: w,
        })
    }
}
