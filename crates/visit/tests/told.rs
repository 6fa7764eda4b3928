//! What a visit tells and what it does not tell: done work, other groups, wrong tips, blocked ones, other sprayers.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use units::{Coded, Finding, UnitSystem, Weight};
use visit::findings::{Outcome, findings};

fn outcome(text: &str) -> Outcome {
    let visit = visit::file::read(text.as_bytes()).unwrap_or_else(|errors| panic!("{errors}"));
    findings(&visit, UnitSystem::Us).unwrap_or_else(|error| panic!("{error}"))
}

fn all<'a>(outcome: &'a Outcome, code: &str) -> Vec<&'a Finding> {
    outcome.all().map(|(_, finding)| finding).filter(|finding| finding.code() == code).collect()
}

fn said(outcome: &Outcome, code: &str) -> Finding {
    let found = all(outcome, code);
    assert_eq!(found.len(), 1, "{code}: {found:?}");
    found[0].clone()
}

fn text_of(outcome: &Outcome, code: &str) -> String {
    let finding = said(outcome, code);
    format!("{} {}", finding.text(UnitSystem::Us), finding.action(UnitSystem::Us).unwrap_or_default())
}

/// Six tips 20 in apart, 204 ft in 27.85 s (4.994 mph), size 03 at 40 psi: 0.30 gal/min new, 19.2 fl oz in 30 s.
fn boom(readings: &str, more: &str) -> String {
    format!(
        "[sprayer]\ntips = 6\nspacing = \"20 in\"\ntip_size = \"03\"\ntank = \"200 gal\"\n[setting]\npressure = \"40 psi\"\n\
         [drive]\ncourse = \"204 ft\"\nruns = [\"27.8 s\", \"27.9 s\"]\n[catch]\ntime = \"30 s\"\ncup_marks = \"1/2 fl oz\"\n\
         [[catch.round]]\nreadings = [{readings}]\n{more}"
    )
}

#[test]
fn a_cluster_gives_more_than_any_boom_tip() {
    // 12 pt in a quarter of a minute are 6 gal/min: an everyday cluster, but no tip on a boom.
    let cluster = |reading: &str| {
        format!(
            "[sprayer]\nkind = \"boomless\"\neffective_swath = \"30 ft\"\n[catch]\ntime = \"15 s\"\n\
             cup_marks = \"1 pt\"\n[[catch.round]]\nreadings = [{reading}]\n"
        )
    };
    assert!(outcome(&cluster("12")).catch.is_some());
    // 48 pt are 24 gal/min: beyond our ceiling of 20.
    let visit = visit::file::read(cluster("48").as_bytes()).expect("reads");
    let refused = findings(&visit, UnitSystem::Us).expect_err("too much").to_string();
    assert!(refused.contains("more than any cluster or boomless tip gives"), "{refused}");
    let boom = "[catch]\ntime = \"15 s\"\ncup_marks = \"1 pt\"\n[[catch.round]]\nreadings = [12]\n";
    let visit = visit::file::read(boom.as_bytes()).expect("reads");
    assert!(findings(&visit, UnitSystem::Us).is_err(), "a boom tip's ceiling stays");
}

#[test]
fn tips_meant_to_differ_are_neither_over_nor_missing() {
    // End tips of half the flow in a group of their own: each group is even, so at the rate wanted nothing is off.
    let file = |groups: &str| {
        boom(
            "9, 18, 18, 18, 18, 9",
            "[target]\nrate = \"15 gal/ac\"\nmixed_for = \"14.867 gal/ac\"\n[[product]]\nname = \"A\"\nrate = \"2 pt/ac\"\nprice = \"$40/gal\"\n\
             [job]\narea = \"100 ac\"\n",
        )
        .replace("[setting]", &format!("{groups}[setting]"))
    };
    let grouped = outcome(&file("[sprayer.groups]\n\"ends\" = [1, 6]\n")).cost.expect("a cost");
    // 5940 × 90 ÷ 6 ÷ 64 gal/min ÷ (4.994 × 20): 13.94 gal/ac against 14.867, 6.2 % missing everywhere.
    assert!((grouped.shares.missing - 0.062).abs() < 2e-3, "{:?}", grouped.shares);
    assert!(grouped.shares.over < 1e-9, "{:?}", grouped.shares);
    // Without groups the same cups are uneven: mean 15, four at +20 %.
    let alike = outcome(&file("")).cost.expect("a cost");
    assert!(alike.shares.over > 0.05, "{:?}", alike.shares);
}

#[test]
fn a_boom_that_gives_less_than_its_size_is_told_once() {
    // 16 of 19.2 fl oz are 16.7 % under new; no tip wears small.
    let under = outcome(&boom("16, 16, 16, 16, 16, 16", ""));
    let told = text_of(&under, "boom_under_new");
    assert!(told.starts_with("The whole boom puts out 17 % less than new tips"), "{told}");
    assert!(told.contains("try another gauge"), "{told}");
    assert_eq!(said(&under, "boom_under_new").weight, Weight::Act);
    // 19 of 19.2 are as new.
    assert!(all(&outcome(&boom("19, 19, 19, 19, 19, 19", "")), "boom_under_new").is_empty());
    // A boom at −5 % with one tip at −14 %: 7.5 % under the others' mean is within, but it is no such tip any more.
    let one =
        outcome(&boom("18.25, 18.25, 18.25, 18.25, 18.25, 16.5", "").replace("1/2 fl oz", "0.05 fl oz"));
    let told = text_of(&one, "tips_under_new");
    assert!(told.starts_with("Tip 6 agrees with the others but puts out 14 % less than a new one"), "{told}");
}

#[test]
fn a_plugged_tip_says_nothing_against_new() {
    let plugged = outcome(&boom("19, 19, 0, 19, 19, 19", ""));
    let verdicts = &plugged.catch.as_ref().expect("caught").now().verdicts;
    let tips: Vec<u32> = verdicts.new.iter().map(|tip| tip.number).collect();
    assert_eq!(tips, [1, 2, 4, 5, 6]);
    assert!(verdicts.new_judged.iter().all(|tip| tip.number != 3));
}

#[test]
fn what_was_done_since_is_no_longer_to_be_done() {
    let later = |after: &str, reading: &str| {
        let more = format!("[[catch.round]]\nafter = \"{after}\"\ntips = [3]\nreadings = [{reading}]\n");
        outcome(&boom("19, 19, 23, 19, 19, 19", &more))
    };
    let mended = later("new tips", "19");
    assert!(mended.actions.iter().all(|action| action.at(UnitSystem::Us) != "tip 3"), "{:?}", mended.actions);
    assert_eq!(said(&mended, "tip_high").weight, Weight::Note);
    let again: Vec<_> =
        mended.actions.iter().filter(|action| action.finding.code() == "rate_before_repair").collect();
    assert!(again[0].what(UnitSystem::Us).starts_with("Catch the whole boom again"));
    // Cleaned and still far over: that is to be done, once, with the reading it is about.
    let still = later("after cleaning", "23");
    assert_eq!(said(&still, "tip_still_off").weight, Weight::Act);
    assert_eq!(said(&still, "tip_high").weight, Weight::Note);
    // At another pressure nothing was done at the tip.
    assert_eq!(said(&later("pressure changed", "19"), "tip_high").weight, Weight::Act);
}

#[test]
fn a_blocked_boom_is_cleaned_before_it_is_mixed_for() {
    let target = "[target]\nrate = \"17.6 gal/ac\"\n[[product]]\nname = \"A\"\nrate = \"2 pt/ac\"\n";
    let blocked = outcome(&boom("19, 19, 0, 19, 19, 19", target));
    let rate = blocked.rate.as_ref().expect("a rate");
    // 5940 × 0.29688 gal/min ÷ (4.994 × 20) is 17.66 gal/ac with all six, 14.71 with five.
    assert!((rate.of_mix().value.as_gallons_per_acre() - 14.71).abs() < 0.01);
    assert!((rate.once_cleaned.expect("known").value.as_gallons_per_acre() - 17.66).abs() < 0.01);
    assert!(text_of(&blocked, "tank_with_plugged").contains("Clean first, then catch again"));
    assert!(text_of(&blocked, "rate_outside").contains("Do not mix for a boom with plugged tips"));
    assert!(blocked.change.is_none(), "nothing is set otherwise for a blocked boom");
    let free = outcome(&boom("19, 19, 19, 19, 19, 19", target));
    assert!(all(&free, "tank_with_plugged").is_empty() && free.rate.expect("a rate").once_cleaned.is_none());
}

#[test]
fn a_catch_in_automatic_is_doubtful() {
    let said_of = |controller: &str, held_by: &str| {
        let text = boom("19, 19, 19, 19, 19, 19", "")
            .replace("[drive]", &format!("controller = \"{controller}\"\n[drive]"))
            .replace("[setting]", &format!("{held_by}[setting]"));
        all(&outcome(&text), "catch_in_automatic").len()
    };
    let held = "held_by = \"rate_controller\"\n";
    for word in ["auto", "automatic", "On", "in automatic"] {
        assert_eq!((said_of(word, held), said_of(word, "")), (1, 1), "{word}");
    }
    assert_eq!((said_of("manual", held), said_of("on, in manual", held)), (0, 0));
    assert_eq!(said_of("on", "held_by = \"constant_pressure\"\n"), 0);
}

#[test]
fn a_worn_set_names_those_that_are_not() {
    let readings = "[16.5, 19, 19, 19.5, 19, 16]";
    let text = format!(
        "[sprayer]\ntips = 6\nspacing = \"20 in\"\n[catch]\ntime = \"30 s\"\ncup_marks = \"1/2 fl oz\"\nnew_tip = [16]\n\
         [[catch.round]]\nreadings = {readings}\n"
    );
    let told = text_of(&outcome(&text), "tips_replace_set");
    assert!(told.starts_with("4 of 6 tips put out more than the limit over a new tip; tip"), "{told}");
    assert!(told.contains("6 do"), "{told}");
    // Tips 1 and 6 are not settled about the mean, so nothing is claimed of the rest without one of them.
    assert!(all(&outcome(&text), "tips_agree_without").is_empty());
}
