//! The pattern across a boom of sixty tips, all five shapes and their band, beside numpy (`tools/bench/pattern_numpy.py`, the
//! same boom); and the search for heights that suit.
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::hint::black_box;

use sprayer::pattern::{
    Fan, Grooves, PATTERN_LIMIT, PatternError, SprayBoom, SprayTip, heights_within, pattern,
};
use timing::case;
use units::{Angle, Length};

fn main() -> Result<(), PatternError> {
    let boom = boom()?;
    let fans = Fan::tapered();
    case("pattern_60_tips", 1, || pattern(black_box(&boom), &fans, &Grooves::default()));
    let (angle, spacing) = (Angle::degrees(110.0), Length::metres(0.5));
    case("pattern_heights", 1, || heights_within(black_box(angle), spacing, &fans, &PATTERN_LIMIT));
    Ok(())
}

/// Sixty tips 0.5 m apart, 110 degrees at 0.5 m; flows, leanings and places a little off.
fn boom() -> Result<SprayBoom, PatternError> {
    let tip = |number: u32| {
        let off = f64::from(number * 7 % 5) - 2.0;
        let place = Length::metres(0.5 * f64::from(number) + 0.01 * off);
        SprayTip {
            flow: 1.0 + 0.03 * off,
            tilt: Angle::degrees(2.0 * off),
            ..SprayTip::new(place, Length::metres(0.5), Angle::degrees(110.0))
        }
    };
    SprayBoom::new((0..60).map(tip).collect(), Length::metres(0.5))
}
