//! Valves that pulse at each tip: cups tell the flow only while they stay open.

use units::{Arg, Finding, Weight};

/// Whether the valves pulsed while cups were caught.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pulsing {
    /// There are none, or nobody said so.
    None,
    /// They stayed open all the time.
    Open,
    /// They were open for this share of the time.
    Part(f64),
    /// They pulse, and nobody wrote down how.
    Unknown,
}

impl Pulsing {
    /// Pulsing valves with their duty as a share, where that was written down.
    ///
    /// *Example*: a duty of 1 is open all the time.
    #[must_use]
    pub fn with_duty(duty: Option<f64>) -> Self {
        match duty {
            Some(duty) if duty >= 1.0 => Self::Open,
            Some(duty) => Self::Part(duty),
            None => Self::Unknown,
        }
    }

    /// Whether cups tell what tips put out.
    #[must_use]
    pub const fn cups_tell(self) -> bool {
        matches!(self, Self::None | Self::Open)
    }
}

/// Returns why no rate is worked out from cups, where the valves were not open all the time.
///
/// *Source*: common practice, from memory: a cup under a pulsing tip holds the part of the time the valve was open, and the
/// field sets another part at every speed.
#[must_use]
pub fn pulsing_finding(pulsing: Pulsing) -> Option<Finding> {
    let finding = match pulsing {
        Pulsing::None | Pulsing::Open => return None,
        Pulsing::Part(duty) => Finding::new(
            Weight::Act,
            "controller_pulsing",
            "The valves pulsed at {duty} while cups were caught: a cup then holds a part of the time only, so no rate is worked out from these cups.",
        )
        .with("duty", Arg::Percent(duty * 100.0)),
        Pulsing::Unknown => Finding::new(
            Weight::Act,
            "controller_pulsing_unknown",
            "The valves at the tips pulse, and nobody wrote down how they stood while cups were caught: no rate is worked out from these cups.",
        ),
    };
    Some(finding.to_do("Set the valves to stay fully open (100 %) and catch again."))
}
