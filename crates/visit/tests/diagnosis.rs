//! What is most likely wrong, out of a visit's file.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use calibration::diagnosis::{Cause, Diagnosed};
use units::{Coded, UnitSystem};
use visit::findings::{diagnosis, findings};

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
