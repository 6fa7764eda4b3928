//! What all tips together put out, with its doubts: the flow that the rate is worked out from.

use std::collections::BTreeMap;

use units::{Flow, Quantity};

use super::measured::{Uncertainties, flow_of, square};
use super::round::{Round, TipCatches};
use super::summary::{RoundSummary, TipState};
use crate::doubt::{Budget, Contribution, DoubtOf, Known, Tie};

/// Whether the errors of reading cups to their marks average out over the boom.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadingErrors {
    /// Each cup's own: they average out.
    Own,
    /// The same for every cup: tips that are alike are all rounded the same way.
    Shared,
}

/// When readings spread by less than this share of a step, rounding to the mark is not noise: alike tips are
/// all rounded alike, and no number of cups averages it out. Source: dither in quantised readings, half a step
/// of spread makes rounding errors nearly independent; common practice in measurement, from memory.
const NOISE_FROM: f64 = 0.5;

/// Returns what all tips of a round put out together.
///
/// *Units*: a flow, with each doubt by its name.
///
/// *Assumptions*: plugged tips count with what they give; a tip that was not caught is taken to give the mean of
/// its group, give or take the spread of that group. Rounding errors are taken as shared where the readings
/// spread by less than half a step ([`ReadingErrors`]); the cup's scale and the watch are the same throughout.
///
/// *Source*: JCGM 100:2008 (GUM) 5.1.2, 5.2.2; held to GTC 1.5.1 by test.
///
/// *Example*: 12 tips of 15 fl oz in 30 s: 12 × 0.234 gal/min = 2.81 gal/min.
#[must_use]
pub fn total_flow(round: &Round, summary: &RoundSummary, doubts: &Uncertainties) -> Option<Known<Flow>> {
    total_flow_with(round, summary, doubts, reading_errors(round, summary))
}

/// As [`total_flow`], with the reading errors taken as told.
#[must_use]
pub fn total_flow_with(
    round: &Round,
    summary: &RoundSummary,
    doubts: &Uncertainties,
    reading: ReadingErrors,
) -> Option<Known<Flow>> {
    let density = round.density;
    let caught: Vec<&TipCatches> = round.tips.iter().filter(|tip| !tip.catches.is_empty()).collect();
    let mut total: f64 = caught.iter().map(|tip| flow_of(tip, density)).sum();
    let mut not_caught = 0.0;
    for group in summary.groups.iter().filter(|group| !group.uncaught.is_empty()) {
        let mean = group.mean?.si();
        let missing = group.uncaught.len() as f64;
        total += mean * missing;
        // The mean of few tips may itself be off; both add to what the missing ones may give.
        let spread = group.cv_percent.unwrap_or(UNKNOWN_SPREAD) / 100.0 * mean;
        let running = group.running.len() as f64;
        not_caught += square(spread) * (missing + missing * missing / running);
    }
    if total <= 0.0 {
        return None;
    }
    let mut marks = 0.0;
    let mut handling = 0.0;
    let mut timing = 0.0;
    let mut runs: BTreeMap<u32, f64> = BTreeMap::new();
    let ends = core::f64::consts::SQRT_2 * doubts.timer.si();
    for tip in &caught {
        let time: f64 = tip.catches.iter().map(|catch| catch.time().si()).sum();
        let step: f64 = tip.catches.iter().map(|catch| catch.step(density).si()).sum();
        let rounding = step / 12.0_f64.sqrt() / time;
        marks += if reading == ReadingErrors::Own { square(rounding) } else { rounding };
        for catch in &tip.catches {
            handling += square(doubts.handling * catch.volume(density).si() / time);
            let late = flow_of(tip, density) * ends / time;
            match catch.run() {
                None => timing += square(late),
                Some(run) => *runs.entry(run).or_insert(0.0) += late,
            }
        }
    }
    timing += runs.values().map(|late| square(*late)).sum::<f64>();
    let marks = if reading == ReadingErrors::Own { marks.sqrt() } else { marks };
    let watch = Contribution { of: DoubtOf::Watch, relative: doubts.watch, exponent: -1.0, tie: Tie::Shared };
    let mut budget = Budget::nothing()
        .own(DoubtOf::CupMarks, marks / total)
        .own(DoubtOf::TimingTheCatch, timing.sqrt() / total)
        .own(DoubtOf::Handling, handling.sqrt() / total)
        .shared(DoubtOf::CupScale, doubts.cup_scale)
        .with(watch);
    if not_caught > 0.0 {
        budget = budget.own(DoubtOf::TipsNotCaught, not_caught.sqrt() / total);
    }
    Some(Known::of(Flow::from_si(total), budget))
}

/// Whether the readings spread enough for rounding to average out.
fn reading_errors(round: &Round, summary: &RoundSummary) -> ReadingErrors {
    let running =
        |number: u32| summary.tips.iter().any(|tip| tip.number == number && tip.state == TipState::Runs);
    let mut in_steps: Vec<f64> = Vec::new();
    for tip in round.tips.iter().filter(|tip| running(tip.number)) {
        for catch in &tip.catches {
            let step = catch.step(round.density).si();
            if step > 0.0 {
                in_steps.push(catch.volume(round.density).si() / step);
            }
        }
    }
    let mean = in_steps.iter().sum::<f64>() / in_steps.len().max(1) as f64;
    let squares: f64 = in_steps.iter().map(|reading| square(reading - mean)).sum();
    let spread = (squares / in_steps.len().saturating_sub(1).max(1) as f64).sqrt();
    if in_steps.len() > 1 && spread >= NOISE_FROM { ReadingErrors::Own } else { ReadingErrors::Shared }
}

/// The spread taken for a group of which one tip was caught, in percent.
/// Source: Transactions of the ASAE 25(2), 1982, 258–260: flow among nozzles varied by 21.9 % on average; taken
/// as 10 %, our assumption for a boom whose tips are meant to be alike.
const UNKNOWN_SPREAD: f64 = 10.0;
