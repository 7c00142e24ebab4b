//! The march of the gas through the flue.
//!
//! One unknown is marched, the heat given so far: what the gas still holds follows from it and
//! from the heat set free, which has a closed form, so that heat is never lost on the way. Steps
//! of the classical method of fourth order; where a bore begins, and the Nusselt number of its
//! wall has no bound, the steps are taken in the cube root of the distance.

use formulas::balance::flue_loss;
use formulas::draught::buoyancy;
use formulas::gas::FlueGas;
use formulas::heat::{local_loss, momentum_change};
use reckoning::solve::bracketed;

use super::cross::crossed;
use super::section::{Bore, Crossed, Laws, Section};
use super::{Flue, Lie, Release};
use crate::fault::NotSettled;

/// The gas that comes to the flue, and the wall it meets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stream {
    /// Gas, with all the air that comes to it, kg/s.
    pub gas_kg_s: f64,
    /// Heat that burning sets free when all the fuel has burnt, W.
    pub heat_w: f64,
    /// Enthalpy above 298.15 K with which fuel and air come, J/kg of gas.
    pub inlet_j_kg: f64,
    /// Temperature of wall and tubes, K.
    pub wall_k: f64,
    /// Pressure of the gas, Pa absolute.
    pub pressure_pa: f64,
    /// Density of the air outside, kg/m³.
    pub outside_kg_m3: f64,
}

/// The settled flue.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct March {
    /// The gas where the burner ends.
    pub behind_burner: Section,
    /// The gas where it leaves.
    pub outlet: Section,
    /// The first tube across the flue; `None` where it is plain.
    pub first: Option<Crossed>,
    /// Hottest gas, mean of a section, K.
    pub hottest_k: f64,
    /// Heat to the wall, W.
    pub wall_w: f64,
    /// Part of it, and of the heat to the tubes, that is radiated, W.
    pub radiant_w: f64,
    /// Heat to the tubes across, W.
    pub cross_w: f64,
    /// Loss by friction, Pa.
    pub friction_pa: f64,
    /// Loss at the tubes across, Pa.
    pub cross_pa: f64,
    /// Pressure spent on the speed of the hot gas, Pa.
    pub momentum_pa: f64,
    /// Loss where the gas leaves, Pa.
    pub exit_pa: f64,
    /// Lift of the hot gas in an upright flue, Pa; 0 in a level one.
    pub lift_pa: f64,
}

impl March {
    /// Draught that the flue takes, Pa.
    #[must_use]
    pub fn loss_pa(&self) -> f64 {
        flue_loss(
            self.friction_pa,
            self.cross_pa,
            self.momentum_pa,
            self.exit_pa,
            self.lift_pa,
        )
    }
}

/// Longest step as a share of the bore, of the length in which the gas cools, and of the mixing
/// length where it burns. A test holds the heat within a thousandth of that of steps of an eighth of this length.
pub const STEP: f64 = 0.4;

/// Steps in the first stretch of a bore, in which the Nusselt number falls from no bound.
const FIRST_STEPS: f64 = 2.0;

/// Mixing lengths behind the last port in which the gas burns: nineteen parts in twenty of it.
const BURNS_FOR: f64 = 3.0;

/// Temperature at which the length is reckoned in which hot gas cools, K: that of a flame at work.
const HOT_K: f64 = 1300.0;

/// Coldest and hottest that the gas of a flue can be, K: the equations of its heat end there.
const GAS_K: (f64, f64) = (200.0, 3500.0);

/// Marches the gas through the flue.
///
/// # Errors
/// [`NotSettled`] where the heat of the gas has no temperature, or its radiation cannot be worked.
pub fn march(
    flue: &Flue,
    release: &Release,
    stream: &Stream,
    gas: &FlueGas,
) -> Result<March, NotSettled> {
    march_in((flue, release), stream, gas, STEP)
}

/// As [`march`], in steps of another share of the bore.
///
/// # Errors
/// As [`march`].
pub fn march_in(
    (flue, release): (&Flue, &Release),
    stream: &Stream,
    gas: &FlueGas,
    step: f64,
) -> Result<March, NotSettled> {
    let mut walk = Walk::new(Laws::new(flue, release, stream, gas), step)?;
    let mut first = None;
    let mut behind_burner = None;
    walk.through(|stop, walk| {
        match stop {
            Stop::Tube(crossed) if first.is_none() => first = Some(crossed),
            Stop::BurnerEnds => behind_burner = Some(walk.section()?),
            _ => {}
        }
        Ok(())
    })?;
    let outlet = walk.section()?;
    Ok(walk.gathered(first, behind_burner.unwrap_or(outlet), outlet))
}

/// The gas at each of these places (m behind the mouth, rising), and every tube across the flue.
///
/// # Errors
/// As [`march`].
pub fn profile(
    (flue, release): (&Flue, &Release),
    stream: &Stream,
    gas: &FlueGas,
    places_m: &[f64],
) -> Result<(Vec<Section>, Vec<Crossed>), NotSettled> {
    let mut walk = Walk::new(Laws::new(flue, release, stream, gas), STEP)?;
    walk.looked_at = places_m;
    let (mut sections, mut tubes) = (Vec::new(), Vec::new());
    walk.through(|stop, walk| {
        match stop {
            Stop::Tube(crossed) => tubes.push(crossed),
            Stop::Looked => sections.push(walk.section()?),
            Stop::BurnerEnds => {}
        }
        Ok(())
    })?;
    Ok((sections, tubes))
}

/// Where the march stops to look round.
enum Stop {
    /// A tube across the flue.
    Tube(Crossed),
    /// The end of the burner.
    BurnerEnds,
    /// A place that was asked for.
    Looked,
}

/// What grows along a stretch: heat to the wall, the radiated part of it, friction and lift.
type Sums = [f64; 4];

/// The gas on its way.
struct Walk<'a> {
    laws: Laws<'a>,
    step: f64,
    /// Length in which hot gas gives up its heat to the wall, m.
    cools_m: f64,
    looked_at: &'a [f64],
    place_m: f64,
    behind_burner: bool,
    sums: Sums,
    cross_w: f64,
    cross_radiant_w: f64,
    cross_pa: f64,
    hottest_k: f64,
}

impl<'a> Walk<'a> {
    fn new(laws: Laws<'a>, step: f64) -> Result<Self, NotSettled> {
        let end = laws.bore(true);
        let hot = laws.section(end, laws.flue.length_m + end.hydraulic_m, HOT_K)?;
        let edge_m = std::f64::consts::PI * laws.flue.bore_m;
        let excess_w = laws.stream.gas_kg_s * hot.specific_heat * (HOT_K - laws.stream.wall_k);
        Ok(Self {
            cools_m: excess_w / (edge_m * hot.wall_flux),
            laws,
            step,
            looked_at: &[],
            place_m: 0.0,
            behind_burner: false,
            sums: [0.0; 4],
            cross_w: 0.0,
            cross_radiant_w: 0.0,
            cross_pa: 0.0,
            hottest_k: 0.0,
        })
    }

    /// Walks to the end, from stop to stop.
    fn through(
        &mut self,
        mut look: impl FnMut(Stop, &Self) -> Result<(), NotSettled>,
    ) -> Result<(), NotSettled> {
        let flue = self.laws.flue;
        let mut tubes = flue.cross.iter().flat_map(|c| c.places()).peekable();
        let mut looked = self.looked_at.iter().copied().peekable();
        let ported_m = self.laws.release.ported_m;
        loop {
            let tube = tubes.peek().copied().filter(|x| *x <= flue.length_m);
            let asked = looked.peek().copied().filter(|x| *x <= flue.length_m);
            let burner = (!self.behind_burner && ported_m < flue.length_m).then_some(ported_m);
            let next = [tube, asked, burner].into_iter().flatten();
            let Some(next) = next.min_by(f64::total_cmp) else {
                return self.to(flue.length_m);
            };
            self.to(next)?;
            if burner == Some(next) {
                look(Stop::BurnerEnds, self)?;
                self.behind_burner = true;
            } else if tube == Some(next) {
                tubes.next();
                let crossed = self.cross()?;
                look(Stop::Tube(crossed), self)?;
            } else {
                looked.next();
                look(Stop::Looked, self)?;
            }
        }
    }

    fn bore(&self) -> &Bore {
        self.laws.bore(self.behind_burner)
    }

    /// Temperature of the gas at a place when it has given so much heat, K.
    fn gas_k(&self, place_m: f64, given_w: f64) -> Result<f64, NotSettled> {
        let stream = self.laws.stream;
        let holds_w = stream.heat_w * self.laws.burnt(place_m) - given_w;
        let h = stream.inlet_j_kg + holds_w / stream.gas_kg_s;
        let solved = bracketed(GAS_K.0, GAS_K.1, 1e-9, |t| self.laws.gas.enthalpy(t) - h);
        Ok(solved
            .map_err(NotSettled::of("heat of the gas in the flue"))?
            .x)
    }

    fn section(&self) -> Result<Section, NotSettled> {
        let gas_k = self.gas_k(self.place_m, self.sums[0] + self.cross_w)?;
        Ok(self.laws.section(self.bore(), self.place_m, gas_k)?)
    }

    /// What a metre adds to the sums.
    fn rates(&self, place_m: f64, sums: &Sums) -> Result<Sums, NotSettled> {
        let gas_k = self.gas_k(place_m, sums[0] + self.cross_w)?;
        let at = self.laws.section(self.bore(), place_m, gas_k)?;
        let edge_m = std::f64::consts::PI * self.laws.flue.bore_m;
        let lift = match self.laws.flue.lie {
            Lie::Level => 0.0,
            Lie::Upright => buoyancy(1.0, self.laws.stream.outside_kg_m3, at.density),
        };
        Ok([
            edge_m * at.wall_flux,
            edge_m * at.radiant_flux,
            at.friction_pa_m,
            lift,
        ])
    }

    /// The longest step from here, m: a share of the bore, of the length in which the gas gives up
    /// its heat, and where the gas burns of the lengths over which it does.
    fn longest_step(&self) -> f64 {
        let release = self.laws.release;
        let burns = self.place_m < release.ported_m + BURNS_FOR * release.mixing_m;
        let bore_m = self.laws.flue.bore_m;
        let lengths = [
            Some(bore_m),
            Some(self.cools_m),
            burns.then_some(release.mixing_m),
            burns.then_some(release.ported_m),
        ];
        let least = lengths.into_iter().flatten().min_by(f64::total_cmp);
        self.step * least.unwrap_or(bore_m)
    }

    /// Walks to a place with no tube between.
    fn to(&mut self, end_m: f64) -> Result<(), NotSettled> {
        let longest_m = self.longest_step();
        if self.place_m <= self.bore().from_m && self.place_m < end_m {
            let first_m = self.place_m + longest_m;
            self.stretch(if first_m < end_m { first_m } else { end_m }, FIRST_STEPS)?;
        }
        let steps = ((end_m - self.place_m) / longest_m).ceil();
        self.stretch(end_m, steps)
    }

    /// Walks to a place in so many steps.
    fn stretch(&mut self, end_m: f64, steps: f64) -> Result<(), NotSettled> {
        let (from_m, length_m) = (self.place_m, end_m - self.place_m);
        if length_m <= 0.0 {
            return Ok(());
        }
        let begins = from_m <= self.bore().from_m;
        // Distance and its slope in the variable of the step, which runs from nought to one.
        let place = |s: f64| {
            if begins {
                (from_m + length_m * s.powi(3), 3.0 * length_m * s * s)
            } else {
                (from_m + length_m * s, length_m)
            }
        };
        let mut s = 0.0;
        for step in 1..=steps as u32 {
            let next = f64::from(step) / steps;
            self.one_step(s, next - s, &place)?;
            s = next;
        }
        self.place_m = end_m;
        Ok(())
    }

    /// One step of the fourth order in the variable of the stretch.
    fn one_step(
        &mut self,
        s: f64,
        ds: f64,
        place: &impl Fn(f64) -> (f64, f64),
    ) -> Result<(), NotSettled> {
        let rates = |s: f64, sums: &Sums| {
            let (place_m, slope) = place(s);
            // Where a bore begins its slope is nought and outweighs the Nusselt number.
            if slope == 0.0 {
                return Ok([0.0; 4]);
            }
            let rates = self.rates(place_m, sums)?;
            Ok::<_, NotSettled>(rates.map(|rate| slope * rate))
        };
        let sums = self.sums;
        let k1 = rates(s, &sums)?;
        let k2 = rates(s + ds / 2.0, &added(&sums, &k1, ds / 2.0))?;
        let k3 = rates(s + ds / 2.0, &added(&sums, &k2, ds / 2.0))?;
        let k4 = rates(s + ds, &added(&sums, &k3, ds))?;
        for (i, sum) in self.sums.iter_mut().enumerate() {
            *sum += ds / 6.0 * (k1[i] + 2.0 * (k2[i] + k3[i]) + k4[i]);
        }
        let gas_k = self.gas_k(place(s + ds).0, self.sums[0] + self.cross_w)?;
        if gas_k > self.hottest_k {
            self.hottest_k = gas_k;
        }
        Ok(())
    }

    /// Meets the tube at this place.
    fn cross(&mut self) -> Result<Crossed, NotSettled> {
        let Some(tubes) = &self.laws.flue.cross else {
            unreachable!("only tubes across the flue are met");
        };
        let gas_k = self.gas_k(self.place_m, self.sums[0] + self.cross_w)?;
        let met = crossed(&self.laws, (tubes, self.bore()), self.place_m, gas_k)?;
        self.cross_w += met.heat_w;
        self.cross_pa += met.loss_pa;
        self.cross_radiant_w += met.heat_w * met.radiation / met.coefficient();
        Ok(met)
    }

    fn gathered(&self, first: Option<Crossed>, behind_burner: Section, outlet: Section) -> March {
        let [wall_w, radiant_w, friction_pa, lift_pa] = self.sums;
        let outside = self.laws.stream.outside_kg_m3;
        March {
            behind_burner,
            outlet,
            first,
            hottest_k: self.hottest_k,
            wall_w,
            radiant_w: radiant_w + self.cross_radiant_w,
            cross_w: self.cross_w,
            friction_pa,
            cross_pa: self.cross_pa,
            momentum_pa: momentum_change(outlet.flux, outside, outlet.density),
            exit_pa: local_loss(self.laws.flue.exit_heads, outlet.flux, outlet.density),
            lift_pa,
        }
    }
}

fn added(sums: &Sums, rates: &Sums, share: f64) -> Sums {
    std::array::from_fn(|i| sums[i] + share * rates[i])
}
