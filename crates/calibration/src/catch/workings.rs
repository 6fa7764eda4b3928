//! How a catch test's numbers were reached: the mean, one tip's deviation with its range, the verdict.

use units::{Amount, Arg, Kind, Working};

use super::conformity::Risk;
use super::limit::Limit;
use super::measured::Uncertainties;
use super::profile::who_sets;
use super::round::Round;
use super::summary::{RoundSummary, TipState};

/// Returns the working of a round's first group, with its furthest tip as the example.
#[must_use]
pub fn working(
    round: &Round,
    summary: &RoundSummary,
    limit: &Limit,
    doubts: &Uncertainties,
    risk: Risk,
) -> Option<Working> {
    let group = summary.groups.first()?;
    let mean = group.mean?;
    let cup = |flow: units::Flow| {
        let amount = Amount::new(flow * round.time, Kind::Cup);
        Arg::Amount(match round.unit.as_ref().filter(|unit| unit.dimension() == units::Dimension::Volume) {
            Some(unit) => amount.shown_in(unit),
            None => amount,
        })
    };
    let count = |tips: usize| Arg::Count(u32::try_from(tips).unwrap_or(u32::MAX));
    let steps = Working::new(
        "catch_mean",
        "mean = what the tips that run gave ÷ how many they are",
        "Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016)",
    )
    .figure("tips that run", count(group.running.len()))
    .figure("plugged, left out", count(group.plugged.len()))
    .figure("not caught", count(group.uncaught.len()))
    .result(cup(mean));
    let runs = summary.tips.iter().filter(|tip| tip.group == group.group && tip.state == TipState::Runs);
    let far = |tip: &&super::summary::TipSummary| tip.measured.map_or(0.0, |range| range.deviation.abs());
    let furthest = runs.max_by(|one, other| far(one).total_cmp(&far(other)))?;
    let range = furthest.measured?;
    let deviation = Working::new(
        "catch_deviation",
        "off = catch ÷ mean − 1, give or take 1.96 × √((marks ÷ √12)² + (√2 × hand on the watch)² + handling²)",
        "JCGM 100:2008 (GUM) 4.3.7, 5.1.2, F.2.2.1; marks, hand and handling each as a share of the catch",
    )
    .figure("tip", Arg::Count(furthest.number))
    .figure("catch", furthest.flow.map_or(Arg::Word { code: "no_catch", english: "none" }, cup))
    .figure("hand on the watch", Arg::Amount(Amount::new(doubts.timer, Kind::Time)))
    .figure("handling", Arg::Percent(100.0 * doubts.handling))
    .figure("lowest", Arg::Deviation(100.0 * range.low))
    .figure("highest", Arg::Deviation(100.0 * range.high))
    .result(Arg::Deviation(100.0 * range.deviation));
    let verdict = Working::new(
        "catch_verdict",
        "within where the chance of being within the limit is at least 1 − risk, outside where it is at most the risk",
        "JCGM 106:2012; the chance takes each reading as an interval and counts how alike the other tips are",
    )
    .figure("limit", Arg::Percent(100.0 * limit.above().min(limit.below())))
    .figure("who sets it", who_sets(limit.source()))
    .figure("risk", Arg::Percent(100.0 * risk.share()))
    .result(furthest.verdict.map_or(Arg::Word { code: "verdict_open", english: "open" }, Arg::Verdict));
    Some(steps.step(deviation).step(verdict))
}
