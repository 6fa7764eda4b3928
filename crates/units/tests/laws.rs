//! Laws that hold for every input: round trips, no panic on any bytes, scaling.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use proptest::prelude::*;
use units::{Dimension, Quantity, Unit, Volume, base_units, canonical};

const ALL: [Dimension; 14] = [
    Dimension::Length,
    Dimension::Area,
    Dimension::Volume,
    Dimension::Mass,
    Dimension::Time,
    Dimension::Speed,
    Dimension::Flow,
    Dimension::Pressure,
    Dimension::Density,
    Dimension::VolumePerArea,
    Dimension::MassPerArea,
    Dimension::WorkRate,
    Dimension::Angle,
    Dimension::Ratio,
];

proptest! {
    #[test]
    fn no_text_makes_the_parsers_panic(text in "\\PC{0,60}") {
        for dimension in ALL {
            let _ = units::quantity(&text, dimension);
        }
        let _ = units::flow_at_pressure(&text);
        let _ = units::doubted::<Volume>(&text);
        let _ = units::span::<Volume>(&text);
        let _ = units::Caught::parse(&text, None);
        let _ = units::decimal(&text);
    }

    #[test]
    fn no_likely_text_makes_the_parsers_panic(text in "[0-9½ .,:/+±@'\"-]{0,8} ?(fl oz|ft|in|gal/ac|/|%|ft2|oz)?[0-9 /.]{0,4}(in|pt)?") {
        for dimension in ALL {
            let _ = units::quantity(&text, dimension);
        }
    }

    #[test]
    fn no_bytes_make_the_parsers_panic(bytes in prop::collection::vec(any::<u8>(), 0..80)) {
        let text = String::from_utf8_lossy(&bytes);
        for dimension in ALL {
            let _ = units::quantity(&text, dimension);
        }
    }

    #[test]
    fn what_is_printed_reads_back(value in 1e-6..1e9_f64, place in 0..40_usize) {
        let row = base_units()[place % base_units().len()];
        let unit = Unit::named(row.symbol).expect("row of the table");
        // One type stands for all: the printing only looks at the number and the unit.
        let written = units::quantity(&format!("{value} {}", row.symbol), row.dimension).expect("reads");
        let printed = written.canonical();
        let again = units::quantity(&printed, row.dimension).expect("reads back");
        prop_assert_eq!(again.si().to_bits(), written.si().to_bits());
        prop_assert_eq!(again.canonical(), printed);
        prop_assert!((written.si() / (value * unit.si_factor()) - 1.0).abs() < 1e-15);
    }

    #[test]
    fn a_quantity_printed_in_a_unit_reads_back(gallons in 1e-6..1e9_f64, place in 0..11_usize) {
        let volumes = ["gal", "qt", "pt", "fl oz", "imp gal", "imp qt", "imp pt", "imp fl oz", "L", "mL", "m3"];
        let unit = Unit::named(volumes[place]).expect("a volume");
        let printed = canonical(Volume::gallons(gallons), &unit);
        let again = Volume::parse(&printed).expect("reads back");
        prop_assert!((again.as_gallons() / gallons - 1.0).abs() < 5e-15);
        prop_assert_eq!(canonical(again, &unit), printed);
    }

    #[test]
    fn feet_and_inches_add_up(feet in 0_u32..5000, inches in 1_u32..12, sixteenths in 1_u32..16) {
        let text = format!("{feet} ft {inches} {sixteenths}/16 in");
        let expected = f64::from(feet) * 12.0 + f64::from(inches) + f64::from(sixteenths) / 16.0;
        let length = units::Length::parse(&text).expect("reads");
        prop_assert!((length.as_inches() - expected).abs() < 1e-9);
    }

    #[test]
    fn a_comma_between_digits_is_always_refused(whole in 1_u32..9999, behind in 0_u32..9999) {
        let text = format!("{whole},{behind} ft");
        let refused = matches!(units::quantity(&text, Dimension::Length), Err(units::QuantityError::Comma { .. }));
        prop_assert!(refused);
    }
}
