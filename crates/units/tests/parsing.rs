//! What people write, understood or refused with words that help.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use units::{Caught, Coded, Dimension, Quantity, QuantityError, Unit};

fn check(text: &str, dimension: Dimension, unit: &str, expected: f64) {
    let unit = Unit::named(unit).unwrap_or_else(|| panic!("{unit}"));
    let written = units::quantity(text, dimension).unwrap_or_else(|error| panic!("{text}: {error}"));
    let value = written.si() / unit.si_factor();
    assert!((value - expected).abs() <= 1e-12 * expected.abs(), "{text}: {value}, not {expected}");
}

fn refuse(text: &str, dimension: Dimension, code: &str, words: &[&str]) {
    let error = units::quantity(text, dimension).expect_err(text);
    let said = format!("{error}; {}", error.hint().unwrap_or_default());
    assert_eq!(error.code(), code, "{text}: {said}");
    for word in words {
        assert!(said.contains(word), "{text}: \"{said}\" lacks \"{word}\"");
    }
}

#[test]
fn what_the_contract_lists_is_understood() {
    use Dimension::{Area, Length, Pressure, Time, Volume};
    check("20 in", Length, "in", 20.0);
    check("50.8 cm", Length, "in", 20.0);
    check("16 ft 8 in", Length, "in", 200.0);
    check("14 fl oz", Volume, "fl oz", 14.0);
    check("295 mL", Volume, "mL", 295.0);
    check("1 1/2 pt", Volume, "pt", 1.5);
    check("20700 sq ft", Area, "sq ft", 20700.0);
    check("1:05", Time, "s", 65.0);
    check("1 imp gal", Volume, "L", 4.54609);
    check("2 bar", Pressure, "kPa", 200.0);
    let (flow, pressure) = units::flow_at_pressure("0.30 gal/min @ 40 psi").expect("understood");
    assert!((flow.as_gallons_per_minute() - 0.3).abs() < 1e-15 && (pressure.as_psi() - 40.0).abs() < 1e-12);
}

#[test]
fn other_ways_of_writing_are_understood() {
    use Dimension::{Length, MassPerArea, Speed, Time, Volume, VolumePerArea};
    check("16' 8\"", Length, "in", 200.0);
    check("14½ fl oz", Volume, "fl oz", 14.5);
    check("14 ½ fl. oz.", Volume, "fl oz", 14.5);
    check("½ pt", Volume, "fl oz", 8.0);
    check("1/2 pt", Volume, "fl oz", 8.0);
    check("20 1/4in", Length, "in", 20.25);
    check("1 gal 3 pt", Volume, "pt", 11.0);
    check("1 min 5 s", Time, "s", 65.0);
    check("1:02:03.5", Time, "s", 3723.5);
    check("0.92 gal/1000 sq ft", VolumePerArea, "gal/1000 sq ft", 0.92);
    check("0.92 gal/1,000 sq ft", VolumePerArea, "gal/1000 sq ft", 0.92);
    check("8 oz wt/ac", MassPerArea, "lb/ac", 0.5);
    check("4 miles per hour", Speed, "mph", 4.0);
    check("  20   gpa ", VolumePerArea, "gal/ac", 20.0);
    check("5.5 m/s", Speed, "km/h", 19.8);
    check("100 ft2", Dimension::Area, "sq ft", 100.0);
    check(".5 L", Volume, "mL", 500.0);
}

#[test]
fn what_cannot_be_understood_is_refused_with_what_would_do() {
    use Dimension::{Flow, Length, Time, Volume, VolumePerArea};
    refuse("20", Length, "quantity_missing_unit", &["\"20\"", "ft, in"]);
    refuse("20 psi", Length, "quantity_wrong_unit", &["a pressure", "a length", "ft, in"]);
    refuse("20 furlongs", Length, "quantity_unknown_unit", &["furlongs", "ft, in"]);
    refuse("1,234 ft", Length, "quantity_comma", &["1234", "1.234"]);
    refuse("14,5 fl oz", Volume, "quantity_comma", &["14.5"]);
    refuse("1,234.5 ft", Length, "quantity_comma", &["1234.5"]);
    refuse("14 oz", Volume, "quantity_weight_ounce", &["fl oz"]);
    refuse("14 oz/min", Flow, "quantity_weight_ounce", &["fl oz"]);
    refuse("-3 s", Time, "quantity_negative", &["-3 s"]);
    refuse("", Length, "quantity_empty", &["ft, in"]);
    refuse("NaN ft", Length, "quantity_not_a_number", &["NaN"]);
    refuse("inf ft", Length, "quantity_not_a_number", &["inf"]);
    refuse("1e3 ft", Length, "quantity_unknown_unit", &["e3 ft"]);
    refuse("1:75", Time, "quantity_past_sixty", &["1:75"]);
    refuse("1:2:3:4", Time, "quantity_not_a_number", &["1:2:3:4"]);
    refuse("8 in 16 ft", Length, "quantity_parts_out_of_order", &["16 ft 8 in"]);
    refuse("1/0 ft", Length, "quantity_zero_under_line", &["1/0"]);
    refuse("14 3/2 ft", Length, "quantity_not_a_number", &[]);
    refuse("9999999999999999999999 gal", Volume, "quantity_too_large", &[]);
    refuse(&"9".repeat(500), Volume, "quantity_too_long", &["120"]);
    refuse("20 in", VolumePerArea, "quantity_wrong_unit", &["a volume on an area", "gal/ac"]);
    refuse("20 gal", VolumePerArea, "quantity_wrong_unit", &["gal/ac"]);
    refuse("ft", Length, "quantity_not_a_number", &[]);
    refuse("5 5 ft", Length, "quantity_missing_unit", &[]);
}

#[test]
fn a_gallon_per_acre_is_no_length() {
    assert!(matches!(units::Length::parse("20 gal/ac"), Err(QuantityError::WrongUnit { .. })));
}

#[test]
fn a_catch_is_liquid_or_weight_and_never_guessed() {
    let ounce = Unit::named("fl oz");
    let caught = |text| Caught::parse(text, ounce.as_ref());
    assert_eq!(caught("14").expect("bare").written().canonical(), "14 fl oz");
    assert_eq!(caught("14 1/2").expect("bare").written().canonical(), "14 1/2 fl oz");
    assert_eq!(caught("412 mL").expect("volume").written().dimension(), Dimension::Volume);
    assert_eq!(caught("405 g").expect("weight").written().dimension(), Dimension::Mass);
    assert_eq!(caught("14 oz").expect_err("either").code(), "quantity_which_ounce");
    // Water weighs 8.345 lb/gal at 60 °F (NIST HB 44 (2023) App. C), so 8.345 lb of it are one gallon.
    let pounds = caught("8.345 lb").expect("weight");
    let volume = pounds.volume(units::Density::pounds_per_gallon(8.345));
    assert!((volume.as_gallons() - 1.0).abs() < 1e-12);
}

#[test]
fn every_refusal_says_what_would_do() {
    for (text, told) in [
        ("9999999999999999999999 ft", "fifteen digits"),
        ("1/0 ft", "1/2"),
        ("1,234 ft", "1234"),
        ("8 in 16 ft", "16 ft 8 in"),
    ] {
        let hint = units::Length::parse(text).expect_err("refused").hint().expect("a hint");
        assert!(hint.contains(told), "{text}: {hint}");
    }
    let hint = |error: QuantityError| error.hint().expect("a hint");
    assert!(hint(units::Time::parse("1:75").expect_err("refused")).contains("75 s"));
    assert!(hint(units::Length::parse(&"9".repeat(500)).expect_err("refused")).contains("16 ft 8 in"));
    // A number of 110 digits is known by its first 40.
    let long = format!("{} ft", "9".repeat(110));
    let error = units::Length::parse(&long).expect_err("refused");
    assert_eq!(error.to_string(), format!("\"{}…\" is too large a number", "9".repeat(40)));
    assert_eq!(error.given(), Some(long.as_str()));
}

#[test]
fn a_flow_at_a_pressure_needs_both() {
    let refused = |text| units::flow_at_pressure(text).expect_err("refused");
    assert_eq!(refused("@ 40 psi").to_string(), "\"@ 40 psi\" does not say which flow");
    assert_eq!(refused("0.3 gal/min @").to_string(), "\"0.3 gal/min @\" does not say at which pressure");
    for text in ["@ 40 psi", "0.3 gal/min @", "0.3 gal/min"] {
        assert!(refused(text).hint().expect("a hint").contains("0.30 gal/min @ 40 psi"));
    }
}

#[test]
fn a_doubt_larger_than_the_value_is_refused() {
    let doubted = units::doubted::<units::Speed>;
    for text in ["5 mph +- 900 mph", "5 mph ± 101 %"] {
        let error = doubted(text).expect_err("refused");
        assert_eq!(error.code(), "quantity_doubt_over_value");
        assert!(error.to_string().contains(text) && error.hint().is_some(), "{error}");
    }
    assert!(doubted("5 mph ± 100 %").is_ok());
}

#[test]
fn a_span_and_a_doubt() {
    let (low, high) = units::span::<units::Speed>("4..7 mph").expect("span");
    assert!((low.as_miles_per_hour() - 4.0).abs() < 1e-12 && (high.as_miles_per_hour() - 7.0).abs() < 1e-12);
    assert_eq!(
        units::span::<units::Speed>("7 mph..4 mph").expect_err("turned").code(),
        "quantity_not_a_span"
    );
    let speed = units::doubted::<units::Speed>("5 mph ± 2 %").expect("doubted");
    assert!((speed.either_way.expect("said").as_miles_per_hour() - 0.1).abs() < 1e-12);
    let flow = units::doubted::<units::Flow>("0.27 gal/min +- 0.01 gal/min").expect("doubted");
    assert!((flow.either_way.expect("said").as_gallons_per_minute() - 0.01).abs() < 1e-12);
    assert!(units::doubted::<units::Flow>("0.27 gal/min").expect("plain").either_way.is_none());
}
