//! What to change to hit a rate, for each way of holding the pressure.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use planning::{Change, Setup, SpeedChange, TipRange, change_to_hit, rate_at_speed};
use sprayer::PressureControl;
use units::{Coded, Density, Length, Pressure, Ranged, Speed, UnitSystem, VolumePerArea, Weight};

fn setup(rate: f64, control: Option<PressureControl>) -> Setup {
    Setup {
        speed: Some(Speed::miles_per_hour(5.0)),
        pressure: Some(Pressure::psi(40.0)),
        control,
        tip_width: Some(Length::inches(20.0)),
        ..Setup::new(VolumePerArea::gallons_per_acre(rate))
    }
}

fn change(setup: &Setup, wanted: f64) -> Change {
    let change = change_to_hit(setup, VolumePerArea::gallons_per_acre(wanted)).expect("change");
    for finding in &change.findings {
        let said = format!("{finding} {}", finding.action(UnitSystem::Us).unwrap_or_default());
        assert!(!said.contains(['{', '}']), "{said}");
    }
    change
}

fn codes(change: &Change) -> Vec<&'static str> {
    change.findings.iter().map(Coded::code).collect()
}

#[test]
fn at_constant_pressure_speed_or_pressure_does_it() {
    let found = change(&setup(18.0, Some(PressureControl::Constant)), 15.0);
    let SpeedChange::Drive(speed) = found.speed else { panic!("{:?}", found.speed) };
    assert!((speed.as_miles_per_hour() - 6.0).abs() < 1e-12);
    let pressure = found.pressure.expect("pressure").as_psi();
    assert!((pressure - 40.0 * 225.0 / 324.0).abs() < 1e-9, "{pressure}");
    // 5940 × gal/min = gal/ac × mph × in: Illinois Ext., "60 Ways Farmers Can Protect Surface Water", no. 55.
    let tip = found.tip.expect("tip");
    assert!((tip.flow.as_gallons_per_minute() - 15.0 * 5.0 * 20.0 / 5940.0).abs() < 1e-12);
    assert_eq!(
        codes(&found),
        ["change_speed", "change_pressure", "change_pressure_small_only", "change_tip"]
    );
    let said: Vec<String> = found.findings.iter().map(ToString::to_string).collect();
    assert_eq!(said[0], "Drive 6 mph instead of 5 mph at the same pressure, and it puts out 15 gal/ac.");
    assert_eq!(said[1], "Or set 27.8 psi instead of 40 psi at the same speed, and it puts out 15 gal/ac.");
    assert!(said[2].contains("twice the flow takes four times the pressure"));
}

#[test]
fn a_small_correction_by_pressure_is_not_warned_of() {
    assert_eq!(
        codes(&change(&setup(16.0, Some(PressureControl::Constant)), 15.0)),
        ["change_speed", "change_pressure", "change_tip"]
    );
    assert!(change(&setup(15.0, Some(PressureControl::Constant)), 15.0).findings.is_empty());
}

#[test]
fn pressure_outside_the_tips_range_asks_for_another_tip() {
    let low = change(&setup(30.0, Some(PressureControl::Constant)), 15.0);
    // A pressure the tips are not meant for is told, but never offered as a way out.
    assert_eq!(codes(&low), ["change_speed", "change_pressure_too_low", "change_tip"]);
    assert_eq!(
        low.findings[1].to_string(),
        "For 15 gal/ac at the same speed it would take 10 psi. That is under the 15 psi to 60 psi these tips are meant \
         for: the fans fold in and leave strips."
    );
    assert!(low.findings[1].limit_source.expect("source").contains("from memory"));
    let high = change(&setup(10.0, Some(PressureControl::Constant)), 15.0);
    assert_eq!(codes(&high)[1], "change_pressure_too_high");
    // A range from the tip's own table takes its place.
    let table = TipRange::from_table(Pressure::psi(30.0), Pressure::psi(100.0)).expect("range");
    let wide = Setup { tip_range: table, ..setup(10.0, Some(PressureControl::Constant)) };
    assert_eq!(codes(&change(&wide, 15.0))[2], "change_pressure_small_only");
    assert!(TipRange::from_table(Pressure::psi(60.0), Pressure::psi(30.0)).is_err());
}

#[test]
fn a_ground_driven_pump_or_a_controller_does_not_mind_the_speed() {
    let ground = change(&setup(18.0, Some(PressureControl::GroundDriven)), 15.0);
    assert_eq!(ground.speed, SpeedChange::NoEffect);
    assert_eq!(codes(&ground), ["change_ground_driven", "change_pressure_small_only", "change_tip"]);
    assert!(ground.findings[0].action(UnitSystem::Us).expect("action").contains("0.833 times"));
    let controller = change(&setup(18.0, Some(PressureControl::RateController)), 15.0);
    assert_eq!(controller.speed, SpeedChange::NoEffect);
    assert_eq!(codes(&controller)[..2], ["change_controller", "change_controller_pressure"]);
    assert!(controller.findings[0].to_string().contains("does not change it"));
    for found in [ground, controller] {
        assert!(!codes(&found).contains(&"change_speed"));
    }
}

#[test]
fn what_holds_the_pressure_is_asked_and_both_are_given() {
    let found = change(&setup(18.0, None), 15.0);
    assert!(matches!(found.speed, SpeedChange::DriveIfConstant(_)));
    assert_eq!(found.findings[0].weight, Weight::Settle);
    assert_eq!(
        found.findings[0].to_string(),
        "What holds the pressure? With a plain regulator, 6 mph instead of 5 mph at the same pressure gives 15 gal/ac. \
         With a pump driven from the ground, or a rate controller, speed changes nothing."
    );
    let bare = change(&Setup::new(VolumePerArea::gallons_per_acre(18.0)), 15.0);
    assert_eq!((codes(&bare), bare.tip, bare.pressure), (vec!["change_ask_control_and_speed"], None, None));
    assert!(bare.findings[0].to_string().contains("1.2 times"));
}

#[test]
fn a_heavy_carrier_needs_a_larger_tip_by_the_table() {
    // Univ. of Nebraska-Lincoln CropWatch, 2016: 20 gal/ac of 28 % UAN (10.65 lb/gal) is set as 22.6 of water.
    let uan =
        Setup { carrier: Density::pounds_per_gallon(10.65), ..setup(22.0, Some(PressureControl::Constant)) };
    let tip = change(&uan, 20.0).tip.expect("tip");
    let as_water = tip.water_flow / (Speed::miles_per_hour(5.0) * Length::inches(20.0));
    assert!((as_water.as_gallons_per_acre() - 22.6).abs() < 0.05);
    assert!((tip.as_rated().expect("rated").pressure().as_psi() - 40.0).abs() < 1e-12);
    let said = change(&uan, 20.0).findings.last().expect("tip").to_string();
    assert!(said.contains("which is for water"), "{said}");
}

#[test]
fn what_cannot_be_is_refused_with_words() {
    let base = setup(18.0, None);
    for (setup, wanted, code) in [
        (Setup { rate: VolumePerArea::ZERO, ..base }, 15.0, "change_no_rate"),
        (base, 0.0, "change_no_rate"),
        (base, f64::NAN, "change_no_rate"),
        (Setup { speed: Some(Speed::ZERO), ..base }, 15.0, "change_no_speed"),
        (Setup { pressure: Some(Pressure::psi(-1.0)), ..base }, 15.0, "change_no_pressure"),
        (Setup { tip_width: Some(Length::ZERO), ..base }, 15.0, "change_no_width"),
        (Setup { carrier: Density::pounds_per_gallon(100.0), ..base }, 15.0, "carrier_density"),
    ] {
        let error = change_to_hit(&setup, VolumePerArea::gallons_per_acre(wanted)).expect_err(code);
        assert_eq!(error.code(), code);
        assert!(error.hint().is_some() && error.args().iter().count() > 0);
    }
    assert_eq!(
        planning::rate_error_from_speed_error(-100.0).expect_err("stopped").code(),
        "change_speed_error"
    );
}

#[test]
fn another_speed_says_what_holds_the_rate() {
    let rate = Ranged::from_relative(VolumePerArea::gallons_per_acre(16.0), 0.02);
    let to = |control| {
        let (now, then) = (Speed::miles_per_hour(4.0), Speed::miles_per_hour(8.0));
        rate_at_speed(&rate, now, then, control).expect("usable")
    };
    let code = |control| to(control).finding.map(|finding| finding.code());
    assert_eq!(code(PressureControl::Constant), None);
    assert_eq!(code(PressureControl::GroundDriven), Some("rate_held_by_pump"));
    assert_eq!(code(PressureControl::RateController), Some("rate_held_by_controller"));
    // The range goes with the rate.
    let halved = to(PressureControl::Constant).rate;
    assert!((halved.low.ratio_to(rate.low) - 0.5).abs() < 1e-12);
    assert!((halved.relative_standard() - rate.relative_standard()).abs() < 1e-12);
    let nowhere = rate_at_speed(&rate, Speed::miles_per_hour(4.0), Speed::ZERO, PressureControl::Constant);
    assert_eq!(nowhere.expect_err("refused").code(), "change_no_speed");
    let nothing = Ranged::exact(VolumePerArea::ZERO);
    let speed = Speed::miles_per_hour(4.0);
    let error = rate_at_speed(&nothing, speed, speed, PressureControl::Constant).expect_err("refused");
    assert_eq!(error.code(), "change_no_rate");
}
