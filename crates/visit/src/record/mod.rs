//! The record of a visit: what the machine is, how it was set, what was read off it. Facts as written.
//!
//! No derived number is kept here; [`crate::findings`] works them out each time.

mod catching;
mod controller;
mod look;
mod machine;
mod plan;
mod runs;
mod said;
mod setting;
mod symptoms;

pub use catching::{CatchFacts, CatchTime, Cups, LimitChoice, RoundFacts, TipPressureFacts, TipReading};
pub use controller::{ClosedFacts, ControllerFacts};
pub use look::{Answer, Look, LookItem, SeenFacts};
pub use machine::{Coverage, Machine, NamedTip, Swath};
pub use plan::{JobFacts, LabelFacts, PlannedProduct, TargetFacts};
pub use runs::{DriveFacts, RefillFacts, RunFacts, SpacingFacts, UsedOver, Way};
pub use said::{Switch, round_said, setting_said};
pub use setting::{Setting, place_from_word, place_word};
pub use symptoms::SymptomFacts;

/// One sprayer on one day.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Visit {
    /// Whose sprayer, which, when, with whom.
    pub about: About,
    /// What the machine is.
    pub machine: Option<Machine>,
    /// How it was set, unless the drive or the catch says otherwise.
    pub setting: Setting,
    /// What the two minutes' look found.
    pub look: Look,
    /// What was seen of single tips, cups and the gauge.
    pub seen: SeenFacts,
    /// What was seen beside the readings.
    pub symptoms: SymptomFacts,
    /// Where the tips stand.
    pub spacing: Option<SpacingFacts>,
    /// The timed drive.
    pub drive: Option<DriveFacts>,
    /// The catch test.
    pub catch: Option<CatchFacts>,
    /// What a controller showed, and what closing its sections did.
    pub controller: ControllerFacts,
    /// What was used on a measured distance or area, or what a whole tank did.
    pub refill: Option<RefillFacts>,
    /// What is wanted.
    pub target: Option<TargetFacts>,
    /// What goes in the tank.
    pub products: Vec<PlannedProduct>,
    /// The work ahead.
    pub job: JobFacts,
}

/// Whose sprayer, which, when, with whom.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct About {
    /// What the sprayer is called.
    pub sprayer: Option<String>,
    /// The farm.
    pub farm: Option<String>,
    /// The day, as year-month-day.
    pub date: Option<String>,
    /// Who drives it.
    pub operator: Option<String>,
    /// Who helped.
    pub with: Option<String>,
    /// Anything else.
    pub notes: Option<String>,
}
