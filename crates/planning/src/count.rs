//! Whole numbers out of arithmetic.

/// The count in a number that is whole but for the last bits; more than a count can hold gives the largest.
pub(crate) fn whole(number: f64) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "the cast takes what does not fit to the nearest count"
    )]
    let count = number.round() as u32;
    count
}
