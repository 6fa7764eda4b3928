//! Verdicts on booms whose answer is plain, and on tiny ones that a slow sum over everything also works out.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod made;

use calibration::catch::{Limit, LimitProfile, Risk, Round, RoundSummary, summarise};
use calibration::verdict::{Judged, Model, Settles, judge_round, next_catches};
use made::{Made, made};
use units::{Time, Verdict, Volume};

fn ten() -> Limit {
    LimitProfile::named("mean-10").expect("known").limit(None)
}

fn judged(round: &Round, model: &Model) -> (Judged, RoundSummary) {
    let summary = summarise(round, &ten(), &model.doubts, model.risk).expect("worked out");
    (judge_round(round, &summary, &ten(), model), summary)
}

fn verdicts(readings: &[f64], step: f64, seconds: f64) -> Vec<Verdict> {
    let round = made(&Made {
        readings: readings.iter().map(|reading| vec![*reading]).collect(),
        step,
        seconds,
        ..Made::default()
    });
    judged(&round, &Model::default()).0.tips.iter().map(|tip| tip.verdict).collect()
}

#[test]
fn alike_tips_that_read_alike_are_alike() {
    // Read to the ounce, one ounce is 7 %: by its own cup no tip could be told from one 6 % off.
    let all = verdicts(&[14.0, 14.0, 15.0, 14.0, 14.0, 15.0, 14.0, 14.0, 14.0, 15.0, 14.0, 14.0], 1.0, 30.0);
    assert!(all.iter().all(|verdict| *verdict == Verdict::Within), "{all:?}");
    let same = verdicts(&[14.0; 20], 1.0, 30.0);
    assert!(same.iter().all(|verdict| *verdict == Verdict::Within), "{same:?}");
}

#[test]
fn a_tip_far_off_is_outside_and_one_at_the_limit_is_open() {
    let off = verdicts(&[14.5, 14.5, 15.0, 14.5, 18.0, 14.5, 14.0, 14.5, 11.5, 14.5, 14.5, 15.0], 0.5, 30.0);
    assert_eq!((off[4], off[8]), (Verdict::Outside, Verdict::Outside));
    assert_eq!(off.iter().filter(|verdict| **verdict == Verdict::Within).count(), 10);
    // Exactly 10 % above the others by a fine cup: nobody can tell.
    let at = verdicts(&[400.0, 400.0, 402.0, 398.0, 443.0, 400.0, 399.0, 401.0, 400.0, 400.0], 1.0, 60.0);
    assert_eq!(at[4], Verdict::CannotTell);
}

#[test]
fn what_the_boom_says_is_told_apart_from_the_cup() {
    let mut readings = vec![vec![14.0]; 20];
    readings[6] = vec![15.0];
    let round = made(&Made { readings, step: 1.0, seconds: 15.0, ..Made::default() });
    let (judged, summary) = judged(&round, &Model::default());
    let tip = &judged.tips[6];
    assert_eq!(tip.verdict, Verdict::Within);
    assert_eq!(summary.tips[6].verdict, Some(Verdict::CannotTell));
    assert!(tip.rests_on_boom);
    // The reading says +7 %; beside nineteen alike the tip is most likely nearer to them.
    assert!(tip.deviation > 0.0 && tip.deviation < 0.065, "{}", tip.deviation);
    assert!(tip.low < tip.deviation && tip.deviation < tip.high);
}

#[test]
fn one_tip_two_tips_none() {
    assert_eq!(verdicts(&[14.0], 1.0, 30.0), [Verdict::Within]);
    let two = verdicts(&[14.0, 20.0], 0.5, 30.0);
    assert_eq!(two, [Verdict::Outside, Verdict::Outside]);
    assert_eq!(verdicts(&[14.0, 14.0], 0.5, 60.0), [Verdict::Within, Verdict::Within]);
    // All plugged: nothing runs, nothing is judged.
    assert!(verdicts(&[0.0, 0.0, 0.0], 1.0, 30.0).is_empty());
}

#[test]
fn plugged_tips_are_set_aside_and_uncaught_ones_are_open() {
    let mut readings = vec![vec![14.5]; 12];
    readings[3] = vec![0.0];
    readings[8] = Vec::new();
    let round = made(&Made { readings, step: 0.5, seconds: 30.0, ..Made::default() });
    let (judged, _) = judged(&round, &Model::default());
    assert_eq!(judged.tips.len(), 11);
    let uncaught = judged.tips.iter().find(|tip| tip.number == 9).expect("judged");
    assert_eq!(uncaught.verdict, Verdict::CannotTell);
    // Beside eleven that agree it is most likely like them, but nothing of its own says so.
    assert!(uncaught.low < -0.05 && uncaught.probability_within > 0.8, "{uncaught:?}");
    assert!(judged.boom.probability_all_within < 1e-12, "a plugged tip is not within");
}

#[test]
fn repeats_with_the_same_cup_help_little_and_a_finer_cup_much() {
    // The rounding trap: three times 16 fl oz of 14.4 still is an interval from 15.5 to 16.5.
    let with = |cups: Vec<f64>, step: f64| {
        let mut readings = vec![vec![if step < 1.0 { 14.4 } else { 14.0 }]; 19];
        readings.push(cups);
        let round = made(&Made { readings, step, seconds: 30.0, ..Made::default() });
        let tip = judged(&round, &Model::default()).0.tips[19].clone();
        tip.high - tip.low
    };
    let (once, thrice, fine) = (with(vec![16.0], 1.0), with(vec![16.0; 3], 1.0), with(vec![16.0], 0.3));
    assert!(thrice > 0.6 * once, "{once} {thrice}");
    assert!(fine < 0.75 * once, "{once} {fine}");
}

#[test]
fn order_units_and_size_do_not_matter() {
    let readings = [14.5, 14.0, 15.0, 17.0, 14.5, 13.0, 14.5, 15.0, 14.0, 14.5];
    let base = made(&Made {
        readings: readings.iter().map(|reading| vec![*reading]).collect(),
        step: 0.5,
        ..Made::default()
    });
    let turned = made(&Made {
        readings: readings.iter().rev().map(|reading| vec![*reading]).collect(),
        step: 0.5,
        ..Made::default()
    });
    let tenfold = made(&Made {
        readings: readings.iter().map(|reading| vec![reading * 10.0]).collect(),
        step: 5.0,
        ..Made::default()
    });
    let metric = made(&Made {
        readings: readings.iter().map(|reading| vec![reading * 29.573_529_562_5]).collect(),
        step: 0.5 * 29.573_529_562_5,
        unit: "mL",
        ..Made::default()
    });
    let of = |round: &Round| judged(round, &Model::default()).0.tips;
    let base = of(&base);
    let mut turned = of(&turned);
    turned.reverse();
    for other in [turned, of(&tenfold), of(&metric)] {
        for (one, other) in base.iter().zip(&other) {
            assert!((one.probability_within - other.probability_within).abs() < 1e-6);
            assert!((one.deviation - other.deviation).abs() < 1e-6 && (one.high - other.high).abs() < 1e-6);
        }
    }
}

#[test]
fn cups_under_one_timed_run_share_its_time() {
    // Three cups a run, one run stopped late: its three cups all read 4 % high. Told to share the run, they are less suspect.
    let mut readings = vec![vec![400.0]; 12];
    for reading in &mut readings[3..6] {
        *reading = vec![430.0];
    }
    let alone =
        made(&Made { readings: readings.clone(), step: 5.0, seconds: 15.0, unit: "mL", ..Made::default() });
    let shared = made(&Made { readings, step: 5.0, seconds: 15.0, unit: "mL", cups_in_a_run: Some(3) });
    let model = Model::default();
    let (alone, shared) = (judged(&alone, &model).0, judged(&shared, &model).0);
    assert!(
        shared.tips[4].deviation < alone.tips[4].deviation - 0.002,
        "{} {}",
        shared.tips[4].deviation,
        alone.tips[4].deviation
    );
}

#[test]
fn drift_shows_when_the_first_tip_is_caught_again_at_the_end() {
    // The battery runs down: readings fall evenly by 4 %, and the first tip caught again falls with them.
    let mut readings: Vec<Vec<f64>> =
        (0..16).map(|turn| vec![400.0 * (1.0 - 0.04 * f64::from(turn) / 16.0)]).collect();
    readings[0].push(384.0);
    let round = made(&Made { readings, step: 1.0, seconds: 60.0, unit: "mL", ..Made::default() });
    let mut order: Vec<u32> = (1..=16).collect();
    order.push(1);
    let without = judged(&round, &Model::default()).0;
    let with = judged(&round, &Model { order, ..Model::default() }).0;
    let spread = |judged: &Judged| judged.tips[15].deviation - judged.tips[1].deviation;
    assert!(spread(&with).abs() < 0.7 * spread(&without).abs(), "{} {}", spread(&with), spread(&without));
}

#[test]
fn the_next_cup_goes_under_the_open_tip_and_stops_in_time() {
    let mut readings = vec![vec![14.0]; 12];
    readings[4] = vec![16.0];
    let round = made(&Made { readings, step: 1.0, seconds: 30.0, ..Made::default() });
    let model = Model::default();
    let (judged, summary) = judged(&round, &model);
    let ways = Settles { cup_holds: Some(Volume::fluid_ounces(32.0)), ..Settles::default() };
    let next = next_catches(&round, &summary, &judged, &ten(), &model, &ways);
    assert_eq!(next[0].tips, [5]);
    assert!(next[0].finer || next[0].time > Time::seconds(30.0));
    // A cup of 32 fl oz does not hold 90 s of 14 fl oz in 30 s.
    assert!(next.iter().all(|next| next.time < Time::seconds(75.0)));
    let settled = made(&Made {
        readings: vec![vec![420.0]; 12],
        step: 5.0,
        seconds: 60.0,
        unit: "mL",
        ..Made::default()
    });
    let (judged, summary) = self::judged(&settled, &model);
    assert!(next_catches(&settled, &summary, &judged, &ten(), &model, &ways).is_empty());
}

#[test]
fn a_risk_of_nothing_or_a_half_is_refused() {
    for risk in [0.0, 0.5, 1.0, -0.1, f64::NAN] {
        assert!(Risk::new(risk).is_err(), "{risk}");
    }
}
