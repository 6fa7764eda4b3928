//! Whatever bytes come in, the program answers or refuses; it never crashes.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{Ran, run, run_with};
use proptest::prelude::*;

fn config() -> ProptestConfig {
    // Each case starts the program; this many take a few seconds.
    ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() }
}

fn unharmed(ran: &Ran) {
    assert!(matches!(ran.status, 0 | 2), "{ran:?}");
    for word in ["panicked", "this is a fault of ours", "NaN", "overflow"] {
        assert!(!ran.err.contains(word), "{ran:?}");
    }
}

/// Pieces that a visit is made of, whole and spoiled.
fn piece() -> impl Strategy<Value = String> {
    prop_oneof![
        prop::sample::select(vec![
            "[sprayer]\n",
            "[drive]\n",
            "[catch]\n",
            "[[catch.round]]\n",
            "[spacing]\n",
            "[target]\n",
            "[[product]]\n",
            "[job]\n",
            "[refill]\n",
            "[setting]\n",
            "[sprayer.groups]\n",
            "tips = ",
            "spacing = ",
            "course = ",
            "runs = ",
            "time = ",
            "cup_marks = ",
            "readings = ",
            "marks = ",
            "rate = ",
            "name = ",
            "price = ",
            "area = ",
            "used = ",
            "kind = ",
            "\"20 in\"\n",
            "\"204 ft\"\n",
            "[\"27 s\", \"28 s\"]\n",
            "\"30 s\"\n",
            "\"1 fl oz\"\n",
            "[14, 15, \"-\", [14, 15]]\n",
            "\"15 gal/ac\"\n",
            "\"2 pt/ac\"\n",
            "\"$40/gal\"\n",
            "12\n",
            "-1\n",
            "[]\n",
            "{}\n",
            "\"as driven\"\n",
            "\"hand\"\n",
            "\"boomless\"\n",
            "\"\"\n",
            "= ",
            "[",
            "]",
            "\"",
            "\n",
            "#",
            "1e999\n",
            "nan\n",
        ])
        .prop_map(str::to_string),
        "\\PC{0,12}",
        "[0-9.,:/ ]{1,12}",
    ]
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn arbitrary_bytes_as_a_visit_do_no_harm(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        unharmed(&run_with(&["visit", "check", "-"], &bytes));
    }

    #[test]
    fn arbitrary_pieces_of_a_visit_do_no_harm(pieces in prop::collection::vec(piece(), 0..40)) {
        unharmed(&run_with(&["visit", "check", "-", "--json"], pieces.concat().as_bytes()));
    }

    #[test]
    fn the_demo_visit_with_a_few_bytes_changed_does_no_harm(
        changes in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 1..6),
    ) {
        let mut bytes = std::fs::read(common::root().join("demo/willow-bend.toml")).expect("the demo visit");
        for (place, byte) in changes {
            let place = place.index(bytes.len());
            bytes[place] = byte;
        }
        unharmed(&run_with(&["visit", "check", "-"], &bytes));
    }

    #[test]
    fn arbitrary_bytes_as_a_batch_do_no_harm(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        unharmed(&run_with(&["catch", "--batch", "-"], &bytes));
    }

    #[test]
    fn arbitrary_readings_in_a_batch_answer_one_line_each(
        tests in prop::collection::vec(
            prop::collection::vec(prop_oneof!["\\PC{0,10}", "[0-9]{1,9}( fl oz| mL| g)?", Just("-".to_string())], 0..8),
            1..8,
        ),
        time in prop_oneof![Just("30 s".to_string()), "\\PC{0,8}", "[0-9]{1,4} s"],
    ) {
        let line = |readings: &Vec<String>| {
            serde_json::json!({ "time": time, "step": "1 fl oz", "readings": readings }).to_string()
        };
        let batch: Vec<String> = tests.iter().map(line).collect();
        let ran = run_with(&["catch", "--batch", "-"], batch.join("\n").as_bytes());
        unharmed(&ran);
        prop_assert_eq!(ran.out.lines().count(), tests.len());
        for line in ran.out.lines() {
            let answer: serde_json::Value = serde_json::from_str(line).expect("JSON");
            prop_assert!(answer.get("error").is_some() != answer.get("tips").is_some());
        }
    }

    #[test]
    fn arbitrary_lines_of_a_diagnosis_answer_one_line_each(lines in prop::collection::vec(diagnosis_line(), 1..5)) {
        let ran = run_with(&["diagnose", "--batch", "-"], lines.join("\n").as_bytes());
        unharmed(&ran);
        prop_assert_eq!(ran.out.lines().count(), lines.len(), "{:?}: {:?}", lines, ran);
        for line in ran.out.lines() {
            let answer: serde_json::Value = serde_json::from_str(line).expect("JSON");
            prop_assert!(answer.get("error").is_some() != answer.get("tips").is_some());
            for tip in answer["tips"].as_array().into_iter().flatten() {
                let chances = tip["states"].as_object().expect("states").values();
                let sum: f64 = chances.map(|chance| chance.as_f64().unwrap_or(f64::NAN)).sum();
                prop_assert!((sum - 1.0).abs() < 1e-6, "{}", tip);
            }
        }
    }

    #[test]
    fn arbitrary_words_behind_a_command_do_no_harm(
        first in prop::sample::select(vec!["course", "speed", "rate", "flow", "spacing", "catch", "load", "visit", "help"]),
        words in prop::collection::vec(word_or_option(), 0..8),
    ) {
        let words: Vec<&str> = std::iter::once(first).chain(words.iter().map(String::as_str)).collect();
        let ran = run(&words);
        // A word may be the name of a file that is none.
        assert!(matches!(ran.status, 0 | 2 | 3), "{words:?}: {ran:?}");
        assert!(!ran.err.contains("panicked") && !ran.err.contains("this is a fault of ours"), "{words:?}: {ran:?}");
    }
}

/// A line of a diagnosis, of good and spoiled parts.
fn diagnosis_line() -> impl Strategy<Value = String> {
    let reading = || {
        prop_oneof![
            8 => (500_u32..640).prop_map(|read| format!("\"{read} mL\"")),
            1 => Just("null".to_string()),
            1 => Just("\"0 mL\"".to_string()),
            1 => Just("[\"570 mL\", \"300 mL\"]".to_string()),
            1 => Just("{\"reading\": \"570 mL\", \"run\": 1}".to_string()),
            1 => Just("7".to_string()),
        ]
    };
    let sections = (0_usize..4, prop::collection::vec(reading(), 0..9)).prop_map(|(cut, tips)| {
        let (first, second) = tips.split_at(cut.min(tips.len()));
        format!("[[{}], [{}]]", first.join(", "), second.join(", "))
    });
    let more = prop::sample::subsequence(
        vec![
            r#""second": {"pressure": "80 psi", "sections": [["800 mL", null], ["790 mL"]]}"#,
            r#""second": [{"pressure": "40 psi", "sections": [[], ["570 mL"]]}]"#,
            r#""tip_pressure": [{"tip": 2, "pressure": "33 psi", "marks": "1 psi"}]"#,
            r#""tip_pressure": {"tip": 1, "pressure": "4000 psi"}"#,
            r#""new_tip": ["560 mL", "570 mL"]"#,
            r#""gauge_marks": "0.5 psi", "gauge_rests_at": "-3 psi""#,
            r#""groups": [[1]]"#,
            r#""groups": [[2, 3], [1]]"#,
            r#""swapped": [{"tips": [1, 2], "readings": ["450 mL", "570 mL"]}]"#,
            r#""seen": [{"tip": 1, "what": "streaky_fan"}, {"tip": 2, "what": "drips"}]"#,
            r#""looked": {"foam": "yes", "strainers_clean": "no", "gauge_back_to_zero": "no"}"#,
            r#""order": [1, 2]"#,
            r#""seen": 3"#,
        ],
        0..5,
    );
    (sections, more, any::<bool>()).prop_map(|(sections, more, rated)| {
        let rated = if rated { "\"rated\": \"0.30 gal/min @ 40 psi\", " } else { "" };
        let more: String = more.iter().map(|field| format!(", {field}")).collect();
        format!("{{{rated}\"time\": \"30 s\", \"step\": \"5 mL\", \"sections\": {sections}{more}}}")
    })
}

fn word_or_option() -> impl Strategy<Value = String> {
    prop_oneof![
        "[^\0]{0,10}",
        prop::sample::select(vec![
            "--width",
            "20 in",
            "--flow",
            "0.3 gal/min",
            "--speed",
            "5 mph",
            "--json",
            "--",
            "-",
            "--time",
            "30 s",
            "--step",
            "1 fl oz",
            "14",
            "-5",
            "--units",
            "metric",
            "check",
            "new",
            "--size",
            "03",
            "--pressure",
            "30 psi",
            "--marks",
            "--area",
            "25 ac",
            "--rate",
            "20 gal/ac",
            "--tank",
            "500 gal",
            "--product",
            "A: 2 pt/ac",
            "--why",
            "--strict",
        ])
        .prop_map(str::to_string),
    ]
}
