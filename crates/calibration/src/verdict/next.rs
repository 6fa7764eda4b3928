//! Which cup to catch next: the one that settles most for the minutes it takes; and when to stop.

use units::{Quantity, Time, Verdict, Volume};

use super::judge::{Judged, Model};
use super::likelihood::Cup;
use crate::catch::{Limit, Round, RoundSummary};

/// What could be done to settle what is open.
#[derive(Clone, Debug, PartialEq)]
pub struct Settles {
    /// How much a cup holds, where that is known.
    pub cup_holds: Option<Volume>,
    /// Finer marks the cup has on its other side, where it has them.
    pub finer: Option<Volume>,
    /// The walking, pouring and reading that each cup takes beside its time.
    pub handling: Time,
    /// What a minute must settle to be worth it, in expected wrong and undecided calls.
    pub worth: f64,
}

impl Default for Settles {
    /// 20 s to walk, pour and read (our assumption); the millilitre side of a cup has marks every 10 mL (common
    /// practice); a minute must settle a hundredth of a call (our own choice: a twentieth of what an open tip costs).
    fn default() -> Self {
        Self {
            cup_holds: None,
            finer: Some(Volume::millilitres(10.0)),
            handling: Time::seconds(20.0),
            worth: 0.01,
        }
    }
}

/// Cups to catch next, all alike.
#[derive(Clone, Debug, PartialEq)]
pub struct NextCatch {
    /// Under which tips.
    pub tips: Vec<u32>,
    /// For how long.
    pub time: Time,
    /// Read to which marks.
    pub step: Volume,
    /// Whether those are finer marks than the round's.
    pub finer: bool,
    /// How many of these tips are open now.
    pub open: u32,
    /// The wrong and undecided calls this takes away, on average.
    pub settles: f64,
    /// The minutes it takes.
    pub minutes: f64,
}

/// Returns the cups worth catching next, the most settling first; none when the next cup costs more than it settles.
///
/// *Units*: `settles` counts calls: a wrong verdict as one, an open tip as the risk taken (0.05).
///
/// *Assumptions*: one more cup under a tip, its reading as likely as what is known now makes it; cups under different
/// tips are looked at one by one. Times of 30, 60, 90 and 120 s are tried, as far as the cup holds them (where that is
/// not known, twice what was caught).
///
/// *Source*: expected value of one more observation (preposterior analysis); physics: a few chosen repeats do most of the
/// work of repeating all.
#[must_use]
pub fn next_catches(
    round: &Round,
    summary: &RoundSummary,
    judged: &Judged,
    limit: &Limit,
    model: &Model,
    ways: &Settles,
) -> Vec<NextCatch> {
    let mut found: Vec<NextCatch> = Vec::new();
    for tip in &judged.tips {
        let Some(mean) = summary
            .tips
            .iter()
            .find(|other| other.number == tip.number)
            .and_then(|other| summary.groups.iter().find(|group| group.group == other.group))
            .and_then(|group| group.mean)
        else {
            continue;
        };
        let now = loss(tip.probability_within, model);
        // A tip called outside is mended and caught again in any case.
        if now < LEAST || tip.verdict == Verdict::Outside {
            continue;
        }
        let points = thinned(judged, tip.number);
        let mut best: Option<NextCatch> = None;
        for (time, step, finer) in tries(round, mean.si() * (1.0 + tip.deviation), ways) {
            let minutes = (time + ways.handling).as_minutes();
            let settles = now - after(&points, mean.si(), time, step, limit, model);
            let better = best.as_ref().is_none_or(|best| settles / minutes > best.settles / best.minutes);
            if settles / minutes >= ways.worth && better {
                let open = u32::from(tip.verdict == Verdict::CannotTell);
                best = Some(NextCatch { tips: vec![tip.number], time, step, finer, open, settles, minutes });
            }
        }
        found.extend(best);
    }
    together(found)
}

/// A tip that costs less than this is left alone. Our own choice, a tenth of what an open tip costs.
const LEAST: f64 = 0.005;

/// What it costs to leave a tip as it is: a wrong call, or an open one.
fn loss(probability_within: f64, model: &Model) -> f64 {
    probability_within.min(1.0 - probability_within).min(model.risk.share())
}

/// The posterior in steps of half a percent: enough to weigh a cup by.
fn thinned(judged: &Judged, number: u32) -> Vec<(f64, f64)> {
    let mut points: Vec<(f64, f64, f64)> = Vec::new();
    for (deviation, weight) in
        judged.deviations.get(&number).into_iter().flat_map(super::tips::Deviations::points)
    {
        match points.last_mut() {
            Some(last) if deviation - last.2 < 0.005 => {
                last.0 += weight * deviation;
                last.1 += weight;
            }
            _ => points.push((weight * deviation, weight, deviation)),
        }
    }
    points.into_iter().map(|(moment, weight, _)| (moment / weight, weight)).collect()
}

/// Times and marks to try, as far as the cup holds what comes out.
fn tries(round: &Round, flow: f64, ways: &Settles) -> Vec<(Time, Volume, bool)> {
    let catches = || round.tips.iter().flat_map(|tip| &tip.catches);
    let step = catches().map(|catch| catch.step(round.density)).fold(Volume::ZERO, Volume::max);
    let most = catches().map(|catch| catch.volume(round.density)).fold(Volume::ZERO, Volume::max);
    let room = ways.cup_holds.unwrap_or(most * 2.0);
    let mut tries = Vec::new();
    for seconds in [30.0, 60.0, 90.0, 120.0] {
        let time = Time::seconds(seconds);
        if Volume::from_si(flow * time.si()) > room {
            continue;
        }
        tries.push((time, step, false));
        tries.extend(ways.finer.filter(|finer| *finer < step * 0.75).map(|finer| (time, finer, true)));
    }
    tries
}

/// What the tip costs after one more cup, on average over what it may read.
fn after(points: &[(f64, f64)], mean: f64, time: Time, step: Volume, limit: &Limit, model: &Model) -> f64 {
    let total: f64 = points.iter().map(|(_, weight)| weight).sum();
    let ends = core::f64::consts::SQRT_2 * model.doubts.timer.si();
    let mut sum = 0.0;
    let mut expected = 0.0;
    for turn in 0..TRIES {
        let true_deviation = quantile(points, total, (f64::from(turn) + 0.5) / f64::from(TRIES));
        let volume = mean * (1.0 + true_deviation) * time.si();
        let read = if step.si() > 0.0 { (volume / step.si()).round() * step.si() } else { volume };
        let cup = Cup {
            low: read - step.si() / 2.0,
            high: read + step.si() / 2.0,
            step: step.si(),
            time: time.si(),
            ends,
            handling: model.doubts.handling,
        };
        let (mut all, mut within) = (0.0, 0.0);
        for (deviation, weight) in points {
            let likely = weight * cup.probability(mean * (1.0 + deviation));
            all += likely;
            if *deviation >= -limit.below() && *deviation <= limit.above() {
                within += likely;
            }
        }
        if all > 0.0 {
            expected += loss(within / all, model);
            sum += 1.0;
        }
    }
    if sum > 0.0 { expected / sum } else { 0.0 }
}

/// How many readings are tried. Our own choice.
const TRIES: u32 = 11;

fn quantile(points: &[(f64, f64)], total: f64, share: f64) -> f64 {
    let mut sum = 0.0;
    for (deviation, weight) in points {
        sum += weight;
        if sum >= share * total {
            return *deviation;
        }
    }
    points.last().map_or(0.0, |(deviation, _)| *deviation)
}

/// Tips that want the same cup are caught in one go.
fn together(found: Vec<NextCatch>) -> Vec<NextCatch> {
    let mut groups: Vec<NextCatch> = Vec::new();
    for one in found {
        let alike = |group: &&mut NextCatch| group.time == one.time && group.step == one.step;
        if let Some(group) = groups.iter_mut().find(alike) {
            group.tips.extend(one.tips);
            group.open += one.open;
            group.settles += one.settles;
            group.minutes += one.minutes;
        } else {
            groups.push(one);
        }
    }
    groups.sort_by(|one, other| (other.settles / other.minutes).total_cmp(&(one.settles / one.minutes)));
    groups
}
