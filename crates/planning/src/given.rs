//! What was given, as errors show it and as they carry it; and the two checks that every sum begins with.

use units::{Amount, Arg, Args, Kind, Quantity, Ranged, UnitSystem, VolumePerArea};

/// A quantity as the English of an error shows it.
pub(crate) fn text<Q: Quantity>(quantity: &Q, kind: Kind) -> String {
    Amount::new(*quantity, kind).text(UnitSystem::Us)
}

/// A quantity as an error carries it.
pub(crate) fn arg<Q: Quantity>(quantity: &Q, kind: Kind) -> Arg {
    Arg::Amount(Amount::new(*quantity, kind))
}

/// What an error says of a range that cannot be one.
pub(crate) fn range_text(low: &VolumePerArea, rate: &VolumePerArea, high: &VolumePerArea) -> String {
    range_args(low, rate, high).fill(
        "the range of the rate, {low} to {high}, must lie above nothing and hold {rate}",
        UnitSystem::Us,
    )
}

/// A range that cannot be one, as an error carries it.
pub(crate) fn range_args(low: &VolumePerArea, rate: &VolumePerArea, high: &VolumePerArea) -> Args {
    let arg = |rate| arg(rate, Kind::Rate);
    Args::new().with("low", arg(low)).with("rate", arg(rate)).with("high", arg(high))
}

/// Refuses what is not more than nothing.
pub(crate) fn positive<Q: Quantity, E>(quantity: Q, error: impl FnOnce(Q) -> E) -> Result<Q, E> {
    if quantity.is_positive() { Ok(quantity) } else { Err(error(quantity)) }
}

/// Refuses a rate of nothing, and a range that does not hold its rate or reaches below nothing.
pub(crate) fn sound<E>(
    measured: &Ranged<VolumePerArea>,
    no_rate: impl FnOnce(VolumePerArea) -> E,
    no_range: impl FnOnce(&Ranged<VolumePerArea>) -> E,
) -> Result<(), E> {
    positive(measured.value, no_rate)?;
    let holds = measured.low.is_positive()
        && measured.high.is_positive()
        && measured.low <= measured.value
        && measured.value <= measured.high;
    if holds { Ok(()) } else { Err(no_range(measured)) }
}
