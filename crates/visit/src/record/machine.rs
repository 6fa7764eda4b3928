//! What the machine is: what it covers the ground with, its tip, its tank, what holds its pressure.

use sprayer::{BoomLayout, PressureControl, TipSize};
use units::{Angle, AsWritten, Flow, Length, Pressure, Volume};

/// What the machine is.
#[derive(Clone, Debug, PartialEq)]
pub struct Machine {
    /// How it covers the ground.
    pub coverage: Coverage,
    /// The tip that is fitted, where it is known.
    pub tip: Option<NamedTip>,
    /// The angle of its fans at the job's pressure, where it is known.
    pub fan_angle: Option<AsWritten<Angle>>,
    /// What the tank holds.
    pub tank: Option<AsWritten<Volume>>,
    /// What holds the pressure; asked, never guessed.
    pub held_by: Option<PressureControl>,
}

/// How a machine covers the ground, which decides the width a rate is worked out with.
#[derive(Clone, Debug, PartialEq)]
pub enum Coverage {
    /// A boom that sprays the whole width evenly.
    Boom(BoomLayout),
    /// A boom that sprays bands: each tip its own band.
    Band {
        /// The boom; its spacing is the row spacing.
        boom: BoomLayout,
        /// The width of a band.
        band: AsWritten<Length>,
    },
    /// Several tips directed at each row.
    Directed {
        /// The boom; its tips are those of all rows.
        boom: BoomLayout,
        /// The row spacing.
        row: AsWritten<Length>,
        /// Tips for each row.
        tips_per_row: u32,
    },
    /// A cluster or boomless tip whose whole flow is caught.
    Boomless {
        /// How many outlets the cluster has.
        outlets: u32,
        /// The width it counts for.
        swath: Swath,
    },
    /// A hand wand or backpack.
    Hand {
        /// The width sprayed while walking.
        width: Option<AsWritten<Length>>,
    },
}

/// The width a boomless tip counts for.
#[derive(Clone, Debug, PartialEq)]
pub enum Swath {
    /// Measured from pass to pass.
    PassToPass(AsWritten<Length>),
    /// What is wetted, and the share of it that the next pass covers again.
    Wetted {
        /// The wetted width.
        wetted: AsWritten<Length>,
        /// The share of it covered twice.
        overlap: f64,
    },
}

impl Machine {
    /// The boom, where it has one.
    #[must_use]
    pub const fn boom(&self) -> Option<&BoomLayout> {
        match &self.coverage {
            Coverage::Boom(boom) | Coverage::Band { boom, .. } | Coverage::Directed { boom, .. } => {
                Some(boom)
            }
            Coverage::Boomless { .. } | Coverage::Hand { .. } => None,
        }
    }

    /// How many tips are caught.
    #[must_use]
    pub fn tips(&self) -> u32 {
        match &self.coverage {
            Coverage::Boomless { outlets, .. } => *outlets,
            Coverage::Hand { .. } => 1,
            _ => self.boom().map_or(1, BoomLayout::tips),
        }
    }
}

/// The fitted tip, by its size or by its maker's flow.
#[derive(Clone, Debug, PartialEq)]
pub enum NamedTip {
    /// An ISO 10625 size.
    Size(TipSize),
    /// A flow at a pressure.
    Rated {
        /// The flow.
        flow: AsWritten<Flow>,
        /// The pressure.
        pressure: AsWritten<Pressure>,
    },
}
