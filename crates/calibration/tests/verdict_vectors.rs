//! Verdict probabilities held to a second implementation in numpy and scipy, written from the specification on other
//! and finer grids. `tools/vectors/verdict.py` remakes the vectors.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod made;

use calibration::catch::{LimitProfile, summarise};
use calibration::verdict::{Model, judge_round};
use made::{Made, made};
use serde_json::Value;

/// The grids differ; so much is left of their coarseness, and no verdict at a risk of 5 % hangs on it alone.
const AGREE: f64 = 0.012;

#[test]
fn expected_from_numpy_probability_within() {
    let vectors: Value = serde_json::from_str(include_str!("vectors/verdict.json")).expect("JSON");
    let limit = LimitProfile::named("mean-10").expect("known").limit(None);
    let numbers = |list: &Value| -> Vec<f64> {
        list.as_array().expect("a list").iter().map(|number| number.as_f64().expect("a number")).collect()
    };
    let (mut held, mut worst) = (0, 0.0_f64);
    for case in vectors["cases"].as_array().expect("cases") {
        let round = made(&Made {
            readings: case["readings"].as_array().expect("tips").iter().map(numbers).collect(),
            step: case["step"].as_f64().expect("a step"),
            seconds: case["seconds"].as_f64().expect("a time"),
            ..Made::default()
        });
        let model = Model::default();
        let summary = summarise(&round, &limit, &model.doubts, model.risk).expect("worked out");
        let judged = judge_round(&round, &summary, &limit, &model);
        for (tip, expected) in judged.tips.iter().zip(numbers(&case["probability_within"])) {
            let off = (tip.probability_within - expected).abs();
            worst = worst.max(off);
            assert!(
                off < AGREE,
                "{}, tip {}: {}, numpy {expected}",
                case["name"],
                tip.number,
                tip.probability_within
            );
            held += 1;
        }
    }
    assert!(held > 80, "only {held} tips were held, worst {worst}");
}
