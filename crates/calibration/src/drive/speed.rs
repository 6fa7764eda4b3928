//! The speed of a drive, from the course and all its runs.

use super::agree::{self, BothWays, Outlier};
use super::course_time::{ShortCourse, short_course};
use super::dash::DashCheck;
use super::error::DriveError;
use super::{MOST_RUNS, findings};
use crate::doubt::{Budget, Contribution, DoubtOf, HAND_TIMING_EACH_END, Known, Tie, WATCH, hand_timing};
use units::{Amount, Arg, Finding, Kind, Length, NORMAL_95, Quantity, Speed, Time, Working};

/// Which way a run went.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Direction {
    /// There.
    There,
    /// And back.
    Back,
    /// Nobody wrote it down.
    Unknown,
}

/// One timed run over the course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// How long it took.
    pub time: Time,
    /// Which way it went.
    pub direction: Direction,
}

/// How well the runs were timed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Timing {
    /// The standard uncertainty of the hand at the start.
    pub start: Time,
    /// The standard uncertainty of the hand at the stop.
    pub stop: Time,
    /// The relative standard uncertainty of the watch itself (one part in one).
    pub watch: f64,
    /// Whether the same watch times the catch too: then its error cancels in the rate.
    pub watch_tie: Tie,
}

impl Default for Timing {
    /// A hand good to 0.2 s at either end, a watch good to 0.1 %, the same for drive and catch.
    fn default() -> Self {
        let each_end = HAND_TIMING_EACH_END;
        Self { start: each_end, stop: each_end, watch: WATCH, watch_tie: Tie::Shared }
    }
}

impl Timing {
    /// The standard uncertainty of one time taken by hand.
    #[must_use]
    pub fn by_hand(&self) -> Time {
        hand_timing(self.start, self.stop)
    }
}

/// A drive over one course.
#[derive(Clone, Debug, PartialEq)]
pub struct Drive {
    /// The course, with how well it was measured.
    pub course: Known<Length>,
    /// The runs in the order they were driven.
    pub runs: Vec<Run>,
    /// How well they were timed.
    pub timing: Timing,
    /// What the dash showed meanwhile.
    pub dash: Option<Speed>,
}

impl Drive {
    /// A drive over a taped course, timed by hand, with no word on directions and no dash.
    #[must_use]
    pub fn new(course: Length, times: &[Time]) -> Self {
        let runs = times.iter().map(|time| Run { time: *time, direction: Direction::Unknown }).collect();
        Self { course: Known::taped_course(course), runs, timing: Timing::default(), dash: None }
    }
}

/// One run with its speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RunSpeed {
    /// Its number, from 1 in the order driven.
    pub number: u32,
    /// How long it took.
    pub time: Time,
    /// Which way it went.
    pub direction: Direction,
    /// Its own speed.
    pub speed: Speed,
}

/// What a drive says.
#[derive(Clone, Debug, PartialEq)]
pub struct DriveSpeed {
    /// The speed with its doubts; `speed.ranged()` is the 95 % range.
    pub speed: Known<Speed>,
    /// The mean time of the runs.
    pub mean_time: Time,
    /// Every run.
    pub runs: Vec<RunSpeed>,
    /// The speed of the slowest run.
    pub slowest: Speed,
    /// The speed of the fastest run.
    pub fastest: Speed,
    /// The longest time less the shortest, in percent of the mean time.
    pub spread_percent: f64,
    /// A run that does not go with the others.
    pub outlier: Option<Outlier>,
    /// There against back, where both were driven.
    pub both_ways: Option<BothWays>,
    /// The dash, where it was read.
    pub dash: Option<DashCheck>,
    /// Where the course is too short for this speed: what to do instead.
    pub short: Option<ShortCourse>,
    /// What is worth telling.
    pub findings: Vec<Finding>,
    /// How the speed was reached.
    pub working: Working,
}

/// Returns the speed driven over a course.
///
/// *Units*: course and times in, speed out; spread in percent of the mean time.
///
/// *Assumptions*: speed = course ÷ mean time, not the mean of the runs' speeds, because ground covered and time spent
/// are what add up: three runs cover three courses in the sum of their times, and a rate is volume over that ground.
/// The hand on the watch errs anew at each run; tape and watch err alike in all of them. The times are as doubtful as
/// the hand makes them or as their own scatter (standard error) shows, whichever is more. The scatter of two or three
/// runs is itself poorly known; runs that differ by more than 5 % are therefore sent back to be driven again.
/// Valid for 1 to 1000 runs at a steady speed from before the first mark to beyond the last.
///
/// *Errors*: [`DriveError`]: no runs, a course or time or dash of nothing, below nothing or not a
/// number; a hand less sure than the runs are long.
///
/// *Source*: speed: its definition, e.g. Oklahoma State Univ. Turf, Sprayer Calibration. Doubt: JCGM 100:2008 (GUM)
/// 4.2.3 (standard error), 5.1.6.
///
/// *Example*: 200 ft in 45 s is 4.44 ft/s, 3.03 mph.
pub fn drive_speed(drive: &Drive) -> Result<DriveSpeed, DriveError> {
    check(drive)?;
    let course = drive.course.value;
    let runs: Vec<RunSpeed> = (1..)
        .zip(&drive.runs)
        .map(|(number, run)| RunSpeed {
            number,
            time: run.time,
            direction: run.direction,
            speed: course / run.time,
        })
        .collect();
    let mean_time = mean(&runs);
    let speed = drive.course.clone().over(Known::of(mean_time, time_doubt(&runs, mean_time, &drive.timing)));
    let shortest = runs.iter().map(|run| run.time).fold(mean_time, Time::min);
    let longest = runs.iter().map(|run| run.time).fold(mean_time, Time::max);
    let mut result = DriveSpeed {
        mean_time,
        slowest: course / longest,
        fastest: course / shortest,
        spread_percent: (longest - shortest).ratio_to(mean_time) * 100.0,
        outlier: agree::outlier(course, &runs, &drive.timing),
        both_ways: agree::both_ways(course, &runs, &drive.timing),
        dash: drive.dash.map(|shown| DashCheck::new(shown, &speed)),
        short: short_course(course, speed.value, &drive.timing)?,
        working: working(drive, mean_time, &speed),
        findings: Vec::new(),
        runs,
        speed,
    };
    result.findings = findings::findings(&result);
    Ok(result)
}

impl DriveSpeed {
    /// The mean time of the runs of one direction, where there are any.
    #[must_use]
    pub fn mean_time_of(&self, direction: Direction) -> Option<Time> {
        let runs: Vec<RunSpeed> =
            self.runs.iter().filter(|run| run.direction == direction).copied().collect();
        (!runs.is_empty()).then(|| mean(&runs))
    }
}

fn check(drive: &Drive) -> Result<(), DriveError> {
    if !drive.course.value.is_positive() {
        return Err(DriveError::Course { given: drive.course.value });
    }
    if drive.runs.is_empty() {
        return Err(DriveError::NoRuns);
    }
    if drive.runs.len() > MOST_RUNS {
        return Err(DriveError::TooManyRuns { runs: drive.runs.len() });
    }
    for (run, one) in (1..).zip(&drive.runs) {
        if !one.time.is_positive() {
            return Err(DriveError::RunTime { run, given: one.time });
        }
    }
    if let Some(given) = drive.dash
        && !given.is_positive()
    {
        return Err(DriveError::Dash { given });
    }
    let timing = Budget::nothing()
        .own(DoubtOf::TimingTheDrive, drive.timing.start.as_seconds())
        .own(DoubtOf::TimingTheDrive, drive.timing.stop.as_seconds())
        .own(DoubtOf::Watch, drive.timing.watch)
        .times(drive.course.doubt.clone());
    if let Some(bad) = timing.first_unusable() {
        return Err(DriveError::Doubt { of: bad.of, given_percent: bad.relative * 100.0 });
    }
    let either_way = drive.timing.by_hand() * NORMAL_95;
    let runs = drive.runs.iter().map(|run| run.time).sum::<Time>() / count(&drive.runs);
    if either_way > runs { Err(DriveError::Timer { either_way, runs }) } else { Ok(()) }
}

/// The mean time of runs; there is at least one.
pub(super) fn mean(runs: &[RunSpeed]) -> Time {
    runs.iter().map(|run| run.time).sum::<Time>() / count(runs)
}

/// The standard deviation of the times about their mean; nothing for a single run.
pub(super) fn scatter(runs: &[RunSpeed]) -> Time {
    if runs.len() < 2 {
        return Time::ZERO;
    }
    let mean = mean(runs).as_seconds();
    let squares = runs.iter().map(|run| (run.time.as_seconds() - mean) * (run.time.as_seconds() - mean));
    Time::seconds((squares.sum::<f64>() / (count(runs) - 1.0)).sqrt())
}

pub(super) fn count<R>(runs: &[R]) -> f64 {
    f64::from(u32::try_from(runs.len()).unwrap_or(u32::MAX))
}

fn time_doubt(runs: &[RunSpeed], mean_time: Time, timing: &Timing) -> Budget {
    let (by_hand, scatter) = (timing.by_hand(), scatter(runs));
    let (of, one_run) =
        if scatter > by_hand { (DoubtOf::RunsDiffer, scatter) } else { (DoubtOf::TimingTheDrive, by_hand) };
    let watch =
        Contribution { of: DoubtOf::Watch, relative: timing.watch, exponent: 1.0, tie: timing.watch_tie };
    Budget::nothing().own(of, one_run.ratio_to(mean_time) / count(runs).sqrt()).with(watch)
}

fn working(drive: &Drive, mean_time: Time, speed: &Known<Speed>) -> Working {
    Working::new(
        "speed_over_course",
        "speed = course ÷ mean time of the runs",
        "the definition of speed; ground covered and time spent add up over the runs",
    )
    .figure("course", Arg::Amount(Amount::new(drive.course.value, Kind::Length)))
    .figure("runs", Arg::Count(u32::try_from(drive.runs.len()).unwrap_or(u32::MAX)))
    .figure("mean time of the runs", Arg::Amount(Amount::new(mean_time, Kind::Time)))
    .result(Arg::Amount(Amount::ranged(&speed.ranged(), Kind::Speed)))
    .step(speed.doubt.working())
}
