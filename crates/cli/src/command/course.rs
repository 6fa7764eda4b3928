//! `evenswath course`: how far to drive so that a cup shows the rate.

use calibration::course::{Course, CourseKind, CupUnit};
use calibration::drive::{Timing, short_course, time_for_course};
use serde_json::json;
use units::{Amount, Kind, Length, Speed, UnitSystem};

use super::input::{known, maybe, positive};
use crate::args::CourseArgs;
use crate::error::CliError;
use crate::out::{Answer, finding, findings, number, quantity, working};

/// Works it out.
pub fn run(args: &CourseArgs, system: UnitSystem) -> Result<Answer, CliError> {
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
        "findings": findings(&list, system),
        "working": working(&course.working(), system),
    });
    let mut answer = Answer::default();
    let long = Amount::new(course.length(), Kind::Length).text(system);
    // Nobody says 360 in for the width of a swath.
    let kind = if width > Length::feet(10.0) { Kind::Length } else { Kind::Width };
    let shown_width = Amount::new(width, kind).text(system);
    answer.main(format!("{long} for {shown_width}"));
    answer.findings(&list, system);
    if let Some(speed) = speed {
        let time = known("--speed", time_for_course(course.length(), speed))?;
        object["time"] = quantity(time, Kind::Time, system);
        answer.plain(format!(
            "takes {} at {}",
            Amount::new(time, Kind::Time).text(system),
            Amount::new(speed, Kind::Speed).text(system)
        ));
        if let Some(short) = known("--speed", short_course(course.length(), speed, &Timing::default()))? {
            let short = short.finding();
            object["short"] = finding(&short, system);
            answer.findings(&[short], system);
        }
    }
    answer.why(course.working());
    answer.objects.push(object);
    Ok(answer)
}
