//! What scripts may rely on of `evenswath symptom`.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{answer, number, run, run_with, text, word};
use serde_json::Value;

fn list<'a>(value: &'a Value, name: &str) -> &'a Vec<Value> {
    value[name].as_array().unwrap_or_else(|| panic!("{name}: {value}"))
}

#[test]
fn symptoms_are_answered_with_causes_and_the_next_check() {
    let found = answer(&["symptom", "needle_jumps", "foam", "--drive", "shaft"]);
    let causes = list(&found, "causes");
    let sum: f64 = causes.iter().map(|cause| number(cause, "/chance")).sum();
    assert!((sum - 1.0).abs() < 1e-9, "{sum}");
    assert_eq!(word(&causes[0], "/code"), "suction_air");
    assert!(causes.windows(2).all(|two| number(&two[0], "/chance") >= number(&two[1], "/chance")));
    assert!(
        causes.iter().all(|cause| !word(cause, "/text").is_empty() && !word(cause, "/action").is_empty())
    );
    // On a shaft there is no voltage.
    assert!(causes.iter().all(|cause| word(cause, "/code") != "voltage"));
    let next = &found["next"];
    assert_eq!(
        (word(next, "/check"), word(next, "/risk"), word(next, "/costs")),
        ("tank_low", "looking", "nothing")
    );
    assert!(word(next, "/text").starts_with("Engine and pump off"), "{next}");
    assert!(number(next, "/minutes") >= 1.0 && found["stop"].is_null());
    // What each answer would make the likeliest.
    assert_eq!(word(next, "/likeliest_after_yes/code"), "low_water");
    let after = answer(&["symptom", "needle_jumps", "foam", "--drive", "shaft", "--yes", "tank_low"]);
    let first = &list(&after, "causes")[0];
    assert_eq!(word(first, "/code"), "low_water");
    assert!((number(first, "/chance") - number(next, "/likeliest_after_yes/chance")).abs() < 1e-9);
}

#[test]
fn it_stops_where_it_is_settled_and_where_nothing_tells() {
    let settled = answer(&["symptom", "drips", "--yes", "single_tips_drip", "--no", "drip_stops"]);
    assert_eq!((&settled["next"], word(&settled, "/stop")), (&Value::Null, "settled"));
    let skipped = ["symptom", "section_weak", "--skip", "valve_sticks", "--skip", "section_strainer_dirty"];
    let none = answer(&skipped);
    assert_eq!((&none["next"], word(&none, "/stop")), (&Value::Null, "nothing_more"));
    assert!(text(&skipped).contains("a sprayer mechanic or"), "{}", text(&skipped));
}

#[test]
fn the_table_is_data() {
    let table = answer(&["symptom"]);
    let (symptoms, causes, checks) =
        (list(&table, "symptoms"), list(&table, "causes"), list(&table, "checks"));
    assert_eq!((symptoms.len(), causes.len(), checks.len()), (10, 27, 32));
    for row in list(&table, "brings").iter().chain(causes).chain(checks) {
        assert!(word(row, "/source").len() > 10, "{row}");
    }
    for row in list(&table, "brings") {
        let known = |list: &[Value], code: &str| list.iter().any(|one| word(one, "/code") == code);
        assert!(known(symptoms, word(row, "/symptom")) && known(causes, word(row, "/cause")), "{row}");
        assert!((0.0..1.0).contains(&number(row, "/how_often")));
    }
    let page = text(&["symptom"]);
    assert!(symptoms.iter().all(|one| page.contains(word(one, "/code"))), "{page}");
}

#[test]
fn the_pressure_says_how_far_the_needle_may_swing() {
    // 0.4 bar at 40 psi, 1.0 bar at 100 psi: French order of 18 December 2008, annex IV B, 3.2.1.
    for (pressure, swing) in [("40 psi", "0.4 bar"), ("100 psi", "1 bar")] {
        let page = text(&["symptom", "knocks", "--pressure", pressure, "--units", "metric"]);
        let line = page.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(line.contains(&format!("More than {swing} of swing")), "{line}");
    }
}

#[test]
fn what_cannot_be_says_what_would_do() {
    for (args, told) in [
        (vec!["symptom", "fome"], vec!["fome", "needle_jumps"]),
        (vec!["symptom", "foam", "--yes", "tank"], vec!["--yes", "tank", "tank_low"]),
        (vec!["symptom", "--no", "tank_low"], vec!["at least one symptom"]),
        (vec!["symptom", "foam", "--absent", "foam"], vec!["foam", "two ways"]),
        (vec!["symptom", "foam", "--drive", "steam"], vec!["--drive", "steam", "12_volt"]),
        (vec!["symptom", "weak_engine_off", "--drive", "shaft"], vec!["weak_engine_off", "kind of sprayer"]),
        (vec!["symptom", "foam", "--pressure", "40"], vec!["--pressure"]),
    ] {
        let ran = run(&args);
        assert_eq!((ran.status, ran.out.as_str()), (2, ""), "{args:?}: {ran:?}");
        for part in told {
            assert!(ran.err.contains(part), "{args:?}: {}", ran.err);
        }
    }
}

#[test]
fn a_visit_tells_what_was_seen() {
    let file = "[setting]\npressure = \"40 psi\"\n[symptoms]\nseen = [\"no_pressure\"]\ndrive = \"shaft\"\nno = [\"shaft_slow\"]\n";
    let ran = run_with(&["visit", "check", "-", "--json"], file.as_bytes());
    assert_eq!(ran.status, 0, "{ran:?}");
    let found: Value = serde_json::from_str(ran.out.trim()).expect("an object");
    assert!(
        !list(&found["symptoms"], "causes").is_empty() && found["symptoms"]["next"].is_string(),
        "{found}"
    );
    let actions = list(&found, "actions");
    assert!(actions.iter().any(|action| word(action, "/where") == "symptoms"), "{actions:?}");
    let page = run_with(&["visit", "check", "-"], file.as_bytes()).out;
    assert!(page.contains("Seen: will not build pressure"), "{page}");
    let other = "[symptoms]\nseen = [\"drips\"]\nabsent = [\"drips\"]\n";
    let ran = run_with(&["visit", "check", "-"], other.as_bytes());
    assert_eq!(ran.status, 2);
    assert!(ran.err.contains("symptoms") && ran.err.contains("two ways"), "{}", ran.err);
}
