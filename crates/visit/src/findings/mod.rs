//! From facts to findings: every step that the visit has readings for, and what follows from them together.

mod again;
mod catching;
mod change;
mod controller;
mod cost;
mod diagnosis;
mod drive;
mod error;
mod fitted;
mod look;
mod pattern;
mod plugged;
mod rate;
mod records;
mod repeat;
mod sets;
mod spacing;
mod symptoms;
mod tank;
mod todo;

pub use catching::{CatchOutcome, RoundOutcome};
pub use change::change_advice;
pub use controller::ControllerOutcome;
pub use diagnosis::{diagnosis, diagnosis_with};
pub use error::CheckError;
pub use fitted::rated as fitted_flow;
pub use pattern::PatternOutcome;
pub use rate::RateOutcome;
pub use records::records;
pub use repeat::Repeat;
pub use sets::SetOutcome;
pub use symptoms::SymptomOutcome;
pub use tank::TankOutcome;
pub use todo::{Action, Place};

use calibration::drive::DriveSpeed;
use calibration::spacing::Spacing;
use planning::{Change, CostOfError, Judged};
use units::{Finding, UnitSystem, Verdict};

use crate::record::Visit;

/// What follows from a visit. What it has no readings for is absent.
#[derive(Clone, Debug, Default)]
pub struct Outcome {
    /// The setting to repeat, and whether drive and catch were made at the same one.
    pub setting: Option<Repeat>,
    /// What the look found.
    pub look: Vec<Finding>,
    /// What most likely brings what was seen beside the readings.
    pub symptoms: Option<SymptomOutcome>,
    /// Where the tips stand.
    pub spacing: Option<Spacing>,
    /// The speed.
    pub speed: Option<DriveSpeed>,
    /// The catch test, round by round.
    pub catch: Option<CatchOutcome>,
    /// How evenly the ground gets it across the boom, where height and fan angle are given.
    pub pattern: Option<PatternOutcome>,
    /// What was caught with other sets of tips, each by itself.
    pub other_sets: Vec<SetOutcome>,
    /// What it puts out.
    pub rate: Option<RateOutcome>,
    /// The checker checked.
    pub controller: Option<ControllerOutcome>,
    /// What is wanted against what it puts out.
    pub target: Option<Judged>,
    /// What would hit the wanted rate, where it is missed.
    pub change: Option<Change>,
    /// What goes in the tank.
    pub tank: Option<TankOutcome>,
    /// What the error costs.
    pub cost: Option<CostOfError>,
    /// What to do, in order.
    pub actions: Vec<Action>,
}

/// Returns everything that follows from a visit's facts.
///
/// *Units*: any; `jugs` says in which units products by percentage are measured.
///
/// *Errors*: a fact that cannot be, with the part of the visit it stands in. Doubtful but usable facts give findings.
pub fn findings(visit: &Visit, jugs: UnitSystem) -> Result<Outcome, CheckError> {
    let whole = visit;
    let visit = &*sets::in_use(whole);
    let setting = repeat::repeat(visit);
    let look = look::look(&visit.look);
    let symptoms = symptoms::symptoms(visit)?;
    let spacing = spacing::spacing(visit)?;
    let speed = drive::drive(visit)?;
    let catch = catching::catching(visit, speed.as_ref())?;
    let other_sets = sets::others(whole, speed.as_ref())?;
    let pattern = pattern::pattern(visit, spacing.as_ref(), catch.as_ref())?;
    // Cups under valves that were not open all the time hold a part of it only.
    let told_by_cups = catch.as_ref().filter(|_| controller::pulsing(visit).cups_tell());
    let rate = rate::rate(visit, speed.as_ref(), told_by_cups, setting.as_ref())?;
    let controller = controller::controller(visit, speed.as_ref(), catch.as_ref(), rate.as_ref());
    let target = tank::target(visit, rate.as_ref())?;
    let change = change::change(visit, rate.as_ref(), speed.as_ref(), target.as_ref())?;
    let tank = tank::tank(visit, rate.as_ref(), jugs)?;
    let cost = cost::cost(visit, rate.as_ref(), catch.as_ref())?;
    let mut outcome = Outcome {
        setting,
        look,
        symptoms,
        spacing,
        speed,
        catch,
        pattern,
        other_sets,
        rate,
        controller,
        target,
        change,
        tank,
        cost,
        actions: Vec::new(),
    };
    outcome.actions = todo::actions(&outcome);
    Ok(outcome)
}

impl Outcome {
    /// Every finding, part by part in yard order.
    pub fn all(&self) -> impl Iterator<Item = (Place, &Finding)> {
        let setting = self.setting.iter().flat_map(|part| &part.findings).map(|one| (Place::Setting, one));
        let look = self.look.iter().map(|one| (Place::Look, one));
        let symptoms = self.symptoms.iter().flat_map(|part| &part.findings).map(|one| (Place::Symptoms, one));
        let spacing = self.spacing.iter().flat_map(|part| &part.findings).map(|one| (Place::Spacing, one));
        let speed = self.speed.iter().flat_map(|part| &part.findings).map(|one| (Place::Drive, one));
        let catch = self.catch.iter().flat_map(CatchOutcome::findings).map(|one| (Place::Tips, one));
        let sets = self.other_sets.iter().flat_map(|set| &set.findings).map(|one| (Place::Tips, one));
        let pattern = self.pattern.iter().flat_map(PatternOutcome::findings).map(|one| (Place::Pattern, one));
        let rate = self.rate.iter().flat_map(RateOutcome::findings).map(|one| (Place::Rate, one));
        let controller =
            self.controller.iter().flat_map(|part| &part.findings).map(|one| (Place::Controller, one));
        let target = self.target.iter().flat_map(|part| &part.findings).map(|one| (Place::Rate, one));
        let change = self.change.iter().flat_map(|part| &part.findings).map(|one| (Place::Change, one));
        let tank = self.tank.iter().flat_map(TankOutcome::findings).map(|one| (Place::Tank, one));
        let cost = self.cost.iter().flat_map(|part| &part.findings).map(|one| (Place::Cost, one));
        setting
            .chain(look)
            .chain(symptoms)
            .chain(spacing)
            .chain(speed)
            .chain(catch)
            .chain(sets)
            .chain(pattern)
            .chain(rate)
            .chain(controller)
            .chain(target)
            .chain(change)
            .chain(tank)
            .chain(cost)
    }

    /// Whether any verdict is *outside*.
    #[must_use]
    pub fn is_outside(&self) -> bool {
        let spacing = self.spacing.as_ref().is_some_and(|spacing| spacing.verdict == Verdict::Outside);
        let tips = self.catch.as_ref().is_some_and(CatchOutcome::is_outside);
        spacing || tips || self.all().any(|(_, finding)| finding.verdict == Some(Verdict::Outside))
    }
}
