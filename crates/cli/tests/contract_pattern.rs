//! What scripts may rely on of `evenswath pattern`, from options and from a visit's file.
#![allow(clippy::expect_used, clippy::panic, clippy::float_cmp)] // a test fails by panicking; what is exact comes out so

mod common;

use common::{answer, near, number, root, run, run_with, word};
use serde_json::Value;

fn of(more: &[&str]) -> Value {
    let given = ["pattern", "--spacing", "0.5 m", "--tips", "13"];
    answer(&[&given, more].concat())
}

fn tips_of(found: &Value, pointer: &str) -> Vec<u64> {
    let tips = found.pointer(pointer).and_then(Value::as_array).expect("tips");
    tips.iter().filter_map(Value::as_u64).collect()
}

#[test]
fn expected_from_scipy_the_spread_of_ideal_booms() {
    // tools/vectors/boom_pattern.py, over the middle four spacings, in percent; all that is overlapped holds no more than a
    // groove or two beside.
    for (shape, angle, height, spread) in [
        ("triangle", "110", "0.5 m", 6.37),
        ("triangle", "110 deg", "0.35 m", 0.0),
        ("raised-cosine", "80 deg", "0.4 m", 35.3),
        ("even", "110", "0.9 m", 5.6),
    ] {
        let found = of(&["--angle", angle, "--height", height, "--shape", shape]);
        assert!((number(&found, "/spread_percent/high") - spread).abs() < 1.2, "{shape} {height}");
        assert_eq!(number(&found, "/spread_percent/low"), number(&found, "/spread_percent/high"));
    }
}

#[test]
fn a_band_runs_over_five_shapes_and_names_its_limit() {
    let found = of(&["--angle", "110", "--height", "0.5 m", "--units", "metric"]);
    let fans = found["fans"].as_array().expect("fans");
    assert_eq!(fans.len(), 5);
    let spreads: Vec<f64> =
        fans.iter().map(|fan| fan["spread_percent"].as_f64().expect("a number")).collect();
    let (low, high) = (number(&found, "/spread_percent/low"), number(&found, "/spread_percent/high"));
    assert!(spreads.iter().all(|spread| (low..=high).contains(spread)) && low < high);
    assert_eq!(word(&found, "/verdict"), "within");
    assert!(word(&found, "/limit/source").starts_with("uses limits from"));
    assert_eq!(number(&found, "/field_adds_percent/high"), 5.2);
    // 2 × 0.5 × tan 55° = 1.428 m; 1.428 ÷ 0.5 − 1 = 186 %; 1 ÷ (2 tan 55°) = 35.0 cm.
    near(number(&found, "/overlap/wide/value"), 142.8, 1e-3);
    near(number(&found, "/overlap/percent"), 185.6, 1e-3);
    near(number(&found, "/overlap/whole_at/value"), 35.0, 1e-3);
    // Grooves of 100 mm, one after the other, those at the ends not judged.
    let grooves = found["grooves"].as_array().expect("grooves");
    assert!(grooves.len() > 60 && grooves[0]["judged"] == false && grooves[35]["judged"] == true);
    for groove in grooves {
        near(number(groove, "/to/value") - number(groove, "/from/value"), 10.0, 1e-9);
        assert!(number(groove, "/low_percent") <= number(groove, "/high_percent"));
    }
}

#[test]
fn tips_that_are_wrong_are_found_under_their_numbers() {
    let usual = ["--angle", "110", "--height", "0.5 m"];
    let with = |more: &[&str]| of(&[&usual, more].concat());
    let plugged = with(&["--plugged", "5"]);
    assert_eq!((word(&plugged, "/verdict"), tips_of(&plugged, "/lowest/tips")), ("outside", vec![5]));
    assert_eq!((word(&plugged, "/help/kind"), tips_of(&plugged, "/help/tips")), ("clean", vec![5]));
    assert_eq!(
        run(&[
            "pattern",
            "--spacing",
            "0.5 m",
            "--tips",
            "13",
            "--angle",
            "110",
            "--height",
            "0.5 m",
            "--plugged",
            "5",
            "--strict"
        ])
        .status,
        1
    );
    // Flows average out where fans overlap: a fifth more at one tip adds less than two percent.
    let sound = number(&with(&[]), "/spread_percent/high");
    assert!(number(&with(&["--flow", "7=120 %"]), "/spread_percent/high") - sound < 2.0);
    let leaning = with(&["--tilt", "7=25 deg"]);
    assert_eq!(word(&leaning, "/help/kind"), "aim");
    let mirrored = with(&["--tilt", "7=-25 deg"]);
    near(number(&leaning, "/spread_percent/high"), number(&mirrored, "/spread_percent/high"), 1e-9);
    let hanging =
        with(&["--hangs", "7=20 cm", "--offset", "6=5 cm", "--twist", "10 deg", "--groove", "50 mm"]);
    assert!(number(&hanging, "/spread_percent/high") > sound);
    let wanted = with(&["--overlap", "50 %"]);
    // 1.5 × 50 cm ÷ (2 tan 55°) = 26.26 cm = 10.34 in.
    near(number(&wanted, "/overlap/wanted/height/value"), 10.34, 1e-3);
}

#[test]
fn a_low_boom_is_told_which_height_helps() {
    let found = of(&["--angle", "80", "--height", "14 in"]);
    assert_eq!((word(&found, "/verdict"), word(&found, "/help/kind")), ("outside", "height"));
    let helps = number(&found, "/help/height/value");
    let higher = of(&["--angle", "80", "--height", &format!("{helps} in")]);
    assert_eq!(word(&higher, "/verdict"), "within");
    near(number(&higher, "/spread_percent/high"), number(&found, "/help/spread_percent/high"), 1e-6);
}

#[test]
fn a_fan_that_was_caught_stands_instead_of_shapes() {
    let found = of(&[
        "--angle",
        "110",
        "--height",
        "0.5 m",
        "--caught",
        "1",
        "2",
        "3",
        "4",
        "5",
        "5",
        "4",
        "3",
        "2",
        "1",
        "--caught-groove",
        "10 cm",
        "--caught-height",
        "0.5 m",
    ]);
    assert_eq!(found["fans"].as_array().map(Vec::len), Some(1));
    assert_eq!(word(&found, "/fans/0/shape"), "measured");
    // Steps of a fan 1 m wide, half a metre apart, 0.5 m high: neighbours add up to 6 in every groove.
    assert!(number(&found, "/spread_percent/high") < 1e-9, "{found}");
}

#[test]
fn a_visit_brings_its_cups_places_height_and_angle() {
    let path = root().join("demo/willow-bend.toml");
    let path = path.to_str().expect("a path");
    let found = answer(&["pattern", path]);
    assert_eq!(found["tips"].as_array().map(Vec::len), Some(12));
    // Tip 9 was marked at 161 1/2 in.
    near(number(&found, "/tips/8/place/value"), 161.5, 1e-9);
    let visit = answer(&["visit", "check", path]);
    assert_eq!(visit.pointer("/pattern/spread_percent"), found.pointer("/spread_percent"));
    let without = run_with(&["pattern", "-"], b"[sprayer]\ntips = 4\nspacing = \"20 in\"\n");
    assert_eq!(without.status, 2);
    assert!(without.err.contains("fan_angle") && without.err.contains("boom_height"), "{}", without.err);
}
