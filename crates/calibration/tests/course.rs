//! Courses against printed tables, and what is said where one cannot be driven.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::course::{Course, CourseKind, CupUnit};
use proptest::prelude::*;
use units::{Area, Coded, Length, UnitSystem, Volume};

fn course(kind: CourseKind, width: Length) -> Course {
    Course::new(kind, width).expect("a width that can be")
}

fn check_length(kind: CourseKind, width: Length, printed_ft: f64, exact_ft: f64, tolerance_ft: f64) {
    let length = course(kind, width).length().as_feet();
    assert!((length - exact_ft).abs() < 0.001, "{kind:?} {width:?}: {length} is not {exact_ft}");
    assert!(
        (length - printed_ft).abs() <= tolerance_ft,
        "{kind:?} {width:?}: {length}, printed {printed_ft}"
    );
}

#[test]
fn expected_from_common_practice() {
    // Common practice: at 20 in you drive 204 ft, and fluid ounces from one tip over that drive are gal/ac.
    let twenty = course(CourseKind::OneTip, Length::inches(20.0));
    assert!((twenty.length().as_feet() - 204.1875).abs() < 1e-9);
    assert!((twenty.rate(Volume::fluid_ounces(14.0)).as_gallons_per_acre() - 14.0).abs() < 1e-9);
    assert_eq!(twenty.cup_unit(), CupUnit::FluidOunce);
}

#[test]
fn expected_from_ohio_state_fabe_520() {
    // Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration, 2016. DIFFERENCE: the table is built on
    // 340 sq ft and some of its cells are cut off rather than rounded, so it is met to 1 ft.
    for (inches, printed, exact) in [
        (18.0, 227.0, 226.875),
        (20.0, 204.0, 204.1875),
        (26.0, 157.0, 157.0673),
        (28.0, 146.0, 145.8482),
        (32.0, 127.0, 127.6172),
        (36.0, 113.0, 113.4375),
        (38.0, 107.0, 107.4671),
    ] {
        check_length(CourseKind::OneTip, Length::inches(inches), printed, exact, 1.0);
    }
}

#[test]
fn expected_from_lsu_agcenter_ounces_equal_gallons() {
    // LSU AgCenter, Ounces Equal Gallons: Sprayer Calibration, n.d. DIFFERENCE: 14 in is printed 291, cut off from 291.7.
    for (inches, printed, exact) in [(10.0, 408.0, 408.375), (12.0, 340.0, 340.3125), (14.0, 291.0, 291.6964)]
    {
        check_length(CourseKind::OneTip, Length::inches(inches), printed, exact, 1.0);
    }
    // The same page: the plot is 340 sq ft.
    let area = course(CourseKind::OneTip, Length::inches(20.0)).area().as_square_feet();
    assert!((area - 340.0).abs() < 0.5 && (area - 340.3125).abs() < 1e-6, "{area}");
}

#[test]
fn expected_from_farm_and_dairy() {
    // Farm and Dairy reporting Ohio State Univ. Extension, 7 steps for easy sprayer calibration, n.d.
    check_length(CourseKind::OneTip, Length::inches(15.0), 272.0, 272.25, 1.0);
}

#[test]
fn expected_from_utah_state() {
    // Utah State Univ. Cooperative Extension, Horticulture/Vegetables/2014-03: the sum of all catches is gal/ac.
    // The source takes 340.3 sq ft; the exact area is 340.3125.
    for (feet, printed, exact) in [(9.0, 37.8, 37.8125), (12.0, 28.4, 28.3594), (15.0, 22.7, 22.6875)] {
        check_length(CourseKind::WholeBoom, Length::feet(feet), printed, exact, 0.05);
    }
}

#[test]
fn expected_from_ohio_state_bulletin_817() {
    // Ohio State Univ. Extension, Bulletin 817-00, Calibrating Turfgrass Chemical Application Equipment: an average
    // catch of 80 fl oz is 80 gal/ac, whatever the width of the course.
    for inches in [10.0, 20.0, 30.0] {
        let rate = course(CourseKind::OneTip, Length::inches(inches)).rate(Volume::fluid_ounces(80.0));
        assert!((rate.as_gallons_per_acre() - 80.0).abs() < 1e-9);
    }
}

#[test]
fn expected_from_nc_state_backpack_worksheet() {
    // NC State Extension, Christmas Trees, Backpack Sprayer Calibration Worksheet: 6 ft, 57 ft (from 340 sq ft).
    check_length(CourseKind::OneTip, Length::feet(6.0), 57.0, 56.71875, 0.5);
}

#[test]
fn expected_from_lsu_agcenter_boomless() {
    // LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer, n.d.: a 24 ft swath drives 141.7 ft, and 140 fl oz
    // are 14 gal/ac. DIFFERENCE: the source takes 3,400 sq ft; exactly ten times 1/128 acre is 3,403.125 sq ft.
    let boomless = course(CourseKind::Boomless, Length::feet(24.0));
    assert!((boomless.area().as_square_feet() - 3403.125).abs() < 1e-6);
    assert!((boomless.length().as_feet() - 141.7).abs() < 1.0);
    assert!((boomless.rate(Volume::fluid_ounces(140.0)).as_gallons_per_acre() - 14.0).abs() < 1e-9);
    // On the source's own area it is 14.0129, which prints as 14 too.
    let printed = Volume::fluid_ounces(140.0) / Area::square_feet(3400.0);
    assert!((printed.as_gallons_per_acre() - 14.0).abs() < 0.05);
}

#[test]
fn expected_from_clemson_eighth_acre() {
    // Clemson Univ., Weeds programme, Sprayer/spreader calibration guide. DIFFERENCE: its table is rounded up.
    for (feet, printed, exact) in [(32.0, 171.0, 170.15625), (40.0, 137.0, 136.125), (44.0, 124.0, 123.75)] {
        check_length(CourseKind::Pints, Length::feet(feet), printed, exact, 1.0);
    }
    let pints = course(CourseKind::Pints, Length::feet(32.0));
    assert!((pints.rate(Volume::gallons(14.0 / 8.0)).as_gallons_per_acre() - 14.0).abs() < 1e-9);
}

#[test]
fn must_not_mix_one_course_with_the_divisor_of_another() {
    // Known mistake: three "ounce" courses exist; mixing them is wrong by ten or by sixteen. The same jug on each:
    let width = Length::feet(24.0);
    let rate = |kind| course(kind, width).rate(Volume::fluid_ounces(140.0)).as_gallons_per_acre();
    assert!((rate(CourseKind::OneTip) / rate(CourseKind::Boomless) - 10.0).abs() < 1e-9);
    assert!((rate(CourseKind::OneTip) / rate(CourseKind::Pints) - 16.0).abs() < 1e-9);
}

#[test]
fn a_metric_course_names_its_factor() {
    // By hand: 50 cm and 50 sq m are 100 m; 1 mL on 50 sq m is 0.2 L/ha.
    let half_metre = course(CourseKind::Metric, Length::centimetres(50.0));
    assert!((half_metre.length().as_metres() - 100.0).abs() < 1e-9);
    assert!((half_metre.factor() - 0.2).abs() < 1e-12);
    assert!((half_metre.rate(Volume::millilitres(1000.0)).as_litres_per_hectare() - 200.0).abs() < 1e-9);
    // Exactly 60 m is enough: 10 sq m for a sixth of a metre; a 12 m swath takes 1000 sq m (83.3 m).
    assert!((course(CourseKind::Metric, Length::metres(1.0 / 6.0)).length().as_metres() - 60.0).abs() < 1e-9);
    assert!((course(CourseKind::Metric, Length::metres(12.0)).factor() - 0.01).abs() < 1e-15);
    let text = half_metre.findings()[0].text(UnitSystem::Metric);
    assert_eq!(text, "Drive 100 m. Catch for as long: millilitres times 0.2 are litres per hectare.");
}

#[test]
fn a_course_that_cannot_be_driven_says_which_one_can() {
    let said = |kind, width| -> Vec<String> {
        let findings = course(kind, width).findings();
        findings.iter().skip(1).map(|one| format!("{} {}", one, one.hint().unwrap_or_default())).collect()
    };
    assert_eq!(
        said(CourseKind::WholeBoom, Length::feet(15.0)),
        [
            "A course of 22.7 ft is over before it can be timed well. Drive 227 ft and divide the fluid ounces by ten."
        ]
    );
    assert_eq!(
        said(CourseKind::Boomless, Length::feet(60.0)),
        [
            "A course of 56.7 ft is over before it can be timed well. Drive 90.8 ft and read pints: they are gallons per acre."
        ]
    );
    assert_eq!(
        said(CourseKind::OneTip, Length::inches(3.0)),
        ["A course of 1361 ft is longer than most yards allow. Drive 681 ft and take the catch 2 times."]
    );
    assert!(said(CourseKind::OneTip, Length::inches(20.0)).is_empty());
    assert!(said(CourseKind::Metric, Length::centimetres(50.0)).is_empty());
}

#[test]
fn a_width_that_cannot_be_is_refused() {
    for inches in [0.0, -20.0, f64::NAN, f64::INFINITY, 1e9, 1e-4, 0.99, 2400.1] {
        let error = Course::new(CourseKind::OneTip, Length::inches(inches)).expect_err("refused");
        assert_eq!(error.code(), "course_width");
        assert!(error.hint().is_some());
    }
    let error = Course::new(CourseKind::OneTip, Length::ZERO).expect_err("refused");
    assert_eq!(error.to_string(), "the width must be 1 in to 200 ft, got 0 in");
}

const KINDS: [CourseKind; 5] =
    [CourseKind::OneTip, CourseKind::WholeBoom, CourseKind::Boomless, CourseKind::Pints, CourseKind::Metric];

proptest! {
    #[test]
    fn the_cup_times_the_factor_is_the_rate(inches in 1.0_f64..2000.0, cup in 0.1_f64..1000.0) {
        for kind in KINDS {
            let course = course(kind, Length::inches(inches));
            let (caught, unit_rate) = match course.cup_unit() {
                CupUnit::FluidOunce => (Volume::fluid_ounces(cup), true),
                CupUnit::Pint => (Volume::gallons(cup / 8.0), true),
                CupUnit::Millilitre => (Volume::millilitres(cup), false),
            };
            let rate = course.rate(caught);
            let shown = if unit_rate { rate.as_gallons_per_acre() } else { rate.as_litres_per_hectare() };
            prop_assert!((shown / (cup * course.factor()) - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn twice_the_width_is_half_the_way(inches in 1.0_f64..1000.0) {
        for kind in [CourseKind::OneTip, CourseKind::WholeBoom, CourseKind::Boomless, CourseKind::Pints] {
            let (one, two) = (course(kind, Length::inches(inches)), course(kind, Length::inches(2.0 * inches)));
            prop_assert!((one.length().ratio_to(two.length()) - 2.0).abs() < 1e-9);
        }
    }

    #[test]
    fn a_metric_course_is_the_shortest_round_one_of_sixty_metres(metres in 0.05_f64..60.0) {
        let metric = course(CourseKind::Metric, Length::metres(metres));
        prop_assert!(metric.length().as_metres() >= 60.0 - 1e-6);
        // The next smaller round area is at least 40 % of it (2 of 5), so no more than 150 m comes out.
        if metric.area().as_square_metres() > 10.5 {
            prop_assert!(metric.length().as_metres() < 150.0 + 1e-6);
        }
    }
}
