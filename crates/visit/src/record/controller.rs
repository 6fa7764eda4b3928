//! The checker: what a controller showed, what was entered in it, and what closing its sections did.

use units::{AsWritten, Flow, Length, Pressure, Speed, VolumePerArea};

use super::look::Answer;

/// What a controller showed and what was entered in it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ControllerFacts {
    /// The flow it showed while cups were caught.
    pub shown_flow: Option<AsWritten<Flow>>,
    /// The rate it showed on the drive.
    pub shown_rate: Option<AsWritten<VolumePerArea>>,
    /// The speed it showed on the timed drive.
    pub shown_speed: Option<AsWritten<Speed>>,
    /// The width entered for each section, from the left.
    pub widths: Vec<AsWritten<Length>>,
    /// Whether valves at the tips pulse.
    pub valves_pulse: Option<Answer>,
    /// The share of the time they were open while cups were caught.
    pub duty: Option<f64>,
    /// Sections closed in turn.
    pub closed: Vec<ClosedFacts>,
}

/// One section closed and opened again.
#[derive(Clone, Debug, PartialEq)]
pub struct ClosedFacts {
    /// The section, from the left from 1.
    pub section: u32,
    /// The pressure with all sections open.
    pub before: AsWritten<Pressure>,
    /// The pressure with this one closed.
    pub closed: AsWritten<Pressure>,
    /// The pressure once it was open again.
    pub after: Option<AsWritten<Pressure>>,
}
