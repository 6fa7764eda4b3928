//! Speed over a course, time for a course, and what an error of speed does.

use calibration::drive::{Drive, drive_speed, time_for_course};
use planning::{pressure_to_hold, rate_at_speed, rate_error_from_speed_error};
use sprayer::PressureControl;
use units::{Pressure, Ranged, Speed, Time, VolumePerArea};

use crate::givens::{Found, Givens};
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[
    ("speed", speed),
    ("course_time", course_time),
    ("rate_at_new_speed", new_speed),
    ("speed_error_effect", speed_error_effect),
    ("pressure_for_speed", pressure_for_speed),
];

fn speed(given: &Givens) -> Outcome<Found> {
    let (course, time) = (given.get("distance")?, given.get::<Time>("time")?);
    let one = drive_speed(&Drive::new(course, &[time]))?.speed.value;
    let both_ways_alike = drive_speed(&Drive::new(course, &[time, time]))?.speed.value;
    Found::by_all(&[one, both_ways_alike])
}

fn course_time(given: &Givens) -> Outcome<Found> {
    Found::of(time_for_course(given.get("distance")?, given.get("speed")?)?)
}

fn new_speed(given: &Givens) -> Outcome<Found> {
    let rate: VolumePerArea = given.get("rate")?;
    let (speed, new): (Speed, Speed) = (given.get("speed")?, given.get("new_speed")?);
    let then = rate_at_speed(&Ranged::exact(rate), speed, new, PressureControl::Constant)?;
    Found::of(then.rate.value)
}

fn speed_error_effect(given: &Givens) -> Outcome<Found> {
    Found::ratio(rate_error_from_speed_error(given.share("speed_error")? * 100.0)? / 100.0)
}

fn pressure_for_speed(given: &Givens) -> Outcome<Found> {
    let pressure: Pressure = given.get("pressure")?;
    Found::of(pressure_to_hold(pressure, given.get("speed")?, given.get("new_speed")?)?)
}
