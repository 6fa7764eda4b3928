//! What holds the pressure, which decides what a change of speed does.

/// What the sprayer does when the speed changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PressureControl {
    /// A regulator holds the pressure: half the speed lays twice the rate.
    Constant,
    /// A pump driven from the ground wheel: its flow goes with the speed, so the rate stays.
    GroundDriven,
    /// A rate controller changes the pressure with the square of the speed to hold the rate, within the tip's range.
    RateController,
}

impl PressureControl {
    /// The stable word in files and JSON.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Constant => "constant_pressure",
            Self::GroundDriven => "ground_driven_pump",
            Self::RateController => "rate_controller",
        }
    }

    /// Looks the word up.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        [Self::Constant, Self::GroundDriven, Self::RateController]
            .into_iter()
            .find(|control| control.word() == word)
    }
}
