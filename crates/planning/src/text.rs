//! What people wrote, made fit for a message: not too long, nothing that a screen would obey.

/// The longest piece of a given text that a message repeats. Our own choice: two lines of a terminal.
const LONGEST_REPEATED: usize = 120;

/// A text for a message: its beginning, with control signs made visible.
pub(crate) fn for_message(text: &str) -> String {
    let mut short: String = text.chars().take(LONGEST_REPEATED).collect();
    if text.chars().nth(LONGEST_REPEATED).is_some() {
        short.push('…');
    }
    if has_control(&short) { short.escape_debug().to_string() } else { short }
}

/// Whether there are signs in it that are not for reading; blanks of any kind are.
pub(crate) fn has_control(text: &str) -> bool {
    text.chars().any(|sign| sign.is_control() && !sign.is_whitespace())
}
