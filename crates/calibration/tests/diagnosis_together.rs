//! Cups timed together, and tips in groups of their own.

#![allow(clippy::expect_used)] // a test fails by panicking

mod made_diagnosis;

use calibration::catch::{Round, RoundKind, TipCatches};
use calibration::diagnosis::{Cause, Diagnosis, DiagnosisModel, diagnose};
use made_diagnosis::{cup_over, rated};
use proptest::prelude::*;
use sprayer::{GroupId, WATER_AT_20_C};
use units::Time;

/// One tip: its section, its group, what was read (mL, marks of 2) and the run it was timed under.
type Tip = (u16, u16, f64, Option<u32>);

fn found(tips: &[Tip]) -> Diagnosis {
    let of = |(number, (section, group, read, run)): (u32, &Tip)| TipCatches {
        number,
        group: GroupId(*group),
        section: *section,
        catches: vec![cup_over(*read, 2.0, 30.0, *run)],
    };
    let tips = (1..).zip(tips).map(of).collect();
    let round = Round {
        kind: RoundKind::AsFound,
        tips,
        density: WATER_AT_20_C,
        time: Time::seconds(30.0),
        unit: None,
    };
    diagnose(&round, Some(rated()), &DiagnosisModel::default()).expect("worked out")
}

/// Two sections of six, the second giving so much, timed under these runs.
fn sections(second: f64, runs: [Option<u32>; 2]) -> Diagnosis {
    let tips: Vec<Tip> = (0..12)
        .map(|place: u16| {
            let section = place / 6;
            let own = f64::from(place % 3) * 4.0 - 4.0;
            let read = if section == 0 { 568.0 } else { second };
            (section, 0, read + own, runs[usize::from(section)])
        })
        .collect();
    found(&tips)
}

#[test]
fn a_run_stopped_early_may_be_why_its_tips_are_low() {
    // One by one the hands' errors average out over six cups; under one run each, 3 % less may be the watch (0.94 % a run).
    let restricted = |second, runs| sections(second, runs).sections[1].probability_restricted;
    let (alone, runs) = (restricted(550.0, [None, None]), restricted(550.0, [Some(1), Some(2)]));
    assert!(runs < 0.5 * alone, "{runs} {alone}");
    // 8.5 % less is no watch's doing, but how much it is is known less well: about √(0.7² + 2 × 0.94²) % against 0.7 %.
    let (alone, runs) = (sections(520.0, [None, None]), sections(520.0, [Some(1), Some(2)]));
    let wide = |found: &Diagnosis| found.sections[1].high - found.sections[1].low;
    assert!((1.5..2.5).contains(&(wide(&runs) / wide(&alone))), "{} {}", wide(&runs), wide(&alone));
    assert!(runs.sections[1].low < 0.085 && runs.sections[1].high > 0.085);
    assert!(runs.tips.iter().all(|tip| tip.probability_faulty() < 0.05));
}

#[test]
fn a_run_of_the_whole_boom_parts_no_sections() {
    // All cups under one run: its error is the boom's, and sections are known better than if each cup was timed by hand.
    let (alone, runs) = (sections(520.0, [None, None]), sections(520.0, [Some(1), Some(1)]));
    let of_boom = |found: &Diagnosis| found.boom.high - found.boom.low;
    assert!(of_boom(&runs) > 1.1 * of_boom(&alone), "{:?} {:?}", runs.boom, alone.boom);
    let of_section = |found: &Diagnosis| found.sections[1].high - found.sections[1].low;
    assert!(of_section(&runs) < of_section(&alone), "{:?} {:?}", runs.sections[1], alone.sections[1]);
}

#[test]
fn tips_meant_to_differ_are_held_against_one_another() {
    // Four end tips of twice the flow in a group of their own, one of them low.
    let mut tips: Vec<Tip> = vec![(0, 0, 568.0, None); 6];
    tips.extend([(0, 1, 1136.0, None), (0, 1, 1130.0, None), (0, 1, 800.0, None), (0, 1, 1140.0, None)]);
    let found = found(&tips);
    assert_eq!(found.tips.len(), 10);
    assert!(found.tips.iter().zip(1..).all(|(tip, number)| tip.number == number));
    assert_eq!(found.tips[8].likeliest(), Cause::PartlyPlugged);
    let sound = |number: usize| found.tips[number - 1].probability_of(Cause::Sound);
    assert!([1, 2, 3, 4, 5, 6, 7, 8, 10].into_iter().all(|number| sound(number) > 0.9), "{:?}", found.tips);
}

#[test]
fn a_group_knows_what_its_sections_lose() {
    // The second section gives 12 % less; so does the end tip on it, which is sound.
    let mut tips: Vec<Tip> = vec![(0, 0, 568.0, None); 5];
    tips.extend(vec![(1, 0, 500.0, None); 5]);
    tips.extend([(0, 1, 1136.0, None), (0, 1, 1136.0, None), (1, 1, 1000.0, None)]);
    let found = found(&tips);
    assert!(found.sections[1].probability_restricted > 0.99);
    assert!(found.tips[12].probability_of(Cause::Sound) > 0.9, "{:?}", found.tips[12].causes);
    // A group by itself has no sections but its own.
    let alone = [(0, 3, 1136.0, None), (0, 3, 1136.0, None), (0, 3, 1130.0, None)];
    assert!(self::found(&alone).tips.iter().all(|tip| tip.probability_of(Cause::Sound) > 0.9));
}

fn any_tip() -> impl Strategy<Value = Tip> {
    let read = prop_oneof![6 => 540_u32..600, 2 => 0_u32..1500, 1 => Just(0)]
        .prop_map(|read| f64::from(read / 2 * 2));
    (0_u16..3, 0_u16..3, read, prop::option::of(0_u32..4))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn chances_add_to_one_however_it_was_timed_and_grouped(tips in prop::collection::vec(any_tip(), 1..14)) {
        let found = found(&tips);
        prop_assert_eq!(found.tips.len(), tips.len());
        for tip in &found.tips {
            prop_assert!((tip.causes.iter().sum::<f64>() - 1.0).abs() < 1e-6, "{:?}", tip);
            prop_assert!(tip.causes.iter().chain(&tip.misread).all(|chance| (-1e-9..=1.0 + 1e-9).contains(chance)), "{:?}", tip);
        }
        prop_assert!(found.sections.iter().all(|section| section.low <= section.loss && section.loss <= section.high));
    }
}
