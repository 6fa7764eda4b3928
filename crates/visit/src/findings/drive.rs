//! The timed drive.

use calibration::doubt::Known;
use calibration::drive::{Direction, Drive, DriveSpeed, Run, Timing, drive_speed};
use units::AsWritten;

use super::error::CheckError;
use crate::record::{Visit, Way};

/// Works the speed out, where a drive was timed.
pub(super) fn drive(visit: &Visit) -> Result<Option<DriveSpeed>, CheckError> {
    let Some(facts) = &visit.drive else { return Ok(None) };
    let run = |run: &crate::record::RunFacts| Run {
        time: run.time.value(),
        direction: match run.way {
            Some(Way::There) => Direction::There,
            Some(Way::Back) => Direction::Back,
            None => Direction::Unknown,
        },
    };
    let drive = Drive {
        course: Known::taped_course(facts.course.value()),
        runs: facts.runs.iter().map(run).collect(),
        timing: Timing::default(),
        dash: facts.dash.as_ref().map(AsWritten::value),
    };
    drive_speed(&drive).map(Some).map_err(CheckError::of("drive"))
}
