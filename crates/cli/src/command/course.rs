//! `evenswath course`: how far to drive so that a cup shows the rate.

use calibration::course::{Course, CourseKind, CupUnit};
use calibration::drive::{Timing, short_course, time_for_course};
use serde_json::json;
use units::{Amount, Arg, Args, Kind, Length, Speed, UnitSystem};
use words::Words;

use super::input::{known, maybe, positive};
use crate::args::CourseArgs;
use crate::error::CliError;
use crate::out::{Answer, finding, findings, number, quantity, working};

/// Works it out.
pub fn run(args: &CourseArgs, words: &Words) -> Result<Answer, CliError> {
    let system = words.reader().units;
    let width: Length = positive("--width", &args.width)?;
    let kind = match (system, args.boomless) {
        (UnitSystem::Metric, _) => CourseKind::Metric,
        (UnitSystem::Us, true) => CourseKind::Boomless,
        (UnitSystem::Us, false) => CourseKind::OneTip,
    };
    let course =
        Course::new(kind, width).map_err(|error| CliError::as_given("--width", &args.width, &error))?;
    let speed: Option<Speed> = maybe("--speed", args.speed.as_ref())?;
    let list = course.findings();
    let (cup, rate) = match course.cup_unit() {
        CupUnit::FluidOunce => ("fl oz", "gal/ac"),
        CupUnit::Pint => ("pt", "gal/ac"),
        CupUnit::Millilitre => ("mL", "L/ha"),
    };
    let mut object = json!({
        "length": quantity(course.length(), Kind::Length, system),
        "area": quantity(course.area(), Kind::Area, system),
        "cup_unit": cup,
        "factor": number(course.factor()),
        "rate_unit": rate,
        "findings": findings(&list, words),
        "working": working(&course.working(), system),
    });
    let mut answer = Answer::default();
    // Nobody says 360 in for the width of a swath.
    let kind = if width > Length::feet(10.0) { Kind::Length } else { Kind::Width };
    let told = Args::new()
        .with("length", Arg::Amount(Amount::new(course.length(), Kind::Length)))
        .with("width", Arg::Amount(Amount::new(width, kind)));
    answer.main(words.say_with("line-course", &told));
    answer.findings(&list, words);
    if let Some(speed) = speed {
        let time = known("--speed", time_for_course(course.length(), speed))?;
        object["time"] = quantity(time, Kind::Time, system);
        let told = Args::new()
            .with("time", Arg::Amount(Amount::new(time, Kind::Time)))
            .with("speed", Arg::Amount(Amount::new(speed, Kind::Speed)));
        answer.plain(words.say_with("line-takes", &told));
        if let Some(short) = known("--speed", short_course(course.length(), speed, &Timing::default()))? {
            let short = short.finding();
            object["short"] = finding(&short, words);
            answer.findings(&[short], words);
        }
    }
    answer.why(course.working());
    answer.objects.push(object);
    Ok(answer)
}
