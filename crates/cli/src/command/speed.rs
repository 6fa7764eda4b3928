//! `evenswath speed`: speed from timed runs over a measured course.

use calibration::doubt::Known;
use calibration::drive::{Direction, Drive, DriveError, DriveSpeed, Run, Timing, drive_speed};
use serde_json::json;
use units::{Amount, Arg, Args, Kind, Length, Time, Verdict};
use words::Words;

use super::input::{maybe, positive, quantity};
use crate::args::SpeedArgs;
use crate::error::CliError;
use crate::out::{self, Answer, findings, number, ranged, with_range, working};

/// Works it out.
pub fn run(args: &SpeedArgs, words: &Words) -> Result<Answer, CliError> {
    let course: Length = positive("--distance", &args.distance)?;
    let mut runs = Vec::new();
    for (option, times, direction) in [
        ("--time", &args.time, Direction::Unknown),
        ("--there", &args.there, Direction::There),
        ("--back", &args.back, Direction::Back),
    ] {
        for text in times {
            let time: Time = positive(option, text)?;
            runs.push(Run { time, direction });
        }
    }
    if runs.is_empty() {
        return Err(CliError::usage("no_runs", Args::new()));
    }
    let hand: Time = quantity("--timer", &args.timer)?;
    let drive = Drive {
        course: Known::taped_course(course),
        runs,
        timing: Timing { start: hand, stop: hand, ..Timing::default() },
        dash: maybe("--dash", args.dash.as_ref())?,
    };
    let speed = drive_speed(&drive).map_err(|error| {
        let name = if matches!(error, DriveError::Timer { .. }) { "--timer" } else { "" };
        CliError::input(name, &error)
    })?;
    let mut answer = Answer::of(object(&speed, words));
    lines(&mut answer, &speed, words);
    answer.outside = speed.findings.iter().any(|finding| finding.verdict == Some(Verdict::Outside));
    Ok(answer)
}

/// The JSON object of a drive, for the visit as well.
pub fn object(speed: &DriveSpeed, words: &Words) -> serde_json::Value {
    let system = words.reader().units;
    let runs: Vec<_> = speed
        .runs
        .iter()
        .map(|run| {
            json!({
                "number": run.number,
                "time": out::quantity(run.time, Kind::Time, system),
                "speed": out::quantity(run.speed, Kind::Speed, system),
                "direction": match run.direction { Direction::There => "there", Direction::Back => "back", Direction::Unknown => "unknown" },
            })
        })
        .collect();
    let mut object = json!({
        "speed": ranged(&speed.speed.ranged(), Kind::Speed, system),
        "mean_time": out::quantity(speed.mean_time, Kind::Time, system),
        "runs": runs,
        "slowest": out::quantity(speed.slowest, Kind::Speed, system),
        "fastest": out::quantity(speed.fastest, Kind::Speed, system),
        "spread_percent": number(speed.spread_percent),
    });
    if let Some(dash) = &speed.dash {
        object["dash"] = json!({
            "shown": out::quantity(dash.shown, Kind::Speed, system),
            "error_percent": number(dash.error_percent),
            "low": number(dash.low_percent),
            "high": number(dash.high_percent),
        });
    }
    if let Some(outlier) = &speed.outlier {
        object["outlier"] =
            json!({ "run": outlier.run, "time": out::quantity(outlier.time, Kind::Time, system) });
    }
    object["findings"] = findings(&speed.findings, words);
    object["working"] = working(&speed.working, system);
    object
}

fn lines(answer: &mut Answer, speed: &DriveSpeed, words: &Words) {
    let amount = Amount::ranged(&speed.speed.ranged(), Kind::Speed);
    answer.main(with_range(words, &amount));
    if speed.runs.len() > 1 {
        let told = Args::new()
            .with("runs", Arg::Number(speed.runs.len() as f64))
            .with("apart", Arg::Percent(speed.spread_percent));
        answer.plain(words.say_with("line-runs_apart", &told));
    }
    answer.findings(&speed.findings, words);
    answer.why(speed.working.clone());
}
