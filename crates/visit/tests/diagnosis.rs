//! What is most likely wrong, out of a visit's file.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use calibration::diagnosis::{Cause, Counts, Diagnosed, Records};
use units::{Coded, UnitSystem};
use visit::findings::{diagnosis, findings, records};

/// Eight tips of 0.30 gal/min in two sections, 30 s each: 19.2 fl oz from a new one.
fn visit(more: &str, readings: &str) -> String {
    format!(
        "[sprayer]\nkind = \"boom\"\nsections = [4, 4]\nspacing = \"20 in\"\nrated = \"0.30 gal/min @ 40 psi\"\n\
         [setting]\npressure = \"40 psi\"\n{more}\n[catch]\ntime = \"30 s\"\ncup_marks = \"0.5 fl oz\"\n\
         [[catch.round]]\nreadings = [{readings}]\n"
    )
}

fn diagnosed(text: &str) -> Option<Diagnosed> {
    let visit = visit::file::read(text.as_bytes()).expect("a visit");
    let outcome = findings(&visit, UnitSystem::Us).expect("worked out");
    diagnosis(&visit, &outcome).expect("diagnosed")
}

#[test]
fn a_visit_is_diagnosed_from_its_cups() {
    let found = diagnosed(&visit("", "19, 19, 12, 19, 17, 17, 17, 17")).expect("cups");
    assert_eq!(found.found.tips.len(), 8);
    assert_eq!(found.found.tips[2].likeliest(), Cause::PartlyPlugged);
    assert!(found.found.sections[1].probability_restricted > 0.95, "{:?}", found.found.sections[1]);
    assert!(found.findings.iter().any(|finding| finding.code() == "section_restricted"));
    assert!(!found.next.is_empty());
}

#[test]
fn what_the_look_found_counts() {
    let readings = "19, 19, 16, 19, 19, 19, 19, 19";
    let odds = |look: &str| {
        let found = diagnosed(&visit(look, readings)).expect("cups").found;
        let chance = found.tips[2].probability_of(Cause::WrongTip);
        chance / (1.0 - chance)
    };
    let (nothing, mixed) = (odds(""), odds("[look]\ntips_alike = \"no\""));
    let alike = odds("[look]\ntips_alike = \"yes\"");
    // A mixed set makes another size five times as likely, one looked through a fifth.
    assert!((4.0..6.0).contains(&(mixed / nothing)), "{nothing} {mixed}");
    assert!((4.0..6.0).contains(&(nothing / alike)), "{nothing} {alike}");
}

#[test]
fn without_cups_there_is_nothing_to_go_by() {
    assert!(diagnosed("[setting]\npressure = \"40 psi\"\n").is_none());
}

/// Four rounds of which the first counts: as found, then whatever stands in `more`.
fn rounds(readings: &str, more: &str) -> Diagnosed {
    diagnosed(&format!("{}{more}", visit("", readings))).expect("cups")
}

const LOW: &str = "17, 17, 17, 17, 17, 17, 17, 17";

#[test]
fn a_round_at_another_pressure_takes_the_offset_apart() {
    // 8 psi of 40 and of 80 do not reach the tips: 19.2 × √(32 ÷ 40) = 17.2 and 19.2 × √(72 ÷ 40) = 25.8 fl oz.
    let second = "[[catch.round]]\nafter = \"pressure changed\"\npressure = \"80 psi\"\ntips = [1, 2, 3, 5, 6, 7]\nreadings = [26, 25.5, 26, 26, 25.5, 26]\n";
    let parts = rounds(LOW, second).found.boom.parts.expect("a second pressure");
    let zero = parts.zero.expect("a second pressure");
    assert!(zero.low.as_psi() < 8.0 && zero.high.as_psi() > 8.0 && zero.middle.as_psi() > 3.0, "{parts:?}");
    // Nobody knows at which pressure, or tips were replaced before: nothing is told.
    for odd in [
        second.replace("pressure = \"80 psi\"\n", ""),
        format!("[[catch.round]]\nafter = \"new tips\"\ntips = [1]\nreadings = [19]\n{second}"),
    ] {
        assert!(rounds(LOW, &odd).found.boom.parts.is_none(), "{odd}");
    }
}

#[test]
fn when_the_whole_boom_was_caught_again_at_another_pressure_the_last_round_counts() {
    let second = "[[catch.round]]\nafter = \"pressure changed\"\npressure = \"20 psi\"\nreadings = [13.5, 13.5, 13.5, 13.5, 13.5, 13.5, 13.5, 13.5]\n";
    let found = rounds("19, 19, 19, 19, 19, 19, 19, 19", second).found;
    // 19.2 × √½ = 13.6: as new ones, at 20 psi.
    assert!(found.boom.offset.abs() < 0.03, "{:?}", found.boom);
    assert!(found.boom.parts.is_some_and(|parts| parts.zero.is_some()));
    let unknown =
        rounds("19, 19, 19, 19, 19, 19, 19, 19", &second.replace("pressure = \"20 psi\"\n", "")).found;
    assert!(unknown.new_flow.is_none());
}

#[test]
fn pressures_at_tips_and_a_new_tip_count() {
    let at_tip = "[[catch.tip_pressure]]\ntip = 3\npressure = \"32 psi\"\nmarks = \"1 psi\"\n";
    let found = rounds(LOW, at_tip);
    assert!(
        found.findings.iter().any(|finding| finding.code() == "tips_get_pressure"),
        "{:?}",
        found.findings
    );
    let new = visit("", LOW).replace("[[catch.round]]", "new_tip = [17]\n[[catch.round]]");
    let parts = diagnosed(&new).and_then(|found| found.found.boom.parts).expect("a new tip");
    assert!(parts.set.middle.abs() < 0.03, "{parts:?}");
    let empty = format!("{}[[catch.tip_pressure]]\ntip = 3\n", visit("", LOW));
    let errors = visit::file::read(empty.as_bytes()).expect_err("no pressure");
    assert!(errors.to_string().contains("pressure"), "{errors}");
}

#[test]
fn a_round_of_swapped_tips_tells_tip_from_place() {
    let swap = "[[catch.round]]\nafter = \"swapped\"\nswapped = [3, 4]\ntips = [3, 4]\nreadings = [14, 19]\n";
    let at_place = |more: &str| rounds("19, 19, 14, 19, 19, 19, 19, 19", more).found.tips[2].at_place;
    assert!(at_place(swap).is_some_and(|chance| chance > 0.9));
    // Two tips caught are the two that were swapped.
    let moved = swap.replace("swapped = [3, 4]\n", "").replace("[14, 19]", "[19, 14]");
    assert!(at_place(&moved).is_some_and(|chance| chance < 0.05));
    let three = swap.replace("swapped = [3, 4]", "swapped = [3, 4, 5]");
    let text = format!("{}{three}", visit("", LOW));
    assert!(visit::file::read(text.as_bytes()).is_err());
    // The tip is not told as still off or mended: nothing was done to it.
    let read = visit::file::read(format!("{}{swap}", visit("", "19, 19, 14, 19, 19, 19, 19, 19")).as_bytes());
    let outcome = findings(&read.expect("a visit"), UnitSystem::Us).expect("worked out");
    assert!(!outcome.all().any(|(_, finding)| finding.code() == "tip_still_off"));
}

#[test]
fn single_tips_that_were_looked_at_count() {
    let readings = "19, 19, 16, 19, 19, 19, 19, 19";
    let chance = |look: &str, cause| {
        diagnosed(&visit(look, readings)).expect("cups").found.tips[2].probability_of(cause)
    };
    let size = |look: &str| chance(look, Cause::WrongTip);
    assert!(size("[look]\nodd_tips = [3]") > 0.95 && size("[look]\nodd_tips = [5]") < 0.1);
    let partly = |look: &str| chance(look, Cause::PartlyPlugged);
    assert!(partly("[look]\nstreaky_tips = [3]") > partly("[look]\nstreaky_tips = [5]") + 0.2);
    let told = diagnosed(&visit(
        "[look]\ndripping_tips = [2, 3]\nfoam = \"yes\"\nno_drip_after_5_s = \"no\"",
        readings,
    ));
    let codes: Vec<&str> = told.iter().flat_map(|found| &found.findings).map(Coded::code).collect();
    assert_eq!(codes.iter().filter(|code| **code == "check_valves_leak").count(), 1, "{codes:?}");
    assert!(codes.contains(&"cups_foam"), "{codes:?}");
}

#[test]
fn a_gauge_that_does_not_rest_at_nothing_shows_too_much() {
    // It rests at 7 psi: of 40 psi 33 reach the tips, and they give √(33 ÷ 40) = 0.91 of 19.2.
    let readings = "17.5, 17.5, 17.5, 17.5, 17.5, 17.5, 17.5, 17.5";
    let found =
        diagnosed(&visit("[look]\ngauge_rests_at = \"7 psi\"\ngauge_back_to_zero = \"no\"", readings))
            .expect("cups");
    let parts = found.found.boom.parts.expect("the gauge was looked at");
    assert!(parts.pressure.is_some_and(|pressure| pressure.high < -0.08), "{parts:?}");
    assert!(parts.set.low < 0.0 && parts.set.high > 0.0, "{parts:?}");
}

fn recorded(text: &str) -> Records {
    let visit = visit::file::read(text.as_bytes()).expect("a visit");
    let outcome = findings(&visit, UnitSystem::Us).expect("worked out");
    let found = diagnosis(&visit, &outcome).expect("diagnosed");
    records(&visit, &outcome, found.as_ref())
}

#[test]
fn only_what_is_certain_is_recorded_and_of_a_boom_all_or_nothing() {
    let readings = "19, 19.5, 14, 19, [19, 19, 16], 19, 0, 19";
    let cleaned = "[[catch.round]]\nafter = \"after cleaning\"\ntips = [3, 7]\nreadings = [19, 19]\n";
    let all = recorded(&format!("{}{cleaned}", visit("", readings)));
    assert_eq!(all.tips, Counts::new([6.0, 0.0, 1.0, 1.0, 0.0]));
    // Of three cups of one tip two agree and one is far off; the others stand by themselves.
    assert_eq!(all.cups, Counts::new([9.0, 1.0]));
    // One of the low tips was never cleaned: nobody knows what it is, and nothing is counted.
    let one = cleaned.replace("[3, 7]", "[3]").replace("[19, 19]", "[19]");
    assert_eq!(recorded(&format!("{}{one}", visit("", readings))), Records::default());
    // Wear shows in the new tip that reads right, once the sizes were looked through.
    let new = "[[catch.round]]\nafter = \"new tips\"\ntips = [3]\nreadings = [19]\n";
    let high = |look: &str| recorded(&format!("{}{new}", visit(look, "19, 19, 22, 19, 19, 19, 19, 19"))).tips;
    assert_eq!(high("[look]\nodd_tips = [8]"), Counts::new([7.0, 1.0, 0.0, 0.0, 0.0]));
    assert_eq!(high("[look]\nodd_tips = [3]"), Counts::new([7.0, 0.0, 0.0, 0.0, 1.0]));
    assert_eq!(high(""), Counts::new([0.0; 5]));
}

#[test]
fn a_swap_that_leaves_no_doubt_is_recorded() {
    let swap = "[[catch.round]]\nafter = \"swapped\"\nswapped = [3, 4]\ntips = [3, 4]\nreadings = [14, 19]\n";
    let stayed = recorded(&format!("{}{swap}", visit("", "19, 19, 14, 19, 19, 19, 19, 19")));
    assert_eq!(stayed.swaps, Counts::new([0.0, 1.0]));
    assert_eq!(recorded(&visit("", "19, 19, 14, 19, 19, 19, 19, 19")).swaps, Counts::new([0.0, 0.0]));
}

#[test]
fn a_round_at_another_pressure_is_held_against_new_tips_at_that_one() {
    let second = "[[catch.round]]\nafter = \"pressure changed\"\npressure = \"20 psi\"\nreadings = [13.5, 13.5, 13.5, 13.5, 13.5, 13.5, 13.5, 13.5]\n";
    let text = format!("{}{second}", visit("", "19, 19, 19, 19, 19, 19, 19, 19"));
    let read = visit::file::read(text.as_bytes()).expect("a visit");
    let outcome = findings(&read, UnitSystem::Us).expect("worked out");
    let new = &outcome.catch.expect("cups").rounds[1].verdicts.new;
    // 13.5 fl oz against 19.2 × √½ = 13.58.
    assert!(
        new.len() == 8 && new.iter().all(|tip| (tip.measured.deviation + 0.0056).abs() < 0.001),
        "{new:?}"
    );
}
