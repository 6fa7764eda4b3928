//! The English that stands in the code, the last resort of whoever has no catalogue of sentences.

/// The English as it is; nothing where a program says everything out of its catalogue and was built with
/// `EVENSWATH_TEXTS_ELSEWHERE` set, as the app is: every word of it would have to come through the air.
#[must_use]
pub const fn last_resort(english: &'static str) -> &'static str {
    if option_env!("EVENSWATH_TEXTS_ELSEWHERE").is_some() { "" } else { english }
}
