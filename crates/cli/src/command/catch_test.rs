//! One catch test, whether it was typed or came as a line of a batch: what was given, and its answer.

use calibration::catch::{
    Catch, Cup, Doubtful, Limit, LimitProfile, NewTip, Risk, Round, RoundKind, TipCatches, Uncertainties,
};
use calibration::verdict::{CatchVerdicts, Model, Settles, judge_catches};
use sprayer::{GroupId, RatedFlow};
use units::{Arg, Args, Caught, Coded, Density, Dimension, Marks, Pressure, Quantity, Time, Unit, Volume};

use super::input::known;
use crate::error::{CliError, Place};

/// What was given for a catch test, as texts with the name each is known by.
#[derive(Debug, Default)]
pub struct Given {
    /// The usual time.
    pub time: String,
    /// The usual marks.
    pub step: String,
    /// Each tip's readings; none where it was not caught.
    pub tips: Vec<Vec<GivenReading>>,
    /// How far a tip may be off.
    pub limit: Option<String>,
    /// A new tip's flow at a pressure.
    pub rated: Option<String>,
    /// The pressure at the tips.
    pub pressure: Option<String>,
    /// How much a cup holds.
    pub cup_holds: Option<String>,
    /// Hand timing.
    pub timer: Option<String>,
    /// Shares: cup scale, watch, handling.
    pub shares: [Option<String>; 3],
    /// The risk taken.
    pub risk: Option<f64>,
    /// The liquid's density.
    pub density: Option<String>,
    /// The order in which tips were caught, by number, where it is known.
    pub order: Vec<u32>,
    /// What to do with readings that cannot be.
    pub doubtful: Doubtful,
}

/// One reading as given, with its own time or marks where it has them.
#[derive(Debug, Default, Clone)]
pub struct GivenReading {
    /// The reading.
    pub reading: String,
    /// Its time.
    pub time: Option<String>,
    /// Its marks.
    pub step: Option<String>,
    /// The timed run it shares with others.
    pub run: Option<u32>,
}

/// A catch test worked out.
#[derive(Debug)]
pub struct Outcome {
    /// The round.
    pub round: Round,
    /// Everything there is to say about it.
    pub verdicts: CatchVerdicts,
}

impl Given {
    /// The flow of a new tip, where it was given.
    pub fn rated_flow(&self) -> Result<Option<RatedFlow>, CliError> {
        self.rated.as_deref().map(|text| super::flow::rated_from("rated", text)).transpose()
    }

    /// The cups as a round, and the usual marks.
    pub fn round(&self) -> Result<(Round, Marks), CliError> {
        self.round_from(1)
    }

    /// The same, tips counted from another number.
    pub fn round_from(&self, first: u32) -> Result<(Round, Marks), CliError> {
        let time = positive_time("time", &self.time)?;
        let marks = marks("step", &self.step)?;
        let unit = marks.step().unit().cloned();
        let density = match &self.density {
            Some(text) => super::input::positive::<Density>("density", text)?,
            None => sprayer::WATER_AT_20_C,
        };
        let mut tips = Vec::new();
        for (number, readings) in (first..).zip(&self.tips) {
            let mut catches = Vec::new();
            for given in readings {
                catches.push(catch_of(number, given, time, &marks, unit.as_ref())?);
            }
            tips.push(TipCatches { number, group: GroupId(0), section: 0, catches });
        }
        Ok((Round { kind: RoundKind::AsFound, tips, density, time, unit }, marks))
    }

    /// Works the test out.
    pub fn work_out(&self) -> Result<Outcome, CliError> {
        let (round, marks) = self.round()?;
        let rated = self.rated_flow()?;
        let doubts = self.doubts()?;
        let risk = match self.risk {
            Some(risk) => known("risk", Risk::new(risk))?,
            None => Risk::default(),
        };
        let profile = self.profile()?;
        let nominal = rated.map(|rated| rated.flow());
        let usual = known("limit", LimitProfile::named("mean-10"))?;
        let limit = match profile {
            Choice::Named(profile) => profile.about_mean(nominal).unwrap_or_else(|| usual.limit(None)),
            Choice::Own(limit) => limit,
        };
        let holds = self.cup_holds.as_deref().map(|text| super::input::positive::<Volume>("cup_holds", text));
        let cup = Cup { marks: Some(marks), holds: holds.transpose()? };
        let at_pressure = rated.map(|rated| self.new_tip(rated)).transpose()?;
        let expected = at_pressure.as_ref().map(|new| known("pressure", new.flow())).transpose()?;
        let findings = known("", round.look_for_absurd(&cup, expected, self.doubtful))
            .map_err(|error| error.unless_kept("keep_doubtful-option"))?;
        let usual_new = known("limit", LimitProfile::named("new-10"))?.limit(nominal);
        let new_limit = match profile {
            Choice::Named(profile) => profile.over_new(nominal).unwrap_or(usual_new),
            Choice::Own(_) => usual_new,
        };
        self.check_order(&round)?;
        let model = Model { doubts, risk, order: self.order.clone(), ..Model::default() };
        let ways = Settles { cup_holds: cup.holds, ..Settles::default() };
        let new = at_pressure.as_ref().map(|new| (new, &new_limit));
        let mut verdicts = known("readings", judge_catches(&round, &limit, new, &model, &ways))?;
        verdicts.findings.extend(findings);
        Ok(Outcome { round, verdicts })
    }

    /// The order must name tips that were caught, each as often as it was.
    pub fn check_order(&self, round: &Round) -> Result<(), CliError> {
        if self.order.is_empty() {
            return Ok(());
        }
        for tip in &round.tips {
            let named = self.order.iter().filter(|number| **number == tip.number).count();
            if named != tip.catches.len() {
                let told = Args::new()
                    .with("tip", Arg::Count(tip.number))
                    .with("named", Arg::Text(named.to_string()))
                    .with("caught", Arg::Text(tip.catches.len().to_string()));
                return Err(CliError::usage("order_count", told).at("order"));
            }
        }
        match self.order.iter().find(|number| !round.tips.iter().any(|tip| tip.number == **number)) {
            Some(number) => {
                let told = Args::new()
                    .with("tip", Arg::Count(*number))
                    .with("tips", Arg::Text(round.tips.len().to_string()));
                Err(CliError::usage("order_no_such_tip", told).at("order"))
            }
            None => Ok(()),
        }
    }

    /// The errors of reading and timing.
    pub fn doubts(&self) -> Result<Uncertainties, CliError> {
        let mut doubts = Uncertainties::default();
        if let Some(text) = &self.timer {
            doubts.timer = known("timer", Time::parse(text))?;
        }
        let [cup_scale, watch, handling] = &self.shares;
        for (name, given, doubt) in [
            ("cup_scale", cup_scale, &mut doubts.cup_scale),
            ("watch", watch, &mut doubts.watch),
            ("handling", handling, &mut doubts.handling),
        ] {
            if let Some(text) = given {
                *doubt = known(name, units::percent(text))?;
                if *doubt >= 0.5 {
                    let told = Args::new().with("given", Arg::Text(text.clone()));
                    return Err(CliError::usage("doubt_too_large", told).at(name));
                }
            }
        }
        Ok(doubts)
    }

    fn profile(&self) -> Result<Choice, CliError> {
        let Some(text) = &self.limit else {
            return known("limit", LimitProfile::named("mean-10")).map(Choice::Named);
        };
        if text.contains('%') {
            let share = known("limit", units::percent(text))?;
            return known("limit", Limit::own(share)).map(Choice::Own);
        }
        known("limit", LimitProfile::named(text)).map(Choice::Named)
    }

    fn new_tip(&self, rated: RatedFlow) -> Result<NewTip, CliError> {
        let pressure = match &self.pressure {
            Some(text) => super::input::positive::<Pressure>("pressure", text)?,
            None => rated.pressure(),
        };
        // A gauge read to 2 psi, its error taken as even within half a mark: our assumption for a good small gauge.
        let pressure_doubt = Pressure::psi(2.0 / 12.0_f64.sqrt());
        Ok(NewTip::Rated { rated, pressure, pressure_doubt })
    }
}

/// A named limit, or the user's own.
#[derive(Clone, Copy)]
enum Choice {
    Named(LimitProfile),
    Own(Limit),
}

fn catch_of(
    number: u32,
    given: &GivenReading,
    time: Time,
    marks: &Marks,
    unit: Option<&Unit>,
) -> Result<Catch, CliError> {
    let at = || Place::Tip(number);
    let caught = known(at(), Caught::parse(&given.reading, unit))?;
    let own_time = given.time.as_deref().map(|text| positive_time(at(), text)).transpose()?;
    let own_marks = given.step.as_deref().map(|text| self::marks(at(), text)).transpose()?;
    // Marks of a cup say nothing about a scale; a weighed catch needs its own.
    let usual = (marks.step().dimension() == caught.written().dimension()).then(|| marks.clone());
    if usual.is_none() && own_marks.is_none() {
        let told = Args::new()
            .with("given", Arg::Text(given.reading.clone()))
            .with("marks", Arg::Text(marks.step().text().to_string()));
        return Err(CliError::usage("step_of_scale", told).at(at()));
    }
    known(at(), Catch::new(caught, own_marks.or(usual), own_time.unwrap_or(time), given.run))
}

/// Marks: a volume, or a weight for a scale.
fn marks(at: impl Into<Place>, text: &str) -> Result<Marks, CliError> {
    let at = at.into();
    let step = match units::quantity(text, Dimension::Volume) {
        Err(error) if error.code() == "quantity_wrong_unit" => {
            known(at.clone(), Caught::parse(text, None))?.written().clone()
        }
        other => known(at.clone(), other)?,
    };
    known(at, Marks::every(step))
}

fn positive_time(at: impl Into<Place>, text: &str) -> Result<Time, CliError> {
    let time: Time = super::input::positive(at, text)?;
    debug_assert!(time.is_positive());
    Ok(time)
}
