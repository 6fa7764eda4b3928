//! What people see beside the readings.

use super::named::named;
use super::pumping::Fits;

named! {
    /// What is seen.
    Symptom {
        /// It will not build pressure.
        NoPressure = "no_pressure",
        /// The needle jumps.
        NeedleJumps = "needle_jumps",
        /// Foam in the tank, or milky water.
        Foam = "foam",
        /// One section is weak, all along it.
        SectionWeak = "section_weak",
        /// Tips drip on after shutting off.
        Drips = "drips",
        /// The pressure falls after a while, as it warms.
        FallsWarm = "falls_warm",
        /// The pressure falls when the pump is turned faster.
        FallsFast = "falls_fast",
        /// The pressure will not come down.
        TooHigh = "too_high",
        /// The pump knocks, or hoses shake.
        Knocks = "knocks",
        /// A 12 V pump is weak while the engine is off.
        WeakEngineOff = "weak_engine_off",
    }
}

impl Symptom {
    /// On which sprayers it can be seen.
    #[must_use]
    pub const fn fits(self) -> Fits {
        match self {
            Self::WeakEngineOff => Fits::TwelveVolt,
            Self::FallsFast => Fits::Shaft,
            _ => Fits::All,
        }
    }
}
