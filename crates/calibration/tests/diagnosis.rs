//! What a diagnosis makes of plain cases, and its laws.

#![allow(clippy::expect_used)] // a test fails by panicking

mod made_diagnosis;

use calibration::diagnosis::{Cause, Diagnosis, DiagnosisModel, Seen};
use made_diagnosis::{Boom, boom};
use proptest::prelude::*;

fn close(one: f64, other: f64) -> bool {
    (one - other).abs() < 1e-9
}

fn adds_to_one(found: &Diagnosis) -> bool {
    found.tips.iter().all(|tip| (tip.causes.iter().sum::<f64>() - 1.0).abs() < 1e-6)
}

#[test]
fn a_low_tip_is_partly_plugged_or_misread() {
    let found = boom(&[&[19.0, 19.0, 19.0, 19.0, 10.0, 19.0, 19.0], &[19.0, 19.0, 19.0, 19.0, 19.0, 19.0]])
        .diagnose();
    assert_eq!(found.tips[4].likeliest(), Cause::PartlyPlugged);
    // Half of 19 is 9.5: half a minute taken for a whole one is a likely slip as well.
    assert!((0.2..0.6).contains(&found.tips[4].misread[0]), "{:?}", found.tips[4]);
    assert!(
        found.tips.iter().filter(|tip| tip.number != 5).all(|tip| tip.probability_of(Cause::Sound) > 0.99)
    );
    assert!(found.sections.iter().all(|section| section.probability_restricted < 0.01));
}

#[test]
fn a_low_section_is_restricted_and_its_tips_are_sound() {
    let found = boom(&[&[19.0; 7], &[17.0; 6]]).diagnose();
    let second = &found.sections[1];
    assert!(second.probability_restricted > 0.99 && second.low > 0.05 && second.high < 0.16, "{second:?}");
    assert!(found.tips.iter().all(|tip| tip.probability_faulty() < 0.01));
    assert!(found.sections[0].probability_restricted < 0.01);
}

#[test]
fn nothing_anywhere_is_a_boom_that_is_off() {
    let found = boom(&[&[0.0; 3], &[0.0; 3]]).diagnose();
    assert!(found.boom.probability_off > 0.99, "{:?}", found.boom);
    // Of the tips nothing is known then.
    assert!(found.tips.iter().all(|tip| (tip.probability_of(Cause::Plugged) - 0.01).abs() < 0.01));
    let shut = boom(&[&[19.0; 3], &[0.0; 3]]).diagnose();
    assert!(shut.sections[1].probability_shut > 0.99 && shut.boom.probability_off < 0.01, "{shut:?}");
    let one = boom(&[&[19.0; 3], &[19.0, 0.0, 19.0]]).diagnose();
    assert_eq!(one.tips[4].likeliest(), Cause::Plugged);
}

#[test]
fn a_boom_that_is_high_as_a_whole_has_sound_tips() {
    let found = boom(&[&[21.0; 8]]).diagnose();
    assert!(found.boom.low > 0.05 && found.boom.high < 0.13, "{:?}", found.boom);
    assert!(found.tips.iter().all(|tip| tip.probability_faulty() < 0.01));
    // Without knowing what a new tip gives nothing can be said about it.
    let unknown = Boom { rated: false, ..boom(&[&[21.0; 8]]) }.diagnose();
    assert!(unknown.new_flow.is_none());
    assert!(unknown.tips.iter().all(|tip| tip.probability_faulty() < 0.01));
}

#[test]
fn the_size_on_a_tip_parts_wear_from_another_size() {
    // 25 oz against 19.2 is the flow of the next larger size, within the range of wear too.
    let high = boom(&[&[19.0, 19.0, 25.0, 19.0, 19.0, 19.0]]);
    let before = high.diagnose();
    let looked = |seen: Seen| {
        let model = DiagnosisModel { seen: vec![seen], ..DiagnosisModel::default() };
        Boom { model, ..high.clone() }.diagnose()
    };
    let wrong = looked(Seen::WrongSize { tip: 3 });
    let right = looked(Seen::RightSize { tip: 3 });
    let size = |found: &Diagnosis| found.tips[2].probability_of(Cause::WrongTip);
    assert!(size(&wrong) > 0.95 && size(&right) < 0.1 * size(&before), "{} {}", size(&wrong), size(&before));
}

#[test]
fn a_drift_in_the_order_of_the_cups_is_no_fault() {
    // 700 mL falling by 4 % along the boom, the first tip caught again at the end.
    let readings: Vec<Vec<f64>> =
        (0..12).map(|place| vec![(570.0 * (1.0 - 0.04 * f64::from(place) / 12.0)).round()]).collect();
    let mut tips = readings;
    tips[0].push(547.0);
    let order: Vec<u32> = (1..=12).chain([1]).collect();
    let model = DiagnosisModel { order, ..DiagnosisModel::default() };
    let made = Boom { sections: vec![tips], unit: "mL", step: 5.0, model, ..boom(&[]) };
    let found = made.diagnose();
    let (drift, spread) = found.boom.drift.expect("the order is known");
    assert!(drift + 2.0 * spread < 0.0 && drift > -0.07, "{drift} {spread}");
    assert!(found.tips.iter().all(|tip| tip.probability_faulty() < 0.1), "{found:?}");
}

fn readings() -> impl Strategy<Value = Vec<Vec<Vec<f64>>>> {
    let reading = prop_oneof![8 => 17_u32..21, 1 => 5_u32..40, 1 => Just(0)].prop_map(f64::from);
    let tip = prop::collection::vec(reading, 1..3);
    prop::collection::vec(prop::collection::vec(tip, 1..6), 1..4)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn chances_add_to_one_whatever_was_read(sections in readings()) {
        let found = Boom { sections, ..boom(&[]) }.diagnose();
        prop_assert!(adds_to_one(&found), "{found:?}");
        prop_assert!(found.boom.low <= found.boom.offset && found.boom.offset <= found.boom.high);
        for section in &found.sections {
            prop_assert!(section.low <= section.loss && section.loss <= section.high);
            prop_assert!((0.0..=1.0).contains(&section.probability_restricted));
        }
        prop_assert!(found.tips.iter().flat_map(|tip| &tip.misread).all(|chance| (0.0..=1.0).contains(chance)));
    }

    #[test]
    fn the_order_of_tips_and_sections_does_not_matter(sections in readings()) {
        let turned: Vec<Vec<Vec<f64>>> =
            sections.iter().rev().map(|tips| tips.iter().rev().cloned().collect()).collect();
        let one = Boom { sections, ..boom(&[]) }.diagnose();
        let other = Boom { sections: turned, ..boom(&[]) }.diagnose();
        prop_assert!(close(one.boom.offset, other.boom.offset));
        for (tip, same) in one.tips.iter().zip(other.tips.iter().rev()) {
            prop_assert!(tip.causes.iter().zip(same.causes).all(|(one, other)| close(*one, other)));
        }
        for (section, same) in one.sections.iter().zip(other.sections.iter().rev()) {
            prop_assert!(close(section.probability_restricted, same.probability_restricted));
        }
    }

    #[test]
    fn the_same_again_does_not_raise_doubt(odd in 12_u32..27) {
        let of = |cups: usize| {
            let mut tips = vec![vec![19.0]; 8];
            tips[3] = vec![f64::from(odd); cups];
            Boom { sections: vec![tips], ..boom(&[]) }.diagnose()
        };
        let chances: Vec<f64> = (1..4).map(|cups| {
            let tip = &of(cups).tips[3];
            tip.causes.iter().copied().fold(0.0, f64::max)
        }).collect();
        // What a second cup alike leaves open is no more than what the first did, give or take where causes overlap.
        prop_assert!(chances[1] > chances[0] - 0.1 && chances[2] > chances[1] - 0.1, "{odd}: {chances:?}");
        let misread: Vec<f64> = (1..4).map(|cups| of(cups).tips[3].misread[0]).collect();
        prop_assert!(misread[1] <= misread[0] + 1e-3 && misread[2] <= misread[1] + 1e-3, "{odd}: {misread:?}");
    }
}
