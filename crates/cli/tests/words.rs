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

/// The page of a visit file, lines run together.
fn page(file: &str) -> String {
    let ran = run_with(&["visit", "check", "-"], file.as_bytes());
    assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{ran:?}");
    ran.out.lines().map(str::trim).collect::<Vec<_>>().join(" ")
}

fn page_of(name: &str) -> String {
    page(&std::fs::read_to_string(visit(name)).expect("the visit"))
}

#[test]
fn a_sprayer_by_itself_is_known_and_what_comes_next_is_said() {
    let boom = page("[sprayer]\ntips = 2\nspacing = \"20 in\"\n");
    assert!(boom.starts_with("The sprayer is known; nothing was measured yet. Next"), "{boom}");
    assert!(boom.contains("measure the spacing"), "{boom}");
    let hand = page("[sprayer]\nkind = \"hand\"\nspray_width = \"4 ft\"\n");
    assert!(hand.contains("time the drive") && !hand.contains("spacing"), "{hand}");
    assert!(page("").starts_with("There is nothing in this visit yet."));
}

#[test]
fn who_was_there_and_what_they_noted_stands_on_the_page() {
    let about = "[visit]\nfarm = \"F\"\noperator = \"T. Marsh\"\nwith = \"R. Alder\"\nnotes = \"New hose on the left.\"\n";
    let file = std::fs::read_to_string(visit("plugged")).expect("the visit");
    let page = page(&format!("{about}{file}"));
    assert!(page.starts_with("F driven by T. Marsh, with R. Alder New hose on the left."), "{page}");
}

#[test]
fn the_row_of_cups_reads_as_it_is_meant() {
    // A plugged cup shows 0; the sign under it is another.
    let plugged = text(&["visit", "check", &visit("plugged")]);
    let lines: Vec<&str> = plugged.lines().collect();
    let row = lines.iter().position(|line| line.starts_with("  cup ")).expect("the cups");
    assert_eq!(lines[row + 1].trim(), "x");
    assert!(plugged.contains("x plugged"), "{plugged}");
    // Five of six give 15; the spread has one decimal.
    assert!(plugged.contains("mean 15 fl oz, spread 0.0 %"), "{plugged}");
    // 16, 16, 18, 14: standard deviation √(8 ÷ 3) = 1.633, over 16 10.2 %.
    let uneven = page(
        "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [16, 16, 18, 14]\n",
    );
    assert!(uneven.contains("mean 16 fl oz, spread 10.2 %"), "{uneven}");
    // Nobody sits before a backpack.
    assert!(!page_of("hand").contains("as you sit") && page_of("boom").contains("as you sit"));
    // Nothing is worked out where there is no rate.
    assert!(!page_of("catch-only").contains("For the rate"));
    assert!(page_of("weighed").contains("taken as clean water"));
    let two =
        page("[catch]\ntime = \"30 s\"\ncup_marks = \"1/2 fl oz\"\n[[catch.round]]\nreadings = [15, 15]\n");
    assert!(two.contains("Both tips are within the limit: neither"), "{two}");
    assert!(!two.contains("All 2"), "{two}");
}

#[test]
fn short_times_are_told_in_seconds() {
    let page = page(
        "[catch]\ntime = \"30 s\"\ncup_marks = \"1/4 fl oz\"\n[[catch.round]]\nreadings = [15, 15, \"-\", 15, 15, 15]\n",
    );
    assert!(page.contains("Catch tip 3 for 30 s") && page.contains("About 50 s."), "{page}");
    assert!(!page.contains("0.8 min"), "{page}");
}

#[test]
fn a_part_by_itself_has_a_headline_of_its_own() {
    assert!(page_of("spacing-only").starts_with("2 of 4 gaps are off"), "{}", page_of("spacing-only"));
    let file = std::fs::read_to_string(visit("spacing-only")).expect("the visit");
    let right = page(&file.replace("41 1/2 in", "40 in"));
    assert!(right.starts_with("All 4 gaps are in order"), "{right}");
    assert!(
        page_of("drive-only").starts_with("It drives 4.99 mph most likely 4.9"),
        "{}",
        page_of("drive-only")
    );
}

#[test]
fn of_bands_a_tank_does_treated_acres() {
    assert!(page_of("band").contains("A full tank of 150 gal does 8.5 treated acres"), "{}", page_of("band"));
    assert!(!page_of("boom").contains("treated"));
}

#[test]
fn a_refill_is_known_better_by_using_up_more() {
    let page = page_of("refill-only");
    assert!(page.contains("use up more before filling again"), "{page}");
    assert!(!page.contains("catch longer") && !page.contains("time the drive"), "{page}");
}

#[test]
fn settings_that_differ_are_told_as_an_action_and_beside_the_rate() {
    let file = std::fs::read_to_string(visit("plugged")).expect("the visit");
    let file =
        format!("[drive.setting]\npressure = \"40 psi\"\n[catch.setting]\npressure = \"30 psi\"\n{file}");
    let page = page(&file);
    assert_eq!(page.matches("different settings").count(), 2, "{page}");
    assert!(page.contains("put together from a drive and a catch at different settings"), "{page}");
    assert!(page.contains("pressure 40 psi on the drive and 30 psi at the catch."), "{page}");
    // Nor does the page send anybody to mix for a boom with a plugged tip.
    assert!(page.contains("as found, with tip 3 plugged; about 13.9 gal/ac once it runs"), "{page}");
}

#[test]
fn each_working_of_a_visit_has_a_heading() {
    let page = text(&["visit", "check", &visit("boom"), "--why"]);
    for (heading, formula) in [
        ("The rate from flow, speed and width", "rate = flow"),
        ("The speed over the course", "speed = course"),
        ("How far the rate is off", "deviation = measured rate"),
    ] {
        let below = page.split_once(&format!("\n{heading}\n"));
        assert!(below.is_some_and(|(_, below)| below.starts_with(formula)), "{heading}: {page}");
    }
}
