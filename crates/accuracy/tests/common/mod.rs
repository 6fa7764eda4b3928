//! Holding a figure to a bar in a small run: the Monte Carlo error is allowed for, and no more.
#![allow(dead_code)] // not every test uses all of it

use accuracy::bar::{Bar, Standing};
use accuracy::split::Cores;
use accuracy::tally::{Tally, ThreeWays};
use accuracy::{Draw, DrawError, World};

/// A small run may miss a bar by so many of its standard errors. One in 700 sound figures would miss by more; the
/// seeds are fixed, so that a test that passes keeps passing.
const ALLOWED: f64 = 3.0;

/// Draws so many booms of a world and judges them.
pub fn counted(world: &World, draws: u32, from: u64) -> Tally {
    three_ways(draws, from, |seed| Draw::of(world, seed)).boom
}

/// Draws so many booms and judges them in three ways.
pub fn three_ways(draws: u32, from: u64, draw: impl Fn(u64) -> Result<Draw, DrawError> + Sync) -> ThreeWays {
    ThreeWays::of(draws, from, Cores::all(), draw).unwrap_or_else(|why| panic!("{why}"))
}

/// Fails where a figure is beyond its bar by more than chance explains.
pub fn hold(where_: &str, bars: &[Bar], tally: &Tally) {
    let mut missed = Vec::new();
    for bar in bars {
        let ratio = (bar.figure)(tally);
        let beyond = bar.errors_beyond(ratio).unwrap_or(f64::INFINITY);
        assert_ne!(bar.standing(ratio), Standing::Nothing, "{where_}: nothing to count for \"{}\"", bar.name);
        if beyond > ALLOWED {
            missed.push(format!(
                "\"{}\": {:.4} ± {:.4}, bar {} ({beyond:.1} standard errors)",
                bar.name,
                ratio.value().unwrap_or(f64::NAN),
                ratio.standard_error().unwrap_or(f64::NAN),
                bar.share,
            ));
        }
    }
    assert!(missed.is_empty(), "{where_}, {} booms:\n{}", tally.draws, missed.join("\n"));
}
