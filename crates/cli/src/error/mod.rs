//! What can go wrong for the one who types, and the exit status each kind gives.

mod place;

use std::io::Write;

use units::{Arg, Args, Coded};
use words::{Said, Words};

pub use place::Place;

use crate::out::BOLD;

/// The verdict is *outside* and `--strict` was given.
pub const OUTSIDE: u8 = 1;
/// The input is at fault.
pub const INPUT: u8 = 2;
/// Something could not be read or kept.
pub const READ: u8 = 3;
/// A fault of ours.
pub const FAULT: u8 = 70;

/// An error with what would do; said in the reader's language where it is told.
#[derive(Debug)]
pub struct CliError {
    /// The exit status.
    pub status: u8,
    /// The stable code.
    pub code: &'static str,
    /// What is wrong, one thing after the other.
    pub problems: Vec<Problem>,
}

/// One thing that is wrong: where, what, and what would do.
#[derive(Debug)]
pub struct Problem {
    /// Where it stands, from the file down to the field.
    pub at: Vec<Place>,
    /// What is wrong.
    pub said: Said,
    /// The text as it was given, where it is told instead of the number it was taken for.
    pub given: Option<String>,
    /// What would do instead of what the error itself would have, as a key of the catalogue.
    pub instead: Option<&'static str>,
}

impl CliError {
    /// An input at fault: where it stands, and what is wrong with it.
    pub fn input(at: impl Into<Place>, error: &impl Coded) -> Self {
        Self::of(INPUT, Said::by(error)).at(at)
    }

    /// An input whose size is at fault, said with the text as it was given instead of a converted number.
    pub fn as_given(at: impl Into<Place>, text: &str, error: &impl Coded) -> Self {
        let mut whole = Self::input(at, error);
        whole.problems.iter_mut().for_each(|problem| problem.given = Some(text.trim().to_string()));
        whole
    }

    /// An input at fault, told by a sentence of our own: the message of the code in the catalogue.
    pub fn usage(code: &'static str, args: Args) -> Self {
        Self::of(INPUT, own(code, args))
    }

    /// Something that could not be read or kept; the case says which sentence tells it.
    pub fn read(case: &'static str, args: Args) -> Self {
        Self::of(READ, own("cannot_read", args)).case(case)
    }

    /// Something that could not be made, as a PDF by a program that was built without it.
    pub fn not_made(error: &impl Coded) -> Self {
        Self::of(READ, Said::by(error))
    }

    /// A fault of ours, told by the message of the code in the catalogue.
    pub fn fault(code: &'static str, args: Args) -> Self {
        Self::of(FAULT, own(code, args))
    }

    fn of(status: u8, said: Said) -> Self {
        Self { status, code: said.code, problems: vec![Problem::new(Vec::new(), said)] }
    }

    /// The same, with the place it stands in; the larger place is named last.
    pub fn at(mut self, place: impl Into<Place>) -> Self {
        let place = place.into();
        self.problems.iter_mut().for_each(|problem| problem.at.insert(0, place.clone()));
        self
    }

    /// The same, with which of the sentences of its code tells it.
    pub fn case(mut self, case: &'static str) -> Self {
        self.problems.iter_mut().for_each(|problem| problem.said.case = Some(case));
        self
    }

    /// The same, with how a reading that cannot be is kept all the same, as a key of the catalogue.
    pub fn unless_kept(mut self, how: &'static str) -> Self {
        if self.code == "catch_absurd" {
            self.problems.iter_mut().for_each(|problem| problem.instead = Some(how));
        }
        self
    }

    /// All of it in one line, for a line of a batch.
    pub fn line(&self, words: &Words) -> String {
        let texts = self.problems.iter().map(|problem| match problem.told(words) {
            (message, Some(hint)) => format!("{message}; {hint}"),
            (message, None) => message,
        });
        texts.collect::<Vec<_>>().join(". ")
    }

    /// Says it on standard error.
    pub fn print(&self, words: &Words) -> u8 {
        for problem in &self.problems {
            let (message, hint) = problem.told(words);
            tell(words, &message, hint.as_deref());
        }
        self.status
    }
}

impl Problem {
    /// What is wrong, and where.
    pub const fn new(at: Vec<Place>, said: Said) -> Self {
        Self { at, said, given: None, instead: None }
    }

    /// What is wrong and what would do, in the reader's language.
    fn told(&self, words: &Words) -> (String, Option<String>) {
        let hint = match self.instead {
            Some(key) => Some(words.label(key)),
            None => words.hint(&self.said),
        };
        let mut message = match &self.given {
            Some(given) => words.error(&with_given(&self.said, given, words)),
            None => words.error(&self.said),
        };
        // Some messages end with what would do; it is said once.
        if let Some(before) = hint.as_deref().and_then(|hint| message.strip_suffix(hint)) {
            message = before.trim_end_matches([';', ' ']).to_string();
        }
        let mut parts: Vec<String> = self.at.iter().filter_map(|place| place.said(words)).collect();
        parts.push(message);
        (parts.join(": "), hint)
    }
}

/// A sentence of our own; it stands in the catalogue alone.
fn own(code: &'static str, args: Args) -> Said {
    Said { code, case: None, args, english: code.to_string(), hint: None }
}

/// The same error, with the text as it was given in the place of the number.
fn with_given(said: &Said, text: &str, words: &Words) -> Said {
    let given = words.say("line-quoted", &[("text", text.into())]);
    let args = said.args.iter().fold(Args::new(), |args, (name, arg)| {
        args.with(name, if *name == "given" { Arg::Text(given.clone()) } else { arg.clone() })
    });
    Said { args, ..said.clone() }
}

/// Says on standard error that something is wrong, and what would do.
pub fn tell(words: &Words, message: &str, hint: Option<&str>) {
    let mut out = anstream::stderr().lock();
    // Where standard error cannot be written to there is nobody left to tell.
    let _ = writeln!(out, "{BOLD}{}{BOLD:#} {message}", words.label("line-error"));
    if let Some(hint) = hint {
        for line in hint.lines() {
            let _ = writeln!(out, "  {line}");
        }
    }
}

/// Says on standard error that the fault is ours, and where it happened.
pub fn fault(words: &Words, what: &str) {
    let what = words.say("fault_of_ours", &[("what", what.into())]);
    tell(words, &what, Some(&words.label("fault_of_ours_do")));
}
