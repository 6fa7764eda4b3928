//! `evenswath speed`: speed from timed runs over a measured course.

use calibration::doubt::Known;
use calibration::drive::{Direction, Drive, DriveError, DriveSpeed, Run, Timing, drive_speed};
use serde_json::json;
use units::{Amount, Kind, Length, Time, UnitSystem, Verdict, sensible};

use super::input::{maybe, positive, quantity};
use crate::args::SpeedArgs;
use crate::error::CliError;
use crate::out::{self, Answer, findings, number, ranged, working};

/// Works it out.
pub fn run(args: &SpeedArgs, system: UnitSystem) -> Result<Answer, CliError> {
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
        return Err(CliError::usage(
            "no_runs",
            "no run is timed",
            "give --time \"27.8 s\" for each run, or --there and --back",
        ));
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
    let mut answer = Answer::of(object(&speed, system));
    lines(&mut answer, &speed, system);
    answer.outside = speed.findings.iter().any(|finding| finding.verdict == Some(Verdict::Outside));
    Ok(answer)
}

/// The JSON object of a drive, for the visit as well.
pub fn object(speed: &DriveSpeed, system: UnitSystem) -> serde_json::Value {
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
    object["findings"] = findings(&speed.findings, system);
    object["working"] = working(&speed.working, system);
    object
}

fn lines(answer: &mut Answer, speed: &DriveSpeed, system: UnitSystem) {
    let amount = Amount::ranged(&speed.speed.ranged(), Kind::Speed);
    let range = amount.range_text(system).map_or(String::new(), |range| format!(", most likely {range}"));
    answer.main(format!("{}{range}", amount.text(system)));
    if speed.runs.len() > 1 {
        answer.plain(format!("{} runs, {} % apart", speed.runs.len(), sensible(speed.spread_percent)));
    }
    answer.findings(&speed.findings, system);
    answer.why(speed.working.clone());
}
