//! Pressure at admission, and the speed or cut-off that a power asks.
//!
//! Speed and cut-off are sought in brackets. Where the end of the bracket falls short of the
//! power, that end is the state: the rule of power then says by how much.

use formulas::balance::pressure_share;
use formulas::engine::{
    Diagram, indicated_power, mean_effective_pressure, mean_pressure_for, port_speed, shaft_power,
    throttled_admission, wire_drawn,
};
use formulas::steam::Saturated;
use reckoning::solve::Solved;

use super::given::{Admission, Engine, Load};
use crate::fault::NotSettled;
use crate::seek::seek;

/// Turns in a second between which a speed is sought: 20 to 6 000 rpm, as a plan may ask them.
const TURNS_PER_S: (f64, f64) = (1.0 / 3.0, 100.0);
/// Speeds walked to find where the power of an engine with ports is greatest.
const WALK: u32 = 24;
/// Cut-offs between which one is sought, the range of the mean pressure law.
const CUT_OFFS: (f64, f64) = (0.05, 0.9);
/// Accuracy of a speed or cut-off.
const ACCURACY: f64 = 1e-11;

/// Steam in the chest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChestState {
    /// Pressure, Pa.
    pub pa: f64,
    /// Density of dry steam, kg/m³.
    pub kg_m3: f64,
    /// Saturation temperature, K.
    pub t_k: f64,
    /// Heat of evaporation, J/kg.
    pub latent_j_kg: f64,
}

/// How the steam is admitted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Admitted {
    /// Working strokes of all ends in a second.
    pub strokes_per_s: f64,
    /// Turns of the crankshaft in a second.
    pub turns_per_s: f64,
    /// Cut-off as a share of the stroke.
    pub cut_off: f64,
    /// Mean speed of steam in the port, m/s; `None` where the ports are not known.
    pub port_m_s: Option<f64>,
    /// Pressure at admission, Pa.
    pub pa: f64,
    /// Pressure at admission with the regulator open, Pa.
    pub open_pa: f64,
    /// Speed in strokes a second or cut-off, where it was sought and found.
    pub sought: Option<Solved>,
}

/// The engine at one pressure in the chest and with one load on its shaft.
pub(super) struct Admitting<'a> {
    pub(super) engine: &'a Engine,
    pub(super) chest: ChestState,
    /// Power asked at the shaft, with that of the pump, W.
    pub(super) wanted_w: Option<f64>,
}

impl ChestState {
    pub(super) fn of(engine: &Engine, boiler_pa: f64) -> Result<Self, NotSettled> {
        let pa = pressure_share(engine.chest_share, boiler_pa);
        let line = Saturated::at_pressure(pa)?;
        Ok(Self {
            pa,
            kg_m3: line.rho_g,
            t_k: line.t_k,
            latent_j_kg: line.h_lg(),
        })
    }
}

impl Admitting<'_> {
    /// How the steam is admitted against a back pressure, Pa.
    pub(super) fn against(&self, back_pa: f64) -> Result<Admitted, NotSettled> {
        let wanted = self.wanted_w.unwrap_or(f64::INFINITY);
        match self.engine.load {
            Load::Open {
                strokes_per_s,
                cut_off,
            } => Ok(self.open(strokes_per_s, cut_off)),
            Load::Throttled {
                strokes_per_s,
                cut_off,
                ..
            } => Ok(self.throttled(&self.open(strokes_per_s, cut_off), back_pa, wanted)),
            Load::BySpeed { cut_off, .. } => self.by_speed(cut_off, back_pa, wanted),
            Load::ByCutOff { strokes_per_s, .. } => self.by_cut_off(strokes_per_s, back_pa, wanted),
        }
    }

    /// Whether the admission does not feel the back pressure.
    pub(super) fn is_fixed(&self) -> bool {
        matches!(self.engine.load, Load::Open { .. })
    }

    /// With the regulator open.
    fn open(&self, strokes_per_s: f64, cut_off: f64) -> Admitted {
        let (e, turns_per_s) = (self.engine, strokes_per_s / self.engine.strokes_per_turn);
        let (port_m_s, pa) = match e.admission {
            Admission::Share(share) => (None, pressure_share(share, self.chest.pa)),
            Admission::Ports { area_m2, loss } => {
                let u = port_speed(e.bore_m, e.stroke_m, turns_per_s, area_m2);
                (
                    Some(u),
                    wire_drawn(self.chest.pa, loss, self.chest.kg_m3, u),
                )
            }
        };
        Admitted {
            strokes_per_s,
            turns_per_s,
            cut_off,
            port_m_s,
            pa,
            open_pa: pa,
            sought: None,
        }
    }

    fn diagram(&self, admitted: &Admitted, back_pa: f64) -> Diagram {
        Diagram {
            p_1: admitted.pa,
            p_b: back_pa,
            r: admitted.cut_off,
            c: self.engine.clearance,
            q: self.engine.compression,
        }
    }

    /// Mean pressure of the diagram, indicated power and power at the shaft, Pa and W.
    pub(super) fn power(&self, admitted: &Admitted, back_pa: f64) -> [f64; 3] {
        let e = self.engine;
        let mean = mean_effective_pressure(&self.diagram(admitted, back_pa));
        let strokes = admitted.strokes_per_s;
        let indicated = indicated_power(e.diagram_factor, mean, e.stroke_volume_m3, strokes);
        let shaft = shaft_power(e.mechanical_efficiency, indicated);
        [mean, indicated, shaft]
    }

    fn shaft_w(&self, admitted: &Admitted, back_pa: f64) -> f64 {
        self.power(admitted, back_pa)[2]
    }

    /// With the regulator closed as far as the power allows.
    fn throttled(&self, open: &Admitted, back_pa: f64, wanted_w: f64) -> Admitted {
        let e = self.engine;
        let (volume, strokes) = (e.stroke_volume_m3, open.strokes_per_s);
        let (eta, phi) = (e.mechanical_efficiency, e.diagram_factor);
        let mean = mean_pressure_for(wanted_w, eta, phi, volume, strokes);
        let pa = throttled_admission(mean, &self.diagram(open, back_pa));
        // A regulator that is open gives no more.
        if pa < open.pa {
            Admitted { pa, ..*open }
        } else {
            *open
        }
    }

    fn by_speed(&self, cut_off: f64, back_pa: f64, wanted_w: f64) -> Result<Admitted, NotSettled> {
        let per_turn = self.engine.strokes_per_turn;
        let low = TURNS_PER_S.0 * per_turn;
        let gives = |strokes: f64| self.shaft_w(&self.open(strokes, cut_off), back_pa);
        if gives(low) >= wanted_w {
            return Ok(self.open(low, cut_off));
        }
        let steps = match self.engine.admission {
            // Without ports the power grows with the speed, and the ends tell all.
            Admission::Share(_) => 1,
            Admission::Ports { .. } => WALK,
        };
        let ratio = TURNS_PER_S.1 / TURNS_PER_S.0;
        let (mut below, mut best) = (low, (low, gives(low)));
        for step in 1..=steps {
            let strokes = low * ratio.powf(f64::from(step) / f64::from(steps));
            let power = gives(strokes);
            if power >= wanted_w {
                let what = "power of the engine over its speed";
                let found = seek(
                    what,
                    (below, strokes),
                    ACCURACY,
                    |n| Ok(gives(n) - wanted_w),
                )?;
                return Ok(Admitted {
                    sought: Some(found),
                    ..self.open(found.x, cut_off)
                });
            }
            if power > best.1 {
                best = (strokes, power);
            }
            below = strokes;
        }
        Ok(self.open(best.0, cut_off))
    }

    fn by_cut_off(
        &self,
        strokes: f64,
        back_pa: f64,
        wanted_w: f64,
    ) -> Result<Admitted, NotSettled> {
        let gives = |cut_off: f64| self.shaft_w(&self.open(strokes, cut_off), back_pa);
        if gives(CUT_OFFS.0) >= wanted_w {
            return Ok(self.open(strokes, CUT_OFFS.0));
        }
        if gives(CUT_OFFS.1) < wanted_w {
            return Ok(self.open(strokes, CUT_OFFS.1));
        }
        let what = "power of the engine over its cut-off";
        let found = seek(what, CUT_OFFS, ACCURACY, |r| Ok(gives(r) - wanted_w))?;
        Ok(Admitted {
            sought: Some(found),
            ..self.open(strokes, found.x)
        })
    }

    /// The most that the engine gives at the shaft against a back pressure, W: with its regulator
    /// open or its latest cut-off; at the speed that was found, where that is what is free.
    pub(super) fn most_w(&self, admitted: &Admitted, back_pa: f64) -> f64 {
        let most = match self.engine.load {
            Load::Open { .. } | Load::BySpeed { .. } => *admitted,
            Load::Throttled { .. } => Admitted {
                pa: admitted.open_pa,
                ..*admitted
            },
            Load::ByCutOff { strokes_per_s, .. } => self.open(strokes_per_s, CUT_OFFS.1),
        };
        self.shaft_w(&most, back_pa)
    }
}
