//! Small helpers for putting words together.

use units::{Amount, Kind, Quantity, Ranged};
use words::Words;

/// Texts that are there and not blank, put together.
pub fn joined(parts: &[Option<&str>], between: &str) -> String {
    let parts: Vec<&str> =
        parts.iter().flatten().copied().map(str::trim).filter(|part| !part.is_empty()).collect();
    parts.join(between)
}

/// "most likely 14.1 to 15.1", where there is a range.
pub fn most_likely(words: &Words, amount: &Amount) -> Option<String> {
    let range = words.range(amount)?;
    Some(words.say("sheet-most_likely", &[("range", range.into())]))
}

/// A quantity in its kind's unit.
pub fn shown<Q: Quantity>(words: &Words, quantity: Q, kind: Kind) -> String {
    words.amount(&Amount::new(quantity, kind))
}

/// A quantity with its range, the value alone shown.
pub fn ranged<Q: Quantity>(words: &Words, quantity: &Ranged<Q>, kind: Kind) -> String {
    words.amount(&Amount::ranged(quantity, kind))
}

/// A text with a capital at its beginning, for labels that stand by themselves.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

/// A count as arguments want it.
pub fn count(of: usize) -> u32 {
    u32::try_from(of).unwrap_or(u32::MAX)
}
