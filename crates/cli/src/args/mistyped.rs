//! What was typed and cannot be read, told in the reader's language; and help, which comes the same way.

use std::io::Write;

use clap::Error;
use clap::error::{ContextKind, ContextValue, ErrorKind};
use words::{Language, Value, Words};

use super::frame;
use crate::error::tell;

/// Says it and gives the exit status.
pub fn say(error: &Error, words: &Words) -> u8 {
    let status = u8::try_from(error.exit_code()).unwrap_or(crate::error::INPUT);
    // Where it cannot be written there is nobody left to tell.
    if words.reader().language == Language::English {
        let _ = error.print();
        return status;
    }
    match error.kind() {
        ErrorKind::DisplayHelp | ErrorKind::DisplayVersion => {
            let _ = write!(anstream::stdout().lock(), "{}", shown(error, words));
        }
        ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand => {
            let _ = write!(anstream::stderr().lock(), "{}", shown(error, words));
        }
        kind => mistake(error, kind, words),
    }
    status
}

fn shown(error: &Error, words: &Words) -> String {
    frame::in_words(&error.render().ansi().to_string(), words)
}

/// One of the common mistakes in a sentence of our own, with what would do, how it is used and where more stands.
fn mistake(error: &Error, kind: ErrorKind, words: &Words) {
    let option = context(error, ContextKind::InvalidArg);
    let value = context(error, ContextKind::InvalidValue);
    let before = context(error, ContextKind::PriorArg);
    let key = match kind {
        ErrorKind::UnknownArgument => "mistyped-unknown_option",
        ErrorKind::InvalidValue if value.is_empty() => "mistyped-no_value",
        ErrorKind::InvalidValue | ErrorKind::ValueValidation => "mistyped-value",
        ErrorKind::MissingRequiredArgument => "mistyped-missing",
        ErrorKind::MissingSubcommand => "mistyped-no_command",
        ErrorKind::InvalidSubcommand => "mistyped-unknown_command",
        ErrorKind::ArgumentConflict if before == option || before.is_empty() => "mistyped-twice",
        ErrorKind::ArgumentConflict => "mistyped-not_together",
        ErrorKind::TooFewValues | ErrorKind::WrongNumberOfValues => "mistyped-too_few",
        ErrorKind::TooManyValues => "mistyped-takes_no_value",
        _ => "mistyped-other",
    };
    let told = [
        ("option", option.clone().into()),
        ("value", value.into()),
        ("before", before.into()),
        ("command", context(error, ContextKind::InvalidSubcommand).into()),
    ];
    tell(words, &words.say(key, &told), would_do(error, &option, words).as_deref());
    let mut out = anstream::stderr().lock();
    if let Some(ContextValue::StyledStr(usage)) = error.get(ContextKind::Usage) {
        let _ = writeln!(out, "\n{}", frame::in_words(&usage.ansi().to_string(), words));
    }
    let _ = writeln!(out, "\n{}", words.label("mistyped-more"));
}

/// What would do: the words that may stand there, or the name that was likely meant.
fn would_do(error: &Error, option: &str, words: &Words) -> Option<String> {
    let named = |kind| Some(context(error, kind)).filter(|text| !text.is_empty());
    let say = |key, text: String| words.say(key, &[("text", Value::from(text))]);
    named(ContextKind::ValidValue)
        .map(|known| say("mistyped-would_do", known))
        .or_else(|| {
            let meant = named(ContextKind::SuggestedArg).or_else(|| named(ContextKind::SuggestedSubcommand));
            meant.map(|meant| say("mistyped-meant", meant))
        })
        .or_else(|| {
            let name = option.trim_start_matches('-').split(' ').next().unwrap_or_default().replace('-', "_");
            let key = format!("mistyped_value-{name}");
            (error.kind() == ErrorKind::ValueValidation && words.has(&key)).then(|| words.label(&key))
        })
}

/// A part of the mistake as text; several one after the other.
fn context(error: &Error, kind: ContextKind) -> String {
    match error.get(kind) {
        Some(ContextValue::String(text)) => text.clone(),
        Some(ContextValue::Strings(texts)) => texts.join(", "),
        _ => String::new(),
    }
}
