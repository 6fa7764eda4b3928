//! What can go wrong for the one who types, and the exit status each kind gives.

use std::io::Write;

use units::Coded;

use crate::out::BOLD;

/// The verdict is *outside* and `--strict` was given.
pub const OUTSIDE: u8 = 1;
/// The input is at fault.
pub const INPUT: u8 = 2;
/// Something could not be read or kept.
pub const READ: u8 = 3;
/// A fault of ours.
pub const FAULT: u8 = 70;

/// An error with what would do.
#[derive(Debug)]
pub struct CliError {
    /// The exit status.
    pub status: u8,
    /// The stable code.
    pub code: String,
    /// What is wrong, line by line, each with its hint.
    pub messages: Vec<(String, Option<String>)>,
}

impl CliError {
    /// An input at fault: the option or field it stands in, and what is wrong with it.
    pub fn input(name: &str, error: &impl Coded) -> Self {
        let message = if name.is_empty() { error.to_string() } else { format!("{name}: {error}") };
        let hint = error.hint();
        // Some messages end with what would do; it is said once.
        let message = match hint.as_deref().and_then(|hint| message.strip_suffix(hint)) {
            Some(before) => before.trim_end_matches([';', ' ']).to_string(),
            None => message,
        };
        Self { status: INPUT, code: error.code().to_string(), messages: vec![(message, hint)] }
    }

    /// An input whose size is at fault, said with the text as it was given instead of a converted number.
    pub fn as_given(name: &str, text: &str, error: &impl Coded) -> Self {
        let mut said = Self::input(name, error);
        for (message, _) in &mut said.messages {
            if let Some((before, _)) = message.rsplit_once(", got ") {
                *message = format!("{before}, got \"{}\"", text.trim());
            }
        }
        said
    }

    /// An input at fault, in our own words.
    pub fn usage(code: &str, message: impl Into<String>, hint: impl Into<String>) -> Self {
        Self { status: INPUT, code: code.to_string(), messages: vec![(message.into(), Some(hint.into()))] }
    }

    /// Something that could not be read or kept.
    pub fn read(message: impl Into<String>, hint: impl Into<String>) -> Self {
        Self {
            status: READ,
            code: "cannot_read".to_string(),
            messages: vec![(message.into(), Some(hint.into()))],
        }
    }

    /// The same, with how a reading that cannot be is kept all the same.
    pub fn unless_kept(mut self, how: &str) -> Self {
        if self.code == "catch_absurd" {
            self.messages.iter_mut().for_each(|(_, hint)| *hint = Some(how.to_string()));
        }
        self
    }

    /// The first message with its hint, for a line of a batch.
    pub fn line(&self) -> String {
        let texts = self.messages.iter().map(|(message, hint)| match hint {
            Some(hint) => format!("{message}; {hint}"),
            None => message.clone(),
        });
        texts.collect::<Vec<_>>().join(". ")
    }

    /// Says it on standard error.
    pub fn print(&self) -> u8 {
        let mut out = anstream::stderr().lock();
        // Where standard error cannot be written to there is nobody left to tell.
        for (message, hint) in &self.messages {
            let _ = writeln!(out, "{BOLD}error:{BOLD:#} {message}");
            if let Some(hint) = hint {
                let _ = writeln!(out, "  {hint}");
            }
        }
        self.status
    }
}

/// Says on standard error that the fault is ours, and where it happened.
pub fn fault(what: &str) {
    let mut out = anstream::stderr().lock();
    let _ = writeln!(out, "{BOLD}error:{BOLD:#} this is a fault of ours: {what}");
    let _ = writeln!(out, "  nothing was worked out; please report it with what you typed");
}
