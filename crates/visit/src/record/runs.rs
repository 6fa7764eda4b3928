//! What was measured on the ground: where the tips stand, the timed drive, what a known area used.

use units::{Area, AsWritten, Length, Speed, Time, Volume};

use super::setting::Setting;

/// Where the tips stand.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct SpacingFacts {
    /// Marks read off one stretched tape, one for each tip.
    pub marks: Vec<AsWritten<Length>>,
    /// Or each gap measured by itself.
    pub gaps: Vec<AsWritten<Length>>,
    /// How far the marks of the tape are apart.
    pub tape_marks: Option<AsWritten<Length>>,
    /// Tips that cannot be moved.
    pub cannot_move: Vec<u32>,
    /// The limit of each gap, where another than 5 % is wanted.
    pub limit: Option<f64>,
}

/// The way a run was driven.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// One way.
    There,
    /// The other.
    Back,
}

/// One timed run.
#[derive(Clone, Debug, PartialEq)]
pub struct RunFacts {
    /// The time, as written.
    pub time: AsWritten<Time>,
    /// The way, where it was noted.
    pub way: Option<Way>,
}

/// The timed drive.
#[derive(Clone, Debug, PartialEq)]
pub struct DriveFacts {
    /// The measured course.
    pub course: AsWritten<Length>,
    /// The runs.
    pub runs: Vec<RunFacts>,
    /// What the dash showed.
    pub dash: Option<AsWritten<Speed>>,
    /// What was set otherwise than the visit says.
    pub setting: Setting,
}

/// Over what a volume was used.
#[derive(Clone, Debug, PartialEq)]
pub enum UsedOver {
    /// A measured distance, the swath being the machine's.
    Distance(AsWritten<Length>),
    /// A known area.
    Area(AsWritten<Area>),
}

/// What was used on a measured distance or area, or what a whole tank did.
#[derive(Clone, Debug, PartialEq)]
pub struct RefillFacts {
    /// The volume it took to fill up again.
    pub used: AsWritten<Volume>,
    /// Over what.
    pub over: UsedOver,
}
