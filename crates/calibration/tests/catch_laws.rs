//! Laws of a catch test: the order of tips, the units and the size of all cups do not matter.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::catch::{Catch, Limit, Risk, Round, RoundKind, TipCatches, Uncertainties, summarise};
use proptest::prelude::*;
use sprayer::{GroupId, WATER_AT_20_C};
use units::{Caught, Dimension, Marks, Time};

fn round(readings: &[f64], unit: &str, step: f64, seconds: f64) -> Round {
    let catch = |reading: &f64| {
        let step = units::quantity(&format!("{step} {unit}"), Dimension::Volume).expect("a step");
        let caught = Caught::parse(&format!("{reading} {unit}"), None).expect("a reading");
        Catch::new(caught, Some(Marks::every(step).expect("a step")), Time::seconds(seconds), None)
            .expect("a catch")
    };
    let tip = |(number, reading): (u32, &f64)| TipCatches {
        number,
        group: GroupId(0),
        section: 0,
        catches: vec![catch(reading)],
    };
    Round {
        kind: RoundKind::AsFound,
        tips: (1..).zip(readings).map(tip).collect(),
        density: WATER_AT_20_C,
        time: Time::seconds(seconds),
        unit: None,
    }
}

fn ranges(round: &Round) -> Vec<(f64, f64)> {
    let limit = Limit::own(0.1).expect("a limit");
    let summary = summarise(round, &limit, &Uncertainties::default(), Risk::default()).expect("worked out");
    summary
        .tips
        .iter()
        .filter_map(|tip| tip.measured)
        .map(|range| (range.deviation, range.standard))
        .collect()
}

fn same(one: &[(f64, f64)], other: &[(f64, f64)]) -> bool {
    one.len() == other.len()
        && one
            .iter()
            .zip(other)
            .all(|(one, other)| (one.0 - other.0).abs() < 1e-9 && (one.1 - other.1).abs() < 1e-9)
}

proptest! {
    #[test]
    fn deviations_of_tips_that_run_add_to_nothing(readings in prop::collection::vec(8.0..24.0_f64, 1..70)) {
        let sum: f64 = ranges(&round(&readings, "fl oz", 1.0, 30.0)).iter().map(|(deviation, _)| deviation).sum();
        prop_assert!(sum.abs() < 1e-9);
    }

    #[test]
    fn the_order_of_tips_does_not_matter(readings in prop::collection::vec(8.0..24.0_f64, 1..40)) {
        let turned: Vec<f64> = readings.iter().rev().copied().collect();
        let mut mirrored = ranges(&round(&turned, "fl oz", 1.0, 30.0));
        mirrored.reverse();
        prop_assert!(same(&ranges(&round(&readings, "fl oz", 1.0, 30.0)), &mirrored));
    }

    #[test]
    fn scaling_all_cups_and_marks_does_not_matter(readings in prop::collection::vec(8.0..24.0_f64, 1..40), by in 0.1..10.0_f64) {
        let scaled: Vec<f64> = readings.iter().map(|reading| reading * by).collect();
        prop_assert!(same(&ranges(&round(&readings, "fl oz", 1.0, 30.0)), &ranges(&round(&scaled, "fl oz", by, 30.0))));
    }

    #[test]
    fn the_unit_of_the_cup_does_not_matter(readings in prop::collection::vec(8.0..24.0_f64, 1..40)) {
        let millilitres: Vec<f64> = readings.iter().map(|reading| reading * 29.573_529_562_5).collect();
        prop_assert!(same(&ranges(&round(&readings, "fl oz", 1.0, 30.0)), &ranges(&round(&millilitres, "mL", 29.573_529_562_5, 30.0))));
    }

    #[test]
    fn finer_marks_and_longer_catches_never_widen_the_range(readings in prop::collection::vec(8.0..24.0_f64, 2..40)) {
        let coarse = ranges(&round(&readings, "fl oz", 1.0, 30.0));
        let fine = ranges(&round(&readings, "fl oz", 0.25, 30.0));
        let twice: Vec<f64> = readings.iter().map(|reading| reading * 2.0).collect();
        let longer = ranges(&round(&twice, "fl oz", 1.0, 60.0));
        for place in 0..coarse.len() {
            prop_assert!(fine[place].1 <= coarse[place].1 + 1e-12 && longer[place].1 <= coarse[place].1 + 1e-12);
        }
    }
}
