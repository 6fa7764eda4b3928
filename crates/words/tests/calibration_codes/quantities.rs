//! Everything that can be wrong with a written quantity or a reading is said in both languages, by the real parsers.

use crate::said::Said;
use units::{
    Caught, Coded, Dimension, Instrument, Length, Marks, Quantity, QuantityError, Reading, Speed, Unit,
    Volume, Written,
};
use words::{Language, Words};

fn refusal(text: &str, wanted: Dimension) -> QuantityError {
    units::quantity(text, wanted).expect_err(text)
}

fn written(text: &str, dimension: Dimension) -> Written {
    units::quantity(text, dimension).expect(text)
}

/// One of each, and of those that name what is needed one for each dimension.
fn every_quantity_error() -> Vec<QuantityError> {
    let mut errors: Vec<QuantityError> = Dimension::ALL.iter().map(|wanted| refusal("", *wanted)).collect();
    // Every kind of quantity, written where another was wanted.
    for (text, dimension) in [
        ("20 ft", Dimension::Length),
        ("3 ac", Dimension::Area),
        ("3 gal", Dimension::Volume),
        ("3 lb", Dimension::Mass),
        ("3 s", Dimension::Time),
        ("3 mph", Dimension::Speed),
        ("3 gal/min", Dimension::Flow),
        ("3 psi", Dimension::Pressure),
        ("3 lb/gal", Dimension::Density),
        ("3 gal/ac", Dimension::VolumePerArea),
        ("3 lb/ac", Dimension::MassPerArea),
        ("3 ac/h", Dimension::WorkRate),
        ("3 deg", Dimension::Angle),
        ("3 %", Dimension::Ratio),
    ] {
        let other = if dimension == Dimension::Length { Dimension::Time } else { Dimension::Length };
        let error = refusal(text, other);
        assert!(matches!(&error, QuantityError::WrongUnit { found, .. } if *found == dimension), "{error:?}");
        errors.push(error);
    }
    let long = format!("{} ft", "9".repeat(110));
    for (text, wanted) in [
        ("ft", Dimension::Length),
        ("20", Dimension::Length),
        ("20 furlongs", Dimension::Length),
        ("14 oz", Dimension::Volume),
        ("14 oz/min", Dimension::Flow),
        ("14 oz/ac", Dimension::VolumePerArea),
        ("1,234 ft", Dimension::Length),
        ("1,234.5 ft", Dimension::Length),
        ("14,5 fl oz", Dimension::Volume),
        ("-3 s", Dimension::Time),
        (&long, Dimension::Length),
        (&"9".repeat(500), Dimension::Length),
        ("8 in 16 ft", Dimension::Length),
        ("1/0 ft", Dimension::Length),
        ("1:75", Dimension::Time),
    ] {
        errors.push(refusal(text, wanted));
    }
    errors.push(units::flow_at_pressure("0.3 gal/min @").expect_err("no pressure"));
    errors.push(units::flow_at_pressure("@ 40 psi").expect_err("no flow"));
    errors.push(units::doubted::<Speed>("5 mph ± 101 %").expect_err("all doubt"));
    errors.push(units::span::<Speed>("7 mph..4 mph").expect_err("turned round"));
    errors.push(Caught::parse("14 oz", Unit::named("fl oz").as_ref()).expect_err("either ounce"));
    errors
}

#[test]
fn every_mistake_in_a_quantity_is_said_in_both_languages() {
    let mut said = Said::new();
    every_quantity_error().iter().for_each(|error| said.coded(error));
    let step = written("0 fl oz", Dimension::Volume);
    said.coded(&Marks::every(step).expect_err("no step"));
    let marks = Marks::every(written("10 g", Dimension::Mass)).expect("marks");
    let reading = written("14 fl oz", Dimension::Volume);
    said.coded(&Reading::new(reading, Some(marks), Instrument::Cup).expect_err("other marks"));
    let is_code = |text: &str| text.starts_with("quantity_") || text.starts_with("reading_");
    said.all_of(&["units/src"], &is_code, "units", "## What is wrong with a written quantity");
}

/// What Spanish names as the units that would do is what the parser takes.
#[test]
fn units_that_would_do_are_taken_as_they_are_named() {
    for language in Language::ALL {
        let words = Words::of(language);
        for dimension in Dimension::ALL {
            let named = words.arg(&dimension.would_do_word());
            let list =
                named.replace(", or ", ", ").replace(", o ", ", ").replace(" or ", ", ").replace(" o ", ", ");
            for named in list.split(", ") {
                // What stands in brackets explains the unit; "1:05 for a minute ..." is an example.
                let unit = named.split(" (").next().unwrap_or_default();
                let text = if unit.starts_with("1:05") { "1:05".to_string() } else { format!("3 {unit}") };
                assert!(units::quantity(&text, *dimension).is_ok(), "{}: {text}", language.tag());
            }
        }
    }
}

#[test]
fn a_comma_that_can_be_read_one_way_only_has_a_case_of_its_own() {
    let case = |text: &str| Length::parse(text).expect_err(text).case();
    assert_eq!((case("1,234 ft"), case("1,234.5 ft")), (Some("two_ways"), Some("left_out")));
    let case = |text: &str| Volume::parse(text).expect_err(text).case();
    assert_eq!(case("14 oz"), Some("cup"));
}
