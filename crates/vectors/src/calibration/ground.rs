//! Courses, drives and the spacing of tips.

use std::error::Error;

use calibration::course::{Course, CourseKind};
use calibration::doubt::{Known, hand_timing, of_marks};
use calibration::drive::{Direction, Drive, Run, Timing, drive_speed, short_course, time_for_course};
use calibration::spacing::{Measured, SpacingReadings, check_spacing};
use units::{Length, Quantity, Speed, Time, Volume};

use crate::List;

pub(super) fn put(list: &mut List) -> Result<(), Box<dyn Error>> {
    courses(list)?;
    drive(list)?;
    times(list)?;
    spacing(list)
}

fn courses(list: &mut List) -> Result<(), Box<dyn Error>> {
    let kinds = [
        ("one tip", CourseKind::OneTip),
        ("whole boom", CourseKind::WholeBoom),
        ("boomless", CourseKind::Boomless),
        ("pints", CourseKind::Pints),
        ("metric", CourseKind::Metric),
    ];
    for (name, kind) in kinds {
        for step in 1..=6_u32 {
            let width = Length::inches(f64::from(step * 137) / 10.0);
            let course = Course::new(kind, width)?;
            let inches = width.as_inches();
            list.quantity(format!("{name} course for {inches} in"), course.length());
            list.put(format!("{name} course for {inches} in, factor"), course.factor());
            let rate = course.rate(Volume::fluid_ounces(14.3));
            list.quantity(format!("{name} course for {inches} in, rate of 14.3 fl oz"), rate);
        }
    }
    Ok(())
}

fn drive(list: &mut List) -> Result<(), Box<dyn Error>> {
    let run = |seconds: f64, direction| Run { time: Time::seconds(seconds), direction };
    let runs = vec![
        run(27.63, Direction::There),
        run(28.37, Direction::Back),
        run(27.41, Direction::There),
        run(31.19, Direction::Back),
        run(27.58, Direction::There),
        run(28.53, Direction::Back),
    ];
    let drive = Drive {
        course: Known::taped_course(Length::feet(203.7)),
        runs,
        timing: Timing::default(),
        dash: Some(Speed::miles_per_hour(5.3)),
    };
    let speed = drive_speed(&drive)?;
    list.ranged("speed of six runs", &speed.speed.ranged());
    list.quantity("mean time of six runs", speed.mean_time);
    list.quantity("slowest of six runs", speed.slowest);
    list.quantity("fastest of six runs", speed.fastest);
    list.put("spread of six runs", speed.spread_percent);
    let outlier = speed.outlier.ok_or("one run stands apart")?;
    list.quantity("the run that stands apart, the others", outlier.others);
    list.quantity("speed without the run that stands apart", outlier.without);
    let both = speed.both_ways.ok_or("both ways were driven")?;
    list.quantity("speed there", both.there);
    list.quantity("speed back", both.back);
    list.put("back longer", both.back_longer_percent);
    let dash = speed.dash.ok_or("the dash was read")?;
    list.put("dash, error", dash.error_percent);
    list.put("dash, error, low", dash.low_percent);
    list.put("dash, error, high", dash.high_percent);
    list.put("dash, correction", dash.correction());
    for share in speed.speed.doubt.shares() {
        list.put(format!("doubt of the speed: {}", share.of.code()), share.relative);
        list.put(format!("doubt of the speed: {}, its part", share.of.code()), share.part);
    }
    Ok(())
}

fn times(list: &mut List) -> Result<(), Box<dyn Error>> {
    for step in 1..=10_u32 {
        let mph = f64::from(step * 137) / 100.0;
        let (course, speed) = (Length::feet(203.7), Speed::miles_per_hour(mph));
        list.quantity(format!("203.7 ft at {mph} mph"), time_for_course(course, speed)?);
        if let Some(short) = short_course(course, speed, &Timing::default())? {
            list.put(format!("203.7 ft at {mph} mph, either way"), short.either_way_percent);
            list.quantity(format!("203.7 ft at {mph} mph, length"), short.length().unwrap_or(Length::ZERO));
        }
    }
    list.quantity("hand timing", hand_timing(Time::seconds(0.17), Time::seconds(0.23)));
    list.quantity("marks of 0.7 fl oz", of_marks(Volume::fluid_ounces(0.7)));
    Ok(())
}

fn spacing(list: &mut List) -> Result<(), Box<dyn Error>> {
    // Off by the remainder of a multiple: no round figures, some gaps far out.
    let off = |tip: u32| f64::from(tip * 37 % 23) / 7.0 - 1.6;
    let marks: Vec<Length> = (0..20).map(|tip| Length::inches(f64::from(tip) * 20.0 + off(tip))).collect();
    let gaps = marks.windows(2).map(|pair| pair[1] - pair[0]).collect();
    for (name, measured) in [("marks", Measured::Marks(marks)), ("gaps", Measured::Gaps(gaps))] {
        let readings = SpacingReadings {
            step: Some(Length::inches(0.25)),
            fixed: vec![5, 9, 14],
            ..SpacingReadings::new(Length::inches(20.0), measured)
        };
        let spacing = check_spacing(&readings)?;
        for gap in &spacing.gaps {
            list.put(format!("gap {} by {name}", gap.number), gap.error_percent);
        }
        for one in spacing.moves.iter().chain(&spacing.too_small) {
            list.quantity(format!("move of tip {} by {name}", one.tip), one.distance);
        }
        for (number, place) in (1..).zip(&spacing.places) {
            list.put(format!("place of tip {number} by {name}"), place.si());
        }
    }
    Ok(())
}
