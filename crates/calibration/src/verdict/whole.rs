//! A round of catches judged as a whole: what was measured, what is most likely, what to do, what to catch next.

use units::{Finding, Working};

use super::judge::{Judged, Model, judge_round, settled};
use super::new::{NewJudgement, judge_new};
use super::next::{NextCatch, Settles, next_catches};
use crate::catch::{
    Advice, AgainstNew, CatchError, Limit, NewTip, Round, RoundSummary, SET_SHARE, advise, against_new,
    summarise, tell, working,
};

/// Everything there is to say about one round.
#[derive(Clone, Debug)]
pub struct CatchVerdicts {
    /// How far a tip may be off the mean.
    pub limit: Limit,
    /// What the round says, each tip judged by its cups and the boom together.
    pub summary: RoundSummary,
    /// How likely each tip is within the limit.
    pub judged: Judged,
    /// Each tip against new as measured, with the verdict that the boom settles; empty where new is not known.
    pub new: Vec<AgainstNew>,
    /// Each tip against new, by its cups and the boom together.
    pub new_judged: Vec<NewJudgement>,
    /// What to do about tips.
    pub advice: Advice,
    /// The cups worth catching next; none when that would cost more than it settles.
    pub next: Vec<NextCatch>,
    /// What is worth telling.
    pub findings: Vec<Finding>,
    /// How it was reached.
    pub working: Option<Working>,
}

/// Returns everything there is to say about a round.
///
/// *Units*, *assumptions* and *source*: those of [`judge_round`], [`judge_new`] and [`next_catches`]. `new` is a new tip
/// with the limit over it.
///
/// *Errors*: nothing caught, more than 1,000 tips, a new tip at a pressure of nothing.
///
/// *Example*: twelve tips of 14 and 15 fl oz and one of 17: the one is replaced, the rest are in order.
pub fn judge_catches(
    round: &Round,
    limit: &Limit,
    new: Option<(&NewTip, &Limit)>,
    model: &Model,
    ways: &Settles,
) -> Result<CatchVerdicts, CatchError> {
    let plain = summarise(round, limit, &model.doubts, model.risk)?;
    let judged = judge_round(round, &plain, limit, model);
    let (new, new_judged) = match new {
        Some((new, limit)) => {
            let mut measured = against_new(round, new, limit, &model.doubts, model.risk)?;
            let likely = judge_new(&judged, new, limit, model)?;
            for tip in &mut measured {
                if let Some(likely) = likely.iter().find(|likely| likely.number == tip.number) {
                    tip.verdict = likely.verdict;
                }
            }
            (measured, likely)
        }
        None => (Vec::new(), Vec::new()),
    };
    let next = next_catches(round, &plain, &judged, limit, model, ways);
    let summary = settled(&plain, &judged);
    let advice = advise(&summary, &new, SET_SHARE);
    let findings = tell(round, &summary, &new, &advice, limit, &next);
    let working = working(round, &summary, limit, &model.doubts, model.risk);
    Ok(CatchVerdicts { limit: *limit, summary, judged, new, new_judged, advice, next, findings, working })
}
