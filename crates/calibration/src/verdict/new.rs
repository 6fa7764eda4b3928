//! Each tip against a new one: its flow by the cups and the boom, beside what a new tip gives at that pressure.

use sprayer::FlowError;
use units::{Quantity, Verdict};

use super::judge::{Judged, Model};
use super::tips::Deviations;
use crate::catch::{Limit, NewTip};

/// What is most likely of one tip against new.
#[derive(Clone, Debug, PartialEq)]
pub struct NewJudgement {
    /// The tip's number.
    pub number: u32,
    /// How far over a new tip it is, as likely more as less (a share).
    pub deviation: f64,
    /// The low end of the 95 % range.
    pub low: f64,
    /// The high end.
    pub high: f64,
    /// The probability that it is over the limit.
    pub probability_over: f64,
    /// The verdict on the limit.
    pub verdict: Verdict,
}

/// Returns each tip that runs against a new one.
///
/// *Units*: shares of the new tip's flow.
///
/// *Assumptions*: the flow of each tip as the cups and the boom make it likely; the errors of cup scale, watch and gauge are
/// the same for every tip and normal, so no number of tips averages them out.
///
/// *Errors*: a pressure of nothing.
///
/// *Source*: JCGM 106:2012 for the probability; the square-root law for the pressure's part.
///
/// *Example*: a boom worn by 11 % is over 10 % with little more than even odds, however many tips were caught, when the
/// cup's scale may be 1 % off.
pub fn judge_new(
    judged: &Judged,
    new: &NewTip,
    limit: &Limit,
    model: &Model,
) -> Result<Vec<NewJudgement>, FlowError> {
    let reference = new.flow()?.si();
    let shared = new.shared_doubt(&model.doubts);
    let mut found = Vec::new();
    for tip in &judged.tips {
        let (Some(deviations), Some(grid)) =
            (judged.deviations.get(&tip.number), judged.grids.get(&tip.number))
        else {
            continue;
        };
        let mut line = Deviations::nothing(0);
        let (mut over, mut all) = (0.0, 0.0);
        for (node, weight) in deviations.flows.iter().enumerate().filter(|(_, weight)| **weight > 1e-9) {
            let ratio = grid.flow(node) / reference;
            all += weight;
            over += weight * share_over(ratio, shared, 1.0 + limit.above());
            for (off, part) in SHARED_NODES {
                line.put(ratio * (1.0 + off * shared), weight * part);
            }
        }
        let probability_over = if all > 0.0 { over / all } else { 0.0 };
        found.push(NewJudgement {
            number: tip.number,
            deviation: line.quantile(0.5),
            low: line.quantile(0.025),
            high: line.quantile(0.975),
            probability_over,
            verdict: model.risk.verdict(1.0 - probability_over),
        });
    }
    Ok(found)
}

/// The probability that a ratio with a relative standard uncertainty is over a limit.
fn share_over(ratio: f64, relative: f64, limit: f64) -> f64 {
    if relative <= 0.0 {
        return if ratio > limit { 1.0 } else { 0.0 };
    }
    0.5 * libm::erfc((limit - ratio) / (relative * ratio) * core::f64::consts::FRAC_1_SQRT_2)
}

/// Nine values of equal weight that stand for a standard normal law: the middles of nine equal parts, spread to the
/// variance of one. Source: normal quantiles at 1/18, 3/18 … 17/18 (any table of the normal law), times 1.0740.
const SHARED_NODES: [(f64, f64); 9] = [
    (-1.711_1, 1.0 / 9.0),
    (-1.039_0, 1.0 / 9.0),
    (-0.633_1, 1.0 / 9.0),
    (-0.303_1, 1.0 / 9.0),
    (0.0, 1.0 / 9.0),
    (0.303_1, 1.0 / 9.0),
    (0.633_1, 1.0 / 9.0),
    (1.039_0, 1.0 / 9.0),
    (1.711_1, 1.0 / 9.0),
];
