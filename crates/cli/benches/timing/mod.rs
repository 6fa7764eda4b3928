//! How long one go takes: the median of many, after some to warm up.

use std::time::{Duration, Instant};

/// How long a case is timed altogether, and how long a sample of it should take so that the clock's own step does not
/// count. Both chosen: a median over some thousand samples, in a second.
const ALTOGETHER: Duration = Duration::from_secs(1);
const SAMPLE: Duration = Duration::from_micros(200);
/// A slow case is sampled this often at least. Chosen.
const FEWEST: usize = 7;

/// Prints the name, a tab and the nanoseconds that one go of `work` takes; `goes` says how many goes one call makes.
///
/// Under anything but `cargo bench`, which says `--bench`, the work is done once and nothing is printed.
pub fn case<T>(name: &str, goes: u32, mut work: impl FnMut() -> T) {
    let mut once = || {
        std::hint::black_box(work());
    };
    once();
    if !std::env::args().any(|argument| argument == "--bench") {
        return;
    }
    let mut calls = 1;
    while timed(calls, &mut once) < SAMPLE {
        calls *= 2;
    }
    let end = Instant::now() + ALTOGETHER;
    let mut samples = Vec::new();
    while Instant::now() < end || samples.len() < FEWEST {
        let sample = timed(calls, &mut once).as_secs_f64() * 1e9;
        samples.push(sample / f64::from(calls) / f64::from(goes));
    }
    samples.sort_by(f64::total_cmp);
    println!("{name}\t{:.1}", samples[samples.len() / 2]);
}

fn timed(calls: u32, once: &mut impl FnMut()) -> Duration {
    let begin = Instant::now();
    for _ in 0..calls {
        once();
    }
    begin.elapsed()
}
