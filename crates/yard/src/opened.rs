//! The visit that is open: its lines folded, the facts that can be worked with, and what follows from them.

use std::cell::OnceCell;
use std::collections::{BTreeMap, BTreeSet};

use calibration::diagnosis::Diagnosed;

use notebook::{
    About, DeviceId, Draft, FoldedVisit, Held, Kind, Line, Notebook, NotebookId, RowId, ThingId, Value,
    folded,
};
use units::UnitSystem;
use visit::Visit;
use visit::findings::{CheckError, Outcome, diagnosis, findings};

use crate::event::Keep;
use crate::plan::Step;
use crate::usable::{Fault, usable};

/// The visit that is open.
#[derive(Clone, Debug)]
pub struct Opened {
    /// Its name in the notebook.
    pub id: ThingId,
    /// Whether it is kept.
    pub keep: Keep,
    /// What is written of a visit that is not kept.
    pub loose: Vec<Draft>,
    /// What its lines come to.
    pub folded: FoldedVisit,
    /// The facts that can be worked with.
    pub visit: Visit,
    /// Facts that cannot be, and parts that lack one; nothing is worked out of them.
    pub faults: Vec<Fault>,
    /// What follows.
    pub outcome: Outcome,
    /// Parts whose facts do not go together; the others are worked out without them.
    pub stuck: Vec<CheckError>,
    /// What is being typed, by field.
    pub typed: BTreeMap<String, Typed>,
    /// The step that is unfolded.
    pub unfolded: Option<Step>,
    /// The cautions that were seen to.
    pub made_safe: BTreeSet<&'static str>,
    /// What is most likely wrong, once it was asked for.
    diagnosed: OnceCell<Option<Diagnosed>>,
}

/// Letters in a field that are no fact yet.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Typed {
    /// As typed.
    pub text: String,
    /// What is wrong with them, said once they were meant.
    pub wrong: Option<String>,
}

/// Who holds the notebook, for lines that are shown before they are kept.
#[derive(Clone, Copy, Debug)]
pub struct Holder {
    /// The notebook.
    pub notebook: NotebookId,
    /// The device.
    pub device: DeviceId,
}

impl Opened {
    /// A visit with nothing in it.
    #[must_use]
    pub fn new(id: ThingId, keep: Keep) -> Self {
        Self {
            id,
            keep,
            loose: Vec::new(),
            folded: FoldedVisit::default(),
            visit: Visit::default(),
            faults: Vec::new(),
            outcome: Outcome::default(),
            stuck: Vec::new(),
            typed: BTreeMap::new(),
            unfolded: Some(Step::Machine),
            made_safe: BTreeSet::new(),
            diagnosed: OnceCell::new(),
        }
    }

    /// What its lines are about.
    #[must_use]
    pub const fn about(&self) -> About {
        About { kind: Kind::Visit, id: self.id }
    }

    /// Folds its lines again, those on the way after those that are kept, and works everything out again.
    pub fn refold(&mut self, kept: &[Line], on_the_way: &[Draft], holder: Holder, units: UnitSystem) {
        let folded = fold_one(self.id, kept, on_the_way.iter().chain(&self.loose), holder);
        self.put(Worked::of(folded, units));
    }

    /// What its lines come to, worked out elsewhere.
    pub fn put(&mut self, worked: Worked) {
        let Worked { folded, visit, faults, outcome, stuck } = worked;
        self.folded = folded;
        self.visit = visit;
        self.faults = faults;
        self.outcome = outcome;
        self.stuck = stuck;
        self.diagnosed = OnceCell::new();
    }

    /// What is most likely wrong with the boom; none before cups were caught, and of what is no boom. It takes some
    /// milliseconds, so it is worked out when it is first asked for and kept until the facts change.
    #[must_use]
    pub fn diagnosed(&self) -> Option<&Diagnosed> {
        let is_boom = |visit: &Visit| visit.machine.as_ref().is_some_and(|machine| machine.boom().is_some());
        let found =
            || is_boom(&self.visit).then(|| diagnosis(&self.visit, &self.outcome).ok().flatten()).flatten();
        self.diagnosed.get_or_init(found).as_ref()
    }

    /// Whether that was worked out already.
    #[must_use]
    pub fn is_diagnosed(&self) -> bool {
        self.diagnosed.get().is_some()
    }

    /// A fact as it stands.
    #[must_use]
    pub fn fact(&self, field: &str) -> Option<&Held> {
        self.folded.facts.get(field)
    }

    /// The letters of a fact; empty where there is none.
    #[must_use]
    pub fn text(&self, field: &str) -> &str {
        match self.fact(field).map(|held| &held.value) {
            Some(Value::Text(text)) => text,
            _ => "",
        }
    }

    /// What kind of machine it is, as the visit file words it.
    #[must_use]
    pub fn kind(&self) -> &str {
        self.text("sprayer.kind")
    }

    /// The rounds, in the order caught.
    #[must_use]
    pub fn rounds(&self) -> &[(RowId, Held)] {
        self.folded.rows.get(ROUNDS).map_or(&[], Vec::as_slice)
    }

    /// A row of a list.
    #[must_use]
    pub fn row(&self, list: &str, row: RowId) -> Option<&Held> {
        self.folded.rows.get(list)?.iter().find(|(id, _)| *id == row).map(|(_, held)| held)
    }
}

/// What the lines of a visit come to.
#[derive(Clone, Debug)]
pub struct Worked {
    /// Folded.
    pub folded: FoldedVisit,
    /// The facts that can be worked with.
    pub visit: Visit,
    /// Those that cannot.
    pub faults: Vec<Fault>,
    /// What follows.
    pub outcome: Outcome,
    /// Parts whose facts do not go together.
    pub stuck: Vec<CheckError>,
}

impl Worked {
    /// What folded lines come to.
    #[must_use]
    pub fn of(folded: FoldedVisit, units: UnitSystem) -> Self {
        let (visit, faults) = usable(&folded);
        let (outcome, stuck) = worked_out(&visit, units);
        Self { folded, visit, faults, outcome, stuck }
    }
}

/// The list of rounds in a visit file.
pub const ROUNDS: &str = "catch.round";
/// The list of pressures that were read at tips.
pub const TIP_PRESSURES: &str = "catch.tip_pressure";
/// The list of timed runs.
pub const RUNS: &str = "drive.runs";
/// The list of sections closed in turn.
pub const CLOSED: &str = "controller.closed";
/// The list of products.
pub const PRODUCTS: &str = "product";

/// Folds the lines of one visit.
#[must_use]
pub fn fold_one<'a>(
    id: ThingId,
    kept: &[Line],
    drafts: impl Iterator<Item = &'a Draft>,
    holder: Holder,
) -> FoldedVisit {
    let mut book = Notebook::new(holder.notebook);
    for line in kept {
        book.take(line.clone());
    }
    for draft in drafts.filter(|draft| draft.about.id == id) {
        book.write(holder.device, draft.clone());
    }
    folded(&book).visits.remove(&id).unwrap_or_default()
}

/// How often a part is left out before we stop looking for what can be worked out. Our own choice: there are eleven parts.
const TRIES: usize = 11;

/// What follows from a visit, part by part: what cannot be stands aside, so that the rest is still told.
#[must_use]
pub fn worked_out(visit: &Visit, units: UnitSystem) -> (Outcome, Vec<CheckError>) {
    let mut left = visit.clone();
    let mut stuck = Vec::new();
    for _ in 0..TRIES {
        match findings(&left, units) {
            Ok(outcome) => return (outcome, stuck),
            Err(error) => {
                let part = error.part.split('.').next().unwrap_or_default();
                match part {
                    // A wrong angle or height takes nothing with it but the pattern.
                    _ if error.part == "sprayer.fan_angle" => {
                        left.machine =
                            left.machine.map(|machine| visit::record::Machine { fan_angle: None, ..machine });
                    }
                    _ if error.part == "setting.boom_height" => {
                        left.setting.boom_height = None;
                        left.drive = left.drive.map(|mut drive| {
                            drive.setting.boom_height = None;
                            drive
                        });
                    }
                    "symptoms" => left.symptoms = visit::record::SymptomFacts::default(),
                    "spacing" => left.spacing = None,
                    "drive" => left.drive = None,
                    "catch" => left.catch = None,
                    "refill" => left.refill = None,
                    "target" => left.target = None,
                    "product" => left.products.clear(),
                    "job" => left.job = visit::record::JobFacts::default(),
                    "setting" => left.setting = visit::record::Setting::default(),
                    _ => left.machine = None,
                }
                stuck.push(error);
            }
        }
    }
    (Outcome::default(), stuck)
}
