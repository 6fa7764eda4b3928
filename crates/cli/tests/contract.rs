//! What scripts may rely on with every command: JSON alone on standard output, units, exit statuses, words.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{answer, command, finish, folder, near, number, root, run, run_with, text, word};
use serde_json::Value;

/// A run of every command that answers with numbers.
fn every_command() -> Vec<Vec<&'static str>> {
    vec![
        vec!["course", "--width", "20 in", "--speed", "5 mph"],
        vec!["speed", "--distance", "200 ft", "--time", "45 s", "--time", "46 s", "--dash", "3.2 mph"],
        vec!["rate", "--flow", "0.30 gal/min", "--speed", "5 mph", "--width", "20 in"],
        vec!["rate", "--catch", "15 fl oz", "--course", "204 ft", "--width", "20 in"],
        vec!["rate", "--used", "6.5 gal", "--distance", "660 ft", "--swath", "260 in"],
        vec!["rate", "--used", "200 gal", "--area", "13.5 ac"],
        vec!["flow", "--size", "03", "--pressure", "30 psi", "--density", "10.65 lb/gal"],
        vec!["spacing", "--intended", "20 in", "20 in", "21.5 in", "18.5 in"],
        vec!["catch", "--time", "30 s", "--step", "1 fl oz", "14", "14.5", "-", "17"],
        vec![
            "load",
            "--area",
            "30 ac",
            "--rate",
            "20 gal/ac",
            "--tank",
            "500 gal",
            "--product",
            "Product A: 3 pt/ac",
        ],
        vec!["visit", "check", "demo/willow-bend.toml"],
    ]
}

#[test]
fn json_is_one_object_and_nothing_else_on_standard_output() {
    for args in every_command() {
        // Where the option stands makes no difference; `--why` adds words for a person only.
        let behind = answer(&args);
        let before = run(&[&["--json"], args.as_slice()].concat());
        assert_eq!((before.status, before.json()), (0, behind.clone()), "{args:?}");
        assert_eq!(answer(&[args.as_slice(), &["--why"]].concat()), behind, "{args:?}");
    }
    for args in [["visit", "new"], ["visit", "schema"], ["completions", "bash"]] {
        answer(&args);
    }
}

/// Every quantity in an answer: its unit, and its value as printed.
fn quantities(value: &Value, found: &mut Vec<(String, Value)>) {
    match value {
        Value::Object(object) => {
            if let (Some(unit), Some(number)) =
                (object.get("unit").and_then(Value::as_str), object.get("value"))
            {
                assert!(number.is_number(), "{value}");
                let names: Vec<&str> = object.keys().map(String::as_str).collect();
                assert!(
                    matches!(names.as_slice(), ["value", "unit"] | ["value", "unit", "low", "high"]),
                    "{value}"
                );
                if let (Some(low), Some(high)) = (object.get("low"), object.get("high")) {
                    let ends = (low.as_f64().expect("low"), high.as_f64().expect("high"));
                    let middle = number.as_f64().expect("a value");
                    assert!(ends.0 <= middle && middle <= ends.1, "{value}");
                }
                found.push((unit.to_string(), number.clone()));
            }
            object.values().for_each(|value| quantities(value, found));
        }
        Value::Array(list) => list.iter().for_each(|value| quantities(value, found)),
        _ => {}
    }
}

/// The units of the contract: US | metric, and those that both have.
const US: &[&str] = &[
    "ft",
    "in",
    "mph",
    "gal/min",
    "gal/ac",
    "ac",
    "gal",
    "psi",
    "lb/gal",
    "gal/1000 sq ft",
    "fl oz",
    "fl oz/ac",
    "sq ft",
];
const METRIC: &[&str] =
    &["m", "cm", "km/h", "L/min", "L/ha", "ha", "L", "bar", "kg/L", "L/100 sq m", "mL", "mL/ha", "sq m"];
const BOTH: &[&str] = &["s", "min", "kg", "lb", "deg"];

#[test]
fn units_are_us_by_default_and_metric_by_the_option_alone() {
    for args in every_command() {
        for (extra, known, other) in [(vec![], US, METRIC), (vec!["--units", "metric"], METRIC, US)] {
            let mut found = Vec::new();
            quantities(&answer(&[args.as_slice(), &extra].concat()), &mut found);
            assert!(!found.is_empty(), "{args:?} holds no quantity");
            for (unit, _) in &found {
                // Catches stay in the unit they were read in, products in the unit of their label's rate.
                let as_given = unit == "fl oz" || unit == "mL" || unit == "pt/ac";
                let fine = known.contains(&unit.as_str()) || BOTH.contains(&unit.as_str()) || as_given;
                assert!(
                    fine && (as_given || !other.contains(&unit.as_str())),
                    "{unit} in {args:?} {extra:?}"
                );
            }
        }
    }
}

#[test]
fn neither_language_nor_country_of_the_machine_changes_an_answer() {
    for args in every_command() {
        let (plain, plain_json) = (text(&args), run(&[args.as_slice(), &["--json"]].concat()).out);
        for lang in ["de_DE.UTF-8", "fr_FR.UTF-8", "en_GB.UTF-8", "C", "ar_EG.UTF-8"] {
            let there = |extra: &[&str]| {
                let mut command = command();
                for name in ["LANG", "LC_ALL", "LC_NUMERIC", "LC_MEASUREMENT", "LANGUAGE"] {
                    command.env(name, lang);
                }
                finish(command.env("TZ", "Asia/Tokyo").args(&args).args(extra), b"").out
            };
            assert_eq!(
                (there(&[]), there(&["--json"])),
                (plain.clone(), plain_json.clone()),
                "{args:?} in {lang}"
            );
        }
    }
}

#[test]
fn quantities_have_full_precision_and_inputs_any_unit() {
    // 1/128 acre over 20 in: 43560 ÷ 128 ÷ (20 ÷ 12) = 204.1875 ft (common practice: "204 ft for 20 in").
    let course = answer(&["course", "--width", "20 in"]);
    assert_eq!(number(&course, "/length/value").to_string(), "204.1875");
    assert_eq!(word(&course, "/length/unit"), "ft");
    for width in ["1 ft 8 in", "50.8 cm", "0.508 m", "508 mm", "1.6666666666666667 ft"] {
        near(number(&answer(&["course", "--width", width]), "/length/value"), 204.1875, 1e-12);
    }
    // An imperial gallon is 4.54609 L, a US one 3.785411784 L (NIST Handbook 44, appendix C).
    let of = |used: &str| number(&answer(&["rate", "--used", used, "--area", "1 ac"]), "/rate/value");
    near(of("1 imp gal") / of("1 gal"), 4.54609 / 3.785411784, 1e-12);
}

#[test]
fn uncertain_quantities_have_ends_and_shares_stand_bare() {
    let speed =
        answer(&["speed", "--distance", "200 ft", "--time", "45 s", "--time", "46 s", "--dash", "3.2 mph"]);
    assert!(number(&speed, "/speed/low") < number(&speed, "/speed/high"));
    assert!(speed["spread_percent"].is_number() && speed["dash"]["error_percent"].is_number());
    let flow = answer(&["flow", "--size", "03", "--pressure", "30 psi"]);
    assert!(flow["density_factor"].is_number());
    assert!(flow["flow"].get("low").is_none(), "nothing uncertain went in");
}

#[test]
fn the_exit_status_is_0_whatever_the_verdict_and_1_when_strict() {
    let off = ["spacing", "--intended", "20 in", "20 in", "21.5 in"];
    assert_eq!((word(&answer(&off), "/verdict"), run(&off).status), ("outside", 0));
    for strict in [[&off[..], &["--strict"]].concat(), [&["--strict", "--json"], &off[..]].concat()] {
        let ran = run(&strict);
        assert_eq!((ran.status, ran.err.as_str()), (1, ""), "{ran:?}");
        assert!(!ran.out.is_empty(), "strict answers all the same");
    }
    let even = ["spacing", "--intended", "20 in", "20 in", "20.1 in", "--strict"];
    assert_eq!((word(&answer(&even), "/verdict"), run(&even).status), ("within", 0));
    // Read to the nearest inch, 21 in may be 20.5 or 21.5: nobody can tell whether it is more than 5 % off.
    let open =
        ["spacing", "--intended", "20 in", "--step", "1 in", "--strict", "--marks", "0 in", "21 in", "42 in"];
    assert_eq!((word(&answer(&open), "/verdict"), run(&open).status), ("cannot_tell", 0));
    let catch = ["catch", "--time", "30 s", "--step", "1/4 fl oz", "--strict", "14", "14", "14", "20"];
    assert_eq!(run(&catch).status, 1);
    let worn = [&catch[..5], &["--strict", "--rated", "0.18 gal/min @ 40 psi", "14", "14", "14"]].concat();
    assert_eq!(run(&worn).status, 1, "even among themselves, but worn");
    assert_eq!(run(&["visit", "check", "demo/willow-bend.toml", "--strict"]).status, 1);
    let line = b"{\"time\": \"30 s\", \"step\": \"1/4 fl oz\", \"rated\": \"0.18 gal/min @ 40 psi\", \"readings\": [14, 14]}";
    assert_eq!(run_with(&["catch", "--batch", "-", "--strict"], line).status, 1, "a batch as well");
    assert_eq!(run_with(&["catch", "--batch", "-"], line).status, 0);
}

#[test]
fn input_at_fault_is_2_and_what_cannot_be_read_or_kept_3() {
    for (args, status) in [
        (vec!["course", "--width", "20"], 2),
        (vec!["course"], 2),
        (vec!["course", "--width", "20 in", "--wdth", "3"], 2),
        (vec!["corse", "--width", "20 in"], 2),
        (vec!["course", "--width", "20 in", "--units", "imperial"], 2),
        (vec![], 2),
        (vec!["visit", "check", "no-such-visit.toml"], 3),
        (vec!["visit", "check", "demo"], 3),
        (vec!["catch", "--batch", "no-such-batch.jsonl"], 3),
        (vec!["catch", "--batch", "demo"], 3),
    ] {
        for extra in [vec![], vec!["--json"]] {
            let ran = run(&[args.as_slice(), &extra].concat());
            assert_eq!((ran.status, ran.out.as_str()), (status, ""), "{args:?}: {ran:?}");
            assert!(ran.err.lines().count() >= 2, "what is wrong, and what would do: {ran:?}");
        }
    }
    // A disk with no room.
    if let Ok(full) = std::fs::OpenOptions::new().write(true).open("/dev/full") {
        for args in [["visit", "check", "demo/willow-bend.toml"], ["course", "--width", "20 in"]] {
            let status = command()
                .args(args)
                .stdout(full.try_clone().expect("a copy"))
                .stderr(std::process::Stdio::null())
                .status();
            assert_eq!(status.expect("runs").code(), Some(3), "{args:?}");
        }
    }
}

#[test]
fn a_comma_is_refused_with_both_readings() {
    let ran = run(&["course", "--width", "1,234 in"]);
    assert_eq!(ran.status, 2);
    for told in ["--width", "1,234 in", "1234", "1.234"] {
        assert!(ran.err.contains(told), "{told} is missing in {ran:?}");
    }
}

#[test]
fn the_program_leaves_nothing_behind_and_needs_no_folder() {
    let place = folder("nowhere");
    let mut command = command();
    let ran = finish(
        command.current_dir(&place).args(["visit", "check"]).arg(root().join("demo/willow-bend.toml")),
        b"",
    );
    assert_eq!(ran.status, 0, "{ran:?}");
    assert_eq!(std::fs::read_dir(&place).expect("the folder").count(), 0);
}
