//! Water and steam inside a boiler.

use reckoning::quantity::{Area, Length, Volume};
use reckoning::{Known, Origin};

use crate::known::shape;
use crate::{horizontal, vertical};

/// The room for water and steam, by its form.
#[derive(Clone, Debug)]
pub(crate) enum Room {
    Upright(vertical::Room),
    Lying(horizontal::Room),
}

impl Room {
    fn below(&self, mm: f64) -> f64 {
        match self {
            Self::Upright(room) => room.below(mm),
            Self::Lying(room) => room.below(mm),
        }
    }

    fn surface(&self, mm: f64) -> f64 {
        match self {
            Self::Upright(room) => room.surface(mm),
            Self::Lying(room) => room.surface(mm),
        }
    }

    fn low(&self) -> f64 {
        match self {
            Self::Upright(room) => room.low(),
            Self::Lying(room) => room.low(),
        }
    }

    fn high(&self) -> f64 {
        match self {
            Self::Upright(room) => room.high(),
            Self::Lying(room) => room.high(),
        }
    }
}

/// What is known of the water besides its room.
pub(crate) struct Levels {
    pub(crate) level: Known<Length>,
    pub(crate) lowest: Option<Known<Length>>,
    pub(crate) crown: Known<Length>,
    pub(crate) leg: Known<Length>,
    /// What the surface is, in words.
    pub(crate) surface: &'static str,
    /// The weakest origin of the sizes of the room.
    pub(crate) weakest: Origin,
}

/// The room inside the barrel for water and steam.
#[derive(Clone, Debug)]
pub struct WaterSpace {
    room: Room,
    /// Working level.
    pub level: Known<Length>,
    /// Lowest level allowed, where the plan names it.
    pub lowest: Option<Known<Length>>,
    /// Highest point that water must cover: the crown of the firebox, or the top of the flue.
    pub crown: Known<Length>,
    /// Water at the working level.
    pub water: Known<Volume>,
    /// Steam above it.
    pub steam: Known<Volume>,
    /// Water between the working and the lowest level.
    pub reserve: Option<Known<Volume>>,
    /// Surface of the water at the working level.
    pub surface: Known<Area>,
    /// Width of the water leg between firebox and barrel, or least water round a flue.
    pub leg: Known<Length>,
}

impl WaterSpace {
    /// Water filled to a height above the datum of the boiler.
    #[must_use]
    pub fn filled_to(&self, height: Length) -> Volume {
        Volume::from_mm3(self.room.below(height.mm()))
    }

    /// Surface of the water at a height.
    #[must_use]
    pub fn surface_at(&self, height: Length) -> Area {
        Area::from_mm2(self.room.surface(height.mm()))
    }

    /// Lowest and highest point of the room, above the datum.
    #[must_use]
    pub fn extent(&self) -> (Length, Length) {
        (
            Length::from_mm(self.room.low()),
            Length::from_mm(self.room.high()),
        )
    }
}

impl WaterSpace {
    pub(crate) fn of(room: Room, levels: Levels) -> Self {
        let level = levels.level;
        let weakest = levels.weakest.max(level.given.origin());
        let volume = |mm3: f64, of: &str| shape(Volume::from_mm3(mm3), of, weakest);
        let (water, all) = (room.below(level.value.mm()), room.below(room.high()));
        let reserve = levels.lowest.as_ref().map(|lowest| {
            let left = room.below(lowest.value.mm());
            volume(
                water - left,
                "the room between the working and the lowest level",
            )
        });
        let surface = Area::from_mm2(room.surface(level.value.mm()));
        Self {
            water: volume(water, "the room inside the barrel below the working level"),
            steam: volume(
                all - water,
                "the room inside the barrel above the working level",
            ),
            reserve,
            surface: shape(surface, levels.surface, weakest),
            crown: levels.crown,
            leg: levels.leg,
            level,
            lowest: levels.lowest,
            room,
        }
    }
}
