//! What was seen beside the readings, and how checks were answered.

use calibration::symptoms::{AirChamber, Check, Control, Drive, Outcome, Pumping, Seen, Signs, Symptom};
use sprayer::PressureControl;

/// What was seen, and how checks were answered. Each list as it was written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SymptomFacts {
    /// What drives the pump.
    pub drive: Option<Drive>,
    /// Whether it has an air chamber.
    pub air_chamber: Option<AirChamber>,
    /// What is seen.
    pub seen: Vec<Symptom>,
    /// What was looked for and is not there.
    pub absent: Vec<Symptom>,
    /// Checks answered with yes.
    pub yes: Vec<Check>,
    /// Checks answered with no.
    pub no: Vec<Check>,
    /// Checks that are not wanted.
    pub skipped: Vec<Check>,
}

impl SymptomFacts {
    /// What is known so far; what holds the pressure is the machine's.
    #[must_use]
    pub fn signs(&self, held_by: Option<PressureControl>) -> Signs {
        let seen = |list: &[Symptom], seen: Seen| list.iter().map(|one| (*one, seen)).collect::<Vec<_>>();
        let checked =
            |list: &[Check], outcome: Outcome| list.iter().map(|one| (*one, outcome)).collect::<Vec<_>>();
        let mut signs = Signs {
            seen: seen(&self.seen, Seen::Present),
            pumping: Pumping {
                drive: self.drive,
                control: held_by.map(|held| match held {
                    PressureControl::RateController => Control::Controller,
                    PressureControl::Constant | PressureControl::GroundDriven => Control::ByHand,
                }),
                air_chamber: self.air_chamber,
            },
            checked: checked(&self.yes, Outcome::Yes),
        };
        signs.seen.extend(seen(&self.absent, Seen::Absent));
        signs.checked.extend(checked(&self.no, Outcome::No));
        signs.checked.extend(checked(&self.skipped, Outcome::Skipped));
        signs
    }
}
