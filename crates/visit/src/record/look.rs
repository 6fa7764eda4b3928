//! The look: two minutes around the sprayer while it sprays clean water.

use units::{AsWritten, Pressure};

/// What is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LookItem {
    /// All tips are of one kind, size and angle.
    TipsAlike,
    /// Every tip sprays.
    AllSpraying,
    /// The fans are straight and clear of one another.
    FansStraight,
    /// Nothing leaks.
    NoLeaks,
    /// Nothing drips five seconds after shutting off.
    NoDripAfter5S,
    /// The gauge goes back to zero.
    GaugeBackToZero,
    /// Strainers are in and clean.
    StrainersClean,
    /// The boom is level and at its height.
    BoomLevel,
}

/// What was seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answer {
    /// As it should be.
    Yes,
    /// Not as it should be.
    No,
}

/// What the look found, in yard order.
pub type Look = Vec<(LookItem, Answer)>;

/// What was seen of single tips, cups and the gauge.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct SeenFacts {
    /// Tips whose fan is streaky or to one side.
    pub streaky: Vec<u32>,
    /// Tips that drip five seconds after shutting off.
    pub dripping: Vec<u32>,
    /// Tips of another size, kind or colour than the rest.
    pub odd: Vec<u32>,
    /// Whether the cups foam.
    pub foam: Option<Answer>,
    /// What the gauge shows when nothing runs.
    pub gauge_rests_at: Option<AsWritten<Pressure>>,
}

impl LookItem {
    /// Every item in yard order.
    pub const ALL: [Self; 8] = [
        Self::TipsAlike,
        Self::AllSpraying,
        Self::FansStraight,
        Self::NoLeaks,
        Self::NoDripAfter5S,
        Self::GaugeBackToZero,
        Self::StrainersClean,
        Self::BoomLevel,
    ];

    /// The stable word in files and JSON.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::TipsAlike => "tips_alike",
            Self::AllSpraying => "all_spraying",
            Self::FansStraight => "fans_straight",
            Self::NoLeaks => "no_leaks",
            Self::NoDripAfter5S => "no_drip_after_5_s",
            Self::GaugeBackToZero => "gauge_back_to_zero",
            Self::StrainersClean => "strainers_clean",
            Self::BoomLevel => "boom_level",
        }
    }
}
