//! Why a drive gives no speed.

use super::MOST_RUNS;
use crate::doubt::DoubtOf;
use units::{Amount, Arg, Args, Coded, Kind, Length, Speed, Time, UnitSystem};

/// What is wrong with the drive, and what would do.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DriveError {
    /// A course that is no length.
    #[error("the course must be longer than nothing, got {}", text(&Amount::new(*.given, Kind::Length)))]
    Course {
        /// The course as given.
        given: Length,
    },
    /// No run at all.
    #[error("no run was timed; at least 1 is needed")]
    NoRuns,
    /// More runs than anybody drives.
    #[error("{runs} runs are more than anybody drives (at most {MOST_RUNS})")]
    TooManyRuns {
        /// How many were given.
        runs: usize,
    },
    /// A run that took no time.
    #[error("run {run} must take longer than nothing, got {}", text(&Amount::new(*.given, Kind::Time)))]
    RunTime {
        /// Which run, from 1.
        run: u32,
        /// The time as given.
        given: Time,
    },
    /// A dash that shows no speed.
    #[error("the speed on the dash must be more than nothing, got {}", text(&Amount::new(*.given, Kind::Speed)))]
    Dash {
        /// The speed as given.
        given: Speed,
    },
    /// A speed that is none.
    #[error("the speed must be more than nothing, got {}", text(&Amount::new(*.given, Kind::Speed)))]
    Speed {
        /// The speed as given.
        given: Speed,
    },
    /// A hand on the watch that is less sure than the runs are long.
    #[error(
        "a time may be {} off either way, but the runs take only {}",
        text(&Amount::new(*.either_way, Kind::Time)),
        text(&Amount::new(*.runs, Kind::Time))
    )]
    Timer {
        /// How far a time may be off either way (95 %).
        either_way: Time,
        /// The mean time of the runs.
        runs: Time,
    },
    /// A doubt below nothing or that is not a number.
    #[error("the doubt of {} must be a number from nothing upwards, got {}", .of.name(), percent(*.given_percent))]
    Doubt {
        /// What is doubtful.
        of: DoubtOf,
        /// The doubt as given, in percent.
        given_percent: f64,
    },
}

fn text(amount: &Amount) -> String {
    amount.text(UnitSystem::Us)
}

fn count(things: usize) -> u32 {
    u32::try_from(things).unwrap_or(u32::MAX)
}

fn percent(percent: f64) -> String {
    Arg::Percent(percent).text(UnitSystem::Us)
}

impl Coded for DriveError {
    fn code(&self) -> &'static str {
        match self {
            Self::Course { .. } => "drive_course",
            Self::NoRuns => "drive_no_runs",
            Self::TooManyRuns { .. } => "drive_too_many_runs",
            Self::RunTime { .. } => "drive_run_time",
            Self::Dash { .. } => "drive_dash",
            Self::Speed { .. } => "drive_speed",
            Self::Timer { .. } => "drive_timer",
            Self::Doubt { .. } => "drive_doubt",
        }
    }

    fn args(&self) -> Args {
        let given = |amount| Args::new().with("given", Arg::Amount(amount));
        match self {
            Self::Course { given: length } => given(Amount::new(*length, Kind::Length)),
            Self::NoRuns => Args::new(),
            Self::TooManyRuns { runs } => {
                Args::new().with("runs", Arg::Count(count(*runs))).with("most", Arg::Count(count(MOST_RUNS)))
            }
            Self::RunTime { run, given: time } => {
                given(Amount::new(*time, Kind::Time)).with("run", Arg::Count(*run))
            }
            Self::Dash { given: speed } | Self::Speed { given: speed } => {
                given(Amount::new(*speed, Kind::Speed))
            }
            Self::Timer { either_way, runs } => Args::new()
                .with("either_way", Arg::Amount(Amount::new(*either_way, Kind::Time)))
                .with("runs", Arg::Amount(Amount::new(*runs, Kind::Time))),
            Self::Doubt { of, given_percent } => {
                Args::new().with("of", of.word()).with("given", Arg::Percent(*given_percent))
            }
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::Course { .. } => "measure the course with a tape, as 204 ft or 100 m",
            Self::NoRuns => "give the time of each run over the course, as 45 s",
            Self::TooManyRuns { .. } => "give the runs of one drive",
            Self::RunTime { .. } => "leave out a run that was not timed",
            Self::Dash { .. } => "leave the dash out when it was not read",
            Self::Speed { .. } => "give a speed as 5 mph or 8 km/h",
            Self::Timer { .. } => "start and stop the watch more sharply, as 0.2 s, or drive a longer course",
            Self::Doubt { .. } => "leave it out to take the usual one",
        };
        Some(hint.to_string())
    }
}
