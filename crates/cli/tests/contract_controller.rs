//! What scripts may rely on of a visit with a controller, pulsing valves or several tip sets.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{number, run_with, word};
use serde_json::Value;

/// Six tips of 19 fl oz in 30 s: 6 × 19 × 2 ÷ 128 = 1.781 gal/min; 204 ft in 27.85 s are 4.994 mph.
fn visit(more: &str) -> String {
    format!(
        "[sprayer]\nsections = [3, 3]\nspacing = \"20 in\"\ntip_size = \"03\"\nheld_by = \"rate_controller\"\n[setting]\npressure = \"40 psi\"\n\
         gauge_marks = \"1 psi\"\ncontroller = \"manual\"\n[drive]\ncourse = \"204 ft\"\nruns = [\"27.8 s\", \"27.9 s\"]\n[catch]\ntime = \"30 s\"\n\
         cup_marks = \"1/4 fl oz\"\n[[catch.round]]\nreadings = [19, 19, 19, 19, 19, 19]\n{more}"
    )
}

fn check(text: &str) -> Value {
    let ran = run_with(&["visit", "check", "-", "--json"], text.as_bytes());
    assert_eq!(ran.status, 0, "{ran:?}\n{text}");
    serde_json::from_str(ran.out.trim()).expect("an object")
}

fn codes(found: &Value) -> Vec<String> {
    let list = found["controller"]["findings"].as_array().map_or(&[][..], Vec::as_slice);
    list.iter().map(|one| word(one, "/code").to_string()).collect()
}

#[test]
fn the_flow_shown_is_held_against_all_cups_together() {
    let right = check(&visit("[controller]\nshown_flow = \"1.78 gal/min\"\nshown_speed = \"5 mph\"\n"));
    assert_eq!(word(&right, "/controller/flow/verdict"), "within");
    assert!(number(&right, "/controller/flow/error_percent").abs() < 0.2, "{right}");
    let off = check(&visit("[controller]\nshown_flow = \"2.05 gal/min\"\n"));
    assert_eq!(word(&off, "/controller/flow/verdict"), "outside");
    // 2.05 over 1.781: 15.1 % too much, and 100 counts become 115.1.
    assert!((number(&off, "/controller/flow/factor") - 2.05 / 1.78125).abs() < 1e-4, "{off}");
    let actions = off["actions"].as_array().expect("actions");
    assert!(actions.iter().any(|action| word(action, "/where") == "controller"), "{actions:?}");
    // Half the tips caught: the same sum, less sure, and it is said.
    let readings = visit("[controller]\nshown_flow = \"1.85 gal/min\"\n");
    let some = check(&readings.replace("[19, 19, 19, 19, 19, 19]", "[19, \"-\", 19, \"-\", 19, \"-\"]"));
    assert!(codes(&some).contains(&"controller_flow_scaled".to_string()), "{:?}", codes(&some));
    let all = check(&readings);
    let wide = |found: &Value| number(found, "/controller/flow/high") - number(found, "/controller/flow/low");
    assert!(wide(&some) > 1.3 * wide(&all), "{} {}", wide(&some), wide(&all));
}

#[test]
fn pulsing_valves_give_no_rate_unless_they_stay_open() {
    let of = |duty: &str| {
        check(&visit(&format!(
            "[controller]\nvalves_pulse = \"yes\"\nduty = \"{duty}\"\nshown_flow = \"1.78 gal/min\"\n"
        )))
    };
    let open = of("100 %");
    assert!(open["rate"].is_object() && open["controller"]["flow"].is_object(), "{open}");
    let part = of("60 %");
    assert!(
        part["rate"].is_null() && part["controller"]["flow"].is_null() && part["catch"].is_object(),
        "{part}"
    );
    assert_eq!(codes(&part), ["controller_pulsing"]);
}

#[test]
fn widths_and_closed_sections_are_checked() {
    let found = check(&visit(
        "[controller]\nwidths = [\"60 in\", \"66 in\"]\n[[controller.closed]]\nsection = 1\nbefore = \"40 psi\"\nclosed = \"47 psi\"\nafter = \"40 psi\"\n\
         [[controller.closed]]\nsection = 2\nbefore = \"40 psi\"\nclosed = \"40 psi\"\n",
    ));
    assert_eq!(
        codes(&found),
        [
            "controller_width_off",
            "controller_swath_off",
            "controller_closing_high",
            "controller_closing_nothing"
        ]
    );
    let wrong = visit("[controller]\n[[controller.closed]]\nsection = 1\n");
    let ran = run_with(&["visit", "check", "-"], wrong.as_bytes());
    assert_eq!(ran.status, 2);
    assert!(
        ran.err.contains("controller.closed.before") && ran.err.contains("before = \"40 psi\""),
        "{}",
        ran.err
    );
}

#[test]
fn holding_it_in_manual_is_explained_where_it_was_not() {
    let text = visit("");
    assert!(codes(&check(&text)).is_empty());
    let told = check(&text.replace("controller = \"manual\"\n", ""));
    assert_eq!(codes(&told), ["controller_hold"]);
}

#[test]
fn tip_sets_are_kept_apart() {
    let red = "[[catch.round]]\ntip_set = \"red\"\nreadings = [25, 25, 25, 25, 25, 25]\n";
    let both = check(&visit(red));
    // The last set counts: 25 fl oz in 30 s, and the first does not enter.
    let alone = check(&visit("").replace("[[catch.round]]\nreadings = [19, 19, 19, 19, 19, 19]\n", red));
    assert_eq!(both["rate"], alone["rate"]);
    assert_eq!(both["catch"]["rounds"].as_array().map(Vec::len), Some(1));
    let apart = both["other_tip_sets"].as_array().expect("other sets");
    assert_eq!((apart.len(), word(&apart[0], "/findings/0/code")), (1, "tip_set_apart"));
    assert!(apart[0]["tip_set"].is_null());
    // Nothing is compared over sets: no tip is told as changed since.
    let text = both.to_string();
    assert!(!text.contains("caught_again") && !text.contains("\"since\""), "{text}");
}
