//! The demo visit as a grower reads it: the page word for word, its figures against those of the JSON answer, its colours.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{Ran, answer, command, finish, number, run, text, word};
use serde_json::Value;

const CHECK: [&str; 3] = ["visit", "check", "demo/willow-bend.toml"];

fn page(more: &[&str]) -> String {
    text(&[&CHECK, more].concat())
}

fn json(more: &[&str]) -> Value {
    answer(&[&CHECK, more].concat())
}

#[test]
fn the_page_reads_as_it_was_agreed() {
    insta::assert_snapshot!("demo_us", page(&[]));
    insta::assert_snapshot!("demo_metric", page(&["--units", "metric"]));
}

/// What stands on a page between two pieces of text, lines run together.
fn between<'a>(page: &'a str, before: &str, behind: &str) -> &'a str {
    let rest =
        page.split_once(before).unwrap_or_else(|| panic!("\"{before}\" is not on the page:\n{page}")).1;
    rest.split_once(behind).unwrap_or_else(|| panic!("no \"{behind}\" behind \"{before}\":\n{page}")).0
}

/// A printed figure is the full one, rounded where the print ends.
fn printed(shown: &str, full: f64) {
    let digits = shown.replace('−', "-").replace([',', '+'], "");
    let value: f64 = digits.parse().unwrap_or_else(|_| panic!("\"{shown}\" is no figure"));
    let places = digits.split_once('.').map_or(0, |(_, behind)| behind.len());
    let half = 0.5 / 10_f64.powi(i32::try_from(places).expect("few places"));
    // Figures without a point may end in noughts that only hold the place.
    assert!((value - full).abs() <= half * 1.000_001, "{shown} is printed for {full}");
}

#[test]
fn figures_on_the_page_are_those_of_the_answer_rounded() {
    for (more, rate_unit, area_unit, volume_unit, speed_unit) in
        [(vec![], "gal/ac", "ac", "gal", "mph"), (vec!["--units", "metric"], "L/ha", "ha", "L", "km/h")]
    {
        let json = json(&more);
        let page = page(&more).lines().map(str::trim).collect::<Vec<_>>().join(" ");
        let figure = |pointer: &str| number(&json, pointer);
        let check = |before: &str, behind: &str, pointer: &str| {
            printed(between(&page, before, behind), figure(pointer))
        };
        check("It puts out ", &format!(" {rate_unit}"), "/rate/rate/value");
        let range: Vec<&str> = between(&page, "most likely ", "wanted").split(' ').collect();
        printed(range[0], figure("/rate/rate/low"));
        printed(range[2], figure("/rate/rate/high"));
        printed(between(&page, "is wanted; it is ", " % under"), -figure("/target/against_intended/percent"));
        check("A full tank of ", &format!(" {volume_unit}"), "/tank/volume/value");
        check(" does ", &format!(" {area_unit}"), "/tank/area/value");
        let range = between(&page, "(most likely ", ")").split_once(" to ").expect("a range");
        printed(range.0, figure("/tank/area/low"));
        printed(range.1, figure("/tank/area/high"));
        check("a last one of ", &format!(" {volume_unit}"), "/tank/job/loads/2/volume/value");
        assert_eq!(
            between(&page, "the job ahead: ", " full loads"),
            json["tank"]["job"]["full_loads"].to_string()
        );
        assert!(page.contains(word(&json, "/tank/products/0/measure_text")), "what to measure is the same");
        check("The dash showed ", &format!(" {speed_unit}"), "/speed/dash/shown/value");
        check("but only ", &format!(" {speed_unit}"), "/speed/speed/value");
        check("it shows ", " %", "/speed/dash/error_percent");
        printed(
            between(&page, "multiply what it shows by ", ". "),
            figure("/speed/speed/value") / figure("/speed/dash/shown/value"),
        );
        check("Tip 7 put out ", " %", "/catch/tips/6/deviation_percent");
        check(
            "The worst is gap 8: ",
            if more.is_empty() { " in" } else { " cm" },
            "/spacing/gaps/7/size/value",
        );
        check(" s over the course, ", " runs", "/speed/runs/3/number");
    }
}

#[test]
fn the_same_visit_in_both_units_is_the_same_visit() {
    let (us, metric) = (json(&[]), json(&["--units", "metric"]));
    // Exact: 1 gal = 3.785411784 L, 1 ac = 0.40468564224 ha, 1 mile = 1.609344 km (NIST Special Publication 811, B.8).
    for (pointer, factor) in [
        ("/rate/rate/value", 3.785_411_784 / 0.404_685_642_24),
        ("/rate/rate/low", 3.785_411_784 / 0.404_685_642_24),
        ("/tank/area/value", 0.404_685_642_24),
        ("/tank/products/0/amount/value", 3.785_411_784),
        ("/tank/products/0/measure/value", 3.785_411_784),
        ("/speed/speed/value", 1.609_344),
        ("/spacing/gaps/7/size/value", 2.54),
        ("/catch/tips/6/deviation_percent", 1.0),
        ("/catch/mean/value", 1.0),
        ("/cost/over_percent", 1.0),
    ] {
        common::near(number(&metric, pointer), number(&us, pointer) * factor, 1e-12);
    }
}

#[test]
fn verdicts_and_actions_are_those_that_hand_arithmetic_gives() {
    let json = json(&[]);
    // The cups: mean of twelve is 175.5 ÷ 12 = 14.625; 17 is 16.2 % over, and 13 is 11.1 % under: read to the half
    // ounce it may be within 10 %.
    common::near(number(&json, "/catch/mean/value"), 14.625, 1e-12);
    let words: Vec<&str> =
        json["catch"]["tips"].as_array().expect("tips").iter().map(|tip| word(tip, "/verdict")).collect();
    assert_eq!(words.iter().filter(|word| **word == "within").count(), 10);
    assert_eq!((words[3], words[6]), ("cannot_tell", "outside"));
    // The drive: 204 ft in 28.05 s on average is 204 × 60 ÷ (28.05 × 88) = 4.959 mph.
    common::near(number(&json, "/speed/speed/value"), 204.0 * 60.0 / (28.05 * 88.0), 1e-9);
    // The rate: 14.625 fl oz in 28 s are 0.24484 gal/min; 5940 × 0.24484 ÷ (4.959 × 20) = 14.66 gal/ac.
    common::near(number(&json, "/rate/rate/value"), 14.66, 1e-3);
    // The tank: 200 gal ÷ 14.66 gal/ac = 13.64 ac, at 2 pt/ac 27.3 pt, 3.41 gal.
    common::near(number(&json, "/tank/area/value"), 13.64, 1e-3);
    common::near(number(&json, "/tank/products/0/amount/value"), 3.41, 1e-3);
    // The spacing: 161 1/2 − 140 = 21 1/2 in, 7.5 % over; then 18 1/2 in. Tip 9 goes 1 1/2 in left.
    assert_eq!(json["spacing"]["moves"].as_array().expect("moves").len(), 1);
    assert_eq!(
        (number(&json, "/spacing/moves/0/tip"), word(&json, "/spacing/moves/0/direction")),
        (9.0, "left")
    );
}

fn coloured(variables: &[(&str, &str)], args: &[&str]) -> Ran {
    let mut command = command();
    command.envs(variables.iter().copied()).args(args);
    finish(&mut command, b"")
}

#[test]
fn colour_is_for_terminals_and_can_be_asked_for() {
    let escape = '\u{1b}';
    let wrong = ["course", "--width", "20"];
    for variables in
        [vec![], vec![("NO_COLOR", "1")], vec![("TERM", "xterm-256color")], vec![("TERM", "dumb")]]
    {
        assert!(!coloured(&variables, &CHECK).all().contains(escape), "{variables:?}");
        assert!(!coloured(&variables, &wrong).all().contains(escape), "{variables:?}");
    }
    let forced = coloured(&[("CLICOLOR_FORCE", "1")], &CHECK);
    assert!(forced.out.contains(escape));
    assert!(coloured(&[("CLICOLOR_FORCE", "1")], &wrong).err.contains(escape));
    // Colour adds nothing that is not said in words.
    let mut plain = String::new();
    for piece in forced.out.split(escape) {
        plain.push_str(if plain.is_empty() && !forced.out.starts_with(escape) {
            piece
        } else {
            piece.split_once('m').map_or("", |(_, rest)| rest)
        });
    }
    assert_eq!(plain, page(&[]));
    // JSON is for programs, whatever was asked for.
    let json = coloured(&[("CLICOLOR_FORCE", "1")], &[&CHECK[..], &["--json"]].concat());
    assert!(!json.out.contains(escape));
    assert_eq!(run(&CHECK).status, 0);
}

#[test]
fn the_page_fits_a_screen_and_is_plain_text() {
    for more in [vec![], vec!["--units", "metric"], vec!["--why"]] {
        for line in page(&more).lines() {
            assert!(
                more.contains(&"--why") || line.chars().count() <= 96,
                "{} letters: {line}",
                line.chars().count()
            );
            assert!(!line.contains(['\t', '{', '}', '\u{a0}']) && line.trim_end() == line, "\"{line}\"");
        }
    }
    let why = page(&["--why"]);
    assert!(why.starts_with(&page(&[])), "the workings come behind the page");
    assert!(why.contains("JCGM 100:2008"), "with their sources");
}
