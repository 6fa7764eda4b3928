//! What every handbook says and nobody needs to be cited for: common practice, from memory.

use calibration::catch::LimitProfile;
use calibration::course::{Course, CourseKind};
use calibration::doubt::Known;
use calibration::rate::{BroadcastWidth, CatchOverCourse};
use planning::{Setup, SpeedChange, change_to_hit, rate_at_speed};
use sprayer::PressureControl;
use units::{Length, Ranged, Speed, Volume, VolumePerArea};

use crate::Outcome;
use crate::tips::{beyond, summary};

#[test]
fn twenty_inches_drive_204_feet() -> Outcome<()> {
    let course = Course::new(CourseKind::OneTip, Length::inches(20.0))?;
    assert!((course.length().as_feet() - 204.0).abs() < 0.5, "{:?}", course.length());
    Ok(())
}

#[test]
fn fluid_ounces_from_one_tip_over_that_drive_are_gallons_per_acre() -> Outcome<()> {
    for ounces in [5.0, 14.5, 20.0, 80.0] {
        let caught = Volume::fluid_ounces(ounces);
        for inches in [15.0, 20.0, 30.0, 40.0] {
            let width = Length::inches(inches);
            let course = Course::new(CourseKind::OneTip, width)?;
            let catch = CatchOverCourse::by_hand(
                Known::in_cup(caught, None),
                Known::taped_course(course.length()),
                BroadcastWidth::TipSpacing(Known::tip_spacing(width)),
                None,
            );
            for rate in [course.rate(caught), catch.rate()?.rate.value] {
                let rate = rate.as_gallons_per_acre();
                assert!((rate - ounces).abs() < 1e-9, "{ounces} fl oz at {inches} in are {rate} gal/ac");
            }
        }
        // The round 204 ft that is driven in the yard is as good: a thousandth.
        let width = Length::inches(20.0);
        let round = CatchOverCourse::by_hand(
            Known::in_cup(caught, None),
            Known::taped_course(Length::feet(204.0)),
            BroadcastWidth::TipSpacing(Known::tip_spacing(width)),
            None,
        );
        let rate = round.rate()?.rate.value.as_gallons_per_acre();
        assert!((rate / ounces - 1.0).abs() < 0.001, "{rate}");
    }
    Ok(())
}

#[test]
fn at_constant_pressure_half_the_speed_puts_out_twice_as_much() -> Outcome<()> {
    let rate = VolumePerArea::gallons_per_acre(14.3);
    let (speed, half) = (Speed::miles_per_hour(5.2), Speed::miles_per_hour(2.6));
    let twice = rate_at_speed(&Ranged::exact(rate), speed, half, PressureControl::Constant)?.rate.value;
    assert!((twice.ratio_to(rate) - 2.0).abs() < 1e-12, "{twice:?}");
    // And to put out twice as much, drive half as fast.
    let setup = Setup { speed: Some(speed), control: Some(PressureControl::Constant), ..Setup::new(rate) };
    let SpeedChange::Drive(found) = change_to_hit(&setup, rate * 2.0)?.speed else {
        return Err("no speed was named".into());
    };
    assert!((found.ratio_to(half) - 1.0).abs() < 1e-12, "{found:?}");
    Ok(())
}

#[test]
fn where_the_pump_or_a_controller_follows_the_speed_the_rate_stays() -> Outcome<()> {
    let rate = VolumePerArea::gallons_per_acre(14.3);
    let (speed, half) = (Speed::miles_per_hour(5.2), Speed::miles_per_hour(2.6));
    for control in [PressureControl::GroundDriven, PressureControl::RateController] {
        let then = rate_at_speed(&Ranged::exact(rate), speed, half, control)?.rate.value;
        assert!((then.ratio_to(rate) - 1.0).abs() < 1e-12, "{control:?}: {then:?}");
    }
    Ok(())
}

#[test]
fn tips_within_ten_percent_of_each_other_pass_the_usual_rule() -> Outcome<()> {
    let usual = LimitProfile::named("mean-10")?.limit(None);
    // The largest is ten percent over the smallest, and the others lie between, evenly or all at one end.
    for readings in [
        "15 fl oz, 16.5 fl oz",
        "15 fl oz, 15 fl oz, 15 fl oz, 15 fl oz, 16.5 fl oz",
        "16.5 fl oz, 16.5 fl oz, 16.5 fl oz, 16.5 fl oz, 15 fl oz",
        "15 fl oz, 15.3 fl oz, 15.7 fl oz, 16 fl oz, 16.2 fl oz, 16.5 fl oz",
    ] {
        assert_eq!(beyond(&summary(readings, &usual)?), [0; 0], "{readings}");
    }
    // A tip well beyond does not.
    let off = summary("15 fl oz, 15 fl oz, 15 fl oz, 15 fl oz, 15 fl oz, 17.5 fl oz", &usual)?;
    assert_eq!(beyond(&off), [6]);
    Ok(())
}
