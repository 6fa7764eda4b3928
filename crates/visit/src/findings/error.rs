//! A fact of a visit that cannot be, with the part it stands in.

use units::{Args, Coded};

/// What is wrong, and in which part of the visit.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckError {
    /// The part of the visit, as in its file.
    pub part: &'static str,
    code: &'static str,
    message: String,
    args: Args,
    hint: Option<String>,
}

impl CheckError {
    /// The error of a calculation, in a part of the visit.
    pub(super) fn of<E: Coded>(part: &'static str) -> impl Fn(E) -> Self {
        move |error| Self {
            part,
            code: error.code(),
            message: error.to_string(),
            args: error.args(),
            hint: error.hint(),
        }
    }

    /// Something that is needed and not there.
    pub(super) fn needed(part: &'static str, code: &'static str, message: &str, hint: &str) -> Self {
        Self { part, code, message: message.to_string(), args: Args::new(), hint: Some(hint.to_string()) }
    }
}

impl core::fmt::Display for CheckError {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "{}: {}", self.part, self.message)
    }
}

impl core::error::Error for CheckError {}

impl Coded for CheckError {
    fn code(&self) -> &'static str {
        self.code
    }

    fn args(&self) -> Args {
        self.args.clone()
    }

    fn hint(&self) -> Option<String> {
        self.hint.clone()
    }
}
