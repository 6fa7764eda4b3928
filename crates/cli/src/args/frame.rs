//! The words that frame a help text, which come from the library that reads the command line and know English alone.

use words::{Language, Words};

/// What stands in the frame, longer texts before those that are part of them.
const FRAME: &[&str] = &[
    "frame-help_on_help",
    "frame-print_short",
    "frame-print_long",
    "frame-print_help",
    "frame-print_version",
    "frame-values_in_line",
    "frame-values",
    "frame-default",
    "frame-usage",
    "frame-options_heading",
    "frame-commands_heading",
    "frame-arguments_heading",
    "frame-options",
    "frame-command_or_none",
    "frame-command",
];

/// A help text or a line of usage with its frame in the reader's language.
pub fn in_words(text: &str, words: &Words) -> String {
    let english = words.in_language(Language::English);
    FRAME.iter().fold(text.to_string(), |text, key| text.replace(&english.label(key), &words.label(key)))
}
