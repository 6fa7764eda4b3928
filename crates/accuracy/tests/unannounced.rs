//! The bars of the worlds the inference was not told about, in smaller runs. Source: this house's verdict specification.
#![allow(clippy::panic)] // a test fails by panicking

mod common;

use accuracy::bar::UNANNOUNCED;
use accuracy::second::SecondWorld;
use accuracy::unannounced::{
    drift_told, faults_of_the_yard, half_old, heavier_timing, hurried, misreads, section_step, taper,
    wide_spread,
};
use accuracy::{Draw, Way, World, judge};
use common::{counted, hold, three_ways};
use units::Verdict;

const BOOMS: u32 = 150;

fn check(world: &World, from: u64) {
    hold(world.name, UNANNOUNCED, &counted(world, BOOMS, from));
}

#[test]
fn tips_that_spread_widely() {
    check(&wide_spread(), 600_000_000);
}

#[test]
fn a_half_old_set() {
    check(&half_old(), 610_000_000);
}

#[test]
fn a_step_between_sections() {
    check(&section_step(), 620_000_000);
}

#[test]
fn a_taper() {
    check(&taper(), 630_000_000);
}

#[test]
fn faults_by_the_laws_of_a_yard() {
    check(&faults_of_the_yard(), 640_000_000);
}

#[test]
fn a_slower_hand_than_is_told() {
    check(&heavier_timing(), 650_000_000);
}

#[test]
fn people_who_misread() {
    check(&misreads(), 660_000_000);
}

/// Cups of one tip that contradict one another, or that no fault explains, say that somebody slipped; they say nothing
/// against other tips. A slip in a shared run may cost the tips of that run, up to four of them.
fn does_not_damn_the_boom(world: &World, seed: u64) {
    let draw = Draw::of(world, seed).unwrap_or_else(|why| panic!("{why}"));
    let calls = judge(&draw, Way::Boom).unwrap_or_else(|why| panic!("{why}"));
    let damned = calls
        .iter()
        .filter(|call| call.verdict == Verdict::Outside && call.right() == Verdict::Within)
        .count();
    assert!(3 * damned <= calls.len() + 12, "{}, seed {seed}: {damned} of {}", world.name, calls.len());
}

#[test]
fn a_slip_at_one_cup_does_not_damn_the_boom() {
    for (world, from) in
        [(misreads(), 661_000_000), (heavier_timing(), 662_000_000), (hurried(), 663_000_000)]
    {
        (from..from + 150).for_each(|seed| does_not_damn_the_boom(&world, seed));
    }
}

#[test]
fn one_cup_at_twice_the_others_does_not_damn_the_boom() {
    // On each of these long booms, caught once, one cup or run was held for twice its time: it reads more than 2.05
    // times the others. Every tip was once called outside for it.
    for seed in [17_000_509, 17_000_558, 62_000_755, 62_001_027] {
        does_not_damn_the_boom(&misreads(), seed);
    }
    for seed in [18_000_665, 18_001_192] {
        does_not_damn_the_boom(&hurried(), seed);
    }
}

#[test]
fn people_in_a_hurry() {
    check(&hurried(), 670_000_000);
}

#[test]
fn a_drift_with_the_order_told() {
    check(&drift_told(), 680_000_000);
}

#[test]
fn the_second_generators_worlds() {
    for (part, world) in
        [SecondWorld::WideSpread, SecondWorld::HalfOld, SecondWorld::SectionStep].into_iter().enumerate()
    {
        let ways =
            three_ways(BOOMS, 690_000_000 + 1_000_000 * part as u64, |seed| Draw::of_second(world, seed));
        hold(&format!("{world:?}, second generator"), UNANNOUNCED, &ways.boom);
    }
}
