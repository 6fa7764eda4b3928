//! The bars of the announced worlds, in smaller runs, by both generators. Source: this house's verdict specification.
#![allow(clippy::panic, clippy::unwrap_used)] // a test fails by panicking

mod common;

use std::sync::OnceLock;

use accuracy::announced::announced;
use accuracy::bar::{ANNOUNCED, ONE_BAD_TIP};
use accuracy::one_bad_tip::{BAD_TIP, Off, OneTest, one_bad_tip};
use accuracy::second::SecondWorld;
use accuracy::split::{Cores, in_order};
use accuracy::tally::{Tally, ThreeWays};
use accuracy::{Draw, Way, judge};
use common::{hold, three_ways};

/// The simulator's booms, judged once for all tests here.
fn simulated() -> &'static ThreeWays {
    static WAYS: OnceLock<ThreeWays> = OnceLock::new();
    WAYS.get_or_init(|| {
        let world = announced();
        three_ways(600, 500_000_000, |seed| Draw::of(&world, seed))
    })
}

#[test]
fn the_bars_are_held_on_the_simulators_booms() {
    hold("announced", ANNOUNCED, &simulated().boom);
}

#[test]
fn the_bars_are_held_on_the_second_generators_booms() {
    let ways = three_ways(400, 510_000_000, |seed| Draw::of_second(SecondWorld::Announced, seed));
    hold("announced, second generator", ANNOUNCED, &ways.boom);
}

#[test]
fn probabilities_mean_what_they_say() {
    // In each bin of the reliability curve the share within is what was said, give or take chance; beside it a
    // tenth is allowed, because bins in the middle hold few tips and depend on how faults are distributed.
    let tally = &simulated().boom;
    for (said, found) in tally.said.iter().zip(&tally.bins) {
        let (Some(said), Some(share)) = (said.value(), found.value()) else { continue };
        let error = found.standard_error().unwrap_or(1.0);
        assert!((share - said).abs() <= 3.0 * error + 0.1, "said {said:.3}, found {share:.3} ± {error:.3}");
    }
    // Nearly sure is nearly always right: next to no slack in the last bin, where almost all tips are.
    let (said, found) = (&tally.said[9], &tally.bins[9]);
    let apart = (found.value().unwrap() - said.value().unwrap()).abs();
    assert!(apart <= 3.0 * found.standard_error().unwrap() + 0.001, "{apart}");
}

#[test]
fn the_wrong_calls_to_expect_are_those_there_are() {
    let whole = &simulated().whole;
    let (said, found) = (whole.wrong_said.value().unwrap(), whole.wrong_found.value().unwrap());
    assert!(found <= said + 3.0 * whole.wrong_found.standard_error().unwrap(), "said {said}, found {found}");
}

#[test]
fn a_tip_12_percent_high_is_not_waved_through() {
    let judged = in_order(800, Cores::all(), |place| {
        let draw = one_bad_tip(Off::TheOthers(0.12), &OneTest::in_ounces(), 530_000_000 + u64::from(place))?;
        judge(&draw, Way::Boom)
    });
    let mut tally = Tally::default();
    for calls in judged {
        let calls: Vec<_> = calls.unwrap().into_iter().filter(|call| call.tip == BAD_TIP).collect();
        tally.boom(&calls);
    }
    hold("one bad tip of twenty", &[ONE_BAD_TIP], &tally);
}

#[test]
fn the_boom_helps_beside_the_readings_alone_and_the_plain_rule() {
    let ways = simulated();
    let value = |ratio: &accuracy::ratio::Ratio| ratio.value().unwrap();
    assert!(value(&ways.boom.cannot_tell) < value(&ways.measured.cannot_tell));
    assert!(value(&ways.boom.brier) < value(&ways.measured.brier));
    assert!(value(&ways.boom.brier) < value(&ways.plain.brier));
    assert!(value(&ways.boom.wrong_calls) < value(&ways.plain.wrong_calls));
    assert!(value(&ways.boom.near_missed) < value(&ways.plain.near_missed));
}
