//! What scripts may rely on of `evenswath diagnose`, one file or a batch of lines.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{answer, folder, number, root, run, run_with, word};
use serde_json::Value;

const LINE: &str = r#"{"rated": "0.30 gal/min @ 40 psi", "pressure": "40 psi", "time": "30 s", "step": "10 mL", "sections": [["570 mL", "560 mL", "570 mL", ["300 mL", "310 mL"]], ["500 mL", "490 mL", "500 mL", null, "0 mL"]]}"#;

fn line(text: &str) -> Value {
    let ran = run_with(&["diagnose", "--batch", "-", "--json"], text.as_bytes());
    assert_eq!(ran.status, 0, "{ran:?}");
    serde_json::from_str(ran.out.trim()).expect("an object")
}

#[test]
fn a_line_is_answered_as_the_contract_says() {
    let found = line(LINE);
    let tips = found["tips"].as_array().expect("tips");
    assert_eq!(tips.len(), 9);
    for (place, tip) in (1_u32..).zip(tips) {
        assert!((number(tip, "/number") - f64::from(place)).abs() < 1e-9);
        let states = ["sound", "worn", "partly_plugged", "plugged", "wrong_tip"];
        let sum: f64 = states.iter().map(|state| number(tip, &format!("/states/{state}"))).sum();
        assert!((sum - 1.0).abs() < 1e-9, "{tip}");
        assert_eq!(tip["states"].as_object().expect("states").len(), 5);
        let catches = match place {
            4 => 2,
            8 => 0,
            _ => 1,
        };
        assert_eq!(tip["misread"].as_array().expect("misread").len(), catches);
    }
    assert!(number(&tips[3], "/states/partly_plugged") > 0.9 && number(&tips[8], "/states/plugged") > 0.9);
    assert!(number(&tips[3], "/misread/0") < 0.1);
    let sections = found["sections"].as_array().expect("sections");
    assert_eq!(sections.len(), 2);
    // 500 against 570 mL: 12.3 % less.
    let second = &sections[1];
    assert!(number(second, "/low") < 12.3 && number(second, "/high") > 12.3, "{second}");
    assert!((number(second, "/loss_percent") - 12.3).abs() < 2.0);
    assert!(number(second, "/probability_restricted") > 0.99);
    assert!(number(&sections[0], "/probability_restricted") < 0.01);
    // 0.30 gal/min is 568 mL in half a minute.
    let boom = &found["boom"];
    assert!(number(boom, "/low") < 0.0 && number(boom, "/high") > 0.0, "{boom}");
    assert!(number(boom, "/offset_percent").abs() < 3.0);
    for next in found["next"].as_array().expect("next") {
        assert!(
            ["catch_again", "look_at_tip", "read_pressure", "open_strainer"].contains(&word(next, "/what"))
        );
        assert!(next["where"].is_object() && number(next, "/settles") > 0.0);
        assert!(!word(next, "/why/code").is_empty() && !word(next, "/why/text").is_empty());
    }
}

#[test]
fn a_bad_line_does_not_stop_the_rest() {
    let lines = format!(
        "{LINE}\n{{\"sections\": 7}}\n\nno line\n{{\"sections\": [7]}}\n{}\n{LINE}\n",
        LINE.replace("psi\"", "pints\"")
    );
    for lang in ["en", "es"] {
        let ran = run_with(&["diagnose", "--batch", "-", "--json", "--lang", lang], lines.as_bytes());
        assert_eq!(ran.status, 2, "{ran:?}");
        let objects: Vec<Value> =
            ran.out.lines().map(|line| serde_json::from_str(line).expect("an object")).collect();
        let codes: Vec<Option<&str>> = objects.iter().map(|one| one["error"]["code"].as_str()).collect();
        assert_eq!(objects.len(), 6);
        assert!(codes[0].is_none() && codes[5].is_none());
        assert_eq!(codes[1..4], [Some("no_sections"), Some("not_json"), Some("wrong_kind")]);
        assert!(codes[4].is_some());
        assert_eq!(objects[0], objects[5]);
        assert_eq!(ran.err.lines().count(), 4, "{ran:?}");
    }
}

#[test]
fn a_test_in_toml_is_the_same_as_a_line() {
    let place = folder("diagnose");
    let path = place.join("test.toml");
    let text = "rated = \"0.30 gal/min @ 40 psi\"\npressure = \"40 psi\"\ntime = \"30 s\"\nstep = \"10 mL\"\n\
                sections = [[\"570 mL\", \"560 mL\", \"570 mL\", [\"300 mL\", \"310 mL\"]], \
                [\"500 mL\", \"490 mL\", \"500 mL\", \"-\", \"0 mL\"]]\n";
    std::fs::write(&path, text).expect("a file");
    assert_eq!(answer(&["diagnose", path.to_str().expect("a path")]), line(LINE));
}

#[test]
fn a_visit_is_diagnosed_from_its_cups() {
    let visit = root().join("demo/willow-bend.toml");
    let path = visit.to_str().expect("a path");
    let found = answer(&["diagnose", path]);
    let worn = &found["tips"][6];
    assert!(number(worn, "/states/worn") > 0.8, "{worn}");
    for (lang, said) in [("en", "Tip 7 is high: most likely a worn tip"), ("es", "La boquilla 7 echa de más")]
    {
        let ran = run(&["diagnose", path, "--lang", lang]);
        assert!(ran.status == 0 && ran.out.contains(said), "{ran:?}");
        assert!(!ran.out.contains("100 %"), "{ran:?}");
    }
    let none =
        run(&["diagnose", root().join("crates/cli/tests/visits/drive-only.toml").to_str().expect("a path")]);
    assert_eq!(none.status, 2, "{none:?}");
}

#[test]
fn without_a_rated_flow_nothing_is_said_of_the_whole_boom() {
    let found = line(r#"{"time": "30 s", "step": "10 mL", "sections": [["570 mL", "565 mL", "560 mL"]]}"#);
    assert!(found["boom"]["offset_percent"].is_null());
    assert!(number(&found, "/tips/0/states/sound") > 0.9);
}

#[test]
fn cups_that_stay_empty_everywhere_are_a_pump_that_is_off() {
    let ran = run_with(
        &["diagnose", "--batch", "-", "--json"],
        br#"{"rated": "0.30 gal/min @ 40 psi", "time": "30 s", "step": "10 mL", "sections": [["0 mL", "0 mL", "0 mL"]]}"#,
    );
    assert!(ran.out.contains("\"boom_is_off\""), "{ran:?}");
}
