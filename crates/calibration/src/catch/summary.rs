//! The plain catch test: mean, spread, each tip's deviation; plugged and uncaught tips set aside and said.

use std::collections::BTreeMap;

use sprayer::GroupId;
use units::{Flow, Quantity, Verdict};

use super::conformity::Risk;
use super::error::CatchError;
use super::limit::Limit;
use super::measured::{DeviationRange, Uncertainties, flow_of, measured};
use super::round::{Round, TipCatches};

/// A tip that gives less than this share of its group's median is plugged: set aside, said so, not in the mean.
/// One plugged tip of 7 would make six sound ones read 16.7 % high. Our own rule.
pub const PLUGGED_BELOW: f64 = 0.05;

/// The most tips taken. Our own bound: the largest boom we know of has 216.
const MOST_TIPS: usize = 1000;

/// What a tip does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TipState {
    /// It runs and was caught.
    Runs,
    /// It gives next to nothing.
    Plugged,
    /// No cup was held under it.
    NotCaught,
}

/// What the round says about one tip.
#[derive(Clone, Debug, PartialEq)]
pub struct TipSummary {
    /// Its number from the left.
    pub number: u32,
    /// Its group.
    pub group: GroupId,
    /// Its section, counted from 0.
    pub section: u16,
    /// What it does.
    pub state: TipState,
    /// Its flow, where it was caught.
    pub flow: Option<Flow>,
    /// How far off the mean of the tips that run, with the range the readings alone give; for a tip that runs.
    pub measured: Option<DeviationRange>,
    /// The plain handbook rule on the readings as they stand.
    pub as_read: Option<Verdict>,
    /// The verdict at the risk taken; a plugged tip is outside. By the readings alone (JCGM 106:2012) until the boom
    /// has spoken too ([`crate::verdict::settled`]).
    pub verdict: Option<Verdict>,
    /// What is most likely, once the boom has spoken.
    pub likely: Option<Likely>,
}

/// What is most likely of a tip's deviation: as likely over as under it, with its 95 % range; shares of the mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Likely {
    /// The deviation.
    pub deviation: f64,
    /// The low end of the range.
    pub low: f64,
    /// The high end.
    pub high: f64,
}

impl TipSummary {
    /// What is most likely of its deviation; by the readings alone until the boom has spoken.
    #[must_use]
    pub fn most_likely(&self) -> Option<Likely> {
        let alone =
            |range: DeviationRange| Likely { deviation: range.deviation, low: range.low, high: range.high };
        self.likely.or(self.measured.map(alone))
    }
}

/// What the round says about one group of tips meant to be alike.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupSummary {
    /// Which group.
    pub group: GroupId,
    /// The mean flow of the tips that run; `None` where none does.
    pub mean: Option<Flow>,
    /// The standard deviation of the tips that run (n − 1) as a percentage of the mean, with two tips or more.
    pub cv_percent: Option<f64>,
    /// The tips that run.
    pub running: Vec<u32>,
    /// The tips that are plugged.
    pub plugged: Vec<u32>,
    /// The tips that were not caught.
    pub uncaught: Vec<u32>,
}

/// What a round says.
#[derive(Clone, Debug, PartialEq)]
pub struct RoundSummary {
    /// The groups.
    pub groups: Vec<GroupSummary>,
    /// The tips from left to right.
    pub tips: Vec<TipSummary>,
}

/// Returns what a round of catches says, tip by tip and group by group.
///
/// *Units*: any, mixed; a weight becomes a volume by the round's density.
///
/// *Assumptions*: the plain rule of the handbooks. A tip's several cups of one round are added up, volume over
/// time. The mean is the arithmetic mean of the flows of the tips that run and were caught.
///
/// *Errors*: nothing caught; more than 1,000 tips.
///
/// *Source*: Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration, 2016; CV as the sample standard
/// deviation over the mean (n − 1).
///
/// *Example*: 16, 16, 18, 14 fl oz: mean 16, the third +12.5 %, the fourth −12.5 %, CV 10.2 %.
pub fn summarise(
    round: &Round,
    limit: &Limit,
    doubts: &Uncertainties,
    risk: Risk,
) -> Result<RoundSummary, CatchError> {
    if round.tips.len() > MOST_TIPS {
        return Err(CatchError::TooMany { tips: round.tips.len() });
    }
    if round.tips.iter().all(|tip| tip.catches.is_empty()) {
        return Err(CatchError::NothingCaught);
    }
    let mut by_group: BTreeMap<GroupId, Vec<&TipCatches>> = BTreeMap::new();
    for tip in &round.tips {
        by_group.entry(tip.group).or_default().push(tip);
    }
    let mut groups = Vec::new();
    let mut known: BTreeMap<u32, (TipState, Option<DeviationRange>)> = BTreeMap::new();
    for (group, tips) in by_group {
        let (caught, uncaught): (Vec<&TipCatches>, Vec<&TipCatches>) =
            tips.into_iter().partition(|tip| !tip.catches.is_empty());
        let line = plugged_line(&caught, round);
        let (running, plugged): (Vec<&TipCatches>, Vec<&TipCatches>) =
            caught.into_iter().partition(|tip| flow_of(tip, round.density) > line);
        let ranges = measured(&running, round.density, doubts);
        known.extend(
            running.iter().zip(ranges).map(|(tip, range)| (tip.number, (TipState::Runs, Some(range)))),
        );
        known.extend(plugged.iter().map(|tip| (tip.number, (TipState::Plugged, None))));
        let flows: Vec<f64> = running.iter().map(|tip| flow_of(tip, round.density)).collect();
        let numbers = |tips: &[&TipCatches]| tips.iter().map(|tip| tip.number).collect();
        groups.push(GroupSummary {
            group,
            mean: mean(&flows).map(Flow::from_si),
            cv_percent: cv_percent(&flows),
            running: numbers(&running),
            plugged: numbers(&plugged),
            uncaught: numbers(&uncaught),
        });
    }
    let tips = round.tips.iter().map(|tip| tip_summary(tip, round, &known, limit, risk)).collect();
    Ok(RoundSummary { groups, tips })
}

fn tip_summary(
    tip: &TipCatches,
    round: &Round,
    known: &BTreeMap<u32, (TipState, Option<DeviationRange>)>,
    limit: &Limit,
    risk: Risk,
) -> TipSummary {
    let (state, measured) = known.get(&tip.number).copied().unwrap_or((TipState::NotCaught, None));
    let flow = (state != TipState::NotCaught).then(|| Flow::from_si(flow_of(tip, round.density)));
    TipSummary {
        number: tip.number,
        group: tip.group,
        section: tip.section,
        state,
        flow,
        measured,
        as_read: measured.map(|range| limit.as_read(range.deviation)),
        verdict: match state {
            TipState::Plugged => Some(Verdict::Outside),
            _ => measured.map(|range| risk.verdict(range.probability_within(limit))),
        },
        likely: None,
    }
}

/// The flow at and below which a tip is plugged: a share of the median of those that give anything at all.
pub(super) fn plugged_line(caught: &[&TipCatches], round: &Round) -> f64 {
    let mut flows: Vec<f64> =
        caught.iter().map(|tip| flow_of(tip, round.density)).filter(|flow| *flow > 0.0).collect();
    flows.sort_by(f64::total_cmp);
    median(&flows).map_or(0.0, |median| median * PLUGGED_BELOW)
}

/// The middle of sorted values.
pub(crate) fn median(sorted: &[f64]) -> Option<f64> {
    let middle = sorted.len() / 2;
    match sorted {
        [] => None,
        _ if sorted.len() % 2 == 1 => Some(sorted[middle]),
        _ => Some(f64::midpoint(sorted[middle - 1], sorted[middle])),
    }
}

pub(crate) fn mean(values: &[f64]) -> Option<f64> {
    if values.is_empty() { None } else { Some(values.iter().sum::<f64>() / values.len() as f64) }
}

pub(crate) fn cv_percent(values: &[f64]) -> Option<f64> {
    let centre = mean(values).filter(|centre| *centre > 0.0 && values.len() > 1)?;
    let squares: f64 = values.iter().map(|value| (value - centre) * (value - centre)).sum();
    Some(100.0 * (squares / (values.len() - 1) as f64).sqrt() / centre)
}
