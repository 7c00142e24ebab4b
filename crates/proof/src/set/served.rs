//! The service of one part, filed.

use super::{Asked, RuleSet};
use crate::sum::{Stop, Sum};
use crate::taken::need;
use reckoning::quantity::{CELSIUS, MPA_GAUGE, Temperature};
use reckoning::{Known, Ref};

/// What a part bears.
pub(crate) struct Served {
    /// Working pressure, MPa.
    pub(crate) p_mpa: f64,
    /// Its line.
    pub(crate) p: Ref,
    /// Metal temperature.
    pub(crate) metal: Temperature,
}

impl RuleSet {
    /// Files pressure and metal temperature, and notes where the set was not made for them.
    pub(crate) fn serve(
        &self,
        sum: &mut Sum,
        asked: &Asked<'_>,
        part: &str,
        metal: Option<&Known<Temperature>>,
    ) -> Result<Served, Stop> {
        let p_known = need(
            "the working pressure",
            "the boiler",
            asked.service.pressure.as_ref(),
        )?;
        let metal = need("the metal temperature", part, metal)?;
        let p = sum.know("P", "working pressure, gauge", &MPA_GAUGE, p_known);
        sum.know("T_m", "metal temperature", &CELSIUS, metal);
        self.keep_service(sum, p_known.value.bar(), metal.value.c());
        Ok(Served {
            p_mpa: p_known.value.mpa(),
            p,
            metal: metal.value,
        })
    }
}
