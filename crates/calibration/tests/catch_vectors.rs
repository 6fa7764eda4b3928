//! `measured` and the comparison with new, held to vectors made with GTC 1.5.1 and confirmed by `uncertainties`
//! 3.2.3 (general-purpose libraries for measurement uncertainty). `tools/vectors/measured.py` remakes them.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use calibration::catch::{
    Catch, LimitProfile, NewTip, ReadingErrors, Risk, Round, RoundKind, TipCatches, TipState, Uncertainties,
    against_new, probability_within, summarise, total_flow_with,
};
use calibration::doubt::{Budget, Contribution, DoubtOf, Known, Tie};
use serde_json::Value;
use sprayer::{GroupId, RatedFlow, WATER_AT_20_C};
use units::{Caught, Dimension, Marks, Pressure, Quantity, Time};

fn vectors() -> Value {
    serde_json::from_str(include_str!("vectors/measured.json")).expect("the vectors are JSON")
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_else(|| panic!("{value} is no text"))
}

fn list(value: &Value) -> &[Value] {
    value.as_array().unwrap_or_else(|| panic!("{value} is no list"))
}

/// Percentages agree to 1e-9 of a percent: both sides are exact first-order sums in double precision.
fn near(ours: f64, theirs: &Value, what: &str) {
    let theirs = number(theirs);
    assert!((ours - theirs).abs() < 1e-9, "{what}: {ours}, but the reference gives {theirs}");
}

fn round_of(case: &Value) -> Round {
    let tip = |tip: &Value| TipCatches {
        number: u32::try_from(tip["number"].as_u64().expect("a number")).expect("small"),
        group: GroupId(0),
        section: 0,
        catches: list(&tip["catches"]).iter().map(catch_of).collect(),
    };
    Round {
        kind: RoundKind::AsFound,
        tips: list(&case["tips"]).iter().map(tip).collect(),
        density: WATER_AT_20_C,
        time: Time::seconds(30.0),
        unit: None,
    }
}

fn catch_of(catch: &Value) -> Catch {
    let caught = Caught::parse(text(&catch["reading"]), None).expect("a reading");
    let step = units::quantity(text(&catch["step"]), Dimension::Volume).expect("a step");
    let time = Time::parse(text(&catch["time"])).expect("a time");
    let run = catch.get("run").and_then(run_number);
    Catch::new(caught, Some(Marks::every(step).expect("a step")), time, run).expect("a catch")
}

/// Runs are named by a number or a word; any stable number will do.
fn run_number(run: &Value) -> Option<u32> {
    match run {
        Value::Number(number) => number.as_u64().and_then(|number| u32::try_from(number).ok()),
        Value::String(word) => {
            Some(word.bytes().fold(7, |sum: u32, byte| sum.wrapping_mul(31) + u32::from(byte)))
        }
        _ => None,
    }
}

fn doubts_of(case: &Value) -> Uncertainties {
    let assumed = &case["assumed"];
    Uncertainties {
        timer: Time::parse(text(&assumed["timer"])).expect("a time"),
        handling: number(&assumed["handling"]),
        cup_scale: number(&assumed["cup_scale"]),
        watch: number(&assumed["watch"]),
    }
}

#[test]
fn expected_from_gtc_deviations_from_the_mean() {
    let limit = LimitProfile::named("mean-10").expect("known").limit(None);
    let mut tips_held = 0;
    for case in list(&vectors()["cases"]) {
        let name = text(&case["name"]);
        let summary = summarise(&round_of(case), &limit, &doubts_of(case), Risk::default()).expect(name);
        let mean = summary.groups[0].mean.expect("some run").as_litres_per_minute();
        near(mean, &case["expected"]["mean_flow_l_per_min"], name);
        for (ours, theirs) in summary.tips.iter().zip(list(&case["expected"]["tips"])) {
            let what = format!("{name}, tip {}", ours.number);
            assert_eq!(ours.state == TipState::Runs, theirs["runs"] == Value::Bool(true), "{what}");
            let (Some(range), Some(expected)) = (ours.measured, theirs.get("measured")) else {
                continue;
            };
            near(100.0 * range.deviation, &expected["deviation_percent"], &what);
            near(100.0 * range.standard, &expected["u_percent"], &what);
            near(100.0 * range.low, &expected["low"], &what);
            near(100.0 * range.high, &expected["high"], &what);
            tips_held += 1;
        }
    }
    assert!(tips_held > 100, "only {tips_held} tips were held to the reference");
}

#[test]
fn expected_from_gtc_against_a_new_tip() {
    let limit = LimitProfile::named("new-10").expect("known").limit(None);
    let mut tips_held = 0;
    for case in list(&vectors()["cases"]) {
        let Some(given) = case.get("against_new") else { continue };
        let (flow, pressure) = units::flow_at_pressure(text(&given["rated"])).expect("rated");
        let new = NewTip::Rated {
            rated: RatedFlow::new(flow, pressure).expect("rated"),
            pressure: Pressure::parse(text(&given["pressure"])).expect("pressure"),
            pressure_doubt: Pressure::parse(text(&given["pressure_u"])).expect("pressure"),
        };
        let ours = against_new(&round_of(case), &new, &limit, &doubts_of(case), Risk::default())
            .expect("worked out");
        for theirs in list(&case["expected"]["tips"]) {
            let Some(expected) = theirs.get("against_new") else { continue };
            let tip =
                ours.iter().find(|tip| u64::from(tip.number) == theirs["number"].as_u64().expect("a number"));
            let range = tip.expect("caught").measured;
            near(100.0 * range.deviation, &expected["deviation_percent"], "deviation");
            near(100.0 * range.standard, &expected["u_percent"], "u");
            near(100.0 * range.low, &expected["low"], "low");
            near(100.0 * range.high, &expected["high"], "high");
            tips_held += 1;
        }
    }
    assert!(tips_held > 10, "only {tips_held} tips were held to the reference");
}

#[test]
fn expected_from_gtc_the_rate_of_the_whole_boom() {
    // The vectors take each cup's reading error as its own; the same watch, or two.
    let limit = LimitProfile::named("mean-10").expect("known").limit(None);
    let mut held = 0;
    for case in list(&vectors()["cases"]) {
        let Some(given) = case.get("drive") else { continue };
        let (round, doubts) = (round_of(case), doubts_of(case));
        let summary = summarise(&round, &limit, &doubts, Risk::default()).expect("worked out");
        let flow = total_flow_with(&round, &summary, &doubts, ReadingErrors::Own).expect("some flow");
        let relative = |name: &str| number(&given[name]);
        let course = units::Length::parse(text(&given["length"])).expect("a length");
        let times: Vec<Time> =
            list(&given["times"]).iter().map(|time| Time::parse(text(time)).expect("a time")).collect();
        let count = times.len() as f64;
        let mean = times.into_iter().sum::<Time>() / count;
        let hand = core::f64::consts::SQRT_2 * doubts.timer.si() / mean.si() / count.sqrt();
        let spacing =
            units::Length::parse(text(&given["spacing"])).expect("a length") * round.tips.len() as f64;
        let spacing = Known::of(spacing, Budget::nothing().own(DoubtOf::Spacing, relative("spacing_u")));
        let unit = units::Unit::named(text(&given["rate_unit"])).expect("a unit");
        for (name, tie) in [("rate_same_watch", Tie::Shared), ("rate_separate_watches", Tie::Own)] {
            let watch = Contribution { of: DoubtOf::Watch, relative: doubts.watch, exponent: 1.0, tie };
            let time = Known::of(mean, Budget::nothing().own(DoubtOf::TimingTheDrive, hand).with(watch));
            let course = Known::of(course, Budget::nothing().own(DoubtOf::Course, relative("length_u")));
            let speed: Known<units::Speed> = course.over(time);
            let rate: Known<units::VolumePerArea> = flow.clone().over(speed.by(spacing.clone()));
            let expected = &case["expected"][name];
            near(rate.value.in_unit(&unit), &expected["value"], name);
            near(rate.ranged().low.in_unit(&unit), &expected["low"], name);
            near(rate.ranged().high.in_unit(&unit), &expected["high"], name);
            held += 1;
        }
    }
    assert!(held > 10, "only {held} rates were held to the reference");
}

#[test]
fn expected_from_jcgm_106_probability_within() {
    // JCGM 106:2012: tolerance 1.44 to 1.76 L/min, u = 0.0301 L/min; probabilities by scipy's normal law.
    let vectors = vectors();
    let (inputs, expected) = (&vectors["conformity"]["inputs"], &vectors["conformity"]["expected"]);
    for row in list(&expected["rows"]) {
        let flow = number(&row["flow_l_per_min"]);
        let ours =
            probability_within(flow, number(&inputs["u"]), number(&inputs["low"]), number(&inputs["high"]));
        near(ours, &row["probability_within"], "probability");
    }
}
