//! Courses, strips, plots and conversions.

use calibration::course::{Course, CourseKind};
use units::{Area, Dimension, Length, Quantity};

use crate::givens::{Found, Givens};
use crate::table::Measures;
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[
    ("course_length", course_length),
    ("strip_length_for_area", strip_length_for_area),
    ("area_of_rectangle", area_of_rectangle),
    ("convert", convert),
];

/// Length of a 1/128-acre course.
fn course_length(given: &Givens) -> Outcome<Found> {
    let course = Course::new(CourseKind::OneTip, given.get("width")?)?;
    Found::by_all(&[course.length(), course.area() / course.width()])
}

/// Length of a strip of an area: of the course with that area where there is one, else by the units alone.
fn strip_length_for_area(given: &Givens) -> Outcome<Found> {
    let (area, width): (Area, Length) = (given.get("area")?, given.get("width")?);
    for kind in [CourseKind::WholeBoom, CourseKind::Boomless, CourseKind::Pints] {
        let course = Course::new(kind, width)?;
        if (course.area().ratio_to(area) - 1.0).abs() < SAME_COURSE {
            return Found::of(course.length());
        }
    }
    Found::of(area / width)
}

/// Areas nearer than this are one course, the source's figure rounded: 3,400 for 3,403.125 sq ft.
const SAME_COURSE: f64 = 0.001;

fn area_of_rectangle(given: &Givens) -> Outcome<Found> {
    let (length, width): (Length, Length) = (given.get("length")?, given.get("width")?);
    Found::of(length * width)
}

/// The quantity itself; the unit of the answer does the work.
fn convert(given: &Givens) -> Outcome<Found> {
    let text = given.text("quantity")?;
    let dimensions = [
        Dimension::Length,
        Dimension::Area,
        Dimension::Volume,
        Dimension::Mass,
        Dimension::Speed,
        Dimension::VolumePerArea,
    ];
    let read = dimensions.into_iter().find_map(|dimension| units::quantity(text, dimension).ok());
    let written = read.ok_or_else(|| format!("{text} is no quantity of these"))?;
    Ok(Found { value: written.si(), measures: Measures::Quantity(written.dimension()) })
}

#[test]
fn a_course_of_one_kind_is_never_taken_for_another() -> Outcome<()> {
    // The three areas are ten and sixteen times each other; a tolerance that mixes them would be a wrong table.
    let areas: Vec<Area> = [CourseKind::WholeBoom, CourseKind::Boomless, CourseKind::Pints]
        .into_iter()
        .map(|kind| Course::new(kind, Length::feet(10.0)).map(|course| course.area()))
        .collect::<Result<_, _>>()?;
    assert!((areas[1].si() / areas[0].si() - 10.0).abs() < 1e-12);
    assert!((areas[2].si() / areas[0].si() - 16.0).abs() < 1e-12);
    Ok(())
}
