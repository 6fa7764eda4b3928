//! How the answers read to a person: nothing twice, nothing that is not so, no figure torn from its unit.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{run_with, text, visit};

#[test]
fn one_load_is_not_called_the_last() {
    let load = |area: &str, product: &str| {
        text(&["load", "--area", area, "--rate", "20 gal/ac", "--tank", "500 gal", "--product", product])
    };
    // 10 ac take 200 gal of a 500 gal tank: one load, neither full nor last.
    let one = load("10 ac", "Product A: 3 pt/ac");
    assert!(one.starts_with("1 load of 200 gal;") && one.contains("the load: 200 gal"), "{one}");
    assert!(!one.contains("last") && !one.contains("each"), "{one}");
    let full = load("25 ac", "Product A: 3 pt/ac");
    assert!(full.starts_with("1 full load;") && full.contains("the full load: 500 gal"), "{full}");
    let both = load("55 ac", "Product A: 3 pt/ac");
    assert!(both.starts_with("2 full loads and a last one of 100 gal;"), "{both}");
    assert!(both.contains("each full load: 500 gal") && both.contains("the last load: 100 gal"), "{both}");
    // Where the jug shows just what the sum says, it is said once; where not, nothing rounded is called exact.
    let even = load("25 ac", "Product A: 4 qt/ac");
    assert!(even.contains("Product A: 25 gal\n"), "{even}");
    assert!(
        full.contains("Product A: 9 gal 3 pt (9.38 gal by the sum)") && !full.contains("exact"),
        "{full}"
    );
}

#[test]
fn what_the_dash_shows_is_told_once() {
    let page = text(&[
        "speed",
        "--distance",
        "204 ft",
        "--there",
        "27.6 s",
        "--back",
        "28.3 s",
        "--dash",
        "5.4 mph",
    ]);
    assert_eq!(page.matches("dash").count(), 1, "{page}");
    assert!(page.contains("5.4 mph"), "{page}");
}

#[test]
fn a_limit_of_ones_own_is_told_as_it_was_written() {
    let file = std::fs::read_to_string(visit("refill-only")).expect("the visit");
    // 0.07 has no exact binary form; nobody wants to read 7.000000000000001 %.
    for (limit, told) in
        [("7 %", "the limit is 7 %"), ("2.5 %", "the limit is 2.5 %"), ("14 %", "the limit is 14 %")]
    {
        let ran = run_with(&["visit", "check", "-"], format!("{file}within = \"{limit}\"\n").as_bytes());
        let page = ran.out.lines().map(str::trim).collect::<Vec<_>>().join(" ");
        assert!(page.contains(told), "{page}");
    }
}

#[test]
fn a_rate_that_is_just_right_is_neither_over_nor_under() {
    let page = text(&["visit", "check", &visit("metric"), "--units", "metric"]);
    assert!(page.contains("180 L/ha is wanted; it is just that: close enough"), "{page}");
}

#[test]
fn no_figure_is_torn_from_its_unit_at_the_end_of_a_line() {
    let units = [
        "in", "ft", "cm", "m", "mph", "km/h", "gal", "gal/ac", "L/ha", "ac", "ha", "psi", "bar", "%", "s",
        "fl", "pt",
    ];
    let names = ["boom", "band", "directed", "hand", "metric", "new-tip", "boomless", "refill-only"];
    let files = names.iter().map(|name| visit(name)).chain(["demo/willow-bend.toml".to_string()]);
    for file in files {
        for system in ["us", "metric"] {
            let page = text(&["visit", "check", &file, "--units", system]);
            let lines: Vec<&str> = page.lines().collect();
            for pair in lines.windows(2) {
                let figure = pair[0].ends_with(|sign: char| sign.is_ascii_digit());
                let next = pair[1]
                    .split_whitespace()
                    .next()
                    .unwrap_or_default()
                    .trim_end_matches(['.', ',', ';', ')']);
                assert!(!(figure && units.contains(&next)), "{file}, {system}:\n{}\n{}", pair[0], pair[1]);
            }
        }
    }
}

#[test]
fn standard_input_has_a_name() {
    let ran = run_with(&["visit", "check", "-"], b"[visit]\nfram = \"A\"");
    assert!(ran.err.starts_with("error: standard input: line 2, column 1: visit.fram: "), "{ran:?}");
}
