//! Whether one odd tip hides that the others agree: with it and without it, both means are told.

use units::{Flow, Quantity};

use super::limit::Limit;
use super::summary::{GroupSummary, RoundSummary, TipSummary, cv_percent, mean};

/// A tip that moves the mean by more than this share is worth setting aside for a second look. Our own rule.
const MOVES_THE_MEAN: f64 = 0.02;

/// The group with one odd tip set aside.
#[derive(Clone, Debug, PartialEq)]
pub struct Agreement {
    /// The tip set aside.
    pub without: u32,
    /// The mean with it.
    pub mean_with: Flow,
    /// The mean of the others.
    pub mean_without: Flow,
    /// The spread of the others, in percent.
    pub cv_percent: Option<f64>,
    /// The others that are beyond the limit of their own mean, as read.
    pub still_off: Vec<u32>,
}

/// Returns the group without the tip that moves its mean most, where that is by more than 2 %.
///
/// *Assumptions*: at least three tips run; of two, neither can be called the odd one.
#[must_use]
pub fn without_the_odd_one(summary: &RoundSummary, group: &GroupSummary, limit: &Limit) -> Option<Agreement> {
    let tips: Vec<(&TipSummary, f64)> = summary
        .tips
        .iter()
        .filter(|tip| group.running.contains(&tip.number))
        .filter_map(|tip| tip.flow.map(|flow| (tip, flow.si())))
        .collect();
    let with = mean(&tips.iter().map(|(_, flow)| *flow).collect::<Vec<f64>>())?;
    if tips.len() < 3 {
        return None;
    }
    let (odd, _) = tips.iter().map(|(tip, flow)| (tip.number, (flow - with).abs())).fold(
        None,
        |most: Option<(u32, f64)>, next| match most {
            Some(most) if most.1 >= next.1 => Some(most),
            _ => Some(next),
        },
    )?;
    let others: Vec<(u32, f64)> =
        tips.iter().filter(|(tip, _)| tip.number != odd).map(|(tip, flow)| (tip.number, *flow)).collect();
    let flows: Vec<f64> = others.iter().map(|(_, flow)| *flow).collect();
    let without = mean(&flows)?;
    if (without / with - 1.0).abs() <= MOVES_THE_MEAN {
        return None;
    }
    let still_off = others
        .iter()
        .filter(|(_, flow)| limit.as_read(flow / without - 1.0) == units::Verdict::Outside)
        .map(|(number, _)| *number)
        .collect();
    Some(Agreement {
        without: odd,
        mean_with: Flow::from_si(with),
        mean_without: Flow::from_si(without),
        cv_percent: cv_percent(&flows),
        still_off,
    })
}
