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
        let known = [
            "catch_again",
            "look_at_tip",
            "read_pressure",
            "open_strainer",
            "swap_tips",
            "second_pressure",
            "new_tip",
        ];
        assert!(known.contains(&word(next, "/what")));
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

/// Four tips 10 % low as a whole, with more told of them.
fn low(more: &str) -> String {
    format!(
        r#"{{"rated": "0.30 gal/min @ 40 psi", "pressure": "40 psi", "time": "30 s", "step": "5 mL", "sections": [["510 mL", "515 mL", "510 mL", "510 mL"]]{more}}}"#
    )
}

#[test]
fn what_was_read_beside_the_cups_takes_the_offset_apart() {
    let plain = line(&low(""));
    assert!(plain["boom"]["parts"].is_null());
    // 32.4 psi at a tip: √(32.4 ÷ 40) = 0.9.
    let at_tip = line(&low(r#", "tip_pressure": [{"tip": 2, "pressure": "32.4 psi", "marks": "1 psi"}]"#));
    let parts = &at_tip["boom"]["parts"];
    assert!((number(parts, "/pressure_percent/value") + 19.0).abs() < 3.0, "{parts}");
    assert!(number(parts, "/set_percent/low") < 0.0 && number(parts, "/set_percent/high") > 0.0, "{parts}");
    // 40 and 80 psi with 7.6 psi of each not reaching the tips: 510 × √(72.4 ÷ 32.4) = 762 mL.
    let second = line(&low(
        r#", "gauge_marks": "0.5 psi", "second": {"pressure": "80 psi", "sections": [["760 mL", "765 mL", "765 mL", null]]}"#,
    ));
    let zero = &second["boom"]["parts"]["pressure_zero"];
    assert_eq!(word(zero, "/unit"), "psi");
    assert!(
        number(zero, "/low") < 7.6 && number(zero, "/high") > 7.6 && number(zero, "/value") > 3.0,
        "{zero}"
    );
    assert_eq!(second["tips"][0]["misread"].as_array().map(Vec::len), Some(1));
    assert_eq!(second["tips"][0]["misread_beside"].as_array().map(Vec::len), Some(1));
    let new = line(&low(r#", "new_tip": ["512 mL", {"reading": "1020 mL", "time": "60 s"}]"#));
    assert!(number(&new, "/boom/parts/set_percent/value").abs() < 2.0, "{}", new["boom"]);
    for lang in ["en", "es"] {
        let told = low(r#", "tip_pressure": {"tip": 2, "pressure": "32.4 psi"}"#);
        let ran = run_with(&["diagnose", "--batch", "-", "--json", "--lang", lang], told.as_bytes());
        assert!(ran.out.contains("tips_get_pressure") && !ran.out.contains("boom_all_low"), "{ran:?}");
    }
}

#[test]
fn tips_meant_to_differ_and_cups_timed_together_are_told_so() {
    let text = r#"{"rated": "0.30 gal/min @ 40 psi", "time": "30 s", "step": "5 mL", "groups": [[1, 5, 6]],
        "sections": [["1130 mL", {"reading": "570 mL", "run": 1}, {"reading": "565 mL", "run": 1}, "570 mL", "1130 mL", "1140 mL"]]}"#;
    let found = line(&text.replace('\n', " "));
    assert_eq!(found["tips"].as_array().map(Vec::len), Some(6));
    for tip in found["tips"].as_array().expect("tips") {
        assert!(number(tip, "/states/sound") > 0.9, "{tip}");
    }
}

#[test]
fn what_cannot_be_beside_the_cups_is_told() {
    for (more, code) in [
        (r#", "second": {"pressure": "80 psi", "sections": [["760 mL"]]}"#, "second_other_tips"),
        (r#", "second": {"pressure": "0 psi", "sections": [["760 mL", null, null, null]]}"#, "not_positive"),
        (r#", "second": 7"#, "wrong_kind"),
        (r#", "tip_pressure": [{"tip": 9, "pressure": "30 psi"}]"#, "wrong_kind"),
        (r#", "tip_pressure": [{"tip": 2}]"#, "missing_field"),
        (r#", "groups": [[9]]"#, "wrong_kind"),
        (r#", "groups": 3"#, "wrong_kind"),
    ] {
        for lang in ["en", "es"] {
            let ran = run_with(&["diagnose", "--batch", "-", "--json", "--lang", lang], low(more).as_bytes());
            let object: Value = serde_json::from_str(ran.out.trim()).expect("an object");
            assert_eq!(object["error"]["code"].as_str(), Some(code), "{more}: {ran:?}");
            assert!(object["error"]["message"].as_str().is_some_and(|text| text.len() > 10), "{ran:?}");
        }
    }
    let near =
        line(&low(r#", "second": {"pressure": "41 psi", "sections": [["515 mL", null, null, null]]}"#));
    assert!(near["findings"].to_string().contains("second_pressure_near"), "{near}");
    let unrated = r#"{"time": "30 s", "step": "5 mL", "sections": [["510 mL"]], "tip_pressure": [{"tip": 1, "pressure": "30 psi"}]}"#;
    let ran = run_with(&["diagnose", "--batch", "-", "--json"], unrated.as_bytes());
    assert!(ran.status == 2 && ran.out.contains("needs_rated"), "{ran:?}");
}

/// Eight tips, the third low, with more told of them.
fn third_low(more: &str) -> String {
    let rest = "\"570 mL\", ".repeat(5);
    format!(
        r#"{{"rated": "0.30 gal/min @ 40 psi", "time": "30 s", "step": "5 mL", "sections": [["565 mL", "570 mL", "450 mL", {}]]{more}}}"#,
        rest.trim_end_matches(", ")
    )
}

#[test]
fn a_swap_tells_the_tip_from_its_place() {
    let before = line(&third_low(""));
    let swap =
        before["next"].as_array().expect("next").iter().find(|next| word(next, "/what") == "swap_tips");
    let swap = swap.expect("a low tip may be swapped");
    assert!(word(swap, "/why/text").contains("pressure off"), "{swap}");
    assert_eq!(before["stop"], Value::Null);
    let moved = line(&third_low(r#", "swapped": [{"tips": [3, 4], "readings": ["570 mL", "450 mL"]}]"#));
    let stayed = line(&third_low(r#", "swapped": {"tips": [3, 4], "readings": ["450 mL", "570 mL"]}"#));
    assert!(number(&moved, "/tips/2/at_place") < 0.05 && number(&stayed, "/tips/2/at_place") > 0.9);
    assert!(moved["tips"][0]["at_place"].is_null());
    let text = stayed["findings"].to_string();
    assert!(text.contains("tip_swapped") && text.contains("tank valve shut"), "{text}");
    let again =
        stayed["next"].as_array().expect("next").iter().any(|next| word(next, "/what") == "swap_tips");
    assert!(!again, "{stayed}");
}

#[test]
fn what_was_seen_counts_and_is_told() {
    let partly = |more: &str| number(&line(&third_low(more)), "/tips/2/states/partly_plugged");
    let (plain, streaky) = (partly(""), partly(r#", "seen": [{"tip": 3, "what": "streaky_fan"}]"#));
    assert!(streaky > plain, "{plain} {streaky}");
    assert!(partly(r#", "looked": {"strainers_clean": "no"}"#) > plain);
    let told = line(&third_low(r#", "seen": [{"tip": 2, "what": "drips"}], "looked": {"foam": "yes"}"#));
    let text = told["findings"].to_string();
    assert!(text.contains("check_valves_leak") && text.contains("cups_foam"), "{text}");
    // A leaking check valve changes no cup.
    let drips = line(&third_low(r#", "looked": {"no_drip_after_5_s": "no"}"#));
    assert_eq!(drips["tips"], line(&third_low(""))["tips"]);
}

#[test]
fn an_even_boom_says_why_nothing_is_next() {
    let even = r#"{"time": "30 s", "step": "5 mL", "sections": [["570 mL", "570 mL", "565 mL", "570 mL"]]}"#;
    for lang in ["en", "es"] {
        let ran = run_with(&["diagnose", "--batch", "-", "--json", "--lang", lang], even.as_bytes());
        let object: Value = serde_json::from_str(ran.out.trim()).expect("an object");
        assert_eq!(object["next"].as_array().map(Vec::len), Some(0), "{object}");
        assert!(word(&object, "/stop/code").starts_with("stop_"), "{object}");
    }
}

#[test]
fn what_cannot_have_been_seen_is_told() {
    for (more, code) in [
        (r#", "swapped": [{"tips": [3], "readings": ["570 mL"]}]"#, "wrong_kind"),
        (r#", "swapped": [{"tips": [3, 3], "readings": ["570 mL", "570 mL"]}]"#, "wrong_kind"),
        (r#", "swapped": [{"tips": [3, 12], "readings": ["570 mL", "570 mL"]}]"#, "wrong_kind"),
        (r#", "seen": [{"tip": 3, "what": "sad"}]"#, "wrong_kind"),
        (r#", "looked": {"foam": "maybe"}"#, "wrong_kind"),
        (r#", "looked": {"weather": "no"}"#, "unknown_field"),
        (r#", "looked": ["foam"]"#, "wrong_kind"),
    ] {
        for lang in ["en", "es"] {
            let ran =
                run_with(&["diagnose", "--batch", "-", "--json", "--lang", lang], third_low(more).as_bytes());
            let object: Value = serde_json::from_str(ran.out.trim()).expect("an object");
            assert_eq!(object["error"]["code"].as_str(), Some(code), "{more}: {ran:?}");
            assert!(object["error"]["message"].as_str().is_some_and(|text| text.len() > 10), "{ran:?}");
        }
    }
}

#[test]
fn a_seasons_own_records_move_what_is_believed() {
    let place = folder("records");
    let worn = place.join("worn.toml");
    std::fs::write(&worn, "[tips]\nsound = 500\nworn = 400\n[cups]\nright = 1000\n").expect("records");
    let worn = worn.to_str().expect("a path");
    // 8 % high: sound by chance, or worn.
    let text = r#"{"rated": "0.30 gal/min @ 40 psi", "time": "30 s", "step": "5 mL", "sections": [["570 mL", "565 mL", "605 mL", "570 mL", "570 mL"]]}"#;
    let chance = |more: &[&str]| {
        let ran = run_with(&[&["diagnose", "--batch", "-", "--json"], more].concat(), text.as_bytes());
        let found: Value = serde_json::from_str(ran.out.trim()).expect("an object");
        number(&found, "/tips/2/states/worn")
    };
    let (before, after) = (chance(&[]), chance(&["--records", worn]));
    assert!(after > before + 0.02, "{before} {after}");
    // A visit in which every tip was settled counts as well: here the whole of it.
    let visit = place.join("visit.toml");
    let text = "[sprayer]\ntips = 4\nspacing = \"20 in\"\n[catch]\ntime = \"30 s\"\ncup_marks = \"5 mL\"\n[[catch.round]]\n\
                readings = [570, 565, 450, 570]\n[[catch.round]]\nafter = \"after cleaning\"\ntips = [3]\nreadings = [568]\n";
    std::fs::write(&visit, text).expect("a visit");
    let moved = chance(&["--records", visit.to_str().expect("a path"), "--records", worn]);
    assert!((1e-9..0.1).contains(&(moved - after).abs()), "{after} {moved}");
    for (wrong, code) in [("[tips]\nsound = -3\n", "wrong_kind"), ("[tips]\ngreen = 3\n", "unknown_field")] {
        let path = place.join("wrong.toml");
        std::fs::write(&path, wrong).expect("records");
        let file = path.to_str().expect("a path");
        for lang in ["en", "es"] {
            let ran = run(&[
                "diagnose",
                root().join("demo/willow-bend.toml").to_str().expect("a path"),
                "--records",
                file,
                "--lang",
                lang,
            ]);
            assert!(ran.status == 2 && ran.err.contains("wrong.toml"), "{code}: {ran:?}");
        }
    }
}
