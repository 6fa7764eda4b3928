//! The same seed gives the same draw, and the same tables come out however the work is split.
#![allow(clippy::unwrap_used)] // a test fails by panicking

use accuracy::announced::announced;
use accuracy::split::Cores;
use accuracy::tables::{Sizes, page};
use accuracy::tally::ThreeWays;
use accuracy::unannounced::unannounced;
use accuracy::{Draw, Way, judge};

#[test]
fn the_same_seed_is_judged_the_same() {
    for world in unannounced() {
        for seed in [1, 2, u64::MAX] {
            let (one, other) = (Draw::of(&world, seed).unwrap(), Draw::of(&world, seed).unwrap());
            assert_eq!(one.round, other.round);
            assert_eq!(judge(&one, Way::Boom).unwrap(), judge(&other, Way::Boom).unwrap());
        }
    }
}

#[test]
fn counts_do_not_depend_on_the_split() {
    let world = announced();
    let counts = |cores| ThreeWays::of(23, 5, Cores::new(cores), |seed| Draw::of(&world, seed)).unwrap();
    let alone = counts(1);
    for cores in [2, 3, 7] {
        assert_eq!(counts(cores), alone, "{cores}");
    }
}

#[test]
fn the_whole_page_does_not_depend_on_the_split() {
    let sizes = Sizes { announced: 6, others: 3, one_bad_tip: 4, rounding: 3 };
    let tables = |cores| page(&sizes, Cores::new(cores), &mut |_| {}).unwrap();
    let alone = tables(1);
    assert_eq!(tables(2), alone);
    assert!(alone.len() >= 7 && alone.iter().all(|table| !table.rows.is_empty()));
    assert!(alone.iter().all(|table| table.rows.iter().all(|row| row.len() == table.heads.len())));
}
