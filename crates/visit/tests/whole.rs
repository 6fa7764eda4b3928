//! Whole visits: what follows from the parts together, against arithmetic done by hand.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use units::{Coded, Finding, UnitSystem, Verdict, Weight};
use visit::findings::{Outcome, findings};

fn outcome(text: &str) -> Outcome {
    let visit = visit::file::read(text.as_bytes()).unwrap_or_else(|errors| panic!("{errors}"));
    findings(&visit, UnitSystem::Us).unwrap_or_else(|error| panic!("{error}"))
}

fn said(outcome: &Outcome, code: &str) -> Finding {
    let found = outcome.all().find(|(_, finding)| finding.code() == code);
    found.unwrap_or_else(|| panic!("nothing said of {code}: {:?}", codes(outcome))).1.clone()
}

fn codes(outcome: &Outcome) -> Vec<&'static str> {
    outcome.all().map(|(_, finding)| finding.code()).collect()
}

fn rate(outcome: &Outcome) -> f64 {
    outcome.rate.as_ref().expect("a rate").of_mix().value.as_gallons_per_acre()
}

/// 12 tips of 15 fl oz in 30 s, 20 in apart, 204 ft in 28 s: 0.234375 gal/min a tip, 4.9675 mph.
const SMALL_BOOM: &str = "
[sprayer]
tips = 12
spacing = \"20 in\"
tank = \"200 gal\"
[drive]
course = \"204 ft\"
runs = [\"28 s\", \"28 s\"]
[catch]
time = \"30 s\"
cup_marks = \"1/2 fl oz\"
[[catch.round]]
readings = [15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15]
";

#[test]
fn the_rate_is_flow_over_speed_and_width() {
    // 5940 × 0.234375 ÷ (4.96753 × 20) = 14.0127 gal/ac; 200 gal do 14.27 ac.
    let outcome = outcome(SMALL_BOOM);
    assert!((rate(&outcome) - 14.0127).abs() < 1e-3, "{}", rate(&outcome));
    let tank = outcome.tank.as_ref().expect("a tank");
    assert!((tank.full.area.value.as_acres() - 14.2728).abs() < 1e-3);
    assert!(
        outcome
            .catch
            .as_ref()
            .expect("caught")
            .now()
            .verdicts
            .summary
            .tips
            .iter()
            .all(|tip| tip.verdict == Some(Verdict::Within))
    );
}

#[test]
fn catching_for_the_drive_reads_the_rate_off_the_cup() {
    // Common practice: 20 in drives 204.19 ft, and fl oz caught meanwhile are gal/ac, whatever the speed.
    let text = SMALL_BOOM.replace("204 ft", "204.1875 ft").replace("time = \"30 s\"", "time = \"as driven\"");
    assert!((rate(&outcome(&text)) - 15.0).abs() < 1e-9);
}

#[test]
fn drive_and_catch_at_different_settings_are_not_put_together_in_silence() {
    let text = SMALL_BOOM
        .replace("[catch]", "[drive.setting]\npressure = \"40 psi\"\nengine_speed = \"1700 rpm\"\n[catch]")
        .replace(
            "[[catch.round]]",
            "[catch.setting]\npressure = \"30 psi\"\nengine_speed = \"1500 rpm\"\n[[catch.round]]",
        );
    let outcome = outcome(&text);
    // Told once, with all that differs.
    assert_eq!(codes(&outcome).iter().filter(|code| **code == "settings_differ").count(), 1);
    let told = said(&outcome, "settings_differ").text(UnitSystem::Us);
    assert!(
        told.contains("pressure 40 psi on the drive and 30 psi at the catch; engine speed 1700 rpm"),
        "{told}"
    );
    assert_eq!(said(&outcome, "rate_of_two_settings").weight, Weight::Doubt);
    let close = SMALL_BOOM
        .replace("[catch]", "[drive.setting]\npressure = \"40 psi\"\n[catch]")
        .replace("[[catch.round]]", "[catch.setting]\npressure = \"39.5 psi\"\n[[catch.round]]");
    assert!(!codes(&self::outcome(&close)).contains(&"settings_differ"));
}

#[test]
fn over_the_label_is_said_first_and_differently() {
    // Mixed for 10 gal/ac and sprayed at 14.01: 2 pt/ac becomes 2.8 pt/ac, over a label's 2.5.
    let text = format!(
        "{SMALL_BOOM}\n[target]\nrate = \"10 gal/ac\"\nmixed_for = \"10 gal/ac\"\n[[product]]\nname = \"Product A\"\nrate = \"2 pt/ac\"\nlabel_most = \"2.5 pt/ac\"\n"
    );
    let over = outcome(&text);
    assert_eq!(over.actions[0].finding.weight, Weight::Stop);
    assert!(
        over.actions[0].why(UnitSystem::Us).starts_with("Stop:"),
        "{}",
        over.actions[0].why(UnitSystem::Us)
    );
    // More water than planned is not by itself over the label: mixed for what it puts out the product is right.
    let right = outcome(&text.replace("mixed_for = \"10 gal/ac\"\n", ""));
    assert!(right.actions.iter().all(|action| action.finding.weight != Weight::Stop));
}

#[test]
fn a_heavier_carrier_lays_less() {
    // Univ. of Nebraska-Lincoln CropWatch, 2016: 28 % UAN, 10.65 lb/gal, factor 1.13; 14.0127 ÷ 1.13004 = 12.400.
    let outcome = outcome(&format!(
        "{SMALL_BOOM}\n[target]\nrate = \"12 gal/ac\"\ncarrier_density = \"10.65 lb/gal\"\n"
    ));
    assert!((rate(&outcome) - 12.400).abs() < 2e-3, "{}", rate(&outcome));
    said(&outcome, "rate_of_carrier");
}

#[test]
fn rounds_never_mix() {
    let text = format!("{SMALL_BOOM}\n[[catch.round]]\nafter = \"new tips\"\ntips = [7]\nreadings = [12]\n");
    let outcome = outcome(&text);
    assert!((rate(&outcome) - 14.0127).abs() < 1e-3, "the later tip is not in the rate");
    assert!(said(&outcome, "tip_caught_again").text(UnitSystem::Us).contains("12 fl oz"));
    said(&outcome, "rate_before_repair");
    // A whole later round takes the first one's place.
    let whole = SMALL_BOOM.to_string()
        + "\n[[catch.round]]\nafter = \"after cleaning\"\nreadings = [30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30]\n";
    assert!((rate(&self::outcome(&whole)) - 28.0254).abs() < 1e-3);
}

#[test]
fn one_tip_of_each_section_gives_a_rate_and_leaves_evenness_open() {
    // The ten-minute path: 3 of 12 tips caught.
    let text = SMALL_BOOM.replace("tips = 12", "sections = [4, 4, 4]").replace(
        "readings = [15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15]",
        "tips = [2, 6, 11]\nreadings = [15, 14.5, 15.5]",
    );
    let outcome = outcome(&text);
    let ranged = outcome.rate.as_ref().expect("a rate").of_mix();
    assert!((ranged.value.as_gallons_per_acre() - 14.0127).abs() < 1e-3);
    let half = (ranged.high.as_gallons_per_acre() - ranged.low.as_gallons_per_acre()) / 2.0 / 14.0127;
    assert!(half > 0.03 && half < 0.10, "an honest range: ± {half}");
    assert!(said(&outcome, "tips_not_caught").text(UnitSystem::Us).contains("3 of 12"));
    let open = outcome.catch.as_ref().expect("caught").now().verdicts.summary.tips[0].verdict;
    assert_eq!(open, None, "a tip without a cup has no verdict of its own");
}

#[test]
fn bands_are_a_part_of_the_field() {
    // 0.234375 gal/min, 4.0107 mph, 10 in bands: 5940 × 0.234375 ÷ (4.0107 × 10) = 34.71 gal/ac treated, a third of it over
    // the 30 in rows: 11.57; 10.7 gal on an acre of field agrees with that.
    let text = "
[sprayer]
kind = \"band\"
tips = 6
spacing = \"30 in\"
band_width = \"10 in\"
tank = \"100 gal\"
[drive]
course = \"300 ft\"
runs = [\"51 s\", \"51 s\"]
[catch]
time = \"30 s\"
cup_marks = \"1/2 fl oz\"
[[catch.round]]
readings = [15, 15, 15, 15, 15, 15]
[refill]
used = \"11.4 gal\"
area = \"1 ac\"
[job]
area = \"10 ac\"
";
    let outcome = outcome(text);
    assert!((rate(&outcome) - 34.71).abs() < 0.01, "{}", rate(&outcome));
    assert!(!codes(&outcome).contains(&"rate_methods_disagree"));
    said(&outcome, "rate_on_bands");
    // Ten acres of field are 3.33 treated acres: 115.7 gal of mix.
    let loads = outcome.tank.as_ref().expect("a tank").loads.clone().expect("loads");
    let mix: f64 = loads.iter().map(|load| load.volume.as_gallons()).sum();
    assert!((mix - 115.7).abs() < 0.1, "{mix}");
}

#[test]
fn a_refill_that_does_not_agree_is_pointed_out() {
    let text = format!("{SMALL_BOOM}\n[refill]\nused = \"20 gal\"\narea = \"1 ac\"\n");
    assert_eq!(said(&outcome(&text), "rate_methods_disagree").weight, Weight::Act);
    let agrees = format!("{SMALL_BOOM}\n[refill]\nused = \"14 gal\"\narea = \"1 ac\"\n");
    assert!(!codes(&outcome(&agrees)).contains(&"rate_methods_disagree"));
}

#[test]
fn parts_stand_by_themselves() {
    let only = |text: &str| outcome(text);
    assert!(only("").actions.is_empty());
    assert!(only("[drive]\ncourse = \"200 ft\"\nruns = [\"45 s\", \"45 s\"]").speed.is_some());
    let spacing = only(
        "[sprayer]\ntips = 4\nspacing = \"20 in\"\n[spacing]\nmarks = [\"0 in\", \"20 in\", \"41.5 in\", \"60 in\"]",
    );
    assert_eq!(spacing.spacing.expect("checked").moves.len(), 1);
    let caught =
        only("[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [14, 14, 15]");
    assert!(caught.catch.is_some() && caught.rate.is_none());
}
