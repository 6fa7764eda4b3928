//! Everything that cups, the spacing and the machine tell is said in both languages, out of the real functions.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod cups;
#[path = "../calibration_codes/said.rs"]
mod said;

use std::collections::BTreeSet;

use calibration::catch::{Change, LimitProfile, RoundKind, SET_SHARE, profiles};
use calibration::spacing::{
    GAP_LIMIT, GapLimit, Measured, Spacing, SpacingError, SpacingReadings, check_spacing,
};
use said::Said;
use sprayer::{
    BoomLayout, Mounting, PressureControl, RatedFlow, TipSize, density_factor, footprint, height_for_overlap,
};
use units::{Angle, Arg, Coded, Density, Flow, Length, Pressure};
use words::{Language, Words};

/// Sources that are the name of a publication and nothing else.
const PUBLICATIONS: &[&str] = &["Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016)"];

fn is_publication(source: &str) -> bool {
    PUBLICATIONS.contains(&source)
}

fn lengths(inches: &[f64]) -> Vec<Length> {
    inches.iter().map(|inches| Length::inches(*inches)).collect()
}

fn marks(inches: &[f64]) -> SpacingReadings {
    SpacingReadings::new(Length::inches(20.0), Measured::Marks(lengths(inches)))
}

fn gaps(inches: &[f64]) -> SpacingReadings {
    SpacingReadings::new(Length::inches(20.0), Measured::Gaps(lengths(inches)))
}

fn with_step(readings: SpacingReadings, inches: f64) -> SpacingReadings {
    SpacingReadings { step: Some(Length::inches(inches)), ..readings }
}

fn spacings() -> Vec<Spacing> {
    let fixed = |readings, fixed: &[u32]| SpacingReadings { fixed: fixed.to_vec(), ..readings };
    [
        marks(&[0.0, 20.0, 40.0, 60.0]),
        gaps(&[20.0, 20.5, 20.0]),
        gaps(&[20.5, 20.5, 20.5]),
        // One tip to the left, one to the right, an end tip, several.
        marks(&[0.0, 20.0, 41.5, 60.0, 80.0]),
        marks(&[0.0, 20.0, 38.5, 60.0, 80.0]),
        marks(&[-2.0, 20.0, 40.0, 60.0]),
        marks(&[0.0, 20.0, 40.0, 62.0]),
        marks(&[0.0, 20.0, 40.0, 58.0]),
        marks(&[0.0, 20.0, 41.5, 60.0, 80.0, 98.0, 120.0, 140.0]),
        // What no moving mends, and moves too small to make.
        fixed(marks(&[0.0, 20.0, 43.0, 60.0]), &[2, 3]),
        marks(&[0.0, 21.1, 41.8, 61.8]),
        // Left open by the marks of the tape.
        with_step(marks(&[0.0, 20.0, 40.0, 60.0]), 2.0),
        with_step(gaps(&[20.0, 20.9, 20.0]), 0.5),
        with_step(marks(&[0.0, 20.9, 40.0, 60.0]), 0.5),
        // Rather meant to be another spacing.
        gaps(&[30.0, 30.0, 30.0]),
    ]
    .iter()
    .map(|readings| check_spacing(readings).expect("usable readings"))
    .collect()
}

fn spacing_errors() -> Vec<SpacingError> {
    let wrong = |readings: SpacingReadings| check_spacing(&readings).expect_err("wrong");
    vec![
        wrong(SpacingReadings { intended: Length::inches(0.0), ..gaps(&[20.0]) }),
        wrong(gaps(&[])),
        wrong(marks(&[])),
        wrong(gaps(&[20.0; 1001])),
        wrong(gaps(&[20.0, 0.0])),
        wrong(marks(&[0.0, 20.0, 19.0])),
        wrong(with_step(gaps(&[20.0, 20.0]), 0.0)),
        GapLimit::own(0.6).expect_err("too much"),
        wrong(SpacingReadings { fixed: vec![5], ..gaps(&[20.0, 20.0]) }),
    ]
}

fn machine_errors() -> Vec<Box<dyn Coded>> {
    let (inches, psi) = (Length::inches(20.0), Pressure::psi(40.0));
    let boom = |sections: &[u32], spacing| BoomLayout::new(sections, spacing, Mounting::Rear);
    let rated = RatedFlow::new(Flow::gallons_per_minute(0.2), psi).expect("rated");
    vec![
        Box::new(footprint(Angle::degrees(110.0), Length::inches(0.0)).expect_err("no height")),
        Box::new(footprint(Angle::degrees(175.0), inches).expect_err("no fan")),
        Box::new(height_for_overlap(Angle::degrees(110.0), inches, 3.5).expect_err("too much")),
        Box::new(boom(&[4, 0], inches).expect_err("no tips")),
        Box::new(boom(&[4], Length::inches(0.0)).expect_err("no spacing")),
        Box::new(boom(&[1001], inches).expect_err("too many")),
        Box::new(boom(&[4], inches).expect("a boom").with_group("ends", &[5]).expect_err("no such tip")),
        Box::new(RatedFlow::new(Flow::gallons_per_minute(0.0), psi).expect_err("no flow")),
        Box::new(rated.flow_at(Pressure::psi(0.0)).expect_err("no pressure")),
        Box::new(density_factor(Density::pounds_per_gallon(30.0)).expect_err("no carrier")),
        Box::new(TipSize::named("99").expect_err("no size")),
        Box::new(LimitProfile::named("mean-99").expect_err("no limit")),
    ]
}

/// A label of ours is there in both languages, in English as the code has it.
fn label(said: &mut Said, key: String, english: Option<&str>) {
    let [one, other] = Language::ALL.map(|language| Words::of(language).label(&key));
    assert!(one != key && other != key && one != other, "{key}: {one}, {other}");
    assert!(english.is_none_or(|english| english == one), "{key}: {one}");
    said.keys.insert(key);
}

fn phrases(said: &mut Said, coded: &dyn Coded) {
    for (_, arg) in coded.args().iter() {
        let Arg::Phrases(phrases) = arg else { continue };
        let [one, other] = Language::ALL.map(|language| Words::of(language).arg(arg));
        assert_eq!(one, arg.text(units::UnitSystem::Us));
        assert!(one != other && !other.contains(['{', '}', '_']), "{other}");
        said.keys.extend(phrases.iter().map(|phrase| format!("phrase-{}", phrase.code)));
    }
}

/// The words of limits, rounds, changes and mountings.
fn labels(said: &mut Said) {
    for profile in profiles() {
        label(said, format!("limit-{}", profile.name), Some(profile.english));
    }
    for kind in [
        RoundKind::AsFound,
        RoundKind::AfterCleaning,
        RoundKind::NewTips,
        RoundKind::PressureChanged,
        RoundKind::Swapped,
    ] {
        label(said, format!("round-{}", kind.word().replace(' ', "_")), Some(kind.word()));
    }
    for change in Change::ALL {
        label(said, format!("change-{}", change.word()), None);
    }
    let boom = BoomLayout::new(&[4], Length::inches(20.0), Mounting::Rear).expect("a boom");
    label(said, "group-boom".to_string(), Some(boom.groups()[0].name.as_str()));
    label(said, "mounting-rear".to_string(), None);
    label(said, "mounting-front".to_string(), None);
}

#[test]
fn all_of_it_is_said_in_both_languages() {
    let mut said = Said::new();
    let (findings, workings) = cups::told();
    let spacings = spacings();
    for finding in findings.iter().chain(spacings.iter().flat_map(|spacing| &spacing.findings)) {
        said.coded(finding);
        phrases(&mut said, finding);
    }
    for working in workings.iter().chain(spacings.iter().map(|spacing| &spacing.working)) {
        said.working(working, &is_publication);
    }
    said.arg(&Arg::Word { code: "no_catch", english: "none" });
    said.arg(&Arg::Word { code: "verdict_open", english: "open" });
    for error in cups::errors() {
        said.coded(&error);
        phrases(&mut said, &error);
    }
    spacing_errors().iter().for_each(|error| said.coded(error));
    machine_errors().iter().for_each(|error| said.coded(error.as_ref()));
    labels(&mut said);
    let is_code = |text: &str| {
        let starts = ["tip_", "tips_", "boom_", "catch_", "spacing_", "fan_", "flow_", "carrier_", "limit_"];
        let plain = text.chars().all(|sign| sign.is_ascii_lowercase() || sign == '_');
        // A word for what to do with a tip, not a code.
        plain && starts.iter().any(|start| text.starts_with(start)) && text != "catch_again"
    };
    let folders =
        ["calibration/src/catch", "calibration/src/verdict", "calibration/src/spacing", "sprayer/src"];
    said.all_of(&folders, &is_code, "catch", "## What was done before");
}

#[test]
fn every_form_of_a_sentence_was_told() {
    // The same key has other sentences for one, two and several; each of these was held against the code above.
    let (findings, _) = cups::told();
    let texts: BTreeSet<String> = findings.iter().map(ToString::to_string).collect();
    let missing = |texts: &BTreeSet<String>, parts: &[&str]| -> Vec<String> {
        let told = |part: &&&str| !texts.iter().any(|text| text.contains(**part));
        parts.iter().filter(told).map(ToString::to_string).collect()
    };
    let parts = [
        "is plugged",
        "are plugged",
        "was not caught",
        "tips were caught",
        "Without tip",
        "is still off",
        "are still off",
        "Both tips are within",
        "Both tips are most likely",
        "All 3 tips are within",
        "tip 5 is in order",
        "are in order",
        "tips are off.",
        "worn.",
        "does not. The set",
        "do not. The set",
        "agrees with the others but puts out +",
        "agree with the others but put out up to +",
        "less than a new one",
        "less than new ones",
        "The tip puts out",
        "The whole boom",
    ];
    assert_eq!(missing(&texts, &parts), [""; 0]);
    let actions: BTreeSet<String> = findings.iter().filter_map(Coded::hint).collect();
    let parts = [
        "Catch it again for 60 s;",
        "Catch it again for 60 s and",
        "again for 60 s; about 12.3 min",
        "and read them to 10 mL",
        "about 50 s",
        "About 2.4 min.",
    ];
    assert_eq!(missing(&actions, &parts), [""; 0]);
}

#[test]
fn who_sets_a_limit_is_said_in_both_languages() {
    let [english, spanish] = Language::ALL.map(Words::of);
    let own = GapLimit::own(0.1).expect("a limit");
    let sources = profiles().iter().map(LimitProfile::source);
    for source in sources.chain([GAP_LIMIT.source(), SET_SHARE.source, own.source()]) {
        assert_eq!(english.source(source), source);
        assert_ne!(spanish.source(source), source);
    }
}

#[test]
fn the_machines_words_are_said_in_both_languages() {
    let [english, spanish] = Language::ALL.map(Words::of);
    for size in TipSize::all() {
        let key = format!("tip_colour-{}", size.colour().replace(' ', "_"));
        assert_eq!(english.label(&key), size.colour());
        assert!(spanish.has(&key) && spanish.label(&key) != size.colour(), "{key}");
    }
    for control in [PressureControl::Constant, PressureControl::GroundDriven, PressureControl::RateController]
    {
        let key = format!("word-{}", control.word());
        assert!(english.has(&key) && spanish.label(&key) != english.label(&key), "{key}");
    }
}
