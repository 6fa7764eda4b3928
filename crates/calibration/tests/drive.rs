//! The drive against printed tables and by hand, and what it says.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::doubt::{Budget, DoubtOf, Known};
use calibration::drive::{
    Direction, Drive, DriveSpeed, Run, Timing, drive_speed, short_course, time_for_course,
};
use proptest::prelude::*;
use units::{Coded, Length, Speed, Time, UnitSystem, Verdict};

fn driven(feet: f64, seconds: &[f64]) -> DriveSpeed {
    let times: Vec<Time> = seconds.iter().map(|time| Time::seconds(*time)).collect();
    drive_speed(&Drive::new(Length::feet(feet), &times)).expect("usable runs")
}

fn both_ways(feet: f64, there: &[f64], back: &[f64]) -> Drive {
    let run = |direction| move |time: &f64| Run { time: Time::seconds(*time), direction };
    let runs = there.iter().map(run(Direction::There)).chain(back.iter().map(run(Direction::Back))).collect();
    Drive { runs, ..Drive::new(Length::feet(feet), &[]) }
}

fn codes(drive: &DriveSpeed) -> Vec<&'static str> {
    drive.findings.iter().map(Coded::code).collect()
}

fn said(drive: &DriveSpeed) -> Vec<String> {
    let line = |finding: &units::Finding| match finding.action(UnitSystem::Us) {
        Some(action) => format!("{} {action}", finding.text(UnitSystem::Us)),
        None => finding.text(UnitSystem::Us),
    };
    drive.findings.iter().map(line).collect()
}

fn check_speed(feet: f64, seconds: f64, mph: f64, tolerance: f64) {
    let speed = driven(feet, &[seconds]).speed.value.as_miles_per_hour();
    assert!((speed - mph).abs() <= tolerance, "{feet} ft in {seconds} s: {speed} is not {mph}");
}

fn check_time(course: Length, speed: Speed, printed_s: f64, tolerance_s: f64) {
    let time = time_for_course(course, speed).expect("usable").as_seconds();
    assert!((time - printed_s).abs() <= tolerance_s, "{course:?} at {speed:?}: {time}, printed {printed_s}");
}

#[test]
fn expected_from_oklahoma_state_turf() {
    // Oklahoma State Univ. Turf, Sprayer Calibration, n.d.: 200 ft in 45 s is 3 mph (printed whole); exactly 3.0303.
    check_speed(200.0, 45.0, 3.0, 0.1);
    check_speed(200.0, 45.0, 3.030_303, 1e-6);
}

#[test]
fn expected_from_montana_state() {
    // Montana State Univ. Extension, Calibration using the Test Strip Method, n.d.: 88 ft in 60 s is 1 mph, exactly.
    // DIFFERENCE: a Cornell page prints the constant as 60/80, which makes every speed 10 % too high; it is 60/88.
    check_speed(88.0, 60.0, 1.0, 1e-12);
    let as_misprinted = 200.0 / 45.0 * 60.0 / 80.0;
    let speed = driven(200.0, &[45.0]).speed.value.as_miles_per_hour();
    assert!((as_misprinted / speed - 1.1).abs() < 1e-9, "the misprint is 10 % over what we give");
}

#[test]
fn expected_from_applicator_exam_problems() {
    // State applicator-exam practice problems (Henderson County extension office): 300 ft in 51 s, 4 mph.
    // DIFFERENCE: its constant 204 is rounded from 204.5; exactly the speed is 4.0107.
    check_speed(300.0, 51.0, 4.0, 0.02);
    check_speed(300.0, 51.0, 4.010_695, 1e-6);
}

#[test]
fn expected_from_university_of_idaho() {
    // Univ. of Idaho Extension, Calibration Procedure for Band Application: mph = 0.682 × ft/s.
    check_speed(100.0, 100.0, 0.682, 0.0005);
}

#[test]
fn expected_from_pesticide_environmental_stewardship() {
    // Pesticide Environmental Stewardship, Measurements, Conversions, and Formulas: seconds for 300 ft. DIFFERENCE:
    // some of its cells are cut off rather than rounded, as 2.5 mph over 200 ft: printed 54 s, exactly 54.55 s.
    for (mph, printed) in [(2.0, 102.0), (3.0, 68.0), (5.0, 41.0), (6.0, 34.0), (8.0, 26.0)] {
        check_time(Length::feet(300.0), Speed::miles_per_hour(mph), printed, 1.0);
    }
    check_time(Length::feet(200.0), Speed::miles_per_hour(2.5), 54.0, 1.0);
    check_time(Length::feet(200.0), Speed::miles_per_hour(2.5), 54.5455, 1e-4);
}

#[test]
fn expected_from_alberta_agdex_606_1() {
    // Alberta Agriculture, Agdex 606-1, printed p. 11: times over 800 m.
    for (kmh, printed) in [(9.0, 320.0), (10.0, 288.0), (11.0, 262.0), (12.0, 240.0)] {
        check_time(Length::metres(800.0), Speed::kilometres_per_hour(kmh), printed, 0.5);
    }
}

#[test]
fn must_not_equal_misprint_in_alberta_agdex_606_1() {
    // DIFFERENCE: the same table prints 6:48 (408 s) for 7 km/h over 800 m; it is 6:51 (411.4 s).
    let time = time_for_course(Length::metres(800.0), Speed::kilometres_per_hour(7.0)).expect("usable");
    assert!((time.as_seconds() - 411.4286).abs() < 1e-3);
    assert!((time.as_seconds() - 408.0).abs() > 3.0);
}

#[test]
fn the_speed_is_the_course_over_the_mean_time() {
    // By hand: 204 ft there in 40 s and back in 50 s are 408 ft in 90 s, 4.533 ft/s; the mean of both speeds
    // (4.59 ft/s) is not what was driven.
    let drive = driven(204.0, &[40.0, 50.0]);
    assert!((drive.speed.value.as_metres_per_second() / 0.3048 - 408.0 / 90.0).abs() < 1e-12);
    assert!((drive.spread_percent - 10.0 / 45.0 * 100.0).abs() < 1e-9);
    assert!((drive.slowest.as_metres_per_second() / 0.3048 - 4.08).abs() < 1e-12);
    assert!((drive.fastest.as_metres_per_second() / 0.3048 - 5.1).abs() < 1e-12);
}

#[test]
fn doubt_is_that_of_the_hand_or_of_the_runs_whichever_is_more() {
    // By hand: two equal runs of 45 s: the hand 0.2828 s ÷ √2 ÷ 45 s = 0.444 %, tape 0.2 %, watch 0.1 %: 0.497 %.
    let alike = driven(200.0, &[45.0, 45.0]);
    assert!((alike.speed.doubt.relative() - 0.00497).abs() < 1e-5, "{}", alike.speed.doubt.relative());
    assert_eq!(alike.speed.doubt.largest().expect("doubt").of, DoubtOf::TimingTheDrive);
    // Runs of 44 s and 46 s: standard deviation √2 s, standard error 1 s, 2.22 % of 45 s.
    let apart = driven(200.0, &[44.0, 46.0]);
    let largest = apart.speed.doubt.largest().expect("doubt");
    assert_eq!(largest.of, DoubtOf::RunsDiffer);
    assert!((largest.relative - 1.0 / 45.0).abs() < 1e-9, "{}", largest.relative);
    // More runs, less doubt, but never less than the tape and the watch.
    let many = driven(200.0, &[45.0; 400]);
    assert!(many.speed.doubt.relative() < alike.speed.doubt.relative());
    assert!(many.speed.doubt.relative() > 0.002);
}

#[test]
fn the_range_holds_the_true_speed_as_often_as_it_says() {
    // 4,000 drives of three runs of 45 s, each end of each run off by a normal error of 0.2 s; errors drawn with a
    // fixed linear congruence and the sum of twelve (so nearly normal). The course is exact here.
    let mut seed: u64 = 1;
    let mut uniform = || {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        f64::from(u32::try_from(seed >> 32).expect("32 bits")) / f64::from(u32::MAX)
    };
    let mut normal = || (0..12).map(|_| uniform()).sum::<f64>() - 6.0;
    let held = (0..4000)
        .filter(|_| {
            let runs: Vec<Time> =
                (0..3).map(|_| Time::seconds(45.0 + 0.2 * normal() + 0.2 * normal())).collect();
            let drive =
                Drive { course: Known::exact(Length::feet(198.0)), ..Drive::new(Length::ZERO, &runs) };
            let range = drive_speed(&drive).expect("usable").speed.ranged();
            let truth = Length::feet(198.0) / Time::seconds(45.0);
            range.low <= truth && truth <= range.high
        })
        .count();
    // The larger of two doubts is taken, so a little more than 95 % is right; much more would be idle doubt.
    assert!((3800..=3960).contains(&held), "{held} of 4000");
}

#[test]
fn a_course_too_short_says_what_to_do_instead() {
    // 204 ft at 12 mph (17.6 ft/s) take 11.6 s; two courses are 408 ft and 23.2 s.
    let timing = Timing::default();
    let short = short_course(Length::feet(204.0), Speed::miles_per_hour(12.0), &timing)
        .expect("usable")
        .expect("too short");
    assert!((short.time.as_seconds() - 11.59).abs() < 0.005);
    assert_eq!(short.courses, Some(2));
    assert!((short.length().expect("a length").as_feet() - 408.0).abs() < 1e-9);
    assert_eq!(
        short.finding().text(UnitSystem::Us),
        "204 ft are over in 11.6 s: timed by hand, one run may be 4.8 % off."
    );
    assert_eq!(
        short.finding().action(UnitSystem::Us).as_deref(),
        Some(
            "Drive 2 courses in one go, 408 ft, and divide the catch by 2; or catch for 30 s by the clock and work \
             the rate from flow, speed and width."
        )
    );
    let drive = driven(204.0, &[11.6, 11.6]);
    assert_eq!(drive.short.expect("too short").courses, Some(2));
    // Exactly 20 s is long enough; a light gate needs no long course; a few inches need a longer one altogether.
    let of = |feet, mph, timing: &Timing| {
        short_course(Length::feet(feet), Speed::miles_per_hour(mph), timing).expect("usable")
    };
    assert!(of(88.0, 3.0, &timing).is_none());
    let gate = Timing { start: Time::seconds(0.01), stop: Time::seconds(0.01), ..timing };
    assert!(of(204.0, 12.0, &gate).is_none());
    assert_eq!(of(1.0, 12.0, &timing).expect("too short").courses, None);
}

#[test]
fn a_hand_less_sure_than_the_run_is_long_gives_no_speed() {
    let drive = |each_end: f64| {
        let hand = Time::seconds(each_end);
        let timing = Timing { start: hand, stop: hand, ..Timing::default() };
        drive_speed(&Drive { timing, ..Drive::new(Length::feet(204.0), &[Time::seconds(28.0)]) })
    };
    // √2 × 20 s × 1.96 = 55.4 s either way on 28 s.
    let error = drive(20.0).expect_err("refused");
    assert_eq!(error.code(), "drive_timer");
    assert_eq!(error.to_string(), "a time may be 55.4 s off either way, but the runs take only 28 s");
    assert!(error.hint().expect("a hint").contains("0.2 s"));
    // 4 s at each end are 11.1 s, 40 % of 28 s: usable, but it says next to nothing.
    let large = drive(4.0).expect("usable");
    assert!(said(&large)[0].contains("this says next to nothing"), "{:?}", said(&large));
    assert!(codes(&large).contains(&"speed_doubt_large"));
    assert!(!codes(&drive(0.2).expect("usable")).contains(&"speed_doubt_large"));
    // Runs that differ so much that their scatter reaches below nothing have a range that begins there.
    let scattered = driven(204.0, &[10.0, 100.0]).speed.ranged();
    assert_eq!(scattered.low, Speed::ZERO);
    assert!(scattered.high > scattered.value);
}

#[test]
fn one_run_that_stands_apart_is_named() {
    let outlier = |times: &[f64]| driven(200.0, times).outlier.map(|outlier| outlier.run);
    assert_eq!(outlier(&[45.0, 45.2, 52.0]), Some(3));
    assert_eq!(outlier(&[40.0, 45.2, 45.0, 45.1]), Some(1));
    // Two runs cannot say which is wrong; three that all differ neither; 5 % is not enough.
    assert_eq!(outlier(&[45.0, 52.0]), None);
    assert_eq!(outlier(&[40.0, 50.0, 60.0]), None);
    assert_eq!(outlier(&[45.0, 45.0, 47.0]), None);
    // Nor is 6 % of a short time that the hand alone may cause.
    assert_eq!(outlier(&[10.0, 10.0, 10.6]), None);
    let drive = driven(200.0, &[45.0, 45.2, 52.0]);
    assert!((drive.outlier.expect("named").without.as_metres_per_second() - 60.96 / 45.1).abs() < 1e-9);
    assert_eq!(
        said(&drive),
        ["Run 3 took 52 s, the others about 45.1 s. Without it the speed is 3.02 mph. Drive that one again."]
    );
}

#[test]
fn runs_that_disagree_are_driven_again() {
    let drive = driven(204.0, &[45.0, 49.0]);
    assert_eq!(
        said(&drive),
        ["Runs 1 and 2 differ by 8.51 %. Drive again, both ways, in the same gear at the same engine speed."]
    );
    assert!(codes(&driven(204.0, &[45.0, 47.0])).is_empty());
}

#[test]
fn slope_or_wind_shows_between_directions() {
    let drive = drive_speed(&both_ways(204.0, &[45.0, 45.3], &[49.0, 49.3])).expect("usable");
    assert_eq!(codes(&drive), ["drive_directions_differ"], "each way the runs agree");
    let both = drive.both_ways.expect("both were driven");
    assert!((both.back_longer_percent - 4.0 / 47.15 * 100.0).abs() < 1e-9);
    // The odd one out of its direction is no outlier; the slope may be why.
    let uphill = drive_speed(&both_ways(204.0, &[45.0, 45.3, 45.1], &[49.0])).expect("usable");
    assert!(uphill.outlier.is_none());
    assert!(codes(&uphill).contains(&"drive_directions_differ"));
    // But one that stands apart from its own direction is.
    let slip = drive_speed(&both_ways(204.0, &[45.0, 45.3], &[45.2, 55.0])).expect("usable");
    assert_eq!(slip.outlier.map(|outlier| outlier.run), Some(4));
    // One run each way: the directions explain the difference, and nothing else is said of it.
    let pair = drive_speed(&both_ways(204.0, &[45.0], &[49.0])).expect("usable");
    assert_eq!(codes(&pair), ["drive_directions_differ"]);
    // What the directions do not explain is still to be driven again: two runs there that differ by 8.5 %.
    let unsteady = drive_speed(&both_ways(204.0, &[45.0, 49.0], &[60.0, 60.2])).expect("usable");
    assert_eq!(codes(&unsteady), ["drive_runs_disagree", "drive_directions_differ"]);
    // Half a second on 45 s is not clear.
    let level = drive_speed(&both_ways(204.0, &[45.0], &[45.5])).expect("usable");
    assert!(codes(&level).is_empty());
}

#[test]
fn too_few_runs_are_said_to_be() {
    assert_eq!(codes(&driven(204.0, &[45.0])), ["drive_one_run"]);
    assert_eq!(
        codes(&drive_speed(&both_ways(204.0, &[45.0, 45.1], &[])).expect("usable")),
        ["drive_one_direction"]
    );
    assert!(codes(&driven(204.0, &[45.0, 45.1])).is_empty());
}

#[test]
fn the_dash_is_held_against_the_drive() {
    // 200 ft in 45 s are 3.0303 mph; a dash at 3.2 mph is 5.6 % over.
    let with_dash = |mph: f64, times: &[f64]| {
        let times: Vec<Time> = times.iter().map(|time| Time::seconds(*time)).collect();
        let drive =
            Drive { dash: Some(Speed::miles_per_hour(mph)), ..Drive::new(Length::feet(200.0), &times) };
        drive_speed(&drive).expect("usable")
    };
    let drive = with_dash(3.2, &[45.0, 45.0]);
    let dash = drive.dash.expect("read");
    assert!((dash.error_percent - 5.6).abs() < 1e-9);
    assert!(dash.low_percent < 5.6 && dash.high_percent > 5.6);
    assert_eq!(dash.verdict, Verdict::CannotTell);
    assert!((dash.correction() - 3.030_303 / 3.2).abs() < 1e-6);
    assert!((dash.shows_at(Speed::miles_per_hour(5.0)).as_miles_per_hour() - 5.28).abs() < 1e-9);
    // French order of 18 December 2008, annex IV B, 5.5.1.2: more than 5 % from the true speed is a defect.
    assert_eq!(with_dash(3.4, &[45.0, 45.0]).dash.expect("read").verdict, Verdict::Outside);
    assert_eq!(with_dash(3.05, &[45.0, 45.0]).dash.expect("read").verdict, Verdict::Within);
    assert_eq!(
        said(&with_dash(3.4, &[45.0, 45.0])),
        [
            "The dash showed 3.4 mph, but only 3.03 mph were driven: it shows 12.2 % too much. Have it set right; \
             until then multiply what it shows by 0.891."
        ]
    );
    // Read in km/h, written in mph.
    assert_eq!(codes(&with_dash(4.88, &[45.0, 45.0])), ["drive_dash_doubtful"]);
}

#[test]
fn absurd_speeds_are_doubted_not_refused() {
    assert!(codes(&driven(5000.0, &[60.0, 60.0])).contains(&"speed_doubtful_fast"));
    assert!(codes(&driven(20.0, &[60.0, 60.0])).contains(&"speed_doubtful_slow"));
    assert!(codes(&driven(88.0, &[60.0, 60.0])).is_empty());
}

#[test]
fn what_is_no_drive_is_refused() {
    fn refused(drive: &Drive, code: &str) -> String {
        let error = drive_speed(drive).expect_err("refused");
        assert_eq!(error.code(), code, "{error}");
        assert!(error.hint().is_some());
        error.to_string()
    }
    let usable = Drive::new(Length::feet(200.0), &[Time::seconds(45.0), Time::seconds(46.0)]);
    for feet in [0.0, -200.0, f64::NAN, f64::INFINITY] {
        refused(&Drive { course: Known::exact(Length::feet(feet)), ..usable.clone() }, "drive_course");
    }
    for seconds in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let times = [Time::seconds(45.0), Time::seconds(seconds)];
        let text = refused(&Drive::new(Length::feet(200.0), &times), "drive_run_time");
        assert!(text.starts_with("run 2 must take longer than nothing"), "{text}");
    }
    refused(&Drive::new(Length::feet(200.0), &[]), "drive_no_runs");
    refused(&Drive::new(Length::feet(200.0), &[Time::seconds(45.0); 1001]), "drive_too_many_runs");
    refused(&Drive { dash: Some(Speed::ZERO), ..usable.clone() }, "drive_dash");
    let timing = Timing { watch: f64::NAN, ..Timing::default() };
    refused(&Drive { timing, ..usable.clone() }, "drive_doubt");
    let timing = Timing { start: Time::seconds(-0.2), ..Timing::default() };
    refused(&Drive { timing, ..usable.clone() }, "drive_doubt");
    let course = Known::of(Length::feet(200.0), Budget::nothing().own(DoubtOf::Course, f64::INFINITY));
    refused(&Drive { course, ..usable }, "drive_doubt");
    let error = time_for_course(Length::feet(200.0), Speed::ZERO).expect_err("refused");
    assert_eq!(error.code(), "drive_speed");
}

proptest! {
    #[test]
    fn twice_the_course_or_half_the_time_is_twice_the_speed(
        feet in 50.0_f64..1000.0, times in proptest::collection::vec(5.0_f64..200.0, 1..6),
    ) {
        let speed = driven(feet, &times).speed.value;
        let longer = driven(2.0 * feet, &times).speed.value;
        let halves: Vec<f64> = times.iter().map(|time| time / 2.0).collect();
        prop_assert!((longer.ratio_to(speed) - 2.0).abs() < 1e-9);
        prop_assert!((driven(feet, &halves).speed.value.ratio_to(speed) - 2.0).abs() < 1e-9);
    }

    #[test]
    fn the_order_of_the_runs_changes_nothing_but_their_numbers(
        times in proptest::collection::vec(20.0_f64..80.0, 2..7),
    ) {
        let turned: Vec<f64> = times.iter().rev().copied().collect();
        let (one, other) = (driven(204.0, &times), driven(204.0, &turned));
        prop_assert!((one.speed.value.ratio_to(other.speed.value) - 1.0).abs() < 1e-12);
        prop_assert!((one.speed.doubt.relative() - other.speed.doubt.relative()).abs() < 1e-9);
        prop_assert_eq!(codes(&one), codes(&other));
        let runs = u32::try_from(times.len()).expect("few");
        prop_assert_eq!(
            one.outlier.map(|outlier| outlier.run),
            other.outlier.map(|outlier| runs + 1 - outlier.run)
        );
    }

    #[test]
    fn the_speed_lies_between_its_runs_and_in_its_range(
        times in proptest::collection::vec(5.0_f64..200.0, 1..8),
    ) {
        let drive = driven(204.0, &times);
        let range = drive.speed.ranged();
        prop_assert!(range.low < drive.speed.value && drive.speed.value < range.high);
        prop_assert!(drive.slowest <= drive.speed.value * (1.0 + 1e-12));
        prop_assert!(drive.speed.value <= drive.fastest * (1.0 + 1e-12));
    }

    #[test]
    fn a_second_equal_run_narrows_the_range(seconds in 5.0_f64..200.0) {
        let (one, two) = (driven(204.0, &[seconds]), driven(204.0, &[seconds, seconds]));
        prop_assert!(two.speed.doubt.relative() < one.speed.doubt.relative());
    }
}
