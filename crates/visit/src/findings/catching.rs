//! The catch test, round by round; rounds never mix.

use std::collections::BTreeMap;

use calibration::catch::{
    Catch, Cup, Limit, LimitProfile, NewTip, Outlet, Round, TipCatches, TipState, Uncertainties,
};
use calibration::doubt::of_marks;
use calibration::drive::DriveSpeed;
use calibration::verdict::{CatchVerdicts, Model, Settles, judge_catches};
use sprayer::{GroupId, RatedFlow};
use units::{Arg, AsWritten, Coded, Finding, Flow, Pressure, Time, Verdict, Weight};

use super::again;
use super::error::CheckError;
use crate::record::{CatchFacts, CatchTime, Coverage, LimitChoice, Machine, RoundFacts, TipReading, Visit};

/// The catch test.
#[derive(Clone, Debug)]
pub struct CatchOutcome {
    /// Each round in the order caught.
    pub rounds: Vec<RoundOutcome>,
    /// The round that the rate is worked out from: the last one in which the whole boom was caught, or the one
    /// with the most tips.
    pub current: usize,
    /// The errors of reading and timing that were assumed.
    pub doubts: Uncertainties,
    /// The cups of a new tip fitted for the purpose.
    pub new_tip: Vec<Catch>,
}

/// One round.
#[derive(Clone, Debug)]
pub struct RoundOutcome {
    /// The round.
    pub round: Round,
    /// Everything there is to say about it.
    pub verdicts: CatchVerdicts,
}

impl CatchOutcome {
    /// The round that counts now.
    #[must_use]
    pub fn now(&self) -> &RoundOutcome {
        &self.rounds[self.current]
    }

    /// What is worth telling of the round that counts now, and of later rounds in which single tips were caught.
    pub fn findings(&self) -> impl Iterator<Item = &Finding> {
        self.rounds[self.current..].iter().flat_map(|round| &round.verdicts.findings)
    }

    /// The tips that were plugged when the whole boom was caught.
    #[must_use]
    pub fn plugged(&self) -> Vec<u32> {
        let tips = self.now().verdicts.summary.tips.iter();
        tips.filter(|tip| tip.state == TipState::Plugged).map(|tip| tip.number).collect()
    }

    /// Whether a tip of the round that counts now is outside.
    #[must_use]
    pub fn is_outside(&self) -> bool {
        self.now().verdicts.summary.tips.iter().any(|tip| tip.verdict == Some(Verdict::Outside))
    }
}

/// Works the catch test out, where cups were caught.
pub(super) fn catching(
    visit: &Visit,
    speed: Option<&DriveSpeed>,
) -> Result<Option<CatchOutcome>, CheckError> {
    let Some(facts) = &visit.catch else { return Ok(None) };
    let test = Test { visit, facts, speed, doubts: doubts(facts) };
    let caught = |round: &RoundFacts| round.tips.iter().filter(|(_, readings)| !readings.is_empty()).count();
    let most = facts.rounds.iter().map(caught).max().unwrap_or(0);
    // Of rounds with equally many tips the latest tells how the boom is now.
    let current = facts.rounds.iter().rposition(|round| caught(round) == most).unwrap_or(0);
    let mut rounds = Vec::new();
    for round in &facts.rounds {
        rounds.push(test.round(round)?);
    }
    let now = rounds[current].clone();
    let mut since = BTreeMap::new();
    for later in &mut rounds[current + 1..] {
        // A few tips caught again say nothing about a mean; they are told beside their earlier readings.
        later
            .verdicts
            .findings
            .retain(|finding| matches!(finding.weight, Weight::Doubt) && finding.code() != "tips_not_caught");
        let (told, became) = again::caught_again(
            &later.round,
            &later.verdicts.summary,
            &now.round,
            &now.verdicts.summary,
            &now.verdicts.limit,
        );
        later.verdicts.findings.extend(told);
        since.extend(became);
    }
    let findings = std::mem::take(&mut rounds[current].verdicts.findings);
    rounds[current].verdicts.findings = again::done_since(findings, &since);
    let new_tip = test.new_cups(now.round.time)?;
    Ok(Some(CatchOutcome { rounds, current, doubts: test.doubts, new_tip }))
}

fn doubts(facts: &CatchFacts) -> Uncertainties {
    let usual = Uncertainties::default();
    Uncertainties { timer: facts.timer.as_ref().map_or(usual.timer, AsWritten::value), ..usual }
}

/// What the cups were held under; where there is no machine, a boom's tips.
pub(super) fn outlet(visit: &Visit) -> Outlet {
    match visit.machine.as_ref().map(|machine| &machine.coverage) {
        Some(Coverage::Boomless { .. }) => Outlet::Cluster,
        Some(Coverage::Hand { .. }) => Outlet::HandGun,
        _ => Outlet::BoomTip,
    }
}

struct Test<'a> {
    visit: &'a Visit,
    facts: &'a CatchFacts,
    speed: Option<&'a DriveSpeed>,
    doubts: Uncertainties,
}

impl Test<'_> {
    fn round(&self, facts: &RoundFacts) -> Result<RoundOutcome, CheckError> {
        let time = self.time(facts.time.as_ref().unwrap_or(&self.facts.time))?;
        let mut tips = Vec::new();
        for (number, readings) in &facts.tips {
            let catches: Result<Vec<Catch>, CheckError> =
                readings.iter().map(|reading| self.catch(reading, time)).collect();
            let (group, section) = self.place_of(*number)?;
            tips.push(TipCatches { number: *number, group, section, catches: catches? });
        }
        self.add_uncaught(&mut tips);
        let round = Round {
            kind: facts.kind.clone(),
            tips,
            density: self.facts.cups.density.as_ref().map_or(sprayer::WATER_AT_20_C, AsWritten::value),
            time,
            unit: self.facts.cups.marks.as_ref().and_then(|marks| marks.step().unit().cloned()),
        };
        let rated = self.rated()?;
        let new = self.new_tip(&round, facts, rated)?;
        let expected = match &new {
            Some(new) => Some(new.flow().map_err(CheckError::of("setting.pressure"))?),
            None => rated.map(|rated| rated.flow()),
        };
        let cup = Cup {
            marks: self.facts.cups.marks.clone(),
            holds: self.facts.cups.holds.as_ref().map(AsWritten::value),
        };
        let absurd = round.look_for_absurd_from(outlet(self.visit), &cup, expected, self.facts.doubtful);
        let doubtful = absurd.map_err(CheckError::of("catch"))?;
        let (limit, new_limit) = self.limits(rated.map(|rated| rated.flow()))?;
        let model = Model { doubts: self.doubts, ..Model::default() };
        let ways = Settles { cup_holds: cup.holds, ..Settles::default() };
        let new = new.as_ref().map(|new| (new, &new_limit));
        let mut verdicts =
            judge_catches(&round, &limit, new, &model, &ways).map_err(CheckError::of("catch"))?;
        verdicts.findings.extend(doubtful);
        verdicts.findings.extend(self.taken_as_water(&round));
        // Tips meant to differ are no new ones of the fitted size either.
        verdicts.new_judged.retain(|tip| verdicts.new.iter().any(|new| new.number == tip.number));
        Ok(RoundOutcome { round, verdicts })
    }

    fn time(&self, time: &CatchTime) -> Result<Time, CheckError> {
        match (time, self.speed) {
            (CatchTime::Given(time), _) => Ok(time.value()),
            (CatchTime::AsDriven, Some(speed)) => Ok(speed.mean_time),
            (CatchTime::AsDriven, None) => Err(CheckError::needed(
                "catch.time",
                "catch_as_driven_without_drive",
                "\"as driven\" needs a timed drive",
                "give [drive] with its runs, or the time of the catch",
            )),
        }
    }

    fn catch(&self, reading: &TipReading, time: Time) -> Result<Catch, CheckError> {
        let dimension = reading.caught.written().dimension();
        let usual = self.facts.cups.marks.clone().filter(|marks| marks.step().dimension() == dimension);
        let time = reading.time.as_ref().map_or(time, AsWritten::value);
        let marks = reading.marks.clone().or(usual);
        Catch::new(reading.caught.clone(), marks, time, reading.run).map_err(CheckError::of("catch"))
    }

    fn place_of(&self, number: u32) -> Result<(GroupId, u16), CheckError> {
        let Some(boom) = self.machine().and_then(Machine::boom) else { return Ok((GroupId(0), 0)) };
        let place = usize::try_from(number).unwrap_or(usize::MAX).checked_sub(1);
        match place.and_then(|place| boom.positions().get(place)) {
            Some(position) => Ok((position.group, position.section)),
            None => Err(CheckError::needed(
                "catch.round",
                "catch_no_such_tip",
                "there is no tip {tip}; the boom has {tips}",
                "give one reading for each tip of the boom, \"-\" where it was not caught",
            )
            .with("tip", Arg::Count(number))
            .with("tips", Arg::Count(boom.tips()))),
        }
    }

    /// Tips of the boom that stand in no list were not caught.
    fn add_uncaught(&self, tips: &mut Vec<TipCatches>) {
        let Some(boom) = self.machine().and_then(Machine::boom) else { return };
        for (number, position) in (1..).zip(boom.positions()) {
            if !tips.iter().any(|tip| tip.number == number) {
                let (group, section) = (position.group, position.section);
                tips.push(TipCatches { number, group, section, catches: Vec::new() });
            }
        }
        tips.sort_by_key(|tip| tip.number);
    }

    /// A weight becomes a volume by a density; where none was written down it is water's, and that is said.
    fn taken_as_water(&self, round: &Round) -> Option<Finding> {
        let weighed = |catch: &Catch| catch.reading().written().dimension() == units::Dimension::Mass;
        let any = round.tips.iter().flat_map(|tip| &tip.catches).any(weighed);
        (any && self.facts.cups.density.is_none()).then(|| {
            Finding::new(
                Weight::Note,
                "weighed_as_water",
                "The weighed cups are taken as clean water. Where they held something else, give weighed_density.",
            )
        })
    }

    fn machine(&self) -> Option<&Machine> {
        self.visit.machine.as_ref()
    }

    fn rated(&self) -> Result<Option<RatedFlow>, CheckError> {
        super::fitted::rated(self.visit)
    }

    /// The cups of a new tip.
    fn new_cups(&self, time: Time) -> Result<Vec<Catch>, CheckError> {
        self.facts.new_tip.iter().map(|reading| self.catch(reading, time)).collect()
    }

    fn new_tip(
        &self,
        round: &Round,
        facts: &RoundFacts,
        rated: Option<RatedFlow>,
    ) -> Result<Option<NewTip>, CheckError> {
        if !self.facts.new_tip.is_empty() {
            let catches = self.new_cups(round.time)?;
            let tip = TipCatches { number: 0, group: GroupId(0), section: 0, catches };
            return NewTip::from_catch(&tip, round.density, &self.doubts)
                .map(Some)
                .map_err(CheckError::of("catch.new_tip"));
        }
        let setting = self.facts.setting.over(&self.visit.setting);
        // A round at another pressure is held against what a new tip gives at that one.
        let pressure = facts.pressure.clone().or(setting.pressure);
        let (Some(rated), Some(pressure)) = (rated, pressure) else { return Ok(None) };
        let marks = setting.gauge_marks.as_ref().map_or(USUAL_GAUGE_MARKS, AsWritten::value);
        Ok(Some(NewTip::Rated { rated, pressure: pressure.value(), pressure_doubt: of_marks(marks) }))
    }

    fn limits(&self, nominal: Option<Flow>) -> Result<(Limit, Limit), CheckError> {
        let named = |name: &str| LimitProfile::named(name).map_err(CheckError::of("catch.limit"));
        let usual = named("mean-10")?.limit(None);
        let mut new_limit = self.facts.new_limit.unwrap_or(named("new-10")?).limit(nominal);
        let limit = match &self.facts.limit {
            None => usual,
            Some(LimitChoice::Own(share)) => Limit::own(*share).map_err(CheckError::of("catch.limit"))?,
            Some(LimitChoice::Named(profile)) => {
                new_limit = profile.over_new(nominal).unwrap_or(new_limit);
                profile.about_mean(nominal).unwrap_or(usual)
            }
        };
        Ok((limit, new_limit))
    }
}

/// The marks taken for a gauge of which nothing is said, 2 psi. Our assumption for a good small gauge.
pub(super) const USUAL_GAUGE_MARKS: Pressure = Pressure::psi(2.0);
