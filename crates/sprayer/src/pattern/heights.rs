//! The heights at which a pattern is even enough, whichever of the shapes the fans have.

use units::{Angle, Length, Quantity, Verdict};

use super::band::pattern;
use super::boom::SprayBoom;
use super::error::PatternError;
use super::fan::Fan;
use super::grooves::{Grooves, Judged};
use super::limit::PatternLimit;

/// From one height to another, both tried and good, and every height tried between them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeightRange {
    /// The lowest.
    pub from: Length,
    /// The highest.
    pub to: Length,
}

/// The heights that are tried, and how far apart, in metres. Our own choice: lower a boom strikes the crop, higher the wind
/// takes the spray; and nobody sets a boom finer.
const LOWEST: f64 = 0.25;
const STEP: f64 = 0.02;
const TRIED: u32 = 51;
/// How many spacings in the middle are judged. Our own choice: grooves of 100 mm under tips 20 in apart repeat no sooner.
const SPACINGS: f64 = 4.0;

/// Returns the heights, in ranges from the lowest up, at which sound tips all alike hold the limit for every one of the fans.
///
/// *Assumptions*: as [`pattern`]; tried from 0.25 to 1.25 m in steps of 20 mm.
///
/// *Errors*: an angle or spacing that cannot be.
///
/// *Source*: our own search; the limit's source is its own.
///
/// *Example*: none for fans of 110 degrees at 20 in below 14 in, where their edges hardly meet.
pub fn heights_within(
    angle: Angle,
    spacing: Length,
    fans: &[Fan],
    limit: &PatternLimit,
) -> Result<Vec<HeightRange>, PatternError> {
    let mut ranges: Vec<HeightRange> = Vec::new();
    let mut goes_on = false;
    for number in 0..TRIED {
        let height = Length::metres(LOWEST + STEP * f64::from(number));
        let good = is_good(angle, spacing, height, fans, limit)?;
        match ranges.last_mut().filter(|_| goes_on && good) {
            Some(range) => range.to = height,
            None if good => ranges.push(HeightRange { from: height, to: height }),
            None => {}
        }
        goes_on = good;
    }
    Ok(ranges)
}

fn is_good(
    angle: Angle,
    spacing: Length,
    height: Length,
    fans: &[Fan],
    limit: &PatternLimit,
) -> Result<bool, PatternError> {
    let one = SprayBoom::alike(2, spacing, height, angle)?;
    let (from, to) = one.overlapped(fans);
    // As many tips as leave the middle to itself: what a boom of two lacks of it, and enough to cover it with narrow fans.
    let lacking = (SPACINGS - (to - from) / spacing.si()).max(SPACINGS).ceil();
    // Fans wider than a hundred spacings even everything out, and no boom has so many tips.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let tips = 2 + lacking.min(500.0) as u32;
    let boom = SprayBoom::alike(tips, spacing, height, angle)?;
    let grooves = Grooves { judged: Judged::Middle(spacing * SPACINGS), ..Grooves::default() };
    let pattern = pattern(&boom, fans, &grooves)?;
    Ok(pattern.verdict(limit) == Verdict::Within)
}
