//! The checker checked: worked by hand, limits of the French order of 2008, and laws.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::controller::{
    Closed, Closing, Pulsing, ShownCheck, ShownWhat, closing_findings, limits, pulsing_finding,
    widths_findings,
};
use calibration::doubt::{DoubtOf, Known};
use proptest::prelude::*;
use units::{Coded, Finding, Flow, Length, Pressure, Speed, Verdict};

fn flow(shown: f64, real: f64, either_way: f64) -> ShownCheck {
    let real = Flow::gallons_per_minute(real);
    let known = Known::either_way(real, real * either_way, DoubtOf::Given);
    ShownCheck::new(ShownWhat::Flow, Flow::gallons_per_minute(shown), &known)
}

fn codes(findings: &[Finding]) -> Vec<&'static str> {
    findings.iter().map(Coded::code).collect()
}

/// Orders 5.5.2.2 and 5.5.1.2: more than 5 % is a defect. 3.30 gal/min shown and 3.00 caught are 10 % too much.
#[test]
fn expected_from_the_order_of_2008_a_flow_sensor_may_be_five_percent_off() {
    let off = flow(3.30, 3.00, 0.02);
    assert!((off.error_percent - 10.0).abs() < 1e-9 && (off.factor - 1.1).abs() < 1e-9);
    assert_eq!((off.verdict, off.finding().code()), (Verdict::Outside, "controller_flow_off"));
    // 100 counts a gallon become 110.
    assert!(off.finding().action(units::UnitSystem::Us).expect("what to do").contains("100 become 110"));
    let near = flow(3.06, 3.00, 0.02);
    assert_eq!((near.verdict, near.finding().code()), (Verdict::Within, "controller_flow_right"));
    // 4 % off, known to 3 %: between 1 and 7 %.
    let open = flow(3.12, 3.00, 0.03);
    assert_eq!((open.verdict, open.finding().code()), (Verdict::CannotTell, "controller_flow_open"));
    assert!((open.low_percent - (1.04 / 1.03 - 1.0) * 100.0).abs() < 1e-6);
    assert!((open.high_percent - (1.04 / 0.97 - 1.0) * 100.0).abs() < 1e-6);
    // Litres read as gallons.
    assert_eq!(flow(11.4, 3.0, 0.02).finding().code(), "controller_flow_doubtful");
    let speed = |shown: f64| {
        let known =
            Known::either_way(Speed::miles_per_hour(5.0), Speed::miles_per_hour(0.05), DoubtOf::Given);
        ShownCheck::new(ShownWhat::Speed, Speed::miles_per_hour(shown), &known)
    };
    assert_eq!((speed(5.1).verdict, speed(4.6).verdict), (Verdict::Within, Verdict::Outside));
    for limit in [limits::FLOW_SENSOR, limits::SPEED_SENSOR] {
        assert!((limit.share - 0.05).abs() < 1e-12 && limit.source.contains("NOR AGRP0828914A"));
    }
}

/// Order 5.2.2.3: closing one section may raise the pressure by 10 % of what it was. 40 psi to 46 psi are 15 %.
#[test]
fn expected_from_the_order_of_2008_a_closed_section_may_raise_the_pressure_by_a_tenth() {
    let one = |closed: f64, after: Option<f64>| Closed {
        section: 2,
        before: Pressure::psi(40.0),
        closed: Pressure::psi(closed),
        after: after.map(Pressure::psi),
    };
    let fine = Pressure::psi(0.5);
    let told = |closed, after| codes(&closing_findings(&[one(closed, after)], fine));
    assert_eq!(told(46.0, Some(40.0)), ["controller_closing_high"]);
    assert_eq!(told(42.0, Some(40.5)), ["controller_closing_right"]);
    assert_eq!(told(44.0, None), ["controller_closing_open"]);
    assert_eq!(told(40.0, Some(40.0)), ["controller_closing_nothing"]);
    assert_eq!(told(42.0, Some(47.0)), ["controller_closing_stays"]);
    assert_eq!(told(30.0, None), ["controller_closing_right"]);
    // By hand: marks of 1 psi, 43 against 40: 42.5/40.5 and 43.5/39.5.
    let found = Closing::of(&one(43.0, None), Pressure::psi(1.0));
    assert!((found.rise - 0.075).abs() < 1e-9, "{found:?}");
    assert!(
        (found.low - (42.5 / 40.5 - 1.0)).abs() < 1e-9 && (found.high - (43.5 / 39.5 - 1.0)).abs() < 1e-9
    );
    assert_eq!(found.verdict, Verdict::CannotTell);
    assert!(closing_findings(&[], fine).is_empty());
}

/// Four tips 20 in apart cover 80 in.
#[test]
fn widths_are_tips_times_spacing() {
    let widths = |list: &[f64]| list.iter().map(|inches| Length::inches(*inches)).collect::<Vec<_>>();
    let real = widths(&[80.0, 80.0, 80.0]);
    let told = |entered: &[f64]| codes(&widths_findings(&widths(entered), &real));
    assert_eq!(told(&[80.0, 80.0, 80.0]), ["controller_widths_right"]);
    assert_eq!(told(&[80.5, 80.0, 80.0]), ["controller_widths_right"]);
    assert_eq!(told(&[84.0, 80.0, 80.0]), ["controller_width_off", "controller_swath_off"]);
    // One too wide and one too narrow: the swath is right all the same.
    assert_eq!(told(&[84.0, 76.0, 80.0]), ["controller_width_off", "controller_width_off"]);
    assert_eq!(told(&[240.0]), ["controller_widths_count"]);
}

#[test]
fn pulsing_valves_stay_open_or_nothing_is_said() {
    for (pulsing, tell) in [
        (Pulsing::None, true),
        (Pulsing::with_duty(Some(1.0)), true),
        (Pulsing::with_duty(Some(0.6)), false),
        (Pulsing::with_duty(None), false),
    ] {
        assert_eq!((pulsing.cups_tell(), pulsing_finding(pulsing).is_none()), (tell, tell), "{pulsing:?}");
    }
}

proptest! {
    #[test]
    fn what_is_shown_twice_as_high_is_off_by_twice(real in 0.5_f64..50.0, share in 0.7_f64..1.4, doubt in 0.0_f64..0.1) {
        let found = flow(real * share, real, doubt);
        prop_assert!((found.error_percent - (share - 1.0) * 100.0).abs() < 1e-6);
        prop_assert!(found.low_percent <= found.error_percent + 1e-9 && found.error_percent <= found.high_percent + 1e-9);
        // Whoever multiplies the meter's number by the factor has it show the true flow.
        prop_assert!((real * share / found.factor - real).abs() < 1e-9 * real);
        // A wider doubt never settles what a narrower one left open.
        let wider = flow(real * share, real, doubt + 0.05);
        if found.verdict == Verdict::CannotTell {
            prop_assert_eq!(wider.verdict, Verdict::CannotTell);
        }
    }

    #[test]
    fn a_coarser_gauge_never_settles_more(rise in -0.2_f64..0.4, marks in 0.2_f64..2.0) {
        let closed = Closed { section: 1, before: Pressure::psi(40.0), closed: Pressure::psi(40.0 * (1.0 + rise)), after: None };
        let (fine, coarse) = (Closing::of(&closed, Pressure::psi(marks)), Closing::of(&closed, Pressure::psi(2.0 * marks)));
        prop_assert!(coarse.low <= fine.low && fine.high <= coarse.high);
        if fine.verdict == Verdict::CannotTell {
            prop_assert_eq!(coarse.verdict, Verdict::CannotTell);
        }
    }
}
