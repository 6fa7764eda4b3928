//! The diagnosis held to sprayers whose truth is known; smaller runs than those of the tables.

#![allow(clippy::expect_used)] // a test fails by panicking

use accuracy::ailing::AilingWorld;
use accuracy::diagnosed::{Done, SprayerScore, TipScore, scores};
use accuracy::split::Cores;

fn drawn(world: AilingWorld, done: Done) -> Vec<SprayerScore> {
    // Other seeds than those of the tables.
    scores(world, done, 300, 5_000_000, Cores::all()).expect("drawn")
}

/// The share of tips for which something is so, among those for which it may be.
fn share(scores: &[SprayerScore], so: impl Fn(&TipScore) -> Option<bool>) -> f64 {
    let all: Vec<bool> = scores.iter().flat_map(|score| &score.tips).filter_map(so).collect();
    all.iter().filter(|so| **so).count() as f64 / all.len() as f64
}

fn faulty(tip: &TipScore) -> bool {
    tip.causes[0] < 0.5
}

#[test]
fn faults_are_found_and_sound_tips_spared() {
    let once = drawn(AilingWorld::NearBelief, Done::Once);
    let found = share(&once, |tip| (tip.truth != 0).then(|| faulty(tip)));
    let spared = share(&once, |tip| (tip.truth == 0).then(|| !faulty(tip)));
    // 860 faulty tips: a standard error of half a percent on each bar.
    assert!(found > 0.96 && spared > 0.975, "{found} {spared}");
    let again = drawn(AilingWorld::NearBelief, Done::NamedAgain);
    let found = share(&again, |tip| (tip.truth != 0).then(|| faulty(tip)));
    let spared = share(&again, |tip| (tip.truth == 0).then(|| !faulty(tip)));
    assert!(found > 0.975 && spared > 0.995, "{found} {spared}");
    let cups: u32 = again.iter().map(|score| score.again).sum();
    assert!((300..1_800).contains(&cups), "{cups} cups again on 300 sprayers");
}

#[test]
fn in_a_world_it_was_not_told_about_it_does_better_than_the_plain_rule() {
    let once = drawn(AilingWorld::Mismatched, Done::Once);
    let ours = (
        share(&once, |tip| (tip.truth != 0).then(|| faulty(tip))),
        share(&once, |tip| (tip.truth == 0).then(|| !faulty(tip))),
    );
    let rule = (
        share(&once, |tip| (tip.truth != 0).then(|| tip.off[1] > 0.1)),
        share(&once, |tip| (tip.truth == 0).then(|| tip.off[1] <= 0.1)),
    );
    assert!(ours.0 > rule.0 && ours.1 > rule.1 + 0.03, "{ours:?} {rule:?}");
    let sections: Vec<(f64, bool)> =
        once.iter().flat_map(|score| &score.sections).map(|one| (one.restricted, one.loss > 0.04)).collect();
    let right = sections.iter().filter(|(chance, truth)| (*chance >= 0.5) == *truth).count();
    assert!(right as f64 / sections.len() as f64 > 0.985, "{right} of {}", sections.len());
}

#[test]
fn over_the_plumbing_three_cups_more_settle_what_one_cup_leaves() {
    let once = drawn(AilingWorld::Plumbed, Done::Once);
    let odd = |tip: &TipScore| tip.truth != 0 || tip.slipped;
    let found = share(&once, |tip| odd(tip).then_some(tip.in_order < 0.5));
    let spared = share(&once, |tip| (!odd(tip)).then_some(tip.in_order >= 0.5));
    // Some 1,000 odd tips: a standard error of half a percent.
    assert!(found > 0.96 && spared > 0.985, "{found} {spared}");
    let alarms = |scores: &[SprayerScore]| {
        scores.iter().flat_map(|score| &score.tips).filter(|tip| tip.truth == 0 && faulty(tip)).count() as f64
            / scores.len() as f64
    };
    let three = drawn(AilingWorld::Plumbed, Done::ThreeAgain);
    assert!(three.iter().all(|score| score.again <= 3));
    assert!(alarms(&three) < 0.4 * alarms(&once), "{} {}", alarms(&three), alarms(&once));
    let looked = drawn(AilingWorld::Plumbed, Done::NamedAgainAndLooked);
    let sizes = share(&looked, |tip| (tip.truth == 4).then(|| tip.causes[4] >= 0.5));
    let misread = share(&looked, |tip| tip.slipped.then_some(tip.misread >= 0.5));
    // Some 140 of one and 200 of the other: standard errors of two to three percent.
    assert!(sizes > 0.85 && misread > 0.75, "{sizes} {misread}");
}
