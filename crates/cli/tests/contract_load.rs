//! What scripts may rely on of `evenswath load`: the last part load last, full precision, nothing above the label.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{answer, near, number, word};
use serde_json::Value;

/// Volume, area and the first product's amount of each load.
fn loads(answer: &Value) -> Vec<(f64, f64, f64)> {
    let list = answer["loads"].as_array().expect("loads");
    list.iter()
        .map(|load| {
            (
                number(load, "/volume/value"),
                number(load, "/area/value"),
                number(load, "/products/0/amount/value"),
            )
        })
        .collect()
}

#[test]
fn loads_end_with_the_part_load_and_measures_stay_under_the_label() {
    // 55 ac at 20 gal/ac are 1100 gal: two tanks of 500 gal and 100 gal. 3 pt/ac on 25 ac are 75 pt, 9.375 gal.
    let args = [
        "load",
        "--area",
        "55 ac",
        "--rate",
        "20 gal/ac",
        "--tank",
        "500 gal",
        "--product",
        "Product A: 3 pt/ac",
    ];
    let job = answer(&args);
    let expected = [(500.0, 25.0, 9.375), (500.0, 25.0, 9.375), (100.0, 5.0, 1.875)];
    assert_eq!(loads(&job).len(), expected.len());
    for (load, wanted) in loads(&job).into_iter().zip(expected) {
        near(load.0, wanted.0, 1e-12);
        near(load.1, wanted.1, 1e-12);
        near(load.2, wanted.2, 1e-12);
    }
    // What can be measured is never above what the label has, and not far under it.
    for (rate, tank) in [
        ("7 fl oz/ac", "307 gal"),
        ("1.37 pt/ac", "500 gal"),
        ("13 oz wt/ac", "211 gal"),
        ("0.6 lb/ac", "499 gal"),
    ] {
        let product = format!("Product A: {rate}");
        let job = answer(&[
            "load",
            "--area",
            "55 ac",
            "--rate",
            "17.3 gal/ac",
            "--tank",
            tank,
            "--product",
            &product,
        ]);
        for load in job["loads"].as_array().expect("loads") {
            let (amount, measure) =
                (number(load, "/products/0/amount/value"), number(load, "/products/0/measure/value"));
            assert!(measure <= amount && measure > 0.97 * amount, "{rate}: {measure} of {amount}");
            assert_eq!(load["products"][0]["amount"]["unit"], load["products"][0]["measure"]["unit"]);
        }
    }
}

#[test]
fn products_are_written_as_labels_write_them() {
    // For 25 ac at 20 gal/ac, one tank of 500 gal.
    for (product, amount, unit) in [
        ("A: 3 pt/ac", 9.375, "gal"),
        ("A: 2 pt/100 gal", 1.25, "gal"),
        ("A: 0.25 % v/v", 1.25, "gal"),
        // 1.5 lb at 4 lb to the gallon: 0.375 gal on each acre.
        ("A: 1.5 lb ai/ac at 4 lb ai/gal", 9.375, "gal"),
        // 2 lb at 80 %: 2.5 lb on each acre.
        ("A: 2 lb ai/ac at 80 %", 62.5, "lb"),
    ] {
        let job = answer(&[
            "load",
            "--area",
            "25 ac",
            "--rate",
            "20 gal/ac",
            "--tank",
            "500 gal",
            "--product",
            product,
        ]);
        near(number(&job, "/loads/0/products/0/amount/value"), amount, 1e-9);
        assert_eq!(word(&job, "/loads/0/products/0/amount/unit"), unit, "{product}");
        assert_eq!(word(&job, "/loads/0/products/0/name"), "A");
    }
    // 10 ha at 200 L/ha, 2000 L: 1.5 L/ha are 15 L; 720 g to the litre, 1.44 kg/ha are 2 L/ha; 0.1 % is 2 L.
    for (product, amount, unit) in [
        ("A: 1.5 L/ha", 15.0, "L"),
        ("A: 1.44 kg ai/ha at 720 g ai/L", 20.0, "L"),
        ("A: 0.1 % v/v", 2.0, "L"),
        ("A: 250 g/ha", 2.5, "kg"),
    ] {
        let job = answer(&[
            "load",
            "--area",
            "10 ha",
            "--rate",
            "200 L/ha",
            "--tank",
            "2000 L",
            "--product",
            product,
            "--units",
            "metric",
        ]);
        near(number(&job, "/loads/0/products/0/amount/value"), amount, 1e-9);
        assert_eq!(word(&job, "/loads/0/products/0/amount/unit"), unit, "{product}");
    }
}
