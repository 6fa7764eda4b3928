//! Everything that the pattern across the boom tells is said in both languages, out of the real functions.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

#[path = "../calibration_codes/said.rs"]
mod said;

use calibration::pattern::{Across, across};
use said::Said;
use sprayer::pattern::{
    Fan, Grooves, MeasuredFan, PATTERN_LIMIT, PatternError, PatternLimit, Shape, SprayBoom, SprayTip, pattern,
};
use units::{Angle, Arg, Coded, Length, UnitSystem};
use words::{Language, Words};

/// A boom as most are, with tip 5 changed.
fn with(change: fn(&mut SprayTip)) -> Result<SprayBoom, PatternError> {
    let boom = alike(13, 20.0, 110.0)?;
    let mut tips = boom.tips().to_vec();
    change(&mut tips[4]);
    SprayBoom::new(tips, boom.spacing())
}

fn alike(tips: u32, height: f64, angle: f64) -> Result<SprayBoom, PatternError> {
    SprayBoom::alike(tips, Length::inches(20.0), Length::inches(height), Angle::degrees(angle))
}

fn measured(collected: &[f64]) -> Result<MeasuredFan, PatternError> {
    MeasuredFan::new(collected, Length::metres(0.05), Length::metres(0.5), None)
}

fn errors() -> Vec<PatternError> {
    let sound = alike(4, 20.0, 110.0).expect("a boom").tips().to_vec();
    let plugged = sound.iter().map(|tip| SprayTip { flow: 0.0, ..*tip }).collect();
    let of = |tips, height, groove| {
        let grooves = Grooves { width: Length::metres(groove), ..Grooves::default() };
        pattern(&alike(tips, height, 110.0).expect("a boom"), &Fan::tapered(), &grooves).expect_err("refused")
    };
    let mut errors = vec![of(3, 40.0, 0.1), of(3, 20.0, 2.0), of(3, 20.0, 0.0)];
    errors.extend([&[0.0, 0.0][..], &[1.0, -1.0]].map(|collected| measured(collected).expect_err("refused")));
    let refused = [
        alike(1, 20.0, 110.0),
        alike(13, 0.0, 110.0),
        SprayBoom::new(sound, Length::ZERO),
        SprayBoom::new(plugged, Length::inches(20.0)),
        with(|tip| tip.angle = Angle::degrees(175.0)),
        with(|tip| tip.place = Length::ZERO),
        with(|tip| tip.flow = -0.1),
        with(|tip| tip.tilt = Angle::degrees(40.0)),
        with(|tip| tip.twist = Angle::degrees(80.0)),
    ];
    errors.extend(refused.into_iter().map(|boom| boom.expect_err("refused")));
    errors
}

/// Booms that between them show all there is to tell.
fn told() -> Vec<Across> {
    let even = |boom: Result<SprayBoom, PatternError>, fans: &[Fan]| {
        across(boom.expect("a boom"), fans, &Grooves::default(), &PATTERN_LIMIT).expect("a pattern")
    };
    let tapered = Fan::tapered();
    let caught: Vec<f64> = (0..30).map(|groove| 15.5 - (f64::from(groove) - 14.5_f64).abs()).collect();
    let by_measure = [Fan::Measured(measured(&caught).expect("a fan"))];
    let all_edges = [Fan::Assumed(Shape::EvenFan), Fan::Assumed(Shape::Triangle)];
    // A limit that nothing holds, for fans that overlap and for fans that do not meet.
    let never = PatternLimit { spread: 0.0, ..PATTERN_LIMIT };
    let hopeless = |height| {
        let boom = alike(13, height, 80.0).expect("a boom");
        across(boom, &Fan::tapered(), &Grooves::default(), &never).expect("a pattern")
    };
    vec![
        hopeless(20.0),
        hopeless(10.0),
        even(alike(13, 20.0, 110.0), &tapered),
        even(with(|tip| tip.flow = 0.0), &tapered),
        even(with(|tip| tip.flow = 1.9), &tapered),
        even(with(|tip| tip.tilt = Angle::degrees(25.0)), &tapered),
        even(with(|tip| tip.place = tip.place + Length::inches(9.0)), &tapered),
        // Too low, between, apart; where no height does.
        even(alike(13, 14.0, 80.0), &tapered),
        even(alike(13, 14.0, 110.0), &tapered),
        even(alike(13, 10.0, 80.0), &tapered),
        even(alike(13, 8.0, 80.0), &tapered),
        even(alike(40, 60.0, 140.0), &tapered),
        even(with(|tip| tip.flow = 0.0), &by_measure),
        even(alike(13, 20.0, 110.0), &all_edges),
    ]
}

#[test]
fn all_of_it_is_said_in_both_languages() {
    let mut said = Said::new();
    errors().iter().for_each(|error| said.coded(error));
    for across in told() {
        for finding in &across.findings {
            said.coded(finding);
            phrases(&mut said, finding);
        }
        said.working(&across.working, &|_| false);
    }
    let is_code = |text: &str| {
        text.starts_with("pattern_") && text.chars().all(|sign| sign.is_ascii_lowercase() || sign == '_')
    };
    let phrase = |text: &str| PHRASES.contains(&text);
    let of_a_visit = ["pattern_too_short", "pattern_without_crooked"];
    // Held by the visit's own tests.
    said.keys.extend(of_a_visit.map(str::to_string));
    // Held by the sheets' own tests.
    said.keys.extend(["title", "heading", "mean", "doubt"].map(|key| format!("ground-{key}")));
    let folders = ["sprayer/src/pattern", "calibration/src/pattern"];
    said.all_of(&folders, &|text| is_code(text) && !phrase(text), "pattern", "## What cannot be");
}

/// Phrases of ours, which are found by another name.
const PHRASES: &[&str] = &[
    "pattern_span",
    "pattern_one",
    "pattern_any_shape",
    "pattern_this_fan",
    "pattern_from_up",
    "pattern_under",
    "pattern_between",
    "pattern_in_many_places",
    "pattern_help_look",
    "pattern_help_clean",
    "pattern_help_change",
    "pattern_help_aim",
    "pattern_help_move",
    "pattern_help_height",
    "pattern_from_to",
    "pattern_nowhere",
];

fn phrases(said: &mut Said, coded: &dyn Coded) {
    for (_, arg) in coded.args().iter() {
        let Arg::Phrases(phrases) = arg else { continue };
        let [one, other] = Language::ALL.map(|language| Words::of(language).arg(arg));
        assert_eq!(one, arg.text(UnitSystem::Us));
        let bare = phrases.iter().all(|phrase| phrase.code == "pattern_one");
        assert!((one != other || bare) && !other.contains(['{', '}', '_']), "{other}");
        for phrase in phrases {
            let inner: Vec<Arg> = phrase.args.iter().map(|(_, arg)| arg.clone()).collect();
            for arg in
                inner.iter().filter_map(|arg| if let Arg::Phrases(inner) = arg { Some(inner) } else { None })
            {
                said.keys.extend(arg.iter().map(|phrase| format!("phrase-{}", phrase.code)));
            }
        }
        said.keys.extend(phrases.iter().map(|phrase| format!("phrase-{}", phrase.code)));
    }
}

#[test]
fn who_sets_the_limit_is_said_in_both_languages() {
    let [english, spanish] = Language::ALL.map(Words::of);
    assert_eq!(english.source(PATTERN_LIMIT.source), PATTERN_LIMIT.source);
    assert_ne!(spanish.source(PATTERN_LIMIT.source), PATTERN_LIMIT.source);
    // What was not put on a table complies with nothing.
    assert!(
        PATTERN_LIMIT.source.starts_with("uses limits from") && PATTERN_LIMIT.source.ends_with("from memory")
    );
}
