//! The swath of a boom: tips times spacing, which is not the length of the boom.

use super::error::{Input, RateError};
use super::findings::positive;
use units::{Amount, Arg, Finding, Kind, Length, Weight};

/// Swaths that differ by less than this part of a spacing are the same. Our rule.
const SAME: f64 = 0.25;

/// Returns the swath of a broadcast boom.
///
/// *Units*: a length.
///
/// *Assumptions*: tips alike and evenly spaced; each serves half a spacing either side, so the swath reaches half a
/// spacing beyond the end tips. 1 to 1000 tips.
///
/// *Errors*: [`RateError`]: no tips, a spacing of nothing, below nothing or not a number.
///
/// *Source*: state applicator-exam practice problems (Henderson County extension office), swath width.
///
/// *Example*: 13 tips at 20 in are 260 in, 21.7 ft; from the first tip to the last it is only 20 ft.
pub fn swath_of_boom(tips: u32, spacing: Length) -> Result<Length, RateError> {
    positive(Input::TipSpacing, spacing, Kind::Width)?;
    if !(1..=1000).contains(&tips) {
        return Err(RateError::Tips { given: tips });
    }
    Ok(spacing * f64::from(tips))
}

/// Returns a finding where a swath someone gave is not tips times spacing: it may be the boom's length.
///
/// *Units*: lengths.
///
/// *Assumptions*: as in [`swath_of_boom`]; a quarter of a spacing either way is taken as the same.
///
/// *Errors*: those of [`swath_of_boom`]; a swath of nothing, below nothing or not a number.
///
/// *Source*: our rule.
///
/// *Example*: 20 ft given for 13 tips at 20 in is the boom from its first tip to its last.
pub fn check_swath(given: Length, tips: u32, spacing: Length) -> Result<Option<Finding>, RateError> {
    positive(Input::Swath, given, Kind::Length)?;
    let swath = swath_of_boom(tips, spacing)?;
    let boom = swath - spacing;
    let same = |one: Length, other: Length| (one - other).abs() <= spacing * SAME;
    if same(given, swath) {
        return Ok(None);
    }
    let finding = if tips > 1 && same(given, boom) {
        Finding::new(
            Weight::Doubt,
            "rate_boom_length_for_swath",
            "{given} is the boom from the first tip to the last. The swath is {tips} tips times {spacing}: {swath}.",
        )
        .to_do("Work with {swath}.")
    } else {
        Finding::new(
            Weight::Doubt,
            "rate_swath_not_tips_times_spacing",
            "{given} is not {tips} tips times {spacing}, which is {swath}.",
        )
        .to_do("Count the tips that spray and measure their spacing.")
    };
    Ok(Some(
        finding
            .with("given", Arg::Amount(Amount::new(given, Kind::Length)))
            .with("tips", Arg::Count(tips))
            .with("spacing", Arg::Amount(Amount::new(spacing, Kind::Width)))
            .with("swath", Arg::Amount(Amount::new(swath, Kind::Length))),
    ))
}
