//! The catch test as it was written down.

use calibration::catch::{Doubtful, LimitProfile, RoundKind};
use units::{AsWritten, Caught, Density, Marks, Pressure, Time, Volume};

use super::setting::Setting;

/// How long the cups were held.
#[derive(Clone, Debug, PartialEq)]
pub enum CatchTime {
    /// A time as written.
    Given(AsWritten<Time>),
    /// As long as the drive took.
    AsDriven,
}

/// The cups.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Cups {
    /// How far their marks are apart.
    pub marks: Option<Marks>,
    /// How much a cup holds.
    pub holds: Option<AsWritten<Volume>>,
    /// The liquid's density, where cups were weighed.
    pub density: Option<AsWritten<Density>>,
}

/// One reading of one tip, with its own time or marks where they differ from the round's.
#[derive(Clone, Debug, PartialEq)]
pub struct TipReading {
    /// What was caught.
    pub caught: Caught,
    /// Its own time.
    pub time: Option<AsWritten<Time>>,
    /// Its own marks.
    pub marks: Option<Marks>,
    /// The timed run it shares with others.
    pub run: Option<u32>,
}

/// One round: each tip with its readings, none where it was not caught.
#[derive(Clone, Debug, PartialEq)]
pub struct RoundFacts {
    /// What was done before it.
    pub kind: RoundKind,
    /// Tip numbers from the left with their readings.
    pub tips: Vec<(u32, Vec<TipReading>)>,
    /// The set of tips it was caught with, where the bodies hold several.
    pub tip_set: Option<String>,
    /// The time of this round, where it has its own.
    pub time: Option<CatchTime>,
    /// What the gauge showed, after the pressure was changed.
    pub pressure: Option<AsWritten<Pressure>>,
    /// The two tips that changed places, after a swap.
    pub swapped: Vec<u32>,
}

/// A pressure read at a tip with a gauge that is trusted.
#[derive(Clone, Debug, PartialEq)]
pub struct TipPressureFacts {
    /// At which tip.
    pub tip: u32,
    /// What that gauge showed.
    pub pressure: AsWritten<Pressure>,
    /// How far its marks are apart.
    pub marks: Option<AsWritten<Pressure>>,
}

/// How far a tip may be off.
#[derive(Clone, Debug, PartialEq)]
pub enum LimitChoice {
    /// A share of the mean, the user's own.
    Own(f64),
    /// A named limit.
    Named(LimitProfile),
}

/// The catch test.
#[derive(Clone, Debug, PartialEq)]
pub struct CatchFacts {
    /// How long the cups were held.
    pub time: CatchTime,
    /// The cups.
    pub cups: Cups,
    /// How far a tip may be off the mean.
    pub limit: Option<LimitChoice>,
    /// How far a tip may be off a new one.
    pub new_limit: Option<LimitProfile>,
    /// How well the watch was worked, where it is not by hand.
    pub timer: Option<AsWritten<Time>>,
    /// The rounds in the order they were caught.
    pub rounds: Vec<RoundFacts>,
    /// Readings of a new tip fitted for the purpose.
    pub new_tip: Vec<TipReading>,
    /// Pressures read at tips.
    pub tip_pressures: Vec<TipPressureFacts>,
    /// What to do with readings that cannot be.
    pub doubtful: Doubtful,
    /// What was set otherwise than the visit says.
    pub setting: Setting,
}
