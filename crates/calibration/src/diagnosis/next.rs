//! What to look at next: the check that settles most for the minutes it takes; and when to stop.

use units::{Quantity, Time};

use super::answer::{Diagnosis, TipDiagnosis};
use super::cause::Cause;
use super::infer::COARSE;
use super::model::DiagnosisModel;
use super::offsets::STEP;
use super::seen::Seen;
use crate::catch::{Round, TipCatches};

/// A check that can be made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CheckKind {
    /// Catch tips once more, same cup and time.
    CatchAgain,
    /// Look at the size and colour of tips.
    LookAtTip,
    /// Read the pressure at a tip.
    ReadPressure,
    /// Open a section's strainer.
    OpenStrainer,
}

impl CheckKind {
    /// The stable word in JSON, and its name among the sentences.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::CatchAgain => "catch_again",
            Self::LookAtTip => "look_at_tip",
            Self::ReadPressure => "read_pressure",
            Self::OpenStrainer => "open_strainer",
        }
    }
}

/// A check worth making.
#[derive(Clone, Debug, PartialEq)]
pub struct NextCheck {
    /// What.
    pub kind: CheckKind,
    /// At which tips.
    pub tips: Vec<u32>,
    /// In which section, by its place from 0, where it is about one.
    pub section: Option<usize>,
    /// The wrong and undecided answers this takes away, on average.
    pub settles: f64,
    /// The minutes it takes.
    pub minutes: f64,
}

/// What checks cost, and from when on they are worth it.
#[derive(Clone, Debug, PartialEq)]
pub struct Checking {
    /// Walking, pouring and reading for each cup, beside its time.
    pub cup: Time,
    /// Looking at one tip.
    pub look: Time,
    /// Reading the pressure at a tip.
    pub pressure: Time,
    /// Opening a strainer, the pressure let off and the tank valve shut first.
    pub strainer: Time,
    /// What a minute must settle to be worth it.
    pub worth: f64,
    /// At most so many tips for one check: what one remembers walking there.
    pub most_tips: usize,
}

impl Default for Checking {
    /// 20 s a cup, 30 s a look, 4 min to fit a gauge at a tip, 6 min for a strainer: our assumptions. A minute must settle
    /// a hundredth of a call, as for the next cup of a catch test (our own choice).
    fn default() -> Self {
        Self {
            cup: Time::seconds(20.0),
            look: Time::seconds(30.0),
            pressure: Time::seconds(240.0),
            strainer: Time::seconds(360.0),
            worth: 0.01,
            most_tips: MOST_TIPS,
        }
    }
}

/// How often a pressure reading tells a restricted section, and a free one, for what it is. Our assumption: a gauge
/// good to 3 % against 8 % of pressure.
const PRESSURE_TELLS: (f64, f64) = (0.95, 0.95);
/// How often the strainer of a restricted section is dirty, and that of a free one clean. Our assumption: valves and
/// hoses restrict too, and many strainers are a little dirty.
const STRAINER_TELLS: (f64, f64) = (0.80, 0.85);
/// How often a gauge at a tip tells why a whole boom is high or low. Our assumption: the gauge is one of three causes.
const GAUGE_TELLS: f64 = 0.5;
/// A boom off by more than this is worth asking about. Our own choice, as in `patterns`.
const BOOM_OFF: f64 = 0.04;
/// Tips settled better than this are not looked at. Our own choice.
const LEAST: f64 = 0.005;
/// Checks that settle less than this share of the best for their minutes are not named beside it. Our own choice.
const BESIDE_THE_BEST: f64 = 0.1;
/// At most so many tips for one check. Our own choice.
const MOST_TIPS: usize = 6;

/// Returns the checks worth making, the best first; none when the next one costs more than it settles.
///
/// *Units*: `settles` counts answers: a wrong cause of a tip as one, a section wrongly called as one.
///
/// *Assumptions*: each check by itself; a further cup is read as likely as what is known now makes it; how often looking,
/// gauge and strainer tell is our assumption.
///
/// *Source*: expected value of one more observation (preposterior analysis).
#[must_use]
pub fn next_checks(
    round: &Round,
    found: &Diagnosis,
    model: &DiagnosisModel,
    costs: &Checking,
) -> Vec<NextCheck> {
    let mut all: Vec<NextCheck> = Vec::new();
    let mut again: Vec<(u32, f64, f64)> = Vec::new();
    let mut looks: Vec<(u32, f64, f64)> = Vec::new();
    for tip in found.tips.iter().filter(|tip| loss(&tip.causes) > LEAST) {
        let Some(cups) = round.tips.iter().find(|other| other.number == tip.number) else { continue };
        if let Some((settles, time)) = one_more_cup(tip, cups, round, model) {
            again.push((tip.number, settles, (time + costs.cup).as_seconds() / 60.0));
        }
        looks.push((tip.number, one_look(tip), costs.look.as_seconds() / 60.0));
    }
    all.extend(together(CheckKind::CatchAgain, again, costs));
    all.extend(together(CheckKind::LookAtTip, looks, costs));
    if found.sections.len() > 1 {
        for (place, section) in found.sections.iter().enumerate() {
            let tell = |kind, (sensitive, specific), time: Time| NextCheck {
                kind,
                tips: section.tips.clone(),
                section: Some(place),
                settles: test(section.probability_restricted, sensitive, specific),
                minutes: time.as_seconds() / 60.0,
            };
            all.push(tell(CheckKind::ReadPressure, PRESSURE_TELLS, costs.pressure));
            all.push(tell(CheckKind::OpenStrainer, STRAINER_TELLS, costs.strainer));
        }
    }
    if found.new_flow.is_some() && (found.boom.low > BOOM_OFF || found.boom.high < -BOOM_OFF) {
        all.push(NextCheck {
            kind: CheckKind::ReadPressure,
            tips: Vec::new(),
            section: None,
            settles: GAUGE_TELLS,
            minutes: costs.pressure.as_seconds() / 60.0,
        });
    }
    let rate = |check: &NextCheck| check.settles / check.minutes;
    all.sort_by(|one, other| rate(other).total_cmp(&rate(one)));
    let best = all.first().map_or(0.0, rate);
    all.retain(|check| rate(check) >= costs.worth.max(BESIDE_THE_BEST * best));
    all
}

/// What is wrong on average of the likeliest cause.
fn loss(causes: &[f64; 5]) -> f64 {
    1.0 - causes.iter().copied().fold(0.0, f64::max)
}

/// One check at several tips: those worth it by themselves.
fn together(kind: CheckKind, mut tips: Vec<(u32, f64, f64)>, costs: &Checking) -> Option<NextCheck> {
    tips.retain(|(_, settles, minutes)| settles / minutes >= costs.worth);
    tips.sort_by(|one, other| (other.1 / other.2).total_cmp(&(one.1 / one.2)));
    tips.truncate(costs.most_tips);
    let settles = tips.iter().map(|(_, settles, _)| settles).sum();
    let minutes = tips.iter().map(|(_, _, minutes)| minutes).sum();
    let mut numbers: Vec<u32> = tips.iter().map(|(tip, _, _)| *tip).collect();
    numbers.sort_unstable();
    (!numbers.is_empty()).then_some(NextCheck { kind, tips: numbers, section: None, settles, minutes })
}

/// What a look at the size settles.
fn one_look(tip: &TipDiagnosis) -> f64 {
    let after: f64 = [Seen::RightSize { tip: tip.number }, Seen::WrongSize { tip: tip.number }]
        .map(|seen| {
            let likely = seen.likelihood();
            tip.causes.iter().zip(likely).map(|(chance, likely)| chance * likely).fold(0.0, f64::max)
        })
        .iter()
        .sum();
    (loss(&tip.causes) - (1.0 - after)).max(0.0)
}

/// What a test of a thing settles that is so with a chance.
fn test(chance: f64, sensitive: f64, specific: f64) -> f64 {
    let now = chance.min(1.0 - chance);
    let told_so = (chance * sensitive).min((1.0 - chance) * (1.0 - specific));
    let told_not = (chance * (1.0 - sensitive)).min((1.0 - chance) * specific);
    (now - told_so - told_not).max(0.0)
}

/// What one more cup settles, and how long it is held: readings on the coarse flows, as likely as what is known makes them.
fn one_more_cup(
    tip: &TipDiagnosis,
    cups: &TipCatches,
    round: &Round,
    model: &DiagnosisModel,
) -> Option<(f64, Time)> {
    let last = cups.catches.last()?;
    let (volume, time) = (last.volume(round.density).si(), last.time());
    let marks =
        last.step(round.density).si() / volume.max(last.step(round.density).si()).max(f64::MIN_POSITIVE);
    let ends = core::f64::consts::SQRT_2 * model.doubts.timer.ratio_to(time);
    let own = COARSE as f64 * STEP;
    let handling = model.doubts.handling;
    let spread = (marks * marks / 12.0 + ends * ends + handling * handling + own * own / 12.0).sqrt();
    let misread = model.priors.misread();
    let reach = ((REACH * spread / own).ceil()).min(tip.flows.len() as f64);
    // A few hundred at most.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let reach = reach as usize;
    let kernel: Vec<f64> = (0..=2 * reach)
        .map(|place| {
            let off = (place as f64 - reach as f64) * own / spread;
            libm::exp(-0.5 * off * off)
        })
        .collect();
    let whole: f64 = kernel.iter().sum();
    let mut readings = vec![[0.0; 5]; tip.flows.len()];
    for (flow, weights) in
        tip.flows.iter().enumerate().filter(|(_, weights)| weights.iter().sum::<f64>() > LITTLE)
    {
        for (place, share) in kernel.iter().enumerate() {
            let Some(reading) = (flow + place).checked_sub(reach).and_then(|place| readings.get_mut(place))
            else {
                continue;
            };
            let share = (1.0 - misread) * share / whole;
            reading.iter_mut().zip(weights).for_each(|(sum, weight)| *sum += share * weight);
        }
    }
    // A slip says nothing: it leaves the likeliest cause what it is. A plugged tip shows itself by a cup that stays empty.
    let slip = misread * (1.0 - loss(&tip.causes));
    let plugged = (1.0 - misread) * tip.probability_of(Cause::Plugged);
    let right: f64 = readings.iter().map(|weights| weights.iter().copied().fold(0.0, f64::max)).sum::<f64>()
        + plugged
        + slip;
    Some(((right - (1.0 - loss(&tip.causes))).max(0.0), time))
}

/// Beyond so many standard deviations nothing is left. Our own choice.
const REACH: f64 = 4.0;
/// Flows less likely than this are passed over. Our own choice.
const LITTLE: f64 = 1e-6;
