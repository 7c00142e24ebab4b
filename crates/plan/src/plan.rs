//! The plan: every section of a `plan.toml`.

use crate::entry::Entry;
use crate::file::File;
use crate::section::{
    Ash, Blast, Blowdown, Blower, Boiler, BoilerForm, Burner, Chimney, Dryer, Duty, Engine, Feed,
    Fire, Fitting, FusiblePlug, Gas, Grate, Interlock, PressureGauge, Room, SafetyValve, Site,
    Smokebox, Spirit, WaterGauge,
};
use crate::visit::{Section, Visitor};

/// A plan. Any field may be missing; [`File::blank`] and [`crate::read`] give every entry its
/// path, filled or not.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Plan {
    /// Version of the format.
    pub format: Entry<u32>,
    /// Name of the plant.
    pub name: Entry<String>,
    /// What it is for; an invented plant says here that it is invented.
    pub scenario: Entry<String>,
    /// Issue of the plan.
    pub issue: Entry<String>,
    /// Form of the boiler.
    pub form: Entry<BoilerForm>,
    /// Rule set that the boiler tester or the club names.
    pub tester_set: Entry<String>,
    /// Where it works.
    pub site: Site,
    /// What is asked of it.
    pub duty: Duty,
    /// Room it may take.
    pub room: Room,
    /// Engine.
    pub engine: Engine,
    /// Boiler.
    pub boiler: Boiler,
    /// Grate.
    pub grate: Grate,
    /// Fire.
    pub fire: Fire,
    /// Ash.
    pub ash: Ash,
    /// Burner of gas or spirit.
    pub burner: Burner,
    /// Gas.
    pub gas: Gas,
    /// Spirit.
    pub spirit: Spirit,
    /// Smokebox.
    pub smokebox: Smokebox,
    /// Chimney.
    pub chimney: Chimney,
    /// Blast nozzle.
    pub blast: Blast,
    /// Blower.
    pub blower: Blower,
    /// Drying coil.
    pub dryer: Dryer,
    /// Safety valves.
    pub safety_valves: Vec<SafetyValve>,
    /// Feed.
    pub feed: Feed,
    /// Pressure gauge.
    pub pressure_gauge: PressureGauge,
    /// Water gauge.
    pub water_gauge: WaterGauge,
    /// Blow-down valve.
    pub blow_down: Blowdown,
    /// Fusible plug.
    pub fusible_plug: FusiblePlug,
    /// What puts a gas fire out by itself.
    pub interlock: Interlock,
    /// Turned parts.
    pub fittings: Vec<Fitting>,
}

impl File for Plan {
    const NAME: &'static str = "plan.toml";
    const FORMAT: u32 = 1;

    fn format(&self) -> &Entry<u32> {
        &self.format
    }
}

impl Section for Plan {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(
            &mut self.format,
            "format",
            "version of the format of this file",
            (1, Self::FORMAT),
        );
        v.text(&mut self.name, "name", "name of the plant");
        v.text(
            &mut self.scenario,
            "scenario",
            "what the plant is for; an invented one says so here",
        );
        v.text(
            &mut self.issue,
            "issue",
            "issue letter of the plan, printed on every paper",
        );
        v.choice(&mut self.form, "form", "form of the boiler");
        v.text(
            &mut self.tester_set,
            "tester-set",
            "rule set that the boiler tester or the club asks for",
        );
        self.visit_demand(v);
        self.visit_fire(v);
        self.visit_mounts(v);
    }
}

impl Plan {
    fn visit_demand(&mut self, v: &mut dyn Visitor) {
        v.table("site", "where the plant is run", &mut self.site);
        v.table("duty", "what is asked of the plant", &mut self.duty);
        v.table("room", "the room that the plant may take", &mut self.room);
        v.table("engine", "what the steam drives", &mut self.engine);
        v.table("boiler", "the boiler", &mut self.boiler);
    }

    fn visit_fire(&mut self, v: &mut dyn Visitor) {
        v.table("grate", "the grate", &mut self.grate);
        v.table("fire", "the solid fuel and its bed", &mut self.fire);
        v.table("ash", "ash and ash pan", &mut self.ash);
        v.table("burner", "how gas or spirit is burnt", &mut self.burner);
        v.table("gas", "the gas and its tank", &mut self.gas);
        v.table("spirit", "the spirit and its wicks", &mut self.spirit);
        v.table("smokebox", "the smokebox", &mut self.smokebox);
        v.table("chimney", "the chimney", &mut self.chimney);
        v.table(
            "blast",
            "the exhaust nozzle below the chimney",
            &mut self.blast,
        );
        v.table(
            "blower",
            "the live steam jets below the chimney",
            &mut self.blower,
        );
        v.table(
            "dryer",
            "the coil that dries or superheats the steam",
            &mut self.dryer,
        );
    }

    fn visit_mounts(&mut self, v: &mut dyn Visitor) {
        v.rows("safety-valve", "a safety valve", &mut self.safety_valves);
        v.table(
            "feed",
            "feed water and the means of feeding it",
            &mut self.feed,
        );
        v.table(
            "pressure-gauge",
            "the pressure gauge",
            &mut self.pressure_gauge,
        );
        v.table("water-gauge", "the water gauge", &mut self.water_gauge);
        v.table("blow-down", "the blow-down valve", &mut self.blow_down);
        v.table("fusible-plug", "the fusible plug", &mut self.fusible_plug);
        v.table(
            "interlock",
            "what puts a gas fire out by itself",
            &mut self.interlock,
        );
        v.rows(
            "fitting",
            "a part to be made on the lathe",
            &mut self.fittings,
        );
    }
}
