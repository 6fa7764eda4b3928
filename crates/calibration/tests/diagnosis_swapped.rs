//! Two tips swapped and caught again: what goes with the tip and what stays at its place.

#![allow(clippy::expect_used)] // a test fails by panicking

mod made_diagnosis;

use calibration::diagnosis::{Cause, Counts, Diagnosis, DiagnosisModel, Priors, Swap, TipDiagnosis};
use made_diagnosis::{Boom, boom, cup};

/// Tip 3 of eight reads so much; tips 3 and 4 are swapped and caught again.
fn swapped(third: f64, after: Option<[f64; 2]>, priors: Priors) -> Diagnosis {
    let mut tips = vec![vec![568.0]; 8];
    tips[2] = vec![third];
    let swaps = after
        .map(|[third, fourth]| Swap { tips: (3, 4), after: [vec![cup(third, 5.0)], vec![cup(fourth, 5.0)]] });
    let model = DiagnosisModel { swaps: swaps.into_iter().collect(), priors, ..DiagnosisModel::default() };
    Boom { sections: vec![tips], unit: "mL", step: 5.0, model, ..boom(&[]) }.diagnose()
}

fn third(after: Option<[f64; 2]>) -> TipDiagnosis {
    swapped(450.0, after, Priors::default()).tips[2].clone()
}

fn low(tip: &TipDiagnosis) -> f64 {
    tip.probability_of(Cause::PartlyPlugged) + tip.probability_of(Cause::Plugged)
}

#[test]
fn what_moves_with_the_tip_is_the_tip() {
    // Now the fourth place, which has tip 3, is the low one.
    let tip = third(Some([570.0, 455.0]));
    assert!(low(&tip) + tip.probability_of(Cause::WrongTip) > 0.95, "{tip:?}");
    assert!(tip.at_place.is_some_and(|chance| chance < 0.02), "{:?}", tip.at_place);
    assert!(tip.misread[0] < 0.02);
}

#[test]
fn what_stays_is_the_place() {
    let found = swapped(450.0, Some([450.0, 570.0]), Priors::default());
    let tip = &found.tips[2];
    assert!(low(tip) > 0.95 && tip.at_place.is_some_and(|chance| chance > 0.9), "{tip:?}");
    assert!(found.tips[3].probability_of(Cause::Sound) > 0.95, "{:?}", found.tips[3]);
    // Another size cannot stay behind.
    assert!(tip.probability_of(Cause::WrongTip) < 0.05);
}

#[test]
fn what_is_nowhere_any_more_was_misread() {
    let once = third(None);
    let tip = third(Some([570.0, 565.0]));
    assert!(once.at_place.is_none() && once.probability_faulty() > 0.5, "{once:?}");
    assert!(tip.probability_faulty() < 0.1 && tip.misread[0] > 0.9, "{tip:?}");
}

#[test]
fn a_high_tip_never_stays_behind() {
    let found = swapped(680.0, Some([680.0, 570.0]), Priors::default());
    assert!(found.tips[2].at_place.is_some_and(|chance| chance < 0.1), "{:?}", found.tips[2]);
    let moved = swapped(680.0, Some([570.0, 680.0]), Priors::default());
    assert!(moved.tips[2].probability_faulty() > 0.95, "{:?}", moved.tips[2].causes);
}

#[test]
fn the_share_that_sits_at_places_counts_by_bayes() {
    // Cups that fit both ways equally leave what was believed: all five tips as low as this one, so that a swap changes nothing.
    let mut tips = vec![vec![450.0]; 2];
    tips.extend(vec![vec![568.0]; 6]);
    let chance = |at_place: f64| {
        let swap = Swap { tips: (1, 2), after: [vec![cup(450.0, 5.0)], vec![cup(450.0, 5.0)]] };
        let priors = Priors { swaps: Counts::new([1.0 - at_place, at_place]), ..Priors::default() };
        let model = DiagnosisModel { swaps: vec![swap], priors, ..DiagnosisModel::default() };
        let found =
            Boom { sections: vec![tips.clone()], unit: "mL", step: 5.0, model, ..boom(&[]) }.diagnose();
        found.tips[0].at_place.expect("swapped")
    };
    // Both low, each at its place with p or in its tip with 1 - p; as odds p² : (1 - p)², but for other sizes, which move.
    let (rare, even) = (chance(0.2), chance(0.5));
    assert!(rare < 1.0 / 17.0 + 0.01 && rare > 0.02, "{rare}");
    assert!(even < 0.5 + 0.01 && even > 0.3, "{even}");
}
