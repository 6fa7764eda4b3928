//! Nonsense in every option of every command: exit status 2 and a message that helps, never a crash.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{Ran, run};

/// Every command with every option that takes a value, each with a good one.
const COMMANDS: [&[&str]; 12] = [
    &["course", "--width", "20 in", "--speed", "5 mph"],
    &["speed", "--distance", "204 ft", "--time", "28 s", "--dash", "5 mph", "--timer", "0.2 s"],
    &["speed", "--distance", "204 ft", "--there", "28 s", "--back", "28 s"],
    &["rate", "--flow", "0.3 gal/min", "--speed", "5 mph", "--width", "20 in"],
    &["rate", "--flow", "0.3 gal/min", "--speed", "5 mph", "--row", "30 in", "--tips-per-row", "3"],
    &["rate", "--catch", "15 fl oz", "--course", "204 ft", "--width", "20 in", "--kind", "boomless"],
    &["rate", "--used", "6 gal", "--distance", "660 ft", "--swath", "20 ft"],
    &["flow", "--rated", "0.3 gal/min @ 40 psi", "--pressure", "30 psi", "--density", "10 lb/gal"],
    &[
        "pattern",
        "--angle",
        "110 deg",
        "--height",
        "20 in",
        "--spacing",
        "20 in",
        "--tips",
        "13",
        "--groove",
        "100 mm",
    ],
    &[
        "spacing",
        "--intended",
        "20 in",
        "--step",
        "1/8 in",
        "--limit",
        "5 %",
        "--fixed",
        "1",
        "20 in",
        "20 in",
    ],
    &[
        "catch",
        "--time",
        "30 s",
        "--step",
        "1 fl oz",
        "--limit",
        "10 %",
        "--rated",
        "0.25 gal/min @ 40 psi",
        "--pressure",
        "40 psi",
        "--cup-holds",
        "32 fl oz",
        "--timer",
        "0.2 s",
        "--cup-scale",
        "1 %",
        "--watch",
        "0.1 %",
        "--handling",
        "0.5 %",
        "--risk",
        "0.05",
        "--density",
        "8.33 lb/gal",
        "14",
        "15",
    ],
    &[
        "load",
        "--area",
        "25 ac",
        "--rate",
        "20 gal/ac",
        "--tank",
        "500 gal",
        "--product",
        "Product A: 2 pt/ac",
    ],
];

/// Commands whose two ways of saying a thing do not go together.
const OTHER_WAYS: [&[&str]; 3] = [
    &["rate", "--used", "6 gal", "--area", "3 ac"],
    &["flow", "--size", "03", "--flow", "0.26 gal/min"],
    &["course", "--width", "20 in", "--units", "us"],
];

/// Doubts may be nothing at all: a photo finish, a cup gauged to the drop.
const MAY_BE_NOTHING: [&str; 4] = ["--timer", "--cup-scale", "--watch", "--handling"];

/// Good values made nonsense, each with what must be seen of it in the message.
fn spoiled(option: &str, good: &str) -> Vec<(String, String)> {
    let unit = good.split_once(' ').map_or("", |(_, unit)| unit);
    let other = if good.contains("psi") { "20 s" } else { "20 psi" };
    let mut bad: Vec<(String, String)> =
        ["corn", "NaN", "inf", "20 parsecs", "1,234", "🌽", "in 20", "1e999", other]
            .iter()
            .map(|text| ((*text).to_string(), (*text).to_string()))
            .collect();
    bad.extend([(String::new(), String::new()), ("   ".into(), String::new())]);
    if option == "--product" {
        // A name may be any word or number; products have a test of their own.
        return bad;
    }
    for number in ["-5", "NaN", "inf", "1,234"] {
        bad.push((format!("{number} {unit}"), number.replace('-', "−")));
    }
    if option == "--fixed" {
        // A list: 1,234 names two tips there.
        bad.retain(|(text, _)| !text.contains("1,234"));
    }
    if !MAY_BE_NOTHING.contains(&option) {
        bad.push((format!("0 {unit}"), "0".into()));
    }
    bad
}

/// The message is the user's to understand: the option, what was given, what would do.
fn helps(ran: &Ran, args: &[&str], named: &str, given: &str) {
    assert_eq!((ran.status, ran.out.as_str()), (2, ""), "{args:?}: {ran:?}");
    assert!(ran.err.contains(named), "{args:?} does not name {named}: {ran:?}");
    assert!(ran.err.contains(given), "{args:?} does not show {given}: {ran:?}");
    assert!(
        ran.err.lines().filter(|line| !line.trim().is_empty()).count() >= 2,
        "{args:?}: no help in {ran:?}"
    );
    for word in ["panicked", "RUST_BACKTRACE", "this is a fault of ours", "unwrap", "Some(", "None"] {
        assert!(!ran.err.contains(word), "{args:?}: {ran:?}");
    }
}

#[test]
fn nonsense_in_any_option_is_answered_with_what_would_do() {
    let mut tried = 0;
    for args in COMMANDS.iter().chain(&OTHER_WAYS) {
        assert_eq!(run(args).status, 0, "the good values are good: {args:?}: {:?}", run(args));
        for place in 1..args.len() {
            let option = args[place - 1];
            if !option.starts_with("--") {
                continue;
            }
            for (text, given) in spoiled(option, args[place]) {
                let mut args = args.to_vec();
                args[place] = &text;
                helps(&run(&args), &args, option, &given);
                tried += 1;
            }
        }
    }
    assert!(tried > 700, "{tried}");
}

#[test]
fn nonsense_in_readings_gaps_and_marks_names_which_one() {
    let catch: &[&str] = &["catch", "--time", "30 s", "--step", "1 fl oz", "14"];
    let gaps: &[&str] = &["spacing", "--intended", "20 in", "20 in"];
    let marks: &[&str] = &["spacing", "--intended", "20 in", "--marks", "0 in"];
    for (before, unit, named) in [(catch, "fl oz", "tip 2"), (gaps, "in", "gap 2"), (marks, "in", "mark 2")] {
        for (number, given) in
            [("corn", "corn"), ("-5", "−5"), ("NaN", "NaN"), ("inf", "inf"), ("1,234", "1,234")]
        {
            let text = format!("{number} {unit}");
            let args = [before, &[text.as_str(), "41 in"]].concat();
            helps(&run(&args), &args, named, given);
        }
        for text in ["", "20 psi", "20 parsecs"] {
            let args = [before, &[text, "41 in"]].concat();
            helps(&run(&args), &args, named, text);
        }
    }
    let args = [catch, &["14++15"]].concat();
    helps(&run(&args), &args, "tip 2", "nothing was given");
}

#[test]
fn nonsense_in_a_product_is_told_with_its_name() {
    let before = ["load", "--area", "25 ac", "--rate", "20 gal/ac", "--tank", "500 gal", "--product"];
    for product in [
        "",
        "Product A",
        "Product A:",
        ": 2 pt/ac",
        "Product A: corn",
        "Product A: -2 pt/ac",
        "Product A: 0 pt/ac",
        "Product A: NaN pt/ac",
        "Product A: inf pt/ac",
        "Product A: 2 psi",
        "Product A: 2",
        "Product A: 8 oz/ac",
        "Product A: 0 % v/v",
        "Product A: 200 % v/v",
        "Product A: 1.5 lb ai/ac",
        "Product A: 2 lb ai/ac at 0 %",
        "Product A: 2 lb ai/ac at 120 %",
        "Product A: 1.5 lb ai/ac at 0 lb ai/gal",
        "Product A: 1,5 pt/ac",
        "Product A: 9000 gal/ac",
    ] {
        let args = [&before[..], &[product]].concat();
        let ran = run(&args);
        let named = if ran.err.contains("--product") { "--product" } else { "Product A" };
        helps(&ran, &args, named, "");
    }
}

/// Numbers too large or too small for any sprayer, in every unit: refused or answered, never a crash, and no
/// answer that is no number.
#[test]
fn numbers_beyond_all_sense_do_no_harm() {
    let numbers =
        [format!("1{}", "0".repeat(100)), format!("0.{}1", "0".repeat(100)), "9".repeat(20), "9".repeat(400)];
    for args in COMMANDS {
        for place in 1..args.len() {
            let Some((_, unit)) = args[place].split_once(' ').filter(|_| args[place - 1].starts_with("--"))
            else {
                continue;
            };
            for number in &numbers {
                let text = format!("{number} {unit}");
                let mut args = args.to_vec();
                args[place] = &text;
                let ran = run(&[&args, &["--json"][..]].concat());
                assert!(matches!(ran.status, 0 | 2), "{args:?}: {ran:?}");
                for word in ["panicked", "NaN", "inf ", "this is a fault of ours"] {
                    assert!(!ran.all().contains(word), "{word} in {args:?}: {ran:?}");
                }
            }
        }
    }
}

#[test]
fn letters_that_steer_a_terminal_do_not_reach_it() {
    let ran = run(&["course", "--width", "\u{1b}[31mred\u{1b}[0m"]);
    assert!(ran.status == 2 && !ran.all().contains('\u{1b}'), "{ran:?}");
    let line = "{\"time\": \"30 s\", \"step\": \"1 fl oz\", \"readings\": [\"\\u001b[31m14\"]}";
    let ran = common::run_with(&["catch", "--batch", "-"], line.as_bytes());
    assert!(ran.status == 2 && !ran.all().contains('\u{1b}'), "{ran:?}");
}

/// What no sprayer has is refused in words with the text as it was typed, or answered with a doubt.
#[test]
fn what_no_sprayer_has_is_not_answered_without_a_word() {
    let rate = ["rate", "--flow", "0.3 gal/min", "--speed", "5 mph", "--width", "0.000001 in"];
    let flow = ["flow", "--size", "03", "--flow", "100000 gal/min"];
    for (args, told) in [
        (&rate[..], "--width: the width must be 1/4 in to 500 ft, got \"0.000001 in\""),
        (
            &["rate", "--used", "6 gal", "--distance", "660 ft", "--swath", "0.1 in"],
            "--swath: the swath must be",
        ),
        (&flow[..], "at most 1000 psi can be"),
        (&["flow", "--size", "03", "--pressure", "100000 psi"], "at most 1000 psi can be"),
        (&["course", "--width", "0.0001 in"], "1 in to 200 ft, got \"0.0001 in\""),
        (&["course", "--width", "9999999999 ft"], "1 in to 200 ft, got \"9999999999 ft\""),
    ] {
        helps(&run(args), args, "", told);
    }
    for psi in ["2 psi", "400 psi"] {
        let ran = run(&["flow", "--size", "03", "--pressure", psi]);
        assert!(ran.status == 0 && ran.out.contains("units right?"), "{ran:?}");
    }
}

#[test]
fn what_would_do_is_said_once() {
    let line = b"{\"time\": \"30 s\", \"step\": \"1 fl oz\", \"risk\": 0.9, \"readings\": [14, 14]}";
    let ran = common::run_with(&["catch", "--batch", "-"], line);
    assert_eq!(ran.out.matches("less than 0.5").count(), 1, "{ran:?}");
    assert!(ran.all().contains("risk of 0.9 cannot be"), "{ran:?}");
}
