//! Whether the runs agree: one that stands apart, and there against back.

use super::speed::{Direction, RunSpeed, Timing, count, mean, scatter};
use units::{Length, NORMAL_95, Speed, Time};

/// A run that does not go with the others.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outlier {
    /// The run, from 1.
    pub run: u32,
    /// Its time.
    pub time: Time,
    /// The middle time of the others.
    pub others: Time,
    /// The speed of the drive without it.
    pub without: Speed,
}

/// There against back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BothWays {
    /// The speed of the runs there.
    pub there: Speed,
    /// The speed of the runs back.
    pub back: Speed,
    /// How much longer the runs back took, in percent of the mean of both.
    pub back_longer_percent: f64,
    /// Whether that is more than timing and scatter explain.
    pub difference: Difference,
}

/// Whether a difference is more than chance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Difference {
    /// More than timing and scatter explain, and enough to matter.
    Clear,
    /// Not so.
    NotClear,
}

/// Runs further apart than this share do not agree. Our rule: it is the 5 % to which a rate is wanted.
pub(super) const AGREE_WITHIN: f64 = 0.05;
/// And they must differ by so many times the doubt of the hand. Our rule, the customary three sigma.
const TIMES_THE_DOUBT: f64 = 3.0;
/// Slope and wind that change the time by less than this share do not matter. Our rule.
const MATTERS: f64 = 0.02;

/// The one run that stands apart, with three runs or more.
///
/// Our rule: its time is more than 5 % and more than three times the doubt of hand timing from the middle time of the
/// others, it is further off than any other run, and the others lie within half that distance of each other. A run that
/// is the only one of its direction may be slow because of the slope, so it is left to [`both_ways`]; one that is
/// not must stand apart from the runs of its own direction too.
pub(super) fn outlier(course: Length, runs: &[RunSpeed], timing: &Timing) -> Option<Outlier> {
    if runs.len() < 3 {
        return None;
    }
    let apart = |run: &RunSpeed| (run.time - middle_of_others(runs, run.number)).abs();
    let candidate = runs.iter().reduce(|far, run| if apart(run) > apart(far) { run } else { far })?;
    let distance = apart(candidate);
    let clear_of = |middle: Time| {
        let off = (candidate.time - middle).abs();
        off > middle * AGREE_WITHIN && off > timing.by_hand() * TIMES_THE_DOUBT
    };
    let others: Vec<RunSpeed> = runs.iter().filter(|run| run.number != candidate.number).copied().collect();
    let alike = spread(&others) < distance / 2.0;
    let middle = middle_of_others(runs, candidate.number);
    (alike && clear_of(middle) && apart_from_own_direction(runs, candidate, &clear_of)).then(|| Outlier {
        run: candidate.number,
        time: candidate.time,
        others: middle,
        without: course / mean(&others),
    })
}

/// There against back, where both were driven.
pub(super) fn both_ways(course: Length, runs: &[RunSpeed], timing: &Timing) -> Option<BothWays> {
    let (there, back) = (of_direction(runs, Direction::There), of_direction(runs, Direction::Back));
    if there.is_empty() || back.is_empty() {
        return None;
    }
    let (time_there, time_back) = (mean(&there), mean(&back));
    let one_run = scatter(&there).max(scatter(&back)).max(timing.by_hand());
    let doubt = one_run * (1.0 / count(&there) + 1.0 / count(&back)).sqrt();
    let middle = (time_there + time_back) / 2.0;
    let longer = time_back - time_there;
    let clear = longer.abs() > doubt * NORMAL_95 && longer.abs() > middle * MATTERS;
    Some(BothWays {
        there: course / time_there,
        back: course / time_back,
        back_longer_percent: longer.ratio_to(middle) * 100.0,
        difference: if clear { Difference::Clear } else { Difference::NotClear },
    })
}

/// The two runs furthest apart among those that should agree, if they do not: slower, faster, percent of their mean.
///
/// Runs of one direction should agree with each other, and so should runs of which nobody wrote the direction. Where
/// there and back differ clearly, that is told by itself, and only runs of one direction are held against each other.
pub(super) fn disagreeing(
    runs: &[RunSpeed],
    left_out: Option<u32>,
    ways: Difference,
) -> Option<(u32, u32, f64)> {
    let kept: Vec<RunSpeed> = runs.iter().filter(|run| Some(run.number) != left_out).copied().collect();
    let (there, back) = (of_direction(&kept, Direction::There), of_direction(&kept, Direction::Back));
    let told = ways == Difference::Clear || (there.len() > 1 && back.len() > 1);
    let groups = if told && !there.is_empty() && !back.is_empty() { vec![there, back] } else { vec![kept] };
    let mut worst: Option<(u32, u32, f64)> = None;
    for group in &groups {
        let slowest = group.iter().reduce(|slow, run| if run.time > slow.time { run } else { slow })?;
        let fastest = group.iter().reduce(|fast, run| if run.time < fast.time { run } else { fast })?;
        let share = (slowest.time - fastest.time).ratio_to((slowest.time + fastest.time) / 2.0);
        if share > AGREE_WITHIN && worst.is_none_or(|(_, _, percent)| share * 100.0 > percent) {
            worst = Some((slowest.number, fastest.number, share * 100.0));
        }
    }
    worst
}

fn apart_from_own_direction(
    runs: &[RunSpeed],
    candidate: &RunSpeed,
    clear_of: &dyn Fn(Time) -> bool,
) -> bool {
    let both = [Direction::There, Direction::Back].iter().all(|way| !of_direction(runs, *way).is_empty());
    if candidate.direction == Direction::Unknown || !both {
        return true;
    }
    let own = of_direction(runs, candidate.direction);
    own.len() > 1 && clear_of(middle_of_others(&own, candidate.number))
}

fn of_direction(runs: &[RunSpeed], direction: Direction) -> Vec<RunSpeed> {
    runs.iter().filter(|run| run.direction == direction).copied().collect()
}

fn spread(runs: &[RunSpeed]) -> Time {
    let first = runs.first().map_or(Time::ZERO, |run| run.time);
    let longest = runs.iter().map(|run| run.time).fold(first, Time::max);
    let shortest = runs.iter().map(|run| run.time).fold(first, Time::min);
    longest - shortest
}

/// The median of all times but one's own.
fn middle_of_others(runs: &[RunSpeed], own: u32) -> Time {
    let mut times: Vec<Time> = runs.iter().filter(|run| run.number != own).map(|run| run.time).collect();
    times.sort_by(|one, other| one.as_seconds().total_cmp(&other.as_seconds()));
    let half = times.len() / 2;
    match (times.get(half), times.len() % 2) {
        (None, _) => Time::ZERO,
        (Some(middle), 1) => *middle,
        (Some(upper), _) => (*upper + times[half - 1]) / 2.0,
    }
}
