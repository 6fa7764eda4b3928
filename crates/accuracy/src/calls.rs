//! The three ways to judge a draw, and what each says of every tip beside the truth.

use calibration::catch::{Risk, RoundSummary, TipState, summarise};
use calibration::verdict::{Judged, Model, TipJudgement, judge_round};
use units::Verdict;

use crate::draw::{Draw, DrawError, LIMIT};

/// A way to judge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// The plain handbook rule on the readings as they stand.
    Plain,
    /// What the readings alone allow.
    Measured,
    /// What the readings and the boom say.
    Boom,
}

/// What one way says of one tip, and the truth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Call {
    /// The tip's number.
    pub tip: u32,
    /// The true deviation, a share.
    pub truth: f64,
    /// The verdict.
    pub verdict: Verdict,
    /// The probability of being within; 0 or 1 by the plain rule.
    pub probability_within: f64,
    /// The 95 % range, where the way gives one.
    pub range: Option<(f64, f64)>,
}

impl Call {
    /// What would be right.
    #[must_use]
    pub fn right(&self) -> Verdict {
        // A slack of rounding, so that a tip made to be exactly on the limit counts as within.
        if self.truth.abs() <= LIMIT + 1e-12 { Verdict::Within } else { Verdict::Outside }
    }
}

/// Returns what a way says of every caught tip, from left to right.
///
/// *Assumptions*: a tip that is set aside as plugged is called outside by every way.
///
/// *Errors*: those of the catch test; a draw has none.
pub fn judge(draw: &Draw, way: Way) -> Result<Vec<Call>, DrawError> {
    let summary = summary(draw)?;
    match way {
        Way::Plain | Way::Measured => Ok(by_readings(draw, &summary, way)),
        Way::Boom => Ok(by_boom(draw, &summary, &judged(draw, &summary)?)),
    }
}

/// The plain summary of a draw.
///
/// *Errors*: those of the catch test.
pub fn summary(draw: &Draw) -> Result<RoundSummary, DrawError> {
    Ok(summarise(&draw.round, &Draw::limit()?, &draw.doubts, Risk::default())?)
}

/// The inference on a draw.
///
/// *Errors*: none in practice.
pub fn judged(draw: &Draw, summary: &RoundSummary) -> Result<Judged, DrawError> {
    Ok(judge_round(&draw.round, summary, &Draw::limit()?, &model(draw)))
}

/// What the inference is told.
#[must_use]
pub fn model(draw: &Draw) -> Model {
    Model { doubts: draw.doubts, order: draw.order.clone(), ..Model::default() }
}

/// What the inference calls, from what it judged.
#[must_use]
pub fn by_boom(draw: &Draw, summary: &RoundSummary, judged: &Judged) -> Vec<Call> {
    let of = |number: u32| judged.tips.iter().find(|tip| tip.number == number);
    let calls = summary.tips.iter().zip(&draw.deviations).filter_map(|(tip, truth)| match tip.state {
        TipState::NotCaught => None,
        TipState::Plugged => Some(plugged(tip.number, *truth)),
        TipState::Runs => of(tip.number).map(|judged: &TipJudgement| Call {
            tip: tip.number,
            truth: *truth,
            verdict: judged.verdict,
            probability_within: judged.probability_within,
            range: Some((judged.low, judged.high)),
        }),
    });
    calls.collect()
}

/// What a way that looks at the readings alone calls ([`Way::Boom`] is taken as [`Way::Measured`]).
#[must_use]
pub fn by_readings(draw: &Draw, summary: &RoundSummary, way: Way) -> Vec<Call> {
    let limit = Draw::limit().ok();
    let calls = summary.tips.iter().zip(&draw.deviations).filter_map(|(tip, truth)| {
        let measured = match (tip.state, tip.measured) {
            (TipState::NotCaught, _) => return None,
            (TipState::Plugged, _) | (_, None) => return Some(plugged(tip.number, *truth)),
            (TipState::Runs, Some(measured)) => measured,
        };
        let as_read = tip.as_read.unwrap_or(Verdict::Outside);
        let (verdict, probability_within, range) = match way {
            Way::Plain => (as_read, if as_read == Verdict::Within { 1.0 } else { 0.0 }, None),
            _ => (
                tip.verdict.unwrap_or(Verdict::CannotTell),
                limit.as_ref().map_or(0.0, |limit| measured.probability_within(limit)),
                Some((measured.low, measured.high)),
            ),
        };
        Some(Call { tip: tip.number, truth: *truth, verdict, probability_within, range })
    });
    calls.collect()
}

fn plugged(tip: u32, truth: f64) -> Call {
    Call { tip, truth, verdict: Verdict::Outside, probability_within: 0.0, range: None }
}
