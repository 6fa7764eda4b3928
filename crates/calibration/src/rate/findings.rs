//! Checks that every method makes, and what is said of input that is usable but doubtful.

use super::error::{Input, RateError};
use crate::doubt::{Budget, Known, LARGE};
use units::{Amount, Arg, Finding, Kind, Length, NORMAL_95, Quantity, VolumePerArea, Weight};

/// Rates below and above these are seldom meant. Our assumption: a mist of half a gallon, a soaking of 500 gal/ac.
const SELDOM: (VolumePerArea, VolumePerArea) =
    (VolumePerArea::gallons_per_acre(0.5), VolumePerArea::gallons_per_acre(500.0));
/// Tips hardly stand further apart; a wider "spacing" is a swath. Our assumption: 8 ft.
pub(super) const WIDEST_SPACING: Length = Length::feet(8.0);
/// No tip sprays so narrow a strip, and no boom is so wide. Our own limits: a quarter inch and 500 ft.
const NARROWEST: Length = Length::inches(0.25);
const WIDEST: Length = Length::feet(500.0);
/// A tip hardly covers less, nor a boom more. Our assumption: 2 in, and 200 ft, the widest course taken.
const SELDOM_WIDE: (Length, Length) = (Length::inches(2.0), Length::feet(200.0));
/// A boom is hardly narrower; a narrower "swath" is a spacing. Our assumption: 40 in, two tips.
const NARROWEST_SWATH: Length = Length::inches(40.0);

/// The amount, if it is a positive finite number with usable doubts.
pub(super) fn checked<Q: Quantity>(
    what: Input,
    known: &Known<Q>,
    kind: Kind,
) -> Result<&Known<Q>, RateError> {
    positive(what, known.value, kind)?;
    usable(&known.doubt)?;
    Ok(known)
}

/// Whether a quantity is a positive finite number, and a width one that is sprayed.
pub(super) fn positive<Q: Quantity>(what: Input, quantity: Q, kind: Kind) -> Result<(), RateError> {
    if !quantity.is_positive() {
        return Err(RateError::NotPositive { what, given: Amount::new(quantity, kind) });
    }
    // Nobody says 12000 in for the width of a swath.
    let kind = if what.is_width() && quantity.si() > WIDEST_SPACING.si() { Kind::Length } else { kind };
    let sprayed = NARROWEST.si()..=WIDEST.si();
    if what.is_width() && !sprayed.contains(&quantity.si()) {
        return Err(RateError::Width { what, given: Amount::new(quantity, kind) });
    }
    Ok(())
}

/// Whether every doubt is a number from nothing upwards.
pub(super) fn usable(doubt: &Budget) -> Result<(), RateError> {
    match doubt.first_unusable() {
        Some(bad) => Err(RateError::Doubt { of: bad.of, given_percent: bad.relative * 100.0 }),
        None => Ok(()),
    }
}

/// A rate that is seldom meant.
pub(super) fn doubtful_rate(rate: VolumePerArea) -> Option<Finding> {
    let finding = if rate > SELDOM.1 {
        Finding::new(
            Weight::Doubt,
            "rate_doubtful_high",
            "{rate} is more than is ever sprayed on a field. Do the amount and the width belong together?",
        )
    } else if rate < SELDOM.0 {
        Finding::new(
            Weight::Doubt,
            "rate_doubtful_low",
            "{rate} is less than is ever sprayed on a field. Do the amount and the width belong together?",
        )
    } else {
        return None;
    };
    Some(finding.with("rate", Arg::Amount(Amount::new(rate, Kind::Rate))))
}

/// A width that is seldom sprayed, where nobody says whether it is one tip's or the boom's.
pub(super) fn doubtful_width(width: Length) -> Option<Finding> {
    let (case, english, kind) = if width < SELDOM_WIDE.0 {
        ("narrow", "Hardly any tip covers only {width}. Is the unit right?", Kind::Width)
    } else if width > SELDOM_WIDE.1 {
        ("wide", "Hardly any boom is {width} wide. Is the unit right?", Kind::Length)
    } else {
        return None;
    };
    let finding = Finding::new(Weight::Doubt, "rate_width_doubtful", english).case(case);
    Some(finding.with("width", Arg::Amount(Amount::new(width, kind))))
}

/// A rate that may be so far off that it says next to nothing.
pub(super) fn large_doubt(known: &Known<VolumePerArea>) -> Option<Finding> {
    let either_way = known.doubt.relative() * NORMAL_95;
    let largest = known.doubt.largest().filter(|_| either_way > LARGE)?;
    Some(
        Finding::new(
            Weight::Doubt,
            "rate_doubt_large",
            "The rate may be {either_way} off either way, mostly through {cause}: this says next to nothing.",
        )
        .with("either_way", Arg::Doubt(either_way * 100.0))
        .with("cause", largest.of.word())
        .with("smaller", largest.of.smaller_word())
        .to_do("To narrow it: {smaller}."),
    )
}

/// A tip spacing that looks like a swath.
pub(super) fn spacing_like_swath(spacing: Length) -> Option<Finding> {
    (spacing > WIDEST_SPACING).then(|| {
        Finding::new(
            Weight::Doubt,
            "rate_spacing_like_swath",
            "Tips hardly stand {width} apart. Is that the swath? One tip's amount goes with the tip spacing.",
        )
        .with("width", Arg::Amount(Amount::new(spacing, Kind::Length)))
    })
}

/// A swath that looks like a tip spacing.
pub(super) fn swath_like_spacing(swath: Length) -> Option<Finding> {
    (swath < NARROWEST_SWATH).then(|| {
        Finding::new(
            Weight::Doubt,
            "rate_swath_like_spacing",
            "A boom is hardly {width} wide. Is that the tip spacing? The whole boom's amount goes with tips times spacing.",
        )
        .with("width", Arg::Amount(Amount::new(swath, Kind::Width)))
    })
}
